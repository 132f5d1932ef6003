/* src/checks/hut-check-caution.c: standing cautions. They never say that something is safe.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include <glib/gi18n-lib.h>

/* Polycarbonate chars and burns under a laser from about this thickness on, mm: lists of several
 * workshops say so; they differ, so this is a caution and no verdict. */
#define POLYCARBONATE_MM 1.0

static void
add_caution (HutChecking *self,
             const char *message,
             const char *what)
{
  hut_finding_set_names (hut_checking_add (self, "safety.caution", HUT_SEVERITY_NOTES, message),
                         what, NULL);
}

static gboolean
is_cut (const HutPartSet *parts,
        const HutStock *stock)
{
  for (guint i = 0; i < parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (parts->parts, i);

      if (part->stock == stock && !part->bought)
        return TRUE;
    }
  return FALSE;
}

static void
check_stock (HutChecking *self,
             const HutStock *stock)
{
  const double thick_mm = hut_stock_mean_mm (stock);
  HutFinding *finding;

  if (stock->material != HUT_MATERIAL_POLYCARBONATE || thick_mm <= POLYCARBONATE_MM
      || !is_cut (self->parts, stock))
    return;
  finding
      = hut_checking_add (self, "safety.caution", HUT_SEVERITY_NOTES,
                          N_ ("{what} is {is} mm polycarbonate: over about {must} mm it chars "
                              "and can burn under a laser. Ask "
                              "whoever runs the cutter first."));
  hut_finding_set_names (finding, hut_check_name (stock->name, stock->id), NULL);
  hut_finding_set_numbers (finding, thick_mm, POLYCARBONATE_MM);
  hut_finding_set_item (finding, stock->id);
}

void
hut_check_caution (HutChecking *self)
{
  const HutDesign *design = self->assembly->design;

  add_caution (self,
               N_ ("An enclosure does not by itself protect from laser light, fumes, fire or "
                   "mains voltage: local codes, standards "
                   "and licensed practice decide what else {what} needs."),
               hut_check_name (design->machine.name, N_ ("the machine")));
  if (design->cutter.kind == HUT_CUTTER_LASER)
    add_caution (
        self,
        N_ ("Cutting with {what} means laser light, fumes and open flames: stay with it, "
            "draw the fumes off, know what "
            "each sheet is made of, keep a fire extinguisher at hand."),
        hut_check_name (design->cutter.name, N_ ("the laser cutter")));
  else
    add_caution (self,
                 N_ ("Cutting with {what} means fine dust, noise and flying chips: draw the dust "
                     "off, wear eye, ear and breathing "
                     "protection, clamp every sheet."),
                 hut_check_name (design->cutter.name, N_ ("the router")));
  if (design->cutter.kind != HUT_CUTTER_LASER)
    return;
  for (guint i = 0; i < design->stocks->len; i++)
    check_stock (self, g_ptr_array_index (design->stocks, i));
}
