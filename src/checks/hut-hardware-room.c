/* src/checks/hut-hardware-room.c: what a piece of hardware must keep off, and where else it can be.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A move is looked for among rectangles on the panel: what stands in the same depth as a body of
 * the hardware becomes the shadow that this body must not enter. Shadows are grown by the wanted
 * distance on all sides, so a corner is kept a little further off than it must. */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "assembly/hut-face-plate.h"
#include "assembly/hut-fastener.h"
#include "assembly/hut-hardware-placing.h"
#include "assembly/hut-pocket.h"
#include "checks/hut-check-fastener.h"
#include "checks/hut-check-hole.h"
#include "checks/hut-free-move.h"
#include "checks/hut-hardware-room.h"

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

/* ---- rules for a move ----------------------------------------------------------------------- */

static HutRect
grown (HutRect rect,
       double by_mm)
{
  return (HutRect) { rect.u0 - by_mm, rect.v0 - by_mm, rect.u1 + by_mm, rect.v1 + by_mm };
}

static void
add_rule (GArray *rules,
          HutRect moving,
          HutRect fixed,
          gboolean inside)
{
  const HutMoveRule rule = { moving, fixed, inside };

  g_array_append_val (rules, rule);
}

/* What a box of the panel's frame spans across it. */
static void
find_span (const HutPanel *panel,
           const HutBox3 *box,
           double *from_mm,
           double *to_mm)
{
  const double a_mm = hut_vec3_dot (box->min, panel->frame.w),
               b_mm = hut_vec3_dot (box->max, panel->frame.w);

  *from_mm = MIN (a_mm, b_mm);
  *to_mm = MAX (a_mm, b_mm);
}

static void
add_box_rule (GArray *rules,
              const HutPanel *panel,
              const HutBox3 *own,
              const HutBox3 *other,
              double must_mm)
{
  double own_from_mm, own_to_mm, from_mm, to_mm;

  if (hut_box3_is_empty (other))
    return;
  find_span (panel, own, &own_from_mm, &own_to_mm);
  find_span (panel, other, &from_mm, &to_mm);
  if (own_to_mm > from_mm - must_mm + HUT_ROOM_TOUCH_MM
      && own_from_mm < to_mm + must_mm - HUT_ROOM_TOUCH_MM)
    add_rule (rules, hut_frame3_shadow (&panel->frame, own),
              grown (hut_frame3_shadow (&panel->frame, other), must_mm), FALSE);
}

static void
add_solid_rules (const HutChecking *self,
                 const HutPanel *panel,
                 const GArray *own_solids,
                 const GArray *solids,
                 GArray *rules)
{
  for (guint i = 0; i < own_solids->len; i++)
    for (guint k = 0; k < solids->len; k++)
      {
        const HutSolid *own = &g_array_index (own_solids, HutSolid, i);
        const HutSolid *other = &g_array_index (solids, HutSolid, k);

        if (hut_room_minds_solid (self->assembly, own, other))
          add_box_rule (rules, panel, &own->box, &other->box, 0.0);
      }
}

static void
add_body_rules (const HutChecking *self,
                const HutPanel *panel,
                const GArray *own_solids,
                GArray *rules)
{
  const GPtrArray *bodies = self->assembly->design->machine.bodies;

  for (guint i = 0; i < own_solids->len; i++)
    for (guint k = 0; k < bodies->len; k++)
      {
        const HutSolid *own = &g_array_index (own_solids, HutSolid, i);
        const HutBody *body = g_ptr_array_index (bodies, k);
        const HutBox3 box = hut_assembly_body_box (self->assembly, body);
        double must_mm;

        if (hut_room_minds_body (self->assembly, own, body, &must_mm))
          add_box_rule (rules, panel, &own->box, &box, must_mm);
      }
}

