/* tests/assembly/test-strip.c: where the strips along the seam stand.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-strip.h"
#include "hut-assert.h"
#include "hut-box-design.h"
#include "hut-random-design.h"
#include <math.h>

/* hut_box_design_new (): outside 312 x 212 x 162, walls 6; here a hood hinged at the back, hinge
 * line in the outer face, seam at 80, gap 1. */
static HutDesign *
new_hood (void)
{
  HutDesign *design = hut_box_design_new ();

  design->shell.lid = HUT_LID_HOOD;
  design->shell.hinge = HUT_HINGE_BACK;
  design->shell.seam_height_mm = 80.0;
  design->shell.seam_gap_mm = 1.0;
  design->shell.hinge_offset_mm = 0.0;
  return design;
}

static HutBaffle *
add (HutDesign *design,
     HutSide side,
     HutShellId shell)
{
  HutBaffle *baffle = hut_baffle_new (side);

  baffle->shell = shell;
  baffle->overlap_mm = 15.0;
  baffle->gap_mm = 2.0;
  baffle->hold_mm = 20.0;
  g_free (baffle->stock);
  baffle->stock = g_strdup (design->shell.default_stock);
  g_ptr_array_add (design->baffles, baffle);
  return baffle;
}

static void
assert_box (HutBox3 box,
            HutBox3 expected)
{
  assert_near_mm (box.min.x, expected.min.x, 1e-9);
  assert_near_mm (box.min.y, expected.min.y, 1e-9);
  assert_near_mm (box.min.z, expected.min.z, 1e-9);
  assert_near_mm (box.max.x, expected.max.x, 1e-9);
  assert_near_mm (box.max.y, expected.max.y, 1e-9);
  assert_near_mm (box.max.z, expected.max.z, 1e-9);
}

static const HutStrip *
strip_of (const HutAssembly *assembly,
          guint index)
{
  assert_true (index < assembly->strips->len);
  return &g_array_index (assembly->strips, HutStrip, index);
}

static void
a_strip_of_the_base_reaches_behind_the_lid (void **state)
{
  g_autoptr(HutDesign) design = new_hood ();
  g_autoptr(HutAssembly) assembly = NULL;
  const HutStrip *strip;

  add (design, HUT_SIDE_FRONT, HUT_SHELL_BASE);
  assembly = hut_assembly_new (design);
  strip = strip_of (assembly, 0);
  /* From side to side: wall 6 and gap 2. Behind the front: 6 + 2, 6 thick. Upright: 80 - 20 to
   * 81 + 15. */
  assert_box (strip->box, (HutBox3) { { 8, 8, 60 }, { 304, 14, 96 } });
  assert_int_equal (strip->shell, HUT_SHELL_BASE);
  assert_near_mm (strip->gap_mm, 2, 1e-9);
  assert_near_mm (strip->stand_off_mm, 2, 1e-9);
  assert_near_mm (strip->depth_mm, 8, 1e-9);
  /* In the frame of the base's front, which is 80 high. */
  assert_near_mm (strip->rect.v0, 60, 1e-9);
  assert_near_mm (strip->rect.v1, 96, 1e-9);
}

static void
a_strip_of_the_lid_hangs_behind_the_base (void **state)
{
  g_autoptr(HutDesign) design = new_hood ();
  g_autoptr(HutAssembly) assembly = NULL;
  const HutStrip *strip;

  add (design, HUT_SIDE_RIGHT, HUT_SHELL_LID);
  assembly = hut_assembly_new (design);
  strip = strip_of (assembly, 0);
  /* 80 - 15 to 81 + 20; its ends keep the gap to front and back. */
  assert_box (strip->box, (HutBox3) { { 298, 8, 65 }, { 304, 204, 101 } });
  assert_int_equal (strip->shell, HUT_SHELL_LID);
  /* The lid's right panel begins at 81. */
  assert_near_mm (strip->rect.v0, -16, 1e-9);
}

