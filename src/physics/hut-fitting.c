/* src/physics/hut-fitting.c: what entries, bends, grilles and exits of a duct cost.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-fitting.h"

static const double loss_ratios[HUT_FITTING_COUNT] = {
  [HUT_FITTING_ENTRY_FLUSH] = 0.5,    /* Idelchik, diagram 3-1 */
  [HUT_FITTING_ENTRY_FLANGED] = 0.49, /* ACGIH Industrial Ventilation, 24th ed. 2001, fig. 3-16 */
  [HUT_FITTING_ENTRY_PLAIN] = 0.93,   /* same */
  [HUT_FITTING_ENTRY_BELL] = 0.04,    /* same */
  [HUT_FITTING_EXIT] = 1.0,           /* the whole velocity pressure is lost */
  [HUT_FITTING_ELBOW] = 0.9,          /* documentation of a pipe flow program, standard elbow */
  [HUT_FITTING_MITRE] = 1.202,        /* Rennels and Hudson, Pipe Flow, 2012 */
  [HUT_FITTING_MITRE_HALF] = 0.304,   /* same */
};

/* Crane TP 410: smooth bends, in multiples of the friction factor of clean steel. */
#define CLEAN_STEEL_RATIO 0.0166
static const struct
{
  double radius_ratio, factor_ratio;
} bends[] = { { 1.5, 14 }, { 2, 12 }, { 3, 12 } };

/* Tighter than this a bend is an elbow; own choice. */
#define TIGHT_RADIUS_RATIO 1.0

double
hut_fitting_loss_ratio (HutFitting fitting)
{
  return (guint)fitting < HUT_FITTING_COUNT ? loss_ratios[fitting] : NAN;
}

static double
line_between (double x,
              double x0,
              double y0,
              double x1,
              double y1)
{
  return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
}

static double
square_bend_ratio (double radius_ratio)
{
  const double elbow_ratio = loss_ratios[HUT_FITTING_ELBOW];
  const guint last = G_N_ELEMENTS (bends) - 1;

  if (radius_ratio <= TIGHT_RADIUS_RATIO)
    return elbow_ratio;
  if (radius_ratio < bends[0].radius_ratio)
    return line_between (radius_ratio, TIGHT_RADIUS_RATIO, elbow_ratio, bends[0].radius_ratio,
                         bends[0].factor_ratio * CLEAN_STEEL_RATIO);
  for (guint i = 0; i < last; i++)
    if (radius_ratio < bends[i + 1].radius_ratio)
      return CLEAN_STEEL_RATIO
             * line_between (radius_ratio, bends[i].radius_ratio, bends[i].factor_ratio,
                             bends[i + 1].radius_ratio, bends[i + 1].factor_ratio);
  return CLEAN_STEEL_RATIO * bends[last].factor_ratio;
}

double
hut_bend_loss_ratio (double radius_ratio,
                     double angle_rad)
{
  if (!(radius_ratio > 0) || !(angle_rad >= 0 && angle_rad <= G_PI))
    return NAN;
  return square_bend_ratio (radius_ratio) * angle_rad / G_PI_2;
}

double
hut_enlargement_loss_ratio (double diameter_ratio)
{
  if (!(diameter_ratio >= 0 && diameter_ratio <= 1))
    return NAN;

  const double left_ratio = 1 - diameter_ratio * diameter_ratio;

  return left_ratio * left_ratio;
}

static gboolean
is_share (double free_ratio)
{
  return free_ratio > 0 && free_ratio <= 1;
}

double
hut_thin_guard_loss_ratio (double free_ratio)
{
  if (!is_share (free_ratio))
    return NAN;

  const double jet_ratio = (0.707 * sqrt (1 - free_ratio) + 1 - free_ratio) / free_ratio;

  return jet_ratio * jet_ratio;
}

double
hut_wire_guard_loss_ratio (double free_ratio)
{
  if (!is_share (free_ratio))
    return NAN;

  const double exit_ratio = 1 / free_ratio - 1;

  return 1.3 * (1 - free_ratio) + exit_ratio * exit_ratio;
}

double
hut_thick_grille_loss_ratio (double free_ratio)
{
  if (!is_share (free_ratio))
    return NAN;

  const double closed_ratio = 1 - free_ratio;

  return (0.5 * closed_ratio + closed_ratio * closed_ratio) / (free_ratio * free_ratio);
}
