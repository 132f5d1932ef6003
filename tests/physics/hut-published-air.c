/* tests/physics/hut-published-air.c: published values: purge, friction, fittings, hoods, air.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "physics/hut-fitting.h"
#include "physics/hut-friction.h"
#include "physics/hut-hood.h"
#include "physics/hut-orifice.h"
#include "physics/hut-published.h"
#include "physics/hut-purge.h"
#include "physics/hut-unit.h"

#define MMWR "CDC, MMWR 1994;43(RR-13), table S3-1"
#define FLUIDS "test suite of an open fluid mechanics library"
#define CENGEL "Cengel, Cimbala, Fluid Mechanics, 2004, ex. 8-4"
#define ACGIH "ACGIH Industrial Ventilation, 24th ed., fig. 3-16"
#define STANDARD "US Standard Atmosphere 1976"
#define WORKED "worked out by another program"

static const double m3_h = HUT_M3_H_M3_S;

static void
purge (HutPublished *self)
{
  static const struct
  {
    const char *id;
    double changes, remaining, minutes;
  } rows[] = {
    { "DIL-01", 1, 0.1, 138 },   { "DIL-02", 2, 0.01, 138 }, { "DIL-03", 2, 0.001, 207 },
    { "DIL-04", 6, 0.01, 46 },   { "DIL-05", 6, 0.001, 69 }, { "DIL-06", 12, 0.01, 23 },
    { "DIL-07", 12, 0.001, 35 }, { "DIL-08", 15, 0.01, 18 }, { "DIL-09", 20, 0.001, 21 },
    { "DIL-10", 50, 0.01, 6 },
  };
  const double volume_m3 = 0.6 * 0.6 * 0.4, flow_m3_s = 100 * m3_h;

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    hut_published_row (self, rows[i].id,
                       hut_purge_time_s (rows[i].changes * m3_h, 1, rows[i].remaining, 1) / 60,
                       rows[i].minutes, WITHIN (0.5), MMWR);
  hut_published_row (self, "DIL-11", hut_air_changes_count (flow_m3_s, volume_m3), 694.444,
                     REL (1e-5), WORKED);
  hut_published_row (self, "DIL-12", hut_purge_time_s (flow_m3_s, volume_m3, 0.01, 1), 23.873,
                     REL (1e-4), WORKED);
  hut_published_row (self, "DIL-13", hut_purge_time_s (flow_m3_s, volume_m3, 0.001, 1), 35.81,
                     REL (1e-4), WORKED);
  hut_published_row (self, "DIL-14", hut_purge_time_s (flow_m3_s, volume_m3, 0.01, 3), 71.62,
                     REL (1e-4), WORKED);
  hut_published_row (self, "DIL-15", hut_buildup_kg_m3 (1e-6, flow_m3_s, volume_m3, 1, 5.184),
                     2.2756e-5, REL (1e-4), WORKED);
}

/* The diameter at which 150 m lose 20 m of air: halved until nothing changes. */
static double
cengel_diameter_m (const HutAir *air)
{
  double low_m = 0.1, high_m = 1;

  for (int i = 0; i < 60; i++)
    {
      const double middle_m = 0.5 * (low_m + high_m);
      const double head_m
          = hut_duct_friction_pa (0.35, middle_m, 150, 0, air) / (air->density_kg_m3 * 9.81);

      *(head_m > 20 ? &low_m : &high_m) = middle_m;
    }
  return low_m;
}

