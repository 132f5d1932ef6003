/* src/app/hut-cut-page.c: the step Cut: sheets, formats, what blocks, and the export itself.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-cut-page.h"
#include "app/hut-blocking-list.h"
#include "app/hut-checked-entry.h"
#include "app/hut-export-job.h"
#include "app/hut-field.h"
#include "export/hut-sheet-figures.h"
#include <glib/gi18n.h>
#include <math.h>
#include <string.h>

/* How often the progress bar looks at the job. Own choice: smooth enough, and cheap. */
#define PROGRESS_MS 50
/* Longest name that common file systems take, bytes. Source: POSIX NAME_MAX as Linux has it. */
#define NAME_MAX_BYTES 255

struct _HutCutPage
{
  GtkWidget parent_instance;

  GtkWidget *scroller;
  GtkLabel *sheet_counts, *unplaced, *result, *problem;
  GtkCheckButton *svg, *dxf, *csv, *gcode, *dxf_r12, *pdf;
  GtkDropDown *paper;
  GtkLabel *gcode_why;
  HutCheckedEntry *folder;
  HutBlockingList *blocking;
  GtkWidget *export, *progress_box, *result_box;
  GtkProgressBar *progress;

  HutSession *session;
  HutSheetsView *sheets;
  HutExportJob *job; /* the running one, or NULL */
  guint progress_timeout;
  char *folder_name; /* typed by the user, or NULL: follows the design's name */
  char *written_to;  /* of the last export, or NULL */
};

G_DEFINE_TYPE (HutCutPage, hut_cut_page, GTK_TYPE_WIDGET)

static void
show_problem (HutCutPage *self,
              const char *problem)
{
  gtk_label_set_text (self->problem, problem != NULL ? problem : "");
  gtk_widget_set_visible (GTK_WIDGET (self->problem), problem != NULL);
}

/* ---- sheets ---------------------------------------------------------------------------------- */

static guint
count_sheets (const HutSheetSet *set,
              const HutStock *stock)
{
  guint count = 0;

  for (guint i = 0; i < set->sheets->len; i++)
    count += ((const HutSheet *)g_ptr_array_index (set->sheets, i))->stock == stock ? 1 : 0;
  return count;
}

/* "73 % used; 41.2 m to cut from 118 starts; about 52 min" (transfer full) */
static char *
dup_totals (const HutPacked *packed)
{
  HutSheetTotals totals;
  guint minutes;
  g_autofree char *time = NULL;
  g_autofree char *price = NULL;

  hut_sheet_set_get_totals (packed->parts, packed->sheets, &totals);
  minutes = (guint)ceil (totals.time_s / 60.0);
  /* Translators: hours and minutes that cutting all sheets takes */
  time = minutes >= 60 ? g_strdup_printf (_("%u h %u min"), minutes / 60, minutes % 60)
                       : g_strdup_printf (_("%u min"), minutes);
  /* Translators: the price of all sheets to buy, in the owner's currency */
  price = totals.price_known ? g_strdup_printf (_("; sheets cost %.2f"), totals.price)
                             : g_strdup ("");
  /* Translators: share of the sheets that parts are made of; length in m; how often the tool
   * starts; time; price or nothing */
  return g_strdup_printf (_("%.0f %% used; %.1f m to cut from %u starts; about %s%s"),
                          totals.used_ratio * 100.0, totals.cut_length_mm / 1000.0, totals.pierces,
                          time, price);
}

