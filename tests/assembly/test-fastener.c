/* tests/assembly/test-fastener.c: lengths of screws and bolts from what they go through.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-fastener.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"
#include "hut-test-item.h"

static const HutPanelId lid_front = { HUT_SHELL_LID, HUT_SIDE_FRONT };

static HutItem *
new_flange (double thread_mm,
            double grip_mm,
            gboolean wood)
{
  HutItem *item = hut_test_item_new ("flange");
  HutItemCut *cut = hut_test_item_add_screw (item, 0, 0, 0, thread_mm);

  cut->grip_mm = grip_mm;
  cut->wood_screw = wood;
  return item;
}

/* The first fastener of a flange on a lid's front of that thickness. */
static HutFastener
first_in (double sheet_mm,
          HutItem *item,
          gboolean bolted)
{
  g_autoptr(HutDesign) design = hut_check_case_design ();
  HutStock *stock = hut_design_get_stock (design, "plywood");
  g_autoptr(HutAssembly) assembly = NULL;
  g_autoptr(HutPartSet) parts = NULL;
  g_autoptr(GArray) fasteners = NULL;
  HutFastener first;

  g_array_set_size (stock->readings_mm, 1);
  g_array_index (stock->readings_mm, double, 0) = sheet_mm;
  hut_test_put (design, "flange", item, lid_front, 186, 50)->bolted = bolted;
  assembly = hut_assembly_new (design);
  parts = hut_part_set_new (assembly);
  fasteners = hut_fasteners_new (assembly, parts);
  assert_int_equal (fasteners->len, 1);
  first = g_array_index (fasteners, HutFastener, 0);
  first.placed = NULL;
  return first;
}

static void
bolts_of_a_fan_flange_are_the_usual_ones (void **state)
{
  /* t + 4 (flange) + washer 0.8 + nut 3.2 + 2: M4 x 16 to t 5, x 20 for 6 .. 9, x 25 for 12, x 30 for
   * 18 (reference table of fans). */
  static const double cases[][2] = { { 3, 16 }, { 5, 16 }, { 6, 16 }, { 9, 20 }, { 12, 25 }, { 18, 30 } };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      const HutFastener bolt = first_in (cases[i][0], new_flange (4, 4, FALSE), FALSE);

      assert_near_mm (bolt.need_mm, cases[i][0] + 10.0, 1e-9);
      assert_near_mm (bolt.length_mm, cases[i][1], 0.0);
      assert_false (bolt.wood);
    }
}

static void
wood_screw_is_the_longest_that_stays_inside (void **state)
{
  /* 2 + 18 - 1.5 = 18.5 */
  const HutFastener screw = first_in (18, new_flange (3, 2, TRUE), FALSE);

  assert_true (screw.wood);
  assert_near_mm (screw.need_mm, 18.5, 1e-9);
  assert_near_mm (screw.length_mm, 16.0, 0.0);
  assert_near_mm (first_in (6, new_flange (3, 2, TRUE), FALSE).length_mm, 0.0, 0.0);
}

static void
bolt_takes_a_wood_screws_place (void **state)
{
  const HutFastener bolt = first_in (6, new_flange (3.5, 2, TRUE), TRUE);

  assert_false (bolt.wood);
  assert_near_mm (bolt.thread_mm, 3.0, 0.0);
  assert_near_mm (bolt.hole_mm, 3.4, 0.0); /* ISO 273 medium */
  /* 2 + 6 + 0.5 + 2.4 + 2 = 12.9 */
  assert_near_mm (bolt.need_mm, 12.9, 1e-9);
}

static void
lengths_and_threads_keep_to_their_lists (void **state)
{
  assert_near_mm (hut_wood_screw_length_mm (9.9), 0.0, 0.0);
  assert_near_mm (hut_wood_screw_length_mm (10.0), 10.0, 0.0);
  assert_near_mm (hut_wood_screw_length_mm (19.9), 16.0, 0.0);
  assert_near_mm (hut_bolt_for_wood_screw_mm (4.5), 4.0, 0.0);
  assert_near_mm (hut_bolt_for_wood_screw_mm (2.5), 2.5, 0.0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (bolts_of_a_fan_flange_are_the_usual_ones),
    cmocka_unit_test (wood_screw_is_the_longest_that_stays_inside),
    cmocka_unit_test (bolt_takes_a_wood_screws_place),
    cmocka_unit_test (lengths_and_threads_keep_to_their_lists),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
