/* src/geom/hut-geos.h: the bridge to GEOS: validity, boolean operations, distance.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Arcs are flattened with points on the circle, at most HUT_CHORD_MM off. Each call has a GEOS
 * context of its own, so calls from several threads do not meet.
 *
 * Errors of all calls: HUT_GEOM_ERROR_INVALID when an outline is not finite, no polygon, or (not
 * for buffer and distance) not valid; HUT_GEOM_ERROR_NO_CIRCLE when an arc has no chord;
 * HUT_GEOM_ERROR_ENGINE with its reason when GEOS refuses. */
#pragma once
#include "geom/hut-region.h"

typedef enum
{
  HUT_GEOS_UNION,
  HUT_GEOS_INTERSECTION,
  HUT_GEOS_DIFFERENCE,
} HutGeosOp;

/* FALSE with GEOS's reason and the place in @error: crossing or touching outlines, holes
 * outside. */
gboolean hut_geos_is_valid (const HutRegion *self, GError **error);
/* TRUE when the path does not cross or touch itself. */
gboolean hut_geos_path_is_simple (const HutPath *self);
/* Area of the boolean result, mm2; -1 on error. */
double hut_geos_op_area_mm2 (const HutRegion *a, const HutRegion *b, HutGeosOp op, GError **error);
/* (element-type HutRegion) (transfer full): the pieces, as polygons of plain lines; empty when
 * no area is left; NULL on error. */
GPtrArray *hut_geos_op (const HutRegion *a,
                        const HutRegion *b,
                        HutGeosOp op,
                        GError **error) G_GNUC_WARN_UNUSED_RESULT;
/* Area after a mitred buffer of @distance_mm by GEOS, mm2 (a second opinion for tests). */
double hut_geos_buffer_area_mm2 (const HutRegion *self, double distance_mm, GError **error);
/* Smallest distance of two regions, mm; 0 when they meet; -1 on error. */
double hut_geos_distance_mm (const HutRegion *a, const HutRegion *b, GError **error);
