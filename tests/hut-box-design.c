/* tests/hut-box-design.c: a plain design whose derived numbers can be worked out by hand.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-box-design.h"

void
hut_box_design_set_wall (HutDesign *design,
                         double thickness_mm)
{
  HutStock *wall = hut_design_get_stock (design, "wall");

  g_array_set_size (wall->readings_mm, 0);
  g_array_append_val (wall->readings_mm, thickness_mm);
}

static void
set_shell (HutShell *shell)
{
  g_free (shell->default_stock);
  shell->default_stock = g_strdup ("wall");
  for (int id = 0; id < HUT_SHELL_COUNT; id++)
    for (int side = 0; side < HUT_SIDE_COUNT; side++)
      g_clear_pointer (&shell->stock[id][side], g_free);
  shell->fitted = FALSE;
  shell->inside_mm = (HutVec3) { 300, 200, 150 };
  shell->lid = HUT_LID_HOOD;
  shell->hinge = HUT_HINGE_BACK;
  shell->seam_height_mm = 90;
  shell->seam_gap_mm = 1;
  shell->hinge_offset_mm = 0;
  shell->bottom = HUT_BOTTOM_JOINTED;
  shell->ledge_mm = 15;
}

HutDesign *
hut_box_design_new (void)
{
  HutDesign *design = hut_design_new ();
  HutStock *wall = hut_stock_new ("wall");
  HutBody *body = hut_body_new ("block", HUT_BODY_STATIC);

  g_ptr_array_set_size (design->windows, 0);
  g_ptr_array_set_size (design->openings, 0);
  g_ptr_array_set_size (design->machine.bodies, 0);
  g_ptr_array_set_size (design->machine.services, 0);
  g_ptr_array_set_size (design->stocks, 0);

  wall->smallest_web_mm = 6;
  wall->kerf_mm = 0.2;
  wall->allowance_mm = 0;
  wall->sheet_width_mm = wall->sheet_depth_mm = 3000;
  g_ptr_array_add (design->stocks, wall);
  hut_box_design_set_wall (design, 6.0);

  body->box = (HutBox3) { { 0, 0, 0 }, { 100, 80, 60 } };
  g_ptr_array_add (design->machine.bodies, body);
  design->machine.clearance_mm = (HutClearance) { 20, 20, 20, 20, 20 };

  design->cutter.kind = HUT_CUTTER_LASER;
  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 2000;
  design->cutter.margin_mm = 0;
  design->cutter.any_angle = FALSE;
  design->joints.finger_ratio = 3;
  design->joints.splice_length_ratio = 3;
  design->joints.splice_width_ratio = 2;
  design->joints.straps = TRUE;
  design->joints.strap_ratio = 15;
  set_shell (&design->shell);
  return design;
}

HutOpening *
hut_box_design_add_opening (HutDesign *design,
                            HutPanelId panel,
                            HutShape shape)
{
  g_autofree char *id = hut_design_dup_free_id (design, "opening");
  HutOpening *opening = hut_opening_new (id, panel, shape);

  opening->at.u_anchor = opening->at.v_anchor = HUT_ANCHOR_CENTRE;
  opening->at.u_offset_mm = opening->at.v_offset_mm = 0;
  g_ptr_array_add (design->openings, opening);
  return opening;
}

HutWindow *
hut_box_design_add_window (HutDesign *design,
                           HutPanelId panel)
{
  g_autofree char *id = hut_design_dup_free_id (design, "window");
  HutWindow *window = hut_window_new (id, panel);

  window->at.u_anchor = window->at.v_anchor = HUT_ANCHOR_CENTRE;
  window->at.u_offset_mm = window->at.v_offset_mm = 0;
  window->width_mm = 120;
  window->height_mm = 40;
  window->radius_mm = 5;
  window->overlap_mm = 15;
  window->glazing_bought = FALSE;
  g_free (window->glazing_stock);
  g_free (window->frame_stock);
  window->glazing_stock = g_strdup ("wall");
  window->frame_stock = g_strdup ("wall");
  g_ptr_array_add (design->windows, window);
  return window;
}
