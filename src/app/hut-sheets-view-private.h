/* src/app/hut-sheets-view-private.h: what the files of the sheets view share.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-sheets-view.h"
#include "draw/hut-sheet-grid.h"

/* A part under the pointer. */
typedef struct
{
  gboolean active, moved;
  guint part;
  guint start_sheet;       /* index: where it lay before */
  HutPlacement start;
  HutPoint grab_mm;        /* from the placement's shift to the pointer */
  double start_x, start_y; /* px */
  gboolean has_guide_u, has_guide_v;
  double guide_u_mm, guide_v_mm; /* stops that hold it, sheet frame */
} HutSheetDrag;

struct _HutSheetsView
{
  GtkWidget parent_instance;

  GtkWidget *content;
  GtkDrawingArea *area;
  GtkStack *bar;
  GtkWidget *tools, *work, *cancel;
  GtkProgressBar *progress;
  GtkLabel *status;

  HutSession *session;
  HutPacked *packed; /* NULL until the first job is done */
  GCancellable *job; /* of the running job, or NULL */
  HutSheetWatch *watch; /* of it, or NULL */
  HutSheetJobKind kind; /* of it */
  gint64 started_us;    /* it */
  guint rest_timeout, watch_timeout;
  gboolean stale; /* the design changed since the last job was started */

  char *chosen; /* id of the selected part, or NULL */
  HutSheetDrag drag;
};

/* hut-sheets-view.c */
HutSheetGrid hut_sheets_view_get_grid (HutSheetsView *self);

/* hut-sheets-view-move.c */
void hut_sheets_view_move_class_init (GtkWidgetClass *class);
void hut_sheets_view_move_init (HutSheetsView *self);
/* Says in words what is selected and what is wrong with it; enables the commands. */
void hut_sheets_view_tell (HutSheetsView *self);
/* No drag is under way any more; nothing is put back. */
void hut_sheets_view_forget_drag (HutSheetsView *self);
/* (transfer full): per part: whether it has not the room it needs; NULL before the first packing */
gboolean *hut_sheets_view_dup_wrong (HutSheetsView *self);
/* Lines at the stops that hold the dragged part. */
void hut_sheets_view_draw_guides (HutSheetsView *self, cairo_t *cr, const HutSheetGrid *grid);
