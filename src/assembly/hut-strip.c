/* src/assembly/hut-strip.c: where the strips along the seam stand.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-strip.h"
#include "assembly/hut-fit.h"
#include <math.h>

/* ---- sides as axes --------------------------------------------------------------------------- */

/* The axis square to a side: 0 x, 1 y, 2 z. */
static int
normal_of (HutSide side)
{
  static const int normals[HUT_SIDE_COUNT] = { 1, 1, 0, 0, 2, 2 };

  return normals[side];
}

/* TRUE when the side lies at the low end of its axis. */
static gboolean
is_low (HutSide side)
{
  return side == HUT_SIDE_FRONT || side == HUT_SIDE_LEFT || side == HUT_SIDE_BOTTOM;
}

static double *
axis_of (HutVec3 *v,
         int axis)
{
  return axis == 0 ? &v->x : axis == 1 ? &v->y : &v->z;
}

static double
axis_mm (HutVec3 v,
         int axis)
{
  return *axis_of (&v, axis);
}

/* The two sides that a strip along @side ends at: low, then high. Seams run round an upright axis,
 * or, of a front, round the axis to the back. */
static void
find_ends (const HutShell *shell,
           HutSide side,
           HutSide ends[2])
{
  const gboolean front_lid = shell->lid == HUT_LID_FRONT;
  const gboolean across = side != HUT_SIDE_LEFT && side != HUT_SIDE_RIGHT;

  ends[0] = across ? HUT_SIDE_LEFT : front_lid ? HUT_SIDE_BOTTOM : HUT_SIDE_FRONT;
  ends[1] = across ? HUT_SIDE_RIGHT : front_lid ? HUT_SIDE_TOP : HUT_SIDE_BACK;
}

static gboolean
is_on_edge (const HutShell *shell)
{
  return shell->lid == HUT_LID_TOP || shell->lid == HUT_LID_FRONT;
}

static HutShellId
carrier_of (const HutShell *shell,
            const HutBaffle *baffle)
{
  return is_on_edge (shell) ? HUT_SHELL_LID : baffle->shell;
}

static HutSide
hinge_side (const HutShell *shell)
{
  switch (shell->hinge)
    {
    case HUT_HINGE_LEFT:
      return HUT_SIDE_LEFT;
    case HUT_HINGE_RIGHT:
      return HUT_SIDE_RIGHT;
    case HUT_HINGE_TOP:
      return HUT_SIDE_TOP;
    default:
      return HUT_SIDE_BACK;
    }
}

/* From a side's outer plane to the inner face of a shell's wall there, mm. */
static double
wall_mm (const HutDesign *design,
         HutShellId shell,
         HutSide side)
{
  const HutPanelId panel = { shell, side };

  if (!hut_shell_has_panel (&design->shell, panel))
    return 0.0;
  return side == HUT_SIDE_BOTTOM ? hut_fit_floor_mm (design) : hut_fit_thickness_mm (design, panel);
}

/* From a side's outer plane to what a strip must keep free of there: behind its own shell's wall,
 * and a gap behind that of the other one. */
static double
behind_mm (const HutDesign *design,
           HutShellId carrier,
           HutSide side,
           double gap_mm)
{
  const HutShellId other = carrier == HUT_SHELL_BASE ? HUT_SHELL_LID : HUT_SHELL_BASE;

  if (is_on_edge (&design->shell))
    return hut_snap_mm (wall_mm (design, HUT_SHELL_BASE, side) + gap_mm);
  return hut_snap_mm (
      MAX (wall_mm (design, carrier, side), wall_mm (design, other, side) + gap_mm));
}

/* From a side's outer plane to the strip's inner face, mm; 0 without a strip. */
static double
inner_face_mm (const HutDesign *design,
               HutSide side)
{
  const HutBaffle *baffle = hut_design_get_baffle (design, side);
  const HutStock *stock = baffle != NULL ? hut_design_get_stock (design, baffle->stock) : NULL;

  if (stock == NULL || !hut_shell_has_seam (&design->shell, side))
    return 0.0;
  return hut_snap_mm (behind_mm (design, carrier_of (&design->shell, baffle), side, baffle->gap_mm)
                      + hut_stock_mean_mm (stock));
}

double
hut_strip_intrusion_mm (const HutDesign *design,
                        HutSide side)
{
  const double face_mm = inner_face_mm (design, side);

  return face_mm > 0.0 ? hut_snap_mm (MAX (0.0, face_mm - hut_fit_wall_mm (design, side))) : 0.0;
}

