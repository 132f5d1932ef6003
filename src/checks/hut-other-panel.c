/* src/checks/hut-other-panel.c: another panel on which a piece of hardware fits as it stands.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-other-panel.h"
#include "assembly/hut-hardware-placing.h"
#include "assembly/hut-pocket.h"
#include "checks/hut-free-move.h"
#include "checks/hut-hardware-rule.h"
#include <math.h>

/* What goes to the other shell has its leads bent by each opening of the lid: only when nothing
 * else has room, mm. Own choice: longer than any way on a panel. */
#define OTHER_SHELL_MM 1e4

static const HutService *
service_of (const HutAssembly *assembly,
            const HutPlacedHardware *placed)
{
  const char *serves = placed->hardware->serves;

  return serves != NULL ? hut_design_get_service (assembly->design, serves) : NULL;
}

/* From the panel's lower left to where the machine has the service's end; world axes. */
static HutVec3
way_to_end (const HutAssembly *assembly,
            const HutService *service,
            const HutPanel *panel)
{
  return hut_vec3_add (hut_vec3_add (assembly->machine_at, service->at),
                       hut_vec3_scale (panel->frame.origin, -1.0));
}

/* Where to begin on that panel. */
static HutPoint
begin_at (const HutAssembly *assembly,
          const HutPlacedHardware *placed,
          const HutPanel *panel)
{
  const HutPanel *now = hut_check_panel (assembly, placed->panel);
  const HutService *service = service_of (assembly, placed);
  HutPoint at = { placed->placement.shift.u / now->width_mm * panel->width_mm,
                  placed->placement.shift.v / now->height_mm * panel->height_mm };

  if (service != NULL)
    {
      const HutVec3 way = way_to_end (assembly, service, panel);

      at = (HutPoint) { hut_vec3_dot (way, panel->frame.u), hut_vec3_dot (way, panel->frame.v) };
    }
  return (HutPoint) { hut_snap_mm (CLAMP (at.u, 0.0, panel->width_mm)),
                      hut_snap_mm (CLAMP (at.v, 0.0, panel->height_mm)) };
}

/* The leaf as it would be there; FALSE when the panel cannot hold it. */
static gboolean
think_of (const HutAssembly *assembly,
          const HutPlacedHardware *placed,
          guint index,
          HutPlacedHardware *as)
{
  const HutPanel *panel = hut_check_panel (assembly, index);
  const HutPoint begin = begin_at (assembly, placed, panel);
  const HutPoint pocket = { placed->pocket_at.u - placed->placement.shift.u,
                            placed->pocket_at.v - placed->placement.shift.v };

  *as = *placed;
  as->panel = index;
  as->placement.shift = begin;
  as->pocket_at = (HutPoint) { begin.u + pocket.u, begin.v + pocket.v };
  if (placed->plate >= 0)
    return TRUE;
  hut_pocket_find_need (placed->item, panel->stock, assembly->design->bits_mm, &as->need);
  as->bored = as->need.needed && as->need.bit_mm > 0.0;
  return !as->need.thin
         && (!as->need.needed || (as->bored && as->need.floor_mm >= as->need.floor_must_mm));
}

/* How far from where it should be it would lie there, mm: from the machine's end, or from the same
 * place by share. */
static double
cost_mm (const HutAssembly *assembly,
         const HutPlacedHardware *as,
         HutPoint by)
{
  const HutPanel *panel = hut_check_panel (assembly, as->panel);
  const HutService *service = service_of (assembly, as);
  HutVec3 way;

  if (service == NULL)
    return hypot (by.u, by.v);
  way = way_to_end (assembly, service, panel);
  return hypot (hypot (hut_vec3_dot (way, panel->frame.u) - as->placement.shift.u - by.u,
                       hut_vec3_dot (way, panel->frame.v) - as->placement.shift.v - by.v),
                hut_vec3_dot (way, panel->frame.w));
}

/* Feet stand on the floor; nothing else goes there, for the bench is under it. */
static gboolean
is_choice (const HutPanel *panel)
{
  return panel->id.side != HUT_SIDE_BOTTOM && !panel->bought;
}

gboolean
hut_other_panel_find (const HutChecking *self,
                      const HutPlacedHardware *placed,
                      HutPanelId *panel,
                      HutPoint *at)
{
  const HutAssembly *assembly = self->assembly;
  const HutPanel *now = hut_check_panel (assembly, placed->panel);
  double best_mm = INFINITY;

  if (placed->item->span != HUT_SPAN_PANEL || placed->item->group == HUT_ITEM_FOOT)
    return FALSE;
  for (guint i = 0; i < assembly->panels->len; i++)
    {
      const HutPanel *other = hut_check_panel (assembly, i);
      const double extra_mm = other->id.shell == now->id.shell ? 0.0 : OTHER_SHELL_MM;
      g_autoptr(GArray) rules = NULL;
      HutPlacedHardware as;
      HutPoint by;

      if (i == placed->panel || !is_choice (other) || best_mm <= extra_mm
          || !think_of (assembly, placed, i, &as))
        continue;
      rules = hut_hardware_rules_new (self, &as);
      if (!hut_free_move_find (rules, &by) || cost_mm (assembly, &as, by) + extra_mm >= best_mm)
        continue;
      best_mm = cost_mm (assembly, &as, by) + extra_mm;
      *panel = other->id;
      *at = (HutPoint) { hut_snap_mm (as.placement.shift.u + by.u),
                         hut_snap_mm (as.placement.shift.v + by.v) };
    }
  return best_mm < INFINITY;
}
