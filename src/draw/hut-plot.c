/* src/draw/hut-plot.c: curves over axes with units and round ticks.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-plot.h"
#include "format/hut-number.h"

/* Layout, in heights of text or px: own choices. */
#define LINE_RATIO 1.55
#define TITLE_RATIO 1.15
#define SAMPLE_PX 30.0
#define GAP_PX 8.0
#define TICK_PX 4.0
#define CURVE_PX 1.8
#define GRID_PX 0.6
#define GRID_ALPHA_RATIO 0.28
#define MARK_PX 4.0
#define SIDE_RATIO 0.46 /* height of the axes over their width */
#define LABEL_ROOM_RATIO 4.2 /* left of the axis, in heights of text */
#define RIGHT_PX 14.0
#define U_TICKS 6u
#define V_TICKS 5u
/* A curve does not touch the frame. */
#define HEAD_ROOM_RATIO 1.06
/* Own choice: far over the rounding of a division, far under what is seen. */
#define ROUNDING_RATIO 1e-9

static void
clear_series (gpointer data)
{
  g_clear_pointer (&((HutPlotSeries *)data)->points, g_array_unref);
}

static void
clear_mark (gpointer data)
{
  g_clear_pointer (&((HutPlotMark *)data)->label, g_free);
}

HutPlot *
hut_plot_new (const char *title,
              const char *u_title,
              const char *v_title)
{
  HutPlot *self = g_new0 (HutPlot, 1);

  *self = (HutPlot) { title, u_title, v_title, NULL, NULL, NAN };
  self->series = g_array_new (FALSE, FALSE, sizeof (HutPlotSeries));
  g_array_set_clear_func (self->series, clear_series);
  self->marks = g_array_new (FALSE, FALSE, sizeof (HutPlotMark));
  g_array_set_clear_func (self->marks, clear_mark);
  return self;
}

void
hut_plot_free (HutPlot *self)
{
  if (self == NULL)
    return;
  g_array_unref (self->series);
  g_array_unref (self->marks);
  g_free (self);
}

GArray *
hut_plot_add_series (HutPlot *self,
                     const char *name,
                     HutLineKind kind)
{
  const HutPlotSeries series = { name, g_array_new (FALSE, FALSE, sizeof (HutPoint)), kind };

  g_return_val_if_fail (self != NULL && name != NULL, NULL);

  g_array_append_val (self->series, series);
  return series.points;
}

void
hut_plot_add_mark (HutPlot *self,
                   HutPoint at,
                   char *label)
{
  const HutPlotMark mark = { at, label };

  g_return_if_fail (self != NULL);

  g_array_append_val (self->marks, mark);
}

/* ---- numbers --------------------------------------------------------------------------------- */

static void
include (HutRect *range,
         HutPoint p)
{
  if (!isfinite (p.u) || !isfinite (p.v))
    return;
  *range = (HutRect) { MIN (range->u0, p.u), MIN (range->v0, p.v), MAX (range->u1, p.u),
                       MAX (range->v1, p.v) };
}

HutRect
hut_plot_range (const HutPlot *self)
{
  HutRect range = { 0, 0, 0, 0 };
  const HutRect nothing = { 0, 0, -1, -1 };

  g_return_val_if_fail (self != NULL, nothing);

  for (guint i = 0; i < self->series->len; i++)
    {
      const HutPlotSeries *series = &g_array_index (self->series, HutPlotSeries, i);

      for (guint k = 0; k < series->points->len; k++)
        include (&range, g_array_index (series->points, HutPoint, k));
    }
  for (guint i = 0; i < self->marks->len; i++)
    include (&range, g_array_index (self->marks, HutPlotMark, i).at);
  if (isfinite (self->v_top))
    range.v1 = MIN (range.v1, self->v_top);
  range.v1 *= HEAD_ROOM_RATIO;
  range.v0 *= HEAD_ROOM_RATIO;
  return range.u1 > range.u0 && range.v1 > range.v0 ? range : nothing;
}

double
hut_plot_step (double span,
               guint most)
{
  static const double steps[] = { 1, 2, 5, 10 };
  double power;

  g_return_val_if_fail (span > 0 && most >= 1, NAN);

  power = pow (10, floor (log10 (span / most)));
  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    if (steps[i] * power * most >= span * (1 - ROUNDING_RATIO))
      return steps[i] * power;
  return steps[G_N_ELEMENTS (steps) - 1] * power;
}

/* ---- drawing --------------------------------------------------------------------------------- */

