/* src/draw/hut-built-model.c: the enclosure as blocks in space, in one pose.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-built-model.h"
#include "geom/hut-flatten.h"
#include <stdlib.h>

/* Narrower than this is nothing, mm: two grid points. */
#define SLIVER_MM (2.0 * HUT_GRID_MM)
/* Panels move apart by this share of the longest side of the whole. Own choice. */
#define EXPLODE_RATIO 0.5

typedef struct
{
  HutBuiltModel *model;
  const HutAssembly *assembly;
  const HutBuiltPose *pose;
  double explode_mm;
} Build;

static void
block_free (HutBuiltBlock *self)
{
  g_array_unref (self->sides);
  g_ptr_array_unref (self->holes);
  g_free (self);
}

static HutBuiltBlock *
add_block (Build *build,
           HutBuiltKind kind,
           int panel,
           const HutFrame3 *frame,
           HutRect rect,
           double w0_mm,
           double w1_mm)
{
  HutBuiltBlock *block = g_new0 (HutBuiltBlock, 1);

  block->kind = kind;
  block->panel = panel;
  block->frame = *frame;
  block->rect = rect;
  block->w0_mm = w0_mm;
  block->w1_mm = w1_mm;
  block->sides = g_array_new (FALSE, FALSE, sizeof (HutBuiltSide));
  block->holes = g_ptr_array_new_with_free_func ((GDestroyNotify)g_array_unref);
  g_ptr_array_add (build->model->blocks, block);
  return block;
}

/* ---- the pose -------------------------------------------------------------------------------- */

static HutFrame3
pose_frame (const Build *build, const HutFrame3 *frame, HutShellId shell)
{
  const HutAssembly *assembly = build->assembly;
  HutFrame3 posed = *frame;

  if (shell != HUT_SHELL_LID)
    return posed;
  if (assembly->hinged)
    return hut_frame3_turn (frame, assembly->hinge_point, assembly->hinge_axis,
                            build->pose->lid_rad);
  posed.origin.z += (assembly->outer_mm.z - assembly->seam_z_mm) * build->pose->lid_rad / G_PI_2;
  return posed;
}

/* What belongs to a panel moves apart with it. */
static HutFrame3
explode_frame (const Build *build, HutFrame3 frame, const HutPanel *panel)
{
  const HutFrame3 of_panel = pose_frame (build, &panel->frame, panel->id.shell);

  frame.origin = hut_vec3_add (frame.origin, hut_vec3_scale (of_panel.w, build->explode_mm));
  return frame;
}

static gboolean
is_hidden (const Build *build, HutShellId shell)
{
  return shell == HUT_SHELL_LID && build->pose->hide_lid;
}

/* ---- panels ---------------------------------------------------------------------------------- */

static int
compare_mm (gconstpointer a, gconstpointer b)
{
  const double p = *(const double *)a, q = *(const double *)b;

  return (p > q) - (p < q);
}

/* Along one side of the outline, where its corners within @depth_mm of that side are. */
static GArray *
find_borders (const HutPath *outer, HutRect strip, gboolean along_u)
{
  GArray *borders = g_array_new (FALSE, FALSE, sizeof (double));
  const double ends_mm[] = { along_u ? strip.u0 : strip.v0, along_u ? strip.u1 : strip.v1 };

  g_array_append_vals (borders, ends_mm, G_N_ELEMENTS (ends_mm));
  for (guint i = 0; i < hut_path_get_count (outer); i++)
    {
      const HutPoint p = hut_path_get (outer, i)->p;
      const double at_mm = along_u ? p.u : p.v;

      if (p.u >= strip.u0 && p.u <= strip.u1 && p.v >= strip.v0 && p.v <= strip.v1)
        g_array_append_val (borders, at_mm);
    }
  g_array_sort (borders, compare_mm);
  return borders;
}

static void
add_cell (GArray *cells, const HutPath *outer, HutRect rect)
{
  const HutPoint middle = { (rect.u0 + rect.u1) / 2.0, (rect.v0 + rect.v1) / 2.0 };

  if (rect.u1 - rect.u0 >= SLIVER_MM && rect.v1 - rect.v0 >= SLIVER_MM
      && hut_path_contains (outer, middle))
    g_array_append_val (cells, rect);
}

