/* src/app/hut-session-extras.h: plates that the user draws come, go, and get their shapes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"

/* Each is one step of undo. Returns: (transfer full) (nullable): the id of the new plate. */
char *hut_session_add_extra (HutSession *self) G_GNUC_WARN_UNUSED_RESULT;
gboolean hut_session_remove_extra (HutSession *self, const char *extra);

typedef enum
{
  HUT_EXTRA_RECTANGLE,
  HUT_EXTRA_HOLE,
} HutExtraShapeKind;

gboolean hut_session_add_extra_shape (HutSession *self, const char *extra, HutExtraShapeKind kind);
/* The last rectangle stays. */
gboolean hut_session_remove_extra_shape (HutSession *self, const char *extra, HutExtraShapeKind kind, guint index);
