/* tests/design/test-design-writer.c: a design as canonical XML, there and back.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sample.h"
#include "hut-random-design.h"

#define N_RANDOM_DESIGNS 200

static void
canonical_file_is_written_as_it_was_read (void **state)
{
  g_autofree char *text = dup_sample ();
  g_autoptr(HutDesign) design = new_sample ();
  g_autofree char *again = hut_design_to_xml (design);

  assert_string_equal (again, text);
}

static void
any_design_comes_back_equal_and_with_the_same_bytes (void **state)
{
  for (guint64 seed = 0; seed < N_RANDOM_DESIGNS; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autofree char *text = hut_design_to_xml (design);
      g_autoptr(GError) error = NULL;
      g_autoptr(HutDesign) again = hut_design_from_xml (text, strlen (text), "random", &error);
      g_autofree char *again_text = NULL;

      if (again == NULL)
        fail_msg ("seed %" G_GUINT64_FORMAT ": %s", seed, error->message);
      again_text = hut_design_to_xml (again);
      if (!hut_design_equal (design, again) || strcmp (text, again_text) != 0)
        fail_msg ("seed %" G_GUINT64_FORMAT ": comes back different", seed);
    }
}

static void
names_of_any_script_are_written_as_they_are (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autofree char *text = NULL;

  g_free (design->name);
  design->name = g_strdup ("Öl & <\"機械\">\tA");
  text = hut_design_to_xml (design);
  assert_non_null (strstr (text, "name=\"Öl &amp; &lt;&quot;機械&quot;&gt;&#9;A\""));
}

static void
what_xml_cannot_hold_is_replaced_and_the_file_can_be_read (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autoptr(HutDesign) again = NULL;
  g_autoptr(GError) error = NULL;
  g_autofree char *text = NULL;

  g_free (design->name);
  design->name = g_strdup ("a\001b\xff\xef\xbf\xbf"); /* a control, a stray byte, U+FFFF */
  text = hut_design_to_xml (design);
  again = hut_design_from_xml (text, strlen (text), "f", &error);
  assert_ok (again != NULL, error);
  assert_string_equal (again->name, "a\uFFFDb\uFFFD\uFFFD");
}

static void
negative_zero_is_written_as_zero (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();
  g_autoptr(HutDesign) other = hut_design_copy (design);
  g_autofree char *text = NULL, *other_text = NULL;

  ((HutOpening *) g_ptr_array_index (other->openings, 0))->turn_deg = -0.0;
  text = hut_design_to_xml (design);
  other_text = hut_design_to_xml (other);
  assert_true (hut_design_equal (design, other));
  assert_string_equal (text, other_text);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (canonical_file_is_written_as_it_was_read),
    cmocka_unit_test (any_design_comes_back_equal_and_with_the_same_bytes),
    cmocka_unit_test (names_of_any_script_are_written_as_they_are),
    cmocka_unit_test (what_xml_cannot_hold_is_replaced_and_the_file_can_be_read),
    cmocka_unit_test (negative_zero_is_written_as_zero),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
