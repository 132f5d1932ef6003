/* tests/format/test-xml.c: hostile XML is refused with a line, fast and in little memory.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "format/hut-xml.h"
#include "format/hut-file-error.h"
#include "hut-assert.h"
#include <string.h>
#include <time.h>

/* Time of the processor. Own choice: a hundred times what a refusal takes, a 100th of an attack. */
#define REFUSAL_MAX_S 10.0

/* Asserts that the bytes are refused as SYNTAX; returns the message. (transfer full) */
static char *
dup_refusal (const char *data,
             gsize size)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(xmlDoc) document = NULL;
  const clock_t start = clock ();

  document = hut_xml_parse (data, size, "f", &error);
  if (document != NULL)
    fail_msg ("taken: %.60s", data);
  assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_SYNTAX));
  assert_true ((double) (clock () - start) / CLOCKS_PER_SEC < REFUSAL_MAX_S);
  return g_strdup (error->message);
}

static void
assert_refused (const char *text,
                const char *start)
{
  g_autofree char *message = dup_refusal (text, strlen (text));

  if (!g_str_has_prefix (message, start))
    fail_msg ("message is\n%s\nmust start with\n%s", message, start);
}

static void
files_that_are_not_xml_are_refused (void **state)
{
  assert_refused ("", "f:1: the file is empty; allowed: ");
  assert_refused (" \n\t\n", "f:1: the file is empty; allowed: ");
  assert_refused ("hello", "f:1: not well-formed XML: ");
  assert_refused ("{\"a\": 1}", "f:1: not well-formed XML: ");
  assert_refused ("<?xml version=\"1.0\"?>", "f:1: not well-formed XML: ");
  assert_refused ("<!-- only this -->", "f:1: not well-formed XML: ");
  assert_refused ("<a/><b/>", "f:1: not well-formed XML: ");
  assert_refused ("<a>\n<b>\n</a>", "f:3: not well-formed XML: ");
  assert_refused ("<a x='1' x='2'/>", "f:1: not well-formed XML: ");
  assert_refused ("<a>\n&nothing;</a>", "f:2: not well-formed XML: ");
  assert_refused ("<a>\x01</a>", "f:1: not well-formed XML: ");
  assert_refused ("<p:a/>", "f:1: not well-formed XML: ");
}

static void
truncated_files_are_refused_wherever_they_end (void **state)
{
  static const char text[] = "<?xml version=\"1.0\"?>\n<a b=\"c\">\n  <d e='f'/><!-- g -->\n</a>";

  for (gsize size = 0; size < strlen (text); size++)
    {
      g_autofree char *message = dup_refusal (text, size);

      assert_true (g_str_has_prefix (message, "f:"));
    }
}

static void
other_encodings_and_bytes_are_refused (void **state)
{
  static const char zero[] = "<a/>\n\0<b/>";
  static const char utf16[] = "\xff\xfe<\0a\0/\0>\0";
  g_autofree char *of_zero = dup_refusal (zero, sizeof zero - 1);
  g_autofree char *of_utf16 = dup_refusal (utf16, sizeof utf16 - 1);

  assert_true (g_str_has_prefix (of_zero, "f:2: not a text file in UTF-8; "));
  assert_true (g_str_has_prefix (of_utf16, "f:1: not a text file in UTF-8; "));
  assert_refused ("<a>\n\n\xe4</a>", "f:3: not a text file in UTF-8; ");
}

static void
a_document_type_is_refused_before_anything_is_expanded (void **state)
{
  assert_refused ("<!DOCTYPE a>\n<a/>", "f:1: a DOCTYPE; allowed: XML without one");
  assert_refused ("<?xml version='1.0'?>\n<!DOCTYPE a SYSTEM 'file:///etc/passwd'><a/>",
                  "f:2: a DOCTYPE; ");
  assert_refused ("<!DOCTYPE a [<!ENTITY b SYSTEM 'file:///etc/passwd'>]><a>&b;</a>",
                  "f:1: a DOCTYPE; ");
  assert_refused ("<!DOCTYPE a [<!ENTITY b 'bb'>"
                  "<!ENTITY c '&b;&b;&b;&b;'><!ENTITY d '&c;&c;&c;&c;'>"
                  "<!ENTITY e '&d;&d;&d;&d;'><!ENTITY f '&e;&e;&e;&e;'><!ENTITY g '&f;&f;&f;&f;'>]>"
                  "<a>&g;&g;&g;&g;</a>",
                  "f:1: a DOCTYPE; ");
  assert_refused ("<!DOCTYPE a [<!ATTLIST a b CDATA 'c'>]><a/>", "f:1: a DOCTYPE; ");
}

