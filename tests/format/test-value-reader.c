/* tests/format/test-value-reader.c: the text of an attribute into a member of a struct.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "format/hut-value-reader.h"
#include "hut-assert.h"
#include <string.h>

static const HutAttributeFormat length_format = {
  .name = "length",
  .kind = HUT_VALUE_NUMBER,
  .label = "length",
  .unit = "mm",
  .least = -10,
  .most = 10,
};

static void
plain_decimals_are_taken_and_stored (void **state)
{
  static const struct
  {
    const char *text;
    double value;
  } cases[] = {
    { "0", 0 },      { "-0", 0 },       { "+1.5", 1.5 }, { "-2.25", -2.25 }, { ".5", 0.5 },
    { "5.", 5 },     { "1e1", 10 },     { "2E-3", 0.002 }, { "007", 7 },     { "-10", -10 },
    { "0.1e+1", 1 }, { "9.999999999999999999999999", 10 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      double value = 99.0;
      g_autofree char *fault = hut_value_read (&length_format, cases[i].text, &value);

      if (fault != NULL)
        fail_msg ("'%s' %s", cases[i].text, fault);
      assert_near (value, cases[i].value, 0.0);
      assert_false (signbit (value) && value == 0.0);
    }
}

static void
what_is_refused_leaves_the_member_alone (void **state)
{
  static const struct
  {
    const char *text, *fault;
  } cases[] = {
    { NULL, "is missing; allowed: -10 to 10 mm" },
    { "10.001", "is 10.001; allowed: -10 to 10 mm" },
    { "-1e999", "is -1e999; allowed: -10 to 10 mm" },
    { "nan", "is 'nan', not a number; allowed: -10 to 10 mm" },
    { "1 ", "is '1 ', not a number; allowed: -10 to 10 mm" },
    { "1e", "is '1e', not a number; allowed: -10 to 10 mm" },
    { "0x1p3", "is '0x1p3', not a number; allowed: -10 to 10 mm" },
    { "1\n2", "is '1?2', not a number; allowed: -10 to 10 mm" },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      double value = 99.0;
      g_autofree char *fault = hut_value_read (&length_format, cases[i].text, &value);

      assert_non_null (fault);
      assert_string_equal (fault, cases[i].fault);
      assert_near (value, 99.0, 0.0);
    }
}

static void
absent_optional_values_have_their_usual_value_or_are_null (void **state)
{
  HutAttributeFormat number = length_format;
  const HutAttributeFormat reference = {
    .name = "body", .kind = HUT_VALUE_REFERENCE, .refers_to = "body", .optional = TRUE,
  };
  double value = 3.0;
  char *text = g_strdup ("old");

  number.optional = TRUE;
  number.absent = -1.0;
  assert_null (hut_value_read (&number, NULL, &value));
  assert_near (value, -1.0, 0.0);
  assert_null (hut_value_read (&reference, NULL, &text));
  assert_null (text);

  const HutAttributeFormat choice = { .name = "c", .kind = HUT_VALUE_CHOICE, .optional = TRUE, .absent = 2 };
  guint place = 7;

  assert_null (hut_value_read (&choice, NULL, &place));
  assert_int_equal (place, 2);
}

static void
a_long_wrong_value_is_cut_in_the_message (void **state)
{
  g_autofree char *text = g_strnfill (5000, 'x');
  g_autofree char *shown = hut_value_dup_shown (text);

  assert_int_equal (strlen (shown), 43); /* 40 and "..." */
  assert_true (g_str_has_suffix (shown, "xxx..."));
}

static void
text_is_taken_up_to_its_limit (void **state)
{
  const HutAttributeFormat format = { .name = "name", .kind = HUT_VALUE_TEXT, .label = "name" };
  g_autofree char *longest = g_strnfill (HUT_TEXT_MAX_BYTES, 'x');
  g_autofree char *longer = g_strnfill (HUT_TEXT_MAX_BYTES + 1, 'x');
  g_autofree char *member = NULL;
  g_autofree char *fault = NULL;

  assert_null (hut_value_read (&format, longest, &member));
  assert_string_equal (member, longest);
  fault = hut_value_read (&format, longer, &member);
  assert_non_null (strstr (fault, "allowed: at most 2000 bytes of text"));
  assert_string_equal (member, longest);
}

static void
each_kind_says_what_it_allows (void **state)
{
  static const char *const colours[] = { "red", "green", NULL };
  const struct
  {
    HutAttributeFormat format;
    const char *allowed;
  } cases[] = {
    { length_format, "-10 to 10 mm" },
    { { .kind = HUT_VALUE_NUMBER, .unit = "", .least = 0.5, .most = 2 }, "0.5 to 2" },
    { { .kind = HUT_VALUE_COUNT, .unit = "", .least = 1, .most = 9 }, "whole numbers 1 to 9" },
    { { .kind = HUT_VALUE_SWITCH }, "yes, no" },
    { { .kind = HUT_VALUE_CHOICE, .choices = colours }, "red, green" },
    { { .kind = HUT_VALUE_REFERENCE, .refers_to = "stock" }, "the id of a <stock>" },
    { { .kind = HUT_VALUE_VERSION, .least = 3 }, "3" },
    { { .kind = HUT_VALUE_ID }, "a letter or '_', then letters, digits, '-', '_' and '.'" },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *allowed = hut_value_dup_allowed (&cases[i].format);

      assert_string_equal (allowed, cases[i].allowed);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (plain_decimals_are_taken_and_stored),
    cmocka_unit_test (what_is_refused_leaves_the_member_alone),
    cmocka_unit_test (absent_optional_values_have_their_usual_value_or_are_null),
    cmocka_unit_test (a_long_wrong_value_is_cut_in_the_message),
    cmocka_unit_test (text_is_taken_up_to_its_limit),
    cmocka_unit_test (each_kind_says_what_it_allows),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
