/* src/app/hut-canvas-private.h: what the files of the canvas share.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-canvas.h"
#include "app/hut-units.h"
#include "draw/hut-flat-selection.h"
#include "draw/hut-snap.h"

typedef enum
{
  HUT_DRAG_NONE,
  HUT_DRAG_PRESSED, /* on an item, not moved far enough yet */
  HUT_DRAG_MOVE,
  HUT_DRAG_RESIZE,
  HUT_DRAG_PAN,
  HUT_DRAG_DROP, /* something from the shelf hovers */
} HutDragKind;

typedef struct
{
  HutDragKind kind;
  char *item; /* owned: what is moved or sized, or the preview of a drop */
  HutHandle handle;
  double start_x, start_y; /* px: where the pointer went down */
  double grab_x, grab_y; /* px: from the pointer to the item's middle, or to the corner it sizes */
  double last_x, last_y; /* px: of panning */
  HutOpening *model;     /* owned: of a drop */
  HutItem *model_item;   /* owned: of a drop of hardware, in place of `model` */
  HutPanelId target;     /* panel under the dragged thing */
  gboolean has_target;
} HutDrag;

struct _HutCanvas
{
  GtkWidget parent;

  HutSession *session;
  HutFlatLayout *layout;
  HutFlatView view;
  gboolean fitted; /* the view follows size and design until the user moves it */
  HutSnap snapped; /* guides of the present drag */
  HutDrag drag;
  char *hovered;                /* owned: item under the pointer */
  double pointer_x, pointer_y;  /* px */
  double pinch_scale_px_per_mm; /* at the start of a pinch */
  gboolean space_held;

  gboolean snap, show_machine, show_splices, show_dimensions, show_legend, show_grid;
  HutUnits units;

  GtkWidget *empty, *empty_text, *controls; /* template children */
};

/* hut-canvas.c */
const HutAssembly *hut_canvas_get_assembly (HutCanvas *self);
void hut_canvas_update_cursor (HutCanvas *self);
/* What a screen reader says of the selected item; (transfer full). */
char *hut_canvas_dup_description (HutCanvas *self);

/* hut-canvas-view.c */
void hut_canvas_view_class_init (GtkWidgetClass *klass);
void hut_canvas_view_init (HutCanvas *self);
void hut_canvas_fit (HutCanvas *self);
void hut_canvas_pan (HutCanvas *self, double dx, double dy);

/* hut-canvas-move.c */
void hut_canvas_move_init (HutCanvas *self);
/* Takes back what the drag under way has done; FALSE when there is none. */
gboolean hut_canvas_cancel_drag (HutCanvas *self);
/* Where a thing of @bounds stops whose middle is over (x, y), px; FALSE when no panel is there. Its
 * guides and panel are shown. @item: (nullable): what is moved; @snap: FALSE suspends stops. */
gboolean hut_canvas_find_stop (HutCanvas *self,
                               const char *item,
                               HutRect bounds,
                               HutPoint middle_px,
                               gboolean snap,
                               HutPanelId *panel,
                               HutPoint *at);
/* No guides, no panel marked. */
void hut_canvas_forget_stop (HutCanvas *self);

/* hut-canvas-drop.c */
void hut_canvas_drop_init (HutCanvas *self);

/* hut-canvas-keys.c */
void hut_canvas_keys_class_init (GtkWidgetClass *klass);
void hut_canvas_keys_init (HutCanvas *self);
