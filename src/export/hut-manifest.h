/* src/export/hut-manifest.h: the list of what a set holds, and what was found when it was made.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "checks/hut-finding.h"
#include "export/hut-sheet-figures.h"

#define HUT_MANIFEST_NAME "manifest.xml"
#define HUT_MANIFEST_NS "urn:hutchwright:manifest:1"

/* A file of a set. */
typedef struct
{
  char *name; /* no folder */
  GBytes *bytes;
} HutSetFile;

/* @bytes: (transfer full) */
HutSetFile *hut_set_file_new (const char *name, GBytes *bytes) G_GNUC_WARN_UNUSED_RESULT;
void hut_set_file_free (HutSetFile *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutSetFile, hut_set_file_free)

/* What a manifest says beside the files. */
typedef struct
{
  const char *design_name;      /* or NULL */
  const char *source_name;      /* file name of the design, or NULL */
  const char *design_sha256;    /* of the canonical design XML, lower case hex */
  const GPtrArray *findings;    /* HutFinding */
  const char *const *overrides; /* check ids that blocked and were allowed, or NULL */
  const HutSheetTotals *totals; /* or NULL */
} HutManifestFacts;

/**
 * hut_manifest_write:
 * @facts: all but the files
 * @files: (element-type HutSetFile): all files but the manifest itself
 * @error: G_IO_ERROR_NO_SPACE when memory runs out
 *
 * Schema: src/export/manifest.rng. No clock, no paths: same design, same bytes.
 *
 * Returns: (transfer full): NULL on error
 */
GBytes *hut_manifest_write (const HutManifestFacts *facts,
                            const GPtrArray *files,
                            GError **error) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hut_manifest_read_names:
 * @data: (array length=size): bytes of a file that claims to be a manifest; not trusted
 *
 * Returns: (transfer full) (nullable): names of the files that it lists; NULL when it is not a
 *   manifest of this program
 */
GStrv hut_manifest_read_names (const char *data, gsize size) G_GNUC_WARN_UNUSED_RESULT;
