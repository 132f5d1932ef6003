/* src/app/hut-checked-entry.c: a line of text that is applied only when it makes sense.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-checked-entry.h"

struct _HutCheckedEntry
{
  GtkWidget parent_instance;

  GtkWidget *entry, *problem;

  HutTextCheck check;
  char *text; /* as set or last applied */
  gboolean pending, filling;
};

enum
{
  PROP_0,
  PROP_TITLE,
  PROP_COUNT
};

static GParamSpec *properties[PROP_COUNT];
static guint committed_signal;

G_DEFINE_TYPE (HutCheckedEntry, hut_checked_entry, GTK_TYPE_WIDGET)

static void
set_problem (HutCheckedEntry *self,
             const char *problem)
{
  gtk_label_set_text (GTK_LABEL (self->problem), problem != NULL ? problem : "");
  gtk_widget_set_visible (self->problem, problem != NULL);
  if (problem != NULL)
    {
      gtk_widget_add_css_class (self->entry, "error");
      gtk_accessible_update_state (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_STATE_INVALID,
                                   GTK_ACCESSIBLE_INVALID_TRUE, -1);
    }
  else
    {
      gtk_widget_remove_css_class (self->entry, "error");
      gtk_accessible_reset_state (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_STATE_INVALID);
    }
}

static void
show_text (HutCheckedEntry *self)
{
  self->filling = TRUE;
  if (g_strcmp0 (gtk_editable_get_text (GTK_EDITABLE (self->entry)), self->text) != 0)
    gtk_editable_set_text (GTK_EDITABLE (self->entry), self->text);
  self->filling = FALSE;
  self->pending = FALSE;
  gtk_widget_set_tooltip_text (self->entry, self->text);
  set_problem (self, NULL);
}

static void
on_changed (HutCheckedEntry *self)
{
  if (!self->filling)
    self->pending = TRUE;
}

static void
on_activate (HutCheckedEntry *self)
{
  hut_checked_entry_commit (self);
}

static void
on_focus_leave (HutCheckedEntry *self)
{
  hut_checked_entry_commit (self);
}

static gboolean
on_key_pressed (GtkEventControllerKey *keys,
                guint key,
                guint code,
                GdkModifierType modifiers,
                HutCheckedEntry *self)
{
  if (key != GDK_KEY_Escape || !self->pending)
    return GDK_EVENT_PROPAGATE;
  show_text (self);
  return GDK_EVENT_STOP;
}

static gboolean
hut_checked_entry_grab_focus (GtkWidget *widget)
{
  return gtk_widget_grab_focus (HUT_CHECKED_ENTRY (widget)->entry);
}

static void
hut_checked_entry_set_property (GObject *object,
                                guint id,
                                const GValue *value,
                                GParamSpec *pspec)
{
  HutCheckedEntry *self = HUT_CHECKED_ENTRY (object);

  if (id == PROP_TITLE)
    gtk_accessible_update_property (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                    g_value_get_string (value), -1);
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hut_checked_entry_dispose (GObject *object)
{
  HutCheckedEntry *self = HUT_CHECKED_ENTRY (object);

  g_clear_pointer (&self->entry, gtk_widget_unparent);
  g_clear_pointer (&self->problem, gtk_widget_unparent);
  G_OBJECT_CLASS (hut_checked_entry_parent_class)->dispose (object);
}

static void
hut_checked_entry_finalize (GObject *object)
{
  g_free (HUT_CHECKED_ENTRY (object)->text);
  G_OBJECT_CLASS (hut_checked_entry_parent_class)->finalize (object);
}

static void
hut_checked_entry_class_init (HutCheckedEntryClass *class)
{
  GObjectClass *object_class = G_OBJECT_CLASS (class);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  object_class->set_property = hut_checked_entry_set_property;
  object_class->dispose = hut_checked_entry_dispose;
  object_class->finalize = hut_checked_entry_finalize;
  widget_class->grab_focus = hut_checked_entry_grab_focus;
  properties[PROP_TITLE]
      = g_param_spec_string ("title", NULL, NULL, "", G_PARAM_WRITABLE | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, PROP_COUNT, properties);
  committed_signal = g_signal_new ("committed", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0,
                                   NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_STRING);
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-checked-entry.ui");
  gtk_widget_class_bind_template_child (widget_class, HutCheckedEntry, entry);
  gtk_widget_class_bind_template_child (widget_class, HutCheckedEntry, problem);
  gtk_widget_class_bind_template_callback (widget_class, on_activate);
  gtk_widget_class_bind_template_callback (widget_class, on_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_focus_leave);
  gtk_widget_class_bind_template_callback (widget_class, on_key_pressed);
}

static void
hut_checked_entry_init (HutCheckedEntry *self)
{
  self->text = g_strdup ("");
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
hut_checked_entry_set_check (HutCheckedEntry *self,
                             HutTextCheck check)
{
  g_return_if_fail (HUT_IS_CHECKED_ENTRY (self));
  self->check = check;
}

void
hut_checked_entry_set_text (HutCheckedEntry *self,
                            const char *text)
{
  g_return_if_fail (HUT_IS_CHECKED_ENTRY (self) && text != NULL);

  const gboolean changed = g_strcmp0 (text, self->text) != 0;

  if (changed)
    {
      g_free (self->text);
      self->text = g_strdup (text);
    }
  if (changed || !self->pending)
    show_text (self);
}

gboolean
hut_checked_entry_commit (HutCheckedEntry *self)
{
  g_return_val_if_fail (HUT_IS_CHECKED_ENTRY (self), FALSE);

  g_autofree char *text
      = g_strstrip (g_strdup (gtk_editable_get_text (GTK_EDITABLE (self->entry))));
  g_autoptr (GError) error = NULL;

  if (!self->pending)
    return TRUE;
  if (self->check != NULL && !self->check (text, &error))
    {
      set_problem (self, error->message);
      return FALSE;
    }
  self->pending = FALSE;
  set_problem (self, NULL);
  if (g_strcmp0 (text, self->text) != 0)
    g_signal_emit (self, committed_signal, 0, text);
  return TRUE;
}

GtkEditable *
hut_checked_entry_get_editable (HutCheckedEntry *self)
{
  g_return_val_if_fail (HUT_IS_CHECKED_ENTRY (self), NULL);
  return GTK_EDITABLE (self->entry);
}

const char *
hut_checked_entry_get_problem (HutCheckedEntry *self)
{
  g_return_val_if_fail (HUT_IS_CHECKED_ENTRY (self), NULL);
  return gtk_widget_get_visible (self->problem) ? gtk_label_get_text (GTK_LABEL (self->problem))
                                                : NULL;
}
