/* src/checks/hut-way-out.h: a fitting opening for a service at a sensible free place.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

/**
 * hut_way_out_find:
 * @findings: (element-type HutFinding): what hut_check_all () says of it now
 * @service: id
 *
 * An opening that the service's head passes, as near as may be to where the machine has its end:
 * round, or a rectangle where a round one would be wider than HUT_WAY_OUT_ROUND_MM. It lies on a
 * wall of the base if one of them has room, else on the lid. Places are tried by their distance to
 * the end; one counts only when the checks have nothing new to say with the opening there, apart
 * from notes.
 *
 * Pure: the same design gives the same opening.
 *
 * Returns: (transfer full) (nullable): an opening that serves it, with a free id, not yet part of
 *   the design; NULL when the service is unknown or no place was found
 */
HutOpening *hut_way_out_find (const HutAssembly *assembly,
                              const HutPartSet *parts,
                              const GPtrArray *findings,
                              const char *service) G_GNUC_WARN_UNUSED_RESULT;

/* Rounder heads than this get a rectangle, mm. Own choice: wider round holes are hard to close. */
#define HUT_WAY_OUT_ROUND_MM 40.0
