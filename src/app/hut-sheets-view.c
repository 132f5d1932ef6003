/* src/app/hut-sheets-view.c: how the parts lie on the sheets.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-sheets-view-private.h"
#include "app/hut-session-spots.h"
#include "app/hut-widget-look.h"
#include "draw/hut-sheet-view.h"
#include <glib/gi18n.h>
#include <locale.h>

/* Own choice: a hand that has not moved for this long rests. */
#define REST_MS 300
/* How often the progress is looked at. Own choice: it moves as if by itself. */
#define WATCH_MS 100
/* A job that is done sooner shows no progress: that would only flicker. Own choice. */
#define PATIENCE_MS 400
/* Room for one sheet with its title and labels that can be read, px. Own choice. */
#define SHEET_WIDTH_PX 210
#define SHEET_HEIGHT_PX 250

static guint packed_signal;

G_DEFINE_TYPE (HutSheetsView, hut_sheets_view, GTK_TYPE_WIDGET)

static const char *
translate (const char *msgid)
{
  return gettext (msgid);
}

HutSheetGrid
hut_sheets_view_get_grid (HutSheetsView *self)
{
  if (self->packed == NULL)
    return (HutSheetGrid){ 0 };
  return hut_sheet_grid_find (self->packed->sheets,
                              hut_widget_text_px (GTK_WIDGET (self->area)),
                              gtk_widget_get_width (GTK_WIDGET (self->area)),
                              gtk_widget_get_height (GTK_WIDGET (self->area)));
}

static void
draw_focus (HutSheetsView *self,
            cairo_t *cr,
            int width_px,
            int height_px)
{
  if (!gtk_widget_has_visible_focus (GTK_WIDGET (self->area)))
    return;
  gtk_render_focus (gtk_widget_get_style_context (GTK_WIDGET (self->area)), cr, 1, 1, width_px - 2,
                    height_px - 2);
}

static void
draw (GtkDrawingArea *area,
      cairo_t *cr,
      int width_px,
      int height_px,
      gpointer user_data)
{
  HutSheetsView *self = user_data;
  HutFlatStyle style = hut_flat_style_plain ();
  const HutSheetGrid grid = hut_sheets_view_get_grid (self);
  g_autofree gboolean *wrong = hut_sheets_view_dup_wrong (self);
  const HutSheetMarks marks
      = { hut_session_get_design (self->session), self->chosen, wrong };

  if (self->packed == NULL)
    return;
  style.dark = hut_widget_is_dark (GTK_WIDGET (area));
  style.high_contrast = hut_widget_is_high_contrast (GTK_WIDGET (area));
  style.text_px = hut_widget_text_px (GTK_WIDGET (area));
  style.decimal_point = localeconv ()->decimal_point;
  style.translate = translate;
  hut_sheet_view_draw_marked (cr, self->packed->assembly, self->packed->parts,
                              self->packed->sheets, &style, &marks, width_px, height_px);
  hut_sheets_view_draw_guides (self, cr, &grid);
  draw_focus (self, cr, width_px, height_px);
}

/* As high as it takes to show each sheet large enough to read; the rest is scrolled. */
static void
set_height (HutSheetsView *self)
{
  const int width_px = gtk_widget_get_width (GTK_WIDGET (self->area));
  const int column_count = MAX (width_px / SHEET_WIDTH_PX, 1);
  const int sheet_count = self->packed != NULL ? (int) self->packed->sheets->sheets->len : 0;
  const int row_count = (sheet_count + column_count - 1) / column_count;

  /* A single row takes what height there is. */
  gtk_drawing_area_set_content_height (self->area,
                                       row_count > 1 ? row_count * SHEET_HEIGHT_PX : 0);
}

static void
on_resize (HutSheetsView *self)
{
  set_height (self);
}

/* ---- jobs ------------------------------------------------------------------------------------ */

