/* src/checks/hut-check-window.c: how the glazing of windows is held.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "assembly/hut-window-screws.h"
#include "checks/hut-checking.h"
#include <glib/gi18n-lib.h>

/* Filter windows lie on the panel by this much all round, mm, and are held by a frame, not by glue
 * alone: common practice, no source. */
#define OVERLAP_LEAST_MM 10.0
/* Own choice: one screw in each corner of the frame. */
#define SCREWS_LEAST 4.0

static HutFinding *
add_finding (HutChecking *self,
             const HutWindow *window,
             const char *check,
             HutSeverity severity,
             const char *message)
{
  const HutPlacedHole *hole = hut_assembly_get_hole (self->assembly, window->id);
  HutFinding *finding = hut_checking_add (self, check, severity, message);

  hut_finding_set_names (finding, hut_check_name (window->name, window->id), NULL);
  hut_finding_set_item (finding, window->id);
  if (hole != NULL)
    hut_finding_add_place (finding, hut_check_panel (self->assembly, hole->panel), hole->bounds);
  return finding;
}

static void
check_window (HutChecking *self,
              const HutWindow *window)
{
  const HutWindowScrews screws = hut_window_screws_find (self->assembly->design, window);
  HutFinding *finding;

  if (window->overlap_mm < OVERLAP_LEAST_MM - HUT_CHECK_TOLERANCE_MM)
    {
      finding = add_finding (self, window, "window.overlap", HUT_SEVERITY_WARNS,
                             N_ ("The glazing of {what} lies {is} mm on the panel all round; "
                                 "{must} mm are usual."));
      hut_finding_set_numbers (finding, window->overlap_mm, OVERLAP_LEAST_MM);
    }
  if (screws.count == 0)
    {
      finding = add_finding (self, window, "window.bonded", HUT_SEVERITY_NOTES,
                             N_ ("The frame of {what} has {is} screws; a window that filters light "
                                 "is not held by glue alone: {must} or more hold it."));
      hut_finding_set_numbers (finding, 0.0, SCREWS_LEAST);
    }
  else if (screws.length_mm <= 0.0)
    {
      finding = add_finding (self, window, "window.screw", HUT_SEVERITY_WARNS,
                             N_ ("The frame of {what} needs screws of {must} mm and more; none of "
                                 "{is} mm thread is sold that long: choose a thicker one."));
      hut_finding_set_numbers (finding, window->screw_mm, screws.least_mm);
    }
}

void
hut_check_window (HutChecking *self)
{
  const GPtrArray *windows = self->assembly->design->windows;

  for (guint i = 0; i < windows->len; i++)
    check_window (self, g_ptr_array_index (windows, i));
}
