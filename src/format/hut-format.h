/* src/format/hut-format.h: a file format as tables, which reader and writer both follow.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An element stands for a struct, an attribute for one of its members. What a table does not list, the
 * reader refuses. A RELAX NG schema says the same once more, less the ranges of numbers. */
#pragma once
#include <glib.h>

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
  HUT_VALUE_WORD,      /* what `word` reads and writes */
  HUT_VALUE_VERSION,   /* nothing in the struct: the number `least` */
} HutValueKind;

/* A kind of value that a layer above brings along. */
typedef struct
{
  gboolean (*parse) (const char *text, gpointer member); /* FALSE, with nothing written: refused */
  const char *(*to_text) (gconstpointer member);         /* (transfer none) */
  char *(*dup_allowed) (void);                           /* (transfer full): "base-front, ..." */
} HutWordFormat;

typedef struct
{
  const char *name;
  HutValueKind kind;
  gsize offset;               /* of the member in the element's struct */
  const char *label;          /* what messages call it: "kerf" */
  const char *unit;           /* of numbers; "" for a ratio */
  double least, most;         /* of numbers */
  gboolean optional;          /* absent: NULL for text, `absent` for anything else */
  double absent;              /* the number, 0 or 1 of a switch, place of a choice */
  const char *const *choices; /* NULL-terminated, in the order of the enum */
  const char *refers_to;
  const HutWordFormat *word;
} HutAttributeFormat;

typedef struct _HutElementFormat HutElementFormat;

typedef enum
{
  HUT_CHILD_MEMBER, /* a struct inside the parent's struct, exactly once */
  HUT_CHILD_ITEMS,  /* members of a GPtrArray of the parent */
  HUT_CHILD_VALUES, /* members of a GArray of the parent */
  HUT_CHILD_KEPT,   /* structs that the parent keeps in a way of its own: the element's `keeper` */
} HutChildKind;

/* How a parent keeps such structs. */
typedef struct
{
  /* Takes what is in the struct over and leaves it as for `clear`. Returns: (transfer full)
   * (nullable): what is wrong with it */
  char *(*take) (gpointer parent, gpointer entry);
  /* Lends the next one from *place on, which starts at 0; FALSE when there is none. */
  gboolean (*next) (gconstpointer parent, guint *place, gpointer entry);
  /* Frees what is in a struct, all-zero included, not the struct. */
  void (*clear) (gpointer entry);
} HutKeeperFormat;

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
  /* (nullable): the text inside the element, a HUT_VALUE_TEXT; then it has no children. Blanks round
   * it do not count. */
  const HutAttributeFormat *content;
  const HutKeeperFormat *keeper; /* (nullable): for HUT_CHILD_KEPT */
  /* (nullable): what is wrong between the members of a struct, each of which is right for itself:
   * "what is wrong; what is allowed", or NULL. (transfer full) */
  char *(*dup_fault) (gconstpointer self);
};
