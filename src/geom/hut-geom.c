/* src/geom/hut-geom.c: the grid and the error domain.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-geom"
#include "config.h"
#include "geom/hut-geom.h"
#include <math.h>

/* Grid points per mm: dividing by it gives the double that a decimal number with three places
 * has. */
#define GRID_PER_MM 1000.0

G_DEFINE_QUARK (hut-geom-error-quark, hut_geom_error)

double
hut_snap_mm (double value_mm)
{
  /* Adding zero turns -0.0 into 0.0, so that files never say "-0". */
  return round (value_mm * GRID_PER_MM) / GRID_PER_MM + 0.0;
}

double
hut_point_distance_mm (HutPoint a,
                       HutPoint b)
{
  return hypot (b.u - a.u, b.v - a.v);
}

char *
hut_point_dup_text (HutPoint p)
{
  char u[G_ASCII_DTOSTR_BUF_SIZE], v[G_ASCII_DTOSTR_BUF_SIZE];

  g_ascii_formatd (u, sizeof u, "%.3f", hut_snap_mm (p.u));
  g_ascii_formatd (v, sizeof v, "%.3f", hut_snap_mm (p.v));
  return g_strdup_printf ("(%s, %s) mm", u, v);
}
