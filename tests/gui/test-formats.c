/* tests/gui/test-formats.c: the step Cut writes the kinds of file that are chosen there.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-cut-page.h"
#include "hut-gui-app.h"
#include <string.h>

static GtkWidget *
find_page (HutGuiApp *app)
{
  GtkWidget *page = hut_gui_find (app->gui.window, HUT_TYPE_CUT_PAGE, NULL);

  assert_non_null (page);
  return page;
}

static GtkWidget *
find_check (GtkWidget *page,
            const char *id)
{
  return GTK_WIDGET (gtk_widget_get_template_child (page, HUT_TYPE_CUT_PAGE, id));
}

static guint
count_files (const char *folder,
             const char *suffix)
{
  g_autoptr(GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;
  guint count = 0;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    count += g_str_has_suffix (name, suffix) ? 1 : 0;
  return count;
}

static gboolean
set_router (HutDesign *design,
            gpointer user_data)
{
  design->cutter.kind = HUT_CUTTER_ROUTER;
  return TRUE;
}

static void
chosen_files_are_written_and_no_others (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  g_autofree char *folder = NULL;
  GtkWidget *page;

  hut_gui_app_open (&app, NULL);
  page = find_page (&app);
  folder = hut_gui_app_dup_path (&app, "set");
  gtk_check_button_set_active (GTK_CHECK_BUTTON (find_check (page, "svg")), FALSE);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (find_check (page, "dxf")), FALSE);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (find_check (page, "dxf_r12")), TRUE);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (find_check (page, "pdf")), TRUE);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (find_check (page, "paper")), 2);
  assert_true (hut_gui_app_activate (&app, "win.export-to", g_variant_new_string (folder)));
  hut_gui_wait_for (!hut_cut_page_is_exporting (HUT_CUT_PAGE (page)));
  assert_true (count_files (folder, ".gcode") > 0);
  assert_int_equal (count_files (folder, "-letter.pdf"), count_files (folder, ".gcode"));
  assert_int_equal (count_files (folder, "-r12.dxf"), count_files (folder, ".gcode"));
  assert_int_equal (count_files (folder, ".dxf"), count_files (folder, "-r12.dxf"));
  assert_int_equal (count_files (folder, ".svg"), 0);
}

static void
router_gets_gcode_too_and_is_told_what_it_needs (void **state)
{
  g_auto(HutGuiApp) app = { 0 };
  g_autofree char *folder = NULL;
  GtkWidget *page;
  GtkLabel *why;

  hut_gui_app_open (&app, NULL);
  page = find_page (&app);
  folder = hut_gui_app_dup_path (&app, "set");
  why = GTK_LABEL (find_check (page, "gcode_why"));
  assert_null (strstr (gtk_label_get_text (why), "spindle"));
  assert_true (hut_session_edit (app.gui.session, "Router", set_router, NULL));
  assert_non_null (strstr (gtk_label_get_text (why), "spindle"));
  assert_true (hut_gui_app_activate (&app, "win.export-to", g_variant_new_string (folder)));
  hut_gui_wait_for (!hut_cut_page_is_exporting (HUT_CUT_PAGE (page)));
  assert_true (count_files (folder, ".gcode") > 0);
  assert_int_equal (count_files (folder, ".gcode"), count_files (folder, ".svg"));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (chosen_files_are_written_and_no_others),
    cmocka_unit_test (router_gets_gcode_too_and_is_told_what_it_needs),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
