/* src/export/hut-export.c: the ready-to-cut set.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Derive, check, lay out, write every file to memory, and only then touch the disk. */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "design/hut-file.h"
#include "export/hut-export.h"
#include "export/hut-drill-template.h"
#include "export/hut-formats.h"
#include "export/hut-manifest.h"
#include "export/hut-set-folder.h"
#include "export/hut-write.h"
#include <glib/gi18n-lib.h>
#include <string.h>

#define DESIGN_NAME "design.hutch"
#define CUT_LIST_NAME "cut-list.csv"
#define CUT_TO_SIZE_NAME "cut-to-size.csv"
#define SHEETS_NAME "sheets.csv"
#define SHOPPING_NAME "shopping-list.csv"
#define BLANKS_NAME "sheets-to-buy.csv"

/* Share of the work that is done, as the progress tells it. Own choice: checks take longest. */
#define DERIVED_RATIO 0.4
#define MADE_RATIO 0.8

G_DEFINE_QUARK (hut-export-error-quark, hut_export_error)

/* All that is derived from the design for one export. */
typedef struct
{
  HutAssembly *assembly;
  HutPartSet *parts;
  HutSheetSet *sheets;
  GPtrArray *findings;  /* HutFinding */
  GPtrArray *overrides; /* ids that block and were allowed, sorted, NULL at the end; lent */
  char *mark;           /* the line that says so, or NULL */
} Work;

static gboolean
check_options (const HutExportOptions *options,
               GError **error)
{
  const char *const *known = hut_check_ids ();

  if (!hut_formats_check (options->formats, error))
    return FALSE;
  for (guint i = 0; options->allowed != NULL && options->allowed[i] != NULL; i++)
    if (!g_strv_contains (known, options->allowed[i]))
      {
        g_autofree char *list = g_strjoinv (", ", (char **) known);

        g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_FORMAT,
                     "no check is called “%s”; allowed: %s", options->allowed[i], list);
        return FALSE;
      }
  return TRUE;
}

/* ---- what blocks ----------------------------------------------------------------------------- */

/* TRUE when the checks have said already that bed or sheet are too small for it. */
static gboolean
is_known_misfit (const HutCutter *cutter,
                 const HutPart *part)
{
  const HutRect box = hut_region_bounds (part->region);

  return !hut_cutter_takes_stock (cutter, part->stock, box.u1 - box.u0, box.v1 - box.v0);
}

static guint
count_blocking (const GPtrArray *findings)
{
  guint count = 0;

  while (count < findings->len
         && ((const HutFinding *) g_ptr_array_index (findings, count))->severity
                == HUT_SEVERITY_BLOCKS)
    count++;
  return count;
}

void
hut_export_add_unplaced (GPtrArray *findings,
                         const HutAssembly *assembly,
                         const HutPartSet *parts,
                         const HutSheetSet *sheets)
{
  for (guint i = 0; i < sheets->unplaced->len; i++)
    {
      const guint index = g_array_index (sheets->unplaced, guint, i);
      const HutPart *part = g_ptr_array_index (parts->parts, index);
      HutFinding *finding;

      if (is_known_misfit (&assembly->design->cutter, part))
        continue;
      finding = g_new0 (HutFinding, 1);
      finding->check = HUT_EXPORT_UNPLACED_CHECK;
      finding->severity = HUT_SEVERITY_BLOCKS;
      finding->message = N_ ("Part {what} fits no sheet of {other} on this bed.");
      finding->what = g_strdup (part->id);
      finding->other = g_strdup (part->stock->id);
      finding->item = g_strdup (part->stock->id);
      finding->places = g_array_new (FALSE, FALSE, sizeof (HutPlace));
      if (part->panel != HUT_PART_NO_PANEL)
        {
          const HutPanel *panel = g_ptr_array_index (assembly->panels, part->panel);
          const HutPlace place = { TRUE, panel->id, hut_region_bounds (part->region) };

          g_array_append_val (finding->places, place);
        }
      g_ptr_array_insert (findings, (int) count_blocking (findings), finding);
    }
}

static void
add_once (GPtrArray *ids,
          const char *id)
{
  for (guint i = 0; i < ids->len; i++)
    if (g_str_equal (g_ptr_array_index (ids, i), id))
      return;
  g_ptr_array_add (ids, (gpointer) id);
}

static int
compare_names (gconstpointer a,
               gconstpointer b)
{
  return strcmp (*(const char *const *) a, *(const char *const *) b);
}

/* Joined by ", ". (transfer full) */
static char *
dup_joined (const GPtrArray *names)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < names->len && g_ptr_array_index (names, i) != NULL; i++)
    g_string_append_printf (text, "%s%s", i > 0 ? ", " : "",
                            (const char *) g_ptr_array_index (names, i));
  return g_string_free (text, FALSE);
}

