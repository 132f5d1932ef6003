/* tests/export/test-cut-list.c: the parts as tables.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-export.h"
#include "export/hut-write.h"
#include "hut-assert.h"
#include "hut-hand-part.h"
#include <string.h>

#define HEAD                                                                             \
  "part,kind,panel,stock,thickness_mm,width_mm,height_mm,sheet,x_mm,y_mm,turn_deg,"      \
  "cut_length_mm,mass_kg,note\r\n"

static char *
dup_text (GBytes *bytes)
{
  gsize size;
  const char *data = g_bytes_get_data (bytes, &size);

  return g_strndup (data, size);
}

static char *
dup_cut_list (HutHandParts *hand,
              const char *mark)
{
  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);
  g_autoptr(GBytes) table
      = hut_write_marked_cut_list (hand->assembly, hand->parts, set, mark);

  return dup_text (table);
}

/* By hand. Kerf 0.2, so the cut starts 0.1 outside: the plate lies at 10.1. Cut 2 * (100.2 + 50.2).
 * Mass 100 * 50 * 6 mm3 * 700 kg/m3 = 0.021 kg. The strap of 20.5 x 300 is too high: it is turned
 * and, as the larger one, lies first; the plate above it begins at 10 + 20.7 + 5 + 0.1 = 35.8. The
 * strap's cut is 2 * (20.7 + 300.2); it weighs 0.02583 kg. */
static void
cut_list_says_what_where_and_how_much (void **state)
{
  HutHandParts *hand = *state;
  g_autofree char *table = NULL;

  hand->stock->kerf_mm = 0.2;
  hut_hand_parts_add_rect (hand, "plate", 100, 50);
  hut_hand_parts_add_rect (hand, "strap-1", 20.5, 300)->kind = HUT_PART_STRAP;
  table = dup_cut_list (hand, NULL);
  assert_string_equal (
      table, HEAD "plate,panel,base-front,ply,6,100,50,ply-sheet-01,10.1,35.8,0,300.8,0.021,\r\n"
                  "strap-1,strap,base-front,ply,6,20.5,300,ply-sheet-01,10.1,10.1,90,641.8,0.026,"
                  "\r\n");
}

static void
part_without_place_says_so (void **state)
{
  g_autofree char *table = NULL;

  hut_hand_parts_add_rect (*state, "huge", 1000, 1000);
  table = dup_cut_list (*state, NULL);
  assert_string_equal (
      table, HEAD "huge,panel,base-front,ply,6,1000,1000,,,,,4000,4.2,fits no sheet\r\n");
}

static void
mark_stands_in_every_row (void **state)
{
  g_autofree char *table = NULL;

  hut_hand_parts_add_rect (*state, "huge", 1000, 1000);
  hut_hand_parts_add_rect (*state, "plate", 100, 50);
  table = dup_cut_list (*state, "CHECKS OVERRIDDEN: bed.part, cut.web");
  assert_string_equal (
      table,
      HEAD "huge,panel,base-front,ply,6,1000,1000,,,,,4000,4.2,"
           "\"fits no sheet; CHECKS OVERRIDDEN: bed.part, cut.web\"\r\n"
           "plate,panel,base-front,ply,6,100,50,ply-sheet-01,10,10,0,300,0.021,"
           "\"CHECKS OVERRIDDEN: bed.part, cut.web\"\r\n");
}

/* RFC 4180, 2.6 and 2.7: such a field is quoted, and its quotes are doubled. */
static void
field_with_comma_or_quote_is_quoted (void **state)
{
  g_autofree char *table = NULL;

  hut_hand_parts_add_rect (*state, "a \"b\", c", 100, 50);
  table = dup_cut_list (*state, NULL);
  assert_true (g_str_has_prefix (table, HEAD "\"a \"\"b\"\", c\",panel,"));
}

static void
part_that_kerf_swallows_has_no_cut_length (void **state)
{
  HutHandParts *hand = *state;
  g_autofree char *table = NULL;

  hand->stock->kerf_mm = 1.0;
  hut_region_take_hole (hut_hand_parts_add_rect (hand, "a", 100, 50)->region,
                        hut_path_new_rect ((HutRect) { 20, 20, 20.5, 40 }, 0));
  table = dup_cut_list (hand, NULL);
  assert_non_null (strstr (table, ",ply-sheet-01,10.5,10.5,0,,0.021,\r\n"));
}

