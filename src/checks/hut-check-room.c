/* src/checks/hut-check-room.c: the enclosure in the room that it gets.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The room's sides are measured from the finished enclosure, so only the height can be too much. */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include <glib/gi18n-lib.h>

static void
add_finding (HutChecking *self,
             HutSeverity severity,
             const char *message,
             double is_mm,
             double must_mm)
{
  const HutAssembly *assembly = self->assembly;
  HutFinding *finding = hut_checking_add (self, "clearance.room", severity, message);

  hut_finding_set_names (finding, N_ ("the shelf above"), NULL);
  hut_finding_set_numbers (finding, is_mm, must_mm);
  for (guint i = 0; i < assembly->panels->len; i++)
    {
      const HutPanel *panel = g_ptr_array_index (assembly->panels, i);

      if (panel->id.side == HUT_SIDE_TOP)
        hut_finding_add_place (finding, panel,
                               (HutRect) { 0, 0, panel->width_mm, panel->height_mm });
    }
}

/* Top of the machine over the seam, with all motion and keep-outs, mm: how far a lid without a
 * hinge must be lifted before it can be moved aside. */
static double
lift_mm (const HutAssembly *assembly)
{
  const HutBox3 swept = hut_machine_swept (&assembly->design->machine);

  if (hut_box3_is_empty (&swept))
    return 0.0;
  return MAX (0.0, assembly->machine_at.z + swept.max.z - assembly->seam_z_mm);
}

void
hut_check_room (HutChecking *self)
{
  const HutAssembly *assembly = self->assembly;
  const double above_mm = assembly->design->room_mm.above, high_mm = assembly->outer_mm.z;
  double lifted_mm;

  if (!assembly->whole || above_mm < 0.0)
    return;
  if (high_mm > above_mm + HUT_CHECK_TOLERANCE_MM)
    {
      add_finding (self, HUT_SEVERITY_BLOCKS,
                   N_ ("The enclosure is {is} mm high; {what} leaves {must} mm over the bench."),
                   high_mm, above_mm);
      return;
    }
  if (assembly->design->shell.lid != HUT_LID_LIFT_OFF)
    return;
  lifted_mm = high_mm + lift_mm (assembly);
  if (lifted_mm > above_mm + HUT_CHECK_TOLERANCE_MM)
    add_finding (
        self, HUT_SEVERITY_WARNS,
        N_ ("Lifted off over the machine, the lid reaches {is} mm over the bench; {what} "
            "leaves {must} mm."),
        lifted_mm, above_mm);
}
