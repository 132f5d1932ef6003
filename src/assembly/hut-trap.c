/* src/assembly/hut-trap.c: light traps: boxes of plates behind openings.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-trap.h"
#include "assembly/hut-part-private.h"

static const char *const plate_names[] = {
  [HUT_TRAP_COVER] = "cover",           [HUT_TRAP_LEFT] = "left",
  [HUT_TRAP_RIGHT] = "right",           [HUT_TRAP_BACK] = "back",
  [HUT_TRAP_PARTITION] = "partition",   [HUT_TRAP_LIP] = "lip",
};

/* The trap's own stock, else that of its panel. */
static const HutStock *
stock_of (const HutDesign *design,
          const HutOpening *opening)
{
  return opening->trap_stock != NULL ? hut_design_get_stock (design, opening->trap_stock)
                                     : hut_design_get_panel_stock (design, opening->at.panel);
}

static double
area_mm2 (const HutPlacedHole *hole)
{
  double sum_mm2 = 0.0;

  for (guint i = 0; i < hole->paths->len; i++)
    sum_mm2 += hut_path_area_mm2 (g_ptr_array_index (hole->paths, i));
  return sum_mm2;
}

static HutVec3
minus (HutVec3 v)
{
  return hut_vec3_scale (v, -1.0);
}

/* A plate that stands on edge along v: its width runs inwards, its height up; its outer face, to
 * the right, is at @u_mm. */
static HutTrapPiece
upright (const HutPanel *panel,
         double u_mm,
         double v0_mm,
         double v1_mm,
         double depth_mm)
{
  const HutFrame3 *f = &panel->frame;

  return (HutTrapPiece) {
    .frame = { hut_frame3_to_world (f, u_mm, v0_mm, -panel->thickness_mm), minus (f->w), f->v,
               f->u },
    .width_mm = depth_mm,
    .height_mm = hut_snap_mm (v1_mm - v0_mm),
  };
}

/* A plate that lies across, along u: its height runs inwards from @from_mm to @to_mm behind the
 * panel's inner face; its outer face, upwards, is at @v_mm. */
static HutTrapPiece
across (const HutPanel *panel,
        HutRect chamber,
        double v_mm,
        double from_mm,
        double to_mm)
{
  const HutFrame3 *f = &panel->frame;

  return (HutTrapPiece) {
    .frame = { hut_frame3_to_world (f, chamber.u0, v_mm, -panel->thickness_mm - from_mm), f->u,
               minus (f->w), f->v },
    .width_mm = hut_snap_mm (chamber.u1 - chamber.u0),
    .height_mm = hut_snap_mm (to_mm - from_mm),
  };
}

static void
find_pieces (HutTrap *trap,
             const HutPanel *panel,
             HutRect chamber,
             double depth_mm)
{
  const double thick_mm = hut_snap_mm (hut_stock_mean_mm (trap->stock)), slot_mm = trap->slot_mm;
  const double low_mm = hut_snap_mm (chamber.v0 - 2.0 * thick_mm - slot_mm);
  const double high_mm = hut_snap_mm (chamber.v1 + thick_mm);
  const double left_mm = hut_snap_mm (chamber.u0 - thick_mm);
  const HutFrame3 *f = &panel->frame;

  trap->footprint = (HutRect) { left_mm, low_mm, hut_snap_mm (chamber.u1 + thick_mm), high_mm };
  trap->pieces[HUT_TRAP_COVER] = (HutTrapPiece) {
    .frame = { hut_frame3_to_world (f, left_mm, low_mm, -panel->thickness_mm - depth_mm), f->u,
               f->v, f->w },
    .width_mm = hut_snap_mm (trap->footprint.u1 - left_mm),
    .height_mm = hut_snap_mm (high_mm - low_mm),
  };
  trap->pieces[HUT_TRAP_LEFT] = upright (panel, chamber.u0, low_mm, high_mm, depth_mm);
  trap->pieces[HUT_TRAP_RIGHT] = upright (panel, trap->footprint.u1, low_mm, high_mm, depth_mm);
  trap->pieces[HUT_TRAP_BACK] = across (panel, chamber, high_mm, 0.0, depth_mm);
  trap->pieces[HUT_TRAP_PARTITION]
      = across (panel, chamber, chamber.v0, 0.0, hut_snap_mm (depth_mm - slot_mm));
  trap->pieces[HUT_TRAP_LIP]
      = across (panel, chamber, hut_snap_mm (low_mm + thick_mm), slot_mm, depth_mm);
}