/* Where holes may be: off the finger roots, and off free edges by the smallest web. */
static HutRect
hole_room (const HutPanel *panel)
{
  double keep_mm[HUT_EDGE_COUNT];

  for (int edge = 0; edge < HUT_EDGE_COUNT; edge++)
    keep_mm[edge] = panel->edges[edge].kind == HUT_JOINT_FINGERS
                        ? panel->edges[edge].depth_mm + panel->thickness_mm
                              + HUT_CHECK_ROOT_ROOM_MM
                        : panel->edges[edge].depth_mm + panel->stock->smallest_web_mm;
  return (HutRect) { keep_mm[HUT_EDGE_LEFT], keep_mm[HUT_EDGE_BOTTOM],
                     panel->width_mm - keep_mm[HUT_EDGE_RIGHT],
                     panel->height_mm - keep_mm[HUT_EDGE_TOP] };
}

static void
add_hole_rules (const HutChecking *self,
                const HutPlacedHardware *placed,
                const HutPanel *panel,
                HutRect own,
                GArray *rules)
{
  const HutAssembly *assembly = self->assembly;

  if (own.u1 < own.u0)
    return;
  add_rule (rules, own, hole_room (panel), TRUE);
  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);

      if (hole->panel == placed->panel
          && g_strcmp0 (hole->item, placed->hardware->id) != 0)
        add_rule (rules, own, grown (hole->bounds, panel->stock->smallest_web_mm), FALSE);
    }
  for (guint i = 0; i < assembly->plates->len; i++)
    {
      const HutPlate *plate = g_ptr_array_index (assembly->plates, i);

      if (plate->panel == placed->panel && plate->window != NULL)
        add_rule (rules, grown (own, 0.0), hut_region_bounds (plate->region), FALSE);
    }
}

static HutRect
square_about (HutPoint at,
              double half_mm)
{
  return (HutRect) { at.u - half_mm, at.v - half_mm, at.u + half_mm, at.v + half_mm };
}

static void
add_pocket_rules (const HutChecking *self,
                  const HutPlacedHardware *placed,
                  const HutPanel *panel,
                  GArray *rules)
{
  const HutAssembly *assembly = self->assembly;
  const HutRect own
      = square_about (placed->pocket_at, placed->need.bit_mm / 2.0 + HUT_POCKET_KEEP_MM);
  const HutEdgeJoint *edges = panel->edges;

  if (!placed->bored)
    return;
  add_rule (rules, own,
            (HutRect) { edges[HUT_EDGE_LEFT].depth_mm, edges[HUT_EDGE_BOTTOM].depth_mm,
                        panel->width_mm - edges[HUT_EDGE_RIGHT].depth_mm,
                        panel->height_mm - edges[HUT_EDGE_TOP].depth_mm },
            TRUE);
  for (guint i = 0; i < assembly->hardware->len; i++)
    {
      const HutPlacedHardware *other = g_ptr_array_index (assembly->hardware, i);

      if (other->hardware != placed->hardware && other->panel == placed->panel && other->bored)
        add_rule (rules, own, square_about (other->pocket_at, other->need.bit_mm / 2.0), FALSE);
    }
  for (guint i = 0; i < self->parts->solids->len; i++)
    {
      const HutSolid *strap = &g_array_index (self->parts->solids, HutSolid, i);

      if (strap->panel == placed->panel)
        add_rule (rules, own, hut_frame3_shadow (&panel->frame, &strap->box), FALSE);
    }
}

/* Nuts and washers lie beside the plates of windows. */
static void
add_nut_rules (const HutChecking *self,
               const HutFastener *fastener,
               GArray *rules)
{
  const HutScrew *screw = fastener->wood ? NULL : hut_screw_get (fastener->thread_mm);
  const double reach_mm = screw != NULL ? screw->washer_outer_mm / 2.0 : fastener->hole_mm / 2.0;

  for (guint i = 0; i < self->assembly->plates->len; i++)
    {
      const HutPlate *plate = g_ptr_array_index (self->assembly->plates, i);

      if (plate->window != NULL && plate->panel == fastener->placed->panel)
        add_rule (rules, square_about (fastener->at, reach_mm), hut_region_bounds (plate->region),
                  FALSE);
    }
}

