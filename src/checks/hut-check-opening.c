/* src/checks/hut-check-opening.c: openings and windows against edges, finger roots and each
 * other. SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "assembly/hut-placing.h"
#include "checks/hut-border.h"
#include "checks/hut-check-hole.h"
#include "checks/hut-hardware-room.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* The part of a panel that no neighbour's finger takes away. */
static HutRect
solid_rect (const HutPanel *panel)
{
  const HutEdgeJoint *edges = panel->edges;

  return (HutRect) { edges[HUT_EDGE_LEFT].depth_mm, edges[HUT_EDGE_BOTTOM].depth_mm,
                    panel->width_mm - edges[HUT_EDGE_RIGHT].depth_mm,
                    panel->height_mm - edges[HUT_EDGE_TOP].depth_mm };
}

/* How far one rectangle reaches past another one, mm; < 0 by how far it stays inside. */
static double
overreach_mm (const HutRect *inner,
              const HutRect *outer)
{
  return MAX (MAX (outer->u0 - inner->u0, inner->u1 - outer->u1),
              MAX (outer->v0 - inner->v0, inner->v1 - outer->v1));
}

/* Hardware can be moved, or put on another panel. */
static void
set_fix (HutFinding *finding,
         const HutChecking *self,
         const HutCheckHole *hole)
{
  const GPtrArray *hardware = self->assembly->hardware;

  for (guint i = 0; hole->placed->source == HUT_HOLE_HARDWARE && i < hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (hardware, i);

      if (placed->panel == hole->placed->panel
          && g_strcmp0 (placed->hardware->id, hole->placed->item) == 0)
        {
          hut_finding_set_place_fix (finding, self, placed);
          return;
        }
    }
}

/* ---- outside
 * ------------------------------------------------------------------------------------ */

static gboolean
has_size (const HutPlacedHole *hole)
{
  return hole->paths->len > 0 && hole->bounds.u1 > hole->bounds.u0
         && hole->bounds.v1 > hole->bounds.v0;
}

/* @over_mm: how far it reaches past the solid part, -INFINITY when that is not what is wrong. */
static void
add_outside (HutChecking *self,
             const HutCheckHole *hole,
             double over_mm)
{
  const char *message;
  HutFinding *finding;

  if (over_mm > 0.0)
    message = N_ ("{what} reaches {is} mm past the solid part of {other}; {must} mm is allowed, "
                  "so it is not cut.");
  else if (over_mm > -HUT_HOLE_GUARD_MM)
    message = N_ (
        "{what} leaves {is} mm to the edge of {other}; with less than {must} mm it is not cut.");
  else
    message = N_ ("{what} on {other} has {is} holes that can be cut; {must} or more are needed: "
                  "check its sizes.");
  finding = hut_check_hole_add (hole, self, "opening.outside", HUT_SEVERITY_BLOCKS, message,
                                hut_panel_name (hole->panel->id));
  if (over_mm > 0.0)
    hut_finding_set_numbers (finding, over_mm, 0.0);
  else if (over_mm > -HUT_HOLE_GUARD_MM)
    hut_finding_set_numbers (finding, -over_mm, HUT_HOLE_GUARD_MM);
  else
    hut_finding_set_numbers (finding, 0.0, 1.0);
  if (has_size (hole->placed))
    hut_finding_add_place (finding, hole->panel, hole->placed->bounds);
  else
    hut_finding_add_gap (finding, hole->panel, hole->placed->centre, hole->placed->centre);
  set_fix (finding, self, hole);
}

/* ---- edge and joint
 * ------------------------------------------------------------------------------ */

static void
check_edge (HutChecking *self,
            const HutCheckHole *hole)
{
  const HutPanel *panel = hole->panel;
  const double must_mm = panel->stock->smallest_web_mm;
  const HutRect solid = solid_rect (panel);
  double limit_mm = must_mm - HUT_CHECK_TOLERANCE_MM;
  gboolean found = FALSE;
  HutFinding *finding;
  HutWeb gap;

  for (guint i = 0; i < hole->placed->paths->len; i++)
    /* The outline lies outside of the solid rectangle, so what is deep inside of that needs no
     * look. */
    if (overreach_mm (&hole->bounds[i], &solid) > -limit_mm
        && hut_border_find_gap (g_ptr_array_index (hole->placed->paths, i), panel->region->outer,
                                limit_mm, &gap))
      {
        limit_mm = gap.width_mm;
        found = TRUE;
      }
  if (!found)
    return;
  finding = hut_check_hole_add (
      hole, self, "opening.edge", HUT_SEVERITY_WARNS,
      N_ ("{what} leaves {is} mm to the edge of {other}; its stock holds {must} mm."),
      hut_panel_name (panel->id));
  hut_finding_set_numbers (finding, gap.width_mm, must_mm);
  hut_finding_add_gap (finding, panel, gap.a, gap.b);
  set_fix (finding, self, hole);
}

/* Distance of the hole to the line of the finger roots of one edge, mm, and the strip between. */
static double
root_distance_mm (const HutRect *bounds,
                  const HutRect *solid,
                  HutEdge edge,
                  HutRect *strip)
{
  *strip = *bounds;
  switch (edge)
    {
    case HUT_EDGE_BOTTOM:
      strip->v0 = solid->v0;
      strip->v1 = bounds->v0;
      return bounds->v0 - solid->v0;
    case HUT_EDGE_TOP:
      strip->v0 = bounds->v1;
      strip->v1 = solid->v1;
      return solid->v1 - bounds->v1;
    case HUT_EDGE_LEFT:
      strip->u0 = solid->u0;
      strip->u1 = bounds->u0;
      return bounds->u0 - solid->u0;
    default:
      strip->u0 = bounds->u1;
      strip->u1 = solid->u1;
      return solid->u1 - bounds->u1;
    }
}