static void
show_sheets (HutCutPage *self)
{
  const HutPacked *packed = hut_sheets_view_get_packed (self->sheets);
  g_autoptr (GString) text = g_string_new (NULL);
  g_autofree char *unplaced = NULL;

  if (packed == NULL)
    return;
  for (guint i = 0; i < packed->assembly->design->stocks->len; i++)
    {
      const HutStock *stock = g_ptr_array_index (packed->assembly->design->stocks, i);
      const guint count = count_sheets (packed->sheets, stock);
      g_autofree char *line = NULL;

      if (count == 0)
        continue;
      /* Translators: number of sheets, name of the stock */
      line = g_strdup_printf (ngettext ("%u sheet of %s", "%u sheets of %s", count), count,
                              stock->name);
      g_string_append_printf (text, "%s%s", text->len > 0 ? "\n" : "", line);
    }
  if (text->len > 0)
    {
      g_autofree char *totals = dup_totals (packed);

      g_string_append_printf (text, "\n%s", totals);
    }
  gtk_label_set_text (self->sheet_counts,
                      text->len > 0 ? text->str : _("No parts yet: see the findings."));
  unplaced = g_strdup_printf (
      ngettext ("%u part fits no sheet.", "%u parts fit no sheet.", packed->sheets->unplaced->len),
      packed->sheets->unplaced->len);
  gtk_label_set_text (self->unplaced, unplaced);
  gtk_widget_set_visible (GTK_WIDGET (self->unplaced), packed->sheets->unplaced->len > 0);
}

/* ---- choices --------------------------------------------------------------------------------- */

/* In the order of the list. */
static const HutFormats PAPERS[]
    = { HUT_FORMAT_PDF_A4, HUT_FORMAT_PDF_A3, HUT_FORMAT_PDF_LETTER };

static gboolean
cuts_with_laser (HutCutPage *self)
{
  return hut_session_get_design (self->session)->cutter.kind == HUT_CUTTER_LASER;
}

static void
show_gcode (HutCutPage *self)
{
  const gboolean laser = cuts_with_laser (self);

  gtk_label_set_text (
      self->gcode_why,
      laser ? _("For the controller of a laser, with the speed, power and passes of the recipe. "
                "Try it with the beam off first.")
            : _("For the controller of a router, with the speed and passes of the recipe and the "
                "spindle of your cutter. Run it in the air first, without a sheet."));
}

static HutFormats
chosen_formats (HutCutPage *self)
{
  guint formats = 0;

  formats |= gtk_check_button_get_active (self->svg) ? HUT_FORMAT_SVG : 0;
  formats |= gtk_check_button_get_active (self->dxf) ? HUT_FORMAT_DXF : 0;
  formats |= gtk_check_button_get_active (self->csv) ? HUT_FORMAT_CSV : 0;
  formats |= gtk_check_button_get_active (self->dxf_r12) ? HUT_FORMAT_DXF_R12 : 0;
  formats |= gtk_check_button_get_active (self->gcode) ? HUT_FORMAT_GCODE : 0;
  if (gtk_check_button_get_active (self->pdf))
    formats |= PAPERS[MIN (gtk_drop_down_get_selected (self->paper), G_N_ELEMENTS (PAPERS) - 1)];
  return (HutFormats)formats;
}

static gboolean
check_folder_name (const char *text,
                   GError **error)
{
  if (*text != '\0' && strchr (text, '/') == NULL && strcmp (text, ".") != 0
      && strcmp (text, "..") != 0 && strlen (text) <= NAME_MAX_BYTES)
    return TRUE;
  g_set_error_literal (error, G_IO_ERROR, G_IO_ERROR_INVALID_FILENAME,
                       _("A name for a folder, without “/”"));
  return FALSE;
}

/* "engraver-cut" for engraver.hutch; a design without a file goes by its name. */
static char *
dup_default_folder_name (HutCutPage *self)
{
  const char *path = hut_session_get_path (self->session);
  const char *design_name = hut_session_get_design (self->session)->name;
  g_autofree char *stem
      = path != NULL ? g_path_get_basename (path)
                     : g_strdup (design_name != NULL && *design_name != '\0' ? design_name : "hut");
  const gboolean is_hutch = g_str_has_suffix (stem, ".hutch");

  if (is_hutch)
    stem[strlen (stem) - strlen (".hutch")] = '\0';
  g_strdelimit (stem, "/", '-');
  return g_strconcat (stem, "-cut", NULL);
}

static void
show_folder_name (HutCutPage *self)
{
  g_autofree char *name = hut_cut_page_dup_folder_name (self);

  hut_checked_entry_set_text (self->folder, name);
}

