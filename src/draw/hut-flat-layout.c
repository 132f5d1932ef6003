/* src/draw/hut-flat-layout.c: where the panels lie in the flat view, and what is under a pixel.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-flat-layout.h"
#include <math.h>

/* Gap between panels as a share of the longest row, and its least, mm. Own choice: at a view that
 * fits a small window it leaves room for a caption above and a size below. */
#define GAP_RATIO 0.055
#define GAP_LEAST_MM 30.0

enum
{
  COLUMN_LEFT,
  COLUMN_FRONT,
  COLUMN_RIGHT,
  COLUMN_BACK,
  COLUMN_COUNT
};

/* From below. Base top and lid top share a row: no lid kind has both. */
enum
{
  ROW_BOTTOM,
  ROW_BASE,
  ROW_LID,
  ROW_TOP,
  ROW_COUNT
};

/* TRUE when base and lid both have walls: then four columns would be too wide for any window. */
static gboolean
has_two_rows_of_walls (const HutAssembly *assembly)
{
  for (int side = HUT_SIDE_FRONT; side <= HUT_SIDE_RIGHT; side++)
    if (hut_assembly_find_panel (assembly, (HutPanelId){ HUT_SHELL_LID, (HutSide)side }) >= 0
        && hut_assembly_find_panel (assembly, (HutPanelId){ HUT_SHELL_BASE, (HutSide)side }) >= 0)
      return TRUE;
  return FALSE;
}

static int
panel_column (const HutAssembly *assembly,
              const HutPanel *panel)
{
  const gboolean two_rows = has_two_rows_of_walls (assembly);

  switch (panel->id.side)
    {
    case HUT_SIDE_LEFT:
      return COLUMN_LEFT;
    case HUT_SIDE_RIGHT:
      return COLUMN_RIGHT;
    case HUT_SIDE_BACK:
      return two_rows ? COLUMN_RIGHT : COLUMN_BACK;
    case HUT_SIDE_BOTTOM:
      /* Its upper border in the drawing lies at the front or at the back, as its frame says. */
      return panel->frame.v.y > 0.0 && !two_rows ? COLUMN_BACK : COLUMN_FRONT;
    case HUT_SIDE_FRONT:
    case HUT_SIDE_TOP:
    case HUT_SIDE_COUNT:
    default:
      return COLUMN_FRONT;
    }
}

static int
panel_row (const HutAssembly *assembly,
           const HutPanel *panel)
{
  if (panel->id.side == HUT_SIDE_BOTTOM)
    return ROW_BOTTOM;
  if (panel->id.side == HUT_SIDE_TOP)
    return ROW_TOP;
  if (panel->id.side == HUT_SIDE_BACK && has_two_rows_of_walls (assembly))
    return panel->id.shell == HUT_SHELL_LID ? ROW_TOP : ROW_BOTTOM;
  /* A wall of the lid where the base has none (a hinged front) closes the base's row. */
  if (panel->id.shell == HUT_SHELL_LID
      && hut_assembly_find_panel (assembly, (HutPanelId){ HUT_SHELL_BASE, panel->id.side }) >= 0)
    return ROW_LID;
  return ROW_BASE;
}

typedef struct
{
  double width_mm[COLUMN_COUNT], height_mm[ROW_COUNT];
  double left_mm[COLUMN_COUNT], low_mm[ROW_COUNT];
} Grid;

static double
grid_gap_mm (const Grid *grid)
{
  double width_mm = 0.0, height_mm = 0.0;

  for (int column = 0; column < COLUMN_COUNT; column++)
    width_mm += grid->width_mm[column];
  for (int row = 0; row < ROW_COUNT; row++)
    height_mm += grid->height_mm[row];
  return MAX (GAP_LEAST_MM, GAP_RATIO * MAX (width_mm, height_mm));
}

/* Empty rows and columns give up their gap too. */
static void
grid_place (Grid *grid,
            double gap_mm)
{
  double at_mm = 0.0;

  for (int column = 0; column < COLUMN_COUNT; column++)
    {
      grid->left_mm[column] = at_mm;
      if (grid->width_mm[column] > 0.0)
        at_mm += grid->width_mm[column] + gap_mm;
    }
  at_mm = 0.0;
  for (int row = 0; row < ROW_COUNT; row++)
    {
      grid->low_mm[row] = at_mm;
      if (grid->height_mm[row] > 0.0)
        at_mm += grid->height_mm[row] + gap_mm;
    }
}

