/* tests/sheets/test-outline-strip.c: shapes of any outline in a strip as short as may be.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-outline-pack.h"
#include "bench/hut-irregular-set.h"
#include "hut-assert.h"
#include <string.h>

#define WORK 15000000
#define LONGEST_RATIO 5.0

/* Counts and areas of the published sets. Source: the same data, summed up by another program. */
static void
published_sets_have_their_counts_and_areas (void **state)
{
  const struct
  {
    const char *name;
    guint count;
    double area_mm2;
  } sums[HUT_IRREGULAR_SETS] = {
    { "albano", 24, 42656785 }, { "blaz", 28, 324 },       { "dagli", 30, 3034.5 },
    { "fu", 12, 1083 },         { "mao", 20, 3758617 },    { "marques", 24, 7194 },
    { "shapes0", 43, 1596 },    { "shapes1", 43, 1596 },   { "shirts", 99, 2160 },
    { "swim", 48, 25441305 },   { "trousers", 64, 17206.5 }, { "dighe1", 16, 10000 },
    { "dighe2", 10, 10000 },
  };
  FILE *file = hut_irregular_sets_open ();

  assert_non_null (file);
  for (guint i = 0; i < HUT_IRREGULAR_SETS; i++)
    {
      g_auto(HutIrregularSet) set = { "" };
      gboolean found = FALSE;

      assert_true (hut_irregular_sets_next (file, &set));
      for (guint k = 0; k < HUT_IRREGULAR_SETS; k++)
        if (strcmp (sums[k].name, set.name) == 0)
          {
            assert_int_equal (set.pieces->len, sums[k].count);
            assert_near (set.area_mm2, sums[k].area_mm2, 0.5);
            found = TRUE;
          }
      assert_true (found);
    }
  fclose (file);
}

/* Packs the set within WORK. Returns: its length; GEOS finds no overlap. */
static double
pack_set (const char *name,
          GArray **places)
{
  FILE *file = hut_irregular_sets_open ();
  double length_mm = 0.0;

  assert_non_null (file);
  *places = NULL;
  while (*places == NULL)
    {
      g_auto(HutIrregularSet) set = { "" };
      double overlap_mm2, outside_mm;

      assert_true (hut_irregular_sets_next (file, &set));
      if (strcmp (set.name, name) != 0)
        continue;

      g_autoptr(HutOutlinePack) pack
          = hut_irregular_set_dup_pack (&set, LONGEST_RATIO * set.area_mm2 / set.width_mm);

      *places = hut_outline_pack_run_strip (pack, WORK, NULL, &length_mm);
      assert_int_equal ((*places)->len, set.pieces->len);
      hut_irregular_set_measure (&set, *places, length_mm, &overlap_mm2, &outside_mm);
      assert_near (overlap_mm2, 0.0, 1e-7 * set.width_mm * set.width_mm);
      assert_true (outside_mm <= 1e-7 * set.width_mm);
    }
  fclose (file);
  return length_mm;
}

/* Ten pieces cut from a square of 100 (A. Dighe's second jigsaw): the known optimum. */
static void
jigsaw_of_ten_pieces_is_put_together (void **state)
{
  g_autoptr(GArray) places = NULL;

  assert_near_mm (pack_set ("dighe2", &places), 100.0, 1e-3);
}

/* The best published length of "fu" is 30.84; 28.5 is its area by the width. */
static void
same_work_gives_the_same_layout_near_the_best_published_one (void **state)
{
  g_autoptr(GArray) first = NULL, second = NULL;
  const double length_mm = pack_set ("fu", &first);

  assert_near_mm (pack_set ("fu", &second), length_mm, 0.0);
  assert_memory_equal (first->data, second->data, first->len * sizeof (HutOutlinePlace));
  assert_true (length_mm > 28.5 && length_mm < 1.08 * 30.84);
}

static void
strip_without_items_is_empty_and_one_without_work_has_no_layout (void **state)
{
  g_autoptr(HutOutlinePack) pack = hut_outline_pack_new (100, 100);
  g_autoptr(HutConvexSet) set = hut_convex_set_new ();
  const HutPoint corners[] = { { 0, 0 }, { 60, 0 }, { 60, 60 }, { 0, 60 } };
  const HutOutlineWay way = { 0.0, { 0, 0, 60, 60 } };
  double length_mm;
  g_autoptr(GArray) none = hut_outline_pack_run_strip (pack, WORK, NULL, &length_mm);

  assert_int_equal (none->len, 0);
  assert_near_mm (length_mm, 0.0, 0.0);
  hut_convex_set_append (set, corners, G_N_ELEMENTS (corners));
  for (guint i = 0; i < 2; i++)
    assert_true (hut_outline_pack_add (pack, set, &way, 1, 3600));

  /* Two squares of 60 fit no strip of 100 by 100. */
  g_autoptr(GArray) failed = hut_outline_pack_run_strip (pack, WORK, NULL, &length_mm);

  assert_int_equal (failed->len, 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (published_sets_have_their_counts_and_areas),
    cmocka_unit_test (jigsaw_of_ten_pieces_is_put_together),
    cmocka_unit_test (same_work_gives_the_same_layout_near_the_best_published_one),
    cmocka_unit_test (strip_without_items_is_empty_and_one_without_work_has_no_layout),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
