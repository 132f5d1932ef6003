/* tests/assembly/test-window-screws.c: where the screws of a window's frame go.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-part.h"
#include "assembly/hut-window-screws.h"
#include "hut-assert.h"
#include "hut-box-design.h"
#include "hut-random-design.h"

static const HutPanelId front = { HUT_SHELL_BASE, HUT_SIDE_FRONT };

/* A box of 312 x 212 x 162 with walls of 6, web 5, and a window of 120 x 20, 10 over the panel. */
static HutWindow *
add (HutDesign *design,
     double thread_mm)
{
  HutWindow *window;

  hut_box_design_add_window (design, front);
  window = g_ptr_array_index (design->windows, 0);
  window->width_mm = 120.0;
  window->height_mm = 20.0;
  window->radius_mm = 0.0;
  window->overlap_mm = 10.0;
  window->screw_mm = thread_mm;
  hut_design_get_stock (design, window->frame_stock)->smallest_web_mm = 5.0;
  return window;
}

static void
a_bonded_frame_has_none (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  HutWindow *window = add (design, HUT_ROOM_FREE);
  const HutWindowScrews screws = hut_window_screws_find (design, window);
  g_autoptr(GPtrArray) paths = hut_window_screws_dup_paths (design, window);

  assert_int_equal (screws.count, 0);
  assert_near_mm (screws.rim_mm, 0, 0);
  assert_int_equal (paths->len, 0);
}

static void
the_rim_holds_the_screws_and_a_web_on_each_side (void **state)
{
  /* M4: hole 4.5 (ISO 273 medium). Rim 2 x (5 + 2.25) and a grid step each side = 14.502. The screws
   * stand on 120 + 20 + 14.502 = 154.502 by 54.502: two spaces across, one up, so six. */
  g_autoptr(HutDesign) design = hut_box_design_new ();
  HutWindow *window = add (design, 4.0);
  const HutWindowScrews screws = hut_window_screws_find (design, window);

  assert_near_mm (screws.hole_mm, 4.5, 0);
  assert_near_mm (screws.rim_mm, 14.502, 1e-9);
  assert_int_equal (screws.across, 2);
  assert_int_equal (screws.up, 1);
  assert_int_equal (screws.count, 6);
}

static void
thin_webs_leave_the_screws_own_edge_distance (void **state)
{
  /* Web 0.5: 0.5 + 2.75 is under 1.5 x 5 = 7.5. */
  g_autoptr(HutDesign) design = hut_box_design_new ();
  HutWindow *window = add (design, 5.0);

  hut_design_get_stock (design, window->frame_stock)->smallest_web_mm = 0.5;
  assert_near_mm (hut_window_screws_find (design, window).rim_mm, 15.002, 1e-9);
}

static void
their_length_follows_from_the_stack (void **state)
{
  /* Panel, glazing and frame of 6 each, two washers of 0.8, a nut of 3.2, 2 stand out: 24.8; the next
   * one is 25. */
  g_autoptr(HutDesign) design = hut_box_design_new ();
  HutWindow *window = add (design, 4.0);
  const HutWindowScrews screws = hut_window_screws_find (design, window);

  assert_near_mm (screws.least_mm, 24.8, 1e-9);
  assert_near_mm (screws.length_mm, 25, 0);
}

static const HutPart *
find_part (const HutPartSet *set,
           HutPartKind kind)
{
  for (guint i = 0; i < set->parts->len; i++)
    if (((const HutPart *) g_ptr_array_index (set->parts, i))->kind == kind)
      return g_ptr_array_index (set->parts, i);
  fail_msg ("no part of that kind");
  return NULL;
}

static void
panel_and_frame_have_the_holes_and_the_glazing_none (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutAssembly) assembly = NULL;
  g_autoptr(HutPartSet) set = NULL;
  const HutWindow *window = add (design, 4.0);
  HutRect frame, glazing;

  assembly = hut_assembly_new (design);
  set = hut_part_set_new (assembly);
  /* The window and its six screws. */
  assert_int_equal (hut_assembly_get_panel (assembly, front)->region->holes->len, 7);
  assert_int_equal (find_part (set, HUT_PART_FRAME)->region->holes->len, 7);
  assert_int_equal (find_part (set, HUT_PART_GLAZING)->region->holes->len, 0);
  frame = hut_region_bounds (find_part (set, HUT_PART_FRAME)->region);
  glazing = hut_region_bounds (find_part (set, HUT_PART_GLAZING)->region);
  assert_near_mm (glazing.u1 - glazing.u0, 140, 1e-9);
  assert_near_mm (frame.u1 - frame.u0, 140 + 2 * 14.502, 1e-9);
  /* The window itself comes before its screws. */
  assert_int_equal (hut_assembly_get_hole (assembly, window->id)->source, HUT_HOLE_WINDOW);
}

/* ---- random designs -------------------------------------------------------------------------- */

static void
assert_apart (const HutPlate *plate,
              const HutPlacedHole *hole,
              guint seed)
{
  const HutRect glazing = hut_region_bounds (plate->region);

  for (guint i = 0; i < hole->paths->len; i++)
    {
      const HutRect b = hut_path_bounds (g_ptr_array_index (hole->paths, i));

      if (b.u1 > glazing.u0 && b.u0 < glazing.u1 && b.v1 > glazing.v0 && b.v0 < glazing.v1)
        fail_msg ("seed %u: a screw goes through the glazing", seed);
      for (guint k = 0; k < i; k++)
        {
          const HutRect c = hut_path_bounds (g_ptr_array_index (hole->paths, k));

          if (b.u1 > c.u0 && b.u0 < c.u1 && b.v1 > c.v0 && b.v0 < c.v1)
            fail_msg ("seed %u: two screws in one place", seed);
        }
    }
}

static void
screws_of_random_windows_keep_off_the_glazing (void **state)
{
  const guint most = (guint) MAX (hut_random_seed_count (200), 40); /* few have screwed windows */
  guint n_holes = 0;

  for (guint seed = 0; seed < most; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design_with (seed, HUT_RANDOM_WINDOWS);
      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);

      for (guint i = 0; i < assembly->holes->len; i++)
        {
          const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);

          if (hole->source != HUT_HOLE_SCREWS)
            continue;
          for (guint k = 0; k < assembly->plates->len; k++)
            {
              const HutPlate *plate = g_ptr_array_index (assembly->plates, k);

              if (plate->kind == HUT_SOLID_GLAZING && g_strcmp0 (plate->item, hole->item) == 0)
                assert_apart (plate, hole, seed);
            }
          n_holes++;
        }
    }
  assert_true (n_holes > most / 20);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_bonded_frame_has_none),
    cmocka_unit_test (the_rim_holds_the_screws_and_a_web_on_each_side),
    cmocka_unit_test (thin_webs_leave_the_screws_own_edge_distance),
    cmocka_unit_test (their_length_follows_from_the_stack),
    cmocka_unit_test (panel_and_frame_have_the_holes_and_the_glazing_none),
    cmocka_unit_test (screws_of_random_windows_keep_off_the_glazing),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
