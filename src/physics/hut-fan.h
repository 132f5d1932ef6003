/* src/physics/hut-fan.h: what pressure a fan makes at a flow.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "physics/hut-physics.h"

/* Density (kg/m3) for which makers state curves: common practice, 20 C at sea level. */
#define HUT_FAN_RATED_KG_M3 1.2

typedef struct
{
  double flow_m3_s, pressure_pa;
} HutPressurePoint;

typedef enum
{
  HUT_FAN_STRAIGHT, /* straight lines between the points */
  HUT_FAN_SMOOTH,   /* a smooth curve that rises and falls only where the points do */
} HutFanShape;

/* A fan's curve; never changes once it is made. */
typedef struct _HutFanCurve HutFanCurve;

/**
 * hut_fan_curve_new:
 * @points: (array length=n): flows rising strictly, from 0 or more; pressures >= 0; at least 2. The
 *   last one is best the free flow, at pressure 0
 * @rated_kg_m3: density of the air that they hold for, > 0
 * @error: HUT_PHYSICS_ERROR_CURVE when they are not so
 *
 * Source of the smooth shape: M. Steffen, A simple method for monotonic interpolation in one
 * dimension, Astron. Astrophys. 239 (1990); two points give a straight line. Left of the first
 * point the curve is level.
 *
 * Returns: (transfer full)
 */
HutFanCurve *hut_fan_curve_new (const HutPressurePoint *points,
                                guint n,
                                HutFanShape shape,
                                double rated_kg_m3,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;
void hut_fan_curve_free (HutFanCurve *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutFanCurve, hut_fan_curve_free)

/* The flow at the last point, m3/s. */
double hut_fan_curve_free_m3_s (const HutFanCurve *self);
/* The highest pressure of all points, Pa, in rated air. */
double hut_fan_curve_peak_pa (const HutFanCurve *self);
/* TRUE when the pressure never rises with the flow: one flow for each pressure. */
gboolean hut_fan_curve_falls (const HutFanCurve *self);
/* Pressure (Pa) at a flow of 0 .. free flow (m3/s), in air of that density; NAN beyond.
 * Source: fan laws, pressure in proportion to density at the same speed and flow. */
double hut_fan_curve_pressure_pa (const HutFanCurve *self, double flow_m3_s, double density_kg_m3);
/* The largest flow (m3/s) at which it still makes that pressure (Pa); 0 when it never does. */
double hut_fan_curve_flow_m3_s (const HutFanCurve *self, double pressure_pa, double density_kg_m3);

/**
 * hut_fans_pressure_pa:
 * @fans: (array length=n): side by side, blowing the same way; the same curve may stand there twice
 * @flow_m3_s: of all together, 0 .. the sum of their free flows
 *
 * Side by side they share the pressure and add their flows. Fans of one curve share the flow
 * evenly. Of different fans the branch of largest flow counts, and one that is too weak for the
 * pressure gives nothing: it needs a flap, or air comes back through it.
 *
 * Returns: Pa; NAN beyond the range or without fans
 */
double hut_fans_pressure_pa (const HutFanCurve *const *fans,
                             guint n,
                             double flow_m3_s,
                             double density_kg_m3);
/* Sum of their free flows, m3/s. */
double hut_fans_free_m3_s (const HutFanCurve *const *fans, guint n);

/* Power that the air takes up, W: Q dp. A fan's motor takes several times that. */
double hut_air_power_w (double flow_m3_s, double pressure_pa);
