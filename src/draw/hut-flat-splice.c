/* src/draw/hut-flat-splice.c: where a panel is split, the straps behind it, and the hinge line.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-flat-splice.h"
#include "assembly/hut-trap.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* Own choice, px. */
#define SPLICE_LINE_PX 1.5
#define STRAP_LINE_PX 1.0
#define HINGE_LINE_PX 1.4
#define HINGE_EYE_PX 5.0
#define LABEL_ROOM_RATIO 1.6 /* a label is drawn where its line is that much longer */

/* How far a panel's face may be off the hinge line for the line to be drawn on it, mm. Own choice:
 * more than any butt hinge sets the axis off. */
#define HINGE_NEAR_MM 60.0

/* Own choice, mm: an edge that lies this near to the splice's band belongs to it. */
#define BAND_SLACK_MM 0.01

static void
label_on_line (const HutFlatScene *scene,
               const char *text,
               HutColour colour,
               HutPxRect line)
{
  HutInk *ink = scene->ink;
  const gboolean upright = line.height > line.width;
  const double size_px = ink->text_px - 2.0, room_px = MAX (line.width, line.height);
  double width_px, height_px;

  hut_ink_measure (ink, text, size_px, FALSE, &width_px, &height_px);
  const double x_px = line.x + line.width / 2.0, y_px = line.y + line.height / 2.0;
  const double across_px = upright ? height_px : width_px, up_px = upright ? width_px : height_px;
  if (width_px * LABEL_ROOM_RATIO > room_px
      || !hut_flat_scene_claim (scene, (HutPxRect){ x_px - across_px / 2.0, y_px - up_px / 2.0,
                                                    across_px, up_px }))
    return;
  hut_ink_text (ink, text,
                &(HutInkText){
                    .x_px = x_px,
                    .y_px = y_px,
                    .size_px = size_px,
                    .align = HUT_TEXT_MIDDLE,
                    .turned = upright,
                    .plate = TRUE,
                    .colour = colour,
                });
}

/* The band that a splice's fingers fill, panel frame. */
static HutRect
splice_band (const HutSplice *splice)
{
  const double low_mm = splice->at_mm - splice->reach_mm - BAND_SLACK_MM;
  const double high_mm = splice->at_mm + splice->reach_mm + BAND_SLACK_MM;
  const double from_mm = splice->from_mm - BAND_SLACK_MM, to_mm = splice->to_mm + BAND_SLACK_MM;

  return splice->vertical ? (HutRect){ low_mm, from_mm, high_mm, to_mm }
                          : (HutRect){ from_mm, low_mm, to_mm, high_mm };
}

static gboolean
rect_has (HutRect rect,
          HutPoint p)
{
  return p.u >= rect.u0 && p.u <= rect.u1 && p.v >= rect.v0 && p.v <= rect.v1;
}

/* Both pieces have the same edge there: the one on the lower side is drawn. */
static gboolean
part_is_below (const HutPart *part,
               const HutSplice *splice)
{
  const HutRect b = hut_region_bounds (part->region);

  return (splice->vertical ? b.u0 + b.u1 : b.v0 + b.v1) / 2.0 < splice->at_mm;
}

static void
stroke_fingers (const HutFlatScene *scene,
                const HutSplice *splice,
                const HutPart *part)
{
  const HutRect band = splice_band (splice);
  const guint count = hut_path_get_count (part->region->outer);
  cairo_t *cr = scene->ink->cr;
  gboolean pen_down = FALSE;

  for (guint i = 0; i < count; i++)
    {
      const HutSegment s = hut_path_get_segment (part->region->outer, i);
      double x, y;

      if (s.kind != HUT_EDGE_MATING || !rect_has (band, s.start) || !rect_has (band, s.end))
        {
          pen_down = FALSE;
          continue;
        }
      hut_flat_view_to_px (&scene->view, scene->layout, splice->panel, s.start, &x, &y);
      if (!pen_down)
        cairo_move_to (cr, x, y);
      hut_flat_view_to_px (&scene->view, scene->layout, splice->panel, s.end, &x, &y);
      cairo_line_to (cr, x, y);
      pen_down = TRUE;
    }
  cairo_stroke (cr);
}

