/* src/catalog/hut-item-format.c: <item> as a table.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-catalog"
#include "config.h"
#include "catalog/hut-item-format.h"
#include "format/hut-format-table.h"

/* Ranges: own choice. They hold all that is screwed to a bench machine's house, and few slips of
 * the pen. */
#define PART_MAX_MM 2000.0
#define THICKNESS_MAX_MM 100.0
#define THREAD_MIN_MM 1.0
#define THREAD_MAX_MM 12.0
#define MASS_MAX_KG 100.0
#define FORCE_MAX_N 5000.0
#define NOISE_MAX_DB 140.0
#define FLOW_MAX_M3_H 10000.0
#define PRESSURE_MAX_PA 20000.0
#define CUTS_MAX 200
#define SPACES_MAX 50
#define POINTS_MAX 50
#define SOURCES_MAX 50
#define LEAF_MAX 1

static const char *const groups[]
    = { "fan",  "air",   "control", "guarding", "mains",  "connector", "entry", "lamp",
        "hinge", "closure", "handle",  "stay",     "foot",   "mount",     NULL };
static const char *const spans[] = { "panel", "hinge", "seam", NULL };
static const char *const holds[] = { "screws", "nut", "body", "snap", "glue", NULL };
static const char *const roles[] = { "body", "screw", "pin", NULL };
static const char *const shapes[]
    = { "round", "rectangle", "slot", "flatted", "two-flats", "keyed", NULL };
static const char *const sides[] = { "front", "behind", NULL };

/* A length that is 0 where it is not given. */
#define MAYBE_SIZE(Type, member, name_, label_) \
  HUT_MAYBE_NUMBER (Type, member, name_, label_, "mm", 0, PART_MAX_MM, 0)

#define MAYBE_COORDINATE(Type, member, name_, label_) \
  HUT_MAYBE_NUMBER (Type, member, name_, label_, "mm", -PART_MAX_MM, PART_MAX_MM, 0)

/* A switch that is on where it is not given. */
#define USUALLY_ON(Type, member, name_, label_)                                                   \
  {                                                                                               \
    .name = name_, .kind = HUT_VALUE_SWITCH, .offset = offsetof (Type, member), .label = label_,   \
    .optional = TRUE, .absent = 1                                                                 \
  }

static const HutAttributeFormat cut_attributes[] = {
  HUT_CHOICE (HutItemCut, role, "role", "role of a cut", roles),
  HUT_MAYBE_CHOICE (HutItemCut, shape, "shape", "shape of a cut", shapes),
  HUT_MAYBE_COUNT (HutItemCut, leaf, "leaf", "leaf of a cut", 0, LEAF_MAX),
  MAYBE_COORDINATE (HutItemCut, at.u, "u", "cut's place across"),
  MAYBE_COORDINATE (HutItemCut, at.v, "v", "cut's place upwards"),
  MAYBE_SIZE (HutItemCut, diameter_mm, "diameter", "diameter of a cut"),
  MAYBE_SIZE (HutItemCut, width_mm, "width", "width of a cut"),
  MAYBE_SIZE (HutItemCut, height_mm, "height", "height of a cut"),
  MAYBE_SIZE (HutItemCut, radius_mm, "radius", "corner radius of a cut"),
  HUT_MAYBE_NUMBER (HutItemCut, thread_mm, "thread", "thread of a screw", "mm", THREAD_MIN_MM,
                    THREAD_MAX_MM, 0),
  HUT_MAYBE_SWITCH (HutItemCut, wood_screw, "wood-screw", "wood screw"),
  HUT_MAYBE_NUMBER (HutItemCut, grip_mm, "grip", "flange under a screw's head", "mm", 0,
                    THICKNESS_MAX_MM, 0),
  HUT_MAYBE_NUMBER (HutItemCut, tapped_mm, "tapped", "depth of the item's own thread", "mm", 0,
                    THICKNESS_MAX_MM, 0),
};

static const HutElementFormat cut_format = {
  .name = "cut",
  .size = sizeof (HutItemCut),
  HUT_ATTRIBUTES (cut_attributes),
};

static const HutAttributeFormat space_attributes[] = {
  HUT_CHOICE (HutItemBody, side, "side", "side of a space", sides),
  HUT_MAYBE_COUNT (HutItemBody, leaf, "leaf", "leaf of a space", 0, LEAF_MAX),
  HUT_NUMBER (HutItemBody, rect.u0, "left", "left end of a space", "mm", -PART_MAX_MM, PART_MAX_MM),
  HUT_NUMBER (HutItemBody, rect.u1, "right", "right end of a space", "mm", -PART_MAX_MM,
              PART_MAX_MM),
  HUT_NUMBER (HutItemBody, rect.v0, "bottom", "lower end of a space", "mm", -PART_MAX_MM,
              PART_MAX_MM),
  HUT_NUMBER (HutItemBody, rect.v1, "top", "upper end of a space", "mm", -PART_MAX_MM, PART_MAX_MM),
  HUT_NUMBER (HutItemBody, depth_mm, "depth", "depth of a space", "mm", HUT_CUT_MIN_MM,
              PART_MAX_MM),
  HUT_MAYBE_SWITCH (HutItemBody, soft, "soft", "soft space"),
};

static const HutElementFormat space_format = {
  .name = "space",
  .size = sizeof (HutItemBody),
  HUT_ATTRIBUTES (space_attributes),
};

