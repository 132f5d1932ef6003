/* src/sheets/hut-coupon-fit.c: kerf and allowance from what was read off a coupon.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-coupon-fit.h"
#include "checks/hut-joint-fit.h"
#include <gsl/gsl_cdf.h>

/* What one in twenty exceeds is so many standard deviations: normal distribution, 95 %. */
#define NORMAL_95 1.959964
/* One-sided shares for Student's t: 99 % for the kerf, because the allowance and every joint stand
 * on it; 95 % for the comb, which half a step is added to. Own choice. */
#define KERF_SHARE_RATIO 0.995
#define COMB_SHARE_RATIO 0.975
/* Expected standard deviation of where a feel changes, mm. Own choice: a quarter of a step. */
#define FEEL_MM 0.01
/* Largest numbers that are believed, mm: what a design file takes. */
#define KERF_MAX_MM 20.0
#define KERF_ERROR_MAX_MM 5.0
#define ALLOWANCE_MAX_MM 2.0

/* Mean of values and how far it may be off. */
typedef struct
{
  double mean_mm, error_mm;
} Mean;

static Mean
find_mean (const double *values_mm,
           guint count,
           double expected_mm,
           double share_ratio)
{
  Mean mean = { 0.0, 0.0 };
  double squares = 0.0;
  const double least_mm = gsl_cdf_ugaussian_Pinv (share_ratio) * expected_mm;

  for (guint i = 0; i < count; i++)
    mean.mean_mm += values_mm[i] / count;
  for (guint i = 0; i < count; i++)
    squares += (values_mm[i] - mean.mean_mm) * (values_mm[i] - mean.mean_mm);
  if (count > 1)
    mean.error_mm = gsl_cdf_tdist_Pinv (share_ratio, count - 1.0) * sqrt (squares / (count - 1.0));
  mean.error_mm = MAX (mean.error_mm, least_mm) / sqrt (count);
  return mean;
}

static gboolean
refuse (GError **error,
        const char *what)
{
  g_set_error_literal (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID, what);
  return FALSE;
}

static gboolean
check_readings (const HutCouponPlan *plan,
                const HutCouponReadings *readings,
                GError **error)
{
  const double most_mm = KERF_MAX_MM * hut_coupon_gap_count (plan);
  guint last = 0;

  if (!(plan->kerf_mm >= 0.0 && plan->kerf_mm <= KERF_MAX_MM))
    return refuse (error, "the kerf that a coupon is drawn for must be 0 to 20 mm");
  if (readings->play_count < 1 || readings->play_count > HUT_COUPON_PLAYS_MAX)
    return refuse (error, "no play was read; allowed: 1 to 100 readings of the play of all bars");
  if (!(readings->reading_error_mm > 0.0 && readings->reading_error_mm <= KERF_MAX_MM))
    return refuse (error, "the error of a reading must be over 0 and at most 20 mm");
  for (guint i = 0; i < readings->play_count; i++)
    if (!(readings->plays_mm[i] > 0.0 && readings->plays_mm[i] <= most_mm))
      return refuse (error, "a play must be over 0 mm and less than that of the widest kerf");
  for (guint feel = 0; feel < HUT_FEEL_COUNT; feel++)
    {
      const guint tooth = readings->first_tooth[feel];

      if (tooth == HUT_COUPON_NONE)
        continue;
      if (tooth >= plan->tooth_count)
        return refuse (error, "the comb has no such tooth");
      if (tooth < last)
        return refuse (error, "teeth must get looser: press, slip, glue, loose");
      last = tooth;
    }
  return TRUE;
}

/* The allowance as drawn where the feel begins; FALSE when it was not seen to change there. */
static gboolean
get_change (const HutCouponPlan *plan,
            const HutCouponReadings *readings,
            guint feel,
            double *drawn_mm)
{
  const guint tooth = readings->first_tooth[feel];

  if (tooth == HUT_COUPON_NONE || tooth == 0)
    return FALSE;
  *drawn_mm = hut_coupon_tooth_mm (plan, tooth) - plan->step_mm / 2.0;
  return TRUE;
}

