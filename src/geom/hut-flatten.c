/* src/geom/hut-flatten.c: a path as points, for what knows lines only.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-geom"
#include "config.h"
#include "geom/hut-flatten.h"
#include <math.h>

/* Longest step of an arc, rad: an eighth of a circle. Own choice: keeps the smallest hole an
 * octagon. */
#define LONGEST_STEP_RAD (G_PI / 4)
/* Most steps of one arc (count). Own choice: reached at a radius of 40 m by a full turn. */
#define MOST_STEPS 10000

/* Source: sagitta of a step a: e = r (1 - cos (a / 2)). */
static guint
count_steps (double turn_rad,
             double radius_mm)
{
  const double step_rad = 2 * acos (fmax (1 - HUT_CHORD_MM / radius_mm, -1));
  const double steps = ceil (fabs (turn_rad) / fmin (step_rad, LONGEST_STEP_RAD));

  return (guint) CLAMP (steps, 1, MOST_STEPS);
}

/* Appends the points between the ends of an arc. */
static void
append_arc (GArray *points,
            const HutSegment *arc,
            HutPoint centre,
            double radius_mm)
{
  const double turn_rad = hut_segment_turn_rad (arc);
  const guint steps = count_steps (turn_rad, radius_mm);
  const guint first = points->len;
  /* Always worked out counter-clockwise: see the promise in the header. */
  const HutPoint from = arc->bulge > 0 ? arc->start : arc->end;
  const double u = from.u - centre.u;
  const double v = from.v - centre.v;

  g_array_set_size (points, first + steps - 1);
  for (guint i = 1; i < steps; i++)
    {
      const double angle_rad = fabs (turn_rad) * i / steps;
      const guint place = arc->bulge > 0 ? i - 1 : steps - 1 - i;

      g_array_index (points, HutPoint, first + place) = (HutPoint) {
        centre.u + u * cos (angle_rad) - v * sin (angle_rad),
        centre.v + u * sin (angle_rad) + v * cos (angle_rad),
      };
    }
}

GArray *
hut_path_dup_flat (const HutPath *self,
                   GError **error)
{
  g_autoptr(GArray) points = g_array_new (FALSE, FALSE, sizeof (HutPoint));

  if (!hut_path_is_finite (self))
    {
      g_set_error_literal (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID,
                           "an outline has a coordinate or bulge that is not finite");
      return NULL;
    }
  for (guint i = 0; i < hut_path_get_count (self); i++)
    {
      const HutSegment segment = hut_path_get_segment (self, i);
      HutPoint centre;
      double radius_mm;

      g_array_append_val (points, segment.start);
      if (segment.bulge == 0)
        continue;
      if (!hut_segment_get_circle (&segment, &centre, &radius_mm))
        {
          g_autofree char *place = hut_point_dup_text (segment.start);

          g_set_error (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_NO_CIRCLE,
                       "the arc at %s has no chord; its ends must be apart", place);
          return NULL;
        }
      append_arc (points, &segment, centre, radius_mm);
    }
  return g_steal_pointer (&points);
}
