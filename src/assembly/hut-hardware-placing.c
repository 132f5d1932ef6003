/* src/assembly/hut-hardware-placing.c: hardware put on its panels with all that belongs to it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-face-plate.h"
#include "assembly/hut-fastener.h"
#include "assembly/hut-hardware-placing.h"
#include "assembly/hut-leaf.h"
#include "assembly/hut-placing.h"
#include "assembly/hut-pocket.h"
#include <math.h>

/* A cutout is never narrowed under this share of itself. Own choice: no number that a file can hold
 * turns it inside out. */
#define NARROWEST_RATIO 0.2

static GPtrArray *
paths_new (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) hut_path_free);
}

static void
grow_rect (HutRect *rect,
           HutRect by)
{
  if (by.u1 < by.u0)
    return;
  if (rect->u1 < rect->u0)
    *rect = by;
  *rect = (HutRect) { MIN (rect->u0, by.u0), MIN (rect->v0, by.v0), MAX (rect->u1, by.u1),
                      MAX (rect->v1, by.v1) };
}

static HutRect
place_rect (const HutPlacement *placement,
            HutRect rect)
{
  g_autoptr(HutPath) path = hut_path_new_rect (rect, 0.0);
  g_autoptr(HutPath) placed = hut_path_dup_placed (path, placement);

  return hut_path_bounds (placed);
}

/* ---- cuts ----------------------------------------------------------------------------------- */

double
hut_hardware_hole_mm (const HutHardware *hardware,
                      const HutItemCut *cut)
{
  const HutScrew *bolt
      = cut->wood_screw ? hut_screw_get (hut_bolt_for_wood_screw_mm (cut->thread_mm)) : NULL;

  if (bolt != NULL && hardware->bolted)
    return bolt->hole_mm[hardware->hole_class];
  return hut_item_cut_hole_mm (cut, hardware->hole_class);
}

HutPath *
hut_hardware_dup_cut (const HutHardware *hardware,
                      const HutItemCut *cut)
{
  HutItemCut own = *cut;

  if (cut->role == HUT_CUT_SCREW)
    return hut_item_cut_dup_path (cut, hut_hardware_hole_mm (hardware, cut));
  if (cut->role == HUT_CUT_BODY && hardware->narrow_mm > 0.0)
    {
      own.diameter_mm
          = MAX (own.diameter_mm - hardware->narrow_mm, own.diameter_mm * NARROWEST_RATIO);
      own.width_mm = MAX (own.width_mm - hardware->narrow_mm, own.width_mm * NARROWEST_RATIO);
      own.height_mm = MAX (own.height_mm - hardware->narrow_mm, own.height_mm * NARROWEST_RATIO);
    }
  return hut_item_cut_dup_path (&own, 0.0);
}

/* Outlines of a leaf's cuts, placed. */
static GPtrArray *
dup_cuts (const HutPlacedHardware *placed)
{
  GPtrArray *paths = paths_new ();

  for (guint i = 0; i < placed->item->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (placed->item->cuts, HutItemCut, i);
      g_autoptr(HutPath) path = NULL;

      if (cut->leaf != placed->leaf)
        continue;
      path = hut_hardware_dup_cut (placed->hardware, cut);
      g_ptr_array_add (paths, hut_placing_dup_on_grid (path, &placed->placement));
    }
  return paths;
}

static HutPoint
pocket_middle (const HutPlacedHardware *placed)
{
  for (guint i = 0; i < placed->item->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (placed->item->cuts, HutItemCut, i);

      if (cut->leaf == placed->leaf && cut->role == HUT_CUT_BODY)
        return hut_placement_apply (&placed->placement, cut->at);
    }
  return placed->placement.shift;
}

/* ---- face plate ----------------------------------------------------------------------------- */

static GPtrArray *
dup_plate_holes (const HutPlacedHardware *placed,
                 const HutFacePlate *shape,
                 gboolean with_opening)
{
  GPtrArray *paths = paths_new ();

  if (with_opening)
    {
      g_autoptr(HutPath) opening = hut_face_plate_dup_opening (shape);

      g_ptr_array_add (paths, hut_placing_dup_on_grid (opening, &placed->placement));
    }
  for (guint i = 0; i < HUT_PLATE_SCREWS; i++)
    {
      g_autoptr(HutPath) screw
          = hut_face_plate_dup_screw (shape, i, placed->hardware->hole_class);

      g_ptr_array_add (paths, hut_placing_dup_on_grid (screw, &placed->placement));
    }
  return paths;
}

