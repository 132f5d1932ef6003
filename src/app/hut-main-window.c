/* src/app/hut-main-window.c: the window and how its parts speak with each other.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-main-window-private.h"
#include "app/hut-engineering-page.h"
#include "app/hut-inspector.h"
#include "app/hut-openings-page.h"
#include "app/hut-results-view.h"
#include "app/hut-settings.h"
#include "app/hut-shape-page.h"
#include "app/hut-shelf.h"
#include <glib/gi18n.h>

/* Share of the height that the inspector gets. Own choice. */
#define INSPECTOR_RATIO 0.55

G_DEFINE_TYPE (HutMainWindow, hut_main_window, GTK_TYPE_APPLICATION_WINDOW)

/* ---- title ----------------------------------------------------------------------------------- */

static void
show_title (HutMainWindow *self)
{
  const char *path = hut_session_get_path (self->session);
  const char *design_name = hut_session_get_design (self->session)->name;
  const gboolean modified = hut_session_is_modified (self->session);
  g_autofree char *shown = path != NULL ? g_filename_display_name (path) : NULL;
  const char *name
      = design_name != NULL && *design_name != '\0' ? design_name : _("Enclosure without a name");
  g_autofree char *title = NULL;

  /* Translators: title of a window whose design has unsaved changes */
  title = modified ? g_strdup_printf (_("• %s"), name) : g_strdup (name);
  gtk_label_set_text (self->title_label, title);
  gtk_label_set_text (self->subtitle_label, shown != NULL ? shown : _("Not saved in a file yet"));
  gtk_widget_set_tooltip_text (GTK_WIDGET (self->subtitle_label), shown);
  gtk_window_set_title (GTK_WINDOW (self), title);
}

static void
show_history (HutMainWindow *self)
{
  const char *undo = hut_session_get_undo_label (self->session);
  const char *redo = hut_session_get_redo_label (self->session);
  /* Translators: tooltip; %s is what was done last, as "Move" */
  g_autofree char *undo_tip
      = g_strdup_printf (_("Undo: %s (Ctrl+Z)"), undo != NULL ? undo : "–");
  /* Translators: tooltip; %s is what was taken back last, as "Move" */
  g_autofree char *redo_tip
      = g_strdup_printf (_("Redo: %s (Shift+Ctrl+Z)"), redo != NULL ? redo : "–");

  gtk_widget_set_tooltip_text (self->undo_button, undo_tip);
  gtk_widget_set_tooltip_text (self->redo_button, redo_tip);
}

static void
on_session_changed (HutMainWindow *self)
{
  show_title (self);
  show_history (self);
  hut_main_window_update_actions (self);
}

/* ---- parts ----------------------------------------------------------------------------------- */

static void
on_finding_chosen (HutMainWindow *self,
                   int index)
{
  const GPtrArray *findings = hut_session_get_findings (self->session);
  const HutFinding *finding;

  if (index < 0 || (guint)index >= findings->len)
    return;
  finding = g_ptr_array_index (findings, (guint)index);
  if (finding->places == NULL || finding->places->len == 0)
    return;
  hut_main_window_show_view (self, "flat");
  hut_canvas_show_place (self->canvas, &g_array_index (finding->places, HutPlace, 0));
}

static void
on_item_chosen (HutMainWindow *self,
                const char *item)
{
  hut_main_window_show_view (self, "flat");
  hut_canvas_show_item (self->canvas, item);
}

/* Enter or a double click on the canvas: to the numbers. */
static void
on_item_activated (HutMainWindow *self,
                   const char *item)
{
  gtk_widget_child_focus (gtk_paned_get_start_child (self->side_paned), GTK_DIR_TAB_FORWARD);
}

