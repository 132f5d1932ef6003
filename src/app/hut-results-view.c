/* src/app/hut-results-view.c: all results of the engineering, by subject, with their plots.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-results-view.h"
#include "app/hut-figure-row.h"
#include "app/hut-item-rows.h"
#include "app/hut-plot-area.h"
#include "app/hut-refresh.h"
#include "app/hut-settings.h"
#include "draw/hut-engineering-plot.h"
#include <glib/gi18n.h>
#include <locale.h>

/* Least width of a column, px: own choice, words and number beside each other. */
#define COLUMN_PX 360

struct _HutResultsView
{
  GtkWidget parent_instance;

  GtkWidget *scroller;
  GtkWidget *sections[HUT_SUBJECT_COUNT];
  GtkBox *rows[HUT_SUBJECT_COUNT];
  HutPlotArea *air_plot, *lid_plot;
  GtkWidget *empty;

  HutSession *session;
};

G_DEFINE_TYPE (HutResultsView, hut_results_view, GTK_TYPE_WIDGET)

/* Which column a subject stands in: about as much in each. */
static const guint column_of[HUT_SUBJECT_COUNT] = {
  [HUT_SUBJECT_AIR] = 0,
  [HUT_SUBJECT_HEAT] = 0,
  [HUT_SUBJECT_LIGHT] = 0,
  [HUT_SUBJECT_LID] = 1,
  [HUT_SUBJECT_STIFFNESS] = 1,
  [HUT_SUBJECT_NOISE] = 0,
  [HUT_SUBJECT_FINISH] = 1,
};

static const char *
translate (const char *msgid)
{
  return gettext (msgid);
}

static GtkWidget *
new_row (const char *item,
         gpointer user_data)
{
  return hut_figure_row_new ();
}

static void
show_subject (HutResultsView *self,
              const HutEngineering *all,
              HutSubject subject)
{
  g_autoptr (GPtrArray) ids = g_ptr_array_new ();

  for (guint i = 0; i < all->figures->len; i++)
    {
      const HutFigure *figure = &g_array_index (all->figures, HutFigure, i);

      /* Of several with one id (panes) the first is shown: the others are alike. */
      if (figure->subject == subject
          && !g_ptr_array_find_with_equal_func (ids, figure->id, g_str_equal, NULL))
        g_ptr_array_add (ids, (gpointer)figure->id);
    }
  hut_item_rows_sync (self->rows[subject], ids, new_row, self);
  for (guint i = 0; i < ids->len; i++)
    {
      const char *id = g_ptr_array_index (ids, i);

      hut_figure_row_show (HUT_FIGURE_ROW (hut_item_rows_find (self->rows[subject], id)),
                           hut_engineering_get (all, id));
    }
  gtk_widget_set_visible (self->sections[subject], ids->len > 0);
}

static void
refresh (GtkWidget *widget)
{
  HutResultsView *self = HUT_RESULTS_VIEW (widget);
  g_autoptr (HutEngineering) all = hut_engineering_new (
      hut_session_get_assembly (self->session), hut_session_get_parts (self->session));
  const char *mark = localeconv ()->decimal_point;

  for (HutSubject subject = 0; subject < HUT_SUBJECT_COUNT; subject++)
    show_subject (self, all, subject);
  hut_plot_area_take (self->air_plot, hut_engineering_plot_air (all, translate, mark));
  hut_plot_area_take (self->lid_plot, hut_engineering_plot_lid (all, translate, mark));
  gtk_widget_set_visible (self->empty, all->figures->len == 0);
}

static void
on_derived (HutResultsView *self)
{
  hut_refresh_queue (GTK_WIDGET (self), refresh);
}

/* ---- the widget ------------------------------------------------------------------------------ */

static GtkWidget *
new_label (const char *text,
           const char *class)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_add_css_class (label, class);
  return label;
}