/* ---- one strip ------------------------------------------------------------------------------- */

/* What the end of a strip beside the hinge must keep from the strip along the hinge, mm, when that
 * belongs to the other shell: seen from this one it turns about the hinge line, and its inner edge
 * past the seam comes nearer by its distance to that line less how far it is before it. */
static double
turning_room_mm (const HutDesign *design,
                 const HutBaffle *at_hinge)
{
  const double edge_mm = design->shell.seam_gap_mm / 2.0;
  const double before_mm
      = design->shell.hinge_offset_mm + inner_face_mm (design, at_hinge->side);

  return hypot (before_mm, edge_mm + at_hinge->overlap_mm) - before_mm + edge_mm;
}

/* The room between the end of a strip and the inner face of the strip round the corner. */
static double
corner_gap_mm (const HutDesign *design,
               const HutBaffle *baffle,
               const HutBaffle *neighbour)
{
  const HutShell *shell = &design->shell;

  if (carrier_of (shell, neighbour) == carrier_of (shell, baffle))
    return HUT_STRIP_JOIN_MM;
  if (shell->lid == HUT_LID_HOOD && neighbour->side == hinge_side (shell))
    return MAX (baffle->gap_mm, turning_room_mm (design, neighbour));
  return baffle->gap_mm;
}

/* Where a strip ends before the side @end, mm from that side's outer plane. Strips along left and
 * right stand between the others. */
static double
end_mm (const HutDesign *design,
        const HutBaffle *baffle,
        HutSide end)
{
  const HutShellId carrier = carrier_of (&design->shell, baffle);
  const HutBaffle *neighbour = hut_design_get_baffle (design, end);
  const gboolean between = baffle->side == HUT_SIDE_LEFT || baffle->side == HUT_SIDE_RIGHT;
  double free_mm = behind_mm (design, carrier, end, baffle->gap_mm);

  if (between && neighbour != NULL && inner_face_mm (design, end) > 0.0)
    free_mm = MAX (free_mm,
                   inner_face_mm (design, end) + corner_gap_mm (design, baffle, neighbour));
  return hut_snap_mm (free_mm);
}

/* Sets an axis of the box from distances to the outer planes of its two sides. */
static void
set_span (HutBox3 *box,
          int axis,
          double low_mm,
          double high_mm)
{
  *axis_of (&box->min, axis) = hut_snap_mm (low_mm);
  *axis_of (&box->max, axis) = hut_snap_mm (high_mm);
}

/* Along the wall, across the seam. */
static void
set_breadth (const HutShell *shell,
             const HutBaffle *baffle,
             const HutShellBox boxes[HUT_SHELL_COUNT],
             HutBox3 *box)
{
  const HutBox3 *base = &boxes[HUT_SHELL_BASE].box, *lid = &boxes[HUT_SHELL_LID].box;

  if (shell->lid == HUT_LID_FRONT)
    set_span (box, 1, lid->max.y, base->min.y + baffle->overlap_mm);
  else if (shell->lid == HUT_LID_TOP)
    set_span (box, 2, base->max.z - baffle->overlap_mm, lid->min.z);
  else if (baffle->shell == HUT_SHELL_BASE)
    set_span (box, 2, base->max.z - baffle->hold_mm, lid->min.z + baffle->overlap_mm);
  else
    set_span (box, 2, base->max.z - baffle->overlap_mm, lid->min.z + baffle->hold_mm);
}

static HutBox3
find_box (const HutAssembly *self,
          const HutBaffle *baffle,
          const HutStock *stock,
          const HutShellBox boxes[HUT_SHELL_COUNT])
{
  const HutDesign *design = self->design;
  const int normal = normal_of (baffle->side);
  const double depth_mm
      = behind_mm (design, carrier_of (&design->shell, baffle), baffle->side, baffle->gap_mm);
  const double thick_mm = hut_snap_mm (hut_stock_mean_mm (stock));
  const double outer_mm = axis_mm (self->outer_mm, normal);
  HutSide ends[2];
  HutBox3 box;

  find_ends (&design->shell, baffle->side, ends);
  set_breadth (&design->shell, baffle, boxes, &box);
  if (is_low (baffle->side))
    set_span (&box, normal, depth_mm, depth_mm + thick_mm);
  else
    set_span (&box, normal, outer_mm - depth_mm - thick_mm, outer_mm - depth_mm);
  set_span (&box, normal_of (ends[0]), end_mm (design, baffle, ends[0]),
            axis_mm (self->outer_mm, normal_of (ends[1])) - end_mm (design, baffle, ends[1]));
  return box;
}

