/* tests/assembly/test-shell-layout.c: slabs, frames and neighbours.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-shell-layout.h"
#include "hut-assert.h"
#include "hut-box-design.h"

static HutVec3
cross (HutVec3 a,
       HutVec3 b)
{
  return (HutVec3) { a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x };
}

/* DESIGN: seen from outside, u to the right, v up, w outwards. */
static void
frames_are_right_handed_and_look_outwards (void **state)
{
  static const HutVec3 outwards[HUT_SIDE_COUNT] = { { 0, -1, 0 }, { 0, 1, 0 }, { -1, 0, 0 }, { 1, 0, 0 }, { 0, 0, -1 }, { 0, 0, 1 } };
  const HutBox3 box = { { 1, 2, 3 }, { 11, 22, 33 } };

  for (int side = 0; side < HUT_SIDE_COUNT; side++)
    {
      double width_mm, height_mm;
      const HutFrame3 frame = hut_shell_layout_frame (&box, (HutSide) side, &width_mm, &height_mm);
      const HutBox3 face = hut_frame3_box (&frame, (HutRect) { 0, 0, width_mm, height_mm }, 0, 0);
      const HutVec3 w = cross (frame.u, frame.v);

      assert_near (hut_vec3_dot (w, outwards[side]), 1, 1e-12);
      assert_near (hut_vec3_dot (frame.w, outwards[side]), 1, 1e-12);
      /* The face lies on the box: its far side along w is the box's. */
      assert_near (hut_vec3_dot (face.max, outwards[side]),
                   hut_vec3_dot (outwards[side].x + outwards[side].y + outwards[side].z > 0 ? box.max : box.min, outwards[side]), 1e-12);
      assert_near (hut_vec3_dot (frame.v, (HutVec3) { 0, 0, 1 }), side < HUT_SIDE_BOTTOM ? 1 : 0, 1e-12);
    }
}

static void
neighbours_are_mutual_and_meet_on_one_line (void **state)
{
  const HutBox3 box = { { 0, 0, 0 }, { 30, 20, 10 } };

  for (int side = 0; side < HUT_SIDE_COUNT; side++)
    for (int edge = 0; edge < HUT_EDGE_COUNT; edge++)
      {
        const HutSide other = hut_shell_layout_neighbour ((HutSide) side, (HutEdge) edge);
        double width_mm, height_mm, other_width_mm, other_height_mm;
        const HutFrame3 frame = hut_shell_layout_frame (&box, (HutSide) side, &width_mm, &height_mm);
        const HutFrame3 other_frame = hut_shell_layout_frame (&box, other, &other_width_mm, &other_height_mm);
        /* The middle of the edge, in the world; it must lie in the other panel's plane. */
        const HutVec3 middle = hut_frame3_to_world (
            &frame, edge == HUT_EDGE_LEFT ? 0 : edge == HUT_EDGE_RIGHT ? width_mm : width_mm / 2,
            edge == HUT_EDGE_BOTTOM ? 0 : edge == HUT_EDGE_TOP ? height_mm : height_mm / 2, 0);
        const HutVec3 off = hut_vec3_add (middle, hut_vec3_scale (other_frame.origin, -1));

        assert_near (hut_vec3_dot (off, other_frame.w), 0, 1e-12);
        assert_true (hut_shell_layout_rank ((HutSide) side) != hut_shell_layout_rank (other));
      }
}

static void
hood_leaves_the_gap_between_base_and_lid (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  const HutIntrusion nothing = { { 0 } };
  const HutFit fit = hut_fit_find (design, &nothing);
  HutShellBox boxes[HUT_SHELL_COUNT];

  hut_shell_layout_boxes (design, &fit, boxes);
  assert_near_mm (boxes[HUT_SHELL_BASE].box.max.z, 90, 0);
  assert_near_mm (boxes[HUT_SHELL_LID].box.min.z, 91, 0);
  assert_near_mm (boxes[HUT_SHELL_LID].box.max.z, 162, 0);
  assert_false (boxes[HUT_SHELL_BASE].present[HUT_SIDE_TOP]);
  assert_false (boxes[HUT_SHELL_LID].present[HUT_SIDE_BOTTOM]);
}

