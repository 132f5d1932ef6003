/* src/design/hut-shell.c: panel names, and which panels and hinges a kind of enclosure has.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design.h"

static const char *const panel_names[HUT_SHELL_COUNT][HUT_SIDE_COUNT] = {
  [HUT_SHELL_BASE] = {
    [HUT_SIDE_FRONT] = "base-front",
    [HUT_SIDE_BACK] = "base-back",
    [HUT_SIDE_LEFT] = "base-left",
    [HUT_SIDE_RIGHT] = "base-right",
    [HUT_SIDE_BOTTOM] = "base-bottom",
    [HUT_SIDE_TOP] = "base-top",
  },
  [HUT_SHELL_LID] = {
    [HUT_SIDE_FRONT] = "lid-front",
    [HUT_SIDE_BACK] = "lid-back",
    [HUT_SIDE_LEFT] = "lid-left",
    [HUT_SIDE_RIGHT] = "lid-right",
    [HUT_SIDE_BOTTOM] = "lid-bottom",
    [HUT_SIDE_TOP] = "lid-top",
  },
};

gboolean
hut_panel_id_equal (HutPanelId a,
                    HutPanelId b)
{
  return a.shell == b.shell && a.side == b.side;
}

/**
 * hut_panel_id_to_string:
 * @id: both members within their enums
 *
 * Returns: (transfer none): "base-front"; static
 */
const char *
hut_panel_id_to_string (HutPanelId id)
{
  g_return_val_if_fail ((guint) id.shell < HUT_SHELL_COUNT, NULL);
  g_return_val_if_fail ((guint) id.side < HUT_SIDE_COUNT, NULL);

  return panel_names[id.shell][id.side];
}

/**
 * hut_panel_id_from_string:
 * @text: (nullable): a panel's name
 * @id: (out): untouched when there is no such panel
 *
 * "lid-bottom" is none: no lid has a bottom.
 *
 * Returns: TRUE when @text is the name of a panel that some enclosure has
 */
gboolean
hut_panel_id_from_string (const char *text,
                          HutPanelId *id)
{
  g_return_val_if_fail (id != NULL, FALSE);

  for (int shell = 0; shell < HUT_SHELL_COUNT; shell++)
    for (int side = 0; side < HUT_SIDE_COUNT; side++)
      {
        if (shell == HUT_SHELL_LID && side == HUT_SIDE_BOTTOM)
          continue;
        if (g_strcmp0 (text, panel_names[shell][side]) == 0)
          {
            *id = (HutPanelId) { (HutShellId) shell, (HutSide) side };
            return TRUE;
          }
      }
  return FALSE;
}

gboolean
hut_lid_allows_hinge (HutLidKind lid,
                      HutHinge hinge)
{
  switch (lid)
    {
    case HUT_LID_HOOD:
    case HUT_LID_TOP:
      return hinge == HUT_HINGE_BACK || hinge == HUT_HINGE_LEFT || hinge == HUT_HINGE_RIGHT;
    case HUT_LID_FRONT:
      return hinge == HUT_HINGE_LEFT || hinge == HUT_HINGE_RIGHT || hinge == HUT_HINGE_TOP;
    case HUT_LID_LIFT_OFF:
    default:
      return FALSE;
    }
}

static gboolean
base_has_side (const HutShell *self,
               HutSide side)
{
  switch (side)
    {
    case HUT_SIDE_FRONT:
      return self->lid != HUT_LID_FRONT;
    case HUT_SIDE_BOTTOM:
      return self->bottom != HUT_BOTTOM_OPEN;
    case HUT_SIDE_TOP:
      return self->lid == HUT_LID_FRONT;
    case HUT_SIDE_BACK:
    case HUT_SIDE_LEFT:
    case HUT_SIDE_RIGHT:
      return TRUE;
    case HUT_SIDE_COUNT:
    default:
      return FALSE;
    }
}

gboolean
hut_shell_has_panel (const HutShell *self,
                     HutPanelId panel)
{
  g_return_val_if_fail (self != NULL, FALSE);

  if (panel.shell == HUT_SHELL_BASE)
    return base_has_side (self, panel.side);
  if (panel.shell != HUT_SHELL_LID || (guint) panel.side >= HUT_SIDE_COUNT)
    return FALSE;

  switch (self->lid)
    {
    case HUT_LID_HOOD:
    case HUT_LID_LIFT_OFF:
      return panel.side != HUT_SIDE_BOTTOM;
    case HUT_LID_TOP:
      return panel.side == HUT_SIDE_TOP;
    case HUT_LID_FRONT:
      return panel.side == HUT_SIDE_FRONT;
    default:
      return FALSE;
    }
}
