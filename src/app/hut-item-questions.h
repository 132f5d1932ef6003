/* src/app/hut-item-questions.h: what is asked before an item of hardware, or work on it, is lost.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-stockroom.h"
#include <gtk/gtk.h>

/* Asks, and removes the user's own item with @id from @stockroom when the answer is yes; tells when it
 * cannot be removed. @name: what the question calls it */
void hut_item_ask_remove (GtkWindow *parent,
                          HutStockroom *stockroom,
                          const char *id,
                          const char *name);
/* Asks whether what was measured may be lost, and destroys @editor when the answer is yes. */
void hut_item_ask_discard (GtkWindow *editor);