static void
take_holes (HutRegion *region,
            GPtrArray *paths)
{
  for (guint i = 0; i < paths->len; i++)
    hut_region_take_hole (region, hut_path_copy (g_ptr_array_index (paths, i)));
}

static void
add_face_plate (HutAssembly *assembly,
                HutPlacedHardware *placed,
                const HutStock *stock)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, placed->panel);
  const double thickness_mm = hut_snap_mm (hut_stock_mean_mm (stock));
  HutPlate *plate = g_new0 (HutPlate, 1);
  g_autoptr(GPtrArray) cuts = dup_cuts (placed);
  g_autoptr(GPtrArray) screws = NULL;
  g_autoptr(HutPath) outline = NULL;
  HutFacePlate shape;

  hut_face_plate_find (placed->item, &shape);
  outline = hut_face_plate_dup_outline (&shape);
  plate->kind = HUT_SOLID_FACE_PLATE;
  plate->item = placed->hardware->id;
  plate->stock = stock;
  plate->panel = placed->panel;
  plate->depth0_mm = placed->face == HUT_FACE_OUTSIDE ? -thickness_mm : panel->thickness_mm;
  plate->depth1_mm = hut_snap_mm (plate->depth0_mm + thickness_mm);
  plate->region = hut_region_new (hut_placing_dup_on_grid (outline, &placed->placement));
  screws = dup_plate_holes (placed, &shape, FALSE);
  take_holes (plate->region, cuts);
  take_holes (plate->region, screws);
  placed->plate = (int) assembly->plates->len;
  placed->need = (HutPocketNeed) { 0 };
  hut_pocket_find_need (placed->item, stock, assembly->design->bits_mm, &placed->need);
  g_ptr_array_add (assembly->plates, plate);
  hut_placing_take_hole (assembly, HUT_HOLE_HARDWARE, placed->hardware->id, placed->panel,
                         hut_placement_apply (&placed->placement, shape.middle),
                         dup_plate_holes (placed, &shape, TRUE));
}

/* ---- one leaf ------------------------------------------------------------------------------- */

HutRect
hut_hardware_cut_bounds (const HutPlacedHardware *placed)
{
  g_autoptr(GPtrArray) paths = dup_cuts (placed);
  HutRect bounds = { 0, 0, -1, -1 };

  for (guint i = 0; i < paths->len; i++)
    grow_rect (&bounds, hut_path_bounds (g_ptr_array_index (paths, i)));
  return bounds;
}

static void
find_footprint (const HutAssembly *assembly,
                HutPlacedHardware *placed)
{
  const HutItem *item = placed->item;
  const double half_u_mm = item->flange_width_mm / 2.0, half_v_mm = item->flange_height_mm / 2.0;
  HutRect rect = { 0, 0, -1, -1 };

  if (placed->item->span == HUT_SPAN_PANEL && half_u_mm > 0.0 && half_v_mm > 0.0)
    grow_rect (&rect, place_rect (&placed->placement,
                                  (HutRect) { -half_u_mm, -half_v_mm, half_u_mm, half_v_mm }));
  for (guint i = 0; i < item->bodies->len; i++)
    {
      const HutItemBody *body = &g_array_index (item->bodies, HutItemBody, i);

      if (body->leaf == placed->leaf && body->side == HUT_ITEM_FRONT && !body->soft)
        grow_rect (&rect, place_rect (&placed->placement, body->rect));
    }
  grow_rect (&rect, hut_hardware_cut_bounds (placed));
  if (placed->plate >= 0)
    {
      const HutPlate *plate = g_ptr_array_index (assembly->plates, placed->plate);

      grow_rect (&rect, hut_region_bounds (plate->region));
    }
  if (rect.u1 < rect.u0)
    rect = (HutRect) { placed->placement.shift.u, placed->placement.shift.v,
                       placed->placement.shift.u, placed->placement.shift.v };
  placed->footprint = rect;
}

