/* tests/sheets/test-coupon.c: a test piece for kerf and fit.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/hut-coupon.h"
#include "sheets/hut-sheet.h"
#include "hut-assert.h"
#include "hut-random-design.h"

#define RANDOM_DESIGNS 100

static HutStock *
new_stock (double kerf_mm)
{
  HutStock *self = hut_stock_new ("ply-6");
  const double thickness_mm = 6.0;

  self->kerf_mm = kerf_mm;
  g_array_set_size (self->readings_mm, 0);
  g_array_append_val (self->readings_mm, thickness_mm);
  return self;
}

static HutCutter
cutter (double bed_mm)
{
  return (HutCutter) { .kind = HUT_CUTTER_LASER, .bed_width_mm = bed_mm, .bed_depth_mm = bed_mm,
                       .margin_mm = 5.0, .part_gap_mm = 3.0 };
}

static int
compare_numbers (gconstpointer a,
                 gconstpointer b)
{
  const double x = *(const double *) a, y = *(const double *) b;

  return (x > y) - (x < y);
}

/* Where a path of lines crosses a level line, from left to right. */
static GArray *
crossings (const HutPath *path,
           double v)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (double));

  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment side = hut_path_get_segment (path, i);

      if ((side.start.v > v) != (side.end.v > v))
        g_array_append_val (found, side.start.u);
    }
  g_array_sort (found, compare_numbers);
  return found;
}

static void
each_tooth_has_its_allowance_in_the_slot (void **state)
{
  g_autoptr(HutStock) stock = new_stock (0.2);
  const HutCutter laser = cutter (600);
  g_autoptr(GError) error = NULL;
  g_autoptr(HutCoupon) coupon = hut_coupon_new (stock, &laser, &error);

  assert_ok (coupon != NULL, error);

  const HutRect plate = hut_path_bounds (coupon->plate), gauge = hut_path_bounds (coupon->gauge);
  g_autoptr(GArray) teeth = crossings (coupon->plate, plate.v1 - 1.0);
  g_autoptr(GArray) slot = crossings (coupon->gauge, gauge.v1 - 1.0);

  assert_int_equal (teeth->len, 2 * 11);
  assert_int_equal (slot->len, 4);

  const double slot_cut_mm = g_array_index (slot, double, 2) - g_array_index (slot, double, 1);

  for (guint i = 0; i < 11; i++)
    {
      const double tooth_cut_mm
          = g_array_index (teeth, double, 2 * i + 1) - g_array_index (teeth, double, 2 * i);
      /* From -0.20 in steps of 0.04, for plywood, whose usual fits are even about 0. */
      const double allowance_mm = -0.20 + 0.04 * i;

      assert_near_mm (hut_coupon_tooth_mm (&coupon->plan, i), allowance_mm, 1e-9);
      /* The cut takes half a kerf from either side of a tooth, and adds it to the slot. */
      assert_near_mm ((slot_cut_mm + 0.2) - (tooth_cut_mm - 0.2), allowance_mm, 1e-9);
      /* With a kerf of 0.26 the clearance is 2 x 0.06 more. */
      assert_near_mm ((slot_cut_mm + 0.26) - (tooth_cut_mm - 0.26), allowance_mm + 0.12, 1e-9);
    }
}

static void
gauge_passes_between_teeth_and_over_their_length (void **state)
{
  g_autoptr(HutStock) stock = new_stock (0.2);
  const HutCutter laser = cutter (600);
  g_autoptr(HutCoupon) coupon = hut_coupon_new (stock, &laser, NULL);
  const HutRect plate = hut_path_bounds (coupon->plate), gauge = hut_path_bounds (coupon->gauge);
  g_autoptr(GArray) teeth = crossings (coupon->plate, plate.v1 - 1.0);
  g_autoptr(GArray) slot = crossings (coupon->gauge, gauge.v1 - 1.0);
  const double wall_mm = g_array_index (slot, double, 1) - g_array_index (slot, double, 0) - 0.2;
  double gap_mm = INFINITY;

  for (guint i = 1; i + 1 < teeth->len; i += 2)
    gap_mm = MIN (gap_mm,
                  g_array_index (teeth, double, i + 1) - g_array_index (teeth, double, i) + 0.2);
  assert_true (wall_mm < gap_mm);
  assert_true (wall_mm > 4.0); /* that hands do not break off */

  /* Teeth are 9 long: the slot is open there, and closed under it. */
  g_autoptr(GArray) open = crossings (coupon->gauge, gauge.v1 - 9.0);
  g_autoptr(GArray) closed = crossings (coupon->gauge, gauge.v1 - 10.0);

  assert_int_equal (open->len, 4);
  assert_int_equal (closed->len, 2);
}

