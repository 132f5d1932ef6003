/* tests/physics/test-blocker.c: what stands in the way of a ray.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "hut-box-design.h"
#include "hut-random-design.h"
#include "hut-random.h"
#include "physics/hut-ray.h"

#define RAYS_PER_DESIGN 40
/* Steps of the other way to look, and how deep a point must lie in a sheet to count, mm. */
#define STEPS 3000
#define DEEP_MM 1e-3

static const HutPanelId base_front = { HUT_SHELL_BASE, HUT_SIDE_FRONT };

static void
a_ray_meets_the_wall_but_not_its_round_hole (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  HutOpening *opening = hut_box_design_add_opening (design, base_front, HUT_SHAPE_ROUND);
  g_autoptr(HutAssembly) assembly = NULL;
  g_autoptr(HutPartSet) parts = NULL;
  HutPoint middle;

  opening->diameter_mm = 20;
  assembly = hut_assembly_new (design);
  parts = hut_part_set_new (assembly);
  middle = ((HutPlacedHole *)assembly->holes->pdata[0])->centre;
  /* Straight in, 9.9 and 10.1 beside the middle; the border itself is no hindrance; slanting, so that
   * it is 6.9 off inside and 12.9 outside: through the hole's edge. */
  const struct
  {
    double u0, u1;
    gboolean is_free;
  } cases[] = {
    { 0, 0, TRUE }, { 9.9, 9.9, TRUE }, { 10, 10, TRUE }, { 10.1, 10.1, FALSE }, { 0.9, 18.9, FALSE },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      const HutVec3 from = { middle.u + cases[i].u0, 12, middle.v };
      const HutVec3 to = { middle.u + cases[i].u1, -6, middle.v };

      if (hut_ray_is_free (assembly, parts, from, to) != cases[i].is_free)
        fail_msg ("case %u is %sfree", i, cases[i].is_free ? "not " : "");
    }
  /* Not as far as the wall. */
  assert_true (hut_ray_is_free (assembly, parts, (HutVec3) { 50, 20, 50 }, (HutVec3) { 50, 7, 50 }));
  assert_false (hut_ray_is_free (assembly, parts, (HutVec3) { 50, 20, 50 }, (HutVec3) { 50, 5, 50 }));
}

static HutVec3
random_point (HutRandom *random,
              HutVec3 outer_mm)
{
  return (HutVec3) { hut_random_between (random, -50, outer_mm.x + 50),
                     hut_random_between (random, -50, outer_mm.y + 50),
                     hut_random_between (random, -50, outer_mm.z + 50) };
}

/* By points on the way, against the blocker's own outlines. */
static gboolean
points_meet (const HutBlocker *blocker,
             HutVec3 from,
             HutVec3 to)
{
  for (guint i = 0; i <= STEPS; i++)
    {
      const double s = (double)i / STEPS;
      const HutVec3 p = hut_vec3_add (hut_vec3_scale (from, 1 - s), hut_vec3_scale (to, s));
      const HutBox3 b = blocker->box;
      HutVec3 off;

      if (p.x < b.min.x + DEEP_MM || p.x > b.max.x - DEEP_MM || p.y < b.min.y + DEEP_MM
          || p.y > b.max.y - DEEP_MM || p.z < b.min.z + DEEP_MM || p.z > b.max.z - DEEP_MM)
        continue;
      if (blocker->frame == NULL)
        return TRUE;
      off = hut_vec3_add (p, hut_vec3_scale (blocker->frame->origin, -1));
      if (hut_region_contains (blocker->region, (HutPoint) { hut_vec3_dot (off, blocker->frame->u),
                                                             hut_vec3_dot (off, blocker->frame->v) }))
        return TRUE;
    }
  return FALSE;
}

static void
rays_through_random_designs_agree_with_points_on_them_in_any_order (void **state)
{
  const guint64 first = hut_random_first_seed (), count = MIN (hut_random_seed_count (12), 60);
  guint free_count = 0, all = 0;

  for (guint64 seed = first; seed < first + count; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
      g_autoptr(GArray) blockers = hut_blockers_new (assembly, parts);
      HutRandom random;

      hut_random_init (&random, seed);
      for (guint i = 0; blockers->len > 0 && i < RAYS_PER_DESIGN; i++, all++)
        {
          const HutVec3 from = random_point (&random, assembly->outer_mm);
          const HutVec3 to = random_point (&random, assembly->outer_mm);
          const gboolean is_free = hut_ray_is_free (assembly, parts, from, to);

          for (guint k = 0; k < blockers->len; k++)
            {
              guint met = k;

              if (hut_ray_passes (blockers, from, to, &met) != is_free)
                fail_msg ("seed %" G_GUINT64_FORMAT ": blocker %u asked first, another answer", seed, k);
              if (is_free && points_meet (&g_array_index (blockers, HutBlocker, k), from, to))
                fail_msg ("seed %" G_GUINT64_FORMAT ": a free ray runs through blocker %u", seed, k);
            }
          free_count += is_free;
        }
    }
  printf ("%u of %u rays free\n", free_count, all);
  assert_true (free_count > all / 20 && free_count < all * 19 / 20);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_ray_meets_the_wall_but_not_its_round_hole),
    cmocka_unit_test (rays_through_random_designs_agree_with_points_on_them_in_any_order),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
