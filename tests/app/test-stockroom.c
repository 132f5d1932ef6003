/* tests/app/test-stockroom.c: the catalogue with the user's own items.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-stockroom.h"
#include "format/scratch.h"
#include "hut-assert.h"

static void
count (HutStockroom *stockroom,
       guint *n)
{
  (*n)++;
}

static void
saving_and_removing_tells_and_shows (void **state)
{
  g_autoptr (HutStockroom) stockroom = hut_stockroom_new (*state);
  const guint before = hut_catalog_get_count (hut_stockroom_get_catalog (stockroom));
  g_autoptr (HutItem) item = hut_item_new ("own-thing");
  g_autoptr (GError) error = NULL;
  guint n_changes = 0;

  g_signal_connect (stockroom, "changed", G_CALLBACK (count), &n_changes);
  assert_ok (hut_stockroom_save (stockroom, item, &error), error);
  assert_int_equal (n_changes, 1);
  assert_int_equal (hut_catalog_get_count (hut_stockroom_get_catalog (stockroom)), before + 1);
  assert_non_null (hut_catalog_get (hut_stockroom_get_catalog (stockroom), "own-thing"));
  assert_ok (hut_stockroom_remove (stockroom, "own-thing", &error), error);
  assert_int_equal (n_changes, 2);
  assert_null (hut_catalog_get (hut_stockroom_get_catalog (stockroom), "own-thing"));
}

static void
what_cannot_be_saved_changes_nothing (void **state)
{
  g_autoptr (HutStockroom) stockroom = hut_stockroom_new (*state);
  g_autoptr (HutItem) item = hut_item_new ("bad");
  g_autoptr (GError) error = NULL;
  guint n_changes = 0;

  item->thickness_min_mm = 3;
  item->thickness_max_mm = 2;
  g_signal_connect (stockroom, "changed", G_CALLBACK (count), &n_changes);
  assert_false (hut_stockroom_save (stockroom, item, &error));
  assert_non_null (strstr (error->message, "'thickness-max' of item 'bad' is 2"));
  g_clear_error (&error);
  assert_false (hut_stockroom_remove (stockroom, "bad", &error));
  assert_int_equal (n_changes, 0);
}

static void
files_that_cannot_be_read_are_told (void **state)
{
  g_autofree char *path = g_build_filename (*state, "mine.xml", NULL);
  g_autofree char *start = g_strconcat (path, ":1: ", NULL);

  assert_true (g_file_set_contents (path, "<nothing/>", -1, NULL));

  g_autoptr (HutStockroom) stockroom = hut_stockroom_new (*state);
  const GPtrArray *problems = hut_stockroom_get_problems (stockroom);

  assert_int_equal (problems->len, 1);
  assert_true (g_str_has_prefix (g_ptr_array_index (problems, 0), start));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test_setup_teardown (saving_and_removing_tells_and_shows, make_scratch,
                                     remove_scratch),
    cmocka_unit_test_setup_teardown (what_cannot_be_saved_changes_nothing, make_scratch,
                                     remove_scratch),
    cmocka_unit_test_setup_teardown (files_that_cannot_be_read_are_told, make_scratch,
                                     remove_scratch),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
