/* src/assembly/hut-shell-layout.c: panels as slabs of their shell's outer box.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-shell-layout.h"
#include "assembly/hut-finger.h"
#include <math.h>

static const HutSide neighbours[HUT_SIDE_COUNT][HUT_EDGE_COUNT] = {
  /*                  bottom           right           top             left */
  [HUT_SIDE_FRONT] = { HUT_SIDE_BOTTOM, HUT_SIDE_RIGHT, HUT_SIDE_TOP, HUT_SIDE_LEFT },
  [HUT_SIDE_BACK] = { HUT_SIDE_BOTTOM, HUT_SIDE_LEFT, HUT_SIDE_TOP, HUT_SIDE_RIGHT },
  [HUT_SIDE_LEFT] = { HUT_SIDE_BOTTOM, HUT_SIDE_FRONT, HUT_SIDE_TOP, HUT_SIDE_BACK },
  [HUT_SIDE_RIGHT] = { HUT_SIDE_BOTTOM, HUT_SIDE_BACK, HUT_SIDE_TOP, HUT_SIDE_FRONT },
  [HUT_SIDE_BOTTOM] = { HUT_SIDE_BACK, HUT_SIDE_RIGHT, HUT_SIDE_FRONT, HUT_SIDE_LEFT },
  [HUT_SIDE_TOP] = { HUT_SIDE_FRONT, HUT_SIDE_RIGHT, HUT_SIDE_BACK, HUT_SIDE_LEFT },
};

HutSide
hut_shell_layout_neighbour (HutSide side,
                            HutEdge edge)
{
  return neighbours[side][edge];
}

int
hut_shell_layout_rank (HutSide side)
{
  switch (side)
    {
    case HUT_SIDE_FRONT:
    case HUT_SIDE_BACK:
      return 2;
    case HUT_SIDE_LEFT:
    case HUT_SIDE_RIGHT:
      return 1;
    default:
      return 0;
    }
}

HutFrame3
hut_shell_layout_frame (const HutBox3 *box,
                        HutSide side,
                        double *width_mm,
                        double *height_mm)
{
  static const HutVec3 x = { 1, 0, 0 }, y = { 0, 1, 0 }, z = { 0, 0, 1 };
  static const HutVec3 minus_x = { -1, 0, 0 }, minus_y = { 0, -1, 0 }, minus_z = { 0, 0, -1 };
  const HutVec3 lo = box->min, hi = box->max;
  const double wide_mm = hut_snap_mm (hi.x - lo.x), deep_mm = hut_snap_mm (hi.y - lo.y);
  const double high_mm = hut_snap_mm (hi.z - lo.z);

  *width_mm = side == HUT_SIDE_LEFT || side == HUT_SIDE_RIGHT ? deep_mm : wide_mm;
  *height_mm = side == HUT_SIDE_BOTTOM || side == HUT_SIDE_TOP ? deep_mm : high_mm;
  switch (side)
    {
    case HUT_SIDE_FRONT:
      return (HutFrame3) { .origin = lo, .u = x, .v = z, .w = minus_y };
    case HUT_SIDE_BACK:
      return (HutFrame3) { .origin = { hi.x, hi.y, lo.z }, .u = minus_x, .v = z, .w = y };
    case HUT_SIDE_LEFT:
      return (HutFrame3) { .origin = { lo.x, hi.y, lo.z }, .u = minus_y, .v = z, .w = minus_x };
    case HUT_SIDE_RIGHT:
      return (HutFrame3) { .origin = { hi.x, lo.y, lo.z }, .u = y, .v = z, .w = x };
    case HUT_SIDE_BOTTOM:
      return (HutFrame3) { .origin = { lo.x, hi.y, lo.z }, .u = x, .v = minus_y, .w = minus_z };
    default:
      return (HutFrame3) { .origin = { lo.x, lo.y, hi.z }, .u = x, .v = y, .w = z };
    }
}

