/* src/design/hut-spot-format.c: <spot> as a table.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design-format.h"
#include "format/hut-format-table.h"

#define SHEETS_MAX 1000 /* own choice: more than anybody buys */
#define TURN_MAX_DEG 360.0

static const HutAttributeFormat spot_attributes[] = {
  HUT_TEXT (HutSpot, part, "part", "part"),
  HUT_COUNT (HutSpot, sheet, "sheet", "number of the sheet", 1, SHEETS_MAX),
  HUT_COORDINATE (HutSpot, left_mm, "left", "distance from the sheet's left edge"),
  HUT_COORDINATE (HutSpot, front_mm, "front", "distance from the sheet's front edge"),
  HUT_NUMBER (HutSpot, turn_deg, "turn", "turn", "degrees", 0, TURN_MAX_DEG),
  HUT_SIZE (HutSpot, width_mm, "width", "part's width", 0),
  HUT_SIZE (HutSpot, height_mm, "height", "part's height", 0),
  HUT_MAYBE_SWITCH (HutSpot, kept, "kept", "kept by hand"),
};

const HutElementFormat hut_spot_format = {
  .name = "spot",
  .size = sizeof (HutSpot),
  HUT_ATTRIBUTES (spot_attributes),
};

char *
hut_spots_dup_fault (const GPtrArray *spots)
{
  g_autoptr(GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < spots->len; i++)
    {
      const HutSpot *spot = g_ptr_array_index (spots, i);

      if (!g_hash_table_add (seen, spot->part))
        return g_strdup_printf ("part “%s” has two spots; allowed: one", spot->part);
    }
  return NULL;
}
