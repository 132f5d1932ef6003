/* tests/catalog/test-shipped.c: the data of the shipped items.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalog/hut-catalog.h"
#include "catalog/hut-catalog-file.h"
#include "format/hut-core-resources.h"
#include "format/hut-schema.h"
#include "format/hut-xml.h"
#include "geom/hut-geos.h"
#include "hut-assert.h"
#include <string.h>

#define FOLDER "/org/hutchwright/core/catalog/"

/* Half of a panel that any item fits on, mm. */
#define HALF_PANEL_MM 600.0

static const HutItem *
get (const HutCatalog *catalog,
     const char *id)
{
  const HutItem *item = hut_catalog_get (catalog, id);

  if (item == NULL)
    fail_msg ("there is no %s", id);
  return item;
}

static const HutItemCut *
get_cut (const HutItem *item,
         HutCutRole role)
{
  for (guint i = 0; i < item->cuts->len; i++)
    if (g_array_index (item->cuts, HutItemCut, i).role == role)
      return &g_array_index (item->cuts, HutItemCut, i);
  fail_msg ("%s has no such cut", item->id);
  return NULL;
}

/* Distance of the first two screws of an item, mm. */
static double
pitch_mm (const HutItem *item)
{
  const HutItemCut *first = get_cut (item, HUT_CUT_SCREW);

  return hut_point_distance_mm (first->at, (first + 1)->at);
}

static void
each_shipped_file_follows_the_schema (void **state)
{
  g_autoptr(xmlRelaxNG) schema = hut_schema_new ("catalog.rng");
  g_auto(GStrv) files = g_resource_enumerate_children (hut_core_get_resource (), FOLDER,
                                                       G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);

  assert_true (g_strv_length (files) > 10);
  for (guint i = 0; files[i] != NULL; i++)
    {
      g_autofree char *path = g_strconcat (FOLDER, files[i], NULL);
      g_autoptr(GBytes) bytes = g_resource_lookup_data (hut_core_get_resource (), path,
                                                        G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);
      gsize size = 0;
      const char *data = g_bytes_get_data (bytes, &size);
      g_autoptr(GError) error = NULL;
      g_autoptr(xmlDoc) document = hut_xml_parse (data, size, files[i], &error);

      assert_ok (document != NULL, error);
      assert_ok (hut_schema_check (schema, "catalog.rng", document, files[i], &error), error);
    }
}

/* What the writer writes, the schema allows: each row of the tables is in it. */
static void
a_catalogue_that_is_written_follows_the_schema (void **state)
{
  g_autoptr(xmlRelaxNG) schema = hut_schema_new ("catalog.rng");
  g_autoptr(GPtrArray) items = g_ptr_array_new ();
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();
  g_autoptr(GError) error = NULL;

  for (guint i = 0; i < hut_catalog_get_count (catalog); i++)
    g_ptr_array_add (items, (gpointer) hut_catalog_get_nth (catalog, i));

  g_autofree char *text = hut_catalog_file_to_xml (items);
  g_autoptr(xmlDoc) document = hut_xml_parse (text, strlen (text), "f", &error);

  assert_ok (document != NULL, error);
  assert_ok (hut_schema_check (schema, "catalog.rng", document, "f", &error), error);
}

/* ---- sources -------------------------------------------------------------------------------- */

static gboolean
has_source (const HutItem *item,
            const char *of)
{
  for (guint i = 0; i < item->sources->len; i++)
    {
      const HutItemSource *source = g_ptr_array_index (item->sources, i);
      g_auto(GStrv) words = g_strsplit (source->of, ", ", -1);

      if (g_strv_contains ((const char *const *) words, of) && source->source[0] != '\0')
        return TRUE;
    }
  return FALSE;
}

static gboolean
has_cut (const HutItem *item,
         HutCutRole role)
{
  for (guint i = 0; i < item->cuts->len; i++)
    if (g_array_index (item->cuts, HutItemCut, i).role == role)
      return TRUE;
  return FALSE;
}

