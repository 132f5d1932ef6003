/* tests/physics/hut-published-plate.c: published values: plates, beams, plywood.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "physics/hut-beam.h"
#include "physics/hut-plate-bend.h"
#include "physics/hut-ply.h"
#include "physics/hut-published.h"
#include "physics/hut-unit.h"

#define WORKED "worked out by another program"
#define ROARK "Roark's Formulas, 7th ed. 2002, table 11.4 case 1a"
#define ROARK_8A "Roark, table 11.4 case 8a (from memory)"
#define POISSON HUT_POISSON_TABLE_RATIO

static void
roark (HutPublished *self)
{
  static const struct
  {
    const char *alpha_id, *beta_id;
    double side, alpha, beta;
  } rows[] = {
    { "PLT-01", "PLT-02", 1, 0.0444, 0.2874 },   { "PLT-03", "PLT-04", 1.2, 0.0616, 0.3762 },
    { "PLT-05", "PLT-06", 1.6, 0.0906, 0.5172 }, { "PLT-07", "PLT-08", 2, 0.111, 0.6102 },
    { "PLT-09", "PLT-10", 3, 0.1335, 0.7134 },
  };
  static const double clamped[][3]
      = { { 1.0, 0.0138, 0.3078 }, { 1.4, 0.0226, 0.4356 }, { 2.0, 0.0277, 0.4974 } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      hut_published_row (self, rows[i].alpha_id,
                         hut_plate_sag_ratio (HUT_PLATE_SUPPORTED, rows[i].side, POISSON),
                         rows[i].alpha, REL (0.01), ROARK);
      hut_published_row (self, rows[i].beta_id,
                         hut_plate_stress_ratio (HUT_PLATE_SUPPORTED, rows[i].side, POISSON),
                         rows[i].beta, REL (2e-3), ROARK);
    }
  hut_published_row (self, "PLT-11", hut_plate_sag_ratio (HUT_PLATE_SUPPORTED, 1.5, POISSON),
                     0.084346, REL (1e-3), "Navier series of another program");
  for (guint i = 0; i < G_N_ELEMENTS (clamped); i++)
    {
      hut_published_row (self, "PLT-12",
                         hut_plate_sag_ratio (HUT_PLATE_CLAMPED, clamped[i][0], POISSON),
                         clamped[i][1], REL (5e-3), ROARK_8A);
      hut_published_row (self, "PLT-13",
                         hut_plate_stress_ratio (HUT_PLATE_CLAMPED, clamped[i][0], POISSON),
                         clamped[i][2], REL (3e-3), ROARK_8A);
    }
}

static void
plates (HutPublished *self)
{
  const HutPlateSheet steel = { HUT_PLATE_SUPPORTED, 1, 1, 0.01, 200e9, POISSON };
  const HutPlateSheet acrylic = { HUT_PLATE_SUPPORTED, 0.5, 0.5, 0.003, 3e9, POISSON };
  const HutPlateSheet held = { HUT_PLATE_CLAMPED, 0.5, 0.5, 0.003, 3e9, POISSON };
  const HutPlateSheet ply = { HUT_PLATE_SUPPORTED, 0.6, 0.4, 0.006, 8.75e9, POISSON };
  const double acrylic_pa = hut_own_weight_pa (1190, 0.003),
               ply_pa = hut_own_weight_pa (680, 0.006);

  hut_published_row (self, "PLT-14", hut_plate_sag_m (&steel, 1000) * 1e3, 0.222, REL (2e-3),
                     ROARK);
  hut_published_row (self, "PLT-15", hut_plate_sag_m (&acrylic, acrylic_pa) * 1e3, 1.1994,
                     REL (1e-3), ROARK);
  /* The published value was worked out with alpha rounded to 0.0138. */
  hut_published_row (self, "PLT-16", hut_plate_sag_m (&held, acrylic_pa) * 1e3, 0.37279, REL (2e-3),
                     ROARK_8A);
  hut_published_row (self, "PLT-17", hut_plate_sag_m (&ply, ply_pa) * 1e3, 0.045711, REL (1e-3),
                     WORKED);
}

static void
beams (HutPublished *self)
{
  const double shelf = hut_strip_bending_n_m2 (2.2e9, 0.3, 0.018);

  hut_published_row (self, "BEA-01",
                     hut_beam_even_sag_m (HUT_BEAM_SUPPORTED, 0.8, 100, shelf) * 1e3, 1.66272,
                     REL (1e-4), "standard result (from memory)");
  hut_published_row (self, "BEA-02",
                     hut_beam_point_sag_m (HUT_BEAM_SUPPORTED, 0.8, 100, shelf) * 1e3, 3.32544,
                     REL (1e-4), "standard result (from memory)");
  hut_published_row (self, "BEA-03", hut_beam_even_sag_m (HUT_BEAM_FIXED, 0.8, 100, shelf) * 1e3,
                     0.332544, REL (1e-4), "standard result (from memory)");
  hut_published_row (self, "BEA-04", hut_beam_point_sag_m (HUT_BEAM_FIXED, 0.8, 100, shelf) * 1e3,
                     0.831359, REL (1e-4), "standard result (from memory)");
  hut_published_row (self, "SAG-01", HUT_FOOT_M / (0.02 * HUT_INCH_M), 600, EXACT,
                     "article on shelves, 2019");
  hut_published_row (self, "SAG-02", HUT_FOOT_M / (HUT_INCH_M / 32), 384, EXACT,
                     "article on shelves, 2019");
}

static void
plywood (HutPublished *self)
{
  static const struct
  {
    const char *id;
    guint plies;
    double along_mpa, across_mpa;
  } rows[] = {
    { "PLY-01", 5, 12737, 4763 },
    { "PLY-02", 7, 11395, 6105 },
    { "PLY-03", 9, 10719, 6781 },
    { "PLY-04", 13, 10048, 7452 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      const HutPlyStiffness stiffness
          = hut_ply_stiffness (HUT_BIRCH_PA, rows[i].plies, HUT_BIRCH_OUTER_M, HUT_BIRCH_INNER_M);

      hut_published_row (self, rows[i].id, stiffness.along_pa / 1e6, rows[i].along_mpa, REL (1e-4),
                         "Handbook of Finnish Plywood (from memory)");
      hut_published_row (self, rows[i].id, stiffness.across_pa / 1e6, rows[i].across_mpa,
                         REL (1e-4), "Handbook of Finnish Plywood (from memory)");
    }
  hut_published_row (self, "PLY-05", 1.22 * 2.44 * 0.012 * hut_birch_sheet (0.012)->density_kg_m3,
                     24.8, WITHIN (0.05), "data sheet of a distributor");
}

void
hut_published_plate (HutPublished *self)
{
  roark (self);
  plates (self);
  beams (self);
  plywood (self);
}
