/* src/draw/hut-flat-panel.c: one panel of the flat view: sheet, edges, openings, windows.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-flat-panel.h"
#include "draw/hut-flat-hardware.h"
#include <glib/gi18n-lib.h>

/* Own choice, px. */
#define CUT_LINE_PX 1.6
#define TARGET_LINE_PX 3.0
#define PLATE_LINE_PX 1.0
#define WINDOW_HATCH_STEP_PX 14.0
#define WINDOW_HATCH_LINE_PX 0.5
#define WINDOW_HATCH_ALPHA_RATIO 0.5
#define NAME_PAD_PX 4.0

void
hut_flat_panel_fill (const HutFlatScene *scene,
                     guint index)
{
  const HutPanel *panel = g_ptr_array_index (scene->assembly->panels, index);
  HutInk *ink = scene->ink;
  double x, y;

  hut_flat_view_to_px (&scene->view, scene->layout, index, (HutPoint){ 0.0, 0.0 }, &x, &y);
  hut_ink_region (ink, panel->region, x, y, scene->view.scale_px_per_mm);
  hut_ink_colour (ink, ink->palette->sheet);
  cairo_set_fill_rule (ink->cr, CAIRO_FILL_RULE_EVEN_ODD);
  cairo_fill (ink->cr);
  cairo_set_fill_rule (ink->cr, CAIRO_FILL_RULE_WINDING);
}

/* Adds the outlines of a hole to cairo's path. */
static void
trace_hole (const HutFlatScene *scene,
            const HutPlacedHole *hole)
{
  double x, y;

  hut_flat_view_to_px (&scene->view, scene->layout, hole->panel, (HutPoint){ 0.0, 0.0 }, &x, &y);
  for (guint i = 0; i < hole->paths->len; i++)
    hut_ink_path (scene->ink, g_ptr_array_index (hole->paths, i), x, y,
                  scene->view.scale_px_per_mm);
}

static void
draw_window_ground (const HutFlatScene *scene,
                    const HutPlacedHole *hole)
{
  HutInk *ink = scene->ink;
  const HutPxRect px = hut_flat_scene_rect (scene, hole->panel, hole->bounds);

  cairo_save (ink->cr);
  trace_hole (scene, hole);
  hut_ink_colour_alpha (ink, ink->palette->window_fill, 0.75); /* the machine stays visible */
  cairo_fill_preserve (ink->cr);
  cairo_clip (ink->cr);
  hut_ink_line (ink, HUT_LINE_SOLID, WINDOW_HATCH_LINE_PX);
  hut_ink_colour_alpha (ink, ink->palette->window_line, WINDOW_HATCH_ALPHA_RATIO);
  hut_ink_hatch (ink, px.x, px.y, px.width, px.height, WINDOW_HATCH_STEP_PX);
  cairo_restore (ink->cr);
}

/* Glazing and frame lie behind the panel: hidden lines. So do face plates, unless they lie before
 * it. */
static void
draw_plates (const HutFlatScene *scene,
             guint index)
{
  HutInk *ink = scene->ink;

  for (guint i = 0; i < scene->assembly->plates->len; i++)
    {
      const HutPlate *plate = g_ptr_array_index (scene->assembly->plates, i);
      double x, y;

      if (plate->panel != index)
        continue;
      hut_flat_view_to_px (&scene->view, scene->layout, index, (HutPoint){ 0.0, 0.0 }, &x, &y);
      hut_ink_path (ink, plate->region->outer, x, y, scene->view.scale_px_per_mm);
      hut_ink_line (ink, plate->depth0_mm < 0.0 ? HUT_LINE_SOLID : HUT_LINE_HIDDEN, PLATE_LINE_PX);
      hut_ink_colour (ink, ink->palette->window_line);
      cairo_stroke (ink->cr);
    }
}

/* The name in the middle of a hole, or under a small one; left out where there is no room for it.
 */
