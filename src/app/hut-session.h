/* src/app/hut-session.h: one open design with its history, and all that is derived from it.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Signals:
 *   "derived"            the design or what is derived from it changed: redraw, refill
 *   "selection-changed"  item or finding selection changed
 *   "file-changed"       path or modified state changed, or a gesture became an undo step */
#pragma once
#include "checks/hut-finding.h"
#include <gio/gio.h>

#define HUT_TYPE_SESSION (hut_session_get_type ())
G_DECLARE_FINAL_TYPE (HutSession, hut_session, HUT, SESSION, GObject)

/* @design: (transfer full) */
HutSession *hut_session_new (HutDesign *design) G_GNUC_WARN_UNUSED_RESULT;

/* (transfer none), valid until the next "derived". */
const HutDesign *hut_session_get_design (HutSession *self);
const HutAssembly *hut_session_get_assembly (HutSession *self);
const HutPartSet *hut_session_get_parts (HutSession *self);
const GPtrArray *hut_session_get_findings (HutSession *self);

/* An edit changes a copy of the design: @edit gets it, returns FALSE to drop it. One undo step,
 * unless a gesture is open. @label is what undo shows (translated). */
typedef gboolean (*HutEdit) (HutDesign *design, gpointer user_data);
gboolean hut_session_edit (HutSession *self, const char *label, HutEdit edit, gpointer user_data);
/* All edits between begin and end are one undo step; cancel goes back to the begin. */
void hut_session_begin_gesture (HutSession *self, const char *label);
void hut_session_end_gesture (HutSession *self);
void hut_session_cancel_gesture (HutSession *self);

void hut_session_undo (HutSession *self);
void hut_session_redo (HutSession *self);
gboolean hut_session_can_undo (HutSession *self);
gboolean hut_session_can_redo (HutSession *self);
/* (transfer none) (nullable): label of what undo/redo would do. */
const char *hut_session_get_undo_label (HutSession *self);
const char *hut_session_get_redo_label (HutSession *self);

/* Selected opening, window or hardware id, or NULL. */
const char *hut_session_get_selected (HutSession *self);
void hut_session_select (HutSession *self, const char *item);
/* Selected finding, index or -1; selecting one also selects the item it speaks of. */
int hut_session_get_selected_finding (HutSession *self);
void hut_session_select_finding (HutSession *self, int index);

const char *hut_session_get_path (HutSession *self);
/* TRUE when the design differs from what was last loaded or saved. */
gboolean hut_session_is_modified (HutSession *self);
gboolean hut_session_save (HutSession *self, const char *path, GError **error);

/**
 * hut_session_replace:
 * @design: (transfer full): takes the place of the open one; history and selection are emptied
 * @path: (nullable): the file that it was read from
 * @unsaved: TRUE when no file holds it as it is (a recovered design): it counts as modified
 */
void hut_session_replace (HutSession *self, HutDesign *design, const char *path, gboolean unsaved);

/* Openings, shared by keys, menu and drag. New items become selected. */
gboolean hut_session_delete_selected (HutSession *self);
gboolean hut_session_duplicate_selected (HutSession *self);
/* Moves the selected item by mm in its panel's frame. */
gboolean hut_session_nudge_selected (HutSession *self, double du_mm, double dv_mm);
/* Moves any item to a place on a panel (may be another panel), keeping its anchors. */
gboolean hut_session_move_item (HutSession *self, const char *item, HutPanelId panel, HutPoint at);
/* Adds a copy of @model on @panel with its middle at @at; returns its id (lent) or NULL. */
const char *
hut_session_add_opening (HutSession *self, const HutOpening *model, HutPanelId panel, HutPoint at);
