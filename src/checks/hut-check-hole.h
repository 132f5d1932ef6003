/* src/checks/hut-check-hole.h: an opening or window as the checks look at it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "checks/hut-checking.h"
#include "geom/hut-width.h"

/* No cutout within a thickness and this of the finger roots, mm: common practice, no source. */
#define HUT_CHECK_ROOT_ROOM_MM 5.0

/* A placed hole with the bounds of each of its paths: a grille has hundreds. */
typedef struct
{
  const HutPlacedHole *placed;
  const HutPanel *panel;
  HutRect *bounds; /* (array): one per path, mm */
} HutCheckHole;

/* (transfer full) (element-type HutCheckHole) */
GPtrArray *hut_check_holes_new (const HutAssembly *assembly) G_GNUC_WARN_UNUSED_RESULT;
/* (transfer none) */
const char *hut_check_hole_name (const HutCheckHole *self, const HutAssembly *assembly);
/* (transfer none): a finding about the hole, named by the user's name for it. */
HutFinding *hut_check_hole_add (const HutCheckHole *self,
                                HutChecking *checking,
                                const char *check,
                                HutSeverity severity,
                                const char *message,
                                const char *other);

/* Distance of two rectangles, mm; 0 when they touch or overlap. */
double hut_check_rects_apart_mm (const HutRect *a, const HutRect *b);

/**
 * hut_check_material_between:
 * @a, @b: closed paths
 * @limit_mm: more than this is of no interest, mm
 * @gap: (out caller-allocates): where the least material is
 *
 * Like hut_border_find_gap (), but a path inside the other one has no material between: width 0.
 */
gboolean hut_check_material_between (const HutPath *a, const HutPath *b, double limit_mm, HutWeb *gap);
