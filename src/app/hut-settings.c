/* src/app/hut-settings.c: what the program remembers about how it is used.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * g_settings_new () ends the program when the schema is not installed. A program that is run from
 * where it was built must not do that, so the schema is looked up first. */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-settings.h"

/* Own choice: fits a 1366 x 768 screen with a task bar. */
#define WINDOW_WIDTH_PX 1280
#define WINDOW_HEIGHT_PX 720
#define WINDOW_SIZE_MAX_PX 16384

struct _HutSettings
{
  GObject parent_instance;

  GSettings *settings; /* NULL when the schema is not installed */
  HutUnits units;
  HutColourStyle colour_style;
  gboolean grid, snap;
  int window_width_px, window_height_px;
  gboolean window_maximized;
};

enum
{
  PROP_0,
  PROP_UNITS,
  PROP_COLOUR_STYLE,
  PROP_GRID,
  PROP_SNAP,
  PROP_WINDOW_WIDTH,
  PROP_WINDOW_HEIGHT,
  PROP_WINDOW_MAXIMIZED,
  PROP_COUNT
};

static GParamSpec *properties[PROP_COUNT];

G_DEFINE_ENUM_TYPE (HutColourStyle,
                    hut_colour_style,
                    G_DEFINE_ENUM_VALUE (HUT_COLOUR_STYLE_FOLLOW, "follow"),
                    G_DEFINE_ENUM_VALUE (HUT_COLOUR_STYLE_LIGHT, "light"),
                    G_DEFINE_ENUM_VALUE (HUT_COLOUR_STYLE_DARK, "dark"))

G_DEFINE_TYPE (HutSettings, hut_settings, G_TYPE_OBJECT)

