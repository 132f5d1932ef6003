/* src/assembly/hut-placing.c: openings, windows and hardware put on their panels.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-hardware-placing.h"
#include "assembly/hut-placing.h"
#include "assembly/hut-window-screws.h"
#include "geom/hut-geos.h"
#include "geom/hut-offset.h"
#include <math.h>

/* ---- anchors -------------------------------------------------------------------------------- */

/* Where an anchor is along one axis, mm, and which way its offset runs. */
static double
anchor_mm (HutAnchorKind kind,
           double length_mm,
           double body_mm,
           double *sign)
{
  *sign = kind == HUT_ANCHOR_END ? -1.0 : 1.0;
  switch (kind)
    {
    case HUT_ANCHOR_START:
      return 0.0;
    case HUT_ANCHOR_CENTRE:
      return length_mm / 2.0;
    case HUT_ANCHOR_END:
      return length_mm;
    default:
      return body_mm;
    }
}

typedef struct
{
  double u_mm, v_mm, u_sign, v_sign;
} Anchors;

static gboolean
find_anchors (const HutAssembly *self,
              const HutPosition *position,
              Anchors *anchors)
{
  const HutPanel *panel = hut_assembly_get_panel (self, position->panel);
  HutPoint middle = { 0, 0 };

  if (panel == NULL)
    return FALSE;
  if (position->u_anchor == HUT_ANCHOR_BODY || position->v_anchor == HUT_ANCHOR_BODY)
    {
      const HutBody *body
          = position->body != NULL ? hut_design_get_body (self->design, position->body) : NULL;
      HutBox3 box;
      HutRect shadow;

      if (body == NULL)
        return FALSE;
      box = hut_box3_shift (&body->box, self->machine_at);
      shadow = hut_frame3_shadow (&panel->frame, &box);
      middle = (HutPoint) { (shadow.u0 + shadow.u1) / 2.0, (shadow.v0 + shadow.v1) / 2.0 };
    }
  anchors->u_mm = anchor_mm (position->u_anchor, panel->width_mm, middle.u, &anchors->u_sign);
  anchors->v_mm = anchor_mm (position->v_anchor, panel->height_mm, middle.v, &anchors->v_sign);
  return TRUE;
}

gboolean
hut_assembly_locate (const HutAssembly *self,
                     const HutPosition *position,
                     HutPoint *middle)
{
  Anchors anchors;

  if (!find_anchors (self, position, &anchors))
    return FALSE;
  *middle = (HutPoint) { hut_snap_mm (anchors.u_mm + anchors.u_sign * position->u_offset_mm),
                         hut_snap_mm (anchors.v_mm + anchors.v_sign * position->v_offset_mm) };
  return TRUE;
}

gboolean
hut_assembly_position_for (const HutAssembly *self,
                           HutPoint hole_at,
                           HutPosition *position)
{
  Anchors anchors;

  if (!find_anchors (self, position, &anchors))
    return FALSE;
  position->u_offset_mm = hut_snap_mm ((hole_at.u - anchors.u_mm) * anchors.u_sign);
  position->v_offset_mm = hut_snap_mm ((hole_at.v - anchors.v_mm) * anchors.v_sign);
  return TRUE;
}

/* ---- holes ---------------------------------------------------------------------------------- */

void
hut_placing_add_trouble (HutAssembly *self,
                         HutTroubleKind kind,
                         HutPanelId panel,
                         const char *item)
{
  const HutTrouble trouble = { .kind = kind, .panel = panel, .item = item };

  g_array_append_val (self->troubles, trouble);
}

static HutRect
paths_bounds (const GPtrArray *paths)
{
  HutRect bounds = { 0, 0, -1, -1 };

  for (guint i = 0; i < paths->len; i++)
    {
      const HutRect one = hut_path_bounds (g_ptr_array_index (paths, i));

      bounds = i == 0 ? one
                      : (HutRect) { MIN (bounds.u0, one.u0), MIN (bounds.v0, one.v0),
                                   MAX (bounds.u1, one.u1), MAX (bounds.v1, one.v1) };
    }
  return bounds;
}

static gboolean
rects_apart (HutRect a,
             HutRect b)
{
  return a.u1 < b.u0 || b.u1 < a.u0 || a.v1 < b.v0 || b.v1 < a.v0;
}

/* A hole with the guard round it; NULL when it is too odd to be cut. */
static HutRegion *
guarded (const HutPath *hole)
{
  g_autoptr(HutRegion) plain = hut_region_new (hut_path_copy (hole));

  return hut_region_dup_offset (plain, &(HutOffset) { HUT_HOLE_GUARD_MM, HUT_HOLE_GUARD_MM }, NULL);
}

/* Whether the hole, guard and all, lies in the panel's outline and meets none of its holes. The
 * error of a GEOS call counts as "no": then the hole is not cut and a finding says so. */