/* Refuses while something blocks; else keeps what was overridden. */
static gboolean
check_blocking (Work *self,
                const char *const *allowed,
                GError **error)
{
  g_autoptr(GPtrArray) blocking = g_ptr_array_new ();

  for (guint i = 0; i < self->findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (self->findings, i);

      if (finding->severity == HUT_SEVERITY_BLOCKS)
        add_once (allowed != NULL && g_strv_contains (allowed, finding->check) ? self->overrides
                                                                                : blocking,
                  finding->check);
    }
  g_ptr_array_sort (blocking, compare_names);
  g_ptr_array_sort (self->overrides, compare_names);

  g_autofree char *blocking_names = dup_joined (blocking);
  g_autofree char *override_names = dup_joined (self->overrides);

  if (self->overrides->len > 0)
    self->mark = g_strdup_printf ("CHECKS OVERRIDDEN: %s", override_names);
  g_ptr_array_add (self->overrides, NULL);
  if (blocking->len > 0)
    {
      g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_BLOCKED,
                   "nothing was written, because these checks block: %s", blocking_names);
      return FALSE;
    }
  if (self->sheets->sheets->len == 0)
    {
      g_set_error_literal (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_BLOCKED,
                           "nothing was written, because the design has no part to cut");
      return FALSE;
    }
  return TRUE;
}

static void
work_init (Work *self,
           const HutDesign *design)
{
  self->assembly = hut_assembly_new (design);
  self->parts = hut_part_set_new (self->assembly);
  self->findings = hut_check_all (self->assembly, self->parts);
  self->sheets = hut_sheet_set_new (self->assembly, self->parts);
  self->overrides = g_ptr_array_new ();
  hut_export_add_unplaced (self->findings, self->assembly, self->parts, self->sheets);
}

static void
work_clear (Work *self)
{
  g_clear_pointer (&self->findings, g_ptr_array_unref);
  g_clear_pointer (&self->overrides, g_ptr_array_unref);
  g_clear_pointer (&self->mark, g_free);
  g_clear_pointer (&self->sheets, hut_sheet_set_free);
  g_clear_pointer (&self->parts, hut_part_set_free);
  g_clear_pointer (&self->assembly, hut_assembly_free);
}

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Work, work_clear)

/* ---- the files ------------------------------------------------------------------------------- */

/* @bytes: (transfer full) (nullable) */
static void
take_file (GPtrArray *files,
           const char *name,
           GBytes *bytes)
{
  if (bytes != NULL)
    g_ptr_array_add (files, hut_set_file_new (name, bytes));
}

static gboolean
add_sheets (const Work *self,
            const HutSheetFormat *format,
            guint format_count,
            GPtrArray *files,
            const HutSetWatch *watch,
            GError **error)
{
  const guint count = self->sheets->sheets->len;

  for (guint i = 0; i < count; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (self->sheets->sheets, i);
      g_autofree char *stem = hut_sheet_dup_stem (sheet);
      g_autofree char *name = g_strconcat (stem, format->suffix, NULL);
      g_autoptr(GError) cause = NULL;

      /* Files of all formats count, so that the share never goes back. */
      const double share_ratio = (files->len + 1.0) / ((double) format_count * count + 1.0);

      const double done_ratio = DERIVED_RATIO + (MADE_RATIO - DERIVED_RATIO) * share_ratio;

      if (!hut_set_watch_tell (watch, MIN (done_ratio, MADE_RATIO), name, error))
        return FALSE;

      GBytes *bytes = hut_write_sheet_page (self->assembly, self->parts, sheet, self->mark,
                                            format->write, &cause);

      if (bytes == NULL)
        {
          /* No override helps against a cut that kerf swallows: there is no path to write. */
          g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_BLOCKED,
                       "nothing was written, because %s", cause->message);
          return FALSE;
        }
      take_file (files, name, bytes);
    }
  return TRUE;
}

/* For each face on which a hand has to work. */
static gboolean
add_drill_templates (const Work *self,
                     GPtrArray *files,
                     GError **error)
{
  static const char *const faces[] = { "outside", "inside" };

  for (guint i = 0; i < self->parts->parts->len; i++)
    for (int face = HUT_FACE_OUTSIDE; face <= HUT_FACE_INSIDE; face++)
      {
        const HutPart *part = g_ptr_array_index (self->parts->parts, i);
        g_autofree char *name = g_strdup_printf ("drill-%s-%s", part->id, faces[face]);
        g_autofree char *file = g_strconcat (name, "-a4.pdf", NULL);
        GBytes *bytes;

        if (part->bought || !hut_part_has_hand_work (part, (HutFace) face))
          continue;
        bytes = hut_write_drill_template (self->assembly, part, (HutFace) face, name, self->mark,
                                          error);
        if (bytes == NULL)
          return FALSE;
        take_file (files, file, bytes);
      }
  return TRUE;
}