static void
bars_are_parted_by_one_straight_cut_each (void **state)
{
  g_autoptr(HutStock) stock = new_stock (0.2);
  const HutCutter laser = cutter (600);
  g_autoptr(HutCoupon) coupon = hut_coupon_new (stock, &laser, NULL);
  const HutRect window = hut_path_bounds (coupon->window);

  assert_int_equal (coupon->plan.bar_count, 10);
  assert_int_equal (coupon->parting->len, 9);
  /* Ten bars of 6 and a kerf each. */
  assert_near_mm (window.u1 - window.u0, 62.0, 1e-9);
  for (guint i = 0; i < 9; i++)
    {
      const GArray *line = g_ptr_array_index (coupon->parting, i);
      const HutPoint a = g_array_index (line, HutPoint, 0), b = g_array_index (line, HutPoint, 1);

      assert_int_equal (line->len, 2);
      assert_near_mm (a.u, window.u0 + 6.2 * (i + 1), 1e-9);
      assert_near_mm (b.u, a.u, 0);
      assert_near_mm (MIN (a.v, b.v), window.v0, 1e-9);
      assert_near_mm (MAX (a.v, b.v), window.v1, 1e-9);
    }
  /* A true kerf of 0.3: bars of 5.9, a window of 62.3: the play is 3.3, eleven kerfs. */
  assert_near_mm (62.0 + 0.3 - 10 * (6.2 - 0.3), 0.3 * hut_coupon_gap_count (&coupon->plan), 1e-9);
}

static HutRect
lines_bounds (const GPtrArray *lines)
{
  HutRect box = { INFINITY, INFINITY, -INFINITY, -INFINITY };

  for (guint i = 0; i < lines->len; i++)
    {
      const GArray *line = g_ptr_array_index (lines, i);

      for (guint k = 0; k < line->len; k++)
        {
          const HutPoint p = g_array_index (line, HutPoint, k);

          box = (HutRect) { MIN (box.u0, p.u), MIN (box.v0, p.v), MAX (box.u1, p.u),
                            MAX (box.v1, p.v) };
        }
    }
  return box;
}

/* FALSE when the label's point is in the hole or nearer to it than 0.4 mm. */
static gboolean
is_clear (HutPoint p,
          HutRect hole)
{
  return p.u < hole.u0 - 0.4 || p.u > hole.u1 + 0.4 || p.v < hole.v0 - 0.4 || p.v > hole.v1 + 0.4;
}

/* Everything in the plate with material between, nothing outside the usable bed. */
static void
assert_sound (const HutCoupon *coupon,
              const HutStock *stock,
              const HutCutter *bed)
{
  const double web_mm = 0.9 * coupon->plan.unit_mm;
  const HutRect plate = hut_path_bounds (coupon->plate), gauge = hut_path_bounds (coupon->gauge),
                window = hut_path_bounds (coupon->window), labels = lines_bounds (coupon->labels),
                room = hut_sheet_usable (bed, stock);
  const double body_mm = plate.v1 - 1.5 * coupon->plan.unit_mm;

  assert_near_mm (plate.u0, 0, 1e-9);
  assert_near_mm (plate.v0, 0, 1e-9);
  assert_true (plate.u1 <= room.u1 - room.u0 + 1e-9 && plate.v1 <= room.v1 - room.v0 + 1e-9);
  assert_true (window.u0 > web_mm && window.v0 > web_mm && gauge.v0 > web_mm);
  assert_true (gauge.u0 - window.u1 > web_mm && plate.u1 - gauge.u1 > web_mm);
  assert_true (MAX (window.v1, gauge.v1) < body_mm - web_mm);
  assert_true (labels.u0 > 0.5 && labels.u1 < plate.u1 - 0.5 && labels.v1 < body_mm);
  for (guint i = 0; i < coupon->labels->len; i++)
    {
      const GArray *line = g_ptr_array_index (coupon->labels, i);

      for (guint k = 0; k < line->len; k++)
        {
          assert_true (is_clear (g_array_index (line, HutPoint, k), window));
          assert_true (is_clear (g_array_index (line, HutPoint, k), gauge));
        }
    }
}

