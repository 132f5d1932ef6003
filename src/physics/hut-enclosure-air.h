/* src/physics/hut-enclosure-air.h: the fans of a design against its openings: flow, and what it
 * does. SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-assembly.h"
#include "physics/hut-air-system.h"

/* What the design does not say. */
typedef struct
{
  double hose_m;        /* length of flexible hose behind the fans, as wide as the machine's duct; 0: none */
  guint bends;          /* tight ones in it */
  double mixing_ratio;  /* >= 1: see hut-purge.h */
  double temperature_c; /* of the room */
  double altitude_m;
} HutAirGuess;

/* 2 m of hose with two bends, usual mixing, 20 C at sea level: own choice, a bench beside a window.
 * */
extern const HutAirGuess hut_air_guess_usual;

typedef struct
{
  guint fans;         /* that have a curve */
  double fan_m2;      /* what the fans blow through */
  double intake_m2;   /* open area of openings that let air in, and of items for air */
  double seam_m2;     /* open area of the gap between base and lid, without regard to baffles */
  double free_m3;     /* inside, less the machine's bodies */
  gboolean moves;     /* FALSE: no fan, or no way in; then the rest is 0 */
  HutOperatingPoint point;
  double suction_pa;  /* inside under the room's pressure */
  double face_m_s;    /* mean velocity through what is open */
  double changes_count; /* air changes an hour */
  double purge_s;     /* until a hundredth is left, once nothing new comes */
} HutEnclosureAir;

/**
 * hut_enclosure_air_find:
 * @guess: see there
 *
 * All fans draw air out, side by side, into one hose. Openings that a service goes through count as
 * closed, windows too; air comes in through the others, items for air (by their free area) and the
 * seam. The suction and the velocity are those of the operating point.
 */
HutEnclosureAir hut_enclosure_air_find (const HutAssembly *assembly, const HutAirGuess *guess);
