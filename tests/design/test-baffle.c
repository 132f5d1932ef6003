/* tests/design/test-baffle.c: strips along the seam, as the user asks for them.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sample.h"

static void
a_new_one_is_within_the_usual_ranges (void **state)
{
  g_autoptr(HutBaffle) baffle = hut_baffle_new (HUT_SIDE_LEFT);

  /* A lip over a seam: 15 .. 25 of overlap, 1 .. 2 of gap (common practice, no source). */
  assert_int_equal (baffle->side, HUT_SIDE_LEFT);
  assert_true (baffle->overlap_mm >= 15 && baffle->overlap_mm <= 25);
  assert_true (baffle->gap_mm >= 1 && baffle->gap_mm <= 2);
}

static void
copies_are_equal_until_one_changes (void **state)
{
  g_autoptr(HutBaffle) baffle = hut_baffle_new (HUT_SIDE_BACK);
  g_autoptr(HutBaffle) copy = hut_baffle_copy (baffle);

  assert_true (hut_baffle_equal (baffle, copy));
  assert_ptr_not_equal (baffle->stock, copy->stock);
  copy->hold_mm += 1;
  assert_false (hut_baffle_equal (baffle, copy));
}

static void
a_side_is_found_or_not (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();

  assert_near_mm (hut_design_get_baffle (design, HUT_SIDE_LEFT)->gap_mm, 2.5, 0.0);
  assert_null (hut_design_get_baffle (design, HUT_SIDE_RIGHT));
}

static void
seams_run_round_the_lid (void **state)
{
  HutShell shell = { .lid = HUT_LID_HOOD, .bottom = HUT_BOTTOM_JOINTED };
  static const gboolean level[HUT_SIDE_COUNT] = { TRUE, TRUE, TRUE, TRUE, FALSE, FALSE };
  static const gboolean upright[HUT_SIDE_COUNT] = { FALSE, FALSE, TRUE, TRUE, TRUE, TRUE };

  for (int side = 0; side < HUT_SIDE_COUNT; side++)
    {
      shell.lid = HUT_LID_HOOD;
      assert_int_equal (hut_shell_has_seam (&shell, (HutSide) side), level[side]);
      shell.lid = HUT_LID_TOP;
      assert_int_equal (hut_shell_has_seam (&shell, (HutSide) side), level[side]);
      shell.lid = HUT_LID_LIFT_OFF;
      assert_int_equal (hut_shell_has_seam (&shell, (HutSide) side), level[side]);
      shell.lid = HUT_LID_FRONT;
      assert_int_equal (hut_shell_has_seam (&shell, (HutSide) side), upright[side]);
    }
  shell.bottom = HUT_BOTTOM_OPEN;
  assert_false (hut_shell_has_seam (&shell, HUT_SIDE_BOTTOM));
}

static void
two_on_one_side_are_refused_with_the_side (void **state)
{
  g_autofree char *text = dup_sample ();
  g_autofree char *twice = dup_spoilt (text, "side=\"left\"", "side=\"front\"");
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) design = hut_design_from_xml (twice, strlen (twice), "f", &error);

  assert_null (design);
  assert_non_null (strstr (error->message, "baffle at the front comes twice; allowed: one"));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_new_one_is_within_the_usual_ranges),
    cmocka_unit_test (copies_are_equal_until_one_changes),
    cmocka_unit_test (a_side_is_found_or_not),
    cmocka_unit_test (seams_run_round_the_lid),
    cmocka_unit_test (two_on_one_side_are_refused_with_the_side),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