static void
on_folder_committed (HutCutPage *self,
                     const char *text)
{
  g_free (self->folder_name);
  self->folder_name = g_strdup (text);
  show_folder_name (self);
}

static void
show_buttons (HutCutPage *self)
{
  gtk_widget_set_visible (self->export, self->job == NULL);
  gtk_widget_set_visible (self->progress_box, self->job != NULL);
}

static void
on_toggled (HutCutPage *self)
{
  show_problem (self, NULL);
}

static void
on_derived (HutCutPage *self)
{
  show_folder_name (self);
  show_gcode (self);
}

/* ---- export ---------------------------------------------------------------------------------- */

static gboolean
on_progress (gpointer user_data)
{
  HutCutPage *self = user_data;
  g_autofree char *file = NULL;
  const double progress_ratio = hut_export_job_get_progress_ratio (self->job, &file);

  gtk_progress_bar_set_fraction (self->progress, progress_ratio);
  gtk_progress_bar_set_text (self->progress, *file != '\0' ? file : _("Checking…"));
  return G_SOURCE_CONTINUE;
}

static void
show_result (HutCutPage *self,
             const char *folder,
             guint file_count)
{
  g_autofree char *shown = g_filename_display_name (folder);
  /* Translators: number of files, and the folder they are in */
  g_autofree char *text
      = g_strdup_printf (ngettext ("%u file written to\n%s", "%u files written to\n%s", file_count),
                         file_count, shown);

  g_free (self->written_to);
  self->written_to = g_strdup (folder);
  gtk_label_set_text (self->result, text);
  gtk_widget_set_visible (self->result_box, TRUE);
  show_problem (self, NULL);
}

static void
on_exported (GObject *source,
             GAsyncResult *result,
             gpointer user_data)
{
  HutExportJob *job = HUT_EXPORT_JOB (source);
  g_autofree GWeakRef *weak_self = user_data;
  g_autoptr (HutCutPage) self = g_weak_ref_get (weak_self);
  g_autoptr (GError) error = NULL;
  g_auto (GStrv) written = hut_export_job_run_finish (job, result, &error);

  g_weak_ref_clear (weak_self);
  if (self == NULL || self->job != job)
    return;
  g_clear_handle_id (&self->progress_timeout, g_source_remove);
  g_clear_object (&self->job);
  show_buttons (self);
  if (written != NULL)
    show_result (self, hut_export_job_get_folder (job), g_strv_length (written));
  else if (g_error_matches (error, G_IO_ERROR, G_IO_ERROR_CANCELLED))
    show_problem (self, _("Cancelled. Nothing was written."));
  else
    show_problem (self, error->message);
}

static void
on_open_folder (HutCutPage *self)
{
  g_autofree char *uri
      = self->written_to != NULL ? g_filename_to_uri (self->written_to, NULL, NULL) : NULL;
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (self));

  if (uri != NULL)
    gtk_show_uri (GTK_IS_WINDOW (root) ? GTK_WINDOW (root) : NULL, uri, GDK_CURRENT_TIME);
}

/* ---- the page -------------------------------------------------------------------------------- */

static void
hut_cut_page_dispose (GObject *object)
{
  HutCutPage *self = HUT_CUT_PAGE (object);

  g_clear_handle_id (&self->progress_timeout, g_source_remove);
  if (self->job != NULL)
    hut_export_job_cancel (self->job);
  g_clear_object (&self->job);
  g_clear_pointer (&self->scroller, gtk_widget_unparent);
  g_clear_object (&self->sheets);
  g_clear_object (&self->session);
  g_clear_pointer (&self->folder_name, g_free);
  g_clear_pointer (&self->written_to, g_free);
  G_OBJECT_CLASS (hut_cut_page_parent_class)->dispose (object);
}

