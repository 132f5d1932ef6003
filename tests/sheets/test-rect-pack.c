/* tests/sheets/test-rect-pack.c: rectangles in as few equal bins as may be.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-rect-pack.h"
#include "bench/hut-rect-instance.h"
#include "hut-assert.h"

#define WORK 300000

static void
no_rectangles_take_no_bins (void **state)
{
  guint bins = 7;
  g_autofree HutRectPlace *places
      = hut_rect_pack (NULL, 0, (HutRectSize) { 10, 10 }, FALSE, WORK, &bins);

  assert_non_null (places);
  assert_int_equal (bins, 0);
}

static void
rectangle_that_fits_only_turned_is_refused_as_it_lies (void **state)
{
  const HutRectSize size = { 5, 20 };
  guint bins;
  g_autofree HutRectPlace *straight
      = hut_rect_pack (&size, 1, (HutRectSize) { 20, 10 }, FALSE, WORK, &bins);
  g_autofree HutRectPlace *turned
      = hut_rect_pack (&size, 1, (HutRectSize) { 20, 10 }, TRUE, WORK, &bins);

  assert_null (straight);
  assert_int_equal (bins, 1);
  assert_true (turned[0].turned);
}

/* The pinwheel 8 x 3, 5 x 5, 10 x 3, 3 x 5 round 5 x 2 fills 13 x 8 = 104. */
static void
pinwheel_fills_one_bin (void **state)
{
  const HutRectSize sizes[] = { { 8, 3 }, { 5, 5 }, { 10, 3 }, { 3, 5 }, { 5, 2 } };
  guint bins;
  g_autofree HutRectPlace *places = hut_rect_pack (sizes, G_N_ELEMENTS (sizes),
                                                   (HutRectSize) { 13, 8 }, FALSE, WORK, &bins);

  assert_int_equal (bins, 1);
}

/* Of each class the first instance with 20 items: published best known numbers, see the file. */
static void
an_instance_of_each_class_takes_the_best_known_number_of_bins (void **state)
{
  HutRectInstance instance;
  guint seen = 0;
  FILE *file = hut_rect_instances_open ();

  assert_non_null (file);
  while (hut_rect_instances_next (file, &instance))
    for (guint turned = 0; turned < 2; turned++)
      {
        guint bins, again;

        if (instance.count != 20 || instance.index != 1)
          continue;

        g_autofree HutRectPlace *places = hut_rect_pack (instance.sizes, instance.count,
                                                         instance.bin, turned, WORK, &bins);
        g_autofree HutRectPlace *same = hut_rect_pack (instance.sizes, instance.count,
                                                       instance.bin, turned, WORK, &again);

        assert_int_equal (bins, instance.best[turned]);
        assert_true (hut_rect_layout_is_right (&instance, places, bins));
        for (guint i = 0; i < instance.count; i++)
          assert_true (places[i].bin == same[i].bin && places[i].x == same[i].x
                       && places[i].y == same[i].y && places[i].turned == same[i].turned);
        seen++;
      }
  fclose (file);
  assert_int_equal (seen, 2 * HUT_RECT_CLASSES);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (no_rectangles_take_no_bins),
    cmocka_unit_test (rectangle_that_fits_only_turned_is_refused_as_it_lies),
    cmocka_unit_test (pinwheel_fills_one_bin),
    cmocka_unit_test (an_instance_of_each_class_takes_the_best_known_number_of_bins),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
