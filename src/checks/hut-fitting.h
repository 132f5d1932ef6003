/* src/checks/hut-fitting.h: which item lets a lead, hose or duct through the wall.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "catalog/hut-catalog.h"
#include "checks/hut-pass.h"

/* TRUE when the item carries lines (a bulkhead, a connector) instead of letting them pass. */
gboolean hut_fitting_carries (const HutItem *item);
/* The opening that the item leaves free. */
HutGate hut_fitting_gate (const HutItem *item);
/* TRUE when the head of @service passes the item. A bare tube or strand goes through what is made to
 * close round it; nothing needs play. */
gboolean hut_fitting_passes (const HutItem *item, const HutService *service);
/* TRUE when the item closes round the line of @service. */
gboolean hut_fitting_closes (const HutItem *item, const HutService *service);

/**
 * hut_fitting_choose:
 * @thickness_mm: of the panel
 *
 * The smallest entry of the catalogue that the service's head passes, that closes round its line and
 * that holds in a panel of that thickness as it is; for a hose without a head also one that carries
 * it. Ducts get none: their spigots depend on the hose.
 *
 * Returns: (transfer none) (nullable), valid as long as the catalogue
 */
const HutItem *hut_fitting_choose (const HutCatalog *catalog,
                                   const HutService *service,
                                   double thickness_mm);
