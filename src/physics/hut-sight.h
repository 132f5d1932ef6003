/* src/physics/hut-sight.h: straight lines of sight in a section, exact.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A section is a plane with walls (rectangles, opaque) and sources (rectangles out of which light
 * comes). Coordinates are those of the section, mm. */
#pragma once
#include "geom/hut-geom.h"

/* A gap of at most this width counts as closed, mm: one step of the grid on which parts lie. */
#define HUT_SIGHT_CLOSED_MM HUT_GRID_MM

typedef struct
{
  const HutRect *walls; /* (array length=n_walls) */
  guint n_walls;
  const HutRect *sources; /* (array length=n_sources): a point or a line is a rectangle, too */
  guint n_sources;
} HutSightSection;

/* From a point of a source, mm, in a direction (unit vector, a ratio). */
typedef struct
{
  HutPoint from;
  HutPoint direction;
} HutSightLine;

/**
 * hut_sight_find:
 * @line: (out caller-allocates): untouched when FALSE is returned
 *
 * Whether light gets away without end in a straight line from any point of a source. Touching a
 * wall is no hindrance; passing between walls that are HUT_SIGHT_CLOSED_MM apart or less is.
 *
 * Strategy: walls are grown by half of that, which closes such gaps. If a bundle of free rays is
 * left, it can be moved until it touches two corners, of walls or sources. So it is enough to look
 * at the lines through all pairs of corners: one of them is free, or none is. Cubic in the number
 * of walls.
 */
gboolean hut_sight_find (const HutSightSection *section, HutSightLine *line);

/* Whether any point of a source sees any point of @target in a straight line; the line points from
 * the source to it. */
gboolean hut_sight_find_to (const HutSightSection *section, const HutRect *target, HutSightLine *line);
