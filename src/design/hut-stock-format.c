/* src/design/hut-stock-format.c: <stock>, its readings and its recipe, as tables.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design-format.h"
#include "format/hut-format-table.h"

/* Ranges: own choice. They hold every sheet that a small shop cuts, and few slips of the pen. */
#define THICKNESS_MAX_MM 100.0
#define PRICE_MAX 1e6
#define DENSITY_MIN_KG_M3 1.0
#define DENSITY_MAX_KG_M3 25000.0 /* the densest metals are under 23000 */
#define ALLOWANCE_MAX_MM 2.0
#define KERF_MAX_MM 20.0 /* the widest router cutters of a bench machine */
#define KERF_ERROR_MAX_MM 5.0
#define SPEED_MIN_MM_MIN 0.1
#define SPEED_MAX_MM_MIN 1e6
#define PASSES_MAX 1000

static const char *const materials[]
    = { "plywood", "mdf", "hdf", "acrylic", "polycarbonate", "other", NULL };
static const char *const grains[] = { "none", "width", "depth", NULL };
static const char *const grain_rules[] = { "up", "across", "free", NULL };
static const char *const fits[] = { "press", "slip", "glue", NULL };

static const HutAttributeFormat reading_attributes[] = {
  { .name = "mm",
    .kind = HUT_VALUE_NUMBER,
    .label = "thickness reading",
    .unit = "mm",
    .least = HUT_CUT_MIN_MM,
    .most = THICKNESS_MAX_MM },
};

static const HutElementFormat reading_format = {
  .name = "reading",
  .size = sizeof (double),
  HUT_ATTRIBUTES (reading_attributes),
};

static const HutAttributeFormat recipe_attributes[] = {
  HUT_NUMBER (HutStock, kerf_mm, "kerf", "kerf", "mm", 0, KERF_MAX_MM),
  HUT_NUMBER (HutStock, kerf_error_mm, "kerf-error", "error of the kerf", "mm", 0,
              KERF_ERROR_MAX_MM),
  HUT_NUMBER (HutStock, speed_mm_min, "speed-mm-min", "cutting speed", "mm/min", SPEED_MIN_MM_MIN,
              SPEED_MAX_MM_MIN),
  HUT_NUMBER (HutStock, power_percent, "power-percent", "power", "%", 0, 100),
  HUT_COUNT (HutStock, passes, "passes", "number of passes", 1, PASSES_MAX),
  HUT_MAYBE_NUMBER (HutStock, allowance_error_mm, "allowance-error", "error of the fit allowance",
                    "mm", 0, ALLOWANCE_MAX_MM, 0),
  HUT_MAYBE_NUMBER (HutStock, fit_shift_mm, "fit-shift", "shift of the fit", "mm",
                    -ALLOWANCE_MAX_MM, ALLOWANCE_MAX_MM, 0),
};

/* The recipe lies in the stock's own struct. */
static const HutElementFormat recipe_format = {
  .name = "recipe",
  .size = sizeof (HutStock),
  HUT_ATTRIBUTES (recipe_attributes),
};

static const HutAttributeFormat stock_attributes[] = {
  HUT_ID (HutStock),
  HUT_TEXT (HutStock, name, "name", "name"),
  HUT_CHOICE (HutStock, material, "material", "material", materials),
  HUT_NUMBER (HutStock, nominal_mm, "nominal", "nominal thickness", "mm", HUT_CUT_MIN_MM,
              THICKNESS_MAX_MM),
  HUT_SIZE (HutStock, sheet_width_mm, "sheet-width", "width of the sheet", 1),
  HUT_SIZE (HutStock, sheet_depth_mm, "sheet-depth", "depth of the sheet", 1),
  HUT_NUMBER (HutStock, price, "price", "price of a sheet", "", 0, PRICE_MAX),
  HUT_NUMBER (HutStock, density_kg_m3, "density-kg-m3", "density", "kg/m3", DENSITY_MIN_KG_M3,
              DENSITY_MAX_KG_M3),
  HUT_NUMBER (HutStock, smallest_web_mm, "smallest-web", "smallest web", "mm", HUT_CUT_MIN_MM,
              THICKNESS_MAX_MM),
  HUT_CHOICE (HutStock, fit, "fit", "fit", fits),
  HUT_NUMBER (HutStock, allowance_mm, "allowance", "fit allowance", "mm", -ALLOWANCE_MAX_MM,
              ALLOWANCE_MAX_MM),
  HUT_MAYBE_CHOICE (HutStock, grain, "grain", "grain of the sheet", grains),
  HUT_MAYBE_CHOICE (HutStock, grain_rule, "panel-grain", "grain of the panels", grain_rules),
};

static const HutChildFormat stock_children[] = {
  { &reading_format, HUT_CHILD_VALUES, offsetof (HutStock, readings_mm), 1, HUT_READINGS_MAX,
    NULL },
  { &recipe_format, HUT_CHILD_MEMBER, 0, 1, 1, NULL },
};

const HutElementFormat hut_stock_format = {
  .name = "stock",
  .size = sizeof (HutStock),
  HUT_ATTRIBUTES (stock_attributes),
  HUT_CHILDREN (stock_children),
};
