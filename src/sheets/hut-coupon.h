/* src/sheets/hut-coupon.h: a test piece for kerf and fit.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One small plate of a stock. In its window lie bars that share their cuts: what is between them
 * and the window after all are pushed to one end is one kerf per cut. Along its upper edge runs a
 * comb: all teeth fit the one slot of a gauge, which is cut from the plate too, each with another
 * allowance, which is scored under it in hundredths of a millimetre. */
#pragma once
#include "design/hut-design.h"
#include "geom/hut-region.h"

/* What a tooth of the comb does in the slot of the gauge, from tight to loose. */
typedef enum
{
  HUT_FEEL_PRESS, /* goes in with a mallet, holds without glue */
  HUT_FEEL_SLIP,  /* goes in by hand, holds by friction */
  HUT_FEEL_GLUE,  /* slides in, room for a film of glue */
  HUT_FEEL_LOOSE, /* falls through */
  HUT_FEEL_COUNT
} HutFeel;

/* Sizes of a coupon; depend on the stock and the kind of cutter alone. */
typedef struct
{
  guint tooth_count, bar_count;
  double tightest_mm;     /* allowance of the first tooth */
  double step_mm;         /* from a tooth to the next one */
  double unit_mm;         /* width of a tooth, of the gap beside it, and of a border */
  double kerf_mm;         /* that its outlines are drawn for: the recipe's */
  double width_mm, depth_mm; /* of the finished plate, teeth included */
} HutCouponPlan;

/* @stock, @cutter: what it is for. Fewer teeth on a bed that does not take all. */
void hut_coupon_plan_init (HutCouponPlan *self, const HutStock *stock, const HutCutter *cutter);
/* Allowance that a tooth has in the gauge's slot when the kerf is the plan's, mm. */
double hut_coupon_tooth_mm (const HutCouponPlan *self, guint tooth);
/* What is scored under a tooth: its allowance in hundredths of a millimetre. */
int hut_coupon_tooth_label (const HutCouponPlan *self, guint tooth);
/* FALSE when no tooth has that label. */
gboolean hut_coupon_find_tooth (const HutCouponPlan *self, int label, guint *tooth);
/* How many kerfs the play of all bars is: a cut on either side of each bar. */
guint hut_coupon_gap_count (const HutCouponPlan *self);
/* Clearance from which a joint of that stock feels so, mm: the usual fits. FALSE: no figure. */
gboolean hut_coupon_feel_mm (const HutStock *stock,
                             HutCutterKind cutter,
                             HutFeel feel,
                             double *clearance_mm);

/* The tool's paths, mm; (0, 0) is the lower left corner of all of them. */
typedef struct
{
  HutCouponPlan plan;
  GPtrArray *labels;  /* GArray of HutPoint: lines to score */
  GPtrArray *parting; /* GArray of HutPoint: straight cuts between the bars, before the window */
  HutPath *window;    /* round the bars; clockwise */
  HutPath *gauge;
  HutPath *plate;     /* the last cut */
} HutCoupon;

/**
 * hut_coupon_new:
 * @stock: what it is cut from
 * @cutter: what cuts it
 * @error: HUT_GEOM_ERROR_VANISHED when the bed is too small for it
 *
 * Pure.
 *
 * Returns: (transfer full): NULL on error
 */
HutCoupon *hut_coupon_new (const HutStock *stock,
                           const HutCutter *cutter,
                           GError **error) G_GNUC_WARN_UNUSED_RESULT;
void hut_coupon_free (HutCoupon *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutCoupon, hut_coupon_free)
