/* tests/sheets/test-rect-bound.c: how many bins rectangles need at least.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-rect-bound.h"
#include "bench/hut-rect-instance.h"
#include "hut-assert.h"

static void
no_rectangles_need_no_bins (void **state)
{
  assert_int_equal (hut_rect_bound (NULL, 0, (HutRectSize) { 10, 10 }, FALSE), 0);
}

/* Three of 6 x 6 in bins of 10 x 10: area 108 says 2, but no two go into one bin. */
static void
large_rectangles_count_a_bin_each (void **state)
{
  const HutRectSize sizes[] = { { 6, 6 }, { 6, 6 }, { 6, 6 } };

  assert_int_equal (hut_rect_bound (sizes, 3, (HutRectSize) { 10, 10 }, FALSE), 3);
  assert_int_equal (hut_rect_bound (sizes, 3, (HutRectSize) { 10, 10 }, TRUE), 3);
}

/* 11 of 10 x 1 fill one bin of 10 x 10 and one more. */
static void
area_is_rounded_up (void **state)
{
  HutRectSize sizes[11];

  for (guint i = 0; i < 11; i++)
    sizes[i] = (HutRectSize) { 10, 1 };
  assert_int_equal (hut_rect_bound (sizes, 10, (HutRectSize) { 10, 10 }, FALSE), 1);
  assert_int_equal (hut_rect_bound (sizes, 11, (HutRectSize) { 10, 10 }, FALSE), 2);
}

/* What was packed needs no more: the bound of small instances is at most the published best. */
static void
bound_is_never_above_the_best_known_number (void **state)
{
  HutRectInstance instance;
  FILE *file = hut_rect_instances_open ();
  guint seen = 0;

  assert_non_null (file);
  while (hut_rect_instances_next (file, &instance))
    for (guint turned = 0; turned < 2; turned++)
      {
        if (instance.count != 20)
          continue;
        assert_true (hut_rect_bound (instance.sizes, instance.count, instance.bin, turned)
                     <= instance.best[turned]);
        seen++;
      }
  fclose (file);
  assert_int_equal (seen, 2 * 100);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (no_rectangles_need_no_bins),
    cmocka_unit_test (large_rectangles_count_a_bin_each),
    cmocka_unit_test (area_is_rounded_up),
    cmocka_unit_test (bound_is_never_above_the_best_known_number),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
