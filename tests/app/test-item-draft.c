/* tests/app/test-item-draft.c: an item of hardware that is being measured, read and set.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-item-draft.h"
#include "app/hut-item-fault-text.h"
#include "catalog/hut-item-format.h"
#include "hut-assert.h"
#include <string.h>

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

  for (HutMeasure i = 0; i < HUT_MEASURE_COUNT; i++)
    hut_item_draft_set (item, i, 1.5 + i);
  for (HutMeasure i = 0; i < HUT_MEASURE_COUNT; i++)
    assert_near (hut_item_draft_get (item, i), 1.5 + i, 1e-12);
  assert_near (item->free_area_ratio, (1.5 + HUT_MEASURE_FREE_AREA) / 100.0, 1e-12); /* in % */
}

static void
each_switch_is_what_was_set (void **state)
{
  for (HutTrait i = 0; i < HUT_TRAIT_COUNT; i++)
    {
      g_autoptr (HutItem) item = hut_item_draft_new ();

      for (int on = 0; on <= 1; on++)
        {
          g_autoptr (HutItem) before = hut_item_copy (item);

          hut_item_draft_set_has (item, i, on);
          assert_int_equal (hut_item_draft_has (item, i), on);
          for (HutTrait k = 0; k < HUT_TRAIT_COUNT; k++)
            if (k != i)
              assert_int_equal (hut_item_draft_has (item, k), hut_item_draft_has (before, k));
        }
    }
}

/* What a user does who opens an item, types each number again, and saves. */
static void
each_shipped_item_that_is_entered_again_is_equal (void **state)
{
  g_autoptr (HutCatalog) catalog = hut_catalog_new ();

  assert_true (hut_catalog_get_count (catalog) >= 189);
  for (guint n = 0; n < hut_catalog_get_count (catalog); n++)
    {
      const HutItem *shipped = hut_catalog_get_nth (catalog, n);
      g_autoptr (HutItem) item = hut_item_copy (shipped);
      const HutUsualSpace usual = hut_item_draft_usual_space (item);

      for (HutMeasure i = 0; i < HUT_MEASURE_COUNT; i++)
        if (i != HUT_MEASURE_FREE_AREA) /* 0.61 is no whole number of hundredths in binary */
          hut_item_draft_set (item, i, hut_item_draft_get (shipped, i));
      for (HutTrait i = 0; i < HUT_TRAIT_COUNT; i++)
        hut_item_draft_set_has (item, i, hut_item_draft_has (shipped, i));
      for (guint i = 0; i < item->cuts->len; i++)
        hut_item_draft_repair_cut (&g_array_index (item->cuts, HutItemCut, i));
      hut_item_draft_set_span (item, shipped->span);
      hut_item_draft_follow (item, &usual);
      hut_item_draft_mark_measured (item, shipped);
      if (!hut_item_equal (item, shipped))
        fail_msg ("%s is not as it was", shipped->id);
    }
}

static void
new_drafts_could_be_saved_at_once (void **state)
{
  g_autoptr (HutItem) item = hut_item_draft_new (), pattern = hut_item_draft_new_pattern ();
  g_autoptr (HutItem) copy = hut_item_draft_new_copy (item, "Another");

  assert_right (item);
  assert_right (pattern);
  assert_int_equal (pattern->cuts->len, 4);
  assert_int_equal (item->cuts->len, 1);
  assert_string_equal (copy->name, "Another");
  assert_string_equal (copy->id, "");
}

static void
every_change_of_a_hole_leaves_one_that_can_be_cut (void **state)
{
  for (HutCutShape from = 0; from <= HUT_CUT_KEYED; from++)
    for (HutCutShape to = 0; to <= HUT_CUT_KEYED; to++)
      for (HutCutRole role = 0; role <= HUT_CUT_PIN; role++)
        {
          g_autoptr (HutItem) item = hut_item_draft_new ();
          HutItemCut *cut = &g_array_index (item->cuts, HutItemCut, 0);

          item->flange_width_mm = item->flange_height_mm = 0;
          cut->shape = from;
          hut_item_draft_repair_cut (cut);
          cut->shape = to;
          cut->role = role;
          hut_item_draft_repair_cut (cut);
          assert_right (item);
        }
}

static void
a_space_is_as_wide_as_flange_or_cutout_and_follows_them (void **state)
{
  g_autoptr (HutItem) item = hut_item_draft_new ();
  HutUsualSpace usual;

  assert_true (hut_item_draft_add_space (item, HUT_ITEM_FRONT, FALSE));
  assert_true (hut_item_draft_add_space (item, HUT_ITEM_BEHIND, FALSE));
  usual = hut_item_draft_usual_space (item);
  hut_item_draft_set (item, HUT_MEASURE_FLANGE_WIDTH, 40);
  g_array_index (item->cuts, HutItemCut, 0).diameter_mm = 18;
  hut_item_draft_follow (item, &usual);

  const HutItemBody *front = &g_array_index (item->bodies, HutItemBody, 0);
  const HutItemBody *behind = &g_array_index (item->bodies, HutItemBody, 1);

  assert_near_mm (front->rect.u1, 20, 0.0);
  assert_near_mm (front->rect.v1, 10, 0.0);
  assert_near_mm (behind->rect.u0, -9, 1e-9);

  /* One that was measured otherwise stays. */
  usual = hut_item_draft_usual_space (item);
  g_array_index (item->bodies, HutItemBody, 1).rect = (HutRect){ -15, -20, 15, 20 };
  g_array_index (item->cuts, HutItemCut, 0).diameter_mm = 17;
  hut_item_draft_follow (item, &usual);
  assert_near_mm (g_array_index (item->bodies, HutItemBody, 1).rect.u1, 15, 0.0);
}

