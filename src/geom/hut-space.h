/* src/geom/hut-space.h: boxes and frames in space.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-geom.h"

/* World vector, mm: x right, y to the back, z up. */
typedef struct
{
  double x, y, z;
} HutVec3;

/* Axis-parallel box, mm; empty when max < min on an axis. */
typedef struct
{
  HutVec3 min, max;
} HutBox3;

/* Right-handed frame of a panel: unit vectors in the world, w outwards, origin on the outer
 * face. */
typedef struct
{
  HutVec3 origin, u, v, w;
} HutFrame3;

/* Sum, multiple and inner product (mm2 for two lengths, mm for a length on a unit vector). */
HutVec3 hut_vec3_add (HutVec3 a, HutVec3 b);
HutVec3 hut_vec3_scale (HutVec3 a, double factor_ratio);
double hut_vec3_dot (HutVec3 a, HutVec3 b);
/* Outer product, right-handed: x cross y = z. */
HutVec3 hut_vec3_cross (HutVec3 a, HutVec3 b);
/* @a turned about the line through the origin along @axis (unit), by the right-hand rule. Source:
 * O. Rodrigues' formula, a cos t + (axis x a) sin t + axis (axis . a) (1 - cos t). */
HutVec3 hut_vec3_turn (HutVec3 a, HutVec3 axis, double angle_rad);
/* The world point at (u, v) of the frame, w_mm along its outward normal. */
HutVec3 hut_frame3_to_world (const HutFrame3 *self, double u_mm, double v_mm, double w_mm);
/* The frame turned about the line through @point along @axis (unit), by the right-hand rule. */
HutFrame3 hut_frame3_turn (const HutFrame3 *self, HutVec3 point, HutVec3 axis, double angle_rad);
/* The box that a rectangle of the frame from depth w0 to w1 fills in the world. Only for frames
 * whose axes are world axes; empty for an empty rectangle. */
HutBox3 hut_frame3_box (const HutFrame3 *self, HutRect rect, double w0_mm, double w1_mm);
/* The shadow of a world box on the frame's (u, v) plane; empty for an empty box. */
HutRect hut_frame3_shadow (const HutFrame3 *self, const HutBox3 *box);

/* TRUE also when a coordinate is not a number; a box without thickness is not empty. */
gboolean hut_box3_is_empty (const HutBox3 *self);
/* An empty box adds nothing. */
HutBox3 hut_box3_union (const HutBox3 *a, const HutBox3 *b);
/* Box swept by a straight travel along each axis, mm (signed). */
HutBox3 hut_box3_sweep (const HutBox3 *self, HutVec3 travel);
HutBox3 hut_box3_shift (const HutBox3 *self, HutVec3 by);
/* Distance of two boxes, mm; 0 when they touch or overlap; infinite when one is empty. */
double hut_box3_distance_mm (const HutBox3 *a, const HutBox3 *b);
/* Depth of overlap: the smallest move along an axis that parts them, mm; 0 when they do not
 * overlap. */
double hut_box3_overlap_mm (const HutBox3 *a, const HutBox3 *b);
/* 0 for an empty box. */
double hut_box3_volume_mm3 (const HutBox3 *self);
