/* tests/gui/test-ledger.c: the services ledger is completed by its own buttons.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-ledger-pane.h"
#include "app/hut-way-row.h"
#include "design/hut-file.h"
#include "hut-gui.h"
#include <locale.h>

/* The engraver without the openings of its data lead and its air hose. */
static void
open_incomplete (HutGui *gui)
{
  static const char *const gone[] = { "data-hole", "air-hole" };
  g_autoptr (GError) error = NULL;
  HutDesign *design = hut_example_load ("engraver", &error);

  assert_ok (design != NULL, error);
  for (gsize i = 0; i < G_N_ELEMENTS (gone); i++)
    g_ptr_array_remove (design->openings, hut_design_get_opening (design, gone[i]));
  hut_gui_open (gui, design);
}

/* The button of that text in the ledger's row @index that can be seen; NULL when there is none. */
static GtkWidget *
find_button (HutGui *gui,
             guint index,
             const char *text)
{
  GtkWidget *pane = hut_gui_find (gui->window, HUT_TYPE_LEDGER_PANE, NULL);
  GtkWidget *row = hut_gui_find (pane, HUT_TYPE_WAY_ROW, NULL);
  GtkWidget *label;

  while (index-- > 0)
    row = gtk_widget_get_next_sibling (row);
  label = hut_gui_find (row, GTK_TYPE_LABEL, text);
  assert_non_null (label);
  return gtk_widget_get_mapped (label) ? gtk_widget_get_ancestor (label, GTK_TYPE_BUTTON) : NULL;
}

static void
click (GtkWidget *button)
{
  hut_gui_move (hut_gui_point (button, gtk_widget_get_width (button) / 2.0,
                               gtk_widget_get_height (button) / 2.0));
  hut_gui_press ();
  hut_gui_release ();
}

/* Openings and hardware. */
static guint
count_ways (HutGui *gui)
{
  const HutDesign *design = hut_session_get_design (gui->session);

  return design->openings->len + design->hardware->len;
}

static void
its_buttons_complete_it (void **state)
{
  g_auto (HutGui) gui = { 0 };

  open_incomplete (&gui);
  const guint before = count_ways (&gui);
  assert_true (hut_gui_has_finding (&gui, "service.missing", "data"));
  assert_true (hut_gui_has_finding (&gui, "service.missing", "air"));
  assert_non_null (hut_gui_find (gui.window, GTK_TYPE_LABEL, "Services: 2 of 4 Done"));

  /* Rows in the order of the services: power, data, air, exhaust. One by the pointer, one by keys. */
  hut_gui_wait_for (find_button (&gui, 1, "Make an Opening") != NULL);
  click (find_button (&gui, 1, "Make an Opening"));
  hut_gui_wait_for (count_ways (&gui) == before + 1);
  assert_false (hut_gui_has_finding (&gui, "service.missing", "data"));
  /* The plug passes nothing smaller of what there is for a wall of 6 mm than a brush. */
  assert_string_equal (hut_design_get_hardware (hut_session_get_design (gui.session),
                                                hut_session_get_selected (gui.session))
                           ->item,
                       "brush-entry");
  hut_gui_wait_for (gtk_widget_has_focus (find_button (&gui, 1, "Show")));
  hut_gui_key ("Tab");
  hut_gui_wait_for (gtk_widget_has_focus (find_button (&gui, 2, "Make an Opening")));
  hut_gui_key ("space");
  hut_gui_wait_for (count_ways (&gui) == before + 2);
  hut_gui_wait_for (hut_gui_find (gui.window, GTK_TYPE_LABEL, "Services: 4 of 4 Done") != NULL);
  assert_false (hut_gui_has_finding (&gui, "service.missing", NULL));
  assert_false (hut_gui_has_finding (&gui, "service.tight", NULL));

  /* One step of undo each. */
  hut_session_undo (gui.session);
  hut_gui_wait_for (count_ways (&gui) == before + 1);
  hut_session_undo (gui.session);
  hut_gui_wait_for (count_ways (&gui) == before);
  hut_gui_wait_for (find_button (&gui, 1, "Make an Opening") != NULL);
}

static void
show_selects_what_serves (void **state)
{
  g_auto (HutGui) gui = { 0 };

  open_incomplete (&gui);
  hut_gui_wait_for (find_button (&gui, 0, "Show") != NULL);
  click (find_button (&gui, 0, "Show"));
  hut_gui_wait_for (hut_session_get_selected (gui.session) != NULL);
  assert_string_equal (hut_session_get_selected (gui.session), "power-hole");
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (its_buttons_complete_it),
    cmocka_unit_test (show_selects_what_serves),
  };

  setlocale (LC_ALL, "C.UTF-8");
  if (!gtk_init_check ())
    return 77;
  return cmocka_run_group_tests (tests, NULL, NULL);
}
