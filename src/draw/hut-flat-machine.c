/* src/draw/hut-flat-machine.c: the machine and its motion, seen through a panel.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-flat-machine.h"

/* Own choice, px: lines thinner than any cut edge. */
#define BODY_LINE_PX 0.8
#define MOTION_LINE_PX 1.0
#define KEEP_OUT_LINE_PX 1.2
#define NAME_PAD_PX 4.0
#define CORNERS 4

/* A body where it was measured, without its travel. */
static HutBox3
home_box (const HutAssembly *assembly,
          const HutBody *body)
{
  return hut_box3_shift (&body->box, assembly->machine_at);
}

static HutPxRect
shadow_px (const HutFlatScene *scene,
           guint index,
           const HutBox3 *box)
{
  const HutPanel *panel = g_ptr_array_index (scene->assembly->panels, index);

  return hut_flat_scene_rect (scene, index, hut_frame3_shadow (&panel->frame, box));
}

static void
fill_bodies (const HutFlatScene *scene,
             guint index)
{
  const HutMachine *machine = &scene->assembly->design->machine;
  HutInk *ink = scene->ink;

  hut_ink_colour (ink, ink->palette->machine_fill);
  for (guint i = 0; i < machine->bodies->len; i++)
    {
      const HutBody *body = g_ptr_array_index (machine->bodies, i);

      if (body->kind == HUT_BODY_KEEP_OUT)
        continue;
      const HutBox3 box = home_box (scene->assembly, body);
      const HutPxRect px = shadow_px (scene, index, &box);
      cairo_rectangle (ink->cr, px.x, px.y, px.width, px.height);
    }
  cairo_fill (ink->cr);
}

static void
draw_keep_out (const HutFlatScene *scene,
               HutPxRect px)
{
  HutInk *ink = scene->ink;

  cairo_rectangle (ink->cr, px.x, px.y, px.width, px.height);
  hut_ink_fill_dots (ink, ink->palette->keep_out_line, px.x, px.y);
  hut_ink_line (ink, HUT_LINE_KEEP_OUT, KEEP_OUT_LINE_PX);
  hut_ink_colour (ink, ink->palette->keep_out_line);
  hut_flat_scene_stroke_rect (scene, px);
}

static void
draw_body (const HutFlatScene *scene,
           guint index,
           const HutBody *body)
{
  HutInk *ink = scene->ink;
  const HutBox3 home = home_box (scene->assembly, body);
  const HutPxRect px = shadow_px (scene, index, &home);

  if (body->kind == HUT_BODY_KEEP_OUT)
    {
      draw_keep_out (scene, px);
      return;
    }
  hut_ink_line (ink, HUT_LINE_SOLID, BODY_LINE_PX);
  hut_ink_colour (ink, ink->palette->machine_line);
  hut_flat_scene_stroke_rect (scene, px);
  if (body->kind == HUT_BODY_MOVING)
    {
      const HutBox3 swept = hut_assembly_body_box (scene->assembly, body);

      hut_ink_line (ink, HUT_LINE_MOTION, MOTION_LINE_PX);
      hut_ink_colour (ink, ink->palette->motion_line);
      hut_flat_scene_stroke_rect (scene, shadow_px (scene, index, &swept));
    }
}

/* TRUE when the corner is free: 0 lower left, 1 upper left, 2 lower right, 3 upper right. */
static gboolean
claim_corner (const HutFlatScene *scene,
              HutPxRect px,
              guint corner,
              HutPxRect *box)
{
  const gboolean upper = corner % 2 == 1, right = corner >= 2;

  box->x = right ? px.x + px.width - NAME_PAD_PX - box->width : px.x + NAME_PAD_PX;
  box->y = upper ? px.y + NAME_PAD_PX / 2.0
                 : px.y + px.height - NAME_PAD_PX / 2.0 - box->height;
  return hut_flat_scene_claim (scene, *box);
}

static void
draw_name (const HutFlatScene *scene,
           guint index,
           const HutBody *body)
{
  HutInk *ink = scene->ink;
  const HutBox3 home = home_box (scene->assembly, body);
  const HutPxRect px = shadow_px (scene, index, &home);
  const char *name = body->name != NULL && *body->name != '\0' ? body->name : body->id;
  const double size_px = ink->text_px - 2.0;
  HutPxRect box = { 0 };

  /* Cheap refusal before the text is laid out: nothing readable is narrower than it is high. */
  if (name == NULL || px.width < 2.0 * size_px || px.height < size_px)
    return;
  hut_ink_measure (ink, name, size_px, FALSE, &box.width, &box.height);
  if (box.width + 2.0 * NAME_PAD_PX > px.width || box.height + NAME_PAD_PX > px.height)
    return;
  for (guint corner = 0; corner < CORNERS; corner++)
    if (claim_corner (scene, px, corner, &box))
      {
        hut_ink_text (ink, name,
                      &(HutInkText){
                          .x_px = box.x,
                          .y_px = box.y + box.height / 2.0,
                          .size_px = size_px,
                          .colour = ink->palette->text_dim,
                          .plate = TRUE,
                      });
        return;
      }
}

/* No name covers an opening; openings have names of their own. */
static void
take_holes (const HutFlatScene *scene,
            guint index)
{
  for (guint i = 0; scene->labels != NULL && i < scene->assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (scene->assembly->holes, i);
      const HutPxRect px = hut_flat_scene_rect (scene, hole->panel, hole->bounds);

      if (hole->panel == index)
        g_array_append_val (scene->labels, px);
    }
}

static void
clip_to_panel (const HutFlatScene *scene,
               guint index)
{
  const HutPanel *panel = g_ptr_array_index (scene->assembly->panels, index);
  const HutPxRect clip = hut_flat_scene_rect (
      scene, index, (HutRect){ 0.0, 0.0, panel->width_mm, panel->height_mm });

  cairo_rectangle (scene->ink->cr, clip.x, clip.y, clip.width, clip.height);
  cairo_clip (scene->ink->cr);
}

void
hut_flat_machine_draw (const HutFlatScene *scene,
                       guint index)
{
  const HutMachine *machine = &scene->assembly->design->machine;

  cairo_save (scene->ink->cr);
  clip_to_panel (scene, index);
  fill_bodies (scene, index);
  for (guint i = 0; i < machine->bodies->len; i++)
    draw_body (scene, index, g_ptr_array_index (machine->bodies, i));
  cairo_restore (scene->ink->cr);
}

void
hut_flat_machine_names_draw (const HutFlatScene *scene,
                             guint index)
{
  const HutMachine *machine = &scene->assembly->design->machine;

  cairo_save (scene->ink->cr);
  clip_to_panel (scene, index);
  take_holes (scene, index);
  for (guint i = 0; i < machine->bodies->len; i++)
    draw_name (scene, index, g_ptr_array_index (machine->bodies, i));
  cairo_restore (scene->ink->cr);
}
