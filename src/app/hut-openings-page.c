/* src/app/hut-openings-page.c: the step Openings: the shelf, and what the design has.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-openings-page.h"
#include "app/hut-item-list.h"
#include "app/hut-ledger-pane.h"
#include "app/hut-shelf.h"

struct _HutOpeningsPage
{
  GtkWidget parent_instance;

  GtkWidget *content;
  GtkPaned *paned;
  HutItemList *items;
  HutLedgerPane *ledger;
};

static guint chosen_signal;

G_DEFINE_TYPE (HutOpeningsPage, hut_openings_page, GTK_TYPE_WIDGET)

static void
on_chosen (HutOpeningsPage *self,
           const char *item)
{
  g_signal_emit (self, chosen_signal, 0, item);
}

static void
hut_openings_page_dispose (GObject *object)
{
  HutOpeningsPage *self = HUT_OPENINGS_PAGE (object);

  g_clear_pointer (&self->content, gtk_widget_unparent);
  G_OBJECT_CLASS (hut_openings_page_parent_class)->dispose (object);
}

static void
hut_openings_page_class_init (HutOpeningsPageClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_openings_page_dispose;
  g_type_ensure (HUT_TYPE_ITEM_LIST);
  g_type_ensure (HUT_TYPE_LEDGER_PANE);
  chosen_signal = g_signal_new ("chosen", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL,
                                NULL, NULL, G_TYPE_NONE, 1, G_TYPE_STRING);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-openings-page.ui");
  gtk_widget_class_bind_template_child (widget_class, HutOpeningsPage, content);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningsPage, paned);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningsPage, items);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningsPage, ledger);
}

static void
hut_openings_page_init (HutOpeningsPage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_openings_page_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutOpeningsPage *self = g_object_new (HUT_TYPE_OPENINGS_PAGE, NULL);

  gtk_paned_set_start_child (self->paned, hut_shelf_new (session));
  hut_item_list_bind (self->items, session);
  hut_ledger_pane_bind (self->ledger, session);
  g_signal_connect_object (self->items, "chosen", G_CALLBACK (on_chosen), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

GtkWidget *
hut_openings_page_get_shelf (HutOpeningsPage *self)
{
  g_return_val_if_fail (HUT_IS_OPENINGS_PAGE (self), NULL);
  return gtk_paned_get_start_child (self->paned);
}
