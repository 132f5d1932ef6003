/* src/design/hut-design-format.c: <enclosure>, <room>, <cutter>, <shell> and <joints> as tables.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "catalog/hut-item-format.h"
#include "design/hut-design-format.h"
#include "design/hut-file.h"
#include "format/hut-format-table.h"

/* Ranges: own choice, unless the member's own comment in hut-design.h gives them. */
#define MARGIN_MAX_MM 1000.0
#define SEAM_GAP_MAX_MM 100.0
#define HINGE_OFFSET_MAX_MM 1000.0
#define ANGLE_MIN_DEG 1.0
#define ANGLE_MAX_DEG 270.0 /* flat against the wall below the hinge */
#define LEDGE_MIN_MM 1.0
#define LEDGE_MAX_MM 200.0
#define STRAP_MIN_RATIO 2.0
#define STRAP_MAX_RATIO 60.0
#define BITS_MAX 200
/* Own choices: workshops, and what the air's formulas cover. */
#define ROOM_MAX_C 60.0
#define ALTITUDE_MAX_M 9000.0
#define DUCT_MIN_MM 20.0
#define DUCT_MAX_MM 1000.0
#define DUCT_LENGTH_MAX_MM 100000.0
#define BENDS_MAX 50
#define STAYS_MAX 2
#define SPRING_MAX_N 5000.0
#define LEAD_IN_MAX_MM 50.0
#define TRAVEL_MAX_MM_MIN 1e6
#define ACCELERATION_MAX_MM_S2 1e5
#define SPINDLE_MAX_RPM 100000.0
#define SAFE_MIN_MM 1.0 /* clear of chips and of a sheet that is not flat */
#define SAFE_MAX_MM 100.0
#define THROUGH_MAX_MM 10.0

static const char *const cutter_kinds[] = { "laser", "router", NULL };
static const char *const lids[] = { "hood", "top", "lift-off", "front", NULL };
static const char *const hinges[] = { "back", "left", "right", "top", NULL };
static const char *const bottoms[] = { "jointed", "inset", "under", "bought", "open", NULL };

static const char *const ducts[] = { "unknown", "rigid", "hose", "slack-hose", NULL };
static const char *const exits[] = { "open", "flap", "grille", NULL };
static const char *const coats[] = { "unknown", "bare", "black", "white", "clear", NULL };
static const char *const stays[] = { "none", "gas-spring", "prop", NULL };

static const HutAttributeFormat room_attributes[] = {
  HUT_MAYBE_NUMBER (HutRoom, left, "left", "room on the left", "mm", 0, HUT_LENGTH_MAX_MM,
                    HUT_ROOM_FREE),
  HUT_MAYBE_NUMBER (HutRoom, right, "right", "room on the right", "mm", 0, HUT_LENGTH_MAX_MM,
                    HUT_ROOM_FREE),
  HUT_MAYBE_NUMBER (HutRoom, front, "front", "room in front", "mm", 0, HUT_LENGTH_MAX_MM,
                    HUT_ROOM_FREE),
  HUT_MAYBE_NUMBER (HutRoom, back, "back", "room behind", "mm", 0, HUT_LENGTH_MAX_MM,
                    HUT_ROOM_FREE),
  HUT_MAYBE_NUMBER (HutRoom, above, "above", "height of the shelf", "mm", 0, HUT_LENGTH_MAX_MM,
                    HUT_ROOM_FREE),
  HUT_MAYBE_NUMBER (HutRoom, temperature_c, "temperature-c", "temperature of the room", "deg C", 0,
                    ROOM_MAX_C, HUT_UNKNOWN),
  HUT_MAYBE_NUMBER (HutRoom, altitude_m, "altitude-m", "height over sea level", "m", 0,
                    ALTITUDE_MAX_M, HUT_UNKNOWN),
};

static const HutElementFormat room_format = {
  .name = "room",
  .size = sizeof (HutRoom),
  HUT_ATTRIBUTES (room_attributes),
};

