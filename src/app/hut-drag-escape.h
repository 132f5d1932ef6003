/* src/app/hut-drag-escape.h: Escape ends a drag between widgets.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * GTK 4.8 grabs plain Escape on X11 while something is dragged, and then does nothing with it: the
 * drag goes on. This looks for the key among the events before GTK does. */
#pragma once
#include <gtk/gtk.h>

/* From the source's "drag-begin" to its "drag-end", each drag of it. On other displays GTK does it. */
void hut_drag_escape_add (GtkDragSource *source);
