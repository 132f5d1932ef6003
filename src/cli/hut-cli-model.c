/* src/cli/hut-cli-model.c: a design that was read, and all that is derived from it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-cli"
#include "config.h"
#include "cli/hut-cli-model.h"

#include <errno.h>
#include <langinfo.h>
#include <unistd.h>

#include <glib/gi18n-lib.h>

#include "cli/hut-cli-output.h"
#include "design/hut-file.h"
#include "format/hut-number.h"
#include "export/hut-export.h"

/* Bytes that are taken from standard input. Own choice: far over any design, far under the memory
 * of any machine that this runs on; what is larger is cut off and then fails to read as XML. */
#define STDIN_MAX_BYTES (256u * 1024u * 1024u)
#define READ_STEP_BYTES 65536u

static GString *
read_stdin (GError **error)
{
  g_autofree char *step = g_malloc (READ_STEP_BYTES);
  GString *data = g_string_new (NULL);
  gssize count = 1;

  while (count > 0 && data->len < STDIN_MAX_BYTES)
    {
      count = read (STDIN_FILENO, step, READ_STEP_BYTES);
      if (count < 0 && errno == EINTR)
        {
          count = 1;
          continue;
        }
      if (count < 0)
        {
          g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_IO,
                       _("%s: standard input cannot be read: %s"), HUT_CLI_STREAM,
                       g_strerror (errno));
          g_string_free (data, TRUE);
          return NULL;
        }
      g_string_append_len (data, step, count);
    }
  return data;
}

static HutDesign *
load_stdin (GError **error)
{
  GString *data = read_stdin (error);
  HutDesign *design = NULL;

  if (data == NULL)
    return NULL;
  design = hut_design_from_xml (data->str, data->len, HUT_CLI_STREAM, error);
  g_string_free (data, TRUE);
  return design;
}

HutDesign *
hut_cli_load (const char *path,
              HutCliStatus *status)
{
  g_autoptr(GError) error = NULL;
  HutDesign *design = NULL;

  if (g_str_equal (path, HUT_CLI_STREAM))
    design = load_stdin (&error);
  else
    design = hut_design_load (path, &error);
  if (design != NULL)
    return design;
  if (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_IO))
    {
      hut_cli_print_error (_("%s; allowed: a file that can be read, or - for standard input"),
                           error->message);
      *status = HUT_CLI_IO;
      return NULL;
    }
  hut_cli_print_error ("%s", error->message);
  *status = HUT_CLI_WRONG;
  return NULL;
}

HutCliModel *
hut_cli_model_new (HutDesign *design)
{
  HutCliModel *self = g_new0 (HutCliModel, 1);

  self->design = design;
  self->assembly = hut_assembly_new (design);
  self->parts = hut_part_set_new (self->assembly);
  self->sheets = hut_sheet_set_new (self->assembly, self->parts);
  self->findings = hut_check_all (self->assembly, self->parts);
  hut_export_add_unplaced (self->findings, self->assembly, self->parts, self->sheets);
  return self;
}

void
hut_cli_model_free (HutCliModel *self)
{
  if (self == NULL)
    return;
  g_clear_pointer (&self->findings, g_ptr_array_unref);
  g_clear_pointer (&self->sheets, hut_sheet_set_free);
  g_clear_pointer (&self->parts, hut_part_set_free);
  g_clear_pointer (&self->assembly, hut_assembly_free);
  g_clear_pointer (&self->design, hut_design_free);
  g_free (self);
}

gboolean
hut_cli_model_is_blocked (const HutCliModel *self)
{
  for (guint i = 0; i < self->findings->len; i++)
    {
      if (((const HutFinding *) self->findings->pdata[i])->severity == HUT_SEVERITY_BLOCKS)
        return TRUE;
    }
  return FALSE;
}

static const char *
translate (const char *msgid)
{
  return _(msgid);
}

static const char *
severity_word (HutSeverity severity)
{
  switch (severity)
    {
    case HUT_SEVERITY_BLOCKS:
      return C_("severity of a finding", "blocks");
    case HUT_SEVERITY_WARNS:
      return C_("severity of a finding", "warns");
    case HUT_SEVERITY_NOTES:
      return C_("severity of a finding", "notes");
    }
  g_return_val_if_reached ("");
}

/* " [lid-top 120,45]": the middle of the place in whole mm; the XML has all of it. */
static void
append_places (GString *line,
               const GArray *places)
{
  for (guint i = 0; i < places->len; i++)
    {
      const HutPlace *place = &g_array_index (places, HutPlace, i);
      char u[HUT_NUMBER_SIZE], v[HUT_NUMBER_SIZE];

      if (!place->has_panel)
        continue;
      hut_number_fixed (u, (place->rect.u0 + place->rect.u1) / 2.0, 0);
      hut_number_fixed (v, (place->rect.v0 + place->rect.v1) / 2.0, 0);
      g_string_append_printf (line, " [%s %s,%s]", hut_panel_id_to_string (place->panel), u, v);
    }
}

char *
hut_cli_dup_finding_line (const HutFinding *finding)
{
  g_autofree char *text = hut_finding_dup_text (finding, translate, nl_langinfo (RADIXCHAR));
  g_autoptr(GString) line = g_string_new (NULL);

  g_string_append_printf (line, "%s: %s: %s", severity_word (finding->severity), finding->check,
                          text);
  append_places (line, finding->places);
  return hut_cli_dup_line (line->str);
}
