/* src/design/hut-design.h: what the user edits. Small, copyable; everything else is derived from it.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * All lengths mm, masses kg, angles degrees (the one place where degrees are stored: they are what the
 * user typed and what the file holds). Ids are XML NCNames, unique within their kind of item. */
#pragma once
#include "catalog/hut-item.h"
#include "catalog/hut-screw.h"
#include "design/hut-work.h"
#include "geom/hut-space.h"

/* ---- panels --------------------------------------------------------------------------------- */

typedef enum
{
  HUT_SIDE_FRONT,
  HUT_SIDE_BACK,
  HUT_SIDE_LEFT,
  HUT_SIDE_RIGHT,
  HUT_SIDE_BOTTOM,
  HUT_SIDE_TOP,
  HUT_SIDE_COUNT
} HutSide;

typedef enum
{
  HUT_SHELL_BASE,
  HUT_SHELL_LID,
  HUT_SHELL_COUNT
} HutShellId;

/* A panel's name everywhere, in files "base-front", "lid-top". */
typedef struct
{
  HutShellId shell;
  HutSide side;
} HutPanelId;

/* TRUE when both name the same panel. */
gboolean hut_panel_id_equal (HutPanelId a, HutPanelId b);
/* (transfer none): "base-front"; static. */
const char *hut_panel_id_to_string (HutPanelId id);
gboolean hut_panel_id_from_string (const char *text, HutPanelId *id);

/* ---- machine -------------------------------------------------------------------------------- */

typedef enum
{
  HUT_BODY_STATIC,
  HUT_BODY_MOVING,
  HUT_BODY_KEEP_OUT, /* a cable loop, a bend of hose, room for a hand */
} HutBodyKind;

/* A measured box in the machine's frame: origin at the front left of the footprint, on the bench. */
typedef struct
{
  char *id, *name;
  HutBodyKind kind;
  HutBox3 box;    /* mm; a moving body where it was measured */
  HutVec3 travel; /* mm, signed: how far it goes from there along each axis; 0 where it stands still.
                   * A keep-out may travel too: a cable loop goes with its gantry */
} HutBody;

typedef enum
{
  HUT_SERVICE_LEAD,
  HUT_SERVICE_HOSE,
  HUT_SERVICE_DUCT,
} HutServiceKind;

/* Something that must cross the wall. */
typedef struct
{
  char *id, *name;
  HutServiceKind kind;
  double line_mm;                      /* outer diameter of the line */
  double head_width_mm, head_height_mm; /* the largest head that must pass: of a lead a rectangle, of
                                         * a hose or duct round, where both are its diameter */
  HutVec3 at;                          /* where it leaves the machine, machine frame */
} HutService;

/* Free room that the owner wants between the machine's swept volume and whatever is around it, mm. */
typedef struct
{
  double left, right, front, back, top;
} HutClearance;

typedef struct
{
  char *name;
  double mass_kg;
  GPtrArray *bodies;   /* HutBody */
  GPtrArray *services; /* HutService */
  HutClearance clearance_mm;
  HutWork work;
} HutMachine;

/* Free room around the finished enclosure, mm; HUT_ROOM_FREE where nothing is near. */
#define HUT_ROOM_FREE (-1.0)
typedef struct
{
  double left, right, front, back;
  double above; /* from the bench to the shelf over it */
  double temperature_c; /* of the room when it is warm, deg C; or HUT_UNKNOWN */
  double altitude_m;    /* of the place over sea level, m; or HUT_UNKNOWN */
} HutRoom;

/* ---- cutter and stock ----------------------------------------------------------------------- */

typedef enum
{
  HUT_CUTTER_LASER,
  HUT_CUTTER_ROUTER,
} HutCutterKind;

