/* src/app/hut-item-draft.h: an item of hardware that is being measured, as plain numbers.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An item can hold more than a person measures with a caliper: only its first cutout on leaf 0, its
 * first solid space in front and behind, and its first room for leads are meant here. The rest stays
 * as it is. */
#pragma once
#include "catalog/hut-catalog.h"

typedef enum
{
  HUT_MEASURE_DIAMETER, /* of the cutout */
  HUT_MEASURE_WIDTH,
  HUT_MEASURE_HEIGHT,
  HUT_MEASURE_RADIUS,
  HUT_MEASURE_FLANGE_WIDTH,
  HUT_MEASURE_FLANGE_HEIGHT,
  HUT_MEASURE_FRONT,  /* how far it stands out in front */
  HUT_MEASURE_BEHIND, /* how far it reaches from under its flange, without leads */
  HUT_MEASURE_LEADS,  /* likewise, with plugs and the bend of leads */
  HUT_MEASURE_THICKNESS_MIN,
  HUT_MEASURE_THICKNESS_MAX,
  HUT_MEASURE_NUT_CORNERS,
  HUT_MEASURE_NUT_HEIGHT,
  HUT_MEASURE_BODY_DIAGONAL,
  HUT_MEASURE_MASS, /* kg; the others mm */
  HUT_MEASURE_COUNT
} HutMeasure;

/* The item's number, mm or kg; 0 where it has none. */
double hut_item_draft_get (const HutItem *item, HutMeasure measure);
/* Bodies as wide as the flange or the cutout was follow it. A depth of 0 takes the body away. */
void hut_item_draft_set (HutItem *item, HutMeasure measure, double value);

/* -1: it has no cutout. */
int hut_item_draft_get_shape (const HutItem *item);
/* Adds, changes or (-1) takes away the cutout; sizes that the shape cannot have are put right. */
void hut_item_draft_set_shape (HutItem *item, int shape);
/* TRUE when a cutout of that shape (-1: none) has that measure. */
gboolean hut_item_draft_shape_has (int shape, HutMeasure measure);

/* Its screws: index among all cuts that are screws of leaf 0; at most HUT_DRAFT_SCREWS_MAX. */
#define HUT_DRAFT_SCREWS_MAX 100 /* own choice: an editor's list, and half of what a file may hold */
guint hut_item_draft_count_screws (const HutItem *item);
/* (transfer none), valid until the item's cuts change; NULL when there is none. */
HutItemCut *hut_item_draft_get_screw (const HutItem *item, guint index);
/* Adds one beside the last, of the same thread. FALSE when there are too many. */
gboolean hut_item_draft_add_screw (HutItem *item);
void hut_item_draft_remove_screw (HutItem *item, guint index);

/* A new item to be measured: a round cutout of 16 in a flange of 20; or four holes of M4, 60 apart. */
HutItem *hut_item_draft_new (void) G_GNUC_WARN_UNUSED_RESULT;
HutItem *hut_item_draft_new_pattern (void) G_GNUC_WARN_UNUSED_RESULT;

/* An id for @name that no item of @catalog has: "own-" and the letters and digits of the name.
 * (transfer full) */
char *hut_item_draft_dup_id (const HutCatalog *catalog, const char *name) G_GNUC_WARN_UNUSED_RESULT;
