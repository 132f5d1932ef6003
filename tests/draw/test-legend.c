/* tests/draw/test-legend.c: the legend fits the box that it claims.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-legend.h"
#include "draw/hut-picture.h"
#include "hut-assert.h"

static const char *
lengthen (const char *msgid)
{
  return "a very much longer text than the English one";
}

static void
legend_stays_inside_its_measured_box (void **state)
{
  for (int longer = 0; longer < 2; longer++)
    {
      g_auto (HutPicture) picture = hut_picture_new (700, 500);
      HutInk ink;
      double width_px, height_px;

      hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), 700, 500, 0.0);
      ink.translate = longer ? lengthen : NULL;
      hut_legend_measure (&ink, &width_px, &height_px);
      hut_legend_draw (&ink, 100.0, 50.0);
      hut_ink_end (&ink);
      const double all_px2 = hut_picture_ink_px2 (&picture);
      assert_true (all_px2 > 500.0);
      cairo_set_operator (picture.cr, CAIRO_OPERATOR_CLEAR);
      cairo_rectangle (picture.cr, 100.0, 50.0, ceil (width_px), ceil (height_px));
      cairo_fill (picture.cr);
      assert_near (hut_picture_ink_px2 (&picture), 0.0, 0.0);
    }
}

static void
longer_texts_make_a_wider_legend (void **state)
{
  g_auto (HutPicture) picture = hut_picture_new (10, 10);
  HutInk ink;
  double plain_px, longer_px, height_px;

  hut_ink_begin (&ink, picture.cr, hut_palette_get (FALSE, FALSE), 10, 10, 0.0);
  hut_legend_measure (&ink, &plain_px, &height_px);
  ink.translate = lengthen;
  hut_legend_measure (&ink, &longer_px, &height_px);
  hut_ink_end (&ink);
  assert_true (longer_px > plain_px + 50.0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (legend_stays_inside_its_measured_box),
    cmocka_unit_test (longer_texts_make_a_wider_legend),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
