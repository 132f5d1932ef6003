/* src/assembly/hut-assembly.h: the enclosure as derived from a design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"
#include "geom/hut-region.h"

/* How one edge of a panel meets its neighbour. Edges in the order bottom, right, top, left. */
typedef enum
{
  HUT_EDGE_BOTTOM,
  HUT_EDGE_RIGHT,
  HUT_EDGE_TOP,
  HUT_EDGE_LEFT,
  HUT_EDGE_COUNT
} HutEdge;

typedef enum
{
  HUT_JOINT_NONE,    /* a free edge */
  HUT_JOINT_FINGERS,
  HUT_JOINT_BUTT,    /* too short for fingers: needs a corner block */
} HutJointKind;

typedef struct
{
  HutJointKind kind;
  HutPanelId other;     /* the neighbour, unless kind is NONE */
  double depth_mm;      /* the neighbour's thickness */
  gboolean owns_ends;   /* this panel has the higher rank */
  double start_mm, end_mm; /* the edge prism along the edge, in u (bottom, top) or v (left, right) */
  guint finger_count;   /* odd; 1 for a butt joint */
  GArray *cuts_mm;      /* double: the finger borders from start to end, finger_count + 1 of them */
} HutEdgeJoint;

/* A hole of a panel: where it came from. */
typedef enum
{
  HUT_HOLE_OPENING,
  HUT_HOLE_WINDOW,
  HUT_HOLE_SCREWS,   /* of a window's frame: comes after the window's own */
  HUT_HOLE_HARDWARE, /* cutout and screw holes of one leaf; or what its face plate wants */
} HutHoleSource;

typedef struct
{
  HutHoleSource source;
  const char *item;  /* id of the opening, window or hardware; lent by the assembly's design */
  guint panel;       /* index */
  HutPoint centre;   /* mm, panel frame */
  GPtrArray *paths;  /* HutPath, counter-clockwise, panel frame: what is cut away */
  HutRect bounds;    /* of all paths */
  gboolean cut;      /* FALSE when it does not lie wholly inside the panel: then the panel is whole there */
} HutPlacedHole;

typedef struct
{
  HutPanelId id;
  const HutStock *stock; /* lent by the assembly's design */
  HutFrame3 frame;
  double width_mm, height_mm; /* of the outer rectangle */
  double thickness_mm;
  HutEdgeJoint edges[HUT_EDGE_COUNT];
  HutRegion *region;     /* with holes; outer rectangle is (0,0)-(width,height) */
  gboolean bought;       /* bought cut to size */
} HutPanel;

/* What a solid is: checks say its name, the canvas draws it. */
typedef enum
{
  HUT_SOLID_PANEL,
  HUT_SOLID_GLAZING,
  HUT_SOLID_FRAME,
  HUT_SOLID_STRAP,
  HUT_SOLID_LEDGE,
  HUT_SOLID_BAFFLE,
  HUT_SOLID_TRAP,       /* a plate of a light trap */
  HUT_SOLID_HARDWARE,   /* a body of a piece of hardware */
  HUT_SOLID_LEADS,      /* soft room of one: may touch soft room, not solids */
  HUT_SOLID_FACE_PLATE, /* carries hardware over a larger opening */
} HutSolidKind;

typedef struct
{
  HutSolidKind kind;
  HutShellId shell;  /* what it moves with */
  guint panel;       /* index of the panel it belongs to */
  const char *item;  /* id of the window, hardware or (trap) opening it belongs to, or NULL;
                      * lent */
  HutBox3 box;       /* world, lid closed */
} HutSolid;

/* A plate on a panel, in the panel's frame: a window's glazing or its retaining frame, or the face
 * plate of a piece of hardware. */
typedef struct
{
  HutSolidKind kind;     /* GLAZING, FRAME or FACE_PLATE */
  const char *item;      /* id of the window or hardware; lent */
  const HutWindow *window; /* GLAZING, FRAME; else NULL; lent */
  const HutStock *stock;   /* lent */
  guint panel;
  HutRegion *region;     /* panel frame */
  double depth0_mm, depth1_mm; /* behind the outer face, depth0 < depth1; < 0 before it */
  gboolean bought;
} HutPlate;

/* A baffle where it stands, in the frame of the wall that it is parallel to. */
typedef struct
{
  const HutBaffle *baffle; /* lent */
  const HutStock *stock;   /* lent */
  HutShellId shell;    /* what it moves with */
  guint panel;         /* index of that wall: its own shell's, or the base's when it stands on edge */
  HutRect rect;        /* mm, panel frame */
  double depth_mm;     /* of its outer face behind the panel's outer face */
  double gap_mm;       /* what is left to the wall that it reaches behind */
  double stand_off_mm; /* packing between it and its own wall; 0: it lies on it */
  gboolean on_edge;    /* stands on a lid that is a single panel */
  HutBox3 box;         /* world */
} HutStrip;
/* How a panel takes an item: see hut-pocket.h. Lengths mm. */
typedef struct
{
  gboolean thin;        /* the panel is thinner than the item holds in */
  gboolean needed;      /* thicker: a pocket, or a face plate */
  double floor_mm;      /* what a pocket leaves of the thickest reading */
  double floor_must_mm; /* the least that this stock, and this item, may have */
  double depth_mm;      /* of the pocket */
  double least_bit_mm;  /* what the hardware needs */
  double bit_mm;        /* the owner's next bit; 0 when there is none */
} HutPocketNeed;