gboolean
hut_trap_find (const HutAssembly *assembly,
               const HutPlacedHole *hole,
               HutTrap *trap)
{
  const HutOpening *opening = hole->source == HUT_HOLE_OPENING
                                  ? hut_design_get_opening (assembly->design, hole->item)
                                  : NULL;
  const HutPanel *panel = g_ptr_array_index (assembly->panels, hole->panel);
  const HutStock *stock;
  double margin_mm;
  HutRect chamber;

  if (opening == NULL || opening->trap_mm <= 0.0 || !hole->cut)
    return FALSE;
  stock = stock_of (assembly->design, opening);
  if (stock == NULL)
    return FALSE;
  margin_mm = MAX (HUT_TRAP_MARGIN_MM, panel->stock->smallest_web_mm);
  chamber = (HutRect) { hut_snap_mm (hole->bounds.u0 - margin_mm),
                        hut_snap_mm (hole->bounds.v0 - margin_mm),
                        hut_snap_mm (hole->bounds.u1 + margin_mm),
                        hut_snap_mm (hole->bounds.v1 + margin_mm) };
  *trap = (HutTrap) { .opening = opening, .stock = stock, .panel = hole->panel };
  trap->slot_mm = hut_snap_mm (opening->trap_mm * HUT_TRAP_SLOT_RATIO);
  trap->way_mm2 = trap->slot_mm * (chamber.u1 - chamber.u0);
  trap->open_mm2 = area_mm2 (hole);
  find_pieces (trap, panel, chamber, hut_snap_mm (opening->trap_mm));
  return TRUE;
}

void
hut_trap_run (HutAssembly *assembly)
{
  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);
      HutTrap trap;

      if (!hut_trap_find (assembly, hole, &trap))
        continue;
      for (int k = 0; k < HUT_TRAP_PLATE_COUNT; k++)
        {
          const HutTrapPiece *piece = &trap.pieces[k];
          const HutPanel *panel = g_ptr_array_index (assembly->panels, trap.panel);
          const HutRect rect = { 0.0, 0.0, piece->width_mm, piece->height_mm };
          const HutSolid solid = {
            .kind = HUT_SOLID_TRAP,
            .shell = panel->id.shell,
            .panel = trap.panel,
            .item = trap.opening->id,
            .box = hut_frame3_box (&piece->frame, rect,
                                   -hut_snap_mm (hut_stock_mean_mm (trap.stock)), 0.0),
          };

          g_array_append_val (assembly->solids, solid);
        }
    }
}

static void
add_part (const HutAssembly *assembly,
          HutPartSet *set,
          const HutTrap *trap,
          HutTrapPlate plate)
{
  const HutTrapPiece *piece = &trap->pieces[plate];
  const HutPanel *panel = g_ptr_array_index (assembly->panels, trap->panel);
  g_autofree char *id = g_strdup_printf ("trap-%s-%s", trap->opening->id, plate_names[plate]);
  HutPart *part = hut_part_new (HUT_PART_TRAP, id, HUT_PART_NO_PANEL, trap->stock);

  part->item = trap->opening->id;
  part->shell = panel->id.shell;
  part->frame = piece->frame;
  part->region = hut_region_new (
      hut_path_new_rect ((HutRect) { 0.0, 0.0, piece->width_mm, piece->height_mm }, 0.0));
  g_ptr_array_add (set->parts, part);
}

void
hut_trap_add_parts (const HutAssembly *assembly,
                    HutPartSet *set)
{
  for (guint i = 0; i < assembly->holes->len; i++)
    {
      HutTrap trap;

      if (hut_trap_find (assembly, g_ptr_array_index (assembly->holes, i), &trap))
        for (int k = 0; k < HUT_TRAP_PLATE_COUNT; k++)
          add_part (assembly, set, &trap, (HutTrapPlate) k);
    }
}

double
hut_trap_intrusion_mm (const HutDesign *design,
                       HutSide side)
{
  double deepest_mm = 0.0;

  for (guint i = 0; i < design->openings->len; i++)
    {
      const HutOpening *opening = g_ptr_array_index (design->openings, i);
      const HutStock *stock = stock_of (design, opening);

      if (opening->at.panel.side == side && opening->trap_mm > 0.0 && stock != NULL
          && hut_shell_has_panel (&design->shell, opening->at.panel))
        deepest_mm = MAX (deepest_mm, hut_snap_mm (opening->trap_mm + hut_stock_mean_mm (stock)));
    }
  return deepest_mm;
}
