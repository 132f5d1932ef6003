/* tests/app/test-session-hardware.c: hardware is put, turned, mounted from the other face, and cured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-session-hardware.h"
#include "app/hut-session-items.h"
#include "design/hut-file.h"
#include "hut-assert.h"
#include <string.h>

static const HutPanelId base_back = { HUT_SHELL_BASE, HUT_SIDE_BACK };

static HutItem *
new_socket (gboolean from_inside)
{
  HutItem *item = hut_item_new ("socket");
  const HutItemCut cut = { .role = HUT_CUT_BODY, .shape = HUT_CUT_ROUND, .diameter_mm = 20.0 };

  item->group = HUT_ITEM_CONNECTOR;
  item->from_inside = from_inside;
  g_array_append_val (item->cuts, cut);
  return item;
}

static HutSession *
new_session (gboolean from_inside)
{
  HutSession *session = hut_session_new (hut_design_new ());
  g_autoptr(HutItem) item = new_socket (from_inside);

  assert_non_null (
      hut_session_add_hardware (session, item, "Socket", base_back, (HutPoint) { 100, 60 }));
  return session;
}

static void
assert_can_be_saved (HutSession *session)
{
  g_autofree char *text = hut_design_to_xml (hut_session_get_design (session));
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) read = hut_design_from_xml (text, strlen (text), "test", &error);

  assert_ok (read != NULL, error);
}

static const HutHardware *
first (HutSession *session)
{
  return g_ptr_array_index (hut_session_get_design (session)->hardware, 0);
}

static void
hardware_brings_its_item_and_one_undo_takes_both_back (void **state)
{
  g_autoptr(HutSession) session = new_session (TRUE);
  const HutPlacedHole *hole;

  assert_string_equal (hut_session_get_selected (session), "socket");
  assert_string_equal (first (session)->name, "Socket");
  assert_int_equal (hut_session_get_design (session)->items->len, 1);
  hole = hut_assembly_get_hole (hut_session_get_assembly (session), "socket");
  assert_non_null (hole);
  assert_near_mm (hole->centre.u, 100.0, 1e-9);
  assert_near_mm (hole->bounds.u1 - hole->bounds.u0, 20.0, 1e-9);
  assert_can_be_saved (session);
  hut_session_undo (session);
  assert_int_equal (hut_session_get_design (session)->hardware->len, 0);
  assert_int_equal (hut_session_get_design (session)->items->len, 0);
}

static void
flip_needs_an_item_that_can_be_mounted_from_there (void **state)
{
  g_autoptr(HutSession) both = new_session (TRUE);
  g_autoptr(HutSession) outside = new_session (FALSE);

  assert_true (hut_session_flip_selected (both));
  assert_int_equal (first (both)->face, HUT_FACE_INSIDE);
  assert_true (hut_session_flip_selected (both));
  assert_int_equal (first (both)->face, HUT_FACE_OUTSIDE);
  assert_false (hut_session_flip_selected (outside));
  assert_int_equal (first (outside)->face, HUT_FACE_OUTSIDE);
}

static void
four_turns_are_none (void **state)
{
  g_autoptr(HutSession) session = new_session (TRUE);

  for (int i = 0; i < 4; i++)
    assert_true (hut_session_turn_selected (session));
  assert_near (first (session)->turn_deg, 0.0, 0.0);
  hut_session_undo (session);
  assert_near (first (session)->turn_deg, 270.0, 0.0);
}

static void
copy_and_removal_leave_what_can_be_saved (void **state)
{
  g_autoptr(HutSession) session = new_session (TRUE);

  assert_true (hut_session_duplicate_selected (session));
  assert_int_equal (hut_session_get_design (session)->hardware->len, 2);
  assert_string_equal (hut_session_get_selected (session), "socket-2");
  assert_true (hut_session_nudge_selected (session, 5.0, 0.0));
  assert_can_be_saved (session);
  assert_true (hut_session_delete_selected (session));
  assert_int_equal (hut_session_get_design (session)->items->len, 1);
  hut_session_select (session, "socket");
  assert_true (hut_session_delete_selected (session));
  assert_int_equal (hut_session_get_design (session)->items->len, 0);
}

static void
fix_is_one_undo_step (void **state)
{
  g_autoptr(HutSession) session = new_session (TRUE);
  const double before_mm = first (session)->at.u_offset_mm;
  HutFinding finding = { .fix = { .kind = HUT_FIX_MOVE, .item = "socket", .du_mm = 12.5 } };

  assert_true (hut_session_apply_fix (session, &finding));
  assert_near_mm (first (session)->at.u_offset_mm, before_mm + 12.5, 1e-9);
  hut_session_undo (session);
  assert_near_mm (first (session)->at.u_offset_mm, before_mm, 0.0);
  finding.fix.item = "nothing";
  assert_false (hut_session_apply_fix (session, &finding));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (hardware_brings_its_item_and_one_undo_takes_both_back),
    cmocka_unit_test (flip_needs_an_item_that_can_be_mounted_from_there),
    cmocka_unit_test (four_turns_are_none),
    cmocka_unit_test (copy_and_removal_leave_what_can_be_saved),
    cmocka_unit_test (fix_is_one_undo_step),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
