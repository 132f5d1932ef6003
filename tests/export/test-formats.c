/* tests/export/test-formats.c: the files that a set can hold.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-formats.h"
#include "hut-assert.h"
#include <string.h>

static void
each_format_is_found_by_its_name (void **state)
{
  guint count = 0;
  const HutSheetFormat *formats = hut_sheet_formats (&count);
  guint seen = HUT_FORMAT_CSV;

  assert_true (count >= 3);
  for (guint i = 0; i < count; i++)
    {
      HutFormats found;
      g_autoptr(GError) error = NULL;

      assert_ok (hut_formats_parse (formats[i].name, &found, &error), error);
      assert_int_equal (found, formats[i].format);
      assert_int_equal (seen & formats[i].format, 0);
      seen |= formats[i].format;
      for (guint k = 0; k < i; k++)
        assert_string_not_equal (formats[i].suffix, formats[k].suffix);
    }
}

static void
no_format_is_refused (void **state)
{
  g_autoptr(GError) error = NULL;

  assert_false (hut_formats_check ((HutFormats) 0, &error));
  assert_true (g_error_matches (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_FORMAT));
  assert_non_null (strstr (error->message, "svg, dxf, csv"));
}

static void
usual_formats_have_gcode_where_it_can_be_written (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();

  for (guint i = 0; i < design->stocks->len; i++)
    ((HutStock *) g_ptr_array_index (design->stocks, i))->power_percent = 50;
  design->cutter.kind = HUT_CUTTER_LASER;
  assert_int_equal (hut_formats_usual (design), HUT_FORMAT_PLAIN | HUT_FORMAT_GCODE);
  design->cutter.kind = HUT_CUTTER_ROUTER;
  assert_int_equal (hut_formats_usual (design), HUT_FORMAT_PLAIN | HUT_FORMAT_GCODE);
  design->cutter.kind = HUT_CUTTER_LASER;
  ((HutStock *) g_ptr_array_index (design->stocks, 0))->power_percent = 0;
  assert_int_equal (hut_formats_usual (design), HUT_FORMAT_PLAIN);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_format_is_found_by_its_name),
    cmocka_unit_test (no_format_is_refused),
    cmocka_unit_test (usual_formats_have_gcode_where_it_can_be_written),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