static void
a_tower_of_elements_is_refused (void **state)
{
  g_autoptr(GString) text = g_string_new (NULL);

  for (int i = 0; i < 100000; i++)
    g_string_append (text, "<a>");
  assert_refused (text->str, "f:1: not well-formed XML: ");
}

static void
a_flood_of_elements_is_refused (void **state)
{
  g_autoptr(GString) text = g_string_new ("<a>\n");

  for (int i = 0; i < HUT_XML_ELEMENTS_MAX + 1; i++)
    g_string_append (text, "<a/>");
  g_string_append (text, "</a>");
  assert_refused (text->str, "f:2: too many elements; allowed: at most 200000");
}

static void
a_flood_of_attributes_is_refused (void **state)
{
  g_autoptr(GString) text = g_string_new ("<a>\n<b");

  for (int i = 0; i < 400000; i++)
    g_string_append_printf (text, " a%d=\"\"", i);
  g_string_append (text, "/></a>");
  assert_refused (text->str, "f:2: a tag with more than 500 attributes; ");
}

static void
a_huge_text_is_refused (void **state)
{
  g_autofree char *filler = g_strnfill (11 * 1000 * 1000, 'x'); /* libxml2 holds 10 million */
  g_autofree char *in_attribute = g_strdup_printf ("<a b=\"%s\"/>", filler);
  g_autofree char *in_text = g_strdup_printf ("<a>%s</a>", filler);

  assert_refused (in_attribute, "f:1: not well-formed XML: ");
  assert_refused (in_text, "f:1: not well-formed XML: ");
}

static void
a_file_over_the_size_limit_is_refused (void **state)
{
  const gsize size = (gsize) HUT_XML_SIZE_MAX_BYTES + 1;
  g_autofree char *data = g_malloc (size);
  g_autofree char *message = NULL;

  memset (data, 'x', size);
  message = dup_refusal (data, size);
  assert_string_equal (message, "f:1: the file has 67108865 bytes; allowed: at most 67108864");
}

static void
ordinary_xml_is_taken (void **state)
{
  static const char *const texts[] = {
    "<a/>",
    "\xef\xbb\xbf<a/>",
    "<?xml version='1.0' encoding='UTF-8'?><a b='\xc3\xa4'/>",
    "<a>&amp;&#228;<![CDATA[<]]></a><!-- end -->\n",
    "<?xml version='1.0' encoding='ISO-8859-1'?><a/>", /* the bytes are what counts */
  };

  for (gsize i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_autoptr(GError) error = NULL;
      g_autoptr(xmlDoc) document = hut_xml_parse (texts[i], strlen (texts[i]), "f", &error);

      assert_ok (document != NULL, error);
      assert_string_equal ((const char *) xmlDocGetRootElement (document)->name, "a");
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (files_that_are_not_xml_are_refused),
    cmocka_unit_test (truncated_files_are_refused_wherever_they_end),
    cmocka_unit_test (other_encodings_and_bytes_are_refused),
    cmocka_unit_test (a_document_type_is_refused_before_anything_is_expanded),
    cmocka_unit_test (a_tower_of_elements_is_refused),
    cmocka_unit_test (a_flood_of_elements_is_refused),
    cmocka_unit_test (a_flood_of_attributes_is_refused),
    cmocka_unit_test (a_huge_text_is_refused),
    cmocka_unit_test (a_file_over_the_size_limit_is_refused),
    cmocka_unit_test (ordinary_xml_is_taken),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
