/* src/draw/hut-flat-caption.c: names and sizes of panels.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-flat-caption.h"
#include "draw/hut-panel-title.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* Own choice, px. */
#define CAPTION_GAP_PX 4.0
#define DIMENSION_OFF_PX 11.0
#define DIMENSION_LINE_PX 0.8
#define TICK_PX 3.0
#define LABEL_SPARE_PX 8.0
#define WIDTH_ROOM_RATIO 1.6 /* height of a line of text, and half of one, in text sizes */

/* "Base front · 6.1 mm"; only the name, or nothing, when the panel is too small for it. */
void
hut_flat_caption_draw (const HutFlatScene *scene,
                       guint index)
{
  const HutPanel *panel = g_ptr_array_index (scene->assembly->panels, index);
  HutInk *ink = scene->ink;
  const HutPxRect px = hut_flat_scene_rect (
      scene, index, (HutRect){ 0.0, 0.0, panel->width_mm, panel->height_mm });
  const char *title = hut_ink_tr (ink, hut_panel_id_title (panel->id));
  g_autofree char *thickness = hut_ink_dup_length (ink, panel->thickness_mm, 2);
  /* Translators: name of a panel, its thickness, mm or in */
  const char *format = panel->bought ? N_ ("%s · %s %s, bought") : N_ ("%s · %s %s");
  g_autofree char *full
      = g_strdup_printf (hut_ink_tr (ink, format), title, thickness, hut_ink_unit (ink));
  const char *text = full;
  double width_px, height_px;

  if (px.width < 2.0 * ink->text_px)
    return;
  hut_ink_measure (ink, text, 0.0, TRUE, &width_px, &height_px);
  if (width_px > px.width + scene->layout->gap_mm * scene->view.scale_px_per_mm / 2.0)
    {
      text = title;
      hut_ink_measure (ink, text, 0.0, TRUE, &width_px, &height_px);
      if (width_px > px.width)
        return;
    }

  /* It follows the visible part of the panel's upper left corner. */
  const double y_px = px.y - CAPTION_GAP_PX - height_px / 2.0;
  const double low_px = px.y + px.height - height_px;
  const gboolean held = y_px < height_px / 2.0 || px.x < 0.0;

  hut_ink_text (
      ink, text,
      &(HutInkText){
          .x_px = MIN (MAX (px.x, held ? 2.0 * CAPTION_GAP_PX : px.x), px.x + px.width - width_px),
          .y_px = MIN (MAX (y_px, height_px / 2.0 + CAPTION_GAP_PX), low_px),
          .bold = TRUE,
          .plate = held,
          .colour = ink->palette->text,
      });
}

static void
tick (cairo_t *cr,
      HutPoint at)
{
  cairo_move_to (cr, at.u - TICK_PX, at.v + TICK_PX);
  cairo_line_to (cr, at.u + TICK_PX, at.v - TICK_PX);
}

void
hut_flat_dimension (HutInk *ink,
                    HutPoint from_px,
                    HutPoint to_px,
                    double value_mm,
                    HutColour colour)
{
  const gboolean upright = fabs (to_px.v - from_px.v) > fabs (to_px.u - from_px.u);
  const double length_px = hut_point_distance_mm (from_px, to_px);
  const double size_px = ink->text_px - 1.0;
  g_autofree char *text = hut_ink_dup_length (ink, value_mm, 1);
  double width_px, height_px;

  hut_ink_measure (ink, text, size_px, FALSE, &width_px, &height_px);
  if (length_px < width_px + LABEL_SPARE_PX)
    return;
  hut_ink_line (ink, HUT_LINE_SOLID, DIMENSION_LINE_PX);
  hut_ink_colour (ink, colour);
  cairo_move_to (ink->cr, from_px.u, from_px.v);
  cairo_line_to (ink->cr, to_px.u, to_px.v);
  tick (ink->cr, from_px);
  tick (ink->cr, to_px);
  cairo_stroke (ink->cr);
  hut_ink_text (ink, text,
                &(HutInkText){
                    .x_px = (from_px.u + to_px.u) / 2.0,
                    .y_px = (from_px.v + to_px.v) / 2.0,
                    .size_px = size_px,
                    .align = HUT_TEXT_MIDDLE,
                    .turned = upright,
                    .plate = TRUE,
                    .colour = colour,
                });
}

void
hut_flat_dimensions_draw (const HutFlatScene *scene,
                          guint index)
{
  const HutPanel *panel = g_ptr_array_index (scene->assembly->panels, index);
  HutInk *ink = scene->ink;
  const HutPxRect px = hut_flat_scene_rect (
      scene, index, (HutRect){ 0.0, 0.0, panel->width_mm, panel->height_mm });
  const double gap_px = scene->layout->gap_mm * scene->view.scale_px_per_mm;
  const double off_px = DIMENSION_OFF_PX;

  if (gap_px >= off_px + ink->text_px)
    hut_flat_dimension (ink, (HutPoint){ px.x - off_px, px.y + px.height },
                        (HutPoint){ px.x - off_px, px.y }, panel->height_mm,
                        ink->palette->text_dim);
  /* The width below shares its gap with the next panel's name. */
  if (gap_px >= off_px + CAPTION_GAP_PX + WIDTH_ROOM_RATIO * ink->text_px)
    hut_flat_dimension (ink, (HutPoint){ px.x, px.y + px.height + off_px },
                        (HutPoint){ px.x + px.width, px.y + px.height + off_px }, panel->width_mm,
                        ink->palette->text_dim);
}
