/* src/checks/hut-ledger.h: what must cross the wall, and what lets it through.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "checks/hut-pass.h"

typedef struct
{
  const HutService *service; /* lent by the design */
  GPtrArray *openings;       /* HutOpening, lent by the design: those that serve it */
  guint passing_count;       /* of those, how many its head passes */
} HutLedgerRow;

/* Pure. (transfer full) (element-type HutLedgerRow): one row per service, in the design's order;
 * valid while @design is */
GPtrArray *hut_ledger_new (const HutDesign *design) G_GNUC_WARN_UNUSED_RESULT;
void hut_ledger_row_free (HutLedgerRow *self);
/* (transfer none) (nullable): the row of a service. */
const HutLedgerRow *hut_ledger_find (const GPtrArray *ledger, const char *service);
