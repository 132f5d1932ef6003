/* tests/export/test-svg.c: sheets as SVG, measured by a renderer of others.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lengths and arcs of SVG files are compared with the model in test-dxf.c. */
#include "design/hut-file.h"
#include "export/hut-export.h"
#include "export/hut-write.h"
#include "hut-assert.h"
#include "hut-hand-part.h"
#include "hut-random-design.h"
#include "hut-random.h"
#include <librsvg/rsvg.h>
#include <string.h>

/* A layout will do: how good it is is not asked here. */
#define QUICK_WORK 1

#define RANDOM_DESIGNS 60
#define DESIGNS_LEAST 30
#define DOTS_PER_INCH 25.4 /* one pixel is one millimetre */
#define RENDERER_MM 1e-4   /* the renderer keeps single precision */

G_DEFINE_AUTOPTR_CLEANUP_FUNC (RsvgHandle, g_object_unref)

static RsvgHandle *
new_handle (GBytes *svg)
{
  g_autoptr(GError) error = NULL;
  gsize size;
  const guint8 *data = g_bytes_get_data (svg, &size);
  RsvgHandle *handle = rsvg_handle_new_from_data (data, size, &error);

  assert_ok (handle != NULL, error);
  rsvg_handle_set_dpi (handle, DOTS_PER_INCH);
  return handle;
}

static void
assert_size_mm (RsvgHandle *handle,
                double width_mm,
                double depth_mm)
{
  gboolean has_width = FALSE, has_height = FALSE, has_box = FALSE;
  RsvgLength width, height;
  RsvgRectangle box;
  double width_px = 0.0, height_px = 0.0;

  rsvg_handle_get_intrinsic_dimensions (handle, &has_width, &width, &has_height, &height, &has_box,
                                        &box);
  assert_true (has_width && has_height && has_box);
  assert_int_equal (width.unit, RSVG_UNIT_MM);
  assert_int_equal (height.unit, RSVG_UNIT_MM);
  assert_near_mm (width.length, width_mm, RENDERER_MM);
  assert_near_mm (height.length, depth_mm, RENDERER_MM);
  assert_near_mm (box.width, width_mm, RENDERER_MM);
  assert_near_mm (box.height, depth_mm, RENDERER_MM);
  assert_true (rsvg_handle_get_intrinsic_size_in_pixels (handle, &width_px, &height_px));
  assert_near_mm (width_px, width_mm, RENDERER_MM);
  assert_near_mm (height_px, depth_mm, RENDERER_MM);
}

/* Where the renderer finds an element, mm from the upper left corner. */
static void
assert_element (RsvgHandle *handle,
                const char *id,
                double width_mm,
                double depth_mm,
                RsvgRectangle must)
{
  const RsvgRectangle page = { 0, 0, width_mm, depth_mm };
  RsvgRectangle ink, logical;
  g_autoptr(GError) error = NULL;

  assert_ok (rsvg_handle_get_geometry_for_layer (handle, id, &page, &ink, &logical, &error), error);
  assert_near_mm (logical.x, must.x, RENDERER_MM);
  assert_near_mm (logical.y, must.y, RENDERER_MM);
  assert_near_mm (logical.width, must.width, RENDERER_MM);
  assert_near_mm (logical.height, must.height, RENDERER_MM);
}

static GBytes *
new_svg (HutHandParts *hand,
         const char *mark)
{
  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);
  g_autoptr(GError) error = NULL;
  GBytes *svg = hut_write_marked_svg (hand->assembly, hand->parts,
                                      g_ptr_array_index (set->sheets, 0), mark, &error);

  assert_ok (svg != NULL, error);
  return svg;
}

static char *
dup_text (GBytes *bytes)
{
  gsize size;
  const char *data = g_bytes_get_data (bytes, &size);

  return g_strndup (data, size);
}

/* The part of 100 x 60 with corners of 10 and a hole of 15 lies at 10 from the left and the lower
 * edge of a sheet of 400 x 300: y of its top is 300 - 70. */
static void
add_plate (HutHandParts *hand)
{
  HutPart *plate
      = hut_hand_parts_take (hand, "plate", hut_path_new_rect ((HutRect) { 0, 0, 100, 60 }, 10));

  hut_region_take_hole (plate->region, hut_path_new_circle ((HutPoint) { 50, 30 }, 15));
}

static void
plate_lies_where_the_model_says_with_y_downwards (void **state)
{
  g_autoptr(GBytes) svg = NULL;
  g_autoptr(RsvgHandle) handle = NULL;

  add_plate (*state);
  svg = new_svg (*state, NULL);
  handle = new_handle (svg);
  assert_size_mm (handle, 400, 300);
  assert_element (handle, "#plate-outside", 400, 300, (RsvgRectangle) { 10, 230, 100, 60 });
  assert_element (handle, "#plate-inside-1", 400, 300, (RsvgRectangle) { 45, 245, 30, 30 });
}

/* Every character of the paths, worked out by hand; from (100, 10) up means towards smaller y. */
static void
plate_is_written_with_arcs_and_a_circle (void **state)
{
  g_autoptr(GBytes) svg = NULL;
  g_autofree char *text = NULL;

  add_plate (*state);
  svg = new_svg (*state, NULL);
  text = dup_text (svg);
  assert_non_null (strstr (
      text, "<path id=\"plate-outside\" d=\"M 20 290 L 100 290 A 10 10 0 0 0 110 280 L 110 240 "
            "A 10 10 0 0 0 100 230 L 20 230 A 10 10 0 0 0 10 240 L 10 280 A 10 10 0 0 0 20 290 "
            "Z\"/>"));
  assert_non_null (
      strstr (text, "<circle id=\"plate-inside-1\" cx=\"60\" cy=\"260\" r=\"15\"/>"));
}