static void
place_leaf (HutAssembly *assembly,
            const HutHardware *hardware,
            const HutItem *item,
            guint leaf,
            const HutLeaf *where)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, where->panel);
  const gboolean wants_plate
      = hardware->pocket_way == HUT_POCKET_PLATE && item->span == HUT_SPAN_PANEL;
  const HutStock *plate_stock
      = wants_plate ? hut_design_get_stock (assembly->design, hardware->plate_stock) : NULL;
  HutPlacedHardware *placed = g_new0 (HutPlacedHardware, 1);

  *placed = (HutPlacedHardware) { .hardware = hardware, .item = item,           .leaf = leaf,
                                  .panel = where->panel, .face = where->face,
                                  .placement = where->placement, .plate = -1 };
  g_ptr_array_add (assembly->hardware, placed);
  if (wants_plate && plate_stock == NULL)
    hut_placing_add_trouble (assembly, HUT_TROUBLE_STOCK_MISSING, panel->id, hardware->id);
  if (plate_stock != NULL)
    add_face_plate (assembly, placed, plate_stock);
  else
    {
      g_autoptr(GPtrArray) cuts = dup_cuts (placed);

      hut_pocket_find_need (item, panel->stock, assembly->design->bits_mm, &placed->need);
      placed->bored = placed->need.needed && placed->need.bit_mm > 0.0;
      if (cuts->len > 0)
        hut_placing_take_hole (assembly, HUT_HOLE_HARDWARE, hardware->id, where->panel,
                               where->placement.shift, g_steal_pointer (&cuts));
    }
  placed->pocket_at = pocket_middle (placed);
  find_footprint (assembly, placed);
}

void
hut_hardware_place (HutAssembly *assembly,
                    const HutHardware *hardware)
{
  const HutItem *item = hut_design_get_hardware_item (assembly->design, hardware);
  const guint leaves = item != NULL && item->span != HUT_SPAN_PANEL ? 2 : 1;
  HutLeaf found[2];

  if (item == NULL)
    {
      hut_placing_add_trouble (assembly, HUT_TROUBLE_ITEM_MISSING, hardware->at.panel,
                               hardware->id);
      return;
    }
  for (guint leaf = 0; leaf < leaves; leaf++)
    {
      HutTroubleKind trouble;

      if (!hut_leaf_find (assembly, hardware, item->span, leaf, &found[leaf], &trouble))
        {
          hut_placing_add_trouble (assembly, trouble, hardware->at.panel, hardware->id);
          return;
        }
    }
  for (guint leaf = 0; leaf < leaves; leaf++)
    place_leaf (assembly, hardware, item, leaf, &found[leaf]);
}

/* ---- solids --------------------------------------------------------------------------------- */

/* Where a body stands along the panel's outward normal, mm. */
static void
body_range (const HutAssembly *assembly,
            const HutPlacedHardware *placed,
            const HutItemBody *body,
            double *w0_mm,
            double *w1_mm)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, placed->panel);
  const HutPlate *plate
      = placed->plate >= 0 ? g_ptr_array_index (assembly->plates, placed->plate) : NULL;
  const double sink_mm = placed->bored ? placed->need.depth_mm : 0.0;
  const gboolean outside = placed->face == HUT_FACE_OUTSIDE;
  const double sheet_mm = plate != NULL ? plate->depth1_mm - plate->depth0_mm : panel->thickness_mm;
  /* The faces between which the hardware holds: the panel's, or its plate's on this leaf's face. */
  const double outer_mm = plate == NULL ? 0.0 : outside ? sheet_mm : -panel->thickness_mm;
  const double inner_mm = outer_mm - sheet_mm;

  if ((body->side == HUT_ITEM_FRONT) == outside)
    {
      *w0_mm = outer_mm - (outside ? 0.0 : sink_mm);
      *w1_mm = *w0_mm + body->depth_mm;
    }
  else
    {
      *w1_mm = inner_mm + (outside ? sink_mm : 0.0);
      *w0_mm = *w1_mm - body->depth_mm;
    }
}

void
hut_hardware_append_solids (const HutAssembly *assembly,
                            const HutPlacedHardware *placed,
                            GArray *solids)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, placed->panel);

  for (guint i = 0; i < placed->item->bodies->len; i++)
    {
      const HutItemBody *body = &g_array_index (placed->item->bodies, HutItemBody, i);
      HutSolid solid = { .kind = body->soft ? HUT_SOLID_LEADS : HUT_SOLID_HARDWARE,
                         .shell = panel->id.shell,
                         .panel = placed->panel,
                         .item = placed->hardware->id };
      double w0_mm, w1_mm;

      if (body->leaf != placed->leaf || body->depth_mm <= 0.0)
        continue;
      body_range (assembly, placed, body, &w0_mm, &w1_mm);
      solid.box = hut_frame3_box (&panel->frame, place_rect (&placed->placement, body->rect), w0_mm,
                                  w1_mm);
      g_array_append_val (solids, solid);
    }
}

void
hut_hardware_add_solids (HutAssembly *assembly)
{
  for (guint i = 0; i < assembly->hardware->len; i++)
    hut_hardware_append_solids (assembly, g_ptr_array_index (assembly->hardware, i),
                                assembly->solids);
}