static void
draw_hole_name (const HutFlatScene *scene,
                const HutPlacedHole *hole)
{
  HutInk *ink = scene->ink;
  const HutDesign *design = scene->assembly->design;
  const HutOpening *opening = hut_design_get_opening (design, hole->item);
  const HutWindow *window = hut_design_get_window (design, hole->item);
  const HutHardware *hardware = hut_design_get_hardware (design, hole->item);
  const char *name = opening != NULL    ? opening->name
                     : window != NULL   ? window->name
                     : hardware != NULL ? hardware->name
                                        : NULL;
  const HutPxRect px = hut_flat_scene_rect (scene, hole->panel, hole->bounds);
  double width_px, height_px;

  if (name == NULL || *name == '\0' || px.width < ink->text_px)
    return;
  hut_ink_measure (ink, name, 0.0, FALSE, &width_px, &height_px);
  const gboolean pattern = opening != NULL && opening->shape == HUT_SHAPE_PATTERN;
  if (width_px + 2.0 * NAME_PAD_PX > px.width
      || (!pattern && height_px + 2.0 * NAME_PAD_PX > px.height))
    return;
  const HutPoint middle = { px.x + px.width / 2.0,
                            pattern ? px.y + px.height + NAME_PAD_PX + height_px / 2.0
                                    : px.y + px.height / 2.0 };
  if (!hut_flat_scene_claim (scene, (HutPxRect){ middle.u - width_px / 2.0,
                                                 middle.v - height_px / 2.0, width_px, height_px }))
    return;
  hut_ink_text (ink, name,
                &(HutInkText){
                    .x_px = middle.u,
                    .y_px = middle.v,
                    .align = HUT_TEXT_MIDDLE,
                    .plate = TRUE,
                    .colour = ink->palette->text,
                });
}

/* A hole that the panel does not have because it does not fit is shown with a hidden line. */
static void
stroke_hole (const HutFlatScene *scene,
             const HutPlacedHole *hole)
{
  HutInk *ink = scene->ink;

  trace_hole (scene, hole);
  hut_ink_line (ink, hole->cut ? HUT_LINE_SOLID : HUT_LINE_HIDDEN, CUT_LINE_PX);
  hut_ink_colour (ink, ink->palette->outline);
  cairo_stroke (ink->cr);
}

static void
stroke_outline (const HutFlatScene *scene,
                guint index)
{
  const HutPanel *panel = g_ptr_array_index (scene->assembly->panels, index);
  const HutPanelId *target = scene->style->target;
  HutInk *ink = scene->ink;
  double x, y;

  hut_flat_view_to_px (&scene->view, scene->layout, index, (HutPoint){ 0.0, 0.0 }, &x, &y);
  hut_ink_path (ink, panel->region->outer, x, y, scene->view.scale_px_per_mm);
  if (target != NULL && hut_panel_id_equal (*target, panel->id))
    {
      hut_ink_line (ink, HUT_LINE_SOLID, TARGET_LINE_PX);
      hut_ink_colour (ink, ink->palette->selection);
    }
  else
    {
      hut_ink_line (ink, HUT_LINE_SOLID, CUT_LINE_PX);
      hut_ink_colour (ink, ink->palette->outline);
    }
  cairo_stroke (ink->cr);
}

void
hut_flat_panel_draw (const HutFlatScene *scene,
                     guint index)
{
  const GPtrArray *holes = scene->assembly->holes;

  for (guint i = 0; i < holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (holes, i);

      if (hole->panel == index && hole->source == HUT_HOLE_WINDOW)
        draw_window_ground (scene, hole);
    }
  draw_plates (scene, index);
  hut_flat_hardware_draw (scene, index);
  stroke_outline (scene, index);
  for (guint i = 0; i < holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (holes, i);

      if (hole->panel == index)
        stroke_hole (scene, hole);
    }
  for (guint i = 0; i < holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (holes, i);

      if (hole->panel == index && hole->source != HUT_HOLE_SCREWS)
        draw_hole_name (scene, hole);
    }
}