static void
forget_job (HutSheetsView *self)
{
  g_clear_handle_id (&self->watch_timeout, g_source_remove);
  g_clear_object (&self->job);
  g_clear_pointer (&self->watch, hut_sheet_watch_unref);
  gtk_stack_set_visible_child (self->bar, self->tools);
}

static void
cancel_job (HutSheetsView *self)
{
  if (self->job != NULL)
    g_cancellable_cancel (self->job);
  forget_job (self);
}

static gboolean
on_watch (gpointer user_data)
{
  HutSheetsView *self = user_data;

  if (g_get_monotonic_time () - self->started_us > PATIENCE_MS * G_TIME_SPAN_MILLISECOND)
    gtk_stack_set_visible_child (self->bar, self->work);
  gtk_progress_bar_set_fraction (self->progress, hut_sheet_watch_get_done_ratio (self->watch));
  return G_SOURCE_CONTINUE;
}

static void
show_packed (HutSheetsView *self,
             HutPacked *packed)
{
  hut_sheets_view_forget_drag (self);
  g_clear_pointer (&self->packed, hut_packed_free);
  self->packed = packed;
  set_height (self);
  hut_sheets_view_tell (self);
  g_signal_emit (self, packed_signal, 0);
}

/* Fewer sheets become the design's layout; else all stays as it is. @packed: (transfer full) */
static void
take_search (HutSheetsView *self,
             HutPacked *packed)
{
  const guint found = packed->sheets->sheets->len;
  const guint had = self->packed != NULL ? self->packed->sheets->sheets->len : G_MAXUINT;
  g_autofree char *said = NULL;

  if (packed->sheets->unplaced->len > 0 || found >= had)
    {
      said = g_strdup (_("No layout with fewer sheets was found."));
      hut_packed_free (packed);
    }
  else
    {
      said = g_strdup_printf (
          ngettext ("%u sheet fewer", "%u sheets fewer", had - found), had - found);
      hut_session_take_layout (self->session, packed->parts, packed->sheets);
      show_packed (self, packed);
    }
  gtk_label_set_text (self->status, said);
}

/* What a finished job comes back to: the view may be gone by then. */
static void
on_packed (GObject *source,
           GAsyncResult *result,
           gpointer user_data)
{
  g_autofree GWeakRef *weak_self = user_data;
  g_autoptr(HutSheetsView) self = g_weak_ref_get (weak_self);
  g_autoptr(GError) error = NULL;
  g_autoptr(HutPacked) packed = hut_sheet_job_run_finish (result, &error);

  g_weak_ref_clear (weak_self);
  /* Cancelled: a newer job is on its way, or the view is gone. There is no other error. */
  if (packed == NULL || self == NULL)
    return;
  forget_job (self);
  if (self->kind == HUT_SHEET_JOB_PATIENT)
    take_search (self, g_steal_pointer (&packed));
  else
    show_packed (self, g_steal_pointer (&packed));
}

static void
start_job (HutSheetsView *self,
           HutSheetJobKind kind)
{
  GWeakRef *weak_self = g_new0 (GWeakRef, 1);

  cancel_job (self);
  self->kind = kind;
  self->job = g_cancellable_new ();
  self->watch = hut_sheet_watch_new ();
  self->started_us = g_get_monotonic_time ();
  self->watch_timeout = g_timeout_add (WATCH_MS, on_watch, self);
  /* A layout of the design as it was is of no use: there is nothing to go back to. */
  gtk_widget_set_visible (self->cancel, kind == HUT_SHEET_JOB_PATIENT);
  gtk_progress_bar_set_text (self->progress, kind == HUT_SHEET_JOB_PATIENT
                                                 ? _("Looking for a layout with fewer sheets…")
                                                 : _("Laying out the sheets…"));
  g_weak_ref_init (weak_self, self);
  hut_sheet_job_run_async (hut_session_get_design (self->session), kind, self->watch, self->job,
                           on_packed, weak_self);
}

