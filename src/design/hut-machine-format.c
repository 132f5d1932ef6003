/* src/design/hut-machine-format.c: <machine> and what is in it, as tables.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design-format.h"
#include "format/hut-format-table.h"
#include "format/hut-number.h"

/* Own choice: two people do not lift more onto a bench. */
#define MASS_MAX_KG 1000.0
#define CLEARANCE_MAX_MM 1000.0
/* Own choice: a larger duct is part of the building. */
#define LINE_MAX_MM 1000.0

/* Own choices: far over any bench machine, and what the formulas cover. */
#define POWER_MAX_W 20000.0
#define SOUND_MAX_DB 140.0
#define WARMEST_MIN_C 20.0
#define WARMEST_MAX_C 120.0
#define LASER_MAX_W 1000.0
/* Visible light to far infrared: what the limits of hut-laser-limit.h speak of, and around it. */
#define LASER_MIN_NM 180.0
#define LASER_MAX_NM 1e6
#define EXPOSURE_MIN_S 0.001
#define EXPOSURE_MAX_S 30000.0

static const char *const glows[] = { "unknown", "none", "laser", "arc", NULL };
static const char *const body_kinds[] = { "static", "moving", "keep-out", NULL };
static const char *const service_kinds[] = { "lead", "hose", "duct", NULL };

static const HutAttributeFormat clearance_attributes[] = {
  HUT_NUMBER (HutClearance, left, "left", "clearance on the left", "mm", 0, CLEARANCE_MAX_MM),
  HUT_NUMBER (HutClearance, right, "right", "clearance on the right", "mm", 0, CLEARANCE_MAX_MM),
  HUT_NUMBER (HutClearance, front, "front", "clearance in front", "mm", 0, CLEARANCE_MAX_MM),
  HUT_NUMBER (HutClearance, back, "back", "clearance behind", "mm", 0, CLEARANCE_MAX_MM),
  HUT_NUMBER (HutClearance, top, "top", "clearance above", "mm", 0, CLEARANCE_MAX_MM),
};

static const HutElementFormat clearance_format = {
  .name = "clearance",
  .size = sizeof (HutClearance),
  HUT_ATTRIBUTES (clearance_attributes),
};

/* Both ends of the box, not one end and a size: then the file holds the very numbers in memory. */
static const HutAttributeFormat body_attributes[] = {
  HUT_ID (HutBody),
  HUT_TEXT (HutBody, name, "name", "name"),
  HUT_CHOICE (HutBody, kind, "kind", "kind", body_kinds),
  HUT_COORDINATE (HutBody, box.min.x, "left", "left end"),
  HUT_COORDINATE (HutBody, box.max.x, "right", "right end"),
  HUT_COORDINATE (HutBody, box.min.y, "front", "front end"),
  HUT_COORDINATE (HutBody, box.max.y, "back", "back end"),
  HUT_COORDINATE (HutBody, box.min.z, "bottom", "lower end"),
  HUT_COORDINATE (HutBody, box.max.z, "top", "upper end"),
  HUT_COORDINATE (HutBody, travel.x, "travel-x", "travel to the right"),
  HUT_COORDINATE (HutBody, travel.y, "travel-y", "travel to the back"),
  HUT_COORDINATE (HutBody, travel.z, "travel-z", "travel upwards"),
};

static char *
dup_extent_fault (const HutBody *body,
                  const char *end,
                  const char *start,
                  double end_mm,
                  double start_mm)
{
  char end_text[HUT_NUMBER_SIZE], start_text[HUT_NUMBER_SIZE];

  if (end_mm >= start_mm)
    return NULL;
  hut_number_exact (start_text, start_mm);
  return g_strdup_printf ("'%s' of body '%s' is %s; allowed: not less than '%s', which is %s mm",
                          end, body->id, hut_number_exact (end_text, end_mm), start, start_text);
}

static char *
dup_body_fault (gconstpointer self)
{
  const HutBody *body = self;
  const HutVec3 min = body->box.min, max = body->box.max;
  char *fault = dup_extent_fault (body, "right", "left", max.x, min.x);

  if (fault == NULL)
    fault = dup_extent_fault (body, "back", "front", max.y, min.y);
  if (fault == NULL)
    fault = dup_extent_fault (body, "top", "bottom", max.z, min.z);
  return fault;
}

