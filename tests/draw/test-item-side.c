/* tests/draw/test-item-side.c: an item of hardware seen from its right, with the panel it sits in.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-item-side.h"
#include "hut-assert.h"

/* A round cutout of 20 in a flange of 30, 3 in front, 25 behind, leads to 60. */
static HutItem *
new_item (void)
{
  HutItem *item = hut_item_new ("side");
  const HutItemCut cut = { .role = HUT_CUT_BODY, .diameter_mm = 20 };
  const HutItemBody bodies[] = {
    { .side = HUT_ITEM_FRONT, .rect = { -15, -15, 15, 15 }, .depth_mm = 3 },
    { .side = HUT_ITEM_BEHIND, .rect = { -10, -10, 10, 10 }, .depth_mm = 25 },
    { .side = HUT_ITEM_BEHIND, .rect = { -10, -30, 10, 10 }, .depth_mm = 60, .soft = TRUE },
  };

  item->flange_width_mm = item->flange_height_mm = 30;
  g_array_append_val (item->cuts, cut);
  g_array_append_vals (item->bodies, bodies, G_N_ELEMENTS (bodies));
  return item;
}

static void
its_box_goes_from_the_front_to_the_end_of_the_leads (void **state)
{
  g_autoptr (HutItem) item = new_item ();
  const HutRect box = hut_item_side_bounds (item);

  assert_near_mm (box.u0, -3, 0.0);
  assert_near_mm (box.u1, 60, 0.0);
  assert_near_mm (box.v0, -30, 0.0); /* the leads hang lower than the panel is drawn */
  assert_near_mm (box.v1, 19, 0.0);  /* the flange's 15, and 4 of the panel */
}

static void
the_panel_is_one_that_it_holds_in (void **state)
{
  g_autoptr (HutItem) item = new_item ();

  assert_near_mm (hut_item_side_panel_mm (item), HUT_SIDE_PANEL_MM, 0.0);
  item->thickness_max_mm = 2;
  assert_near_mm (hut_item_side_panel_mm (item), 2, 0.0);
  item->thickness_min_mm = item->thickness_max_mm = 9;
  assert_near_mm (hut_item_side_panel_mm (item), 9, 0.0);
}

static guint8
alpha_at (cairo_surface_t *surface,
          int x,
          int y)
{
  cairo_surface_flush (surface);
  return cairo_image_surface_get_data (surface)[y * cairo_image_surface_get_stride (surface) + x];
}

/* One pixel per 0.1 mm; (0,0) at (100, 400): the panel lies between x 100 and 160. */
static void
the_panel_is_cut_away_where_the_cutout_is (void **state)
{
  g_autoptr (HutItem) item = new_item ();
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_A8, 800, 800);
  cairo_t *cr = cairo_create (surface);

  g_array_set_size (item->bodies, 0);
  hut_item_side_draw (cr, item, (HutColour){ 0, 0, 0 }, 1.0, (HutPoint){ 100, 400 }, 10);
  cairo_destroy (cr);
  assert_int_equal (alpha_at (surface, 130, 405), 0);   /* in the hole */
  assert_int_equal (alpha_at (surface, 130, 280), 255); /* 12 mm up: wood */
  assert_int_equal (alpha_at (surface, 200, 280), 0);   /* behind the panel */
  cairo_surface_destroy (surface);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (its_box_goes_from_the_front_to_the_end_of_the_leads),
    cmocka_unit_test (the_panel_is_one_that_it_holds_in),
    cmocka_unit_test (the_panel_is_cut_away_where_the_cutout_is),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
