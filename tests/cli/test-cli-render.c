/* tests/cli/test-cli-render.c: hutchwright render: pictures of the views.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "cli/hut-blocked-design.h"

#include "assembly/hut-assembly.h"
#include "design/hut-file.h"
#include "hut-run.h"
#include "hut-scratch.h"
#include <cairo.h>
#include <string.h>

typedef struct
{
  char *folder, *design, *picture;
} Place;

static int
set_up (void **state)
{
  Place *place = g_new0 (Place, 1);

  place->folder = hut_scratch_new ();
  place->design = hut_run_write_example (place->folder, "engraver", "a.hutch");
  place->picture = g_build_filename (place->folder, "a.png", NULL);
  *state = place;
  return 0;
}

static int
tear_down (void **state)
{
  Place *place = *state;

  hut_scratch_free (place->folder);
  g_free (place->design);
  g_free (place->picture);
  g_free (place);
  return 0;
}

/* Mean of all colour bytes: dark or light. */
static double
read_brightness (const char *path,
                 int width_px,
                 int height_px)
{
  cairo_surface_t *surface = cairo_image_surface_create_from_png (path);
  const int stride = cairo_image_surface_get_stride (surface);
  const unsigned char *data = cairo_image_surface_get_data (surface);
  double sum = 0.0;

  assert_int_equal (cairo_surface_status (surface), CAIRO_STATUS_SUCCESS);
  assert_int_equal (cairo_image_surface_get_width (surface), width_px);
  assert_int_equal (cairo_image_surface_get_height (surface), height_px);
  for (int y = 0; y < height_px; y++)
    for (int x = 0; x < width_px; x++)
      sum += data[y * stride + 4 * x] + data[y * stride + 4 * x + 1] + data[y * stride + 4 * x + 2];
  cairo_surface_destroy (surface);
  return sum / (3.0 * width_px * height_px);
}

static void
all_views_have_the_size_that_was_asked_for (void **state)
{
  const Place *place = *state;
  static const char *const views[] = { "flat", "built", "sheets" };

  for (guint i = 0; i < G_N_ELEMENTS (views); i++)
    {
      g_autoptr(HutRun) light = hut_run ("render", place->design, "--view", views[i], "--to",
                                         place->picture, "--size", "640x333", NULL);
      double light_mean = 0.0, dark_mean = 0.0;
      g_autoptr(HutRun) dark = NULL;

      hut_run_assert_status (light, 0);
      assert_string_equal (light->text, "");
      light_mean = read_brightness (place->picture, 640, 333);
      dark = hut_run ("render", place->design, "--view", views[i], "--dark", "--to", place->picture,
                      "--size", "640x333", NULL);
      hut_run_assert_status (dark, 0);
      dark_mean = read_brightness (place->picture, 640, 333);
      if (!(light_mean > 150.0 && dark_mean < 100.0))
        fail_msg ("%s: mean brightness is %g light, %g dark", views[i], light_mean, dark_mean);
    }
}

static void
the_views_differ_and_each_is_the_same_again (void **state)
{
  const Place *place = *state;
  g_autoptr(HutRun) flat = hut_run ("render", place->design, "--view", "flat", "--to", "-", NULL);
  g_autoptr(HutRun) again = hut_run ("render", place->design, "--view", "flat", "--to", "-", NULL);
  g_autoptr(HutRun) sheets = hut_run ("render", place->design, "--view", "sheets", "--to", "-", NULL);

  hut_run_assert_status (flat, 0);
  hut_run_assert_status (sheets, 0);
  assert_true (g_bytes_get_size (flat->out) > 5000);
  assert_true (g_bytes_equal (flat->out, again->out));
  assert_false (g_bytes_equal (flat->out, sheets->out));
}

static void
the_lid_opens_in_the_built_view_alone (void **state)
{
  const Place *place = *state;
  g_autoptr(HutRun) shut = hut_run ("render", place->design, "--view", "built", "--to", "-", NULL);
  g_autoptr(HutRun) open = hut_run ("render", place->design, "--view", "built", "--lid", "60.5",
                                    "--to", "-", NULL);
  static const char *const wrong[] = { "-1", "271", "wide", "", "nan", "10 degrees" };
  g_autoptr(HutRun) flat = hut_run ("render", place->design, "--view", "flat", "--lid", "60", "--to",
                                    "-", NULL);

  hut_run_assert_status (shut, 0);
  hut_run_assert_status (open, 0);
  assert_false (g_bytes_equal (shut->out, open->out));
  hut_run_assert_refused (flat, 2, "with --view built");
  for (guint i = 0; i < G_N_ELEMENTS (wrong); i++)
    {
      g_autoptr(HutRun) run = hut_run ("render", place->design, "--view", "built", "--lid", wrong[i],
                                       "--to", "-", NULL);

      hut_run_assert_refused (run, 2, "0 to 270 degrees");
    }
}

static void
a_picture_is_replaced_and_a_design_is_not (void **state)
{
  const Place *place = *state;
  g_autofree char *before = hut_run_read_text (place->design);
  g_autofree char *after = NULL;
  g_autoptr(HutRun) over_design = hut_run ("render", place->design, "--view", "flat", "--to",
                                           place->design, NULL);
  g_autoptr(HutRun) first = hut_run ("render", place->design, "--view", "flat", "--to", place->picture,
                                     "--size", "100x100", NULL);
  g_autoptr(HutRun) second = hut_run ("render", place->design, "--view", "flat", "--to", place->picture,
                                      "--size", "200x100", NULL);

  hut_run_assert_refused (over_design, 2, place->design);
  after = hut_run_read_text (place->design);
  assert_string_equal (before, after);
  hut_run_assert_status (first, 0);
  hut_run_assert_status (second, 0);
  assert_true (read_brightness (place->picture, 200, 100) > 0.0);
}

static void
what_blocks_is_drawn_when_there_is_a_shape_to_draw (void **state)
{
  const Place *place = *state;

  for (const HutBlockedDesign *row = hut_blocked_designs; row->why != NULL; row++)
    {
      g_autoptr(HutDesign) design = hut_blocked_design_new (row);
      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      g_autofree char *target = g_build_filename (place->folder, "blocked.png", NULL);
      g_autoptr(GError) error = NULL;
      g_autoptr(HutRun) run = NULL;

      print_message ("%s\n", row->why);
      assert_ok (hut_design_save (design, place->design, &error), error);
      run = hut_run ("render", place->design, "--view", "flat", "--to", target, NULL);
      if (assembly->whole)
        {
          hut_run_assert_status (run, 0);
          assert_int_equal (remove (target), 0);
          continue;
        }
      hut_run_assert_refused (run, 1, "nothing to draw");
      assert_non_null (strstr (run->errors, "\nblocks: "));
      assert_false (g_file_test (target, G_FILE_TEST_EXISTS));
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test_setup_teardown (all_views_have_the_size_that_was_asked_for, set_up, tear_down),
    cmocka_unit_test_setup_teardown (the_views_differ_and_each_is_the_same_again, set_up, tear_down),
    cmocka_unit_test_setup_teardown (the_lid_opens_in_the_built_view_alone, set_up, tear_down),
    cmocka_unit_test_setup_teardown (a_picture_is_replaced_and_a_design_is_not, set_up, tear_down),
    cmocka_unit_test_setup_teardown (what_blocks_is_drawn_when_there_is_a_shape_to_draw, set_up,
                                     tear_down),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