void
hut_shell_layout_boxes (const HutDesign *design,
                        const HutFit *fit,
                        HutShellBox boxes[HUT_SHELL_COUNT])
{
  const HutShell *shell = &design->shell;
  const HutVec3 outer = fit->outer;
  HutShellBox *base = &boxes[HUT_SHELL_BASE], *lid = &boxes[HUT_SHELL_LID];

  for (int id = 0; id < HUT_SHELL_COUNT; id++)
    {
      boxes[id] = (HutShellBox) { .shell = (HutShellId) id, .box = { { 0, 0, 0 }, outer } };
      for (int side = 0; side < HUT_SIDE_COUNT; side++)
        {
          const HutPanelId panel = { (HutShellId) id, (HutSide) side };

          boxes[id].present[side] = hut_shell_has_panel (shell, panel);
          boxes[id].thickness_mm[side] = hut_fit_thickness_mm (design, panel);
        }
    }
  if (shell->bottom != HUT_BOTTOM_JOINTED)
    base->present[HUT_SIDE_BOTTOM] = FALSE;
  if (shell->bottom == HUT_BOTTOM_UNDER || shell->bottom == HUT_BOTTOM_BOUGHT)
    base->box.min.z = base->thickness_mm[HUT_SIDE_BOTTOM];

  switch (shell->lid)
    {
    case HUT_LID_HOOD:
    case HUT_LID_LIFT_OFF:
      base->box.max.z = hut_snap_mm (shell->seam_height_mm);
      lid->box.min.z = hut_snap_mm (shell->seam_height_mm + shell->seam_gap_mm);
      break;
    case HUT_LID_TOP:
      lid->box.min.z = hut_snap_mm (outer.z - lid->thickness_mm[HUT_SIDE_TOP]);
      base->box.max.z = hut_snap_mm (lid->box.min.z - shell->seam_gap_mm);
      break;
    case HUT_LID_FRONT:
      lid->box.max.y = lid->thickness_mm[HUT_SIDE_FRONT];
      base->box.min.y = hut_snap_mm (lid->box.max.y + shell->seam_gap_mm);
      break;
    }
}

/* The axis that an edge runs along: 0 x, 1 y, 2 z. */
static int
edge_axis (HutSide a,
           HutSide b)
{
  static const int normal[HUT_SIDE_COUNT] = { 1, 1, 0, 0, 2, 2 };

  return 3 - normal[a] - normal[b];
}

static double
axis_of (HutVec3 v,
         int axis)
{
  return axis == 0 ? v.x : axis == 1 ? v.y : v.z;
}

/* Borders of the fingers of an edge prism in world coordinates; the same for both of its panels. */
static GArray *
prism_cuts (const HutDesign *design,
            const HutShellBox *box,
            HutSide a,
            HutSide b,
            guint *count)
{
  static const HutSide low_end[] = { HUT_SIDE_LEFT, HUT_SIDE_FRONT, HUT_SIDE_BOTTOM };
  static const HutSide high_end[] = { HUT_SIDE_RIGHT, HUT_SIDE_BACK, HUT_SIDE_TOP };
  const int axis = edge_axis (a, b);
  const HutStock *stock_a = hut_design_get_panel_stock (design, (HutPanelId) { box->shell, a });
  const HutStock *stock_b = hut_design_get_panel_stock (design, (HutPanelId) { box->shell, b });
  const double thick_mm = MAX (box->thickness_mm[a], box->thickness_mm[b]);
  const double web_mm = MAX (stock_a->smallest_web_mm, stock_b->smallest_web_mm);
  const double least_mm = MAX (HUT_FINGER_MIN_RATIO * thick_mm, 2.0 * web_mm);
  const double ratio
      = CLAMP (design->joints.finger_ratio, HUT_FINGER_MIN_RATIO, HUT_FINGER_MAX_RATIO);
  double from_mm = axis_of (box->box.min, axis), to_mm = axis_of (box->box.max, axis);

  if (box->present[low_end[axis]])
    from_mm = hut_snap_mm (from_mm + box->thickness_mm[low_end[axis]]);
  if (box->present[high_end[axis]])
    to_mm = hut_snap_mm (to_mm - box->thickness_mm[high_end[axis]]);
  *count = hut_finger_count (to_mm - from_mm, MAX (ratio * thick_mm, least_mm), least_mm);
  return hut_finger_cuts (from_mm, to_mm, *count);
}

static void
joint_edge (const HutDesign *design,
            const HutShellBox *box,
            const HutPanel *panel,
            HutEdge edge,
            HutEdgeJoint *joint)
{
  const HutSide side = panel->id.side, other = neighbours[side][edge];
  const gboolean level = edge == HUT_EDGE_BOTTOM || edge == HUT_EDGE_TOP;
  const HutVec3 along = level ? panel->frame.u : panel->frame.v;
  const int axis = edge_axis (side, other);
  const double sign = axis_of (along, axis), origin_mm = axis_of (panel->frame.origin, axis);
  guint count;

  if (!box->present[other])
    {
      joint->kind = HUT_JOINT_NONE;
      return;
    }
  joint->other = (HutPanelId) { box->shell, other };
  joint->depth_mm = box->thickness_mm[other];
  joint->owns_ends = hut_shell_layout_rank (side) > hut_shell_layout_rank (other);
  joint->cuts_mm = prism_cuts (design, box, side, other, &count);
  joint->finger_count = count;
  joint->kind = count > 1 ? HUT_JOINT_FINGERS : HUT_JOINT_BUTT;

  for (guint i = 0; i <= count; i++)
    {
      double *cut_mm = &g_array_index (joint->cuts_mm, double, i);

      *cut_mm = hut_snap_mm ((*cut_mm - origin_mm) * sign);
    }
  if (sign < 0.0)
    for (guint i = 0; i < (count + 1) / 2; i++)
      {
        double *low = &g_array_index (joint->cuts_mm, double, i);
        double *high = &g_array_index (joint->cuts_mm, double, count - i);
        const double kept = *low;

        *low = *high;
        *high = kept;
      }
  joint->start_mm = g_array_index (joint->cuts_mm, double, 0);
  joint->end_mm = g_array_index (joint->cuts_mm, double, count);
}

