/* tests/sheets/test-stroke-font.c: letters of single strokes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-stroke-font.h"
#include "hut-assert.h"
#include <string.h>

static const char ALL[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-./^";

/* Strokes as text: points "u,v" parted by blanks, strokes by '|'; on the grid of 6 units. */
static char *
dup_shape (const char *text)
{
  g_autoptr(GPtrArray) strokes = hut_stroke_text_new (text, HUT_STROKE_HEIGHT_UNITS);
  GString *shape = g_string_new (NULL);

  for (guint i = 0; i < strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (strokes, i);

      for (guint k = 0; k < stroke->len; k++)
        {
          const HutPoint p = g_array_index (stroke, HutPoint, k);

          g_string_append_printf (shape, "%s%d,%d", k > 0 ? " " : i > 0 ? "|" : "",
                                  (int) lround (p.u), (int) lround (p.v));
        }
    }
  return g_string_free (shape, FALSE);
}

static void
letters_differ_from_each_other_and_from_the_box_of_unknown_ones (void **state)
{
  g_autoptr(GHashTable) seen = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  g_hash_table_add (seen, dup_shape ("#"));
  for (guint i = 0; ALL[i] != '\0'; i++)
    {
      const char text[] = { ALL[i], '\0' };

      if (!g_hash_table_add (seen, dup_shape (text)))
        fail_msg ("%s looks like another letter", text);
    }
}

static void
letters_lie_in_their_box_and_have_no_step_of_nothing (void **state)
{
  for (guint i = 0; ALL[i] != '\0'; i++)
    {
      const char text[] = { ALL[i], '\0' };
      g_autoptr(GPtrArray) strokes = hut_stroke_text_new (text, HUT_STROKE_HEIGHT_UNITS);

      assert_true (strokes->len > 0);
      for (guint j = 0; j < strokes->len; j++)
        {
          const GArray *stroke = g_ptr_array_index (strokes, j);

          assert_true (stroke->len >= 2);
          for (guint k = 0; k < stroke->len; k++)
            {
              const HutPoint p = g_array_index (stroke, HutPoint, k);

              if (p.u < 0 || p.u > HUT_STROKE_WIDTH_UNITS || p.v < 0
                  || p.v > HUT_STROKE_HEIGHT_UNITS)
                fail_msg ("%s leaves its box at %g,%g", text, p.u, p.v);
              if (k > 0 && hut_point_distance_mm (p, g_array_index (stroke, HutPoint, k - 1)) < 0.5)
                fail_msg ("%s stays on a point", text);
            }
        }
    }
}

/* Two strokes that run over each other would be burnt twice. */
static void
no_line_of_a_letter_is_scored_twice (void **state)
{
  for (guint i = 0; ALL[i] != '\0'; i++)
    {
      const char text[] = { ALL[i], '\0' };
      g_autoptr(GPtrArray) strokes = hut_stroke_text_new (text, HUT_STROKE_HEIGHT_UNITS);
      g_autoptr(GHashTable) seen = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

      for (guint j = 0; j < strokes->len; j++)
        {
          const GArray *stroke = g_ptr_array_index (strokes, j);

          for (guint k = 1; k < stroke->len; k++)
            {
              const HutPoint a = g_array_index (stroke, HutPoint, k - 1);
              const HutPoint b = g_array_index (stroke, HutPoint, k);
              const gboolean swap = a.u > b.u || (a.u == b.u && a.v > b.v);
              const HutPoint from = swap ? b : a, to = swap ? a : b;
              char *line = g_strdup_printf ("%ld,%ld %ld,%ld", lround (from.u), lround (from.v),
                                            lround (to.u), lround (to.v));

              if (!g_hash_table_add (seen, line))
                fail_msg ("%s scores a line twice", text);
            }
        }
    }
}

static void
the_letter_l_of_6_mm_is_two_lines_of_6_and_4_mm (void **state)
{
  g_autofree char *shape = dup_shape ("L");

  assert_string_equal (shape, "0,6 0,0 4,0");
}

static void
the_arrow_points_up (void **state)
{
  g_autofree char *shape = dup_shape ("^");

  assert_string_equal (shape, "2,0 2,6|0,4 2,6 4,4");
}

static void
small_letters_are_shown_as_capitals (void **state)
{
  g_autofree char *small = dup_shape ("lid-top-2");
  g_autofree char *large = dup_shape ("LID-TOP-2");

  assert_string_equal (small, large);
}

/* By hand: 3 letters at 5 mm: steps of 5 mm, the last one 4/6 * 5 mm wide. */
static void
three_letters_of_5_mm_are_13_and_a_third_wide (void **state)
{
  assert_near_mm (hut_stroke_text_width_mm ("ABC", 5.0), 2 * 5.0 + 10.0 / 3.0, 1e-12);
  assert_near_mm (hut_stroke_text_width_mm ("", 5.0), 0.0, 0.0);
}

static void
second_letter_begins_one_step_to_the_right (void **state)
{
  g_autoptr(GPtrArray) strokes = hut_stroke_text_new ("II", 12.0);
  const GArray *first = g_ptr_array_index (strokes, 0);
  const GArray *fourth = g_ptr_array_index (strokes, 3);

  assert_int_equal (strokes->len, 6);
  assert_near_mm (g_array_index (fourth, HutPoint, 0).u - g_array_index (first, HutPoint, 0).u,
                  12.0, 1e-12);
}

static void
a_blank_has_no_stroke (void **state)
{
  g_autoptr(GPtrArray) strokes = hut_stroke_text_new ("  ", 5.0);

  assert_int_equal (strokes->len, 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (letters_differ_from_each_other_and_from_the_box_of_unknown_ones),
    cmocka_unit_test (letters_lie_in_their_box_and_have_no_step_of_nothing),
    cmocka_unit_test (no_line_of_a_letter_is_scored_twice),
    cmocka_unit_test (the_letter_l_of_6_mm_is_two_lines_of_6_and_4_mm),
    cmocka_unit_test (the_arrow_points_up),
    cmocka_unit_test (small_letters_are_shown_as_capitals),
    cmocka_unit_test (three_letters_of_5_mm_are_13_and_a_third_wide),
    cmocka_unit_test (second_letter_begins_one_step_to_the_right),
    cmocka_unit_test (a_blank_has_no_stroke),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
