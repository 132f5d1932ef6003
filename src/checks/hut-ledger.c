/* src/checks/hut-ledger.c: what must cross the wall, and what lets it through.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-ledger.h"

static HutLedgerRow *
row_new (const HutDesign *design,
         const HutService *service)
{
  HutLedgerRow *self = g_new0 (HutLedgerRow, 1);
  const HutHead head = hut_head_of (service);

  self->service = service;
  self->openings = g_ptr_array_new ();
  for (guint i = 0; i < design->openings->len; i++)
    {
      HutOpening *opening = g_ptr_array_index (design->openings, i);
      const HutGate gate = hut_gate_of (opening);

      if (g_strcmp0 (opening->serves, service->id) != 0)
        continue;
      g_ptr_array_add (self->openings, opening);
      self->passing_count += hut_pass_lets (&gate, head) ? 1 : 0;
    }
  return self;
}

GPtrArray *
hut_ledger_new (const HutDesign *design)
{
  GPtrArray *ledger = g_ptr_array_new_with_free_func ((GDestroyNotify)hut_ledger_row_free);

  g_return_val_if_fail (design != NULL, ledger);

  for (guint i = 0; i < design->machine.services->len; i++)
    g_ptr_array_add (ledger,
                     row_new (design, g_ptr_array_index (design->machine.services, i)));
  return ledger;
}

void
hut_ledger_row_free (HutLedgerRow *self)
{
  if (self == NULL)
    return;
  g_clear_pointer (&self->openings, g_ptr_array_unref);
  g_free (self);
}

const HutLedgerRow *
hut_ledger_find (const GPtrArray *ledger,
                 const char *service)
{
  for (guint i = 0; i < ledger->len; i++)
    {
      const HutLedgerRow *row = g_ptr_array_index (ledger, i);

      if (g_strcmp0 (row->service->id, service) == 0)
        return row;
    }
  return NULL;
}