/* The design itself, so that the set can be opened again. The mark stands behind the document,
 * where readers skip it. */
static GBytes *
make_design_file (const char *xml,
                  const char *mark)
{
  g_autofree char *text = mark != NULL ? g_strdup_printf ("%s<!-- %s -->\n", xml, mark)
                                       : g_strdup (xml);
  const gsize size = strlen (text);

  return g_bytes_new_take (g_steal_pointer (&text), size);
}

static int
compare_files (gconstpointer a,
               gconstpointer b)
{
  const HutSetFile *x = *(HutSetFile *const *) a, *y = *(HutSetFile *const *) b;

  return strcmp (x->name, y->name);
}

/* All files, sorted, the manifest last. (transfer full) */
static GPtrArray *
make_files (const Work *self,
            const HutExportOptions *options,
            const HutSetWatch *watch,
            GError **error)
{
  g_autoptr(GPtrArray) files
      = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_set_file_free);
  g_autofree char *xml = hut_design_to_xml (self->assembly->design);
  g_autofree char *sha256 = g_compute_checksum_for_string (G_CHECKSUM_SHA256, xml, -1);
  HutSheetTotals totals;
  const HutManifestFacts facts = {
    .totals = &totals,
    .design_name = self->assembly->design->name,
    .source_name = options->source_name,
    .design_sha256 = sha256,
    .findings = self->findings,
    .overrides = (const char *const *) self->overrides->pdata,
  };

  guint format_count = 0;
  const HutSheetFormat *sheet_formats = hut_sheet_formats (&format_count);

  hut_sheet_set_get_totals (self->parts, self->sheets, &totals);
  for (guint i = 0; i < format_count; i++)
    if ((options->formats & sheet_formats[i].format) != 0
        && !add_sheets (self, &sheet_formats[i], format_count, files, watch, error))
      return NULL;
  if ((options->formats & HUT_FORMAT_CSV) != 0)
    {
      take_file (files, CUT_LIST_NAME,
                 hut_write_marked_cut_list (self->assembly, self->parts, self->sheets, self->mark));
      take_file (files, CUT_TO_SIZE_NAME,
                 hut_write_marked_cut_to_size (self->assembly, self->parts, self->mark));
      take_file (files, BLANKS_NAME,
                 hut_write_marked_blank_list (self->assembly, self->sheets, self->mark));
      take_file (files, SHEETS_NAME,
                 hut_write_marked_sheet_list (self->parts, self->sheets, self->mark));
      take_file (files, SHOPPING_NAME,
                 hut_write_marked_shopping_list (self->assembly, self->parts, self->mark));
    }
  if (!add_drill_templates (self, files, error))
    return NULL;
  take_file (files, DESIGN_NAME, make_design_file (xml, self->mark));
  g_ptr_array_sort (files, compare_files);

  GBytes *manifest = hut_manifest_write (&facts, files, error);

  if (manifest == NULL)
    return NULL;
  take_file (files, HUT_MANIFEST_NAME, manifest);
  return g_steal_pointer (&files);
}

/* ---- the set --------------------------------------------------------------------------------- */

static GStrv
dup_names (const GPtrArray *files)
{
  GPtrArray *names = g_ptr_array_new ();

  for (guint i = 0; i < files->len; i++)
    g_ptr_array_add (names, g_strdup (((HutSetFile *) g_ptr_array_index (files, i))->name));
  g_ptr_array_sort (names, compare_names);
  g_ptr_array_add (names, NULL);
  return (GStrv) g_ptr_array_free (names, FALSE);
}

gboolean
hut_export_set (const HutDesign *design,
                const char *folder,
                const HutExportOptions *options,
                HutExportProgress progress,
                gpointer user_data,
                GCancellable *cancellable,
                GStrv *written,
                GError **error)
{
  g_return_val_if_fail (design != NULL && folder != NULL && options != NULL, FALSE);

  const HutSetWatch watch = { progress, user_data, cancellable };
  g_auto(Work) work = { NULL };

  if (!check_options (options, error)
      || !hut_set_watch_tell (&watch, 0.0, DESIGN_NAME, error))
    return FALSE;
  work_init (&work, design);
  if (!check_blocking (&work, options->allowed, error) || !hut_set_folder_check (folder, error)
      || !hut_set_watch_tell (&watch, DERIVED_RATIO, DESIGN_NAME, error))
    return FALSE;

  g_autoptr(GPtrArray) files = make_files (&work, options, &watch, error);

  if (files == NULL || !hut_set_folder_write (folder, files, MADE_RATIO, &watch, error))
    return FALSE;
  if (written != NULL)
    *written = dup_names (files);
  return TRUE;
}