static void
screws_are_added_beside_the_last_until_the_file_is_full (void **state)
{
  g_autoptr (HutItem) item = hut_item_draft_new ();
  HutItemCut *screw;

  assert_true (hut_item_draft_add_cut (item, HUT_CUT_SCREW));
  screw = &g_array_index (item->cuts, HutItemCut, 1);
  screw->thread_mm = 3;
  screw->at = (HutPoint){ 5, 7 };
  assert_true (hut_item_draft_add_cut (item, HUT_CUT_SCREW));
  screw = &g_array_index (item->cuts, HutItemCut, 2);
  assert_near_mm (screw->thread_mm, 3, 0.0);
  assert_near_mm (screw->at.u, 15, 0.0);
  assert_near_mm (screw->at.v, 7, 0.0);
  while (hut_item_draft_add_cut (item, HUT_CUT_SCREW))
    ;
  assert_int_equal (item->cuts->len, HUT_DRAFT_CUTS_MAX);
}

static void
two_points_make_a_curve (void **state)
{
  g_autoptr (HutItem) item = hut_item_draft_new ();

  item->group = HUT_ITEM_FAN;
  assert_int_equal (hut_item_find_fault (item).kind, HUT_ITEM_FAULT_CURVE_MISSING);
  assert_true (hut_item_draft_add_point (item));
  assert_int_equal (hut_item_find_fault (item).kind, HUT_ITEM_FAULT_CURVE_END);
  assert_true (hut_item_draft_add_point (item));
  assert_right (item);
}

static void
an_item_that_comes_to_lie_on_one_panel_has_one_leaf (void **state)
{
  g_autoptr (HutCatalog) catalog = hut_catalog_new ();

  for (guint n = 0; n < hut_catalog_get_count (catalog); n++)
    {
      g_autoptr (HutItem) item = hut_item_copy (hut_catalog_get_nth (catalog, n));

      hut_item_draft_set_span (item, HUT_SPAN_PANEL);
      assert_right (item);
    }
}

static const char *
get_source (const HutItem *item,
            guint index)
{
  const HutItemSource *source = g_ptr_array_index (item->sources, index);

  return source->source;
}

static void
what_was_changed_is_marked_as_measured_and_only_that (void **state)
{
  g_autoptr (HutItem) before = hut_item_draft_new (), item = NULL;

  g_ptr_array_add (before->sources, hut_item_source_new ("cutout, flange", "a drawing"));
  g_ptr_array_add (before->sources, hut_item_source_new ("mass", "estimate"));
  item = hut_item_copy (before);
  hut_item_draft_set (item, HUT_MEASURE_MASS, 0.25);
  g_array_index (item->cuts, HutItemCut, 0).diameter_mm = 15;
  hut_item_draft_mark_measured (item, before);

  const HutItemSource *first = g_ptr_array_index (item->sources, 0),
                      *second = g_ptr_array_index (item->sources, 1);

  assert_int_equal (item->sources->len, 2);
  assert_string_equal (first->of, "flange");
  assert_string_equal (get_source (item, 0), "a drawing");
  assert_string_equal (second->of, "cutout, mass");
  assert_string_equal (get_source (item, 1), "measured");
}

static void
each_fault_has_a_sentence (void **state)
{
  g_autoptr (HutItem) item = hut_item_draft_new ();
  g_autofree char *number = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, HUT_UNITS_MM, 2.5);

  for (HutItemFaultKind kind = HUT_ITEM_FAULT_NONE; kind <= HUT_ITEM_FAULT_LINE; kind++)
    {
      const HutItemFault fault = { .kind = kind, .by_mm = 2.5 };
      g_autofree char *text = hut_item_fault_dup_text (item, &fault, HUT_UNITS_MM);

      assert_int_equal (text == NULL, kind == HUT_ITEM_FAULT_NONE);
      if (kind == HUT_ITEM_FAULT_CUT_RIM)
        assert_non_null (strstr (text, number));
    }
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
    cmocka_unit_test (each_switch_is_what_was_set),
    cmocka_unit_test (each_shipped_item_that_is_entered_again_is_equal),
    cmocka_unit_test (new_drafts_could_be_saved_at_once),
    cmocka_unit_test (every_change_of_a_hole_leaves_one_that_can_be_cut),
    cmocka_unit_test (a_space_is_as_wide_as_flange_or_cutout_and_follows_them),
    cmocka_unit_test (screws_are_added_beside_the_last_until_the_file_is_full),
    cmocka_unit_test (two_points_make_a_curve),
    cmocka_unit_test (an_item_that_comes_to_lie_on_one_panel_has_one_leaf),
    cmocka_unit_test (what_was_changed_is_marked_as_measured_and_only_that),
    cmocka_unit_test (each_fault_has_a_sentence),
    cmocka_unit_test (ids_are_made_of_the_name_and_free),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
