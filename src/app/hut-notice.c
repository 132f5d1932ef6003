/* src/app/hut-notice.c: a bar over the window's content that says what went wrong, or asks
 * something. SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-notice.h"

struct _HutNotice
{
  GtkWidget parent_instance;

  GtkInfoBar *bar;
  GtkLabel *text;
  GtkWidget *close; /* of what asks nothing: a question has buttons of its own */

  GtkWidget *buttons[2]; /* of a question, or NULL */
};

static guint answered_signal;

G_DEFINE_TYPE (HutNotice, hut_notice, GTK_TYPE_WIDGET)

static void
remove_buttons (HutNotice *self)
{
  for (guint i = 0; i < G_N_ELEMENTS (self->buttons); i++)
    if (self->buttons[i] != NULL)
      {
        gtk_info_bar_remove_action_widget (self->bar, self->buttons[i]);
        self->buttons[i] = NULL;
      }
}

static void
show (HutNotice *self,
      GtkMessageType type,
      const char *text)
{
  remove_buttons (self);
  gtk_info_bar_set_message_type (self->bar, type);
  gtk_label_set_text (self->text, text);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, text, -1);
  gtk_widget_set_visible (self->close, type != GTK_MESSAGE_QUESTION);
  gtk_info_bar_set_revealed (self->bar, TRUE);
}

static void
on_response (HutNotice *self,
             int response)
{
  hut_notice_hide (self);
  g_signal_emit (self, answered_signal, 0, response);
}

static void
hut_notice_dispose (GObject *object)
{
  HutNotice *self = HUT_NOTICE (object);
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_notice_parent_class)->dispose (object);
}

static void
hut_notice_class_init (HutNoticeClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_notice_dispose;
  answered_signal = g_signal_new ("answered", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL,
                                  NULL, NULL, G_TYPE_NONE, 1, G_TYPE_INT);
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_ALERT);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-notice.ui");
  gtk_widget_class_bind_template_child (widget_class, HutNotice, bar);
  gtk_widget_class_bind_template_child (widget_class, HutNotice, text);
  gtk_widget_class_bind_template_child (widget_class, HutNotice, close);
  gtk_widget_class_bind_template_callback (widget_class, on_response);
}

static void
hut_notice_init (HutNotice *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
hut_notice_show_error (HutNotice *self,
                       const char *text)
{
  g_return_if_fail (HUT_IS_NOTICE (self) && text != NULL);
  show (self, GTK_MESSAGE_ERROR, text);
}

void
hut_notice_ask (HutNotice *self,
                const char *text,
                const char *yes,
                const char *no)
{
  g_return_if_fail (HUT_IS_NOTICE (self) && text != NULL && yes != NULL && no != NULL);

  show (self, GTK_MESSAGE_QUESTION, text);
  self->buttons[0] = gtk_info_bar_add_button (self->bar, yes, GTK_RESPONSE_ACCEPT);
  self->buttons[1] = gtk_info_bar_add_button (self->bar, no, GTK_RESPONSE_REJECT);
}

void
hut_notice_hide (HutNotice *self)
{
  g_return_if_fail (HUT_IS_NOTICE (self));

  remove_buttons (self);
  gtk_info_bar_set_revealed (self->bar, FALSE);
}

const char *
hut_notice_get_text (HutNotice *self)
{
  g_return_val_if_fail (HUT_IS_NOTICE (self), NULL);
  return gtk_info_bar_get_revealed (self->bar) ? gtk_label_get_text (self->text) : NULL;
}
