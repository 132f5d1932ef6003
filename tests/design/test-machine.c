/* tests/design/test-machine.c: measured bodies, what crosses the wall, and the room they sweep.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "design/hut-design.h"
#include "hut-assert.h"

static void
assert_box (HutBox3 box,
            HutVec3 min,
            HutVec3 max)
{
  assert_near_mm (box.min.x, min.x, 0.0);
  assert_near_mm (box.min.y, min.y, 0.0);
  assert_near_mm (box.min.z, min.z, 0.0);
  assert_near_mm (box.max.x, max.x, 0.0);
  assert_near_mm (box.max.y, max.y, 0.0);
  assert_near_mm (box.max.z, max.z, 0.0);
}

static HutBody *
new_gantry (void)
{
  HutBody *gantry = hut_body_new ("gantry", HUT_BODY_MOVING);

  gantry->box = (HutBox3) { { 10, 20, 30 }, { 40, 50, 60 } };
  gantry->travel = (HutVec3) { 100, 0, -25 };
  return gantry;
}

static void
travel_widens_a_box_on_the_side_it_goes_to (void **state)
{
  g_autoptr(HutBody) gantry = new_gantry ();

  assert_box (hut_body_swept (gantry), (HutVec3) { 10, 20, 5 }, (HutVec3) { 140, 50, 60 });
}

static void
a_keep_out_travels_too (void **state)
{
  g_autoptr(HutBody) loop = new_gantry ();

  loop->kind = HUT_BODY_KEEP_OUT;
  assert_box (hut_body_swept (loop), (HutVec3) { 10, 20, 5 }, (HutVec3) { 140, 50, 60 });
}

static void
machine_sweeps_the_union_of_its_bodies (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new_empty ();
  HutBody *frame = hut_body_new ("frame", HUT_BODY_STATIC);
  HutBox3 swept;

  frame->box = (HutBox3) { { -5, 0, 0 }, { 90, 80, 20 } };
  g_ptr_array_add (design->machine.bodies, frame);
  g_ptr_array_add (design->machine.bodies, new_gantry ());
  swept = hut_machine_swept (&design->machine);
  assert_box (swept, (HutVec3) { -5, 0, 0 }, (HutVec3) { 140, 80, 60 });
}

static void
machine_without_bodies_sweeps_nothing (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new_empty ();
  const HutBox3 swept = hut_machine_swept (&design->machine);

  assert_true (hut_box3_is_empty (&swept));
}

static void
copy_of_a_body_is_equal_and_its_own (void **state)
{
  g_autoptr(HutBody) gantry = new_gantry ();
  g_autoptr(HutBody) copy = hut_body_copy (gantry);

  assert_true (hut_body_equal (gantry, copy));
  assert_ptr_not_equal (copy->id, gantry->id);
  copy->travel.z = 0;
  assert_false (hut_body_equal (gantry, copy));
}

static void
new_service_has_a_head_that_is_no_smaller_than_its_line (void **state)
{
  for (int kind = HUT_SERVICE_LEAD; kind <= HUT_SERVICE_DUCT; kind++)
    {
      g_autoptr(HutService) service = hut_service_new ("line", (HutServiceKind) kind);
      g_autoptr(HutService) copy = hut_service_copy (service);

      assert_int_equal (service->kind, kind);
      assert_true (service->line_mm > 0.0);
      assert_true (MIN (service->head_width_mm, service->head_height_mm) >= service->line_mm);
      assert_true (hut_service_equal (service, copy));
      copy->at.y = 1;
      assert_false (hut_service_equal (service, copy));
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (travel_widens_a_box_on_the_side_it_goes_to),
    cmocka_unit_test (a_keep_out_travels_too),
    cmocka_unit_test (machine_sweeps_the_union_of_its_bodies),
    cmocka_unit_test (machine_without_bodies_sweeps_nothing),
    cmocka_unit_test (copy_of_a_body_is_equal_and_its_own),
    cmocka_unit_test (new_service_has_a_head_that_is_no_smaller_than_its_line),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