static void
draw_splice (const HutFlatScene *scene,
             const HutSplice *splice)
{
  HutInk *ink = scene->ink;
  const HutRect line
      = splice->vertical
            ? (HutRect){ splice->at_mm, splice->from_mm, splice->at_mm, splice->to_mm }
            : (HutRect){ splice->from_mm, splice->at_mm, splice->to_mm, splice->at_mm };

  hut_ink_line (ink, HUT_LINE_SPLICE, SPLICE_LINE_PX);
  hut_ink_colour (ink, ink->palette->splice);
  if (splice->finger_count == 0)
    hut_flat_scene_stroke_line (scene, splice->panel, (HutPoint){ line.u0, line.v0 },
                                (HutPoint){ line.u1, line.v1 });
  else
    for (guint i = 0; i < scene->parts->parts->len; i++)
      {
        const HutPart *part = g_ptr_array_index (scene->parts->parts, i);

        if (part->panel == splice->panel && part->kind == splice->of
            && g_strcmp0 (part->item, splice->item) == 0 && part_is_below (part, splice))
          stroke_fingers (scene, splice, part);
      }
  if (splice->of == HUT_PART_PANEL)
    label_on_line (scene, hut_ink_tr (ink, N_ ("splice")), ink->palette->splice,
                   hut_flat_scene_rect (scene, splice->panel, line));
}

/* A strap or a baffle behind the panel, with its name. */
static void
draw_hidden (const HutFlatScene *scene,
             guint index,
             HutRect rect,
             const char *name)
{
  HutInk *ink = scene->ink;
  const HutPxRect px = hut_flat_scene_rect (scene, index, rect);
  const double half_text_px = ink->text_px / 2.0;
  HutPxRect edge = px;

  hut_ink_line (ink, HUT_LINE_HIDDEN, STRAP_LINE_PX);
  hut_ink_colour (ink, ink->palette->strap);
  hut_flat_scene_stroke_rect (scene, px);

  /* Its label stands on its own long edge, so that it does not meet the splice's label. */
  if (px.height > px.width)
    edge = (HutPxRect){ px.x + half_text_px, px.y, 0.0, px.height / 2.0 };
  else
    edge = (HutPxRect){ px.x, px.y + half_text_px, px.width / 2.0, 0.0 };
  if (MIN (px.width, px.height) > 4.0 * ink->text_px)
    label_on_line (scene, hut_ink_tr (ink, name), ink->palette->strap, edge);
}

/* Baffles show through both walls that they stand behind, as far as these go. */
static void
draw_baffles (const HutFlatScene *scene,
              guint index)
{
  const HutPanel *panel = g_ptr_array_index (scene->assembly->panels, index);

  for (guint i = 0; i < scene->assembly->strips->len; i++)
    {
      const HutStrip *strip = &g_array_index (scene->assembly->strips, HutStrip, i);
      HutRect rect = hut_frame3_shadow (&panel->frame, &strip->box);

      rect.u0 = MAX (rect.u0, 0.0);
      rect.v0 = MAX (rect.v0, 0.0);
      rect.u1 = MIN (rect.u1, panel->width_mm);
      rect.v1 = MIN (rect.v1, panel->height_mm);
      if (strip->baffle->side == panel->id.side && rect.u1 > rect.u0 && rect.v1 > rect.v0)
        draw_hidden (scene, index, rect, N_ ("baffle"));
    }
}

static void
draw_traps (const HutFlatScene *scene,
            guint index)
{
  for (guint i = 0; i < scene->assembly->holes->len; i++)
    {
      HutTrap trap;

      if (hut_trap_find (scene->assembly, g_ptr_array_index (scene->assembly->holes, i), &trap)
          && trap.panel == index)
        draw_hidden (scene, index, trap.footprint, N_ ("light trap"));
    }
}