static const HutAttributeFormat cutter_attributes[] = {
  HUT_TEXT (HutCutter, name, "name", "name of the cutter"),
  HUT_CHOICE (HutCutter, kind, "kind", "kind of the cutter", cutter_kinds),
  HUT_SIZE (HutCutter, bed_width_mm, "bed-width", "width of the bed", 1),
  HUT_SIZE (HutCutter, bed_depth_mm, "bed-depth", "depth of the bed", 1),
  HUT_NUMBER (HutCutter, margin_mm, "margin", "margin of the bed", "mm", 0, MARGIN_MAX_MM),
  HUT_NUMBER (HutCutter, part_gap_mm, "part-gap", "gap between parts", "mm", 0, MARGIN_MAX_MM),
  HUT_SWITCH (HutCutter, any_angle, "any-angle", "parts at any angle"),
  HUT_MAYBE_NUMBER (HutCutter, lead_in_mm, "lead-in", "lead-in", "mm", 0, LEAD_IN_MAX_MM, 0),
  HUT_MAYBE_SWITCH (HutCutter, tabs, "tabs", "holding tabs"),
  HUT_MAYBE_NUMBER (HutCutter, travel_mm_min, "travel-mm-min", "travel speed", "mm/min", 1,
                    TRAVEL_MAX_MM_MIN, HUT_CUTTER_TRAVEL_MM_MIN),
  HUT_MAYBE_NUMBER (HutCutter, acceleration_mm_s2, "acceleration-mm-s2", "acceleration", "mm/s2", 1,
                    ACCELERATION_MAX_MM_S2, HUT_CUTTER_ACCELERATION_MM_S2),
  HUT_MAYBE_NUMBER (HutCutter, plunge_mm_min, "plunge-mm-min", "plunge speed", "mm/min", 1,
                    TRAVEL_MAX_MM_MIN, HUT_CUTTER_PLUNGE_MM_MIN),
  HUT_MAYBE_NUMBER (HutCutter, spindle_rpm, "spindle-rpm", "spindle speed", "rpm", 1,
                    SPINDLE_MAX_RPM, HUT_CUTTER_SPINDLE_RPM),
  HUT_MAYBE_NUMBER (HutCutter, safe_mm, "safe-height", "safe height", "mm", SAFE_MIN_MM,
                    SAFE_MAX_MM, HUT_CUTTER_SAFE_MM),
  HUT_MAYBE_NUMBER (HutCutter, through_mm, "through", "depth under the sheet", "mm", 0,
                    THROUGH_MAX_MM, HUT_CUTTER_THROUGH_MM),
};

static const HutElementFormat cutter_format = {
  .name = "cutter",
  .size = sizeof (HutCutter),
  HUT_ATTRIBUTES (cutter_attributes),
};

/* ---- panels ---------------------------------------------------------------------------------- */

static gboolean
parse_panel (const char *text,
             gpointer member)
{
  return hut_panel_id_from_string (text, member);
}

static const char *
panel_to_text (gconstpointer member)
{
  return hut_panel_id_to_string (*(const HutPanelId *) member);
}

static char *
dup_panel_names (void)
{
  g_autoptr(GString) names = g_string_new (NULL);

  for (int shell = 0; shell < HUT_SHELL_COUNT; shell++)
    for (int side = 0; side < HUT_SIDE_COUNT; side++)
      {
        const HutPanelId id = { (HutShellId) shell, (HutSide) side };
        const char *name = hut_panel_id_to_string (id);
        HutPanelId known;

        if (hut_panel_id_from_string (name, &known))
          g_string_append_printf (names, "%s%s", names->len > 0 ? ", " : "", name);
      }
  return g_string_free (g_steal_pointer (&names), FALSE);
}

const HutWordFormat hut_panel_word = { parse_panel, panel_to_text, dup_panel_names };

static char *
take_panel_stock (gpointer parent,
                  gpointer entry)
{
  HutShell *shell = parent;
  HutPanelStock *panel = entry;
  char **member = &shell->stock[panel->panel.shell][panel->panel.side];

  if (*member != NULL)
    return g_strdup_printf ("panel '%s' comes twice; allowed: one <panel> for each",
                            hut_panel_id_to_string (panel->panel));
  *member = g_steal_pointer (&panel->stock);
  return NULL;
}

static gboolean
next_panel_stock (gconstpointer parent,
                  guint *place,
                  gpointer entry)
{
  const HutShell *shell = parent;

  for (; *place < HUT_SHELL_COUNT * HUT_SIDE_COUNT; (*place)++)
    {
      const HutPanelId id = { (HutShellId) (*place / HUT_SIDE_COUNT),
                              (HutSide) (*place % HUT_SIDE_COUNT) };
      char *stock = shell->stock[id.shell][id.side];
      HutPanelId known;

      if (stock == NULL || !hut_panel_id_from_string (hut_panel_id_to_string (id), &known))
        continue;
      (*place)++;
      *(HutPanelStock *) entry = (HutPanelStock) { id, stock };
      return TRUE;
    }
  return FALSE;
}

static void
clear_panel_stock (gpointer entry)
{
  g_clear_pointer (&((HutPanelStock *) entry)->stock, g_free);
}

