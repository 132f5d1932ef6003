/* src/draw/hut-ink.h: what all drawings are made with: outlines, line patterns, text, labels.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-flat-layout.h"
#include "draw/hut-palette.h"
#include <cairo.h>
#include <pango/pango.h>

/* Kinds of line. The patterns follow the line types of ISO 128 where it has one (from memory):
 * hidden edges dashed, axes long-dash-dot, extreme positions of moving things long-dash-dot-dot. */
typedef enum
{
  HUT_LINE_SOLID,
  HUT_LINE_HIDDEN,   /* behind the panel: glazing, frames, straps */
  HUT_LINE_SPLICE,   /* parting line of a split panel: dash, two dots */
  HUT_LINE_AXIS,     /* hinge line: long dash, dot */
  HUT_LINE_MOTION,   /* how far a moving body gets: long dash, two dots */
  HUT_LINE_KEEP_OUT, /* dots */
  HUT_LINE_GUIDE,    /* short dashes */
} HutLineKind;

typedef enum
{
  HUT_TEXT_START,  /* x is the left end */
  HUT_TEXT_MIDDLE, /* x is the middle */
  HUT_TEXT_END,    /* x is the right end */
} HutTextAlign;

/* A drawing under way. Lives on the stack between hut_ink_begin () and hut_ink_end (). */
typedef struct
{
  cairo_t *cr;                /* lent; user space is pixels, y down */
  const HutPalette *palette;  /* static */
  double width_px, height_px; /* what is visible */
  double text_px;             /* height of normal text */
  HutTranslate translate;     /* or NULL */
  const char *decimal_point;  /* lent */
  gboolean inches;            /* lengths are written in inches */
  PangoLayout *layout;        /* owned */
  double font_px;             /* what the layout is set to; 0 before the first text */
  gboolean font_bold;
} HutInk;

#define HUT_INK_TEXT_PX                                                                            \
  12.0 /* own choice: legible on a plain screen, and 96 px per inch makes it 9 pt */

/* @text_px: 0 for the default; @decimal_point: NULL for "." */
void hut_ink_begin (HutInk *self,
                    cairo_t *cr,
                    const HutPalette *palette,
                    double width_px,
                    double height_px,
                    double text_px);
void hut_ink_end (HutInk *self);

/* A msgid in the language of the drawing. (transfer none) */
const char *hut_ink_tr (const HutInk *self, const char *msgid);
/* (transfer full): a length as text in the drawing's unit and decimal mark, without the unit;
 * @decimals: at most so many of a mm, one more of an inch. */
char *
hut_ink_dup_length (const HutInk *self, double length_mm, guint decimals) G_GNUC_WARN_UNUSED_RESULT;
/* (transfer none): "mm" or "in". */
const char *hut_ink_unit (const HutInk *self);

/* What is drawn next has that colour; @alpha_ratio: 0 invisible .. 1 opaque. */
void hut_ink_colour (HutInk *self, HutColour colour);
void hut_ink_colour_alpha (HutInk *self, HutColour colour, double alpha_ratio);
/* Pattern and width of the lines that follow, px. */
void hut_ink_line (HutInk *self, HutLineKind kind, double width_px);

/* Adds outlines to cairo's path. (x, y): the pixel of (0,0). Arcs stay arcs. */
void
hut_ink_path (HutInk *self, const HutPath *path, double x_px, double y_px, double scale_px_per_mm);
void hut_ink_region (HutInk *self,
                     const HutRegion *region,
                     double x_px,
                     double y_px,
                     double scale_px_per_mm);
/* Fills the current path with a field of dots in that colour, which starts at (x, y). */
void hut_ink_fill_dots (HutInk *self, HutColour colour, double x_px, double y_px);
/* Strokes slanted lines, @step_px apart, inside the current clip and the given box. */
void hut_ink_hatch (HutInk *self,
                    double x_px,
                    double y_px,
                    double width_px,
                    double height_px,
                    double step_px);

/* Text size, px; @bold: as captions have it. */
void hut_ink_measure (HutInk *self,
                      const char *text,
                      double size_px,
                      gboolean bold,
                      double *width_px,
                      double *height_px);
/* y is the middle of the line of text. @turned: reads upwards, then x and y change roles. */
typedef struct
{
  double x_px, y_px;
  double size_px; /* 0: normal */
  double room_px; /* a longer text is cut short with an ellipsis; 0: no limit */
  HutTextAlign align;
  gboolean bold, turned,
      plate; /* plate: opaque ground behind it, so that lines under it don't matter */
  HutColour colour;
} HutInkText;
void hut_ink_text (HutInk *self, const char *text, const HutInkText *how);
