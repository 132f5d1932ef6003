/* tests/physics/test-panel-sag.c: tops that sag, by hand.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "hut-box-design.h"
#include "physics/hut-panel-sag.h"
#include "physics/hut-plate-bend.h"
#include "physics/hut-stuff.h"

/* Lid top of the plain box: 312 x 212 x 6, plywood: E 6.96 GPa, creep half as much again. Density
 * 1000. */
#define LOAD_PA (1000 * HUT_GRAVITY_M_S2 * 0.006)
#define MODULUS_PA 6.96e9

typedef struct
{
  HutDesign *design;
  HutAssembly *assembly;
  HutPartSet *parts;
  guint panel;
} Case;

static Case
case_new (gboolean straps)
{
  const HutPanelId lid_top = { HUT_SHELL_LID, HUT_SIDE_TOP };
  Case self = { .design = hut_box_design_new () };
  HutStock *wall = hut_design_get_stock (self.design, "wall");

  self.design->shell.lid = HUT_LID_TOP;
  self.design->joints.straps = straps;
  wall->density_kg_m3 = 1000;
  wall->material = HUT_MATERIAL_PLYWOOD;
  self.assembly = hut_assembly_new (self.design);
  self.parts = hut_part_set_new (self.assembly);
  self.panel = (guint)hut_assembly_find_panel (self.assembly, lid_top);
  return self;
}

static void
case_clear (Case *self)
{
  hut_part_set_free (self->parts);
  hut_assembly_free (self->assembly);
  hut_design_free (self->design);
}

static void
add_splice (Case *self,
            gboolean vertical,
            double at_mm)
{
  const HutSplice splice = {
    .panel = self->panel, .of = HUT_PART_PANEL, .vertical = vertical, .at_mm = at_mm, .reach_mm = 9
  };

  g_array_append_val (self->parts->splices, splice);
}

static double
strip_m (double span_m)
{
  return 1.5 * 5.0 / 384 * LOAD_PA * span_m * span_m * span_m * span_m
         / (MODULUS_PA * 0.006 * 0.006 * 0.006 / 12);
}

static void
a_whole_top_is_a_plate_on_four_edges (void **state)
{
  Case here = case_new (TRUE);
  const double side = 312.0 / 212, b = 0.212;
  HutPanelSag sag;

  assert_true (hut_panel_sag_find (here.assembly, here.parts, here.panel, &sag));
  assert_near (sag.sag_m,
               1.5 * hut_plate_sag_ratio (HUT_PLATE_SUPPORTED, side, 0.3) * LOAD_PA * b * b * b * b
                   / (MODULUS_PA * 0.006 * 0.006 * 0.006),
               1e-9);
  assert_near (sag.span_m, 0.212, 1e-12);
  case_clear (&here);
}

static void
a_spliced_top_is_a_strip_the_way_that_is_whole (void **state)
{
  Case here = case_new (TRUE);
  HutPanelSag sag;

  /* A splice at u = const leaves the strips along v whole, 212 long. */
  add_splice (&here, TRUE, 156);
  assert_true (hut_panel_sag_find (here.assembly, here.parts, here.panel, &sag));
  assert_near (sag.sag_m, strip_m (0.212), 1e-9);
  assert_near (sag.span_m, 0.212, 1e-12);
  case_clear (&here);
}

static void
a_splice_across_the_short_way_gives_by_its_strap (void **state)
{
  Case here = case_new (TRUE);
  const double stiffness = MODULUS_PA * 0.006 * 0.006 * 0.006 / 12 / 0.018;
  HutPanelSag sag;

  /* At v = const, in the middle of the 212: w L3 / (32 k) more; the long way is whole but sags
   * more. */
  add_splice (&here, FALSE, 106);
  assert_true (hut_panel_sag_find (here.assembly, here.parts, here.panel, &sag));
  assert_near (sag.sag_m,
               strip_m (0.212) + 1.5 * LOAD_PA * 0.212 * 0.212 * 0.212 / (32 * stiffness), 1e-9);
  case_clear (&here);
}

static void
without_straps_only_the_whole_way_carries (void **state)
{
  Case here = case_new (FALSE);
  HutPanelSag sag = { 7, 7 };

  add_splice (&here, FALSE, 106);
  assert_true (hut_panel_sag_find (here.assembly, here.parts, here.panel, &sag));
  assert_near (sag.sag_m, strip_m (0.312), 1e-9);
  assert_near (sag.span_m, 0.312, 1e-12);
  add_splice (&here, TRUE, 156);
  sag.sag_m = 7;
  assert_false (hut_panel_sag_find (here.assembly, here.parts, here.panel, &sag));
  assert_near (sag.sag_m, 7, 0);
  case_clear (&here);
}

static void
unknown_material_gives_no_number (void **state)
{
  Case here = case_new (TRUE);
  HutPanelSag sag;

  ((HutStock *)((HutPanel *)here.assembly->panels->pdata[here.panel])->stock)->material
      = HUT_MATERIAL_OTHER;
  assert_false (hut_panel_sag_find (here.assembly, here.parts, here.panel, &sag));
  assert_true (isnan (hut_stuff_modulus_pa (HUT_MATERIAL_OTHER)));
  case_clear (&here);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_whole_top_is_a_plate_on_four_edges),
    cmocka_unit_test (a_spliced_top_is_a_strip_the_way_that_is_whole),
    cmocka_unit_test (a_splice_across_the_short_way_gives_by_its_strap),
    cmocka_unit_test (without_straps_only_the_whole_way_carries),
    cmocka_unit_test (unknown_material_gives_no_number),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
