/* src/checks/hut-mains.c: openings for mains stay away from those for signals.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-mains.h"

/* A mains lead is 7 .. 9 mm thick (common practice, no source): thicker leads may be one, mm. */
#define SIGNAL_MOST_MM 6.5

static gboolean
is_signal_lead (const HutDesign *design,
                const char *serves)
{
  const HutService *service = serves != NULL ? hut_design_get_service (design, serves) : NULL;

  return service != NULL && service->kind == HUT_SERVICE_LEAD
         && service->line_mm < SIGNAL_MOST_MM;
}

HutWiring
hut_wiring_of (const HutAssembly *assembly,
               const HutPlacedHole *hole)
{
  const HutDesign *design = assembly->design;
  const HutOpening *opening = hut_design_get_opening (design, hole->item);
  const HutHardware *hardware
      = opening == NULL ? hut_design_get_hardware (design, hole->item) : NULL;
  const HutItem *item
      = hardware != NULL ? hut_design_get_hardware_item (design, hardware) : NULL;

  if (item != NULL && item->mains)
    return HUT_WIRING_MAINS;
  if ((item != NULL && item->group == HUT_ITEM_CONNECTOR)
      || is_signal_lead (design, opening != NULL    ? opening->serves
                          : hardware != NULL ? hardware->serves
                                             : NULL))
    return HUT_WIRING_SIGNAL;
  return HUT_WIRING_NONE;
}

static HutBox3
box_of (const HutAssembly *assembly,
        const HutPlacedHole *hole)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, hole->panel);

  return hut_frame3_box (&panel->frame, hole->bounds, -panel->thickness_mm, 0.0);
}

double
hut_wiring_apart_mm (const HutAssembly *assembly,
                     const HutPlacedHole *a,
                     const HutPlacedHole *b)
{
  const HutBox3 one = box_of (assembly, a), other = box_of (assembly, b);

  return hut_box3_distance_mm (&one, &other);
}
