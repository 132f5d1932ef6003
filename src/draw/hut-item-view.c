/* src/draw/hut-item-view.c: an item of hardware alone.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-item-view.h"
#include "draw/hut-ink.h"

/* Own choice, px: holes stand out from what lies over and behind them. */
#define CUT_LINE_PX 1.3
#define BODY_LINE_PX 0.8
/* Own choice: what a body's inside has of a hole's. */
#define BODY_FILL_RATIO 0.33
/* Half of the box of an item that shows nothing, mm. */
#define EMPTY_HALF_MM 0.5

static HutRect
join (HutRect a,
      HutRect b)
{
  if (a.u1 < a.u0)
    return b;
  if (b.u1 < b.u0)
    return a;
  return (HutRect){ MIN (a.u0, b.u0), MIN (a.v0, b.v0), MAX (a.u1, b.u1), MAX (a.v1, b.v1) };
}

HutRect
hut_item_view_bounds (const HutItem *item)
{
  g_return_val_if_fail (item != NULL, ((HutRect){ 0, 0, 0, 0 }));

  HutRect bounds = join (hut_item_bounds (item, 0, HUT_HOLE_MEDIUM),
                         hut_item_bounds (item, 1, HUT_HOLE_MEDIUM));

  for (guint i = 0; i < item->bodies->len; i++)
    {
      const HutItemBody *body = &g_array_index (item->bodies, HutItemBody, i);

      if (!body->soft)
        bounds = join (bounds, body->rect);
    }
  if (bounds.u1 < bounds.u0)
    bounds = (HutRect){ -EMPTY_HALF_MM, -EMPTY_HALF_MM, EMPTY_HALF_MM, EMPTY_HALF_MM };
  return bounds;
}

/* The current path is filled and stroked. */
static void
paint (HutInk *ink,
       HutColour colour,
       double fill_ratio,
       HutLineKind kind,
       double line_px)
{
  hut_ink_colour_alpha (ink, colour, fill_ratio);
  cairo_fill_preserve (ink->cr);
  hut_ink_line (ink, kind, line_px);
  hut_ink_colour (ink, colour);
  cairo_stroke (ink->cr);
}

static void
add_rect (HutInk *ink,
          HutRect rect,
          HutPoint at_px,
          double scale)
{
  g_autoptr (HutPath) path = hut_path_new_rect (rect, 0.0);

  hut_ink_path (ink, path, at_px.u, at_px.v, scale);
}

static void
draw_bodies (HutInk *ink,
             const HutItem *item,
             HutItemSide side,
             HutColour colour,
             double fill_ratio,
             HutPoint at_px,
             double scale)
{
  for (guint i = 0; i < item->bodies->len; i++)
    {
      const HutItemBody *body = &g_array_index (item->bodies, HutItemBody, i);

      if (body->side != side || body->soft)
        continue;
      /* A round thing is kept as a box; its flange says that it is round. */
      if (item->flange_round && side == HUT_ITEM_FRONT)
        continue;
      add_rect (ink, body->rect, at_px, scale);
      paint (ink, colour, side == HUT_ITEM_FRONT ? fill_ratio : 0.0,
             side == HUT_ITEM_FRONT ? HUT_LINE_SOLID : HUT_LINE_HIDDEN, BODY_LINE_PX);
    }
}

static void
draw_flange (HutInk *ink,
             const HutItem *item,
             HutColour colour,
             double fill_ratio,
             HutPoint at_px,
             double scale)
{
  const double half_width_mm = item->flange_width_mm / 2.0,
               half_height_mm = item->flange_height_mm / 2.0;
  const HutRect rect = { -half_width_mm, -half_height_mm, half_width_mm, half_height_mm };
  g_autoptr (HutPath) path = hut_path_new_rect (
      rect, item->flange_round ? MIN (half_width_mm, half_height_mm) : 0.0);

  hut_ink_path (ink, path, at_px.u, at_px.v, scale);
  paint (ink, colour, fill_ratio, HUT_LINE_SOLID, BODY_LINE_PX);
}

void
hut_item_view_draw (cairo_t *cr,
                    const HutItem *item,
                    HutColour colour,
                    double fill_ratio,
                    HutPoint at_px,
                    double scale_px_per_mm)
{
  g_return_if_fail (cr != NULL && item != NULL);

  const double body_ratio = fill_ratio * BODY_FILL_RATIO;
  HutInk ink;

  hut_ink_begin (&ink, cr, hut_palette_get (FALSE, FALSE), 0.0, 0.0, 0.0);
  draw_bodies (&ink, item, HUT_ITEM_BEHIND, colour, body_ratio, at_px, scale_px_per_mm);
  draw_flange (&ink, item, colour, body_ratio, at_px, scale_px_per_mm);
  draw_bodies (&ink, item, HUT_ITEM_FRONT, colour, body_ratio, at_px, scale_px_per_mm);
  for (guint i = 0; i < item->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (item->cuts, HutItemCut, i);
      g_autoptr (HutPath) path
          = hut_item_cut_dup_path (cut, hut_item_cut_hole_mm (cut, HUT_HOLE_MEDIUM));

      hut_ink_path (&ink, path, at_px.u, at_px.v, scale_px_per_mm);
    }
  paint (&ink, colour, fill_ratio, HUT_LINE_SOLID, CUT_LINE_PX);
  hut_ink_end (&ink);
}
