/* src/draw/hut-item-side.c: an item of hardware alone, seen from its right, in its panel.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-item-side.h"
#include "draw/hut-ink.h"
#include "draw/hut-item-view.h"

#define BODY_LINE_PX 0.8
/* Own choice: how far the panel goes on over and under the item, mm. */
#define MARGIN_MM 4.0

double
hut_item_side_panel_mm (const HutItem *item)
{
  g_return_val_if_fail (item != NULL, HUT_SIDE_PANEL_MM);

  const double most_mm
      = item->thickness_max_mm > 0.0 ? MIN (item->thickness_max_mm, HUT_SIDE_PANEL_MM)
                                     : HUT_SIDE_PANEL_MM;

  return MAX (most_mm, item->thickness_min_mm);
}

/* From and to which depth a space goes. */
static HutRect
body_box (const HutItemBody *body)
{
  const gboolean front = body->side == HUT_ITEM_FRONT;

  return (HutRect){ front ? -body->depth_mm : 0.0, body->rect.v0, front ? 0.0 : body->depth_mm,
                    body->rect.v1 };
}

HutRect
hut_item_side_bounds (const HutItem *item)
{
  g_return_val_if_fail (item != NULL, ((HutRect){ 0, 0, 0, 0 }));

  const HutRect face = hut_item_view_bounds (item);
  HutRect bounds = { 0.0, face.v0 - MARGIN_MM, hut_item_side_panel_mm (item), face.v1 + MARGIN_MM };

  for (guint i = 0; i < item->bodies->len; i++)
    {
      const HutRect box = body_box (&g_array_index (item->bodies, HutItemBody, i));

      bounds = (HutRect){ MIN (bounds.u0, box.u0), MIN (bounds.v0, box.v0), MAX (bounds.u1, box.u1),
                          MAX (bounds.v1, box.v1) };
    }
  return bounds;
}

static void
add_box (cairo_t *cr,
         HutRect box,
         HutPoint at_px,
         double scale)
{
  cairo_rectangle (cr, at_px.u + box.u0 * scale, at_px.v - box.v1 * scale,
                   (box.u1 - box.u0) * scale, (box.v1 - box.v0) * scale);
}

/* The panel with what is cut away in any depth of the picture left out. */
static void
draw_panel (HutInk *ink,
            const HutItem *item,
            HutColour colour,
            double fill_ratio,
            HutPoint at_px,
            double scale)
{
  const HutRect all = hut_item_side_bounds (item);
  const HutRect panel = { 0.0, all.v0, hut_item_side_panel_mm (item), all.v1 };

  cairo_push_group (ink->cr);
  add_box (ink->cr, panel, at_px, scale);
  hut_ink_colour_alpha (ink, colour, fill_ratio);
  cairo_fill (ink->cr);
  cairo_set_operator (ink->cr, CAIRO_OPERATOR_CLEAR);
  for (guint i = 0; i < item->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (item->cuts, HutItemCut, i);
      g_autoptr (HutPath) path
          = hut_item_cut_dup_path (cut, hut_item_cut_hole_mm (cut, HUT_HOLE_MEDIUM));

      if (hut_path_get_count (path) == 0)
        continue;

      const HutRect hole = hut_path_bounds (path);

      add_box (ink->cr, (HutRect){ panel.u0, hole.v0, panel.u1, hole.v1 }, at_px, scale);
      cairo_fill (ink->cr);
    }
  cairo_pop_group_to_source (ink->cr);
  cairo_paint (ink->cr);
  add_box (ink->cr, panel, at_px, scale);
  hut_ink_line (ink, HUT_LINE_SOLID, BODY_LINE_PX);
  hut_ink_colour (ink, colour);
  cairo_stroke (ink->cr);
}

void
hut_item_side_draw (cairo_t *cr,
                    const HutItem *item,
                    HutColour colour,
                    double fill_ratio,
                    HutPoint at_px,
                    double scale_px_per_mm)
{
  g_return_if_fail (cr != NULL && item != NULL);

  HutInk ink;

  hut_ink_begin (&ink, cr, hut_palette_get (FALSE, FALSE), 0.0, 0.0, 0.0);
  draw_panel (&ink, item, colour, fill_ratio, at_px, scale_px_per_mm);
  for (guint i = 0; i < item->bodies->len; i++)
    {
      const HutItemBody *body = &g_array_index (item->bodies, HutItemBody, i);

      add_box (cr, body_box (body), at_px, scale_px_per_mm);
      hut_ink_line (&ink,
                    body->soft                      ? HUT_LINE_KEEP_OUT
                    : body->side == HUT_ITEM_BEHIND ? HUT_LINE_HIDDEN
                                                    : HUT_LINE_SOLID,
                    BODY_LINE_PX);
      hut_ink_colour (&ink, colour);
      cairo_stroke (cr);
    }
  hut_ink_end (&ink);
}
