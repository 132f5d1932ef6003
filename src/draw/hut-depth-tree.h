/* src/draw/hut-depth-tree.h: solids in the order in which they must be painted.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A binary space partition (Fuchs, Kedem, Naylor, "On visible surface generation by a priori tree
 * structures", 1980; from memory) over blocks instead of polygons: each plane is a face of a block,
 * a block that lies on both sides is cut in two. The tree belongs to one pose of the solids; a walk
 * gives the order for one direction of view, so that turning the view costs a walk only. */
#pragma once
#include "geom/hut-space.h"

/* The corners origin + (0 or 1) a + (0 or 1) b + (0 or 1) c; a, b and c square to each other, none
 * without length, mm, world. Blocks may touch; where two overlap, either may be in front. */
typedef struct
{
  HutVec3 origin, a, b, c;
} HutBlock;

/* Corner 0 .. 7: bit 0 along a, bit 1 along b, bit 2 along c. */
HutVec3 hut_block_corner (const HutBlock *self, guint index);

typedef struct _HutDepthTree HutDepthTree;

/* @blocks: (array length=count): read during the call only */
HutDepthTree *hut_depth_tree_new (const HutBlock *blocks, guint count) G_GNUC_WARN_UNUSED_RESULT;
void hut_depth_tree_free (HutDepthTree *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutDepthTree, hut_depth_tree_free)

/* @block: its index; @corners: (element-type HutVec3) (nullable): all corners of the piece of it
 * that is to be painted now, NULL for the whole block. */
typedef void (*HutDepthVisit) (guint block, const GArray *corners, gpointer user_data);

/* Visits all pieces, farthest first. @into: direction of view, into the picture; parallel
 * projection. A piece is to be painted inside the convex hull of its corners. */
void hut_depth_tree_walk (const HutDepthTree *self,
                          HutVec3 into,
                          HutDepthVisit visit,
                          gpointer user_data);
