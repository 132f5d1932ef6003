/* tests/gui/test-item-editor.c: a part in hand is measured and lies on the shelf afterwards.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-cut-row.h"
#include "app/hut-item-editor.h"
#include "app/hut-shelf-row.h"
#include "app/hut-stockroom.h"
#include "design/hut-design.h"
#include "hut-gui.h"
#include <locale.h>
#include <string.h>

static GtkWidget *
find_editor (void)
{
  GListModel *windows = gtk_window_get_toplevels ();

  for (guint i = 0; i < g_list_model_get_n_items (windows); i++)
    {
      g_autoptr (GtkWidget) window = g_list_model_get_item (windows, i);

      if (HUT_IS_ITEM_EDITOR (window) && gtk_widget_get_mapped (window))
        return window;
    }
  return NULL;
}

static GtkWidget *
get_child (GtkWidget *editor,
           const char *id)
{
  GObject *child = gtk_widget_get_template_child (editor, HUT_TYPE_ITEM_EDITOR, id);

  assert_true (GTK_IS_WIDGET (child));
  return GTK_WIDGET (child);
}

/* Whether a label that is shown under @widget has @text in it. */
static gboolean
find_text (GtkWidget *widget,
           const char *text)
{
  if (GTK_IS_LABEL (widget) && gtk_widget_get_visible (widget)
      && strstr (gtk_label_get_text (GTK_LABEL (widget)), text) != NULL)
    return TRUE;
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    if (find_text (child, text))
      return TRUE;
  return FALSE;
}

static const HutCatalog *
get_catalog (void)
{
  return hut_stockroom_get_catalog (hut_stockroom_get_default ());
}

/* By keys alone: the text cursor begins in the name. */
static void
a_hole_pattern_that_was_measured_can_be_placed (void **state)
{
  g_auto (HutGui) gui = { 0 };

  hut_gui_open (&gui, hut_design_new ());
  gtk_widget_activate_action (gui.shelf, "shelf.new-pattern", NULL);
  hut_gui_wait_for (find_editor () != NULL);

  GtkWidget *editor = find_editor ();

  assert_false (gtk_widget_get_sensitive (get_child (editor, "save"))); /* it has no name yet */
  assert_false (gtk_widget_get_visible (get_child (editor, "remove")));
  gtk_widget_grab_focus (get_child (editor, "name"));
  hut_gui_wait_for (gtk_window_is_active (GTK_WINDOW (editor)));
  hut_gui_enter ("Display of the mill");
  hut_gui_wait_for (
      g_strcmp0 (gtk_editable_get_text (GTK_EDITABLE (get_child (editor, "name"))),
                 "Display of the mill")
      == 0);
  assert_true (gtk_widget_get_sensitive (get_child (editor, "save")));
  g_signal_emit_by_name (get_child (editor, "add_screw"), "clicked");
  g_signal_emit_by_name (get_child (editor, "save"), "clicked");
  hut_gui_wait_for (find_editor () == NULL);

  const HutItem *item = hut_catalog_get (get_catalog (), "own-display-of-the-mill");

  assert_non_null (item);
  assert_int_equal (item->cuts->len, 5); /* four of the pattern, one added */
  hut_gui_wait_for (hut_gui_find (gui.shelf, GTK_TYPE_LABEL, "Display of the mill") != NULL);
}

static void
a_shipped_item_that_was_measured_again_takes_its_place (void **state)
{
  g_auto (HutGui) gui = { 0 };
  const HutItem *shipped = hut_catalog_get (get_catalog (), "sw-pb-12");
  GtkListBox *list;
  GtkListBoxRow *row;

  hut_gui_open (&gui, hut_design_new ());
  list = GTK_LIST_BOX (hut_gui_find (gui.shelf, GTK_TYPE_LIST_BOX, NULL));
  for (int i = 0; (row = gtk_list_box_get_row_at_index (list, i)) != NULL; i++)
    {
      const HutItem *item = hut_shelf_row_get_item (HUT_SHELF_ROW (row));

      if (item != NULL && g_strcmp0 (item->id, shipped->id) == 0)
        gtk_list_box_select_row (list, row);
    }
  gtk_widget_activate_action (gui.shelf, "shelf.edit-item", NULL);
  hut_gui_wait_for (find_editor () != NULL);

  GtkWidget *editor = find_editor (), *cuts = get_child (editor, "cuts");
  GtkWidget *hole = gtk_widget_get_first_child (cuts);
  GtkWidget *diameter
      = GTK_WIDGET (gtk_widget_get_template_child (hole, HUT_TYPE_CUT_ROW, "diameter"));

  assert_false (find_text (cuts, "out of the flange"));
  g_signal_emit_by_name (diameter, "committed", 19.0); /* wider than the flange of 14.5 */
  hut_gui_wait_for (!gtk_widget_get_sensitive (get_child (editor, "save")));
  assert_true (find_text (cuts, "out of the flange")); /* told beside the hole */
  g_signal_emit_by_name (get_child (editor, "go"), "clicked");
  assert_string_equal (
      gtk_stack_get_visible_child_name (GTK_STACK (get_child (editor, "pages"))), "holes");
  g_signal_emit_by_name (diameter, "committed", 12.35);
  hut_gui_wait_for (gtk_widget_get_sensitive (get_child (editor, "save")));
  assert_false (find_text (cuts, "out of the flange"));
  g_signal_emit_by_name (get_child (editor, "save"), "clicked");
  hut_gui_wait_for (find_editor () == NULL);

  const HutItem *item = hut_catalog_get (get_catalog (), "sw-pb-12");

  assert_true (hut_catalog_is_own (get_catalog (), item));
  assert_near_mm (g_array_index (item->cuts, HutItemCut, 0).diameter_mm, 12.35, 0.0);
}

