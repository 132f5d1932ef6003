/* src/cli/hut-cli-example.c: hutchwright example: the shipped designs.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-cli"
#include "config.h"
#include "cli/hut-cli-command.h"

#include <errno.h>
#include <fcntl.h>
#include <unistd.h>

#include <glib/gi18n-lib.h>
#include <glib/gstdio.h>

#include "cli/hut-cli-output.h"
#include "design/hut-file.h"

/* Permissions of a new file, before the umask takes from them. */
#define NEW_FILE_MODE 0666

static HutCliStatus
list_examples (void)
{
  g_autoptr(GString) list = g_string_new (NULL);

  for (const char *const *name = hut_example_names (); *name != NULL; name++)
    g_string_append_printf (list, "%s\t%s\n", *name, _(hut_example_title (*name)));
  return hut_cli_print (list->str);
}

static HutCliStatus
refuse_name (const HutCliCommand *self,
             const char *name)
{
  g_autofree char *names = g_strjoinv (", ", (char **) hut_example_names ());

  return hut_cli_refuse (self, _("there is no example “%s”; allowed: %s"), name, names);
}

static gboolean
is_example (const char *name)
{
  return g_strv_contains (hut_example_names (), name);
}

/* Takes the name so that no other program can come between looking and writing. */
static gboolean
reserve (const char *path)
{
  const int fd = g_open (path, O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, NEW_FILE_MODE);

  if (fd < 0)
    {
      hut_cli_print_error (_("%s: the file cannot be made: %s; allowed: a new name in a folder "
                             "that can be written"), path, g_strerror (errno));
      return FALSE;
    }
  (void) close (fd); /* nothing was written to it */
  return TRUE;
}

static HutCliStatus
save_example (const HutCliCommand *self,
              const HutDesign *design,
              const char *path,
              gboolean replace)
{
  const HutCliTarget target = replace ? HUT_CLI_TARGET_PLAIN : HUT_CLI_TARGET_NEW;
  const HutCliStatus status = hut_cli_check_target (self, path, target);
  g_autoptr(GError) error = NULL;

  if (status != HUT_CLI_DONE)
    return status;
  if (!replace && !reserve (path))
    return HUT_CLI_IO;
  if (hut_design_save (design, path, &error))
    return HUT_CLI_DONE;
  if (!replace)
    (void) g_unlink (path); /* the empty file of reserve () */
  hut_cli_print_error (_("%s; allowed: a folder that can be written and has room"), error->message);
  return HUT_CLI_IO;
}

static HutCliStatus
write_example (const HutCliCommand *self,
               const char *name,
               const char *path,
               gboolean replace)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) design = NULL;
  g_autofree char *xml = NULL;

  if (!is_example (name))
    return refuse_name (self, name);
  if (path == NULL)
    return hut_cli_refuse (self, _("no target was named; allowed: --to FILE, with - for standard "
                                   "output"));
  design = hut_example_load (name, &error);
  if (design == NULL)
    {
      hut_cli_print_error ("%s", error->message);
      return HUT_CLI_IO;
    }
  if (!g_str_equal (path, HUT_CLI_STREAM))
    return save_example (self, design, path, replace);
  xml = hut_design_to_xml (design);
  return hut_cli_print (xml);
}

static HutCliStatus
run (const HutCliCommand *self,
     GStrv argv)
{
  HutCliStatus status = HUT_CLI_WRONG;
  gboolean replace = FALSE;
  g_autofree char *to = NULL;
  g_auto(GStrv) words = NULL;
  const GOptionEntry options[] = {
    { "to", 0, 0, G_OPTION_ARG_FILENAME, &to, N_("Write the example there"), "FILE" },
    { "replace", 0, 0, G_OPTION_ARG_NONE, &replace, N_("Replace a file that exists"), NULL },
    { NULL },
  };

  if (!hut_cli_parse (self, options, argv, &words, &status))
    return status;
  if (words[0] != NULL)
    return write_example (self, words[0], to, replace);
  if (to != NULL || replace)
    return hut_cli_refuse (self, _("no example was named; allowed: hutchwright example NAME --to "
                                   "FILE"));
  return list_examples ();
}

const HutCliCommand hut_cli_example = {
  .word = "example",
  .usage = "[NAME --to FILE]",
  .summary = N_("Writes a shipped example; without NAME, lists them."),
  .details = N_("FILE may be - for standard output. A file that exists is kept unless --replace is "
                "given."),
  .least_words = 0,
  .most_words = 1,
  .run = run,
};
