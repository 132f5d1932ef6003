/* src/design/hut-extra-format.c: <extra> as a table.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design-format.h"
#include "format/hut-format-table.h"

/* Own choice: more of one plate than any bench needs, and more than anybody draws by numbers. */
#define COPIES_MAX 100
#define SHAPES_MAX 100

static const HutAttributeFormat rect_attributes[] = {
  HUT_COORDINATE (HutExtraRect, u_mm, "u", "rectangle's middle across"),
  HUT_COORDINATE (HutExtraRect, v_mm, "v", "rectangle's middle upwards"),
  HUT_SIZE (HutExtraRect, width_mm, "width", "rectangle's width", HUT_CUT_MIN_MM),
  HUT_SIZE (HutExtraRect, height_mm, "height", "rectangle's height", HUT_CUT_MIN_MM),
};

static const HutElementFormat rect_format = {
  .name = "rectangle",
  .size = sizeof (HutExtraRect),
  HUT_ATTRIBUTES (rect_attributes),
};

static const HutAttributeFormat hole_attributes[] = {
  HUT_COORDINATE (HutExtraHole, u_mm, "u", "hole's middle across"),
  HUT_COORDINATE (HutExtraHole, v_mm, "v", "hole's middle upwards"),
  HUT_SIZE (HutExtraHole, width_mm, "width", "hole's width", HUT_CUT_MIN_MM),
  HUT_SIZE (HutExtraHole, height_mm, "height", "hole's height", HUT_CUT_MIN_MM),
  HUT_SIZE (HutExtraHole, radius_mm, "radius", "hole's corner radius", 0),
};

static const HutElementFormat hole_format = {
  .name = "cutout",
  .size = sizeof (HutExtraHole),
  HUT_ATTRIBUTES (hole_attributes),
};

static const HutAttributeFormat extra_attributes[] = {
  HUT_ID (HutExtra),
  HUT_TEXT (HutExtra, name, "name", "name"),
  HUT_REFERENCE (HutExtra, stock, "stock", "stock", "stock"),
  HUT_COUNT (HutExtra, count, "count", "number", 1, COPIES_MAX),
  HUT_SIZE (HutExtra, radius_mm, "radius", "corner radius", 0),
};

static const HutChildFormat extra_children[] = {
  { &rect_format, HUT_CHILD_VALUES, offsetof (HutExtra, rects), 1, SHAPES_MAX, NULL },
  { &hole_format, HUT_CHILD_VALUES, offsetof (HutExtra, holes), 0, SHAPES_MAX, NULL },
};

const HutElementFormat hut_extra_format = {
  .name = "extra",
  .size = sizeof (HutExtra),
  HUT_ATTRIBUTES (extra_attributes),
  HUT_CHILDREN (extra_children),
};
