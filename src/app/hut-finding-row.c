/* src/app/hut-finding-row.c: one finding: severity as shape and word, number as on the canvas,
 * sentence. SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-finding-row.h"

struct _HutFindingRow
{
  HutListRow parent_instance;

  GtkImage *icon;
  GtkLabel *number, *severity, *sentence;
  GtkButton *fix;

  const char *style; /* CSS class that is set; static */
};

G_DEFINE_TYPE (HutFindingRow, hut_finding_row, HUT_TYPE_LIST_ROW)

static void
hut_finding_row_show (HutListRow *row,
                      const HutListContent *content)
{
  HutFindingRow *self = HUT_FINDING_ROW (row);
  g_autofree char *number = g_strdup_printf ("%u", content->number);

  gtk_image_set_from_icon_name (self->icon, content->icon_name);
  gtk_label_set_text (self->number, number);
  gtk_label_set_text (self->severity, content->heading);
  gtk_label_set_text (self->sentence, content->text);
  gtk_widget_set_visible (GTK_WIDGET (self->fix), content->fix != NULL);
  if (content->fix != NULL)
    {
      gtk_button_set_label (self->fix, content->fix);
      gtk_actionable_set_action_target (GTK_ACTIONABLE (self->fix), "u", content->number - 1);
    }
  if (g_strcmp0 (self->style, content->style) == 0)
    return;
  if (self->style != NULL)
    gtk_widget_remove_css_class (GTK_WIDGET (self), self->style);
  self->style = content->style;
  if (self->style != NULL)
    gtk_widget_add_css_class (GTK_WIDGET (self), self->style);
}

static void
hut_finding_row_class_init (HutFindingRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  HUT_LIST_ROW_CLASS (class)->show = hut_finding_row_show;
  gtk_widget_class_set_css_name (widget_class, "finding");
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-finding-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutFindingRow, icon);
  gtk_widget_class_bind_template_child (widget_class, HutFindingRow, number);
  gtk_widget_class_bind_template_child (widget_class, HutFindingRow, severity);
  gtk_widget_class_bind_template_child (widget_class, HutFindingRow, sentence);
  gtk_widget_class_bind_template_child (widget_class, HutFindingRow, fix);
}

static void
hut_finding_row_init (HutFindingRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}
