/* tests/physics/hut-published-board.c: published values: noise, heat, cover, sheet.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "physics/hut-cover.h"
#include "physics/hut-heat.h"
#include "physics/hut-movement.h"
#include "physics/hut-noise.h"
#include "physics/hut-ply.h"
#include "physics/hut-published.h"
#include "physics/hut-unit.h"

#define WORKED "worked out by another program"
#define CROCKER_13 "Crocker, Arenas, Engineering Acoustics, 2021, ex. 12.13"
#define CROCKER_16 "Crocker, Arenas, Engineering Acoustics, 2021, ex. 12.16"
#define MAKERS "pages of paint makers"
#define EN315 "EN 315 (the same formula read in GB/T 9846)"

static double
with_hole_db (double loss_db,
              double open_ratio)
{
  const HutSoundPatch patches[] = { { 1 - open_ratio, loss_db }, { open_ratio, 0 } };

  return hut_sound_loss_db (patches, 2);
}

static void
noise (HutPublished *self)
{
  const HutSoundPatch wall[] = { { 9.5, 59 }, { 1.08, 35 } };
  const double ply_db = hut_mass_law_db (680 * 0.006, 500);

  hut_published_row (self, "NOI-01", hut_mass_law_db (210, 1000), 59, WITHIN (0.5), CROCKER_13);
  hut_published_row (self, "NOI-02", hut_mass_law_db (12.5, 1000), 35, WITHIN (0.5), CROCKER_13);
  hut_published_row (self, "NOI-03", hut_sound_loss_db (wall, 2), 44.8, WITHIN (0.05), CROCKER_13);
  hut_published_row (self, "NOI-04", with_hole_db (50, 0.01), 20, WITHIN (0.05), CROCKER_16);
  hut_published_row (self, "NOI-05", hut_mass_law_db (20, 500), 33, WITHIN (0.01), WORKED);
  hut_published_row (self, "NOI-06", ply_db, 19.193, WITHIN (0.001), WORKED);
  hut_published_row (self, "NOI-07", hut_mass_law_db (750 * 0.018, 500), 29.586, WITHIN (0.001),
                     WORKED);
  hut_published_row (self, "NOI-08", with_hole_db (ply_db, 0.005), 17.7, WITHIN (0.001), WORKED);
  hut_published_row (self, "NOI-09", with_hole_db (30, 0.01), 19.59, WITHIN (0.005), WORKED);
  hut_published_row (self, "NOI-10", with_hole_db (40, 0.001), 29.59, WITHIN (0.005), WORKED);
  hut_published_row (self, "NOI-11", hut_critical_frequency (HUT_COINCIDENCE_PLYWOOD, 0.012), 1667,
                     REL (1e-3), "Long, Architectural Acoustics, table 9.1");
}

static void
heat (HutPublished *self)
{
  const double u = hut_wall_u_w_m2k (0.012, 0.12, HUT_FILM_STILL_M2K_W, HUT_FILM_STILL_M2K_W);
  const double density = 1.2041, m3_h = HUT_M3_H_M3_S;

  hut_published_row (self, "HEA-01",
                     hut_heat_flow_m3_s (1000, 20 * 5.0 / 9, 0, density) / HUT_CFM_M3_S, 158,
                     REL (5e-3), "rule of fan makers, 3160 kW / F");
  hut_published_row (self, "HEA-02", hut_heat_flow_m3_s (800, 3, 0, density) * density, 0.265,
                     WITHIN (0.0005), "worked example of a course");
  hut_published_row (self, "HEA-03", hut_heat_rise_k (100, 100 * m3_h, 0, density), 2.9749,
                     REL (1e-4), WORKED);
  hut_published_row (self, "HEA-04", hut_heat_flow_m3_s (100, 35, 0, density) / HUT_CFM_M3_S, 5.003,
                     REL (1e-3), "energy balance (a page prints 2.64, which is wrong)");
  hut_published_row (self, "HEA-05", u, 2.9412, REL (1e-4), WORKED);
  hut_published_row (self, "HEA-06", hut_heat_rise_k (50, 0, 1.2 * u, density), 14.167, REL (1e-4),
                     WORKED);
  hut_published_row (self, "HEA-07", hut_heat_rise_k (50, 50 * m3_h, 1.2 * u, density), 2.4586,
                     REL (1e-4), WORKED);
  hut_published_row (self, "HEA-08", HUT_R_VALUE_M2K_W, 0.17611, REL (1e-5),
                     "conversion (from memory)");
  hut_published_row (self, "HEA-09", HUT_INCH_M / 2 / (0.62 * HUT_R_VALUE_M2K_W), 0.1163,
                     REL (1e-3), "ASHRAE Fundamentals 1997, ch. 24");
}

void
hut_published_noise_and_heat (HutPublished *self)
{
  noise (self);
  heat (self);
}

static void
cover (HutPublished *self)
{
  const double us = 250 * HUT_FOOT_M * HUT_FOOT_M / (HUT_US_GALLON_M3 * 1000);
  const double mil_m = HUT_INCH_M / 1000;

  hut_published_row (self, "COV-01", hut_spreading_m2_l (0.4, 40e-6), 10, EXACT, MAKERS);
  hut_published_row (self, "COV-02",
                     hut_spreading_m2_l (0.45, 2 * mil_m) * HUT_US_GALLON_M3 * 1000
                         / (HUT_FOOT_M * HUT_FOOT_M),
                     361, REL (1e-3), MAKERS);
  hut_published_row (self, "COV-03", us, 6.1356, REL (1e-4), "data sheets of glue (from memory)");
  hut_published_row (self, "COV-04", hut_spreading_by_mass_m2_l (1100, 0.15), 7.3333, REL (1e-4),
                     "common practice");
  hut_published_row (self, "COV-05", hut_litres_for (42, 2, 11, 0), 7.6364, REL (1e-4), MAKERS);
}

static void
thickness (HutPublished *self)
{
  static const struct
  {
    const char *id;
    double nominal, least, most;
  } rows[] = {
    { "THK-01", 3, 2.51, 3.29 },    { "THK-02", 6, 5.42, 6.38 },    { "THK-03", 9, 8.33, 9.47 },
    { "THK-04", 12, 11.24, 12.56 }, { "THK-05", 18, 17.06, 18.74 },
  };
  const HutBirchSheet *birch = hut_birch_sheet (0.012);
  const double mm = 1e-3;

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      const HutThicknessRange range = hut_plywood_range (rows[i].nominal * mm);

      hut_published_row (self, rows[i].id, range.least_m / mm, rows[i].least, WITHIN (1e-6), EN315);
      hut_published_row (self, rows[i].id, range.most_m / mm, rows[i].most, WITHIN (1e-6), EN315);
    }
  hut_published_row (self, "THK-06", birch->mean_m / mm, 12.0, EXACT,
                     "data sheet of a distributor");
  hut_published_row (self, "THK-06", birch->least_m / mm, 11.5, EXACT,
                     "data sheet of a distributor");
  hut_published_row (self, "THK-06", birch->most_m / mm, 12.5, EXACT,
                     "data sheet of a distributor");
  hut_published_row (self, "THK-07", hut_mdf_range (0.019).most_m / mm, 19.2, EXACT,
                     "data sheets of makers, EN 324-1");
}

static double
fahrenheit_c (double f)
{
  return (f - 32) * 5 / 9;
}

void
hut_published_board (HutPublished *self)
{
  cover (self);
  thickness (self);
  hut_published_row (self, "EMC-01", hut_wood_moisture_ratio (fahrenheit_c (140), 0.55) * 100, 8.4,
                     WITHIN (0.05), "pages on moisture of wood");
  hut_published_row (self, "EMC-02", hut_wood_moisture_ratio (fahrenheit_c (70), 0.60) * 100, 11.1,
                     WITHIN (0.2), "pages on moisture of wood");
  hut_published_row (self, "EMC-03", hut_wood_moisture_ratio (fahrenheit_c (68), 0.65) * 100,
                     12.002, WITHIN (0.01), "FPL-RN-0268 (from memory)");
  hut_published_row (
      self, "MOV-01",
      hut_growth_difference_m (300, HUT_EXPANDS_ACRYLIC_RATIO, HUT_EXPANDS_PLYWOOD_RATIO, 30),
      0.6075, REL (1e-4), "property pages of sheet makers");
  hut_published_row (self, "MOV-02", hut_plywood_swelling_m (600, 0.3), 0.36, REL (1e-6),
                     "APA, quoted");
}
