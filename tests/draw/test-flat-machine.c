/* tests/draw/test-flat-machine.c: the machine is seen through the panels, where it is and nowhere
 * else. SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-flat-machine.h"
#include "draw/hut-draw-case.h"
#include "draw/hut-picture.h"

static HutPicture
draw (const HutDrawCase *c,
      const char *panel)
{
  const HutFlatStyle style = hut_flat_style_plain ();
  HutPicture picture = hut_picture_new (CASE_WIDTH_PX, CASE_HEIGHT_PX);
  HutInk ink;

  hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), CASE_WIDTH_PX, CASE_HEIGHT_PX,
                 0.0);
  hut_flat_machine_draw (
      &(HutFlatScene){ &ink, c->assembly, c->parts, NULL, c->layout, c->view, &style },
      hut_draw_case_panel (c, panel));
  hut_ink_end (&ink);
  return picture;
}

/* A box of one body: 100 x 80 x 60 mm in an enclosure of 300 x 200 x 150 mm inside. */
static HutDesign *
one_body (HutBodyKind kind,
          HutVec3 travel)
{
  HutDesign *design = hut_draw_case_box ("base-right", 10, 10, 2);
  HutBody *body = hut_body_new ("block", kind);

  g_ptr_array_set_size (design->machine.bodies, 0);
  g_free (body->name);
  body->name = g_strdup ("");
  body->box = (HutBox3){ { 0, 0, 0 }, { 100, 80, 60 } };
  body->travel = travel;
  g_ptr_array_add (design->machine.bodies, body);
  return design;
}

/* The box of drawn pixels, px. */
static void
drawn_box (const HutPicture *picture,
           double box[4])
{
  const guint8 *data;
  const int stride = cairo_image_surface_get_stride (picture->surface);

  cairo_surface_flush (picture->surface);
  data = cairo_image_surface_get_data (picture->surface);
  box[0] = box[1] = INFINITY;
  box[2] = box[3] = -INFINITY;
  for (int y = 0; y < picture->height; y++)
    for (int x = 0; x < picture->width; x++)
      if (data[y * stride + 4 * x + 3] > 40)
        {
          box[0] = MIN (box[0], x);
          box[1] = MIN (box[1], y);
          box[2] = MAX (box[2], x + 1);
          box[3] = MAX (box[3], y + 1);
        }
}

static void
a_body_is_drawn_at_its_place_behind_the_front (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (one_body (HUT_BODY_STATIC, (HutVec3){ 0, 0, 0 }));
  const guint front = hut_draw_case_panel (&c, "base-front");
  double box[4], x0, y0, x1, y1;

  g_auto (HutPicture) picture = draw (&c, "base-front");
  drawn_box (&picture, box);
  /* On the front panel u is the world's x and v the world's z. */
  hut_flat_view_to_px (&c.view, c.layout, front,
                       (HutPoint){ c.assembly->machine_at.x, c.assembly->machine_at.z + 60 }, &x0,
                       &y0);
  hut_flat_view_to_px (&c.view, c.layout, front,
                       (HutPoint){ c.assembly->machine_at.x + 100, c.assembly->machine_at.z }, &x1,
                       &y1);
  assert_near (box[0], x0, 1.5);
  assert_near (box[1], y0, 1.5);
  assert_near (box[2], x1, 1.5);
  assert_near (box[3], y1, 1.5);
}

static void
a_moving_body_also_shows_how_far_it_gets (void **state)
{
  g_auto (HutDrawCase) still
      = hut_draw_case_take (one_body (HUT_BODY_STATIC, (HutVec3){ 0, 0, 0 }));
  g_auto (HutDrawCase) moving
      = hut_draw_case_take (one_body (HUT_BODY_MOVING, (HutVec3){ 70, 0, 0 }));
  g_auto (HutPicture) a = draw (&still, "base-front");
  g_auto (HutPicture) b = draw (&moving, "base-front");
  double box_a[4], box_b[4];

  drawn_box (&a, box_a);
  drawn_box (&b, box_b);
  assert_near ((box_b[2] - box_b[0]) - (box_a[2] - box_a[0]), 70.0 * moving.view.scale_px_per_mm,
               2.0);
  assert_true (hut_picture_count (&b, hut_palette_get (FALSE, FALSE)->machine_fill, 0, 0,
                                  CASE_WIDTH_PX, CASE_HEIGHT_PX)
               > 1000);
}

