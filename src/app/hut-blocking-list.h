/* src/app/hut-blocking-list.h: the checks that block the export, each to be allowed by a tick.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_BLOCKING_LIST (hut_blocking_list_get_type ())
G_DECLARE_FINAL_TYPE (HutBlockingList, hut_blocking_list, HUT, BLOCKING_LIST, GtkWidget)

/* To be called once. */
void hut_blocking_list_bind (HutBlockingList *self, HutSession *session);
/* (transfer full): ids of the checks that block now and are ticked. */
GStrv hut_blocking_list_dup_allowed (HutBlockingList *self) G_GNUC_WARN_UNUSED_RESULT;
