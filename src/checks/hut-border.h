/* src/checks/hut-border.h: how near the borders of two paths come to each other.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-path.h"
#include "geom/hut-width.h"

/**
 * hut_border_find_gap:
 * @limit_mm: gaps from here on are of no interest, mm
 * @gap: (out caller-allocates): the nearest two points, one on each border, and their distance;
 *   width 0 where the borders cross or touch
 *
 * Exact with lines and arcs. A path inside of another one has the gap between the borders: being
 * inside is not looked at.
 *
 * Returns: FALSE with @gap untouched when no gap is under @limit_mm
 */
gboolean hut_border_find_gap (const HutPath *a, const HutPath *b, double limit_mm, HutWeb *gap);

/* The same for one segment against a path: a splice line, an edge. */
gboolean hut_border_find_segment_gap (const HutSegment *segment, const HutPath *path, double limit_mm, HutWeb *gap);