/* Where the axes are, px, and what they span. */
typedef struct
{
  HutInk *ink;
  HutRect range;
  double x_px, y_px, width_px, height_px;
} Axes;

static double
x_of_px (const Axes *self,
         double u)
{
  return self->x_px + (u - self->range.u0) / (self->range.u1 - self->range.u0) * self->width_px;
}

static double
y_of_px (const Axes *self,
         double v)
{
  return self->y_px
         + (self->range.v1 - v) / (self->range.v1 - self->range.v0) * self->height_px;
}

static double
line_px (const HutInk *ink)
{
  return LINE_RATIO * ink->text_px;
}

double
hut_plot_height_px (const HutPlot *self,
                    const HutInk *ink,
                    double width_px)
{
  g_return_val_if_fail (self != NULL && ink != NULL, 0);

  /* Title, legend, name of the upright axis, axes, tick labels, name of the level axis. */
  return line_px (ink) * (4.0 + self->series->len)
         + (width_px - LABEL_ROOM_RATIO * ink->text_px - RIGHT_PX) * SIDE_RATIO;
}

static void
write_text (HutInk *ink,
            const char *text,
            double x_px,
            double y_px,
            HutTextAlign align,
            gboolean bold)
{
  hut_ink_text (ink, text,
                &(HutInkText){ .x_px = x_px,
                               .y_px = y_px,
                               .align = align,
                               .bold = bold,
                               .colour = ink->palette->text });
}

static void
write_number (HutInk *ink,
              double value,
              double step,
              double x_px,
              double y_px,
              HutTextAlign align)
{
  char buffer[HUT_NUMBER_SIZE];
  const int decimals = MAX (0, (int)ceil (-log10 (step) - ROUNDING_RATIO));
  GString *text = g_string_new (hut_number_fixed (buffer, value, (guint)decimals));

  if (ink->decimal_point != NULL)
    g_string_replace (text, ".", ink->decimal_point, 1);
  write_text (ink, text->str, x_px, y_px, align, FALSE);
  g_string_free (text, TRUE);
}

static void
draw_line (HutInk *ink,
           double x0_px,
           double y0_px,
           double x1_px,
           double y1_px)
{
  cairo_move_to (ink->cr, x0_px, y0_px);
  cairo_line_to (ink->cr, x1_px, y1_px);
  cairo_stroke (ink->cr);
}

static void
draw_grid_line (const Axes *self,
                double x0_px,
                double y0_px,
                double x1_px,
                double y1_px)
{
  hut_ink_line (self->ink, HUT_LINE_SOLID, GRID_PX);
  hut_ink_colour_alpha (self->ink, self->ink->palette->text, GRID_ALPHA_RATIO);
  draw_line (self->ink, x0_px, y0_px, x1_px, y1_px);
}

static void
draw_ticks (const Axes *self)
{
  const HutRect range = self->range;
  const double u_step = hut_plot_step (range.u1 - range.u0, U_TICKS);
  const double v_step = hut_plot_step (range.v1 - range.v0, V_TICKS);
  const double below_px = self->y_px + self->height_px;

  for (double k = ceil (range.u0 / u_step); k * u_step <= range.u1; k++)
    {
      const double x_px = x_of_px (self, k * u_step);

      draw_grid_line (self, x_px, self->y_px, x_px, below_px + TICK_PX);
      write_number (self->ink, k * u_step, u_step, x_px, below_px + line_px (self->ink) / 2 + 2,
                    HUT_TEXT_MIDDLE);
    }
  for (double k = ceil (range.v0 / v_step); k * v_step <= range.v1; k++)
    {
      const double y_px = y_of_px (self, k * v_step);

      draw_grid_line (self, self->x_px - TICK_PX, y_px, self->x_px + self->width_px, y_px);
      write_number (self->ink, k * v_step, v_step, self->x_px - TICK_PX - 3, y_px, HUT_TEXT_END);
    }
  hut_ink_line (self->ink, HUT_LINE_SOLID, 1);
  hut_ink_colour (self->ink, self->ink->palette->text);
  draw_line (self->ink, self->x_px, self->y_px, self->x_px, below_px);
  draw_line (self->ink, self->x_px, y_of_px (self, 0), self->x_px + self->width_px,
             y_of_px (self, 0));
}

static void
use_line (HutInk *ink,
          HutLineKind kind)
{
  hut_ink_line (ink, kind, CURVE_PX);
  hut_ink_colour (ink, kind == HUT_LINE_SOLID ? ink->palette->outline : ink->palette->splice);
}