typedef struct
{
  char *name;
  HutCutterKind kind;
  double bed_width_mm, bed_depth_mm;
  double margin_mm;      /* not usable, all round */
  double part_gap_mm;    /* least distance between parts on a sheet */
  gboolean any_angle;    /* parts may lie on the bed at any angle, not only 0 and 90 degrees */
  /* how cuts begin and what holds parts while they are cut; 0 and FALSE as files before had it */
  double lead_in_mm;     /* a cut begins so far from its line, in the waste; 0: on the line */
  gboolean tabs;         /* short bridges hold parts and large waste; sized by the stock */
  /* for the time that a sheet takes */
  double travel_mm_min;      /* speed between cuts */
  double acceleration_mm_s2; /* along any direction */
  /* router */
  double plunge_mm_min;  /* speed downwards */
  double spindle_rpm;    /* turns a minute */
  double safe_mm;        /* height over the sheet in which the tool travels */
  double through_mm;     /* how deep it goes under the sheet */
} HutCutter;

/* What a cutter has where nothing else was said. Own choice: small bench machines; the first two are
 * what such controllers are often set to on delivery (from memory). */
#define HUT_CUTTER_TRAVEL_MM_MIN 6000.0
#define HUT_CUTTER_ACCELERATION_MM_S2 500.0
#define HUT_CUTTER_PLUNGE_MM_MIN 300.0
#define HUT_CUTTER_SPINDLE_RPM 18000.0
#define HUT_CUTTER_SAFE_MM 5.0
#define HUT_CUTTER_THROUGH_MM 0.3

typedef enum
{
  HUT_MATERIAL_PLYWOOD,
  HUT_MATERIAL_MDF,
  HUT_MATERIAL_HDF,
  HUT_MATERIAL_ACRYLIC,
  HUT_MATERIAL_POLYCARBONATE,
  HUT_MATERIAL_OTHER,
} HutMaterial;

typedef enum
{
  HUT_FIT_PRESS,
  HUT_FIT_SLIP,
  HUT_FIT_GLUE,
} HutFitKind;

/* Which side of the sheet the grain runs along. */
typedef enum
{
  HUT_GRAIN_NONE,  /* none, or none that is seen */
  HUT_GRAIN_WIDTH,
  HUT_GRAIN_DEPTH,
} HutGrain;

/* How the grain shall run on the pieces of the shell; of a top or bottom, up is from front to back. */
typedef enum
{
  HUT_GRAIN_RULE_UP,
  HUT_GRAIN_RULE_ACROSS,
  HUT_GRAIN_RULE_FREE,
} HutGrainRule;

/* A material with its measured thickness, and how the cutter cuts it (its recipe). */
typedef struct
{
  char *id, *name;
  HutMaterial material;
  double nominal_mm;         /* only a name */
  GArray *readings_mm;       /* double, >= 1 caliper readings */
  double sheet_width_mm, sheet_depth_mm;
  HutGrain grain;
  HutGrainRule grain_rule;   /* says nothing without grain */
  double price;              /* per sheet, in the owner's currency; 0 unknown */
  double density_kg_m3;
  double smallest_web_mm;
  HutFitKind fit;            /* what the joints of this stock shall be */
  double allowance_mm;       /* slot minus tongue; > 0 loose */
  /* what the coupon said; all 0 while none was read */
  double allowance_error_mm; /* +- of the allowance; > 0: measured */
  double fit_shift_mm;       /* how much looser joints of this stock feel than others with that gap */
  /* recipe: this stock on the design's cutter */
  double kerf_mm, kerf_error_mm; /* measured width and its +- error */
  double speed_mm_min, power_percent;
  guint passes;
} HutStock;

/* ---- shell ---------------------------------------------------------------------------------- */

typedef enum
{
  HUT_LID_HOOD,     /* hinged, five sided */
  HUT_LID_TOP,      /* hinged top panel */
  HUT_LID_LIFT_OFF, /* five sided, no hinge */
  HUT_LID_FRONT,    /* hinged front */
} HutLidKind;

typedef enum
{
  HUT_HINGE_BACK,  /* hood, top */
  HUT_HINGE_LEFT,  /* hood, top, front */
  HUT_HINGE_RIGHT, /* hood, top, front */
  HUT_HINGE_TOP,   /* front only: opens upwards */
} HutHinge;

typedef enum
{
  HUT_BOTTOM_JOINTED, /* finger joints */
  HUT_BOTTOM_INSET,   /* between the walls, screwed to corner blocks or ledges */
  HUT_BOTTOM_UNDER,   /* under the walls, screwed */
  HUT_BOTTOM_BOUGHT,  /* under the walls, bought cut to size: not on the bed, not split */
  HUT_BOTTOM_OPEN,
} HutBottomKind;

