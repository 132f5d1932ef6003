/* tests/physics/test-leak.c: light that gets out of an enclosure, against other ways to look.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "design/hut-file.h"
#include "hut-assert.h"
#include "hut-box-design.h"
#include "hut-random-design.h"
#include "physics/hut-leak.h"
#include "physics/hut-ray.h"
#include "physics/hut-region-line.h"

typedef struct
{
  HutDesign *design;
  HutAssembly *assembly;
  HutPartSet *parts;
  GArray *leaks;
} Case;

static Case
case_new (HutDesign *design)
{
  Case self = { .design = design };

  self.assembly = hut_assembly_new (design);
  self.parts = hut_part_set_new (self.assembly);
  self.leaks = hut_leaks_find (self.assembly, self.parts);
  return self;
}

static void
case_clear (Case *self)
{
  g_array_unref (self->leaks);
  hut_part_set_free (self->parts);
  hut_assembly_free (self->assembly);
  hut_design_free (self->design);
}

static gboolean
names_gap (const Case *self,
           HutSide side)
{
  for (guint i = 0; i < self->leaks->len; i++)
    {
      const HutLeak *leak = &g_array_index (self->leaks, HutLeak, i);

      if (leak->hole == NULL && leak->side == side)
        return TRUE;
    }
  return FALSE;
}

static gboolean
names_hole (const Case *self,
            const HutPlacedHole *hole,
            const HutBody *body)
{
  for (guint i = 0; i < self->leaks->len; i++)
    {
      const HutLeak *leak = &g_array_index (self->leaks, HutLeak, i);

      if (leak->hole == hole && (body == NULL || leak->body == body))
        return TRUE;
    }
  return FALSE;
}

/* ---- lines through regions ----------------------------------------------------------------- */

static void
a_line_across_a_sheet_with_a_round_hole_is_in_two_pieces (void **state)
{
  /* 0 .. 100, hole of radius 10 round (50, 50): along v = 56 it lies open from 42 to 58. */
  g_autoptr(HutRegion) region
      = hut_region_new (hut_path_new_rect ((HutRect) { 0, 0, 100, 100 }, 0));
  g_autoptr(GArray) shares = NULL;

  hut_region_take_hole (region, hut_path_new_circle ((HutPoint) { 50, 50 }, 10));
  shares = hut_region_line_shares (region, (HutPoint) { -100, 56 }, (HutPoint) { 200, 56 });
  assert_int_equal (shares->len, 2);
  assert_near (g_array_index (shares, HutShare, 0).from * 300 - 100, 0, 1e-9);
  assert_near (g_array_index (shares, HutShare, 0).to * 300 - 100, 42, 1e-9);
  assert_near (g_array_index (shares, HutShare, 1).from * 300 - 100, 58, 1e-9);
  assert_near (g_array_index (shares, HutShare, 1).to * 300 - 100, 100, 1e-9);
  assert_false (hut_region_line_meets (region, (HutPoint) { 45, 45 }, (HutPoint) { 55, 55 }));
  assert_true (hut_region_line_meets (region, (HutPoint) { 45, 45 }, (HutPoint) { 59, 59 }));
  assert_true (hut_region_line_meets (region, (HutPoint) { 20, 20 }, (HutPoint) { 20, 20 }));
  assert_false (hut_region_line_meets (region, (HutPoint) { 50, 50 }, (HutPoint) { 50, 50 }));
  /* Along the border is outside. */
  assert_false (hut_region_line_meets (region, (HutPoint) { 0, 0 }, (HutPoint) { 100, 0 }));
}

/* ---- gaps ---------------------------------------------------------------------------------- */

/* The plain box with a block whose top is at that height over the bench. */
static Case
box_with_block (double top_mm)
{
  HutDesign *design = hut_box_design_new ();
  HutBody *body = g_ptr_array_index (design->machine.bodies, 0);

  body->box.max.z = top_mm - 6;
  return case_new (design);
}

