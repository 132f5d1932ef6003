/* tests/draw/test-engineering-plot.c: the curves that the engineering shows.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-engineering-plot.h"
#include "design/hut-file.h"
#include "hut-assert.h"

static HutEngineering *
reckon (const char *example)
{
  g_autoptr(GError) error = NULL;
  HutDesign *design = hut_example_load (example, &error);
  HutAssembly *assembly = hut_assembly_new (design);
  HutPartSet *parts = hut_part_set_new (assembly);
  HutEngineering *all = hut_engineering_new (assembly, parts);

  hut_part_set_free (parts);
  hut_assembly_free (assembly);
  hut_design_free (design);
  return all;
}

/* On both curves, to the distance of their points. */
static void
the_operating_point_lies_on_both_curves (void **state)
{
  g_autoptr(HutEngineering) all = reckon ("printer");
  g_autoptr(HutPlot) plot = hut_engineering_plot_air (all, NULL, ".");
  const HutPoint at = g_array_index (plot->marks, HutPlotMark, 0).at;

  assert_int_equal (plot->series->len, 2);
  for (guint i = 0; i < plot->series->len; i++)
    {
      const GArray *points = g_array_index (plot->series, HutPlotSeries, i).points;

      for (guint k = 1; k < points->len; k++)
        {
          const HutPoint a = g_array_index (points, HutPoint, k - 1);
          const HutPoint b = g_array_index (points, HutPoint, k);

          if (a.u <= at.u && at.u <= b.u)
            assert_near (at.v, a.v + (b.v - a.v) * (at.u - a.u) / (b.u - a.u),
                         0.02 * MAX (a.v, b.v));
        }
    }
}

static void
the_lid_has_a_curve_with_and_one_without_springs (void **state)
{
  g_autoptr(HutEngineering) all = reckon ("engraver");
  g_autoptr(HutPlot) plot = hut_engineering_plot_lid (all, NULL, ".");

  assert_int_equal (plot->series->len, 2);
  assert_int_equal (plot->marks->len, 1);
}

static void
a_lid_that_turns_level_and_a_design_without_fan_have_no_plot (void **state)
{
  g_autoptr(HutEngineering) router = reckon ("mini-router");

  assert_null (hut_engineering_plot_lid (router, NULL, "."));
  assert_null (hut_engineering_plot_air (router, NULL, "."));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (the_operating_point_lies_on_both_curves),
    cmocka_unit_test (the_lid_has_a_curve_with_and_one_without_springs),
    cmocka_unit_test (a_lid_that_turns_level_and_a_design_without_fan_have_no_plot),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
