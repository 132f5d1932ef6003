/* tests/cli/hut-blocked-design.c: designs that are read without error and must not be cut.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "cli/hut-blocked-design.h"

HutDesign *
hut_sound_design_new (void)
{
  HutDesign *design = hut_design_new ();

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 320.0, 240.0, 200.0 };
  design->shell.lid = HUT_LID_LIFT_OFF;
  design->shell.seam_height_mm = 90.0;
  design->shell.bottom = HUT_BOTTOM_JOINTED;
  g_ptr_array_set_size (design->machine.bodies, 0);
  g_ptr_array_set_size (design->machine.services, 0);
  g_ptr_array_set_size (design->windows, 0);
  g_ptr_array_set_size (design->openings, 0);
  design->cutter.bed_width_mm = 600.0;
  design->cutter.bed_depth_mm = 400.0;
  return design;
}

static HutOpening *
add_round (HutDesign *design,
           const char *id,
           HutShellId shell,
           HutSide side)
{
  HutOpening *opening = hut_opening_new (id, (HutPanelId) { shell, side }, HUT_SHAPE_ROUND);

  opening->diameter_mm = 30.0;
  opening->at.u_anchor = HUT_ANCHOR_CENTRE;
  opening->at.v_anchor = HUT_ANCHOR_CENTRE;
  opening->at.u_offset_mm = 0.0;
  opening->at.v_offset_mm = 0.0;
  g_ptr_array_add (design->openings, opening);
  return opening;
}

static void
put_opening_outside (HutDesign *design)
{
  add_round (design, "vent", HUT_SHELL_BASE, HUT_SIDE_FRONT)->at.u_offset_mm = 900.0;
}

static void
put_opening_over_edge (HutDesign *design)
{
  HutOpening *opening = add_round (design, "vent", HUT_SHELL_BASE, HUT_SIDE_FRONT);

  opening->at.u_anchor = HUT_ANCHOR_START;
}

static void
put_opening_on_missing_panel (HutDesign *design)
{
  add_round (design, "vent", HUT_SHELL_BASE, HUT_SIDE_TOP);
}

static void
put_openings_over_each_other (HutDesign *design)
{
  add_round (design, "vent", HUT_SHELL_BASE, HUT_SIDE_FRONT);
  add_round (design, "vent-2", HUT_SHELL_BASE, HUT_SIDE_FRONT)->at.u_offset_mm = 20.0;
}

static void
shrink_bed (HutDesign *design)
{
  design->cutter.bed_width_mm = 12.0;
  design->cutter.bed_depth_mm = 10.0;
  design->cutter.margin_mm = 4.0;
}

static void
close_bed (HutDesign *design)
{
  design->cutter.margin_mm = 250.0;
}

static void
thicken_walls (HutDesign *design)
{
  HutStock *stock = hut_design_get_stock (design, design->shell.default_stock);
  const double reading_mm = 90.0;

  design->shell.inside_mm = (HutVec3) { 40.0, 40.0, 40.0 };
  g_array_set_size (stock->readings_mm, 0);
  g_array_append_val (stock->readings_mm, reading_mm);
}

static void
fit_to_nothing (HutDesign *design)
{
  design->shell.fitted = TRUE;
}

static void
raise_seam (HutDesign *design)
{
  design->shell.seam_height_mm = 900.0;
}

const HutBlockedDesign hut_blocked_designs[] = {
  { "an opening outside its panel", put_opening_outside, TRUE },
  { "an opening over the edge of its panel", put_opening_over_edge, TRUE },
  { "an opening on a panel that this enclosure has not", put_opening_on_missing_panel, TRUE },
  { "an opening over another one", put_openings_over_each_other, TRUE },
  { "a bed smaller than any part", shrink_bed, FALSE },
  { "a bed that is all margin", close_bed, FALSE },
  { "walls thicker than the box", thicken_walls, FALSE },
  { "fitted to a machine without a body", fit_to_nothing, FALSE },
  { "a seam above the box", raise_seam, FALSE },
  { NULL },
};

HutDesign *
hut_blocked_design_new (const HutBlockedDesign *row)
{
  HutDesign *design = hut_sound_design_new ();

  row->spoil (design);
  return design;
}