static gboolean
hole_is_free (const HutPanel *panel,
              HutRect clear_inside,
              const HutPath *hole)
{
  g_autoptr(HutRegion) grown = guarded (hole);
  HutRect bounds;

  if (grown == NULL)
    return FALSE;
  bounds = hut_region_bounds (grown);
  if (bounds.u0 < clear_inside.u0 || bounds.v0 < clear_inside.v0 || bounds.u1 > clear_inside.u1
      || bounds.v1 > clear_inside.v1)
    {
      g_autoptr(HutRegion) outline = hut_region_new (hut_path_copy (panel->region->outer));
      const double outside_mm2 = hut_geos_op_area_mm2 (grown, outline, HUT_GEOS_DIFFERENCE, NULL);

      if (outside_mm2 < 0.0 || outside_mm2 > HUT_GRID_MM * HUT_GRID_MM)
        return FALSE;
    }
  for (guint i = 0; i < panel->region->holes->len; i++)
    {
      const HutPath *other = g_ptr_array_index (panel->region->holes, i);
      g_autoptr(HutRegion) region = NULL;

      if (rects_apart (bounds, hut_path_bounds (other)))
        continue;
      region = hut_region_new (hut_path_copy (other));
      if (hut_geos_distance_mm (grown, region, NULL) <= 0.0)
        return FALSE;
    }
  return TRUE;
}

/* The part of the panel that no finger can reach into. */
static HutRect
clear_inside (const HutPanel *panel)
{
  const HutEdgeJoint *edges = panel->edges;

  return (HutRect) { edges[HUT_EDGE_LEFT].depth_mm, edges[HUT_EDGE_BOTTOM].depth_mm,
                    panel->width_mm - edges[HUT_EDGE_RIGHT].depth_mm,
                    panel->height_mm - edges[HUT_EDGE_TOP].depth_mm };
}

/* Cuts all paths of a hole or none of them. */
static gboolean
cut_hole (HutPanel *panel,
          const GPtrArray *paths)
{
  const guint before = panel->region->holes->len;
  const HutRect inside = clear_inside (panel);

  for (guint i = 0; i < paths->len; i++)
    {
      const HutPath *path = g_ptr_array_index (paths, i);

      if (!hole_is_free (panel, inside, path))
        {
          g_ptr_array_set_size (panel->region->holes, (int) before);
          return FALSE;
        }
      hut_region_take_hole (panel->region, hut_path_copy (path));
    }
  return paths->len > 0;
}

HutPath *
hut_placing_dup_on_grid (const HutPath *path,
                         const HutPlacement *placement)
{
  HutPath *placed = hut_path_dup_placed (path, placement);

  hut_path_snap (placed);
  return placed;
}

const HutPlacedHole *
hut_placing_take_hole (HutAssembly *self,
                       HutHoleSource source,
                       const char *item,
                       guint panel,
                       HutPoint middle,
                       GPtrArray *paths)
{
  HutPanel *plate = g_ptr_array_index (self->panels, panel);
  HutPlacedHole *hole = g_new0 (HutPlacedHole, 1);

  hole->source = source;
  hole->item = item;
  hole->panel = panel;
  hole->centre = middle;
  hole->paths = paths;
  hole->bounds
      = paths->len > 0 ? paths_bounds (paths)
                       : (HutRect) { middle.u, middle.v, middle.u, middle.v };
  hole->cut = cut_hole (plate, paths);
  g_ptr_array_add (self->holes, hole);
  if (!hole->cut)
    hut_placing_add_trouble (self, HUT_TROUBLE_HOLE_OUTSIDE, plate->id, item);
  return hole;
}

/* Puts paths (about their own middle; taken) on a panel. Returns the placed hole or NULL. */
static const HutPlacedHole *
place (HutAssembly *self,
       HutHoleSource source,
       const char *item,
       const HutPosition *at,
       GPtrArray *paths)
{
  g_autoptr(GPtrArray) own = paths;
  GPtrArray *placed;
  const int panel_index = hut_assembly_find_panel (self, at->panel);
  HutPlacement shift = { 0 };

  if (panel_index < 0)
    {
      hut_placing_add_trouble (self, HUT_TROUBLE_PANEL_UNKNOWN, at->panel, item);
      return NULL;
    }
  if (!hut_assembly_locate (self, at, &shift.shift))
    {
      hut_placing_add_trouble (self, HUT_TROUBLE_ANCHOR, at->panel, item);
      return NULL;
    }
  placed = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_path_free);
  for (guint i = 0; i < own->len; i++)
    g_ptr_array_add (placed, hut_placing_dup_on_grid (g_ptr_array_index (own, i), &shift));
  return hut_placing_take_hole (self, source, item, (guint) panel_index, shift.shift, placed);
}

/* ---- windows -------------------------------------------------------------------------------- */

