/* tests/design/test-hardware.c: hardware put on panels, the items a design keeps, and the bits.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalog/hut-catalog.h"
#include "design/hut-file.h"
#include "hut-assert.h"
#include <string.h>

static const HutPanelId front = { HUT_SHELL_BASE, HUT_SIDE_FRONT };

static HutItem *
new_item (const char *id,
          double hole_mm)
{
  HutItem *item = hut_item_new (id);
  const HutItemCut cut
      = { .role = HUT_CUT_BODY, .shape = HUT_CUT_ROUND, .diameter_mm = hole_mm };

  g_array_append_val (item->cuts, cut);
  item->group = HUT_ITEM_CONTROL;
  return item;
}

/* Every member off its default. */
static HutHardware *
new_full (void)
{
  HutHardware *hardware = hut_hardware_new ("switch", "sw-20", front);

  g_free (hardware->name);
  hardware->name = g_strdup ("Main <switch>");
  hardware->at.u_anchor = HUT_ANCHOR_END;
  hardware->at.u_offset_mm = 25.5;
  hardware->at.v_offset_mm = -3.125;
  hardware->face = HUT_FACE_INSIDE;
  hardware->turn_deg = 270.0;
  hardware->hole_class = HUT_HOLE_COARSE;
  hardware->pocket_way = HUT_POCKET_PLATE;
  hardware->plate_stock = g_strdup ("acrylic");
  hardware->narrow_mm = 1.5;
  hardware->bolted = TRUE;
  hardware->sunk = TRUE;
  return hardware;
}

static HutDesign *
new_design (void)
{
  HutDesign *design = hut_design_new ();
  g_autoptr(HutItem) item = new_item ("sw-20", 20.2);

  hut_design_keep_item (design, item);
  g_ptr_array_add (design->hardware, new_full ());
  return design;
}

static void
file_gives_the_same_design_and_the_same_bytes_again (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  g_autofree char *text = hut_design_to_xml (design);
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) again = hut_design_from_xml (text, strlen (text), "a.hutch", &error);

  assert_ok (again != NULL, error);
  assert_true (hut_design_equal (design, again));

  g_autofree char *second = hut_design_to_xml (again);

  assert_string_equal (text, second);
}

/* Whatever an item can say, the schema of a design lets it say. */
static void
each_shipped_item_survives_a_save (void **state)
{
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();

  assert_true (hut_catalog_get_count (catalog) > 80);
  for (guint i = 0; i < hut_catalog_get_count (catalog); i++)
    {
      const HutItem *item = hut_catalog_get_nth (catalog, i);
      g_autoptr(HutDesign) design = hut_design_new ();
      g_autoptr(HutDesign) again = NULL;
      g_autoptr(GError) error = NULL;
      g_autofree char *text = NULL;

      hut_design_keep_item (design, item);
      g_ptr_array_add (design->hardware, hut_hardware_new ("placed", item->id, front));
      text = hut_design_to_xml (design);
      again = hut_design_from_xml (text, strlen (text), item->id, &error);
      assert_ok (again != NULL, error);
      assert_true (hut_design_equal (design, again));
    }
}

static void
copy_says_the_same_and_any_change_shows (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  g_autoptr(HutDesign) copy = hut_design_copy (design);
  HutHardware *hardware = g_ptr_array_index (copy->hardware, 0);

  assert_true (hut_design_equal (design, copy));
  hardware->narrow_mm = 0.0;
  assert_false (hut_design_equal (design, copy));
  hardware->narrow_mm = 1.5;
  hardware->sunk = FALSE;
  assert_false (hut_design_equal (design, copy));
  hardware->sunk = TRUE;
  g_array_index (copy->bits_mm, double, 0) = 9.0;
  assert_false (hut_design_equal (design, copy));
  g_array_index (copy->bits_mm, double, 0) = 10.0;
  assert_true (hut_design_equal (design, copy));
  g_array_index (((HutItem *) g_ptr_array_index (copy->items, 0))->cuts, HutItemCut, 0).diameter_mm
      = 19.0;
  assert_false (hut_design_equal (design, copy));
}

