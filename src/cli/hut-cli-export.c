/* src/cli/hut-cli-export.c: hutchwright export: the ready-to-cut set.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-cli"
#include "config.h"
#include "cli/hut-cli-command.h"

#include <glib/gi18n-lib.h>

#include "cli/hut-cli-model.h"
#include "cli/hut-cli-output.h"
#include "export/hut-export.h"

#define ALLOW_OPTION "--allow"

typedef struct
{
  char *to, *formats;
  GStrv allowed;
} Call;

/* One --allow takes several ids: all known ones up to the next option. GOption knows only options
 * with one value, so that each further id gets an option of its own. (transfer full) */
static GStrv
dup_spread (GStrv argv)
{
  g_autoptr(GStrvBuilder) spread = g_strv_builder_new ();
  guint i = 0;

  while (argv[i] != NULL && !g_str_equal (argv[i], "--"))
    {
      const gboolean allow = g_str_equal (argv[i], ALLOW_OPTION) && argv[i + 1] != NULL;

      g_strv_builder_add (spread, argv[i++]);
      if (!allow)
        continue;
      g_strv_builder_add (spread, argv[i++]);
      for (; argv[i] != NULL && g_strv_contains (hut_check_ids (), argv[i]); i++)
        {
          g_strv_builder_add (spread, ALLOW_OPTION);
          g_strv_builder_add (spread, argv[i]);
        }
    }
  for (; argv[i] != NULL; i++)
    g_strv_builder_add (spread, argv[i]);
  return g_strv_builder_end (spread);
}

/* What blocks and was not allowed, below the error. @design: (transfer full) */
static void
print_blocking (HutDesign *design,
                const char *const *allowed)
{
  g_autoptr(HutCliModel) model = hut_cli_model_new (design);

  for (guint i = 0; i < model->findings->len; i++)
    {
      const HutFinding *finding = model->findings->pdata[i];
      g_autofree char *line = NULL;

      if (finding->severity != HUT_SEVERITY_BLOCKS
          || (allowed != NULL && g_strv_contains (allowed, finding->check)))
        continue;
      line = hut_cli_dup_finding_line (finding);
      hut_cli_print_more (line);
    }
}

/* @design: (transfer full) */
static HutCliStatus
refuse_export (const HutCliCommand *self,
               HutDesign *design,
               const char *file,
               const Call *call,
               const GError *error)
{
  g_autoptr(HutDesign) owned = design;

  if (g_error_matches (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_FORMAT))
    return hut_cli_refuse (self, "%s", error->message);
  if (!g_error_matches (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_BLOCKED))
    return hut_cli_refuse_folder (error);
  hut_cli_print_error (_("%s: %s; allowed: a design in which nothing blocks, or --allow with the "
                         "checks whose risk you take"), file, error->message);
  print_blocking (g_steal_pointer (&owned), (const char *const *) call->allowed);
  return HUT_CLI_BLOCKED;
}

static HutCliStatus
export_design (const HutCliCommand *self,
               const char *file,
               const Call *call,
               HutFormats formats)
{
  HutCliStatus status = HUT_CLI_WRONG;
  g_autoptr(HutDesign) design = hut_cli_load (file, &status);
  g_autofree char *source_name = NULL;
  g_auto(GStrv) written = NULL;
  g_autoptr(GError) error = NULL;
  HutExportOptions options = { .allowed = (const char *const *) call->allowed };

  if (design == NULL)
    return status;
  options.formats = formats != 0 ? formats : hut_formats_usual (design);
  if (!g_str_equal (file, HUT_CLI_STREAM))
    options.source_name = source_name = g_path_get_basename (file);
  if (hut_export_set (design, call->to, &options, NULL, NULL, NULL, &written, &error))
    return hut_cli_print_paths (call->to, (const char *const *) written);
  return refuse_export (self, g_steal_pointer (&design), file, call, error);
}

static HutCliStatus
run_call (const HutCliCommand *self,
          GStrv argv,
          Call *call)
{
  HutCliStatus status = HUT_CLI_WRONG;
  HutFormats formats = (HutFormats) 0;
  g_auto(GStrv) spread = dup_spread (argv);
  g_auto(GStrv) words = NULL;
  g_autoptr(GError) error = NULL;
  const GOptionEntry options[] = {
    { "to", 0, 0, G_OPTION_ARG_FILENAME, &call->to, N_("Write the set to that folder"), "DIR" },
    { "formats", 0, 0, G_OPTION_ARG_STRING, &call->formats,
      N_("Only these, separated by commas: svg, dxf, csv, gcode, dxf-r12, "
         "pdf-a4, pdf-a3, pdf-letter"), "LIST" },
    { "allow", 0, 0, G_OPTION_ARG_STRING_ARRAY, &call->allowed,
      N_("Export although these checks block; the set is marked so"), "CHECK-ID ..." },
    { NULL },
  };

  if (!hut_cli_parse (self, options, spread, &words, &status))
    return status;
  if (call->to == NULL || *call->to == '\0')
    return hut_cli_refuse (self, _("no folder was named; allowed: --to DIR"));
  if (call->formats != NULL && !hut_formats_parse (call->formats, &formats, &error))
    return hut_cli_refuse (self, "%s", error->message);
  return export_design (self, words[0], call, formats);
}

static HutCliStatus
run (const HutCliCommand *self,
     GStrv argv)
{
  Call call = { NULL };
  const HutCliStatus status = run_call (self, argv, &call);

  g_free (call.to);
  g_free (call.formats);
  g_strfreev (call.allowed);
  return status;
}

const HutCliCommand hut_cli_export = {
  .word = "export",
  .usage = "FILE --to DIR [--formats LIST] [--allow CHECK-ID ...]",
  .summary = N_("Writes the ready-to-cut set and prints the names of its files."),
  .details = N_("FILE may be - for standard input. DIR is new, empty or holds an earlier set. "
                "The exit status is 1, and nothing is written, while a finding blocks.\n"
                "Before you cut: stay with a running machine, keep the fire extinguisher at hand, "
                "wear what protects from its light, dust and fumes, and cut nothing of which you "
                "do not know what it gives off. The law and the standards of your place rule."),
  .least_words = 1,
  .most_words = 1,
  .run = run,
};
