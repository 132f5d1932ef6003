/* src/catalog/hut-item.h: one piece of hardware as data: what it needs of a panel and of the room.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An item has a frame of its own, seen from the outside of the panel that it sits on: u right, v
 * up, (0,0) where its placement puts it. All lengths mm, masses kg. Items that join base and lid
 * (hinge, latch, stay) have two leaves; each leaf has its own cuts and bodies, and (0,0) lies on
 * the seam or hinge line in the middle of the item.
 *
 * A design carries a copy of every item that it uses: a file is whole without the catalogue, and a
 * catalogue that changes changes no design. */
#pragma once
#include "catalog/hut-screw.h"
#include "geom/hut-path.h"

/* Headings of the shelf. */
typedef enum
{
  HUT_ITEM_FAN,       /* axial fans, inline fans */
  HUT_ITEM_AIR,       /* finger guards, spigots, flaps */
  HUT_ITEM_CONTROL,   /* switches, buttons, indicators, meters */
  HUT_ITEM_GUARDING,  /* emergency stop, key switch, lid interlock */
  HUT_ITEM_MAINS,     /* inlets, outlets, fuses */
  HUT_ITEM_CONNECTOR, /* low voltage, data, round */
  HUT_ITEM_ENTRY,     /* glands, grommets, desk bushes, brushes, tube bulkheads: a line goes through */
  HUT_ITEM_LAMP,
  HUT_ITEM_HINGE,
  HUT_ITEM_CLOSURE,   /* latches, magnets */
  HUT_ITEM_HANDLE,
  HUT_ITEM_STAY,      /* gas springs, folding stays */
  HUT_ITEM_FOOT,
  HUT_ITEM_MOUNT,     /* camera, slotted profile, control panel: patterns of holes */
  HUT_ITEM_GROUP_COUNT
} HutItemGroup;

/* Where a placement of it lies. */
typedef enum
{
  HUT_SPAN_PANEL, /* on one panel */
  HUT_SPAN_HINGE, /* across the hinge line: leaf 0 on the base's side, leaf 1 on the lid's */
  HUT_SPAN_SEAM,  /* across the seam, likewise */
} HutItemSpan;

/* What keeps it in the panel; decides the relief pocket. */
typedef enum
{
  HUT_HOLD_SCREWS,
  HUT_HOLD_NUT,  /* its own ring or hex nut behind the panel */
  HUT_HOLD_BODY, /* its body stops against the rear face, nut in front */
  HUT_HOLD_SNAP, /* claws or a groove */
  HUT_HOLD_GLUE,
} HutItemHold;

typedef enum
{
  HUT_CUT_BODY,  /* the cutout */
  HUT_CUT_SCREW, /* a screw or bolt goes through; its hole follows the thread and ISO 273 */
  HUT_CUT_PIN,   /* a pin, key or tab that stops it turning */
} HutCutRole;

typedef enum
{
  HUT_CUT_ROUND,     /* diameter */
  HUT_CUT_RECTANGLE, /* width x height, radius */
  HUT_CUT_SLOT,      /* width x height, half round ends */
  HUT_CUT_FLATTED,   /* round of that diameter with one flat: height across it (flat above) */
  HUT_CUT_TWO_FLATS, /* round of that diameter with two flats: height between them */
  HUT_CUT_KEYED,     /* round with a notch on top: width = of the notch, height = from the far side of
                      * the hole to the bottom of the notch */
} HutCutShape;

/* A hole in the panel. */
typedef struct
{
  HutCutRole role;
  HutCutShape shape;
  guint leaf;             /* 0, or 1 for the second leaf of a hinge, latch or stay */
  HutPoint at;            /* mm, item frame */
  double diameter_mm;     /* not of screws: see thread_mm */
  double width_mm, height_mm, radius_mm;
  double thread_mm;       /* SCREW: nominal diameter: 2, 2.5, 3, 3.5, 4, 5, 6, 8 */
  gboolean wood_screw;    /* SCREW: goes into the wood instead of through it */
  double grip_mm;         /* SCREW: thickness of the item's own flange or leaf under the head */
  double tapped_mm;       /* SCREW: > 0: depth of a thread in the item itself, into which the screw goes
                           * from the other side of the panel: no nut, no grip */
} HutItemCut;

typedef enum
{
  HUT_ITEM_FRONT,  /* on the side it is mounted from */
  HUT_ITEM_BEHIND, /* on the other side of the panel */
} HutItemSide;