static void
hut_cut_page_class_init (HutCutPageClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_cut_page_dispose;
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_CHECKED_ENTRY);
  g_type_ensure (HUT_TYPE_BLOCKING_LIST);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-cut-page.ui");
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, scroller);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, sheet_counts);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, unplaced);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, svg);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, dxf);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, csv);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, gcode);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, gcode_why);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, dxf_r12);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, pdf);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, paper);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, folder);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, blocking);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, export);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, progress_box);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, progress);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, result_box);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, result);
  gtk_widget_class_bind_template_child (widget_class, HutCutPage, problem);
  gtk_widget_class_bind_template_callback (widget_class, on_toggled);
  gtk_widget_class_bind_template_callback (widget_class, on_open_folder);
}

static void
hut_cut_page_init (HutCutPage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_cut_page_new (HutSession *session,
                  HutSheetsView *sheets)
{
  g_return_val_if_fail (HUT_IS_SESSION (session) && HUT_IS_SHEETS_VIEW (sheets), NULL);

  HutCutPage *self = g_object_new (HUT_TYPE_CUT_PAGE, NULL);

  self->session = g_object_ref (session);
  self->sheets = g_object_ref (sheets);
  hut_blocking_list_bind (self->blocking, session);
  hut_checked_entry_set_check (self->folder, check_folder_name);
  g_signal_connect_object (self->folder, "committed", G_CALLBACK (on_folder_committed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (sheets, "packed", G_CALLBACK (show_sheets), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "file-changed", G_CALLBACK (on_derived), self,
                           G_CONNECT_SWAPPED);
  on_derived (self);
  show_buttons (self);
  return GTK_WIDGET (self);
}

gboolean
hut_cut_page_may_export (HutCutPage *self)
{
  g_return_val_if_fail (HUT_IS_CUT_PAGE (self), FALSE);

  g_auto (GStrv) allowed = hut_blocking_list_dup_allowed (self->blocking);

  return chosen_formats (self) != 0
         && !hut_findings_block (hut_session_get_findings (self->session),
                                 (const char *const *)allowed);
}

char *
hut_cut_page_dup_folder_name (HutCutPage *self)
{
  g_return_val_if_fail (HUT_IS_CUT_PAGE (self), NULL);
  return self->folder_name != NULL ? g_strdup (self->folder_name) : dup_default_folder_name (self);
}

void
hut_cut_page_export_to (HutCutPage *self,
                        const char *folder)
{
  g_return_if_fail (HUT_IS_CUT_PAGE (self) && folder != NULL);

  const char *path = hut_session_get_path (self->session);
  g_autofree char *source_name = path != NULL ? g_path_get_basename (path) : NULL;
  g_auto (GStrv) allowed = hut_blocking_list_dup_allowed (self->blocking);
  GWeakRef *weak_self;

  if (self->job != NULL)
    return;
  if (chosen_formats (self) == 0)
    {
      show_problem (self, _("Choose at least one kind of file."));
      return;
    }
  show_problem (self, NULL);
  gtk_widget_set_visible (self->result_box, FALSE);
  weak_self = g_new0 (GWeakRef, 1);
  g_weak_ref_init (weak_self, self);
  self->job = hut_export_job_new (hut_session_get_design (self->session), folder,
                                  chosen_formats (self), (const char *const *)allowed, source_name);
  show_buttons (self);
  on_progress (self);
  self->progress_timeout = g_timeout_add (PROGRESS_MS, on_progress, self);
  hut_export_job_run_async (self->job, on_exported, weak_self);
}

gboolean
hut_cut_page_is_exporting (HutCutPage *self)
{
  g_return_val_if_fail (HUT_IS_CUT_PAGE (self), FALSE);
  return self->job != NULL;
}

void
hut_cut_page_cancel_export (HutCutPage *self)
{
  g_return_if_fail (HUT_IS_CUT_PAGE (self));
  if (self->job != NULL)
    hut_export_job_cancel (self->job);
}

void
hut_cut_page_tell_why_not (HutCutPage *self)
{
  g_return_if_fail (HUT_IS_CUT_PAGE (self));

  if (chosen_formats (self) == 0)
    show_problem (self, _("Choose at least one kind of file."));
  else if (!hut_cut_page_may_export (self))
    show_problem (self, _("Not exported: see above what blocks."));
}
