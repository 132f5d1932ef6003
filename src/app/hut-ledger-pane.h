/* src/app/hut-ledger-pane.h: the services ledger: what must cross the wall, one line each.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_LEDGER_PANE (hut_ledger_pane_get_type ())
G_DECLARE_FINAL_TYPE (HutLedgerPane, hut_ledger_pane, HUT, LEDGER_PANE, GtkWidget)

/* Before it is shown, once. */
void hut_ledger_pane_bind (HutLedgerPane *self, HutSession *session);
