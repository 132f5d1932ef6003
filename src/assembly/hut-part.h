/* src/assembly/hut-part.h: the pieces to cut, split to the bed.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-assembly.h"

typedef enum
{
  HUT_PART_PANEL,
  HUT_PART_GLAZING,
  HUT_PART_FRAME,
  HUT_PART_STRAP,
  HUT_PART_BAFFLE,
  HUT_PART_FACE_PLATE,
  HUT_PART_EXTRA, /* drawn by the user; on no panel */
  HUT_PART_TRAP,  /* a plate of a light trap; in a frame of its own */
} HutPartKind;

/* Work on a part that cuts nothing out of it. */
typedef enum
{
  HUT_PART_MARK_POCKET,  /* outline of a relief pocket */
  HUT_PART_MARK_CENTRE,  /* a small hole where a bit's spur goes in, cut through */
  HUT_PART_MARK_OUTLINE, /* scored instead of cut: a hole of the region that is opened by hand after its
                     * pocket was bored */
  HUT_PART_MARK_SINK,    /* outline of a countersink */
} HutPartMarkKind;

typedef struct
{
  HutPartMarkKind kind;
  const char *item; /* id of the hardware; lent */
  HutFace face;     /* the face that is worked on */
  double depth_mm;  /* POCKET; else 0 */
  guint hole;       /* OUTLINE: index in the region's holes */
  HutPath *path;    /* closed, counter-clockwise, panel frame */
} HutPartMark;

/* The panel of parts that lie on none. */
#define HUT_PART_NO_PANEL G_MAXUINT

/* One piece. Its region is in its panel's frame, so pieces of one panel lie where they belong. */
typedef struct
{
  HutPartKind kind;
  char *id;              /* "base-front", "lid-top-2", "strap-lid-top-1"; unique, NCName */
  char *label;           /* what is scored on it: short, ASCII */
  guint panel;           /* index in the assembly, or HUT_PART_NO_PANEL */
  HutFrame3 frame;       /* world; only without a panel: with one, its panel's frame holds */
  HutShellId shell;      /* what it moves with: not always its panel's */
  const char *item;      /* window id for glazing and frame, hardware id for face plates, else
                          * NULL; lent */
  const HutStock *stock; /* lent by the assembly */
  double thickness_mm;
  double depth_mm;       /* of its outer face behind the panel's outer face, 0 for panel pieces */
  HutRegion *region;     /* snapped to the grid; edges at splices are MATING */
  GPtrArray *marks;      /* HutPartMark */
  gboolean bought;       /* goes on the cut-to-size list */
} HutPart;

/* A straight line along which a panel (or frame) is parted. */
typedef struct
{
  guint panel;
  HutPartKind of;       /* PANEL, or FRAME for a frame's own seams */
  const char *item;     /* window id when of FRAME */
  gboolean vertical;    /* TRUE: u = at_mm */
  double at_mm;
  double from_mm, to_mm; /* the solid interval along the line */
  guint finger_count;   /* 0: straight */
  double reach_mm;      /* half the length of its fingers */
} HutSplice;

/* Part that a splice problem belongs to. */
typedef enum
{
  HUT_SPLIT_NO_PLACE,   /* no allowed position for a line: the panel stays whole and too large */
  HUT_SPLIT_BUTT,       /* a leg too short for fingers: straight seam */
  HUT_SPLIT_ALIGNED,    /* in line with the neighbour's seam: no room to stagger */
  HUT_SPLIT_NO_STRAP,   /* no room for a strap behind a seam */
  HUT_SPLIT_CANNOT,     /* glazing: cannot be spliced */
} HutSplitTroubleKind;

typedef struct
{
  HutSplitTroubleKind kind;
  guint panel;
  const char *item;
  HutPoint at;          /* mm, panel frame */
  double is_mm, must_mm;
} HutSplitTrouble;

typedef struct
{
  GPtrArray *parts;   /* HutPart */
  GArray *splices;    /* HutSplice */
  GArray *solids;     /* HutSolid of the straps */
  GArray *troubles;   /* HutSplitTrouble */
} HutPartSet;

/* Pure. @assembly must outlive the result. Empty for an assembly that is not whole. */
HutPartSet *hut_part_set_new (const HutAssembly *assembly) G_GNUC_WARN_UNUSED_RESULT;
void hut_part_set_free (HutPartSet *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutPartSet, hut_part_set_free)

/* TRUE when a mark says that this hole of the region is opened by hand and not cut. */
gboolean hut_part_opens_by_hand (const HutPart *self, guint hole);
/* Where the part is in the world: row-major 4x4; its frame's (u, v, w), w = 0 at its outer face. */
void hut_part_get_matrix (const HutPart *self, const HutAssembly *assembly, double matrix[16]);
/* TRUE when a rectangle goes on the usable bed, at 0 or 90 degrees, or at any angle if allowed. */
gboolean hut_cutter_takes (const HutCutter *self, double width_mm, double height_mm);
/* Usable bed: bed less the margin all round, mm; may be <= 0. */
double hut_cutter_usable_width_mm (const HutCutter *self);
double hut_cutter_usable_depth_mm (const HutCutter *self);

/* A stock's sheet as it lies on the bed: cut down to the bed where it is larger, turned by 90 degrees
 * when more of it fits that way, mm. */
void hut_cutter_sheet (const HutCutter *self, const HutStock *stock, double *width_mm, double *depth_mm);
/* TRUE when that sheet is turned. */
gboolean hut_cutter_turns_sheet (const HutCutter *self, const HutStock *stock);
/* Room for a part on that sheet: less the margin all round, one kerf, and what a tight fit lets mating
 * edges grow, mm; may be <= 0. */
void hut_cutter_room (const HutCutter *self, const HutStock *stock, double *width_mm, double *depth_mm);
/* TRUE when a rectangle of that stock can be cut: fits its room at 0, 90 or, if allowed, any angle. */
gboolean hut_cutter_takes_stock (const HutCutter *self, const HutStock *stock, double width_mm, double height_mm);
/**
 * hut_rect_fits_turned:
 * @angle_rad: (out) (optional): the turn, counter-clockwise, 0 .. pi/2
 *
 * Whether a rectangle fits into another one at some angle. The wanted width of a rectangle turned by a
 * is w cos a + h sin a, its height w sin a + h cos a (elementary trigonometry); both have one maximum
 * in between, so a fine grid of angles finds any room worth having.
 */
gboolean hut_rect_fits_turned (double width_mm, double height_mm, double room_width_mm, double room_height_mm, double *angle_rad);
/* (transfer full): the tool's path round the part: kerf and fit allowance applied. */
HutRegion *hut_part_dup_cut (const HutPart *self, GError **error) G_GNUC_WARN_UNUSED_RESULT;
/* (transfer full): the same as it is cut: a router, whose kerf is its tool's diameter, makes room in the
 * inner corners (hut_region_dup_relieved ()). What is packed needs hut_part_dup_cut () only: the relief lies
 * inside of the part. */
HutRegion *hut_part_dup_tool_way (const HutPart *self,
                                  HutCutterKind cutter,
                                  GError **error) G_GNUC_WARN_UNUSED_RESULT;
