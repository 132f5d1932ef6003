/* tests/cli/test-cli-coupon.c: the test piece on the command line.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "design/hut-file.h"
#include "format/hut-number.h"

#include "hut-run.h"
#include "hut-scratch.h"
#include <string.h>

static void
it_writes_a_piece_per_stock_and_prints_the_names (void **state)
{
  char *folder = hut_scratch_new ();
  g_autofree char *file = hut_run_write_example (folder, "engraver", "engraver");
  g_autofree char *set = g_build_filename (folder, "coupon", NULL);
  g_autoptr(HutDesign) design = hut_design_load (file, NULL);
  g_autoptr(HutRun) run = hut_run ("coupon", file, "--to", set, "--formats", "svg,csv", NULL);

  hut_run_assert_status (run, 0);
  for (guint i = 0; i < design->stocks->len; i++)
    {
      const HutStock *stock = g_ptr_array_index (design->stocks, i);
      g_autofree char *name = g_strdup_printf ("%s/coupon-%s.svg\n", set, stock->id);

      assert_non_null (strstr (run->text, name));
    }
  assert_non_null (strstr (run->text, "coupon-readings.csv\n"));
  assert_null (strstr (run->text, ".dxf\n"));
  hut_scratch_free (folder);
}

static void
readings_go_into_the_recipe_of_the_saved_design (void **state)
{
  char *folder = hut_scratch_new ();
  g_autofree char *file = hut_run_write_example (folder, "engraver", "engraver");
  g_autofree char *saved = g_build_filename (folder, "measured.hutch", NULL);
  g_autoptr(HutDesign) design = hut_design_load (file, NULL);
  const HutStock *before = g_ptr_array_index (design->stocks, 0);
  g_autoptr(HutRun) run = hut_run ("coupon", file, "--stock", before->id, "--play",
                                   "2.53,2.55,2.51", "--comb", "slip=-4,glue=4", "--save", saved,
                                   NULL);

  hut_run_assert_status (run, 0);
  /* 7.59 / 3 / 11 = 0.23 */
  assert_non_null (strstr (run->text, "0.23 ±"));

  g_autoptr(HutDesign) after = hut_design_load (saved, NULL);
  const HutStock *stock = hut_design_get_stock (after, before->id);

  assert_near_mm (stock->kerf_mm, 0.23, 1e-9);
  assert_true (stock->kerf_error_mm > 0.0 && stock->kerf_error_mm < 0.03);
  assert_true (stock->allowance_error_mm > 0.0);

  /* The measured kerf is in the file now; the piece was drawn for the one before. */
  char number[HUT_NUMBER_SIZE];
  g_autoptr(HutRun) again = hut_run ("coupon", saved, "--stock", before->id, "--play",
                                     "2.53,2.55,2.51", "--comb", "slip=-4,glue=4", "--drawn-kerf",
                                     hut_number_fixed (number, before->kerf_mm, 3), NULL);

  hut_run_assert_status (again, 0);
  assert_string_equal (again->text, run->text);
  hut_scratch_free (folder);
}

static void
wrong_calls_tell_what_is_allowed (void **state)
{
  char *folder = hut_scratch_new ();
  g_autofree char *file = hut_run_write_example (folder, "engraver", "engraver");
  g_autoptr(HutDesign) design = hut_design_load (file, NULL);
  const char *stock = ((HutStock *) g_ptr_array_index (design->stocks, 0))->id;
  g_autoptr(HutRun) nothing = hut_run ("coupon", file, NULL);
  g_autoptr(HutRun) no_stock = hut_run ("coupon", file, "--play", "2.2", NULL);
  g_autoptr(HutRun) no_number = hut_run ("coupon", file, "--stock", stock, "--play", "2,2x", NULL);
  g_autoptr(HutRun) no_tooth
      = hut_run ("coupon", file, "--stock", stock, "--play", "2.2", "--comb", "slip=7", NULL);
  g_autoptr(HutRun) order = hut_run ("coupon", file, "--stock", stock, "--play", "2.2", "--comb",
                                     "slip=4,glue=-4", NULL);

  hut_run_assert_refused (nothing, 2, "--to DIR");
  hut_run_assert_refused (no_stock, 2, "--stock ID");
  hut_run_assert_refused (no_number, 2, "2,2x");
  hut_run_assert_refused (no_tooth, 2, "slip=7");
  hut_run_assert_status (order, 2);
  assert_non_null (strstr (order->errors, "teeth must get looser"));
  hut_scratch_free (folder);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (it_writes_a_piece_per_stock_and_prints_the_names),
    cmocka_unit_test (readings_go_into_the_recipe_of_the_saved_design),
    cmocka_unit_test (wrong_calls_tell_what_is_allowed),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