static void
the_seam_is_seen_from_as_low_as_its_slope_allows (void **state)
{
  /* Walls 6, seam from 90 to 91: a line out through it rises by at most 1 in 6, so that the far
   * side of the block must be as high as 90 less a sixth of its distance from the wall's inner
   * face. (Walls grow by half a um: 0.1 mm of room.) */
  Case probe = box_with_block (60);
  const HutBox3 box
      = hut_assembly_body_box (probe.assembly, probe.design->machine.bodies->pdata[0]);
  const double front_mm = 90 - (box.max.y - 6) / 6, left_mm = 90 - (box.max.x - 6) / 6;
  const struct
  {
    double top_mm;
    HutSide side;
    gboolean seen;
  } cases[] = {
    { front_mm - 0.1, HUT_SIDE_FRONT, FALSE },
    { front_mm + 0.1, HUT_SIDE_FRONT, TRUE },
    { left_mm - 0.1, HUT_SIDE_LEFT, FALSE },
    { left_mm + 0.1, HUT_SIDE_LEFT, TRUE },
    { 95, HUT_SIDE_BACK, TRUE },
    { 95, HUT_SIDE_RIGHT, TRUE },
    { 95, HUT_SIDE_TOP, FALSE },
  };

  assert_near (box.min.z, 6, 1e-9);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      Case here = box_with_block (cases[i].top_mm);

      if (names_gap (&here, cases[i].side) != cases[i].seen)
        fail_msg ("case %u: the gap on side %d is %s", i, cases[i].side,
                  cases[i].seen ? "not named" : "named");
      case_clear (&here);
    }
  case_clear (&probe);
}

static void
baffles_along_the_seam_hide_it (void **state)
{
  HutDesign *design = hut_box_design_new ();
  Case open, closed;

  ((HutBody *)design->machine.bodies->pdata[0])->box.max.z = 100;
  open = case_new (hut_design_copy (design));
  for (HutSide side = HUT_SIDE_FRONT; side <= HUT_SIDE_RIGHT; side++)
    {
      HutBaffle *baffle = hut_baffle_new (side);

      g_free (baffle->stock);
      baffle->stock = g_strdup ("wall");
      g_ptr_array_add (design->baffles, baffle);
    }
  closed = case_new (design);
  assert_int_equal (closed.assembly->strips->len, 4);
  for (HutSide side = HUT_SIDE_FRONT; side <= HUT_SIDE_RIGHT; side++)
    assert_true (names_gap (&open, side) && !names_gap (&closed, side));
  case_clear (&open);
  case_clear (&closed);
}

/* In the shipped engraver's house the gantry is as high as the seam, and strips stand all round. */
static void
the_beads_between_the_ends_of_baffles_keep_an_engraver_dark (void **state)
{
  Case here = case_new (hut_example_load ("engraver", NULL));
  g_autoptr(GArray) open = NULL;
  guint gaps = 0;

  for (HutSide side = 0; side < HUT_SIDE_COUNT; side++)
    assert_false (names_gap (&here, side));
  /* Without them light goes through the slots at the rear, 0.5 mm wide, and out on the left and right. */
  for (guint i = here.assembly->solids->len; i-- > 0;)
    {
      const HutBox3 box = g_array_index (here.assembly->solids, HutSolid, i).box;

      if (g_array_index (here.assembly->solids, HutSolid, i).kind == HUT_SOLID_BAFFLE
          && box.max.y - box.min.y < 1)
        g_array_remove_index (here.assembly->solids, i);
    }
  open = hut_leaks_find (here.assembly, here.parts);
  for (guint i = 0; i < open->len; i++)
    {
      const HutLeak *leak = &g_array_index (open, HutLeak, i);

      if (leak->hole != NULL)
        continue;
      assert_true (leak->side == HUT_SIDE_LEFT || leak->side == HUT_SIDE_RIGHT);
      gaps++;
    }
  assert_int_equal (gaps, 2);
  case_clear (&here);
}

