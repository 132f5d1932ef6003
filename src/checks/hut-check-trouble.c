/* src/checks/hut-check-trouble.c: what could not be derived as asked, as findings.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * HUT_TROUBLE_HOLE_OUTSIDE is told by the opening checks, which know by how much; troubles of the
 * split by the splice and bed checks. */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include <glib/gi18n-lib.h>

typedef struct
{
  const char *check, *message;
} Wording;

static const Wording wordings[] = {
  [HUT_TROUBLE_STOCK_MISSING]
  = { "stock.missing",
      N_ ("{what} has no stock: its stock is not in the list ({is} found, {must} needed).") },
  [HUT_TROUBLE_TOO_THIN_BOX]
  = { "shell.inside",
      N_ ("The walls leave {is} mm inside; it must be more than the thickest wall, {must} mm.") },
  [HUT_TROUBLE_NO_MACHINE]
  = { "machine.missing", N_ ("The enclosure is to fit the machine, but the machine has {is} "
                             "bodies; {must} or more are needed.") },
  [HUT_TROUBLE_SEAM] = { "shell.seam", N_ ("The seam is {is} mm above the bench; base and lid "
                                           "both keep some wall only up to {must} mm.") },
  [HUT_TROUBLE_HINGE]
  = { "lid.hinge",
      N_ ("This lid cannot turn on that hinge line: choose another side for the hinge.") },
  [HUT_TROUBLE_PANEL_UNKNOWN]
  = { "opening.panel",
      N_ ("{what} is placed on the {other}, which this enclosure does not have.") },
  [HUT_TROUBLE_ANCHOR]
  = { "opening.anchor",
      N_ ("{what} on the {other} is anchored to a part of the machine that does not exist.") },
  [HUT_TROUBLE_BAFFLE]
  = { "baffle.place", N_ ("The baffle on {what} has {is} mm of room between its neighbours; its "
                          "stock needs {must} mm or more.") },
  [HUT_TROUBLE_ITEM_MISSING]
  = { "hardware.item",
      N_ ("The design has no item for {what} on the {other} ({is} found, {must} needed).") },
  [HUT_TROUBLE_LEAF]
  = { "hardware.leaf",
      N_ ("{what} joins base and lid, but nothing opens at the {other}: choose another side.") },
  [HUT_TROUBLE_SIZE]
  = { "shell.size",
      N_ ("The enclosure would be {is} mm large; no more than {must} mm can be planned.") },
};

/* The seam has a lower and an upper limit; the trouble holds the one that was missed. */
static const char *
message_of (const HutTrouble *trouble)
{
  if (trouble->kind == HUT_TROUBLE_SEAM && trouble->is_mm < trouble->must_mm)
    return N_ ("The seam is {is} mm above the bench; base and lid both keep some wall only from "
               "{must} mm on.");
  return wordings[trouble->kind].message;
}

static void
add_trouble (HutChecking *self,
             const HutTrouble *trouble)
{
  const HutAssembly *assembly = self->assembly;
  const HutPanel *panel = hut_assembly_get_panel (assembly, trouble->panel);
  const char *panel_name = hut_panel_name (trouble->panel);
  HutFinding *finding;

  finding = hut_checking_add (self, wordings[trouble->kind].check, HUT_SEVERITY_BLOCKS,
                              message_of (trouble));
  hut_finding_set_item (finding, trouble->item);
  hut_finding_set_names (
      finding,
      trouble->item != NULL ? hut_check_item_name (assembly->design, trouble->item) : panel_name,
      panel_name);
  hut_finding_set_numbers (finding, trouble->is_mm, trouble->must_mm);
  switch (trouble->kind)
    {
    case HUT_TROUBLE_STOCK_MISSING:
    case HUT_TROUBLE_NO_MACHINE:
    case HUT_TROUBLE_ITEM_MISSING:
      hut_finding_set_numbers (finding, 0.0, 1.0);
      break;
    case HUT_TROUBLE_ANCHOR:
      if (panel != NULL)
        hut_finding_add_place (finding, panel,
                               (HutRect) { 0, 0, panel->width_mm, panel->height_mm });
      break;
    default:
      break;
    }
}

void
hut_check_trouble (HutChecking *self)
{
  const GArray *troubles = self->assembly->troubles;

  for (guint i = 0; i < troubles->len; i++)
    {
      const HutTrouble *trouble = &g_array_index (troubles, HutTrouble, i);

      if (trouble->kind != HUT_TROUBLE_HOLE_OUTSIDE)
        add_trouble (self, trouble);
    }
}
