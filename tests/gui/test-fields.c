/* tests/gui/test-fields.c: what fields take can be saved, and they say what they are.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-checked-entry.h"
#include "app/hut-number-entry.h"
#include "app/hut-session-items.h"
#include "design/hut-file.h"
#include "hut-gui-app.h"
#include <locale.h>
#include <string.h>

/* All widgets of a type below @parent, visible or not. (transfer container) */
static GPtrArray *
find_all (GtkWidget *parent,
          GType type)
{
  GPtrArray *found = g_ptr_array_new ();

  for (GtkWidget *child = gtk_widget_get_first_child (parent); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    {
      g_autoptr(GPtrArray) deeper = find_all (child, type);

      if (g_type_is_a (G_OBJECT_TYPE (child), type))
        g_ptr_array_add (found, child);
      g_ptr_array_extend (found, deeper, NULL, NULL);
    }
  return found;
}

static const char *
id_of (gpointer widget)
{
  const char *id = gtk_buildable_get_buildable_id (GTK_BUILDABLE (widget));

  return id != NULL ? id : G_OBJECT_TYPE_NAME (widget);
}

/* ---- ranges --------------------------------------------------------------------------------- */

/* Types an end of its range into a field. Returns: FALSE when it was not taken */
static gboolean
take_end (HutNumberEntry *entry,
          double end)
{
  char buffer[G_ASCII_DTOSTR_BUF_SIZE];

  g_ascii_formatd (buffer, sizeof buffer, "%.4f", end);
  gtk_editable_set_text (hut_number_entry_get_editable (entry), buffer);
  return hut_number_entry_commit (entry);
}

static void
assert_can_be_saved (HutGuiApp *app,
                     gpointer field,
                     double value)
{
  g_autofree char *text = hut_design_to_xml (hut_session_get_design (app->gui.session));
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) again = hut_design_from_xml (text, strlen (text), "test", &error);

  if (again == NULL)
    fail_msg ("%s takes %g, and then the design cannot be saved: %s", id_of (field), value,
              error->message);
}

/* Each end of each range, one at a time. */
static guint
try_ends (HutGuiApp *app,
          GtkWidget *parent)
{
  g_autoptr(GPtrArray) entries = find_all (parent, HUT_TYPE_NUMBER_ENTRY);
  guint count = 0;

  for (guint i = 0; i < entries->len; i++)
    {
      HutNumberEntry *entry = g_ptr_array_index (entries, i);
      const double ends[]
          = { hut_number_entry_get_lower (entry), hut_number_entry_get_upper (entry) };

      for (guint k = 0; k < G_N_ELEMENTS (ends); k++)
        {
          const gboolean could_undo = hut_session_can_undo (app->gui.session);
          const char *before = hut_session_get_undo_label (app->gui.session);

          assert_true (ends[k] > -G_MAXDOUBLE && ends[k] < G_MAXDOUBLE);
          if (!take_end (entry, ends[k]))
            fail_msg ("%s does not take the end %g of its own range: %s", id_of (entry), ends[k],
                      hut_number_entry_get_problem (entry));
          assert_can_be_saved (app, entry, ends[k]);
          if (hut_session_can_undo (app->gui.session)
              && (!could_undo || before != hut_session_get_undo_label (app->gui.session)))
            hut_session_undo (app->gui.session);
          count++;
        }
    }
  return count;
}

static void
both_ends_of_each_range_can_be_saved (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  guint count;

  hut_gui_app_open (&app, "engraver");
  /* All pages are there, shown or not; the inspector has a form for each kind of item. */
  count = try_ends (&app, app.gui.window);
  hut_session_select (app.gui.session, "intake");
  count += try_ends (&app, app.gui.window);
  hut_session_select (app.gui.session, "data-hole");
  count += try_ends (&app, app.gui.window);
  assert_true (count > 200);
}

static void
an_opening_of_any_shape_can_be_saved_after_a_change_of_shape (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  GtkDropDown *shape;

  hut_gui_app_open (&app, "engraver");
  hut_session_select (app.gui.session, "data-hole");
  shape = GTK_DROP_DOWN (hut_gui_app_find (&app, "shape"));
  for (guint from = HUT_SHAPE_ROUND; from <= HUT_SHAPE_PATTERN; from++)
    for (guint to = HUT_SHAPE_ROUND; to <= HUT_SHAPE_PATTERN; to++)
      {
        gtk_drop_down_set_selected (shape, from);
        gtk_drop_down_set_selected (shape, to);
        assert_int_equal (
            hut_design_get_opening (hut_session_get_design (app.gui.session), "data-hole")->shape,
            to);
        assert_can_be_saved (&app, shape, to);
      }
}

/* ---- choices -------------------------------------------------------------------------------- */