static void
strips_on_the_sides_stand_between_the_others (void **state)
{
  g_autoptr(HutDesign) design = new_hood ();
  g_autoptr(HutAssembly) assembly = NULL;

  add (design, HUT_SIDE_FRONT, HUT_SHELL_BASE);
  add (design, HUT_SIDE_BACK, HUT_SHELL_LID);
  add (design, HUT_SIDE_LEFT, HUT_SHELL_BASE);
  assembly = hut_assembly_new (design);
  /* The front strip of the same shell ends at 14: join 0.5. The back strip of the other one, from
   * 212 - 14, turns about the hinge line in the back's face: its lower inner edge, 14 before the
   * line and 0.5 + 15 under it, comes hypot (14, 15.5) = 20.887 before it; half the seam's gap more
   * is kept. */
  assert_near_mm (strip_of (assembly, 2)->box.min.y, 14.5, 1e-9);
  assert_near_mm (strip_of (assembly, 2)->box.max.y, 212 - 20.887 - 0.5, 1e-3);
}

static void
a_bead_fills_the_end_of_a_strip_towards_one_of_its_own_shell_only (void **state)
{
  g_autoptr(HutDesign) design = new_hood ();
  g_autoptr(HutAssembly) assembly = NULL;
  HutBox3 beads[2];

  add (design, HUT_SIDE_FRONT, HUT_SHELL_BASE);
  add (design, HUT_SIDE_BACK, HUT_SHELL_LID);
  add (design, HUT_SIDE_LEFT, HUT_SHELL_BASE);
  assembly = hut_assembly_new (design);
  /* From the front strip's inner face at 14 to the left strip's end at 14.5, as thick as the left one,
   * as high as both. */
  assert_int_equal (hut_strip_find_beads (assembly, strip_of (assembly, 0), beads), 0);
  assert_int_equal (hut_strip_find_beads (assembly, strip_of (assembly, 1), beads), 0);
  assert_int_equal (hut_strip_find_beads (assembly, strip_of (assembly, 2), beads), 1);
  assert_box (beads[0], (HutBox3) { { 8, 14, 60 }, { 14, 14.5, 96 } });
}

static void
a_wall_that_is_thicker_holds_its_strip_off_the_other_one (void **state)
{
  g_autoptr(HutDesign) design = new_hood ();
  g_autoptr(HutAssembly) assembly = NULL;
  HutStock *thick = hut_stock_new ("thick");

  g_array_index (thick->readings_mm, double, 0) = 9.0;
  g_ptr_array_add (design->stocks, thick);
  design->shell.stock[HUT_SHELL_BASE][HUT_SIDE_FRONT] = g_strdup ("thick");
  add (design, HUT_SIDE_FRONT, HUT_SHELL_BASE);
  assembly = hut_assembly_new (design);
  /* It lies flat on its wall of 9; behind the lid's wall of 6 that leaves 3, more than the 2. */
  assert_near_mm (strip_of (assembly, 0)->box.min.y, 9, 1e-9);
  assert_near_mm (strip_of (assembly, 0)->gap_mm, 3, 1e-9);
  assert_near_mm (strip_of (assembly, 0)->stand_off_mm, 0, 1e-9);
}

static void
a_top_carries_its_strips_on_edge (void **state)
{
  g_autoptr(HutDesign) design = new_hood ();
  g_autoptr(HutAssembly) assembly = NULL;
  const HutStrip *strip;

  design->shell.lid = HUT_LID_TOP;
  add (design, HUT_SIDE_FRONT, HUT_SHELL_BASE);
  assembly = hut_assembly_new (design);
  strip = strip_of (assembly, 0);
  /* From the top's inner face, 162 - 6, to 15 under the walls' border, 162 - 6 - 1. */
  assert_box (strip->box, (HutBox3) { { 8, 8, 140 }, { 304, 14, 156 } });
  assert_int_equal (strip->shell, HUT_SHELL_LID);
  assert_true (strip->on_edge);
}

