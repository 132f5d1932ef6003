/* src/physics/hut-lid-force.h: what it takes to lift and to hold a lid.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Statics about the hinge: moments, no friction, no springs but those named. */
#pragma once
#include "physics/hut-physics.h"

/* Mass of flat stuff, kg: density (kg/m3) times area (m2) times thickness (m); a hole has a
 * negative area. */
double hut_sheet_mass_kg (double density_kg_m3, double area_m2, double thickness_m);

/* A mass at a distance (m) along one axis. */
typedef struct
{
  double mass_kg, at_m;
} HutPointMass;

/* Sum (kg) and centre (m) of masses, of which some may be negative; FALSE when the sum is not > 0.
 * */
gboolean hut_masses_sum (const HutPointMass *masses, guint n, HutPointMass *sum);

/* Moment about the hinge (N m): m g x, x the level distance (m) of the centre from the hinge line.
 * */
double hut_hinge_moment_nm (double mass_kg, double level_m);
/* The same for a lid whose centre lies @arm_m from the hinge at @angle_rad over the level. */
double hut_hinge_moment_at_nm (double mass_kg, double arm_m, double angle_rad);
/* Force (N) of a hand at right angles to its arm: M / a; @handle_m > 0. */
double hut_hand_force_n (double moment_nm, double handle_m);

/* Force (N) of each of @count springs that hold a moment by a lever arm (m), with a margin (1.1: a
 * tenth more): M margin / (n r). */
double hut_spring_force_n (double moment_nm, guint count, double lever_m, double margin_ratio);

/* A spring between a point of the base and one of the lid: section across the hinge line, hinge at
 * the origin, m; x away from the hinge in the closed lid, y up. */
typedef struct
{
  double base_x_m, base_y_m;
  double lid_x_m, lid_y_m; /* lid closed */
} HutStrut;

/* Lever arm (m) at a lid angle, |A x B| / |A - B|; and the distance of the two points, m. Source:
 * moment of a force along a line. NAN when the points fall together. */
double hut_strut_lever_m (const HutStrut *self, double angle_rad);
double hut_strut_length_m (const HutStrut *self, double angle_rad);

/* What the springs have to bear over the whole way of a lid. */
typedef struct
{
  double force_n;   /* largest, each spring */
  double angle_rad; /* where */
  double shortest_m, longest_m;
} HutStrutNeed;

/**
 * hut_strut_need_find:
 * @arm_m: of the lid's centre from the hinge; it lies level when the lid is closed
 * @end_rad: how far the lid opens, 0 .. pi
 *
 * The most demanding angle is often neither end. Looked at in steps of a degree (own choice: the
 * force changes little over one). Returns: FALSE when a step has no lever to speak of (the strut
 * points at the hinge)
 */
gboolean hut_strut_need_find (const HutStrut *self,
                              double mass_kg,
                              double arm_m,
                              guint count,
                              double end_rad,
                              HutStrutNeed *need);
