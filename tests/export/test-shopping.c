/* tests/export/test-shopping.c: the list of what is to be bought.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "export/hut-write.h"
#include "hut-assert.h"
#include "hut-test-item.h"
#include <string.h>

static const HutPanelId lid_front = { HUT_SHELL_LID, HUT_SIDE_FRONT };
static const HutPanelId base_back = { HUT_SHELL_BASE, HUT_SIDE_BACK };

/* (transfer full) (nullable) */
static char *
dup_list (const HutDesign *design,
          const char *mark)
{
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
  g_autoptr(GBytes) bytes = hut_write_marked_shopping_list (assembly, parts, mark);

  return bytes != NULL
             ? g_strndup (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes))
             : NULL;
}

static void
two_fans_and_a_hinge_make_one_line_for_each_kind (void **state)
{
  g_autoptr(HutDesign) design = hut_check_case_design ();
  g_autofree char *list = NULL;

  /* M4 through flange 1, sheet 6, washer 0.8, nut 3.2 and 2 more: 13, so 16. M3 of the hinge: 1 + 6 +
   * 0.5 + 2.4 + 2 = 11.9, so 12. */
  hut_test_put (design, "left", hut_test_item_new_fan (60, 50, 4, 50, 10), lid_front, 100, 50);
  hut_test_put (design, "right", hut_test_item_new_fan (60, 50, 4, 50, 10), lid_front, 250, 50);
  hut_test_put (design, "hinge, back", hut_test_item_new_hinge (), base_back, 80, 5)->bolted = TRUE;
  list = dup_list (design, NULL);
  assert_string_equal (list, "count,thing,size,for,note\r\n"
                             "2,fan,,left; right,\r\n"
                             "1,hinge,,\"hinge, back\",\r\n"
                             "8,pan head screw,M4 x 16,left; right,\r\n"
                             "8,hex nut ISO 4032,M4,left; right,\r\n"
                             "8,washer ISO 7089,M4,left; right,\r\n"
                             "4,pan head screw,M3 x 12,\"hinge, back\",\r\n"
                             "4,hex nut ISO 4032,M3,\"hinge, back\",\r\n"
                             "4,washer ISO 7089,M3,\"hinge, back\",\r\n");
}

static void
mark_stands_in_each_line (void **state)
{
  g_autoptr(HutDesign) design = hut_check_case_design ();
  g_autofree char *list = NULL;

  hut_test_put (design, "switch", hut_test_item_new_switch (), lid_front, 100, 50);
  list = dup_list (design, "overridden: bed.size");
  assert_string_equal (list, "count,thing,size,for,note\r\n"
                             "1,switch,,switch,overridden: bed.size\r\n");
}

static void
design_without_hardware_has_no_list (void **state)
{
  g_autoptr(HutDesign) design = hut_check_case_design ();
  g_autofree char *list = dup_list (design, NULL);

  assert_null (list);
}

/* What the design does not say is not bought; the quantities are those of the engineering. */
static void
springs_paint_and_glue_are_bought_when_the_design_wants_them (void **state)
{
  g_autoptr(HutDesign) design = hut_check_case_design ();
  g_autofree char *list = NULL;

  design->shell.stay.kind = HUT_STAY_SPRING;
  design->shell.opening_angle_deg = 60;
  design->shell.finishing = (HutFinishing) { HUT_COAT_BLACK, HUT_COAT_BARE };
  list = dup_list (design, NULL);
  assert_non_null (strstr (list, "\r\n2,gas spring,50 N; stroke "));
  assert_non_null (strstr (list, "\r\n1,matt black paint,0."));
  assert_non_null (strstr (list, "\r\n1,wood glue,0."));
  assert_null (strstr (list, "varnish"));
  assert_null (strstr (list, "outer faces"));
}

/* By hand: the hood and base are 372 x 352 x 252 outside, 2 (372 352 + 372 251 + 352 251) mm2 =
 * 0.6254 m2 without the gap of 1; two coats at 11 m2 a litre and 15 % waste: 0.13 l. Fingers do not
 * change it by more than a tenth. */
static void
paint_outside_is_area_by_rate (void **state)
{
  g_autoptr(HutDesign) design = hut_check_case_design ();
  g_autofree char *list = NULL;
  double litres;

  design->shell.finishing.outside = HUT_COAT_WHITE;
  list = dup_list (design, NULL);
  assert_non_null (strstr (list, "white or light paint,"));
  litres = g_ascii_strtod (strstr (list, "paint,") + strlen ("paint,"), NULL);
  assert_near (litres, 0.13, 0.013);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (two_fans_and_a_hinge_make_one_line_for_each_kind),
    cmocka_unit_test (mark_stands_in_each_line),
    cmocka_unit_test (design_without_hardware_has_no_list),
    cmocka_unit_test (springs_paint_and_glue_are_bought_when_the_design_wants_them),
    cmocka_unit_test (paint_outside_is_area_by_rate),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