static void
operations_are_groups_in_the_order_of_work (void **state)
{
  g_autoptr(GBytes) svg = NULL;
  g_autofree char *text = NULL;

  add_plate (*state);
  svg = new_svg (*state, NULL);
  text = dup_text (svg);

  const char *score = strstr (text, "<g id=\"score\" ");
  const char *inside = strstr (text, "<g id=\"cut-inside\" ");
  const char *outside = strstr (text, "<g id=\"cut-outside\" ");

  assert_true (score != NULL && inside != NULL && outside != NULL);
  assert_true (score < inside && inside < outside);
}

/* A half circle in one arc would lose its middle to rounding: no arc is over 100 degrees. */
static void
half_circle_is_written_in_two_pieces (void **state)
{
  g_autoptr(GBytes) svg = NULL;
  g_autofree char *text = NULL;

  HutPath *slot = hut_path_new ();

  hut_path_append (slot, (HutPoint) { 10, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (slot, (HutPoint) { 30, 0 }, 1, HUT_EDGE_PLAIN);
  hut_path_append (slot, (HutPoint) { 30, 20 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (slot, (HutPoint) { 10, 20 }, 1, HUT_EDGE_PLAIN);
  hut_hand_parts_take (*state, "slot", slot);
  svg = new_svg (*state, NULL);
  text = dup_text (svg);
  assert_non_null (strstr (text, "A 10 10 0 0 0 50 280 A 10 10 0 0 0 40 270"));
}

static void
names_with_signs_of_xml_are_escaped (void **state)
{
  HutHandParts *hand = *state;
  g_autoptr(GBytes) svg = NULL;
  g_autofree char *text = NULL;
  g_autoptr(RsvgHandle) handle = NULL;

  g_free (hand->design->name);
  hand->design->name = g_strdup ("Tom & \"Jo\" <4 mm>\001");
  add_plate (hand);
  svg = new_svg (hand, NULL);
  text = dup_text (svg);
  /* What XML cannot hold becomes U+FFFD. */
  assert_non_null (strstr (text, "<title>Tom &amp; &quot;Jo&quot; &lt;4 mm&gt;\xEF\xBF\xBD: "));
  handle = new_handle (svg);
}

static void
mark_of_overridden_checks_is_in_the_description (void **state)
{
  g_autoptr(GBytes) marked = NULL;
  g_autoptr(GBytes) plain = NULL;
  g_autofree char *marked_text = NULL;
  g_autofree char *plain_text = NULL;

  add_plate (*state);
  marked = new_svg (*state, "CHECKS OVERRIDDEN: cut.web");
  plain = new_svg (*state, NULL);
  marked_text = dup_text (marked);
  plain_text = dup_text (plain);
  assert_non_null (strstr (marked_text, "CHECKS OVERRIDDEN: cut.web</desc>"));
  assert_null (strstr (plain_text, "OVERRIDDEN"));
}

static void
same_sheet_gives_the_same_bytes (void **state)
{
  g_autoptr(GBytes) first = NULL;
  g_autoptr(GBytes) second = NULL;

  add_plate (*state);
  first = new_svg (*state, NULL);
  second = new_svg (*state, NULL);
  assert_true (g_bytes_equal (first, second));
}

/* ---- the size of every sheet ----------------------------------------------------------------- */

static guint
measure_sheets (const HutDesign *design)
{
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
  g_autoptr(HutSheetSet) sheets
      = hut_sheet_set_new_within (assembly, parts, QUICK_WORK, NULL);
  guint measured = 0;

  for (guint i = 0; i < sheets->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (sheets->sheets, i);
      /* A cut that kerf swallows cannot be written; test-tool-path.c looks at that. */
      g_autoptr(GBytes) svg = hut_write_sheet_svg (assembly, parts, sheet, NULL);

      if (svg == NULL)
        continue;

      g_autoptr(RsvgHandle) handle = new_handle (svg);

      assert_size_mm (handle, sheet->width_mm, sheet->depth_mm);
      measured++;
    }
  return measured;
}

static void
sheets_of_the_examples_have_their_true_size (void **state)
{
  for (const char *const *name = hut_example_names (); *name != NULL; name++)
    {
      g_autoptr(GError) error = NULL;
      g_autoptr(HutDesign) design = hut_example_load (*name, &error);

      assert_ok (design != NULL, error);
      assert_true (measure_sheets (design) > 0);
    }
}

static void
sheets_of_random_designs_have_their_true_size (void **state)
{
  const guint64 count = MAX (hut_random_seed_count (RANDOM_DESIGNS), DESIGNS_LEAST);
  guint measured = 0;

  for (guint64 seed = 1; seed <= count; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);

      measured += measure_sheets (design);
    }
  assert_true (measured >= count);
}

#define BY_HAND(test) cmocka_unit_test_setup_teardown (test, \
        hut_hand_parts_set_up, hut_hand_parts_tear_down)

int
main (void)
{
  const struct CMUnitTest tests[] = {
    BY_HAND (plate_lies_where_the_model_says_with_y_downwards),
    BY_HAND (plate_is_written_with_arcs_and_a_circle),
    BY_HAND (operations_are_groups_in_the_order_of_work),
    BY_HAND (half_circle_is_written_in_two_pieces),
    BY_HAND (names_with_signs_of_xml_are_escaped),
    BY_HAND (mark_of_overridden_checks_is_in_the_description),
    BY_HAND (same_sheet_gives_the_same_bytes),
    cmocka_unit_test (sheets_of_the_examples_have_their_true_size),
    cmocka_unit_test (sheets_of_random_designs_have_their_true_size),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
