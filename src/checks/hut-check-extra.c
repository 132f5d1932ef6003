/* src/checks/hut-check-extra.c: plates that the user draws: one piece, holes inside, a stock.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "assembly/hut-extra-part.h"
#include "checks/hut-checking.h"
#include <glib/gi18n-lib.h>

static HutFinding *
add_finding (HutChecking *self,
             const HutExtra *extra,
             const char *check,
             const char *message)
{
  HutFinding *finding = hut_checking_add (self, check, HUT_SEVERITY_BLOCKS, message);

  hut_finding_set_names (finding, hut_check_name (extra->name, extra->id), NULL);
  hut_finding_set_item (finding, extra->id);
  return finding;
}

void
hut_check_extra (HutChecking *self)
{
  const HutDesign *design = self->assembly->design;

  for (guint i = 0; i < design->extras->len; i++)
    {
      const HutExtra *extra = g_ptr_array_index (design->extras, i);
      gboolean holes_fit = TRUE;
      guint pieces = 0;
      g_autoptr(HutRegion) region = hut_extra_dup_region (extra, &pieces, &holes_fit);

      if (hut_design_get_stock (design, extra->stock) == NULL)
        hut_finding_set_numbers (
            add_finding (self, extra, "stock.missing",
                         N_ ("{what} has no stock: its stock is not in the list ({is} found, "
                             "{must} needed).")),
            0.0, 1.0);
      if (region == NULL || pieces != 1)
        hut_finding_set_numbers (
            add_finding (self, extra, "extra.outline",
                         N_ ("The rectangles of {what} make {is} pieces; {must} is a plate: let "
                             "them overlap.")),
            pieces, 1.0);
      else if (!holes_fit)
        hut_finding_set_numbers (
            add_finding (self, extra, "extra.hole",
                         N_ ("A hole of {what} leaves its outline or meets another hole, so {is} "
                             "of its {must} holes are cut.")),
            0.0, extra->holes->len);
    }
}
