/* src/app/hut-figure-row.c: one result: words, number, and on demand how it is worked out.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-figure-row.h"
#include "app/hut-settings.h"
#include <glib/gi18n.h>
#include <locale.h>

#define MM_PER_INCH 25.4

struct _HutFigureRow
{
  GtkWidget parent_instance;

  GtkImage *sign;
  GtkLabel *words, *number, *formula, *inputs, *source;
  GtkWidget *enter, *explained;
};

G_DEFINE_TYPE (HutFigureRow, hut_figure_row, GTK_TYPE_WIDGET)

static const char *
translate (const char *msgid)
{
  return gettext (msgid);
}

static char *
dup_number (double value,
            HutFigureUnit unit)
{
  const char *mark = localeconv ()->decimal_point;
  g_autofree char *number = NULL;

  if (unit != HUT_FIGURE_MM
      || hut_settings_get_units (hut_settings_get_default ()) != HUT_UNITS_INCH)
    return hut_figure_dup_number (value, unit, translate, mark);
  number = hut_figure_dup_number (value / MM_PER_INCH, HUT_FIGURE_RATIO, translate, mark);
  return g_strconcat (number, "\302\240", hut_quantity_unit (HUT_QUANTITY_LENGTH, HUT_UNITS_INCH),
                      NULL);
}

static char *
dup_inputs (const HutFigure *figure)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < figure->n_inputs; i++)
    {
      const HutFigureInput *input = &figure->inputs[i];
      g_autofree char *number = dup_number (input->value, input->unit);

      g_string_append_printf (text, "%s%s%s%s: %s", text->len > 0 ? "\n" : "", input->symbol,
                              *input->symbol != '\0' ? ", " : "", _(input->name), number);
      if (input->assumed)
        /* Translators: after a number that nobody entered */
        g_string_append_printf (text, " %s", _("(assumed)"));
    }
  if (isfinite (figure->limit))
    {
      g_autofree char *limit = dup_number (figure->limit, figure->unit);

      /* Translators: the number that a result is held against */
      g_string_append_printf (text, "%s%s: %s", text->len > 0 ? "\n" : "", _("held against"),
                              limit);
    }
  return g_string_free (text, FALSE);
}

static void
show_text (GtkLabel *label,
           const char *text)
{
  gtk_label_set_text (label, text != NULL ? text : "");
  gtk_widget_set_visible (GTK_WIDGET (label), text != NULL && *text != '\0');
}

static void
show_sign (HutFigureRow *self,
           const HutFigure *figure)
{
  const gboolean shown = !figure->known || figure->concern;
  const char *meaning = !figure->known ? _("Not known yet")
                        : figure->concern ? _("Wants a look")
                                          : _("Known");

  gtk_image_set_from_icon_name (self->sign, !figure->known    ? "dialog-question-symbolic"
                                            : figure->concern ? "dialog-warning-symbolic"
                                                              : "object-select-symbolic");
  gtk_widget_set_opacity (GTK_WIDGET (self->sign), shown ? 1.0 : 0.0);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self->sign), shown ? meaning : NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->sign), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  meaning, -1);
}

void
hut_figure_row_show (HutFigureRow *self,
                     const HutFigure *figure)
{
  g_autofree char *words = hut_figure_dup_words (figure, translate);
  g_autofree char *number
      = figure->has_value ? dup_number (figure->value, figure->unit) : NULL;
  g_autofree char *inputs = dup_inputs (figure);

  g_return_if_fail (HUT_IS_FIGURE_ROW (self));

  show_sign (self, figure);
  show_text (self->words, words);
  show_text (self->number, number);
  gtk_widget_set_visible (self->enter, figure->step != NULL);
  if (figure->step != NULL)
    {
      /* The target before the action: an action without one would complain. */
      gtk_actionable_set_action_target (GTK_ACTIONABLE (self->enter), "s", figure->step);
      gtk_actionable_set_action_name (GTK_ACTIONABLE (self->enter), "win.step");
    }
  gtk_widget_set_visible (self->explained, figure->source != NULL);
  show_text (self->formula, figure->formula);
  show_text (self->inputs, inputs);
  show_text (self->source, figure->source != NULL ? _(figure->source) : NULL);
}

static void
hut_figure_row_dispose (GObject *object)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_figure_row_parent_class)->dispose (object);
}

static void
hut_figure_row_class_init (HutFigureRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_figure_row_dispose;
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-figure-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutFigureRow, sign);
  gtk_widget_class_bind_template_child (widget_class, HutFigureRow, words);
  gtk_widget_class_bind_template_child (widget_class, HutFigureRow, number);
  gtk_widget_class_bind_template_child (widget_class, HutFigureRow, enter);
  gtk_widget_class_bind_template_child (widget_class, HutFigureRow, explained);
  gtk_widget_class_bind_template_child (widget_class, HutFigureRow, formula);
  gtk_widget_class_bind_template_child (widget_class, HutFigureRow, inputs);
  gtk_widget_class_bind_template_child (widget_class, HutFigureRow, source);
}

static void
hut_figure_row_init (HutFigureRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_figure_row_new (void)
{
  return g_object_new (HUT_TYPE_FIGURE_ROW, NULL);
}