static const HutKeeperFormat panel_keeper
    = { take_panel_stock, next_panel_stock, clear_panel_stock };

static const HutAttributeFormat panel_attributes[] = {
  HUT_PANEL (HutPanelStock, panel, "id", "id"),
  HUT_REFERENCE (HutPanelStock, stock, "stock", "stock", "stock"),
};

static const HutElementFormat panel_format = {
  .name = "panel",
  .size = sizeof (HutPanelStock),
  HUT_ATTRIBUTES (panel_attributes),
  .keeper = &panel_keeper,
};

static const HutAttributeFormat shell_attributes[] = {
  HUT_SWITCH (HutShell, fitted, "fitted", "inside fitted to the machine"),
  HUT_SIZE (HutShell, inside_mm.x, "inside-width", "inside width", 1),
  HUT_SIZE (HutShell, inside_mm.y, "inside-depth", "inside depth", 1),
  HUT_SIZE (HutShell, inside_mm.z, "inside-height", "inside height", 1),
  HUT_CHOICE (HutShell, lid, "lid", "kind of the lid", lids),
  HUT_CHOICE (HutShell, hinge, "hinge", "side of the hinge", hinges),
  HUT_SIZE (HutShell, seam_height_mm, "seam-height", "height of the seam", 0),
  HUT_NUMBER (HutShell, seam_gap_mm, "seam-gap", "gap of the seam", "mm", 0, SEAM_GAP_MAX_MM),
  HUT_NUMBER (HutShell, hinge_offset_mm, "hinge-offset", "offset of the hinge line", "mm", 0,
              HINGE_OFFSET_MAX_MM),
  HUT_NUMBER (HutShell, opening_angle_deg, "opening-angle", "opening angle of the lid", "degrees",
              ANGLE_MIN_DEG, ANGLE_MAX_DEG),
  HUT_NUMBER (HutShell, swing_clearance_mm, "swing-clearance", "clearance of the swinging lid",
              "mm", 0, HUT_LENGTH_MAX_MM),
  HUT_CHOICE (HutShell, bottom, "bottom", "kind of the bottom", bottoms),
  HUT_NUMBER (HutShell, ledge_mm, "ledge", "section of the ledge", "mm", LEDGE_MIN_MM,
              LEDGE_MAX_MM),
  HUT_REFERENCE (HutShell, default_stock, "stock", "stock of the shell", "stock"),
  HUT_MAYBE_CHOICE (HutShell, duct.kind, "duct", "kind of duct", ducts),
  HUT_MAYBE_NUMBER (HutShell, duct.diameter_mm, "duct-diameter", "diameter of the duct", "mm",
                    DUCT_MIN_MM, DUCT_MAX_MM, HUT_UNKNOWN),
  HUT_MAYBE_NUMBER (HutShell, duct.length_mm, "duct-length", "length of the duct", "mm", 0,
                    DUCT_LENGTH_MAX_MM, HUT_UNKNOWN),
  HUT_MAYBE_COUNT (HutShell, duct.bends, "duct-bends", "bends of the duct", 0, BENDS_MAX),
  HUT_MAYBE_CHOICE (HutShell, duct.exit, "duct-exit", "exit of the duct", exits),
  HUT_MAYBE_CHOICE (HutShell, finishing.inside, "inside-coat", "coat inside", coats),
  HUT_MAYBE_CHOICE (HutShell, finishing.outside, "outside-coat", "coat outside", coats),
  HUT_MAYBE_CHOICE (HutShell, stay.kind, "stay", "stay of the lid", stays),
  { .name = "stay-count",
    .kind = HUT_VALUE_COUNT,
    .offset = offsetof (HutShell, stay.count),
    .label = "number of stays",
    .unit = "",
    .least = 1,
    .most = STAYS_MAX,
    .optional = TRUE,
    .absent = HUT_STAYS_USUAL },
  HUT_MAYBE_NUMBER (HutShell, stay.force_n, "stay-force-n", "force of each spring", "N", 0,
                    SPRING_MAX_N, HUT_UNKNOWN),
};

static const HutChildFormat shell_children[] = {
  { &panel_format, HUT_CHILD_KEPT, 0, 0, HUT_SHELL_COUNT * HUT_SIDE_COUNT, NULL },
};

static const HutElementFormat shell_format = {
  .name = "shell",
  .size = sizeof (HutShell),
  HUT_ATTRIBUTES (shell_attributes),
  HUT_CHILDREN (shell_children),
};

