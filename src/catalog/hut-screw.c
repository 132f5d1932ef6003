/* src/catalog/hut-screw.c: screws, nuts, washers and their holes.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The standards were not opened; the figures are those that public tables print after them (ISO
 * 273; ISO 4032, 7089, 2009/7046 as in an open-source collection of fasteners; DIN 7985). Rows and
 * cells that are "from memory" say so. */
#define G_LOG_DOMAIN "hut-catalog"
#include "config.h"
#include "catalog/hut-screw.h"
#include <math.h>

/* Diameters nearer than this are one thread, mm. Own choice: a tenth of the smallest step. */
#define SAME_MM 0.05
/* A length may fall short by rounding, mm. Own choice. */
#define LENGTH_SLACK_MM 1e-6

/* thread; holes fine, medium, coarse; nut flats, corners, height; washer outer, thickness;
 * countersunk head, height; pan head, height. All mm. */
static const HutScrew screws[] = {
  { 2.0, { 2.2, 2.4, 2.6 }, 4.0, 4.4, 1.6, 5.0, 0.3, 4.4, 1.2, 4.0, 1.72 },
  /* pan head from memory */
  { 2.5, { 2.7, 2.9, 3.1 }, 5.0, 5.5, 2.0, 6.0, 0.5, 5.5, 1.5, 5.0, 2.12 },
  { 3.0, { 3.2, 3.4, 3.6 }, 5.5, 6.1, 2.4, 7.0, 0.5, 6.3, 1.65, 6.0, 2.52 },
  /* all but the holes from memory */
  { 3.5, { 3.7, 3.9, 4.2 }, 6.0, 6.6, 2.8, 8.0, 0.5, 8.2, 2.35, 7.0, 2.82 },
  { 4.0, { 4.3, 4.5, 4.8 }, 7.0, 7.7, 3.2, 9.0, 0.8, 9.4, 2.7, 8.0, 3.25 },
  { 5.0, { 5.3, 5.5, 5.8 }, 8.0, 8.9, 4.7, 10.0, 1.0, 10.4, 2.7, 10.0, 3.95 },
  { 6.0, { 6.4, 6.6, 7.0 }, 10.0, 11.05, 5.2, 12.0, 1.6, 12.6, 3.3, 12.0, 4.75 },
  { 8.0, { 8.4, 9.0, 10.0 }, 13.0, 14.5, 6.8, 16.0, 1.6, 17.3, 4.65, 16.0, 6.15 },
};

/* Lengths of machine screws, mm: ISO 888 without those in brackets. From memory. */
static const double lengths_mm[]
    = { 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80 };

/* Shortest and longest that is sold of each thread, mm: ISO 2009. From memory. */
static const struct
{
  double thread_mm, least_mm, most_mm;
} ranges[] = {
  { 2.0, 3, 20 }, { 2.5, 4, 25 }, { 3.0, 5, 30 }, { 3.5, 6, 35 },
  { 4.0, 6, 40 }, { 5.0, 8, 50 }, { 6.0, 8, 60 }, { 8.0, 10, 80 },
};

/* Pilot holes in soft wood and plywood, mm. 3, 4 and 5: a woodworking site's metric chart; 3.5 and
 * 4.5: common practice, no source. */
static const struct
{
  double diameter_mm, pilot_mm;
} pilots[] = {
  { 3.0, 2.0 }, { 3.5, 2.3 }, { 4.0, 2.5 }, { 4.5, 3.0 }, { 5.0, 3.0 },
};

/* Of any other screw, as a share of its diameter: the upper end of what the handbooks' 90 % of the
 * root, which is about two thirds of the shank, comes to. Wood handbook FPL-GTR-190, ch. 8. */
#define PILOT_RATIO 0.6
#define PILOT_STEP_MM 0.1 /* drills */

const HutScrew *
hut_screw_list (guint *count)
{
  g_return_val_if_fail (count != NULL, NULL);

  *count = G_N_ELEMENTS (screws);
  return screws;
}

const HutScrew *
hut_screw_get (double thread_mm)
{
  for (guint i = 0; i < G_N_ELEMENTS (screws); i++)
    if (fabs (screws[i].thread_mm - thread_mm) < SAME_MM)
      return &screws[i];
  return NULL;
}

double
hut_screw_length_mm (double thread_mm,
                     double least_mm)
{
  for (guint i = 0; i < G_N_ELEMENTS (ranges); i++)
    if (fabs (ranges[i].thread_mm - thread_mm) < SAME_MM)
      for (guint j = 0; j < G_N_ELEMENTS (lengths_mm); j++)
        if (lengths_mm[j] >= MAX (least_mm - LENGTH_SLACK_MM, ranges[i].least_mm)
            && lengths_mm[j] <= ranges[i].most_mm)
          return lengths_mm[j];
  return 0.0;
}

double
hut_screw_pilot_mm (double diameter_mm)
{
  for (guint i = 0; i < G_N_ELEMENTS (pilots); i++)
    if (fabs (pilots[i].diameter_mm - diameter_mm) < SAME_MM)
      return pilots[i].pilot_mm;
  return round (diameter_mm * PILOT_RATIO / PILOT_STEP_MM) * PILOT_STEP_MM;
}
