/* src/sheets/hut-coupon.c: a test piece for kerf and fit.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 *      __    __    __         __       teeth: one unit wide less their allowance
 *   __|  |__|  |__|  |__ ... |  |__
 *  |   -20   -16   -12         20   |  their labels
 *  |  ____________________   ____   |
 *  | | | | | | | | | | | |  | __ |  |  bars in their window; gauge, its slot one unit wide
 *  | |_|_|_|_|_|_|_|_|_|_|  |_||_|  |
 *  |________________________________|
 *
 * Invariants: n bars have n + 1 cuts that are all straight, parallel and as long as the window is
 * high, so their play is n + 1 kerfs. A tooth of allowance a and the slot are drawn as a joint of
 * allowance a is: with the recipe's kerf k and the true one K their clearance is a + 2 (K - k). */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-coupon.h"
#include "assembly/hut-part.h"
#include "checks/hut-joint-fit.h"
#include "format/hut-number.h"
#include "geom/hut-offset.h"
#include "sheets/hut-sheet.h"
#include "sheets/hut-stroke-font.h"

/* Own choice, all of them: a plate as small as hands and calipers still like. */
#define UNIT_MIN_MM 6.0
#define UNIT_MAX_MM 12.0
#define UNIT_KERF_RATIO 2.0 /* of a wide tool: half of a gap stays */
#define TOOTH_COUNT 11      /* steps to both sides of the middle of all fits; odd */
#define TOOTH_COUNT_MIN 5
#define BAR_COUNT 10
#define TOOTH_HEIGHT_RATIO 1.5 /* to a unit, as the rest */
#define BAR_HEIGHT_RATIO 3.5
#define WALL_RATIO 0.8 /* of the gauge beside its slot: narrower than the gap that takes it */
#define LABEL_RATIO 0.5
/* Half of the width of a fit over a step is no whole number, so that the limits of the fits do not
 * all fall on teeth alike. */
#define STEP_MM 0.04
/* Middle of the comb where no usual fits are known. */
#define MIDDLE_MM 0.04
#define LABEL_HUNDREDTHS 100.0
#define KERF_DECIMALS 3

double
hut_coupon_tooth_mm (const HutCouponPlan *self,
                     guint tooth)
{
  g_return_val_if_fail (self != NULL, 0.0);

  return hut_snap_mm (self->tightest_mm + self->step_mm * tooth);
}

int
hut_coupon_tooth_label (const HutCouponPlan *self,
                        guint tooth)
{
  return (int) lround (hut_coupon_tooth_mm (self, tooth) * LABEL_HUNDREDTHS);
}

gboolean
hut_coupon_find_tooth (const HutCouponPlan *self,
                       int label,
                       guint *tooth)
{
  g_return_val_if_fail (self != NULL && tooth != NULL, FALSE);

  for (guint i = 0; i < self->tooth_count; i++)
    if (hut_coupon_tooth_label (self, i) == label)
      {
        *tooth = i;
        return TRUE;
      }
  return FALSE;
}

guint
hut_coupon_gap_count (const HutCouponPlan *self)
{
  g_return_val_if_fail (self != NULL, 0);

  return self->bar_count + 1;
}

gboolean
hut_coupon_feel_mm (const HutStock *stock,
                    HutCutterKind cutter,
                    HutFeel feel,
                    double *clearance_mm)
{
  g_return_val_if_fail (stock != NULL && clearance_mm != NULL, FALSE);

  const HutFitKind kind = (HutFitKind) MIN (feel, HUT_FEEL_GLUE);
  const HutFitRange range = hut_fit_range (stock->material, cutter, kind);

  if (!range.known || range.never)
    return FALSE;
  *clearance_mm = feel == HUT_FEEL_LOOSE ? range.high_mm : range.low_mm;
  return TRUE;
}

static double
middle_mm (const HutStock *stock,
           HutCutterKind cutter)
{
  double tight_mm, loose_mm;

  if (!hut_coupon_feel_mm (stock, cutter, HUT_FEEL_LOOSE, &loose_mm)
      || (!hut_coupon_feel_mm (stock, cutter, HUT_FEEL_PRESS, &tight_mm)
          && !hut_coupon_feel_mm (stock, cutter, HUT_FEEL_SLIP, &tight_mm)))
    return MIDDLE_MM;
  return STEP_MM * round ((tight_mm + loose_mm) / 2.0 / STEP_MM);
}

