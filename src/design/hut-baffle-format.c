/* src/design/hut-baffle-format.c: <baffle> as a table.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design-format.h"
#include "format/hut-format-table.h"

/* Own choice: wider strips are panels. */
#define STRIP_MAX_MM 500.0

static const char *const sides[] = { "front", "back", "left", "right", "bottom", "top", NULL };
static const char *const shells[] = { "base", "lid", NULL };

static const HutAttributeFormat attributes[] = {
  HUT_CHOICE (HutBaffle, side, "side", "side of the baffle", sides),
  HUT_CHOICE (HutBaffle, shell, "shell", "shell of the baffle", shells),
  HUT_NUMBER (HutBaffle, overlap_mm, "overlap", "overlap of the baffle", "mm", 0, STRIP_MAX_MM),
  HUT_NUMBER (HutBaffle, gap_mm, "gap", "gap of the baffle", "mm", 0, STRIP_MAX_MM),
  HUT_NUMBER (HutBaffle, hold_mm, "hold", "hold of the baffle", "mm", 1, STRIP_MAX_MM),
  HUT_REFERENCE (HutBaffle, stock, "stock", "stock of the baffle", "stock"),
};

const HutElementFormat hut_baffle_format = {
  .name = "baffle",
  .size = sizeof (HutBaffle),
  HUT_ATTRIBUTES (attributes),
};

char *
hut_baffles_dup_fault (const GPtrArray *baffles)
{
  for (guint i = 0; i < baffles->len; i++)
    for (guint k = 0; k < i; k++)
      {
        const HutSide side = ((const HutBaffle *) g_ptr_array_index (baffles, i))->side;

        if (((const HutBaffle *) g_ptr_array_index (baffles, k))->side == side)
          return g_strdup_printf (
              "baffle at the %s comes twice; allowed: one <baffle> for each side", sides[side]);
      }
  return NULL;
}
