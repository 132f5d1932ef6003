/* src/physics/hut-gap-sight.c: whether light passes a gap in a straight line.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-gap-sight.h"

/* A bounce that rounding makes miss by this share counts, ratio; own choice. */
#define ROUNDING_RATIO 1e-9
/* More bounces than this are all the same; own choice. */
#define BOUNCES_MAX 1e6

double
hut_gap_half_angle_rad (double gap_m,
                        double depth_m)
{
  return gap_m >= 0 && depth_m > 0 ? atan2 (gap_m, depth_m) : NAN;
}

double
hut_gap_view_ratio (double gap_m,
                    double depth_m)
{
  if (!(gap_m > 0) || !(depth_m >= 0))
    return NAN;

  const double deep_ratio = depth_m / gap_m;

  /* The same as sqrt (1 + x2) - x, without the loss of digits. */
  return 1 / (sqrt (1 + deep_ratio * deep_ratio) + deep_ratio);
}

gboolean
hut_corner_is_sighted (double gap1_m,
                       double gap2_m,
                       double leg1_m,
                       double leg2_m)
{
  return gap1_m * gap2_m >= leg1_m * leg2_m;
}

guint
hut_lap_bounces_count (double depth_m,
                       double gap_m,
                       double angle_rad)
{
  if (!(depth_m >= 0) || !(gap_m > 0) || !(angle_rad >= 0 && angle_rad <= G_PI_2))
    return 0;
  return (guint)MIN (depth_m * tan (angle_rad) / gap_m * (1 + ROUNDING_RATIO), BOUNCES_MAX);
}