static GtkWidget *
new_section (HutResultsView *self,
             HutSubject subject,
             GtkWidget *plot)
{
  GtkWidget *section = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GtkWidget *card = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  GtkWidget *rows = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);

  gtk_box_append (GTK_BOX (section), new_label (_(hut_subject_text (subject)), "heading"));
  gtk_widget_add_css_class (card, "hut-card");
  if (plot != NULL)
    gtk_box_append (GTK_BOX (card), plot);
  gtk_box_append (GTK_BOX (card), rows);
  gtk_box_append (GTK_BOX (section), card);
  self->sections[subject] = section;
  self->rows[subject] = GTK_BOX (rows);
  return section;
}

static void
fill (HutResultsView *self,
      GtkWidget *columns)
{
  GtkWidget *boxes[2];

  for (guint i = 0; i < G_N_ELEMENTS (boxes); i++)
    {
      boxes[i] = gtk_box_new (GTK_ORIENTATION_VERTICAL, 16);
      gtk_widget_set_size_request (boxes[i], COLUMN_PX, -1);
      gtk_widget_set_valign (boxes[i], GTK_ALIGN_START);
      gtk_flow_box_insert (GTK_FLOW_BOX (columns), boxes[i], -1);
      gtk_widget_set_focusable (gtk_widget_get_parent (boxes[i]), FALSE);
    }
  for (HutSubject subject = 0; subject < HUT_SUBJECT_COUNT; subject++)
    {
      GtkWidget *plot = subject == HUT_SUBJECT_AIR   ? GTK_WIDGET (self->air_plot)
                        : subject == HUT_SUBJECT_LID ? GTK_WIDGET (self->lid_plot)
                                                     : NULL;

      gtk_box_append (GTK_BOX (boxes[column_of[subject]]), new_section (self, subject, plot));
    }
}

static void
hut_results_view_dispose (GObject *object)
{
  HutResultsView *self = HUT_RESULTS_VIEW (object);

  g_clear_pointer (&self->scroller, gtk_widget_unparent);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_results_view_parent_class)->dispose (object);
}

static void
hut_results_view_class_init (HutResultsViewClass *class)
{
  G_OBJECT_CLASS (class)->dispose = hut_results_view_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class), GTK_TYPE_BIN_LAYOUT);
}

static void
hut_results_view_init (HutResultsView *self)
{
  GtkWidget *page = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  GtkWidget *columns = gtk_flow_box_new ();

  self->scroller = gtk_scrolled_window_new ();
  self->air_plot = HUT_PLOT_AREA (hut_plot_area_new ());
  self->lid_plot = HUT_PLOT_AREA (hut_plot_area_new ());
  self->empty = new_label (_("There is nothing to work out yet: see the findings."), "hut-why");
  gtk_widget_add_css_class (page, "hut-page");
  gtk_flow_box_set_selection_mode (GTK_FLOW_BOX (columns), GTK_SELECTION_NONE);
  gtk_flow_box_set_min_children_per_line (GTK_FLOW_BOX (columns), 1);
  gtk_flow_box_set_max_children_per_line (GTK_FLOW_BOX (columns), 2);
  gtk_flow_box_set_homogeneous (GTK_FLOW_BOX (columns), FALSE);
  gtk_flow_box_set_column_spacing (GTK_FLOW_BOX (columns), 16);
  gtk_flow_box_set_row_spacing (GTK_FLOW_BOX (columns), 16);
  fill (self, columns);
  gtk_box_append (GTK_BOX (page), self->empty);
  gtk_box_append (GTK_BOX (page), columns);
  gtk_box_append (GTK_BOX (page),
                  new_label (_("Estimates to plan with: they replace no measurement by a competent "
                               "person, no standard and no local rule, and none of them says that "
                               "something is without danger."),
                             "hut-caution"));
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (self->scroller), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (self->scroller), page);
  gtk_widget_set_vexpand (self->scroller, TRUE);
  gtk_widget_set_parent (self->scroller, GTK_WIDGET (self));
}

GtkWidget *
hut_results_view_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutResultsView *self = g_object_new (HUT_TYPE_RESULTS_VIEW, NULL);

  self->session = g_object_ref (session);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (hut_settings_get_default (), "notify::units", G_CALLBACK (on_derived),
                           self, G_CONNECT_SWAPPED);
  on_derived (self);
  return GTK_WIDGET (self);
}