static gboolean
has_space (const HutItem *item,
           HutItemSide side)
{
  for (guint i = 0; i < item->bodies->len; i++)
    if (g_array_index (item->bodies, HutItemBody, i).side == side)
      return TRUE;
  return FALSE;
}

static void
each_dimension_says_where_it_comes_from (void **state)
{
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();

  for (guint i = 0; i < hut_catalog_get_count (catalog); i++)
    {
      const HutItem *item = hut_catalog_get_nth (catalog, i);
      const struct
      {
        const char *of;
        gboolean present;
      } rows[] = {
        { "cutout", has_cut (item, HUT_CUT_BODY) },
        { "holes", has_cut (item, HUT_CUT_SCREW) },
        { "front", has_space (item, HUT_ITEM_FRONT) },
        { "behind", has_space (item, HUT_ITEM_BEHIND) },
        { "thickness", item->thickness_min_mm > 0 || item->thickness_max_mm > 0 },
        { "nut", item->nut_corners_mm > 0 },
        { "body", item->body_diagonal_mm > 0 },
        { "flange", item->flange_width_mm > 0 },
        { "pass", item->pass_width_mm > 0 },
        { "line", item->line_max_mm > 0 },
        { "mass", TRUE },
        { "curve", item->curve->len > 0 },
        { "noise", item->noise_db > 0 },
        { "free-area", item->free_area_ratio > 0 },
        { "spring", item->group == HUT_ITEM_STAY },
        { "length", item->group == HUT_ITEM_LAMP && item->length_mm > 0 },
      };

      for (gsize j = 0; j < G_N_ELEMENTS (rows); j++)
        if (rows[j].present && !has_source (item, rows[j].of))
          fail_msg ("%s: no source of %s", item->id, rows[j].of);
    }
}

/* ---- outlines ------------------------------------------------------------------------------- */

/* A large panel with all cuts of one leaf in it. */
static HutRegion *
new_cut_panel (const HutItem *item,
               guint leaf,
               HutHoleClass hole_class)
{
  const HutRect all = { -HALF_PANEL_MM, -HALF_PANEL_MM, HALF_PANEL_MM, HALF_PANEL_MM };
  HutRegion *panel = hut_region_new (hut_path_new_rect (all, 0));

  for (guint i = 0; i < item->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (item->cuts, HutItemCut, i);
      HutPath *path;

      if (cut->leaf != leaf)
        continue;
      path = hut_item_cut_dup_path (cut, hut_item_cut_hole_mm (cut, hole_class));
      hut_path_snap (path);
      hut_path_reverse (path);
      hut_region_take_hole (panel, path);
    }
  return panel;
}

static void
all_cuts_of_an_item_make_a_valid_panel_in_every_hole_class (void **state)
{
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();

  for (guint i = 0; i < hut_catalog_get_count (catalog); i++)
    for (int hole_class = HUT_HOLE_FINE; hole_class <= HUT_HOLE_COARSE; hole_class++)
      for (guint leaf = 0; leaf <= 1; leaf++)
        {
          const HutItem *item = hut_catalog_get_nth (catalog, i);
          g_autoptr(HutRegion) panel = new_cut_panel (item, leaf, (HutHoleClass) hole_class);
          g_autoptr(GError) error = NULL;

          if (!hut_geos_is_valid (panel, &error))
            fail_msg ("%s: %s", item->id, error->message);
        }
}

static void
screw_holes_of_all_items_are_those_of_iso_273 (void **state)
{
  /* ISO 273, medium, as an engineering reference table prints it. */
  static const double medium_mm[][2] = { { 2, 2.4 }, { 2.5, 2.9 }, { 3, 3.4 }, { 3.5, 3.9 },
                                         { 4, 4.5 }, { 5, 5.5 },   { 6, 6.6 }, { 8, 9.0 } };
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();
  guint n_screws = 0;

  for (guint i = 0; i < hut_catalog_get_count (catalog); i++)
    {
      const HutItem *item = hut_catalog_get_nth (catalog, i);

      for (guint j = 0; j < item->cuts->len; j++)
        {
          const HutItemCut *cut = &g_array_index (item->cuts, HutItemCut, j);
          g_autoptr(HutPath) path
              = hut_item_cut_dup_path (cut, hut_item_cut_hole_mm (cut, HUT_HOLE_MEDIUM));
          const HutRect box = hut_path_bounds (path);

          for (gsize k = 0; k < G_N_ELEMENTS (medium_mm); k++)
            if (cut->role == HUT_CUT_SCREW && !cut->wood_screw
                && cut->thread_mm == medium_mm[k][0])
              {
                assert_near_mm (box.u1 - box.u0, medium_mm[k][1], 1e-9);
                n_screws++;
              }
        }
    }
  assert_true (n_screws > 200);
}

