/* tests/assembly/test-trap.c: boxes of plates behind openings that air passes and light does not.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-trap.h"
#include "hut-assert.h"
#include "hut-box-design.h"
#include "hut-random.h"
#include <math.h>

/* hut_box_design_new (): outside 312 x 212 x 162, walls 6. A hole of 40 in the middle of the back. */
static HutDesign *
new_design (double depth_mm)
{
  HutDesign *design = hut_box_design_new ();
  HutOpening *opening
      = hut_opening_new ("vent", (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_BACK }, HUT_SHAPE_ROUND);

  opening->diameter_mm = 40.0;
  opening->trap_mm = depth_mm;
  g_ptr_array_add (design->openings, opening);
  return design;
}

static gboolean
find (const HutAssembly *assembly,
      HutTrap *trap)
{
  return hut_trap_find (assembly, hut_assembly_get_hole (assembly, "vent"), trap);
}

static void
slots_and_areas_follow_from_the_depth (void **state)
{
  g_autoptr(HutDesign) design = new_design (30.0);
  g_autoptr(HutAssembly) assembly = NULL;
  HutTrap trap;
  double margin_mm;

  assembly = hut_assembly_new (design);
  assert_true (find (assembly, &trap));
  margin_mm = MAX (6.0, trap.stock->smallest_web_mm); /* of the panel's stock */
  assert_near_mm (trap.slot_mm, 10, 1e-9);
  assert_near (trap.open_mm2, G_PI * 400, 1e-6);
  assert_near (trap.way_mm2, 10 * (40 + 2 * margin_mm), 1e-6);
  /* Footprint: margins and a plate beside; below two plates and a slot. */
  assert_near_mm (trap.footprint.u1 - trap.footprint.u0, 40 + 2 * margin_mm + 12, 1e-9);
  assert_near_mm (trap.footprint.v1 - trap.footprint.v0, 40 + 2 * margin_mm + 3 * 6 + 10, 1e-9);
}

static void
there_is_none_unless_asked_for (void **state)
{
  g_autoptr(HutDesign) design = new_design (HUT_ROOM_FREE);
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  HutTrap trap;

  assert_false (find (assembly, &trap));
}

static void
fitted_boxes_grow_by_the_trap (void **state)
{
  g_autoptr(HutDesign) plain = new_design (HUT_ROOM_FREE), trapped = new_design (30.0);
  g_autoptr(HutAssembly) before = NULL, after = NULL;

  plain->shell.fitted = trapped->shell.fitted = TRUE;
  before = hut_assembly_new (plain);
  after = hut_assembly_new (trapped);
  assert_near_mm (after->outer_mm.y - before->outer_mm.y, 30 + 6, 1e-9);
}

static void
each_solid_is_a_part_in_its_place (void **state)
{
  g_autoptr(HutDesign) design = new_design (30.0);
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) set = hut_part_set_new (assembly);
  double solids_mm3 = 0.0, parts_mm3 = 0.0;
  guint n_solids = 0, n_parts = 0;

  for (guint i = 0; i < assembly->solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (assembly->solids, HutSolid, i);

      if (solid->kind != HUT_SOLID_TRAP)
        continue;
      n_solids++;
      solids_mm3 += hut_box3_volume_mm3 (&solid->box);
      /* Inside the back wall, whose inner face is at 206, and not deeper than 30 + 6. */
      assert_true (solid->box.max.y <= 206 + 1e-9 && solid->box.min.y >= 206 - 36 - 1e-9);
      for (guint k = 0; k < i; k++)
        {
          const HutSolid *other = &g_array_index (assembly->solids, HutSolid, k);

          if (other->kind == HUT_SOLID_TRAP)
            assert_near_mm (hut_box3_overlap_mm (&solid->box, &other->box), 0, 1e-9);
        }
    }
  for (guint i = 0; i < set->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (set->parts, i);

      if (part->kind != HUT_PART_TRAP)
        continue;
      n_parts++;
      parts_mm3 += hut_region_area_mm2 (part->region) * part->thickness_mm;
    }
  assert_int_equal (n_solids, HUT_TRAP_PLATE_COUNT);
  assert_int_equal (n_parts, HUT_TRAP_PLATE_COUNT);
  assert_near (parts_mm3, solids_mm3, 1e-6);
}

/* ---- light ----------------------------------------------------------------------------------- */

/* Whether the straight line from @a to @b runs into a box (slab method). */
static gboolean
is_stopped (const HutBox3 *box,
            HutVec3 a,
            HutVec3 b)
{
  const double from[3] = { a.x, a.y, a.z }, way[3] = { b.x - a.x, b.y - a.y, b.z - a.z };
  const double low[3] = { box->min.x, box->min.y, box->min.z };
  const double high[3] = { box->max.x, box->max.y, box->max.z };
  double enter = 0.0, leave = 1.0;

  for (int i = 0; i < 3; i++)
    {
      const double t0 = (low[i] - from[i]) / way[i], t1 = (high[i] - from[i]) / way[i];

      enter = MAX (enter, MIN (t0, t1));
      leave = MIN (leave, MAX (t0, t1));
    }
  return enter < leave;
}

static void
no_straight_line_gets_from_the_hole_to_the_room (void **state)
{
  /* From points of the hole's outer face to points all round the way out, under the box and beside
   * it, over the panel: each line runs into a plate of the trap or into the back panel. */
  g_autoptr(HutDesign) design = new_design (45.0);
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  const HutPlacedHole *hole = hut_assembly_get_hole (assembly, "vent");
  const HutPanel *panel = g_ptr_array_index (assembly->panels, hole->panel);
  HutRandom random;
  guint through = 0;
  HutTrap trap;

  assert_true (find (assembly, &trap));
  hut_random_init (&random, 1);
  for (guint i = 0; i < 20000; i++)
    {
      const double u = hole->centre.u + hut_random_between (&random, -14, 14);
      const double v = hole->centre.v + hut_random_between (&random, -14, 14);
      const double to_u = hut_random_between (&random, trap.footprint.u0, trap.footprint.u1);
      const double to_v = trap.footprint.v0 - hut_random_between (&random, 0.01, 60.0);
      const double deep = hut_random_between (&random, 6.01, 86.0);
      const HutVec3 a = hut_frame3_to_world (&panel->frame, u, v, 0.0);
      const HutVec3 b = hut_frame3_to_world (&panel->frame, to_u, to_v, -deep);
      /* Where it leaves the panel, 6 thick, it must still be in the hole. */
      const double at_u = u + (to_u - u) * 6.0 / deep, at_v = v + (to_v - v) * 6.0 / deep;
      gboolean stopped = hypot (at_u - hole->centre.u, at_v - hole->centre.v) > 20.0;

      through += stopped ? 0 : 1;

      for (guint k = 0; !stopped && k < assembly->solids->len; k++)
        {
          const HutSolid *solid = &g_array_index (assembly->solids, HutSolid, k);

          stopped = solid->kind == HUT_SOLID_TRAP && is_stopped (&solid->box, a, b);
        }
      if (!stopped)
        fail_msg ("line %u gets out", i);
    }
  assert_true (through > 1000); /* so many were stopped by the trap alone */
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (slots_and_areas_follow_from_the_depth),
    cmocka_unit_test (there_is_none_unless_asked_for),
    cmocka_unit_test (fitted_boxes_grow_by_the_trap),
    cmocka_unit_test (each_solid_is_a_part_in_its_place),
    cmocka_unit_test (no_straight_line_gets_from_the_hole_to_the_room),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
