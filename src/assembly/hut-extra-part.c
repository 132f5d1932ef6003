/* src/assembly/hut-extra-part.c: plates that the user draws, as parts.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-extra-part.h"
#include "assembly/hut-part-private.h"
#include "geom/hut-geos.h"
#include <math.h>

/* tan (90 degrees / 4): the bulge of a quarter circle. */
#define QUARTER 0.41421356237309503

static HutPath *
rect_path (double u_mm,
           double v_mm,
           double width_mm,
           double height_mm,
           double radius_mm)
{
  return hut_path_new_rect (
      (HutRect) { hut_snap_mm (u_mm - width_mm / 2.0), hut_snap_mm (v_mm - height_mm / 2.0),
                  hut_snap_mm (u_mm + width_mm / 2.0), hut_snap_mm (v_mm + height_mm / 2.0) },
      radius_mm);
}

/* ---- the union ------------------------------------------------------------------------------- */

/* Joins @next (transfer full) with every piece that it meets along an edge or an area. */
static gboolean
join (GPtrArray *pieces,
      HutRegion *next)
{
  g_autoptr(HutRegion) grown = next;

  for (guint i = 0; i < pieces->len;)
    {
      g_autoptr(GPtrArray) both
          = hut_geos_op (g_ptr_array_index (pieces, i), grown, HUT_GEOS_UNION, NULL);

      if (both == NULL)
        return FALSE;
      if (both->len == 1)
        {
          hut_region_free (grown);
          grown = hut_region_copy (g_ptr_array_index (both, 0));
          g_ptr_array_remove_index (pieces, i);
          i = 0;
        }
      else
        i++;
    }
  g_ptr_array_add (pieces, g_steal_pointer (&grown));
  return TRUE;
}

/* ---- corners --------------------------------------------------------------------------------- */

static HutPoint
towards (HutPoint from,
         HutPoint to,
         double by_mm)
{
  const double length_mm = hypot (to.u - from.u, to.v - from.v);

  return (HutPoint) { hut_snap_mm (from.u + (to.u - from.u) / length_mm * by_mm),
                      hut_snap_mm (from.v + (to.v - from.v) / length_mm * by_mm) };
}

/* A path of lines that meet at right angles, with its corners rounded by no more than half of the
 * shorter edge beside each. (transfer full) */
static HutPath *
dup_rounded (const HutPath *path,
             double radius_mm)
{
  HutPath *rounded = hut_path_new ();
  const guint count = hut_path_get_count (path);

  for (guint i = 0; i < count; i++)
    {
      const HutPoint before = hut_path_get (path, (i + count - 1) % count)->p;
      const HutPoint at = hut_path_get (path, i)->p;
      const HutPoint after = hut_path_get (path, (i + 1) % count)->p;
      const double shorter_mm = MIN (hypot (at.u - before.u, at.v - before.v),
                                     hypot (after.u - at.u, after.v - at.v));
      /* Less a grid step: an edge between two arcs stays an edge. */
      const double by_mm = hut_snap_mm (MIN (radius_mm, shorter_mm / 2.0 - HUT_GRID_MM));
      const double turn_mm2 = (at.u - before.u) * (after.v - at.v)
                              - (at.v - before.v) * (after.u - at.u);

      if (by_mm < HUT_GRID_MM)
        {
          hut_path_append (rounded, at, 0.0, HUT_EDGE_PLAIN);
          continue;
        }
      hut_path_append (rounded, towards (at, before, by_mm), turn_mm2 > 0.0 ? QUARTER : -QUARTER,
                       HUT_EDGE_PLAIN);
      hut_path_append (rounded, towards (at, after, by_mm), 0.0, HUT_EDGE_PLAIN);
    }
  return rounded;
}

static HutPath *
dup_finished (const HutPath *path,
              double radius_mm)
{
  g_autoptr(HutPath) plain = hut_path_copy (path);

  hut_path_snap (plain);
  hut_path_simplify (plain);
  return radius_mm > 0.0 ? dup_rounded (plain, radius_mm) : g_steal_pointer (&plain);
}