static const HutAttributeFormat point_attributes[] = {
  HUT_NUMBER (HutFanPoint, flow_m3_h, "flow-m3-h", "flow of a fan", "m3/h", 0, FLOW_MAX_M3_H),
  HUT_NUMBER (HutFanPoint, pressure_pa, "pressure-pa", "pressure of a fan", "Pa", 0,
              PRESSURE_MAX_PA),
};

static const HutElementFormat point_format = {
  .name = "fan-point",
  .size = sizeof (HutFanPoint),
  HUT_ATTRIBUTES (point_attributes),
};

static const HutAttributeFormat source_attributes[] = {
  HUT_TEXT (HutItemSource, of, "of", "what a source is for"),
};

static const HutAttributeFormat source_content
    = HUT_TEXT (HutItemSource, source, "source", "text of a source");

static const HutElementFormat source_format = {
  .name = "source",
  .size = sizeof (HutItemSource),
  HUT_ATTRIBUTES (source_attributes),
  .content = &source_content,
};

static gpointer
new_source (void)
{
  return hut_item_source_new ("", "");
}

static const HutAttributeFormat item_attributes[] = {
  HUT_ID (HutItem),
  HUT_TEXT (HutItem, name, "name", "name"),
  HUT_TEXT (HutItem, words, "words", "other words"),
  HUT_CHOICE (HutItem, group, "group", "group", groups),
  HUT_MAYBE_CHOICE (HutItem, span, "span", "what it lies across", spans),
  HUT_CHOICE (HutItem, hold, "hold", "what holds it", holds),
  USUALLY_ON (HutItem, from_outside, "from-outside", "mounted from outside"),
  USUALLY_ON (HutItem, from_inside, "from-inside", "mounted from inside"),
  HUT_MAYBE_NUMBER (HutItem, thickness_min_mm, "thickness-min", "smallest thickness", "mm", 0,
                    THICKNESS_MAX_MM, 0),
  HUT_MAYBE_NUMBER (HutItem, thickness_max_mm, "thickness-max", "largest thickness", "mm", 0,
                    THICKNESS_MAX_MM, 0),
  MAYBE_SIZE (HutItem, nut_corners_mm, "nut-corners", "nut over its corners"),
  MAYBE_SIZE (HutItem, nut_height_mm, "nut-height", "height of the nut"),
  MAYBE_SIZE (HutItem, body_diagonal_mm, "body-diagonal", "diagonal of the body"),
  MAYBE_SIZE (HutItem, flange_width_mm, "flange-width", "width of the flange"),
  MAYBE_SIZE (HutItem, flange_height_mm, "flange-height", "height of the flange"),
  HUT_MAYBE_SWITCH (HutItem, flange_round, "flange-round", "round flange"),
  HUT_MAYBE_SWITCH (HutItem, strained, "strained", "struck or pulled"),
  HUT_MAYBE_SWITCH (HutItem, mains, "mains", "carries mains"),
  MAYBE_SIZE (HutItem, pass_width_mm, "pass-width", "width that passes"),
  MAYBE_SIZE (HutItem, pass_height_mm, "pass-height", "height that passes"),
  HUT_MAYBE_SWITCH (HutItem, pass_round, "pass-round", "round way through"),
  MAYBE_SIZE (HutItem, line_min_mm, "line-min", "thinnest line"),
  MAYBE_SIZE (HutItem, line_max_mm, "line-max", "thickest line"),
  HUT_NUMBER (HutItem, mass_kg, "mass-kg", "mass", "kg", 0, MASS_MAX_KG),
  HUT_MAYBE_NUMBER (HutItem, free_area_ratio, "free-area", "open part of the area", "", 0, 1, 0),
  MAYBE_SIZE (HutItem, stroke_mm, "stroke", "stroke"),
  HUT_MAYBE_NUMBER (HutItem, force_n, "force-n", "force", "N", 0, FORCE_MAX_N, 0),
  MAYBE_SIZE (HutItem, length_mm, "length", "length"),
  HUT_MAYBE_NUMBER (HutItem, noise_db, "noise-db", "noise", "dB(A)", 0, NOISE_MAX_DB, 0),
};

static const HutChildFormat item_children[] = {
  { &cut_format, HUT_CHILD_VALUES, offsetof (HutItem, cuts), 0, CUTS_MAX, NULL },
  { &space_format, HUT_CHILD_VALUES, offsetof (HutItem, bodies), 0, SPACES_MAX, NULL },
  { &point_format, HUT_CHILD_VALUES, offsetof (HutItem, curve), 0, POINTS_MAX, NULL },
  { &source_format, HUT_CHILD_ITEMS, offsetof (HutItem, sources), 0, SOURCES_MAX, new_source },
};

static char *
dup_fault (gconstpointer self)
{
  return hut_item_dup_fault (self);
}

const HutElementFormat hut_item_format = {
  .name = "item",
  .size = sizeof (HutItem),
  HUT_ATTRIBUTES (item_attributes),
  HUT_CHILDREN (item_children),
  .dup_fault = dup_fault,
};

gpointer
hut_item_format_new (void)
{
  return hut_item_new ("");
}

const char *
hut_item_group_to_string (HutItemGroup group)
{
  g_return_val_if_fail (group < HUT_ITEM_GROUP_COUNT, "");

  return groups[group];
}
