/* src/draw/hut-plot.h: curves over axes with units and round ticks.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Numbers are in the units that the axes name. Each curve has a line pattern of its own and its name
 * in the legend over the axes; colour only helps. */
#pragma once
#include "draw/hut-ink.h"

/* One curve. */
typedef struct
{
  const char *name; /* msgid; static */
  GArray *points;   /* HutPoint: u along, v up; owned */
  HutLineKind kind;
} HutPlotSeries;

/* A place on the axes that is named. */
typedef struct
{
  HutPoint at;
  char *label; /* owned */
} HutPlotMark;

typedef struct
{
  const char *title;           /* msgid; static, as are all here */
  const char *u_title, *v_title; /* msgids with the unit in them */
  GArray *series;              /* HutPlotSeries */
  GArray *marks;               /* HutPlotMark */
  double v_top;                /* curves are cut off over this, a number; NAN: nowhere */
} HutPlot;

HutPlot *hut_plot_new (const char *title, const char *u_title, const char *v_title) G_GNUC_WARN_UNUSED_RESULT;
void hut_plot_free (HutPlot *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutPlot, hut_plot_free)

/* (transfer none): points (element-type HutPoint) of a new curve, to be filled. */
GArray *hut_plot_add_series (HutPlot *self, const char *name, HutLineKind kind);
/* @label: (transfer full) */
void hut_plot_add_mark (HutPlot *self, HutPoint at, char *label);

/* What the axes span: all points and marks, zero included, up to v_top. Empty without points. */
HutRect hut_plot_range (const HutPlot *self);
/* The least of 1, 2, 5 times a power of ten that parts @span > 0 into at most @most >= 1 steps, a
 * number in the same unit. */
double hut_plot_step (double span, guint most);

/* Height that a drawing of that width wants, px. */
double hut_plot_height_px (const HutPlot *self, const HutInk *ink, double width_px);
/* Draws it into that rectangle of the ink's pixels, v down. Nothing is drawn without points. */
void hut_plot_draw (const HutPlot *self, HutInk *ink, double x_px, double y_px, double width_px, double height_px);
