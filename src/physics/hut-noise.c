/* src/physics/hut-noise.c: how much quieter it is outside.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-noise.h"

#define FIELD_DB 47.0

double
hut_mass_law_db (double mass_kg_m2,
                 double frequency)
{
  if (!(mass_kg_m2 >= 0) || !(frequency > 0))
    return NAN;
  return fmax (20 * log10 (frequency * mass_kg_m2) - FIELD_DB, 0);
}

double
hut_critical_frequency (double coincidence,
                        double thickness_m)
{
  return thickness_m > 0 ? coincidence / thickness_m : NAN;
}

static double
passing_m2 (const HutSoundPatch *patch)
{
  return patch->area_m2 * pow (10, -patch->loss_db / 10);
}

double
hut_sound_loss_db (const HutSoundPatch *patches,
                   guint n)
{
  g_return_val_if_fail (patches != NULL || n == 0, NAN);

  double area_m2 = 0, open_m2 = 0;

  for (guint i = 0; i < n; i++)
    {
      area_m2 += patches[i].area_m2;
      open_m2 += passing_m2 (&patches[i]);
    }
  return area_m2 > 0 ? -10 * log10 (open_m2 / area_m2) : NAN;
}

guint
hut_sound_worst_patch (const HutSoundPatch *patches,
                       guint n)
{
  g_return_val_if_fail (patches != NULL || n == 0, 0);

  guint worst = 0;

  for (guint i = 1; i < n; i++)
    if (passing_m2 (&patches[i]) > passing_m2 (&patches[worst]))
      worst = i;
  return worst;
}

double
hut_enclosure_loss_db (double loss_db,
                       double absorption_ratio)
{
  if (!(loss_db >= 0) || !(absorption_ratio > 0 && absorption_ratio <= 1))
    return NAN;
  return fmax (loss_db + 10 * log10 (absorption_ratio), 0);
}
