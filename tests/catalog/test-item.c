/* tests/catalog/test-item.c: items copied and compared.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalog/hut-item.h"
#include "hut-assert.h"

static HutItem *
new_full (void)
{
  HutItem *item = hut_item_new ("fan");
  const HutItemCut cut = { .diameter_mm = 116 };
  const HutItemBody body = { .depth_mm = 25, .rect = { -60, -60, 60, 60 } };
  const HutFanPoint points[] = { { 0, 50 }, { 120, 0 } };

  g_array_append_val (item->cuts, cut);
  g_array_append_val (item->bodies, body);
  g_array_append_vals (item->curve, points, 2);
  g_ptr_array_add (item->sources, hut_item_source_new ("cutout", "measured"));
  return item;
}

static void
a_new_item_sits_on_one_panel_of_any_thickness (void **state)
{
  g_autoptr(HutItem) item = hut_item_new ("x");

  assert_string_equal (item->id, "x");
  assert_string_equal (item->name, "");
  assert_true (item->from_outside && item->from_inside);
  assert_int_equal (item->span, HUT_SPAN_PANEL);
  assert_near_mm (item->thickness_max_mm, 0.0, 0.0);
  assert_int_equal (item->cuts->len, 0);
}

static void
a_copy_is_equal_and_stays_when_the_first_one_changes (void **state)
{
  g_autoptr(HutItem) item = new_full ();
  g_autoptr(HutItem) copy = hut_item_copy (item);

  assert_true (hut_item_equal (item, copy));
  g_array_index (item->cuts, HutItemCut, 0).diameter_mm = 90;
  assert_near_mm (g_array_index (copy->cuts, HutItemCut, 0).diameter_mm, 116, 0.0);
  assert_false (hut_item_equal (item, copy));
}

static void
each_part_of_an_item_counts (void **state)
{
  g_autoptr(HutItem) item = new_full ();

  for (int i = 0; i < 7; i++)
    {
      g_autoptr(HutItem) other = hut_item_copy (item);

      if (i == 0)
        g_array_index (other->bodies, HutItemBody, 0).soft = TRUE;
      else if (i == 1)
        g_array_index (other->curve, HutFanPoint, 1).flow_m3_h = 121;
      else if (i == 2)
        g_ptr_array_add (other->sources, hut_item_source_new ("a", "b"));
      else if (i == 3)
        other->mass_kg = 0.2;
      else if (i == 4)
        other->hold = HUT_HOLD_NUT;
      else if (i == 5)
        g_array_set_size (other->cuts, 0);
      else
        other->pass_round = TRUE;
      if (hut_item_equal (item, other))
        fail_msg ("change %d is not seen", i);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_new_item_sits_on_one_panel_of_any_thickness),
    cmocka_unit_test (a_copy_is_equal_and_stays_when_the_first_one_changes),
    cmocka_unit_test (each_part_of_an_item_counts),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
