/* src/design/hut-position.c: where the middle of a thing is on its panel.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-position.h"

HutPosition
hut_position_centre_of (HutPanelId panel)
{
  return (HutPosition) {
    .panel = panel,
    .u_anchor = HUT_ANCHOR_CENTRE,
    .v_anchor = HUT_ANCHOR_CENTRE,
  };
}

HutPosition
hut_position_copy (const HutPosition *self)
{
  HutPosition copy = *self;

  copy.body = g_strdup (self->body);
  return copy;
}

void
hut_position_clear (HutPosition *self)
{
  g_clear_pointer (&self->body, g_free);
}

gboolean
hut_position_equal (const HutPosition *a,
                    const HutPosition *b)
{
  return hut_panel_id_equal (a->panel, b->panel) && a->u_anchor == b->u_anchor
         && a->v_anchor == b->v_anchor && a->u_offset_mm == b->u_offset_mm
         && a->v_offset_mm == b->v_offset_mm && g_strcmp0 (a->body, b->body) == 0;
}

static double
shift_offset_mm (double offset_mm,
                 HutAnchorKind anchor,
                 double by_mm)
{
  return hut_snap_mm (offset_mm + (anchor == HUT_ANCHOR_END ? -by_mm : by_mm));
}

void
hut_position_shift (HutPosition *self,
                    double du_mm,
                    double dv_mm)
{
  self->u_offset_mm = shift_offset_mm (self->u_offset_mm, self->u_anchor, du_mm);
  self->v_offset_mm = shift_offset_mm (self->v_offset_mm, self->v_anchor, dv_mm);
}
