/* tests/assembly/test-part-mark.c: pockets, centres and countersinks on the parts.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-part.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"
#include "hut-test-item.h"

static const HutPanelId lid_front = { HUT_SHELL_LID, HUT_SIDE_FRONT };

typedef struct
{
  HutAssembly *assembly;
  HutPartSet *parts;
  const HutPart *part; /* the lid's front */
} Marked;

static Marked
new_marked (HutDesign *design)
{
  Marked marked = { .assembly = hut_assembly_new (design) };
  const int panel = hut_assembly_find_panel (marked.assembly, lid_front);

  marked.parts = hut_part_set_new (marked.assembly);
  for (guint i = 0; i < marked.parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (marked.parts->parts, i);

      if (part->kind == HUT_PART_PANEL && (int) part->panel == panel)
        marked.part = part;
    }
  hut_design_free (design);
  return marked;
}

static void
clear (Marked *marked)
{
  hut_part_set_free (marked->parts);
  hut_assembly_free (marked->assembly);
}

static const HutPartMark *
find (const HutPart *part,
      HutPartMarkKind kind)
{
  for (guint i = 0; i < part->marks->len; i++)
    if (((const HutPartMark *) g_ptr_array_index (part->marks, i))->kind == kind)
      return g_ptr_array_index (part->marks, i);
  return NULL;
}

static void
pocket_with_a_disc_has_outline_and_centre_and_the_hole_is_cut (void **state)
{
  HutDesign *design = hut_check_case_design ();
  Marked marked;
  const HutPartMark *pocket, *centre;
  HutRect bounds;

  hut_test_put (design, "switch", hut_test_item_new_switch (), lid_front, 186, 50);
  marked = new_marked (design);
  assert_int_equal (marked.part->marks->len, 2);
  pocket = find (marked.part, HUT_PART_MARK_POCKET);
  centre = find (marked.part, HUT_PART_MARK_CENTRE);
  assert_int_equal (pocket->face, HUT_FACE_INSIDE);
  assert_near_mm (pocket->depth_mm, 3.3, 1e-9);
  bounds = hut_path_bounds (pocket->path);
  assert_near_mm (bounds.u1 - bounds.u0, 24.0, 1e-9);
  assert_near_mm (bounds.u0, 186 - 12, 1e-9);
  bounds = hut_path_bounds (centre->path);
  assert_near_mm ((bounds.v0 + bounds.v1) / 2.0, 50.0, 1e-9);
  assert_false (hut_part_opens_by_hand (marked.part, 0));
  clear (&marked);
}

static void
hole_that_is_bored_first_is_scored_and_its_screws_are_cut (void **state)
{
  HutDesign *design = hut_check_case_design ();
  HutItem *item = hut_test_item_new_switch ();
  guint by_hand = 0;
  Marked marked;

  hut_test_item_add_screw (item, 0, 20, 0, 3);
  hut_test_put (design, "switch", item, lid_front, 186, 50)->pocket_way = HUT_POCKET_BORE;
  marked = new_marked (design);
  assert_non_null (find (marked.part, HUT_PART_MARK_OUTLINE));
  assert_int_equal (marked.part->region->holes->len, 2);
  for (guint i = 0; i < 2; i++)
    by_hand += hut_part_opens_by_hand (marked.part, i);
  assert_int_equal (by_hand, 1);
  clear (&marked);
}

static void
countersinks_are_outlined_at_their_sharp_diameter (void **state)
{
  HutDesign *design = hut_check_case_design ();
  HutItem *item = hut_test_item_new ("holder");
  HutRect bounds;
  Marked marked;

  hut_test_item_add_screw (item, 0, 0, 0, 4);
  hut_test_put (design, "holder", item, lid_front, 186, 50)->sunk = TRUE;
  marked = new_marked (design);
  assert_int_equal (marked.part->marks->len, 1);
  bounds = hut_path_bounds (find (marked.part, HUT_PART_MARK_SINK)->path);
  assert_near_mm (bounds.u1 - bounds.u0, 9.4, 1e-9); /* ISO 7046 M4, theoretical */
  clear (&marked);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (pocket_with_a_disc_has_outline_and_centre_and_the_hole_is_cut),
    cmocka_unit_test (hole_that_is_bored_first_is_scored_and_its_screws_are_cut),
    cmocka_unit_test (countersinks_are_outlined_at_their_sharp_diameter),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
