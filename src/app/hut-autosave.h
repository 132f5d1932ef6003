/* src/app/hut-autosave.h: what was not saved survives a crash.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A modified design is written to $XDG_STATE_HOME/hutchwright/recovery some time after it was
 * changed, and whenever hut_autosave_write () is called. The file is deleted when the design is
 * saved or closed; one that is left behind by a program that is gone is offered at the next start.
 * Signal "failed" (const char *message): the file could not be written; told once until it can
 * again. */
#pragma once
#include "app/hut-session.h"

/* How long a change may stay unwritten. */
#define HUT_AUTOSAVE_S 30

#define HUT_TYPE_AUTOSAVE (hut_autosave_get_type ())
G_DECLARE_FINAL_TYPE (HutAutosave, hut_autosave, HUT, AUTOSAVE, GObject)

HutAutosave *hut_autosave_new (HutSession *session) G_GNUC_WARN_UNUSED_RESULT;
/* Writes now what is modified. Returns: FALSE when it could not be written */
gboolean hut_autosave_write (HutAutosave *self);
/* Deletes the file: the user closed the design and let go of what was not saved. */
void hut_autosave_discard (HutAutosave *self);

/* A design that a program left behind. */
typedef struct
{
  char *path;       /* of the recovery file */
  char *origin;     /* file that the design was read from, or NULL */
  gint64 written_us; /* when, microseconds since 1970 UTC */
} HutRecovery;

void hut_recovery_free (HutRecovery *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutRecovery, hut_recovery_free)
/* (transfer full) (element-type HutRecovery): newest first; none that a running program still
 * writes. */
GPtrArray *hut_recovery_list (void) G_GNUC_WARN_UNUSED_RESULT;
/* Deletes what was left behind. */
void hut_recovery_discard (const HutRecovery *self);
