/* tests/sheets/test-outline-pack.c: shapes of any outline in as few equal rectangles as may be.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-outline-pack.h"
#include "hut-assert.h"
#include "hut-random.h"

#define WORK 2000000
#define GUILLOTINE_SEEDS 6
#define HOLE_MM 160.0
#define FRAME_MM 20.0 /* width of the frame's legs */
#define FRAMES_ACROSS 3
#define FRAMES_UP 2
#define CUTS_MIN 2 /* a hole becomes 3 to 7 rectangles */
#define CUTS_SPREAD 5

static gboolean
add_rectangle (HutOutlinePack *pack,
               double width_mm,
               double height_mm,
               gboolean may_turn)
{
  g_autoptr(HutConvexSet) set = hut_convex_set_new ();
  const HutPoint corners[] = { { 0, 0 }, { width_mm, 0 }, { width_mm, height_mm },
                               { 0, height_mm } };
  const HutOutlineWay ways[] = {
    { 0.0, { 0, 0, width_mm, height_mm } },
    { G_PI_2, { -height_mm, 0, 0, width_mm } },
  };

  hut_convex_set_append (set, corners, G_N_ELEMENTS (corners));
  return hut_outline_pack_add (pack, set, ways, may_turn ? 2 : 1, width_mm * height_mm);
}

static void
add_frame (HutOutlinePack *pack)
{
  const double side_mm = HOLE_MM + 2.0 * FRAME_MM;
  g_autoptr(HutRegion) region
      = hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, side_mm, side_mm }, 0.0));

  hut_region_take_hole (region, hut_path_new_rect ((HutRect) { FRAME_MM, FRAME_MM,
                                                               FRAME_MM + HOLE_MM,
                                                               FRAME_MM + HOLE_MM }, 0.0));

  g_autoptr(HutConvexSet) set = hut_convex_set_new_around (region, 0.0, 0.0);
  const HutOutlineWay way = { 0.0, { 0, 0, side_mm, side_mm } };

  assert_true (hut_outline_pack_add (pack, set, &way, 1, side_mm * side_mm - HOLE_MM * HOLE_MM));
}

static guint
count_bins (const GArray *places)
{
  guint count = 0;

  for (guint i = 0; i < places->len; i++)
    count = MAX (count, g_array_index (places, HutOutlinePlace, i).bin + 1);
  return count;
}

static void
nothing_to_pack_gives_no_places (void **state)
{
  g_autoptr(HutOutlinePack) pack = hut_outline_pack_new (100, 100);
  g_autoptr(GArray) places = hut_outline_pack_run (pack, WORK, NULL);

  assert_int_equal (places->len, 0);
}

static void
item_that_fits_no_way_is_refused (void **state)
{
  g_autoptr(HutOutlinePack) pack = hut_outline_pack_new (100, 50);

  assert_false (add_rectangle (pack, 50, 100, FALSE));
  assert_true (add_rectangle (pack, 50, 100, TRUE));
  assert_false (add_rectangle (pack, 100.1, 1, TRUE));
}

/* 4 of 50 x 100 fill 200 x 100 standing; a fifth one needs another bin. */
static void
exact_fits_fill_the_bin (void **state)
{
  g_autoptr(HutOutlinePack) pack = hut_outline_pack_new (200, 100);

  for (guint i = 0; i < 4; i++)
    assert_true (add_rectangle (pack, 50, 100, FALSE));

  g_autoptr(GArray) four = hut_outline_pack_run (pack, WORK, NULL);

  assert_int_equal (count_bins (four), 1);
  assert_true (add_rectangle (pack, 50, 100, FALSE));

  g_autoptr(GArray) five = hut_outline_pack_run (pack, WORK, NULL);

  assert_int_equal (count_bins (five), 2);
}

