/* src/app/hut-shelf.c: openings and hardware ready to be dragged onto panels.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-shelf.h"
#include "app/hut-choice-list.h"
#include "app/hut-item-draft.h"
#include "app/hut-item-editor.h"
#include "app/hut-item-questions.h"
#include "app/hut-ready-opening.h"
#include "app/hut-session-hardware.h"
#include "app/hut-shelf-row.h"
#include "app/hut-stockroom.h"
#include "draw/hut-item-place.h"
#include "draw/hut-snap.h"
#include <glib/gi18n.h>

#define HEADING_MARGIN_PX 6 /* own choice */

/* Places in the list of groups: everything, openings, and the groups of the catalogue. */
#define CHOICE_ALL 0
#define CHOICE_OPENINGS 1
#define CHOICE_FIRST_GROUP 2

struct _HutShelf
{
  GtkWidget parent;
  HutSession *session;
  HutStockroom *stockroom;
  double drag_scale_px_per_mm;
  GtkWidget *search, *groups, *list, *problem, *problem_title, *problems;
};

enum
{
  PROP_0,
  PROP_SESSION,
  PROP_DRAG_SCALE,
  PROP_COUNT
};

static GParamSpec *properties[PROP_COUNT];

G_DEFINE_FINAL_TYPE (HutShelf, hut_shelf, GTK_TYPE_WIDGET)

/* ---- placing without a drag ----------------------------------------------------------------- */

static int
selected_panel (HutShelf *self,
                const HutAssembly *assembly)
{
  const char *item = hut_session_get_selected (self->session);
  const HutPlacedHole *hole = item != NULL ? hut_assembly_get_hole (assembly, item) : NULL;

  return hole != NULL && hole->panel < assembly->panels->len ? (int)hole->panel : -1;
}

static void
place_opening (HutShelf *self,
               const HutOpening *opening)
{
  const HutAssembly *assembly = hut_session_get_assembly (self->session);
  const HutRect b = hut_snap_opening_bounds (opening);
  guint index;
  HutPoint at;

  if (!hut_place_find (assembly, b, selected_panel (self, assembly), &index, &at))
    {
      gtk_widget_error_bell (GTK_WIDGET (self)); /* the canvas says why there is no panel */
      return;
    }
  const HutPanel *panel = g_ptr_array_index (assembly->panels, index);
  hut_session_add_opening (self->session, opening, panel->id, at);
}

static void
place_item (HutShelf *self,
            const HutItem *item)
{
  const HutAssembly *assembly = hut_session_get_assembly (self->session);
  guint index;
  HutPoint at;

  if (!hut_item_place_find (assembly, item, selected_panel (self, assembly), &index, &at))
    {
      gtk_widget_error_bell (GTK_WIDGET (self)); /* no panel, or no line that it could lie across */
      return;
    }
  const HutPanel *panel = g_ptr_array_index (assembly->panels, index);
  hut_session_add_hardware (self->session, item, hut_shelf_row_get_item_name (item), panel->id, at);
}

static void
place (HutShelf *self,
       HutShelfRow *row)
{
  if (hut_shelf_row_get_item (row) != NULL)
    place_item (self, hut_shelf_row_get_item (row));
  else
    place_opening (self, hut_shelf_row_get_opening (row));
}

static void
on_row_activated (GtkListBox *list,
                  GtkListBoxRow *row,
                  HutShelf *self)
{
  place (self, HUT_SHELF_ROW (row));
}

/* ---- search and headings -------------------------------------------------------------------- */

static gboolean
filter_row (GtkListBoxRow *row,
            gpointer user_data)
{
  HutShelf *self = user_data;
  const HutItem *item = hut_shelf_row_get_item (HUT_SHELF_ROW (row));
  const guint choice = gtk_drop_down_get_selected (GTK_DROP_DOWN (self->groups));
  const guint own = item != NULL ? CHOICE_FIRST_GROUP + (guint)item->group : CHOICE_OPENINGS;

  return (choice == CHOICE_ALL || choice == own)
         && hut_shelf_row_matches (HUT_SHELF_ROW (row),
                                   gtk_editable_get_text (GTK_EDITABLE (self->search)));
}

