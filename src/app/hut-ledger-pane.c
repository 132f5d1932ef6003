/* src/app/hut-ledger-pane.c: the services ledger: what must cross the wall, one line each.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-ledger-pane.h"
#include "app/hut-item-rows.h"
#include "app/hut-way-row.h"
#include "checks/hut-ledger.h"
#include <glib/gi18n.h>

struct _HutLedgerPane
{
  GtkWidget parent_instance;

  GtkExpander *expander;
  GtkLabel *title;
  GtkBox *rows;

  HutSession *session;
};

G_DEFINE_TYPE (HutLedgerPane, hut_ledger_pane, GTK_TYPE_WIDGET)

static GtkWidget *
new_row (const char *item,
         gpointer user_data)
{
  return hut_way_row_new (user_data, item);
}

static void
on_derived (HutLedgerPane *self)
{
  g_autoptr(GPtrArray) ledger = hut_ledger_new (hut_session_get_design (self->session));
  g_autoptr(GPtrArray) ids = g_ptr_array_new ();
  g_autofree char *title = NULL;
  guint done_count = 0;

  for (guint i = 0; i < ledger->len; i++)
    {
      const HutLedgerRow *row = g_ptr_array_index (ledger, i);

      g_ptr_array_add (ids, row->service->id);
      done_count += row->passing_count > 0 ? 1 : 0;
    }
  hut_item_rows_sync (self->rows, ids, new_row, self->session);
  /* Translators: heading of the services ledger: how many of how many have a way out */
  title = g_strdup_printf (_("Services: %u of %u Done"), done_count, ledger->len);
  gtk_label_set_text (self->title, title);
  gtk_widget_set_visible (GTK_WIDGET (self), ledger->len > 0);
  /* Nothing done yet: a design was opened. A ledger that is complete then leaves the room to the
   * shelf. */
  if (hut_session_get_undo_label (self->session) == NULL
      && hut_session_get_redo_label (self->session) == NULL)
    gtk_expander_set_expanded (self->expander, done_count < ledger->len);
}

static void
hut_ledger_pane_dispose (GObject *object)
{
  HutLedgerPane *self = HUT_LEDGER_PANE (object);
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_ledger_pane_parent_class)->dispose (object);
}

static void
hut_ledger_pane_class_init (HutLedgerPaneClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_ledger_pane_dispose;
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-ledger-pane.ui");
  gtk_widget_class_bind_template_child (widget_class, HutLedgerPane, expander);
  gtk_widget_class_bind_template_child (widget_class, HutLedgerPane, title);
  gtk_widget_class_bind_template_child (widget_class, HutLedgerPane, rows);
}

static void
hut_ledger_pane_init (HutLedgerPane *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
hut_ledger_pane_bind (HutLedgerPane *self,
                      HutSession *session)
{
  g_return_if_fail (HUT_IS_LEDGER_PANE (self) && HUT_IS_SESSION (session));
  g_return_if_fail (self->session == NULL);

  self->session = g_object_ref (session);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  on_derived (self);
}
