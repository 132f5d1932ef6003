/* src/draw/hut-snap.c: where a thing that is moved over a panel likes to stop.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-snap.h"
#include "checks/hut-check-hole.h"
#include <math.h>

/* Best stop so far on one axis. */
typedef struct
{
  double wanted_mm, low_mm, high_mm; /* of the moved thing: middle, and its bounds about it */
  double best_mm;                    /* distance of the best stop */
  double at_mm, guide_mm;
  HutSnapKind kind;
} Axis;

/* @at_mm: where the middle would stop; @guide_mm: the line that it stops for */
static void
offer (Axis *axis,
       HutSnapKind kind,
       double at_mm,
       double guide_mm)
{
  const double off_mm = fabs (at_mm - axis->wanted_mm);

  if (off_mm >= axis->best_mm)
    return;
  axis->best_mm = off_mm;
  axis->at_mm = at_mm;
  axis->guide_mm = guide_mm;
  axis->kind = kind;
}

static void
offer_item (Axis *axis,
            double low_mm,
            double centre_mm,
            double high_mm)
{
  offer (axis, HUT_SNAP_ITEM_CENTRE, centre_mm, centre_mm);
  offer (axis, HUT_SNAP_ITEM_EDGE, low_mm - axis->low_mm, low_mm);
  offer (axis, HUT_SNAP_ITEM_EDGE, high_mm - axis->high_mm, high_mm);
}

double
hut_snap_edge_web_mm (const HutPanel *panel,
                      HutEdge edge)
{
  const HutEdgeJoint *joint = &panel->edges[edge];
  const double web_mm = panel->stock != NULL ? panel->stock->smallest_web_mm : 0.0;

  switch (joint->kind)
    {
    case HUT_JOINT_FINGERS:
      return joint->depth_mm + MAX (web_mm, panel->thickness_mm + HUT_CHECK_ROOT_ROOM_MM);
    case HUT_JOINT_BUTT:
      return joint->depth_mm + web_mm;
    case HUT_JOINT_NONE:
    default:
      return web_mm;
    }
}

static void
offer_panel (const HutPanel *panel,
             Axis *u,
             Axis *v)
{
  const double left_mm = hut_snap_edge_web_mm (panel, HUT_EDGE_LEFT);
  const double right_mm = panel->width_mm - hut_snap_edge_web_mm (panel, HUT_EDGE_RIGHT);
  const double low_mm = hut_snap_edge_web_mm (panel, HUT_EDGE_BOTTOM);
  const double high_mm = panel->height_mm - hut_snap_edge_web_mm (panel, HUT_EDGE_TOP);

  offer (u, HUT_SNAP_CENTRE_LINE, panel->width_mm / 2.0, panel->width_mm / 2.0);
  offer (v, HUT_SNAP_CENTRE_LINE, panel->height_mm / 2.0, panel->height_mm / 2.0);
  offer (u, HUT_SNAP_WEB, left_mm - u->low_mm, left_mm);
  offer (u, HUT_SNAP_WEB, right_mm - u->high_mm, right_mm);
  offer (v, HUT_SNAP_WEB, low_mm - v->low_mm, low_mm);
  offer (v, HUT_SNAP_WEB, high_mm - v->high_mm, high_mm);
}

static double
settle (const Axis *axis,
        double step_mm)
{
  if (axis->kind != HUT_SNAP_NONE)
    return hut_snap_mm (axis->at_mm);
  if (step_mm > 0.0)
    return hut_snap_mm (round (axis->wanted_mm / step_mm) * step_mm);
  return hut_snap_mm (axis->wanted_mm);
}

void
hut_snap_find (const HutAssembly *assembly,
               const HutSnapQuery *query,
               HutPoint wanted,
               HutSnap *snap)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, query->panel);
  /* A stop exactly at the end of the reach still counts. */
  const double reach_mm = query->reach_mm > 0.0 ? query->reach_mm + HUT_GRID_MM : 0.0;
  Axis u = { wanted.u, query->bounds.u0, query->bounds.u1, reach_mm, 0.0, 0.0, HUT_SNAP_NONE };
  Axis v = { wanted.v, query->bounds.v0, query->bounds.v1, reach_mm, 0.0, 0.0, HUT_SNAP_NONE };

  offer_panel (panel, &u, &v);
  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);

      if (hole->panel != query->panel || g_strcmp0 (hole->item, query->item) == 0)
        continue;
      offer_item (&u, hole->bounds.u0, hole->centre.u, hole->bounds.u1);
      offer_item (&v, hole->bounds.v0, hole->centre.v, hole->bounds.v1);
    }

  *snap = (HutSnap){
    .at = { settle (&u, query->step_mm), settle (&v, query->step_mm) },
    .u_kind = u.kind,
    .v_kind = v.kind,
  };
  if (u.kind != HUT_SNAP_NONE)
    snap->guides[snap->guide_count++] = (HutGuide){ query->panel, TRUE, u.guide_mm };
  if (v.kind != HUT_SNAP_NONE)
    snap->guides[snap->guide_count++] = (HutGuide){ query->panel, FALSE, v.guide_mm };
}

double
hut_snap_step_mm (double scale_px_per_mm)
{
  static const double steps_mm[] = { 1.0, 0.5, 0.1, 0.05, 0.01 };

  for (gsize i = 0; i < G_N_ELEMENTS (steps_mm); i++)
    if (steps_mm[i] * scale_px_per_mm <= 0.5)
      return steps_mm[i];
  return steps_mm[G_N_ELEMENTS (steps_mm) - 1];
}

static HutRect
paths_bounds (const GPtrArray *paths)
{
  HutRect all = { 0.0, 0.0, 0.0, 0.0 };

  for (guint i = 0; i < paths->len; i++)
    {
      const HutRect b = hut_path_bounds (g_ptr_array_index (paths, i));

      if (i == 0)
        all = b;
      all.u0 = MIN (all.u0, b.u0);
      all.v0 = MIN (all.v0, b.v0);
      all.u1 = MAX (all.u1, b.u1);
      all.v1 = MAX (all.v1, b.v1);
    }
  return all;
}

HutRect
hut_snap_opening_bounds (const HutOpening *opening)
{
  g_autoptr (GPtrArray) paths = hut_opening_dup_paths (opening);

  return paths_bounds (paths);
}

gboolean
hut_snap_item_bounds (const HutAssembly *assembly,
                      const char *item,
                      HutRect *bounds)
{
  const HutPlacedHole *hole = hut_assembly_get_hole (assembly, item);

  if (hole == NULL)
    return FALSE;
  *bounds = (HutRect){ hole->bounds.u0 - hole->centre.u, hole->bounds.v0 - hole->centre.v,
                       hole->bounds.u1 - hole->centre.u, hole->bounds.v1 - hole->centre.v };
  return TRUE;
}
