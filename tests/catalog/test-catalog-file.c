/* tests/catalog/test-catalog-file.c: items of hardware as XML, from and to memory.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "hut-item-text.h"
#include "hut-assert.h"

#define ITEM(id, more)                                                                             \
  "<item id=\"" id "\" name=\"A\" words=\"\" group=\"control\" hold=\"snap\" mass-kg=\"0.01\" " more \
  "/>\n"

static void
one_bad_item_costs_no_other_and_each_is_told (void **state)
{
  g_autoptr(GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
  g_autoptr(GPtrArray) items = read_catalog (
      ITEM ("one", "") ITEM ("two", "mass=\"3\"") ITEM ("three", "") ITEM ("one", "strained=\"yes\"")
          "<thing/>\n" ITEM ("four", "thickness-max=\"3 mm\"") ITEM ("five", ""),
      problems);

  assert_int_equal (items->len, 3);
  assert_string_equal (((HutItem *) g_ptr_array_index (items, 0))->id, "one");
  assert_false (((HutItem *) g_ptr_array_index (items, 0))->strained);
  assert_string_equal (((HutItem *) g_ptr_array_index (items, 1))->id, "three");
  assert_string_equal (((HutItem *) g_ptr_array_index (items, 2))->id, "five");
  assert_int_equal (problems->len, 4);
  assert_true (g_str_has_prefix (g_ptr_array_index (problems, 0),
                                 "f:3: unknown attribute 'mass' of <item>; allowed: id, name"));
  assert_string_equal (g_ptr_array_index (problems, 1),
                       "f:5: id 'one' of <item> is already used in line 2; allowed: a different id "
                       "for every <item>");
  assert_string_equal (g_ptr_array_index (problems, 2),
                       "f:6: unknown element <thing> in <catalog>; allowed: <item>");
  assert_string_equal (g_ptr_array_index (problems, 3),
                       "f:7: largest thickness of item 'four' is '3 mm', not a number; "
                       "allowed: 0 to 100 mm");
}

static void
a_file_that_is_no_catalogue_is_one_problem (void **state)
{
  static const char *const cases[][2] = {
    { "", "f:1: " },
    { "<catalog", "f:1: " },
    { "<catalog version=\"1\"/>", "f:1: the root element is <catalog>; allowed: <catalog xmlns=" },
    { "<catalog xmlns=\"" HUT_CATALOG_NS "\"/>",
      "f:1: version of the file is missing; allowed: 1" },
    { "<catalog xmlns=\"" HUT_CATALOG_NS "\" version=\"2\"/>",
      "f:1: version of the file is '2'; allowed: 1" },
    { "<!DOCTYPE catalog><catalog xmlns=\"" HUT_CATALOG_NS "\" version=\"1\"/>", "f:1: " },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr(GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
      g_autoptr(GPtrArray) items
          = hut_catalog_file_read (cases[i][0], strlen (cases[i][0]), "f", problems);

      assert_int_equal (items->len, 0);
      assert_int_equal (problems->len, 1);
      if (!g_str_has_prefix (g_ptr_array_index (problems, 0), cases[i][1]))
        fail_msg ("%s", (const char *) g_ptr_array_index (problems, 0));
    }
}

static HutItem *
new_full (void)
{
  HutItem *item = hut_item_new ("all-of-it");
  const HutItemCut cuts[] = {
    { .role = HUT_CUT_BODY, .shape = HUT_CUT_KEYED, .diameter_mm = 22.3, .width_mm = 3.2,
      .height_mm = 24.1 },
    { .role = HUT_CUT_SCREW, .leaf = 1, .at = { 1.25, -0.1 }, .thread_mm = 3.5, .wood_screw = TRUE,
      .grip_mm = 1.5, .tapped_mm = 8 },
    { .role = HUT_CUT_PIN, .shape = HUT_CUT_RECTANGLE, .width_mm = 2, .height_mm = 3,
      .radius_mm = 0.5 },
  };
  const HutItemBody bodies[] = {
    { HUT_ITEM_BEHIND, 1, { -1, -2, 3, 4 }, 5, TRUE },
    { HUT_ITEM_FRONT, 0, { -1, -2, 3, 4 }, 0.1, FALSE },
  };
  const HutFanPoint points[] = { { 0, 40.5 }, { 20, 12 }, { 90, 0 } };

  item->span = HUT_SPAN_SEAM;
  item->hold = HUT_HOLD_NUT;
  item->group = HUT_ITEM_MOUNT;
  item->from_inside = FALSE;
  item->thickness_max_mm = 6;
  item->nut_corners_mm = 32.3;
  item->noise_db = 41;
  item->pass_round = TRUE;
  item->pass_width_mm = item->pass_height_mm = 8;
  item->free_area_ratio = 0.6;
  g_free (item->name);
  item->name = g_strdup ("<Tür> & \"Tor\"");
  g_array_append_vals (item->cuts, cuts, G_N_ELEMENTS (cuts));
  g_array_append_vals (item->bodies, bodies, G_N_ELEMENTS (bodies));
  g_array_append_vals (item->curve, points, G_N_ELEMENTS (points));
  g_ptr_array_add (item->sources, hut_item_source_new ("cutout, holes", "measured & <drawn>"));
  return item;
}

static void
an_item_written_is_the_item_read (void **state)
{
  g_autoptr(GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
  g_autoptr(GPtrArray) items = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_item_free);
  g_autofree char *text = NULL;

  g_ptr_array_add (items, new_full ());
  text = hut_catalog_file_to_xml (items);

  g_autoptr(GPtrArray) again = hut_catalog_file_read (text, strlen (text), "f", problems);

  if (problems->len > 0)
    fail_msg ("%s", (const char *) g_ptr_array_index (problems, 0));
  assert_int_equal (again->len, 1);
  assert_true (hut_item_equal (g_ptr_array_index (items, 0), g_ptr_array_index (again, 0)));

  g_autofree char *text_again = hut_catalog_file_to_xml (again);

  assert_string_equal (text, text_again);
}

static void
blanks_round_a_source_do_not_count_and_elements_in_it_are_refused (void **state)
{
  const char *with = ITEM ("a", "") "<item id=\"b\" name=\"B\" words=\"\" group=\"fan\" hold=\"glue\" "
                     "mass-kg=\"1\"><fan-point flow-m3-h=\"0\" pressure-pa=\"5\"/><fan-point "
                     "flow-m3-h=\"9\" pressure-pa=\"0\"/>";
  g_autofree char *good = g_strconcat (with, "<source of=\"mass\">\n  from\n memory </source></item>",
                                       NULL);
  g_autofree char *bad = g_strconcat (with, "<source of=\"mass\">from<b/></source></item>", NULL);
  g_autoptr(GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
  g_autoptr(GPtrArray) items = read_catalog (good, problems);
  const HutItem *item = g_ptr_array_index (items, 1);
  const HutItemSource *source = g_ptr_array_index (item->sources, 0);

  assert_string_equal (source->source, "from\n memory");
  g_clear_pointer (&items, g_ptr_array_unref);
  items = read_catalog (bad, problems);
  assert_int_equal (items->len, 1);
  assert_string_equal (g_ptr_array_index (problems, 0),
                       "f:3: unknown element <b> in <source>; allowed: text");
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (one_bad_item_costs_no_other_and_each_is_told),
    cmocka_unit_test (a_file_that_is_no_catalogue_is_one_problem),
    cmocka_unit_test (an_item_written_is_the_item_read),
    cmocka_unit_test (blanks_round_a_source_do_not_count_and_elements_in_it_are_refused),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
