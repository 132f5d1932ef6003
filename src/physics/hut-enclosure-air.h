/* src/physics/hut-enclosure-air.h: the fans of a design against its openings: flow, and what it
 * does. SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-assembly.h"
#include "physics/hut-air-system.h"

/* What the fans blow into, and the air. */
typedef struct
{
  double hose_m;        /* length of duct behind the fans; 0: none */
  guint bends;          /* tight ones in it */
  double mixing_ratio;  /* >= 1: see hut-purge.h */
  double temperature_c; /* of the room */
  double altitude_m;
  double diameter_m;    /* of the duct; 0: that of the duct that leaves the machine */
  double roughness_m;
  double exit_loss_ratio; /* K of its end */
  double fixed_pa;        /* what opens its flap */
} HutAirGuess;

/* 2 m of hose with two bends, usual mixing, 20 C at sea level: own choice, a bench beside a window.
 * */
extern const HutAirGuess hut_air_guess_usual;

/* TRUE when the design says what duct there is, or that there is none. */
gboolean hut_duct_is_told (const HutDesign *design);
/* What the design says, and the usual for the rest. A flap takes 5 Pa to open (own choice: a light
 * one of 100 mm); a grille at the end is 60 % open (common practice). */
HutAirGuess hut_air_guess_of (const HutDesign *design);
/* Inner width of the duct, m; 0 when there is none or nothing says it. */
double hut_duct_diameter_m (const HutDesign *design);

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

/* A point of both curves: what the fans make, and what the system takes. */
typedef struct
{
  double flow_m3_s, fans_pa, system_pa;
} HutAirCurvePoint;

/* (transfer full) (element-type HutAirCurvePoint): @n >= 2 points from no flow to the fans' free
 * flow; empty without fans. */
GArray *hut_enclosure_air_curves (const HutAssembly *assembly, const HutAirGuess *guess, guint n) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hut_enclosure_air_hold_m2:
 *
 * The open area (m2) through which the fans still draw air at HUT_HOLD_VELOCITY_M_S: that velocity
 * takes a suction of rho / 2 (v / Cd)2, and at the flow where the fans meet the duct with that
 * suction, A = Q / v. Returns: 0 when no air moves
 */
double hut_enclosure_air_hold_m2 (const HutAssembly *assembly, const HutAirGuess *guess);
/* Length of the seam (m) from which air comes in. */
double hut_enclosure_seam_m (const HutAssembly *assembly);
