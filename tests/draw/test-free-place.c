/* tests/draw/test-free-place.c: an opening placed without a pointer meets nothing.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-free-place.h"
#include "draw/hut-draw-case.h"
#include "draw/hut-snap.h"
#include "hut-random-design.h"

static const HutRect bounds = { -15, -15, 15, 15 };

static void
on_an_empty_panel_it_is_the_middle (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 10));
  const guint back = hut_draw_case_panel (&c, "base-back");
  const HutPanel *panel = g_ptr_array_index (c.assembly->panels, back);
  HutPoint at;

  assert_true (hut_free_place_find (c.assembly, back, bounds, &at));
  assert_near_mm (at.u, panel->width_mm / 2.0, 0.001);
  assert_near_mm (at.v, panel->height_mm / 2.0, 0.001);
}

static void
beside_a_hole_in_the_middle_it_keeps_the_web (void **state)
{
  HutDesign *design = hut_draw_case_box ("base-front", 0, 0, 30);
  HutOpening *hole = g_ptr_array_index (design->openings, 0);
  HutPoint at;

  hole->at.u_anchor = hole->at.v_anchor = HUT_ANCHOR_CENTRE;
  g_auto (HutDrawCase) c = hut_draw_case_take (design);
  const guint front = hut_draw_case_panel (&c, "base-front");
  const HutPanel *panel = g_ptr_array_index (c.assembly->panels, front);

  assert_true (hut_free_place_find (c.assembly, front, bounds, &at));
  const double off_mm
      = MAX (fabs (at.u - panel->width_mm / 2.0), fabs (at.v - panel->height_mm / 2.0));
  assert_true (off_mm >= 30.0 + panel->stock->smallest_web_mm - 1e-9);
  assert_true (off_mm
               <= 30.0 + panel->stock->smallest_web_mm + 8.0); /* and is not far away either */
}

static void
what_is_larger_than_the_panel_finds_none_and_gets_the_middle (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_take (hut_draw_case_box ("base-front", 100, 40, 10));
  const guint front = hut_draw_case_panel (&c, "base-front");
  const HutPanel *panel = g_ptr_array_index (c.assembly->panels, front);
  HutPoint at;

  assert_false (hut_free_place_find (c.assembly, front, (HutRect){ -500, -5, 500, 5 }, &at));
  assert_near_mm (at.u, panel->width_mm / 2.0, 0.001);
}

/* By another route than the search: no hole's bounds within the web, no edge within joint and web.
 */
static void
in_random_designs_the_place_is_free (void **state)
{
  guint found = 0;

  for (guint64 seed = 1; seed <= 60; seed++)
    {
      g_auto (HutDrawCase) c = hut_draw_case_take (hut_random_design (seed));

      for (guint i = 0; i < c.assembly->panels->len; i++)
        {
          const HutPanel *panel = g_ptr_array_index (c.assembly->panels, i);
          const double web_mm = panel->stock->smallest_web_mm;
          HutPoint at;

          if (!hut_free_place_find (c.assembly, i, bounds, &at))
            continue;
          found++;
          assert_true (at.u - 15 >= web_mm && at.u + 15 <= panel->width_mm - web_mm);
          assert_true (at.v - 15 >= web_mm && at.v + 15 <= panel->height_mm - web_mm);
          for (guint k = 0; k < c.assembly->holes->len; k++)
            {
              const HutPlacedHole *hole = g_ptr_array_index (c.assembly->holes, k);
              const HutRect b = hole->bounds;

              if (hole->panel != i)
                continue;
              const double du_mm = MAX (b.u0 - (at.u + 15), at.u - 15 - b.u1);
              const double dv_mm = MAX (b.v0 - (at.v + 15), at.v - 15 - b.v1);
              if (MAX (du_mm, dv_mm) < web_mm - 1e-9)
                fail_msg ("seed %" G_GUINT64_FORMAT ": web is %g mm, must be %g mm", seed,
                          MAX (du_mm, dv_mm), web_mm);
            }
        }
    }
  assert_true (found > 100);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (on_an_empty_panel_it_is_the_middle),
    cmocka_unit_test (beside_a_hole_in_the_middle_it_keeps_the_web),
    cmocka_unit_test (what_is_larger_than_the_panel_finds_none_and_gets_the_middle),
    cmocka_unit_test (in_random_designs_the_place_is_free),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