typedef struct
{
  gboolean fitted;              /* inside size derived from the machine; else the sizes below */
  HutVec3 inside_mm;            /* width, depth, height inside; used when not fitted */
  HutLidKind lid;
  HutHinge hinge;               /* not for lift-off */
  double seam_height_mm;        /* hood, lift-off: outer height of the base, bench to seam */
  double seam_gap_mm;           /* between base and lid */
  double hinge_offset_mm;       /* hinge axis outside the wall's outer face; 0 = in the face */
  double opening_angle_deg;     /* how far the lid shall open */
  double swing_clearance_mm;    /* least distance of the moving lid to everything but the base */
  HutBottomKind bottom;
  double ledge_mm;              /* inset bottom: section of the ledge under it */
  char *stock[HUT_SHELL_COUNT][HUT_SIDE_COUNT]; /* stock id per panel; NULL = default_stock */
  char *default_stock;
  HutDuct duct;
  HutFinishing finishing;
  HutStay stay;
} HutShell;

typedef struct
{
  double finger_ratio;        /* finger width / thickness: 1.5 .. 6, default 3 */
  double splice_length_ratio; /* length of splice fingers / thickness: 3 .. 5, default 3 */
  double splice_width_ratio;  /* width of splice fingers / thickness: 1.5 .. 3, default 2 */
  gboolean straps;            /* back each splice with a strap */
  double strap_ratio;         /* strap width / thickness, default 15 */
} HutJoints;

/* ---- baffles -------------------------------------------------------------------------------- */

/* A strip inside along one side of the seam, against light and draught. It is fixed to one shell and
 * reaches past the seam behind the wall of the other one. A lid that is a single panel (top, front)
 * carries its strips on edge, whatever `shell` says: there is no wall for them to lie on. */
typedef struct
{
  HutSide side;      /* where along the seam; one of a side */
  HutShellId shell;  /* what it is fixed to */
  double overlap_mm; /* how far it reaches behind the other shell's wall */
  double gap_mm;     /* least room between the two */
  double hold_mm;    /* how much of it lies on its own shell's wall */
  char *stock;
} HutBaffle;

/* ---- windows and openings ------------------------------------------------------------------- */

typedef enum
{
  HUT_ANCHOR_START,  /* left, bottom: offset runs inwards */
  HUT_ANCHOR_CENTRE, /* offset runs right, up */
  HUT_ANCHOR_END,    /* right, top: offset runs inwards */
  HUT_ANCHOR_BODY,   /* centre of a machine body's shadow on the panel; offset runs right, up */
} HutAnchorKind;

/* Where the middle of a thing is on its panel, so that it survives a change of size. */
typedef struct
{
  HutPanelId panel;
  HutAnchorKind u_anchor, v_anchor;
  double u_offset_mm, v_offset_mm;
  char *body; /* id, when an anchor is HUT_ANCHOR_BODY, else NULL */
} HutPosition;

typedef struct
{
  char *id, *name;
  HutPosition at;
  double width_mm, height_mm, radius_mm; /* the clear opening */
  char *glazing_stock, *frame_stock;
  double overlap_mm;      /* glazing and frame over the panel, all round */
  gboolean glazing_bought; /* cut to size by the supplier: not on the bed */
  double screw_mm;         /* thread of the frame's screws; HUT_ROOM_FREE: the frame is bonded */
} HutWindow;

typedef enum
{
  HUT_SHAPE_ROUND,
  HUT_SHAPE_RECTANGLE,
  HUT_SHAPE_SLOT,    /* half round ends; width = overall length, height = breadth */
  HUT_SHAPE_PATTERN, /* holes of one diameter */
} HutShape;

typedef enum
{
  HUT_FACE_OUTSIDE,
  HUT_FACE_INSIDE,
} HutFace;

typedef struct
{
  char *id, *name;
  HutPosition at;
  HutFace face; /* the face it is worked from */
  HutShape shape;
  double diameter_mm;                    /* round; each hole of a pattern */
  double width_mm, height_mm, radius_mm; /* rectangle, slot */
  GArray *holes;                         /* HutPoint offsets, pattern only, mm */
  double turn_deg;                       /* counter-clockwise seen from outside */
  char *serves;                          /* service id or NULL */
  double trap_mm;   /* clear depth of the light trap behind it; HUT_ROOM_FREE: none */
  char *trap_stock; /* stock id; NULL: that of its panel */
} HutOpening;