static HutPath *
window_rect (const HutWindow *window,
             HutPoint middle,
             double grow_mm,
             double radius_mm)
{
  const double half_width_mm = hut_snap_mm (window->width_mm / 2.0 + grow_mm);
  const double half_height_mm = hut_snap_mm (window->height_mm / 2.0 + grow_mm);
  g_autoptr (HutPath) path = hut_path_new_rect (
      (HutRect) { -half_width_mm, -half_height_mm, half_width_mm, half_height_mm },
      radius_mm);

  return hut_placing_dup_on_grid (path, &(HutPlacement) { .shift = middle });
}

/* A frame that is screwed reaches past the glazing, which lies between its screws. */
static HutRegion *
dup_plate_region (const HutDesign *design,
                  const HutPlacedHole *hole,
                  const HutWindow *window,
                  gboolean glazing)
{
  const HutWindowScrews screws = hut_window_screws_find (design, window);
  g_autoptr(GPtrArray) paths = NULL;
  HutRegion *region;

  if (glazing)
    return hut_region_new (
        window_rect (window, hole->centre, window->overlap_mm, window->radius_mm));
  /* The screws in its corners want the wood there. */
  region = hut_region_new (window_rect (
      window, hole->centre, window->overlap_mm + screws.rim_mm,
      screws.count > 0 ? MIN (window->radius_mm, screws.rim_mm / 2.0) : window->radius_mm));
  hut_region_take_hole (region, window_rect (window, hole->centre, 0.0, window->radius_mm));
  paths = hut_window_screws_dup_paths (design, window);
  for (guint i = 0; i < paths->len; i++)
    hut_region_take_hole (
        region, hut_placing_dup_on_grid (g_ptr_array_index (paths, i),
                                         &(HutPlacement) { .shift = hole->centre }));
  return region;
}

static void
add_plate (HutAssembly *self,
           const HutPlacedHole *hole,
           const HutWindow *window,
           HutSolidKind kind,
           double depth_mm)
{
  const gboolean glazing = kind == HUT_SOLID_GLAZING;
  const HutStock *stock
      = hut_design_get_stock (self->design, glazing ? window->glazing_stock : window->frame_stock);
  HutPlate *plate;

  if (stock == NULL)
    {
      hut_placing_add_trouble (self, HUT_TROUBLE_STOCK_MISSING, window->at.panel, window->id);
      return;
    }
  plate = g_new0 (HutPlate, 1);
  plate->kind = kind;
  plate->item = window->id;
  plate->window = window;
  plate->stock = stock;
  plate->panel = hole->panel;
  plate->depth0_mm = depth_mm;
  plate->depth1_mm = hut_snap_mm (depth_mm + hut_stock_mean_mm (stock));
  plate->bought = glazing && window->glazing_bought;
  plate->region = dup_plate_region (self->design, hole, window, glazing);
  g_ptr_array_add (self->plates, plate);
}

static void
place_window (HutAssembly *self,
              const HutWindow *window)
{
  GPtrArray *paths = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_path_free);
  const HutPlacedHole *hole;
  const HutPanel *panel;
  const HutStock *glazing = hut_design_get_stock (self->design, window->glazing_stock);

  g_ptr_array_add (paths, window_rect (window, (HutPoint) { 0, 0 }, 0.0, window->radius_mm));
  hole = place (self, HUT_HOLE_WINDOW, window->id, &window->at, paths);
  if (hole == NULL || !hole->cut || window->overlap_mm <= 0.0)
    return;
  panel = g_ptr_array_index (self->panels, hole->panel);
  if (window->screw_mm > 0.0)
    place (self, HUT_HOLE_SCREWS, window->id, &window->at,
           hut_window_screws_dup_paths (self->design, window));
  add_plate (self, hole, window, HUT_SOLID_GLAZING, panel->thickness_mm);
  add_plate (
      self, hole, window, HUT_SOLID_FRAME,
      hut_snap_mm (panel->thickness_mm + (glazing != NULL ? hut_stock_mean_mm (glazing) : 0.0)));
}

void
hut_placing_run (HutAssembly *assembly)
{
  const HutDesign *design = assembly->design;

  for (guint i = 0; i < design->windows->len; i++)
    place_window (assembly, g_ptr_array_index (design->windows, i));
  for (guint i = 0; i < design->openings->len; i++)
    {
      const HutOpening *opening = g_ptr_array_index (design->openings, i);

      place (assembly, HUT_HOLE_OPENING, opening->id, &opening->at,
             hut_opening_dup_paths (opening));
    }
  for (guint i = 0; i < design->hardware->len; i++)
    hut_hardware_place (assembly, g_ptr_array_index (design->hardware, i));
}

void
hut_placed_hole_free (HutPlacedHole *self)
{
  if (self == NULL)
    return;
  g_clear_pointer (&self->paths, g_ptr_array_unref);
  g_free (self);
}

void
hut_plate_free (HutPlate *self)
{
  if (self == NULL)
    return;
  hut_region_free (self->region);
  g_free (self);
}
