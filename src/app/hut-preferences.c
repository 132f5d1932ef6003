/* src/app/hut-preferences.c: how the program looks and counts.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-preferences.h"
#include "app/hut-field.h"
#include "app/hut-settings.h"

struct _HutPreferences
{
  GtkWindow parent_instance;

  GtkDropDown *colour_style, *units;
  GtkSwitch *grid, *snap;
};

G_DEFINE_TYPE (HutPreferences, hut_preferences, GTK_TYPE_WINDOW)

/* The positions in the lists are the values of the enums. */
static gboolean
enum_to_position (GBinding *binding,
                  const GValue *from,
                  GValue *to,
                  gpointer user_data)
{
  g_value_set_uint (to, (guint)g_value_get_enum (from));
  return TRUE;
}

static gboolean
position_to_enum (GBinding *binding,
                  const GValue *from,
                  GValue *to,
                  gpointer user_data)
{
  if (g_value_get_uint (from) == GTK_INVALID_LIST_POSITION)
    return FALSE;
  g_value_set_enum (to, (int)g_value_get_uint (from));
  return TRUE;
}

static void
hut_preferences_class_init (HutPreferencesClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  g_type_ensure (HUT_TYPE_FIELD);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-preferences.ui");
  gtk_widget_class_bind_template_child (widget_class, HutPreferences, colour_style);
  gtk_widget_class_bind_template_child (widget_class, HutPreferences, units);
  gtk_widget_class_bind_template_child (widget_class, HutPreferences, grid);
  gtk_widget_class_bind_template_child (widget_class, HutPreferences, snap);
}

static void
hut_preferences_init (HutPreferences *self)
{
  HutSettings *settings = hut_settings_get_default ();
  const GBindingFlags flags = G_BINDING_SYNC_CREATE | G_BINDING_BIDIRECTIONAL;

  gtk_widget_init_template (GTK_WIDGET (self));
  g_object_bind_property_full (settings, "colour-style", self->colour_style, "selected", flags,
                               enum_to_position, position_to_enum, NULL, NULL);
  g_object_bind_property_full (settings, "units", self->units, "selected", flags, enum_to_position,
                               position_to_enum, NULL, NULL);
  g_object_bind_property (settings, "grid", self->grid, "active", flags);
  g_object_bind_property (settings, "snap", self->snap, "active", flags);
}

GtkWidget *
hut_preferences_new (GtkWindow *parent)
{
  return g_object_new (HUT_TYPE_PREFERENCES, "transient-for", parent, NULL);
}