static void
add_strip (GArray *cells, const HutPath *outer, HutRect strip, gboolean along_u)
{
  g_autoptr (GArray) borders = find_borders (outer, strip, along_u);

  for (guint i = 0; i + 1 < borders->len; i++)
    {
      const double from_mm = g_array_index (borders, double, i);
      const double to_mm = g_array_index (borders, double, i + 1);

      add_cell (cells, outer,
                along_u ? (HutRect){ from_mm, strip.v0, to_mm, strip.v1 }
                        : (HutRect){ strip.u0, from_mm, strip.u1, to_mm });
    }
}

/* The middle of a panel, and its fingers and corners: rectangles that tile its outline, whose edges
 * all run along u or v. */
static GArray *
tile_panel (const HutPanel *panel)
{
  const HutPath *outer = panel->region->outer;
  const double u0_mm = panel->edges[HUT_EDGE_LEFT].depth_mm,
               u1_mm = panel->width_mm - panel->edges[HUT_EDGE_RIGHT].depth_mm,
               v0_mm = panel->edges[HUT_EDGE_BOTTOM].depth_mm,
               v1_mm = panel->height_mm - panel->edges[HUT_EDGE_TOP].depth_mm;
  GArray *cells = g_array_new (FALSE, FALSE, sizeof (HutRect));

  add_cell (cells, outer, (HutRect){ u0_mm, v0_mm, u1_mm, v1_mm });
  /* Bottom and top run from corner to corner, so the corners come with them. */
  add_strip (cells, outer, (HutRect){ 0.0, 0.0, panel->width_mm, v0_mm }, TRUE);
  add_strip (cells, outer, (HutRect){ 0.0, v1_mm, panel->width_mm, panel->height_mm }, TRUE);
  add_strip (cells, outer, (HutRect){ 0.0, v0_mm, u0_mm, v1_mm }, FALSE);
  add_strip (cells, outer, (HutRect){ u1_mm, v0_mm, panel->width_mm, v1_mm }, FALSE);
  return cells;
}

/* Across and along a side: where its line is, and its stretch. */
static void
side_of (const HutRect *rect, HutEdge side, double *at_mm, double *from_mm, double *to_mm)
{
  const gboolean along_u = side == HUT_EDGE_BOTTOM || side == HUT_EDGE_TOP;

  *at_mm = side == HUT_EDGE_BOTTOM ? rect->v0
           : side == HUT_EDGE_TOP  ? rect->v1
           : side == HUT_EDGE_LEFT ? rect->u0
                                   : rect->u1;
  *from_mm = along_u ? rect->u0 : rect->v0;
  *to_mm = along_u ? rect->u1 : rect->v1;
}

static HutEdge
opposite (HutEdge side)
{
  return (HutEdge)((side + HUT_EDGE_COUNT / 2) % HUT_EDGE_COUNT);
}

static void
add_side (HutBuiltBlock *block, HutEdge side, double from_mm, double to_mm)
{
  const HutBuiltSide open = { side, from_mm, to_mm };

  if (to_mm - from_mm >= SLIVER_MM)
    g_array_append_val (block->sides, open);
}

/* A side is closed where another cell's opposite side lies on it. */
static void
find_open_sides (HutBuiltBlock *block, const GArray *cells, HutEdge side)
{
  g_autoptr (GArray) closed = g_array_new (FALSE, FALSE, sizeof (double));
  double at_mm, from_mm, to_mm;

  side_of (&block->rect, side, &at_mm, &from_mm, &to_mm);
  for (guint i = 0; cells != NULL && i < cells->len; i++)
    {
      double other_mm, stretch_mm[2];

      side_of (&g_array_index (cells, HutRect, i), opposite (side), &other_mm, &stretch_mm[0],
               &stretch_mm[1]);
      if (fabs (other_mm - at_mm) < SLIVER_MM && stretch_mm[1] > from_mm && stretch_mm[0] < to_mm)
        g_array_append_vals (closed, stretch_mm, G_N_ELEMENTS (stretch_mm));
    }
  /* Stretches of neighbours do not overlap: sorted, their ends come in pairs. */
  g_array_sort (closed, compare_mm);
  for (guint i = 0; i + 1 < closed->len; i += 2)
    {
      add_side (block, side, from_mm, g_array_index (closed, double, i));
      from_mm = MAX (from_mm, g_array_index (closed, double, i + 1));
    }
  add_side (block, side, from_mm, to_mm);
}