static void
a_box_without_seam_in_sight_is_dark (void **state)
{
  Case here = box_with_block (30);

  assert_int_equal (here.leaks->len, 0);
  case_clear (&here);
}

/* ---- openings ------------------------------------------------------------------------------ */

/* Whether a ray in at @p and out at @q of the front wall, 6 mm thick, comes out of a box: slab by
 * slab. */
static gboolean
comes_from (const HutBox3 *box,
            HutPoint p,
            HutPoint q)
{
  const double way[3] = { p.u - q.u, 6, p.v - q.v }, at[3] = { q.u, 0, q.v };
  const double lo[3] = { box->min.x, box->min.y, box->min.z },
               hi[3] = { box->max.x, box->max.y, box->max.z };
  double from = 1, to = INFINITY;

  for (int i = 0; i < 3; i++)
    {
      if (way[i] == 0)
        {
          if (at[i] < lo[i] || at[i] > hi[i])
            return FALSE;
          continue;
        }
      from = MAX (from, MIN ((lo[i] - at[i]) / way[i], (hi[i] - at[i]) / way[i]));
      to = MIN (to, MAX ((lo[i] - at[i]) / way[i], (hi[i] - at[i]) / way[i]));
    }
  return to > from;
}

static void
round_holes_in_the_front_are_named_when_rays_through_them_meet_the_block (void **state)
{
  const guint64 first = hut_random_first_seed (), count = CLAMP (hut_random_seed_count (150), 40, 300);
  guint named = 0;

  for (guint64 seed = first; seed < first + count; seed++)
    {
      HutDesign *design = hut_box_design_new ();
      HutOpening *opening = hut_box_design_add_opening (
          design, (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_FRONT }, HUT_SHAPE_ROUND);
      HutRandom random;
      HutBox3 box;
      HutPoint middle;
      Case here;
      gboolean met = FALSE, found;
      double r_mm;

      hut_random_init (&random, seed);
      opening->diameter_mm = hut_random_octaves (&random, 0.3, 8);
      r_mm = opening->diameter_mm / 2;
      opening->at.u_offset_mm = hut_random_between (&random, -120, 120);
      opening->at.v_offset_mm = hut_random_between (&random, -25, 25);
      here = case_new (design);
      box = hut_assembly_body_box (here.assembly, here.design->machine.bodies->pdata[0]);
      middle = ((HutPlacedHole *)here.assembly->holes->pdata[0])->centre;
      found = names_hole (&here, here.assembly->holes->pdata[0], NULL);
      for (guint i = 0; i < 4000 && !met; i++)
        {
          const double a = hut_random_between (&random, 0, 2 * G_PI),
                       b = hut_random_between (&random, 0, 2 * G_PI);
          const double ra = r_mm * sqrt (hut_random_between (&random, 0, 0.998)),
                       rb = r_mm * sqrt (hut_random_between (&random, 0, 0.998));

          met = comes_from (&box, (HutPoint) { middle.u + ra * cos (a), middle.v + ra * sin (a) },
                            (HutPoint) { middle.u + rb * cos (b), middle.v + rb * sin (b) });
        }
      if (met && !found)
        fail_msg ("seed %" G_GUINT64_FORMAT
                  ": rays meet the block through the hole, and no leak is named",
                  seed);
      if (found)
        {
          const HutLeak *leak = &g_array_index (here.leaks, HutLeak, 0);
          const double s0 = (0 - leak->from.y) / (leak->to.y - leak->from.y),
                       s1 = (6 - leak->from.y) / (leak->to.y - leak->from.y);

          /* It crosses both faces within the hole, and begins in the block. */
          assert_true (hypot (leak->from.x + s0 * (leak->to.x - leak->from.x) - middle.u,
                              leak->from.z + s0 * (leak->to.z - leak->from.z) - middle.v)
                       <= r_mm + 1e-5);
          assert_true (hypot (leak->from.x + s1 * (leak->to.x - leak->from.x) - middle.u,
                              leak->from.z + s1 * (leak->to.z - leak->from.z) - middle.v)
                       <= r_mm + 1e-5);
          assert_true (leak->from.x > box.min.x - 1e-5 && leak->from.x < box.max.x + 1e-5
                       && leak->from.z > box.min.z - 1e-5 && leak->from.z < box.max.z + 1e-5);
        }
      named += found;
      case_clear (&here);
    }
  assert_true (named > count / 5 && named < count - count / 10);
}

