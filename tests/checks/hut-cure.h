/* tests/checks/hut-cure.h: what hardware is told, and that a finding's fix cures it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hut-assert.h"
#include "hut-check-case.h"
#include "hut-test-item.h"
#include <string.h>

/* All that the checks say about hardware and holes, notes left out. */
static inline guint
count_told (const HutCheckCase *c)
{
  static const char *const families[]
      = { "depth.", "mount.", "fastener.", "hardware.", "opening.", "lid.", "cut.", "clearance." };
  guint count = 0;

  for (guint i = 0; i < c->findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (c->findings, i);

      for (guint k = 0; k < G_N_ELEMENTS (families); k++)
        if (g_str_has_prefix (finding->check, families[k])
            && finding->severity != HUT_SEVERITY_NOTES)
          count++;
    }
  return count;
}

/* Exactly one thing is wrong; its fix is as it should be, and then nothing is. */
static inline void
assert_cured (HutDesign *design,
              const char *check,
              HutSeverity severity,
              double is,
              double must,
              HutFixKind kind)
{
  g_autoptr(HutDesign) cured = hut_design_copy (design);
  g_autoptr(HutCheckCase) c = hut_check_case_new (design);
  const HutFinding *finding = hut_check_case_get (c, check, 0);
  g_autoptr(HutCheckCase) after = NULL;

  if (count_told (c) != 1)
    for (guint i = 0; i < c->findings->len; i++)
      {
        g_autofree char *text
            = hut_finding_dup_text (g_ptr_array_index (c->findings, i), NULL, ".");

        print_message ("%s\n", text);
      }
  assert_int_equal (count_told (c), 1);
  hut_check_case_assert (finding, severity, is, must);
  assert_int_equal (finding->fix.kind, kind);
  if (kind == HUT_FIX_NONE)
    {
      assert_false (hut_finding_apply_fix (finding, cured));
      return;
    }
  assert_true (hut_finding_apply_fix (finding, cured));
  after = hut_check_case_new (g_steal_pointer (&cured));
  if (count_told (after) != 0)
    for (guint i = 0; i < after->findings->len; i++)
      {
        g_autofree char *text
            = hut_finding_dup_text (g_ptr_array_index (after->findings, i), NULL, ".");

        print_message ("after: %s\n", text);
      }
  assert_int_equal (count_told (after), 0);
}
