/* tests/gui/test-coupon.c: the coupon of a stock is written and read in the window.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-checked-entry.h"
#include "app/hut-measure-page.h"
#include "app/hut-number-entry.h"
#include "app/hut-recipe-table.h"
#include "app/hut-stock-row.h"
#include "design/hut-recipe.h"
#include "hut-gui-app.h"
#include <string.h>

/* First child, at any depth, of that id in its .ui file, visible or not. */
static GtkWidget *
find_id (GtkWidget *parent,
         const char *id)
{
  for (GtkWidget *child = gtk_widget_get_first_child (parent); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    {
      GtkWidget *deeper = find_id (child, id);

      if (g_strcmp0 (gtk_buildable_get_buildable_id (GTK_BUILDABLE (child)), id) == 0)
        return child;
      if (deeper != NULL)
        return deeper;
    }
  return NULL;
}

/* The first stock, whose row comes first. */
static const HutStock *
first_stock (HutGuiApp *app)
{
  return g_ptr_array_index (hut_session_get_design (app->gui.session)->stocks, 0);
}

static GtkWidget *
find_form (HutGuiApp *app)
{
  GtkWidget *page = hut_gui_find (app->gui.window, HUT_TYPE_MEASURE_PAGE, NULL);
  GtkWidget *row;

  assert_non_null (page);
  hut_measure_page_reveal (HUT_MEASURE_PAGE (page), first_stock (app)->id);
  row = hut_gui_find (page, HUT_TYPE_STOCK_ROW, NULL);
  assert_non_null (row);
  return GTK_WIDGET (hut_stock_row_get_coupon (HUT_STOCK_ROW (row)));
}

static void
the_command_writes_the_piece_of_one_stock (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  g_autofree char *folder = NULL, *name = NULL, *svg = NULL;
  GtkWidget *written;

  hut_gui_app_open (&app, "engraver");
  folder = hut_gui_app_dup_path (&app, "coupon");
  name = g_strdup_printf ("coupon-%s.svg", first_stock (&app)->id);
  svg = g_build_filename (folder, name, NULL);
  written = find_id (find_form (&app), "written");
  assert_true (hut_gui_app_activate (&app, "win.write-coupon-to",
                                     g_variant_new ("(ss)", first_stock (&app)->id, folder)));
  hut_gui_wait_for (*gtk_label_get_text (GTK_LABEL (written)) != '\0');
  assert_true (g_file_test (svg, G_FILE_TEST_EXISTS));

  /* A folder with something else in it is refused, and the row says so. */
  assert_true (hut_gui_app_activate (&app, "win.write-coupon-to",
                                     g_variant_new ("(ss)", first_stock (&app)->id, app.folder)));
  hut_gui_wait_for (strstr (gtk_label_get_text (GTK_LABEL (written)), app.folder) != NULL);
}

static void
readings_are_taken_over_as_one_step_of_undo (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  GtkWidget *form, *take;
  double kerf_before_mm;

  hut_gui_app_open (&app, "engraver");
  form = find_form (&app);
  take = find_id (form, "take");
  kerf_before_mm = first_stock (&app)->kerf_mm;
  assert_false (gtk_widget_get_sensitive (take));

  gtk_editable_set_text (
      hut_checked_entry_get_editable (HUT_CHECKED_ENTRY (find_id (form, "play"))),
      "2.75 2.77 2.73");
  assert_true (hut_checked_entry_commit (HUT_CHECKED_ENTRY (find_id (form, "play"))));
  gtk_drop_down_set_selected (GTK_DROP_DOWN (find_id (form, "slip")), 5);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (find_id (form, "glue")), 7);
  assert_true (gtk_widget_get_sensitive (take));
  g_signal_emit_by_name (take, "clicked");
  /* 2.75 over 11 cuts. */
  assert_near_mm (first_stock (&app)->kerf_mm, 0.25, 1e-9);
  assert_true (first_stock (&app)->allowance_error_mm > 0.0);
  hut_session_undo (app.gui.session);
  assert_near_mm (first_stock (&app)->kerf_mm, kerf_before_mm, 0);
  assert_near_mm (first_stock (&app)->allowance_error_mm, 0.0, 0);
}

