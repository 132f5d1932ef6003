/* src/checks/hut-hardware-room.c: what a piece of hardware must keep off, and where else it can be.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-free-move.h"
#include "checks/hut-hardware-room.h"
#include "checks/hut-hardware-rule.h"
#include "checks/hut-other-panel.h"

double
hut_room_gap_mm (const HutBox3 *a,
                 const HutBox3 *b)
{
  const double overlap_mm = hut_box3_overlap_mm (a, b);

  return overlap_mm > 0.0 ? -overlap_mm : hut_box3_distance_mm (a, b);
}

gboolean
hut_room_minds_body (const HutAssembly *assembly,
                     const HutSolid *own,
                     const HutBody *body,
                     double *must_mm)
{
  const HutPanel *panel = hut_check_panel (assembly, own->panel);

  *must_mm = 0.0;
  if (own->kind == HUT_SOLID_LEADS)
    return body->kind != HUT_BODY_KEEP_OUT;
  *must_mm = MAX (0.0, hut_machine_clearance_mm (&assembly->design->machine, panel->id.side));
  return TRUE;
}

/* The item of the hardware that a solid belongs to; NULL for others. */
static const HutItem *
item_of (const HutAssembly *assembly,
         const HutSolid *solid)
{
  const HutHardware *hardware = solid->item != NULL
                                    ? hut_design_get_hardware (assembly->design, solid->item)
                                    : NULL;

  return hardware != NULL ? hut_design_get_hardware_item (assembly->design, hardware) : NULL;
}

gboolean
hut_room_minds_solid (const HutAssembly *assembly,
                      const HutSolid *own,
                      const HutSolid *other)
{
  const HutItem *item = item_of (assembly, own);

  if (g_strcmp0 (own->item, other->item) == 0)
    return FALSE;
  if (other->kind == HUT_SOLID_PANEL)
    /* What joins base and lid lies over both of its panels. */
    return other->panel != own->panel && item != NULL && item->span == HUT_SPAN_PANEL;
  return own->kind != HUT_SOLID_LEADS || other->kind != HUT_SOLID_LEADS;
}

/* ---- where it has room ----------------------------------------------------------------------- */

gboolean
hut_hardware_room_find_move (const HutChecking *self,
                             const HutPlacedHardware *placed,
                             HutPoint *by)
{
  g_autoptr(GArray) rules = NULL;

  if (placed->item->span != HUT_SPAN_PANEL)
    return FALSE;
  rules = hut_hardware_rules_new (self, placed);
  return hut_free_move_find (rules, by);
}

gboolean
hut_hardware_room_other_face (const HutChecking *self,
                              const HutPlacedHardware *placed)
{
  const gboolean to_inside = placed->face == HUT_FACE_OUTSIDE;
  HutPlacedHardware as = *placed;
  g_autoptr(GArray) rules = NULL;

  if (placed->item->span != HUT_SPAN_PANEL
      || !(to_inside ? placed->item->from_inside : placed->item->from_outside))
    return FALSE;
  as.face = to_inside ? HUT_FACE_INSIDE : HUT_FACE_OUTSIDE;
  as.placement.mirrored = to_inside;
  rules = hut_hardware_rules_new (self, &as);
  return hut_free_move_is_allowed (rules, (HutPoint) { 0, 0 });
}

const HutStock *
hut_hardware_room_plate_stock (const HutAssembly *assembly,
                               const HutItem *item,
                               double web_mm)
{
  const GPtrArray *stocks = assembly->design->stocks;
  const HutStock *best = NULL;

  for (guint i = 0; i < stocks->len; i++)
    {
      const HutStock *stock = g_ptr_array_index (stocks, i);

      if (hut_stock_min_mm (stock) >= item->thickness_min_mm
          && (item->thickness_max_mm <= 0.0 || hut_stock_max_mm (stock) <= item->thickness_max_mm)
          && stock->smallest_web_mm <= web_mm
          && (best == NULL || hut_stock_mean_mm (stock) > hut_stock_mean_mm (best)))
        best = stock;
    }
  return best;
}

/* ---- fixes ---------------------------------------------------------------------------------- */

void
hut_finding_set_fix (HutFinding *self,
                     HutFixKind kind,
                     const HutPlacedHardware *placed,
                     double value_mm)
{
  hut_fix_clear (&self->fix);
  self->fix = (HutFix) {
    .kind = kind, .item = g_strdup (placed->hardware->id), .value_mm = value_mm
  };
}

void
hut_finding_set_move_fix (HutFinding *self,
                          const HutChecking *checking,
                          const HutPlacedHardware *placed)
{
  HutPoint by;

  if (!hut_hardware_room_find_move (checking, placed, &by) || (by.u == 0.0 && by.v == 0.0))
    return;
  hut_finding_set_fix (self, HUT_FIX_MOVE, placed, 0.0);
  self->fix.du_mm = by.u;
  self->fix.dv_mm = by.v;
}

void
hut_finding_set_place_fix (HutFinding *self,
                           const HutChecking *checking,
                           const HutPlacedHardware *placed)
{
  HutPanelId panel;
  HutPoint at;

  hut_finding_set_move_fix (self, checking, placed);
  if (self->fix.kind != HUT_FIX_NONE || !hut_other_panel_find (checking, placed, &panel, &at))
    return;
  hut_finding_set_fix (self, HUT_FIX_PANEL, placed, 0.0);
  self->fix.panel = panel;
  self->fix.du_mm = at.u;
  self->fix.dv_mm = at.v;
}

void
hut_finding_set_room_fix (HutFinding *self,
                          const HutChecking *checking,
                          const HutPlacedHardware *placed)
{
  if (hut_hardware_room_other_face (checking, placed))
    hut_finding_set_fix (self, HUT_FIX_FACE, placed, 0.0);
  else
    hut_finding_set_place_fix (self, checking, placed);
}

void
hut_finding_set_plate_fix (HutFinding *self,
                           const HutAssembly *assembly,
                           const HutPlacedHardware *placed,
                           double web_mm)
{
  const HutStock *stock
      = placed->item->span == HUT_SPAN_PANEL
            ? hut_hardware_room_plate_stock (assembly, placed->item, web_mm)
            : NULL;

  if (stock == NULL)
    return;
  hut_finding_set_fix (self, HUT_FIX_PLATE, placed, 0.0);
  self->fix.stock = g_strdup (stock->id);
}