static void
on_group_changed (GtkDropDown *groups,
                  GParamSpec *pspec,
                  HutShelf *self)
{
  gtk_list_box_invalidate_filter (GTK_LIST_BOX (self->list));
  gtk_list_box_invalidate_headers (GTK_LIST_BOX (self->list));
}

static void
head_row (GtkListBoxRow *row,
          GtkListBoxRow *before,
          gpointer user_data)
{
  const char *group = hut_shelf_row_get_group (HUT_SHELF_ROW (row));
  GtkWidget *heading;

  if (before != NULL && g_strcmp0 (hut_shelf_row_get_group (HUT_SHELF_ROW (before)), group) == 0)
    {
      gtk_list_box_row_set_header (row, NULL);
      return;
    }
  heading = gtk_label_new (group);
  gtk_label_set_xalign (GTK_LABEL (heading), 0.0f);
  gtk_widget_add_css_class (heading, "heading");
  gtk_widget_set_margin_start (heading, 2 * HEADING_MARGIN_PX);
  gtk_widget_set_margin_top (heading, before != NULL ? 2 * HEADING_MARGIN_PX : HEADING_MARGIN_PX);
  gtk_widget_set_margin_bottom (heading, HEADING_MARGIN_PX);
  gtk_list_box_row_set_header (row, heading);
}

static void
on_search_changed (GtkSearchEntry *search,
                   HutShelf *self)
{
  gtk_list_box_invalidate_filter (GTK_LIST_BOX (self->list));
}

/* Enter in the search places the first that is left. */
static void
on_search_activate (GtkSearchEntry *search,
                    HutShelf *self)
{
  GtkListBoxRow *row;

  for (int i = 0; (row = gtk_list_box_get_row_at_index (GTK_LIST_BOX (self->list), i)) != NULL; i++)
    if (gtk_widget_get_child_visible (GTK_WIDGET (row)))
      {
        gtk_list_box_select_row (GTK_LIST_BOX (self->list), row);
        place (self, HUT_SHELF_ROW (row));
        return;
      }
}

/* ---- the catalogue --------------------------------------------------------------------------- */

static void
fill_groups (HutShelf *self)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new_with_free_func (g_free);

  /* Translators: what the shelf shows: all groups of openings and hardware */
  g_ptr_array_add (names, g_strdup (_ ("Everything")));
  g_ptr_array_add (names, g_strdup (_ ("Openings")));
  for (int i = 0; i < HUT_ITEM_GROUP_COUNT; i++)
    g_ptr_array_add (names, g_strdup (_(hut_item_group_title ((HutItemGroup)i))));
  hut_choice_list_style (GTK_DROP_DOWN (self->groups));
  hut_choice_list_set (GTK_DROP_DOWN (self->groups), names);
}

/* All of them, each with its file and line: the user mends them with an editor of text. */
static void
show_problems (HutShelf *self)
{
  const GPtrArray *problems = hut_stockroom_get_problems (self->stockroom);
  g_autoptr (GString) all = g_string_new (NULL);
  g_autofree char *title
      = g_strdup_printf (ngettext ("%u own item could not be read; the rest is here",
                                      "%u own items could not be read; the rest is here",
                                      problems->len),
                         problems->len);

  for (guint i = 0; i < problems->len; i++)
    g_string_append_printf (all, "%s%s", i > 0 ? "\n" : "",
                            (const char *)g_ptr_array_index (problems, i));
  gtk_label_set_text (GTK_LABEL (self->problem_title), title);
  gtk_label_set_text (GTK_LABEL (self->problems), all->str);
  gtk_widget_set_visible (self->problem, problems->len > 0);
}

static void
fill_items (HutShelf *self)
{
  const HutCatalog *catalog = hut_stockroom_get_catalog (self->stockroom);
  const int n_openings = (int)hut_ready_opening_get_count ();
  GtkListBoxRow *row;

  while ((row = gtk_list_box_get_row_at_index (GTK_LIST_BOX (self->list), n_openings)) != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (self->list), GTK_WIDGET (row));
  for (guint i = 0; i < hut_catalog_get_count (catalog); i++)
    {
      const HutItem *item = hut_catalog_get_nth (catalog, i);
      GtkWidget *fresh = hut_shelf_row_new_item (item, hut_catalog_is_own (catalog, item));

      hut_shelf_row_set_drag_scale (HUT_SHELF_ROW (fresh), self->drag_scale_px_per_mm);
      gtk_list_box_append (GTK_LIST_BOX (self->list), fresh);
    }
  show_problems (self);
}