static void
design_keeps_one_copy_of_an_item_and_another_under_another_id (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autoptr(HutItem) first = new_item ("sw-20", 20.2);
  g_autoptr(HutItem) changed = new_item ("sw-20", 19.8);
  HutItem *kept;

  assert_string_equal (hut_design_keep_item (design, first), "sw-20");
  assert_string_equal (hut_design_keep_item (design, first), "sw-20");
  assert_int_equal (design->items->len, 1);
  assert_string_equal (hut_design_keep_item (design, changed), "sw-20-2");
  assert_string_equal (hut_design_keep_item (design, changed), "sw-20-2");
  assert_int_equal (design->items->len, 2);
  kept = hut_design_get_item (design, "sw-20-2");
  assert_non_null (kept);
  assert_near_mm (g_array_index (kept->cuts, HutItemCut, 0).diameter_mm, 19.8, 0.0);
}

static void
items_that_nothing_uses_are_dropped (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  g_autoptr(HutItem) spare = new_item ("gland", 20.4);

  hut_design_keep_item (design, spare);
  assert_int_equal (design->items->len, 2);
  hut_design_drop_unused_items (design);
  assert_int_equal (design->items->len, 1);
  assert_non_null (hut_design_get_hardware_item (design, hut_design_get_hardware (design, "switch")));
}

static void
hardware_takes_its_id_away_from_other_things (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  g_autofree char *id = hut_design_dup_free_id (design, "switch");

  assert_string_equal (id, "switch-2");
}

static void
next_bit_is_the_thinnest_that_is_wide_enough (void **state)
{
  g_autoptr(GArray) bits = hut_bits_new_common ();
  const double own_mm[] = { 35, 20, 15 }; /* in any order */
  g_autoptr(GArray) own = g_array_new (FALSE, FALSE, sizeof (double));

  g_array_append_vals (own, own_mm, 3);
  assert_near_mm (hut_bits_next_mm (bits, 20.0), 20.0, 0.0);
  assert_near_mm (hut_bits_next_mm (bits, 20.01), 22.0, 0.0);
  assert_near_mm (hut_bits_next_mm (own, 16.0), 20.0, 0.0);
  assert_near_mm (hut_bits_next_mm (own, 35.5), 0.0, 0.0);
}

static void
plate_without_a_stock_is_refused_with_its_line (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  HutHardware *hardware = g_ptr_array_index (design->hardware, 0);
  g_autofree char *text = NULL;
  g_autoptr(GError) error = NULL;

  g_clear_pointer (&hardware->plate_stock, g_free);
  text = hut_design_to_xml (design);
  assert_null (hut_design_from_xml (text, strlen (text), "a.hutch", &error));
  assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE));
  assert_non_null (strstr (error->message, "hardware 'switch' sits on a face plate of no stock"));
}

static void
hardware_of_an_unknown_item_is_refused (void **state)
{
  g_autoptr(HutDesign) design = new_design ();
  g_autofree char *text = NULL;
  g_autoptr(GError) error = NULL;

  g_ptr_array_set_size (design->items, 0);
  text = hut_design_to_xml (design);
  assert_null (hut_design_from_xml (text, strlen (text), "a.hutch", &error));
  assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE));
  assert_non_null (strstr (error->message, "sw-20"));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (file_gives_the_same_design_and_the_same_bytes_again),
    cmocka_unit_test (each_shipped_item_survives_a_save),
    cmocka_unit_test (copy_says_the_same_and_any_change_shows),
    cmocka_unit_test (design_keeps_one_copy_of_an_item_and_another_under_another_id),
    cmocka_unit_test (items_that_nothing_uses_are_dropped),
    cmocka_unit_test (hardware_takes_its_id_away_from_other_things),
    cmocka_unit_test (next_bit_is_the_thinnest_that_is_wide_enough),
    cmocka_unit_test (plate_without_a_stock_is_refused_with_its_line),
    cmocka_unit_test (hardware_of_an_unknown_item_is_refused),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