static void
on_step_shown (HutMainWindow *self)
{
  const char *step = gtk_stack_get_visible_child_name (self->steps);
  GAction *action = g_action_map_lookup_action (G_ACTION_MAP (self), "step");
  const char *view = gtk_stack_get_visible_child_name (self->views);
  const char *own = g_strcmp0 (step, "cut") == 0           ? "sheets"
                    : g_strcmp0 (step, "engineering") == 0 ? "results"
                                                           : NULL;

  if (self->sheets == NULL || step == NULL)
    return;
  /* Sheets are what is looked at while cutting, results while reckoning, and nothing else then. */
  if (own != NULL || g_strcmp0 (view, "sheets") == 0 || g_strcmp0 (view, "results") == 0)
    hut_main_window_show_view (self, own != NULL ? own : "flat");
  if (action != NULL)
    g_simple_action_set_state (G_SIMPLE_ACTION (action), g_variant_new_string (step));
}

void
hut_main_window_show_step (HutMainWindow *self,
                           const char *step)
{
  if (gtk_stack_get_child_by_name (self->steps, step) != NULL)
    gtk_stack_set_visible_child_name (self->steps, step);
}

static void
on_view_shown (HutMainWindow *self)
{
  const char *view = gtk_stack_get_visible_child_name (self->views);
  GAction *action = g_action_map_lookup_action (G_ACTION_MAP (self), "view");

  if (action != NULL && view != NULL)
    g_simple_action_set_state (G_SIMPLE_ACTION (action), g_variant_new_string (view));
}

void
hut_main_window_show_view (HutMainWindow *self,
                           const char *view)
{
  if (gtk_stack_get_child_by_name (self->views, view) != NULL)
    gtk_stack_set_visible_child_name (self->views, view);
}

static void
add_steps (HutMainWindow *self)
{
  GtkWidget *openings = hut_openings_page_new (self->session);

  self->measure_page = HUT_MEASURE_PAGE (hut_measure_page_new (self->session));
  self->cut_page = HUT_CUT_PAGE (hut_cut_page_new (self->session, self->sheets));
  /* Translators: step of the job: take the measures of machine, room, cutter and sheet */
  gtk_stack_add_titled (self->steps, GTK_WIDGET (self->measure_page), "measure", _("Measure"));
  /* Translators: step of the job: decide on shell, lid and joints */
  gtk_stack_add_titled (self->steps, hut_shape_page_new (self->session), "shape", _("Shape"));
  /* Translators: step of the job: put openings into the panels */
  gtk_stack_add_titled (self->steps, openings, "openings", _("Openings"));
  /* Translators: step of the job: air, heat, light, lid, noise, finish */
  gtk_stack_add_titled (self->steps, hut_engineering_page_new (self->session), "engineering",
                        _("Engineering"));
  /* Translators: step of the job: lay out sheets and write the cut files */
  gtk_stack_add_titled (self->steps, GTK_WIDGET (self->cut_page), "cut", _("Cut"));
  g_object_bind_property (self->canvas, "scale",
                          hut_openings_page_get_shelf (HUT_OPENINGS_PAGE (openings)), "drag-scale",
                          G_BINDING_SYNC_CREATE);
  g_signal_connect_object (openings, "chosen", G_CALLBACK (on_item_chosen), self,
                           G_CONNECT_SWAPPED);
}

static void
add_middle (HutMainWindow *self)
{
  HutSettings *settings = hut_settings_get_default ();

  self->canvas = HUT_CANVAS (hut_canvas_new (self->session));
  self->sheets = HUT_SHEETS_VIEW (hut_sheets_view_new (self->session));
  self->built = HUT_BUILT_PAGE (hut_built_page_new (self->session));
  /* Translators: view of all panels, unfolded */
  gtk_stack_add_titled (self->views, GTK_WIDGET (self->canvas), "flat", _("Flat"));
  /* Translators: view of the enclosure in space, put together */
  gtk_stack_add_titled (self->views, GTK_WIDGET (self->built), "built", _("Built"));
  /* Translators: view of the parts on the sheets that are cut */
  gtk_stack_add_titled (self->views, GTK_WIDGET (self->sheets), "sheets", _("Sheets"));
  /* Translators: view of what the engineering comes to */
  gtk_stack_add_titled (self->views, hut_results_view_new (self->session), "results",
                        _("Results"));
  g_signal_connect_object (self->canvas, "activate-item", G_CALLBACK (on_item_activated), self,
                           G_CONNECT_SWAPPED);
  g_object_bind_property (settings, "units", self->canvas, "units", G_BINDING_SYNC_CREATE);
  g_object_bind_property (settings, "grid", self->canvas, "show-grid", G_BINDING_SYNC_CREATE);
  g_object_bind_property (settings, "snap", self->canvas, "snap", G_BINDING_SYNC_CREATE);
}

