/* tests/physics/hut-published-laser.c: published values: laser light, gaps.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "physics/hut-bounce.h"
#include "physics/hut-gap-sight.h"
#include "physics/hut-laser-light.h"
#include "physics/hut-published.h"

#define WORKED "worked out by another program"
#define ICNIRP "ICNIRP 2013, table 5, in an open copy"
#define OSHA "OSHA Technical Manual, sec. III ch. 6 (from memory)"
#define EN207 "EN 207 table in open copies"

static double
limit (double wavelength_nm,
       double time_s)
{
  return hut_laser_limit_w_m2 (wavelength_nm, time_s);
}

static void
limits (HutPublished *self)
{
  static const struct
  {
    const char *id;
    double wavelength_nm, time_s, limit_w_m2, room_ratio;
  } rows[] = {
    { "LAS-01", 532, 0.25, 25.456, 1e-4 },     { "LAS-01", 400, 0.25, 25.456, 1e-4 },
    { "LAS-01", 700, 0.25, 25.456, 1e-4 },     { "LAS-02", 445, 10, 10, 1e-6 },
    { "LAS-03", 445, 100, 1, 1e-6 },           { "LAS-04", 445, 30000, 1, 1e-6 },
    { "LAS-05", 455, 100, 1.2589, 1e-4 },      { "LAS-06", 455, 10, 10, 1e-6 },
    { "LAS-08", 808, 0.25, 41.859, 1e-4 },     { "LAS-09", 808, 10, 16.444, 1e-4 },
    { "LAS-09", 808, 30000, 16.444, 1e-4 },    { "LAS-10", 1064, 0.25, 127.28, 1e-4 },
    { "LAS-12", 1064, 10, 50, 1e-6 },          { "LAS-12", 1064, 30000, 50, 1e-6 },
    { "LAS-13", 10600, 0.25, 15839, 1e-4 },    { "LAS-14", 10600, 9.99999, 995.84, 1e-4 },
    { "LAS-15", 10600, 10.00001, 1000, 1e-6 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    hut_published_row (self, rows[i].id, limit (rows[i].wavelength_nm, rows[i].time_s),
                       rows[i].limit_w_m2, REL (rows[i].room_ratio), ICNIRP);
  hut_published_row (self, "LAS-07", hut_laser_t1_s (480), 39.8, REL (2e-3),
                     "EU Directive 2006/25/EC, annex II");
  hut_published_row (self, "LAS-11", limit (1064, 1) * 1, 90, REL (1e-6), ICNIRP);
  hut_published_row (self, "LAS-16", hut_pupil_power_w (limit (532, 0.25)) * 1e3, 0.9797,
                     REL (1e-4), ICNIRP);
  hut_published_row (self, "LAS-17", hut_pupil_power_w (10) * 1e3, 0.3848, REL (2e-4), ICNIRP);
  hut_published_row (self, "LAS-18", hut_laser_ce_ratio (15e-3), 10, EXACT,
                     "EU Directive 2006/25/EC, annex II");
  hut_published_row (self, "LAS-19", hut_laser_t2_s (50e-3), 31.07, REL (1e-3), ICNIRP);
}

static void
distances (HutPublished *self)
{
  hut_published_row (self, "LAS-20", hut_diffuse_distance_m (1, 0.5, 0, limit (532, 0.25)), 0.07907,
                     REL (1e-4), ICNIRP);
  hut_published_row (self, "LAS-21", hut_diffuse_irradiance_w_m2 (10, 0.9, 0, 0.3), 31.831,
                     REL (1e-4), WORKED);
  hut_published_row (self, "LAS-22", hut_diffuse_irradiance_w_m2 (5, 0.5, G_PI_4, 0.4), 3.5169,
                     REL (1e-4), WORKED);
  hut_published_row (self, "LAS-23", hut_diffuse_distance_m (10, 1, 0, 1), 1.7841, REL (1e-4),
                     WORKED);
  hut_published_row (self, "LAS-24", hut_diffuse_distance_m (100, 1, 0, 16), 1.4, REL (0.01), OSHA);
  hut_published_row (self, "LAS-25", hut_diffuse_distance_m (5, 1, 0, 0.01), 12.6, REL (3e-3),
                     OSHA);
  hut_published_row (self, "LAS-30",
                     hut_beam_distance_m (1, 1e-3 / sqrt (2), 1e-3 / sqrt (2), limit (532, 0.25)),
                     315.28, REL (1e-4), ICNIRP);
  hut_published_row (self, "LAS-31", hut_beam_distance_m (1, 0, 1e-3, limit (532, 0.25)), 223.65,
                     REL (1e-4), WORKED);
  hut_published_row (self, "LAS-32", hut_beam_distance_m (100, 6e-3, 2e-3, 16), 1410, REL (5e-3),
                     OSHA);
}

static void
densities (HutPublished *self)
{
  const double beam_w_m2 = hut_beam_irradiance_w_m2 (10, 2e-3);
  const double en_w_m2 = 10 / (0.25 * G_PI * 4e-3 * 4e-3);

  hut_published_row (self, "LAS-26",
                     hut_window_density_ratio (hut_beam_irradiance_w_m2 (1, 2e-3), 532, 0.25),
                     3.0089, REL (1e-4), ICNIRP);
  hut_published_row (self, "LAS-27", hut_window_density_ratio (beam_w_m2, 445, 30000), 5.4147,
                     REL (1e-4), WORKED);
  hut_published_row (self, "LAS-28",
                     hut_optical_density_ratio (hut_diffuse_irradiance_w_m2 (10, 0.9, 0, 0.3), 1),
                     1.5029, REL (1e-4), WORKED);
  hut_published_row (self, "LAS-29", hut_optical_density_ratio (0.5, 1), 0, EXACT, WORKED);
  hut_published_row (self, "LAS-33", en_w_m2, 795775, REL (1e-5),
                     "University College Cork, laser guideline");
  hut_published_row (self, "LAS-34", hut_en207_number (1064, en_w_m2), 5, EXACT, EN207);
  hut_published_row (self, "LAS-35", hut_en208_number (532, 5 / (0.25 * G_PI * 2e-3 * 2e-3)), 4,
                     EXACT, "EN 208 table in open copies");
  hut_published_row (self, "LAS-36", hut_en207_irradiance_w_m2 (1064, 6), 1e7, EXACT, EN207);
  hut_published_row (self, "LAS-37", hut_en207_irradiance_w_m2 (10600, 4), 1e7, EXACT, EN207);
  for (guint n = 1; n <= 10; n++)
    hut_published_row (self, "LAS-38",
                       hut_en207_irradiance_w_m2 (445, n) * hut_transmission_ratio (n), 10, EXACT,
                       "follows from EN 207");
  hut_published_row (self, "LAS-39", hut_bounces_density_ratio (0.05, 3), 3.9031, REL (1e-4),
                     WORKED);
  hut_published_row (self, "LAS-40", hut_cavity_irradiance_w_m2 (10, 1.2, 0.9, 0), 75, REL (1e-6),
                     WORKED);
  hut_published_row (self, "LAS-41", hut_cavity_ratio (0.98, 0.05), 14.203, REL (1e-4), WORKED);
}

void
hut_published_laser (HutPublished *self)
{
  limits (self);
  distances (self);
  densities (self);
}

void
hut_published_gap (HutPublished *self)
{
  const double mm = 1e-3;

  hut_published_row (self, "LOS-01", hut_gap_half_angle_rad (1.5 * mm, 18 * mm) * 180 / G_PI,
                     4.7636, REL (1e-4), WORKED);
  hut_published_row (self, "LOS-02", hut_corner_is_sighted (3 * mm, 3 * mm, 2 * mm, 4 * mm), TRUE,
                     EXACT, "rays of another program");
  hut_published_row (self, "LOS-03", hut_corner_is_sighted (3 * mm, 3 * mm, 2 * mm, 5 * mm), FALSE,
                     EXACT, "rays of another program");
  hut_published_row (self, "LOS-04", hut_corner_is_sighted (1 * mm, 2 * mm, 6 * mm, 10 * mm), FALSE,
                     EXACT, "rays of another program");
  hut_published_row (self, "LOS-05", hut_corner_is_sighted (2 * mm, 5 * mm, 3 * mm, 3 * mm), TRUE,
                     EXACT, "rays of another program");
  hut_published_row (self, "LOS-06", hut_gap_view_ratio (1, 10), 0.049876, REL (1e-4),
                     "Hottel, crossed strings (from memory)");
  hut_published_row (self, "LOS-07", hut_lap_bounces_count (20 * mm, 2 * mm, G_PI_4), 10, EXACT,
                     WORKED);
}
