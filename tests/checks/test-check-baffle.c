/* tests/checks/test-check-baffle.c: strips along the seam: overlap, swing, what is in their way.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-strip.h"
#include "checks/hut-check-case.h"
#include "checks/hut-swing.h"
#include "hut-assert.h"
#include "hut-random-design.h"
#include <math.h>

#define DEG (G_PI / 180.0)

static HutBaffle *
add (HutDesign *design,
     HutSide side,
     HutShellId shell)
{
  HutBaffle *baffle = hut_baffle_new (side);

  baffle->shell = shell;
  baffle->gap_mm = 2.0;
  g_free (baffle->stock);
  baffle->stock = g_strdup ("plywood");
  g_ptr_array_add (design->baffles, baffle);
  return baffle;
}

/* Of hut_check_case_design (), by hand: outside 372 x 352 x 252, seam 140, gap 1, hinge line at the
 * back: y = 352, z = 140.5. */
static HutDesign *
new_design (void)
{
  HutDesign *design = hut_check_case_design ();

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 360, 340, 240 };
  return design;
}

static void
good_strips_on_all_sides_are_no_finding (void **state)
{
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add (design, HUT_SIDE_FRONT, HUT_SHELL_LID);
  add (design, HUT_SIDE_BACK, HUT_SHELL_LID);
  add (design, HUT_SIDE_LEFT, HUT_SHELL_BASE);
  add (design, HUT_SIDE_RIGHT, HUT_SHELL_BASE);
  c = hut_check_case_new (design);
  for (guint i = 0; i < c->findings->len; i++)
    assert_int_equal (((const HutFinding *)g_ptr_array_index (c->findings, i))->severity,
                      HUT_SEVERITY_NOTES);
}

static void
the_bead_between_strips_of_one_shell_is_told_once (void **state)
{
  HutDesign *design = new_design (), *apart = new_design ();
  g_autoptr(HutCheckCase) c = NULL, none = NULL;

  add (design, HUT_SIDE_FRONT, HUT_SHELL_BASE);
  add (design, HUT_SIDE_LEFT, HUT_SHELL_BASE);
  add (design, HUT_SIDE_RIGHT, HUT_SHELL_BASE);
  add (apart, HUT_SIDE_FRONT, HUT_SHELL_LID);
  add (apart, HUT_SIDE_LEFT, HUT_SHELL_BASE);
  c = hut_check_case_new (design);
  none = hut_check_case_new (apart);
  assert_int_equal (hut_check_case_count (c, "baffle.bead"), 1);
  hut_check_case_assert (hut_check_case_get (c, "baffle.bead", 0), HUT_SEVERITY_NOTES, 0.5, 0);
  assert_int_equal (hut_check_case_get (c, "baffle.bead", 0)->places->len, 2);
  assert_int_equal (hut_check_case_count (none, "baffle.bead"), 0);
}

static void
a_short_overlap_is_told_with_what_the_gap_asks_for (void **state)
{
  HutDesign *design = new_design ();
  g_autoptr(HutCheckCase) c = NULL;
  HutBaffle *narrow = add (design, HUT_SIDE_LEFT, HUT_SHELL_BASE),
            *wide = add (design, HUT_SIDE_RIGHT, HUT_SHELL_BASE);

  narrow->overlap_mm = 11.0; /* at least 12 */
  wide->overlap_mm = 14.0;
  wide->gap_mm = 5.0; /* 3 x 5 */
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "baffle.overlap"), 2);
  hut_check_case_assert (hut_check_case_get (c, "baffle.overlap", 0), HUT_SEVERITY_WARNS, 11, 12);
  hut_check_case_assert (
      hut_check_case_find (c, "baffle.overlap",
                           "The baffle on the right reaches 14 mm past the seam; with a gap of 5 "
                           "mm, 15 mm keep light from passing straight through."),
      HUT_SEVERITY_WARNS, 14, 15);
}

static void
the_far_strip_of_the_lid_swings_forward_at_first (void **state)
{
  /* Strip with gap 0.2 inside the front: its outer face is 346 - 0.2 before the hinge, its lower
   * edge 15.5 under it; 345.8^2 + 15.5^2 = 119817.9 > 346^2 + 0.25 = 119716.25. It would lie in
   * the wall's inner face plane from the first touch on: 345.8 cos a + 15.5 sin a = 346. */
  HutDesign *design = new_design ();
  g_autoptr(HutCheckCase) c = NULL;
  const double far = hypot (345.8, 15.5);
  const double touch = atan2 (15.5, 345.8) - acos (346 / far);
  const HutFinding *finding;

  add (design, HUT_SIDE_FRONT, HUT_SHELL_LID)->gap_mm = 0.2;
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "lid.swing"), 1);
  finding = hut_check_case_get (c, "lid.swing", 0);
  assert_int_equal (finding->severity, HUT_SEVERITY_BLOCKS);
  assert_near (finding->is, touch / DEG, 0.02);
  assert_string_equal (finding->what, "baffle at the front");
  assert_string_equal (finding->other, "base front");
}

static void
the_lid_swings_against_the_far_strip_of_the_base (void **state)
{
  HutDesign *design = new_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add (design, HUT_SIDE_FRONT, HUT_SHELL_BASE)->gap_mm = 0.2;
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "lid.swing"), 1);
  assert_string_equal (hut_check_case_get (c, "lid.swing", 0)->what, "lid front");
  assert_string_equal (hut_check_case_get (c, "lid.swing", 0)->other, "baffle at the front");
}

