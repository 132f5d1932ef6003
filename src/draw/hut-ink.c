/* src/draw/hut-ink.c: what all drawings are made with: outlines, line patterns, text, labels.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-ink.h"
#include "format/hut-number.h"
#include <math.h>
#include <pango/pangocairo.h>

/* Room round a label on its plate, px. Own choice. */
#define PLATE_PAD_PX 3.0
#define PLATE_RADIUS_PX 3.0

#define DOT_STEP_PX 7
#define DOT_RADIUS_PX 0.9

typedef struct
{
  double lengths_px[6];
  int count;
} Pattern;

/* Dash lengths in px, by HutLineKind. Own choice: long enough to tell apart on a plain screen. */
static const Pattern patterns[] = {
  [HUT_LINE_SOLID] = { { 0 }, 0 },
  [HUT_LINE_HIDDEN] = { { 6, 3 }, 2 },
  [HUT_LINE_SPLICE] = { { 9, 2.5, 2, 2.5, 2, 2.5 }, 6 },
  [HUT_LINE_AXIS] = { { 18, 4, 3, 4 }, 4 },
  [HUT_LINE_MOTION] = { { 14, 3, 2, 3, 2, 3 }, 6 },
  [HUT_LINE_KEEP_OUT] = { { 1.5, 3 }, 2 },
  [HUT_LINE_GUIDE] = { { 3, 3 }, 2 },
};

void
hut_ink_begin (HutInk *self,
               cairo_t *cr,
               const HutPalette *palette,
               double width_px,
               double height_px,
               double text_px)
{
  *self = (HutInk){
    .cr = cr,
    .palette = palette,
    .width_px = width_px,
    .height_px = height_px,
    .text_px = text_px > 0.0 ? text_px : HUT_INK_TEXT_PX,
    .decimal_point = ".",
    .layout = pango_cairo_create_layout (cr),
  };
  cairo_save (cr);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_MITER);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_BUTT);
}

void
hut_ink_end (HutInk *self)
{
  cairo_restore (self->cr);
  g_clear_object (&self->layout);
}

const char *
hut_ink_tr (const HutInk *self,
            const char *msgid)
{
  return self->translate != NULL ? self->translate (msgid) : msgid;
}

char *
hut_ink_dup_length (const HutInk *self,
                    double length_mm,
                    guint decimals)
{
  const double mm_per_inch = 25.4;
  char buffer[HUT_NUMBER_SIZE];
  g_autoptr (GString) text = g_string_new (
      self->inches ? hut_number_fixed (buffer, length_mm / mm_per_inch, decimals + 1)
                   : hut_number_fixed (buffer, length_mm, decimals));

  if (strcmp (self->decimal_point, ".") != 0)
    g_string_replace (text, ".", self->decimal_point, 1);
  return g_string_free (g_steal_pointer (&text), FALSE);
}

const char *
hut_ink_unit (const HutInk *self)
{
  return self->inches ? "in" : "mm";
}

void
hut_ink_colour (HutInk *self,
                HutColour colour)
{
  cairo_set_source_rgb (self->cr, colour.r, colour.g, colour.b);
}

void
hut_ink_colour_alpha (HutInk *self,
                      HutColour colour,
                      double alpha_ratio)
{
  cairo_set_source_rgba (self->cr, colour.r, colour.g, colour.b, alpha_ratio);
}

void
hut_ink_line (HutInk *self,
              HutLineKind kind,
              double width_px)
{
  const Pattern *pattern = &patterns[kind];

  cairo_set_dash (self->cr, pattern->lengths_px, pattern->count, 0.0);
  cairo_set_line_width (self->cr, width_px);
}

static void
trace_arc (cairo_t *cr,
           const HutSegment *segment,
           double x_px,
           double y_px,
           double scale_px_per_mm)
{
  HutPoint centre;
  double radius_mm;

  if (!hut_segment_get_circle (segment, &centre, &radius_mm))
    {
      cairo_line_to (cr, x_px + segment->end.u * scale_px_per_mm,
                     y_px - segment->end.v * scale_px_per_mm);
      return;
    }

  /* y runs down on the page: angles change sign, and with them the sense of turning. */
  const double from_rad = -atan2 (segment->start.v - centre.v, segment->start.u - centre.u);
  const double to_rad = -atan2 (segment->end.v - centre.v, segment->end.u - centre.u);
  const double cx_px = x_px + centre.u * scale_px_per_mm, cy_px = y_px - centre.v * scale_px_per_mm;

  if (segment->bulge > 0.0)
    cairo_arc_negative (cr, cx_px, cy_px, radius_mm * scale_px_per_mm, from_rad, to_rad);
  else
    cairo_arc (cr, cx_px, cy_px, radius_mm * scale_px_per_mm, from_rad, to_rad);
}

void
hut_ink_path (HutInk *self,
              const HutPath *path,
              double x_px,
              double y_px,
              double scale_px_per_mm)
{
  const guint count = hut_path_get_count (path);

  for (guint i = 0; i < count; i++)
    {
      const HutSegment s = hut_path_get_segment (path, i);

      if (i == 0)
        cairo_move_to (self->cr, x_px + s.start.u * scale_px_per_mm,
                       y_px - s.start.v * scale_px_per_mm);
      if (s.bulge != 0.0)
        trace_arc (self->cr, &s, x_px, y_px, scale_px_per_mm);
      else
        cairo_line_to (self->cr, x_px + s.end.u * scale_px_per_mm,
                       y_px - s.end.v * scale_px_per_mm);
    }
  cairo_close_path (self->cr);
}