/* ---- traps ---------------------------------------------------------------------------------- */

static void
the_cutout_of_the_small_rocker_is_not_its_bezel (void **state)
{
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();
  const HutItem *item = get (catalog, "sw-rock-13x19");
  const HutItemCut *cut = get_cut (item, HUT_CUT_BODY);

  /* One article gives the bezel, 21.2 x 15.0, as the cutout: a hole that swallows the switch. */
  assert_near_mm (MAX (cut->width_mm, cut->height_mm), 19.2, 0.0);
  assert_near_mm (MIN (cut->width_mm, cut->height_mm), 13.0, 0.0);
  assert_true (item->flange_width_mm > cut->width_mm + 1
               && item->flange_height_mm > cut->height_mm + 1);
}

static void
rounded_fan_pitches_still_take_m4_through_4_5_holes (void **state)
{
  /* Pitch here, pitch as others round it, mm. The screw of 4 in a hole of 4.5 may be off by 0.25
   * each way; a pitch that is wrong by d puts each corner off by d / 2 along both axes. */
  static const struct
  {
    const char *id;
    double pitch_mm, rounded_mm;
  } cases[] = { { "fan-80x25", 71.5, 72 }, { "fan-120x25", 105, 104.8 },
                { "fan-140x25", 124.5, 125 } };
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      const HutItem *item = get (catalog, cases[i].id);
      const HutItemCut *screw = get_cut (item, HUT_CUT_SCREW);
      const double hole_mm = hut_item_cut_hole_mm (screw, HUT_HOLE_MEDIUM);
      const double off_mm = G_SQRT2 * fabs (cases[i].pitch_mm - cases[i].rounded_mm) / 2.0;
      /* Holes of 4.4 in the frame: half of both plays, 0.25 and 0.2, is there to be used. */
      const double play_mm = (hole_mm - 4.0) / 2.0 + (4.4 - 4.0) / 2.0;

      assert_near_mm (pitch_mm (item), cases[i].pitch_mm, 1e-9);
      assert_near_mm (hole_mm, 4.5, 0.0);
      assert_true (off_mm < play_mm);
    }
  /* With holes of 4.0 in the panel it would not go: 0.354 is more than 0.2. */
  assert_true (G_SQRT2 * 0.25 > (4.0 - 4.0) / 2.0 + 0.2);
}

static void
small_fans_leave_the_webs_of_the_table (void **state)
{
  /* pitch / sqrt 2 - opening / 2 - hole / 2, by hand: 40: 22.627 - 18.5 - 1.7; 60: 35.355 - 29 -
   * 2.25; 120: 74.246 - 58 - 2.25 */
  static const struct
  {
    const char *id;
    double web_mm;
  } cases[] = { { "fan-40x20", 2.427 }, { "fan-60x25", 4.105 }, { "fan-120x25", 13.996 } };
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      const HutItem *item = get (catalog, cases[i].id);
      const HutItemCut *air = get_cut (item, HUT_CUT_BODY), *screw = get_cut (item, HUT_CUT_SCREW);
      const double web_mm = hypot (screw->at.u, screw->at.v) - air->diameter_mm / 2
                            - hut_item_cut_hole_mm (screw, HUT_HOLE_MEDIUM) / 2;

      assert_near_mm (web_mm, cases[i].web_mm, 0.001);
    }
}

