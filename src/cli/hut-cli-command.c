/* src/cli/hut-cli-command.c: options and words of a command.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-cli"
#include "config.h"
#include "cli/hut-cli-command.h"

#include <glib/gi18n-lib.h>

#include "cli/hut-cli-output.h"

/* "--to FILE, --replace, --help" */
static char *
dup_option_list (const GOptionEntry *options)
{
  GString *list = g_string_new (NULL);

  for (const GOptionEntry *option = options; option->long_name != NULL; option++)
    {
      g_string_append_printf (list, "--%s", option->long_name);
      if (option->arg_description != NULL)
        g_string_append_printf (list, " %s", option->arg_description);
      g_string_append (list, ", ");
    }
  g_string_append (list, "--help");
  return g_string_free (list, FALSE);
}

HutCliStatus
hut_cli_refuse (const HutCliCommand *command,
                const char *format,
                ...)
{
  g_autofree char *what = NULL;
  va_list arguments;

  va_start (arguments, format);
  what = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  hut_cli_print_error ("%s: %s", command->word, what);
  return HUT_CLI_WRONG;
}

static GOptionContext *
new_context (const HutCliCommand *command,
             const GOptionEntry *options,
             const GOptionEntry *common)
{
  GOptionContext *context = g_option_context_new (command->usage);

  /* The help goes through hut_cli_print (), which sees a full disk or a closed pipe. */
  g_option_context_set_help_enabled (context, FALSE);
  g_option_context_set_summary (context, _(command->summary));
  if (command->details != NULL)
    g_option_context_set_description (context, _(command->details));
  g_option_context_add_main_entries (context, options, GETTEXT_PACKAGE);
  g_option_context_add_main_entries (context, common, GETTEXT_PACKAGE);
  return context;
}

static HutCliStatus
print_help (const HutCliCommand *command,
            GOptionContext *context)
{
  g_autofree char *name = g_strdup_printf ("hutchwright %s", command->word);
  g_autofree char *help = NULL;

  /* GOption takes the name for its usage line from here; this process does nothing after it. */
  g_set_prgname (name);
  help = g_option_context_get_help (context, TRUE, NULL);
  return hut_cli_print (help);
}

static HutCliStatus
refuse_word_count (const HutCliCommand *command,
                   GStrv words)
{
  if (g_strv_length (words) < command->least_words)
    return hut_cli_refuse (command, _("something is missing; allowed: hutchwright %s %s"),
                           command->word, command->usage);
  return hut_cli_refuse (command, _("“%s” is one word too many; allowed: hutchwright %s %s"),
                         words[command->most_words], command->word, command->usage);
}

gboolean
hut_cli_parse (const HutCliCommand *command,
               const GOptionEntry *options,
               GStrv argv,
               GStrv *words,
               HutCliStatus *status)
{
  gboolean help = FALSE;
  g_auto(GStrv) found = NULL;
  const GOptionEntry common[] = {
    { "help", 'h', 0, G_OPTION_ARG_NONE, &help, N_("Show this help"), NULL },
    { G_OPTION_REMAINING, 0, 0, G_OPTION_ARG_FILENAME_ARRAY, &found, NULL, NULL },
    { NULL },
  };
  g_autoptr(GOptionContext) context = new_context (command, options, common);
  g_auto(GStrv) rest = g_strdupv (argv);
  g_autoptr(GError) error = NULL;

  if (!g_option_context_parse_strv (context, &rest, &error))
    {
      g_autofree char *allowed = dup_option_list (options);

      *status = hut_cli_refuse (command, _("%s; allowed: %s"), error->message, allowed);
      return FALSE;
    }
  if (help)
    {
      *status = print_help (command, context);
      return FALSE;
    }
  if (found == NULL)
    found = g_new0 (char *, 1);
  if (g_strv_length (found) < command->least_words || g_strv_length (found) > command->most_words)
    {
      *status = refuse_word_count (command, found);
      return FALSE;
    }
  *words = g_steal_pointer (&found);
  return TRUE;
}