static const HutAttributeFormat joints_attributes[] = {
  HUT_NUMBER (HutJoints, finger_ratio, "finger-ratio", "finger width in thicknesses", "", 1.5, 6),
  HUT_NUMBER (HutJoints, splice_length_ratio, "splice-length-ratio",
              "length of splice fingers in thicknesses", "", 3, 5),
  HUT_NUMBER (HutJoints, splice_width_ratio, "splice-width-ratio",
              "width of splice fingers in thicknesses", "", 1.5, 3),
  HUT_SWITCH (HutJoints, straps, "straps", "straps behind splices"),
  HUT_NUMBER (HutJoints, strap_ratio, "strap-ratio", "strap width in thicknesses", "",
              STRAP_MIN_RATIO, STRAP_MAX_RATIO),
};

static const HutElementFormat joints_format = {
  .name = "joints",
  .size = sizeof (HutJoints),
  HUT_ATTRIBUTES (joints_attributes),
};

static gpointer
new_stock (void)
{
  HutStock *stock = hut_stock_new ("");

  g_array_set_size (stock->readings_mm, 0);
  return stock;
}

static gpointer
new_baffle (void)
{
  return hut_baffle_new (HUT_SIDE_FRONT);
}

static gpointer
new_window (void)
{
  return hut_window_new ("", (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_FRONT });
}

static gpointer
new_opening (void)
{
  return hut_opening_new ("", (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_FRONT }, HUT_SHAPE_ROUND);
}

static gpointer
new_hardware (void)
{
  return hut_hardware_new ("", "", (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_FRONT });
}

static gpointer
new_extra (void)
{
  HutExtra *extra = hut_extra_new ("");

  g_array_set_size (extra->rects, 0);
  g_array_set_size (extra->holes, 0);
  return extra;
}

static gpointer
new_spot (void)
{
  return hut_spot_new ("");
}

static const HutAttributeFormat design_attributes[] = {
  { .name = "version",
    .kind = HUT_VALUE_VERSION,
    .label = "version of the file",
    .least = HUT_DESIGN_VERSION },
  HUT_TEXT (HutDesign, name, "name", "name of the design"),
};

static const HutChildFormat design_children[] = {
  { &hut_machine_format, HUT_CHILD_MEMBER, offsetof (HutDesign, machine), 1, 1, NULL },
  { &room_format, HUT_CHILD_MEMBER, offsetof (HutDesign, room_mm), 1, 1, NULL },
  { &cutter_format, HUT_CHILD_MEMBER, offsetof (HutDesign, cutter), 1, 1, NULL },
  { &hut_stock_format, HUT_CHILD_ITEMS, offsetof (HutDesign, stocks), 1, HUT_ITEMS_MAX, new_stock },
  { &shell_format, HUT_CHILD_MEMBER, offsetof (HutDesign, shell), 1, 1, NULL },
  { &joints_format, HUT_CHILD_MEMBER, offsetof (HutDesign, joints), 1, 1, NULL },
  { &hut_window_format, HUT_CHILD_ITEMS, offsetof (HutDesign, windows), 0, HUT_ITEMS_MAX,
    new_window },
  { &hut_opening_format, HUT_CHILD_ITEMS, offsetof (HutDesign, openings), 0, HUT_ITEMS_MAX,
    new_opening },
  { &hut_baffle_format, HUT_CHILD_ITEMS, offsetof (HutDesign, baffles), 0, HUT_SIDE_COUNT,
    new_baffle },
  { &hut_extra_format, HUT_CHILD_ITEMS, offsetof (HutDesign, extras), 0, HUT_ITEMS_MAX, new_extra },
  { &hut_item_format, HUT_CHILD_ITEMS, offsetof (HutDesign, items), 0, HUT_ITEMS_MAX,
    hut_item_format_new },
  { &hut_hardware_format, HUT_CHILD_ITEMS, offsetof (HutDesign, hardware), 0, HUT_ITEMS_MAX,
    new_hardware },
  { &hut_bit_format, HUT_CHILD_VALUES, offsetof (HutDesign, bits_mm), 0, BITS_MAX, NULL },
  { &hut_spot_format, HUT_CHILD_ITEMS, offsetof (HutDesign, spots), 0, HUT_ITEMS_MAX, new_spot },
};

static char *
dup_design_fault (gconstpointer self)
{
  const HutDesign *design = self;
  char *fault = hut_baffles_dup_fault (design->baffles);

  return fault != NULL ? fault : hut_spots_dup_fault (design->spots);
}

const HutElementFormat hut_design_format = {
  .name = "enclosure",
  .size = sizeof (HutDesign),
  HUT_ATTRIBUTES (design_attributes),
  HUT_CHILDREN (design_children),
  .dup_fault = dup_design_fault,
};
