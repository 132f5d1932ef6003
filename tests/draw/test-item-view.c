/* tests/draw/test-item-view.c: an item of hardware alone is drawn at scale.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-item-view.h"
#include "catalog/hut-catalog.h"
#include "draw/hut-picture.h"
#include "hut-assert.h"

static HutItem *
new_fan (void)
{
  HutItem *item = hut_item_new ("fan");
  const HutItemCut cuts[] = {
    { .role = HUT_CUT_BODY, .diameter_mm = 40 },
    { .role = HUT_CUT_SCREW, .thread_mm = 4, .at = { 25, 25 } },
  };
  const HutItemBody bodies[] = {
    { .side = HUT_ITEM_FRONT, .rect = { -30, -30, 30, 30 }, .depth_mm = 20 },
    { .side = HUT_ITEM_BEHIND, .rect = { -10, -35, 10, 35 }, .depth_mm = 20 },
    { .side = HUT_ITEM_FRONT, .rect = { -90, -90, 90, 90 }, .depth_mm = 50, .soft = TRUE },
  };

  g_array_append_vals (item->cuts, cuts, G_N_ELEMENTS (cuts));
  g_array_append_vals (item->bodies, bodies, G_N_ELEMENTS (bodies));
  return item;
}

static void
the_box_holds_holes_and_bodies_but_no_soft_room (void **state)
{
  g_autoptr (HutItem) item = new_fan ();
  g_autoptr (HutItem) nothing = hut_item_new ("nothing");
  const HutRect box = hut_item_view_bounds (item), empty = hut_item_view_bounds (nothing);

  assert_near_mm (box.u0, -30, 1e-9);
  assert_near_mm (box.v1, 35, 1e-9);
  assert_near_mm (empty.u1 - empty.u0, 1, 1e-9);
}

static void
holes_are_filled_where_they_are_and_the_frame_is_faint (void **state)
{
  g_autoptr (HutItem) item = new_fan ();
  g_auto (HutPicture) picture = hut_picture_new (300, 300);
  const double scale = 4.0;

  hut_item_view_draw (picture.cr, item, (HutColour){ 1, 0, 0 }, 0.9, (HutPoint){ 150, 150 }, scale);
  /* Premultiplied red: what is covered. In the hole: the frame's 0.297 under 0.9; in the frame's
   * corner 0.297 alone; beside the frame nothing. v goes up: the screw of (25, 25) is right above. */
  assert_near (hut_picture_at (&picture, 150, 150).r, 0.9 + 0.1 * 0.297, 0.02);
  assert_near (hut_picture_at (&picture, 250, 50).r, 0.9 + 0.1 * 0.297, 0.02);
  assert_near (hut_picture_at (&picture, 250, 250).r, 0.297, 0.02);
  assert_near (hut_picture_at (&picture, 290, 290).r, 0.0, 0.02);
}

static void
each_shipped_item_shows_something (void **state)
{
  g_autoptr (HutCatalog) catalog = hut_catalog_new ();

  for (guint i = 0; i < hut_catalog_get_count (catalog); i++)
    {
      const HutItem *item = hut_catalog_get_nth (catalog, i);
      const HutRect box = hut_item_view_bounds (item);
      const double scale = 40.0 / MAX (box.u1 - box.u0, box.v1 - box.v0);
      g_auto (HutPicture) picture = hut_picture_new (60, 60);

      hut_item_view_draw (picture.cr, item, (HutColour){ 0, 0, 0 }, 0.3,
                          (HutPoint){ 30 - (box.u0 + box.u1) / 2 * scale,
                                      30 + (box.v0 + box.v1) / 2 * scale },
                          scale);
      if (hut_picture_ink_px2 (&picture) < 40) /* an outline as long as the picture is wide */
        fail_msg ("%s shows nothing", item->id);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (the_box_holds_holes_and_bodies_but_no_soft_room),
    cmocka_unit_test (holes_are_filled_where_they_are_and_the_frame_is_faint),
    cmocka_unit_test (each_shipped_item_shows_something),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
