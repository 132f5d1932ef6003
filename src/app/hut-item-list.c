/* src/app/hut-item-list.c: all openings, windows and hardware of the design, for those who do not
 * point.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-item-list.h"
#include "app/hut-item-row.h"
#include "app/hut-panel-choices.h"
#include "app/hut-pick-list.h"
#include "app/hut-refresh.h"
#include "app/hut-settings.h"
#include <glib/gi18n.h>

struct _HutItemList
{
  GtkWidget parent_instance;

  GtkStack *stack;
  GtkListView *list;

  HutSession *session;
  HutPickList *picks;
};

static guint chosen_signal;

G_DEFINE_TYPE (HutItemList, hut_item_list, GTK_TYPE_WIDGET)

static char *
dup_length (double value_mm)
{
  return hut_quantity_dup_text_with_unit (
      HUT_QUANTITY_LENGTH, hut_settings_get_units (hut_settings_get_default ()), value_mm);
}

static char *
dup_opening_text (const HutOpening *opening)
{
  const char *panel = hut_panel_shown_name (opening->at.panel);
  g_autofree char *diameter = dup_length (opening->diameter_mm);
  g_autofree char *width = dup_length (opening->width_mm);
  g_autofree char *height = dup_length (opening->height_mm);

  switch (opening->shape)
    {
    case HUT_SHAPE_ROUND:
      /* Translators: panel, diameter of a round opening */
      return g_strdup_printf (_("%s, round %s"), panel, diameter);
    case HUT_SHAPE_PATTERN:
      /* Translators: panel, number and diameter of holes */
      return g_strdup_printf (
          ngettext ("%s, %u hole of %s", "%s, %u holes of %s", opening->holes->len), panel,
          opening->holes->len, diameter);
    case HUT_SHAPE_RECTANGLE:
    case HUT_SHAPE_SLOT:
    default:
      /* Translators: panel, width and height of an opening */
      return g_strdup_printf (_("%s, %s × %s"), panel, width, height);
    }
}

static char *
dup_window_text (const HutWindow *window)
{
  g_autofree char *width = dup_length (window->width_mm);
  g_autofree char *height = dup_length (window->height_mm);

  /* Translators: panel, width and height of a window */
  return g_strdup_printf (_("%s, window %s × %s"), hut_panel_shown_name (window->at.panel), width,
                          height);
}

static char *
dup_hardware_text (const HutDesign *design,
                   const HutHardware *hardware)
{
  const HutItem *item = hut_design_get_hardware_item (design, hardware);

  /* Translators: panel, name of an item of hardware */
  return g_strdup_printf (_("%s, %s"), hut_panel_shown_name (hardware->at.panel),
                          item != NULL ? _(item->name) : hardware->item);
}

static const char *
shape_icon_name (HutShape shape)
{
  switch (shape)
    {
    case HUT_SHAPE_RECTANGLE:
      return "hut-opening-rectangle-symbolic";
    case HUT_SHAPE_SLOT:
      return "hut-opening-slot-symbolic";
    case HUT_SHAPE_PATTERN:
      return "hut-opening-pattern-symbolic";
    case HUT_SHAPE_ROUND:
    default:
      return "hut-opening-round-symbolic";
    }
}

static void
add_content (GArray *contents,
             GPtrArray *texts,
             const char *id,
             const char *name,
             const char *icon_name,
             char *text)
{
  const HutListContent content = {
    .id = id,
    .icon_name = icon_name,
    .heading = name != NULL && *name != '\0' ? name : id,
    .text = text,
  };

  g_ptr_array_add (texts, text);
  g_array_append_val (contents, content);
}

static void
show_selected (HutItemList *self)
{
  const char *selected = hut_session_get_selected (self->session);
  guint position = GTK_INVALID_LIST_POSITION;

  for (guint i = 0; selected != NULL && i < hut_pick_list_get_count (self->picks); i++)
    if (g_strcmp0 (hut_pick_list_get (self->picks, i)->id, selected) == 0)
      position = i;
  hut_pick_list_show (self->picks, position);
}

static void
refresh (GtkWidget *widget)
{
  HutItemList *self = HUT_ITEM_LIST (widget);
  const HutDesign *design = hut_session_get_design (self->session);
  g_autoptr (GArray) contents = g_array_new (FALSE, FALSE, sizeof (HutListContent));
  g_autoptr (GPtrArray) texts = g_ptr_array_new_with_free_func (g_free);

  for (guint i = 0; i < design->windows->len; i++)
    {
      const HutWindow *window = g_ptr_array_index (design->windows, i);

      add_content (contents, texts, window->id, window->name, "hut-window-symbolic",
                   dup_window_text (window));
    }
  for (guint i = 0; i < design->openings->len; i++)
    {
      const HutOpening *opening = g_ptr_array_index (design->openings, i);

      add_content (contents, texts, opening->id, opening->name, shape_icon_name (opening->shape),
                   dup_opening_text (opening));
    }
  for (guint i = 0; i < design->hardware->len; i++)
    {
      const HutHardware *hardware = g_ptr_array_index (design->hardware, i);

      add_content (contents, texts, hardware->id, hardware->name, "hut-hardware-symbolic",
                   dup_hardware_text (design, hardware));
    }
  hut_pick_list_sync (self->picks, (const HutListContent *)(void *)contents->data, contents->len);
  gtk_stack_set_visible_child_name (self->stack, contents->len > 0 ? "list" : "empty");
  show_selected (self);
}

static void
on_derived (HutItemList *self)
{
  hut_refresh_queue (GTK_WIDGET (self), refresh);
}

static void
on_picked (HutItemList *self,
           guint position)
{
  g_autofree char *id = g_strdup (hut_pick_list_get (self->picks, position)->id);

  hut_session_select (self->session, id);
  g_signal_emit (self, chosen_signal, 0, id);
}

static void
hut_item_list_dispose (GObject *object)
{
  HutItemList *self = HUT_ITEM_LIST (object);
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  g_clear_object (&self->picks);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_item_list_parent_class)->dispose (object);
}

static void
hut_item_list_class_init (HutItemListClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_item_list_dispose;
  chosen_signal = g_signal_new ("chosen", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL,
                                NULL, NULL, G_TYPE_NONE, 1, G_TYPE_STRING);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-item-list.ui");
  gtk_widget_class_bind_template_child (widget_class, HutItemList, stack);
  gtk_widget_class_bind_template_child (widget_class, HutItemList, list);
}

static void
hut_item_list_init (HutItemList *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  self->picks = hut_pick_list_new (self->list, HUT_TYPE_ITEM_ROW);
  g_signal_connect_object (self->picks, "picked", G_CALLBACK (on_picked), self, G_CONNECT_SWAPPED);
}

void
hut_item_list_bind (HutItemList *self,
                    HutSession *session)
{
  g_return_if_fail (HUT_IS_ITEM_LIST (self) && HUT_IS_SESSION (session));
  g_return_if_fail (self->session == NULL);

  self->session = g_object_ref (session);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "selection-changed", G_CALLBACK (on_derived), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (hut_settings_get_default (), "notify::units", G_CALLBACK (on_derived),
                           self, G_CONNECT_SWAPPED);
  on_derived (self);
}
