/* tests/physics/hut-published-lid.c: published values: lids, springs, tipping.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "physics/hut-lid-force.h"
#include "physics/hut-published.h"
#include "physics/hut-tip.h"

#define WORKED "worked out by another program"
#define EUREKA "Eureka (UK), article on sizing gas springs"

/* Articles use g = 9.81. */
#define ARTICLE_RATIO (9.81 / HUT_GRAVITY_M_S2)

static double
rad (double degrees)
{
  return degrees * G_PI / 180;
}

static void
ply_lid (HutPublished *self)
{
  const HutPointMass masses[] = {
    { hut_sheet_mass_kg (680, 0.6 * 0.4, 0.006), 0.2 },
    { hut_sheet_mass_kg (680, -0.3 * 0.2, 0.006), 0.22 },
    { hut_sheet_mass_kg (1190, 0.34 * 0.24, 0.003), 0.22 },
    { hut_sheet_mass_kg (680, 0.6 * 0.08, 0.006), 0.397 },
  };
  HutPointMass lid = { NAN, NAN };

  hut_masses_sum (masses, G_N_ELEMENTS (masses), &lid);
  hut_published_row (self, "LID-01", lid.mass_kg, 1.221552, REL (1e-6), WORKED);
  hut_published_row (self, "LID-02", lid.at_m, 0.232345, REL (1e-5), WORKED);
  hut_published_row (self, "LID-03", hut_hinge_moment_at_nm (lid.mass_kg, lid.at_m, 0), 2.78333,
                     REL (1e-5), WORKED);
  hut_published_row (self, "LID-04", hut_hinge_moment_at_nm (lid.mass_kg, lid.at_m, rad (60)),
                     1.39167, REL (1e-5), WORKED);
  hut_published_row (self, "LID-05",
                     hut_hand_force_n (hut_hinge_moment_nm (lid.mass_kg, lid.at_m), 0.4), 6.9583,
                     REL (1e-4), WORKED);
}

static double
article_n (double mass_kg,
           double centre_m,
           double lever_m,
           guint count,
           double margin_ratio)
{
  return ARTICLE_RATIO
         * hut_spring_force_n (hut_hinge_moment_nm (mass_kg, centre_m), count, lever_m,
                               margin_ratio);
}

static void
springs (HutPublished *self)
{
  const HutStrut strut = { 0.05, -0.25, 0.2, 0 };
  const double each_n = article_n (50, 0.8, 0.25, 2, 1);

  hut_published_row (self, "LID-06", each_n, 784.8, REL (1e-4), EUREKA);
  hut_published_row (self, "LID-07", hut_hand_force_n (2 * each_n * 0.25, 1.2), 327.0, REL (1e-4),
                     EUREKA);
  hut_published_row (self, "LID-08", article_n (50, 0.8, 0.20, 2, 1), 981.0, REL (1e-4), EUREKA);
  hut_published_row (self, "LID-09", article_n (50, 0.6, 0.25, 2, 1), 588.6, REL (1e-3), EUREKA);
  hut_published_row (self, "LID-10", article_n (50, 0.8, 0.30, 2, 1), 654.0, REL (1e-4),
                     "moment balance (the article prints 523.2, which is wrong)");
  hut_published_row (self, "LID-11", hut_spring_force_n (100 * 0.3, 1, 0.1, 1.1), 330, REL (1e-4),
                     "page of a maker of gas springs");
  hut_published_row (self, "LID-12", article_n (8, 0.4, 0.6, 1, 1), 52.32, REL (1e-4),
                     "page of a maker of gas springs");
  hut_published_row (self, "LID-13",
                     hut_spring_force_n (hut_hinge_moment_at_nm (5, 0.25, rad (60)), 2, 0.08, 1),
                     38.307, REL (1e-4), WORKED);
  hut_published_row (self, "LID-14", hut_strut_lever_m (&strut, rad (30)), 0.130174, REL (1e-5),
                     WORKED);
  hut_published_row (self, "LID-15",
                     hut_spring_force_n (hut_hinge_moment_at_nm (4, 0.22, rad (30)), 2,
                                         hut_strut_lever_m (&strut, rad (30)), 1),
                     28.706, REL (1e-4), WORKED);
}

static void
tipping (HutPublished *self)
{
  const double open_m = -0.25 * cos (rad (110)), edge_m = -0.5 * cos (rad (110));

  hut_published_row (self, "TIP-01", hut_tip_ratio (6, 0.25, 2, open_m), 8.7714, REL (1e-4),
                     WORKED);
  hut_published_row (self, "TIP-02", hut_tip_ratio (6, 0.25, 2, 0.25), 3.0, EXACT, WORKED);
  hut_published_row (self, "TIP-03", hut_tip_push_down_n (6, 0.25, 2, open_m, edge_m), 76.21,
                     REL (1e-4), WORKED);
  hut_published_row (self, "TIP-04", hut_tip_push_level_n (8, 0.25, 0.6), 32.689, REL (1e-4),
                     WORKED);
}

void
hut_published_lid (HutPublished *self)
{
  ply_lid (self);
  springs (self);
  tipping (self);
}
