/* src/draw/hut-built.c: the built view: the enclosure in space, drawn with Cairo.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-built.h"
#include "draw/hut-hull.h"

/* Own choices. */
#define START_YAW_RAD 0.55
#define START_PITCH_RAD 0.5
#define EDGE_PX 0.9
#define SELECTED_PX 2.0
/* Neighbouring fills overlap by half of this, or their edges would shine through. */
#define SEAM_PX 0.8
#define GLASS_ALPHA 0.35
/* Of a face square to the light, and of one away from it. */
#define LIT_RATIO 1.0
#define SHADE_RATIO 0.78
#define HOLE_RATIO 0.6
#define CORNERS 8
#define QUAD 4

typedef struct
{
  cairo_t *cr;
  const HutBuiltModel *model;
  const HutBuiltView *view;
  const HutPalette *palette;
  int selected_panel;
  HutVec3 into;
} Painter;

/* ---- the view -------------------------------------------------------------------------------- */

void
hut_built_view_reset (HutBuiltView *self)
{
  self->yaw_rad = START_YAW_RAD;
  self->pitch_rad = START_PITCH_RAD;
}

HutVec3
hut_built_view_into (const HutBuiltView *self)
{
  return (HutVec3){ -sin (self->yaw_rad) * cos (self->pitch_rad),
                    cos (self->yaw_rad) * cos (self->pitch_rad), -sin (self->pitch_rad) };
}

/* Right and up in the picture, mm from the world's origin. */
static HutPoint
project (const HutBuiltView *self, HutVec3 p)
{
  const HutVec3 right = { cos (self->yaw_rad), sin (self->yaw_rad), 0.0 };
  const HutVec3 up = hut_vec3_cross (right, hut_built_view_into (self));

  return (HutPoint){ hut_vec3_dot (p, right), hut_vec3_dot (p, up) };
}

HutPoint
hut_built_view_to_px (const HutBuiltView *self, HutVec3 p)
{
  const HutPoint flat = project (self, p);

  return (HutPoint){ self->x_px + self->scale_px_per_mm * flat.u,
                     self->y_px - self->scale_px_per_mm * flat.v };
}

void
hut_built_view_fit (HutBuiltView *self,
                    const HutBuiltModel *model,
                    double width_px,
                    double height_px,
                    double border_px)
{
  HutRect all = { INFINITY, INFINITY, -INFINITY, -INFINITY };

  for (guint i = 0; i < CORNERS; i++)
    {
      const HutPoint p = project (self, (HutVec3){ (i & 1) != 0 ? model->high.x : model->low.x,
                                                   (i & 2) != 0 ? model->high.y : model->low.y,
                                                   (i & 4) != 0 ? model->high.z : model->low.z });

      all = (HutRect){ MIN (all.u0, p.u), MIN (all.v0, p.v), MAX (all.u1, p.u), MAX (all.v1, p.v) };
    }
  if (model->blocks->len == 0)
    all = (HutRect){ 0.0, 0.0, 1.0, 1.0 };
  self->scale_px_per_mm = MIN ((width_px - 2.0 * border_px) / MAX (all.u1 - all.u0, 1.0),
                               (height_px - 2.0 * border_px) / MAX (all.v1 - all.v0, 1.0));
  self->scale_px_per_mm = MAX (self->scale_px_per_mm, 1e-3);
  self->x_px = width_px / 2.0 - self->scale_px_per_mm * (all.u0 + all.u1) / 2.0;
  self->y_px = height_px / 2.0 + self->scale_px_per_mm * (all.v0 + all.v1) / 2.0;
}

/* ---- colours --------------------------------------------------------------------------------- */

static HutColour
mix (HutColour a, HutColour b, double share_ratio)
{
  return (HutColour){ a.r + (b.r - a.r) * share_ratio, a.g + (b.g - a.g) * share_ratio,
                      a.b + (b.b - a.b) * share_ratio };
}

static HutColour
colour_of (const Painter *self, HutBuiltKind kind)
{
  const HutPalette *palette = self->palette;

  switch (kind)
    {
    case HUT_BUILT_GLAZING:
      return palette->window_line;
    case HUT_BUILT_INSIDE:
      return mix (palette->sheet, palette->strap, 0.35);
    case HUT_BUILT_STATIC:
      return mix (palette->machine_fill, palette->machine_line, 0.4);
    case HUT_BUILT_MOVING:
      return mix (palette->machine_fill, palette->motion_line, 0.5);
    case HUT_BUILT_PANEL:
    default:
      return palette->sheet;
    }
}

