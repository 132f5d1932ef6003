/* tests/draw/hut-ray.h: what a ray meets first, block by block, without any order.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-depth-tree.h"

/* Way along @into (unit) to where the line through @from enters the block; FALSE when it misses.
 * Slab method: in the block's own axes the ray must be inside all three pairs of planes at once. */
static inline gboolean
hut_ray_enters (const HutBlock *block, HutVec3 from, HutVec3 into, double *way_mm, HutVec3 *normal)
{
  const HutVec3 axes[] = { block->a, block->b, block->c };
  const HutVec3 off = hut_vec3_add (from, hut_vec3_scale (block->origin, -1.0));
  double enter = -INFINITY, leave = INFINITY;

  for (int i = 0; i < 3; i++)
    {
      const double square = hut_vec3_dot (axes[i], axes[i]);
      const double at = hut_vec3_dot (off, axes[i]) / square;
      const double speed = hut_vec3_dot (into, axes[i]) / square;
      const double one = (0.0 - at) / speed, other = (1.0 - at) / speed;

      if (speed == 0.0)
        {
          if (at < 0.0 || at > 1.0)
            return FALSE;
          continue;
        }
      if (MIN (one, other) > enter)
        {
          enter = MIN (one, other);
          *normal = hut_vec3_scale (axes[i], (speed > 0.0 ? -1.0 : 1.0) / sqrt (square));
        }
      leave = MIN (leave, MAX (one, other));
    }
  *way_mm = enter;
  return enter < leave;
}

/* Index of the first block that the line meets, or -1. */
static inline int
hut_ray_first (const HutBlock *blocks, guint count, HutVec3 from, HutVec3 into)
{
  double best = INFINITY, way;
  HutVec3 normal;
  int first = -1;

  for (guint i = 0; i < count; i++)
    if (hut_ray_enters (&blocks[i], from, into, &way, &normal) && way < best)
      {
        best = way;
        first = (int)i;
      }
  return first;
}