static void
coupon_of_6_mm_plywood_is_a_small_plate (void **state)
{
  g_autoptr(HutStock) stock = new_stock (0.2);
  const HutCutter laser = cutter (600);
  g_autoptr(HutCoupon) coupon = hut_coupon_new (stock, &laser, NULL);

  assert_sound (coupon, stock, &laser);
  /* 23 units of 6. */
  assert_near_mm (coupon->plan.width_mm, 138.0, 1e-9);
  assert_true (coupon->plan.depth_mm < 50.0);
}

static void
wide_tool_has_wider_teeth (void **state)
{
  g_autoptr(HutStock) stock = new_stock (3.2);
  HutCutter router = cutter (600);

  router.kind = HUT_CUTTER_ROUTER;

  g_autoptr(HutCoupon) coupon = hut_coupon_new (stock, &router, NULL);

  assert_non_null (coupon);
  assert_near_mm (coupon->plan.unit_mm, 6.4, 1e-9);
  assert_sound (coupon, stock, &router);
}

static void
small_bed_gets_fewer_teeth_and_a_tiny_one_an_error (void **state)
{
  g_autoptr(HutStock) stock = new_stock (0.2);
  const HutCutter small = cutter (130), tiny = cutter (60);
  g_autoptr(GError) error = NULL;
  g_autoptr(HutCoupon) coupon = hut_coupon_new (stock, &small, &error);

  assert_ok (coupon != NULL, error);
  /* 120 usable: 19 units and a kerf, 114.2. */
  assert_int_equal (coupon->plan.tooth_count, 9);
  assert_near_mm (coupon->plan.tightest_mm, -0.16, 1e-9);
  assert_sound (coupon, stock, &small);
  assert_null (hut_coupon_new (stock, &tiny, &error));
  assert_true (g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_VANISHED));
}

static void
comb_covers_the_usual_fits_of_its_material (void **state)
{
  g_autoptr(HutStock) stock = new_stock (0.2);
  const HutCutter laser = cutter (600);
  HutCouponPlan plan;
  double clearance_mm;

  stock->material = HUT_MATERIAL_ACRYLIC; /* slip 0 .. 0.05, glue to 0.30, never pressed */
  hut_coupon_plan_init (&plan, stock, &laser);
  assert_true (hut_coupon_tooth_mm (&plan, 0) < 0.0);
  assert_true (hut_coupon_tooth_mm (&plan, plan.tooth_count - 1) > 0.30);
  assert_false (hut_coupon_feel_mm (stock, HUT_CUTTER_LASER, HUT_FEEL_PRESS, &clearance_mm));
  assert_true (hut_coupon_feel_mm (stock, HUT_CUTTER_LASER, HUT_FEEL_LOOSE, &clearance_mm));
  assert_near_mm (clearance_mm, 0.30, 0);
}

static void
coupons_of_random_stocks_are_sound (void **state)
{
  const guint64 first = hut_random_first_seed (), count = hut_random_seed_count (RANDOM_DESIGNS);
  guint made = 0;

  for (guint64 seed = first; seed < first + count; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);

      for (guint i = 0; i < design->stocks->len; i++)
        {
          const HutStock *stock = g_ptr_array_index (design->stocks, i);
          g_autoptr(GError) error = NULL;
          g_autoptr(HutCoupon) coupon = hut_coupon_new (stock, &design->cutter, &error);

          if (coupon == NULL)
            {
              assert_true (g_error_matches (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_VANISHED));
              continue;
            }
          assert_sound (coupon, stock, &design->cutter);
          made++;
        }
    }
  assert_true (made > count / 2);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_tooth_has_its_allowance_in_the_slot),
    cmocka_unit_test (gauge_passes_between_teeth_and_over_their_length),
    cmocka_unit_test (bars_are_parted_by_one_straight_cut_each),
    cmocka_unit_test (coupon_of_6_mm_plywood_is_a_small_plate),
    cmocka_unit_test (wide_tool_has_wider_teeth),
    cmocka_unit_test (small_bed_gets_fewer_teeth_and_a_tiny_one_an_error),
    cmocka_unit_test (comb_covers_the_usual_fits_of_its_material),
    cmocka_unit_test (coupons_of_random_stocks_are_sound),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
