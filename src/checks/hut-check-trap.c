/* src/checks/hut-check-trap.c: light traps: the way of the air, and what stands in their way.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "assembly/hut-trap.h"
#include "checks/hut-check-hole.h"
#include <glib/gi18n-lib.h>
#include <string.h>

#define MM2_PER_CM2 100.0
/* Overlaps that are not deeper than this are touches, mm. */
#define TOUCH_MM HUT_GRID_MM

static HutFinding *
add_finding (HutChecking *self,
             const HutTrap *trap,
             const char *check,
             HutSeverity severity,
             const char *message,
             const char *other)
{
  HutFinding *finding = hut_checking_add (self, check, severity, message);

  hut_finding_set_names (finding, hut_check_name (trap->opening->name, trap->opening->id), other);
  hut_finding_set_item (finding, trap->opening->id);
  hut_finding_add_place (finding, hut_check_panel (self->assembly, trap->panel), trap->footprint);
  return finding;
}

/* How deep the whole box of a trap is in a solid. */
static double
overlap_mm (const HutAssembly *assembly,
            const HutTrap *trap,
            const HutSolid *solid)
{
  double deepest_mm = 0.0;

  for (guint i = 0; i < assembly->solids->len; i++)
    {
      const HutSolid *own = &g_array_index (assembly->solids, HutSolid, i);

      if (own->kind == HUT_SOLID_TRAP && strcmp (own->item, trap->opening->id) == 0)
        deepest_mm = MAX (deepest_mm, hut_box3_overlap_mm (&own->box, &solid->box));
    }
  return deepest_mm;
}

/* Two traps that meet are told by the first one's check. */
static gboolean
is_told_elsewhere (const HutTrap *trap,
                   const HutSolid *solid)
{
  return solid->kind == HUT_SOLID_TRAP && strcmp (solid->item, trap->opening->id) <= 0;
}

static void
check_solids (HutChecking *self,
              const HutTrap *trap,
              const GArray *solids)
{
  const HutSolid *worst = NULL;
  double worst_mm = TOUCH_MM;
  HutFinding *finding;

  for (guint i = 0; i < solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (solids, HutSolid, i);
      const double deep_mm = is_told_elsewhere (trap, solid)
                                 ? 0.0
                                 : overlap_mm (self->assembly, trap, solid);

      if (deep_mm > worst_mm)
        {
          worst_mm = deep_mm;
          worst = solid;
        }
    }
  if (worst == NULL)
    return;
  finding = add_finding (self, trap, "trap.place", HUT_SEVERITY_BLOCKS,
                         N_ ("The light trap of {what} runs {is} mm into {other}; {must} mm is "
                             "allowed."),
                         hut_check_solid_name (self->assembly, worst));
  hut_finding_set_numbers (finding, worst_mm, 0.0);
}

static void
check_holes (HutChecking *self,
             const HutTrap *trap)
{
  for (guint i = 0; i < self->assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (self->assembly->holes, i);
      const HutRect f = trap->footprint, b = hole->bounds;
      const double deep_mm = MIN (MIN (b.u1 - f.u0, f.u1 - b.u0), MIN (b.v1 - f.v0, f.v1 - b.v0));
      HutFinding *finding;

      if (hole->panel != trap->panel || strcmp (hole->item, trap->opening->id) == 0
          || deep_mm <= TOUCH_MM)
        continue;
      finding = add_finding (self, trap, "trap.opening", HUT_SEVERITY_WARNS,
                             N_ ("The light trap of {what} lies {is} mm over {other}; {must} mm is "
                                 "allowed."),
                             hut_check_item_name (self->assembly->design, hole->item));
      hut_finding_set_numbers (finding, deep_mm, 0.0);
    }
}

static void
check_flow (HutChecking *self,
            const HutTrap *trap)
{
  HutFinding *finding;

  if (trap->way_mm2 >= trap->open_mm2)
    return;
  finding = add_finding (self, trap, "trap.flow", HUT_SEVERITY_WARNS,
                         N_ ("The slots of the light trap of {what} leave {is} cm² for the air; "
                             "the opening has {must} cm²: make it deeper."),
                         NULL);
  hut_finding_set_numbers (finding, trap->way_mm2 / MM2_PER_CM2, trap->open_mm2 / MM2_PER_CM2);
}

void
hut_check_trap (HutChecking *self)
{
  for (guint i = 0; i < self->assembly->holes->len; i++)
    {
      HutTrap trap;

      if (!hut_trap_find (self->assembly, g_ptr_array_index (self->assembly->holes, i), &trap))
        continue;
      check_solids (self, &trap, self->assembly->solids);
      check_solids (self, &trap, self->parts->solids);
      check_holes (self, &trap);
      check_flow (self, &trap);
    }
}