static void
friction (HutPublished *self)
{
  const HutAir warm = { 1.145, 1.655e-5 * 1.145 }, liquid = { 1000, 1e-5 };
  const HutAir room = { 1.2041, 1.825e-5 };
  const double diameter_m = cengel_diameter_m (&warm);

  hut_published_row (self, "FRI-01", hut_friction_colebrook_ratio (1e5, 1e-4), 0.018513866,
                     REL (1e-6), FLUIDS);
  hut_published_row (self, "FRI-02", hut_friction_colebrook_ratio (1e5, 0), 0.017989773, REL (1e-6),
                     FLUIDS);
  hut_published_row (self, "FRI-03", hut_friction_swamee_jain_ratio (1e5, 1e-4), 0.0184524,
                     REL (1e-5), FLUIDS);
  hut_published_row (self, "FRI-04", hut_friction_haaland_ratio (1e5, 1e-4), 0.018265053,
                     REL (1e-6), FLUIDS);
  hut_published_row (self, "FRI-05", hut_friction_ratio (128, 0.03), 0.5, EXACT, FLUIDS);
  hut_published_row (self, "FRI-06", hut_friction_blasius_ratio (1e4), 0.03164, REL (1e-6), FLUIDS);
  hut_published_row (self, "FRI-07", hut_friction_colebrook_ratio (1e4, 0.01), 0.043126585,
                     REL (1e-6), WORKED);
  hut_published_row (self, "FRI-08", hut_friction_colebrook_ratio (5e4, 0.002), 0.026505592,
                     REL (1e-6), WORKED);
  hut_published_row (self, "FRI-09", hut_friction_colebrook_ratio (1e6, 0.001), 0.019943466,
                     REL (1e-6), WORKED);
  hut_published_row (self, "FRI-10", hut_friction_haaland_ratio (5e4, 0.002), 0.0262832, REL (1e-5),
                     WORKED);
  hut_published_row (self, "FRI-11", hut_duct_friction_pa (10 / 1000.0, 0.1, 1, 0, &liquid),
                     63.4345, REL (1e-5), FLUIDS);
  hut_published_row (self, "FRI-12", diameter_m, 0.267, WITHIN (0.0005), CENGEL);
  hut_published_row (self, "FRI-13",
                     hut_friction_ratio (hut_duct_reynolds_ratio (0.35, diameter_m, &warm), 0),
                     0.018, WITHIN (0.0001), CENGEL);
  hut_published_row (self, "FRI-14", hut_duct_friction_pa (100 * m3_h, 0.1, 1, 0.0015e-3, &room),
                     1.8802, REL (2e-4), WORKED);
  hut_published_row (self, "FRI-15",
                     hut_duct_friction_pa (100 * m3_h, 0.1, 1, HUT_ROUGHNESS_GALVANISED_M, &room),
                     2.1197, REL (2e-4), WORKED);
  hut_published_row (
      self, "FRI-16",
      hut_duct_friction_pa (100 * m3_h, 0.1, 1, HUT_ROUGHNESS_HOSE_EXTENDED_M, &room), 2.9623,
      REL (2e-4), WORKED);
}

static void
fittings (HutPublished *self)
{
  hut_published_row (self, "KLO-01", hut_enlargement_loss_ratio (0.5), 0.5625, EXACT, FLUIDS);
  hut_published_row (self, "KLO-02", hut_fitting_loss_ratio (HUT_FITTING_ENTRY_FLUSH), 0.5, EXACT,
                     "Idelchik, diagram 3-1");
  hut_published_row (self, "KLO-02", hut_fitting_loss_ratio (HUT_FITTING_ENTRY_FLANGED), 0.49,
                     EXACT, ACGIH);
  hut_published_row (self, "KLO-02", hut_fitting_loss_ratio (HUT_FITTING_ENTRY_PLAIN), 0.93, EXACT,
                     ACGIH);
  hut_published_row (self, "KLO-02", hut_fitting_loss_ratio (HUT_FITTING_ENTRY_BELL), 0.04, EXACT,
                     ACGIH);
  hut_published_row (self, "KLO-03", hut_fitting_loss_ratio (HUT_FITTING_EXIT), 1.0, EXACT, FLUIDS);
  hut_published_row (self, "KLO-03", hut_fitting_loss_ratio (HUT_FITTING_ELBOW), 0.9, EXACT,
                     "documentation of a pipe flow program");
  hut_published_row (self, "KLO-03", hut_fitting_loss_ratio (HUT_FITTING_MITRE), 1.20,
                     WITHIN (0.005), "Rennels, Hudson, Pipe Flow");
  hut_published_row (self, "KLO-04", hut_thin_guard_loss_ratio (0.45), 5.7, REL (1e-3),
                     "Idelchik (from memory)");
  hut_published_row (self, "KLO-05", hut_wire_guard_loss_ratio (0.60), 0.9644, REL (1e-3),
                     "Idelchik (from memory)");
  hut_published_row (self, "KLO-06", hut_thick_grille_loss_ratio (0.45), 2.852, REL (1e-3),
                     "entry and exit loss (from memory)");
}