/* One leaf of a piece of hardware, put on its panel. */
typedef struct
{
  const HutHardware *hardware; /* lent */
  const HutItem *item;         /* lent */
  guint leaf;
  guint panel;            /* index */
  HutFace face;           /* that this leaf lies on */
  HutPlacement placement; /* item frame to panel frame */
  HutRect footprint;      /* panel frame: what it covers of the face, and its holes */
  HutPocketNeed need;
  gboolean bored;         /* it has a pocket, in the face across from `face` */
  HutPoint pocket_at;     /* its middle, panel frame */
  int plate;              /* index of its face plate, or -1 */
} HutPlacedHardware;

/* Why a derived thing could not be made as asked. Checks turn these into findings. */
typedef enum
{
  HUT_TROUBLE_STOCK_MISSING,   /* a panel's, glazing's or frame's stock id names no stock */
  HUT_TROUBLE_TOO_THIN_BOX,    /* walls thicker than the box: no inside left */
  HUT_TROUBLE_NO_MACHINE,      /* fitted, but the machine has no body */
  HUT_TROUBLE_SEAM,            /* seam outside the box, or no wall left above or below it */
  HUT_TROUBLE_HINGE,           /* this lid cannot turn on that line */
  HUT_TROUBLE_PANEL_UNKNOWN,   /* an opening or window on a panel that this enclosure has not */
  HUT_TROUBLE_ANCHOR,          /* anchored to a machine body that does not exist */
  HUT_TROUBLE_HOLE_OUTSIDE,    /* not wholly inside its panel, or crossing another hole */
  HUT_TROUBLE_BAFFLE,          /* no room for a baffle between its neighbours */
  HUT_TROUBLE_ITEM_MISSING,    /* hardware whose item the design has not */
  HUT_TROUBLE_LEAF,            /* hinge, latch or stay where no lid turns or no second panel is */
  HUT_TROUBLE_SIZE,            /* a size that no bench has: more than HUT_SIZE_MAX_MM or not finite */
} HutTroubleKind;

#define HUT_SIZE_MAX_MM 10000.0 /* own choice: no bench machine's house is larger */

typedef struct
{
  HutTroubleKind kind;
  HutPanelId panel;
  const char *item; /* id in the design or NULL; lent */
  double is_mm, must_mm;
} HutTrouble;

typedef struct
{
  const HutDesign *design; /* the assembly's own copy */
  gboolean whole;          /* FALSE: no panels, see troubles */
  HutVec3 outer_mm;        /* size of the whole shell, lid closed */
  HutBox3 inside;          /* world: the free room between the walls, before plates and straps */
  HutVec3 machine_at;      /* world position of the machine frame's origin */
  double seam_z_mm;        /* world height of the upper border of the base (hood, lift-off, top) */
  gboolean hinged;
  HutVec3 hinge_point, hinge_axis; /* world; unit axis; the lid opens by the right-hand rule */
  GPtrArray *panels;   /* HutPanel */
  GPtrArray *holes;    /* HutPlacedHole */
  GPtrArray *plates;   /* HutPlate */
  GArray *strips;      /* HutStrip */
  GPtrArray *hardware; /* HutPlacedHardware */
  GArray *solids;      /* HutSolid, without straps: see HutPartSet */
  GArray *troubles;    /* HutTrouble */
} HutAssembly;

/**
 * hut_assembly_new:
 * @design: copied
 *
 * Pure: the same design gives the same assembly. Never fails: what cannot be made is in `troubles`.
 */
HutAssembly *hut_assembly_new (const HutDesign *design) G_GNUC_WARN_UNUSED_RESULT;
void hut_assembly_free (HutAssembly *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutAssembly, hut_assembly_free)

/* (transfer none) (nullable) */
const HutPanel *hut_assembly_get_panel (const HutAssembly *self, HutPanelId id);
const HutPlacedHole *hut_assembly_get_hole (const HutAssembly *self, const char *item);
/* The first leaf of a piece of hardware. (transfer none) (nullable) */
const HutPlacedHardware *hut_assembly_get_hardware (const HutAssembly *self, const char *id);
/* What the hardware on a shell weighs, kg: a leaf bears its half of an item that has two. */
double hut_assembly_hardware_mass_kg (const HutAssembly *self, HutShellId shell);
/* Index in `panels`, or -1. */
int hut_assembly_find_panel (const HutAssembly *self, HutPanelId id);

/* A body of the machine as it stands in the enclosure, swept by its travel; world. */
HutBox3 hut_assembly_body_box (const HutAssembly *self, const HutBody *body);

/**
 * hut_assembly_position_for:
 * @hole_at: where the middle shall be, panel frame, mm
 *
 * Rewrites the offsets of @position, keeping its anchors, so that its middle is at @hole_at
 * (snapped to the grid). Returns: FALSE when the panel or body is unknown; @position untouched.
 */
gboolean hut_assembly_position_for (const HutAssembly *self, HutPoint hole_at, HutPosition *position);
/* The other way round: the middle of @position in its panel's frame. */
gboolean hut_assembly_locate (const HutAssembly *self, const HutPosition *position, HutPoint *middle);
/* Outlines of an opening or window about (0,0), unturned by its panel; counter-clockwise. */
GPtrArray *hut_opening_dup_paths (const HutOpening *self) G_GNUC_WARN_UNUSED_RESULT;