static void
what_a_service_fills_is_closed (void **state)
{
  HutDesign *design = hut_box_design_new ();
  HutOpening *opening = hut_box_design_add_opening (
      design, (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_FRONT }, HUT_SHAPE_ROUND);
  HutDesign *filled;
  Case open, closed;

  opening->diameter_mm = 40;
  ((HutBody *)design->machine.bodies->pdata[0])->box.max.z = 40; /* the seam is out of sight */
  filled = hut_design_copy (design);
  g_ptr_array_add (filled->machine.services, hut_service_new ("hose", HUT_SERVICE_HOSE));
  ((HutOpening *)filled->openings->pdata[0])->serves = g_strdup ("hose");
  open = case_new (design);
  closed = case_new (filled);
  assert_int_equal (open.leaks->len, 1);
  assert_int_equal (closed.leaks->len, 0);
  case_clear (&open);
  case_clear (&closed);
}

/* ---- random designs ------------------------------------------------------------------------ */

/* TRUE when a world point lies in a part: by the part's matrix, which has a turned frame. */
static gboolean
lies_in_part (const Case *self,
              const HutPart *part,
              HutVec3 p)
{
  double m[16], off[3], f[3];

  hut_part_get_matrix (part, self->assembly, m);
  off[0] = p.x - m[3];
  off[1] = p.y - m[7];
  off[2] = p.z - m[11];
  for (int k = 0; k < 3; k++)
    f[k] = m[k] * off[0] + m[4 + k] * off[1] + m[8 + k] * off[2];
  if (part->panel == HUT_PART_NO_PANEL || f[2] > -1e-3 || f[2] < -part->thickness_mm + 1e-3)
    return FALSE;
  if (hut_path_locate (part->region->outer, (HutPoint) { f[0], f[1] }) != HUT_PATH_SIDE_INSIDE)
    return FALSE;
  for (guint i = 0; i < part->region->holes->len; i++)
    if (hut_path_locate (part->region->holes->pdata[i], (HutPoint) { f[0], f[1] })
        != HUT_PATH_SIDE_OUTSIDE)
      return FALSE;
  return TRUE;
}

static void
check_ray (const Case *self,
           const HutLeak *leak,
           guint64 seed)
{
  const HutBox3 box = hut_assembly_body_box (self->assembly, leak->body);
  const HutVec3 outer = self->assembly->outer_mm, to = leak->to, from = leak->from;
  const HutBox3 start = { from, from };
  const guint steps = 600;

  if (hut_box3_distance_mm (&box, &start) > 1e-4)
    fail_msg ("seed %" G_GUINT64_FORMAT ": a leak begins outside of its source", seed);
  if (to.x > 0 && to.x < outer.x && to.y > 0 && to.y < outer.y && to.z < outer.z)
    fail_msg ("seed %" G_GUINT64_FORMAT ": a leak ends inside", seed);
  for (guint i = 0; i <= steps; i++)
    {
      const double s = (double)i / steps;
      const HutVec3 p = { from.x + s * (to.x - from.x), from.y + s * (to.y - from.y),
                          from.z + s * (to.z - from.z) };

      for (guint k = 0; k < self->parts->parts->len; k++)
        if (lies_in_part (self, self->parts->parts->pdata[k], p))
          fail_msg ("seed %" G_GUINT64_FORMAT ": a leak runs through %s", seed,
                    ((HutPart *)self->parts->parts->pdata[k])->id);
    }
}

