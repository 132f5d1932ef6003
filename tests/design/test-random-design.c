/* tests/design/test-random-design.c: random designs are valid, varied, and the same on any machine.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "design/hut-file.h"
#include "hut-assert.h"
#include "hut-random-design.h"
#include <string.h>

#define N_DESIGNS 1500

static void
random_numbers_are_those_of_the_published_method (void **state)
{
  HutRandom random = { { 1, 2, 3, 4 } };

  /* by hand from the definition: rotate (2 * 5, 7) * 9 = 11520; then s[1] is 2 ^ (3 ^ 1) = 0, so
   * that rotate (0, 7) * 9 = 0 */
  assert_true (hut_random_next (&random) == 11520);
  assert_true (hut_random_next (&random) == 0);
}

static void
the_same_seed_gives_the_same_design_everywhere (void **state)
{
  g_autoptr(GChecksum) checksum = g_checksum_new (G_CHECKSUM_SHA256);

  for (guint64 seed = 0; seed < 20; seed++)
    {
      /* without hardware, whose items are the catalogue's */
      g_autoptr(HutDesign) design = hut_random_design_with (
          seed, HUT_RANDOM_OPENINGS | HUT_RANDOM_WINDOWS | HUT_RANDOM_WILD | HUT_RANDOM_BAFFLES);
      g_autofree char *text = hut_design_to_xml (design);

      g_checksum_update (checksum, (const guchar *) text, (gssize) strlen (text));
    }
  /* Of the first run, by gcc and clang; changes with the generator and the file format only. */
  assert_string_equal (g_checksum_get_string (checksum),
                       "13c20bdc1c033d78dba44c86b963e39f600dabe848c3709fab19ee0e6f546787");
}

static void
hardware_is_of_every_group_and_span_on_both_faces (void **state)
{
  guint n_groups[HUT_ITEM_GROUP_COUNT] = { 0 }, n_spans[3] = { 0 }, n_faces[2] = { 0 };
  guint n_ways[3] = { 0 };

  for (guint64 seed = 0; seed < N_DESIGNS; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autoptr(HutDesign) again = hut_random_design (seed);

      assert_true (hut_design_equal (design, again));
      for (guint i = 0; i < design->hardware->len; i++)
        {
          const HutHardware *hardware = g_ptr_array_index (design->hardware, i);
          const HutItem *item = hut_design_get_hardware_item (design, hardware);

          n_groups[item->group]++;
          n_spans[item->span]++;
          n_faces[hardware->face]++;
          n_ways[hardware->pocket_way]++;
        }
    }
  for (int group = 0; group < HUT_ITEM_GROUP_COUNT; group++)
    assert_true (n_groups[group] > N_DESIGNS / 100);
  assert_true (MIN (n_spans[HUT_SPAN_HINGE], n_spans[HUT_SPAN_SEAM]) > N_DESIGNS / 50);
  assert_true (MIN (n_faces[0], n_faces[1]) > N_DESIGNS / 10);
  assert_true (MIN (n_ways[0], MIN (n_ways[1], n_ways[2])) > N_DESIGNS / 4);
}

static void
designs_are_varied (void **state)
{
  guint n_hinges[4][4] = { { 0 } }, n_bottoms[5] = { 0 }, n_shapes[4] = { 0 }, n_cutters[2] = { 0 };
  guint n_windows = 0, n_fitted = 0, n_mixed = 0;

  for (guint64 seed = 0; seed < N_DESIGNS; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      const HutShell *shell = &design->shell;

      n_hinges[shell->lid][shell->hinge]++;
      n_bottoms[shell->bottom]++;
      n_cutters[design->cutter.kind]++;
      n_windows += design->windows->len;
      n_fitted += shell->fitted != FALSE;
      n_mixed += design->stocks->len > 2;
      for (guint i = 0; i < design->openings->len; i++)
        n_shapes[((HutOpening *) g_ptr_array_index (design->openings, i))->shape]++;
    }
  for (int lid = 0; lid < 4; lid++)
    for (int hinge = 0; hinge < 4; hinge++)
      if (hut_lid_allows_hinge ((HutLidKind) lid, (HutHinge) hinge))
        assert_true (n_hinges[lid][hinge] > N_DESIGNS / 30);
      else if (lid != HUT_LID_LIFT_OFF)
        assert_int_equal (n_hinges[lid][hinge], 0);
  for (int bottom = 0; bottom < 5; bottom++)
    assert_true (n_bottoms[bottom] > N_DESIGNS / 10);
  for (int shape = 0; shape < 4; shape++)
    assert_true (n_shapes[shape] > N_DESIGNS / 5);
  assert_true (MIN (n_cutters[0], n_cutters[1]) > N_DESIGNS / 4);
  assert_true (n_windows > N_DESIGNS / 4);
  assert_true (n_fitted > N_DESIGNS / 4 && n_fitted < N_DESIGNS * 3 / 4);
  assert_true (n_mixed > N_DESIGNS / 4);
}

