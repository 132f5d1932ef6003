/* src/design/hut-baffle.c: strips along the seam.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design.h"

/* What a new baffle starts from, mm. Overlap and gap: within the usual 15 .. 25 and 1 .. 2 of a lip
 * over a seam (common practice, no source). */
#define OVERLAP_MM 15.0
#define GAP_MM 1.5
#define HOLD_MM 20.0 /* own choice: room for glue and a row of screws */

HutBaffle *
hut_baffle_new (HutSide side)
{
  HutBaffle *self = g_new0 (HutBaffle, 1);

  self->side = side;
  self->shell = HUT_SHELL_BASE;
  self->overlap_mm = OVERLAP_MM;
  self->gap_mm = GAP_MM;
  self->hold_mm = HOLD_MM;
  self->stock = g_strdup ("");
  return self;
}

HutBaffle *
hut_baffle_copy (const HutBaffle *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  HutBaffle *copy = g_memdup2 (self, sizeof *self);

  copy->stock = g_strdup (self->stock);
  return copy;
}

gboolean
hut_baffle_equal (const HutBaffle *a,
                  const HutBaffle *b)
{
  return a->side == b->side && a->shell == b->shell && a->overlap_mm == b->overlap_mm
         && a->gap_mm == b->gap_mm && a->hold_mm == b->hold_mm
         && g_strcmp0 (a->stock, b->stock) == 0;
}

void
hut_baffle_free (HutBaffle *self)
{
  if (self == NULL)
    return;
  g_free (self->stock);
  g_free (self);
}

HutBaffle *
hut_design_get_baffle (const HutDesign *self,
                       HutSide side)
{
  g_return_val_if_fail (self != NULL, NULL);

  for (guint i = 0; i < self->baffles->len; i++)
    {
      HutBaffle *baffle = g_ptr_array_index (self->baffles, i);

      if (baffle->side == side)
        return baffle;
    }
  return NULL;
}

gboolean
hut_shell_has_seam (const HutShell *self,
                    HutSide side)
{
  g_return_val_if_fail (self != NULL, FALSE);

  if ((guint) side >= HUT_SIDE_COUNT)
    return FALSE;
  if (self->lid == HUT_LID_FRONT)
    return side != HUT_SIDE_FRONT && side != HUT_SIDE_BACK
           && hut_shell_has_panel (self, (HutPanelId) { HUT_SHELL_BASE, side });
  return side != HUT_SIDE_TOP && side != HUT_SIDE_BOTTOM;
}
