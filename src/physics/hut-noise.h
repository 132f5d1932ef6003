/* src/physics/hut-noise.h: how much quieter it is outside.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sound through the air only: not what the feet carry, not the box's own tones. */
#pragma once
#include "physics/hut-physics.h"

/* Critical frequency times thickness, Hz m. Source: M. Long, Architectural Acoustics, table 9.1;
 * +-10 %. */
#define HUT_COINCIDENCE_PLYWOOD 20.0
#define HUT_COINCIDENCE_BOARD 23.0
#define HUT_COINCIDENCE_GLASS 12.7

/* Transmission loss of a wall (dB) by its mass (kg/m2) at a frequency (a number, Hz); from the
 * first resonance to about half the critical frequency. Source: M. Crocker, J. Arenas, Engineering
 * Acoustics, Wiley 2021, ch. 12: 20 log10 (f m) - 47, field incidence; never under 0. */
double hut_mass_law_db (double mass_kg_m2, double frequency);
/* Frequency (a number, Hz) from which on bending waves help sound through. @thickness_m > 0 */
double hut_critical_frequency (double coincidence, double thickness_m);

typedef struct
{
  double area_m2, loss_db; /* 0 dB: an open gap */
} HutSoundPatch;

/* Mean loss (dB) of patches side by side, -10 log10 (sum S 10^(-TL / 10) / sum S); NAN without
 * area. Source: same. */
double hut_sound_loss_db (const HutSoundPatch *patches, guint n);
/* (array index) of the patch that lets most sound through; 0 without any. */
guint hut_sound_worst_patch (const HutSoundPatch *patches, guint n);

/* What an enclosure takes off (dB) whose inside absorbs a share of the sound, 0 < alpha <= 1: TL +
 * 10 log10 alpha, never under 0. Common practice, no source. */
double hut_enclosure_loss_db (double loss_db, double absorption_ratio);
