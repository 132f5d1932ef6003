/* tests/catalog/test-catalog.c: the shipped items and the user's own.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalog/hut-catalog.h"
#include "catalog/hut-catalog-file.h"
#include "format/scratch.h"
#include "hut-assert.h"

/* Own choice of the program's makers: the least that a bench needs. */
#define SHIPPED_MIN 80

static GPtrArray *
new_problems (void)
{
  return g_ptr_array_new_with_free_func (g_free);
}

static void
write_file (const char *folder,
            const char *name,
            const char *text)
{
  g_autofree char *path = g_build_filename (folder, name, NULL);

  assert_true (g_file_set_contents (path, text, -1, NULL));
}

static void
the_shipped_catalogue_fills_every_group (void **state)
{
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();
  guint n_of[HUT_ITEM_GROUP_COUNT] = { 0 };

  assert_true (hut_catalog_get_count (catalog) >= SHIPPED_MIN);
  for (guint i = 0; i < hut_catalog_get_count (catalog); i++)
    {
      const HutItem *item = hut_catalog_get_nth (catalog, i);

      n_of[item->group]++;
      assert_ptr_equal (hut_catalog_get (catalog, item->id), item);
      assert_false (hut_catalog_is_own (catalog, item));
      assert_true (i == 0 || hut_catalog_get_nth (catalog, i - 1)->group <= item->group);
    }
  for (int i = 0; i < HUT_ITEM_GROUP_COUNT; i++)
    {
      if (n_of[i] == 0)
        fail_msg ("nothing under %s", hut_item_group_title ((HutItemGroup) i));
      assert_true (hut_item_group_title ((HutItemGroup) i)[0] != '\0');
    }
  assert_null (hut_catalog_get (catalog, "no-such-item"));
  assert_null (hut_catalog_get_nth (catalog, hut_catalog_get_count (catalog)));
}

static void
an_own_item_takes_the_place_of_a_shipped_one_and_others_are_added (void **state)
{
  const char *folder = *state;
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();
  const guint n_shipped = hut_catalog_get_count (catalog);
  g_autoptr(GPtrArray) problems = new_problems ();
  g_autoptr(HutItem) own = hut_item_copy (hut_catalog_get (catalog, "fan-120x25"));
  g_autoptr(HutItem) fresh = hut_item_new ("my-bracket");
  g_autoptr(GError) error = NULL;

  own->mass_kg = 0.171;
  assert_ok (hut_catalog_save_own (folder, own, &error), error);
  assert_ok (hut_catalog_save_own (folder, fresh, &error), error);
  hut_catalog_add_folder (catalog, folder, problems);
  assert_int_equal (problems->len, 0);
  assert_int_equal (hut_catalog_get_count (catalog), n_shipped + 1);
  assert_near (hut_catalog_get (catalog, "fan-120x25")->mass_kg, 0.171, 0.0);
  assert_true (hut_catalog_is_own (catalog, hut_catalog_get (catalog, "fan-120x25")));
  assert_true (hut_item_equal (hut_catalog_get (catalog, "my-bracket"), fresh));
  assert_false (hut_catalog_is_own (catalog, hut_catalog_get (catalog, "fan-92x25")));
}

