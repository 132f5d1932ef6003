/* src/draw/hut-opening-view.c: an opening alone, for lists and for what hangs on the pointer.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-opening-view.h"
#include "draw/hut-ink.h"

#define LINE_PX 1.3 /* own choice */

void
hut_opening_view_draw (cairo_t *cr,
                       const HutOpening *opening,
                       HutColour colour,
                       double fill_ratio,
                       HutPoint at_px,
                       double scale_px_per_mm)
{
  g_autoptr (GPtrArray) paths = hut_opening_dup_paths (opening);
  HutInk ink;

  hut_ink_begin (&ink, cr, hut_palette_get (FALSE, FALSE), 0.0, 0.0, 0.0);
  for (guint i = 0; i < paths->len; i++)
    hut_ink_path (&ink, g_ptr_array_index (paths, i), at_px.u, at_px.v, scale_px_per_mm);
  hut_ink_colour_alpha (&ink, colour, fill_ratio);
  cairo_fill_preserve (cr);
  hut_ink_line (&ink, HUT_LINE_SOLID, LINE_PX);
  hut_ink_colour (&ink, colour);
  cairo_stroke (cr);
  hut_ink_end (&ink);
}
