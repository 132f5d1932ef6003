/* tests/design/test-example.c: the examples that come with the program.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Their numbers are common practice, no source: densities of birch 680, poplar 430 and acrylic 1190
 * kg/m3, kerfs of 0.15 to 0.2 mm, webs of one thickness, plugs as they are sold. */
#include "sample.h"

static HutDesign *
load (const char *name)
{
  g_autoptr(GError) error = NULL;
  HutDesign *design = hut_example_load (name, &error);

  assert_ok (design != NULL, error);
  return design;
}

static void
each_example_has_a_title_and_loads (void **state)
{
  const char *const *names = hut_example_names ();

  assert_int_equal (g_strv_length ((char **) names), 3);
  for (guint i = 0; names[i] != NULL; i++)
    {
      g_autoptr(HutDesign) design = load (names[i]);

      assert_true (strlen (hut_example_title (names[i])) > 10);
      assert_true (hut_lid_allows_hinge (design->shell.lid, design->shell.hinge));
    }
}

static void
unknown_example_is_refused_with_the_list (void **state)
{
  g_autoptr(GError) error = NULL;

  assert_null (hut_example_title ("castle"));
  assert_null (hut_example_load ("castle", &error));
  assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE));
  assert_string_equal (error->message, "no example 'castle'; allowed: engraver, mini-router, printer");
}

static void
example_files_are_canonical (void **state)
{
  const char *root = g_getenv ("HUT_SOURCE_ROOT");
  const char *const *names = hut_example_names ();

  for (guint i = 0; names[i] != NULL; i++)
    {
      g_autoptr(HutDesign) design = load (names[i]);
      g_autofree char *file = g_strdup_printf ("%s.hutch", names[i]);
      g_autofree char *path
          = g_build_filename (root != NULL ? root : ".", "src", "design", "examples", file, NULL);
      g_autofree char *found = NULL;
      g_autofree char *text = hut_design_to_xml (design);

      assert_true (g_file_get_contents (path, &found, NULL, NULL));
      assert_string_equal (text, found);
    }
}

/* Whether the largest head of the service passes the opening: round ones by their diagonal. */
static gboolean
passes (const HutService *service,
        const HutOpening *opening)
{
  const gboolean is_round_head = service->kind != HUT_SERVICE_LEAD;
  const double width_mm = service->head_width_mm, height_mm = service->head_height_mm;

  if (opening->shape == HUT_SHAPE_ROUND && is_round_head)
    return opening->diameter_mm > MAX (width_mm, height_mm);
  if (opening->shape == HUT_SHAPE_ROUND)
    return opening->diameter_mm > hypot (width_mm, height_mm);
  return opening->width_mm > width_mm && opening->height_mm > height_mm;
}

/* A bare tube goes through what closes round it; any other head needs room. */
static gboolean
passes_item (const HutService *service,
             const HutItem *item)
{
  const double head_mm = MAX (service->head_width_mm, service->head_height_mm);

  if (item->pass_round)
    return item->pass_width_mm > hypot (service->head_width_mm, service->head_height_mm)
           || (head_mm <= service->line_mm && item->line_min_mm <= service->line_mm
               && service->line_mm <= item->line_max_mm);
  return item->pass_width_mm > service->head_width_mm
         && item->pass_height_mm > service->head_height_mm;
}

static void
each_service_of_an_example_passes_its_opening (void **state)
{
  const char *const *names = hut_example_names ();

  for (guint i = 0; names[i] != NULL; i++)
    {
      g_autoptr(HutDesign) design = load (names[i]);

      for (guint j = 0; j < design->machine.services->len; j++)
        {
          const HutService *service = g_ptr_array_index (design->machine.services, j);
          guint n_passing = 0;

          for (guint k = 0; k < design->openings->len; k++)
            {
              const HutOpening *opening = g_ptr_array_index (design->openings, k);

              if (g_strcmp0 (opening->serves, service->id) == 0)
                n_passing += passes (service, opening);
            }
          for (guint k = 0; k < design->hardware->len; k++)
            {
              const HutHardware *hardware = g_ptr_array_index (design->hardware, k);

              if (g_strcmp0 (hardware->serves, service->id) == 0)
                n_passing += passes_item (service, hut_design_get_item (design, hardware->item));
            }
          if (n_passing != 1)
            fail_msg ("%s: %s has %u openings that it passes", names[i], service->id, n_passing);
        }
    }
}

static void
engraver_is_larger_than_the_bed_and_mini_router_is_not (void **state)
{
  g_autoptr(HutDesign) engraver = load ("engraver"), router = load ("mini-router");
  const HutBox3 large = hut_machine_swept (&engraver->machine);
  const HutBox3 small = hut_machine_swept (&router->machine);

  /* by hand: 0 .. 560 and -20 .. 480 on a bed of 400 x 400 */
  assert_near_mm (large.max.x - large.min.x, 560.0, 0.0);
  assert_near_mm (large.max.y - large.min.y, 500.0, 0.0);
  assert_near_mm (engraver->cutter.bed_width_mm, 400.0, 0.0);
  /* by hand: 220 x 220 x 280, with 100 mm for clearance and walls still within 600 x 400 */
  assert_near_mm (small.max.z - small.min.z, 280.0, 0.0);
  assert_true (small.max.x - small.min.x + 100.0 < router->cutter.bed_depth_mm);
  assert_true (small.max.z - small.min.z + 100.0 < router->cutter.bed_width_mm);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_example_has_a_title_and_loads),
    cmocka_unit_test (unknown_example_is_refused_with_the_list),
    cmocka_unit_test (example_files_are_canonical),
    cmocka_unit_test (each_service_of_an_example_passes_its_opening),
    cmocka_unit_test (engraver_is_larger_than_the_bed_and_mini_router_is_not),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
