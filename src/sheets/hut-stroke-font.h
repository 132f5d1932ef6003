/* src/sheets/hut-stroke-font.h: letters of single strokes, for scoring labels.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-geom.h"

/* The arrow that points to the top of the letters, as a character of a text. */
#define HUT_STROKE_ARROW '^'

/* Shapes are drawn on a grid: letters are 4 wide and 6 high, 2 apart. */
#define HUT_STROKE_HEIGHT_UNITS 6
#define HUT_STROKE_WIDTH_UNITS 4
#define HUT_STROKE_STEP_UNITS 6

/**
 * hut_stroke_text_width_mm:
 * @text: letters
 * @height_mm: of a capital letter, mm
 *
 * Returns: width from the first to the last letter's box, mm; 0 for an empty text
 */
double hut_stroke_text_width_mm (const char *text, double height_mm);

/**
 * hut_stroke_text_new:
 * @text: letters a-z (shown as capitals), A-Z, digits, - . / space and HUT_STROKE_ARROW; any other
 *   byte is shown as a box
 * @height_mm: of a capital letter, mm
 *
 * Source: our own letter shapes.
 *
 * Returns: (transfer full) (element-type GArray): open lines, each a GArray of HutPoint, at least
 *   two; (0, 0) is the lower left corner of the text
 */
GPtrArray *hut_stroke_text_new (const char *text, double height_mm) G_GNUC_WARN_UNUSED_RESULT;
