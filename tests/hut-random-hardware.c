/* tests/hut-random-hardware.c: random hardware of the shipped catalogue on a random design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "catalog/hut-catalog.h"
#include "hut-random-hardware.h"
#include <math.h>

#define HARDWARE_MAX 5
/* Mounted from a face that its item does not have. */
#define WRONG_FACE_RATIO 0.05

/* The shipped items, read once for all designs. */
static const HutCatalog *
shipped (void)
{
  static gsize once = 0;
  static HutCatalog *catalog = NULL;

  if (g_once_init_enter (&once))
    {
      catalog = hut_catalog_new ();
      g_once_init_leave (&once, 1);
    }
  return catalog;
}

/* A panel that an item across the hinge line or the seam can belong to; a wild one now and then. */
static HutPanelId
line_panel (HutRandomPlacing *self,
            const HutItem    *item)
{
  static const HutSide of_hinge[] = { HUT_SIDE_BACK, HUT_SIDE_LEFT, HUT_SIDE_RIGHT, HUT_SIDE_TOP };
  const HutShell *shell = &self->design->shell;
  HutPanelId panel = { HUT_SHELL_BASE, of_hinge[shell->hinge] };

  if (item->span == HUT_SPAN_SEAM)
    do
      panel.side = (HutSide) hut_random_below (self->random, HUT_SIDE_COUNT);
    while (!hut_shell_has_seam (shell, panel.side));
  return hut_shell_has_panel (shell, panel) ? panel : hut_random_placing_panel (self);
}

static HutPoint
half_size_mm (const HutItem *item,
              double         turn_deg)
{
  HutPoint half_mm = { 0, 0 };

  for (guint leaf = 0; leaf < 2; leaf++)
    {
      const HutRect bounds = hut_item_bounds (item, leaf, HUT_HOLE_MEDIUM);

      if (bounds.u1 < bounds.u0)
        continue;
      half_mm.u = MAX (half_mm.u, MAX (-bounds.u0, bounds.u1));
      half_mm.v = MAX (half_mm.v, MAX (-bounds.v0, bounds.v1));
    }
  if (fmod (turn_deg, 180.0) != 0.0)
    half_mm = (HutPoint) { half_mm.v, half_mm.u };
  return half_mm;
}

/* How it is held; the numbers are those that the inspector lets the user set. */
static void
fill_ways (HutRandom     *random,
           HutDesign     *design,
           const HutItem *item,
           HutHardware   *hardware)
{
  const GPtrArray *services = design->machine.services;

  hardware->hole_class = (HutHoleClass) hut_random_below (random, 3);
  hardware->pocket_way = (HutPocketWay) hut_random_below (random, 3);
  if (hardware->pocket_way == HUT_POCKET_PLATE)
    hardware->plate_stock = g_strdup (hut_random_chance (random, 0.5) ? "clear" : "wall-1");
  if (item->group == HUT_ITEM_FAN && hut_random_chance (random, 0.3))
    hardware->narrow_mm = hut_random_typed (random, 0.5, 10.0);
  hardware->bolted = hut_random_chance (random, 0.3);
  hardware->sunk = hut_random_chance (random, 0.1);
  if (services->len > 0 && hut_random_chance (random, 0.3))
    {
      const HutService *service
          = g_ptr_array_index (services, hut_random_below (random, services->len));

      hardware->serves = g_strdup (service->id);
    }
}

static void
add_one (HutRandomPlacing *self,
         guint             number)
{
  const HutCatalog *catalog = shipped ();
  const HutItem *item = hut_catalog_get_nth (
      catalog, hut_random_below (self->random, hut_catalog_get_count (catalog)));
  const HutPanelId panel = item->span == HUT_SPAN_PANEL ? hut_random_placing_panel (self)
                                                        : line_panel (self, item);
  g_autofree char *id = g_strdup_printf ("hardware-%u", number);
  g_autoptr(HutHardware) hardware = hut_hardware_new (id, item->id, panel);
  const gboolean wrong = hut_random_chance (self->random, WRONG_FACE_RATIO);

  hardware->face = item->from_outside ? HUT_FACE_OUTSIDE : HUT_FACE_INSIDE;
  if (item->from_outside && item->from_inside)
    hardware->face = (HutFace) hut_random_below (self->random, 2);
  else if (wrong)
    hardware->face = item->from_outside ? HUT_FACE_INSIDE : HUT_FACE_OUTSIDE;
  if (item->span == HUT_SPAN_PANEL)
    hardware->turn_deg = 90.0 * hut_random_below (self->random, 4);
  fill_ways (self->random, self->design, item, hardware);
  if (!hut_random_placing_find (self, &hardware->at, half_size_mm (item, hardware->turn_deg)))
    return;
  hut_design_keep_item (self->design, item);
  g_ptr_array_add (self->design->hardware, g_steal_pointer (&hardware));
}

void
hut_random_add_hardware (HutRandomPlacing *placing)
{
  const guint count = hut_random_below (placing->random, HARDWARE_MAX + 1);

  for (guint i = 0; i < count; i++)
    add_one (placing, i + 1);
}
