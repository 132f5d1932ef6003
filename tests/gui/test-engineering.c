/* tests/gui/test-engineering.c: the step Engineering and its results.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-figure-row.h"
#include "app/hut-results-view.h"
#include "design/hut-file.h"
#include "hut-gui.h"
#include <string.h>

static GtkWidget *
open_results (HutGui *gui,
              const char *example)
{
  g_autoptr (GError) error = NULL;
  HutDesign *design = hut_example_load (example, &error);
  GtkWidget *view;

  assert_ok (design != NULL, error);
  hut_gui_open (gui, design);
  hut_gui_key ("alt+4");
  view = hut_gui_find (gui->window, HUT_TYPE_RESULTS_VIEW, NULL);
  assert_non_null (view);
  hut_gui_wait_for (gtk_widget_get_mapped (view)
                    && hut_gui_find (view, HUT_TYPE_FIGURE_ROW, NULL) != NULL);
  return view;
}

/* The text of the label of that name in the first row of results. */
static const char *
first_text (GtkWidget *view,
            const char *name)
{
  GtkWidget *row = hut_gui_find (view, HUT_TYPE_FIGURE_ROW, NULL);

  return gtk_label_get_text (
      GTK_LABEL (gtk_widget_get_template_child (row, HUT_TYPE_FIGURE_ROW, name)));
}

static void
the_step_shows_its_results_and_leaves_them_with_the_step (void **state)
{
  g_auto (HutGui) gui = { 0 };
  GtkWidget *view = open_results (&gui, "printer");

  assert_non_null (strstr (first_text (view, "words"), "fan moves"));
  assert_non_null (strstr (first_text (view, "number"), "m³/h"));
  hut_gui_key ("alt+2");
  hut_gui_wait_for (!gtk_widget_get_mapped (view));
  assert_true (gtk_widget_get_mapped (gui.canvas));
}

static gboolean
lengthen (HutDesign *design,
          gpointer user_data)
{
  design->shell.duct.length_mm = 6000;
  return TRUE;
}

static void
results_follow_the_design (void **state)
{
  g_auto (HutGui) gui = { 0 };
  GtkWidget *view = open_results (&gui, "printer");
  g_autofree char *before = g_strdup (first_text (view, "number"));

  hut_session_edit (gui.session, "Lengthen", lengthen, NULL);
  hut_gui_wait_for (strcmp (first_text (view, "number"), before) != 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (the_step_shows_its_results_and_leaves_them_with_the_step),
    cmocka_unit_test (results_follow_the_design),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
