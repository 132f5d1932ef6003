/* src/engineering/hut-engineering.h: all that the engineering says of a design, at once.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Estimates for planning. They replace no measurement by a competent person, no standard and no
 * local rule, and none of them says that something is without danger. */
#pragma once
#include "engineering/hut-figure.h"
#include "engineering/hut-spring.h"
#include "physics/hut-enclosure-air.h"

/* Force of a hand at the lid's far end, with nothing and with what holds the lid. */
typedef struct
{
  double angle_deg;
  double bare_n, held_n; /* held: the same as bare without springs */
} HutHandPoint;

typedef struct
{
  GArray *figures;       /* HutFigure, subject by subject */
  HutEnclosureAir air;
  gboolean air_told;     /* the design says what duct there is: the curves are its own */
  GArray *air_curves;    /* HutAirCurvePoint; empty when there is nothing to show */
  GArray *hand;          /* HutHandPoint; empty for a lid that no weight turns */
  HutSpring spring;      /* found FALSE: no springs wanted, or none fits */
} HutEngineering;

/* Pure; about a millisecond. */
HutEngineering *hut_engineering_new (const HutAssembly *assembly, const HutPartSet *parts) G_GNUC_WARN_UNUSED_RESULT;
void hut_engineering_free (HutEngineering *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutEngineering, hut_engineering_free)

/* (transfer none) (nullable): a figure by its id. */
const HutFigure *hut_engineering_get (const HutEngineering *self, const char *id);
