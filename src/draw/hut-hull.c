/* src/draw/hut-hull.c: the convex hull of points in the plane.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-hull.h"

static int
compare (gconstpointer a, gconstpointer b)
{
  const HutPoint *p = a, *q = b;

  if (p->u != q->u)
    return p->u < q->u ? -1 : 1;
  return (p->v > q->v) - (p->v < q->v);
}

static void
push (GArray *hull, guint least_count, HutPoint p)
{
  while (hull->len > least_count)
    {
      const HutPoint a = g_array_index (hull, HutPoint, hull->len - 2),
                     b = g_array_index (hull, HutPoint, hull->len - 1);

      if (hut_point_cross (hut_point_minus (b, a), hut_point_minus (p, b)) > 0.0)
        break;
      g_array_set_size (hull, hull->len - 1);
    }
  g_array_append_val (hull, p);
}

static void
grow_all (GArray *hull, double grow_mm)
{
  HutPoint middle = { 0.0, 0.0 };

  for (guint i = 0; i < hull->len; i++)
    {
      middle.u += g_array_index (hull, HutPoint, i).u / hull->len;
      middle.v += g_array_index (hull, HutPoint, i).v / hull->len;
    }
  for (guint i = 0; i < hull->len; i++)
    {
      HutPoint *p = &g_array_index (hull, HutPoint, i);
      const double off = hut_point_distance_mm (*p, middle);

      if (off > 0.0)
        *p = (HutPoint){ p->u + (p->u - middle.u) * grow_mm / off,
                         p->v + (p->v - middle.v) * grow_mm / off };
    }
}

GArray *
hut_hull_new (const GArray *points, double grow_mm)
{
  g_autoptr (GArray) sorted = g_array_copy ((GArray *)points);
  GArray *hull = g_array_new (FALSE, FALSE, sizeof (HutPoint));

  g_array_sort (sorted, compare);
  for (guint i = 0; i < sorted->len; i++)
    push (hull, 1, g_array_index (sorted, HutPoint, i));
  const guint lower_count = hull->len;
  for (guint i = MAX (sorted->len, 1) - 1; i-- > 0;)
    push (hull, lower_count, g_array_index (sorted, HutPoint, i));
  if (hull->len > 1)
    g_array_set_size (hull, hull->len - 1); /* the first one again */
  if (grow_mm != 0.0)
    grow_all (hull, grow_mm);
  return hull;
}
