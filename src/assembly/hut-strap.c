/* src/assembly/hut-strap.c: backing plates over splices.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-strap.h"
#include "assembly/hut-part-private.h"
#include "assembly/hut-pocket.h"
#include <math.h>

double
hut_strap_width_mm (const HutDesign *design,
                    const HutPanel *panel)
{
  const HutJoints *joints = &design->joints;
  const double ratio
      = MAX (joints->strap_ratio, joints->splice_length_ratio + 2.0 * HUT_STRAP_SIDE_RATIO);
  double room_width_mm, room_depth_mm;

  hut_cutter_room (&design->cutter, panel->stock, &room_width_mm, &room_depth_mm);
  /* Both edges are snapped, so a width that the bed limits keeps two grid steps from it. */
  return 2.0
         * hut_snap_mm (CLAMP (MIN (room_width_mm, room_depth_mm) - 2.0 * HUT_GRID_MM, 0.0,
                               panel->thickness_mm * ratio)
                        / 2.0);
}

/* ---- free stretches along a splice ----------------------------------------------------------- */

typedef struct
{
  double from_mm, to_mm;
} Stretch;

/* Takes away what lies between two places. */
static void
block (GArray *stretches,
       double from_mm,
       double to_mm)
{
  for (guint i = 0; i < stretches->len; i++)
    {
      Stretch *stretch = &g_array_index (stretches, Stretch, i);
      const Stretch rest = { to_mm, stretch->to_mm };

      if (to_mm <= stretch->from_mm || from_mm >= stretch->to_mm)
        continue;
      stretch->to_mm = from_mm; /* may turn it over: those are dropped by their length */
      if (rest.to_mm > rest.from_mm)
        g_array_insert_val (stretches, ++i, rest);
    }
}

/* Takes away a rectangle's stretch where it meets the strap's band. */
static void
block_rect (GArray *stretches,
            const HutSplice *splice,
            const Stretch *band,
            HutRect rect)
{
  const double low_mm = splice->vertical ? rect.u0 : rect.v0,
               high_mm = splice->vertical ? rect.u1 : rect.v1;

  if (high_mm + HUT_STRAP_GAP_MM <= band->from_mm || low_mm - HUT_STRAP_GAP_MM >= band->to_mm)
    return;
  block (stretches, (splice->vertical ? rect.v0 : rect.u0) - HUT_STRAP_GAP_MM,
         (splice->vertical ? rect.v1 : rect.u1) + HUT_STRAP_GAP_MM);
}

/* How far a strap ends before a panel's edge. */
static double
end_gap_mm (const HutPanel *panel,
            HutEdge edge)
{
  const HutEdgeJoint *joint = &panel->edges[edge];

  return joint->kind == HUT_JOINT_NONE ? HUT_STRAP_GAP_MM
                                       : joint->depth_mm + panel->thickness_mm + HUT_STRAP_END_MM;
}

/* Takes a slab off the side of @room where the least is lost with it. */
static void
cut_room (HutRect *room,
          HutRect slab)
{
  const double left_mm = slab.u1 - room->u0, right_mm = room->u1 - slab.u0;
  const double bottom_mm = slab.v1 - room->v0, top_mm = room->v1 - slab.v0;
  const double least_mm = MIN (MIN (left_mm, right_mm), MIN (bottom_mm, top_mm));

  if (left_mm == least_mm)
    room->u0 = slab.u1 + HUT_STRAP_END_MM;
  else if (right_mm == least_mm)
    room->u1 = slab.u0 - HUT_STRAP_END_MM;
  else if (bottom_mm == least_mm)
    room->v0 = slab.v1 + HUT_STRAP_END_MM;
  else
    room->v1 = slab.v0 - HUT_STRAP_END_MM;
}

static void
cut_room_by_box (HutRect *room,
                 const HutPanel *plate,
                 const HutBox3 *box)
{
  const HutBox3 behind
      = hut_frame3_box (&plate->frame, *room, -2.0 * plate->thickness_mm, -plate->thickness_mm);

  if (room->u1 > room->u0 && room->v1 > room->v0 && hut_box3_overlap_mm (&behind, box) > 0.0)
    cut_room (room, hut_frame3_shadow (&plate->frame, box));
}

/* Where the straps of a panel may lie: inside its edges, and beside ledges, baffles and all other
 * panels with the straps on their insides. Walls stand behind a front that is hinged before them,
 * too. */
