/* src/sheets/hut-coupon-fit.h: kerf and allowance from what was read off a coupon.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "sheets/hut-coupon.h"

/* Usual +- of a caliper in a small window, mm. Common practice, no source. */
#define HUT_COUPON_READING_ERROR_MM 0.05
/* A tooth that was not found. */
#define HUT_COUPON_NONE G_MAXUINT
/* Most plays that are taken. Own choice. */
#define HUT_COUPON_PLAYS_MAX 100

typedef struct
{
  const double *plays_mm;            /* total play of all bars, each time it was read */
  guint play_count;                  /* >= 1 */
  double reading_error_mm;           /* +- that one reading in twenty exceeds; > 0 */
  guint first_tooth[HUT_FEEL_COUNT]; /* the tightest tooth that feels so, or HUT_COUPON_NONE */
} HutCouponReadings;

/* Each +- holds with at least 95 %. */
typedef struct
{
  double kerf_mm, kerf_error_mm;
  gboolean has_allowance; /* FALSE: the comb said too little for the wanted fit */
  double allowance_mm, allowance_error_mm;
  double fit_shift_mm;    /* how much looser the stock feels than is usual; 0 where unknown */
} HutCouponResult;

/**
 * hut_coupon_fit:
 * @plan: of the coupon that was cut
 * @stock: its material and the fit that is wanted
 * @readings: what was read
 * @result: (out caller-allocates)
 * @error: HUT_GEOM_ERROR_INVALID when a number is not finite or out of range, or teeth are not in
 *   the order of their feel
 *
 * Least squares. A play is g kerfs, g = hut_coupon_gap_count (), and an error e of its own:
 * P = g K + e, so K is the mean play over g. Where the feel changes, the allowance x as drawn is
 * half a step under the first tooth of the looser feel; with b the usual clearance there,
 * b = x + 2 (K - k) + d + e, so the shift d is the mean of b - x less 2 (K - k). The allowance is
 * the middle of the wanted fit less d. Where no usual fits are known, it is the middle of the
 * teeth that feel as wanted, d = 0.
 * Errors: Student's t of the residuals, not under what @reading_error_mm lets expect; for the
 * allowance that of the comb and that of the kerf by their squares, and half a step for what is
 * between two teeth.
 *
 * Returns: FALSE, with nothing written, on error
 */
gboolean hut_coupon_fit (const HutCouponPlan *plan,
                         const HutStock *stock,
                         HutCutterKind cutter,
                         const HutCouponReadings *readings,
                         HutCouponResult *result,
                         GError **error);

/* Puts the result into the recipe of @stock; its allowance stays when the comb said too little. */
void hut_coupon_result_apply (const HutCouponResult *self, HutStock *stock);
