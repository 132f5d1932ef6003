/* src/checks/hut-check-stiffness.c: tops that sag.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include "physics/hut-panel-sag.h"
#include <glib/gi18n-lib.h>

#define MM_PER_M 1000.0

/* Sag that the eye sees, as a share of the span: 1/32 inch a foot (article on shelves, 2019). */
#define SEEN_RATIO (1.0 / 384)
/* Sag at which a lid no longer meets its seam, as a share of the span: general limit of buildings,
 * L / 240 (from memory). */
#define TOO_MUCH_RATIO (1.0 / 240)

void
hut_check_stiffness (HutChecking *self)
{
  for (guint i = 0; i < self->assembly->panels->len; i++)
    {
      const HutPanel *panel = hut_check_panel (self->assembly, i);
      HutPanelSag sag;
      HutFinding *finding;

      if (panel->id.side != HUT_SIDE_TOP
          || !hut_panel_sag_find (self->assembly, self->parts, i, &sag)
          || sag.sag_m <= SEEN_RATIO * sag.span_m)
        continue;
      finding = hut_checking_add (
          self, "stiffness.sag",
          sag.sag_m > TOO_MUCH_RATIO * sag.span_m ? HUT_SEVERITY_WARNS : HUT_SEVERITY_NOTES,
          N_ ("{what} sags by about {is} mm under its own weight in the long run; up to {must} mm "
              "is not seen: thicker sheet, or a strip on edge under it, helps."));
      hut_finding_set_names (finding, hut_panel_name (panel->id), NULL);
      hut_finding_set_numbers (finding, sag.sag_m * MM_PER_M, SEEN_RATIO * sag.span_m * MM_PER_M);
      hut_finding_add_place (finding, panel, (HutRect) { 0, 0, panel->width_mm, panel->height_mm });
    }
}
