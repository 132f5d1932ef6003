/* src/catalog/hut-screw.h: screws, nuts, washers and their holes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>

/* Clearance holes, ISO 273. */
typedef enum
{
  HUT_HOLE_FINE,   /* H12 */
  HUT_HOLE_MEDIUM, /* H13 */
  HUT_HOLE_COARSE, /* H14 */
} HutHoleClass;

/* All of one nominal thread, mm. */
typedef struct
{
  double thread_mm;
  double hole_mm[3];                  /* by HutHoleClass: ISO 273 */
  double nut_flats_mm, nut_corners_mm, nut_height_mm;         /* ISO 4032 */
  double washer_outer_mm, washer_thickness_mm;                /* ISO 7089 */
  double sunk_head_mm, sunk_head_height_mm;                   /* ISO 2009/7046, theoretical */
  double pan_head_mm, pan_head_height_mm;                     /* DIN 7985 */
} HutScrew;

/* (transfer none) (nullable): NULL when the table has no such thread. */
const HutScrew *hut_screw_get (double thread_mm);
/* All rows, thinnest first. */
const HutScrew *hut_screw_list (guint *count);

/* The next standard length of machine screws that is at least @least_mm; 0 when there is none. */
double hut_screw_length_mm (double thread_mm, double least_mm);

/* Pilot hole of a wood screw in plywood, mm; @diameter_mm: over the thread. */
double hut_screw_pilot_mm (double diameter_mm);
