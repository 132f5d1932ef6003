/* src/draw/hut-flat-selection.c: the selected item with handles and distances, and snap guides.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-flat-selection.h"
#include "draw/hut-flat-caption.h"
#include <math.h>

/* Own choice, px. */
#define FRAME_OFF_PX 5.0
#define FRAME_LINE_PX 1.6
#define HANDLE_HALF_PX 4.0
#define HANDLE_REACH_PX 8.0
#define GUIDE_LINE_PX 1.4
#define GUIDE_BEYOND_PX 14.0

static const HutPlacedHole *
find_hole (const HutFlatScene *scene,
           const char *item)
{
  const HutPlacedHole *hole = item != NULL ? hut_assembly_get_hole (scene->assembly, item) : NULL;

  return hole != NULL && hole->panel < scene->layout->panel_count ? hole : NULL;
}

static HutPxRect
frame_px (const HutFlatLayout *layout,
          const HutFlatView *view,
          const HutPlacedHole *hole)
{
  HutPxRect px;

  hut_flat_view_to_px (view, layout, hole->panel, (HutPoint){ hole->bounds.u0, hole->bounds.v1 },
                       &px.x, &px.y);
  px.width = (hole->bounds.u1 - hole->bounds.u0) * view->scale_px_per_mm + 2.0 * FRAME_OFF_PX;
  px.height = (hole->bounds.v1 - hole->bounds.v0) * view->scale_px_per_mm + 2.0 * FRAME_OFF_PX;
  px.x -= FRAME_OFF_PX;
  px.y -= FRAME_OFF_PX;
  return px;
}

static HutPoint
handle_px (HutPxRect frame,
           HutHandle handle)
{
  const gboolean right = handle == HUT_HANDLE_LOWER_RIGHT || handle == HUT_HANDLE_UPPER_RIGHT;
  const gboolean low = handle == HUT_HANDLE_LOWER_RIGHT || handle == HUT_HANDLE_LOWER_LEFT;

  return (HutPoint){ frame.x + (right ? frame.width : 0.0), frame.y + (low ? frame.height : 0.0) };
}

void
hut_flat_hover_draw (const HutFlatScene *scene)
{
  const HutPlacedHole *hole = find_hole (scene, scene->style->hovered);

  if (hole == NULL || g_strcmp0 (scene->style->hovered, scene->style->selected) == 0)
    return;
  hut_ink_line (scene->ink, HUT_LINE_SOLID, FRAME_LINE_PX / 2.0);
  hut_ink_colour (scene->ink, scene->ink->palette->selection);
  hut_flat_scene_stroke_rect (scene, frame_px (scene->layout, &scene->view, hole));
}

