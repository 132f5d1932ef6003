/* src/catalog/hut-item-format.h: <item> as a table, for the catalogue's files and for designs.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * catalog.rng and design.rng say the same in RELAX NG. */
#pragma once
#include "catalog/hut-item.h"
#include "format/hut-format.h"

/* Its struct is a HutItem. The reader refuses an item whose numbers cannot all be right: see
 * hut_item_dup_fault (). */
extern const HutElementFormat hut_item_format;

/* `new_item` of a row that holds items. (transfer full) */
gpointer hut_item_format_new (void) G_GNUC_WARN_UNUSED_RESULT;

/* What no part can be, whatever its numbers are within their ranges. */
typedef enum
{
  HUT_ITEM_FAULT_NONE,
  HUT_ITEM_FAULT_FACE,          /* mounted from no side */
  HUT_ITEM_FAULT_THICKNESS,     /* its range runs backwards */
  HUT_ITEM_FAULT_NUT,           /* held by a nut without a size */
  HUT_ITEM_FAULT_BODY,          /* held by a body without a size */
  HUT_ITEM_FAULT_CUT_LEAF,      /* cut `index`: on a second leaf of an item that has one */
  HUT_ITEM_FAULT_SCREW_SHAPE,   /* likewise: a screw's hole that is not round */
  HUT_ITEM_FAULT_WOOD_SCREW,    /* likewise: without a diameter */
  HUT_ITEM_FAULT_THREAD,        /* likewise: a thread that the table does not have */
  HUT_ITEM_FAULT_CUT_SIZE,      /* likewise: makes no hole */
  HUT_ITEM_FAULT_CUT_RIM,       /* likewise: outside the flange, by `by_mm` */
  HUT_ITEM_FAULT_SPACE_SIZE,    /* space `index` ends before it starts */
  HUT_ITEM_FAULT_SPACE_LEAF,    /* likewise: on a second leaf of an item that has one */
  HUT_ITEM_FAULT_CURVE_MISSING, /* a fan without a curve */
  HUT_ITEM_FAULT_CURVE_ORDER,   /* point `index` */
  HUT_ITEM_FAULT_CURVE_END,     /* it does not end at free flow */
  HUT_ITEM_FAULT_PASS,          /* what passes has no whole size */
  HUT_ITEM_FAULT_LINE,          /* the range of lines runs backwards */
} HutItemFaultKind;

typedef struct
{
  HutItemFaultKind kind;
  guint index;  /* of the cut, space or point that it speaks of; else of no meaning */
  double by_mm; /* CUT_RIM */
} HutItemFault;

/* The first thing that is wrong with an item whose members are within their ranges. */
HutItemFault hut_item_find_fault (const HutItem *self);
/* The same as text. Returns: (transfer full) (nullable): "what is wrong; allowed: ..." */
char *hut_item_dup_fault (const HutItem *self) G_GNUC_WARN_UNUSED_RESULT;

/* The word of a group in files: "fan". (transfer none) */
const char *hut_item_group_to_string (HutItemGroup group);