static void
each_choice_of_each_list_can_be_saved (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  g_autoptr(GPtrArray) lists = NULL;
  guint count = 0;

  hut_gui_app_open (&app, "engraver");
  hut_session_select (app.gui.session, "window");
  hut_session_select (app.gui.session, "data-hole");
  lists = find_all (app.gui.window, GTK_TYPE_DROP_DOWN);
  for (guint i = 0; i < lists->len; i++)
    g_object_ref (g_ptr_array_index (lists, i));
  g_ptr_array_set_free_func (lists, g_object_unref);
  for (guint i = 0; i < lists->len; i++)
    {
      GtkDropDown *list = g_ptr_array_index (lists, i);
      const guint before = gtk_drop_down_get_selected (list);

      /* A choice before may have taken away the row that this list was in, and the list of a form
       * that speaks of nothing is empty. */
      if (gtk_widget_get_root (GTK_WIDGET (list)) == NULL || gtk_drop_down_get_model (list) == NULL)
        continue;
      for (guint k = 0; k < g_list_model_get_n_items (gtk_drop_down_get_model (list)); k++, count++)
        {
          gtk_drop_down_set_selected (list, k);
          assert_can_be_saved (&app, list, k);
        }
      gtk_drop_down_set_selected (list, before);
    }
  assert_true (count > 60);
}

static void
changing_the_anchor_does_not_move_the_opening (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  GtkDropDown *across, *upwards;
  HutPoint before, after;

  hut_gui_app_open (&app, "engraver");
  hut_session_select (app.gui.session, "data-hole");
  before = hut_gui_item_at (&app.gui, "data-hole", NULL);
  across = GTK_DROP_DOWN (hut_gui_app_find (&app, "u_anchor"));
  upwards = GTK_DROP_DOWN (hut_gui_app_find (&app, "v_anchor"));
  for (guint anchor = HUT_ANCHOR_START; anchor <= HUT_ANCHOR_BODY; anchor++)
    {
      gtk_drop_down_set_selected (across, anchor);
      gtk_drop_down_set_selected (upwards, HUT_ANCHOR_BODY - anchor);
      after = hut_gui_item_at (&app.gui, "data-hole", NULL);
      assert_near_mm (after.u, before.u, 0.001);
      assert_near_mm (after.v, before.v, 0.001);
      assert_can_be_saved (&app, across, anchor);
    }
}

static void
a_lid_that_cannot_turn_on_the_old_hinge_line_gets_another (void **state)
{
  g_auto(HutGuiApp) app = { 0 };

  hut_gui_app_open (&app, "engraver");
  hut_gui_app_activate (&app, "win.step", g_variant_new_string ("shape"));
  for (guint lid = HUT_LID_HOOD; lid <= HUT_LID_FRONT; lid++)
    {
      const HutShell *shell;

      gtk_drop_down_set_selected (GTK_DROP_DOWN (hut_gui_app_find (&app, "lid")), lid);
      shell = &hut_session_get_design (app.gui.session)->shell;
      assert_int_equal (shell->lid, lid);
      if (lid != HUT_LID_LIFT_OFF)
        assert_true (hut_lid_allows_hinge (shell->lid, shell->hinge));
      /* A lift-off lid has no hinge line to choose. */
      assert_true ((hut_gui_app_look_for (&app, "hinge") != NULL) == (lid != HUT_LID_LIFT_OFF));
    }
}

static void
sizes_by_hand_start_from_what_fitted (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  HutBox3 inside;
  const HutShell *shell;

  hut_gui_app_open (&app, "engraver");
  hut_gui_app_activate (&app, "win.step", g_variant_new_string ("shape"));
  inside = hut_session_get_assembly (app.gui.session)->inside;
  gtk_switch_set_active (GTK_SWITCH (hut_gui_app_find (&app, "fitted")), FALSE);
  shell = &hut_session_get_design (app.gui.session)->shell;
  assert_false (shell->fitted);
  assert_near_mm (shell->inside_mm.x, inside.max.x - inside.min.x, 1e-6);
  assert_near_mm (shell->inside_mm.y, inside.max.y - inside.min.y, 1e-6);
  assert_near_mm (shell->inside_mm.z, inside.max.z - inside.min.z, 1e-6);
  hut_gui_app_find (&app, "inside_x");
}

/* ---- lists of measures ----------------------------------------------------------------------- */

static void
bodies_services_and_stocks_come_and_go_with_their_rows (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  guint body_count, after_count;

  hut_gui_app_open (&app, "engraver");
  hut_gui_app_activate (&app, "win.step", g_variant_new_string ("measure"));
  g_autoptr(GPtrArray) before = find_all (hut_gui_app_find (&app, "bodies"), HUT_TYPE_NUMBER_ENTRY);
  body_count = hut_session_get_design (app.gui.session)->machine.bodies->len;
  assert_int_equal (before->len, 9 * body_count);
  hut_gui_app_activate (&app, "win.add-body", NULL);
  g_autoptr(GPtrArray) after = find_all (hut_gui_app_find (&app, "bodies"), HUT_TYPE_NUMBER_ENTRY);
  assert_int_equal (after->len, 9 * (body_count + 1));
  hut_gui_app_activate (&app, "win.undo", NULL);
  g_autoptr(GPtrArray) undone
      = find_all (hut_gui_app_find (&app, "bodies"), HUT_TYPE_NUMBER_ENTRY);
  after_count = undone->len;
  assert_int_equal (after_count, 9 * body_count);
}