static void
a_front_carries_strips_on_its_four_sides (void **state)
{
  g_autoptr(HutDesign) design = new_hood ();
  g_autoptr(HutAssembly) assembly = NULL;

  design->shell.lid = HUT_LID_FRONT;
  design->shell.hinge = HUT_HINGE_LEFT;
  add (design, HUT_SIDE_TOP, HUT_SHELL_LID);
  add (design, HUT_SIDE_LEFT, HUT_SHELL_LID);
  add (design, HUT_SIDE_FRONT, HUT_SHELL_LID); /* there is no seam */
  assembly = hut_assembly_new (design);
  assert_int_equal (assembly->strips->len, 2);
  /* The front is 6 thick, the walls begin at 7: from 6 to 7 + 15. */
  assert_box (strip_of (assembly, 0)->box, (HutBox3) { { 8, 6, 148 }, { 304, 22, 154 } });
  /* From the bottom's 6 + 2 to the strip at the top, 0.5 under 148. */
  assert_box (strip_of (assembly, 1)->box, (HutBox3) { { 8, 6, 8 }, { 14, 22, 147.5 } });
}

static void
fitted_boxes_grow_by_the_strips (void **state)
{
  g_autoptr(HutDesign) design = new_hood ();
  g_autoptr(HutAssembly) before = NULL, after = NULL;

  design->shell.fitted = TRUE;
  before = hut_assembly_new (design);
  add (design, HUT_SIDE_LEFT, HUT_SHELL_BASE);
  after = hut_assembly_new (design);
  assert_near_mm (after->outer_mm.x - before->outer_mm.x, 2 + 6, 1e-9);
  assert_near_mm (after->machine_at.x - before->machine_at.x, 2 + 6, 1e-9);
  assert_near_mm (after->outer_mm.y - before->outer_mm.y, 0, 1e-9);
}

static void
the_least_gap_follows_from_pythagoras (void **state)
{
  g_autoptr(HutDesign) design = new_hood ();
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  const double far_mm = 212 - 6, expected_mm = far_mm - sqrt (far_mm * far_mm + 0.25 - 15.5 * 15.5);

  /* About 15.5^2 / (2 x 206) = 0.58. */
  assert_near_mm (hut_strip_least_gap_mm (assembly, HUT_SIDE_FRONT, HUT_SHELL_LID, 15),
                  expected_mm, 1e-9);
  assert_true (expected_mm > 0.58 && expected_mm < 0.59);
  assert_near_mm (hut_strip_least_gap_mm (assembly, HUT_SIDE_LEFT, HUT_SHELL_BASE, 15),
                  expected_mm, 1e-9);
  assert_near_mm (hut_strip_least_gap_mm (assembly, HUT_SIDE_BACK, HUT_SHELL_LID, 15), 0, 0);
  design->shell.lid = HUT_LID_LIFT_OFF;
  {
    g_autoptr(HutAssembly) loose = hut_assembly_new (design);

    assert_near_mm (hut_strip_least_gap_mm (loose, HUT_SIDE_FRONT, HUT_SHELL_LID, 15), 0, 0);
  }
}

static void
long_strips_are_parted_evenly (void **state)
{
  g_autoptr(HutDesign) design = new_hood ();
  g_autoptr(HutAssembly) assembly = NULL;
  g_autoptr(HutPartSet) set = NULL;
  guint count = 0;

  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 200;
  add (design, HUT_SIDE_FRONT, HUT_SHELL_LID);
  assembly = hut_assembly_new (design);
  set = hut_part_set_new (assembly);
  for (guint i = 0; i < set->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (set->parts, i);
      HutRect bounds;

      if (part->kind != HUT_PART_BAFFLE)
        continue;
      count++;
      bounds = hut_region_bounds (part->region);
      /* 304 - 8 = 296 in two. */
      assert_near_mm (bounds.u1 - bounds.u0, 148, 1e-9);
      assert_near_mm (bounds.v1 - bounds.v0, 36, 1e-9);
      assert_int_equal (part->shell, HUT_SHELL_LID);
      assert_string_equal (part->id, count == 1 ? "baffle-front-1" : "baffle-front-2");
    }
  assert_int_equal (count, 2);
}

static void
no_room_is_told_as_a_trouble (void **state)
{
  g_autoptr(HutDesign) design = new_hood ();
  g_autoptr(HutAssembly) assembly = NULL;

  add (design, HUT_SIDE_LEFT, HUT_SHELL_BASE)->gap_mm = 150;
  assembly = hut_assembly_new (design);
  assert_int_equal (assembly->strips->len, 0);
  assert_int_equal (g_array_index (assembly->troubles, HutTrouble, 0).kind, HUT_TROUBLE_BAFFLE);
}

/* ---- random designs -------------------------------------------------------------------------- */

