/* src/format/hut-format-table.h: words in which the tables of the file format are written.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "format/hut-format.h"

/* Largest length and coordinate in a file, mm. Own choice: no bench machine's house is larger. */
#define HUT_LENGTH_MAX_MM 10000.0
/* Smallest size of anything cut, mm. Own choice: no cutter makes less. */
#define HUT_CUT_MIN_MM 0.1

#define HUT_TEXT(Type, member, name_, label_) \
  { .name = name_, .kind = HUT_VALUE_TEXT, .offset = offsetof (Type, member), .label = label_ }

#define HUT_ID(Type) \
  { .name = "id", .kind = HUT_VALUE_ID, .offset = offsetof (Type, id), .label = "id" }

#define HUT_REFERENCE(Type, member, name_, label_, refers_to_)                                    \
  {                                                                                               \
    .name = name_, .kind = HUT_VALUE_REFERENCE, .offset = offsetof (Type, member), .label = label_, \
    .refers_to = refers_to_                                                                       \
  }

#define HUT_MAYBE_REFERENCE(Type, member, name_, label_, refers_to_)                              \
  {                                                                                               \
    .name = name_, .kind = HUT_VALUE_REFERENCE, .offset = offsetof (Type, member), .label = label_, \
    .refers_to = refers_to_, .optional = TRUE                                                     \
  }

#define HUT_NUMBER(Type, member, name_, label_, unit_, least_, most_)                              \
  {                                                                                               \
    .name = name_, .kind = HUT_VALUE_NUMBER, .offset = offsetof (Type, member), .label = label_,   \
    .unit = unit_, .least = least_, .most = most_                                                 \
  }

#define HUT_MAYBE_NUMBER(Type, member, name_, label_, unit_, least_, most_, absent_)                      \
  {                                                                                               \
    .name = name_, .kind = HUT_VALUE_NUMBER, .offset = offsetof (Type, member), .label = label_,   \
    .unit = unit_, .least = least_, .most = most_, .optional = TRUE, .absent = absent_            \
  }

/* A size, mm. */
#define HUT_SIZE(Type, member, name_, label_, least_) \
  HUT_NUMBER (Type, member, name_, label_, "mm", least_, HUT_LENGTH_MAX_MM)

/* A coordinate or a signed way, mm. */
#define HUT_COORDINATE(Type, member, name_, label_) \
  HUT_NUMBER (Type, member, name_, label_, "mm", -HUT_LENGTH_MAX_MM, HUT_LENGTH_MAX_MM)

#define HUT_COUNT(Type, member, name_, label_, least_, most_)                                     \
  {                                                                                               \
    .name = name_, .kind = HUT_VALUE_COUNT, .offset = offsetof (Type, member), .label = label_,    \
    .unit = "", .least = least_, .most = most_                                                    \
  }

#define HUT_SWITCH(Type, member, name_, label_) \
  { .name = name_, .kind = HUT_VALUE_SWITCH, .offset = offsetof (Type, member), .label = label_ }

#define HUT_CHOICE(Type, member, name_, label_, choices_)                                         \
  {                                                                                               \
    .name = name_, .kind = HUT_VALUE_CHOICE, .offset = offsetof (Type, member), .label = label_,   \
    .choices = choices_                                                                           \
  }

/* Absent where it has its usual value. */
#define HUT_MAYBE_SWITCH(Type, member, name_, label_)                                             \
  {                                                                                               \
    .name = name_, .kind = HUT_VALUE_SWITCH, .offset = offsetof (Type, member), .label = label_,   \
    .optional = TRUE                                                                              \
  }
#define HUT_MAYBE_CHOICE(Type, member, name_, label_, choices_)                                   \
  {                                                                                               \
    .name = name_, .kind = HUT_VALUE_CHOICE, .offset = offsetof (Type, member), .label = label_,   \
    .choices = choices_, .optional = TRUE                                                         \
  }
#define HUT_MAYBE_COUNT(Type, member, name_, label_, least_, most_)                                \
  {                                                                                               \
    .name = name_, .kind = HUT_VALUE_COUNT, .offset = offsetof (Type, member), .label = label_,    \
    .unit = "", .least = least_, .most = most_, .optional = TRUE                                  \
  }

#define HUT_ATTRIBUTES(table) .attributes = table, .n_attributes = G_N_ELEMENTS (table)
#define HUT_CHILDREN(table) .children = table, .n_children = G_N_ELEMENTS (table)
