/* src/app/hut-settings.h: what the program remembers about how it is used.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Properties, all readable and writable, "notify" on change: "units" (HutUnits), "colour-style"
 * (HutColourStyle), "grid" and "snap" (gboolean), "window-width", "window-height" (int, px),
 * "window-maximized" (gboolean). They are kept in GSettings when the schema is installed, else for
 * as long as the program runs. */
#pragma once
#include "app/hut-units.h"
#include <gio/gio.h>

typedef enum
{
  HUT_COLOUR_STYLE_FOLLOW, /* as the desktop says */
  HUT_COLOUR_STYLE_LIGHT,
  HUT_COLOUR_STYLE_DARK,
} HutColourStyle;

#define HUT_TYPE_COLOUR_STYLE (hut_colour_style_get_type ())
GType hut_colour_style_get_type (void);

#define HUT_TYPE_SETTINGS (hut_settings_get_type ())
G_DECLARE_FINAL_TYPE (HutSettings, hut_settings, HUT, SETTINGS, GObject)

/* (transfer none): the one of the program; main thread only. */
HutSettings *hut_settings_get_default (void);
HutUnits hut_settings_get_units (HutSettings *self);
HutColourStyle hut_settings_get_colour_style (HutSettings *self);
gboolean hut_settings_get_grid (HutSettings *self);
gboolean hut_settings_get_snap (HutSettings *self);