static void
a_strip_before_an_opening_covers_it (void **state)
{
  /* Base strip on the left from 120 up to 156; a hole of 20 with its middle at 125 in the base:
   * from 115, so 15 of it lie behind the strip's 120 .. and its breadth is 20. */
  HutDesign *design = new_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add (design, HUT_SIDE_LEFT, HUT_SHELL_BASE);
  hut_check_case_add_round (design, "vent", (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_LEFT }, 150,
                            115, 20);
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "baffle.opening"), 1);
  hut_check_case_assert (hut_check_case_get (c, "baffle.opening", 0), HUT_SEVERITY_WARNS, 5, 0);
}

static void
a_strip_that_reaches_the_floor_is_blocked (void **state)
{
  /* Hold 150 under a seam of 140: 10 below the bench's plane, 16 past the inside. The least move out
   * of the bottom is sideways: the strip, 6 + 2 from the left and 6 thick, ends at 14. */
  HutDesign *design = new_design ();
  g_autoptr(HutCheckCase) c = NULL;

  add (design, HUT_SIDE_LEFT, HUT_SHELL_BASE)->hold_mm = 150.0;
  c = hut_check_case_new (design);
  assert_int_equal (hut_check_case_count (c, "baffle.place"), 1);
  hut_check_case_assert (hut_check_case_get (c, "baffle.place", 0), HUT_SEVERITY_BLOCKS, 14, 0);
}

/* ---- random designs -------------------------------------------------------------------------- */

static void
set_least_gaps (HutDesign *design)
{
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);

  for (guint i = 0; i < design->baffles->len; i++)
    {
      HutBaffle *baffle = g_ptr_array_index (design->baffles, i);

      baffle->gap_mm = ceil (hut_strip_least_gap_mm (assembly, baffle->side, baffle->shell,
                                                     baffle->overlap_mm)
                             * 100.0)
                           / 100.0
                       + 0.01;
    }
}

/* With the least gap the strip passes, with less it does not: told by the swing itself. The far
 * baffle comes first, because those beside it depend on it. */
static void
the_least_gap_is_what_the_swing_needs (void **state)
{
  const guint64 most = hut_random_seed_count (250);
  guint n_passed = 0;

  for (guint64 seed = 0; seed < most; seed++)
    {
      HutDesign *design = hut_random_design_with (
          seed, HUT_RANDOM_BAFFLES | HUT_RANDOM_BY_HAND | HUT_RANDOM_ONE_STOCK);
      HutApproach approaches[HUT_AROUND_COUNT];
      g_autoptr(HutCheckCase) c = NULL;

      design->shell.opening_angle_deg = MIN (design->shell.opening_angle_deg, 60.0);
      design->joints.straps = FALSE;
      if (design->shell.bottom == HUT_BOTTOM_INSET)
        design->shell.bottom = HUT_BOTTOM_JOINTED;
      set_least_gaps (design);
      set_least_gaps (design);
      c = hut_check_case_new (hut_design_copy (design));
      hut_swing_find (c->assembly, c->parts, approaches);
      if (approaches[HUT_AROUND_BAFFLE].exists
          && hut_check_case_count (c, "baffle.place") == 0)
        {
          if (approaches[HUT_AROUND_BAFFLE].collides)
            fail_msg ("seed %u: a strip with its least gap hits at %g deg", (guint)seed,
                      approaches[HUT_AROUND_BAFFLE].angle_rad / DEG);
          n_passed++;
        }
      hut_design_free (design);
    }
  assert_true (n_passed > most / 8);
}

static void
less_than_the_least_gap_hits (void **state)
{
  guint n_hit = 0;

  for (guint64 seed = 0; seed < 20; seed++)
    {
      HutDesign *design = hut_random_design_with (seed, HUT_RANDOM_BY_HAND | HUT_RANDOM_ONE_STOCK);
      HutApproach approaches[HUT_AROUND_COUNT];
      g_autoptr(HutCheckCase) c = NULL;
      HutBaffle *baffle;
      double least_mm;

      design->shell.lid = HUT_LID_HOOD;
      design->shell.hinge = HUT_HINGE_BACK;
      baffle = hut_baffle_new (HUT_SIDE_FRONT);
      baffle->shell = seed % 2 ? HUT_SHELL_BASE : HUT_SHELL_LID;
      g_free (baffle->stock);
      baffle->stock = g_strdup (design->shell.default_stock);
      g_ptr_array_add (design->baffles, baffle);
      {
        g_autoptr(HutAssembly) assembly = hut_assembly_new (design);

        least_mm = hut_strip_least_gap_mm (assembly, HUT_SIDE_FRONT, baffle->shell, 15.0);
      }
      baffle->gap_mm = least_mm * 0.9;
      c = hut_check_case_new (design);
      hut_swing_find (c->assembly, c->parts, approaches);
      if (!approaches[HUT_AROUND_BAFFLE].exists)
        continue;
      assert_true (approaches[HUT_AROUND_BAFFLE].collides);
      n_hit++;
    }
  assert_true (n_hit > 4);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (good_strips_on_all_sides_are_no_finding),
    cmocka_unit_test (the_bead_between_strips_of_one_shell_is_told_once),
    cmocka_unit_test (a_short_overlap_is_told_with_what_the_gap_asks_for),
    cmocka_unit_test (the_far_strip_of_the_lid_swings_forward_at_first),
    cmocka_unit_test (the_lid_swings_against_the_far_strip_of_the_base),
    cmocka_unit_test (a_strip_before_an_opening_covers_it),
    cmocka_unit_test (a_strip_that_reaches_the_floor_is_blocked),
    cmocka_unit_test (the_least_gap_is_what_the_swing_needs),
    cmocka_unit_test (less_than_the_least_gap_hits),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