static gboolean
lies_inside (const HutAssembly *assembly,
             HutVec3 p)
{
  const HutBox3 point = { p, p };

  return hut_box3_distance_mm (&point, &assembly->inside) == 0;
}

/* Rays from random points of a source to random points of an open hole: one that is free makes the
 * hole a leak. */
static guint
shoot_at_holes (const Case *self,
                HutRandom *random,
                guint64 seed)
{
  guint free_count = 0;

  for (guint h = 0; h < self->assembly->holes->len; h++)
    {
      const HutPlacedHole *hole = self->assembly->holes->pdata[h];
      const HutOpening *opening = hut_design_get_opening (self->assembly->design, hole->item);
      const HutPanel *panel = self->assembly->panels->pdata[hole->panel];
      const HutPath *path = hole->paths->len > 0 ? hole->paths->pdata[0] : NULL;

      if (opening == NULL || opening->serves != NULL || !hole->cut || path == NULL
          || panel->id.side == HUT_SIDE_BOTTOM)
        continue;
      for (guint i = 0; i < 60; i++)
        {
          const HutBody *body
              = self->assembly->design->machine.bodies
                    ->pdata[hut_random_below (random, self->assembly->design->machine.bodies->len)];
          const HutBox3 box = hut_assembly_body_box (self->assembly, body);
          const HutRect b = hut_path_bounds (path);
          const HutVec3 aim = hut_frame3_to_world (
              &panel->frame, hut_random_between (random, b.u0, b.u1),
              hut_random_between (random, b.v0, b.v1), -0.5 * panel->thickness_mm);
          const HutVec3 from = { hut_random_between (random, box.min.x, box.max.x),
                                 hut_random_between (random, box.min.y, box.max.y),
                                 hut_random_between (random, box.min.z, box.max.z) };
          const HutVec3 to
              = { aim.x + (aim.x - from.x), aim.y + (aim.y - from.y), aim.z + (aim.z - from.z) };

          if (body->kind != HUT_BODY_MOVING || !lies_inside (self->assembly, from)
              || !hut_ray_is_free (self->assembly, self->parts, from, to))
            continue;
          free_count++;
          if (!names_hole (self, hole, body))
            fail_msg ("seed %" G_GUINT64_FORMAT ": a ray leaves through %s, and no leak is named",
                      seed, hole->item);
        }
    }
  return free_count;
}

static void
leaks_of_random_designs_are_real_and_rays_find_no_other_opening (void **state)
{
  const guint64 first = hut_random_first_seed (), count = MIN (hut_random_seed_count (25), 100);
  guint gaps = 0, holes = 0, rays = 0;

  for (guint64 seed = first; seed < first + count; seed++)
    {
      Case here = case_new (hut_random_design (seed));
      HutRandom random;

      hut_random_init (&random, seed);
      for (guint i = 0; i < here.leaks->len; i++)
        {
          const HutLeak *leak = &g_array_index (here.leaks, HutLeak, i);

          check_ray (&here, leak, seed);
          *(leak->hole == NULL ? &gaps : &holes) += 1;
        }
      if (here.assembly->whole)
        rays += shoot_at_holes (&here, &random, seed);
      case_clear (&here);
    }
  printf ("%u gaps, %u openings named; %u rays got out through openings\n", gaps, holes, rays);
  assert_true (gaps > 0 && holes > 0 && rays > 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_line_across_a_sheet_with_a_round_hole_is_in_two_pieces),
    cmocka_unit_test (the_seam_is_seen_from_as_low_as_its_slope_allows),
    cmocka_unit_test (baffles_along_the_seam_hide_it),
    cmocka_unit_test (the_beads_between_the_ends_of_baffles_keep_an_engraver_dark),
    cmocka_unit_test (a_box_without_seam_in_sight_is_dark),
    cmocka_unit_test (round_holes_in_the_front_are_named_when_rays_through_them_meet_the_block),
    cmocka_unit_test (what_a_service_fills_is_closed),
    cmocka_unit_test (leaks_of_random_designs_are_real_and_rays_find_no_other_opening),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