static void
open_all_sides (HutBuiltBlock *block, const GArray *cells)
{
  for (int side = 0; side < HUT_EDGE_COUNT; side++)
    find_open_sides (block, cells, (HutEdge)side);
}

static void
add_holes (HutBuiltBlock *block, const HutRegion *region)
{
  for (guint i = 0; i < region->holes->len; i++)
    {
      const HutPath *hole = g_ptr_array_index (region->holes, i);
      const HutRect bounds = hut_path_bounds (hole);
      GArray *flat = NULL;

      if (bounds.u1 > block->rect.u0 && bounds.u0 < block->rect.u1 && bounds.v1 > block->rect.v0
          && bounds.v0 < block->rect.v1)
        flat = hut_path_dup_flat (hole, NULL);
      if (flat != NULL)
        g_ptr_array_add (block->holes, flat);
    }
}

static void
add_panel (Build *build, guint index)
{
  const HutPanel *panel = g_ptr_array_index (build->assembly->panels, index);
  const HutFrame3 frame
      = explode_frame (build, pose_frame (build, &panel->frame, panel->id.shell), panel);
  g_autoptr (GArray) cells = NULL;

  if (is_hidden (build, panel->id.shell))
    return;
  cells = tile_panel (panel);
  for (guint i = 0; i < cells->len; i++)
    {
      HutBuiltBlock *block
          = add_block (build, HUT_BUILT_PANEL, (int)index, &frame,
                       g_array_index (cells, HutRect, i), -panel->thickness_mm, 0.0);

      open_all_sides (block, cells);
      add_holes (block, panel->region);
    }
}

/* ---- what is on the panels, and the machine ---------------------------------------------------
 */

static void
add_plate (Build *build, const HutPlate *plate)
{
  const HutPanel *panel = g_ptr_array_index (build->assembly->panels, plate->panel);
  const HutFrame3 frame
      = explode_frame (build, pose_frame (build, &panel->frame, panel->id.shell), panel);
  HutBuiltBlock *block;

  if (is_hidden (build, panel->id.shell))
    return;
  block = add_block (build, plate->kind == HUT_SOLID_GLAZING ? HUT_BUILT_GLAZING : HUT_BUILT_INSIDE,
                     (int)plate->panel, &frame, hut_region_bounds (plate->region),
                     -plate->depth1_mm, -plate->depth0_mm);
  open_all_sides (block, NULL);
  add_holes (block, plate->region);
}

/* @panel: -1 for none */
static void
add_box (Build *build, HutBuiltKind kind, HutShellId shell, int panel, const HutBox3 *box)
{
  const HutFrame3 still = { box->min, { 1, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 } };
  HutFrame3 frame = pose_frame (build, &still, shell);
  const HutVec3 size = hut_vec3_add (box->max, hut_vec3_scale (box->min, -1.0));

  if (size.x < SLIVER_MM || size.y < SLIVER_MM || size.z < SLIVER_MM)
    return;
  if (panel >= 0)
    frame = explode_frame (build, frame, g_ptr_array_index (build->assembly->panels, (guint)panel));
  open_all_sides (
      add_block (build, kind, panel, &frame, (HutRect){ 0.0, 0.0, size.x, size.y }, 0.0, size.z),
      NULL);
}

/* Panels and plates are drawn with their outlines, not as the boxes that the checks go by. */
static void
add_solids (Build *build, const GArray *solids)
{
  for (guint i = 0; i < solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (solids, HutSolid, i);

      if (solid->kind != HUT_SOLID_PANEL && solid->kind != HUT_SOLID_GLAZING
          && solid->kind != HUT_SOLID_FRAME && !is_hidden (build, solid->shell))
        add_box (build, HUT_BUILT_INSIDE, solid->shell, (int)solid->panel, &solid->box);
    }
}

