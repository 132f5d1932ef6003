/* tests/checks/test-other-panel.c: hardware that finds no room on its panel goes to another one.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * hut_check_case_design () with 460 x 340 x 240 inside, walls 6. The machine, 320 x 300 x 220, stands 70
 * from the left and right walls and 20 from front and back; 20 are wanted. base-back is 472 x 140,
 * base-left and base-right are 352 x 140. */
#include "config.h"
#include "hut-cure.h"

static const HutPanelId base_back = { HUT_SHELL_BASE, HUT_SIDE_BACK };

/* From outside only, its body 60 x 60 and 25 deep behind the panel: 5 into the machine at the back, and
 * too wide for the 70 - 20 beside it. */
static HutDesign *
new_design (HutHardware **plug)
{
  HutDesign *design = hut_check_case_design ();
  HutItem *item = hut_test_item_new ("plug");

  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 460, 340, 240 };
  hut_test_item_add_round (item, 12.0);
  hut_test_item_add_body (item, HUT_ITEM_BEHIND, 0, (HutRect) { -30, -30, 30, 30 }, 25.0, FALSE);
  item->from_inside = FALSE;
  *plug = hut_test_put (design, "plug", item, base_back, 236, 70);
  return design;
}

static void
it_keeps_its_place_by_share_of_the_panel (void **state)
{
  HutHardware *plug;
  HutDesign *design = new_design (&plug);
  {
    g_autoptr(HutCheckCase) c = hut_check_case_new (hut_design_copy (design));
    const HutFinding *finding = hut_check_case_get (c, "depth.machine", 0);
    g_autofree char *fix = hut_finding_dup_fix_text (finding, NULL, ".");

    assert_string_equal (fix, "Put it on base left");
    /* Half of the width of 352; as high as it was. */
    assert_near_mm (finding->fix.du_mm, 176.0, 1e-9);
    assert_near_mm (finding->fix.dv_mm, 70.0, 1e-9);
  }
  assert_cured (design, "depth.machine", HUT_SEVERITY_BLOCKS, 5.0, 20.0, HUT_FIX_PANEL);
}

static void
what_serves_goes_near_the_machine_s_end (void **state)
{
  HutHardware *plug;
  g_autoptr(HutDesign) design = new_design (&plug);
  HutService *service = hut_service_new ("lead", HUT_SERVICE_LEAD);
  g_autoptr(HutCheckCase) c = NULL;
  const HutFinding *finding;

  /* At the right of the machine; world y = 26 + 200, z = 6 + 80. base-right is seen with its front on
   * the left: u = y. */
  service->at = (HutVec3) { 320, 200, 80 };
  service->line_mm = service->head_width_mm = service->head_height_mm = 8.0;
  g_ptr_array_add (design->machine.services, service);
  plug->serves = g_strdup ("lead");
  c = hut_check_case_new (hut_design_copy (design));
  finding = hut_check_case_get (c, "depth.machine", 0);
  assert_int_equal (finding->fix.kind, HUT_FIX_PANEL);
  assert_string_equal (hut_panel_id_to_string (finding->fix.panel), "base-right");
  assert_near_mm (finding->fix.du_mm, 226.0, 1e-9);
  assert_near_mm (finding->fix.dv_mm, 86.0, 1e-9);
}

static void
where_no_panel_has_room_nothing_is_offered (void **state)
{
  HutHardware *plug;
  HutDesign *design = new_design (&plug);

  /* 20 from each wall now, and from the top. */
  design->shell.inside_mm.x = 360.0;
  plug->at.u_offset_mm = 186.0;
  assert_cured (design, "depth.machine", HUT_SEVERITY_BLOCKS, 5.0, 20.0, HUT_FIX_NONE);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (it_keeps_its_place_by_share_of_the_panel),
    cmocka_unit_test (what_serves_goes_near_the_machine_s_end),
    cmocka_unit_test (where_no_panel_has_room_nothing_is_offered),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
