/* src/checks/hut-ledger.h: what must cross the wall, and what lets it through.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "checks/hut-pass.h"

/* An opening or a piece of hardware that serves a service. All lent by the design. */
typedef struct
{
  const char *id, *name;
  HutGate gate;          /* what the head must pass; of no width when `carries` */
  gboolean carries;      /* a connector or bulkhead: the line is plugged on both of its sides */
  gboolean passes;       /* the head passes, or it carries */
  double line_min_mm, line_max_mm; /* lines that it closes round; 0, 0: any, or none */
} HutServer;

typedef struct
{
  const HutService *service; /* lent by the design */
  GArray *servers;           /* HutServer */
  guint passing_count;       /* how many of them pass */
} HutLedgerRow;

/* Pure. (transfer full) (element-type HutLedgerRow): one row per service, in the design's order;
 * valid while @design is */
GPtrArray *hut_ledger_new (const HutDesign *design) G_GNUC_WARN_UNUSED_RESULT;
void hut_ledger_row_free (HutLedgerRow *self);
/* (transfer none) (nullable): the row of a service. */
const HutLedgerRow *hut_ledger_find (const GPtrArray *ledger, const char *service);
