/* src/app/hut-item-draft.h: an item of hardware that is being measured.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * All that a catalogue's file can say of an item can be read and set here; its lists (cuts, spaces,
 * points of a fan's curve, sources) are members of the item, and this file makes new entries for
 * them. What is not set stays as it is, to the bit. */
#pragma once
#include "app/hut-units.h"
#include "catalog/hut-catalog.h"

/* The plain numbers of an item. */
typedef enum
{
  HUT_MEASURE_FLANGE_WIDTH,
  HUT_MEASURE_FLANGE_HEIGHT,
  HUT_MEASURE_THICKNESS_MIN,
  HUT_MEASURE_THICKNESS_MAX,
  HUT_MEASURE_NUT_CORNERS,
  HUT_MEASURE_NUT_HEIGHT,
  HUT_MEASURE_BODY_DIAGONAL,
  HUT_MEASURE_PASS_WIDTH,
  HUT_MEASURE_PASS_HEIGHT,
  HUT_MEASURE_LINE_MIN,
  HUT_MEASURE_LINE_MAX,
  HUT_MEASURE_MASS,      /* kg */
  HUT_MEASURE_FREE_AREA, /* % */
  HUT_MEASURE_STROKE,
  HUT_MEASURE_FORCE, /* N */
  HUT_MEASURE_LENGTH,
  HUT_MEASURE_NOISE, /* dB(A); those without a unit here: mm */
  HUT_MEASURE_COUNT
} HutMeasure;

/* The switches of an item. */
typedef enum
{
  HUT_TRAIT_FROM_OUTSIDE,
  HUT_TRAIT_FROM_INSIDE,
  HUT_TRAIT_FLANGE_ROUND,
  HUT_TRAIT_STRAINED,
  HUT_TRAIT_MAINS,
  HUT_TRAIT_PASS_ROUND,
  HUT_TRAIT_COUNT
} HutTrait;

/* What a measure is kept and shown in, and its range. */
typedef struct
{
  HutQuantity quantity;
  double upper; /* the lower end is 0 */
} HutMeasureRange;

HutMeasureRange hut_item_draft_get_range (HutMeasure measure);
double hut_item_draft_get (const HutItem *item, HutMeasure measure);
void hut_item_draft_set (HutItem *item, HutMeasure measure, double value);
gboolean hut_item_draft_has (const HutItem *item, HutTrait trait);
/* What passes and is round has one size: both become that of the width. */
void hut_item_draft_set_has (HutItem *item, HutTrait trait, gboolean has);
/* FALSE when the measure means nothing for an item of that kind and is 0: a stroke of a switch. */
gboolean hut_item_draft_wants (const HutItem *item, HutMeasure measure);

/* How many of each list a file may hold: src/catalog/hut-item-format.c. */
#define HUT_DRAFT_CUTS_MAX 200
#define HUT_DRAFT_SPACES_MAX 50
#define HUT_DRAFT_POINTS_MAX 50
#define HUT_DRAFT_SOURCES_MAX 50

/* TRUE when a hole of that shape has that size. */
typedef enum
{
  HUT_SIZE_DIAMETER,
  HUT_SIZE_WIDTH,
  HUT_SIZE_HEIGHT,
  HUT_SIZE_RADIUS
} HutCutSize;
gboolean hut_item_draft_shape_has (HutCutShape shape, HutCutSize size);
/* Sizes that the role and shape of @cut cannot have are put right; those that it has stay. */
void hut_item_draft_repair_cut (HutItemCut *cut);

/* Each adds one and returns FALSE when there are too many. A screw is like the last one, beside it;
 * a space in front is as wide as the flange, one behind as the cutout; a point goes on along the
 * curve; a source is empty. */
gboolean hut_item_draft_add_cut (HutItem *item, HutCutRole role);
gboolean hut_item_draft_add_space (HutItem *item, HutItemSide side, gboolean soft);
gboolean hut_item_draft_add_point (HutItem *item);
gboolean hut_item_draft_add_source (HutItem *item);

/* What a space is usually as wide as, mm. */
typedef struct
{
  HutRect front, behind;
} HutUsualSpace;
HutUsualSpace hut_item_draft_usual_space (const HutItem *item);
/* After an edit: spaces of leaf 0 that were as wide as flange or cutout @before are so again. */
void hut_item_draft_follow (HutItem *item, const HutUsualSpace *before);

/* Another kind of item has no second leaf: what lies on it goes to the first. */
void hut_item_draft_set_span (HutItem *item, HutItemSpan span);

/* What is not as in @before has been measured: it has no other source any more. */
void hut_item_draft_mark_measured (HutItem *item, const HutItem *before);

/* A new item to be measured: a round cutout of 16 in a flange of 20; or four holes of M4, 60 apart;
 * or one like @item under a name and id of its own. */
HutItem *hut_item_draft_new (void) G_GNUC_WARN_UNUSED_RESULT;
HutItem *hut_item_draft_new_pattern (void) G_GNUC_WARN_UNUSED_RESULT;
/* @name: of the new one */
HutItem *hut_item_draft_new_copy (const HutItem *item, const char *name) G_GNUC_WARN_UNUSED_RESULT;

/* An id for @name that no item of @catalog has: "own-" and the letters and digits of the name.
 * (transfer full) */
char *hut_item_draft_dup_id (const HutCatalog *catalog, const char *name) G_GNUC_WARN_UNUSED_RESULT;