static void
edit_item (HutShelf *self,
           const HutItem *item)
{
  GtkWidget *editor = hut_item_editor_new (self->stockroom, item);

  gtk_window_set_transient_for (GTK_WINDOW (editor),
                                GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (self))));
  gtk_window_present (GTK_WINDOW (editor));
}

static void
new_item (GtkWidget *widget,
          const char *action,
          GVariant *parameter)
{
  g_autoptr (HutItem) draft = hut_item_draft_new ();

  edit_item (HUT_SHELF (widget), draft);
}

static void
new_pattern (GtkWidget *widget,
             const char *action,
             GVariant *parameter)
{
  g_autoptr (HutItem) draft = hut_item_draft_new_pattern ();

  edit_item (HUT_SHELF (widget), draft);
}

static const HutItem *
selected_item (HutShelf *self)
{
  GtkListBoxRow *row = gtk_list_box_get_selected_row (GTK_LIST_BOX (self->list));

  return row != NULL ? hut_shelf_row_get_item (HUT_SHELF_ROW (row)) : NULL;
}

static void
edit_selected (GtkWidget *widget,
               const char *action,
               GVariant *parameter)
{
  const HutItem *item = selected_item (HUT_SHELF (widget));

  if (item != NULL)
    edit_item (HUT_SHELF (widget), item);
}

static void
copy_selected (GtkWidget *widget,
               const char *action,
               GVariant *parameter)
{
  const HutItem *item = selected_item (HUT_SHELF (widget));

  if (item == NULL)
    return;

  /* Translators: name of a copy of an item of hardware */
  g_autofree char *name = g_strdup_printf (_ ("%s (copy)"), hut_shelf_row_get_item_name (item));
  g_autoptr (HutItem) copy = hut_item_draft_new_copy (item, name);

  edit_item (HUT_SHELF (widget), copy);
}

static void
remove_selected (GtkWidget *widget,
                 const char *action,
                 GVariant *parameter)
{
  HutShelf *self = HUT_SHELF (widget);
  const HutItem *item = selected_item (self);

  if (item != NULL)
    hut_item_ask_remove (GTK_WINDOW (gtk_widget_get_root (widget)), self->stockroom, item->id,
                         hut_shelf_row_get_item_name (item));
}

static void
on_row_selected (GtkListBox *list,
                 GtkListBoxRow *row,
                 HutShelf *self)
{
  const HutItem *item = row != NULL ? hut_shelf_row_get_item (HUT_SHELF_ROW (row)) : NULL;
  const HutCatalog *catalog = hut_stockroom_get_catalog (self->stockroom);
  const HutItem *known = item != NULL ? hut_catalog_get (catalog, item->id) : NULL;

  gtk_widget_action_set_enabled (GTK_WIDGET (self), "shelf.edit-item", item != NULL);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "shelf.copy-item", item != NULL);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "shelf.remove-item",
                                 known != NULL && hut_catalog_is_own (catalog, known));
}

/* ---- object --------------------------------------------------------------------------------- */

static void
set_drag_scale (HutShelf *self,
                double scale_px_per_mm)
{
  GtkListBoxRow *row;

  self->drag_scale_px_per_mm = scale_px_per_mm;
  for (int i = 0; (row = gtk_list_box_get_row_at_index (GTK_LIST_BOX (self->list), i)) != NULL; i++)
    hut_shelf_row_set_drag_scale (HUT_SHELF_ROW (row), scale_px_per_mm);
}

static void
hut_shelf_set_property (GObject *object,
                        guint prop_id,
                        const GValue *value,
                        GParamSpec *pspec)
{
  HutShelf *self = HUT_SHELF (object);

  if (prop_id == PROP_SESSION)
    self->session = g_value_dup_object (value);
  else if (prop_id == PROP_DRAG_SCALE)
    set_drag_scale (self, g_value_get_double (value));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, prop_id, pspec);
}