static gboolean
on_rested (gpointer user_data)
{
  HutSheetsView *self = user_data;

  self->rest_timeout = 0;
  self->stale = FALSE;
  start_job (self, HUT_SHEET_JOB_USUAL);
  return G_SOURCE_REMOVE;
}

static void
on_search (HutSheetsView *self)
{
  start_job (self, HUT_SHEET_JOB_PATIENT);
}

static void
on_stop (HutSheetsView *self)
{
  if (self->watch != NULL)
    hut_sheet_watch_stop (self->watch);
}

static void
on_cancel (HutSheetsView *self)
{
  cancel_job (self);
}

/* Off screen nothing is packed. */
static void
schedule (HutSheetsView *self)
{
  if (!self->stale || !gtk_widget_get_mapped (GTK_WIDGET (self)))
    return;
  g_clear_handle_id (&self->rest_timeout, g_source_remove);
  self->rest_timeout = g_timeout_add (REST_MS, on_rested, self);
}

static void
on_derived (HutSheetsView *self)
{
  self->stale = TRUE;
  hut_sheets_view_tell (self);
  schedule (self);
}

static void
hut_sheets_view_map (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (hut_sheets_view_parent_class)->map (widget);
  schedule (HUT_SHEETS_VIEW (widget));
}

static void
hut_sheets_view_dispose (GObject *object)
{
  HutSheetsView *self = HUT_SHEETS_VIEW (object);

  g_clear_handle_id (&self->rest_timeout, g_source_remove);
  if (self->content != NULL)
    cancel_job (self);
  g_clear_pointer (&self->content, gtk_widget_unparent);
  g_clear_pointer (&self->packed, hut_packed_free);
  g_clear_object (&self->session);
  g_clear_pointer (&self->chosen, g_free);
  G_OBJECT_CLASS (hut_sheets_view_parent_class)->dispose (object);
}

static void
hut_sheets_view_class_init (HutSheetsViewClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_sheets_view_dispose;
  widget_class->map = hut_sheets_view_map;
  packed_signal = g_signal_new ("packed", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL,
                                NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-sheets-view.ui");
  gtk_widget_class_bind_template_child (widget_class, HutSheetsView, content);
  gtk_widget_class_bind_template_child (widget_class, HutSheetsView, area);
  gtk_widget_class_bind_template_child (widget_class, HutSheetsView, bar);
  gtk_widget_class_bind_template_child (widget_class, HutSheetsView, tools);
  gtk_widget_class_bind_template_child (widget_class, HutSheetsView, work);
  gtk_widget_class_bind_template_child (widget_class, HutSheetsView, cancel);
  gtk_widget_class_bind_template_child (widget_class, HutSheetsView, progress);
  gtk_widget_class_bind_template_child (widget_class, HutSheetsView, status);
  gtk_widget_class_bind_template_callback (widget_class, on_resize);
  gtk_widget_class_bind_template_callback (widget_class, on_search);
  gtk_widget_class_bind_template_callback (widget_class, on_stop);
  gtk_widget_class_bind_template_callback (widget_class, on_cancel);
  hut_sheets_view_move_class_init (widget_class);
}

static void
hut_sheets_view_init (HutSheetsView *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_drawing_area_set_draw_func (self->area, draw, self, NULL);
  hut_sheets_view_move_init (self);
}

GtkWidget *
hut_sheets_view_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutSheetsView *self = g_object_new (HUT_TYPE_SHEETS_VIEW, NULL);

  self->session = g_object_ref (session);
  self->stale = TRUE;
  hut_sheets_view_tell (self);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

const HutPacked *
hut_sheets_view_get_packed (HutSheetsView *self)
{
  g_return_val_if_fail (HUT_IS_SHEETS_VIEW (self), NULL);
  return self->packed;
}

gboolean
hut_sheets_view_is_busy (HutSheetsView *self)
{
  g_return_val_if_fail (HUT_IS_SHEETS_VIEW (self), FALSE);
  return self->stale || self->job != NULL;
}