static double
volume_of_parts_mm3 (const HutPartSet *set)
{
  double sum_mm3 = 0.0;

  for (guint i = 0; i < set->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (set->parts, i);

      if (part->kind == HUT_PART_BAFFLE)
        sum_mm3 += hut_region_area_mm2 (part->region) * part->thickness_mm;
    }
  return sum_mm3;
}

static void
assert_strips_lie_inside (const HutAssembly *assembly,
                          guint64 seed)
{
  for (guint i = 0; i < assembly->strips->len; i++)
    {
      const HutStrip *strip = &g_array_index (assembly->strips, HutStrip, i);
      const HutBox3 *box = &strip->box;

      if (box->min.x < 0 || box->min.y < 0 || box->min.z < 0 || box->max.x > assembly->outer_mm.x
          || box->max.y > assembly->outer_mm.y || box->max.z > assembly->outer_mm.z)
        fail_msg ("seed %u: strip %u sticks out", (guint) seed, i);
      if (strip->gap_mm < strip->baffle->gap_mm - HUT_GRID_MM)
        fail_msg ("seed %u: strip %u is nearer than its gap", (guint) seed, i);
      for (guint k = 0; k < i; k++)
        if (hut_box3_overlap_mm (box, &g_array_index (assembly->strips, HutStrip, k).box)
            > HUT_GRID_MM)
          fail_msg ("seed %u: strips %u and %u overlap", (guint) seed, i, k);
    }
}

/* Returns: how many there are */
static guint
assert_beads_overlap_no_strip (const HutAssembly *assembly,
                               guint64 seed)
{
  HutBox3 beads[2];
  guint all = 0;

  for (guint i = 0; i < assembly->strips->len; i++)
    {
      const guint count = hut_strip_find_beads (assembly, strip_of (assembly, i), beads);

      for (guint k = 0; k < count; k++)
        for (guint n = 0; n < assembly->strips->len; n++)
          if (hut_box3_overlap_mm (&beads[k], &strip_of (assembly, n)->box) > 0.0)
            fail_msg ("seed %u: a bead of strip %u is in strip %u", (guint) seed, i, n);
      all += count;
    }
  return all;
}

static void
strips_of_random_designs_lie_inside_and_apart (void **state)
{
  const guint64 most = hut_random_seed_count (300);
  guint n_strips = 0, n_beads = 0;

  for (guint64 seed = 0; seed < most; seed++)
    {
      g_autoptr(HutDesign) design
          = hut_random_design_with (seed, HUT_RANDOM_BAFFLES | HUT_RANDOM_BY_HAND);
      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      g_autoptr(HutPartSet) set = hut_part_set_new (assembly);
      double boxes_mm3 = 0.0;

      assert_strips_lie_inside (assembly, seed);
      n_beads += assert_beads_overlap_no_strip (assembly, seed);
      for (guint i = 0; i < assembly->strips->len; i++)
        boxes_mm3
            += hut_box3_volume_mm3 (&g_array_index (assembly->strips, HutStrip, i).box);
      assert_near (volume_of_parts_mm3 (set), boxes_mm3, 1e-9 * (1.0 + boxes_mm3));
      n_strips += assembly->strips->len;
    }
  assert_true (n_strips > most / 2 && n_beads > 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_strip_of_the_base_reaches_behind_the_lid),
    cmocka_unit_test (a_strip_of_the_lid_hangs_behind_the_base),
    cmocka_unit_test (strips_on_the_sides_stand_between_the_others),
    cmocka_unit_test (a_bead_fills_the_end_of_a_strip_towards_one_of_its_own_shell_only),
    cmocka_unit_test (a_wall_that_is_thicker_holds_its_strip_off_the_other_one),
    cmocka_unit_test (a_top_carries_its_strips_on_edge),
    cmocka_unit_test (a_front_carries_strips_on_its_four_sides),
    cmocka_unit_test (fitted_boxes_grow_by_the_strips),
    cmocka_unit_test (the_least_gap_follows_from_pythagoras),
    cmocka_unit_test (long_strips_are_parted_evenly),
    cmocka_unit_test (no_room_is_told_as_a_trouble),
    cmocka_unit_test (strips_of_random_designs_lie_inside_and_apart),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
