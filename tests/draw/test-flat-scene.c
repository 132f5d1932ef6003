/* tests/draw/test-flat-scene.c: from millimetres to the page.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-flat-scene.h"
#include "draw/hut-draw-case.h"
#include "draw/hut-picture.h"

static void
a_rectangle_of_a_panel_lands_where_the_view_says (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 20));
  const guint front = hut_draw_case_panel (&c, "base-front");
  const HutFlatStyle style = hut_flat_style_plain ();
  const HutFlatScene scene
      = { NULL, c.assembly, NULL, NULL, c.layout, { 2.0, 100.0, 500.0 }, &style };
  const HutPxRect px = hut_flat_scene_rect (&scene, front, (HutRect){ 10, 20, 60, 50 });

  /* x = 100 + 2 (at.u + 10), y of the upper border = 500 - 2 (at.v + 50) */
  assert_near (px.x, 100.0 + 2.0 * (c.layout->at[front].u + 10.0), 1e-9);
  assert_near (px.y, 500.0 - 2.0 * (c.layout->at[front].v + 50.0), 1e-9);
  assert_near (px.width, 100.0, 1e-9);
  assert_near (px.height, 60.0, 1e-9);
}

static void
what_touches_the_page_is_seen (void **state)
{
  g_auto (HutPicture) picture = hut_picture_new (10, 10);
  HutInk ink;

  hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), 200, 100, 0.0);
  const HutFlatScene scene = { .ink = &ink };
  assert_true (hut_flat_scene_sees (&scene, (HutPxRect){ -10, -10, 20, 20 }, 0));
  assert_true (hut_flat_scene_sees (&scene, (HutPxRect){ -500, -500, 1000, 1000 }, 0));
  assert_false (hut_flat_scene_sees (&scene, (HutPxRect){ -30, 10, 20, 20 }, 0));
  assert_true (hut_flat_scene_sees (&scene, (HutPxRect){ -30, 10, 20, 20 }, 15));
  assert_false (hut_flat_scene_sees (&scene, (HutPxRect){ 10, 101, 20, 20 }, 0));
  hut_ink_end (&ink);
}

static void
a_text_takes_only_room_that_no_earlier_one_has (void **state)
{
  g_autoptr (GArray) labels = g_array_new (FALSE, FALSE, sizeof (HutPxRect));
  const HutFlatScene scene = { .labels = labels }, careless = { 0 };

  assert_true (hut_flat_scene_claim (&scene, (HutPxRect){ 10, 10, 40, 12 }));
  assert_false (hut_flat_scene_claim (&scene, (HutPxRect){ 49, 21, 40, 12 }));
  assert_true (hut_flat_scene_claim (&scene, (HutPxRect){ 50, 10, 40, 12 })); /* side by side */
  assert_int_equal (labels->len, 2); /* what was refused takes nothing */
  assert_true (hut_flat_scene_claim (&careless, (HutPxRect){ 10, 10, 40, 12 }));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_rectangle_of_a_panel_lands_where_the_view_says),
    cmocka_unit_test (what_touches_the_page_is_seen),
    cmocka_unit_test (a_text_takes_only_room_that_no_earlier_one_has),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
