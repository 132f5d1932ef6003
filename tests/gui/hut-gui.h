/* tests/gui/hut-gui.h: the program's window in this process, worked with real pointer and key
 * events of the X server. SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-canvas.h"
#include "app/hut-shelf.h"
#include "hut-assert.h"

typedef struct
{
  HutSession *session;
  GtkWidget *window, *canvas, *shelf;
} HutGui;

#define HUT_GUI_WIDTH_PX 1366
#define HUT_GUI_HEIGHT_PX 768
#define HUT_GUI_DEADLINE_S                                                                         \
  20 /* for any one thing to happen; far more than a loaded machine needs */

/* @design: (transfer full): shown at the step Openings. Comes back when all is on the screen. */
void hut_gui_open (HutGui *self, HutDesign *design);
void hut_gui_close (HutGui *self);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (HutGui, hut_gui_close)

/* Handles what has come in, and waits a moment for more. */
void hut_gui_spin (void);
/* Lets the program run until @condition is true; fails the test at the deadline. */
#define hut_gui_wait_for(condition)                                                                \
  do                                                                                               \
    {                                                                                              \
      const gint64 end_ = g_get_monotonic_time () + HUT_GUI_DEADLINE_S * G_USEC_PER_SEC;           \
      while (!(condition))                                                                         \
        {                                                                                          \
          if (g_get_monotonic_time () > end_)                                                      \
            fail_msg ("%s:%d: waited %d s for: %s", __FILE__, __LINE__, HUT_GUI_DEADLINE_S,        \
                      #condition);                                                                 \
          hut_gui_spin ();                                                                         \
        }                                                                                          \
    }                                                                                              \
  while (0)

/* Places on the screen, px. */
typedef struct
{
  int x, y;
} HutGuiPoint;

/* A point of a widget. */
HutGuiPoint hut_gui_point (GtkWidget *widget, double x, double y);
/* The middle of the shelf's entry of that name. */
HutGuiPoint hut_gui_shelf_point (HutGui *self, const char *name);
/* The pixel of the canvas that shows a point of a panel, and the point that this pixel really
 * stands for. */
HutGuiPoint hut_gui_panel_point (HutGui *self, const char *panel, HutPoint wanted, HutPoint *real);

/* The pointer. A drag goes there in steps, as a hand does, and stays pressed until hut_gui_release
 * (). */
void hut_gui_move (HutGuiPoint to);
void hut_gui_press (void);
void hut_gui_release (void);
void hut_gui_drag (HutGuiPoint from, HutGuiPoint to);
void hut_gui_wheel (gboolean up);
/* "ctrl+z", "Tab", ...: pressed and let go. */
void hut_gui_key (const char *key);
/* Text, letter by letter. */
void hut_gui_enter (const char *text);
/* A modifier that is held for a while. */
void hut_gui_hold (const char *key, gboolean down);

/* Middle of an item as the design says; fails the test when there is none. */
HutPoint hut_gui_item_at (HutGui *self, const char *item, HutPanelId *panel);
/* TRUE when a finding of that check speaks of the item (NULL: of anything). */
gboolean hut_gui_has_finding (HutGui *self, const char *check, const char *item);
/* First child, at any depth, of that type (and with that text, if it is a label and @text is
 * given). */
GtkWidget *hut_gui_find (GtkWidget *parent, GType type, const char *text);
