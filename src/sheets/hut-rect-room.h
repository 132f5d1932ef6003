/* src/sheets/hut-rect-room.h: the free room of one bin as all largest free rectangles.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Source: J. Jylanki, "A Thousand Ways to Pack the Bin", 2010, section "the maximal rectangles
 * algorithm": if a rectangle fits in the free room at all, it fits in one of the list. */
#pragma once
#include "sheets/hut-rect-bound.h"

/* A rectangle in a bin, in the unit of the sizes. */
typedef struct
{
  gint32 x, y, width, height;
} HutRectBox;

typedef struct
{
  HutRectBox *free; /* (array length=free_count), owned */
  guint free_count, capacity;
  /* the greatest of the free rectangles, of each by itself; 0 when there is none */
  gint32 most_width, most_height;
  gint64 most_area;
} HutRectRoom;

/* Which free rectangle is best for an item; smaller numbers are better. */
typedef enum
{
  HUT_RECT_SHORT_SIDE, /* the shorter leftover side is least */
  HUT_RECT_LONG_SIDE,  /* the longer leftover side is least */
  HUT_RECT_AREA,       /* the free rectangle is smallest */
  HUT_RECT_LOW,        /* upper edge lowest, then leftmost */
  HUT_RECT_LEFT,       /* right edge leftmost, then lowest */
  HUT_RECT_RULE_COUNT
} HutRectRule;

/* A place in a bin, and how good it is. */
typedef struct
{
  HutRectBox box;
  gboolean turned;
  gint64 first, second; /* the rule's numbers; smaller is better */
} HutRectSpot;

/* Makes all of the bin free. */
void hut_rect_room_reset (HutRectRoom *self, HutRectSize bin);
/* Frees what it owns. */
void hut_rect_room_clear (HutRectRoom *self);
/* Takes @taken out of the free room. */
void hut_rect_room_take (HutRectRoom *self, const HutRectBox *taken);
/* FALSE when no free rectangle can take it: quick, and sure in this case only. */
gboolean hut_rect_room_may_take (const HutRectRoom *self, HutRectSize size, gboolean may_turn);
/* The best place; FALSE, with @spot untouched, when there is none better than @spot, which may be
 * filled with G_MAXINT64 before. */
gboolean hut_rect_room_find (const HutRectRoom *self,
                             HutRectSize size,
                             gboolean may_turn,
                             HutRectRule rule,
                             HutRectSpot *spot);
