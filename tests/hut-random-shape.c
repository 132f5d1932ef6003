/* tests/hut-random-shape.c: random valid regions for the property tests of the geometry.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-random-shape.h"
#include "geom/hut-geos.h"
#include <math.h>

#define QUARTER 0.41421356237309503
#define MOST_HOLES 6

static HutPoint
on_grid (double u_mm,
         double v_mm)
{
  return (HutPoint) { hut_snap_mm (u_mm), hut_snap_mm (v_mm) };
}

/* Turns a point of a side (along, into the plate) by its quarter: bottom, right, top, left. */
static HutPoint
on_side (int side,
         double width_mm,
         double height_mm,
         double along_mm,
         double in_mm)
{
  switch (side)
    {
    case 0:
      return on_grid (along_mm, in_mm);
    case 1:
      return on_grid (width_mm - in_mm, along_mm);
    case 2:
      return on_grid (width_mm - along_mm, height_mm - in_mm);
    default:
      return on_grid (in_mm, height_mm - along_mm);
    }
}

/* The gaps between the fingers of one side, after its first corner. */
static void
append_gaps (HutRandom *random,
             HutPath *path,
             int side,
             double width_mm,
             double height_mm,
             double depth_mm)
{
  const double length_mm = side % 2 ? height_mm : width_mm;
  const guint most = (guint) (length_mm / (5 * depth_mm)) - 1;
  const guint count = hut_random_below (random, MIN (most, 12) + 1);
  const double pitch_mm = length_mm / (2 * count + 1);

  for (guint i = 0; i < count; i++)
    {
      const double start_mm = pitch_mm * (2 * i + 1 + hut_random_between (random, -0.2, 0.2));
      const double end_mm = pitch_mm * (2 * i + 2 + hut_random_between (random, -0.2, 0.2));

      hut_path_append (path, on_side (side, width_mm, height_mm, start_mm, 0), 0, HUT_EDGE_MATING);
      hut_path_append (path, on_side (side, width_mm, height_mm, start_mm, depth_mm), 0,
                       HUT_EDGE_PLAIN);
      hut_path_append (path, on_side (side, width_mm, height_mm, end_mm, depth_mm), 0,
                       HUT_EDGE_MATING);
      hut_path_append (path, on_side (side, width_mm, height_mm, end_mm, 0), 0, HUT_EDGE_PLAIN);
    }
}

static HutPath *
new_triangle (HutPoint centre,
              double size_mm)
{
  HutPath *path = hut_path_new ();

  hut_path_append (path, on_grid (centre.u - size_mm, centre.v - size_mm / 2), 0, HUT_EDGE_PLAIN);
  hut_path_append (path, on_grid (centre.u + size_mm, centre.v - size_mm / 3), 0, HUT_EDGE_PLAIN);
  hut_path_append (path, on_grid (centre.u + size_mm / 4, centre.v + size_mm), 0, HUT_EDGE_PLAIN);
  return path;
}

/* A hole about @size_mm across. */
static HutPath *
random_hole (HutRandom *random,
             HutPoint centre,
             double size_mm,
             gboolean arcs)
{
  const double half_u_mm = size_mm / 2;
  const double half_v_mm = size_mm / 2 * hut_random_between (random, 0.4, 1);
  const HutRect rect = { hut_snap_mm (centre.u - half_u_mm), hut_snap_mm (centre.v - half_v_mm),
                         hut_snap_mm (centre.u + half_u_mm), hut_snap_mm (centre.v + half_v_mm) };

  switch (hut_random_below (random, arcs ? 5 : 2))
    {
    case 0:
      return hut_path_new_rect (rect, 0);
    case 1:
      return new_triangle (centre, size_mm / 2);
    case 2:
      return hut_path_new_circle (on_grid (centre.u, centre.v), hut_snap_mm (half_u_mm));
    case 3: /* a slot with round ends */
      return hut_path_new_rect (rect, size_mm);
    default:
      return hut_path_new_rect (rect,
                                hut_snap_mm (half_v_mm * hut_random_between (random, 0.2, 0.8)));
    }
}