/* Room that it takes: a box standing on the face that it is mounted on, to the front or through the
 * panel to the other side. Both depths count from that face, so that they hold for any panel: behind a
 * panel (or a pocket's floor) there is depth less thickness left of a space behind, or nothing. */
typedef struct
{
  HutItemSide side;
  guint leaf;
  HutRect rect;      /* mm, item frame */
  double depth_mm;   /* from the face that it is mounted on */
  gboolean soft;     /* room for leads, hoses, a hand: may touch soft room, not solids */
} HutItemBody;

typedef struct
{
  double flow_m3_h, pressure_pa;
} HutFanPoint;

/* Where numbers come from: "cutout" -> "reference table", or a mark "from memory". */
typedef struct
{
  char *of;     /* the dimension or dimensions */
  char *source; /* standard, handbook, "common practice, no source", "from memory", "measured" */
} HutItemSource;

typedef struct
{
  char *id, *name; /* NCName; English, translated when shown */
  char *words;     /* other words to find it by, or "" */
  HutItemGroup group;
  HutItemSpan span;
  HutItemHold hold;
  gboolean from_outside, from_inside; /* faces it can be mounted from; at least one */
  double thickness_min_mm, thickness_max_mm; /* panel it holds in; max 0: any */
  double nut_corners_mm;   /* NUT: across the corners; else 0 */
  double nut_height_mm;    /* NUT: with its washer; else 0 */
  double body_diagonal_mm; /* BODY: of what stops against the rear face; else 0 */
  double flange_width_mm, flange_height_mm; /* what covers the cutout in front; round: both the same */
  gboolean flange_round;
  gboolean strained;       /* struck or pulled: its pocket's floor stays thicker */
  gboolean mains;          /* carries mains */
  double pass_width_mm, pass_height_mm; /* largest head that passes it; 0: nothing does; equal and
                                         * pass_round: a diameter */
  gboolean pass_round;
  double line_min_mm, line_max_mm; /* lines that it closes round; 0, 0: it closes round none */
  double mass_kg;
  double free_area_ratio;  /* AIR: open part of its area; else 0 */
  double stroke_mm, force_n; /* STAY: of a gas spring; else 0 */
  double length_mm;        /* STAY: extended, eye to eye; LAMP strip; else 0 */
  double noise_db;         /* FAN: at 1 m; 0 unknown */
  GArray *cuts;    /* HutItemCut */
  GArray *bodies;  /* HutItemBody */
  GArray *curve;   /* HutFanPoint: flow rising from 0, pressure falling to 0; empty when no fan */
  GPtrArray *sources; /* HutItemSource */
} HutItem;

/* An item with that id, no cuts and no bodies: on one panel, held by screws, from either face, any
 * thickness. */
HutItem *hut_item_new (const char *id) G_GNUC_WARN_UNUSED_RESULT;
HutItem *hut_item_copy (const HutItem *self) G_GNUC_WARN_UNUSED_RESULT;
/* TRUE when both say the same; order of cuts, bodies, points and sources counts. */
gboolean hut_item_equal (const HutItem *a, const HutItem *b);
gboolean hut_item_cut_equal (const HutItemCut *a, const HutItemCut *b);
gboolean hut_item_body_equal (const HutItemBody *a, const HutItemBody *b);
void hut_item_free (HutItem *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutItem, hut_item_free)

HutItemSource *hut_item_source_new (const char *of, const char *source) G_GNUC_WARN_UNUSED_RESULT;
void hut_item_source_free (HutItemSource *self);

/* Box round all cuts of a leaf, screw holes by their class, and the flange when it is on leaf 0;
 * mm, item frame. Empty (u1 < u0) when the leaf has none. */
HutRect hut_item_bounds (const HutItem *self, guint leaf, HutHoleClass hole_class);

/* Diameter of the hole of a SCREW cut, mm: ISO 273 where it goes through, a pilot where it goes
 * into the wood; 0 for other cuts and for threads that the tables do not have. */
double hut_item_cut_hole_mm (const HutItemCut *self, HutHoleClass hole_class);

/* Outline of a cut where it lies in the item's frame, counter-clockwise, mm. @screw_hole_mm:
 * diameter for SCREW cuts (see hut_item_cut_hole_mm ()). A cut whose sizes make no shape gives a
 * path without corners. (transfer full) */
HutPath *hut_item_cut_dup_path (const HutItemCut *self, double screw_hole_mm) G_GNUC_WARN_UNUSED_RESULT;
