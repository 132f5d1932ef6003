/* src/app/hut-main-window-recovery.c: takes up what an earlier run left behind.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-main-window-private.h"
#include "design/hut-file.h"
#include <glib/gi18n.h>

static void
recover (HutMainWindow *self)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HutDesign) design = hut_design_load (self->recovery->path, &error);

  if (design == NULL)
    {
      /* The file stays: somebody may still get something out of it. */
      hut_notice_show_error (self->notice, error->message);
      return;
    }
  hut_session_replace (self->session, g_steal_pointer (&design), self->recovery->origin, TRUE);
  /* What was left behind goes only when its heir is on disk. */
  if (hut_autosave_write (self->autosave))
    hut_recovery_discard (self->recovery);
}

static void
on_answered (HutMainWindow *self,
             int response)
{
  if (self->recovery == NULL)
    return;
  if (response == GTK_RESPONSE_ACCEPT)
    recover (self);
  else if (response == GTK_RESPONSE_REJECT)
    hut_recovery_discard (self->recovery);
  g_clear_pointer (&self->recovery, hut_recovery_free);
  /* Each file that was left behind is asked about, one after the other. */
  if (response == GTK_RESPONSE_REJECT)
    hut_main_window_offer_recovery (self);
}

static void
on_autosave_failed (HutMainWindow *self,
                    const char *message)
{
  /* Translators: %s is the reason */
  g_autofree char *text = g_strdup_printf (
      _("Unsaved changes cannot be kept safe from a crash: %s. Save the design."), message);

  hut_notice_show_error (self->notice, text);
}

void
hut_main_window_init_recovery (HutMainWindow *self)
{
  g_signal_connect_object (self->notice, "answered", G_CALLBACK (on_answered), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->autosave, "failed", G_CALLBACK (on_autosave_failed), self,
                           G_CONNECT_SWAPPED);
}

void
hut_main_window_offer_recovery (HutMainWindow *self)
{
  g_return_if_fail (HUT_IS_MAIN_WINDOW (self));

  g_autoptr (GPtrArray) list = hut_recovery_list ();
  g_autoptr (GDateTime) when = NULL;
  g_autofree char *name = NULL, *time = NULL, *text = NULL;

  if (list->len == 0 || !hut_main_window_is_untouched (self))
    return;
  g_clear_pointer (&self->recovery, hut_recovery_free);
  self->recovery = g_ptr_array_steal_index (list, 0);
  when = g_date_time_new_from_unix_local (self->recovery->written_us / G_USEC_PER_SEC);
  time = when != NULL ? g_date_time_format (when, "%x %H:%M") : g_strdup ("?");
  name = self->recovery->origin != NULL ? g_filename_display_basename (self->recovery->origin)
                                        : g_strdup (_("a design without a file"));
  /* Translators: name of a file, date and time */
  text = g_strdup_printf (_("The program ended before %s was saved. Its state of %s was kept."),
                          name, time);
  hut_notice_ask (self->notice, text, _("_Recover"), _("_Discard"));
}
