/* src/physics/hut-plate-bend.c: how far a rectangular plate sags.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Clamped: w = sum c_ij f_i (x) f_j (y) on [-1, 1]2 with f_i = (1 - x2)2 x^2i, which hold the edges
 * by themselves. For such w the bending energy is D/2 times the integral of (laplacian w)2, so the
 * coefficients solve a small linear system whose entries are integrals of even polynomials, exact.
 */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-plate-bend.h"
#include <gsl/gsl_linalg.h>

/* Odd terms up to here; the rest changes the fifth digit. Own choice. */
#define NAVIER_LAST 159
/* Terms of Ritz per direction: more change the fifth digit and ill-condition the system. Own
 * choice. */
#define RITZ 6
/* A longer clamped plate is a strip, to a tenth of a percent; the polynomials get worse. Own
 * choice. */
#define STRIP_RATIO 6.0
#define POWERS 3 /* x^2i, x^(2i+2), x^(2i+4) */

static gboolean
is_covered (double side_ratio,
            double poisson_ratio)
{
  return side_ratio >= 1 && isfinite (side_ratio) && poisson_ratio >= 0 && poisson_ratio <= 0.5;
}

/* ---- supported: Navier --------------------------------------------------------------------- */

/* Sum for q = 1, D = 1, b = 1: sag of the middle, or the larger bending moment there. */
static double
navier_sum (double side_ratio,
            double poisson_ratio,
            gboolean moment)
{
  const double a = side_ratio, pi2 = G_PI * G_PI;
  double sum = 0;

  for (int m = 1; m <= NAVIER_LAST; m += 2)
    for (int n = 1; n <= NAVIER_LAST; n += 2)
      {
        const double along = m * m / (a * a), across = n * n;
        const double sign = ((m + n) / 2) % 2 == 1 ? 1 : -1;
        const double sag
            = sign * 16 / (pi2 * pi2 * pi2 * m * n * (along + across) * (along + across));

        sum += moment ? sag * pi2 * (across + poisson_ratio * along) : sag;
      }
  return sum;
}

/* ---- clamped: Ritz ------------------------------------------------------------------------- */

/* f_i, f_i', f_i'': coefficients and powers. */
typedef struct
{
  double factors[POWERS];
  int powers[POWERS];
} Shape;

static Shape
shape_of (int i,
          int derived)
{
  Shape shape = { { 1, -2, 1 }, { 2 * i, 2 * i + 2, 2 * i + 4 } };

  for (int k = 0; k < POWERS; k++)
    for (int d = 0; d < derived; d++)
      shape.factors[k] *= shape.powers[k]--;
  return shape;
}

/* Integral over [-1, 1] of a product whose powers are even or whose factors are 0. */
static double
integral_of (int i,
             int i_derived,
             int j,
             int j_derived)
{
  const Shape a = shape_of (i, i_derived), b = shape_of (j, j_derived);
  double sum = 0;

  for (int k = 0; k < POWERS; k++)
    for (int l = 0; l < POWERS; l++)
      if (a.factors[k] != 0 && b.factors[l] != 0)
        sum += a.factors[k] * b.factors[l] * 2 / (a.powers[k] + b.powers[l] + 1);
  return sum;
}

static double
load_of (int i)
{
  const Shape shape = shape_of (i, 0);
  double sum = 0;

  for (int k = 0; k < POWERS; k++)
    sum += shape.factors[k] * 2 / (shape.powers[k] + 1);
  return sum;
}

