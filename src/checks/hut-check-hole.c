/* src/checks/hut-check-hole.c: an opening or window as the checks look at it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-check-hole.h"
#include "checks/hut-border.h"
#include <math.h>

static void
check_hole_free (gpointer data)
{
  HutCheckHole *self = data;

  g_free (self->bounds);
  g_free (self);
}

GPtrArray *
hut_check_holes_new (const HutAssembly *assembly)
{
  GPtrArray *holes = g_ptr_array_new_with_free_func (check_hole_free);

  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *placed = g_ptr_array_index (assembly->holes, i);
      HutCheckHole *hole = g_new0 (HutCheckHole, 1);

      hole->placed = placed;
      hole->panel = hut_check_panel (assembly, placed->panel);
      hole->bounds = g_new (HutRect, MAX (placed->paths->len, 1));
      for (guint k = 0; k < placed->paths->len; k++)
        hole->bounds[k] = hut_path_bounds (g_ptr_array_index (placed->paths, k));
      g_ptr_array_add (holes, hole);
    }
  return holes;
}

const char *
hut_check_hole_name (const HutCheckHole *self,
                     const HutAssembly *assembly)
{
  return hut_check_item_name (assembly->design, self->placed->item);
}

HutFinding *
hut_check_hole_add (const HutCheckHole *self,
                    HutChecking *checking,
                    const char *check,
                    HutSeverity severity,
                    const char *message,
                    const char *other)
{
  HutFinding *finding = hut_checking_add (checking, check, severity, message);

  hut_finding_set_names (finding, hut_check_hole_name (self, checking->assembly), other);
  hut_finding_set_item (finding, self->placed->item);
  return finding;
}

double
hut_check_rects_apart_mm (const HutRect *a,
                          const HutRect *b)
{
  return hypot (fmax (0.0, fmax (a->u0 - b->u1, b->u0 - a->u1)),
                fmax (0.0, fmax (a->v0 - b->v1, b->v0 - a->v1)));
}

static gboolean
is_inside (const HutPath *inner,
           const HutPath *outer)
{
  return hut_path_get_count (inner) > 0 && hut_path_contains (outer, hut_path_get (inner, 0)->p);
}

gboolean
hut_check_material_between (const HutPath *a,
                            const HutPath *b,
                            double limit_mm,
                            HutWeb *gap)
{
  const HutPath *inner = is_inside (a, b) ? a : is_inside (b, a) ? b : NULL;
  HutRect bounds;

  if (inner == NULL)
    return hut_border_find_gap (a, b, limit_mm, gap);
  bounds = hut_path_bounds (inner);
  *gap = (HutWeb) { { bounds.u0, bounds.v0 }, { bounds.u1, bounds.v1 }, 0.0 };
  return TRUE;
}
