/* tests/draw/test-depth-tree.c: what is painted last at a point is what a ray meets first there.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-depth-tree.h"
#include "draw/hut-hull.h"
#include "draw/hut-ray.h"
#include "hut-assert.h"
#include "hut-random.h"
#include <string.h>

#define SCENES 60 /* or HUT_SEEDS */
#define SIDE_PX 48
#define NOTHING (-1)

typedef struct
{
  int painted[SIDE_PX][SIDE_PX];
  const HutBlock *blocks;
  HutVec3 right, up, into;
} Canvas;

/* Pixels are 1 apart round the world's origin; a scene is about as large. */
static HutPoint
pixel_at (int x, int y)
{
  return (HutPoint){ x - SIDE_PX / 2 + 0.5, y - SIDE_PX / 2 + 0.5 };
}

static gboolean
is_inside (const GArray *hull, HutPoint p)
{
  for (guint i = 0; i < hull->len; i++)
    {
      const HutPoint a = g_array_index (hull, HutPoint, i);
      const HutPoint b = g_array_index (hull, HutPoint, (i + 1) % hull->len);

      if (hut_point_cross (hut_point_minus (b, a), hut_point_minus (p, a)) < 0.0)
        return FALSE;
    }
  return hull->len >= 3;
}

static void
on_visit (guint block, const GArray *corners, gpointer user_data)
{
  Canvas *canvas = user_data;
  g_autoptr (GArray) flat = g_array_new (FALSE, FALSE, sizeof (HutPoint));
  g_autoptr (GArray) hull = NULL;

  for (guint i = 0; i < (corners != NULL ? corners->len : 8); i++)
    {
      const HutVec3 p = corners != NULL ? g_array_index (corners, HutVec3, i)
                                        : hut_block_corner (&canvas->blocks[block], i);
      const HutPoint q = { hut_vec3_dot (p, canvas->right), hut_vec3_dot (p, canvas->up) };

      g_array_append_val (flat, q);
    }
  hull = hut_hull_new (flat, 0.0);
  for (int y = 0; y < SIDE_PX; y++)
    for (int x = 0; x < SIDE_PX; x++)
      if (is_inside (hull, pixel_at (x, y)))
        canvas->painted[y][x] = (int)block;
}

static void
look_along (Canvas *canvas, HutRandom *random)
{
  const double yaw = hut_random_between (random, 0, 2 * G_PI),
               pitch = hut_random_between (random, -1.4, 1.4);

  canvas->into = (HutVec3){ -sin (yaw) * cos (pitch), cos (yaw) * cos (pitch), -sin (pitch) };
  canvas->right = (HutVec3){ cos (yaw), sin (yaw), 0.0 };
  canvas->up = hut_vec3_cross (canvas->right, canvas->into);
}

/* A box that keeps free of those before it; all turned together by @turn_rad about z. */
static gboolean
add_box (GArray *boxes, HutRandom *random)
{
  HutBox3 box;

  box.min = (HutVec3){ hut_random_between (random, -20, 10), hut_random_between (random, -20, 10),
                       hut_random_between (random, -20, 10) };
  box.max = hut_vec3_add (box.min, (HutVec3){ hut_random_between (random, 0.5, 25),
                                              hut_random_between (random, 0.5, 25),
                                              hut_random_between (random, 0.5, 25) });
  for (guint i = 0; i < boxes->len; i++)
    if (hut_box3_overlap_mm (&g_array_index (boxes, HutBox3, i), &box) > 0.0)
      return FALSE;
  g_array_append_val (boxes, box);
  return TRUE;
}

static HutBlock
block_of (const HutBox3 *box, double turn_rad)
{
  const HutVec3 z = { 0, 0, 1 };
  const HutVec3 size = hut_vec3_add (box->max, hut_vec3_scale (box->min, -1.0));

  return (HutBlock){
    hut_vec3_turn (box->min, z, turn_rad),
    hut_vec3_turn ((HutVec3){ size.x, 0, 0 }, z, turn_rad),
    hut_vec3_turn ((HutVec3){ 0, size.y, 0 }, z, turn_rad),
    (HutVec3){ 0, 0, size.z },
  };
}