/* Coefficients c_ij for q = 1, D = 1, b = 1; i along the longer side. */
static void
solve_ritz (double side_ratio,
            double coefficients[RITZ * RITZ])
{
  const double a = MIN (side_ratio, STRIP_RATIO), scale_a = 4 / (a * a), scale_b = 4;
  gsl_matrix *matrix = gsl_matrix_alloc (RITZ * RITZ, RITZ * RITZ);
  gsl_vector *load = gsl_vector_alloc (RITZ * RITZ), *solution = gsl_vector_alloc (RITZ * RITZ);
  gsl_permutation *order = gsl_permutation_alloc (RITZ * RITZ);
  int sign;

  for (int i = 0; i < RITZ; i++)
    for (int j = 0; j < RITZ; j++)
      {
        gsl_vector_set (load, (gsize)(i * RITZ + j), load_of (i) * load_of (j));
        for (int k = 0; k < RITZ; k++)
          for (int l = 0; l < RITZ; l++)
            gsl_matrix_set (matrix, (gsize)(i * RITZ + j), (gsize)(k * RITZ + l),
                            scale_a * scale_a * integral_of (i, 2, k, 2) * integral_of (j, 0, l, 0)
                                + scale_a * scale_b
                                      * (integral_of (i, 2, k, 0) * integral_of (j, 0, l, 2)
                                         + integral_of (i, 0, k, 2) * integral_of (j, 2, l, 0))
                                + scale_b * scale_b * integral_of (i, 0, k, 0)
                                      * integral_of (j, 2, l, 2));
      }
  gsl_linalg_LU_decomp (matrix, order, &sign);
  gsl_linalg_LU_solve (matrix, order, load, solution);
  for (int i = 0; i < RITZ * RITZ; i++)
    coefficients[i] = gsl_vector_get (solution, (gsize)i);
  gsl_permutation_free (order);
  gsl_vector_free (solution);
  gsl_vector_free (load);
  gsl_matrix_free (matrix);
}

/* Moment across the middle of the longer side: w'' there is 4 (b = 1) times the sum of c_0j times
 * 8, the second derivative of (1 - y2)2 at 1. */
static double
clamped_edge_moment (const double coefficients[RITZ * RITZ])
{
  double sum = 0;

  for (int j = 0; j < RITZ; j++)
    sum += coefficients[j];
  return 4 * 8 * sum;
}

/* ---- plates -------------------------------------------------------------------------------- */

double
hut_plate_sag_ratio (HutPlateEdges edges,
                     double side_ratio,
                     double poisson_ratio)
{
  double coefficients[RITZ * RITZ];

  if (!is_covered (side_ratio, poisson_ratio))
    return NAN;

  const double per_stiffness = 12 * (1 - poisson_ratio * poisson_ratio);

  if (edges == HUT_PLATE_SUPPORTED)
    return per_stiffness * navier_sum (side_ratio, poisson_ratio, FALSE);
  solve_ritz (side_ratio, coefficients);
  return per_stiffness * coefficients[0];
}

double
hut_plate_stress_ratio (HutPlateEdges edges,
                        double side_ratio,
                        double poisson_ratio)
{
  double coefficients[RITZ * RITZ];

  if (!is_covered (side_ratio, poisson_ratio))
    return NAN;
  if (edges == HUT_PLATE_SUPPORTED)
    return 6 * navier_sum (side_ratio, poisson_ratio, TRUE);
  solve_ritz (side_ratio, coefficients);
  return 6 * clamped_edge_moment (coefficients);
}

static gboolean
is_plate (const HutPlateSheet *self)
{
  return self->width_m > 0 && self->height_m > 0 && self->thickness_m > 0 && self->modulus_pa > 0;
}

double
hut_plate_sag_m (const HutPlateSheet *self,
                 double load_pa)
{
  g_return_val_if_fail (self != NULL, NAN);

  if (!is_plate (self))
    return NAN;

  const double b_m = MIN (self->width_m, self->height_m), a_m = MAX (self->width_m, self->height_m);
  const double t3_m3 = self->thickness_m * self->thickness_m * self->thickness_m;

  return hut_plate_sag_ratio (self->edges, a_m / b_m, self->poisson_ratio) * load_pa * b_m * b_m
         * b_m * b_m / (self->modulus_pa * t3_m3);
}

double
hut_plate_stress_pa (const HutPlateSheet *self,
                     double load_pa)
{
  g_return_val_if_fail (self != NULL, NAN);

  if (!is_plate (self))
    return NAN;

  const double b_m = MIN (self->width_m, self->height_m), a_m = MAX (self->width_m, self->height_m);

  return hut_plate_stress_ratio (self->edges, a_m / b_m, self->poisson_ratio) * load_pa * b_m * b_m
         / (self->thickness_m * self->thickness_m);
}

double
hut_own_weight_pa (double density_kg_m3,
                   double thickness_m)
{
  return density_kg_m3 * HUT_GRAVITY_M_S2 * thickness_m;
}