static void
readings_are_typed_in_one_line (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  const GArray *readings;

  hut_gui_app_open (&app, "engraver");
  hut_gui_app_activate (&app, "win.add-stock", NULL);
  hut_gui_app_find (&app, "readings");
  hut_gui_app_type (&app, "readings", "5,9 x");
  hut_gui_key ("Return");
  hut_gui_wait_for (hut_checked_entry_get_problem (
                        HUT_CHECKED_ENTRY (hut_gui_app_find (&app, "readings")))
                    != NULL);
  hut_gui_app_type (&app, "readings", "5,9 6.1");
  hut_gui_key ("Return");
  hut_gui_wait_for (g_strcmp0 (hut_session_get_undo_label (app.gui.session), "Caliper Readings")
                    == 0);
  readings = ((HutStock *) g_ptr_array_index (
                  hut_session_get_design (app.gui.session)->stocks,
                  hut_session_get_design (app.gui.session)->stocks->len - 1))
                 ->readings_mm;
  assert_int_equal (readings->len, 2);
  assert_near_mm (g_array_index (readings, double, 1), 6.1, 1e-12);
}

/* ---- names for screen readers ----------------------------------------------------------------- */

static gboolean
has_name (GtkWidget *widget)
{
  GtkAccessible *accessible = GTK_ACCESSIBLE (widget);

  return gtk_test_accessible_has_property (accessible, GTK_ACCESSIBLE_PROPERTY_LABEL)
         || gtk_test_accessible_has_relation (accessible, GTK_ACCESSIBLE_RELATION_LABELLED_BY)
         || gtk_widget_get_tooltip_text (widget) != NULL;
}

/* Parts of a control that GTK makes, inside one that has a name. */
static gboolean
is_inner (GtkWidget *widget)
{
  GtkWidget *parent = gtk_widget_get_parent (widget);

  return gtk_widget_get_ancestor (parent, GTK_TYPE_DROP_DOWN) != NULL
         || gtk_widget_get_ancestor (parent, GTK_TYPE_MENU_BUTTON) != NULL
         || gtk_widget_get_ancestor (parent, GTK_TYPE_WINDOW_CONTROLS) != NULL
         || gtk_widget_get_ancestor (parent, GTK_TYPE_POPOVER) != NULL
         || gtk_widget_get_ancestor (parent, GTK_TYPE_INFO_BAR) != NULL
         || gtk_widget_get_ancestor (parent, GTK_TYPE_SEARCH_ENTRY) != NULL;
}

static void
each_control_has_a_name_for_screen_readers (void **state)
{
  const GType types[] = { GTK_TYPE_ENTRY, GTK_TYPE_DROP_DOWN, GTK_TYPE_SWITCH, GTK_TYPE_BUTTON,
                          GTK_TYPE_MENU_BUTTON, GTK_TYPE_LIST_VIEW, GTK_TYPE_PROGRESS_BAR };
  g_auto(HutGuiApp) app = { 0 };
  guint count = 0;

  hut_gui_app_open (&app, "engraver");
  hut_session_select (app.gui.session, "data-hole");
  for (guint i = 0; i < G_N_ELEMENTS (types); i++)
    {
      g_autoptr(GPtrArray) controls = find_all (app.gui.window, types[i]);

      for (guint k = 0; k < controls->len; k++, count++)
        {
          GtkWidget *control = g_ptr_array_index (controls, k);
          const gboolean has_text
              = GTK_IS_BUTTON (control) && gtk_button_get_label (GTK_BUTTON (control)) != NULL;

          if (!is_inner (control) && !has_text && !has_name (control))
            fail_msg ("%s in %s has no name", id_of (control),
                      G_OBJECT_TYPE_NAME (gtk_widget_get_parent (control)));
        }
    }
  assert_true (count > 100);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (both_ends_of_each_range_can_be_saved),
    cmocka_unit_test (an_opening_of_any_shape_can_be_saved_after_a_change_of_shape),
    cmocka_unit_test (each_choice_of_each_list_can_be_saved),
    cmocka_unit_test (changing_the_anchor_does_not_move_the_opening),
    cmocka_unit_test (a_lid_that_cannot_turn_on_the_old_hinge_line_gets_another),
    cmocka_unit_test (sizes_by_hand_start_from_what_fitted),
    cmocka_unit_test (bodies_services_and_stocks_come_and_go_with_their_rows),
    cmocka_unit_test (readings_are_typed_in_one_line),
    cmocka_unit_test (each_control_has_a_name_for_screen_readers),
  };

  setlocale (LC_ALL, "C");
  gtk_init ();
  return cmocka_run_group_tests_name ("fields", tests, NULL, NULL);
}
