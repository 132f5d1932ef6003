/* src/assembly/hut-leaf.c: which panel a leaf of hardware lies on, and how.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-fit.h"
#include "assembly/hut-leaf.h"
#include <math.h>

#define RAD_PER_DEG (G_PI / 180.0)

/* A line between base and lid, and the panel on each of its sides. */
typedef struct
{
  HutPanelId panels[2]; /* of the base, of the lid */
  HutVec3 point;        /* world */
  HutVec3 along;        /* unit */
  gboolean folded;      /* the panels stand square to each other */
} Line;

/* How a line lies on one of its panels. */
typedef struct
{
  const HutPanel *panel;
  gboolean level;  /* it runs along u */
  double at_mm;    /* its v when level, else its u */
  HutPoint into;   /* unit, panel frame: from the line into the panel */
} Edge;

/* ---- the line ------------------------------------------------------------------------------- */

static HutSide
hinge_side (HutHinge hinge)
{
  switch (hinge)
    {
    case HUT_HINGE_LEFT:
      return HUT_SIDE_LEFT;
    case HUT_HINGE_RIGHT:
      return HUT_SIDE_RIGHT;
    case HUT_HINGE_TOP:
      return HUT_SIDE_TOP;
    case HUT_HINGE_BACK:
    default:
      return HUT_SIDE_BACK;
    }
}

/* The outer face of a side, where a line of the seam runs over it. */
static HutVec3
face_point (const HutAssembly *assembly,
            HutSide side)
{
  const HutVec3 outer = assembly->outer_mm;

  return (HutVec3) { side == HUT_SIDE_RIGHT ? outer.x : 0.0, side == HUT_SIDE_BACK ? outer.y : 0.0,
                     side == HUT_SIDE_TOP ? outer.z : 0.0 };
}

/* The seam as it passes over one side; FALSE where it does not. */
static gboolean
find_line (const HutAssembly *assembly,
           HutSide side,
           Line *line)
{
  const HutShell *shell = &assembly->design->shell;
  const gboolean upright = side == HUT_SIDE_LEFT || side == HUT_SIDE_RIGHT;

  *line = (Line) { .panels = { { HUT_SHELL_BASE, side }, { HUT_SHELL_LID, side } },
                   .point = face_point (assembly, side) };
  if (shell->lid == HUT_LID_FRONT)
    {
      if (side == HUT_SIDE_FRONT || side == HUT_SIDE_BACK)
        return FALSE;
      line->panels[1].side = HUT_SIDE_FRONT;
      line->folded = TRUE;
      line->point.y
          = hut_fit_wall_mm (assembly->design, HUT_SIDE_FRONT) + shell->seam_gap_mm / 2.0;
      line->along = upright ? (HutVec3) { 0, 0, 1 } : (HutVec3) { 1, 0, 0 };
      return TRUE;
    }
  if (side == HUT_SIDE_TOP || side == HUT_SIDE_BOTTOM)
    return FALSE;
  if (shell->lid == HUT_LID_TOP)
    {
      line->panels[1].side = HUT_SIDE_TOP;
      line->folded = TRUE;
    }
  line->point.z = assembly->seam_z_mm + shell->seam_gap_mm / 2.0;
  line->along = upright ? (HutVec3) { 0, 1, 0 } : (HutVec3) { 1, 0, 0 };
  return TRUE;
}

static HutPoint
to_panel (const HutFrame3 *frame,
          HutVec3 vector)
{
  return (HutPoint) { hut_vec3_dot (vector, frame->u), hut_vec3_dot (vector, frame->v) };
}

static HutPoint
point_on (const HutPanel *panel,
          HutVec3 world)
{
  return to_panel (&panel->frame,
                   hut_vec3_add (world, hut_vec3_scale (panel->frame.origin, -1.0)));
}

static Edge
find_edge (const HutPanel *panel,
           const Line *line)
{
  const HutPoint at = point_on (panel, line->point);
  Edge edge = { .panel = panel, .level = fabs (hut_vec3_dot (line->along, panel->frame.u)) > 0.5 };

  edge.at_mm = edge.level ? at.v : at.u;
  if (edge.level)
    edge.into.v = edge.at_mm > panel->height_mm / 2.0 ? -1.0 : 1.0;
  else
    edge.into.u = edge.at_mm > panel->width_mm / 2.0 ? -1.0 : 1.0;
  return edge;
}

/* ---- a leaf on its side of the line ---------------------------------------------------------- */