static void
hut_settings_get_property (GObject *object,
                           guint id,
                           GValue *value,
                           GParamSpec *pspec)
{
  const HutSettings *self = HUT_SETTINGS (object);

  switch (id)
    {
    case PROP_UNITS:
      g_value_set_enum (value, (int)self->units);
      break;
    case PROP_COLOUR_STYLE:
      g_value_set_enum (value, (int)self->colour_style);
      break;
    case PROP_GRID:
      g_value_set_boolean (value, self->grid);
      break;
    case PROP_SNAP:
      g_value_set_boolean (value, self->snap);
      break;
    case PROP_WINDOW_WIDTH:
      g_value_set_int (value, self->window_width_px);
      break;
    case PROP_WINDOW_HEIGHT:
      g_value_set_int (value, self->window_height_px);
      break;
    case PROP_WINDOW_MAXIMIZED:
      g_value_set_boolean (value, self->window_maximized);
      break;
    default:
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
hut_settings_set_property (GObject *object,
                           guint id,
                           const GValue *value,
                           GParamSpec *pspec)
{
  HutSettings *self = HUT_SETTINGS (object);

  switch (id)
    {
    case PROP_UNITS:
      self->units = (HutUnits)g_value_get_enum (value);
      break;
    case PROP_COLOUR_STYLE:
      self->colour_style = (HutColourStyle)g_value_get_enum (value);
      break;
    case PROP_GRID:
      self->grid = g_value_get_boolean (value);
      break;
    case PROP_SNAP:
      self->snap = g_value_get_boolean (value);
      break;
    case PROP_WINDOW_WIDTH:
      self->window_width_px = g_value_get_int (value);
      break;
    case PROP_WINDOW_HEIGHT:
      self->window_height_px = g_value_get_int (value);
      break;
    case PROP_WINDOW_MAXIMIZED:
      self->window_maximized = g_value_get_boolean (value);
      break;
    default:
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
      return;
    }
  g_object_notify_by_pspec (object, pspec);
}

static void
hut_settings_constructed (GObject *object)
{
  HutSettings *self = HUT_SETTINGS (object);
  GSettingsSchemaSource *source = g_settings_schema_source_get_default ();
  g_autoptr (GSettingsSchema) schema
      = source != NULL ? g_settings_schema_source_lookup (source, HUT_APP_ID, TRUE) : NULL;

  G_OBJECT_CLASS (hut_settings_parent_class)->constructed (object);
  if (schema == NULL)
    {
      g_debug ("schema %s is not installed; settings last as long as the program", HUT_APP_ID);
      return;
    }
  self->settings = g_settings_new_full (schema, NULL, NULL);
  for (guint id = 1; id < PROP_COUNT; id++)
    {
      const char *name = g_param_spec_get_name (properties[id]);

      /* An older schema that is still installed must not end the program either. */
      if (g_settings_schema_has_key (schema, name))
        g_settings_bind (self->settings, name, self, name, G_SETTINGS_BIND_DEFAULT);
    }
}

static void
hut_settings_dispose (GObject *object)
{
  HutSettings *self = HUT_SETTINGS (object);

  g_clear_object (&self->settings);
  G_OBJECT_CLASS (hut_settings_parent_class)->dispose (object);
}

static void
hut_settings_class_init (HutSettingsClass *class)
{
  GObjectClass *object_class = G_OBJECT_CLASS (class);
  const GParamFlags flags = G_PARAM_READWRITE | G_PARAM_STATIC_STRINGS | G_PARAM_EXPLICIT_NOTIFY;

  object_class->get_property = hut_settings_get_property;
  object_class->set_property = hut_settings_set_property;
  object_class->constructed = hut_settings_constructed;
  object_class->dispose = hut_settings_dispose;
  properties[PROP_UNITS]
      = g_param_spec_enum ("units", NULL, NULL, HUT_TYPE_UNITS, HUT_UNITS_MM, flags);
  properties[PROP_COLOUR_STYLE] = g_param_spec_enum (
      "colour-style", NULL, NULL, HUT_TYPE_COLOUR_STYLE, HUT_COLOUR_STYLE_FOLLOW, flags);
  properties[PROP_GRID] = g_param_spec_boolean ("grid", NULL, NULL, TRUE, flags);
  properties[PROP_SNAP] = g_param_spec_boolean ("snap", NULL, NULL, TRUE, flags);
  properties[PROP_WINDOW_WIDTH] = g_param_spec_int ("window-width", NULL, NULL, 1,
                                                    WINDOW_SIZE_MAX_PX, WINDOW_WIDTH_PX, flags);
  properties[PROP_WINDOW_HEIGHT] = g_param_spec_int ("window-height", NULL, NULL, 1,
                                                     WINDOW_SIZE_MAX_PX, WINDOW_HEIGHT_PX, flags);
  properties[PROP_WINDOW_MAXIMIZED]
      = g_param_spec_boolean ("window-maximized", NULL, NULL, FALSE, flags);
  g_object_class_install_properties (object_class, PROP_COUNT, properties);
}

static void
hut_settings_init (HutSettings *self)
{
  self->grid = TRUE;
  self->snap = TRUE;
  self->window_width_px = WINDOW_WIDTH_PX;
  self->window_height_px = WINDOW_HEIGHT_PX;
}

HutSettings *
hut_settings_get_default (void)
{
  static HutSettings *settings; /* main thread only; lives as long as the program */

  if (settings == NULL)
    settings = g_object_new (HUT_TYPE_SETTINGS, NULL);
  return settings;
}

HutUnits
hut_settings_get_units (HutSettings *self)
{
  g_return_val_if_fail (HUT_IS_SETTINGS (self), HUT_UNITS_MM);
  return self->units;
}

HutColourStyle
hut_settings_get_colour_style (HutSettings *self)
{
  g_return_val_if_fail (HUT_IS_SETTINGS (self), HUT_COLOUR_STYLE_FOLLOW);
  return self->colour_style;
}

gboolean
hut_settings_get_grid (HutSettings *self)
{
  g_return_val_if_fail (HUT_IS_SETTINGS (self), TRUE);
  return self->grid;
}

gboolean
hut_settings_get_snap (HutSettings *self)
{
  g_return_val_if_fail (HUT_IS_SETTINGS (self), TRUE);
  return self->snap;
}