/* b - x of every change of feel that was seen and whose usual clearance is known. */
static guint
collect_shifts (const HutCouponPlan *plan,
                const HutStock *stock,
                HutCutterKind cutter,
                const HutCouponReadings *readings,
                double shifts_mm[HUT_FEEL_COUNT])
{
  guint count = 0;

  for (guint feel = 0; feel < HUT_FEEL_COUNT; feel++)
    {
      double drawn_mm, usual_mm;

      if (get_change (plan, readings, feel, &drawn_mm)
          && hut_coupon_feel_mm (stock, cutter, (HutFeel) feel, &usual_mm))
        shifts_mm[count++] = usual_mm - drawn_mm;
    }
  return count;
}

static void
set_allowance (HutCouponResult *result,
               const HutCouponPlan *plan,
               double allowance_mm,
               double comb_error_mm)
{
  result->has_allowance = TRUE;
  result->allowance_mm = hut_snap_mm (allowance_mm);
  result->allowance_error_mm
      = hut_snap_mm (plan->step_mm / 2.0 + hypot (comb_error_mm, 2.0 * result->kerf_error_mm));
}

/* Clearance that the wrong kerf adds to every joint of the coupon, mm. */
static double
kerf_shift_mm (const HutCouponResult *result,
               const HutCouponPlan *plan)
{
  return 2.0 * (result->kerf_mm - plan->kerf_mm);
}

static void
fit_usual (HutCouponResult *result,
           const HutCouponPlan *plan,
           const HutFitRange *range,
           const double *shifts_mm,
           guint count)
{
  const Mean shift = find_mean (shifts_mm, count, FEEL_MM, COMB_SHARE_RATIO);

  result->fit_shift_mm = hut_snap_mm (shift.mean_mm - kerf_shift_mm (result, plan));
  set_allowance (result, plan, (range->low_mm + range->high_mm) / 2.0 - result->fit_shift_mm,
                 shift.error_mm);
}

static void
fit_own (HutCouponResult *result,
         const HutCouponPlan *plan,
         const HutStock *stock,
         const HutCouponReadings *readings)
{
  double from_mm, to_mm;

  if (!get_change (plan, readings, stock->fit, &from_mm)
      || !get_change (plan, readings, stock->fit + 1u, &to_mm))
    return;
  set_allowance (result, plan, (from_mm + to_mm) / 2.0 + kerf_shift_mm (result, plan),
                 gsl_cdf_ugaussian_Pinv (COMB_SHARE_RATIO) * FEEL_MM / sqrt (2.0));
}

gboolean
hut_coupon_fit (const HutCouponPlan *plan,
                const HutStock *stock,
                HutCutterKind cutter,
                const HutCouponReadings *readings,
                HutCouponResult *result,
                GError **error)
{
  g_return_val_if_fail (plan != NULL && stock != NULL && readings != NULL && result != NULL, FALSE);

  if (!check_readings (plan, readings, error))
    return FALSE;

  const HutFitRange range = hut_fit_range (stock->material, cutter, stock->fit);
  const guint gaps = hut_coupon_gap_count (plan);
  const Mean play = find_mean (readings->plays_mm, readings->play_count,
                               readings->reading_error_mm / NORMAL_95, KERF_SHARE_RATIO);
  double shifts_mm[HUT_FEEL_COUNT];
  const guint count = collect_shifts (plan, stock, cutter, readings, shifts_mm);

  HutCouponResult found = {
    .kerf_mm = hut_snap_mm (play.mean_mm / gaps),
    .kerf_error_mm = hut_snap_mm (play.error_mm / gaps) + HUT_GRID_MM,
  };

  if (range.known && !range.never && count > 0)
    fit_usual (&found, plan, &range, shifts_mm, count);
  else if (!range.known)
    fit_own (&found, plan, stock, readings);
  if (found.kerf_error_mm > KERF_ERROR_MAX_MM || fabs (found.allowance_mm) > ALLOWANCE_MAX_MM
      || fabs (found.fit_shift_mm) > ALLOWANCE_MAX_MM
      || found.allowance_error_mm > ALLOWANCE_MAX_MM)
    return refuse (error, "no such coupon: plays, teeth and the kerf it was drawn for do not go "
                          "together");
  *result = found;
  return TRUE;
}

void
hut_coupon_result_apply (const HutCouponResult *self,
                         HutStock *stock)
{
  g_return_if_fail (self != NULL && stock != NULL);

  stock->kerf_mm = self->kerf_mm;
  stock->kerf_error_mm = self->kerf_error_mm;
  if (!self->has_allowance)
    return;
  stock->allowance_mm = self->allowance_mm;
  stock->allowance_error_mm = self->allowance_error_mm;
  stock->fit_shift_mm = self->fit_shift_mm;
}