static void
hut_shelf_get_property (GObject *object,
                        guint prop_id,
                        GValue *value,
                        GParamSpec *pspec)
{
  HutShelf *self = HUT_SHELF (object);

  if (prop_id == PROP_SESSION)
    g_value_set_object (value, self->session);
  else if (prop_id == PROP_DRAG_SCALE)
    g_value_set_double (value, self->drag_scale_px_per_mm);
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, prop_id, pspec);
}

static void
hut_shelf_dispose (GObject *object)
{
  HutShelf *self = HUT_SHELF (object);
  GtkWidget *child;

  gtk_widget_dispose_template (GTK_WIDGET (self), HUT_TYPE_SHELF);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child); /* those without a name in the template */
  g_clear_object (&self->session);
  g_clear_object (&self->stockroom);
  G_OBJECT_CLASS (hut_shelf_parent_class)->dispose (object);
}

static void
hut_shelf_class_init (HutShelfClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  object_class->set_property = hut_shelf_set_property;
  object_class->get_property = hut_shelf_get_property;
  object_class->dispose = hut_shelf_dispose;
  properties[PROP_SESSION]
      = g_param_spec_object ("session", NULL, NULL, HUT_TYPE_SESSION,
                             G_PARAM_READWRITE | G_PARAM_CONSTRUCT_ONLY | G_PARAM_STATIC_STRINGS);
  properties[PROP_DRAG_SCALE] = g_param_spec_double (
      "drag-scale", NULL, NULL, 0.0, G_MAXDOUBLE, 1.0, G_PARAM_READWRITE | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, PROP_COUNT, properties);

  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-shelf.ui");
  gtk_widget_class_bind_template_child (widget_class, HutShelf, search);
  gtk_widget_class_bind_template_child (widget_class, HutShelf, groups);
  gtk_widget_class_bind_template_child (widget_class, HutShelf, list);
  gtk_widget_class_bind_template_child (widget_class, HutShelf, problem);
  gtk_widget_class_bind_template_child (widget_class, HutShelf, problem_title);
  gtk_widget_class_bind_template_child (widget_class, HutShelf, problems);
  gtk_widget_class_bind_template_callback (widget_class, on_group_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_row_selected);
  gtk_widget_class_bind_template_callback (widget_class, on_search_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_search_activate);
  gtk_widget_class_bind_template_callback (widget_class, on_row_activated);
  gtk_widget_class_install_action (widget_class, "shelf.new-item", NULL, new_item);
  gtk_widget_class_install_action (widget_class, "shelf.new-pattern", NULL, new_pattern);
  gtk_widget_class_install_action (widget_class, "shelf.edit-item", NULL, edit_selected);
  gtk_widget_class_install_action (widget_class, "shelf.copy-item", NULL, copy_selected);
  gtk_widget_class_install_action (widget_class, "shelf.remove-item", NULL, remove_selected);
  gtk_widget_class_set_css_name (widget_class, "hut-shelf");
}

static void
hut_shelf_init (HutShelf *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  for (guint i = 0; i < hut_ready_opening_get_count (); i++)
    gtk_list_box_append (GTK_LIST_BOX (self->list), hut_shelf_row_new (i));
  self->drag_scale_px_per_mm = 1.0;
  self->stockroom = g_object_ref (hut_stockroom_get_default ());
  fill_groups (self);
  fill_items (self);
  g_signal_connect_object (self->stockroom, "changed", G_CALLBACK (fill_items), self,
                           G_CONNECT_SWAPPED);
  on_row_selected (GTK_LIST_BOX (self->list), NULL, self);
  gtk_list_box_set_filter_func (GTK_LIST_BOX (self->list), filter_row, self, NULL);
  gtk_list_box_set_header_func (GTK_LIST_BOX (self->list), head_row, NULL, NULL);
  gtk_search_entry_set_key_capture_widget (GTK_SEARCH_ENTRY (self->search), GTK_WIDGET (self));
}

GtkWidget *
hut_shelf_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  return g_object_new (HUT_TYPE_SHELF, "session", session, NULL);
}

void
hut_shelf_focus_search (HutShelf *self)
{
  g_return_if_fail (HUT_IS_SHELF (self));

  gtk_widget_grab_focus (self->search);
}
