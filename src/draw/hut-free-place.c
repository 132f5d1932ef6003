/* src/draw/hut-free-place.c: a place on a panel where an opening meets nothing.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-free-place.h"
#include "draw/hut-snap.h"
#include <math.h>

/* Grid of places that are tried: steps from the middle to each border, and the least step, mm. Own
 * choice: fine enough to find any gap that a hand would use, and done within a frame. */
#define STEPS_EACH_WAY 40
#define STEP_LEAST_MM 1.0

static HutRect
rect_grow (HutRect rect,
           double by_mm)
{
  return (HutRect){ rect.u0 - by_mm, rect.v0 - by_mm, rect.u1 + by_mm, rect.v1 + by_mm };
}

static gboolean
rects_meet (HutRect a,
            HutRect b)
{
  return a.u0 < b.u1 && b.u0 < a.u1 && a.v0 < b.v1 && b.v0 < a.v1;
}

/* What a hole takes up: a window has its glazing and frame behind the panel. */
static HutRect
taken_by (const HutAssembly *assembly,
          const HutPlacedHole *hole)
{
  const HutWindow *window = hole->source == HUT_HOLE_WINDOW
                                ? hut_design_get_window (assembly->design, hole->item)
                                : NULL;

  return rect_grow (hole->bounds, window != NULL ? window->overlap_mm : 0.0);
}

static gboolean
place_is_free (const HutAssembly *assembly,
               guint index,
               HutRect rect)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, index);
  const double web_mm = panel->stock != NULL ? panel->stock->smallest_web_mm : 0.0;

  if (rect.u0 < hut_snap_edge_web_mm (panel, HUT_EDGE_LEFT)
      || rect.u1 > panel->width_mm - hut_snap_edge_web_mm (panel, HUT_EDGE_RIGHT)
      || rect.v0 < hut_snap_edge_web_mm (panel, HUT_EDGE_BOTTOM)
      || rect.v1 > panel->height_mm - hut_snap_edge_web_mm (panel, HUT_EDGE_TOP))
    return FALSE;
  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);

      if (hole->panel == index && rects_meet (rect, rect_grow (taken_by (assembly, hole), web_mm)))
        return FALSE;
    }
  return TRUE;
}

gboolean
hut_free_place_find (const HutAssembly *assembly,
                     guint index,
                     HutRect bounds,
                     HutPoint *at)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, index);
  const HutPoint middle
      = { hut_snap_mm (panel->width_mm / 2.0), hut_snap_mm (panel->height_mm / 2.0) };
  const double step_u_mm = MAX (STEP_LEAST_MM, round (middle.u / STEPS_EACH_WAY));
  const double step_v_mm = MAX (STEP_LEAST_MM, round (middle.v / STEPS_EACH_WAY));
  double best_mm = INFINITY;

  *at = middle;
  for (int i = -STEPS_EACH_WAY; i <= STEPS_EACH_WAY; i++)
    for (int k = -STEPS_EACH_WAY; k <= STEPS_EACH_WAY; k++)
      {
        const HutPoint p
            = { hut_snap_mm (middle.u + i * step_u_mm), hut_snap_mm (middle.v + k * step_v_mm) };
        const double off_mm = hut_point_distance_mm (p, middle);
        const HutRect rect = { p.u + bounds.u0, p.v + bounds.v0, p.u + bounds.u1, p.v + bounds.v1 };

        if (off_mm >= best_mm || !place_is_free (assembly, index, rect))
          continue;
        best_mm = off_mm;
        *at = p;
      }
  return isfinite (best_mm);
}
