/* tests/catalog/test-item-fault.c: items whose numbers cannot all be right.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "hut-item-text.h"
#include "hut-assert.h"

#define ITEM(attributes, inside)                                                                   \
  "<item id=\"a\" name=\"A\" words=\"\" group=\"control\" hold=\"snap\" mass-kg=\"0.01\" " attributes \
  ">" inside "</item>"
#define FAN(points)                                                                                  \
  "<item id=\"a\" name=\"A\" words=\"\" group=\"fan\" hold=\"snap\" mass-kg=\"0.01\">" points "</item>"
#define POINT(flow, pressure) "<fan-point flow-m3-h=\"" flow "\" pressure-pa=\"" pressure "\"/>"

static void
each_fault_is_told_with_its_line_and_what_is_allowed (void **state)
{
  static const struct
  {
    const char *item, *problem;
  } cases[] = {
    /* a negative thickness range */
    { ITEM ("thickness-min=\"3\" thickness-max=\"2\"", ""),
      "f:2: 'thickness-max' of item 'a' is 2; allowed: 0 for any, or not less than "
      "'thickness-min', which is 3 mm" },
    { ITEM ("thickness-min=\"-1\"", ""),
      "f:2: smallest thickness of item 'a' is -1; allowed: 0 to 100 mm" },
    /* a unit that nothing here knows */
    { ITEM ("flange-width=\"25in\"", ""),
      "f:2: width of the flange of item 'a' is '25in', not a number; allowed: 0 to 2000 mm" },
    { ITEM ("from-outside=\"no\" from-inside=\"no\"", ""),
      "f:2: item 'a' can be mounted from no side; allowed: 'from-outside' or 'from-inside' yes" },
    /* a cutout outside its flange: 19 + 3 = 22 wide, the flange 20 */
    { ITEM ("flange-width=\"20\" flange-height=\"15\"",
            "<cut role=\"body\" shape=\"rectangle\" u=\"1.5\" width=\"19\" height=\"13\"/>"),
      "f:2: cut 1 of item 'a' is 1 mm outside its flange; allowed: within 20 x 15 mm" },
    /* the corner of a square of 10 is at 7.071 from the middle, a round flange of 13 ends at 6.5 */
    { ITEM ("flange-width=\"13\" flange-height=\"13\" flange-round=\"yes\"",
            "<cut role=\"body\" shape=\"rectangle\" width=\"10\" height=\"10\"/>"),
      "f:2: cut 1 of item 'a' is 0.571 mm outside its flange; allowed: within 13 x 13 mm" },
    /* a screw beside the flange */
    { ITEM ("flange-width=\"20\" flange-height=\"15\"",
            "<cut role=\"screw\" u=\"12\" thread=\"3\"/>"),
      "f:2: cut 1 of item 'a' is 2 mm outside its flange; allowed: within 20 x 15 mm" },
    { ITEM ("", "<cut role=\"screw\" thread=\"7\"/>"),
      "f:2: thread of cut 1 of item 'a' is 7; allowed: 2, 2.5, 3, 3.5, 4, 5, 6, 8 mm" },
    { ITEM ("", "<cut role=\"screw\" shape=\"slot\" thread=\"4\"/>"),
      "f:2: cut 1 of item 'a' is a screw whose hole is not round; allowed: round" },
    { ITEM ("", "<cut role=\"screw\" wood-screw=\"yes\"/>"),
      "f:2: cut 1 of item 'a' is a wood screw without 'thread'; allowed: its diameter" },
    { ITEM ("", "<cut role=\"body\"/>"),
      "f:2: cut 1 of item 'a' makes no hole; allowed: 'diameter' over 0" },
    { ITEM ("", "<cut role=\"body\" shape=\"flatted\" diameter=\"12\" height=\"12\"/>"),
      "f:2: cut 1 of item 'a' makes no hole; allowed: 'diameter' over 0, 'height' across the flat "
      "under it" },
    { ITEM ("", "<cut role=\"pin\" leaf=\"1\" diameter=\"3\"/>"),
      "f:2: cut 1 of item 'a' is of leaf 1, but the item lies on one panel; allowed: leaf 0" },
    { ITEM ("", "<space side=\"front\" left=\"2\" right=\"1\" bottom=\"0\" top=\"1\" depth=\"3\"/>"),
      "f:2: space 1 of item 'a' ends before it starts; allowed: 'right' not less than 'left', 'top' "
      "not less than 'bottom'" },
    { ITEM ("pass-width=\"10\"", ""),
      "f:2: what passes item 'a' has no whole size; allowed: 'pass-width' and 'pass-height' both "
      "over 0, both the same where it is round" },
    { ITEM ("line-min=\"4\" line-max=\"3\"", ""),
      "f:2: 'line-max' of item 'a' is less than its 'line-min'; allowed: not less" },
    { FAN (""), "f:2: item 'a' is a fan without a curve; allowed: 2 or more <fan-point>" },
    { FAN (POINT ("1", "20") POINT ("30", "0")),
      "f:2: point 1 of the curve of item 'a' is out of order; allowed: flow rising from 0, pressure "
      "not rising" },
    { FAN (POINT ("0", "20") POINT ("30", "21")),
      "f:2: point 2 of the curve of item 'a' is out of order; allowed: flow rising from 0, pressure "
      "not rising" },
    { FAN (POINT ("0", "20") POINT ("30", "1")),
      "f:2: the curve of item 'a' does not end at free flow; allowed: a last <fan-point> with "
      "'pressure-pa' 0" },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr(GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
      g_autoptr(GPtrArray) items = read_catalog (cases[i].item, problems);

      assert_int_equal (items->len, 0);
      assert_int_equal (problems->len, 1);
      assert_string_equal (g_ptr_array_index (problems, 0), cases[i].problem);
    }
}

static void
what_is_just_allowed_is_taken (void **state)
{
  static const char *const items[] = {
    ITEM ("thickness-min=\"3\" thickness-max=\"3\"", ""),
    ITEM ("flange-width=\"20\" flange-height=\"15\"",
          "<cut role=\"body\" shape=\"rectangle\" u=\"0.5\" width=\"19\" height=\"15\"/>"),
    ITEM ("flange-width=\"20\" flange-height=\"20\" flange-round=\"yes\"",
          "<cut role=\"body\" diameter=\"20\"/>"),
    ITEM ("flange-width=\"20\" flange-height=\"15\"", /* a tab may lie beside the front flange */
          "<cut role=\"pin\" u=\"12\" diameter=\"2.4\"/>"),
    ITEM ("", "<cut role=\"screw\" thread=\"2.8\" wood-screw=\"yes\"/>"),
    ITEM ("span=\"seam\"", "<cut role=\"screw\" leaf=\"1\" thread=\"4\"/>"),
    FAN (POINT ("0", "20") POINT ("10", "20") POINT ("30", "0")),
  };

  for (gsize i = 0; i < G_N_ELEMENTS (items); i++)
    {
      g_autoptr(GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
      g_autoptr(GPtrArray) read = read_catalog (items[i], problems);

      if (problems->len > 0)
        fail_msg ("%s", (const char *) g_ptr_array_index (problems, 0));
      assert_int_equal (read->len, 1);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_fault_is_told_with_its_line_and_what_is_allowed),
    cmocka_unit_test (what_is_just_allowed_is_taken),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
