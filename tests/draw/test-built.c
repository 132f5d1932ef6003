/* tests/draw/test-built.c: the picture shows what a ray meets first, wherever one looks.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-built.h"
#include "draw/hut-draw-case.h"
#include "draw/hut-picture.h"
#include "draw/hut-ray.h"
#include "hut-random.h"

#define WIDTH_PX 1440
#define HEIGHT_PX 1080
#define SAMPLES 1000
/* Edges are lines of about a pixel, and pixels on borders are blends. */
#define EDGE_SHARE 0.08

static gboolean
is_in_hole (const HutBuiltBlock *block, HutVec3 p)
{
  const HutVec3 off = hut_vec3_add (p, hut_vec3_scale (block->frame.origin, -1.0));
  const HutPoint at = { hut_vec3_dot (off, block->frame.u), hut_vec3_dot (off, block->frame.v) };

  for (guint i = 0; i < block->holes->len; i++)
    {
      const GArray *hole = g_ptr_array_index (block->holes, i);
      gboolean inside = FALSE;

      for (guint a = 0, b = hole->len - 1; a < hole->len; b = a++)
        {
          const HutPoint p0 = g_array_index (hole, HutPoint, a),
                         p1 = g_array_index (hole, HutPoint, b);

          if ((p0.v > at.v) != (p1.v > at.v)
              && at.u < (p1.u - p0.u) * (at.v - p0.v) / (p1.v - p0.v) + p0.u)
            inside = !inside;
        }
      if (inside)
        return TRUE;
    }
  return FALSE;
}

static HutBlock
in_space (const HutBuiltBlock *b)
{
  return (HutBlock){
    hut_frame3_to_world (&b->frame, b->rect.u0, b->rect.v0, b->w0_mm),
    hut_vec3_scale (b->frame.u, b->rect.u1 - b->rect.u0),
    hut_vec3_scale (b->frame.v, b->rect.v1 - b->rect.v0),
    hut_vec3_scale (b->frame.w, b->w1_mm - b->w0_mm),
  };
}

static gboolean
is_machine (const HutBuiltBlock *block)
{
  return block->kind == HUT_BUILT_STATIC || block->kind == HUT_BUILT_MOVING;
}

/* What the ray through a pixel meets: its kind and the normal there. FALSE when it meets nothing,
 * or something whose colour no simple rule tells: glass, a hole, or bodies of the machine that may
 * lie in each other. */
static gboolean
look (const HutBuiltModel *model, HutVec3 from, HutVec3 into, HutBuiltKind *kind, HutVec3 *normal)
{
  double first_mm = INFINITY, blurred_mm = INFINITY;
  guint machine_count = 0;

  for (guint i = 0; i < model->blocks->len; i++)
    {
      const HutBuiltBlock *block = g_ptr_array_index (model->blocks, i);
      const HutBlock space = in_space (block);
      double way_mm;
      HutVec3 n;

      if (!hut_ray_enters (&space, from, into, &way_mm, &n))
        continue;
      machine_count += is_machine (block);
      if (block->kind == HUT_BUILT_GLAZING
          || is_in_hole (block, hut_vec3_add (from, hut_vec3_scale (into, way_mm))))
        blurred_mm = MIN (blurred_mm, way_mm);
      else if (way_mm < first_mm)
        {
          first_mm = way_mm;
          *kind = block->kind;
          *normal = n;
        }
    }
  if (isinf (first_mm) || blurred_mm < first_mm)
    return FALSE;
  return machine_count < 2 || (*kind != HUT_BUILT_STATIC && *kind != HUT_BUILT_MOVING);
}

/* Pixels whose colour does not change when the same thing is painted alone are what is compared:
 * equal kinds and normals must have equal colours. */
static void
check_picture (const HutAssembly *assembly,
               const HutPartSet *parts,
               double lid_rad,
               double yaw_rad,
               double pitch_rad)
{
  const HutBuiltPose pose = { .lid_rad = lid_rad };
  g_autoptr (HutBuiltModel) model = hut_built_model_new (assembly, parts, &pose);
  HutBuiltView view = { .yaw_rad = yaw_rad, .pitch_rad = pitch_rad };
  g_auto (HutPicture) picture = hut_picture_new (WIDTH_PX, HEIGHT_PX);
  struct
  {
    HutBuiltKind kind;
    HutVec3 normal;
    HutColour colour;
    guint votes, all;
  } faces[64];
  guint face_count = 0, looked = 0, wrong = 0;
  HutRandom random;

  hut_built_view_fit (&view, model, WIDTH_PX, HEIGHT_PX, 10.0);
  hut_built_draw (picture.cr, model, &view, hut_palette_get (FALSE, FALSE), -1, WIDTH_PX,
                  HEIGHT_PX);
  cairo_surface_flush (picture.surface);
  hut_random_init (&random, 11);
  for (int i = 0; i < SAMPLES; i++)
    {
      const int x = (int)hut_random_below (&random, WIDTH_PX),
                y = (int)hut_random_below (&random, HEIGHT_PX);
      const HutVec3 into = hut_built_view_into (&view);
      const HutVec3 right = { cos (yaw_rad), sin (yaw_rad), 0.0 },
                    up = hut_vec3_cross (right, into);
      const HutVec3 from
          = hut_vec3_add (hut_vec3_scale (right, (x + 0.5 - view.x_px) / view.scale_px_per_mm),
                          hut_vec3_scale (up, (view.y_px - y - 0.5) / view.scale_px_per_mm));
      const HutColour colour = hut_picture_at (&picture, x, y);
      HutBuiltKind kind = HUT_BUILT_PANEL;
      HutVec3 normal = { 0, 0, 0 };
      guint f = 0;

      if (!look (model, from, into, &kind, &normal))
        continue;
      while (f < face_count
             && !(faces[f].kind == kind && hut_vec3_dot (faces[f].normal, normal) > 1.0 - 1e-9))
        f++;
      if (f == face_count)
        {
          assert_true (face_count < G_N_ELEMENTS (faces));
          faces[face_count].kind = kind;
          faces[face_count].normal = normal;
          faces[face_count].colour = colour;
          faces[face_count].votes = faces[face_count].all = 0;
          face_count++;
        }
      const HutColour c = faces[f].colour;
      const gboolean same
          = fabs (c.r - colour.r) + fabs (c.g - colour.g) + fabs (c.b - colour.b) < 0.02;
      faces[f].all++;
      looked++;
      if (same)
        faces[f].votes++;
      else if (faces[f].votes > 0)
        {
          faces[f].votes--;
          wrong++;
        }
      else
        {
          faces[f].colour = colour; /* majority vote of R. Boyer and J. Moore */
          faces[f].votes = 1;
          wrong++;
        }
    }
  assert_true (looked > SAMPLES / 10);
  if (wrong > EDGE_SHARE * looked)
    fail_msg ("lid %g, yaw %g, pitch %g: %u of %u pixels show something else than a ray meets",
              lid_rad, yaw_rad, pitch_rad, wrong, looked);
}

