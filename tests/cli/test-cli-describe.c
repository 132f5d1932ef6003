/* tests/cli/test-cli-describe.c: hutchwright describe.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "design/hut-file.h"

#include "cli/hut-blocked-design.h"
#include "export/hut-described.h"
#include "hut-run.h"
#include "hut-scratch.h"
#include <string.h>

static void
every_example_is_described_by_the_schema (void **state)
{
  char *folder = hut_scratch_new ();

  for (const char *const *name = hut_example_names (); *name != NULL; name++)
    {
      g_autofree char *path = hut_run_write_example (folder, *name, *name);
      g_autoptr(HutRun) run = hut_run ("describe", path, NULL);
      g_autoptr(xmlDoc) doc = NULL;

      hut_run_assert_status (run, 0);
      assert_string_equal (run->errors, "");
      doc = hut_described_parse (run->out);
      hut_described_assert_valid (doc, *name);
      assert_non_null (hut_described_first (hut_described_first (xmlDocGetRootElement (doc), "sheets"),
                                            "sheet"));
    }
  hut_scratch_free (folder);
}

static void
what_blocks_is_in_the_description_and_no_failure (void **state)
{
  char *folder = hut_scratch_new ();
  g_autofree char *path = g_build_filename (folder, "a.hutch", NULL);

  for (const HutBlockedDesign *row = hut_blocked_designs; row->why != NULL; row++)
    {
      g_autoptr(HutDesign) design = hut_blocked_design_new (row);
      g_autoptr(GError) error = NULL;
      g_autoptr(HutRun) run = NULL;
      g_autoptr(xmlDoc) doc = NULL;
      const xmlNode *findings = NULL;

      assert_ok (hut_design_save (design, path, &error), error);
      run = hut_run ("describe", path, NULL);
      hut_run_assert_status (run, 0);
      doc = hut_described_parse (run->out);
      hut_described_assert_valid (doc, row->why);
      findings = hut_described_first (xmlDocGetRootElement (doc), "findings");
      if (!(hut_described_number (findings, "blocks") >= 1.0))
        fail_msg ("%s: must block", row->why);
    }
  hut_scratch_free (folder);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (every_example_is_described_by_the_schema),
    cmocka_unit_test (what_blocks_is_in_the_description_and_no_failure),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
