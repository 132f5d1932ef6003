/* src/physics/hut-moment.c: area and its moments of a path or region.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-moment.h"
#include <gsl/gsl_integration.h>

#define LINE_POINTS 3 /* exact up to degree 5 */
#define ARC_POINTS 20

/* A point of the border, and how it moves on. */
typedef struct
{
  HutPoint at, along; /* mm */
} Step;

static void
add_step (HutMoments *self,
          const Step *step,
          double weight)
{
  const double u = step->at.u, v = step->at.v;
  const double du = step->along.u * weight, dv = step->along.v * weight;

  self->area_mm2 += 0.5 * (u * dv - v * du);
  self->u_mm3 += 0.5 * u * u * dv;
  self->v_mm3 -= 0.5 * v * v * du;
  self->uu_mm4 += u * u * u * dv / 3;
  self->vv_mm4 -= v * v * v * du / 3;
  self->uv_mm4 += 0.5 * u * u * v * dv;
}

static void
add_line (HutMoments *self,
          const HutSegment *segment,
          HutPoint origin,
          const gsl_integration_glfixed_table *rule)
{
  const HutPoint start = hut_point_minus (segment->start, origin);
  const HutPoint way = hut_point_minus (segment->end, segment->start);

  for (gsize i = 0; i < LINE_POINTS; i++)
    {
      double share, weight;
      Step step;

      gsl_integration_glfixed_point (0, 1, i, &share, &weight, rule);
      step = (Step) { hut_point_along (start, way, share), way };
      add_step (self, &step, weight);
    }
}

static void
add_arc (HutMoments *self,
         const HutSegment *segment,
         HutPoint origin,
         HutPoint centre,
         const gsl_integration_glfixed_table *rule)
{
  const HutPoint arm = hut_point_minus (segment->start, centre);
  const HutPoint middle = hut_point_minus (centre, origin);
  const double turn_rad = hut_segment_turn_rad (segment);

  for (gsize i = 0; i < ARC_POINTS; i++)
    {
      double angle_rad, weight;
      Step step;

      gsl_integration_glfixed_point (0, turn_rad, i, &angle_rad, &weight, rule);
      step.along = (HutPoint) { -sin (angle_rad) * arm.u - cos (angle_rad) * arm.v,
                               cos (angle_rad) * arm.u - sin (angle_rad) * arm.v };
      step.at = (HutPoint) { middle.u + step.along.v, middle.v - step.along.u };
      add_step (self, &step, weight);
    }
}

HutMoments
hut_path_moments (const HutPath *path,
                  HutPoint origin)
{
  g_return_val_if_fail (path != NULL, (HutMoments) { NAN });

  gsl_integration_glfixed_table *line_rule = gsl_integration_glfixed_table_alloc (LINE_POINTS);
  gsl_integration_glfixed_table *arc_rule = gsl_integration_glfixed_table_alloc (ARC_POINTS);
  HutMoments moments = { 0 };

  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);
      HutPoint centre;
      double radius_mm;

      if (hut_segment_get_circle (&segment, &centre, &radius_mm))
        add_arc (&moments, &segment, origin, centre, arc_rule);
      else
        add_line (&moments, &segment, origin, line_rule);
    }
  gsl_integration_glfixed_table_free (arc_rule);
  gsl_integration_glfixed_table_free (line_rule);
  return moments;
}

HutMoments
hut_region_moments (const HutRegion *region,
                    HutPoint origin)
{
  g_return_val_if_fail (region != NULL, (HutMoments) { NAN });

  HutMoments sum = hut_path_moments (region->outer, origin);

  for (guint i = 0; i < region->holes->len; i++)
    {
      const HutMoments hole = hut_path_moments (region->holes->pdata[i], origin);

      sum.area_mm2 += hole.area_mm2;
      sum.u_mm3 += hole.u_mm3;
      sum.v_mm3 += hole.v_mm3;
      sum.uu_mm4 += hole.uu_mm4;
      sum.vv_mm4 += hole.vv_mm4;
      sum.uv_mm4 += hole.uv_mm4;
    }
  return sum;
}