HutRect
hut_flat_layout_panel_rect (const HutFlatLayout *self,
                            const HutAssembly *assembly,
                            guint index)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, index);
  const HutPoint at = self->at[index];

  return (HutRect){ at.u, at.v, at.u + panel->width_mm, at.v + panel->height_mm };
}

static void
layout_take_bounds (HutFlatLayout *self,
                    const HutAssembly *assembly)
{
  self->bounds = (HutRect){ 0.0, 0.0, -1.0, -1.0 };
  for (guint i = 0; i < self->panel_count; i++)
    {
      const HutRect rect = hut_flat_layout_panel_rect (self, assembly, i);

      if (i == 0)
        self->bounds = rect;
      self->bounds.u0 = MIN (self->bounds.u0, rect.u0);
      self->bounds.v0 = MIN (self->bounds.v0, rect.v0);
      self->bounds.u1 = MAX (self->bounds.u1, rect.u1);
      self->bounds.v1 = MAX (self->bounds.v1, rect.v1);
    }
}

HutFlatLayout *
hut_flat_layout_new (const HutAssembly *assembly)
{
  HutFlatLayout *self = g_new0 (HutFlatLayout, 1);
  Grid grid = { 0 };

  self->panel_count = assembly->panels->len;
  self->at = g_new0 (HutPoint, MAX (1, self->panel_count));
  for (guint i = 0; i < self->panel_count; i++)
    {
      const HutPanel *panel = g_ptr_array_index (assembly->panels, i);
      double *width_mm = &grid.width_mm[panel_column (assembly, panel)];
      double *height_mm = &grid.height_mm[panel_row (assembly, panel)];

      *width_mm = MAX (*width_mm, panel->width_mm);
      *height_mm = MAX (*height_mm, panel->height_mm);
    }
  self->gap_mm = grid_gap_mm (&grid);
  grid_place (&grid, self->gap_mm);

  for (guint i = 0; i < self->panel_count; i++)
    {
      const HutPanel *panel = g_ptr_array_index (assembly->panels, i);
      const int column = panel_column (assembly, panel), row = panel_row (assembly, panel);
      const double spare_mm = grid.width_mm[column] - panel->width_mm;

      self->at[i].u = grid.left_mm[column];
      if (column == COLUMN_LEFT) /* against the front */
        self->at[i].u += spare_mm;
      else if (column == COLUMN_FRONT) /* an inset bottom is smaller */
        self->at[i].u += spare_mm / 2.0;
      self->at[i].v = grid.low_mm[row];
      if (row == ROW_BOTTOM) /* hangs from its row's upper border */
        self->at[i].v += grid.height_mm[row] - panel->height_mm;
    }
  layout_take_bounds (self, assembly);
  return self;
}

void
hut_flat_layout_free (HutFlatLayout *self)
{
  if (self == NULL)
    return;
  g_free (self->at);
  g_free (self);
}

HutFlatView
hut_flat_view_fit (HutRect drawing,
                   double width_px,
                   double height_px,
                   double border_px)
{
  const double width_mm = drawing.u1 - drawing.u0, height_mm = drawing.v1 - drawing.v0;
  const double free_x_px = MAX (1.0, width_px - 2.0 * border_px);
  const double free_y_px = MAX (1.0, height_px - 2.0 * border_px);
  HutFlatView view = { .scale_px_per_mm = 1.0 };

  if (width_mm > 0.0 && height_mm > 0.0)
    view.scale_px_per_mm = MIN (free_x_px / width_mm, free_y_px / height_mm);
  view.pan_x_px = width_px / 2.0 - (drawing.u0 + drawing.u1) / 2.0 * view.scale_px_per_mm;
  view.pan_y_px = height_px / 2.0 + (drawing.v0 + drawing.v1) / 2.0 * view.scale_px_per_mm;
  return view;
}

