/* tests/export/test-manifest.c: the list of what a set holds.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-manifest.h"
#include "hut-assert.h"
#include <libxml/parser.h>
#include <libxml/relaxng.h>
#include <string.h>

/* SHA-256 of the three bytes "abc": FIPS 180-4 example, common knowledge. */
#define SHA256_OF_ABC "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
#define HEAD "<manifest xmlns=\"urn:hutchwright:manifest:1\">"

static GPtrArray *
new_files (void)
{
  GPtrArray *files = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_set_file_free);

  g_ptr_array_add (files, hut_set_file_new ("a.svg", g_bytes_new_static ("abc", 3)));
  g_ptr_array_add (files, hut_set_file_new ("b.dxf", g_bytes_new_static ("12345", 5)));
  return files;
}

static GPtrArray *
new_findings (void)
{
  GPtrArray *findings = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_finding_free);
  HutFinding *finding = g_new0 (HutFinding, 1);

  finding->check = "cut.web";
  finding->severity = HUT_SEVERITY_BLOCKS;
  finding->message = "{what} is {is} mm, must be {must} mm.";
  finding->what = g_strdup ("Vent <2>");
  finding->is = 1.5;
  finding->must = 3.0;
  finding->item = g_strdup ("vent-2");
  finding->places = g_array_new (FALSE, FALSE, sizeof (HutPlace));
  g_ptr_array_add (findings, finding);
  return findings;
}

static char *
dup_manifest (const HutManifestFacts *facts,
              const GPtrArray *files)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(GBytes) bytes = hut_manifest_write (facts, files, &error);
  gsize size;

  assert_ok (bytes != NULL, error);

  const char *data = g_bytes_get_data (bytes, &size);

  return g_strndup (data, size);
}

/* Line of the first complaint of the schema, or 0. */
static int
validate (const char *text)
{
  g_autofree char *path
      = g_build_filename (g_getenv ("HUT_SOURCE_ROOT"), "src", "export", "manifest.rng", NULL);
  xmlRelaxNGParserCtxt *parser = xmlRelaxNGNewParserCtxt (path);
  xmlRelaxNG *schema = xmlRelaxNGParse (parser);
  xmlDoc *doc = xmlReadMemory (text, (int) strlen (text), NULL, NULL, XML_PARSE_NONET);
  int result = -1;

  assert_non_null (schema);
  assert_non_null (doc);
  xmlRelaxNGValidCtxt *valid = xmlRelaxNGNewValidCtxt (schema);

  xmlRelaxNGSetValidErrors (valid, NULL, NULL, NULL);
  result = xmlRelaxNGValidateDoc (valid, doc);
  xmlRelaxNGFreeValidCtxt (valid);
  xmlFreeDoc (doc);
  xmlRelaxNGFree (schema);
  xmlRelaxNGFreeParserCtxt (parser);
  return result;
}

static void
manifest_names_files_findings_and_overrides (void **state)
{
  g_autoptr(GPtrArray) files = new_files ();
  g_autoptr(GPtrArray) findings = new_findings ();
  const char *const overrides[] = { "cut.web", NULL };
  const HutManifestFacts facts = {
    .design_name = "House & \"shed\"",
    .source_name = "house.hutch",
    .design_sha256 = SHA256_OF_ABC,
    .findings = findings,
    .overrides = overrides,
  };
  g_autofree char *text = dup_manifest (&facts, files);

  assert_non_null (strstr (text, "<program name=\"hutchwright\" version=\""));
  assert_non_null (strstr (text, "<design name=\"House &amp; &quot;shed&quot;\" "
                                 "source=\"house.hutch\" sha256=\"" SHA256_OF_ABC "\"/>"));
  assert_non_null (strstr (text, "<override check=\"cut.web\"/>"));
  assert_non_null (
      strstr (text, "<file name=\"a.svg\" size=\"3\" sha256=\"" SHA256_OF_ABC "\"/>"));
  assert_non_null (strstr (text, "<file name=\"b.dxf\" size=\"5\" sha256=\""));
  assert_non_null (strstr (text, "<finding check=\"cut.web\" severity=\"blocks\" item=\"vent-2\">"
                                 "Vent &lt;2&gt; is 1.5 mm, must be 3 mm.</finding>"));
  assert_int_equal (validate (text), 0);
}

