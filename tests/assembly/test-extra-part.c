/* tests/assembly/test-extra-part.c: plates that the user draws, as parts.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-extra-part.h"
#include "geom/hut-geos.h"
#include "hut-assert.h"
#include "hut-box-design.h"
#include "hut-random.h"
#include <math.h>

static HutExtra *
new_extra (double radius_mm)
{
  HutExtra *extra = hut_extra_new ("plate");

  g_array_set_size (extra->rects, 0);
  g_array_set_size (extra->holes, 0);
  extra->radius_mm = radius_mm;
  return extra;
}

static void
add_rect (HutExtra *extra,
          double u_mm,
          double v_mm,
          double width_mm,
          double height_mm)
{
  const HutExtraRect rect = { u_mm, v_mm, width_mm, height_mm };

  g_array_append_val (extra->rects, rect);
}

static void
add_hole (HutExtra *extra,
          double u_mm,
          double v_mm,
          double diameter_mm)
{
  const HutExtraHole hole = { u_mm, v_mm, diameter_mm, diameter_mm, diameter_mm / 2 };

  g_array_append_val (extra->holes, hole);
}

static void
one_rectangle_with_round_corners_and_a_hole (void **state)
{
  /* 40 x 20 less four corners of (1 - pi / 4) 3^2, less a hole of 10: pi 5^2. */
  g_autoptr(HutExtra) extra = new_extra (3);
  g_autoptr(HutRegion) region = NULL;
  gboolean holes_fit = FALSE;
  guint pieces = 0;

  add_rect (extra, 0, 0, 40, 20);
  add_hole (extra, 5, 0, 10);
  region = hut_extra_dup_region (extra, &pieces, &holes_fit);
  assert_int_equal (pieces, 1);
  assert_true (holes_fit);
  assert_near (hut_region_area_mm2 (region), 800 - (4 - G_PI) * 9 - G_PI * 25, 1e-6);
}

static void
an_angle_has_five_outer_corners_and_an_inner_one (void **state)
{
  /* 60 x 20 and 20 x 60 from one corner: 1200 + 1200 - 400. Rounded by 4: five corners lose and one
   * gains (1 - pi / 4) 4^2. */
  g_autoptr(HutExtra) extra = new_extra (4);
  g_autoptr(HutRegion) region = NULL;
  guint pieces = 0;

  add_rect (extra, 30, 10, 60, 20);
  add_rect (extra, 10, 30, 20, 60);
  region = hut_extra_dup_region (extra, &pieces, NULL);
  assert_int_equal (pieces, 1);
  assert_near (hut_region_area_mm2 (region), 2000 - 4 * (1 - G_PI / 4) * 16, 1e-6);
}

static void
a_rectangle_that_bridges_two_makes_them_one (void **state)
{
  g_autoptr(HutExtra) extra = new_extra (0);
  g_autoptr(HutRegion) apart = NULL, joined = NULL;
  guint pieces = 0;

  add_rect (extra, -30, 0, 20, 20);
  add_rect (extra, 30, 0, 20, 20);
  apart = hut_extra_dup_region (extra, &pieces, NULL);
  assert_int_equal (pieces, 2);
  add_rect (extra, 0, 0, 60, 10);
  joined = hut_extra_dup_region (extra, &pieces, NULL);
  assert_int_equal (pieces, 1);
  /* The bridge covers 40 x 10 that is new. */
  assert_near (hut_region_area_mm2 (joined), 400 + 400 + 400, 1e-6);
}

static void
rectangles_round_a_hole_keep_it (void **state)
{
  /* A frame of four strips, 60 x 60 outside and 40 x 40 inside. */
  g_autoptr(HutExtra) extra = new_extra (0);
  g_autoptr(HutRegion) region = NULL;
  guint pieces = 0;

  add_rect (extra, 0, 25, 60, 10);
  add_rect (extra, 0, -25, 60, 10);
  add_rect (extra, 25, 0, 10, 60);
  add_rect (extra, -25, 0, 10, 60);
  region = hut_extra_dup_region (extra, &pieces, NULL);
  assert_int_equal (pieces, 1);
  assert_int_equal (region->holes->len, 1);
  assert_near (hut_region_area_mm2 (region), 3600 - 1600, 1e-6);
}

