/* tests/draw/test-built-model.c: blocks of panels tile them and do not overlap; poses move them.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-built-model.h"
#include "draw/hut-draw-case.h"
#include "hut-random-design.h"
#include "hut-random.h"

#define DESIGNS 60 /* or HUT_SEEDS */

static double
block_area_mm2 (const HutBuiltBlock *block)
{
  return (block->rect.u1 - block->rect.u0) * (block->rect.v1 - block->rect.v0);
}

static double
overlap_mm2 (HutRect a, HutRect b)
{
  const double u_mm = MIN (a.u1, b.u1) - MAX (a.u0, b.u0),
               v_mm = MIN (a.v1, b.v1) - MAX (a.v0, b.v0);

  return u_mm > 0.0 && v_mm > 0.0 ? u_mm * v_mm : 0.0;
}

/* The outline's length is that of the open sides: what is drawn as an edge is the outline. */
static void
check_panel (const HutAssembly *assembly,
             const HutBuiltModel *model,
             guint index,
             const char *label)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, index);
  double area_mm2 = 0.0, side_mm = 0.0;

  for (guint i = 0; i < model->blocks->len; i++)
    {
      const HutBuiltBlock *block = g_ptr_array_index (model->blocks, i);

      if (block->kind != HUT_BUILT_PANEL || block->panel != (int)index)
        continue;
      area_mm2 += block_area_mm2 (block);
      for (guint s = 0; s < block->sides->len; s++)
        side_mm += g_array_index (block->sides, HutBuiltSide, s).to_mm
                   - g_array_index (block->sides, HutBuiltSide, s).from_mm;
      for (guint j = 0; j < i; j++)
        {
          const HutBuiltBlock *other = g_ptr_array_index (model->blocks, j);

          if (other->kind == HUT_BUILT_PANEL && other->panel == (int)index
              && overlap_mm2 (block->rect, other->rect) > 1e-6)
            fail_msg ("%s: two blocks of panel %u overlap", label, index);
        }
    }
  if (fabs (area_mm2 - hut_path_area_mm2 (panel->region->outer)) > 1e-4
      || fabs (side_mm - hut_path_length_mm (panel->region->outer)) > 1e-4)
    fail_msg ("%s: panel %u: blocks of %g mm2 with %g mm of sides, outline of %g mm2 and %g mm",
              label, index, area_mm2, side_mm, hut_path_area_mm2 (panel->region->outer),
              hut_path_length_mm (panel->region->outer));
}

static void
blocks_of_random_panels_tile_their_outlines (void **state)
{
  const guint64 first = hut_random_first_seed (), count = hut_random_seed_count (DESIGNS);
  const HutBuiltPose pose = { 0 };

  for (guint64 seed = first; seed < first + count; seed++)
    {
      HutDesign *design = hut_random_design (seed);
      g_autoptr (HutAssembly) assembly = hut_assembly_new (design);
      g_autoptr (HutBuiltModel) model = hut_built_model_new (assembly, NULL, &pose);
      g_autofree char *label = g_strdup_printf ("seed %" G_GUINT64_FORMAT, seed);

      for (guint i = 0; i < assembly->panels->len; i++)
        check_panel (assembly, model, i, label);
      hut_design_free (design);
    }
}

static const HutBuiltBlock *
first_block (const HutBuiltModel *model, int panel)
{
  for (guint i = 0; i < model->blocks->len; i++)
    {
      const HutBuiltBlock *block = g_ptr_array_index (model->blocks, i);

      if (block->panel == panel)
        return block;
    }
  fail_msg ("panel %d has no block", panel);
  return NULL;
}