/* 0.2 x 0.1 m of 6 mm at 700 kg/m3: 0.084 kg. */
static void
bought_part_is_on_its_own_list_only (void **state)
{
  HutHandParts *hand = *state;
  HutPart *pane = hut_hand_parts_add_rect (hand, "pane", 200, 100);
  g_autoptr(GBytes) bought = NULL;
  g_autofree char *bought_text = NULL;
  g_autofree char *table = NULL;

  pane->bought = TRUE;
  pane->kind = HUT_PART_GLAZING;
  bought = hut_write_marked_cut_to_size (hand->assembly, hand->parts, NULL);
  bought_text = dup_text (bought);
  assert_string_equal (bought_text,
                       "part,kind,panel,stock,thickness_mm,width_mm,height_mm,thickness_from_mm,"
                       "thickness_to_mm,larger_by_mm,smaller_by_mm,diagonals_mm,openings,mass_kg,"
                       "note\r\n"
                       "pane,glazing,base-front,ply,6,200,100,6,6,0,0.5,0.5,0,0.084,\r\n");
  table = dup_cut_list (hand, NULL);
  assert_string_equal (table, HEAD);
}

static void
pane_may_be_smaller_by_half_its_overlap_and_a_panel_off_both_ways (void **state)
{
  HutHandParts *hand = *state;
  HutPart *pane = hut_hand_parts_add_rect (hand, "pane", 300, 400);
  HutPart *floor_part = hut_hand_parts_add_rect (hand, "floor", 600, 800);
  HutWindow *window = hut_window_new ("view", (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_FRONT });
  const double thin_mm = 5.9, thick_mm = 6.2;
  g_autoptr(GBytes) bought = NULL;
  g_autofree char *text = NULL;

  window->overlap_mm = 1.2; /* a quarter on either side: 0.6 */
  g_ptr_array_add (hand->design->windows, window);
  g_array_set_size (hand->stock->readings_mm, 0);
  g_array_append_val (hand->stock->readings_mm, thin_mm);
  g_array_append_val (hand->stock->readings_mm, thick_mm);
  pane->bought = floor_part->bought = TRUE;
  pane->kind = HUT_PART_GLAZING;
  pane->item = window->id;
  hut_region_take_hole (floor_part->region, hut_path_new_circle ((HutPoint) { 50, 50 }, 10));
  bought = hut_write_marked_cut_to_size (hand->assembly, hand->parts, NULL);
  text = dup_text (bought);
  /* Diagonals 500 and 1000: 0.5 and 1. */
  assert_non_null (strstr (text, ",300,400,5.9,6.2,0,0.6,0.5,0,"));
  assert_non_null (strstr (text, ",600,800,5.9,6.2,0.5,0.5,1,1,"));
}

static void
without_bought_parts_there_is_no_such_list (void **state)
{
  HutHandParts *hand = *state;

  hut_hand_parts_add_rect (hand, "frame", 200, 100)->kind = HUT_PART_FRAME;
  assert_null (hut_write_marked_cut_to_size (hand->assembly, hand->parts, NULL));
}

static void
public_writer_gives_the_list_without_mark (void **state)
{
  HutHandParts *hand = *state;
  g_autoptr(HutSheetSet) set = NULL;
  g_autoptr(GBytes) table = NULL;
  g_autofree char *text = NULL;
  g_autofree char *must = NULL;

  hut_hand_parts_add_rect (hand, "plate", 100, 50);
  set = hut_sheet_set_new (hand->assembly, hand->parts);
  table = hut_write_cut_list_csv (hand->assembly, hand->parts, set);
  text = dup_text (table);
  must = dup_cut_list (hand, NULL);
  assert_string_equal (text, must);
}

#define BY_HAND(test) cmocka_unit_test_setup_teardown (test, \
        hut_hand_parts_set_up, hut_hand_parts_tear_down)

int
main (void)
{
  const struct CMUnitTest tests[] = {
    BY_HAND (cut_list_says_what_where_and_how_much),
    BY_HAND (part_without_place_says_so),
    BY_HAND (mark_stands_in_every_row),
    BY_HAND (field_with_comma_or_quote_is_quoted),
    BY_HAND (part_that_kerf_swallows_has_no_cut_length),
    BY_HAND (bought_part_is_on_its_own_list_only),
    BY_HAND (pane_may_be_smaller_by_half_its_overlap_and_a_panel_off_both_ways),
    BY_HAND (without_bought_parts_there_is_no_such_list),
    BY_HAND (public_writer_gives_the_list_without_mark),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
