/* tests/engineering/test-engineering.c: each change of a design moves the results the right way.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "engineering/hut-engineering.h"
#include "catalog/hut-catalog.h"
#include "hut-assert.h"
#include "hut-random-design.h"
#include "hut-random.h"
#include <string.h>

#define SEEDS 12
#define S_PER_H 3600.0
#define CP_J_KGK 1005.0 /* dry air: the constant of the physics reference */

static HutEngineering *
reckon (const HutDesign *design)
{
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);

  return hut_engineering_new (assembly, parts);
}

/* NAN where it is not there or not known. */
static double
value_of (const HutDesign *design,
          const char *id)
{
  g_autoptr(HutEngineering) all = reckon (design);
  const HutFigure *figure = hut_engineering_get (all, id);

  return figure != NULL && figure->has_value ? figure->value : NAN;
}

/* A random design with a fan on its back, a way in on its left, and a duct. */
static HutDesign *
blown_design (guint64 seed)
{
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();
  HutDesign *design = hut_random_design_with (seed, 0);
  const HutItem *item = hut_catalog_get (catalog, "fan-80x25");
  const HutPanelId back = { HUT_SHELL_BASE, HUT_SIDE_BACK };
  HutOpening *intake = hut_opening_new ("way-in", (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_LEFT },
                                        HUT_SHAPE_ROUND);

  intake->diameter_mm = 40;
  g_ptr_array_add (design->openings, intake);
  g_ptr_array_add (design->hardware,
                   hut_hardware_new ("blower", hut_design_keep_item (design, item), back));
  design->shell.duct = (HutDuct) { HUT_DUCT_HOSE, 100, 3000, 2, HUT_EXIT_OPEN };
  design->machine.work.power_w = 100;
  design->machine.work.lamp_w = 0;
  design->machine.work.warmest_c = 45;
  design->room_mm.temperature_c = 22;
  return design;
}

static gboolean
blows (const HutDesign *design)
{
  return isfinite (value_of (design, "air.flow"));
}

static void
a_wider_duct_moves_more_air_at_less_speed (void **state)
{
  guint n = 0;

  for (guint64 seed = 0; seed < hut_random_seed_count (SEEDS); seed++)
    {
      g_autoptr(HutDesign) design = blown_design (seed);
      double flow, speed;

      if (!blows (design))
        continue;
      n++;
      flow = value_of (design, "air.flow");
      speed = value_of (design, "air.duct-speed");
      design->shell.duct.diameter_mm = 150;
      assert_true (value_of (design, "air.flow") > flow);
      assert_true (value_of (design, "air.duct-speed") < speed);
    }
  assert_true (n > 0);
}

static void
a_bend_more_and_a_metre_more_take_flow (void **state)
{
  for (guint64 seed = 0; seed < hut_random_seed_count (SEEDS); seed++)
    {
      g_autoptr(HutDesign) design = blown_design (seed);
      double flow, bent;

      if (!blows (design))
        continue;
      flow = value_of (design, "air.flow");
      design->shell.duct.bends++;
      bent = value_of (design, "air.flow");
      assert_true (bent < flow);
      design->shell.duct.length_mm += 1000;
      assert_true (value_of (design, "air.flow") < bent);
    }
}

static void
closing_the_way_in_takes_flow_and_warms_the_inside (void **state)
{
  guint n = 0;

  for (guint64 seed = 0; seed < hut_random_seed_count (SEEDS); seed++)
    {
      g_autoptr(HutDesign) design = blown_design (seed);
      double flow, rise, rest;

      if (!blows (design))
        continue;
      flow = value_of (design, "air.flow");
      rise = value_of (design, "heat.fan");
      g_ptr_array_remove_index (design->openings, design->openings->len - 1);
      rest = value_of (design, "air.flow");
      assert_false (rest > flow);
      if (!(rest < flow))
        continue;
      n++;
      assert_true (value_of (design, "heat.fan") > rise);
    }
  assert_true (n > 0);
}

static void
dark_walls_leave_less_stray_light (void **state)
{
  guint n = 0;

  for (guint64 seed = 0; seed < hut_random_seed_count (SEEDS); seed++)
    {
      g_autoptr(HutDesign) design = blown_design (seed);
      HutWork *work = &design->machine.work;
      double bare;

      work->glow = HUT_GLOW_LASER;
      work->laser_w = 10;
      work->laser_nm = 445;
      work->exposure_s = 100;
      design->shell.finishing.inside = HUT_COAT_BARE;
      bare = value_of (design, "light.walls");
      if (!isfinite (bare))
        continue;
      n++;
      design->shell.finishing.inside = HUT_COAT_BLACK;
      assert_true (value_of (design, "light.walls") < bare);
      design->shell.finishing.inside = HUT_COAT_WHITE;
      assert_true (value_of (design, "light.walls") > bare);
    }
  assert_true (n > 0);
}