/* The placement that turns the item's axes into two square unit vectors of the panel. */
static HutPlacement
placement_of (HutPoint u_axis,
              HutPoint v_axis,
              HutPoint at)
{
  const gboolean mirrored = hut_point_cross (u_axis, v_axis) < 0.0;
  const double sign = mirrored ? -1.0 : 1.0;

  return (HutPlacement) { .mirrored = mirrored,
                          .turn_rad = atan2 (sign * u_axis.v, sign * u_axis.u),
                          .shift = { hut_snap_mm (at.u), hut_snap_mm (at.v) } };
}

/* World direction of the item's u axis: to the right, seen from the face that it is mounted on. */
static HutVec3
item_u_axis (const Edge *base,
             HutFace face)
{
  const HutFrame3 *frame = &base->panel->frame;
  const HutPoint v_axis = { -base->into.u, -base->into.v };
  const double sign = face == HUT_FACE_INSIDE ? -1.0 : 1.0;

  return hut_vec3_add (hut_vec3_scale (frame->u, sign * v_axis.v),
                       hut_vec3_scale (frame->v, -sign * v_axis.u));
}

static gboolean
find_across (const HutAssembly *assembly,
             const HutHardware *hardware,
             const Line *line,
             gboolean is_hinge,
             guint leaf,
             HutLeaf *found,
             HutTroubleKind *trouble)
{
  const int base_index = hut_assembly_find_panel (assembly, line->panels[0]),
            lid_index = hut_assembly_find_panel (assembly, line->panels[1]);
  HutPosition position = hardware->at;
  HutPoint middle, at, u_axis;
  HutVec3 world;
  Edge base, own;

  *trouble = HUT_TROUBLE_LEAF;
  if (base_index < 0 || lid_index < 0)
    return FALSE;
  position.panel = line->panels[0];
  *trouble = HUT_TROUBLE_ANCHOR;
  if (!hut_assembly_locate (assembly, &position, &middle))
    return FALSE;
  base = find_edge (g_ptr_array_index (assembly->panels, base_index), line);
  own = leaf == 0 ? base : find_edge (g_ptr_array_index (assembly->panels, lid_index), line);

  at = base.level ? (HutPoint) { middle.u, base.at_mm } : (HutPoint) { base.at_mm, middle.v };
  world = hut_frame3_to_world (&base.panel->frame, at.u, at.v, 0.0);
  at = point_on (own.panel, world);
  if (own.level)
    at.v = own.at_mm;
  else
    at.u = own.at_mm;
  u_axis = to_panel (&own.panel->frame, item_u_axis (&base, hardware->face));
  found->panel = (guint) (leaf == 0 ? base_index : lid_index);
  found->face = hardware->face;
  if (leaf == 1 && line->folded && is_hinge)
    found->face = hardware->face == HUT_FACE_OUTSIDE ? HUT_FACE_INSIDE : HUT_FACE_OUTSIDE;
  found->placement = placement_of (
      u_axis, leaf == 0 ? (HutPoint) { -own.into.u, -own.into.v } : own.into, at);
  return TRUE;
}

/* ---- public --------------------------------------------------------------------------------- */

gboolean
hut_leaf_find (const HutAssembly *assembly,
               const HutHardware *hardware,
               HutItemSpan span,
               guint leaf,
               HutLeaf *found,
               HutTroubleKind *trouble)
{
  const HutShell *shell = &assembly->design->shell;
  const int panel = hut_assembly_find_panel (assembly, hardware->at.panel);
  Line line;

  if (span != HUT_SPAN_PANEL)
    {
      *trouble = HUT_TROUBLE_LEAF;
      return (span == HUT_SPAN_SEAM || assembly->hinged)
             && find_line (assembly,
                           span == HUT_SPAN_HINGE ? hinge_side (shell->hinge)
                                                  : hardware->at.panel.side,
                           &line)
             && find_across (assembly, hardware, &line, span == HUT_SPAN_HINGE, leaf, found,
                             trouble);
    }
  *trouble = HUT_TROUBLE_PANEL_UNKNOWN;
  if (panel < 0)
    return FALSE;
  *found = (HutLeaf) { .panel = (guint) panel, .face = hardware->face };
  found->placement.mirrored = hardware->face == HUT_FACE_INSIDE;
  found->placement.turn_rad = hardware->turn_deg * RAD_PER_DEG;
  *trouble = HUT_TROUBLE_ANCHOR;
  return hut_assembly_locate (assembly, &hardware->at, &found->placement.shift);
}