static void
a_keep_out_is_hatched_and_not_filled (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (one_body (HUT_BODY_KEEP_OUT, (HutVec3){ 0, 0, 0 }));
  g_auto (HutPicture) picture = draw (&c, "base-front");
  double box[4];

  drawn_box (&picture, box);
  const double area_px2 = (box[2] - box[0]) * (box[3] - box[1]);
  assert_true (hut_picture_ink_px2 (&picture) > 0.02 * area_px2);
  assert_true (hut_picture_ink_px2 (&picture) < 0.3 * area_px2);
}

static void
nothing_is_drawn_beside_the_panel (void **state)
{
  HutDesign *design = one_body (HUT_BODY_MOVING, (HutVec3){ 900, 0, 0 });
  g_auto (HutDrawCase) c = hut_draw_case_take (design);
  const guint front = hut_draw_case_panel (&c, "base-front");
  const HutPanel *panel = g_ptr_array_index (c.assembly->panels, front);
  double box[4], x0, y0, x1, y1;

  g_auto (HutPicture) picture = draw (&c, "base-front");
  drawn_box (&picture, box);
  hut_flat_view_to_px (&c.view, c.layout, front, (HutPoint){ 0, panel->height_mm }, &x0, &y0);
  hut_flat_view_to_px (&c.view, c.layout, front, (HutPoint){ panel->width_mm, 0 }, &x1, &y1);
  assert_true (box[0] >= floor (x0) && box[1] >= floor (y0));
  assert_true (box[2] <= ceil (x1) && box[3] <= ceil (y1));
}

/* Two bodies of one shadow: the second name goes to another corner, and none to where a text is. */
static void
names_of_bodies_go_to_corners_that_are_free (void **state)
{
  HutDesign *design = one_body (HUT_BODY_STATIC, (HutVec3){ 0, 0, 0 });
  HutBody *second = hut_body_copy (g_ptr_array_index (design->machine.bodies, 0));

  g_free (second->id);
  second->id = g_strdup ("twin");
  g_ptr_array_add (design->machine.bodies, second);
  g_auto (HutDrawCase) c = hut_draw_case_take (design);
  const HutFlatStyle style = hut_flat_style_plain ();
  g_auto (HutPicture) picture = hut_picture_new (CASE_WIDTH_PX, CASE_HEIGHT_PX);
  g_autoptr (GArray) labels = g_array_new (FALSE, FALSE, sizeof (HutPxRect));
  HutInk ink;

  hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), CASE_WIDTH_PX, CASE_HEIGHT_PX,
                 0.0);
  const HutFlatScene scene
      = { &ink, c.assembly, c.parts, NULL, c.layout, c.view, &style, labels };
  const guint front = hut_draw_case_panel (&c, "base-front");
  hut_flat_machine_names_draw (&scene, front);
  assert_int_equal (labels->len, 2);
  const HutPxRect *a = &g_array_index (labels, HutPxRect, 0),
                  *b = &g_array_index (labels, HutPxRect, 1);
  assert_near (a->x, b->x, 1e-9);
  assert_true (b->y + b->height <= a->y); /* upper left */

  const HutPxRect all = { 0.0, 0.0, CASE_WIDTH_PX, CASE_HEIGHT_PX };
  g_array_set_size (labels, 0);
  g_array_append_val (labels, all);
  hut_flat_machine_names_draw (&scene, front);
  assert_int_equal (labels->len, 1);
  hut_ink_end (&ink);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_body_is_drawn_at_its_place_behind_the_front),
    cmocka_unit_test (a_moving_body_also_shows_how_far_it_gets),
    cmocka_unit_test (a_keep_out_is_hatched_and_not_filled),
    cmocka_unit_test (nothing_is_drawn_beside_the_panel),
    cmocka_unit_test (names_of_bodies_go_to_corners_that_are_free),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