static HutRect
find_room (const HutAssembly *assembly,
           guint panel)
{
  const HutPanel *plate = g_ptr_array_index (assembly->panels, panel);
  HutRect room = {
    end_gap_mm (plate, HUT_EDGE_LEFT),
    end_gap_mm (plate, HUT_EDGE_BOTTOM),
    plate->width_mm - end_gap_mm (plate, HUT_EDGE_RIGHT),
    plate->height_mm - end_gap_mm (plate, HUT_EDGE_TOP),
  };

  for (guint i = 0; i < assembly->panels->len; i++)
    {
      const HutPanel *other = g_ptr_array_index (assembly->panels, i);
      const HutRect whole = { 0.0, 0.0, other->width_mm, other->height_mm };
      const HutBox3 box = hut_frame3_box (&other->frame, whole, -2.0 * other->thickness_mm, 0.0);

      if (i != panel)
        cut_room_by_box (&room, plate, &box);
    }
  for (guint i = 0; i < assembly->solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (assembly->solids, HutSolid, i);

      if (solid->kind == HUT_SOLID_LEDGE || solid->kind == HUT_SOLID_BAFFLE)
        cut_room_by_box (&room, plate, &solid->box);
    }
  return room;
}

/* Glazing and frames of the neighbours reach into the corners. */
static void
block_plates_round_corner (const HutAssembly *assembly,
                           const HutSplice *splice,
                           const Stretch *band,
                           GArray *stretches)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, splice->panel);
  const HutRect whole = { 0.0, 0.0, panel->width_mm, panel->height_mm };
  const HutBox3 behind
      = hut_frame3_box (&panel->frame, whole, -2.0 * panel->thickness_mm, -panel->thickness_mm);

  for (guint i = 0; i < assembly->solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (assembly->solids, HutSolid, i);

      if (solid->kind == HUT_SOLID_TRAP && hut_box3_overlap_mm (&behind, &solid->box) > 0.0)
        block_rect (stretches, splice, band, hut_frame3_shadow (&panel->frame, &solid->box));
      if ((solid->kind == HUT_SOLID_GLAZING || solid->kind == HUT_SOLID_FRAME)
          && solid->panel != splice->panel && hut_box3_overlap_mm (&behind, &solid->box) > 0.0)
        block_rect (stretches, splice, band, hut_frame3_shadow (&panel->frame, &solid->box));
    }
}

/* Pockets, and what hardware of any panel has standing where the strap would lie. Soft room is no
 * obstacle: leads pass over a strap. */
static void
block_hardware (const HutAssembly *assembly,
                const HutSplice *splice,
                const Stretch *band,
                GArray *stretches)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, splice->panel);
  const HutRect whole = { 0.0, 0.0, panel->width_mm, panel->height_mm };
  const HutBox3 behind
      = hut_frame3_box (&panel->frame, whole, -2.0 * panel->thickness_mm, -panel->thickness_mm);

  for (guint i = 0; i < assembly->hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (assembly->hardware, i);
      const double rim_mm = placed->need.bit_mm / 2.0 + HUT_POCKET_KEEP_MM;

      if (placed->bored && placed->panel == splice->panel)
        block_rect (stretches, splice, band,
                    (HutRect) { placed->pocket_at.u - rim_mm, placed->pocket_at.v - rim_mm,
                                placed->pocket_at.u + rim_mm, placed->pocket_at.v + rim_mm });
    }
  for (guint i = 0; i < assembly->solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (assembly->solids, HutSolid, i);

      if ((solid->kind == HUT_SOLID_HARDWARE || solid->kind == HUT_SOLID_FACE_PLATE)
          && hut_box3_overlap_mm (&behind, &solid->box) > 0.0)
        block_rect (stretches, splice, band, hut_frame3_shadow (&panel->frame, &solid->box));
    }
}

static GArray *
free_stretches (const HutAssembly *assembly,
                const HutPartSet *set,
                const HutSplice *splice,
                const HutRect *room,
                const Stretch *band)
{
  const Stretch whole = {
    MAX (splice->from_mm, splice->vertical ? room->v0 : room->u0),
    MIN (splice->to_mm, splice->vertical ? room->v1 : room->u1),
  };
  GArray *stretches = g_array_new (FALSE, FALSE, sizeof (Stretch));

  if (whole.to_mm > whole.from_mm)
    g_array_append_val (stretches, whole);
  for (guint i = 0; i < assembly->plates->len; i++)
    {
      const HutPlate *plate = g_ptr_array_index (assembly->plates, i);

      if (plate->panel == splice->panel)
        block_rect (stretches, splice, band, hut_region_bounds (plate->region));
    }
  block_plates_round_corner (assembly, splice, band, stretches);
  block_hardware (assembly, splice, band, stretches);
  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);

      if (hole->panel == splice->panel)
        block_rect (stretches, splice, band, hole->bounds);
    }
  for (guint i = 0; i < set->parts->len; i++)
    {
      const HutPart *other = g_ptr_array_index (set->parts, i);

      if (other->kind == HUT_PART_STRAP && other->panel == splice->panel)
        block_rect (stretches, splice, band, hut_region_bounds (other->region));
    }
  return stretches;
}

/* ---- straps ---------------------------------------------------------------------------------- */

