/* src/draw/hut-flat-scene.c: what the pieces of the flat view are drawn from.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-flat-scene.h"

HutPxRect
hut_flat_scene_rect (const HutFlatScene *self,
                     guint panel,
                     HutRect rect)
{
  HutPxRect px;

  hut_flat_view_to_px (&self->view, self->layout, panel, (HutPoint){ rect.u0, rect.v1 }, &px.x,
                       &px.y);
  px.width = (rect.u1 - rect.u0) * self->view.scale_px_per_mm;
  px.height = (rect.v1 - rect.v0) * self->view.scale_px_per_mm;
  return px;
}

gboolean
hut_flat_scene_sees (const HutFlatScene *self,
                     HutPxRect rect,
                     double border_px)
{
  return rect.x + rect.width + border_px >= 0.0 && rect.x - border_px <= self->ink->width_px
         && rect.y + rect.height + border_px >= 0.0 && rect.y - border_px <= self->ink->height_px;
}

void
hut_flat_scene_stroke_line (const HutFlatScene *self,
                            guint panel,
                            HutPoint from,
                            HutPoint to)
{
  double x, y;

  hut_flat_view_to_px (&self->view, self->layout, panel, from, &x, &y);
  cairo_move_to (self->ink->cr, x, y);
  hut_flat_view_to_px (&self->view, self->layout, panel, to, &x, &y);
  cairo_line_to (self->ink->cr, x, y);
  cairo_stroke (self->ink->cr);
}

void
hut_flat_scene_stroke_rect (const HutFlatScene *self,
                            HutPxRect rect)
{
  cairo_rectangle (self->ink->cr, rect.x, rect.y, rect.width, rect.height);
  cairo_stroke (self->ink->cr);
}

static gboolean
meet (const HutPxRect *a,
      const HutPxRect *b)
{
  return a->x < b->x + b->width && b->x < a->x + a->width && a->y < b->y + b->height
         && b->y < a->y + a->height;
}

gboolean
hut_flat_scene_claim (const HutFlatScene *self,
                      HutPxRect box)
{
  if (self->labels == NULL)
    return TRUE;
  for (guint i = 0; i < self->labels->len; i++)
    if (meet (&box, &g_array_index (self->labels, HutPxRect, i)))
      return FALSE;
  g_array_append_val (self->labels, box);
  return TRUE;
}