/* ---- sizes ----------------------------------------------------------------------------------- */

static double
bars_width_mm (const HutCouponPlan *self)
{
  return self->bar_count * (self->unit_mm + self->kerf_mm);
}

static double
gauge_width_mm (const HutCouponPlan *self)
{
  return self->unit_mm * (1.0 + 2.0 * WALL_RATIO);
}

static double
plate_width_mm (const HutCouponPlan *self)
{
  const double comb_mm = (2.0 * self->tooth_count + 1.0) * self->unit_mm;
  const double inside_mm
      = bars_width_mm (self) + gauge_width_mm (self) + 3.0 * (self->unit_mm + self->kerf_mm);

  return MAX (comb_mm, inside_mm);
}

static double
body_depth_mm (const HutCouponPlan *self)
{
  return self->unit_mm * (BAR_HEIGHT_RATIO + 2.0 + 2.0 * LABEL_RATIO) + 2.0 * self->kerf_mm;
}

void
hut_coupon_plan_init (HutCouponPlan *self,
                      const HutStock *stock,
                      const HutCutter *cutter)
{
  g_return_if_fail (self != NULL && stock != NULL && cutter != NULL);

  const double unit_mm = CLAMP (hut_stock_mean_mm (stock), UNIT_MIN_MM, UNIT_MAX_MM);
  const HutRect room = hut_sheet_usable (cutter, stock);

  *self = (HutCouponPlan) {
    .tooth_count = TOOTH_COUNT,
    .bar_count = BAR_COUNT,
    .step_mm = STEP_MM,
    .unit_mm = hut_snap_mm (MAX (unit_mm, UNIT_KERF_RATIO * stock->kerf_mm)),
    .kerf_mm = stock->kerf_mm,
  };
  while (plate_width_mm (self) + self->kerf_mm > room.u1 - room.u0
         && self->tooth_count > TOOTH_COUNT_MIN)
    {
      self->tooth_count -= 2;
      self->bar_count--;
    }
  self->tightest_mm
      = middle_mm (stock, cutter->kind) - self->step_mm * (self->tooth_count / 2);
  self->width_mm = hut_snap_mm (plate_width_mm (self));
  self->depth_mm = hut_snap_mm (body_depth_mm (self) + TOOTH_HEIGHT_RATIO * self->unit_mm);
}

/* ---- outlines -------------------------------------------------------------------------------- */

static void
append (HutPath *path,
        double u,
        double v)
{
  hut_path_append (path, (HutPoint) { hut_snap_mm (u), hut_snap_mm (v) }, 0.0, HUT_EDGE_PLAIN);
}

static double
tooth_middle_mm (const HutCouponPlan *plan,
                 guint tooth)
{
  return plan->unit_mm * (2.0 * tooth + 1.5);
}

/* The finished plate: teeth upwards. (transfer full) */
static HutPath *
new_plate (const HutCouponPlan *plan)
{
  HutPath *path = hut_path_new ();
  const double body_mm = body_depth_mm (plan);

  append (path, 0, 0);
  append (path, plan->width_mm, 0);
  append (path, plan->width_mm, body_mm);
  for (guint i = plan->tooth_count; i > 0; i--)
    {
      const double half_mm = (plan->unit_mm - hut_coupon_tooth_mm (plan, i - 1)) / 2.0;
      const double middle = tooth_middle_mm (plan, i - 1);

      append (path, middle + half_mm, body_mm);
      append (path, middle + half_mm, plan->depth_mm);
      append (path, middle - half_mm, plan->depth_mm);
      append (path, middle - half_mm, body_mm);
    }
  append (path, 0, body_mm);
  return path;
}

/* The finished gauge. Its slot is deeper than a tooth is long, so that the round corners that a
 * tool leaves in it meet nothing. (transfer full) */
