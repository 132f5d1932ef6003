/* tests/app/test-item-draft.c: an item of hardware that is being measured, as plain numbers.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-item-draft.h"
#include "catalog/hut-item-format.h"
#include "hut-assert.h"

static void
assert_right (const HutItem *item)
{
  g_autofree char *fault = hut_item_dup_fault (item);

  if (fault != NULL)
    fail_msg ("%s", fault);
}

static void
each_measure_is_what_was_set (void **state)
{
  g_autoptr (HutItem) item = hut_item_draft_new ();

  hut_item_draft_set_shape (item, HUT_CUT_RECTANGLE);
  for (int i = 0; i < HUT_MEASURE_COUNT; i++)
    hut_item_draft_set (item, (HutMeasure)i, 1.5 + i);
  for (int i = 0; i < HUT_MEASURE_COUNT; i++)
    assert_near (hut_item_draft_get (item, (HutMeasure)i), 1.5 + i, 0.0);
}

static void
new_drafts_could_be_saved_at_once (void **state)
{
  g_autoptr (HutItem) item = hut_item_draft_new (), pattern = hut_item_draft_new_pattern ();

  assert_right (item);
  assert_right (pattern);
  assert_int_equal (hut_item_draft_count_screws (pattern), 4);
  assert_int_equal (hut_item_draft_get_shape (pattern), -1);
  assert_int_equal (hut_item_draft_get_shape (item), HUT_CUT_ROUND);
}

static void
every_change_of_shape_leaves_a_hole_that_can_be_cut (void **state)
{
  for (int from = -1; from <= HUT_CUT_KEYED; from++)
    for (int to = -1; to <= HUT_CUT_KEYED; to++)
      {
        g_autoptr (HutItem) item = hut_item_draft_new ();

        item->flange_width_mm = item->flange_height_mm = 0;
        hut_item_draft_set_shape (item, from);
        hut_item_draft_set_shape (item, to);
        assert_int_equal (hut_item_draft_get_shape (item), to);
        assert_right (item);
      }
}

static void
a_depth_makes_a_body_as_wide_as_flange_or_cutout_and_it_follows (void **state)
{
  g_autoptr (HutItem) item = hut_item_draft_new ();

  hut_item_draft_set (item, HUT_MEASURE_FRONT, 3);
  hut_item_draft_set (item, HUT_MEASURE_BEHIND, 30);
  assert_int_equal (item->bodies->len, 2);
  hut_item_draft_set (item, HUT_MEASURE_FLANGE_WIDTH, 40);
  hut_item_draft_set (item, HUT_MEASURE_DIAMETER, 18);

  const HutItemBody *front = &g_array_index (item->bodies, HutItemBody, 0);
  const HutItemBody *behind = &g_array_index (item->bodies, HutItemBody, 1);

  assert_near_mm (front->rect.u1, 20, 0.0);
  assert_near_mm (front->rect.v1, 10, 0.0);
  assert_near_mm (behind->rect.u0, -9, 1e-9);

  /* One that was measured otherwise stays. */
  g_array_index (item->bodies, HutItemBody, 1).rect = (HutRect){ -15, -20, 15, 20 };
  hut_item_draft_set (item, HUT_MEASURE_DIAMETER, 17);
  assert_near_mm (g_array_index (item->bodies, HutItemBody, 1).rect.u1, 15, 0.0);

  hut_item_draft_set (item, HUT_MEASURE_FRONT, 0);
  assert_int_equal (item->bodies->len, 1);
  assert_near_mm (hut_item_draft_get (item, HUT_MEASURE_FRONT), 0, 0.0);
}

static void
screws_are_added_beside_the_last_and_removed (void **state)
{
  g_autoptr (HutItem) item = hut_item_draft_new ();

  assert_true (hut_item_draft_add_screw (item));
  hut_item_draft_get_screw (item, 0)->thread_mm = 3;
  hut_item_draft_get_screw (item, 0)->at = (HutPoint){ 5, 7 };
  assert_true (hut_item_draft_add_screw (item));
  assert_near_mm (hut_item_draft_get_screw (item, 1)->thread_mm, 3, 0.0);
  assert_near_mm (hut_item_draft_get_screw (item, 1)->at.u, 15, 0.0);
  hut_item_draft_remove_screw (item, 0);
  assert_int_equal (hut_item_draft_count_screws (item), 1);
  assert_near_mm (hut_item_draft_get_screw (item, 0)->at.u, 15, 0.0);
  assert_null (hut_item_draft_get_screw (item, 1));
  assert_int_equal (hut_item_draft_get_shape (item), HUT_CUT_ROUND); /* the cutout is still there */
  while (hut_item_draft_add_screw (item))
    ;
  assert_int_equal (hut_item_draft_count_screws (item), HUT_DRAFT_SCREWS_MAX);
}

static void
ids_are_made_of_the_name_and_free (void **state)
{
  g_autoptr (HutCatalog) catalog = hut_catalog_new ();
  g_autofree char *plain = hut_item_draft_dup_id (catalog, "Key switch, 22 mm");
  g_autofree char *other = hut_item_draft_dup_id (catalog, "  Tür…  ");
  g_autofree char *none = hut_item_draft_dup_id (catalog, "");

  assert_string_equal (plain, "own-key-switch-22-mm");
  assert_string_equal (other, "own-t-r");
  assert_string_equal (none, "own");
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_measure_is_what_was_set),
    cmocka_unit_test (new_drafts_could_be_saved_at_once),
    cmocka_unit_test (every_change_of_shape_leaves_a_hole_that_can_be_cut),
    cmocka_unit_test (a_depth_makes_a_body_as_wide_as_flange_or_cutout_and_it_follows),
    cmocka_unit_test (screws_are_added_beside_the_last_and_removed),
    cmocka_unit_test (ids_are_made_of_the_name_and_free),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
