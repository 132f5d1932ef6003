/* src/app/hut-notice.h: a bar over the window's content that says what went wrong, or asks
 * something. SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Signal "answered" (int): a button of a question was pressed; GTK_RESPONSE_CLOSE: put away. */
#pragma once
#include <gtk/gtk.h>

#define HUT_TYPE_NOTICE (hut_notice_get_type ())
G_DECLARE_FINAL_TYPE (HutNotice, hut_notice, HUT, NOTICE, GtkWidget)

/* Stays until it is put away or replaced. */
void hut_notice_show_error (HutNotice *self, const char *text);
/* @yes, @no: labels of the buttons; they answer GTK_RESPONSE_ACCEPT and GTK_RESPONSE_REJECT. */
void hut_notice_ask (HutNotice *self, const char *text, const char *yes, const char *no);
void hut_notice_hide (HutNotice *self);
/* (transfer none) (nullable): what is shown, or NULL. */
const char *hut_notice_get_text (HutNotice *self);