void
hut_flat_splice_draw (const HutFlatScene *scene,
                      guint index)
{
  const HutPanel *panel = g_ptr_array_index (scene->assembly->panels, index);

  if (scene->parts == NULL)
    return;
  for (guint i = 0; i < scene->parts->solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (scene->parts->solids, HutSolid, i);

      if (solid->panel == index && solid->kind == HUT_SOLID_STRAP)
        draw_hidden (scene, index, hut_frame3_shadow (&panel->frame, &solid->box), N_ ("strap"));
    }
  draw_baffles (scene, index);
  draw_traps (scene, index);
  for (guint i = 0; i < scene->parts->splices->len; i++)
    {
      const HutSplice *splice = &g_array_index (scene->parts->splices, HutSplice, i);

      if (splice->panel == index)
        draw_splice (scene, splice);
    }
}

static void
draw_hinge_eye (const HutFlatScene *scene,
                guint index,
                HutPoint at)
{
  cairo_t *cr = scene->ink->cr;
  double x, y;

  hut_flat_view_to_px (&scene->view, scene->layout, index, at, &x, &y);
  hut_ink_line (scene->ink, HUT_LINE_SOLID, HINGE_LINE_PX);
  cairo_new_sub_path (cr);
  cairo_arc (cr, x, y, HINGE_EYE_PX, 0.0, 2.0 * G_PI);
  cairo_move_to (cr, x - 2.0 * HINGE_EYE_PX, y);
  cairo_line_to (cr, x + 2.0 * HINGE_EYE_PX, y);
  cairo_move_to (cr, x, y - 2.0 * HINGE_EYE_PX);
  cairo_line_to (cr, x, y + 2.0 * HINGE_EYE_PX);
  cairo_stroke (cr);
}

/* Its label stands where no other one does: sizes are written in the middle, names of machine
 * bodies at the lower left. */
static HutPxRect
label_place (HutPxRect line)
{
  return (HutPxRect){ line.x + line.width / 2.0, line.y, line.width / 2.0, line.height / 2.0 };
}

/* The point of the hinge line in the panel's frame: u, v on the face, w off it, mm. */
static HutVec3
hinge_in_frame (const HutAssembly *assembly,
                const HutPanel *panel)
{
  const HutVec3 from
      = hut_vec3_add (assembly->hinge_point, hut_vec3_scale (panel->frame.origin, -1.0));

  return (HutVec3){ hut_vec3_dot (from, panel->frame.u), hut_vec3_dot (from, panel->frame.v),
                    hut_vec3_dot (from, panel->frame.w) };
}

void
hut_flat_hinge_draw (const HutFlatScene *scene,
                     guint index)
{
  const HutAssembly *assembly = scene->assembly;
  const HutPanel *panel = g_ptr_array_index (assembly->panels, index);
  HutInk *ink = scene->ink;
  const double near_mm = scene->layout->gap_mm / 3.0; /* beyond that it would meet the neighbour */

  if (!assembly->hinged)
    return;

  const HutVec3 at = hinge_in_frame (assembly, panel);
  const double along_u = fabs (hut_vec3_dot (assembly->hinge_axis, panel->frame.u));
  const double along_v = fabs (hut_vec3_dot (assembly->hinge_axis, panel->frame.v));
  const gboolean near_u = at.x >= -near_mm && at.x <= panel->width_mm + near_mm;
  const gboolean near_v = at.y >= -near_mm && at.y <= panel->height_mm + near_mm;
  HutRect line;

  hut_ink_colour (ink, ink->palette->hinge);
  if (along_u < 0.5 && along_v < 0.5)
    {
      if (near_u && near_v)
        draw_hinge_eye (scene, index, (HutPoint){ at.x, at.y });
      return;
    }
  if (fabs (at.z) > HINGE_NEAR_MM || !(along_u > 0.5 ? near_v : near_u))
    return;
  line = along_u > 0.5 ? (HutRect){ 0.0, at.y, panel->width_mm, at.y }
                       : (HutRect){ at.x, 0.0, at.x, panel->height_mm };
  hut_ink_line (ink, HUT_LINE_AXIS, HINGE_LINE_PX);
  hut_flat_scene_stroke_line (scene, index, (HutPoint){ line.u0, line.v0 },
                              (HutPoint){ line.u1, line.v1 });
  if (panel->id.shell == HUT_SHELL_LID) /* the base has the same line: one label is enough */
    label_on_line (scene, hut_ink_tr (ink, N_ ("hinge line")), ink->palette->hinge,
                   label_place (hut_flat_scene_rect (scene, index, line)));
}