static void
draw_series (const Axes *self,
             const HutPlotSeries *series)
{
  gboolean down = FALSE;

  cairo_save (self->ink->cr);
  cairo_rectangle (self->ink->cr, self->x_px, self->y_px, self->width_px, self->height_px);
  cairo_clip (self->ink->cr);
  use_line (self->ink, series->kind);
  cairo_new_path (self->ink->cr);
  for (guint i = 0; i < series->points->len; i++)
    {
      const HutPoint p = g_array_index (series->points, HutPoint, i);

      if (!isfinite (p.v))
        continue;
      (down ? cairo_line_to : cairo_move_to) (self->ink->cr, x_of_px (self, p.u),
                                              y_of_px (self, p.v));
      down = TRUE;
    }
  cairo_stroke (self->ink->cr);
  cairo_restore (self->ink->cr);
}

/* The label stands on the side where there is more room. */
static void
draw_mark (const Axes *self,
           const HutPlotMark *mark)
{
  const double x_px = x_of_px (self, mark->at.u), y_px = y_of_px (self, mark->at.v);
  const gboolean right = x_px < self->x_px + self->width_px / 2;
  const double aside_px = right ? GAP_PX : -GAP_PX;
  const double up_px = y_px - self->y_px > line_px (self->ink) ? -0.7 : 0.7;

  cairo_new_path (self->ink->cr);
  cairo_arc (self->ink->cr, x_px, y_px, MARK_PX, 0, 2 * G_PI);
  hut_ink_colour (self->ink, self->ink->palette->selection);
  cairo_fill (self->ink->cr);
  hut_ink_text (self->ink, mark->label,
                &(HutInkText){ .x_px = x_px + aside_px,
                               .y_px = y_px + up_px * line_px (self->ink),
                               .align = right ? HUT_TEXT_START : HUT_TEXT_END,
                               .bold = TRUE,
                               .plate = TRUE,
                               .colour = self->ink->palette->text });
}

static void
draw_legend (const HutPlot *self,
             HutInk *ink,
             double x_px,
             double *y_px)
{
  for (guint i = 0; i < self->series->len; i++)
    {
      const HutPlotSeries *series = &g_array_index (self->series, HutPlotSeries, i);

      use_line (ink, series->kind);
      draw_line (ink, x_px, *y_px + line_px (ink) / 2, x_px + SAMPLE_PX,
                 *y_px + line_px (ink) / 2);
      write_text (ink, hut_ink_tr (ink, series->name), x_px + SAMPLE_PX + GAP_PX,
                  *y_px + line_px (ink) / 2, HUT_TEXT_START, FALSE);
      *y_px += line_px (ink);
    }
}

void
hut_plot_draw (const HutPlot *self,
               HutInk *ink,
               double x_px,
               double y_px,
               double width_px,
               double height_px)
{
  const double row_px = ink != NULL ? line_px (ink) : 0;
  const double bottom_px = y_px + height_px;
  Axes axes = { .ink = ink };
  double top_px = y_px;

  g_return_if_fail (self != NULL && ink != NULL);

  axes.range = hut_plot_range (self);
  if (axes.range.u1 < axes.range.u0)
    return;
  hut_ink_text (ink, hut_ink_tr (ink, self->title),
                &(HutInkText){ .x_px = x_px,
                               .y_px = top_px + row_px / 2,
                               .size_px = ink->text_px * TITLE_RATIO,
                               .room_px = width_px,
                               .bold = TRUE,
                               .colour = ink->palette->text });
  top_px += row_px;
  draw_legend (self, ink, x_px, &top_px);
  write_text (ink, hut_ink_tr (ink, self->v_title), x_px, top_px + row_px / 2, HUT_TEXT_START,
              FALSE);
  top_px += row_px;
  axes.x_px = x_px + LABEL_ROOM_RATIO * ink->text_px;
  axes.y_px = top_px;
  axes.width_px = width_px - LABEL_ROOM_RATIO * ink->text_px - RIGHT_PX;
  axes.height_px = bottom_px - 2 * row_px - top_px;
  draw_ticks (&axes);
  for (guint i = 0; i < self->series->len; i++)
    draw_series (&axes, &g_array_index (self->series, HutPlotSeries, i));
  for (guint i = 0; i < self->marks->len; i++)
    draw_mark (&axes, &g_array_index (self->marks, HutPlotMark, i));
  write_text (ink, hut_ink_tr (ink, self->u_title), x_px + width_px - RIGHT_PX,
              bottom_px - row_px / 2, HUT_TEXT_END, FALSE);
}
