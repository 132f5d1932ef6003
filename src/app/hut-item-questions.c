/* src/app/hut-item-questions.c: what is asked before an item of hardware, or work on it, is lost.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-item-questions.h"
#include <glib/gi18n.h>

typedef struct
{
  HutStockroom *stockroom;
  char *id;
} Removal;

static void
removal_free (gpointer data,
              GClosure *closure)
{
  Removal *removal = data;

  g_object_unref (removal->stockroom);
  g_free (removal->id);
  g_free (removal);
}

static void
tell (GtkWindow *parent,
      const char *what,
      const char *why)
{
  GtkWidget *dialog
      = gtk_message_dialog_new (parent, GTK_DIALOG_MODAL | GTK_DIALOG_DESTROY_WITH_PARENT,
                                GTK_MESSAGE_ERROR, GTK_BUTTONS_CLOSE, "%s", what);

  gtk_message_dialog_format_secondary_text (GTK_MESSAGE_DIALOG (dialog), "%s", why);
  g_signal_connect (dialog, "response", G_CALLBACK (gtk_window_destroy), NULL);
  gtk_window_present (GTK_WINDOW (dialog));
}

/* The parent may go while the answer is being handled, so that the dialog lets go of it first. */
static void
close_dialog (GtkDialog *dialog)
{
  gtk_window_set_transient_for (GTK_WINDOW (dialog), NULL);
  gtk_window_destroy (GTK_WINDOW (dialog));
}

/* A question with Cancel and one button that loses something. */
static GtkWidget *
ask (GtkWindow *parent,
     const char *question,
     const char *detail,
     const char *button)
{
  GtkWidget *dialog
      = gtk_message_dialog_new (parent, GTK_DIALOG_MODAL | GTK_DIALOG_DESTROY_WITH_PARENT,
                                GTK_MESSAGE_QUESTION, GTK_BUTTONS_NONE, "%s", question);
  GtkWidget *accept;

  gtk_message_dialog_format_secondary_text (GTK_MESSAGE_DIALOG (dialog), "%s", detail);
  gtk_dialog_add_button (GTK_DIALOG (dialog), _ ("_Cancel"), GTK_RESPONSE_CANCEL);
  accept = gtk_dialog_add_button (GTK_DIALOG (dialog), button, GTK_RESPONSE_ACCEPT);
  gtk_widget_add_css_class (accept, "destructive-action");
  gtk_dialog_set_default_response (GTK_DIALOG (dialog), GTK_RESPONSE_CANCEL);
  gtk_window_present (GTK_WINDOW (dialog));
  return dialog;
}

static void
on_remove_answered (GtkDialog *dialog,
                    int response,
                    Removal *removal)
{
  GtkWindow *parent = gtk_window_get_transient_for (GTK_WINDOW (dialog));
  g_autoptr (HutStockroom) stockroom = g_object_ref (removal->stockroom);
  g_autofree char *id = g_strdup (removal->id);
  g_autoptr (GError) error = NULL;

  close_dialog (dialog);
  if (response == GTK_RESPONSE_ACCEPT && !hut_stockroom_remove (stockroom, id, &error))
    tell (parent, _ ("The item could not be removed"), error->message);
}

void
hut_item_ask_remove (GtkWindow *parent,
                     HutStockroom *stockroom,
                     const char *id,
                     const char *name)
{
  g_return_if_fail (HUT_IS_STOCKROOM (stockroom) && id != NULL && name != NULL);

  g_autofree char *question = g_strdup_printf (_ ("Remove “%s” from the catalogue?"), name);
  Removal *removal = g_new0 (Removal, 1);
  GtkWidget *dialog
      = ask (parent, question,
             _ ("Designs that use it keep their copy. If a shipped item has the same place in the "
                "catalogue, that one comes back."),
             _ ("_Remove"));

  *removal = (Removal){ g_object_ref (stockroom), g_strdup (id) };
  g_signal_connect_data (dialog, "response", G_CALLBACK (on_remove_answered), removal,
                         removal_free, 0);
}

static void
on_discard_answered (GtkDialog *dialog,
                     int response)
{
  GtkWindow *editor = gtk_window_get_transient_for (GTK_WINDOW (dialog));

  close_dialog (dialog);
  if (response == GTK_RESPONSE_ACCEPT)
    gtk_window_destroy (editor);
}

void
hut_item_ask_discard (GtkWindow *editor)
{
  g_return_if_fail (GTK_IS_WINDOW (editor));

  GtkWidget *dialog = ask (editor, _ ("Discard what was measured?"),
                           _ ("The item stays in the catalogue as it was."), _ ("_Discard"));

  g_signal_connect (dialog, "response", G_CALLBACK (on_discard_answered), NULL);
}