static void
the_mains_inlet_exists_with_both_pitches (void **state)
{
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();

  assert_near_mm (pitch_mm (get (catalog, "c14-screw")), 40, 0.0);
  assert_near_mm (pitch_mm (get (catalog, "c14-screw-45")), 45, 0.0);
  assert_true (get (catalog, "c14-screw")->mains && get (catalog, "c14-screw")->strained);
}

static void
pg7_is_not_m16 (void **state)
{
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();

  /* DIN 40430: PG7 is 12.5 over its thread; from memory. */
  assert_near_mm (get_cut (get (catalog, "gl-pg7"), HUT_CUT_BODY)->diameter_mm, 12.9, 0.0);
  assert_near_mm (get_cut (get (catalog, "gl-m16"), HUT_CUT_BODY)->diameter_mm, 16.5, 0.0);
}

static void
the_block_behind_an_emergency_stop_is_larger_than_its_nut (void **state)
{
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();
  const HutItem *item = get (catalog, "estop-22");

  assert_int_equal (item->hold, HUT_HOLD_BODY);
  assert_near_mm (item->body_diagonal_mm, 50, 0.0); /* 30 x 40 */
  assert_true (item->strained);
}

static void
a_four_inch_hose_is_loose_on_a_100_spigot (void **state)
{
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();
  const HutItem *item = get (catalog, "duct-100");
  /* The hole is 1 more than the spigot. A hose of 4 inch has 102 inside: 1.5 to 2.5 on the radius.
   * */
  const double spigot_mm = get_cut (item, HUT_CUT_BODY)->diameter_mm - 1.0;
  const double loose_mm = (102 - spigot_mm) / 2.0;

  assert_true (loose_mm >= 1.5 && loose_mm <= 2.5);
  assert_true (item->line_min_mm >= 104 - 1e-9 && item->line_max_mm <= 108 + 1e-9);
}

static void
a_snap_in_inlet_is_made_for_one_thickness (void **state)
{
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();
  const HutItem *item = get (catalog, "c14-snap");

  assert_near_mm (item->thickness_max_mm - item->thickness_min_mm, 0.2, 1e-9);
}

static void
each_fan_has_a_curve_and_ends_at_the_flow_of_its_source (void **state)
{
  static const struct
  {
    const char *id;
    double flow_m3_h, stall_pa;
  } cases[] = {
    { "fan-92x38", 321, 430 },  { "fan-80x25", 65, 37 },   { "fan-40x28", 46, 415 },
    { "inline-100", 245, 200 }, { "inline-150", 500, 190 },
  };
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      const GArray *curve = get (catalog, cases[i].id)->curve;

      assert_near (g_array_index (curve, HutFanPoint, 0).pressure_pa, cases[i].stall_pa, 0.0);
      assert_near (g_array_index (curve, HutFanPoint, curve->len - 1).flow_m3_h, cases[i].flow_m3_h,
                   0.0);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_shipped_file_follows_the_schema),
    cmocka_unit_test (a_catalogue_that_is_written_follows_the_schema),
    cmocka_unit_test (each_dimension_says_where_it_comes_from),
    cmocka_unit_test (all_cuts_of_an_item_make_a_valid_panel_in_every_hole_class),
    cmocka_unit_test (screw_holes_of_all_items_are_those_of_iso_273),
    cmocka_unit_test (the_cutout_of_the_small_rocker_is_not_its_bezel),
    cmocka_unit_test (rounded_fan_pitches_still_take_m4_through_4_5_holes),
    cmocka_unit_test (small_fans_leave_the_webs_of_the_table),
    cmocka_unit_test (the_mains_inlet_exists_with_both_pitches),
    cmocka_unit_test (pg7_is_not_m16),
    cmocka_unit_test (the_block_behind_an_emergency_stop_is_larger_than_its_nut),
    cmocka_unit_test (a_four_inch_hose_is_loose_on_a_100_spigot),
    cmocka_unit_test (a_snap_in_inlet_is_made_for_one_thickness),
    cmocka_unit_test (each_fan_has_a_curve_and_ends_at_the_flow_of_its_source),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
