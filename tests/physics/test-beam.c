/* tests/physics/test-beam.c: strips, and what splices take from their stiffness.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "physics/hut-beam.h"

/* Strip of 20 x 6 mm, E 9 GPa: I = 20 6^3 / 12 = 360 mm4, E I = 3.24 N m2. */
static void
strip_of_20_by_6_mm_bends_as_worked_out (void **state)
{
  const double bending = hut_strip_bending_n_m2 (9e9, 0.02, 0.006);

  assert_near (bending, 3.24, 1e-12);
  assert_near (hut_beam_point_sag_m (HUT_BEAM_SUPPORTED, 0.5, 1, bending) * 1e3, 0.80376, 1e-5);
  assert_near (hut_beam_even_sag_m (HUT_BEAM_SUPPORTED, 0.5, 1, bending) * 1e3, 0.25117, 1e-5);
  /* 1 N at the end of 0.5 m: 0.125 / (3 3.24) = 12.860 mm; 1 N/m: 0.0625 / (8 3.24) = 2.4113 mm. */
  assert_near (hut_beam_point_sag_m (HUT_BEAM_CANTILEVER, 0.5, 1, bending) * 1e3, 12.860, 1e-3);
  assert_near (hut_beam_even_sag_m (HUT_BEAM_CANTILEVER, 0.5, 1, bending) * 1e3, 2.4113, 1e-4);
  assert_true (isnan (hut_beam_even_sag_m (HUT_BEAM_SUPPORTED, 0.5, 1, 0)));
}

static void
without_splices_the_sag_is_the_plain_one (void **state)
{
  assert_near (hut_beam_spliced_sag_m (0.8, 100, 50, NULL, 0),
               hut_beam_even_sag_m (HUT_BEAM_SUPPORTED, 0.8, 100, 50), 1e-12);
}

static void
a_splice_in_the_middle_adds_w_l3_over_32_k (void **state)
{
  /* M = w L2 / 8, kink M / k, sag in the middle kink L / 4: 100 0.8^3 / (32 20) = 0.08 m. */
  const HutSpliceHinge splice = { 0.4, 20 };
  const double plain_m = hut_beam_even_sag_m (HUT_BEAM_SUPPORTED, 0.8, 100, 50);

  assert_near (hut_beam_spliced_sag_m (0.8, 100, 50, &splice, 1), plain_m + 0.08, 1e-12);
}

static void
a_stiffer_strap_and_a_splice_nearer_the_end_sag_less (void **state)
{
  const HutSpliceHinge soft = { 0.4, 20 }, stiff = { 0.4, 40 }, aside = { 0.1, 20 },
                       end = { 0, 20 };
  const double soft_m = hut_beam_spliced_sag_m (0.8, 100, 50, &soft, 1);

  assert_true (hut_beam_spliced_sag_m (0.8, 100, 50, &stiff, 1) < soft_m);
  assert_true (hut_beam_spliced_sag_m (0.8, 100, 50, &aside, 1) < soft_m);
  assert_near (hut_beam_spliced_sag_m (0.8, 100, 50, &end, 1),
               hut_beam_even_sag_m (HUT_BEAM_SUPPORTED, 0.8, 100, 50), 1e-12);
}

static void
a_strap_as_stiff_as_its_bending_over_the_stretch (void **state)
{
  /* E I of 100 x 6 mm at 9 GPa = 16.2 N m2, over 40 mm: 405 N m/rad. */
  assert_near (hut_strap_stiffness_nm (9e9, 0.1, 0.006, 0.04), 405, 1e-9);
  assert_true (isnan (hut_strap_stiffness_nm (9e9, 0.1, 0.006, 0)));
}

static void
a_splice_beside_the_beam_or_without_stiffness_gives_no_number (void **state)
{
  const HutSpliceHinge beside = { 0.9, 20 }, loose = { 0.4, 0 };

  assert_true (isnan (hut_beam_spliced_sag_m (0.8, 100, 50, &beside, 1)));
  assert_true (isnan (hut_beam_spliced_sag_m (0.8, 100, 50, &loose, 1)));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (strip_of_20_by_6_mm_bends_as_worked_out),
    cmocka_unit_test (without_splices_the_sag_is_the_plain_one),
    cmocka_unit_test (a_splice_in_the_middle_adds_w_l3_over_32_k),
    cmocka_unit_test (a_stiffer_strap_and_a_splice_nearer_the_end_sag_less),
    cmocka_unit_test (a_strap_as_stiff_as_its_bending_over_the_stretch),
    cmocka_unit_test (a_splice_beside_the_beam_or_without_stiffness_gives_no_number),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