/* A face's shade tells how it stands, so that edges are seen where colours are alike. */
static void
set_shade (const Painter *self, const HutBuiltBlock *block, HutVec3 normal, double ratio)
{
  /* From the upper left behind the viewer's back; own choice. */
  const HutVec3 light = { -0.35, -0.45, 0.82 };
  const double lit = MAX (hut_vec3_dot (normal, light), 0.0);
  const double shade = ratio * (SHADE_RATIO + (LIT_RATIO - SHADE_RATIO) * lit);
  const HutColour colour = colour_of (self, block->kind);

  cairo_set_source_rgba (self->cr, colour.r * shade, colour.g * shade, colour.b * shade,
                         block->kind == HUT_BUILT_GLAZING ? GLASS_ALPHA : 1.0);
}

/* ---- one block ------------------------------------------------------------------------------- */

static void
to_px (const Painter *self, const HutBuiltBlock *block, HutPoint p, double w_mm, gboolean first)
{
  const HutPoint px
      = hut_built_view_to_px (self->view, hut_frame3_to_world (&block->frame, p.u, p.v, w_mm));

  if (first)
    cairo_move_to (self->cr, px.u, px.v);
  else
    cairo_line_to (self->cr, px.u, px.v);
}

static void
trace (const Painter *self,
       const HutBuiltBlock *block,
       const HutPoint *points,
       guint count,
       double w_mm)
{
  for (guint i = 0; i < count; i++)
    to_px (self, block, points[i], w_mm, i == 0);
  cairo_close_path (self->cr);
}

static void
trace_rect (const Painter *self, const HutBuiltBlock *block, double w_mm)
{
  const HutRect r = block->rect;
  const HutPoint corners[] = { { r.u0, r.v0 }, { r.u1, r.v0 }, { r.u1, r.v1 }, { r.u0, r.v1 } };

  trace (self, block, corners, G_N_ELEMENTS (corners), w_mm);
}

static void
trace_wall (const Painter *self, const HutBuiltBlock *block, HutPoint a, HutPoint b)
{
  to_px (self, block, a, block->w0_mm, TRUE);
  to_px (self, block, b, block->w0_mm, FALSE);
  to_px (self, block, b, block->w1_mm, FALSE);
  to_px (self, block, a, block->w1_mm, FALSE);
  cairo_close_path (self->cr);
}

static void
fill (const Painter *self, const HutBuiltBlock *block)
{
  if (block->kind == HUT_BUILT_GLAZING)
    {
      cairo_fill (self->cr);
      return;
    }
  cairo_fill_preserve (self->cr);
  cairo_set_line_width (self->cr, SEAM_PX);
  cairo_stroke (self->cr);
}

/* The outward normal of the wall from @a to @b, which has the material on its left. */
static HutVec3
wall_normal (const HutBuiltBlock *block, HutPoint a, HutPoint b)
{
  const double length_mm = MAX (hut_point_distance_mm (a, b), HUT_GRID_MM);

  return hut_vec3_add (hut_vec3_scale (block->frame.u, (b.v - a.v) / length_mm),
                       hut_vec3_scale (block->frame.v, (a.u - b.u) / length_mm));
}

/* What is seen of a hole's walls lies inside its outline on the face that is seen. Outlines of
 * holes run clockwise, so the material is on their left. */
static void
paint_hole (const Painter *self, const HutBuiltBlock *block, const GArray *hole, double face_mm)
{
  const HutPoint *points = (const HutPoint *)(void *)hole->data;

  cairo_save (self->cr);
  trace_rect (self, block, face_mm);
  cairo_clip (self->cr);
  trace (self, block, points, hole->len, face_mm);
  cairo_clip (self->cr);
  for (guint i = 0; i < hole->len; i++)
    {
      const HutPoint a = points[i], b = points[(i + 1) % hole->len];
      const HutVec3 normal = wall_normal (block, a, b);

      if (hut_vec3_dot (normal, self->into) >= 0.0)
        continue;
      trace_wall (self, block, a, b);
      set_shade (self, block, normal, HOLE_RATIO);
      fill (self, block);
    }
  cairo_restore (self->cr);
}

static void
paint_face (const Painter *self, const HutBuiltBlock *block, double face_mm, HutVec3 normal)
{
  cairo_save (self->cr);
  if (block->holes->len > 0)
    {
      trace_rect (self, block, face_mm);
      cairo_clip (self->cr);
    }
  trace_rect (self, block, face_mm);
  for (guint i = 0; i < block->holes->len; i++)
    {
      const GArray *hole = g_ptr_array_index (block->holes, i);

      trace (self, block, (const HutPoint *)(void *)hole->data, hole->len, face_mm);
    }
  cairo_set_fill_rule (self->cr, CAIRO_FILL_RULE_EVEN_ODD);
  set_shade (self, block, normal, 1.0);
  fill (self, block);
  cairo_restore (self->cr);
  for (guint i = 0; i < block->holes->len; i++)
    paint_hole (self, block, g_ptr_array_index (block->holes, i), face_mm);
}

