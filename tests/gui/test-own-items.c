/* tests/gui/test-own-items.c: what is wrong with the user's own items is told in the window.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-shelf-row.h"
#include "app/hut-shelf.h"
#include "app/hut-stockroom.h"
#include "design/hut-design.h"
#include "hut-gui.h"
#include <locale.h>
#include <string.h>

#define REST "words=\"\" group=\"control\" hold=\"glue\""

/* One item that is right on line 2; then a unit that no number has, a cutout of 30 in a flange of
 * 20, a thickness from 5 to 3, and the id of the first once more. */
static const char items[]
    = "<catalog xmlns=\"urn:hutchwright:catalog:1\" version=\"1\">\n"
      "<item id=\"own-good\" name=\"Good one\" " REST " mass-kg=\"0.1\"/>\n"
      "<item id=\"own-unit\" name=\"Unit\" " REST " mass-kg=\"3 oz\"/>\n"
      "<item id=\"own-rim\" name=\"Rim\" " REST " mass-kg=\"0.1\" "
      "flange-width=\"20\" flange-height=\"20\"><cut role=\"body\" diameter=\"30\"/></item>\n"
      "<item id=\"own-thick\" name=\"Thick\" " REST " mass-kg=\"0.1\" "
      "thickness-min=\"5\" thickness-max=\"3\"/>\n"
      "<item id=\"own-good\" name=\"Twin\" " REST " mass-kg=\"0.1\"/>\n"
      "</catalog>\n";

static GtkWidget *
get_child (HutGui *gui,
           const char *id)
{
  return GTK_WIDGET (gtk_widget_get_template_child (gui->shelf, HUT_TYPE_SHELF, id));
}

static gboolean
has_row (HutGui *gui,
         const char *id)
{
  GtkListBox *list = GTK_LIST_BOX (get_child (gui, "list"));
  GtkListBoxRow *row;

  for (int i = 0; (row = gtk_list_box_get_row_at_index (list, i)) != NULL; i++)
    {
      const HutItem *item = hut_shelf_row_get_item (HUT_SHELF_ROW (row));

      if (item != NULL && g_strcmp0 (item->id, id) == 0)
        return TRUE;
    }
  return FALSE;
}

static void
each_item_that_is_wrong_is_told_with_its_line_and_the_rest_is_there (void **state)
{
  static const char *const lines[] = { "mine.xml:3:", "mine.xml:4:", "mine.xml:5:", "mine.xml:6:" };
  g_auto (HutGui) gui = { 0 };
  const char *told;

  hut_gui_open (&gui, hut_design_new ());
  assert_true (gtk_widget_get_mapped (get_child (&gui, "problems")));
  told = gtk_label_get_text (GTK_LABEL (get_child (&gui, "problems")));
  for (gsize i = 0; i < G_N_ELEMENTS (lines); i++)
    if (strstr (told, lines[i]) == NULL)
      fail_msg ("%s is not told: %s", lines[i], told);
  assert_null (strstr (told, "mine.xml:2:"));
  assert_non_null (
      strstr (gtk_label_get_text (GTK_LABEL (get_child (&gui, "problem_title"))), "4"));
  assert_true (has_row (&gui, "own-good"));
  assert_false (has_row (&gui, "own-rim"));
  assert_true (has_row (&gui, "fan-120x25")); /* a shipped one */
}

static int
set_up (void **state)
{
  g_autofree char *folder
      = g_build_filename (g_get_user_data_dir (), "hutchwright", "hardware", NULL);
  g_autofree char *file = g_build_filename (folder, "mine.xml", NULL);

  setlocale (LC_ALL, "C.UTF-8");
  if (g_mkdir_with_parents (folder, 0700) != 0 || !g_file_set_contents (file, items, -1, NULL))
    return -1;
  return gtk_init_check () ? 0 : -1;
}

int
main (int argc,
      char **argv)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_item_that_is_wrong_is_told_with_its_line_and_the_rest_is_there),
  };

  if (argc > 1)
    cmocka_set_test_filter (argv[1]);
  return cmocka_run_group_tests (tests, set_up, NULL);
}
