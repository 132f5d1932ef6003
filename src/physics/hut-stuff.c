/* src/physics/hut-stuff.c: what the material of a stock is known to do.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-stuff.h"

/* Sources: see the header. */
static const struct
{
  double modulus_pa, creep_ratio, poisson_ratio;
} stuffs[] = {
  [HUT_MATERIAL_PLYWOOD] = { 6.96e9, 1.5, 0.3 },     [HUT_MATERIAL_MDF] = { 2.1e9, 1.5, 0.3 },
  [HUT_MATERIAL_HDF] = { 3.1e9, 1.5, 0.3 },          [HUT_MATERIAL_ACRYLIC] = { 2.8e9, 2, 0.37 },
  [HUT_MATERIAL_POLYCARBONATE] = { 2.3e9, 2, 0.38 }, [HUT_MATERIAL_OTHER] = { NAN, 1, 0.3 },
};

double
hut_stuff_modulus_pa (HutMaterial material)
{
  g_return_val_if_fail ((guint)material < G_N_ELEMENTS (stuffs), NAN);

  return stuffs[material].modulus_pa;
}

double
hut_stuff_creep_ratio (HutMaterial material)
{
  g_return_val_if_fail ((guint)material < G_N_ELEMENTS (stuffs), 1);

  return stuffs[material].creep_ratio;
}

double
hut_stuff_poisson_ratio (HutMaterial material)
{
  g_return_val_if_fail ((guint)material < G_N_ELEMENTS (stuffs), 0);

  return stuffs[material].poisson_ratio;
}