static void
check_scene (guint64 seed)
{
  HutRandom random;
  Canvas canvas;
  g_autoptr (GArray) boxes = g_array_new (FALSE, FALSE, sizeof (HutBox3));
  g_autoptr (GArray) blocks = g_array_new (FALSE, FALSE, sizeof (HutBlock));
  int wrong = 0, seen = 0;

  hut_random_init (&random, seed);
  const double turn_rad = seed % 3 == 0 ? 0.0 : hut_random_between (&random, 0, 1.5);
  for (int i = 0; i < 60; i++)
    (void)add_box (boxes, &random);
  for (guint i = 0; i < boxes->len; i++)
    {
      const HutBlock block = block_of (&g_array_index (boxes, HutBox3, i), turn_rad);

      g_array_append_val (blocks, block);
    }
  canvas.blocks = (const HutBlock *)(void *)blocks->data;
  g_autoptr (HutDepthTree) tree = hut_depth_tree_new (canvas.blocks, blocks->len);
  for (int view = 0; view < 3; view++) /* one tree serves all views */
    {
      look_along (&canvas, &random);
      memset (canvas.painted, NOTHING, sizeof canvas.painted);
      hut_depth_tree_walk (tree, canvas.into, on_visit, &canvas);
      for (int y = 0; y < SIDE_PX; y++)
        for (int x = 0; x < SIDE_PX; x++)
          {
            const HutPoint p = pixel_at (x, y);
            const HutVec3 from = hut_vec3_add (hut_vec3_scale (canvas.right, p.u),
                                               hut_vec3_scale (canvas.up, p.v));
            const int first = hut_ray_first (canvas.blocks, blocks->len, from, canvas.into);

            seen += first != NOTHING;
            wrong += first != canvas.painted[y][x];
          }
    }
  assert_true (seen > 100);
  if (wrong > 0)
    fail_msg ("seed %" G_GUINT64_FORMAT ": %d pixels show the wrong one of %u blocks", seed, wrong,
              blocks->len);
}

static void
random_boxes_hide_each_other_as_rays_say (void **state)
{
  const guint64 first = hut_random_first_seed (), count = hut_random_seed_count (SCENES);

  for (guint64 seed = first; seed < first + count; seed++)
    check_scene (seed);
}

static void
count_visit (guint block, const GArray *corners, gpointer user_data)
{
  guint *counts = user_data;

  counts[block]++;
  assert_null (corners);
}

static void
boxes_that_only_touch_are_not_cut (void **state)
{
  guint counts[27] = { 0 };
  HutBlock blocks[27];

  for (int i = 0; i < 27; i++)
    blocks[i] = (HutBlock){ { i % 3, i / 3 % 3, i / 9 }, { 1, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 } };
  g_autoptr (HutDepthTree) tree = hut_depth_tree_new (blocks, G_N_ELEMENTS (blocks));
  hut_depth_tree_walk (tree, (HutVec3){ 0, 1, 0 }, count_visit, counts);
  for (int i = 0; i < 27; i++)
    assert_int_equal (counts[i], 1);
}

static void
boxes_in_one_place_still_end (void **state)
{
  const HutBlock block = { { 0, 0, 0 }, { 1, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 } };
  const HutBlock blocks[] = { block, block, block };
  guint counts[3] = { 0 };

  g_autoptr (HutDepthTree) tree = hut_depth_tree_new (blocks, G_N_ELEMENTS (blocks));
  hut_depth_tree_walk (tree, (HutVec3){ 0, 1, 0 }, count_visit, counts);
  assert_int_equal (counts[0] + counts[1] + counts[2], 3);

  g_autoptr (HutDepthTree) empty = hut_depth_tree_new (NULL, 0);
  hut_depth_tree_walk (empty, (HutVec3){ 0, 1, 0 }, count_visit, counts);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (random_boxes_hide_each_other_as_rays_say),
    cmocka_unit_test (boxes_that_only_touch_are_not_cut),
    cmocka_unit_test (boxes_in_one_place_still_end),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