/* ---- hardware -------------------------------------------------------------------------------- */

/* What is done where a panel is thicker than an item can hold. A bit's centre spur needs wood, and
 * after the cutter has opened the hole there is none. */
typedef enum
{
  HUT_POCKET_DISC,  /* the waste disc goes back into the hole while the pocket is bored */
  HUT_POCKET_BORE,  /* the cutter leaves the hole shut and makes a centre mark: the pocket is bored
                     * first, and the hole is opened by hand along the scored line */
  HUT_POCKET_PLATE, /* no pocket: a thinner face plate over a larger opening */
} HutPocketWay;

/* A piece of hardware put on a panel, or, when its item has two leaves, across the hinge line or the
 * seam: then its place along the line is the offset across that would be on the base's panel (the
 * one upwards counts where the line stands upright); what is across the line follows it. */
typedef struct
{
  char *id, *name;
  char *item;        /* id of a HutItem of the design */
  HutPosition at;    /* of the item's (0,0) */
  HutFace face;      /* the face it is mounted from; from inside its frame is seen from inside, so
                      * that outside sees it mirrored (u -> -u) */
  double turn_deg;   /* counter-clockwise seen from outside; steps of 90 unless it is round */
  HutHoleClass hole_class;
  char *serves;      /* service id or NULL */
  HutPocketWay pocket_way;
  char *plate_stock; /* PLATE: stock id; else NULL */
  double narrow_mm;  /* its cutout is so much narrower than the item says, both ways: an air hole that
                      * leaves more wood to its screws; >= 0 */
  gboolean bolted;   /* its wood screws are bolts with nuts instead */
  gboolean sunk;     /* its bolts come from the face across, heads countersunk in the panel */
} HutHardware;

/* ---- extra plates ---------------------------------------------------------------------------- */

/* A rectangle of an outline, by its middle; the plate's own frame, mm. */
typedef struct
{
  double u_mm, v_mm, width_mm, height_mm;
} HutExtraRect;

/* A hole: round when the radius is half of both sides. */
typedef struct
{
  double u_mm, v_mm, width_mm, height_mm, radius_mm;
} HutExtraHole;

/* A flat part that the user draws, cut in the same set: a foot, a bracket, a camera arm. */
typedef struct
{
  char *id, *name;
  char *stock;
  guint count;      /* how many of it */
  double radius_mm; /* of all corners of its outline */
  GArray *rects;    /* HutExtraRect, >= 1: their union is the outline */
  GArray *holes;    /* HutExtraHole */
} HutExtra;

/* ---- sheets --------------------------------------------------------------------------------- */

/* Where a part lies on a sheet of its stock: what the owner laid by hand, and what lay beside it
 * then. The part may be gone since, or have another size: what comes of that is in
 * assembly/hut-spot-place.h. */
typedef struct
{
  char *part;                /* id of a HutPart */
  guint sheet;               /* 1.. within the part's stock */
  double left_mm, front_mm;  /* from the sheet's front left corner to that of the part's box */
  double turn_deg;           /* counter-clockwise from how its panel is seen, 0 .. 360 */
  double width_mm, height_mm; /* the part's box before it is turned, as it was when it was laid */
  gboolean kept;             /* put there by hand: nothing else moves it. Else it lies there until
                              * it has to make room, or a part of its stock changes */
} HutSpot;

/* ---- the whole ------------------------------------------------------------------------------- */

typedef struct
{
  char *name;
  HutMachine machine;
  HutRoom room_mm;
  HutCutter cutter;
  GPtrArray *stocks;   /* HutStock */
  HutShell shell;
  HutJoints joints;
  GPtrArray *baffles;  /* HutBaffle */
  GPtrArray *windows;  /* HutWindow */
  GPtrArray *openings; /* HutOpening */
  GPtrArray *extras;   /* HutExtra */
  GPtrArray *items;    /* HutItem: a copy of each one that `hardware` uses */
  GPtrArray *hardware; /* HutHardware */
  GArray *bits_mm;     /* double: diameters of the owner's flat-bottom bits */
  GPtrArray *spots;    /* HutSpot: at most one of a part */
} HutDesign;

