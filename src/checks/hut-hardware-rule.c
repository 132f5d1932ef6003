/* src/checks/hut-hardware-rule.c: what a piece of hardware must keep to, as rules for a move.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A move is looked for among rectangles on the panel: what stands in the same depth as a body of
 * the hardware becomes the shadow that this body must not enter. Shadows are grown by the wanted
 * distance on all sides, so a corner is kept a little further off than it must. */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-hardware-rule.h"
#include "assembly/hut-face-plate.h"
#include "assembly/hut-fastener.h"
#include "assembly/hut-hardware-placing.h"
#include "assembly/hut-pocket.h"
#include "checks/hut-check-fastener.h"
#include "checks/hut-check-hole.h"
#include "checks/hut-free-move.h"
#include "checks/hut-hardware-room.h"

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
  g_autoptr(GArray) fasteners = g_array_new (FALSE, TRUE, sizeof (HutFastener));

  hut_fasteners_append (self->assembly, self->parts, placed, fasteners);
  for (guint i = 0; i < fasteners->len; i++)
    {
      const HutFastener *fastener = &g_array_index (fasteners, HutFastener, i);

      add_rule (rules, square_about (fastener->at, 0.0), hut_fastener_room (fastener, panel), TRUE);
      add_nut_rules (self, fastener, rules);
    }
}

static double
plate_hole_mm (const HutHardware *hardware)
{
  const HutScrew *screw = hut_screw_get (HUT_PLATE_THREAD_MM);

  return screw != NULL ? screw->hole_mm[hardware->hole_class] : 0.0;
}

/* The face plate as it lies on this leaf's panel and face, which need not be where it lies now. */
static void
append_plate (const HutChecking *self,
              const HutPlacedHardware *placed,
              const HutPanel *panel,
              GArray *solids,
              HutRect *rect)
{
  const HutPlate *plate = g_ptr_array_index (self->assembly->plates, placed->plate);
  const double sheet_mm = plate->depth1_mm - plate->depth0_mm;
  const double outer_mm = placed->face == HUT_FACE_OUTSIDE ? sheet_mm : -panel->thickness_mm;
  HutSolid solid = { .kind = HUT_SOLID_FACE_PLATE,
                     .shell = panel->id.shell,
                     .panel = placed->panel,
                     .item = placed->hardware->id };
  g_autoptr(HutPath) outline = NULL, on_panel = NULL;
  HutFacePlate shape;

  hut_face_plate_find (placed->item, &shape);
  outline = hut_face_plate_dup_outline (&shape);
  on_panel = hut_path_dup_placed (outline, &placed->placement);
  *rect = hut_path_bounds (on_panel);
  solid.box = hut_frame3_box (&panel->frame, *rect, outer_mm - sheet_mm, outer_mm);
  g_array_append_val (solids, solid);
}

GArray *
hut_hardware_rules_new (const HutChecking *self,
                        const HutPlacedHardware *placed)
{
  const HutPanel *panel = hut_check_panel (self->assembly, placed->panel);
  g_autoptr(GArray) own_solids = g_array_new (FALSE, TRUE, sizeof (HutSolid));
  GArray *rules = g_array_new (FALSE, FALSE, sizeof (HutMoveRule));
  HutRect holes = hut_hardware_cut_bounds (placed);

  if (placed->plate >= 0)
    {
      HutRect rect;

      append_plate (self, placed, panel, own_solids, &rect);
      holes = grown (rect, plate_hole_mm (placed->hardware) / 2.0 - HUT_PLATE_SCREW_MM);
      add_rule (rules, rect, (HutRect) { 0, 0, panel->width_mm, panel->height_mm }, TRUE);
    }
  hut_hardware_append_solids (self->assembly, placed, own_solids);
  add_hole_rules (self, placed, panel, holes, rules);
  add_pocket_rules (self, placed, panel, rules);
  add_screw_rules (self, placed, panel, rules);
  add_body_rules (self, panel, own_solids, rules);
  add_solid_rules (self, panel, own_solids, self->assembly->solids, rules);
  add_solid_rules (self, panel, own_solids, self->parts->solids, rules);
  return rules;
}