static void
hoods (HutPublished *self)
{
  const double duct_m2 = 0.25 * G_PI * 36 * HUT_INCH_M * HUT_INCH_M;

  hut_published_row (self, "HOD-01",
                     hut_hood_entry_ratio (hut_fitting_loss_ratio (HUT_FITTING_ENTRY_PLAIN)),
                     0.7198, REL (1e-4), ACGIH);
  hut_published_row (self, "HOD-02",
                     hut_hood_entry_ratio (hut_fitting_loss_ratio (HUT_FITTING_ENTRY_FLANGED)),
                     0.8192, REL (1e-4), ACGIH);
  hut_published_row (self, "HOD-03",
                     hut_hood_entry_ratio (hut_fitting_loss_ratio (HUT_FITTING_ENTRY_BELL)), 0.9806,
                     REL (1e-4), ACGIH);
  hut_published_row (self, "HOD-04", hut_hood_entry_ratio (1.78), 0.5998, REL (1e-4), ACGIH);
  hut_published_row (self, "HOD-05",
                     hut_hood_loss_ratio (2.0 * HUT_INCH_WATER_PA, 0.8 * HUT_INCH_WATER_PA), 1.5,
                     EXACT, "problem set of a ventilation course");
  hut_published_row (self, "HOD-06",
                     hut_hood_flow_m3_s (0.82, duct_m2, 1.25 * HUT_INCH_WATER_PA, 1.2014)
                         / HUT_CFM_M3_S,
                     721, REL (2e-3), "problem set of a ventilation course");
  hut_published_row (self, "HOD-07", hut_hood_capture_m3_s (HUT_HOOD_PLAIN, 0.01, 0.15, 0.5),
                     0.1175, REL (1e-6), "DallaValle, ACGIH hood figure");
  hut_published_row (self, "HOD-08", hut_hood_capture_m3_s (HUT_HOOD_FLANGED, 0.01, 0.15, 0.5),
                     0.088125, REL (1e-6), "DallaValle, ACGIH hood figure");
  hut_published_row (self, "HOD-09", hut_hood_capture_m3_s (HUT_HOOD_SLOT, 0.5, 0.2, 0.5), 0.185,
                     REL (1e-6), "DallaValle, ACGIH hood figure");
  hut_published_row (self, "HOD-10", hut_face_velocity_m_s (100 * m3_h, 0.0278), 0.9992, REL (1e-4),
                     WORKED);
}

static void
air (HutPublished *self)
{
  const HutAtmosphere at_2000 = hut_atmosphere_at (2000), at_4000 = hut_atmosphere_at (4000);
  /* The row states the geopotential height of the table of altitudes, which is 1524 m. */
  const HutAtmosphere at_1524 = hut_atmosphere_at (1524.0), at_1500 = hut_atmosphere_at (1500);

  hut_published_row (self, "ORI-01", hut_orifice_flow_m3_s (1e-3, 0.6, 10, 1.2041), 0.0024453,
                     REL (1e-4), WORKED);
  hut_published_row (self, "ORI-02", hut_orifice_flow_m3_s (1e-3, 0.6, 50, 1.2041) / m3_h, 19.684,
                     REL (1e-4), WORKED);
  hut_published_row (self, "ORI-03", hut_orifice_flow_m3_s (1e-4, 1.0, 4, 1.2041) / m3_h, 0.92793,
                     REL (1e-4), WORKED);
  hut_published_row (self, "ORI-04", hut_orifice_area_m2 (0.6, 100 * m3_h, 10, 1.2041), 0.01136,
                     REL (1e-4), WORKED);
  hut_published_row (self, "AIR-01", hut_air_density_kg_m3 (288.15, HUT_SEA_LEVEL_PA), 1.225,
                     REL (1e-4), STANDARD);
  hut_published_row (self, "AIR-02", hut_air_in_room (20, 0).density_kg_m3, 1.2041, REL (1e-4),
                     WORKED);
  hut_published_row (self, "AIR-03", hut_air_in_room (35, 0).density_kg_m3, 1.145, WITHIN (0.0006),
                     CENGEL);
  hut_published_row (self, "AIR-04", at_2000.pressure_pa, 79501, REL (5e-5), STANDARD);
  hut_published_row (self, "AIR-05",
                     hut_air_density_kg_m3 (at_2000.temperature_k, at_2000.pressure_pa), 1.0066,
                     REL (1e-4), STANDARD);
  hut_published_row (self, "AIR-06",
                     hut_air_density_kg_m3 (at_4000.temperature_k, at_4000.pressure_pa), 0.81935,
                     REL (5e-5), STANDARD);
  hut_published_row (self, "AIR-07", hut_air_viscosity_pa_s (at_2000.temperature_k), 1.726e-5,
                     REL (1e-4), STANDARD);
  hut_published_row (self, "AIR-08", hut_air_viscosity_pa_s (288.15), 1.7894e-5, REL (1e-4),
                     STANDARD);
  hut_published_row (self, "AIR-09",
                     hut_air_density_kg_m3 (at_1524.temperature_k, at_1524.pressure_pa) / 1.225,
                     0.8617, REL (1e-4), "table of altitudes of a course in aerodynamics");
  hut_published_row (self, "AIR-10", hut_air_density_kg_m3 (293.15, at_1500.pressure_pa), 1.0048,
                     REL (1e-4), WORKED);
}

void
hut_published_air (HutPublished *self)
{
  purge (self);
  friction (self);
  fittings (self);
  hoods (self);
  air (self);
}
