/* src/checks/hut-check-service.c: leads, hoses and ducts against what serves them.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include "checks/hut-ledger.h"
#include "checks/hut-mains.h"
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
  finding->fix = (HutFix) { .kind = HUT_FIX_WAY_OUT, .item = g_strdup (service->id) };
}

static const char *
server_name (const HutServer *server)
{
  return hut_check_name (server->name, server->id);
}

static void
add_place (HutChecking *self,
           HutFinding *finding,
           const HutServer *server)
{
  const HutPlacedHole *hole = hut_assembly_get_hole (self->assembly, server->id);

  if (hole != NULL)
    hut_finding_add_place (finding, hut_check_panel (self->assembly, hole->panel), hole->bounds);
}

static void
add_tight (HutChecking *self,
           const HutService *service,
           const HutServer *server)
{
  const HutHead head = hut_head_of (service);
  double is_mm, must_mm;
  HutFinding *finding = hut_checking_add (
      self, "service.tight", HUT_SEVERITY_BLOCKS,
      server->gate.round || head.round
          ? N_ ("The head of {other} does not pass {what}: it is {is} mm across; {must} mm are "
                "needed.")
          : N_ ("The head of {other} does not pass {what}: of its {must} mm, {is} mm go through."));

  hut_pass_numbers (&server->gate, head, &is_mm, &must_mm);
  hut_finding_set_names (finding, server_name (server), service_name (service));
  hut_finding_set_numbers (finding, is_mm, must_mm);
  hut_finding_set_item (finding, server->id);
  add_place (self, finding, server);
}

static void
add_doubled (HutChecking *self,
             const HutLedgerRow *row)
{
  const guint count = row->servers->len;
  HutFinding *finding = hut_checking_add (
      self, "service.doubled", HUT_SEVERITY_WARNS,
      N_ ("{is} openings serve {what}; {must} is enough."));

  hut_finding_set_names (finding, service_name (row->service), NULL);
  hut_finding_set_numbers (finding, count, 1.0);
  hut_finding_set_item (finding, g_array_index (row->servers, HutServer, count - 1).id);
  for (guint i = 0; i < count; i++)
    add_place (self, finding, &g_array_index (row->servers, HutServer, i));
}

/* A gland, grommet or clamp closes round lines of some thicknesses only. */
static void
check_line (HutChecking *self,
            const HutService *service,
            const HutServer *server)
{
  const double line_mm = service->line_mm;
  const gboolean thin = line_mm < server->line_min_mm - HUT_CHECK_TOLERANCE_MM;
  HutFinding *finding;

  if (server->line_max_mm <= 0.0
      || (!thin && line_mm <= server->line_max_mm + HUT_CHECK_TOLERANCE_MM))
    return;
  finding = hut_checking_add (
      self, "service.line", HUT_SEVERITY_WARNS,
      thin ? N_ ("{other} is {is} mm thick; {what} closes round lines from {must} mm on.")
           : N_ ("{other} is {is} mm thick; {what} closes round lines up to {must} mm."));
  hut_finding_set_names (finding, server_name (server), service_name (service));
  hut_finding_set_numbers (finding, line_mm, thin ? server->line_min_mm : server->line_max_mm);
  hut_finding_set_item (finding, server->id);
  add_place (self, finding, server);
}

/* Each signal opening beside mains is told with the nearest of those. */
static void
check_mains (HutChecking *self)
{
  const HutAssembly *assembly = self->assembly;

  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *signal = g_ptr_array_index (assembly->holes, i), *nearest = NULL;
      double least_mm = HUT_MAINS_APART_MM - HUT_CHECK_TOLERANCE_MM;
      HutFinding *finding;

      if (hut_wiring_of (assembly, signal) != HUT_WIRING_SIGNAL)
        continue;
      for (guint k = 0; k < assembly->holes->len; k++)
        {
          const HutPlacedHole *mains = g_ptr_array_index (assembly->holes, k);

          if (hut_wiring_of (assembly, mains) != HUT_WIRING_MAINS
              || hut_wiring_apart_mm (assembly, signal, mains) >= least_mm)
            continue;
          nearest = mains;
          least_mm = hut_wiring_apart_mm (assembly, signal, mains);
        }
      if (nearest == NULL)
        continue;
      finding = hut_checking_add (
          self, "service.mains", HUT_SEVERITY_WARNS,
          N_ ("{what} is {is} mm from {other}, which carries mains; {must} mm are common practice, "
              "and local codes and a licensed electrician have the last word."));
      hut_finding_set_names (finding, hut_check_item_name (assembly->design, signal->item),
                             hut_check_item_name (assembly->design, nearest->item));
      hut_finding_set_item (finding, signal->item);
      hut_finding_set_numbers (finding, least_mm, HUT_MAINS_APART_MM);
      hut_finding_add_place (finding, hut_check_panel (assembly, signal->panel), signal->bounds);
      hut_finding_add_place (finding, hut_check_panel (assembly, nearest->panel), nearest->bounds);
    }
}

void
hut_check_service (HutChecking *self)
{
  g_autoptr(GPtrArray) ledger = hut_ledger_new (self->assembly->design);

  for (guint i = 0; i < ledger->len; i++)
    {
      const HutLedgerRow *row = g_ptr_array_index (ledger, i);

      if (row->servers->len == 0)
        add_missing (self, row->service);
      for (guint k = 0; k < row->servers->len; k++)
        {
          const HutServer *server = &g_array_index (row->servers, HutServer, k);

          if (row->passing_count == 0)
            add_tight (self, row->service, server);
          check_line (self, row->service, server);
        }
      if (row->servers->len > 1)
        add_doubled (self, row);
    }
  check_mains (self);
}
