/* src/cli/hut-cli-describe.c: hutchwright describe: all that is derived from a design, as XML.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-cli"
#include "config.h"
#include "cli/hut-cli-command.h"

#include <glib/gi18n-lib.h>

#include "cli/hut-cli-model.h"
#include "cli/hut-cli-output.h"
#include "export/hut-export.h"

static HutCliStatus
run (const HutCliCommand *self,
     GStrv argv)
{
  HutCliStatus status = HUT_CLI_WRONG;
  g_auto(GStrv) words = NULL;
  g_autoptr(HutCliModel) model = NULL;
  g_autoptr(GBytes) text = NULL;
  g_autoptr(GError) error = NULL;
  HutDesign *design = NULL;
  const GOptionEntry options[] = { { NULL } };

  if (!hut_cli_parse (self, options, argv, &words, &status))
    return status;
  design = hut_cli_load (words[0], &status);
  if (design == NULL)
    return status;
  model = hut_cli_model_new (design);
  text = hut_write_describe (model->assembly, model->parts, model->sheets, model->findings,
                             &error);
  if (text == NULL)
    {
      hut_cli_print_error ("%s", error->message);
      return HUT_CLI_IO;
    }
  return hut_cli_print_bytes (text);
}

const HutCliCommand hut_cli_describe = {
  .word = "describe",
  .usage = "FILE",
  .summary = N_("Prints XML of all that is derived: panels, parts, holes, sheets, findings."),
  .details = N_("FILE may be - for standard input. The exit status is 0 also when a finding "
                "blocks: the findings are in the XML."),
  .least_words = 1,
  .most_words = 1,
  .run = run,
};
