/* src/physics/hut-orifice.c: air through an opening or a gap.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-orifice.h"

double
hut_orifice_flow_m3_s (double area_m2,
                       double discharge_ratio,
                       double pressure_pa,
                       double density_kg_m3)
{
  if (!(area_m2 >= 0) || !(discharge_ratio >= 0) || !(pressure_pa >= 0) || !(density_kg_m3 > 0))
    return NAN;
  return discharge_ratio * area_m2 * sqrt (2 * pressure_pa / density_kg_m3);
}

double
hut_orifice_pressure_pa (double area_m2,
                         double discharge_ratio,
                         double flow_m3_s,
                         double density_kg_m3)
{
  if (!(area_m2 >= 0) || !(discharge_ratio >= 0) || !(flow_m3_s >= 0) || !(density_kg_m3 > 0))
    return NAN;
  if (flow_m3_s == 0)
    return 0;

  const double jet_m_s = flow_m3_s / (discharge_ratio * area_m2);

  return 0.5 * density_kg_m3 * jet_m_s * jet_m_s;
}

double
hut_orifice_area_m2 (double discharge_ratio,
                     double flow_m3_s,
                     double pressure_pa,
                     double density_kg_m3)
{
  if (!(discharge_ratio > 0) || !(flow_m3_s >= 0) || !(pressure_pa > 0) || !(density_kg_m3 > 0))
    return NAN;
  return flow_m3_s / (discharge_ratio * sqrt (2 * pressure_pa / density_kg_m3));
}

double
hut_face_velocity_m_s (double flow_m3_s,
                       double area_m2)
{
  return area_m2 > 0 ? flow_m3_s / area_m2 : NAN;
}

double
hut_stack_pressure_pa (double height_m,
                       double outside_kg_m3,
                       double inside_kg_m3)
{
  return (outside_kg_m3 - inside_kg_m3) * HUT_GRAVITY_M_S2 * height_m;
}
