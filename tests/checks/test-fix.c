/* tests/checks/test-fix.c: fixes as edits of a design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-finding.h"
#include "hut-assert.h"
#include "hut-test-item.h"

static const HutPanelId lid_front = { HUT_SHELL_LID, HUT_SIDE_FRONT };

static void
each_fix_changes_what_it_says (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  HutHardware *hardware
      = hut_test_put (design, "switch", hut_test_item_new_switch (), lid_front, 100, 50);
  const HutFix face = { .kind = HUT_FIX_FACE, .item = "switch" };
  const HutFix narrow = { .kind = HUT_FIX_NARROW, .item = "switch", .value_mm = 1.5 };
  const HutFix plate = { .kind = HUT_FIX_PLATE, .item = "switch", .stock = "acrylic" };
  const HutFix bolts = { .kind = HUT_FIX_BOLTS, .item = "switch" };
  const HutFix heads = { .kind = HUT_FIX_PLAIN_HEADS, .item = "switch" };
  const HutFix move = { .kind = HUT_FIX_MOVE, .item = "switch", .du_mm = 2, .dv_mm = -3 };

  const HutFix panel = { .kind = HUT_FIX_PANEL, .item = "switch", .du_mm = 40, .dv_mm = 30,
                         .panel = { HUT_SHELL_BASE, HUT_SIDE_LEFT } };
  const HutFix nowhere = { .kind = HUT_FIX_PANEL, .item = "switch",
                           .panel = { HUT_SHELL_LID, HUT_SIDE_BOTTOM } };

  hardware->sunk = TRUE;
  assert_true (hut_fix_apply (&face, design));
  assert_int_equal (hardware->face, HUT_FACE_INSIDE);
  assert_true (hut_fix_apply (&narrow, design));
  assert_near_mm (hardware->narrow_mm, 1.5, 0.0);
  assert_true (hut_fix_apply (&plate, design));
  assert_int_equal (hardware->pocket_way, HUT_POCKET_PLATE);
  assert_string_equal (hardware->plate_stock, "acrylic");
  assert_true (hut_fix_apply (&bolts, design));
  assert_true (hardware->bolted);
  assert_true (hut_fix_apply (&heads, design));
  assert_false (hardware->sunk);
  assert_true (hut_fix_apply (&move, design));
  assert_near_mm (hardware->at.u_offset_mm, 102.0, 1e-9);
  assert_near_mm (hardware->at.v_offset_mm, 47.0, 1e-9);
  assert_false (hut_fix_apply (&nowhere, design));
  assert_int_equal (hardware->at.panel.side, HUT_SIDE_FRONT);
  assert_true (hut_fix_apply (&panel, design));
  assert_string_equal (hut_panel_id_to_string (hardware->at.panel), "base-left");
  assert_near_mm (hardware->at.u_offset_mm, 40.0, 1e-9);
  assert_near_mm (hardware->at.v_offset_mm, 30.0, 1e-9);
}

static void
fix_of_what_is_gone_changes_nothing (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autoptr(HutDesign) before = hut_design_copy (design);
  static const HutFixKind kinds[] = { HUT_FIX_NONE,  HUT_FIX_FACE,  HUT_FIX_MOVE,       HUT_FIX_NARROW,
                                      HUT_FIX_PLATE, HUT_FIX_BOLTS, HUT_FIX_PLAIN_HEADS,
                                      HUT_FIX_PANEL, HUT_FIX_RELEASE, HUT_FIX_WAY_OUT };

  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    {
      const HutFix fix = { .kind = kinds[i], .item = "gone", .stock = "acrylic" };

      assert_false (hut_fix_apply (&fix, design));
    }
  assert_true (hut_design_equal (design, before));
}

static void
released_part_has_no_spot (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  const HutFix release = { .kind = HUT_FIX_RELEASE, .item = "base-front" };

  g_ptr_array_add (design->spots, hut_spot_new ("base-front"));
  g_ptr_array_add (design->spots, hut_spot_new ("base-back"));
  assert_true (hut_fix_apply (&release, design));
  assert_null (hut_design_get_spot (design, "base-front"));
  assert_non_null (hut_design_get_spot (design, "base-back"));
}

static void
plate_of_a_stock_that_is_gone_is_not_made (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  const HutFix plate = { .kind = HUT_FIX_PLATE, .item = "switch", .stock = "gone" };

  hut_test_put (design, "switch", hut_test_item_new_switch (), lid_front, 100, 50);
  assert_false (hut_fix_apply (&plate, design));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_fix_changes_what_it_says),
    cmocka_unit_test (fix_of_what_is_gone_changes_nothing),
    cmocka_unit_test (released_part_has_no_spot),
    cmocka_unit_test (plate_of_a_stock_that_is_gone_is_not_made),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
