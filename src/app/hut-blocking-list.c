/* src/app/hut-blocking-list.c: the checks that block the export, each to be allowed by a tick.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A tick is for the check as the user read it: when a check stops blocking, its tick is gone. */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-blocking-list.h"
#include "app/hut-refresh.h"
#include <glib/gi18n.h>
#include <locale.h>

struct _HutBlockingList
{
  GtkWidget parent_instance;

  GtkWidget *content;
  GtkBox *checks; /* GtkCheckButton, one per blocking check id */

  HutSession *session;
};

/* One check that blocks. */
typedef struct
{
  const char *check; /* static */
  const HutFinding *first;
  guint count;
} HutBlocker;

G_DEFINE_TYPE (HutBlockingList, hut_blocking_list, GTK_TYPE_WIDGET)

static GQuark
check_quark (void)
{
  return g_quark_from_static_string ("hut-check");
}

static const char *
check_of (GtkWidget *button)
{
  return g_object_get_qdata (G_OBJECT (button), check_quark ());
}

static const char *
translate (const char *msgid)
{
  return gettext (msgid);
}

/* (transfer full) (element-type HutBlocker): in the order of the findings. */
static GArray *
find_blockers (const GPtrArray *findings)
{
  GArray *blockers = g_array_new (FALSE, FALSE, sizeof (HutBlocker));

  for (guint i = 0; i < findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (findings, i);
      gboolean known = FALSE;

      if (finding->severity != HUT_SEVERITY_BLOCKS)
        continue;
      for (guint k = 0; k < blockers->len && !known; k++)
        {
          HutBlocker *blocker = &g_array_index (blockers, HutBlocker, k);

          known = g_strcmp0 (blocker->check, finding->check) == 0;
          blocker->count += known ? 1 : 0;
        }
      if (!known)
        {
          const HutBlocker blocker = { finding->check, finding, 1 };

          g_array_append_val (blockers, blocker);
        }
    }
  return blockers;
}

static char *
dup_text (const HutBlocker *blocker)
{
  g_autofree char *sentence
      = hut_finding_dup_text (blocker->first, translate, localeconv ()->decimal_point);

  if (blocker->count == 1)
    /* Translators: id of a check, and what it says */
    return g_strdup_printf (_("%s: %s"), blocker->check, sentence);
  /* Translators: id of a check, what it says first, and how often it says such a thing besides */
  return g_strdup_printf (
      ngettext ("%s: %s And %u more.", "%s: %s And %u more.", blocker->count - 1), blocker->check,
      sentence, blocker->count - 1);
}

static GtkWidget *
new_button (const HutBlocker *blocker)
{
  GtkWidget *button = gtk_check_button_new ();
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_wrap_mode (GTK_LABEL (label), PANGO_WRAP_WORD_CHAR);
  gtk_label_set_xalign (GTK_LABEL (label), 0.0F);
  gtk_check_button_set_child (GTK_CHECK_BUTTON (button), label);
  g_object_set_qdata (G_OBJECT (button), check_quark (), (gpointer)blocker->check);
  return button;
}

static GtkWidget *
find_button (HutBlockingList *self,
             const char *check)
{
  for (GtkWidget *button = gtk_widget_get_first_child (GTK_WIDGET (self->checks)); button != NULL;
       button = gtk_widget_get_next_sibling (button))
    if (g_strcmp0 (check_of (button), check) == 0)
      return button;
  return NULL;
}

static void
drop_old_buttons (HutBlockingList *self,
                  const GArray *blockers)
{
  GtkWidget *button = gtk_widget_get_first_child (GTK_WIDGET (self->checks));

  while (button != NULL)
    {
      GtkWidget *next = gtk_widget_get_next_sibling (button);
      gboolean blocks = FALSE;

      for (guint i = 0; i < blockers->len && !blocks; i++)
        blocks = g_strcmp0 (g_array_index (blockers, HutBlocker, i).check, check_of (button)) == 0;
      if (!blocks)
        gtk_box_remove (self->checks, button);
      button = next;
    }
}

static void
refresh (GtkWidget *widget)
{
  HutBlockingList *self = HUT_BLOCKING_LIST (widget);
  g_autoptr (GArray) blockers = find_blockers (hut_session_get_findings (self->session));

  drop_old_buttons (self, blockers);
  for (guint i = 0; i < blockers->len; i++)
    {
      const HutBlocker *blocker = &g_array_index (blockers, HutBlocker, i);
      GtkWidget *button = find_button (self, blocker->check);
      g_autofree char *text = dup_text (blocker);

      if (button == NULL)
        {
          button = new_button (blocker);
          gtk_box_append (self->checks, button);
        }
      gtk_label_set_text (GTK_LABEL (gtk_check_button_get_child (GTK_CHECK_BUTTON (button))), text);
    }
  gtk_widget_set_visible (self->content, blockers->len > 0);
}

static void
on_derived (HutBlockingList *self)
{
  hut_refresh_queue (GTK_WIDGET (self), refresh);
}

static void
hut_blocking_list_dispose (GObject *object)
{
  HutBlockingList *self = HUT_BLOCKING_LIST (object);

  g_clear_pointer (&self->content, gtk_widget_unparent);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_blocking_list_parent_class)->dispose (object);
}

static void
hut_blocking_list_class_init (HutBlockingListClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_blocking_list_dispose;
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-blocking-list.ui");
  gtk_widget_class_bind_template_child (widget_class, HutBlockingList, content);
  gtk_widget_class_bind_template_child (widget_class, HutBlockingList, checks);
}

static void
hut_blocking_list_init (HutBlockingList *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
hut_blocking_list_bind (HutBlockingList *self,
                        HutSession *session)
{
  g_return_if_fail (HUT_IS_BLOCKING_LIST (self) && HUT_IS_SESSION (session));
  g_return_if_fail (self->session == NULL);

  self->session = g_object_ref (session);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  on_derived (self);
}

GStrv
hut_blocking_list_dup_allowed (HutBlockingList *self)
{
  g_return_val_if_fail (HUT_IS_BLOCKING_LIST (self) && self->session != NULL, NULL);

  g_autoptr (GStrvBuilder) allowed = g_strv_builder_new ();

  /* The buttons may be behind the design by a frame. */
  refresh (GTK_WIDGET (self));
  for (GtkWidget *button = gtk_widget_get_first_child (GTK_WIDGET (self->checks)); button != NULL;
       button = gtk_widget_get_next_sibling (button))
    if (gtk_check_button_get_active (GTK_CHECK_BUTTON (button)))
      g_strv_builder_add (allowed, check_of (button));
  return g_strv_builder_end (allowed);
}