HutRegion *
hut_random_fingers (HutRandom *random,
                    gboolean arcs)
{
  const double width_mm = hut_snap_mm (hut_random_between (random, 60, 300));
  const double height_mm = hut_snap_mm (hut_random_between (random, 60, 300));
  const double depth_mm = hut_snap_mm (hut_random_between (random, HUT_RANDOM_LEAST_MM, 6));
  HutPath *path = hut_path_new ();
  HutRegion *region;

  for (int side = 0; side < 4; side++)
    {
      const double radius_mm = hut_snap_mm (depth_mm * hut_random_between (random, 0.3, 0.9));
      const double length_mm = side % 2 ? width_mm : height_mm; /* of the side before */

      if (arcs && hut_random_chance (random, 0.5))
        {
          hut_path_append (path,
                           on_side ((side + 3) % 4, width_mm, height_mm, length_mm - radius_mm, 0),
                           QUARTER, HUT_EDGE_PLAIN);
          hut_path_append (path, on_side (side, width_mm, height_mm, radius_mm, 0), 0,
                           HUT_EDGE_PLAIN);
        }
      else
        hut_path_append (path, on_side (side, width_mm, height_mm, 0, 0), 0, HUT_EDGE_PLAIN);
      append_gaps (random, path, side, width_mm, height_mm, depth_mm);
    }
  region = hut_region_new (path);
  /* Holes in the four quarters of the middle, with room between them. */
  for (guint i = 0; i < 4; i++)
    {
      const double u_mm = width_mm * (i % 2 ? 0.65 : 0.35);
      const double v_mm = height_mm * (i / 2 ? 0.65 : 0.35);
      const double size_mm = hut_random_between (random, 3 * HUT_RANDOM_LEAST_MM, 12);

      if (hut_random_chance (random, 0.6))
        hut_region_take_hole (region,
                              random_hole (random, (HutPoint) { u_mm, v_mm }, size_mm, arcs));
    }
  return region;
}

HutRegion *
hut_random_plate (HutRandom *random)
{
  const HutRect rect = { 0, 0, hut_snap_mm (hut_random_between (random, 30, 60)),
                         hut_snap_mm (hut_random_between (random, 30, 60)) };
  const double radius_mm = hut_random_chance (random, 0.5) ? hut_random_between (random, 1, 30) : 0;
  g_autoptr(HutRegion) region = hut_region_new (hut_path_new_rect (rect, hut_snap_mm (radius_mm)));
  const guint tries = 1 + hut_random_below (random, MOST_HOLES);

  for (guint i = 0; i < tries; i++)
    {
      g_autoptr(HutRegion) next = hut_region_copy (region);
      const HutPoint centre = { hut_random_between (random, 0, rect.u1),
                                hut_random_between (random, 0, rect.v1) };
      const HutPlacement turned = { .turn_rad = hut_random_between (random, 0, 2 * G_PI),
                                    .shift = centre };
      g_autoptr(HutPath) hole = random_hole (random, (HutPoint) { 0, 0 },
                                             hut_random_between (random, 4, 25), TRUE);

      hut_region_take_hole (next, hut_path_dup_placed (hole, &turned));
      if (hut_geos_is_valid (next, NULL)) /* one that does not fit is left out */
        {
          hut_region_free (region);
          region = g_steal_pointer (&next);
        }
    }
  return g_steal_pointer (&region);
}

HutRegion *
hut_random_bridge (HutRandom *random)
{
  const double gap_mm = hut_random_between (random, 3, 25);
  const double slant_mm = hut_random_between (random, -20, 20);
  const double left_mm = hut_random_between (random, 1, 6); /* height of the bridge at its ends */
  const double right_mm = hut_random_chance (random, 0.5) ? left_mm
                                                          : hut_random_between (random, 1, 6);
  const double size_mm = 30;
  HutPath *path = hut_path_new ();

  const HutPoint corners[] = {
    { -size_mm, -size_mm }, { 0, -size_mm }, { 0, 0 },
    { gap_mm, slant_mm }, { gap_mm, -size_mm }, { gap_mm + size_mm, -size_mm },
    { gap_mm + size_mm, size_mm + 8 }, { gap_mm, size_mm + 8 }, { gap_mm, slant_mm + right_mm },
    { 0, left_mm }, { 0, size_mm + 8 }, { -size_mm, size_mm + 8 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    hut_path_append (path, corners[i], 0, HUT_EDGE_PLAIN);
  return hut_region_new (path);
}

HutRegion *
hut_random_placed (HutRandom *random,
                   const HutRegion *region)
{
  const HutPlacement placement = {
    .mirrored = hut_random_chance (random, 0.5),
    .turn_rad = hut_random_between (random, -10, 10),
    .shift = { hut_random_between (random, -500, 500), hut_random_between (random, -500, 500) },
  };

  return hut_region_dup_placed (region, &placement);
}
