/* src/physics/hut-mass.h: mass, centre of gravity and inertia of real parts.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * World frame, metres, kilograms. The moments are about the world's origin, so that those of
 * several bodies add up; centre and inertia follow from the sum. Sheet counts with its measured
 * mean thickness and its stock's density; glue and screws do not. */
#pragma once
#include "assembly/hut-part.h"
#include "physics/hut-physics.h"

typedef struct
{
  double mass_kg;
  double first[3];     /* integral of x, y, z over the mass: numbers in kg m */
  double second[3][3]; /* of their products, symmetric: numbers in kg m2 */
} HutMass;

/* Adds another body. */
void hut_mass_add (HutMass *self, const HutMass *other);
/* A mass in one place; x, y, z: world, m, as numbers. */
HutMass hut_mass_point (double mass_kg, double x_m, double y_m, double z_m);
/* A part as it is cut, in its place, lid closed. */
HutMass hut_part_mass (const HutPart *part, const HutAssembly *assembly);
/* All parts that move with the base or with the lid. */
HutMass hut_shell_mass (const HutAssembly *assembly, const HutPartSet *parts, HutShellId shell);

/* The hardware on a shell, each leaf with its mass (the half of an item that has two) at the middle
 * of what it covers, on the face that it lies on. */
HutMass hut_hardware_mass (const HutAssembly *assembly, HutShellId shell);

/* Centre of gravity, m, as numbers; FALSE without mass. */
gboolean hut_mass_centre (const HutMass *self, double centre_m[3]);

/**
 * hut_mass_inertia:
 * @point: of the axis, world, mm
 * @axis: unit vector, a ratio
 *
 * Source: I = integral of |d|2 - (d a)2 over the mass, d from the axis' point. Returns: moment of
 * inertia about the axis, a number in kg m2
 */
double hut_mass_inertia (const HutMass *self, HutVec3 point, HutVec3 axis);