static void
add_machine (Build *build)
{
  const HutAssembly *assembly = build->assembly;

  for (guint i = 0; i < assembly->design->machine.bodies->len; i++)
    {
      const HutBody *body = g_ptr_array_index (assembly->design->machine.bodies, i);
      const HutVec3 way = hut_vec3_add (assembly->machine_at,
                                        hut_vec3_scale (body->travel, build->pose->motion_ratio));
      const HutBox3 box = hut_box3_shift (&body->box, way);

      if (body->kind != HUT_BODY_KEEP_OUT)
        add_box (build, body->kind == HUT_BODY_MOVING ? HUT_BUILT_MOVING : HUT_BUILT_STATIC,
                 HUT_SHELL_BASE, -1, &box);
    }
}

/* ---- the whole ------------------------------------------------------------------------------- */

static HutBlock
block_in_space (const HutBuiltBlock *self)
{
  return (HutBlock){
    .origin = hut_frame3_to_world (&self->frame, self->rect.u0, self->rect.v0, self->w0_mm),
    .a = hut_vec3_scale (self->frame.u, self->rect.u1 - self->rect.u0),
    .b = hut_vec3_scale (self->frame.v, self->rect.v1 - self->rect.v0),
    .c = hut_vec3_scale (self->frame.w, self->w1_mm - self->w0_mm),
  };
}

static void
bound (HutBuiltModel *self, const HutBlock *block)
{
  for (guint i = 0; i < 8; i++)
    {
      const HutVec3 p = hut_block_corner (block, i);

      self->low
          = (HutVec3){ MIN (self->low.x, p.x), MIN (self->low.y, p.y), MIN (self->low.z, p.z) };
      self->high
          = (HutVec3){ MAX (self->high.x, p.x), MAX (self->high.y, p.y), MAX (self->high.z, p.z) };
    }
}

static void
order (HutBuiltModel *self)
{
  g_autoptr (GArray) blocks = g_array_new (FALSE, FALSE, sizeof (HutBlock));

  self->low = (HutVec3){ INFINITY, INFINITY, INFINITY };
  self->high = (HutVec3){ -INFINITY, -INFINITY, -INFINITY };
  for (guint i = 0; i < self->blocks->len; i++)
    {
      const HutBlock block = block_in_space (g_ptr_array_index (self->blocks, i));

      g_array_append_val (blocks, block);
      bound (self, &block);
    }
  self->tree = hut_depth_tree_new ((const HutBlock *)(void *)blocks->data, blocks->len);
}

HutBuiltModel *
hut_built_model_new (const HutAssembly *assembly, const HutPartSet *parts, const HutBuiltPose *pose)
{
  g_return_val_if_fail (assembly != NULL && pose != NULL, NULL);

  HutBuiltModel *self = g_new0 (HutBuiltModel, 1);
  const HutVec3 outer = assembly->outer_mm;
  Build build = {
    .model = self,
    .assembly = assembly,
    .pose = pose,
    .explode_mm = pose->explode_ratio * EXPLODE_RATIO * MAX (outer.x, MAX (outer.y, outer.z)),
  };

  self->blocks = g_ptr_array_new_with_free_func ((GDestroyNotify)block_free);
  for (guint i = 0; i < assembly->panels->len; i++)
    add_panel (&build, i);
  for (guint i = 0; i < assembly->plates->len; i++)
    add_plate (&build, g_ptr_array_index (assembly->plates, i));
  add_solids (&build, assembly->solids);
  if (parts != NULL)
    add_solids (&build, parts->solids);
  if (!pose->hide_machine && assembly->whole)
    add_machine (&build);
  order (self);
  return self;
}

void
hut_built_model_free (HutBuiltModel *self)
{
  if (self == NULL)
    return;
  hut_depth_tree_free (self->tree);
  g_ptr_array_unref (self->blocks);
  g_free (self);
}