static void
add_screw_rules (const HutChecking *self,
                 const HutPlacedHardware *placed,
                 const HutPanel *panel,
                 GArray *rules)
{
  g_autoptr(GArray) fasteners = hut_fasteners_new (self->assembly, self->parts);

  for (guint i = 0; i < fasteners->len; i++)
    {
      const HutFastener *fastener = &g_array_index (fasteners, HutFastener, i);

      if (fastener->placed != placed)
        continue;
      add_rule (rules, square_about (fastener->at, 0.0), hut_fastener_room (fastener, panel), TRUE);
      add_nut_rules (self, fastener, rules);
    }
}

/* @as: the hardware as it would be; @placed as it is. */
static GArray *
rules_new (const HutChecking *self,
           const HutPlacedHardware *placed,
           const HutPlacedHardware *as)
{
  const HutPanel *panel = hut_check_panel (self->assembly, placed->panel);
  const HutPlate *plate = placed->plate >= 0
                              ? g_ptr_array_index (self->assembly->plates, placed->plate)
                              : NULL;
  g_autoptr(GArray) own_solids = g_array_new (FALSE, TRUE, sizeof (HutSolid));
  GArray *rules = g_array_new (FALSE, FALSE, sizeof (HutMoveRule));
  HutRect holes = hut_hardware_cut_bounds (as);

  if (plate != NULL)
    {
      const HutRect rect = hut_region_bounds (plate->region);

      holes = grown (rect, -HUT_PLATE_SCREW_MM);
      add_rule (rules, rect, (HutRect) { 0, 0, panel->width_mm, panel->height_mm }, TRUE);
    }
  hut_hardware_append_solids (self->assembly, as, own_solids);
  add_hole_rules (self, placed, panel, holes, rules);
  add_pocket_rules (self, as, panel, rules);
  add_screw_rules (self, placed, panel, rules);
  add_body_rules (self, panel, own_solids, rules);
  add_solid_rules (self, panel, own_solids, self->assembly->solids, rules);
  add_solid_rules (self, panel, own_solids, self->parts->solids, rules);
  return rules;
}

gboolean
hut_hardware_room_find_move (const HutChecking *self,
                             const HutPlacedHardware *placed,
                             HutPoint *by)
{
  g_autoptr(GArray) rules = NULL;

  if (placed->item->span != HUT_SPAN_PANEL)
    return FALSE;
  rules = rules_new (self, placed, placed);
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
  rules = rules_new (self, placed, &as);
  return hut_free_move_is_allowed (rules, (HutPoint) { 0, 0 });
}

const HutStock *
hut_hardware_room_plate_stock (const HutAssembly *assembly,
                               const HutItem *item)
{
  const GPtrArray *stocks = assembly->design->stocks;
  const HutStock *best = NULL;

  for (guint i = 0; i < stocks->len; i++)
    {
      const HutStock *stock = g_ptr_array_index (stocks, i);

      if (hut_stock_min_mm (stock) >= item->thickness_min_mm
          && (item->thickness_max_mm <= 0.0 || hut_stock_max_mm (stock) <= item->thickness_max_mm)
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
hut_finding_set_room_fix (HutFinding *self,
                          const HutChecking *checking,
                          const HutPlacedHardware *placed)
{
  if (hut_hardware_room_other_face (checking, placed))
    hut_finding_set_fix (self, HUT_FIX_FACE, placed, 0.0);
  else
    hut_finding_set_move_fix (self, checking, placed);
}

void
hut_finding_set_plate_fix (HutFinding *self,
                           const HutAssembly *assembly,
                           const HutPlacedHardware *placed)
{
  const HutStock *stock = placed->item->span == HUT_SPAN_PANEL
                              ? hut_hardware_room_plate_stock (assembly, placed->item)
                              : NULL;

  if (stock == NULL)
    return;
  hut_finding_set_fix (self, HUT_FIX_PLATE, placed, 0.0);
  self->fix.stock = g_strdup (stock->id);
}