static HutPath *
new_gauge (const HutCouponPlan *plan,
           HutPoint at)
{
  HutPath *path = hut_path_new ();
  const double width_mm = gauge_width_mm (plan), height_mm = BAR_HEIGHT_RATIO * plan->unit_mm;
  const double wall_mm = (width_mm - plan->unit_mm) / 2.0;
  const double root_mm = height_mm - TOOTH_HEIGHT_RATIO * plan->unit_mm - plan->kerf_mm;

  append (path, at.u, at.v);
  append (path, at.u + width_mm, at.v);
  append (path, at.u + width_mm, at.v + height_mm);
  append (path, at.u + wall_mm + plan->unit_mm, at.v + height_mm);
  append (path, at.u + wall_mm + plan->unit_mm, at.v + root_mm);
  append (path, at.u + wall_mm, at.v + root_mm);
  append (path, at.u + wall_mm, at.v + height_mm);
  append (path, at.u, at.v + height_mm);
  return path;
}

/* The way of the tool round a finished piece. @outline: (transfer full). (transfer full) */
static HutPath *
dup_cut (HutPath *outline,
         double kerf_mm,
         GError **error)
{
  const HutOffset offset = hut_offset_for_fit (kerf_mm, 0.0);
  g_autoptr(HutRegion) region = hut_region_new (outline);
  g_autoptr(HutRegion) cut = hut_region_dup_offset (region, &offset, error);

  return cut != NULL ? hut_path_copy (cut->outer) : NULL;
}

static void
add_parting (HutCoupon *self,
             const HutRect *window)
{
  const double step_mm = (window->u1 - window->u0) / self->plan.bar_count;

  for (guint i = 1; i < self->plan.bar_count; i++)
    {
      GArray *line = g_array_new (FALSE, FALSE, sizeof (HutPoint));
      const double u = window->u0 + step_mm * i;
      /* Back and forth, which saves way. */
      const HutPoint ends[2] = { { u, i % 2 == 1 ? window->v0 : window->v1 },
                                 { u, i % 2 == 1 ? window->v1 : window->v0 } };

      g_array_append_vals (line, ends, G_N_ELEMENTS (ends));
      g_ptr_array_add (self->parting, line);
    }
}

/* ---- labels ---------------------------------------------------------------------------------- */

/* Centred at @middle, unless it would be wider than @room_mm. */
static void
add_label (HutCoupon *self,
           const char *text,
           HutPoint middle,
           double height_mm,
           double room_mm)
{
  const double width_mm = hut_stroke_text_width_mm (text, height_mm);

  if (width_mm > room_mm)
    return;

  GPtrArray *strokes = hut_stroke_text_new (text, height_mm);

  for (guint i = 0; i < strokes->len; i++)
    {
      GArray *stroke = g_ptr_array_index (strokes, i);

      for (guint k = 0; k < stroke->len; k++)
        {
          HutPoint *p = &g_array_index (stroke, HutPoint, k);

          p->u = hut_snap_mm (p->u + middle.u - width_mm / 2.0);
          p->v = hut_snap_mm (p->v + middle.v - height_mm / 2.0);
        }
    }
  g_ptr_array_extend_and_steal (self->labels, strokes);
}

static void
add_labels (HutCoupon *self,
            const HutStock *stock,
            HutRect free)
{
  const HutCouponPlan *plan = &self->plan;
  const double height_mm = LABEL_RATIO * plan->unit_mm;
  const double v = body_depth_mm (plan) - plan->kerf_mm / 2.0 - height_mm;
  const double room_mm = free.u1 - free.u0, line_mm = (free.v1 - free.v0) / 4.0;
  const double middle = (free.u0 + free.u1) / 2.0;
  g_autofree char *id = g_strndup (stock->id, (gsize) (MAX (room_mm, 0.0) / height_mm));
  char number[HUT_NUMBER_SIZE];
  g_autofree char *kerf
      = g_strconcat ("KERF ", hut_number_fixed (number, plan->kerf_mm, KERF_DECIMALS), NULL);

  for (guint i = 0; i < plan->tooth_count; i++)
    {
      g_autofree char *text = g_strdup_printf ("%d", hut_coupon_tooth_label (plan, i));

      add_label (self, text, (HutPoint) { tooth_middle_mm (plan, i), v }, height_mm,
                 1.8 * plan->unit_mm);
    }
  add_label (self, id, (HutPoint) { middle, free.v0 + 3.0 * line_mm }, height_mm, room_mm);
  add_label (self, kerf, (HutPoint) { middle, free.v0 + 2.0 * line_mm }, height_mm, room_mm);
  add_label (self, "1/100 MM", (HutPoint) { middle, free.v0 + line_mm }, height_mm, room_mm);
}