/* One finding for all edges, with the least of the distances. */
static void
check_roots (HutChecking *self,
             const HutCheckHole *hole)
{
  const HutPanel *panel = hole->panel;
  const double must_mm = panel->thickness_mm + HUT_CHECK_ROOT_ROOM_MM;
  const HutRect solid = solid_rect (panel);
  HutFinding *finding = NULL;

  for (int edge = 0; edge < HUT_EDGE_COUNT; edge++)
    {
      HutRect strip;
      const double is_mm
          = root_distance_mm (&hole->placed->bounds, &solid, (HutEdge)edge, &strip);

      if (panel->edges[edge].kind != HUT_JOINT_FINGERS
          || is_mm >= must_mm - HUT_CHECK_TOLERANCE_MM)
        continue;
      if (finding == NULL)
        {
          finding = hut_check_hole_add (
              hole, self, "opening.joint", HUT_SEVERITY_WARNS,
              N_ ("{what} is {is} mm from the finger roots of {other}; {must} mm are usual."),
              hut_panel_name (panel->id));
          hut_finding_set_numbers (finding, is_mm, must_mm);
        }
      finding->is = MAX (0.0, MIN (finding->is, is_mm));
      /* A hole in the middle of a finger lies beyond the roots: then the strip is what it takes
       * of it. */
      hut_finding_add_place (finding, panel,
                             (HutRect) { MIN (strip.u0, strip.u1), MIN (strip.v0, strip.v1),
                                        MAX (strip.u0, strip.u1), MAX (strip.v0, strip.v1) });
    }
  if (finding != NULL)
    set_fix (finding, self, hole);
}

/* ---- overlap
 * ------------------------------------------------------------------------------------- */

/* Least material between two holes; of a hole with itself: between those of its pattern. */
static gboolean
find_overlap (const HutCheckHole *hole,
              const HutCheckHole *other,
              double limit_mm,
              HutWeb *gap)
{
  const GPtrArray *paths = hole->placed->paths, *others = other->placed->paths;
  gboolean found = FALSE;

  for (guint i = 0; i < paths->len; i++)
    for (guint k = hole == other ? i + 1 : 0; k < others->len; k++)
      if (hut_check_rects_apart_mm (&hole->bounds[i], &other->bounds[k]) < limit_mm
          && hut_check_material_between (g_ptr_array_index (paths, i),
                                         g_ptr_array_index (others, k), limit_mm, gap))
        {
          limit_mm = gap->width_mm;
          found = TRUE;
        }
  return found;
}

/* TRUE when they run into each other, so that the later one could not be cut. */
static gboolean
check_overlap (HutChecking *self,
               const HutCheckHole *hole,
               const HutCheckHole *other)
{
  const double must_mm = hole->panel->stock->smallest_web_mm;
  const double limit_mm = MAX (must_mm - HUT_CHECK_TOLERANCE_MM, HUT_HOLE_GUARD_MM);
  gboolean runs_into;
  HutFinding *finding;
  HutWeb gap;

  if (!find_overlap (hole, other, limit_mm, &gap))
    return FALSE;
  runs_into = gap.width_mm <= HUT_HOLE_GUARD_MM;
  finding = hut_check_hole_add (
      hole, self, "opening.overlap", runs_into ? HUT_SEVERITY_BLOCKS : HUT_SEVERITY_WARNS,
      runs_into
          ? N_ ("{what} runs into {other}: {is} mm are left between; the stock holds {must} mm.")
          : N_ ("{what} and {other} leave {is} mm between them; the stock holds {must} mm."),
      hut_check_hole_name (other, self->assembly));
  hut_finding_set_numbers (finding, gap.width_mm, must_mm);
  hut_finding_add_gap (finding, hole->panel, gap.a, gap.b);
  set_fix (finding, self, hole);
  return runs_into;
}

/* ---- all
 * ----------------------------------------------------------------------------------------- */

/* Each pair is looked at once. @runs_into: one per hole. */
static void
check_overlaps (HutChecking *self,
                const GPtrArray *holes,
                gboolean *runs_into)
{
  for (guint i = 0; i < holes->len; i++)
    for (guint k = i; k < holes->len; k++)
      {
        const HutCheckHole *hole = g_ptr_array_index (holes, i),
                           *other = g_ptr_array_index (holes, k);

        /* Webs within one piece of hardware are the fastener checks' business. */
        if (hole == other && hole->placed->source == HUT_HOLE_HARDWARE)
          continue;
        if (hole->panel == other->panel && check_overlap (self, hole, other))
          runs_into[i] = runs_into[k] = TRUE;
      }
}

void
hut_check_opening (HutChecking *self)
{
  g_autoptr(GPtrArray) holes = hut_check_holes_new (self->assembly);
  g_autofree gboolean *runs_into = g_new0 (gboolean, MAX (holes->len, 1));

  check_overlaps (self, holes, runs_into);
  for (guint i = 0; i < holes->len; i++)
    {
      const HutCheckHole *hole = g_ptr_array_index (holes, i);
      const HutRect solid = solid_rect (hole->panel);
      const double over_mm = overreach_mm (&hole->placed->bounds, &solid);

      if (hole->placed->cut)
        {
          check_edge (self, hole);
          check_roots (self, hole);
        }
      else if (!has_size (hole->placed))
        add_outside (self, hole, -INFINITY);
      else if (over_mm > -HUT_HOLE_GUARD_MM || !runs_into[i])
        add_outside (self, hole, over_mm);
    }
}