static void
manifest_without_names_findings_and_overrides_is_valid (void **state)
{
  g_autoptr(GPtrArray) files = new_files ();
  g_autoptr(GPtrArray) findings = g_ptr_array_new ();
  const HutManifestFacts facts = { .design_sha256 = SHA256_OF_ABC, .findings = findings };
  g_autofree char *text = dup_manifest (&facts, files);

  assert_int_equal (validate (text), 0);
}

/* What the schema is for: each row breaks one rule. */
static void
schema_refuses_what_is_no_manifest (void **state)
{
  static const struct
  {
    const char *from, *to;
  } cases[] = {
    { "size=\"3\"", "size=\"-3\"" },
    { "name=\"a.svg\"", "name=\"x/a.svg\"" },
    { "sha256=\"ba78", "sha256=\"BA78" },
    { "severity=\"blocks\"", "severity=\"bad\"" },
    { "<overrides", "<extra/><overrides" },
    { "manifest:1", "manifest:2" },
  };
  g_autoptr(GPtrArray) files = new_files ();
  g_autoptr(GPtrArray) findings = new_findings ();
  const HutManifestFacts facts = { .design_sha256 = SHA256_OF_ABC, .findings = findings };
  g_autofree char *text = dup_manifest (&facts, files);

  assert_int_equal (validate (text), 0);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr(GString) broken = g_string_new (text);

      assert_true (g_string_replace (broken, cases[i].from, cases[i].to, 1) == 1);
      if (validate (broken->str) <= 0)
        fail_msg ("the schema takes %s", cases[i].to);
    }
}

static void
names_are_read_back_as_written (void **state)
{
  g_autoptr(GPtrArray) files = new_files ();
  g_autoptr(GPtrArray) findings = new_findings ();
  const HutManifestFacts facts = { .design_sha256 = SHA256_OF_ABC, .findings = findings };
  g_autofree char *text = dup_manifest (&facts, files);
  g_auto(GStrv) names = hut_manifest_read_names (text, strlen (text));

  assert_non_null (names);
  assert_int_equal (g_strv_length (names), 2);
  assert_string_equal (names[0], "a.svg");
  assert_string_equal (names[1], "b.dxf");
}

static void
what_is_no_manifest_of_ours_lists_nothing (void **state)
{
  static const struct
  {
    const char *text, *why;
  } cases[] = {
    { "", "empty" },
    { "plain text", "not XML" },
    { HEAD "<files><file name=\"a\"/>", "truncated" },
    { "<manifest><files><file name=\"a\"/></files></manifest>", "no namespace" },
    { "<manifest xmlns=\"urn:other\"><files/></manifest>", "another namespace" },
    { "<list xmlns=\"urn:hutchwright:manifest:1\"/>", "another root" },
    { "<!DOCTYPE manifest [<!ENTITY e \"a\">]>" HEAD
      "<files><file name=\"&e;\"/></files></manifest>",
      "a document type" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_auto(GStrv) names = hut_manifest_read_names (cases[i].text, strlen (cases[i].text));

      if (names != NULL)
        fail_msg ("%s is taken for a manifest", cases[i].why);
    }
}

static void
manifest_that_lists_no_file_is_an_empty_list (void **state)
{
  static const char text[] = HEAD "<files/></manifest>";
  g_auto(GStrv) names = hut_manifest_read_names (text, strlen (text));

  assert_non_null (names);
  assert_int_equal (g_strv_length (names), 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (manifest_names_files_findings_and_overrides),
    cmocka_unit_test (manifest_without_names_findings_and_overrides_is_valid),
    cmocka_unit_test (schema_refuses_what_is_no_manifest),
    cmocka_unit_test (names_are_read_back_as_written),
    cmocka_unit_test (what_is_no_manifest_of_ours_lists_nothing),
    cmocka_unit_test (manifest_that_lists_no_file_is_an_empty_list),
  };
  const int failed = cmocka_run_group_tests (tests, NULL, NULL);

  xmlRelaxNGCleanupTypes ();
  xmlCleanupParser ();
  return failed;
}