static void
add_strap (const HutAssembly *assembly,
           HutPartSet *set,
           const HutSplice *splice,
           HutRect rect,
           guint number)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, splice->panel);
  g_autofree char *id = g_strdup_printf ("strap-%s-%u", hut_panel_id_to_string (panel->id), number);
  HutPart *part = hut_part_new (HUT_PART_STRAP, id, splice->panel, panel->stock);
  const HutSolid solid = {
    .kind = HUT_SOLID_STRAP,
    .shell = panel->id.shell,
    .panel = splice->panel,
    .box = hut_frame3_box (&panel->frame, rect, -2.0 * panel->thickness_mm, -panel->thickness_mm),
  };

  part->depth_mm = panel->thickness_mm;
  part->region = hut_region_new (hut_path_new_rect (rect, 0.0));
  g_ptr_array_add (set->parts, part);
  g_array_append_val (set->solids, solid);
}

/* Straps over one stretch: as many as the bed asks for. */
static void
add_stretch (const HutAssembly *assembly,
             HutPartSet *set,
             const HutSplice *splice,
             const Stretch *stretch,
             const Stretch *band,
             guint *number)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, splice->panel);
  const double length_mm = stretch->to_mm - stretch->from_mm;
  double room_width_mm, room_depth_mm;
  guint count;

  hut_cutter_room (&assembly->design->cutter, panel->stock, &room_width_mm, &room_depth_mm);
  if (MAX (room_width_mm, room_depth_mm) <= HUT_STRAP_LEAST_RATIO * panel->thickness_mm)
    return;
  count = (guint) MAX (1.0, ceil (length_mm / MAX (room_width_mm, room_depth_mm)));
  for (guint i = 0; i < count; i++)
    {
      const double from_mm = hut_snap_mm (stretch->from_mm + length_mm * i / count);
      const double to_mm = hut_snap_mm (stretch->from_mm + length_mm * (i + 1) / count);
      const double low_mm = hut_snap_mm (band->from_mm), high_mm = hut_snap_mm (band->to_mm);

      add_strap (assembly, set, splice,
                 splice->vertical ? (HutRect) { low_mm, from_mm, high_mm, to_mm }
                                  : (HutRect) { from_mm, low_mm, to_mm, high_mm },
                 ++*number);
    }
}

/* The straps of one splice; none where its band has no room. Returns: how many */
static guint
back_splice (const HutAssembly *assembly,
             HutPartSet *set,
             const HutSplice *splice,
             const HutRect *room,
             guint *number)
{
  const HutPanel *plate = g_ptr_array_index (assembly->panels, splice->panel);
  const double half_mm = hut_strap_width_mm (assembly->design, plate) / 2.0;
  /* A strap that does not reach over the fingers and a thickness beside them holds nothing. */
  const double reach_mm
      = plate->thickness_mm * (assembly->design->joints.splice_length_ratio / 2.0 + 1.0);
  const Stretch band = {
    MAX (splice->at_mm - half_mm, splice->vertical ? room->u0 : room->v0),
    MIN (splice->at_mm + half_mm, splice->vertical ? room->u1 : room->v1),
  };
  const guint before = *number;
  g_autoptr(GArray) stretches = NULL;

  if (splice->at_mm - band.from_mm <= reach_mm || band.to_mm - splice->at_mm <= reach_mm)
    return 0;
  stretches = free_stretches (assembly, set, splice, room, &band);
  for (guint i = 0; i < stretches->len; i++)
    {
      const Stretch *stretch = &g_array_index (stretches, Stretch, i);

      if (stretch->to_mm - stretch->from_mm >= HUT_STRAP_LEAST_RATIO * plate->thickness_mm)
        add_stretch (assembly, set, splice, stretch, &band, number);
    }
  return *number - before;
}

void
hut_strap_add (const HutAssembly *assembly,
               guint panel,
               HutPartSet *set)
{
  const HutPanel *plate = g_ptr_array_index (assembly->panels, panel);
  const HutRect room = find_room (assembly, panel);
  guint number = 0;

  for (guint i = 0; i < set->splices->len; i++)
    {
      const HutSplice *splice = &g_array_index (set->splices, HutSplice, i);

      if (splice->panel != panel || splice->of != HUT_PART_PANEL)
        continue;
      if (back_splice (assembly, set, splice, &room, &number) == 0)
        {
          const double middle_mm = (splice->from_mm + splice->to_mm) / 2.0;
          const HutSplitTrouble trouble = {
            .kind = HUT_SPLIT_NO_STRAP,
            .panel = panel,
            .at = splice->vertical ? (HutPoint) { splice->at_mm, middle_mm }
                                   : (HutPoint) { middle_mm, splice->at_mm },
            .is_mm = splice->to_mm - splice->from_mm,
            .must_mm = HUT_STRAP_LEAST_RATIO * plate->thickness_mm,
          };

          g_array_append_val (set->troubles, trouble);
        }
    }
}