static void
thin_air_and_more_watts_make_it_warmer (void **state)
{
  for (guint64 seed = 0; seed < hut_random_seed_count (SEEDS); seed++)
    {
      g_autoptr(HutDesign) design = blown_design (seed);
      double rise;

      if (!blows (design))
        continue;
      design->room_mm.altitude_m = 0;
      rise = value_of (design, "heat.fan");
      design->room_mm.altitude_m = 2500;
      assert_true (value_of (design, "heat.fan") > rise);
      design->machine.work.power_w *= 2;
      assert_true (value_of (design, "heat.fan") > 2 * rise);
    }
}

/* dT = P / (rho cp Q + sum U A), energy balance of any text, with what the figure says was put in.
 * */
static void
heat_is_the_balance_of_its_own_inputs (void **state)
{
  g_autoptr(HutDesign) design = blown_design (1);
  g_autoptr(HutEngineering) all = reckon (design);
  const HutFigure *figure = hut_engineering_get (all, "heat.still");
  const HutFigureInput *in = figure->inputs;

  assert_near (figure->value,
               in[0].value / (in[2].value * CP_J_KGK * in[1].value / S_PER_H + in[3].value), 1e-9);
  assert_near (in[0].value, 100, 0);
  assert_near (in[1].value, 0, 0);
}

static void
what_is_unknown_is_asked_for_and_not_guessed (void **state)
{
  static const char *const ids[]
      = { "air.flow", "heat.still", "light.source", "noise.outside", "finish.inside-buy" };
  g_autoptr(HutDesign) design = blown_design (1);
  g_autoptr(HutEngineering) all = NULL;

  design->shell.duct = hut_duct_unknown;
  design->machine.work = hut_work_unknown;
  design->shell.finishing = (HutFinishing) { HUT_COAT_UNKNOWN, HUT_COAT_UNKNOWN };
  all = reckon (design);
  for (guint i = 0; i < G_N_ELEMENTS (ids); i++)
    {
      const HutFigure *figure = hut_engineering_get (all, ids[i]);

      assert_non_null (figure);
      if (figure->known || figure->has_value)
        fail_msg ("%s is known", ids[i]);
      assert_non_null (figure->step);
    }
}

/* Words that would declare something harmless never stand in what a figure says. */
static void
nothing_is_called_safe (void **state)
{
  for (guint64 seed = 0; seed < hut_random_seed_count (SEEDS); seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autoptr(HutEngineering) all = reckon (design);

      for (guint i = 0; i < all->figures->len; i++)
        {
          const HutFigure *figure = &g_array_index (all->figures, HutFigure, i);
          g_autofree char *words = hut_figure_dup_words (figure, NULL);

          assert_null (strstr (words, "safe "));
          assert_null (strstr (words, "harmless"));
          assert_true (figure->known || figure->step != NULL);
          assert_true (!figure->has_value || isfinite (figure->value));
        }
    }
}

static void
a_laser_always_comes_with_the_caution (void **state)
{
  g_autoptr(HutDesign) design = blown_design (2);
  g_autoptr(HutEngineering) all = NULL;

  design->machine.work = hut_work_unknown;
  design->machine.work.glow = HUT_GLOW_LASER;
  all = reckon (design);
  assert_non_null (hut_engineering_get (all, "light.caution"));
  assert_non_null (strstr (hut_engineering_get (all, "light.caution")->words, "certifies"));
  assert_false (hut_engineering_get (all, "light.density")->known);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_wider_duct_moves_more_air_at_less_speed),
    cmocka_unit_test (a_bend_more_and_a_metre_more_take_flow),
    cmocka_unit_test (closing_the_way_in_takes_flow_and_warms_the_inside),
    cmocka_unit_test (dark_walls_leave_less_stray_light),
    cmocka_unit_test (thin_air_and_more_watts_make_it_warmer),
    cmocka_unit_test (heat_is_the_balance_of_its_own_inputs),
    cmocka_unit_test (what_is_unknown_is_asked_for_and_not_guessed),
    cmocka_unit_test (nothing_is_called_safe),
    cmocka_unit_test (a_laser_always_comes_with_the_caution),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