static void
add_trouble (HutAssembly *self,
             HutTroubleKind kind,
             HutPanelId panel,
             double is_mm,
             double must_mm)
{
  const HutTrouble trouble
      = { .kind = kind, .panel = panel, .is_mm = is_mm, .must_mm = must_mm };

  g_array_append_val (self->troubles, trouble);
}

static void
add_strip (HutAssembly *self,
           const HutBaffle *baffle,
           const HutShellBox boxes[HUT_SHELL_COUNT])
{
  const HutShell *shell = &self->design->shell;
  const HutShellId carrier = carrier_of (shell, baffle);
  const HutPanelId wall = { is_on_edge (shell) ? HUT_SHELL_BASE : carrier, baffle->side };
  const HutStock *stock = hut_design_get_stock (self->design, baffle->stock);
  const HutPanel *panel = hut_assembly_get_panel (self, wall);
  HutStrip strip = { .baffle = baffle, .stock = stock, .shell = carrier };
  HutSolid solid = { .kind = HUT_SOLID_BAFFLE, .shell = carrier };
  HutVec3 face;

  if (stock == NULL || panel == NULL)
    {
      add_trouble (self, HUT_TROUBLE_STOCK_MISSING, wall, 0.0, 1.0);
      return;
    }
  strip.panel = solid.panel = (guint) hut_assembly_find_panel (self, wall);
  strip.box = solid.box = find_box (self, baffle, stock, boxes);
  strip.rect = hut_frame3_shadow (&panel->frame, &strip.box);
  if (hut_box3_is_empty (&strip.box)
      || MIN (strip.rect.u1 - strip.rect.u0, strip.rect.v1 - strip.rect.v0)
             < stock->smallest_web_mm)
    {
      add_trouble (self, HUT_TROUBLE_BAFFLE, wall,
                   MAX (0.0, MIN (strip.rect.u1 - strip.rect.u0, strip.rect.v1 - strip.rect.v0)),
                   stock->smallest_web_mm);
      return;
    }
  face = hut_vec3_add (is_low (baffle->side) ? strip.box.min : strip.box.max,
                       hut_vec3_scale (panel->frame.origin, -1.0));
  strip.depth_mm = hut_snap_mm (-hut_vec3_dot (face, panel->frame.w));
  strip.gap_mm = hut_snap_mm (
      behind_mm (self->design, carrier, baffle->side, baffle->gap_mm)
      - wall_mm (self->design, carrier == HUT_SHELL_BASE ? HUT_SHELL_LID : HUT_SHELL_BASE,
                 baffle->side));
  strip.stand_off_mm
      = is_on_edge (shell) ? 0.0 : hut_snap_mm (strip.depth_mm - panel->thickness_mm);
  strip.on_edge = is_on_edge (shell);
  g_array_append_val (self->strips, strip);
  g_array_append_val (self->solids, solid);
}

/* ---- ends ------------------------------------------------------------------------------------ */

/* The strip along a side; (nullable). */
static const HutStrip *
find_strip (const HutAssembly *self,
            HutSide side)
{
  for (guint i = 0; i < self->strips->len; i++)
    {
      const HutStrip *strip = &g_array_index (self->strips, HutStrip, i);

      if (strip->baffle->side == side)
        return strip;
    }
  return NULL;
}

/* What fills the room between the end of a strip and the face of the one round the corner: of the
 * same shell, as those stay where they are to each other, and near. FALSE: nothing does. */
static gboolean
find_bead (const HutAssembly *self,
           const HutStrip *strip,
           HutSide end,
           HutBox3 *box)
{
  const HutStrip *neighbour = find_strip (self, end);
  const int along = normal_of (end);

  if (neighbour == NULL || neighbour->shell != strip->shell)
    return FALSE;
  *box = (HutBox3) { { MAX (strip->box.min.x, neighbour->box.min.x),
                       MAX (strip->box.min.y, neighbour->box.min.y),
                       MAX (strip->box.min.z, neighbour->box.min.z) },
                     { MIN (strip->box.max.x, neighbour->box.max.x),
                       MIN (strip->box.max.y, neighbour->box.max.y),
                       MIN (strip->box.max.z, neighbour->box.max.z) } };
  if (is_low (end))
    set_span (box, along, axis_mm (neighbour->box.max, along), axis_mm (strip->box.min, along));
  else
    set_span (box, along, axis_mm (strip->box.max, along), axis_mm (neighbour->box.min, along));
  return !hut_box3_is_empty (box)
         && axis_mm (box->max, along) - axis_mm (box->min, along)
                <= HUT_STRIP_JOIN_MM + HUT_GRID_MM / 2.0;
}