static void
teeth_in_the_wrong_order_cannot_be_taken (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  GtkWidget *form;

  hut_gui_app_open (&app, "engraver");
  form = find_form (&app);
  gtk_editable_set_text (
      hut_checked_entry_get_editable (HUT_CHECKED_ENTRY (find_id (form, "play"))), "2.2");
  assert_true (hut_checked_entry_commit (HUT_CHECKED_ENTRY (find_id (form, "play"))));
  gtk_drop_down_set_selected (GTK_DROP_DOWN (find_id (form, "slip")), 7);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (find_id (form, "glue")), 5);
  assert_false (gtk_widget_get_sensitive (find_id (form, "take")));
}

static void
start_values_are_marked_until_something_is_measured (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  GtkWidget *form, *row, *start, *mark;

  hut_gui_app_open (&app, "engraver");
  form = find_form (&app);
  row = gtk_widget_get_ancestor (form, HUT_TYPE_STOCK_ROW);
  if (row == NULL) /* a closed expander does not hold it */
    row = hut_gui_find (app.gui.window, HUT_TYPE_STOCK_ROW, NULL);
  start = GTK_WIDGET (gtk_widget_get_template_child (row, HUT_TYPE_STOCK_ROW, "start"));
  mark = GTK_WIDGET (gtk_widget_get_template_child (row, HUT_TYPE_STOCK_ROW, "start_mark"));
  assert_false (gtk_widget_get_visible (mark));
  g_signal_emit_by_name (start, "clicked");
  assert_true (hut_recipe_is_start (first_stock (&app), HUT_CUTTER_LASER));
  assert_true (gtk_widget_get_visible (mark));
  assert_false (gtk_widget_get_sensitive (start));
  hut_session_undo (app.gui.session);
  assert_false (gtk_widget_get_visible (mark));
}

static HutNumberEntry *
nth_number (GtkWidget *table,
            guint n)
{
  GtkGrid *grid = GTK_GRID (gtk_widget_get_template_child (table, HUT_TYPE_RECIPE_TABLE, "grid"));

  return HUT_NUMBER_ENTRY (gtk_grid_get_child_at (grid, 1 + (int) n, 1));
}

static void
all_recipes_are_one_table_that_edits_the_design (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  g_autoptr(GListModel) windows = NULL;
  GtkWidget *table = NULL;
  HutNumberEntry *speed;

  hut_gui_app_open (&app, "engraver");
  assert_true (hut_gui_app_activate (&app, "win.recipes", NULL));
  windows = g_object_ref (gtk_window_get_toplevels ());
  for (guint i = 0; i < g_list_model_get_n_items (windows); i++)
    {
      g_autoptr(GtkWindow) window = g_list_model_get_item (windows, i);

      if (HUT_IS_RECIPE_TABLE (gtk_window_get_child (window)))
        table = gtk_window_get_child (window);
    }
  assert_non_null (table);
  speed = nth_number (table, 3);
  assert_near (hut_number_entry_get_value (speed), first_stock (&app)->speed_mm_min, 0);
  gtk_editable_set_text (hut_number_entry_get_editable (speed), "321");
  assert_true (hut_number_entry_commit (speed));
  assert_near (first_stock (&app)->speed_mm_min, 321, 0);
  hut_session_undo (app.gui.session);
  assert_near (hut_number_entry_get_value (speed), first_stock (&app)->speed_mm_min, 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (the_command_writes_the_piece_of_one_stock),
    cmocka_unit_test (readings_are_taken_over_as_one_step_of_undo),
    cmocka_unit_test (start_values_are_marked_until_something_is_measured),
    cmocka_unit_test (all_recipes_are_one_table_that_edits_the_design),
    cmocka_unit_test (teeth_in_the_wrong_order_cannot_be_taken),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
