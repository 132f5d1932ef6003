/* src/app/hut-checked-entry.h: a line of text that is applied only when it makes sense.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Enter and leaving the field apply what is typed; what makes no sense stays, marked, with the
 * reason under it; Escape goes back. Property "title": for screen readers. Signal "committed"
 * (const char *text): the text makes sense and is not what was there. */
#pragma once
#include <gtk/gtk.h>

#define HUT_TYPE_CHECKED_ENTRY (hut_checked_entry_get_type ())
G_DECLARE_FINAL_TYPE (HutCheckedEntry, hut_checked_entry, HUT, CHECKED_ENTRY, GtkWidget)

/* Returns: FALSE with a translated message when @text makes no sense */
typedef gboolean (*HutTextCheck) (const char *text, GError **error);
void hut_checked_entry_set_check (HutCheckedEntry *self, HutTextCheck check);
/* Shows @text; what the user types stays unless @text is another than the last time. */
void hut_checked_entry_set_text (HutCheckedEntry *self, const char *text);
/* Applies what is typed. Returns: FALSE when it makes no sense */
gboolean hut_checked_entry_commit (HutCheckedEntry *self);
/* (transfer none): the text field inside. */
GtkEditable *hut_checked_entry_get_editable (HutCheckedEntry *self);
/* (transfer none) (nullable): why what is typed makes no sense. */
const char *hut_checked_entry_get_problem (HutCheckedEntry *self);
