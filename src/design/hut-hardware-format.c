/* src/design/hut-hardware-format.c: <hardware> and <bit> as tables.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-position-format.h"

/* Ranges: own choice. */
#define NARROW_MAX_MM 1000.0
#define BIT_MIN_MM 1.0
#define BIT_MAX_MM 200.0

static const char *const hole_classes[] = { "fine", "medium", "coarse", NULL };
static const char *const pocket_ways[] = { "disc", "bore", "plate", NULL };

static const HutAttributeFormat hardware_attributes[] = {
  HUT_ID (HutHardware),
  HUT_TEXT (HutHardware, name, "name", "name"),
  HUT_REFERENCE (HutHardware, item, "item", "item", "item"),
  HUT_POSITION (HutHardware),
  HUT_CHOICE (HutHardware, face, "face", "face", hut_face_choices),
  HUT_NUMBER (HutHardware, turn_deg, "turn", "turn", "degrees", -HUT_TURN_MAX_DEG,
              HUT_TURN_MAX_DEG),
  HUT_CHOICE (HutHardware, hole_class, "holes", "class of its screw holes", hole_classes),
  HUT_MAYBE_REFERENCE (HutHardware, serves, "serves", "service", "service"),
  HUT_CHOICE (HutHardware, pocket_way, "pocket", "way of its pocket", pocket_ways),
  HUT_MAYBE_REFERENCE (HutHardware, plate_stock, "plate-stock", "stock of its face plate",
                       "stock"),
  HUT_NUMBER (HutHardware, narrow_mm, "narrower", "what its cutout is narrower", "mm", 0,
              NARROW_MAX_MM),
  HUT_SWITCH (HutHardware, bolted, "bolted", "bolts for wood screws"),
  HUT_SWITCH (HutHardware, sunk, "sunk", "countersunk heads"),
};

static char *
dup_hardware_fault (gconstpointer self)
{
  const HutHardware *hardware = self;
  char *fault = hut_position_dup_fault (&hardware->at, "hardware", hardware->id);

  if (fault == NULL && hardware->pocket_way == HUT_POCKET_PLATE && hardware->plate_stock == NULL)
    fault = g_strdup_printf ("hardware '%s' sits on a face plate of no stock; "
                             "allowed: 'plate-stock' with the id of a <stock>, or another pocket",
                             hardware->id);
  return fault;
}

const HutElementFormat hut_hardware_format = {
  .name = "hardware",
  .size = sizeof (HutHardware),
  HUT_ATTRIBUTES (hardware_attributes),
  .dup_fault = dup_hardware_fault,
};

/* A bit is one of the doubles in HutDesign.bits_mm. */
static const HutAttributeFormat bit_attributes[] = {
  { .name = "diameter",
    .kind = HUT_VALUE_NUMBER,
    .label = "diameter of the bit",
    .unit = "mm",
    .least = BIT_MIN_MM,
    .most = BIT_MAX_MM },
};

const HutElementFormat hut_bit_format = {
  .name = "bit",
  .size = sizeof (double),
  HUT_ATTRIBUTES (bit_attributes),
};
