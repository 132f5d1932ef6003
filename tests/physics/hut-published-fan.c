/* tests/physics/hut-published-fan.c: published values: fans, units.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "physics/hut-air-system.h"
#include "physics/hut-published.h"
#include "physics/hut-unit.h"

#define WORKED "worked out by another program"
#define TUTORIAL "tutorial on operating points of fans"

/* An intake that takes K Q2: K = rho / (2 (Cd A)2). */
static HutAirSystem
square_system (double loss)
{
  const double density_kg_m3 = 1.2;

  return (HutAirSystem) { .air = { density_kg_m3, 1.8e-5 },
                         .intake_m2 = sqrt (density_kg_m3 / (2 * loss)) };
}

static HutOperatingPoint
meet (const HutPressurePoint *points,
      guint n,
      HutFanShape shape,
      const HutAirSystem *system)
{
  g_autoptr(HutFanCurve) curve
      = hut_fan_curve_new (points, n, shape, system->air.density_kg_m3, NULL);
  const HutFanCurve *fans[] = { curve };
  HutOperatingPoint point = { NAN, NAN };

  hut_operating_point_find (fans, 1, system, &point);
  return point;
}

static void
straight_fans (HutPublished *self)
{
  static const double m3_h = HUT_M3_H_M3_S;
  const double water_pa = HUT_MM_WATER_PA;
  const HutPressurePoint large[] = { { 10, 800 * water_pa },
                                { 15, 700 * water_pa },
                                { 20, 550 * water_pa },
                                { 25, 380 * water_pa },
                                { 30, 200 * water_pa } };
  const HutPressurePoint small[] = { { 0, 100 }, { 100 * m3_h, 60 }, { 200 * m3_h, 0 } };
  const HutAirSystem large_system = square_system (water_pa);
  const HutAirSystem small_system = square_system (0.004 / (m3_h * m3_h));
  HutOperatingPoint point = meet (large, G_N_ELEMENTS (large), HUT_FAN_STRAIGHT, &large_system);

  hut_published_row (self, "FAN-01", point.flow_m3_s, 21.974, REL (1e-3), TUTORIAL);
  hut_published_row (self, "FAN-02", point.pressure_pa / water_pa, 482.87, REL (1e-3), TUTORIAL);
  hut_published_row (self, "FAN-03", hut_parabola_meets_m3_s (120, 0.05, 4e4), 0.036927, REL (1e-4),
                     WORKED);
  point = meet (small, G_N_ELEMENTS (small), HUT_FAN_STRAIGHT, &small_system);
  hut_published_row (self, "FAN-04", point.flow_m3_s / m3_h, 113.746, REL (1e-4), WORKED);
}

static void
whole_system (HutPublished *self)
{
  static const double m3_h = HUT_M3_H_M3_S;
  const HutPressurePoint points[] = {
    { 0, 180 }, { 60 * m3_h, 160 }, { 120 * m3_h, 110 }, { 180 * m3_h, 40 }, { 200 * m3_h, 0 }
  };
  const HutDuctRun hose = { .diameter_m = 0.1,
                            .length_m = 3,
                            .roughness_m = HUT_ROUGHNESS_HOSE_EXTENDED_M,
                            .loss_ratio = 0.5 + 2 * 0.9 + 1.0 };
  const HutAirSystem system
      = { .air = { 1.2041, 1.8134e-5 }, .intake_m2 = 0.01 * 0.6, .runs = &hose, .n_runs = 1 };
  const HutOperatingPoint point = meet (points, G_N_ELEMENTS (points), HUT_FAN_STRAIGHT, &system);

  hut_published_row (self, "FAN-05", point.flow_m3_s / m3_h, 138.19, REL (1e-3), WORKED);
  hut_published_row (self, "FAN-06", point.pressure_pa, 88.778, REL (1e-3), WORKED);
  hut_published_row (self, "FAN-07", hut_air_power_w (100 * m3_h, 100), 2.7778, REL (1e-4),
                     "P = Q dp");
}

void
hut_published_fan (HutPublished *self)
{
  straight_fans (self);
  whole_system (self);
  hut_published_row (self, "UNI-01", HUT_CFM_M3_S / HUT_M3_H_M3_S, 1.699010796, EXACT,
                     "definitions of foot and inch");
  hut_published_row (self, "UNI-02", HUT_INCH_WATER_PA, 249.08891, REL (1e-7),
                     "conventional column of water (from memory)");
  hut_published_row (self, "UNI-03", HUT_MM_WATER_PA, 9.80665, EXACT,
                     "conventional column of water (from memory)");
  hut_published_row (self, "UNI-04",
                     hut_velocity_pressure_pa (4005 * HUT_FPM_M_S, 1.2014) / HUT_INCH_WATER_PA,
                     0.9982, REL (1e-3), "4005 rule of ventilation (from memory)");
}
