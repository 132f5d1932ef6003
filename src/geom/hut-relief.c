/* src/geom/hut-relief.c: room in the corners that a round tool does not reach.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-geom"
#include "config.h"
#include "geom/hut-relief.h"
#include <math.h>

/* A corner that turns less leaves next to nothing (sine). Own choice: about 17 degrees, where a
 * tool of
 * 3 mm leaves 0.02 mm. */
#define TURN_MIN_SINE 0.3
/* Turns near to going back have no corner to reach (1 + cosine). Own choice: 154 degrees. */
#define HALF_TURN_MARGIN 0.1

static HutPoint
direction_of (const HutSegment *segment)
{
  return hut_point_unit (hut_point_minus (segment->end, segment->start));
}

/* TRUE when the corner between the two needs relief; @tip is where the tool goes. */
static gboolean
find_tip (const HutSegment *in,
          const HutSegment *out,
          double radius_mm,
          HutPoint *tip)
{
  if (in->bulge != 0.0 || out->bulge != 0.0
      || hut_segment_length_mm (in) < HUT_RELIEF_EDGE_MIN_MM
      || hut_segment_length_mm (out) < HUT_RELIEF_EDGE_MIN_MM)
    return FALSE;

  const HutPoint a = direction_of (in), b = direction_of (out);
  const double cosine = hut_point_dot (a, b);

  if (hut_point_cross (a, b) > -TURN_MIN_SINE || 1.0 + cosine < HALF_TURN_MARGIN)
    return FALSE;

  /* The sum of the left normals points to the corner; its length is 2 cos (turn / 2). */
  const HutPoint sum = { -a.v - b.v, a.u + b.u };
  const double half_cosine = hypot (sum.u, sum.v) / 2.0;

  *tip = hut_point_along (out->start, hut_point_unit (sum),
                          radius_mm * (1.0 / half_cosine - 1.0));
  *tip = (HutPoint) { hut_snap_mm (tip->u), hut_snap_mm (tip->v) };
  return TRUE;
}

static HutPath *
path_dup_relieved (const HutPath *self,
                   double radius_mm)
{
  const guint count = hut_path_get_count (self);
  HutPath *relieved = hut_path_new ();

  for (guint i = 0; i < count; i++)
    {
      const HutSegment in = hut_path_get_segment (self, (i + count - 1) % count);
      const HutSegment out = hut_path_get_segment (self, i);
      HutPoint tip;

      if (find_tip (&in, &out, radius_mm, &tip))
        {
          hut_path_append (relieved, out.start, 0.0, HUT_EDGE_PLAIN);
          hut_path_append (relieved, tip, 0.0, HUT_EDGE_PLAIN);
        }
      hut_path_append (relieved, out.start, out.bulge, out.kind);
    }
  return relieved;
}

HutRegion *
hut_region_dup_relieved (const HutRegion *self,
                         double radius_mm)
{
  g_return_val_if_fail (self != NULL && radius_mm > 0.0, NULL);

  HutRegion *relieved = hut_region_new (path_dup_relieved (self->outer, radius_mm));

  for (guint i = 0; i < self->holes->len; i++)
    hut_region_take_hole (relieved,
                          path_dup_relieved (g_ptr_array_index (self->holes, i), radius_mm));
  return relieved;
}