static HutRegion *
dup_outline (const HutRegion *piece,
             double radius_mm)
{
  HutRegion *outline = hut_region_new (dup_finished (piece->outer, radius_mm));

  for (guint i = 0; i < piece->holes->len; i++)
    hut_region_take_hole (outline,
                          dup_finished (g_ptr_array_index (piece->holes, i), radius_mm));
  return outline;
}

HutRegion *
hut_extra_dup_region (const HutExtra *self,
                      guint *pieces,
                      gboolean *holes_fit)
{
  g_autoptr(GPtrArray) joined = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_region_free);
  g_autoptr(HutRegion) outline = NULL, whole = NULL;
  gboolean fit;

  for (guint i = 0; i < self->rects->len; i++)
    {
      const HutExtraRect *rect = &g_array_index (self->rects, HutExtraRect, i);

      if (!join (joined, hut_region_new (rect_path (rect->u_mm, rect->v_mm, rect->width_mm,
                                                    rect->height_mm, 0.0))))
        return NULL;
    }
  if (pieces != NULL)
    *pieces = joined->len;
  if (joined->len == 0)
    return NULL;
  outline = dup_outline (g_ptr_array_index (joined, 0), self->radius_mm);
  whole = hut_region_copy (outline);
  for (guint i = 0; i < self->holes->len; i++)
    {
      const HutExtraHole *hole = &g_array_index (self->holes, HutExtraHole, i);

      hut_region_take_hole (whole, rect_path (hole->u_mm, hole->v_mm, hole->width_mm,
                                              hole->height_mm, hole->radius_mm));
    }
  fit = hut_geos_is_valid (whole, NULL);
  if (holes_fit != NULL)
    *holes_fit = fit;
  return fit ? g_steal_pointer (&whole) : g_steal_pointer (&outline);
}

/* ---- parts ----------------------------------------------------------------------------------- */

static void
add_part (HutPartSet *set,
          const HutExtra *extra,
          const HutStock *stock,
          const HutRegion *region,
          guint number,
          double *beside_mm)
{
  g_autofree char *id = number > 1 ? g_strdup_printf ("extra-%s-%u", extra->id, number)
                                   : g_strdup_printf ("extra-%s", extra->id);
  HutPart *part = hut_part_new (HUT_PART_EXTRA, id, HUT_PART_NO_PANEL, stock);
  const HutRect bounds = hut_region_bounds (region);

  part->item = extra->id;
  part->shell = HUT_SHELL_BASE;
  part->region = hut_region_copy (region);
  part->frame = (HutFrame3) {
    .origin = { hut_snap_mm (*beside_mm + HUT_EXTRA_BESIDE_MM - bounds.u0),
                hut_snap_mm (-bounds.v0), part->thickness_mm },
    .u = { 1, 0, 0 },
    .v = { 0, 1, 0 },
    .w = { 0, 0, 1 },
  };
  *beside_mm += HUT_EXTRA_BESIDE_MM + bounds.u1 - bounds.u0;
  g_ptr_array_add (set->parts, part);
}

void
hut_extra_add_parts (const HutAssembly *assembly,
                     HutPartSet *set)
{
  const GPtrArray *extras = assembly->design->extras;
  double beside_mm = assembly->outer_mm.x;

  for (guint i = 0; assembly->whole && i < extras->len; i++)
    {
      const HutExtra *extra = g_ptr_array_index (extras, i);
      const HutStock *stock = hut_design_get_stock (assembly->design, extra->stock);
      g_autoptr(HutRegion) region
          = stock != NULL ? hut_extra_dup_region (extra, NULL, NULL) : NULL;

      for (guint k = 1; region != NULL && k <= extra->count; k++)
        add_part (set, extra, stock, region, k, &beside_mm);
    }
}