static void
an_open_lid_has_turned_about_its_hinge (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  const HutAssembly *assembly = c.assembly;
  const HutBuiltPose open = { .lid_rad = G_PI_2 };
  const guint top = hut_draw_case_panel (&c, "lid-top"),
              front = hut_draw_case_panel (&c, "base-front");
  g_autoptr (HutBuiltModel) model = hut_built_model_new (assembly, c.parts, &open);
  const HutBuiltBlock *lid = first_block (model, (int)top), *base = first_block (model, (int)front);

  /* Hinge at the back: the top panel, which faced up, now faces back. */
  assert_near (lid->frame.w.y, 1.0, 1e-12);
  assert_near (base->frame.w.y, -1.0, 1e-12);
  /* Its front edge was deep in front of the hinge line; now it is as high above it. */
  const HutPanel *panel = g_ptr_array_index (assembly->panels, top);
  const HutVec3 was = hut_frame3_to_world (&panel->frame, 0, 0, 0);
  const HutVec3 is = hut_frame3_to_world (&lid->frame, 0, 0, 0);
  assert_near (is.z - assembly->hinge_point.z, assembly->hinge_point.y - was.y, 1e-9);
}

static void
a_hidden_lid_and_machine_are_not_there (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  const HutBuiltPose pose = { .hide_lid = TRUE, .hide_machine = TRUE };
  g_autoptr (HutBuiltModel) model = hut_built_model_new (c.assembly, c.parts, &pose);

  assert_true (model->blocks->len > 0);
  for (guint i = 0; i < model->blocks->len; i++)
    {
      const HutBuiltBlock *block = g_ptr_array_index (model->blocks, i);
      const HutPanel *panel = g_ptr_array_index (c.assembly->panels, (guint)block->panel);

      assert_true (block->kind != HUT_BUILT_STATIC && block->kind != HUT_BUILT_MOVING);
      assert_int_equal (panel->id.shell, HUT_SHELL_BASE);
    }
}

static void
an_exploded_panel_has_moved_straight_out (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("mini-router");
  const HutBuiltPose still = { 0 }, apart = { .explode_ratio = 1.0 };
  const guint right = hut_draw_case_panel (&c, "base-right");
  g_autoptr (HutBuiltModel) a = hut_built_model_new (c.assembly, c.parts, &still);
  g_autoptr (HutBuiltModel) b = hut_built_model_new (c.assembly, c.parts, &apart);
  const HutVec3 outer = c.assembly->outer_mm;
  const HutVec3 from = first_block (a, (int)right)->frame.origin,
                to = first_block (b, (int)right)->frame.origin;

  assert_near (to.x - from.x, MAX (outer.x, MAX (outer.y, outer.z)) / 2.0, 1e-9);
  assert_near (to.y, from.y, 1e-9);
  assert_near (to.z, from.z, 1e-9);
}

static void
moving_bodies_go_to_the_end_of_their_travel (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  const HutBuiltPose pose = { .motion_ratio = 1.0 };
  g_autoptr (HutBuiltModel) model = hut_built_model_new (c.assembly, c.parts, &pose);
  const GPtrArray *bodies = c.assembly->design->machine.bodies;
  guint found = 0;

  for (guint i = 0; i < bodies->len; i++)
    {
      const HutBody *body = g_ptr_array_index (bodies, i);
      const HutVec3 wanted
          = hut_vec3_add (hut_vec3_add (body->box.min, body->travel), c.assembly->machine_at);

      for (guint j = 0; body->kind == HUT_BODY_MOVING && j < model->blocks->len; j++)
        {
          const HutBuiltBlock *block = g_ptr_array_index (model->blocks, j);

          found += block->kind == HUT_BUILT_MOVING
                   && hypot (block->frame.origin.x - wanted.x, block->frame.origin.y - wanted.y)
                          < 1e-9;
        }
    }
  assert_true (found > 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (blocks_of_random_panels_tile_their_outlines),
    cmocka_unit_test (an_open_lid_has_turned_about_its_hinge),
    cmocka_unit_test (a_hidden_lid_and_machine_are_not_there),
    cmocka_unit_test (an_exploded_panel_has_moved_straight_out),
    cmocka_unit_test (moving_bodies_go_to_the_end_of_their_travel),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
