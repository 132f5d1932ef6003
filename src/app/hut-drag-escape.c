/* src/app/hut-drag-escape.c: Escape ends a drag between widgets.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-drag-escape.h"

#ifdef GDK_WINDOWING_X11
#include <X11/XKBlib.h>
#include <X11/extensions/XInput2.h>
#include <X11/keysym.h>
#include <gdk/x11/gdkx.h>

static gboolean
is_escape (const XEvent *event)
{
  const XGenericEventCookie *cookie = &event->xcookie;
  const XIDeviceEvent *key = cookie->data; /* GDK has fetched it */
  int opcode, first_event, first_error;

  return event->type == GenericEvent && cookie->evtype == XI_KeyPress && key != NULL
         && XQueryExtension (cookie->display, "XInputExtension", &opcode, &first_event,
                             &first_error)
         && cookie->extension == opcode
         && XkbKeycodeToKeysym (cookie->display, (KeyCode)key->detail, 0, 0) == XK_Escape;
}

static gboolean
on_xevent (GdkX11Display *display,
           gpointer event,
           GdkDrag *drag)
{
  if (!is_escape (event))
    return GDK_EVENT_PROPAGATE;
  /* Not gtk_drag_source_drag_cancel (): that one does not tell the target. */
  g_signal_emit_by_name (drag, "cancel", GDK_DRAG_CANCEL_USER_CANCELLED);
  return GDK_EVENT_STOP;
}

static void
on_drag_begin (GtkDragSource *source,
               GdkDrag *drag)
{
  GdkDisplay *display = gdk_drag_get_display (drag);

  if (GDK_IS_X11_DISPLAY (display))
    g_signal_connect_object (display, "xevent", G_CALLBACK (on_xevent), drag, 0);
}

static void
on_drag_end (GtkDragSource *source,
             GdkDrag *drag)
{
  GdkDisplay *display = gdk_drag_get_display (drag);

  if (GDK_IS_X11_DISPLAY (display))
    g_signal_handlers_disconnect_by_data (display, drag);
}

void
hut_drag_escape_add (GtkDragSource *source)
{
  g_return_if_fail (GTK_IS_DRAG_SOURCE (source));

  g_signal_connect (source, "drag-begin", G_CALLBACK (on_drag_begin), NULL);
  g_signal_connect (source, "drag-end", G_CALLBACK (on_drag_end), NULL);
}

#else

void
hut_drag_escape_add (GtkDragSource *source)
{
  g_return_if_fail (GTK_IS_DRAG_SOURCE (source));
}

#endif
