/* src/cli/hut-cli-check.c: hutchwright check: what is wrong with a design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-cli"
#include "config.h"
#include "cli/hut-cli-command.h"

#include <glib/gi18n-lib.h>

#include "cli/hut-cli-model.h"
#include "cli/hut-cli-output.h"
#include "export/hut-describe.h"

static HutCliStatus
print_xml (const HutCliModel *model)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(GBytes) report = hut_write_report (model->design->name, model->findings, &error);

  if (report == NULL)
    {
      hut_cli_print_error ("%s", error->message);
      return HUT_CLI_IO;
    }
  return hut_cli_print_bytes (report);
}

static HutCliStatus
print_text (const HutCliModel *model)
{
  guint counts[HUT_SEVERITY_NOTES + 1] = { 0 };
  g_autoptr(GString) text = g_string_new (NULL);

  for (guint i = 0; i < model->findings->len; i++)
    {
      const HutFinding *finding = model->findings->pdata[i];
      g_autofree char *line = hut_cli_dup_finding_line (finding);

      counts[finding->severity]++;
      g_string_append_printf (text, "%s\n", line);
    }
  g_string_append_printf (text, _("%u findings: %u block, %u warn, %u note\n"),
                          model->findings->len, counts[HUT_SEVERITY_BLOCKS],
                          counts[HUT_SEVERITY_WARNS], counts[HUT_SEVERITY_NOTES]);
  return hut_cli_print (text->str);
}

static HutCliStatus
run (const HutCliCommand *self,
     GStrv argv)
{
  HutCliStatus status = HUT_CLI_WRONG;
  gboolean xml = FALSE;
  g_auto(GStrv) words = NULL;
  g_autoptr(HutCliModel) model = NULL;
  HutDesign *design = NULL;
  const GOptionEntry options[] = {
    { "xml", 0, 0, G_OPTION_ARG_NONE, &xml, N_("Print XML, in English, for other programs"), NULL },
    { NULL },
  };

  if (!hut_cli_parse (self, options, argv, &words, &status))
    return status;
  design = hut_cli_load (words[0], &status);
  if (design == NULL)
    return status;
  model = hut_cli_model_new (design);
  status = xml ? print_xml (model) : print_text (model);
  if (status != HUT_CLI_DONE)
    return status;
  return hut_cli_model_is_blocked (model) ? HUT_CLI_BLOCKED : HUT_CLI_DONE;
}

const HutCliCommand hut_cli_check = {
  .word = "check",
  .usage = "FILE",
  .summary = N_("Prints what the checks find: severity, check, sentence, and [panel u,v] of each "
                "place."),
  .details = N_("FILE may be - for standard input. The exit status is 1 when a finding blocks.\n"
                "The checks know only what was measured and typed in, and none of them says that "
                "an enclosure is safe. Laser light, fumes, fire and mains are ruled by the law and "
                "the standards of your place; leave mains wiring to those who are licensed for "
                "it."),
  .least_words = 1,
  .most_words = 1,
  .run = run,
};
