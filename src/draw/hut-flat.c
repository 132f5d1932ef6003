/* src/draw/hut-flat.c: the flat view: all panels unfolded, drawn with Cairo.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-flat.h"
#include "draw/hut-flat-caption.h"
#include "draw/hut-flat-grid.h"
#include "draw/hut-flat-machine.h"
#include "draw/hut-flat-marks.h"
#include "draw/hut-flat-panel.h"
#include "draw/hut-flat-scene.h"
#include "draw/hut-flat-selection.h"
#include "draw/hut-flat-splice.h"
#include "draw/hut-legend.h"

/* Captions and sizes stand this far outside a panel at most, px. Own choice. */
#define PANEL_BORDER_PX 40.0
#define LEGEND_OFF_PX 8.0

HutFlatStyle
hut_flat_style_plain (void)
{
  return (HutFlatStyle){
    .show_machine = TRUE,
    .show_splices = TRUE,
    .show_dimensions = TRUE,
    .selected_finding = -1,
  };
}

static void
draw_panel (const HutFlatScene *scene,
            guint index)
{
  const HutPanel *panel = g_ptr_array_index (scene->assembly->panels, index);
  const HutPxRect px = hut_flat_scene_rect (
      scene, index, (HutRect){ 0.0, 0.0, panel->width_mm, panel->height_mm });

  if (!hut_flat_scene_sees (scene, px, PANEL_BORDER_PX))
    return;
  hut_flat_panel_fill (scene, index);
  if (scene->style->show_grid)
    hut_flat_grid_draw (scene, index);
  if (scene->style->show_machine)
    hut_flat_machine_draw (scene, index);
  hut_flat_panel_draw (scene, index);
  if (scene->style->show_splices)
    hut_flat_splice_draw (scene, index);
  hut_flat_hinge_draw (scene, index);
  if (scene->style->show_machine)
    hut_flat_machine_names_draw (scene, index);
  if (scene->style->show_dimensions)
    hut_flat_dimensions_draw (scene, index);
  hut_flat_caption_draw (scene, index);
}

/* TRUE when a box on the page meets no panel. */
static gboolean
is_blank (const HutFlatScene *scene,
          HutPxRect box)
{
  for (guint i = 0; i < scene->layout->panel_count; i++)
    {
      const HutPanel *panel = g_ptr_array_index (scene->assembly->panels, i);
      const HutPxRect px = hut_flat_scene_rect (
          scene, i, (HutRect){ 0.0, 0.0, panel->width_mm, panel->height_mm });

      if (px.x < box.x + box.width && box.x < px.x + px.width && px.y < box.y + box.height
          && box.y < px.y + px.height)
        return FALSE;
    }
  return TRUE;
}

/* In a corner of the page that the cross of panels leaves free; nowhere if all are taken. */
static void
draw_legend (const HutFlatScene *scene)
{
  HutInk *ink = scene->ink;
  double width_px, height_px;

  hut_legend_measure (ink, &width_px, &height_px);
  for (int corner = 0; corner < 4; corner++)
    {
      const gboolean right = corner % 2 == 1, low = corner < 2;
      const HutPxRect box = {
        right ? ink->width_px - width_px - LEGEND_OFF_PX : LEGEND_OFF_PX,
        low ? ink->height_px - height_px - LEGEND_OFF_PX : LEGEND_OFF_PX,
        width_px,
        height_px,
      };

      if (box.x < 0.0 || box.y < 0.0 || !is_blank (scene, box))
        continue;
      hut_legend_draw (ink, box.x, box.y);
      return;
    }
}

void
hut_flat_draw (cairo_t *cr,
               const HutAssembly *assembly,
               const HutPartSet *parts,
               const GPtrArray *findings,
               const HutFlatLayout *layout,
               const HutFlatView *view,
               const HutFlatStyle *style,
               double width_px,
               double height_px)
{
  g_autoptr (GArray) labels = g_array_new (FALSE, FALSE, sizeof (HutPxRect));
  HutInk ink;

  hut_ink_begin (&ink, cr, hut_palette_get (style->dark, style->high_contrast), width_px, height_px,
                 style->text_px);
  ink.translate = style->translate;
  if (style->decimal_point != NULL)
    ink.decimal_point = style->decimal_point;
  ink.inches = style->inches;

  const HutFlatScene scene = {
    .ink = &ink,
    .assembly = assembly,
    .parts = parts,
    .findings = findings,
    .layout = layout,
    .view = *view,
    .style = style,
    .labels = labels,
  };

  cairo_rectangle (cr, 0.0, 0.0, width_px, height_px);
  cairo_clip_preserve (cr);
  hut_ink_colour (&ink, ink.palette->background);
  cairo_fill (cr);
  for (guint i = 0; i < layout->panel_count; i++)
    draw_panel (&scene, i);
  if (style->show_legend && layout->panel_count > 0)
    draw_legend (&scene);
  hut_flat_marks_draw (&scene);
  hut_flat_guides_draw (&scene);
  hut_flat_hover_draw (&scene);
  hut_flat_selection_draw (&scene);
  hut_ink_end (&ink);
}