static void
add_side (HutMainWindow *self)
{
  self->findings = HUT_FINDINGS_LIST (hut_findings_list_new (self->session));
  gtk_paned_set_start_child (self->side_paned, hut_inspector_new (self->session));
  gtk_paned_set_end_child (self->side_paned, GTK_WIDGET (self->findings));
  g_signal_connect_object (self->findings, "chosen", G_CALLBACK (on_finding_chosen), self,
                           G_CONNECT_SWAPPED);
}

/* Once, when it is known how high the window came out. */
static gboolean
share_height (GtkWidget *widget,
              GdkFrameClock *clock,
              gpointer user_data)
{
  HutMainWindow *self = HUT_MAIN_WINDOW (widget);
  const int height_px = gtk_widget_get_height (GTK_WIDGET (self->left_paned));

  if (height_px <= 0)
    return G_SOURCE_CONTINUE;
  gtk_paned_set_position (self->side_paned, (int) (INSPECTOR_RATIO * height_px));
  return G_SOURCE_REMOVE;
}

/* ---- the window ------------------------------------------------------------------------------ */

static void
close_now (HutMainWindow *self,
           gpointer user_data)
{
  self->closing = TRUE;
  hut_autosave_discard (self->autosave);
  gtk_window_close (GTK_WINDOW (self));
}

static void
remember_size (HutMainWindow *self)
{
  HutSettings *settings = hut_settings_get_default ();
  int width_px, height_px;

  gtk_window_get_default_size (GTK_WINDOW (self), &width_px, &height_px);
  g_object_set (settings, "window-width", MAX (width_px, 1), "window-height", MAX (height_px, 1),
                "window-maximized", gtk_window_is_maximized (GTK_WINDOW (self)), NULL);
}

static gboolean
hut_main_window_close_request (GtkWindow *window)
{
  HutMainWindow *self = HUT_MAIN_WINDOW (window);

  hut_main_window_commit_typing (self);
  if (!self->closing && hut_session_is_modified (self->session))
    {
      hut_main_window_ask_unsaved (self, close_now, NULL, NULL);
      return TRUE;
    }
  hut_autosave_discard (self->autosave);
  remember_size (self);
  return GTK_WINDOW_CLASS (hut_main_window_parent_class)->close_request (window);
}

/* Another program is on top now: who knows what it does to the machine. */
static void
on_active_changed (HutMainWindow *self)
{
  if (!gtk_window_is_active (GTK_WINDOW (self)))
    hut_autosave_write (self->autosave);
}

static void
hut_main_window_dispose (GObject *object)
{
  HutMainWindow *self = HUT_MAIN_WINDOW (object);

  g_clear_object (&self->chooser);
  g_clear_object (&self->autosave);
  g_clear_object (&self->recent_menu);
  g_clear_pointer (&self->recovery, hut_recovery_free);
  G_OBJECT_CLASS (hut_main_window_parent_class)->dispose (object);
}

static void
hut_main_window_finalize (GObject *object)
{
  g_clear_object (&HUT_MAIN_WINDOW (object)->session);
  G_OBJECT_CLASS (hut_main_window_parent_class)->finalize (object);
}

