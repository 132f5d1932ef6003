/* tests/draw/test-sheet-view.c: all sheets are seen, with their parts where they lie.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-sheet-view.h"
#include "draw/hut-draw-case.h"
#include "draw/hut-picture.h"

static HutPicture
draw (const HutDrawCase *c,
      const HutSheetSet *sheets)
{
  const HutFlatStyle style = hut_flat_style_plain ();
  HutPicture picture = hut_picture_new (CASE_WIDTH_PX, CASE_HEIGHT_PX);

  hut_sheet_view_draw (picture.cr, c->assembly, c->parts, sheets, &style, CASE_WIDTH_PX,
                       CASE_HEIGHT_PX);
  assert_int_equal (cairo_status (picture.cr), CAIRO_STATUS_SUCCESS);
  return picture;
}

/* One stock and one size of sheet: the share of a sheet that parts cover is the same in mm2 and in
 * px2. */
static void
parts_cover_their_share_of_the_sheets (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("engraver");
  g_autoptr (HutSheetSet) sheets = hut_sheet_set_new (c.assembly, c.parts);
  g_auto (HutPicture) picture = draw (&c, sheets);
  const HutPalette *palette = hut_palette_get (FALSE, FALSE);
  double parts_mm2 = 0.0, sheets_mm2 = 0.0;

  assert_true (sheets->sheets->len > 1);
  for (guint i = 0; i < sheets->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (sheets->sheets, i);

      sheets_mm2 += sheet->width_mm * sheet->depth_mm;
      for (guint k = 0; k < sheet->laid->len; k++)
        {
          const HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, k);
          const HutPart *part = g_ptr_array_index (c.parts->parts, laid->part);

          parts_mm2 += hut_region_area_mm2 (part->region);
        }
    }
  const double parts_px2
      = hut_picture_count (&picture, palette->sheet, 0, 0, CASE_WIDTH_PX, CASE_HEIGHT_PX);
  const double waste_px2
      = hut_picture_count (&picture, palette->waste, 0, 0, CASE_WIDTH_PX, CASE_HEIGHT_PX);
  /* Lines and labels take some of both, more of the parts. */
  assert_near (parts_px2 / (parts_px2 + waste_px2), parts_mm2 / sheets_mm2, 0.07);
  assert_true (parts_px2 + waste_px2 > 0.25 * CASE_WIDTH_PX * CASE_HEIGHT_PX);
}

static void
parts_without_a_sheet_are_told (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("mini-router");
  g_autoptr (HutSheetSet) sheets = hut_sheet_set_new (c.assembly, c.parts);
  const guint index = 0;
  g_auto (HutPicture) before = draw (&c, sheets);

  assert_int_equal (sheets->unplaced->len, 0);
  g_array_append_val (sheets->unplaced, index);
  g_auto (HutPicture) after = draw (&c, sheets);
  const HutColour text = hut_palette_get (FALSE, FALSE)->text;
  assert_int_equal (
      hut_picture_count (&before, text, 0, CASE_HEIGHT_PX - 15, CASE_WIDTH_PX, CASE_HEIGHT_PX - 10),
      0);
  assert_true (
      hut_picture_count (&after, text, 0, CASE_HEIGHT_PX - 24, CASE_WIDTH_PX, CASE_HEIGHT_PX) > 20);
}

static void
no_sheets_is_no_fault (void **state)
{
  g_auto (HutDrawCase) c = hut_draw_case_example ("mini-router");
  g_autoptr (HutSheetSet) sheets = hut_sheet_set_new (c.assembly, c.parts);

  g_ptr_array_set_size (sheets->sheets, 0);
  g_auto (HutPicture) picture = draw (&c, sheets);
  assert_true (hut_picture_count (&picture, hut_palette_get (FALSE, FALSE)->text, 0,
                                  CASE_HEIGHT_PX - 24, CASE_WIDTH_PX, CASE_HEIGHT_PX)
               > 20);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (parts_cover_their_share_of_the_sheets),
    cmocka_unit_test (parts_without_a_sheet_are_told),
    cmocka_unit_test (no_sheets_is_no_fault),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
