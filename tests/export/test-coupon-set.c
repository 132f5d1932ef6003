/* tests/export/test-coupon-set.c: the cut files of coupons.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-coupon-set.h"
#include "export/hut-tool-path.h"
#include "hut-assert.h"
#include "hut-scratch.h"
#include "sheets/hut-sheet.h"
#include <string.h>

static HutDesign *
new_design (void)
{
  HutDesign *design = hut_design_new ();

  design->cutter.kind = HUT_CUTTER_LASER;
  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 400;
  return design;
}

static char *
dup_file (const char *folder,
          const char *name)
{
  g_autofree char *path = g_build_filename (folder, name, NULL);
  char *text = NULL;
  g_autoptr(GError) error = NULL;

  assert_ok (g_file_get_contents (path, &text, NULL, &error), error);
  return text;
}

static void
a_file_per_stock_and_format_is_written (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  char *folder = hut_scratch_new ();
  g_autofree char *set = g_build_filename (folder, "coupon", NULL);
  g_auto(GStrv) written = NULL;
  g_autoptr(GError) error = NULL;

  assert_ok (hut_coupon_set (design, NULL, HUT_FORMAT_SVG | HUT_FORMAT_DXF | HUT_FORMAT_CSV, set,
                             NULL, &written, &error),
             error);
  assert_int_equal (g_strv_length (written), 2 * design->stocks->len + 2);
  for (guint i = 0; i < design->stocks->len; i++)
    {
      const HutStock *stock = g_ptr_array_index (design->stocks, i);
      g_autofree char *svg = g_strconcat ("coupon-", stock->id, ".svg", NULL);
      g_autofree char *dxf = g_strconcat ("coupon-", stock->id, ".dxf", NULL);
      g_autofree char *text = dup_file (set, svg);

      assert_true (g_strv_contains ((const char *const *) written, svg));
      assert_true (g_strv_contains ((const char *const *) written, dxf));
      /* The bars are parted before their window falls out, and the plate comes last. */
      assert_true (strstr (text, "between-bars") < strstr (text, "bars-window"));
      assert_true (strstr (text, "id=\"gauge\"") < strstr (text, "id=\"plate\""));
    }
  hut_scratch_free (folder);
}

static void
table_of_readings_has_a_line_per_tooth (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  const HutStock *stock = g_ptr_array_index (design->stocks, 0);
  char *folder = hut_scratch_new ();
  g_autofree char *set = g_build_filename (folder, "coupon", NULL);
  HutCouponPlan plan;
  g_autoptr(GError) error = NULL;

  assert_ok (hut_coupon_set (design, stock->id, HUT_FORMAT_CSV, set, NULL, NULL, &error), error);

  g_autofree char *text = dup_file (set, "coupon-readings.csv");
  g_auto(GStrv) lines = g_strsplit (text, "\r\n", -1);
  g_autofree char *first = NULL;

  hut_coupon_plan_init (&plan, stock, &design->cutter);
  first = g_strdup_printf ("%s,0.2,10,,%d,", stock->id, hut_coupon_tooth_label (&plan, 0));
  assert_int_equal (g_strv_length (lines), plan.tooth_count + 2);
  assert_string_equal (lines[1], first);
  hut_scratch_free (folder);
}

static void
work_of_a_coupon_lies_on_the_usable_bed (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  const HutStock *stock = g_ptr_array_index (design->stocks, 0);
  const HutRect room = hut_sheet_usable (&design->cutter, stock);
  g_autoptr(HutCoupon) coupon = hut_coupon_new (stock, &design->cutter, NULL);
  g_autoptr(GPtrArray) paths
      = hut_coupon_dup_tool_paths (coupon, (HutPoint) { room.u0, room.v0 });
  const HutRect bounds = hut_tool_paths_bounds (paths);
  const double height_mm = 3.5 * coupon->plan.unit_mm;

  assert_near_mm (bounds.u0, room.u0, 1e-9);
  assert_near_mm (bounds.v0, room.v0, 1e-9);
  assert_true (bounds.u1 <= room.u1 && bounds.v1 <= room.v1);
  /* Inside: nine cuts between ten bars, the window round them, and the gauge. */
  assert_near_mm (hut_tool_paths_length_mm (paths, HUT_LAYER_CUT_INSIDE, HUT_CUTTER_LASER),
                  9 * height_mm
                      + 2 * (height_mm + 10 * (coupon->plan.unit_mm + coupon->plan.kerf_mm))
                      + hut_path_length_mm (coupon->gauge),
                  0.05);
}

static void
unknown_stock_and_tiny_bed_write_nothing (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  char *folder = hut_scratch_new ();
  g_autofree char *set = g_build_filename (folder, "coupon", NULL);
  g_autoptr(GError) error = NULL;

  assert_false (hut_coupon_set (design, "no-such", HUT_FORMAT_SVG, set, NULL, NULL, &error));
  assert_true (g_error_matches (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_FORMAT));
  g_clear_error (&error);
  design->cutter.bed_width_mm = 50;
  assert_false (hut_coupon_set (design, NULL, HUT_FORMAT_SVG, set, NULL, NULL, &error));
  assert_true (g_error_matches (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_BLOCKED));
  assert_false (g_file_test (set, G_FILE_TEST_EXISTS));
  hut_scratch_free (folder);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_file_per_stock_and_format_is_written),
    cmocka_unit_test (table_of_readings_has_a_line_per_tooth),
    cmocka_unit_test (work_of_a_coupon_lies_on_the_usable_bed),
    cmocka_unit_test (unknown_stock_and_tiny_bed_write_nothing),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
