/* src/assembly/hut-finger.c: finger joints along an edge.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-finger.h"
#include <math.h>

guint
hut_finger_count (double length_mm,
                  double target_mm,
                  double least_mm)
{
  const double wanted = CLAMP (length_mm / target_mm, 1.0, (double) HUT_FINGER_MAX_COUNT);
  guint count = 2 * (guint) floor (wanted / 2.0) + 1; /* the odd number whose interval holds it */

  g_return_val_if_fail (target_mm > 0.0 && least_mm > 0.0, 1);

  count = CLAMP (count, 3, HUT_FINGER_MAX_COUNT);
  while (count >= 3 && length_mm / count < least_mm)
    count -= 2;
  return count;
}

GArray *
hut_finger_cuts (double from_mm,
                 double to_mm,
                 guint count)
{
  GArray *cuts = g_array_sized_new (FALSE, FALSE, sizeof (double), count + 1);

  for (guint i = 0; i <= count; i++)
    {
      const double cut_mm = hut_snap_mm (from_mm + (to_mm - from_mm) * i / count);

      g_array_append_val (cuts, cut_mm);
    }
  return cuts;
}

/* A straight piece of outline parallel to an edge. */
typedef struct
{
  HutEdge edge;
  double depth_mm;
  double until_mm; /* where it ends along the edge, if another run of the same edge follows */
} Run;

/* Runs of an edge in counter-clockwise order. */
static void
append_runs (GArray *runs,
             HutEdge edge,
             const HutEdgeJoint *joint)
{
  const gboolean backwards = edge == HUT_EDGE_TOP || edge == HUT_EDGE_LEFT;
  const guint count = joint->kind == HUT_JOINT_FINGERS ? joint->finger_count : 1;

  for (guint i = 0; i < count; i++)
    {
      const guint finger = backwards ? count - 1 - i : i;
      const gboolean owned = joint->kind == HUT_JOINT_NONE || (finger % 2 == 0) == joint->owns_ends;
      Run run = { .edge = edge, .depth_mm = owned ? 0.0 : joint->depth_mm };

      if (i + 1 < count)
        run.until_mm = g_array_index (joint->cuts_mm, double, backwards ? finger : finger + 1);
      g_array_append_val (runs, run);
    }
}

/* Coordinate of a run's line: v for bottom and top, u for left and right. */
static double
run_line_mm (const Run *run,
             double width_mm,
             double height_mm)
{
  switch (run->edge)
    {
    case HUT_EDGE_RIGHT:
      return hut_snap_mm (width_mm - run->depth_mm);
    case HUT_EDGE_TOP:
      return hut_snap_mm (height_mm - run->depth_mm);
    default:
      return run->depth_mm;
    }
}

HutPath *
hut_finger_outline (double width_mm,
                    double height_mm,
                    const HutEdgeJoint edges[HUT_EDGE_COUNT])
{
  g_autoptr(GArray) runs = g_array_new (FALSE, FALSE, sizeof (Run));
  HutPath *path = hut_path_new ();

  for (int edge = 0; edge < HUT_EDGE_COUNT; edge++)
    append_runs (runs, (HutEdge) edge, &edges[edge]);

  for (guint i = 0; i < runs->len; i++)
    {
      const Run *run = &g_array_index (runs, Run, i);
      const Run *next = &g_array_index (runs, Run, (i + 1) % runs->len);
      const gboolean level = run->edge == HUT_EDGE_BOTTOM || run->edge == HUT_EDGE_TOP;
      const double here_mm = run_line_mm (run, width_mm, height_mm);
      const double there_mm = run_line_mm (next, width_mm, height_mm);

      if (run->edge != next->edge)
        hut_path_append (path,
                         level ? (HutPoint) { there_mm, here_mm }
                               : (HutPoint) { here_mm, there_mm },
                         0.0, HUT_EDGE_PLAIN);
      else
        {
          hut_path_append (path,
                           level ? (HutPoint) { run->until_mm, here_mm }
                                 : (HutPoint) { here_mm, run->until_mm },
                           0.0, HUT_EDGE_MATING);
          hut_path_append (path,
                           level ? (HutPoint) { run->until_mm, there_mm }
                                 : (HutPoint) { there_mm, run->until_mm },
                           0.0, HUT_EDGE_PLAIN);
        }
    }
  return path;
}
