/* src/export/hut-tool-time.c: how long the tool needs for its moves.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-tool-time.h"
#include "export/hut-tool-program.h"
#include <math.h>

#define SECONDS_PER_MINUTE 60.0
/* Shorter moves take no time, mm. */
#define DUST_MM 1e-9
/* Corners that turn less than this are none (1 - sine of half their angle). */
#define STRAIGHT 1e-9

/* A move with its limits, all in mm and s. */
typedef struct
{
  double length_mm;
  double speed_mm_s;  /* its limit */
  double entry_mm_s;  /* the limit where it begins, then its speed there */
  HutVec3 first, last; /* directions, unit vectors */
  gboolean cuts;
} Leg;

static HutVec3
direction_at (const HutToolMove *move,
              gboolean at_end)
{
  const double length_mm = hut_tool_move_length_mm (move);
  const double flat_ratio = hut_segment_length_mm (&move->way) / length_mm;
  HutPoint flat = { 0, 0 }, centre;
  double radius_mm;

  if (move->way.bulge != 0.0 && hut_segment_get_circle (&move->way, &centre, &radius_mm))
    {
      flat = hut_point_left (hut_point_unit (
          hut_point_minus (at_end ? move->way.end : move->way.start, centre)));
      if (move->way.bulge < 0.0)
        flat = (HutPoint) { -flat.u, -flat.v };
    }
  else if (flat_ratio > 0.0)
    flat = hut_point_unit (hut_point_minus (move->way.end, move->way.start));
  return (HutVec3) { flat.u * flat_ratio, flat.v * flat_ratio,
                     (move->z1_mm - move->z0_mm) / length_mm };
}

static double
corner_mm_s (const Leg *in,
             const Leg *out,
             double acceleration_mm_s2)
{
  const double cosine
      = in->last.x * out->first.x + in->last.y * out->first.y + in->last.z * out->first.z;
  /* Half the angle between the legs: half of what is left of a straight one after the turn. */
  const double sine = sqrt (MAX (1.0 + cosine, 0.0) / 2.0);
  const double speed_mm_s = MIN (in->speed_mm_s, out->speed_mm_s);

  if (in->cuts != out->cuts)
    return 0.0;
  if (1.0 - sine < STRAIGHT)
    return speed_mm_s;
  return MIN (speed_mm_s, sqrt (acceleration_mm_s2 * HUT_CORNER_MM * sine / (1.0 - sine)));
}

/* (transfer full) (element-type Leg) */
static GArray *
legs_new (const GArray *moves,
          double acceleration_mm_s2)
{
  GArray *legs = g_array_sized_new (FALSE, FALSE, sizeof (Leg), moves->len);

  for (guint i = 0; i < moves->len; i++)
    {
      const HutToolMove *move = &g_array_index (moves, HutToolMove, i);
      Leg leg = { .length_mm = hut_tool_move_length_mm (move),
                  .speed_mm_s = move->speed_mm_min / SECONDS_PER_MINUTE, .cuts = move->cuts };
      HutPoint centre;
      double radius_mm;

      if (leg.length_mm < DUST_MM || !(leg.speed_mm_s > 0.0))
        continue;
      if (move->way.bulge != 0.0 && hut_segment_get_circle (&move->way, &centre, &radius_mm))
        leg.speed_mm_s = MIN (leg.speed_mm_s, sqrt (acceleration_mm_s2 * radius_mm));
      leg.first = direction_at (move, FALSE);
      leg.last = direction_at (move, TRUE);
      if (legs->len > 0)
        leg.entry_mm_s
            = corner_mm_s (&g_array_index (legs, Leg, legs->len - 1), &leg, acceleration_mm_s2);
      g_array_append_val (legs, leg);
    }
  return legs;
}

static double
leg_time_s (const Leg *leg,
            double exit_mm_s,
            double acceleration_mm_s2)
{
  const double a = acceleration_mm_s2, v0 = leg->entry_mm_s, v1 = exit_mm_s, v = leg->speed_mm_s;
  const double peak_mm_s = sqrt (a * leg->length_mm + (v0 * v0 + v1 * v1) / 2.0);
  const double ramps_mm = (2.0 * v * v - v0 * v0 - v1 * v1) / (2.0 * a);

  if (peak_mm_s <= v)
    return (2.0 * peak_mm_s - v0 - v1) / a;
  return (2.0 * v - v0 - v1) / a + (leg->length_mm - ramps_mm) / v;
}

double
hut_tool_program_time_s (const GArray *moves,
                         double acceleration_mm_s2)
{
  g_return_val_if_fail (moves != NULL && acceleration_mm_s2 > 0.0, 0.0);

  g_autoptr(GArray) legs = legs_new (moves, acceleration_mm_s2);
  double exit_mm_s = 0.0, time_s = 0.0;

  /* Slow down in time, from the end; then no faster than one can get, from the start. */
  for (guint i = legs->len; i-- > 0;)
    {
      Leg *leg = &g_array_index (legs, Leg, i);

      leg->entry_mm_s
          = MIN (leg->entry_mm_s,
                 sqrt (exit_mm_s * exit_mm_s + 2.0 * acceleration_mm_s2 * leg->length_mm));
      exit_mm_s = leg->entry_mm_s;
    }
  for (guint i = 0; i < legs->len; i++)
    {
      const Leg *leg = &g_array_index (legs, Leg, i);
      Leg *next = i + 1 < legs->len ? &g_array_index (legs, Leg, i + 1) : NULL;

      exit_mm_s = 0.0;
      if (next != NULL)
        {
          next->entry_mm_s = MIN (next->entry_mm_s,
                                  sqrt (leg->entry_mm_s * leg->entry_mm_s
                                        + 2.0 * acceleration_mm_s2 * leg->length_mm));
          exit_mm_s = next->entry_mm_s;
        }
      time_s += leg_time_s (leg, exit_mm_s, acceleration_mm_s2);
    }
  return time_s;
}