static void
bad_files_and_items_are_told_and_the_rest_loads (void **state)
{
  const char *folder = *state;
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();
  const guint n_shipped = hut_catalog_get_count (catalog);
  g_autoptr(GPtrArray) problems = new_problems ();
  g_autofree char *b_path = g_build_filename (folder, "b.xml", NULL);
  g_autofree char *c_path = g_build_filename (folder, "c.xml", NULL);
  g_autofree char *d_path = g_build_filename (folder, "d.xml", NULL);
  const char *head = "<catalog xmlns=\"" HUT_CATALOG_NS "\" version=\"1\">\n";
  const char *item = "<item id=\"%s\" name=\"N\" words=\"\" group=\"foot\" hold=\"glue\" "
                     "mass-kg=\"%s\"/>\n";
  g_autofree char *good = g_strdup_printf (item, "good", "1");
  g_autofree char *bad = g_strdup_printf (item, "bad", "1 lb");
  g_autofree char *a = g_strconcat (head, good, "</catalog>", NULL);
  g_autofree char *b = g_strconcat (head, bad, good, "</catalog>", NULL);

  write_file (folder, "a.xml", a);
  write_file (folder, "b.xml", b);
  write_file (folder, "c.xml", "<catalog");
  write_file (folder, "notes.txt", "not looked at");
  assert_int_equal (g_mkdir (d_path, 0700), 0);
  hut_catalog_add_folder (catalog, folder, problems);
  assert_int_equal (hut_catalog_get_count (catalog), n_shipped + 1);
  assert_int_equal (problems->len, 4);

  g_autofree char *first = g_strconcat (b_path, ":2: mass of item 'bad' is '1 lb', not a number; "
                                        "allowed: 0 to 100 kg", NULL);
  g_autofree char *second = g_strconcat (b_path, ":1: id 'good' is already used in another file of "
                                         "the folder; allowed: a different id for every <item>",
                                         NULL);

  assert_string_equal (g_ptr_array_index (problems, 0), first);
  assert_string_equal (g_ptr_array_index (problems, 1), second);
  assert_true (g_str_has_prefix (g_ptr_array_index (problems, 2), c_path));
  assert_true (g_str_has_prefix (g_ptr_array_index (problems, 3), d_path));
}

static void
a_folder_that_is_not_there_holds_nothing (void **state)
{
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();
  const guint n_shipped = hut_catalog_get_count (catalog);
  g_autoptr(GPtrArray) problems = new_problems ();

  hut_catalog_add_folder (catalog, "/nonexistent/hutchwright", problems);
  assert_int_equal (problems->len, 0);
  assert_int_equal (hut_catalog_get_count (catalog), n_shipped);
}

static void
what_could_not_be_loaded_again_is_not_saved (void **state)
{
  const char *folder = *state;
  g_autoptr(HutItem) item = hut_item_new ("nut-without-size");
  g_autofree char *path = g_build_filename (folder, "nut-without-size.xml", NULL);
  g_autoptr(GError) error = NULL;

  item->hold = HUT_HOLD_NUT;
  assert_false (hut_catalog_save_own (folder, item, &error));
  assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE));
  assert_non_null (strstr (error->message, "; allowed: 'nut-corners' over 0"));
  assert_false (g_file_test (path, G_FILE_TEST_EXISTS));
  g_clear_error (&error);

  g_free (item->id);
  item->id = g_strdup ("../elsewhere");
  item->hold = HUT_HOLD_GLUE;
  assert_false (hut_catalog_save_own (folder, item, &error)); /* no id: "a letter or '_', ..." */
  assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE));
}

static void
an_own_item_is_saved_again_and_removed (void **state)
{
  g_autofree char *folder = g_build_filename (*state, "new", NULL);
  g_autoptr(HutItem) item = hut_item_new ("mine");
  g_autofree char *path = g_build_filename (folder, "mine.xml", NULL);
  g_autoptr(GError) error = NULL;

  assert_ok (hut_catalog_save_own (folder, item, &error), error); /* makes the folder */
  item->mass_kg = 2;
  assert_ok (hut_catalog_save_own (folder, item, &error), error);

  g_autofree char *text = NULL;

  assert_true (g_file_get_contents (path, &text, NULL, NULL));
  assert_non_null (strstr (text, "mass-kg=\"2\""));
  assert_ok (hut_catalog_remove_own (folder, "mine", &error), error);
  assert_false (g_file_test (path, G_FILE_TEST_EXISTS));
  assert_false (hut_catalog_remove_own (folder, "mine", &error));
  assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_IO));
  g_rmdir (folder);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (the_shipped_catalogue_fills_every_group),
    cmocka_unit_test_setup_teardown (
        an_own_item_takes_the_place_of_a_shipped_one_and_others_are_added, make_scratch,
        remove_scratch),
    cmocka_unit_test_setup_teardown (bad_files_and_items_are_told_and_the_rest_loads, make_scratch,
                                     remove_scratch),
    cmocka_unit_test (a_folder_that_is_not_there_holds_nothing),
    cmocka_unit_test_setup_teardown (what_could_not_be_loaded_again_is_not_saved, make_scratch,
                                     remove_scratch),
    cmocka_unit_test_setup_teardown (an_own_item_is_saved_again_and_removed, make_scratch,
                                     remove_scratch),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