/* Known dissection of 13 x 8: it takes search, since no order by size alone meets it at once. */
static void
five_rectangles_around_a_middle_one_are_found (void **state)
{
  const double sizes_mm[][2] = { { 8, 3 }, { 5, 5 }, { 3, 5 }, { 10, 3 }, { 5, 2 } };
  g_autoptr(HutOutlinePack) pack = hut_outline_pack_new (13, 8);

  /* 13 x 8 = 104 = 24 + 25 + 15 + 30 + 10. */
  for (guint i = 0; i < G_N_ELEMENTS (sizes_mm); i++)
    assert_true (add_rectangle (pack, sizes_mm[i][0], sizes_mm[i][1], TRUE));

  g_autoptr(GArray) places = hut_outline_pack_run (pack, WORK, NULL);

  assert_int_equal (count_bins (places), 1);
}

/* Cuts the holes of all frames into rectangles by random guillotine cuts: still one full sheet. */
static void
add_cut_holes (HutOutlinePack *pack,
               HutRandom *random)
{
  for (guint i = 0; i < FRAMES_ACROSS * FRAMES_UP; i++)
    {
      g_autoptr(GArray) pieces = g_array_new (FALSE, FALSE, sizeof (HutPoint));
      const HutPoint whole = { HOLE_MM, HOLE_MM };

      g_array_append_val (pieces, whole);
      for (guint cuts = CUTS_MIN + hut_random_below (random, CUTS_SPREAD); cuts > 0; cuts--)
        {
          HutPoint *piece = &g_array_index (pieces, HutPoint, hut_random_below (random, pieces->len));
          HutPoint rest = *piece;
          const gboolean across = piece->u >= piece->v;
          double *side_mm = across ? &piece->u : &piece->v;
          const double kept_mm = floor (*side_mm * hut_random_between (random, 0.3, 0.7));

          *(across ? &rest.u : &rest.v) = *side_mm - kept_mm;
          *side_mm = kept_mm;
          g_array_append_val (pieces, rest);
        }
      for (guint k = 0; k < pieces->len; k++)
        {
          const HutPoint size = g_array_index (pieces, HutPoint, k);

          assert_true (add_rectangle (pack, size.u, size.v, TRUE));
        }
    }
}

/* Own benchmark with the known answer 1; 2 is what no search has to exceed: frames in one, rest in
 * holes and a second sheet. */
static void
holes_cut_at_random_are_mostly_filled (void **state)
{
  guint full_count = 0;

  for (guint64 seed = 1; seed <= GUILLOTINE_SEEDS; seed++)
    {
      const double side_mm = HOLE_MM + 2.0 * FRAME_MM;
      g_autoptr(HutOutlinePack) pack
          = hut_outline_pack_new (FRAMES_ACROSS * side_mm, FRAMES_UP * side_mm);
      HutRandom random;

      hut_random_init (&random, seed);
      for (guint i = 0; i < FRAMES_ACROSS * FRAMES_UP; i++)
        add_frame (pack);
      add_cut_holes (pack, &random);

      g_autoptr(GArray) places = hut_outline_pack_run (pack, WORK, NULL);

      assert_true (count_bins (places) <= 2);
      full_count += count_bins (places) == 1;
    }
  print_message ("%u of %u holes cut at random are filled whole\n", full_count, GUILLOTINE_SEEDS);
}

static gboolean
stop_at_once (double done_ratio,
              gpointer user_data)
{
  return FALSE;
}

static void
stopped_run_has_a_place_for_every_item (void **state)
{
  g_autoptr(HutOutlinePack) pack = hut_outline_pack_new (100, 100);

  for (guint i = 0; i < 20; i++)
    assert_true (add_rectangle (pack, 40 + i, 30, TRUE));

  g_autoptr(GArray) places = hut_outline_pack_run (pack, WORK, &(HutPackWatch) { stop_at_once, NULL });

  assert_int_equal (places->len, 20);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (nothing_to_pack_gives_no_places),
    cmocka_unit_test (item_that_fits_no_way_is_refused),
    cmocka_unit_test (exact_fits_fill_the_bin),
    cmocka_unit_test (five_rectangles_around_a_middle_one_are_found),
    cmocka_unit_test (holes_cut_at_random_are_mostly_filled),
    cmocka_unit_test (stopped_run_has_a_place_for_every_item),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
