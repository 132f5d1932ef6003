/* tests/checks/test-check-splice.c: what the split could not do, as findings.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The troubles are put in by hand: the split itself avoids them where it can. splice.place with
 * its numbers is in test-check-bed.c. */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"

static void
each_trouble_of_the_split_is_told_with_its_place (void **state)
{
  const struct
  {
    HutSplitTroubleKind kind;
    double is_mm, must_mm;
    const char *check, *text;
  } cases[] = {
    { HUT_SPLIT_BUTT, 30, 48, "splice.butt",
      "A splice of lid top is 30 mm long, too short for fingers (48 mm): it is cut straight, "
      "back it with a strap." },
    { HUT_SPLIT_ALIGNED, 10.5, 24, "splice.stagger",
      "A splice of lid top is 10.5 mm from the line of its neighbour's; 24 mm are wanted." },
    { HUT_SPLIT_NO_STRAP, 140, 18, "splice.strap",
      "No strap has room behind a splice of lid top that is 140 mm long; 18 mm of free length "
      "are "
      "the least." },
  };
  const HutPanelId lid_top = { HUT_SHELL_LID, HUT_SIDE_TOP };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr(HutCheckCase) c = hut_check_case_new (hut_check_case_design ());
      const HutSplitTrouble trouble = {
        .kind = cases[i].kind,
        .panel = (guint)hut_assembly_find_panel (c->assembly, lid_top),
        .at = { 100, 50 },
        .is_mm = cases[i].is_mm,
        .must_mm = cases[i].must_mm,
      };
      const HutFinding *finding;

      g_array_append_val (c->parts->troubles, trouble);
      hut_check_case_check (c);
      finding = hut_check_case_find (c, cases[i].check, cases[i].text);
      hut_check_case_assert (finding, HUT_SEVERITY_WARNS, cases[i].is_mm, cases[i].must_mm);
      hut_check_case_assert_place (finding, 0, lid_top, (HutRect) { 99, 49, 101, 51 });
    }
}

static void
glazing_that_cannot_be_spliced_is_left_to_the_bed_check (void **state)
{
  g_autoptr(HutCheckCase) c = hut_check_case_new (hut_check_case_design ());
  const HutSplitTrouble trouble = { .kind = HUT_SPLIT_CANNOT };
  const guint before = c->findings->len;

  g_array_append_val (c->parts->troubles, trouble);
  hut_check_case_check (c);
  assert_int_equal (c->findings->len, before);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_trouble_of_the_split_is_told_with_its_place),
    cmocka_unit_test (glazing_that_cannot_be_spliced_is_left_to_the_bed_check),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
