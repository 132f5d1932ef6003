/* src/checks/hut-check-service.c: leads, hoses and ducts against the openings that serve them.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include "checks/hut-ledger.h"
#include <glib/gi18n-lib.h>

static const char *
service_name (const HutService *service)
{
  return hut_check_name (service->name, service->id);
}

static void
add_missing (HutChecking *self,
             const HutService *service)
{
  HutFinding *finding = hut_checking_add (
      self, "service.missing", HUT_SEVERITY_BLOCKS,
      N_ ("{what} has no way through the wall: {is} openings serve it; {must} is needed."));

  hut_finding_set_names (finding, service_name (service), NULL);
  hut_finding_set_numbers (finding, 0.0, 1.0);
  hut_finding_set_item (finding, service->id);
}

static void
add_tight (HutChecking *self,
           const HutService *service,
           const HutOpening *opening)
{
  const HutAssembly *assembly = self->assembly;
  const HutPlacedHole *hole = hut_assembly_get_hole (assembly, opening->id);
  const HutHead head = hut_head_of (service);
  const HutGate gate = hut_gate_of (opening);
  double is_mm, must_mm;
  HutFinding *finding = hut_checking_add (
      self, "service.tight", HUT_SEVERITY_BLOCKS,
      gate.round || head.round
          ? N_ ("The head of {other} does not pass {what}: it is {is} mm across; {must} mm are "
                "needed.")
          : N_ ("The head of {other} does not pass {what}: of its {must} mm, {is} mm go through."));

  hut_pass_numbers (&gate, head, &is_mm, &must_mm);
  hut_finding_set_names (finding, hut_check_name (opening->name, opening->id),
                         service_name (service));
  hut_finding_set_numbers (finding, is_mm, must_mm);
  hut_finding_set_item (finding, opening->id);
  if (hole != NULL)
    hut_finding_add_place (finding, hut_check_panel (assembly, hole->panel), hole->bounds);
}

static void
add_doubled (HutChecking *self,
             const HutLedgerRow *row)
{
  const HutOpening *last = g_ptr_array_index (row->openings, row->openings->len - 1);
  HutFinding *finding = hut_checking_add (
      self, "service.doubled", HUT_SEVERITY_WARNS,
      N_ ("{is} openings serve {what}; {must} is enough."));

  hut_finding_set_names (finding, service_name (row->service), NULL);
  hut_finding_set_numbers (finding, row->openings->len, 1.0);
  hut_finding_set_item (finding, last->id);
  for (guint i = 0; i < row->openings->len; i++)
    {
      const HutOpening *opening = g_ptr_array_index (row->openings, i);
      const HutPlacedHole *hole = hut_assembly_get_hole (self->assembly, opening->id);

      if (hole != NULL)
        hut_finding_add_place (finding, hut_check_panel (self->assembly, hole->panel),
                               hole->bounds);
    }
}

void
hut_check_service (HutChecking *self)
{
  g_autoptr(GPtrArray) ledger = hut_ledger_new (self->assembly->design);

  for (guint i = 0; i < ledger->len; i++)
    {
      const HutLedgerRow *row = g_ptr_array_index (ledger, i);

      if (row->openings->len == 0)
        add_missing (self, row->service);
      for (guint k = 0; row->passing_count == 0 && k < row->openings->len; k++)
        add_tight (self, row->service, g_ptr_array_index (row->openings, k));
      if (row->openings->len > 1)
        add_doubled (self, row);
    }
}
