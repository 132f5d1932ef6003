/* src/physics/hut-ply.c: plywood: its stiffness, its thickness.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-ply.h"

/* Nominal thicknesses that differ by less are the same, m; own choice. */
#define SAME_M 1e-6

static const HutBirchSheet birch[] = {
  { 4e-3, 3.8e-3, 3.5e-3, 4.1e-3, 660, 3 },      { 6.5e-3, 6.4e-3, 6.1e-3, 6.9e-3, 670, 5 },
  { 9e-3, 9.2e-3, 8.8e-3, 9.5e-3, 710, 7 },      { 12e-3, 12.0e-3, 11.5e-3, 12.5e-3, 695, 9 },
  { 15e-3, 14.9e-3, 14.3e-3, 15.3e-3, 690, 11 }, { 18e-3, 17.7e-3, 17.1e-3, 18.1e-3, 685, 13 },
  { 21e-3, 20.5e-3, 20.0e-3, 20.9e-3, 0, 15 },   { 24e-3, 23.4e-3, 22.9e-3, 23.7e-3, 0, 17 },
};

HutPlyStiffness
hut_ply_stiffness (double veneer_pa,
                   guint plies,
                   double outer_m,
                   double inner_m)
{
  const double whole_m = 2 * outer_m + (plies - 2.0) * inner_m;
  double z_m = -whole_m / 2, along_m3 = 0;

  if (plies < 3 || plies % 2 == 0 || !(veneer_pa > 0) || !(outer_m > 0) || !(inner_m > 0))
    return (HutPlyStiffness) { NAN, NAN };
  for (guint i = 0; i < plies; i++)
    {
      const double top_m = z_m + (i == 0 || i == plies - 1 ? outer_m : inner_m);

      if (i % 2 == 0)
        along_m3 += top_m * top_m * top_m - z_m * z_m * z_m;
      z_m = top_m;
    }

  const double share_ratio = 4 * along_m3 / (whole_m * whole_m * whole_m);

  return (HutPlyStiffness) { veneer_pa * share_ratio, veneer_pa * (1 - share_ratio) };
}

HutThicknessRange
hut_plywood_range (double nominal_m)
{
  return (HutThicknessRange) { nominal_m - (0.4e-3 + 0.03 * nominal_m),
                              nominal_m + (0.2e-3 + 0.03 * nominal_m) };
}

HutThicknessRange
hut_mdf_range (double nominal_m)
{
  const double each_m = nominal_m <= 19e-3 + SAME_M ? 0.2e-3 : 0.3e-3;

  return (HutThicknessRange) { nominal_m - each_m, nominal_m + each_m };
}

const HutBirchSheet *
hut_birch_sheet (double nominal_m)
{
  for (guint i = 0; i < G_N_ELEMENTS (birch); i++)
    if (fabs (birch[i].nominal_m - nominal_m) < SAME_M)
      return &birch[i];
  return NULL;
}
