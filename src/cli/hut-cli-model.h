/* src/cli/hut-cli-model.h: a design that was read, and all that is derived from it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "checks/hut-finding.h"
#include "cli/hut-cli-command.h"
#include "sheets/hut-sheet.h"

typedef struct
{
  HutDesign *design;
  HutAssembly *assembly;
  HutPartSet *parts;
  HutSheetSet *sheets;
  GPtrArray *findings; /* HutFinding, with what the sheets say */
} HutCliModel;

/**
 * hut_cli_load:
 * @path: a design file, or "-" for standard input
 * @status: (out): how the program ends, when this returns NULL
 *
 * Prints the error: "hutchwright: FILE:LINE: what is wrong; what is allowed".
 *
 * Returns: (transfer full) (nullable)
 */
HutDesign *hut_cli_load (const char *path,
                         HutCliStatus *status) G_GNUC_WARN_UNUSED_RESULT;

/* @design: (transfer full) */
HutCliModel *hut_cli_model_new (HutDesign *design) G_GNUC_WARN_UNUSED_RESULT;
void hut_cli_model_free (HutCliModel *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutCliModel, hut_cli_model_free)

/* TRUE when a finding forbids to cut. */
gboolean hut_cli_model_is_blocked (const HutCliModel *self);

/* (transfer full): one line for people: severity, check, sentence, places. */
char *hut_cli_dup_finding_line (const HutFinding *finding) G_GNUC_WARN_UNUSED_RESULT;
