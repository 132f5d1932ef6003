/* src/checks/hut-check-swing.c: the opening lid against machine, base, walls and shelf.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include "checks/hut-swing.h"
#include "checks/hut-turn.h"
#include <glib/gi18n-lib.h>

#define DEG_PER_RAD (180.0 / G_PI)

static const char *
wall_name (HutSide side)
{
  switch (side)
    {
    case HUT_SIDE_FRONT:
      return N_ ("the wall in front");
    case HUT_SIDE_BACK:
      return N_ ("the wall behind");
    case HUT_SIDE_LEFT:
      return N_ ("the wall on the left");
    default:
      return N_ ("the wall on the right");
    }
}

static const char *
other_name (const HutAssembly *assembly,
            HutAround around,
            const HutApproach *approach)
{
  const HutBody *body;

  switch (around)
    {
    case HUT_AROUND_MACHINE:
      body = hut_design_get_body (assembly->design, approach->other);
      return body != NULL ? hut_check_name (body->name, body->id) : approach->other;
    case HUT_AROUND_BASE:
    case HUT_AROUND_BAFFLE:
      if (approach->kind == HUT_SOLID_BAFFLE)
        return hut_baffle_name (approach->side);
      if (approach->kind == HUT_SOLID_HARDWARE)
        return hut_check_item_name (assembly->design, approach->other);
      return hut_panel_name ((HutPanelId) { HUT_SHELL_BASE, approach->side });
    case HUT_AROUND_WALL:
      return wall_name (approach->side);
    default:
      return N_ ("the shelf above");
    }
}

/* The lid is to stay clear of everything by the swing clearance; of the base, and its baffles of
 * the other shell, by half the seam's gap, because at the seam it begins with the whole of it. */
static double
wanted_mm (const HutShell *shell,
           HutAround around)
{
  const gboolean own = around == HUT_AROUND_BASE || around == HUT_AROUND_BAFFLE;

  return MAX (0.0, own ? shell->seam_gap_mm / 2.0 : shell->swing_clearance_mm);
}

/* What is wrong with the lid closed belongs to the clearance and room checks. */
static gboolean
is_told_elsewhere (HutAround around,
                   const HutApproach *approach)
{
  if (approach->collides)
    return hut_box3_overlap_mm (&approach->solid.box, &approach->box) > HUT_TURN_TOUCH_MM;
  return around == HUT_AROUND_MACHINE && approach->angle_rad <= 0.0;
}

static void
add_places (HutChecking *self,
            HutFinding *finding,
            HutAround around,
            const HutApproach *approach)
{
  const HutAssembly *assembly = self->assembly;

  hut_finding_add_shadow (finding, hut_check_panel (assembly, approach->solid.panel),
                          &approach->solid.box);
  if (around == HUT_AROUND_BASE || around == HUT_AROUND_BAFFLE)
    {
      const HutPanel *base
          = hut_assembly_get_panel (assembly, (HutPanelId) { HUT_SHELL_BASE, approach->side });

      if (base != NULL)
        hut_finding_add_shadow (finding, base, &approach->box);
    }
}

static void
check_approach (HutChecking *self,
                HutAround around,
                const HutApproach *approach)
{
  const HutAssembly *assembly = self->assembly;
  const HutShell *shell = &assembly->design->shell;
  const double must_mm = wanted_mm (shell, around), angle_deg = approach->angle_rad * DEG_PER_RAD;
  HutFinding *finding;

  if (!approach->exists || is_told_elsewhere (around, approach)
      || (!approach->collides && approach->distance_mm >= must_mm - HUT_CHECK_TOLERANCE_MM))
    return;
  if (approach->collides)
    {
      finding = hut_checking_add (self, "lid.swing", HUT_SEVERITY_BLOCKS,
                                  N_ ("{what} hits {other} when opened by {is} degrees; it shall "
                                      "open by {must} degrees."));
      hut_finding_set_numbers (finding, angle_deg, shell->opening_angle_deg);
    }
  else
    {
      finding
          = hut_checking_add (self, "lid.swing", HUT_SEVERITY_WARNS,
                              N_ ("{what} comes within {is} mm of {other} when opened by {at} "
                                  "degrees; {must} mm are wanted."));
      hut_finding_set_numbers (finding, approach->distance_mm, must_mm);
      finding->at = angle_deg;
    }
  hut_finding_set_names (finding, hut_check_solid_name (assembly, &approach->solid),
                         other_name (assembly, around, approach));
  if (around == HUT_AROUND_MACHINE)
    hut_finding_set_item (finding, approach->other);
  add_places (self, finding, around, approach);
}

void
hut_check_swing (HutChecking *self)
{
  HutApproach approaches[HUT_AROUND_COUNT];

  hut_swing_find (self->assembly, self->parts, approaches);
  for (int around = 0; around < HUT_AROUND_COUNT; around++)
    check_approach (self, (HutAround)around, &approaches[around]);
}