guint
hut_strip_find_beads (const HutAssembly *assembly,
                      const HutStrip *strip,
                      HutBox3 beads[2])
{
  HutSide ends[2];
  guint count = 0;

  /* The others end at walls. */
  if (strip->baffle->side != HUT_SIDE_LEFT && strip->baffle->side != HUT_SIDE_RIGHT)
    return 0;
  find_ends (&assembly->design->shell, strip->baffle->side, ends);
  for (guint i = 0; i < G_N_ELEMENTS (ends); i++)
    if (find_bead (assembly, strip, ends[i], &beads[count]))
      count++;
  return count;
}

/* Light that has come through the slot at a strip's end would be straight before the seam of the
 * next wall. */
static void
add_beads (HutAssembly *self,
           const HutStrip *strip)
{
  HutBox3 beads[2];
  const guint count = hut_strip_find_beads (self, strip, beads);

  for (guint i = 0; i < count; i++)
    {
      const HutSolid solid = {
        .kind = HUT_SOLID_BAFFLE,
        .shell = strip->shell,
        .panel = strip->panel,
        .box = beads[i],
      };

      g_array_append_val (self->solids, solid);
    }
}

void
hut_strip_run (HutAssembly *self,
               const HutShellBox boxes[HUT_SHELL_COUNT])
{
  const GPtrArray *baffles = self->design->baffles;

  for (guint i = 0; i < baffles->len; i++)
    {
      const HutBaffle *baffle = g_ptr_array_index (baffles, i);

      if (hut_shell_has_seam (&self->design->shell, baffle->side))
        add_strip (self, baffle, boxes);
    }
  for (guint i = 0; i < self->strips->len; i++)
    add_beads (self, &g_array_index (self->strips, HutStrip, i));
}

/* ---- the lid's turn -------------------------------------------------------------------------- */

static HutSide
opposite (HutSide side)
{
  static const HutSide opposites[HUT_SIDE_COUNT]
      = { HUT_SIDE_BACK, HUT_SIDE_FRONT, HUT_SIDE_RIGHT,
          HUT_SIDE_LEFT, HUT_SIDE_TOP,   HUT_SIDE_BOTTOM };

  return opposites[side];
}

double
hut_strip_least_gap_mm (const HutAssembly *assembly,
                        HutSide side,
                        HutShellId shell,
                        double overlap_mm)
{
  const HutDesign *design = assembly->design;
  const HutShellId carrier = is_on_edge (&design->shell) ? HUT_SHELL_LID : shell;
  const HutShellId other = carrier == HUT_SHELL_BASE ? HUT_SHELL_LID : HUT_SHELL_BASE;
  const HutSide near = hinge_side (&design->shell), far = opposite (near);
  const HutBaffle *far_baffle = hut_design_get_baffle (design, far);
  const double edge_mm = design->shell.seam_gap_mm / 2.0, tip_mm = edge_mm + overlap_mm;
  const int axis = normal_of (far);
  double face_mm = wall_mm (design, other, far), reach_mm, left_mm2;

  if (!assembly->whole || !assembly->hinged || side == near)
    return 0.0;
  /* The ends of strips along the other two sides pass the far strip, when that stays behind. */
  if (side != far && far_baffle != NULL && carrier_of (&design->shell, far_baffle) == other)
    face_mm = MAX (face_mm, inner_face_mm (design, far));
  reach_mm = fabs (axis_mm (assembly->hinge_point, axis)
                   - (is_low (far) ? face_mm : axis_mm (assembly->outer_mm, axis) - face_mm));
  left_mm2 = reach_mm * reach_mm + edge_mm * edge_mm - tip_mm * tip_mm;
  return left_mm2 <= 0.0 ? reach_mm : MAX (0.0, reach_mm - sqrt (left_mm2));
}
