/* src/checks/hut-way-out.h: a fitting opening for a service at a sensible free place.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"
#include "catalog/hut-catalog.h"

/* One of the two is NULL. */
typedef struct
{
  HutOpening *opening;
  HutHardware *hardware;
} HutWayOut;

void hut_way_out_free (HutWayOut *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutWayOut, hut_way_out_free)

/**
 * hut_way_out_find:
 * @findings: (element-type HutFinding): what hut_check_all () says of it now
 * @service: id
 * @fitting: (nullable): an item to put there, as hut_fitting_choose () gives it; NULL for an opening
 *
 * A way through the wall for the service, as near as may be to where the machine has its end: the
 * fitting, or an opening that the head passes: round, or a rectangle where a round one would be
 * wider than HUT_WAY_OUT_ROUND_MM. It lies on a wall of the base if one of them has room, else on
 * the lid. Places are tried by their distance to the end; one counts only when the checks have
 * nothing new to say with it there, apart from notes.
 *
 * Pure: the same design gives the same way out.
 *
 * Returns: (transfer full) (nullable): what serves it, with a free id, not yet part of the design;
 *   NULL when the service is unknown or no place was found
 */
HutWayOut *hut_way_out_find (const HutAssembly *assembly,
                             const HutPartSet *parts,
                             const GPtrArray *findings,
                             const char *service,
                             const HutItem *fitting) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hut_way_out_choose:
 * @catalog: (nullable): without, only plain openings
 * @fitting: (out) (nullable): lent by @catalog; NULL for an opening
 *
 * The fitting that suits service and wall, or, where none finds a place, a plain opening that still lets
 * the head through. Returns: (transfer full) (nullable): as hut_way_out_find ()
 */
HutWayOut *hut_way_out_choose (const HutAssembly *assembly,
                               const HutPartSet *parts,
                               const GPtrArray *findings,
                               const char *service,
                               const HutCatalog *catalog,
                               const HutItem **fitting) G_GNUC_WARN_UNUSED_RESULT;

/* Adds it, with a copy of @fitting; both are left as they are. Returns: its id, lent by @design */
const char *hut_way_out_add (const HutWayOut *self, const HutItem *fitting, HutDesign *design);

/* Rounder heads than this get a rectangle, mm. Own choice: wider round holes are hard to close. */
#define HUT_WAY_OUT_ROUND_MM 40.0
