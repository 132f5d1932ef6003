/* src/draw/hut-flat-hardware.c: hardware in the flat view: bodies, pockets, face plates.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-flat-hardware.h"
#include <math.h>

/* Own choice, px. */
#define BODY_LINE_PX 1.1
#define SOFT_LINE_PX 0.7
#define POCKET_LINE_PX 1.3

static void
set_side (const HutFlatScene *scene,
          gboolean outside,
          double line_px)
{
  hut_ink_line (scene->ink, outside ? HUT_LINE_SOLID : HUT_LINE_HIDDEN, line_px);
  hut_ink_colour (scene->ink, scene->ink->palette->strap);
}

/* Whether a solid stands before the outer face of its panel. */
static gboolean
is_outside (const HutPanel *panel,
            const HutBox3 *box)
{
  const double middle_mm = hut_vec3_dot (
      hut_vec3_scale (hut_vec3_add (box->min, box->max), 0.5), panel->frame.w);

  return middle_mm > hut_vec3_dot (panel->frame.origin, panel->frame.w);
}

static void
draw_bodies (const HutFlatScene *scene,
             guint index)
{
  const HutPanel *panel = g_ptr_array_index (scene->assembly->panels, index);

  for (guint i = 0; i < scene->assembly->solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (scene->assembly->solids, HutSolid, i);
      const gboolean soft = solid->kind == HUT_SOLID_LEADS;

      if (solid->panel != index || (solid->kind != HUT_SOLID_HARDWARE && !soft))
        continue;
      set_side (scene, is_outside (panel, &solid->box), soft ? SOFT_LINE_PX : BODY_LINE_PX);
      hut_flat_scene_stroke_rect (
          scene,
          hut_flat_scene_rect (scene, index, hut_frame3_shadow (&panel->frame, &solid->box)));
    }
}

static void
draw_pockets (const HutFlatScene *scene,
              guint index)
{
  HutInk *ink = scene->ink;

  for (guint i = 0; i < scene->assembly->hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (scene->assembly->hardware, i);
      double x, y;

      if (placed->panel != index || !placed->bored)
        continue;
      hut_flat_view_to_px (&scene->view, scene->layout, index, placed->pocket_at, &x, &y);
      set_side (scene, placed->face == HUT_FACE_INSIDE, POCKET_LINE_PX);
      cairo_new_sub_path (ink->cr);
      cairo_arc (ink->cr, x, y, placed->need.bit_mm / 2.0 * scene->view.scale_px_per_mm, 0.0,
                 2.0 * G_PI);
      cairo_stroke (ink->cr);
    }
}

void
hut_flat_hardware_draw (const HutFlatScene *scene,
                        guint panel)
{
  draw_bodies (scene, panel);
  draw_pockets (scene, panel);
}
