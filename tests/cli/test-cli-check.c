/* tests/cli/test-cli-check.c: hutchwright check: what it prints and how it ends.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-finding.h"

#include "cli/hut-blocked-design.h"
#include "design/hut-file.h"
#include "export/hut-described.h"
#include "hut-run.h"
#include "hut-scratch.h"
#include <string.h>

static void
save (const HutDesign *design,
      const char *path)
{
  g_autoptr(GError) error = NULL;

  assert_ok (hut_design_save (design, path, &error), error);
}

static void
a_sound_design_ends_with_status_0 (void **state)
{
  char *folder = hut_scratch_new ();
  g_autofree char *path = g_build_filename (folder, "a.hutch", NULL);
  g_autoptr(HutDesign) design = hut_sound_design_new ();
  g_autoptr(HutRun) run = NULL;

  save (design, path);
  run = hut_run ("check", path, NULL);
  hut_run_assert_status (run, 0);
  assert_string_equal (run->errors, "");
  assert_non_null (strstr (run->text, " 0 block, "));
  hut_scratch_free (folder);
}

/* Lines "severity: check: sentence [place]" and one summary; the counts agree. */
static void
assert_lines (const char *text,
              const char *why)
{
  g_auto(GStrv) lines = g_strsplit (text, "\n", -1);
  const guint count = g_strv_length (lines) - 2; /* less the summary and what is after the last line end */
  guint blocking = 0;
  g_autofree char *summary = NULL;

  for (guint i = 0; i < count; i++)
    {
      g_auto(GStrv) fields = g_strsplit (lines[i], ": ", 3);

      assert_int_equal (g_strv_length (fields), 3);
      if (!g_strv_contains (hut_check_ids (), fields[1]))
        fail_msg ("%s: “%s” is no check", why, fields[1]);
      blocking += g_str_equal (fields[0], "blocks") ? 1 : 0;
      assert_true (strlen (fields[2]) > 10);
      assert_null (strchr (fields[2], '{'));
    }
  summary = g_strdup_printf ("%u findings: %u block, ", count, blocking);
  assert_true (blocking > 0);
  if (!g_str_has_prefix (lines[count], summary))
    fail_msg ("%s: summary is “%s”, must begin “%s”", why, lines[count], summary);
}

static void
what_blocks_is_said_line_by_line_with_status_1 (void **state)
{
  char *folder = hut_scratch_new ();
  g_autofree char *path = g_build_filename (folder, "a.hutch", NULL);

  for (const HutBlockedDesign *row = hut_blocked_designs; row->why != NULL; row++)
    {
      g_autoptr(HutDesign) design = hut_blocked_design_new (row);
      g_autoptr(HutRun) run = NULL;

      print_message ("%s\n", row->why);
      save (design, path);
      run = hut_run ("check", path, NULL);
      hut_run_assert_status (run, 1);
      assert_string_equal (run->errors, "");
      assert_lines (run->text, row->why);
    }
  hut_scratch_free (folder);
}

static void
the_xml_has_as_many_findings_as_the_text_has_lines (void **state)
{
  char *folder = hut_scratch_new ();
  g_autofree char *path = g_build_filename (folder, "a.hutch", NULL);

  for (const HutBlockedDesign *row = hut_blocked_designs; row->why != NULL; row++)
    {
      g_autoptr(HutDesign) design = hut_blocked_design_new (row);
      g_autoptr(HutRun) text = NULL;
      g_autoptr(HutRun) xml = NULL;
      g_autoptr(xmlDoc) doc = NULL;
      g_auto(GStrv) lines = NULL;
      guint count = 0;

      save (design, path);
      text = hut_run ("check", path, NULL);
      xml = hut_run ("check", "--xml", path, NULL);
      hut_run_assert_status (xml, 1);
      doc = hut_described_parse (xml->out);
      hut_described_assert_valid (doc, row->why);
      assert_string_equal ((const char *) xmlDocGetRootElement (doc)->name, "report");
      for (const xmlNode *finding
           = hut_described_first (hut_described_first (xmlDocGetRootElement (doc), "findings"), "finding");
           finding != NULL; finding = hut_described_next (finding))
        count++;
      lines = g_strsplit (text->text, "\n", -1);
      assert_int_equal (count, g_strv_length (lines) - 2);
    }
  hut_scratch_free (folder);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_sound_design_ends_with_status_0),
    cmocka_unit_test (what_blocks_is_said_line_by_line_with_status_1),
    cmocka_unit_test (the_xml_has_as_many_findings_as_the_text_has_lines),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
