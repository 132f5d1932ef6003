/* src/design/hut-design-format.h: the file format as tables, which reader and writer both follow.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An element stands for a struct, an attribute for one of its members. What a table does not list, the
 * reader refuses. design.rng says the same once more in RELAX NG, less the ranges of numbers. */
#pragma once
#include "design/hut-design.h"

/* Own choice: far more than any bench needs, few enough to draw and check. */
#define HUT_ITEMS_MAX 10000
#define HUT_READINGS_MAX 1000
/* Longest text of an attribute, bytes. Own choice. */
#define HUT_TEXT_MAX_BYTES 2000

typedef enum
{
  HUT_VALUE_TEXT,      /* char *: any text */
  HUT_VALUE_ID,        /* char *: an NCName, unique among elements of its name */
  HUT_VALUE_REFERENCE, /* char *: the id of an element named `refers_to` */
  HUT_VALUE_NUMBER,    /* double: finite, within least .. most */
  HUT_VALUE_COUNT,     /* guint: whole, within least .. most */
  HUT_VALUE_SWITCH,    /* gboolean: yes, no */
  HUT_VALUE_CHOICE,    /* an enum: one of `choices` */
  HUT_VALUE_PANEL,     /* HutPanelId */
  HUT_VALUE_VERSION,   /* nothing in the struct: HUT_DESIGN_VERSION */
} HutValueKind;

typedef struct
{
  const char *name;
  HutValueKind kind;
  gsize offset;               /* of the member in the element's struct */
  const char *label;          /* what messages call it: "kerf" */
  const char *unit;           /* of numbers; "" for a ratio */
  double least, most;         /* of numbers */
  gboolean optional;          /* absent: NULL for text, HUT_ROOM_FREE for a number */
  const char *const *choices; /* NULL-terminated, in the order of the enum */
  const char *refers_to;
} HutAttributeFormat;

typedef struct _HutElementFormat HutElementFormat;

typedef enum
{
  HUT_CHILD_MEMBER, /* a struct inside the parent's struct, exactly once */
  HUT_CHILD_ITEMS,  /* members of a GPtrArray of the parent */
  HUT_CHILD_VALUES, /* members of a GArray of the parent */
  HUT_CHILD_PANELS, /* HutPanelStock, from the table of stocks per panel of a HutShell */
} HutChildKind;

typedef struct
{
  const HutElementFormat *element;
  HutChildKind kind;
  gsize offset;
  guint least, most; /* how many */
  gpointer (*new_item) (void);
} HutChildFormat;

struct _HutElementFormat
{
  const char *name;
  gsize size; /* of the struct */
  const HutAttributeFormat *attributes;
  guint n_attributes;
  const HutChildFormat *children; /* in the order in which they must come */
  guint n_children;
  /* (nullable): what is wrong between the members of a struct, each of which is right for itself:
   * "what is wrong; what is allowed", or NULL. (transfer full) */
  char *(*dup_fault) (gconstpointer self);
};

/* The stock of one panel, which a HutShell keeps in its table. */
typedef struct
{
  HutPanelId panel;
  char *stock;
} HutPanelStock;

/* Root element, whose struct is a HutDesign. */
extern const HutElementFormat hut_design_format;
extern const HutElementFormat hut_machine_format;
extern const HutElementFormat hut_stock_format;
extern const HutElementFormat hut_window_format;
extern const HutElementFormat hut_opening_format;
