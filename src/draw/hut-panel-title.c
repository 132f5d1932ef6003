/* src/draw/hut-panel-title.c: how people call the panels.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-panel-title.h"
#include <glib/gi18n-lib.h>

static const char *const titles[HUT_SHELL_COUNT][HUT_SIDE_COUNT] = {
  [HUT_SHELL_BASE] = {
    [HUT_SIDE_FRONT] = N_ ("Base front"),
    [HUT_SIDE_BACK] = N_ ("Base back"),
    [HUT_SIDE_LEFT] = N_ ("Base left"),
    [HUT_SIDE_RIGHT] = N_ ("Base right"),
    [HUT_SIDE_BOTTOM] = N_ ("Base bottom"),
    [HUT_SIDE_TOP] = N_ ("Base top"),
  },
  [HUT_SHELL_LID] = {
    [HUT_SIDE_FRONT] = N_ ("Lid front"),
    [HUT_SIDE_BACK] = N_ ("Lid back"),
    [HUT_SIDE_LEFT] = N_ ("Lid left"),
    [HUT_SIDE_RIGHT] = N_ ("Lid right"),
    [HUT_SIDE_BOTTOM] = N_ ("Lid bottom"),
    [HUT_SIDE_TOP] = N_ ("Lid top"),
  },
};

const char *
hut_panel_id_title (HutPanelId id)
{
  g_return_val_if_fail (id.shell < HUT_SHELL_COUNT && id.side < HUT_SIDE_COUNT, "");

  return titles[id.shell][id.side];
}