static void
a_hole_that_leaves_the_outline_is_not_cut (void **state)
{
  g_autoptr(HutExtra) extra = new_extra (0);
  g_autoptr(HutRegion) region = NULL;
  gboolean holes_fit = TRUE;

  add_rect (extra, 0, 0, 40, 20);
  add_hole (extra, 18, 0, 10);
  region = hut_extra_dup_region (extra, NULL, &holes_fit);
  assert_false (holes_fit);
  assert_int_equal (region->holes->len, 0);
}

static void
there_are_as_many_parts_as_asked_for_beside_the_box (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutAssembly) assembly = NULL;
  g_autoptr(HutPartSet) set = NULL;
  HutExtra *extra = new_extra (0);
  guint count = 0;

  add_rect (extra, 0, 0, 40, 20);
  extra->count = 3;
  g_free (extra->stock);
  extra->stock = g_strdup (design->shell.default_stock);
  g_ptr_array_add (design->extras, extra);
  assembly = hut_assembly_new (design);
  set = hut_part_set_new (assembly);
  for (guint i = 0; i < set->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (set->parts, i);
      double matrix[16];

      if (part->kind != HUT_PART_EXTRA)
        continue;
      /* The box is 312 wide: the first middle is at 312 + 50 + 20, each next one 90 further. */
      hut_part_get_matrix (part, assembly, matrix);
      assert_near_mm (matrix[3], 382 + 90.0 * count, 1e-9);
      assert_near_mm (matrix[7], 10, 1e-9);
      assert_near_mm (matrix[11], 6, 1e-9);
      count++;
    }
  assert_int_equal (count, 3);
}

/* ---- random plates --------------------------------------------------------------------------- */

/* The area by another route: cells of a millimetre, on whose borders all rectangles begin and end. */
static double
cell_area_mm2 (const HutExtra *extra)
{
  double sum_mm2 = 0.0;

  for (int u = -50; u < 50; u++)
    for (int v = -50; v < 50; v++)
      for (guint i = 0; i < extra->rects->len; i++)
        {
          const HutExtraRect *r = &g_array_index (extra->rects, HutExtraRect, i);

          if (fabs (u + 0.5 - r->u_mm) < r->width_mm / 2
              && fabs (v + 0.5 - r->v_mm) < r->height_mm / 2)
            {
              sum_mm2 += 1.0;
              break;
            }
        }
  return sum_mm2;
}

static void
random_unions_are_valid_and_have_the_area_of_their_cells (void **state)
{
  const guint most = (guint) hut_random_seed_count (200);
  guint n_whole = 0;

  for (guint seed = 0; seed < most; seed++)
    {
      g_autoptr(HutExtra) extra = new_extra (0);
      g_autoptr(HutRegion) sharp = NULL, rounded = NULL;
      HutRandom random;
      guint pieces = 0;

      hut_random_init (&random, seed);
      for (guint i = 0; i < 5; i++)
        {
          const double half_u = 2 + hut_random_below (&random, 20),
                       half_v = 2 + hut_random_below (&random, 20);
          const double u = (double) hut_random_below (&random, 50) - 25,
                       v = (double) hut_random_below (&random, 50) - 25;

          add_rect (extra, u, v, 2 * half_u, 2 * half_v);
        }
      sharp = hut_extra_dup_region (extra, &pieces, NULL);
      assert_non_null (sharp);
      if (pieces == 1)
        {
          assert_near (hut_region_area_mm2 (sharp), cell_area_mm2 (extra), 1e-6);
          n_whole++;
        }
      extra->radius_mm = 3.0;
      rounded = hut_extra_dup_region (extra, NULL, NULL);
      if (!hut_geos_is_valid (rounded, NULL))
        fail_msg ("seed %u: rounded corners cross", seed);
    }
  assert_true (n_whole > most / 3);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (one_rectangle_with_round_corners_and_a_hole),
    cmocka_unit_test (an_angle_has_five_outer_corners_and_an_inner_one),
    cmocka_unit_test (a_rectangle_that_bridges_two_makes_them_one),
    cmocka_unit_test (rectangles_round_a_hole_keep_it),
    cmocka_unit_test (a_hole_that_leaves_the_outline_is_not_cut),
    cmocka_unit_test (there_are_as_many_parts_as_asked_for_beside_the_box),
    cmocka_unit_test (random_unions_are_valid_and_have_the_area_of_their_cells),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
