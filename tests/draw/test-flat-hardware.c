/* tests/draw/test-flat-hardware.c: bodies and pockets of hardware on the page.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "draw/hut-flat-hardware.h"
#include "draw/hut-draw-case.h"
#include "draw/hut-picture.h"
#include "hut-test-item.h"

static const HutPanelId lid_front = { HUT_SHELL_LID, HUT_SIDE_FRONT };

/* A switch in the middle of the lid's front, with a body behind and a pocket. */
static HutDrawCase
new_case (HutFace face)
{
  HutDesign *design = hut_draw_case_box ("base-right", 10, 10, 2);

  hut_test_put (design, "switch", hut_test_item_new_switch (), lid_front, 150, 35)->face = face;
  return hut_draw_case_take (design);
}

static double
ink_px2 (const HutDrawCase *c,
         const char *panel)
{
  const HutFlatStyle style = hut_flat_style_plain ();
  g_auto(HutPicture) picture = hut_picture_new (CASE_WIDTH_PX, CASE_HEIGHT_PX);
  HutInk ink;

  hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), CASE_WIDTH_PX, CASE_HEIGHT_PX,
                 0.0);
  hut_flat_hardware_draw (
      &(HutFlatScene){ &ink, c->assembly, c->parts, NULL, c->layout, c->view, &style },
      hut_draw_case_panel (c, panel));
  hut_ink_end (&ink);
  return hut_picture_ink_px2 (&picture);
}

static void
only_the_panel_that_has_it_shows_it (void **state)
{
  g_auto(HutDrawCase) c = new_case (HUT_FACE_OUTSIDE);

  assert_true (ink_px2 (&c, "lid-front") > 20.0);
  assert_near (ink_px2 (&c, "lid-back"), 0.0, 0.0);
}

static void
what_is_behind_has_gaps_in_its_lines_and_so_less_ink (void **state)
{
  g_auto(HutDrawCase) behind = new_case (HUT_FACE_OUTSIDE);
  g_auto(HutDrawCase) before = new_case (HUT_FACE_INSIDE);

  assert_true (ink_px2 (&behind, "lid-front") < 0.9 * ink_px2 (&before, "lid-front"));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (only_the_panel_that_has_it_shows_it),
    cmocka_unit_test (what_is_behind_has_gaps_in_its_lines_and_so_less_ink),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
