/* src/app/hut-draft-row.c: one entry of a list of an item that is being measured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-draft-row.h"

typedef struct
{
  GtkWidget *problem; /* NULL before the first */
  gboolean filling;
} HutDraftRowPrivate;

static guint changed_signal, removed_signal;

G_DEFINE_ABSTRACT_TYPE_WITH_PRIVATE (HutDraftRow, hut_draft_row, GTK_TYPE_WIDGET)

static void
hut_draft_row_dispose (GObject *object)
{
  HutDraftRowPrivate *priv = hut_draft_row_get_instance_private (HUT_DRAFT_ROW (object));
  GtkWidget *child;

  priv->problem = NULL;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_draft_row_parent_class)->dispose (object);
}

static void
hut_draft_row_class_init (HutDraftRowClass *class)
{
  G_OBJECT_CLASS (class)->dispose = hut_draft_row_dispose;
  changed_signal = g_signal_new ("changed", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL,
                                 NULL, NULL, G_TYPE_NONE, 0);
  removed_signal = g_signal_new ("removed", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL,
                                 NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (class), "item");
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (class), GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
hut_draft_row_init (HutDraftRow *self)
{
}

void
hut_draft_row_show (HutDraftRow *self,
                    const HutItem *item,
                    guint index)
{
  g_return_if_fail (HUT_IS_DRAFT_ROW (self) && item != NULL);

  HutDraftRowPrivate *priv = hut_draft_row_get_instance_private (self);

  priv->filling = TRUE;
  HUT_DRAFT_ROW_GET_CLASS (self)->show (self, item, index);
  priv->filling = FALSE;
}

void
hut_draft_row_write (HutDraftRow *self,
                     HutItem *item,
                     guint index)
{
  g_return_if_fail (HUT_IS_DRAFT_ROW (self) && item != NULL);

  HUT_DRAFT_ROW_GET_CLASS (self)->write (self, item, index);
}

gboolean
hut_draft_row_commit (HutDraftRow *self)
{
  g_return_val_if_fail (HUT_IS_DRAFT_ROW (self), FALSE);

  return HUT_DRAFT_ROW_GET_CLASS (self)->commit (self);
}

void
hut_draft_row_set_problem (HutDraftRow *self,
                           const char *problem)
{
  g_return_if_fail (HUT_IS_DRAFT_ROW (self));

  HutDraftRowPrivate *priv = hut_draft_row_get_instance_private (self);

  if (priv->problem == NULL)
    {
      if (problem == NULL)
        return;
      priv->problem = gtk_label_new (NULL);
      gtk_label_set_wrap (GTK_LABEL (priv->problem), TRUE);
      gtk_label_set_xalign (GTK_LABEL (priv->problem), 0.0F);
      gtk_widget_add_css_class (priv->problem, "hut-problem");
      gtk_widget_set_parent (priv->problem, GTK_WIDGET (self));
    }
  gtk_label_set_text (GTK_LABEL (priv->problem), problem != NULL ? problem : "");
  gtk_widget_set_visible (priv->problem, problem != NULL);
}

gboolean
hut_draft_row_is_filling (HutDraftRow *self)
{
  g_return_val_if_fail (HUT_IS_DRAFT_ROW (self), FALSE);

  const HutDraftRowPrivate *priv = hut_draft_row_get_instance_private (self);

  return priv->filling;
}

void
hut_draft_row_changed (HutDraftRow *self)
{
  g_return_if_fail (HUT_IS_DRAFT_ROW (self));

  if (!hut_draft_row_is_filling (self))
    g_signal_emit (self, changed_signal, 0);
}

static void
on_remove (HutDraftRow *self)
{
  g_signal_emit (self, removed_signal, 0);
}

void
hut_draft_row_set_remover (HutDraftRow *self,
                           GtkWidget *button)
{
  g_return_if_fail (HUT_IS_DRAFT_ROW (self) && GTK_IS_BUTTON (button));

  g_signal_connect_object (button, "clicked", G_CALLBACK (on_remove), self, G_CONNECT_SWAPPED);
}

void
hut_draft_row_name_control (HutDraftRow *self,
                            GtkWidget *control,
                            const char *format,
                            guint number)
{
  g_return_if_fail (HUT_IS_DRAFT_ROW (self) && GTK_IS_WIDGET (control) && format != NULL);

  g_autofree char *name = g_strdup_printf (format, number);

  gtk_accessible_update_property (GTK_ACCESSIBLE (control), GTK_ACCESSIBLE_PROPERTY_LABEL, name,
                                  -1);
}

void
hut_draft_row_name_remover (HutDraftRow *self,
                            GtkWidget *button,
                            const char *name)
{
  g_return_if_fail (HUT_IS_DRAFT_ROW (self) && GTK_IS_BUTTON (button) && name != NULL);

  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  gtk_widget_set_tooltip_text (button, name);
}