static void
sizes_keep_to_their_ranges (void **state)
{
  for (guint64 seed = 0; seed < N_DESIGNS; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      const HutVec3 inside_mm = design->shell.inside_mm;
      const HutBox3 swept = hut_machine_swept (&design->machine);

      assert_true (MIN (inside_mm.x, MIN (inside_mm.y, inside_mm.z)) >= 120.0);
      assert_true (MAX (inside_mm.x, MAX (inside_mm.y, inside_mm.z)) <= 1200.0);
      assert_true (swept.max.x - swept.min.x <= inside_mm.x);
      assert_true (MIN (design->cutter.bed_width_mm, design->cutter.bed_depth_mm) >= 200.0);
      assert_true (MAX (design->cutter.bed_width_mm, design->cutter.bed_depth_mm) <= 1300.0);
      for (guint i = 0; i < design->stocks->len; i++)
        {
          const HutStock *stock = g_ptr_array_index (design->stocks, i);

          assert_true (hut_stock_min_mm (stock) >= 2.5 && hut_stock_max_mm (stock) <= 18.0);
        }
      for (guint i = 0; i < design->openings->len; i++)
        {
          const HutOpening *opening = g_ptr_array_index (design->openings, i);

          assert_true (hut_shell_has_panel (&design->shell, opening->at.panel));
        }
    }
}

static void
flags_choose_what_is_in_a_design (void **state)
{
  for (guint64 seed = 0; seed < 200; seed++)
    {
      g_autoptr(HutDesign) plain = hut_random_design_with (seed, HUT_RANDOM_PLAIN);
      g_autoptr(HutDesign) small
          = hut_random_design_with (seed, HUT_RANDOM_SMALL_BED | HUT_RANDOM_BY_HAND);
      g_autoptr(HutDesign) large
          = hut_random_design_with (seed, HUT_RANDOM_LARGE_BED | HUT_RANDOM_FITTED);
      g_autoptr(HutDesign) one = hut_random_design_with (seed, HUT_RANDOM_ONE_STOCK);
      const HutVec3 inside_mm = small->shell.inside_mm;
      const double largest_mm = MAX (inside_mm.x, MAX (inside_mm.y, inside_mm.z));

      assert_int_equal (plain->openings->len + plain->windows->len, 0);
      assert_false (small->shell.fitted);
      if (largest_mm > 260.0)
        assert_true (MAX (small->cutter.bed_width_mm, small->cutter.bed_depth_mm) < largest_mm);
      assert_true (large->shell.fitted);
      assert_true (MIN (large->cutter.bed_width_mm, large->cutter.bed_depth_mm)
                   >= MAX (large->shell.inside_mm.x, large->shell.inside_mm.z));
      assert_int_equal (one->stocks->len, 2);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (random_numbers_are_those_of_the_published_method),
    cmocka_unit_test (the_same_seed_gives_the_same_design_everywhere),
    cmocka_unit_test (hardware_is_of_every_group_and_span_on_both_faces),
    cmocka_unit_test (designs_are_varied),
    cmocka_unit_test (sizes_keep_to_their_ranges),
    cmocka_unit_test (flags_choose_what_is_in_a_design),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
