/* src/sheets/hut-outline-private.h: what the two halves of hut-outline-pack.h share.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "sheets/hut-no-fit.h"
#include "sheets/hut-outline-pack.h"

/* How places are told apart; smaller is better. */
typedef enum
{
  HUT_RULE_GROW,   /* the used box grows least, then as HUT_RULE_LOW */
  HUT_RULE_LOW,    /* upper edge lowest, then leftmost */
  HUT_RULE_LEFT,   /* right edge leftmost, then lowest */
  HUT_RULE_CORNER, /* nearest to the corner */
  HUT_RULE_COUNT
} HutPlaceRule;

typedef struct
{
  HutConvexSet *set;          /* its box begins at (0, 0) */
  double width_mm, height_mm; /* of the box */
} HutPackShape;

typedef struct
{
  guint shape;
  guint way; /* of those that the caller named */
} HutPackWay;

typedef struct
{
  GArray *ways; /* HutPackWay */
  double area_mm2;
  double long_mm, short_mm; /* sides of its box, as first given */
  gboolean fixed;
  guint fixed_bin;   /* where a fixed one lies, in its only way */
  HutPoint fixed_at; /* mm */
} HutPackItem;

typedef struct
{
  guint shape;
  HutPoint at;
} HutPackResting;

typedef struct
{
  GArray *resting; /* HutPackResting */
  double used_u_mm, used_v_mm;
  double load_mm2; /* area of the material in it */
} HutPackBin;

struct _HutOutlinePack
{
  double width_mm, height_mm;
  GPtrArray *shapes; /* HutPackShape */
  GPtrArray *items;  /* HutPackItem */
  GHashTable *no_fits; /* (resting shape << 32 | moving shape) -> HutNoFit */
  GArray *walls;     /* HutWall, of the bin that is looked at */
  guint64 work;      /* done so far */
};

/* The best place so far of a shape in a bin. */
typedef struct
{
  gboolean found;
  guint way;
  HutPoint at;
  double first, second; /* the rule's numbers */
} HutPackBest;

/* Index in the item's ways of the one that the caller gave as @given. */
guint hut_pack_item_find_way (const HutPackItem *self, guint given);

/**
 * hut_outline_pack_drop_bin:
 * @places: (inout) (element-type HutOutlinePlace): a whole layout
 *
 * Empties the bin that has least in it, of those behind the fixed items, into the others and moves
 * what overlaps apart.
 *
 * Returns: TRUE when that came out: @places has one bin less; FALSE, with @places untouched, when it
 *   did not within the work or there is no such bin
 */
gboolean hut_outline_pack_drop_bin (HutOutlinePack *self,
                                    GArray *places,
                                    guint64 seed,
                                    guint64 work_limit,
                                    const HutPackWatch *watch);

/* The best place of the item in the bin, over all its ways; FALSE when there is no room. */
gboolean hut_outline_pack_find_place (HutOutlinePack *self,
                                      const HutPackBin *bin,
                                      const HutPackItem *item,
                                      HutPlaceRule rule,
                                      HutPackBest *best);
/* Where @moving may not lie beside @resting (shape indices); made once. */
HutNoFit *hut_outline_pack_get_no_fit (HutOutlinePack *self, guint resting, guint moving);
