/* tests/design/test-position.c: where the middle of a thing is on its panel.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "design/hut-position.h"
#include "hut-assert.h"

static const HutPanelId lid_top = { HUT_SHELL_LID, HUT_SIDE_TOP };

static void
copy_has_a_body_of_its_own (void **state)
{
  HutPosition at = hut_position_centre_of (lid_top), copy;

  at.u_anchor = HUT_ANCHOR_BODY;
  at.body = g_strdup ("frame");
  copy = hut_position_copy (&at);
  assert_true (hut_position_equal (&at, &copy));
  assert_ptr_not_equal (at.body, copy.body);
  copy.v_offset_mm = 1.0;
  assert_false (hut_position_equal (&at, &copy));
  hut_position_clear (&at);
  hut_position_clear (&copy);
  assert_null (at.body);
}

static void
offsets_from_the_far_edge_run_the_other_way (void **state)
{
  HutPosition at = hut_position_centre_of (lid_top);

  at.v_anchor = HUT_ANCHOR_END;
  at.v_offset_mm = 30.0;
  hut_position_shift (&at, 12.5, 4.0);
  assert_near_mm (at.u_offset_mm, 12.5, 1e-12);
  assert_near_mm (at.v_offset_mm, 26.0, 1e-12);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (copy_has_a_body_of_its_own),
    cmocka_unit_test (offsets_from_the_far_edge_run_the_other_way),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
