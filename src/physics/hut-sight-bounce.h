/* src/physics/hut-sight-bounce.h: how often light has to meet a wall before it gets out, in a
 * section. SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "physics/hut-sight.h"

/* More bounces than this are not looked for: three off dark paint leave a few parts in ten
 * thousand. */
#define HUT_BOUNCES_MAX 3u
#define HUT_BOUNCE_POINTS_MAX 5u

typedef struct
{
  guint bounces;                          /* 0 .. HUT_BOUNCES_MAX; HUT_BOUNCES_MAX + 1: none found */
  HutPoint points[HUT_BOUNCE_POINTS_MAX]; /* the way, mm: source, bounces, and a point outside */
  guint n_points;
} HutBouncePath;

/**
 * hut_sight_bounce_find:
 * @pitch_mm: distance of the points of the walls that are looked at, > 0
 *
 * The fewest diffuse bounces after which light from a source gets away, by a way out that
 * hut_sight_find () would take from the last wall. Every wall reflects into all directions that are
 * free. Strategy: breadth first over points of the walls' borders. Each of them is looked at
 * exactly, but a spot of wall shorter than the pitch that alone sees out can be missed; then a way
 * with more bounces is named.
 */
HutBouncePath hut_sight_bounce_find (const HutSightSection *section, double pitch_mm);
