/* tests/checks/test-joint-fit.c: how loose a tongue is in its slot.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-joint-fit.h"
#include "geom/hut-offset.h"
#include "hut-assert.h"

static HutStock *
stock (double allowance_mm,
       double kerf_error_mm,
       double least_mm,
       double most_mm)
{
  HutStock *self = hut_stock_new ("ply");

  self->allowance_mm = allowance_mm;
  self->kerf_error_mm = kerf_error_mm;
  g_array_set_size (self->readings_mm, 0);
  g_array_append_val (self->readings_mm, least_mm);
  g_array_append_val (self->readings_mm, most_mm);
  return self;
}

static void
one_stock_doubles_its_kerf_error (void **state)
{
  /* Kerf: 0.03 on tongue and slot, the same error: 0.06. Thickness 5.9 .. 6.1: 0.1 on either
   * side. */
  g_autoptr(HutStock) a = stock (0.1, 0.03, 5.9, 6.1);
  const HutJointFit fit = hut_joint_fit_find (a, a);

  assert_near_mm (fit.centre_mm, 0.1, 1e-12);
  assert_near_mm (fit.kerf_mm, 0.06, 1e-12);
  assert_near_mm (fit.thickness_mm, 0.2, 1e-12);
  assert_near_mm (fit.worst_mm, 0.26, 1e-12);
  /* sqrt (0.06^2 + 0.1^2 + 0.1^2) = sqrt (0.0236) */
  assert_near_mm (fit.rss_mm, 0.15362, 1e-5);
}

static void
two_stocks_have_independent_errors (void **state)
{
  g_autoptr(HutStock) a = stock (0.1, 0.03, 5.9, 6.1), b = stock (-0.05, 0.04, 3, 3);
  const HutJointFit fit = hut_joint_fit_find (a, b), back = hut_joint_fit_find (b, a);

  assert_near_mm (fit.centre_mm, 0.025, 1e-12);
  assert_near_mm (fit.kerf_mm, 0.07, 1e-12);
  assert_near_mm (fit.thickness_mm, 0.1, 1e-12);
  assert_near_mm (fit.worst_mm, 0.17, 1e-12);
  /* sqrt (0.03^2 + 0.04^2 + 0.1^2) = sqrt (0.0125) */
  assert_near_mm (fit.rss_mm, 0.111803, 1e-6);
  assert_near_mm (back.rss_mm, fit.rss_mm, 0);
}

static void
centre_is_what_the_offset_of_the_cut_gives (void **state)
{
  /* Cut a tongue of 10 and a slot of 10 with an ideal kerf: each flank moves by kerf / 2 less its
   * mating offset. The slot is then wider than the tongue by the centre of the fit. */
  g_autoptr(HutStock) a = stock (0.12, 0, 6, 6), b = stock (0.04, 0, 6, 6);
  const HutOffset tongue = hut_offset_for_fit (0.2, a->allowance_mm),
                  slot = hut_offset_for_fit (0.2, b->allowance_mm);
  const double tongue_mm = 10 + 2 * (tongue.mating_mm - 0.1),
               slot_mm = 10 - 2 * (slot.mating_mm - 0.1);

  assert_near_mm (hut_joint_fit_find (a, b).centre_mm, slot_mm - tongue_mm, 1e-12);
}

static void
ranges_are_the_usual_ones (void **state)
{
  /* Common practice, no source. */
  const struct
  {
    HutMaterial material;
    HutCutterKind cutter;
    HutFitKind fit;
    double low_mm, high_mm;
  } cases[] = {
    { HUT_MATERIAL_PLYWOOD, HUT_CUTTER_LASER, HUT_FIT_PRESS, -0.15, -0.05 },
    { HUT_MATERIAL_PLYWOOD, HUT_CUTTER_LASER, HUT_FIT_SLIP, -0.05, 0.05 },
    { HUT_MATERIAL_PLYWOOD, HUT_CUTTER_LASER, HUT_FIT_GLUE, 0.05, 0.15 },
    { HUT_MATERIAL_MDF, HUT_CUTTER_LASER, HUT_FIT_GLUE, 0.05, 0.15 },
    { HUT_MATERIAL_HDF, HUT_CUTTER_ROUTER, HUT_FIT_PRESS, -0.10, 0.0 },
    { HUT_MATERIAL_PLYWOOD, HUT_CUTTER_ROUTER, HUT_FIT_SLIP, 0.0, 0.10 },
    { HUT_MATERIAL_MDF, HUT_CUTTER_ROUTER, HUT_FIT_GLUE, 0.10, 0.20 },
    { HUT_MATERIAL_ACRYLIC, HUT_CUTTER_LASER, HUT_FIT_SLIP, 0.0, 0.05 },
    { HUT_MATERIAL_ACRYLIC, HUT_CUTTER_LASER, HUT_FIT_GLUE, 0.05, 0.30 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      const HutFitRange range = hut_fit_range (cases[i].material, cases[i].cutter, cases[i].fit);

      assert_true (range.known && !range.never);
      assert_near_mm (range.low_mm, cases[i].low_mm, 0);
      assert_near_mm (range.high_mm, cases[i].high_mm, 0);
    }
  assert_true (hut_fit_range (HUT_MATERIAL_ACRYLIC, HUT_CUTTER_LASER, HUT_FIT_PRESS).never);
  assert_false (hut_fit_range (HUT_MATERIAL_ACRYLIC, HUT_CUTTER_ROUTER, HUT_FIT_SLIP).known);
  assert_false (hut_fit_range (HUT_MATERIAL_OTHER, HUT_CUTTER_LASER, HUT_FIT_SLIP).known);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (one_stock_doubles_its_kerf_error),
    cmocka_unit_test (two_stocks_have_independent_errors),
    cmocka_unit_test (centre_is_what_the_offset_of_the_cut_gives),
    cmocka_unit_test (ranges_are_the_usual_ones),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
