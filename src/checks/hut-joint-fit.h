/* src/checks/hut-joint-fit.h: how loose a tongue is in its slot, and what is usual.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"

/* Slot minus tongue, mm: > 0 loose. */
typedef struct
{
  double centre_mm;    /* as it is set, with the shift that a coupon found */
  double kerf_mm;      /* +- by the error of the kerf; of the coupon where one was read */
  double thickness_mm; /* +- by the spread of the thickness */
  double worst_mm;     /* +- both at their worst at once */
  double rss_mm;       /* +- root of the sum of squares */
} HutJointFit;

/**
 * hut_joint_fit_find:
 * @tongue, @slot: stocks of the two panels; may be the same
 *
 * An allowance is shared by both edges of a flank, so each stock gives half of its own. A kerf
 * wider by e makes a tongue e narrower and a slot e wider: 2 e when both are cut from the same
 * stock (one kerf, one error), the two errors as independent ones otherwise. The thickness counts
 * with half its measured spread, of both stocks; sheet that is uneven does not lie flat in the
 * notch and takes part of the room away.
 */
HutJointFit hut_joint_fit_find (const HutStock *tongue, const HutStock *slot);

typedef struct
{
  gboolean known;      /* FALSE: no figure for this material and cutter */
  gboolean never;      /* this fit is not to be used with the material */
  double low_mm, high_mm;
} HutFitRange;

/* What is usual for a fit; common practice, no source. See the table in hut-joint-fit.c. */
HutFitRange hut_fit_range (HutMaterial material, HutCutterKind cutter, HutFitKind fit);
