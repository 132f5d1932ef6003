/* src/checks/hut-fitting.c: which item lets a lead, hose or duct through the wall.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-fitting.h"

gboolean
hut_fitting_carries (const HutItem *item)
{
  return item->pass_width_mm <= 0.0;
}

HutGate
hut_fitting_gate (const HutItem *item)
{
  return (HutGate) { item->pass_round, item->pass_width_mm, item->pass_height_mm,
                     item->pass_round ? item->pass_width_mm / 2.0 : 0.0 };
}

gboolean
hut_fitting_closes (const HutItem *item,
                    const HutService *service)
{
  return item->line_max_mm > 0.0 && service->line_mm >= item->line_min_mm
         && service->line_mm <= item->line_max_mm;
}

static gboolean
is_bare (const HutService *service)
{
  const HutHead head = hut_head_of (service);

  return head.round && head.width_mm <= service->line_mm;
}

gboolean
hut_fitting_passes (const HutItem *item,
                    const HutService *service)
{
  const HutGate gate = hut_fitting_gate (item);

  if (hut_fitting_carries (item))
    return FALSE;
  return (is_bare (service) && hut_fitting_closes (item, service))
         || hut_pass_lets (&gate, hut_head_of (service));
}

static gboolean
holds_in (const HutItem *item,
          double thickness_mm)
{
  return thickness_mm >= item->thickness_min_mm
         && (item->thickness_max_mm <= 0.0 || thickness_mm <= item->thickness_max_mm);
}

static gboolean
fits (const HutItem *item,
      const HutService *service,
      double thickness_mm)
{
  if (item->group != HUT_ITEM_ENTRY || !item->from_outside || !holds_in (item, thickness_mm)
      || !hut_fitting_closes (item, service))
    return FALSE;
  return hut_fitting_passes (item, service)
         || (hut_fitting_carries (item) && service->kind == HUT_SERVICE_HOSE && is_bare (service));
}

const HutItem *
hut_fitting_choose (const HutCatalog *catalog,
                    const HutService *service,
                    double thickness_mm)
{
  const HutItem *best = NULL;

  g_return_val_if_fail (catalog != NULL && service != NULL, NULL);

  if (service->kind == HUT_SERVICE_DUCT)
    return NULL;
  for (guint i = 0; i < hut_catalog_get_count (catalog); i++)
    {
      const HutItem *item = hut_catalog_get_nth (catalog, i);

      if (fits (item, service, thickness_mm)
          && (best == NULL
              || item->flange_width_mm * item->flange_height_mm
                     < best->flange_width_mm * best->flange_height_mm))
        best = item;
    }
  return best;
}