static void
pictures_of_the_examples_show_what_rays_meet (void **state)
{
  static const char *const names[] = { "engraver", "mini-router" };
  static const double views[][3] = {
    { 0.0, 0.5, 0.5 }, { 1.0, 0.5, 0.5 }, { 0.7, 2.5, 0.9 }, { 0.4, -1.2, -0.6 }, { 0.0, 4.0, 0.2 }
  };

  for (guint n = 0; n < G_N_ELEMENTS (names); n++)
    {
      g_auto (HutDrawCase) c = hut_draw_case_example (names[n]);

      for (guint i = 0; i < G_N_ELEMENTS (views); i++)
        check_picture (c.assembly, c.parts, views[i][0], views[i][1], views[i][2]);
    }
}

static void
a_fitted_view_holds_all_and_fills_the_page (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  const HutBuiltPose pose = { 0 };
  g_autoptr (HutBuiltModel) model = hut_built_model_new (c.assembly, c.parts, &pose);
  HutBuiltView view;
  HutRect all = { INFINITY, INFINITY, -INFINITY, -INFINITY };

  hut_built_view_reset (&view);
  hut_built_view_fit (&view, model, 800, 500, 20);
  for (guint i = 0; i < model->blocks->len; i++)
    {
      const HutBlock block = in_space (g_ptr_array_index (model->blocks, i));

      for (guint k = 0; k < 8; k++)
        {
          const HutPoint p = hut_built_view_to_px (&view, hut_block_corner (&block, k));

          all = (HutRect){ MIN (all.u0, p.u), MIN (all.v0, p.v), MAX (all.u1, p.u),
                           MAX (all.v1, p.v) };
        }
    }
  assert_true (all.u0 >= 20 - 1e-6 && all.u1 <= 780 + 1e-6 && all.v0 >= 20 - 1e-6
               && all.v1 <= 480 + 1e-6);
  assert_true (all.u1 - all.u0 > 700 || all.v1 - all.v0 > 440);
}

static void
from_the_front_right_is_right_and_up_is_up (void **state)
{
  const HutBuiltView front = { 0.0, 0.0, 2.0, 100.0, 300.0 };
  const HutBuiltView above = { 0.0, HUT_BUILT_PITCH_MAX_RAD, 2.0, 100.0, 300.0 };
  const HutPoint a = hut_built_view_to_px (&front, (HutVec3){ 10, 55, 20 });
  const HutPoint b = hut_built_view_to_px (&above, (HutVec3){ 10, 55, 20 });

  assert_near (a.u, 120.0, 1e-9);
  assert_near (a.v, 260.0, 1e-9);
  assert_near (b.u, 120.0, 1e-9);
  assert_near (b.v, 190.0, 1e-9); /* the back is at the top */
}

static void
nothing_to_draw_is_an_empty_page (void **state)
{
  HutDesign *design = hut_design_new ();
  HutBuiltView view;
  const HutBuiltPose pose = { 0 };

  g_ptr_array_set_size (design->machine.bodies, 0);
  g_autoptr (HutAssembly) assembly = hut_assembly_new (design);
  hut_design_free (design);
  g_autoptr (HutBuiltModel) model = hut_built_model_new (assembly, NULL, &pose);
  g_auto (HutPicture) picture = hut_picture_new (64, 48);
  hut_built_view_reset (&view);
  hut_built_view_fit (&view, model, 64, 48, 4);
  hut_built_draw (picture.cr, model, &view, hut_palette_get (TRUE, FALSE), -1, 64, 48);
  assert_int_equal (cairo_status (picture.cr), CAIRO_STATUS_SUCCESS);
  assert_true (isfinite (view.scale_px_per_mm) && view.scale_px_per_mm > 0.0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (pictures_of_the_examples_show_what_rays_meet),
    cmocka_unit_test (a_fitted_view_holds_all_and_fills_the_page),
    cmocka_unit_test (from_the_front_right_is_right_and_up_is_up),
    cmocka_unit_test (nothing_to_draw_is_an_empty_page),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
