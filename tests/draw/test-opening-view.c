/* tests/draw/test-opening-view.c: an opening alone is drawn at scale.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-opening-view.h"
#include "draw/hut-picture.h"
#include "hut-assert.h"

static void
each_shape_covers_its_area (void **state)
{
  const HutPanelId panel = { HUT_SHELL_BASE, HUT_SIDE_FRONT };
  /* By hand, mm2: pi 15^2; 60 x 40 with corners of 5: 2400 - (4 - pi) 25; a slot of 50 x 20: 30 x
   * 20 + pi 10^2. */
  const double areas_mm2[] = { 706.86, 2378.54, 914.16 };

  for (int shape = HUT_SHAPE_ROUND; shape <= HUT_SHAPE_SLOT; shape++)
    {
      g_autoptr (HutOpening) opening = hut_opening_new ("o", panel, (HutShape)shape);
      g_auto (HutPicture) picture = hut_picture_new (300, 300);
      const double scale_px_per_mm = 4.0;

      opening->diameter_mm = 30;
      opening->width_mm = shape == HUT_SHAPE_SLOT ? 50 : 60;
      opening->height_mm = shape == HUT_SHAPE_SLOT ? 20 : 40;
      opening->radius_mm = shape == HUT_SHAPE_RECTANGLE ? 5 : 0;
      hut_opening_view_draw (picture.cr, opening, (HutColour){ 0, 0, 0 }, 1.0,
                             (HutPoint){ 150, 150 }, scale_px_per_mm);
      /* With half of the outline of 1.3 px around it. */
      const double outline_px2
          = 0.65 * 4.0 * sqrt (G_PI * areas_mm2[shape]) * scale_px_per_mm / 1.7;
      assert_near (hut_picture_ink_px2 (&picture), areas_mm2[shape] * 16.0 + outline_px2,
                   0.015 * areas_mm2[shape] * 16.0);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_shape_covers_its_area),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