void
hut_flat_view_to_px (const HutFlatView *self,
                     const HutFlatLayout *layout,
                     guint panel,
                     HutPoint at,
                     double *x_px,
                     double *y_px)
{
  *x_px = self->pan_x_px + (layout->at[panel].u + at.u) * self->scale_px_per_mm;
  *y_px = self->pan_y_px - (layout->at[panel].v + at.v) * self->scale_px_per_mm;
}

HutPoint
hut_flat_view_to_panel (const HutFlatView *self,
                        const HutFlatLayout *layout,
                        guint panel,
                        double x_px,
                        double y_px)
{
  return (HutPoint){
    (x_px - self->pan_x_px) / self->scale_px_per_mm - layout->at[panel].u,
    (self->pan_y_px - y_px) / self->scale_px_per_mm - layout->at[panel].v,
  };
}

int
hut_flat_pick_panel (const HutFlatLayout *layout,
                     const HutAssembly *assembly,
                     const HutFlatView *view,
                     double x_px,
                     double y_px,
                     HutPoint *at)
{
  for (guint i = 0; i < layout->panel_count; i++)
    {
      const HutPanel *panel = g_ptr_array_index (assembly->panels, i);
      const HutPoint p = hut_flat_view_to_panel (view, layout, i, x_px, y_px);

      if (p.u >= 0.0 && p.v >= 0.0 && p.u <= panel->width_mm && p.v <= panel->height_mm)
        {
          *at = p;
          return (int)i;
        }
    }
  return -1;
}

static const char *
pick_within (const HutFlatLayout *layout,
             const HutAssembly *assembly,
             const HutFlatView *view,
             HutPoint pixel,
             double reach_mm)
{
  const char *found = NULL;
  double found_mm2 = INFINITY;

  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);
      const HutRect b = hole->bounds;
      const double area_mm2 = (b.u1 - b.u0) * (b.v1 - b.v0);

      if (hole->panel >= layout->panel_count || area_mm2 >= found_mm2)
        continue;
      const HutPoint p = hut_flat_view_to_panel (view, layout, hole->panel, pixel.u, pixel.v);
      if (p.u < b.u0 - reach_mm || p.u > b.u1 + reach_mm || p.v < b.v0 - reach_mm
          || p.v > b.v1 + reach_mm)
        continue;
      found = hole->item;
      found_mm2 = area_mm2;
    }
  return found;
}

const char *
hut_flat_pick_item (const HutFlatLayout *layout,
                    const HutAssembly *assembly,
                    const HutFlatView *view,
                    double x_px,
                    double y_px,
                    double reach_px)
{
  const HutPoint pixel = { x_px, y_px };
  const char *found = pick_within (layout, assembly, view, pixel, 0.0);

  if (found == NULL) /* what is really under the pixel goes before what is only near */
    found = pick_within (layout, assembly, view, pixel, reach_px / view->scale_px_per_mm);
  return found;
}

/* TRUE when @a comes before @b in the order of hut_flat_next_item (). */
static gboolean
hole_is_before (const HutPlacedHole *a,
                const HutPlacedHole *b)
{
  if (a->panel != b->panel)
    return a->panel < b->panel;
  if (a->centre.v != b->centre.v)
    return a->centre.v > b->centre.v;
  if (a->centre.u != b->centre.u)
    return a->centre.u < b->centre.u;
  return g_strcmp0 (a->item, b->item) < 0;
}

const char *
hut_flat_next_item (const HutAssembly *assembly,
                    const char *item,
                    gboolean forward)
{
  const HutPlacedHole *from = item != NULL ? hut_assembly_get_hole (assembly, item) : NULL;
  const HutPlacedHole *best = NULL;

  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);

      /* An item with two leaves, or with screws, has holes in several places: one stands for it. */
      if (hole->item == NULL || hut_assembly_get_hole (assembly, hole->item) != hole)
        continue;
      if (from != NULL && !(forward ? hole_is_before (from, hole) : hole_is_before (hole, from)))
        continue;
      if (best == NULL || (forward ? hole_is_before (hole, best) : hole_is_before (best, hole)))
        best = hole;
    }
  return best != NULL ? best->item : NULL;
}
