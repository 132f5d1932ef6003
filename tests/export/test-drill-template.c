/* tests/export/test-drill-template.c: where a part is bored by hand.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-drill-template.h"
#include "assembly/hut-part-private.h"
#include "hut-assert.h"
#include "hut-hand-part.h"

/* A pocket of 12 mm, 3.5 deep, at (30, 20) of a plate of 100 x 60, worked on from inside. */
static HutPart *
add_plate (HutHandParts *hand)
{
  HutPart *part = hut_hand_parts_add_rect (hand, "plate", 100, 60);
  HutPartMark *mark = g_new0 (HutPartMark, 1);
  const HutRect box = hut_region_bounds (part->region);

  mark->kind = HUT_PART_MARK_POCKET;
  mark->face = HUT_FACE_INSIDE;
  mark->depth_mm = 3.5;
  mark->path = hut_path_new_circle ((HutPoint) { box.u0 + 30, box.v0 + 20 }, 6);
  g_ptr_array_set_free_func (part->marks, (GDestroyNotify) hut_part_mark_free);
  g_ptr_array_add (part->marks, mark);
  return part;
}

static void
inside_is_seen_mirrored_with_a_cross_on_each_middle (void **state)
{
  HutHandParts hand;
  HutPoint size_mm;

  hut_hand_parts_init (&hand);

  const HutPart *part = add_plate (&hand);
  g_autoptr(GPtrArray) paths = hut_drill_template_dup_paths (part, HUT_FACE_INSIDE, &size_mm);
  const HutToolPath *edge = g_ptr_array_index (paths, 0);
  const HutToolPath *work = g_ptr_array_index (paths, 1);
  const HutToolPath *cross = g_ptr_array_index (paths, 2);
  const GArray *level = g_ptr_array_index (cross->strokes, 0);
  const GArray *upright = g_ptr_array_index (cross->strokes, 1);
  const HutRect outline = hut_path_bounds (edge->closed);
  HutPoint centre;
  double radius_mm;

  assert_near_mm (size_mm.u, 100, 1e-9);
  assert_near_mm (size_mm.v, 60, 1e-9);
  assert_near_mm (outline.u0, 0, 1e-9);
  assert_near_mm (outline.u1, 100, 1e-9);
  assert_near_mm (outline.v0, 0, 1e-9);
  /* By hand: 30 from the left is 70 from the left, seen from the other side. */
  assert_true (hut_path_get_circle (work->closed, &centre, &radius_mm));
  assert_near_mm (centre.u, 70, 1e-9);
  assert_near_mm (centre.v, 20, 1e-9);
  assert_near_mm (radius_mm, 6, 1e-9);
  for (guint i = 0; i < 2; i++)
    {
      assert_near_mm (g_array_index (level, HutPoint, i).v, 20, 1e-9);
      assert_near_mm (g_array_index (upright, HutPoint, i).u, 70, 1e-9);
    }
  hut_hand_parts_clear (&hand);
}

static void
only_the_worked_face_has_a_template_and_it_is_a_pdf (void **state)
{
  HutHandParts hand;
  g_autoptr(GError) error = NULL;

  hut_hand_parts_init (&hand);

  const HutPart *part = add_plate (&hand);
  g_autoptr(GBytes) bytes = hut_write_drill_template (hand.assembly, part, HUT_FACE_INSIDE,
                                                      "drill-plate-inside", NULL, &error);

  assert_ok (bytes != NULL, error);
  assert_memory_equal (g_bytes_get_data (bytes, NULL), "%PDF-", 5);
  assert_true (hut_part_has_hand_work (part, HUT_FACE_INSIDE));
  assert_false (hut_part_has_hand_work (part, HUT_FACE_OUTSIDE));
  hut_hand_parts_clear (&hand);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (inside_is_seen_mirrored_with_a_cross_on_each_middle),
    cmocka_unit_test (only_the_worked_face_has_a_template_and_it_is_a_pdf),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