static void
other_lids_lie_where_they_belong (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  const HutIntrusion nothing = { { 0 } };
  HutShellBox boxes[HUT_SHELL_COUNT];
  HutFit fit;

  design->shell.lid = HUT_LID_TOP;
  fit = hut_fit_find (design, &nothing);
  hut_shell_layout_boxes (design, &fit, boxes);
  assert_near_mm (boxes[HUT_SHELL_LID].box.min.z, 156, 0);  /* 162 - 6 */
  assert_near_mm (boxes[HUT_SHELL_BASE].box.max.z, 155, 0); /* less the gap */

  design->shell.lid = HUT_LID_FRONT;
  fit = hut_fit_find (design, &nothing);
  hut_shell_layout_boxes (design, &fit, boxes);
  assert_near_mm (boxes[HUT_SHELL_LID].box.max.y, 6, 0);
  assert_near_mm (boxes[HUT_SHELL_BASE].box.min.y, 7, 0);
  assert_near_mm (boxes[HUT_SHELL_BASE].box.max.z, 162, 0);
}

static void
inset_bottom_lies_between_the_walls_on_its_ledge (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  const HutIntrusion nothing = { { 0 } };
  g_autoptr(GPtrArray) panels = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_panel_free);
  HutFit fit;
  const HutPanel *bottom = NULL;

  design->shell.bottom = HUT_BOTTOM_INSET;
  fit = hut_fit_find (design, &nothing);
  hut_shell_layout_panels (design, &fit, panels);
  for (guint i = 0; i < panels->len; i++)
    {
      const HutPanel *panel = g_ptr_array_index (panels, i);

      if (panel->id.side == HUT_SIDE_BOTTOM)
        bottom = panel;
      else if (panel->id.shell == HUT_SHELL_BASE)
        assert_int_equal (panel->edges[HUT_EDGE_BOTTOM].kind, HUT_JOINT_NONE);
    }
  assert_non_null (bottom);
  assert_near_mm (bottom->width_mm, 300 - 2 * HUT_INSET_GAP_MM, 1e-9);
  assert_near_mm (bottom->height_mm, 200 - 2 * HUT_INSET_GAP_MM, 1e-9);
  assert_near_mm (bottom->frame.origin.z, 15, 1e-9); /* its lower face on the ledge */
  assert_int_equal (hut_path_get_count (bottom->region->outer), 4);
}

/* Both panels of an edge must agree on every finger border in the world. */
static void
finger_borders_agree_across_each_edge (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  const HutIntrusion nothing = { { 0 } };
  g_autoptr(GPtrArray) panels = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_panel_free);
  HutFit fit;
  guint compared = 0;

  fit = hut_fit_find (design, &nothing);
  hut_shell_layout_panels (design, &fit, panels);
  for (guint a = 0; a < panels->len; a++)
    for (guint b = 0; b < panels->len; b++)
      for (int ea = 0; ea < HUT_EDGE_COUNT; ea++)
        for (int eb = 0; eb < HUT_EDGE_COUNT; eb++)
          {
            const HutPanel *p = g_ptr_array_index (panels, a), *q = g_ptr_array_index (panels, b);
            const HutEdgeJoint *jp = &p->edges[ea], *jq = &q->edges[eb];

            if (jp->kind == HUT_JOINT_NONE || jq->kind == HUT_JOINT_NONE || !hut_panel_id_equal (jp->other, q->id)
                || !hut_panel_id_equal (jq->other, p->id))
              continue;
            compared++;
            assert_int_equal (jp->finger_count, jq->finger_count);
            assert_true (jp->owns_ends != jq->owns_ends);
            assert_near_mm (jp->end_mm - jp->start_mm, jq->end_mm - jq->start_mm, 1e-9);
          }
  assert_int_equal (compared, 2 * (8 + 8)); /* base: 4 corners and 4 bottom edges; lid: 4 corners and 4 top edges */
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (frames_are_right_handed_and_look_outwards),
    cmocka_unit_test (neighbours_are_mutual_and_meet_on_one_line),
    cmocka_unit_test (hood_leaves_the_gap_between_base_and_lid),
    cmocka_unit_test (other_lids_lie_where_they_belong),
    cmocka_unit_test (inset_bottom_lies_between_the_walls_on_its_ledge),
    cmocka_unit_test (finger_borders_agree_across_each_edge),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
