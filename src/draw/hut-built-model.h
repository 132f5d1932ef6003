/* src/draw/hut-built-model.h: the enclosure as blocks in space, in one pose.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Each panel becomes blocks that do not overlap: its middle, and each of its fingers. So blocks of
 * different panels only touch, as the shell is a partition, and can be ordered by depth. */
#pragma once
#include "assembly/hut-part.h"
#include "draw/hut-depth-tree.h"

/* How the enclosure stands. */
typedef struct
{
  double lid_rad; /* how far the lid is open; of a lift-off lid: its lift is this share of a
                   * right angle times the lid's height */
  double
      motion_ratio; /* moving bodies: 0 where they were measured .. 1 at the end of their travel */
  double explode_ratio; /* 0 assembled .. 1 panels apart by half of the longest side */
  gboolean hide_lid, hide_machine;
} HutBuiltPose;

typedef enum
{
  HUT_BUILT_PANEL,
  HUT_BUILT_GLAZING,
  HUT_BUILT_INSIDE, /* frames, straps, ledges, and what else sits on panels */
  HUT_BUILT_STATIC, /* of the machine */
  HUT_BUILT_MOVING,
} HutBuiltKind;

/* A side of a block is drawn only where no neighbour of the same panel lies against it. */
typedef struct
{
  HutEdge side;          /* of the block's rectangle */
  double from_mm, to_mm; /* along u (bottom, top) or v (left, right), panel frame */
} HutBuiltSide;

typedef struct
{
  HutBuiltKind kind;
  int panel;           /* index, or -1 */
  HutFrame3 frame;     /* where it stands in the pose; w outwards */
  HutRect rect;        /* mm, in the frame */
  double w0_mm, w1_mm; /* from and to along the frame's w, w0 < w1 */
  GArray *sides;       /* HutBuiltSide: open stretches of its four sides */
  GPtrArray *holes; /* of GArray of HutPoint: openings through it, flattened; lent by the model */
} HutBuiltBlock;

typedef struct
{
  GPtrArray *blocks; /* HutBuiltBlock */
  HutDepthTree *tree;
  HutVec3 low, high; /* bounds of all, mm, world */
} HutBuiltModel;

/* @parts: (nullable): straps are drawn when given. Pure. */
HutBuiltModel *hut_built_model_new (const HutAssembly *assembly,
                                    const HutPartSet *parts,
                                    const HutBuiltPose *pose) G_GNUC_WARN_UNUSED_RESULT;
void hut_built_model_free (HutBuiltModel *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutBuiltModel, hut_built_model_free)
