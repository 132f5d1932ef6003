/* src/cli/hut-cli.c: the program without a window: which command is meant.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-cli"
#include "config.h"
#include "cli/hut-cli.h"

#include <signal.h>
#include <string.h>

#include <glib/gi18n-lib.h>

#include "cli/hut-cli-command.h"
#include "cli/hut-cli-output.h"

static const HutCliCommand *const commands[] = {
  &hut_cli_example,
  &hut_cli_check,
  &hut_cli_describe,
  &hut_cli_export,
  &hut_cli_coupon,
  &hut_cli_render,
};

static const HutCliCommand *
find_command (const char *word)
{
  for (guint i = 0; i < G_N_ELEMENTS (commands); i++)
    {
      if (g_str_equal (word, commands[i]->word))
        return commands[i];
    }
  return NULL;
}

/* Options of GApplication, by which the desktop starts the window. */
static gboolean
is_for_window (const char *word)
{
  return g_str_has_prefix (word, "--gapplication-") || g_str_equal (word, "--");
}

gboolean
hut_cli_handles (int argc,
                 char **argv)
{
  if (argc < 2)
    return FALSE;
  if (find_command (argv[1]) != NULL)
    return TRUE;
  if (*argv[1] == '-')
    return !is_for_window (argv[1]);
  /* Several files may come from a file manager; several words are a command that does not exist. */
  return argc > 2 && strstr (argv[1], "://") == NULL && !g_file_test (argv[1], G_FILE_TEST_EXISTS);
}

static HutCliStatus
print_help (void)
{
  g_autoptr(GString) help = g_string_new (NULL);

  g_string_append (help, _("Hutchwright designs the enclosure around a bench machine.\n\n"
                           "Usage:\n"));
  g_string_append_printf (help, "  hutchwright [FILE]\n      %s\n", _("Opens the window."));
  for (guint i = 0; i < G_N_ELEMENTS (commands); i++)
    g_string_append_printf (help, "  hutchwright %s %s\n      %s\n", commands[i]->word,
                            commands[i]->usage, _(commands[i]->summary));
  g_string_append (help, _("\nhutchwright COMMAND --help tells the options of a command; "
                           "hutchwright --version the version.\n"
                           "A file that is called like a command: ./check\n\n"
                           "Exit status: 0 done; 1 something blocks; 2 the input or the call is "
                           "wrong; 3 reading or writing failed.\n"));
  return hut_cli_print (help->str);
}

static HutCliStatus
refuse_word (const char *word)
{
  g_autoptr(GString) words = g_string_new (NULL);

  for (guint i = 0; i < G_N_ELEMENTS (commands); i++)
    g_string_append_printf (words, "%s, ", commands[i]->word);
  hut_cli_print_error (_("“%s” is neither a command nor a file; allowed: %s--help, --version, or "
                         "the name of a design file"), word, words->str);
  return HUT_CLI_WRONG;
}

static HutCliStatus
run_words (GStrv argv)
{
  const HutCliCommand *command = find_command (argv[0]);

  if (command != NULL)
    return command->run (command, argv);
  if (g_str_equal (argv[0], "--help") || g_str_equal (argv[0], "-h"))
    return print_help ();
  if (g_str_equal (argv[0], "--version"))
    return hut_cli_print ("hutchwright " HUT_VERSION "\n");
  return refuse_word (argv[0]);
}

int
hut_cli_run (int argc,
             char **argv)
{
  g_auto(GStrv) words = NULL;

  g_return_val_if_fail (argc >= 1 && argv != NULL, HUT_CLI_WRONG);

  signal (SIGPIPE, SIG_IGN);
  if (argc < 2)
    return (int) print_help ();
  words = g_strdupv (argv + 1);
  return (int) run_words (words);
}
