/* tests/engineering/test-figure.c: words, numbers and inputs of a figure.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "engineering/hut-figure.h"
#include "hut-assert.h"

static void
check_number (double value,
              HutFigureUnit unit,
              const char *expected)
{
  g_autofree char *text = hut_figure_dup_number (value, unit, NULL, ".");

  assert_string_equal (text, expected);
}

static void
numbers_have_three_digits_and_their_unit (void **state)
{
  check_number (118.37, HUT_FIGURE_M3_H, "118\302\240m³/h");
  check_number (4.18699, HUT_FIGURE_M_S, "4.19\302\240m/s");
  check_number (0.04571, HUT_FIGURE_MM, "0.046\302\240mm");
  check_number (73.2, HUT_FIGURE_DEG, "73.2°");
  check_number (1234.4, HUT_FIGURE_COUNT, "1234");
  check_number (0.0, HUT_FIGURE_N, "0\302\240N");
  check_number (NAN, HUT_FIGURE_N, "–");
}

static void
the_decimal_mark_is_the_readers (void **state)
{
  g_autofree char *text = hut_figure_dup_number (4.18699, HUT_FIGURE_M_S, NULL, ",");

  assert_string_equal (text, "4,19\302\240m/s");
}

static void
the_name_stands_in_the_words (void **state)
{
  g_autoptr(GArray) figures = g_array_new (FALSE, FALSE, sizeof (HutFigure));
  HutFigure *figure;
  g_autofree char *words = NULL;

  g_array_set_clear_func (figures, (GDestroyNotify)hut_figure_clear);
  figure = hut_figure_add (figures, HUT_SUBJECT_AIR, "air.test");
  hut_figure_say (figure, "“{what}” is near.", 3.0, HUT_FIGURE_MM, TRUE);
  figure->what = g_strdup ("Vent");
  words = hut_figure_dup_words (figure, NULL);
  assert_string_equal (words, "“Vent” is near.");
  assert_true (figure->known && figure->has_value && figure->concern);
}

static void
what_is_not_known_has_no_number (void **state)
{
  g_autoptr(GArray) figures = g_array_new (FALSE, FALSE, sizeof (HutFigure));
  HutFigure *figure = hut_figure_add (figures, HUT_SUBJECT_HEAT, "heat.test");

  hut_figure_ask (figure, "Enter it.", "measure");
  assert_false (figure->known);
  assert_false (figure->has_value);
  assert_true (isnan (figure->value));
  assert_string_equal (figure->step, "measure");
}

static void
more_inputs_than_there_is_room_for_are_dropped (void **state)
{
  g_autoptr(GArray) figures = g_array_new (FALSE, FALSE, sizeof (HutFigure));
  HutFigure *figure = hut_figure_add (figures, HUT_SUBJECT_HEAT, "heat.test");

  for (guint i = 0; i < HUT_FIGURE_INPUTS_MAX + 3; i++)
    hut_figure_put (figure, "x", "x", i, HUT_FIGURE_MM);
  assert_int_equal (figure->n_inputs, HUT_FIGURE_INPUTS_MAX);
  assert_near (figure->inputs[HUT_FIGURE_INPUTS_MAX - 1].value, HUT_FIGURE_INPUTS_MAX - 1, 0.0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (numbers_have_three_digits_and_their_unit),
    cmocka_unit_test (the_decimal_mark_is_the_readers),
    cmocka_unit_test (the_name_stands_in_the_words),
    cmocka_unit_test (what_is_not_known_has_no_number),
    cmocka_unit_test (more_inputs_than_there_is_room_for_are_dropped),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
