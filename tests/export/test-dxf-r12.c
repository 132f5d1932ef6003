/* tests/export/test-dxf-r12.c: DXF of the old version, as a reader of others sees it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-dxf-r12.h"
#include "export/hut-tool-path.h"
#include "hut-assert.h"
#include "hut-scratch.h"
#include <string.h>

static void
take (GPtrArray *paths,
      HutLayer layer,
      HutPath *closed,
      GPtrArray *strokes)
{
  HutToolPath *tool = g_new0 (HutToolPath, 1);

  tool->layer = layer;
  tool->id = g_strdup_printf ("p%u", paths->len);
  tool->closed = closed;
  tool->strokes = strokes;
  g_ptr_array_add (paths, tool);
}

/* Plate of 100 x 60 with round corners, a hole of radius 15, and a scored line of 30 and 40. */
static GPtrArray *
new_paths (void)
{
  GPtrArray *paths = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_tool_path_free);
  GPtrArray *strokes = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  GArray *line = g_array_new (FALSE, FALSE, sizeof (HutPoint));
  const HutPoint points[] = { { 20, 20 }, { 50, 20 }, { 50, 60 } };

  g_array_append_vals (line, points, G_N_ELEMENTS (points));
  g_ptr_array_add (strokes, line);
  take (paths, HUT_LAYER_SCORE, NULL, strokes);
  take (paths, HUT_LAYER_CUT_INSIDE, hut_path_new_circle ((HutPoint) { 80, 40 }, 15), NULL);
  take (paths, HUT_LAYER_CUT_OUTSIDE, hut_path_new_rect ((HutRect) { 10, 10, 110, 70 }, 10), NULL);
  return paths;
}

static void
reader_finds_layers_arcs_and_lengths (void **state)
{
  g_autoptr(GPtrArray) paths = new_paths ();
  g_autoptr(HutStock) stock = hut_stock_new ("ply");
  const HutCutter cutter = { .kind = HUT_CUTTER_ROUTER };
  const HutWritePage page = { .paths = paths, .width_mm = 120, .depth_mm = 80, .name = "p",
                              .mark = "CHECKS OVERRIDDEN: cut.web", .stock = stock,
                              .cutter = &cutter };
  char *folder = hut_scratch_new ();
  g_autofree char *file = g_build_filename (folder, "p.dxf", NULL);
  g_autofree char *script
      = g_build_filename (g_getenv ("HUT_SOURCE_ROOT"), "tests", "export", "read_dxf_r12.py", NULL);
  const char *const argv[] = { "/usr/bin/python3", script, file, NULL };
  g_autofree char *output = NULL;
  g_autoptr(GBytes) bytes = hut_write_page_dxf_r12 (&page, NULL);
  g_autoptr(GError) error = NULL;
  int status = -1;

  assert_ok (g_file_set_contents (file, g_bytes_get_data (bytes, NULL),
                                  (gssize) g_bytes_get_size (bytes), &error),
             error);
  assert_ok (g_spawn_sync (NULL, (char **) argv, NULL, G_SPAWN_DEFAULT, NULL, NULL, &output, NULL,
                           &status, &error),
             error);
  assert_int_equal (status, 0);
  /* 2 pi 15; 2 x 80 + 2 x 40 + 2 pi 10; 30 + 40. */
  assert_string_equal (output, "AC1009 0\nCUT_INSIDE 1 1 94.247780\nCUT_OUTSIDE 1 4 302.831853\n"
                               "SCORE 1 0 70.000000\n");
  hut_scratch_free (folder);
}

static void
file_says_its_unit_and_its_mark_and_ends (void **state)
{
  g_autoptr(GPtrArray) paths = new_paths ();
  const HutCutter cutter = { .kind = HUT_CUTTER_LASER };
  const HutWritePage page = { .paths = paths, .name = "p", .mark = "CHECKS OVERRIDDEN: cut.web",
                              .cutter = &cutter };
  g_autoptr(GBytes) bytes = hut_write_page_dxf_r12 (&page, NULL);
  g_autofree char *text = g_strndup (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes));

  assert_true (g_str_has_prefix (text, "999\r\nAll numbers are millimetres.\r\n999\r\n"
                                       "CHECKS OVERRIDDEN: cut.web\r\n"));
  assert_true (g_str_has_suffix (text, "  0\r\nEOF\r\n"));
  assert_non_null (strstr (text, " 10\r\n10.0\r\n 20\r\n10.0\r\n")); /* $EXTMIN */
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (reader_finds_layers_arcs_and_lengths),
    cmocka_unit_test (file_says_its_unit_and_its_mark_and_ends),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
