/* src/assembly/hut-face-plate.h: a thinner plate that carries an item over a larger opening.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * For cutters that only cut through, and for items whose screws leave the panel too little wood. The
 * plate lies on the face that the item is mounted from. Four bolts in its corners hold it. */
#pragma once
#include "design/hut-design.h"

/* Opening round what stands behind the plate, on each side, mm (common practice, no source). */
#define HUT_PLATE_ROOM_MM 2.0
/* Plate over its opening and over the item's flange, on each side, mm. Own choice: twice the way from
 * a screw to the plate's edge; common practice asks for 8. */
#define HUT_PLATE_OVERLAP_MM 16.0
/* From the middle of a plate's screw to its edges, mm. Own choice: more than twice the hole, as
 * acrylic wants it (common practice, no source), and a web of 6 beside it. */
#define HUT_PLATE_SCREW_MM 8.0
#define HUT_PLATE_RADIUS_MM 3.0
#define HUT_PLATE_THREAD_MM 3.0
#define HUT_PLATE_SCREWS 4

/* All in the item's frame, mm. */
typedef struct
{
  HutPoint middle;
  gboolean round;           /* the opening */
  double width_mm, height_mm; /* of the opening */
  HutRect rect;             /* the plate */
  HutPoint screws[HUT_PLATE_SCREWS];
} HutFacePlate;

/* Sizes of opening and plate for an item, from its cuts, its flange and what stands behind it. */
void hut_face_plate_find (const HutItem *item, HutFacePlate *plate);
/* Outlines counter-clockwise, item frame: the opening in the panel, the plate. (transfer full) */
HutPath *hut_face_plate_dup_opening (const HutFacePlate *self) G_GNUC_WARN_UNUSED_RESULT;
HutPath *hut_face_plate_dup_outline (const HutFacePlate *self) G_GNUC_WARN_UNUSED_RESULT;
/* A screw's hole, in plate and panel alike. */
HutPath *hut_face_plate_dup_screw (const HutFacePlate *self,
                                   guint index,
                                   HutHoleClass hole_class) G_GNUC_WARN_UNUSED_RESULT;