/* From the item's bounds straight to the four borders of the panel's outer rectangle. */
static void
draw_distances (const HutFlatScene *scene,
                const HutPlacedHole *hole)
{
  const HutPanel *panel = g_ptr_array_index (scene->assembly->panels, hole->panel);
  const HutRect b = hole->bounds;
  const HutPoint middle = { (b.u0 + b.u1) / 2.0, (b.v0 + b.v1) / 2.0 };
  const struct
  {
    HutPoint from, to;
    double value_mm;
  } lines[] = {
    { { 0.0, middle.v }, { b.u0, middle.v }, b.u0 },
    { { b.u1, middle.v }, { panel->width_mm, middle.v }, panel->width_mm - b.u1 },
    { { middle.u, 0.0 }, { middle.u, b.v0 }, b.v0 },
    { { middle.u, b.v1 }, { middle.u, panel->height_mm }, panel->height_mm - b.v1 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (lines); i++)
    {
      HutPoint from, to;

      if (lines[i].value_mm <= 0.0)
        continue;
      hut_flat_view_to_px (&scene->view, scene->layout, hole->panel, lines[i].from, &from.u,
                           &from.v);
      hut_flat_view_to_px (&scene->view, scene->layout, hole->panel, lines[i].to, &to.u, &to.v);
      hut_flat_dimension (scene->ink, from, to, lines[i].value_mm, scene->ink->palette->selection);
    }
}

void
hut_flat_selection_draw (const HutFlatScene *scene)
{
  const HutPlacedHole *hole = find_hole (scene, scene->style->selected);
  HutInk *ink = scene->ink;

  if (hole == NULL)
    return;
  if (scene->style->show_distances)
    draw_distances (scene, hole);

  const HutPxRect frame = frame_px (scene->layout, &scene->view, hole);
  hut_ink_line (ink, HUT_LINE_SOLID, FRAME_LINE_PX);
  hut_ink_colour (ink, ink->palette->selection);
  hut_flat_scene_stroke_rect (scene, frame);
  if (!hut_flat_item_has_handles (scene->assembly, hole->item))
    return;
  for (HutHandle h = HUT_HANDLE_LOWER_LEFT; h <= HUT_HANDLE_UPPER_LEFT; h++)
    {
      const HutPoint at = handle_px (frame, h);

      cairo_rectangle (ink->cr, at.u - HANDLE_HALF_PX, at.v - HANDLE_HALF_PX, 2.0 * HANDLE_HALF_PX,
                       2.0 * HANDLE_HALF_PX);
    }
  hut_ink_colour (ink, ink->palette->plate);
  cairo_fill_preserve (ink->cr);
  hut_ink_colour (ink, ink->palette->selection);
  cairo_stroke (ink->cr);
}

void
hut_flat_guides_draw (const HutFlatScene *scene)
{
  HutInk *ink = scene->ink;
  const double beyond_mm = GUIDE_BEYOND_PX / scene->view.scale_px_per_mm;

  hut_ink_line (ink, HUT_LINE_GUIDE, GUIDE_LINE_PX);
  hut_ink_colour (ink, ink->palette->guide);
  for (guint i = 0; i < scene->style->guide_count; i++)
    {
      const HutGuide *guide = &scene->style->guides[i];

      if (guide->panel >= scene->layout->panel_count)
        continue;
      const HutPanel *panel = g_ptr_array_index (scene->assembly->panels, guide->panel);
      if (guide->vertical)
        hut_flat_scene_stroke_line (scene, guide->panel, (HutPoint){ guide->at_mm, -beyond_mm },
                                    (HutPoint){ guide->at_mm, panel->height_mm + beyond_mm });
      else
        hut_flat_scene_stroke_line (scene, guide->panel, (HutPoint){ -beyond_mm, guide->at_mm },
                                    (HutPoint){ panel->width_mm + beyond_mm, guide->at_mm });
    }
}

gboolean
hut_flat_item_has_handles (const HutAssembly *assembly,
                           const char *item)
{
  const HutOpening *opening = hut_design_get_opening (assembly->design, item);

  if (hut_design_get_hardware (assembly->design, item) != NULL)
    return FALSE; /* its sizes are its item's */
  return opening == NULL || opening->shape != HUT_SHAPE_PATTERN;
}

HutHandle
hut_flat_pick_handle (const HutFlatLayout *layout,
                      const HutAssembly *assembly,
                      const HutFlatView *view,
                      const char *item,
                      double x_px,
                      double y_px)
{
  const HutPlacedHole *hole = item != NULL ? hut_assembly_get_hole (assembly, item) : NULL;

  if (hole == NULL || hole->panel >= layout->panel_count
      || !hut_flat_item_has_handles (assembly, item))
    return HUT_HANDLE_NONE;

  const HutPxRect frame = frame_px (layout, view, hole);
  for (HutHandle h = HUT_HANDLE_LOWER_LEFT; h <= HUT_HANDLE_UPPER_LEFT; h++)
    {
      const HutPoint at = handle_px (frame, h);

      if (fabs (at.u - x_px) <= HANDLE_REACH_PX && fabs (at.v - y_px) <= HANDLE_REACH_PX)
        return h;
    }
  return HUT_HANDLE_NONE;
}
