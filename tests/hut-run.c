/* tests/hut-run.c: runs the program as a user does, and keeps what it said.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-run.h"

#include <string.h>

static GSubprocess *
start (const char *const *argv,
       const HutRunSetup *setup)
{
  g_autoptr(GSubprocessLauncher) launcher = NULL;
  g_autoptr(GError) error = NULL;
  GSubprocessFlags flags = G_SUBPROCESS_FLAGS_STDERR_PIPE;
  GSubprocess *process = NULL;

  if (setup->input != NULL)
    flags |= G_SUBPROCESS_FLAGS_STDIN_PIPE;
  if (setup->output == NULL)
    flags |= G_SUBPROCESS_FLAGS_STDOUT_PIPE;
  launcher = g_subprocess_launcher_new (flags);
  g_subprocess_launcher_setenv (launcher, "LANGUAGE", "en", TRUE);
  g_subprocess_launcher_unsetenv (launcher, "DISPLAY");
  g_subprocess_launcher_unsetenv (launcher, "WAYLAND_DISPLAY");
  if (setup->output != NULL)
    g_subprocess_launcher_set_stdout_file_path (launcher, setup->output);
  if (setup->folder != NULL)
    g_subprocess_launcher_set_cwd (launcher, setup->folder);
  for (guint i = 0; setup->changes != NULL && setup->changes[i] != NULL; i++)
    {
      g_auto(GStrv) pair = g_strsplit (setup->changes[i], "=", 2);

      g_subprocess_launcher_setenv (launcher, pair[0], pair[1], TRUE);
    }
  process = g_subprocess_launcher_spawnv (launcher, argv, &error);
  assert_ok (process != NULL, error);
  return process;
}

static char *
dup_text (GBytes *bytes)
{
  gsize size = 0;
  const char *data = bytes != NULL ? g_bytes_get_data (bytes, &size) : NULL;

  return g_strndup (data != NULL ? data : "", size);
}

HutRun *
hut_run_argv (const char *const *arguments,
              const HutRunSetup *setup)
{
  static const HutRunSetup plain = { NULL };
  const char *binary = g_getenv ("HUT_BINARY");
  g_autoptr(GPtrArray) argv = g_ptr_array_new ();
  g_autoptr(GSubprocess) process = NULL;
  g_autoptr(GBytes) errors = NULL;
  g_autoptr(GError) error = NULL;
  HutRun *self = g_new0 (HutRun, 1);

  if (binary == NULL)
    fail_msg ("HUT_BINARY must name the program; run the tests through meson");
  g_ptr_array_add (argv, (char *) binary);
  for (guint i = 0; arguments[i] != NULL; i++)
    g_ptr_array_add (argv, (char *) arguments[i]);
  g_ptr_array_add (argv, NULL);
  setup = setup != NULL ? setup : &plain;
  process = start ((const char *const *) argv->pdata, setup);
  /* A program that does not read all of its input breaks the pipe: that is its right. */
  if (!g_subprocess_communicate (process, setup->input, NULL, &self->out, &errors, &error)
      && !g_error_matches (error, G_IO_ERROR, G_IO_ERROR_BROKEN_PIPE))
    fail_msg ("%s: %s", binary, error->message);
  self->status = g_subprocess_get_if_exited (process) ? g_subprocess_get_exit_status (process)
                                                      : -g_subprocess_get_term_sig (process);
  self->text = dup_text (self->out);
  self->errors = dup_text (errors);
  return self;
}

HutRun *
hut_run (const char *argument,
         ...)
{
  g_autoptr(GPtrArray) arguments = g_ptr_array_new ();
  va_list rest;

  va_start (rest, argument);
  for (const char *next = argument; next != NULL; next = va_arg (rest, const char *))
    g_ptr_array_add (arguments, (char *) next);
  va_end (rest);
  g_ptr_array_add (arguments, NULL);
  return hut_run_argv ((const char *const *) arguments->pdata, NULL);
}

void
hut_run_free (HutRun *self)
{
  if (self == NULL)
    return;
  g_clear_pointer (&self->out, g_bytes_unref);
  g_free (self->text);
  g_free (self->errors);
  g_free (self);
}

void
hut_run_assert_status (const HutRun *self,
                       int status)
{
  if (self->status != status)
    fail_msg ("exit status is %d, must be %d\nstandard output:\n%s\nstandard error:\n%s",
              self->status, status, self->text, self->errors);
}

void
hut_run_assert_refused (const HutRun *self,
                        int status,
                        const char *part)
{
  const char *first_end = strchr (self->errors, '\n');
  g_autofree char *first = NULL;

  hut_run_assert_status (self, status);
  if (first_end == NULL)
    fail_msg ("standard error has no line: “%s”", self->errors);
  first = g_strndup (self->errors, (gsize) (first_end - self->errors));
  if (!g_str_has_prefix (first, "hutchwright: "))
    fail_msg ("“%s” must begin with “hutchwright: ”", first);
  if (strstr (first, part) == NULL)
    fail_msg ("“%s” must name “%s”", first, part);
  if (strstr (first, "; ") == NULL)
    fail_msg ("“%s” must tell after “; ” what is allowed", first);
}

char *
hut_run_write_example (const char *folder,
                       const char *example,
                       const char *name)
{
  char *path = g_build_filename (folder, name, NULL);
  g_autoptr(HutRun) run = hut_run ("example", example, "--to", path, NULL);

  hut_run_assert_status (run, 0);
  return path;
}

void
hut_run_write_text (const char *path,
                    const char *text)
{
  g_autoptr(GError) error = NULL;

  assert_ok (g_file_set_contents (path, text, -1, &error), error);
}

char *
hut_run_read_text (const char *path)
{
  g_autoptr(GError) error = NULL;
  char *text = NULL;

  assert_ok (g_file_get_contents (path, &text, NULL, &error), error);
  return text;
}
