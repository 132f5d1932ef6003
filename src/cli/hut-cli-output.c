/* src/cli/hut-cli-output.c: where the command line writes: standard output, standard error, a file.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-cli"
#include "config.h"
#include "cli/hut-cli-output.h"

#include <errno.h>
#include <string.h>
#include <unistd.h>

#include <glib/gi18n-lib.h>
#include <glib/gstdio.h>

/* Past stdio: its buffer would tell of a full disk only at the end of the program, if at all. */
static gboolean
write_all (int fd,
           const char *data,
           gsize size)
{
  while (size > 0)
    {
      const gssize written = write (fd, data, size);

      if (written < 0 && errno == EINTR)
        continue;
      if (written < 0)
        return FALSE;
      data += written;
      size -= (gsize) written;
    }
  return TRUE;
}

static HutCliStatus
print_data (const char *data,
            gsize size)
{
  if (write_all (STDOUT_FILENO, data, size))
    return HUT_CLI_DONE;
  hut_cli_print_error (_("standard output cannot be written: %s; "
                         "allowed: an open file or pipe with room"), g_strerror (errno));
  return HUT_CLI_IO;
}

HutCliStatus
hut_cli_print (const char *text)
{
  return print_data (text, strlen (text));
}

HutCliStatus
hut_cli_print_bytes (GBytes *bytes)
{
  gsize size = 0;
  const char *data = g_bytes_get_data (bytes, &size);

  return print_data (data, size);
}

HutCliStatus
hut_cli_print_paths (const char *folder,
                     const char *const *names)
{
  g_autoptr(GString) list = g_string_new (NULL);

  for (guint i = 0; names[i] != NULL; i++)
    {
      g_autofree char *path = g_build_filename (folder, names[i], NULL);

      g_string_append_printf (list, "%s\n", path);
    }
  return hut_cli_print (list->str);
}

HutCliStatus
hut_cli_refuse_folder (const GError *error)
{
  hut_cli_print_error (_("%s; allowed: a new or empty folder, or one with an earlier set"),
                       error->message);
  return HUT_CLI_IO;
}

void
hut_cli_print_more (const char *line)
{
  g_autofree char *text = g_strconcat (line, "\n", NULL);

  /* Nothing can be said any more when standard error is closed; the exit status still tells. */
  (void) write_all (STDERR_FILENO, text, strlen (text));
}

void
hut_cli_print_error (const char *format,
                     ...)
{
  g_autofree char *what = NULL;
  g_autofree char *line = NULL;
  g_autofree char *whole = NULL;
  va_list arguments;

  va_start (arguments, format);
  what = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  line = hut_cli_dup_line (what);
  whole = g_strconcat ("hutchwright: ", line, NULL);
  hut_cli_print_more (whole);
}

char *
hut_cli_dup_line (const char *text)
{
  GString *line = g_string_new (NULL);

  while (*text != '\0')
    {
      const gunichar c = g_utf8_get_char_validated (text, -1);

      if (c == (gunichar) -1 || c == (gunichar) -2)
        {
          /* A file name need not be UTF-8: its bytes stay as they are. */
          g_string_append_c (line, *text++);
          continue;
        }
      if (g_unichar_iscntrl (c))
        g_string_append_c (line, ' ');
      else
        g_string_append_unichar (line, c);
      text = g_utf8_next_char (text);
    }
  return g_string_free (line, FALSE);
}

HutCliStatus
hut_cli_check_target (const HutCliCommand *command,
                      const char *path,
                      HutCliTarget target)
{
  GStatBuf status;

  if (*path == '\0')
    return hut_cli_refuse (command, _("the target has no name; allowed: the name of a file"));
  if (g_lstat (path, &status) != 0)
    return HUT_CLI_DONE;
  if (target == HUT_CLI_TARGET_NEW)
    return hut_cli_refuse (command, _("“%s” exists and is not overwritten; "
                                      "allowed: another name, or --replace"), path);
  if (!S_ISREG (status.st_mode))
    return hut_cli_refuse (command, _("“%s” is not a plain file and is not overwritten; "
                                      "allowed: another name, or - for standard output"), path);
  return HUT_CLI_DONE;
}
