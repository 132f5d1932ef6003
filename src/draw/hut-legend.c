/* src/draw/hut-legend.c: what the lines and marks of the flat view mean.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-legend.h"
#include "draw/hut-flat-marks.h"
#include <glib/gi18n-lib.h>

/* Own choice, px. */
#define PAD_PX 10.0
#define SAMPLE_PX 44.0
#define SAMPLE_GAP_PX 10.0
#define ROW_RATIO 1.55 /* row height in text heights */
#define BADGE_ROW_PX 27.0

typedef struct
{
  const char *msgid;
  HutLineKind kind;
  double width_px;
  gsize colour_offset; /* of the HutColour in HutPalette */
} LineEntry;

#define COLOUR(field) G_STRUCT_OFFSET (HutPalette, field)

static const LineEntry lines[] = {
  { N_ ("cut edge"), HUT_LINE_SOLID, 1.6, COLOUR (outline) },
  { N_ ("glazing, frame (hidden)"), HUT_LINE_HIDDEN, 1.0, COLOUR (window_line) },
  { N_ ("strap, baffle, light trap (hidden)"), HUT_LINE_HIDDEN, 1.0, COLOUR (strap) },
  { N_ ("splice"), HUT_LINE_SPLICE, 1.5, COLOUR (splice) },
  { N_ ("hinge line"), HUT_LINE_AXIS, 1.4, COLOUR (hinge) },
  { N_ ("machine"), HUT_LINE_SOLID, 0.8, COLOUR (machine_line) },
  { N_ ("reach of moving parts"), HUT_LINE_MOTION, 1.0, COLOUR (motion_line) },
  { N_ ("kept free"), HUT_LINE_KEEP_OUT, 1.2, COLOUR (keep_out_line) },
};

static const char *const severities[] = {
  [HUT_SEVERITY_BLOCKS] = N_ ("blocks the cut"),
  [HUT_SEVERITY_WARNS] = N_ ("warns"),
  [HUT_SEVERITY_NOTES] = N_ ("notes"),
};

static double
row_px (const HutInk *ink)
{
  return ROW_RATIO * ink->text_px;
}

void
hut_legend_measure (HutInk *ink,
                    double *width_px,
                    double *height_px)
{
  double widest_px = 0.0;

  for (gsize i = 0; i < G_N_ELEMENTS (lines); i++)
    {
      double text_width_px, text_height_px;

      hut_ink_measure (ink, hut_ink_tr (ink, lines[i].msgid), 0.0, FALSE, &text_width_px,
                       &text_height_px);
      widest_px = MAX (widest_px, text_width_px);
    }
  *width_px = 2.0 * PAD_PX + SAMPLE_PX + SAMPLE_GAP_PX + widest_px;
  *height_px = 2.0 * PAD_PX + row_px (ink) * (double)G_N_ELEMENTS (lines)
               + BADGE_ROW_PX * (double)G_N_ELEMENTS (severities);
}

static void
draw_text (HutInk *ink,
           const char *msgid,
           double x_px,
           double y_px)
{
  hut_ink_text (ink, hut_ink_tr (ink, msgid),
                &(HutInkText){ .x_px = x_px + SAMPLE_PX + SAMPLE_GAP_PX,
                               .y_px = y_px,
                               .colour = ink->palette->text });
}

void
hut_legend_draw (HutInk *ink,
                 double x_px,
                 double y_px)
{
  double y = y_px + PAD_PX + row_px (ink) / 2.0;
  const double x = x_px + PAD_PX;

  for (gsize i = 0; i < G_N_ELEMENTS (lines); i++)
    {
      hut_ink_line (ink, lines[i].kind, lines[i].width_px);
      hut_ink_colour (ink, G_STRUCT_MEMBER (HutColour, ink->palette, lines[i].colour_offset));
      cairo_move_to (ink->cr, x, y);
      cairo_line_to (ink->cr, x + SAMPLE_PX, y);
      cairo_stroke (ink->cr);
      draw_text (ink, lines[i].msgid, x, y);
      y += row_px (ink);
    }
  y += (BADGE_ROW_PX - row_px (ink)) / 2.0;
  for (HutSeverity s = HUT_SEVERITY_BLOCKS; s <= HUT_SEVERITY_NOTES; s++)
    {
      hut_flat_mark_badge (ink, s, 0, x + SAMPLE_PX / 2.0, y);
      draw_text (ink, severities[s], x, y);
      y += BADGE_ROW_PX;
    }
}
