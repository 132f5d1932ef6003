/* src/draw/hut-flat-grid.c: round distances from the lower left corner of a panel.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-flat-grid.h"

/* Own choice. */
#define LEAST_PX 14.0 /* nearer lines would be a tint */
#define LINE_PX 0.5
#define ALPHA_RATIO 0.22
#define MM_PER_INCH 25.4

double
hut_flat_grid_step_mm (double scale_px_per_mm,
                       gboolean inches)
{
  static const double metric_mm[] = { 10.0, 50.0, 100.0, 500.0 };
  static const double inch_mm[]
      = { 0.5 * MM_PER_INCH, MM_PER_INCH, 5.0 * MM_PER_INCH, 20.0 * MM_PER_INCH };
  const double *steps_mm = inches ? inch_mm : metric_mm;
  const gsize count = G_N_ELEMENTS (metric_mm);

  for (gsize i = 0; i < count; i++)
    if (steps_mm[i] * scale_px_per_mm >= LEAST_PX)
      return steps_mm[i];
  return steps_mm[count - 1];
}

void
hut_flat_grid_draw (const HutFlatScene *scene,
                    guint index)
{
  const HutPanel *panel = g_ptr_array_index (scene->assembly->panels, index);
  const double step_mm = hut_flat_grid_step_mm (scene->view.scale_px_per_mm, scene->style->inches);
  HutInk *ink = scene->ink;

  hut_ink_line (ink, HUT_LINE_SOLID, LINE_PX);
  hut_ink_colour_alpha (ink, ink->palette->text, ALPHA_RATIO);
  for (guint i = 1; i * step_mm < panel->width_mm; i++)
    hut_flat_scene_stroke_line (scene, index, (HutPoint){ i * step_mm, 0.0 },
                                (HutPoint){ i * step_mm, panel->height_mm });
  for (guint i = 1; i * step_mm < panel->height_mm; i++)
    hut_flat_scene_stroke_line (scene, index, (HutPoint){ 0.0, i * step_mm },
                                (HutPoint){ panel->width_mm, i * step_mm });
}