/* A small valid design: one machine body, stocks for walls and glazing, a hood hinged at the back. */
HutDesign *hut_design_new (void) G_GNUC_WARN_UNUSED_RESULT;
/* Nothing in it: for readers that fill every member. */
HutDesign *hut_design_new_empty (void) G_GNUC_WARN_UNUSED_RESULT;
HutDesign *hut_design_copy (const HutDesign *self) G_GNUC_WARN_UNUSED_RESULT;
gboolean hut_design_equal (const HutDesign *a, const HutDesign *b);
void hut_design_free (HutDesign *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutDesign, hut_design_free)

/* Look-ups: (transfer none) (nullable), valid until the design changes. */
HutStock *hut_design_get_stock (const HutDesign *self, const char *id);
/* The stock of a panel: its own, else the default one; NULL when the id names none. */
HutStock *hut_design_get_panel_stock (const HutDesign *self, HutPanelId panel);
HutOpening *hut_design_get_opening (const HutDesign *self, const char *id);
HutWindow *hut_design_get_window (const HutDesign *self, const char *id);
HutHardware *hut_design_get_hardware (const HutDesign *self, const char *id);
/* Where an opening, a window or a piece of hardware is; NULL when the id names none. */
HutPosition *hut_design_get_position (const HutDesign *self, const char *id);
HutItem *hut_design_get_item (const HutDesign *self, const char *id);
/* The item of a piece of hardware; NULL when its id names none. */
HutItem *hut_design_get_hardware_item (const HutDesign *self, const HutHardware *hardware);
HutBody *hut_design_get_body (const HutDesign *self, const char *id);
HutService *hut_design_get_service (const HutDesign *self, const char *id);
HutBaffle *hut_design_get_baffle (const HutDesign *self, HutSide side);
HutExtra *hut_design_get_extra (const HutDesign *self, const char *id);
/* The spot of a part. */
HutSpot *hut_design_get_spot (const HutDesign *self, const char *part);

/* A free id of that stem among all items: "vent", "vent-2", ... (transfer full) */
char *hut_design_dup_free_id (const HutDesign *self, const char *stem) G_GNUC_WARN_UNUSED_RESULT;

/* Takes care that the design has a copy of @item: its own, or one under another id when it has a
 * different item of that id already. Returns: (transfer none): the id of the copy. */
const char *hut_design_keep_item (HutDesign *self, const HutItem *item);
/* The part goes where the packing puts it. FALSE when it has no spot. */
gboolean hut_design_release_part (HutDesign *self, const char *part);
/* Only what the owner keeps still has a spot. */
void hut_design_drop_loose_spots (HutDesign *self);
/* Drops the items that no hardware uses. */
void hut_design_drop_unused_items (HutDesign *self);