static void
hut_main_window_class_init (HutMainWindowClass *class)
{
  GObjectClass *object_class = G_OBJECT_CLASS (class);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  object_class->dispose = hut_main_window_dispose;
  object_class->finalize = hut_main_window_finalize;
  GTK_WINDOW_CLASS (class)->close_request = hut_main_window_close_request;
  g_type_ensure (HUT_TYPE_NOTICE);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-main-window.ui");
  gtk_widget_class_bind_template_child (widget_class, HutMainWindow, title_label);
  gtk_widget_class_bind_template_child (widget_class, HutMainWindow, subtitle_label);
  gtk_widget_class_bind_template_child (widget_class, HutMainWindow, undo_button);
  gtk_widget_class_bind_template_child (widget_class, HutMainWindow, redo_button);
  gtk_widget_class_bind_template_child (widget_class, HutMainWindow, recent_button);
  gtk_widget_class_bind_template_child (widget_class, HutMainWindow, notice);
  gtk_widget_class_bind_template_child (widget_class, HutMainWindow, left_paned);
  gtk_widget_class_bind_template_child (widget_class, HutMainWindow, right_paned);
  gtk_widget_class_bind_template_child (widget_class, HutMainWindow, views);
  gtk_widget_class_bind_template_child (widget_class, HutMainWindow, side_paned);
  gtk_widget_class_bind_template_child (widget_class, HutMainWindow, steps);
  gtk_widget_class_bind_template_callback (widget_class, on_step_shown);
  gtk_widget_class_bind_template_callback (widget_class, on_view_shown);
}

static void
hut_main_window_init (HutMainWindow *self)
{
  HutSettings *settings = hut_settings_get_default ();
  int width_px, height_px;
  gboolean maximized;

  gtk_widget_init_template (GTK_WIDGET (self));
  self->session = hut_session_new (hut_design_new ());
  self->autosave = hut_autosave_new (self->session);
  add_middle (self);
  add_steps (self);
  add_side (self);
  hut_main_window_install_actions (self);
  hut_main_window_install_file_actions (self);
  hut_main_window_install_coupon_actions (self);
  hut_main_window_init_recovery (self);
  hut_main_window_fill_recent (self);
  g_object_get (settings, "window-width", &width_px, "window-height", &height_px,
                "window-maximized", &maximized, NULL);
  gtk_window_set_default_size (GTK_WINDOW (self), width_px, height_px);
  if (maximized)
    gtk_window_maximize (GTK_WINDOW (self));
  gtk_widget_add_tick_callback (GTK_WIDGET (self), share_height, NULL, NULL);
  g_signal_connect_object (self->session, "derived", G_CALLBACK (on_session_changed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->session, "file-changed", G_CALLBACK (on_session_changed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->session, "selection-changed",
                           G_CALLBACK (hut_main_window_update_actions), self, G_CONNECT_SWAPPED);
  g_signal_connect (self, "notify::is-active", G_CALLBACK (on_active_changed), NULL);
  on_session_changed (self);
  on_step_shown (self);
}

GtkWidget *
hut_main_window_new (GtkApplication *application)
{
  return g_object_new (HUT_TYPE_MAIN_WINDOW, "application", application, NULL);
}

HutSession *
hut_main_window_get_session (HutMainWindow *self)
{
  g_return_val_if_fail (HUT_IS_MAIN_WINDOW (self), NULL);
  return self->session;
}

gboolean
hut_main_window_is_untouched (HutMainWindow *self)
{
  g_return_val_if_fail (HUT_IS_MAIN_WINDOW (self), FALSE);
  return hut_session_get_path (self->session) == NULL && !hut_session_is_modified (self->session)
         && !hut_session_can_undo (self->session) && !hut_session_can_redo (self->session);
}

void
hut_main_window_autosave (HutMainWindow *self)
{
  g_return_if_fail (HUT_IS_MAIN_WINDOW (self));
  hut_autosave_write (self->autosave);
}