/* Ends of an open stretch of a side, with the material on the left. */
static void
side_ends (const HutBuiltBlock *block, const HutBuiltSide *side, HutPoint *a, HutPoint *b)
{
  const HutRect r = block->rect;

  switch (side->side)
    {
    case HUT_EDGE_BOTTOM:
      *a = (HutPoint){ side->from_mm, r.v0 };
      *b = (HutPoint){ side->to_mm, r.v0 };
      break;
    case HUT_EDGE_RIGHT:
      *a = (HutPoint){ r.u1, side->from_mm };
      *b = (HutPoint){ r.u1, side->to_mm };
      break;
    case HUT_EDGE_TOP:
      *a = (HutPoint){ side->to_mm, r.v1 };
      *b = (HutPoint){ side->from_mm, r.v1 };
      break;
    case HUT_EDGE_LEFT:
    default:
      *a = (HutPoint){ r.u0, side->to_mm };
      *b = (HutPoint){ r.u0, side->from_mm };
      break;
    }
}

static void
stroke_edges (const Painter *self, const HutBuiltBlock *block, double face_mm, gboolean face_seen)
{
  cairo_t *cr = self->cr;
  const gboolean selected = block->panel >= 0 && block->panel == self->selected_panel;
  const HutColour colour = selected ? self->palette->selection : self->palette->outline;

  for (guint i = 0; i < block->sides->len; i++)
    {
      HutPoint a, b;

      side_ends (block, &g_array_index (block->sides, HutBuiltSide, i), &a, &b);
      if (hut_vec3_dot (wall_normal (block, a, b), self->into) < 0.0)
        trace_wall (self, block, a, b);
      else if (face_seen)
        {
          to_px (self, block, a, face_mm, TRUE);
          to_px (self, block, b, face_mm, FALSE);
        }
    }
  for (guint i = 0; face_seen && i < block->holes->len; i++)
    {
      const GArray *hole = g_ptr_array_index (block->holes, i);

      trace (self, block, (const HutPoint *)(void *)hole->data, hole->len, face_mm);
    }
  cairo_set_source_rgb (cr, colour.r, colour.g, colour.b);
  cairo_set_line_width (cr, selected ? SELECTED_PX : EDGE_PX);
  cairo_stroke (cr);
}

static void
paint_block (const Painter *self, const HutBuiltBlock *block)
{
  const double facing = hut_vec3_dot (block->frame.w, self->into);
  const double face_mm = facing < 0.0 ? block->w1_mm : block->w0_mm;
  const gboolean face_seen = fabs (facing) > 1e-9;

  if (face_seen)
    paint_face (self, block, face_mm, hut_vec3_scale (block->frame.w, facing < 0.0 ? 1.0 : -1.0));
  for (guint i = 0; i < block->sides->len; i++)
    {
      HutPoint a, b;

      side_ends (block, &g_array_index (block->sides, HutBuiltSide, i), &a, &b);
      const HutVec3 normal = wall_normal (block, a, b);
      if (hut_vec3_dot (normal, self->into) >= 0.0)
        continue;
      trace_wall (self, block, a, b);
      set_shade (self, block, normal, 1.0);
      fill (self, block);
    }
  stroke_edges (self, block, face_mm, face_seen);
}

static void
on_visit (guint index, const GArray *corners, gpointer user_data)
{
  const Painter *self = user_data;
  const HutBuiltBlock *block = g_ptr_array_index (self->model->blocks, index);

  if (corners == NULL)
    {
      paint_block (self, block);
      return;
    }

  g_autoptr (GArray) flat = g_array_sized_new (FALSE, FALSE, sizeof (HutPoint), corners->len);
  for (guint i = 0; i < corners->len; i++)
    {
      const HutPoint px = hut_built_view_to_px (self->view, g_array_index (corners, HutVec3, i));

      g_array_append_val (flat, px);
    }
  g_autoptr (GArray) hull = hut_hull_new (flat, SEAM_PX);
  cairo_save (self->cr);
  for (guint i = 0; i < hull->len; i++)
    {
      const HutPoint p = g_array_index (hull, HutPoint, i);

      cairo_line_to (self->cr, p.u, p.v);
    }
  cairo_close_path (self->cr);
  cairo_clip (self->cr);
  paint_block (self, block);
  cairo_restore (self->cr);
}

void
hut_built_draw (cairo_t *cr,
                const HutBuiltModel *model,
                const HutBuiltView *view,
                const HutPalette *palette,
                int selected_panel,
                double width_px,
                double height_px)
{
  g_return_if_fail (model != NULL && view != NULL && palette != NULL);

  Painter painter = {
    .cr = cr,
    .model = model,
    .view = view,
    .palette = palette,
    .selected_panel = selected_panel,
    .into = hut_built_view_into (view),
  };

  cairo_save (cr);
  cairo_rectangle (cr, 0.0, 0.0, width_px, height_px);
  cairo_clip_preserve (cr);
  cairo_set_source_rgb (cr, palette->background.r, palette->background.g, palette->background.b);
  cairo_fill (cr);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  hut_depth_tree_walk (model->tree, painter.into, on_visit, &painter);
  cairo_restore (cr);
}