static void
select_item (HutGui *gui,
             const char *id)
{
  GtkListBox *list = GTK_LIST_BOX (hut_gui_find (gui->shelf, GTK_TYPE_LIST_BOX, NULL));
  GtkListBoxRow *row;

  for (int i = 0; (row = gtk_list_box_get_row_at_index (list, i)) != NULL; i++)
    {
      const HutItem *item = hut_shelf_row_get_item (HUT_SHELF_ROW (row));

      if (item != NULL && g_strcmp0 (item->id, id) == 0)
        gtk_list_box_select_row (list, row);
    }
}

static GtkDialog *
find_question (void)
{
  GListModel *windows = gtk_window_get_toplevels ();

  for (guint i = 0; i < g_list_model_get_n_items (windows); i++)
    {
      g_autoptr (GtkWidget) window = g_list_model_get_item (windows, i);

      if (GTK_IS_MESSAGE_DIALOG (window) && gtk_widget_get_mapped (window))
        return GTK_DIALOG (window);
    }
  return NULL;
}

static void
a_copy_has_an_id_of_its_own_and_can_be_removed_again (void **state)
{
  g_auto (HutGui) gui = { 0 };

  hut_gui_open (&gui, hut_design_new ());
  select_item (&gui, "fan-120x25");
  gtk_widget_activate_action (gui.shelf, "shelf.copy-item", NULL);
  hut_gui_wait_for (find_editor () != NULL);
  gtk_editable_set_text (GTK_EDITABLE (get_child (find_editor (), "name")), "Quiet fan");
  g_signal_emit_by_name (get_child (find_editor (), "save"), "clicked");
  hut_gui_wait_for (find_editor () == NULL);

  const HutItem *copy = hut_catalog_get (get_catalog (), "own-quiet-fan");
  const HutItem *fan = hut_catalog_get (get_catalog (), "fan-120x25");

  assert_non_null (copy);
  assert_false (hut_catalog_is_own (get_catalog (), fan));
  assert_int_equal (copy->cuts->len, fan->cuts->len);
  assert_int_equal (copy->curve->len, fan->curve->len);

  select_item (&gui, "own-quiet-fan");
  gtk_widget_activate_action (gui.shelf, "shelf.remove-item", NULL);
  hut_gui_wait_for (find_question () != NULL);
  assert_non_null (hut_catalog_get (get_catalog (), "own-quiet-fan")); /* not before the answer */
  gtk_dialog_response (find_question (), GTK_RESPONSE_ACCEPT);
  hut_gui_wait_for (hut_catalog_get (get_catalog (), "own-quiet-fan") == NULL);
}

/* What was typed is not lost by a slip on Escape. */
static void
closing_asks_when_something_was_measured (void **state)
{
  g_auto (HutGui) gui = { 0 };

  hut_gui_open (&gui, hut_design_new ());
  select_item (&gui, "fan-120x25");
  gtk_widget_activate_action (gui.shelf, "shelf.edit-item", NULL);
  hut_gui_wait_for (find_editor () != NULL);
  gtk_window_close (GTK_WINDOW (find_editor ()));
  hut_gui_wait_for (find_editor () == NULL); /* nothing was changed */

  gtk_widget_activate_action (gui.shelf, "shelf.edit-item", NULL);
  hut_gui_wait_for (find_editor () != NULL);
  g_signal_emit_by_name (get_child (find_editor (), "mass"), "committed", 0.5);
  gtk_window_close (GTK_WINDOW (find_editor ()));
  hut_gui_wait_for (find_question () != NULL);
  gtk_dialog_response (find_question (), GTK_RESPONSE_CANCEL);
  hut_gui_wait_for (find_question () == NULL);
  assert_non_null (find_editor ());
  gtk_window_close (GTK_WINDOW (find_editor ()));
  hut_gui_wait_for (find_question () != NULL);
  gtk_dialog_response (find_question (), GTK_RESPONSE_ACCEPT);
  hut_gui_wait_for (find_editor () == NULL);

  const HutItem *fan = hut_catalog_get (get_catalog (), "fan-120x25");

  assert_false (hut_catalog_is_own (get_catalog (), fan));
}

static int
set_up (void **state)
{
  setlocale (LC_ALL, "C.UTF-8");
  return gtk_init_check () ? 0 : -1;
}

int
main (int argc,
      char **argv)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_hole_pattern_that_was_measured_can_be_placed),
    cmocka_unit_test (a_shipped_item_that_was_measured_again_takes_its_place),
    cmocka_unit_test (a_copy_has_an_id_of_its_own_and_can_be_removed_again),
    cmocka_unit_test (closing_asks_when_something_was_measured),
  };

  if (argc > 1)
    cmocka_set_test_filter (argv[1]);
  return cmocka_run_group_tests (tests, set_up, NULL);
}
