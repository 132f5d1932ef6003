/* src/export/hut-tool-measure.c: lengths, stretches and bounds of the tool's ways.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-tool-path.h"
#include <math.h>

/* Two arcs lie on one circle when centre and radius differ by less, mm. Own choice: a hundredth of
 * the grid, far over what placing an arc adds. */
#define SAME_CIRCLE_MM 1e-5
/* Shorter stretches are rounding, mm. Own choice: far under the grid. */
#define DUST_MM 1e-9

gboolean
hut_path_get_circle (const HutPath *self,
                     HutPoint *centre,
                     double *radius_mm)
{
  g_return_val_if_fail (self != NULL && centre != NULL && radius_mm != NULL, FALSE);

  const guint count = hut_path_get_count (self);
  HutPoint first_centre = { 0, 0 };
  double first_radius_mm = 0.0, turn_rad = 0.0;

  for (guint i = 0; i < count; i++)
    {
      const HutSegment segment = hut_path_get_segment (self, i);
      HutPoint c;
      double r_mm;

      if (segment.bulge == 0.0 || !hut_segment_get_circle (&segment, &c, &r_mm))
        return FALSE;
      if (i == 0)
        {
          first_centre = c;
          first_radius_mm = r_mm;
        }
      else if (fabs (r_mm - first_radius_mm) > SAME_CIRCLE_MM
               || hut_point_distance_mm (c, first_centre) > SAME_CIRCLE_MM)
        return FALSE;
      turn_rad += 4.0 * atan (segment.bulge);
    }
  /* The ends meet, so the turn is a whole number of rounds: 1 or none. */
  if (count == 0 || fabs (fabs (turn_rad) - 2.0 * G_PI) > 0.5)
    return FALSE;
  *centre = first_centre;
  *radius_mm = first_radius_mm;
  return TRUE;
}

static void
grow_rect (HutRect *self,
           HutRect by)
{
  if (self->u1 < self->u0)
    {
      *self = by;
      return;
    }
  self->u0 = MIN (self->u0, by.u0);
  self->v0 = MIN (self->v0, by.v0);
  self->u1 = MAX (self->u1, by.u1);
  self->v1 = MAX (self->v1, by.v1);
}

HutRect
hut_tool_paths_bounds (const GPtrArray *paths)
{
  g_return_val_if_fail (paths != NULL, ((HutRect) { 0, 0, -1, -1 }));

  HutRect bounds = { 0, 0, -1, -1 };

  for (guint i = 0; i < paths->len; i++)
    {
      const HutToolPath *path = g_ptr_array_index (paths, i);

      if (path->closed != NULL)
        grow_rect (&bounds, hut_path_bounds (path->closed));
      if (path->has_lead)
        grow_rect (&bounds, (HutRect) { path->lead.u, path->lead.v, path->lead.u, path->lead.v });
      for (guint j = 0; path->strokes != NULL && j < path->strokes->len; j++)
        {
          const GArray *stroke = g_ptr_array_index (path->strokes, j);

          for (guint k = 0; k < stroke->len; k++)
            {
              const HutPoint p = g_array_index (stroke, HutPoint, k);

              grow_rect (&bounds, (HutRect) { p.u, p.v, p.u, p.v });
            }
        }
    }
  return bounds;
}

void
hut_path_append_stretch (const HutPath *self,
                         double from_mm,
                         double to_mm,
                         GArray *segments)
{
  g_return_if_fail (self != NULL && segments != NULL);

  const guint count = hut_path_get_count (self);
  double at_mm = 0.0;

  for (guint i = 0; i < count; i++)
    {
      const HutSegment segment = hut_path_get_segment (self, i);
      const double length_mm = hut_segment_length_mm (&segment);
      const double a_mm = MAX (from_mm - at_mm, 0.0), b_mm = MIN (to_mm - at_mm, length_mm);

      at_mm += length_mm;
      if (b_mm - a_mm <= DUST_MM)
        continue;

      const HutSegment part
          = hut_segment_between (&segment, a_mm <= DUST_MM ? 0.0 : a_mm / length_mm,
                                 b_mm >= length_mm - DUST_MM ? 1.0 : b_mm / length_mm);

      g_array_append_val (segments, part);
    }
}

GPtrArray *
hut_tool_path_dup_chains (const HutToolPath *self,
                          HutCutterKind cutter)
{
  g_return_val_if_fail (self != NULL && self->closed != NULL, NULL);

  const guint tab_count = self->tabs != NULL ? self->tabs->len : 0;
  const double length_mm = hut_path_length_mm (self->closed);
  GPtrArray *chains;
  double from_mm = 0.0;

  if (cutter != HUT_CUTTER_LASER || (!self->has_lead && tab_count == 0))
    return NULL;
  chains = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  for (guint i = 0; i <= tab_count; i++)
    {
      const HutTab tab = i < tab_count ? g_array_index (self->tabs, HutTab, i)
                                       : (HutTab) { length_mm, length_mm };
      GArray *chain = g_array_new (FALSE, FALSE, sizeof (HutSegment));

      if (i == 0 && self->has_lead)
        {
          const HutSegment lead = { self->lead, hut_path_get (self->closed, 0)->p, 0.0,
                                    HUT_EDGE_PLAIN };

          g_array_append_val (chain, lead);
        }
      hut_path_append_stretch (self->closed, from_mm, tab.from_mm, chain);
      g_ptr_array_add (chains, chain);
      from_mm = tab.to_mm;
    }
  return chains;
}

double
hut_tool_path_length_mm (const HutToolPath *self,
                         HutCutterKind cutter)
{
  g_return_val_if_fail (self != NULL, 0.0);

  double length_mm = 0.0;

  if (self->closed != NULL)
    length_mm += hut_path_length_mm (self->closed);
  if (cutter == HUT_CUTTER_LASER && self->has_lead)
    length_mm += hut_point_distance_mm (self->lead, hut_path_get (self->closed, 0)->p);
  for (guint i = 0; cutter == HUT_CUTTER_LASER && self->tabs != NULL && i < self->tabs->len; i++)
    {
      const HutTab *tab = &g_array_index (self->tabs, HutTab, i);

      length_mm -= tab->to_mm - tab->from_mm;
    }
  for (guint j = 0; self->strokes != NULL && j < self->strokes->len; j++)
    {
      const GArray *stroke = g_ptr_array_index (self->strokes, j);

      for (guint k = 1; k < stroke->len; k++)
        length_mm += hut_point_distance_mm (g_array_index (stroke, HutPoint, k - 1),
                                            g_array_index (stroke, HutPoint, k));
    }
  return length_mm;
}

double
hut_tool_paths_length_mm (const GPtrArray *paths,
                          HutLayer layer,
                          HutCutterKind cutter)
{
  g_return_val_if_fail (paths != NULL, 0.0);

  double length_mm = 0.0;

  for (guint i = 0; i < paths->len; i++)
    {
      const HutToolPath *path = g_ptr_array_index (paths, i);

      if (path->layer == layer)
        length_mm += hut_tool_path_length_mm (path, cutter);
    }
  return length_mm;
}