/* Members: new_ gives an item with defaults; copy and free as usual. */
HutBody *hut_body_new (const char *id, HutBodyKind kind) G_GNUC_WARN_UNUSED_RESULT;
HutBody *hut_body_copy (const HutBody *self) G_GNUC_WARN_UNUSED_RESULT;
gboolean hut_body_equal (const HutBody *a, const HutBody *b);
void hut_body_free (HutBody *self);
HutService *hut_service_new (const char *id, HutServiceKind kind) G_GNUC_WARN_UNUSED_RESULT;
HutService *hut_service_copy (const HutService *self) G_GNUC_WARN_UNUSED_RESULT;
gboolean hut_service_equal (const HutService *a, const HutService *b);
void hut_service_free (HutService *self);
HutStock *hut_stock_new (const char *id) G_GNUC_WARN_UNUSED_RESULT;
HutStock *hut_stock_copy (const HutStock *self) G_GNUC_WARN_UNUSED_RESULT;
gboolean hut_stock_equal (const HutStock *a, const HutStock *b);
void hut_stock_free (HutStock *self);
HutBaffle *hut_baffle_new (HutSide side) G_GNUC_WARN_UNUSED_RESULT;
HutBaffle *hut_baffle_copy (const HutBaffle *self) G_GNUC_WARN_UNUSED_RESULT;
gboolean hut_baffle_equal (const HutBaffle *a, const HutBaffle *b);
void hut_baffle_free (HutBaffle *self);
HutExtra *hut_extra_new (const char *id) G_GNUC_WARN_UNUSED_RESULT;
HutExtra *hut_extra_copy (const HutExtra *self) G_GNUC_WARN_UNUSED_RESULT;
gboolean hut_extra_equal (const HutExtra *a, const HutExtra *b);
void hut_extra_free (HutExtra *self);
HutWindow *hut_window_new (const char *id, HutPanelId panel) G_GNUC_WARN_UNUSED_RESULT;
HutWindow *hut_window_copy (const HutWindow *self) G_GNUC_WARN_UNUSED_RESULT;
gboolean hut_window_equal (const HutWindow *a, const HutWindow *b);
void hut_window_free (HutWindow *self);
HutOpening *hut_opening_new (const char *id, HutPanelId panel, HutShape shape) G_GNUC_WARN_UNUSED_RESULT;
HutOpening *hut_opening_copy (const HutOpening *self) G_GNUC_WARN_UNUSED_RESULT;
gboolean hut_opening_equal (const HutOpening *a, const HutOpening *b);
void hut_opening_free (HutOpening *self);
/* In the middle of the panel, mounted from outside. */
HutHardware *hut_hardware_new (const char *id, const char *item, HutPanelId panel) G_GNUC_WARN_UNUSED_RESULT;
HutHardware *hut_hardware_copy (const HutHardware *self) G_GNUC_WARN_UNUSED_RESULT;
gboolean hut_hardware_equal (const HutHardware *a, const HutHardware *b);
void hut_hardware_free (HutHardware *self);
/* On sheet 1, in its corner, not kept. */
HutSpot *hut_spot_new (const char *part) G_GNUC_WARN_UNUSED_RESULT;
HutSpot *hut_spot_copy (const HutSpot *self) G_GNUC_WARN_UNUSED_RESULT;
gboolean hut_spot_equal (const HutSpot *a, const HutSpot *b);
void hut_spot_free (HutSpot *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutHardware, hut_hardware_free)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutSpot, hut_spot_free)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutBody, hut_body_free)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutService, hut_service_free)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutStock, hut_stock_free)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutBaffle, hut_baffle_free)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutExtra, hut_extra_free)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutWindow, hut_window_free)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutOpening, hut_opening_free)

/* Sets all that a file may leave out: no lead-in, no tabs, and what HUT_CUTTER_* say. */
void hut_cutter_fill_usual (HutCutter *self);

/* Thickness as it is: mean, least and most of the readings, mm. The mean is on the grid. */
double hut_stock_mean_mm (const HutStock *self);
double hut_stock_min_mm (const HutStock *self);
double hut_stock_max_mm (const HutStock *self);

/* The flat-bottom bits that are commonly stocked, mm, ascending (common practice, no source): what a
 * design that says nothing else begins with. (transfer full) (element-type double) */
GArray *hut_bits_new_common (void) G_GNUC_WARN_UNUSED_RESULT;
/* The thinnest bit of at least @least_mm, mm; 0 when there is none. */
double hut_bits_next_mm (const GArray *bits_mm, double least_mm);

/* Box that a body needs with all of its travel, machine frame. */
HutBox3 hut_body_swept (const HutBody *self);
/* Union of all swept bodies, machine frame; empty without bodies. */
HutBox3 hut_machine_swept (const HutMachine *self);
/* The free room wanted between the machine and a side, mm; 0 below: the floor carries it. */
double hut_machine_clearance_mm (const HutMachine *self, HutSide side);

/* TRUE when a lid of that kind can turn on that line. */
gboolean hut_lid_allows_hinge (HutLidKind lid, HutHinge hinge);
/* TRUE when the enclosure of this lid and bottom kind has that panel. */
gboolean hut_shell_has_panel (const HutShell *self, HutPanelId panel);
/* TRUE when the seam of that lid runs along that side, so that a baffle can stand there. */
gboolean hut_shell_has_seam (const HutShell *self, HutSide side);
