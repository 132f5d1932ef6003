/* src/app/hut-session-items.h: bodies, services, stocks and windows come and go.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Each is one undo step. Additions give the new id (transfer full), or NULL when nothing was added.
 * Removals leave nothing behind that refers to what is gone, as no file may hold that. */
#pragma once
#include "app/hut-session.h"
#include "catalog/hut-catalog.h"

char *hut_session_add_body (HutSession *self) G_GNUC_WARN_UNUSED_RESULT;
char *hut_session_add_service (HutSession *self) G_GNUC_WARN_UNUSED_RESULT;
char *hut_session_add_stock (HutSession *self) G_GNUC_WARN_UNUSED_RESULT;
/* In the middle of the front of the lid, or of the first panel there is. Becomes selected. */
char *hut_session_add_window (HutSession *self) G_GNUC_WARN_UNUSED_RESULT;

/* A fitting of the catalogue (nullable) that lets the service through, or a plain opening where none
 * fits, at a sensible free place; becomes selected. NULL when there is none: see
 * hut_way_out_find (). */
char *hut_session_add_way_out (HutSession *self,
                               const char *service,
                               const HutCatalog *catalog) G_GNUC_WARN_UNUSED_RESULT;

/* Fits a baffle along that side of the seam, with a gap that lets the lid open, or takes it away. */
gboolean hut_session_set_baffle (HutSession *self, HutSide side, gboolean fitted);

/* What was measured from it stays where it is, measured from the middle of its panel. */
gboolean hut_session_remove_body (HutSession *self, const char *body);
/* What served it serves nothing. */
gboolean hut_session_remove_service (HutSession *self, const char *service);
/* What was cut from it is cut from the stock of all panels; if it is that one, from the first
 * other. The last stock stays. */
gboolean hut_session_remove_stock (HutSession *self, const char *stock);