static HutPanel *
panel_new (const HutDesign *design,
           const HutBox3 *box,
           HutPanelId id)
{
  HutPanel *panel = g_new0 (HutPanel, 1);

  panel->id = id;
  panel->stock = hut_design_get_panel_stock (design, id);
  panel->thickness_mm = hut_fit_thickness_mm (design, id);
  panel->frame = hut_shell_layout_frame (box, id.side, &panel->width_mm, &panel->height_mm);
  panel->bought = id.side == HUT_SIDE_BOTTOM && design->shell.bottom == HUT_BOTTOM_BOUGHT;
  return panel;
}

/* A bottom that is not jointed: between the walls or under them. */
static HutPanel *
loose_bottom_new (const HutDesign *design,
                  const HutFit *fit,
                  const HutShellBox *base)
{
  const HutPanelId id = { HUT_SHELL_BASE, HUT_SIDE_BOTTOM };
  const double thickness_mm = base->thickness_mm[HUT_SIDE_BOTTOM];
  HutBox3 box = { { 0, 0, 0 }, { fit->outer.x, fit->outer.y, thickness_mm } };

  if (design->shell.bottom == HUT_BOTTOM_INSET)
    {
      box.min.x = hut_snap_mm (base->thickness_mm[HUT_SIDE_LEFT] + HUT_INSET_GAP_MM);
      box.max.x = hut_snap_mm (box.max.x - base->thickness_mm[HUT_SIDE_RIGHT] - HUT_INSET_GAP_MM);
      box.min.y = hut_snap_mm (base->box.min.y
                               + (base->present[HUT_SIDE_FRONT]
                                      ? base->thickness_mm[HUT_SIDE_FRONT] + HUT_INSET_GAP_MM
                                      : 0.0));
      box.max.y = hut_snap_mm (box.max.y - base->thickness_mm[HUT_SIDE_BACK] - HUT_INSET_GAP_MM);
      box.min.z = hut_snap_mm (design->shell.ledge_mm);
      box.max.z = hut_snap_mm (box.min.z + thickness_mm);
    }
  else
    box.min.y = base->box.min.y;
  return panel_new (design, &box, id);
}

static void
finish_outline (HutPanel *panel)
{
  panel->region
      = hut_region_new (hut_finger_outline (panel->width_mm, panel->height_mm, panel->edges));
}

void
hut_shell_layout_panels (const HutDesign *design,
                         const HutFit *fit,
                         GPtrArray *panels)
{
  HutShellBox boxes[HUT_SHELL_COUNT];

  hut_shell_layout_boxes (design, fit, boxes);
  for (int shell = 0; shell < HUT_SHELL_COUNT; shell++)
    for (int side = 0; side < HUT_SIDE_COUNT; side++)
      {
        const HutPanelId id = { (HutShellId) shell, (HutSide) side };
        HutPanel *panel;

        if (!hut_shell_has_panel (&design->shell, id))
          continue;
        if (boxes[shell].present[side])
          {
            panel = panel_new (design, &boxes[shell].box, id);
            for (int edge = 0; edge < HUT_EDGE_COUNT; edge++)
              joint_edge (design, &boxes[shell], panel, (HutEdge) edge, &panel->edges[edge]);
          }
        else
          panel = loose_bottom_new (design, fit, &boxes[shell]);
        finish_outline (panel);
        g_ptr_array_add (panels, panel);
      }
}

void
hut_panel_free (HutPanel *self)
{
  if (self == NULL)
    return;
  for (int edge = 0; edge < HUT_EDGE_COUNT; edge++)
    g_clear_pointer (&self->edges[edge].cuts_mm, g_array_unref);
  hut_region_free (self->region);
  g_free (self);
}