static const HutElementFormat body_format = {
  .name = "body",
  .size = sizeof (HutBody),
  HUT_ATTRIBUTES (body_attributes),
  .dup_fault = dup_body_fault,
};

static const HutAttributeFormat service_attributes[] = {
  HUT_ID (HutService),
  HUT_TEXT (HutService, name, "name", "name"),
  HUT_CHOICE (HutService, kind, "kind", "kind", service_kinds),
  HUT_NUMBER (HutService, line_mm, "line", "diameter of the line", "mm", HUT_CUT_MIN_MM,
              LINE_MAX_MM),
  HUT_NUMBER (HutService, head_width_mm, "head-width", "width of the head", "mm", HUT_CUT_MIN_MM,
              LINE_MAX_MM),
  HUT_NUMBER (HutService, head_height_mm, "head-height", "height of the head", "mm", HUT_CUT_MIN_MM,
              LINE_MAX_MM),
  HUT_COORDINATE (HutService, at.x, "x", "place from the left"),
  HUT_COORDINATE (HutService, at.y, "y", "place from the front"),
  HUT_COORDINATE (HutService, at.z, "z", "height"),
};

static const HutElementFormat service_format = {
  .name = "service",
  .size = sizeof (HutService),
  HUT_ATTRIBUTES (service_attributes),
};

static gpointer
new_body (void)
{
  return hut_body_new ("", HUT_BODY_STATIC);
}

static gpointer
new_service (void)
{
  return hut_service_new ("", HUT_SERVICE_LEAD);
}

static const HutAttributeFormat machine_attributes[] = {
  HUT_TEXT (HutMachine, name, "name", "name of the machine"),
  HUT_NUMBER (HutMachine, mass_kg, "mass-kg", "mass of the machine", "kg", 0, MASS_MAX_KG),
  HUT_MAYBE_NUMBER (HutMachine, work.power_w, "power-w", "mean power of the machine", "W", 0,
                    POWER_MAX_W, HUT_UNKNOWN),
  HUT_MAYBE_NUMBER (HutMachine, work.lamp_w, "lamp-w", "power of the lamps", "W", 0, POWER_MAX_W,
                    HUT_UNKNOWN),
  HUT_MAYBE_NUMBER (HutMachine, work.sound_db, "sound-db", "sound level of the machine", "dB", 0,
                    SOUND_MAX_DB, HUT_UNKNOWN),
  HUT_MAYBE_NUMBER (HutMachine, work.warmest_c, "warmest-c", "highest temperature of the machine",
                    "deg C", WARMEST_MIN_C, WARMEST_MAX_C, HUT_UNKNOWN),
  HUT_MAYBE_CHOICE (HutMachine, work.glow, "light", "light of the machine", glows),
  HUT_MAYBE_NUMBER (HutMachine, work.laser_w, "laser-w", "power of the laser", "W", 0, LASER_MAX_W,
                    HUT_UNKNOWN),
  HUT_MAYBE_NUMBER (HutMachine, work.laser_nm, "laser-nm", "wavelength of the laser", "nm",
                    LASER_MIN_NM, LASER_MAX_NM, HUT_UNKNOWN),
  HUT_MAYBE_NUMBER (HutMachine, work.exposure_s, "exposure-s", "time that somebody looks", "s",
                    EXPOSURE_MIN_S, EXPOSURE_MAX_S, HUT_UNKNOWN),
};

static const HutChildFormat machine_children[] = {
  { &clearance_format, HUT_CHILD_MEMBER, offsetof (HutMachine, clearance_mm), 1, 1, NULL },
  { &body_format, HUT_CHILD_ITEMS, offsetof (HutMachine, bodies), 0, HUT_ITEMS_MAX, new_body },
  { &service_format, HUT_CHILD_ITEMS, offsetof (HutMachine, services), 0, HUT_ITEMS_MAX,
    new_service },
};

const HutElementFormat hut_machine_format = {
  .name = "machine",
  .size = sizeof (HutMachine),
  HUT_ATTRIBUTES (machine_attributes),
  HUT_CHILDREN (machine_children),
};
