/* src/checks/hut-ledger.c: what must cross the wall, and what lets it through.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-ledger.h"
#include "checks/hut-fitting.h"

static void
add_server (HutLedgerRow *self,
            HutServer server)
{
  self->passing_count += server.passes ? 1 : 0;
  g_array_append_val (self->servers, server);
}

static void
add_hardware (HutLedgerRow *self,
              const HutHardware *hardware,
              const HutItem *item)
{
  if (item == NULL)
    return; /* a finding of its own */
  add_server (self, (HutServer) {
                        .id = hardware->id,
                        .name = hardware->name,
                        .gate = hut_fitting_gate (item),
                        .carries = hut_fitting_carries (item),
                        .passes = hut_fitting_carries (item)
                                  || hut_fitting_passes (item, self->service),
                        .line_min_mm = item->line_min_mm,
                        .line_max_mm = item->line_max_mm,
                    });
}

static HutLedgerRow *
row_new (const HutDesign *design,
         const HutService *service)
{
  HutLedgerRow *self = g_new0 (HutLedgerRow, 1);

  self->service = service;
  self->servers = g_array_new (FALSE, FALSE, sizeof (HutServer));
  for (guint i = 0; i < design->openings->len; i++)
    {
      const HutOpening *opening = g_ptr_array_index (design->openings, i);

      const HutGate gate = hut_gate_of (opening);

      if (g_strcmp0 (opening->serves, service->id) == 0)
        add_server (self, (HutServer) { .id = opening->id,
                                        .name = opening->name,
                                        .gate = gate,
                                        .passes = hut_pass_lets (&gate, hut_head_of (service)) });
    }
  for (guint i = 0; i < design->hardware->len; i++)
    {
      const HutHardware *hardware = g_ptr_array_index (design->hardware, i);

      if (g_strcmp0 (hardware->serves, service->id) == 0)
        add_hardware (self, hardware, hut_design_get_hardware_item (design, hardware));
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
  g_clear_pointer (&self->servers, g_array_unref);
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
