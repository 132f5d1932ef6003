/* tests/design/sample.h: a design with one of everything, as text to spoil.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-file.h"
#include "hut-assert.h"
#include <string.h>

/* tests/design/sample.hutch (transfer full) */
G_GNUC_UNUSED G_NO_INLINE static char *
dup_sample (void)
{
  const char *root = g_getenv ("HUT_SOURCE_ROOT");
  g_autofree char *path
      = g_build_filename (root != NULL ? root : ".", "tests", "design", "sample.hutch", NULL);
  char *text = NULL;
  g_autoptr(GError) error = NULL;

  assert_ok (g_file_get_contents (path, &text, NULL, &error), error);
  return text;
}

/* @text with the first @from replaced, which must be there. (transfer full) */
G_GNUC_UNUSED G_NO_INLINE static char *
dup_spoilt (const char *text,
            const char *from,
            const char *to)
{
  const char *at = strstr (text, from);

  if (at == NULL)
    fail_msg ("'%s' is not in the sample", from);

  g_autofree char *before = g_strndup (text, (gsize) (at - text));

  return g_strconcat (before, to, at + strlen (from), NULL);
}

G_GNUC_UNUSED G_NO_INLINE static HutDesign *
new_sample (void)
{
  g_autofree char *text = dup_sample ();
  g_autoptr(GError) error = NULL;
  HutDesign *design = hut_design_from_xml (text, strlen (text), "sample.hutch", &error);

  assert_ok (design != NULL, error);
  return design;
}
