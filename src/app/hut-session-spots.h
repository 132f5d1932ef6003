/* src/app/hut-session-spots.h: parts laid on the sheets by hand, as edits of the design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include "sheets/hut-sheet.h"

/* Takes over how the parts of a part's stock lie on @sheets, and keeps that one where it is. @part:
 * index in @parts. FALSE when nothing changed. */
gboolean hut_session_keep_part (HutSession *self,
                                const HutPartSet *parts,
                                const HutSheetSet *sheets,
                                guint part);
/* All parts lie as they do on @sheets, until they change; what is kept stays kept. */
gboolean hut_session_take_layout (HutSession *self,
                                  const HutPartSet *parts,
                                  const HutSheetSet *sheets);
/* The program lays it again. FALSE when it was not kept. */
gboolean hut_session_release_part (HutSession *self, const char *part);
/* The same for all parts. */
gboolean hut_session_release_all (HutSession *self);
