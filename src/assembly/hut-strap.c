/* src/assembly/hut-strap.c: backing plates over splices.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-strap.h"
#include "assembly/hut-part-private.h"
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
            double half_mm,
            HutRect rect)
{
  const double low_mm = splice->vertical ? rect.u0 : rect.v0,
               high_mm = splice->vertical ? rect.u1 : rect.v1;

  if (high_mm + HUT_STRAP_GAP_MM <= splice->at_mm - half_mm
      || low_mm - HUT_STRAP_GAP_MM >= splice->at_mm + half_mm)
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

static GArray *
free_stretches (const HutAssembly *assembly,
                const HutPartSet *set,
                const HutSplice *splice,
                double half_mm)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, splice->panel);
  const double length_mm = splice->vertical ? panel->height_mm : panel->width_mm;
  const Stretch whole = {
    MAX (splice->from_mm, end_gap_mm (panel, splice->vertical ? HUT_EDGE_BOTTOM : HUT_EDGE_LEFT)),
    MIN (splice->to_mm,
         length_mm - end_gap_mm (panel, splice->vertical ? HUT_EDGE_TOP : HUT_EDGE_RIGHT)),
  };
  GArray *stretches = g_array_new (FALSE, FALSE, sizeof (Stretch));

  if (whole.to_mm > whole.from_mm)
    g_array_append_val (stretches, whole);
  for (guint i = 0; i < assembly->plates->len; i++)
    {
      const HutPlate *plate = g_ptr_array_index (assembly->plates, i);

      if (plate->panel == splice->panel)
        block_rect (stretches, splice, half_mm, hut_region_bounds (plate->region));
    }
  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);

      if (hole->panel == splice->panel)
        block_rect (stretches, splice, half_mm, hole->bounds);
    }
  for (guint i = 0; i < set->parts->len; i++)
    {
      const HutPart *other = g_ptr_array_index (set->parts, i);

      if (other->kind == HUT_PART_STRAP && other->panel == splice->panel)
        block_rect (stretches, splice, half_mm, hut_region_bounds (other->region));
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
             double half_mm,
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
      const double low_mm = hut_snap_mm (splice->at_mm - half_mm),
                   high_mm = hut_snap_mm (splice->at_mm + half_mm);

      add_strap (assembly, set, splice,
                 splice->vertical ? (HutRect) { low_mm, from_mm, high_mm, to_mm }
                                  : (HutRect) { from_mm, low_mm, to_mm, high_mm },
                 ++*number);
    }
}

void
hut_strap_add (const HutAssembly *assembly,
               guint panel,
               HutPartSet *set)
{
  const HutPanel *plate = g_ptr_array_index (assembly->panels, panel);
  const double half_mm = hut_strap_width_mm (assembly->design, plate) / 2.0;
  /* A strap that does not reach over the fingers and a thickness beside them holds nothing. */
  const double reach_mm
      = plate->thickness_mm * (assembly->design->joints.splice_length_ratio / 2.0 + 1.0);
  guint number = 0;

  for (guint i = 0; i < set->splices->len; i++)
    {
      const HutSplice *splice = &g_array_index (set->splices, HutSplice, i);
      g_autoptr(GArray) stretches = NULL;
      const guint before = number;

      if (splice->panel != panel || splice->of != HUT_PART_PANEL)
        continue;
      stretches = free_stretches (assembly, set, splice, half_mm);
      for (guint s = 0; s < stretches->len; s++)
        {
          const Stretch *stretch = &g_array_index (stretches, Stretch, s);

          if (half_mm > reach_mm
              && stretch->to_mm - stretch->from_mm >= HUT_STRAP_LEAST_RATIO * plate->thickness_mm)
            add_stretch (assembly, set, splice, stretch, half_mm, &number);
        }
      if (number == before)
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
