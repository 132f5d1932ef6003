/* src/draw/hut-palette.h: the colours of drawings, and how far two of them stand apart.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Colour is never the only sign: every kind of line has a pattern of its own (hut-ink.h) and every
 * severity a shape of its own (hut-flat-marks.h). */
#pragma once
#include "checks/hut-finding.h"

/* sRGB, each 0 .. 1 (ratio). */
typedef struct
{
  double r, g, b;
} HutColour;

typedef struct
{
  HutColour background;   /* between the panels */
  HutColour sheet;        /* the material */
  HutColour waste;        /* sheet around the parts */
  HutColour plate;        /* behind labels that lie over lines */
  HutColour outline;      /* cut edges */
  HutColour text;         /* names; on background, sheet, plate and machine_fill */
  HutColour text_dim;     /* sizes; on background and sheet */
  HutColour machine_fill; /* the machine's shadow on a panel */
  HutColour machine_line;
  HutColour motion_line;
  HutColour keep_out_line;
  HutColour window_fill, window_line;
  HutColour splice, strap, hinge;
  HutColour selection, guide;
  HutColour mark_fill[3], mark_text[3]; /* by HutSeverity */
} HutPalette;

/* (transfer none): static. */
const HutPalette *hut_palette_get (gboolean dark, gboolean high_contrast);

/**
 * hut_colour_contrast_ratio:
 *
 * Source: W3C, WCAG 2.1, "contrast ratio" and "relative luminance".
 *
 * Returns: 1 (same) .. 21 (black and white), whichever comes first
 */
double hut_colour_contrast_ratio (HutColour a, HutColour b);
