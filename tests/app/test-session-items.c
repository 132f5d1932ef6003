/* tests/app/test-session-items.c: bodies, services, stocks and windows come and go, and what is
 * left can be saved. SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-session-items.h"
#include "design/hut-file.h"
#include "hut-assert.h"
#include <string.h>

/* No file may hold what could not be opened again: the writer's text must be readable. */
static void
assert_can_be_saved (HutSession *session)
{
  g_autofree char *text = hut_design_to_xml (hut_session_get_design (session));
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) read = hut_design_from_xml (text, strlen (text), "test", &error);

  assert_ok (read != NULL, error);
  assert_true (hut_design_equal (read, hut_session_get_design (session)));
}

static HutSession *
new_session (void)
{
  return hut_session_new (hut_design_new ());
}

static void
what_is_added_can_be_saved_and_undone (void **state)
{
  g_autoptr(HutSession) session = new_session ();
  g_autoptr(HutDesign) before = hut_design_copy (hut_session_get_design (session));
  g_autofree char *body = hut_session_add_body (session);
  g_autofree char *second_body = hut_session_add_body (session);
  g_autofree char *service = hut_session_add_service (session);
  g_autofree char *stock = hut_session_add_stock (session);
  g_autofree char *window = hut_session_add_window (session);
  const HutDesign *design = hut_session_get_design (session);

  assert_non_null (hut_design_get_body (design, body));
  assert_string_not_equal (body, second_body);
  assert_non_null (hut_design_get_service (design, service));
  assert_non_null (hut_design_get_stock (design, stock));
  assert_non_null (hut_design_get_window (design, window));
  assert_string_equal (hut_session_get_selected (session), window);
  assert_can_be_saved (session);
  for (int i = 0; i < 5; i++)
    hut_session_undo (session);
  assert_true (hut_design_equal (hut_session_get_design (session), before));
}

static gboolean
anchor_opening_to_body (HutDesign *design,
                        gpointer user_data)
{
  HutOpening *opening
      = hut_opening_new ("vent", (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_FRONT }, HUT_SHAPE_ROUND);

  opening->at.u_anchor = HUT_ANCHOR_BODY;
  opening->at.u_offset_mm = 12.0;
  opening->at.v_offset_mm = -7.0;
  opening->at.body = g_strdup (user_data);
  g_ptr_array_add (design->openings, opening);
  return TRUE;
}

static void
an_opening_measured_from_a_removed_body_stays_where_it_was (void **state)
{
  g_autoptr(HutSession) session = new_session ();
  g_autofree char *body = hut_session_add_body (session);
  HutPoint before = { 0 }, after = { 0 };
  const HutOpening *opening;

  hut_session_edit (session, "Vent", anchor_opening_to_body, body);
  opening = hut_design_get_opening (hut_session_get_design (session), "vent");
  assert_true (hut_assembly_locate (hut_session_get_assembly (session), &opening->at, &before));
  assert_true (hut_session_remove_body (session, body));
  opening = hut_design_get_opening (hut_session_get_design (session), "vent");
  assert_int_equal (opening->at.u_anchor, HUT_ANCHOR_CENTRE);
  assert_null (opening->at.body);
  assert_true (hut_assembly_locate (hut_session_get_assembly (session), &opening->at, &after));
  /* The new body lies within the machine that is there: the enclosure does not change with it. */
  assert_near_mm (after.u, before.u, 1e-9);
  assert_near_mm (after.v, before.v, 1e-9);
  assert_can_be_saved (session);
}

static gboolean
serve (HutDesign *design,
       gpointer user_data)
{
  HutOpening *opening
      = hut_opening_new ("hole", (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_BACK }, HUT_SHAPE_ROUND);

  opening->serves = g_strdup (user_data);
  g_ptr_array_add (design->openings, opening);
  return TRUE;
}

static void
an_opening_of_a_removed_service_serves_nothing (void **state)
{
  g_autoptr(HutSession) session = new_session ();
  g_autofree char *service = hut_session_add_service (session);

  hut_session_edit (session, "Hole", serve, service);
  assert_true (hut_session_remove_service (session, service));
  assert_null (hut_design_get_opening (hut_session_get_design (session), "hole")->serves);
  assert_can_be_saved (session);
}

static gboolean
cut_lid_top_from (HutDesign *design,
                  gpointer user_data)
{
  design->shell.stock[HUT_SHELL_LID][HUT_SIDE_TOP] = g_strdup (user_data);
  return TRUE;
}

static void
what_was_cut_from_a_removed_stock_gets_the_stock_of_all_panels (void **state)
{
  g_autoptr(HutSession) session = new_session ();
  g_autofree char *stock = hut_session_add_stock (session);
  g_autofree char *window = hut_session_add_window (session);
  g_autofree char *glazing
      = g_strdup (hut_design_get_window (hut_session_get_design (session), window)->glazing_stock);
  const HutDesign *design;

  hut_session_edit (session, "Lid", cut_lid_top_from, stock);
  assert_true (hut_session_remove_stock (session, stock));
  assert_null (hut_session_get_design (session)->shell.stock[HUT_SHELL_LID][HUT_SIDE_TOP]);
  assert_true (hut_session_remove_stock (session, glazing));
  design = hut_session_get_design (session);
  assert_string_equal (hut_design_get_window (design, window)->glazing_stock,
                       design->shell.default_stock);
  assert_can_be_saved (session);
}

static void
the_stock_of_all_panels_has_an_heir_and_the_last_stock_stays (void **state)
{
  g_autoptr(HutSession) session = new_session ();
  guint count = hut_session_get_design (session)->stocks->len;

  for (; count > 1; count--)
    {
      g_autofree char *stock = g_strdup (hut_session_get_design (session)->shell.default_stock);

      assert_true (hut_session_remove_stock (session, stock));
      assert_non_null (hut_design_get_stock (
          hut_session_get_design (session), hut_session_get_design (session)->shell.default_stock));
      assert_can_be_saved (session);
    }
  g_autofree char *last = g_strdup (hut_session_get_design (session)->shell.default_stock);
  assert_false (hut_session_remove_stock (session, last));
  assert_int_equal (hut_session_get_design (session)->stocks->len, 1);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (what_is_added_can_be_saved_and_undone),
    cmocka_unit_test (an_opening_measured_from_a_removed_body_stays_where_it_was),
    cmocka_unit_test (an_opening_of_a_removed_service_serves_nothing),
    cmocka_unit_test (what_was_cut_from_a_removed_stock_gets_the_stock_of_all_panels),
    cmocka_unit_test (the_stock_of_all_panels_has_an_heir_and_the_last_stock_stays),
  };

  return cmocka_run_group_tests_name ("session-items", tests, NULL, NULL);
}