static void
shift_lines (GPtrArray *lines,
             HutPoint by)
{
  for (guint i = 0; i < lines->len; i++)
    {
      GArray *line = g_ptr_array_index (lines, i);

      for (guint k = 0; k < line->len; k++)
        {
          g_array_index (line, HutPoint, k).u += by.u;
          g_array_index (line, HutPoint, k).v += by.v;
        }
    }
}

static void
shift_path (HutPath **path,
            HutPoint by)
{
  const HutPlacement placement = { .shift = by };
  HutPath *shifted = hut_path_dup_placed (*path, &placement);

  hut_path_free (*path);
  *path = shifted;
}

/* ---- the whole ------------------------------------------------------------------------------- */

static gboolean
draw (HutCoupon *self,
      const HutStock *stock,
      GError **error)
{
  const HutCouponPlan *plan = &self->plan;
  const double border_mm = plan->unit_mm + plan->kerf_mm / 2.0;
  const HutRect window = { border_mm, border_mm, hut_snap_mm (border_mm + bars_width_mm (plan)),
                           hut_snap_mm (border_mm + BAR_HEIGHT_RATIO * plan->unit_mm) };
  const double after_mm = window.u1 + plan->unit_mm + plan->kerf_mm;
  const HutPoint gauge_at = { after_mm, border_mm + plan->kerf_mm / 2.0 };
  const HutRect free = { after_mm + gauge_width_mm (plan) + border_mm, window.v0,
                         plan->width_mm - plan->unit_mm / 2.0, window.v1 };

  self->window = hut_path_new_rect (window, 0.0);
  hut_path_reverse (self->window);
  add_parting (self, &window);
  add_labels (self, stock, free);
  self->gauge = dup_cut (new_gauge (plan, gauge_at), plan->kerf_mm, error);
  self->plate = self->gauge != NULL ? dup_cut (new_plate (plan), plan->kerf_mm, error) : NULL;
  if (self->plate == NULL)
    return FALSE;

  const HutRect bounds = hut_path_bounds (self->plate);
  const HutPoint by = { -bounds.u0, -bounds.v0 };

  shift_path (&self->window, by);
  shift_path (&self->gauge, by);
  shift_path (&self->plate, by);
  shift_lines (self->parting, by);
  shift_lines (self->labels, by);
  return TRUE;
}

HutCoupon *
hut_coupon_new (const HutStock *stock,
                const HutCutter *cutter,
                GError **error)
{
  g_return_val_if_fail (stock != NULL && cutter != NULL, NULL);

  g_autoptr(HutCoupon) self = g_new0 (HutCoupon, 1);
  const HutRect room = hut_sheet_usable (cutter, stock);

  hut_coupon_plan_init (&self->plan, stock, cutter);
  self->labels = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  self->parting = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  if (self->plan.width_mm + self->plan.kerf_mm > room.u1 - room.u0
      || self->plan.depth_mm + self->plan.kerf_mm > room.v1 - room.v0)
    {
      g_set_error (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_VANISHED,
                   "the coupon of %s, %d x %d mm, does not fit the usable bed or sheet", stock->id,
                   (int) ceil (self->plan.width_mm), (int) ceil (self->plan.depth_mm));
      return NULL;
    }
  return draw (self, stock, error) ? g_steal_pointer (&self) : NULL;
}

void
hut_coupon_free (HutCoupon *self)
{
  if (self == NULL)
    return;
  g_clear_pointer (&self->labels, g_ptr_array_unref);
  g_clear_pointer (&self->parting, g_ptr_array_unref);
  g_clear_pointer (&self->window, hut_path_free);
  g_clear_pointer (&self->gauge, hut_path_free);
  g_clear_pointer (&self->plate, hut_path_free);
  g_free (self);
}