void
hut_ink_region (HutInk *self,
                const HutRegion *region,
                double x_px,
                double y_px,
                double scale_px_per_mm)
{
  hut_ink_path (self, region->outer, x_px, y_px, scale_px_per_mm);
  for (guint i = 0; i < region->holes->len; i++)
    hut_ink_path (self, g_ptr_array_index (region->holes, i), x_px, y_px, scale_px_per_mm);
}

void
hut_ink_hatch (HutInk *self,
               double x_px,
               double y_px,
               double width_px,
               double height_px,
               double step_px)
{
  /* A line has x + y = sum. Only visible ones are drawn; they stay where they are on the paper, so
   * nothing swims while the view moves. */
  const double low_px = y_px + height_px;
  const double first = MAX (0.0, ceil (-(x_px - height_px + low_px) / step_px));
  const double last_px = MIN (x_px + width_px, self->width_px + self->height_px - low_px);

  for (double x = x_px - height_px + first * step_px; x < last_px; x += step_px)
    {
      cairo_move_to (self->cr, x, low_px);
      cairo_line_to (self->cr, x + height_px, y_px);
    }
  cairo_stroke (self->cr);
}

void
hut_ink_fill_dots (HutInk *self,
                   HutColour colour,
                   double x_px,
                   double y_px)
{
  /* A tile with one dot, laid side by side: far quicker than dashed lines. */
  cairo_surface_t *tile = cairo_surface_create_similar_image (
      cairo_get_target (self->cr), CAIRO_FORMAT_A8, DOT_STEP_PX, DOT_STEP_PX);
  cairo_t *dot = cairo_create (tile);
  cairo_pattern_t *field;

  cairo_arc (dot, DOT_STEP_PX / 2.0, DOT_STEP_PX / 2.0, DOT_RADIUS_PX, 0.0, 2.0 * G_PI);
  cairo_fill (dot);
  cairo_destroy (dot);
  field = cairo_pattern_create_for_surface (tile);
  cairo_pattern_set_extend (field, CAIRO_EXTEND_REPEAT);
  cairo_save (self->cr);
  cairo_clip (self->cr);
  cairo_translate (self->cr, round (x_px), round (y_px));
  hut_ink_colour (self, colour);
  cairo_mask (self->cr, field);
  cairo_restore (self->cr);
  cairo_pattern_destroy (field);
  cairo_surface_destroy (tile);
}

static void
set_text (HutInk *self,
          const char *text,
          double size_px,
          gboolean bold)
{
  const double wanted_px = size_px > 0.0 ? size_px : self->text_px;

  if (wanted_px != self->font_px || bold != self->font_bold)
    {
      PangoFontDescription *font = pango_font_description_from_string ("Sans");

      pango_font_description_set_absolute_size (font, wanted_px * PANGO_SCALE);
      if (bold)
        pango_font_description_set_weight (font, PANGO_WEIGHT_BOLD);
      pango_layout_set_font_description (self->layout, font);
      pango_font_description_free (font);
      self->font_px = wanted_px;
      self->font_bold = bold;
    }
  /* Most texts are measured first: what is laid out already is kept. */
  if (strcmp (pango_layout_get_text (self->layout), text) != 0)
    pango_layout_set_text (self->layout, text, -1);
}

void
hut_ink_measure (HutInk *self,
                 const char *text,
                 double size_px,
                 gboolean bold,
                 double *width_px,
                 double *height_px)
{
  int width, height;

  set_text (self, text, size_px, bold);
  pango_layout_get_pixel_size (self->layout, &width, &height);
  *width_px = width;
  *height_px = height;
}

static void
draw_plate (HutInk *self,
            double x_px,
            double y_px,
            double width_px,
            double height_px)
{
  const double x0 = x_px - PLATE_PAD_PX, x1 = x_px + width_px + PLATE_PAD_PX;
  const double y0 = y_px, y1 = y_px + height_px, r = PLATE_RADIUS_PX;

  cairo_new_sub_path (self->cr);
  cairo_arc (self->cr, x1 - r, y0 + r, r, -G_PI_2, 0.0);
  cairo_arc (self->cr, x1 - r, y1 - r, r, 0.0, G_PI_2);
  cairo_arc (self->cr, x0 + r, y1 - r, r, G_PI_2, G_PI);
  cairo_arc (self->cr, x0 + r, y0 + r, r, G_PI, 3.0 * G_PI_2);
  cairo_close_path (self->cr);
  hut_ink_colour (self, self->palette->plate);
  cairo_fill (self->cr);
}

void
hut_ink_text (HutInk *self,
              const char *text,
              const HutInkText *how)
{
  double width_px, height_px;

  hut_ink_measure (self, text, how->size_px, how->bold, &width_px, &height_px);
  if (how->room_px > 0.0 && width_px > how->room_px)
    {
      pango_layout_set_ellipsize (self->layout, PANGO_ELLIPSIZE_END);
      pango_layout_set_width (self->layout, (int)(how->room_px * PANGO_SCALE));
      width_px = how->room_px;
    }

  const double shift_px = how->align == HUT_TEXT_START ? 0.0
                          : how->align == HUT_TEXT_END ? width_px
                                                       : width_px / 2.0;
  cairo_save (self->cr);
  cairo_translate (self->cr, how->x_px, how->y_px);
  if (how->turned)
    cairo_rotate (self->cr, -G_PI_2);
  cairo_translate (self->cr, -round (shift_px), -round (height_px / 2.0));
  if (how->plate)
    draw_plate (self, 0.0, 0.0, width_px, height_px);
  hut_ink_colour (self, how->colour);
  cairo_move_to (self->cr, 0.0, 0.0);
  pango_cairo_show_layout (self->cr, self->layout);
  pango_layout_set_width (self->layout, -1);
  cairo_restore (self->cr);
}
