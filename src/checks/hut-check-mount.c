/* src/checks/hut-check-mount.c: whether panels hold the hardware: thickness, pockets, face plates.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "assembly/hut-pocket.h"
#include "checks/hut-checking.h"
#include "checks/hut-hardware-room.h"
#include <glib/gi18n-lib.h>
#include <math.h>

static HutFinding *
add_finding (HutChecking *self,
             const HutPlacedHardware *placed,
             const char *check,
             HutSeverity severity,
             const char *message,
             double is,
             double must)
{
  const HutPanel *panel = hut_check_panel (self->assembly, placed->panel);
  HutFinding *finding = hut_checking_add (self, check, severity, message);

  hut_finding_set_names (finding, hut_check_name (placed->hardware->name, placed->hardware->id),
                         hut_panel_name (panel->id));
  hut_finding_set_item (finding, placed->hardware->id);
  hut_finding_set_numbers (finding, is, must);
  hut_finding_add_place (finding, panel, placed->footprint);
  return finding;
}

/* What the hardware sits in: its panel's stock or its face plate's. */
static const HutStock *
holding_stock (const HutAssembly *assembly,
               const HutPlacedHardware *placed)
{
  if (placed->plate >= 0)
    return ((const HutPlate *)g_ptr_array_index (assembly->plates, placed->plate))->stock;
  return hut_check_panel (assembly, placed->panel)->stock;
}

static void
check_thin (HutChecking *self,
            const HutPlacedHardware *placed)
{
  const HutStock *stock = holding_stock (self->assembly, placed);
  HutFinding *finding;

  if (!placed->need.thin)
    return;
  finding = add_finding (
      self, placed, "mount.thin", HUT_SEVERITY_WARNS,
      placed->plate >= 0
          ? N_ ("The face plate of {what} is {is} mm thick; it holds in {must} mm and more.")
          : N_ ("{other} is {is} mm thick; {what} holds in {must} mm and more."),
      hut_stock_min_mm (stock), placed->item->thickness_min_mm);
  hut_finding_set_plate_fix (finding, self->assembly, placed, INFINITY);
}

static double
widest_bit_mm (const GArray *bits_mm)
{
  double widest_mm = 0.0;

  for (guint i = 0; i < bits_mm->len; i++)
    widest_mm = MAX (widest_mm, g_array_index (bits_mm, double, i));
  return widest_mm;
}

static void
check_thick (HutChecking *self,
             const HutPlacedHardware *placed)
{
  const HutPocketNeed *need = &placed->need;
  HutFinding *finding = NULL;

  if (!need->needed)
    return;
  if (placed->plate >= 0)
    finding = add_finding (
        self, placed, "mount.plate", HUT_SEVERITY_BLOCKS,
        N_ ("The face plate of {what} is {is} mm thick; it holds in up to {must} mm."),
        hut_stock_max_mm (holding_stock (self->assembly, placed)), placed->item->thickness_max_mm);
  else if (need->floor_mm < need->floor_must_mm - HUT_CHECK_TOLERANCE_MM)
    finding = add_finding (self, placed, "mount.floor", HUT_SEVERITY_BLOCKS,
                           N_ ("A pocket for {what} would leave a floor of {is} mm in {other}; "
                               "{must} mm must stay."),
                           need->floor_mm, need->floor_must_mm);
  else if (need->bit_mm <= 0.0)
    finding = add_finding (self, placed, "mount.bit", HUT_SEVERITY_BLOCKS,
                           N_ ("{what} needs a pocket of {must} mm across in {other}; your widest "
                               "flat-bottom bit has {is} mm."),
                           widest_bit_mm (self->assembly->design->bits_mm), need->least_bit_mm);
  if (finding != NULL)
    hut_finding_set_plate_fix (finding, self->assembly, placed, INFINITY);
}

/* ---- what is round a pocket ------------------------------------------------------------------ */

typedef struct
{
  double is_mm;
  const char *message;
} Nearest;

static void
mind (Nearest *nearest,
      double is_mm,
      const char *message)
{
  if (is_mm < nearest->is_mm)
    *nearest = (Nearest) { is_mm, message };
}

static double
to_rect_mm (HutPoint at,
            const HutRect *rect)
{
  return hypot (fmax (0.0, fmax (rect->u0 - at.u, at.u - rect->u1)),
                fmax (0.0, fmax (rect->v0 - at.v, at.v - rect->v1)));
}

static void
mind_edges (const HutPlacedHardware *placed,
            const HutPanel *panel,
            Nearest *nearest)
{
  const double rim_mm = placed->need.bit_mm / 2.0;
  const HutPoint at = placed->pocket_at;
  const double distance_mm[HUT_EDGE_COUNT]
      = { at.v, panel->width_mm - at.u, panel->height_mm - at.v, at.u };

  for (int edge = 0; edge < HUT_EDGE_COUNT; edge++)
    mind (nearest, distance_mm[edge] - panel->edges[edge].depth_mm - rim_mm,
          panel->edges[edge].kind == HUT_JOINT_NONE
              ? N_ ("The pocket of {what} is {is} mm from the edge of {other}; {must} mm are "
                    "usual.")
              : N_ ("The pocket of {what} is {is} mm from a joint of {other}; {must} mm are "
                    "usual."));
}

static void
mind_pockets (const HutChecking *self,
              const HutPlacedHardware *placed,
              Nearest *nearest)
{
  const GPtrArray *hardware = self->assembly->hardware;

  for (guint i = 0; i < hardware->len; i++)
    {
      const HutPlacedHardware *other = g_ptr_array_index (hardware, i);

      if (other == placed)
        return; /* each pair is told once, from the later one */
      if (other->bored && other->panel == placed->panel)
        mind (nearest,
              hut_point_distance_mm (other->pocket_at, placed->pocket_at)
                  - (other->need.bit_mm + placed->need.bit_mm) / 2.0,
              N_ ("The pocket of {what} is {is} mm from another one on {other}; {must} mm are "
                  "usual."));
    }
}

/* Straps and ledges that lie on the panel's inside. */
static void
mind_backing (const HutPlacedHardware *placed,
              const HutPanel *panel,
              const GArray *solids,
              Nearest *nearest)
{
  for (guint i = 0; i < solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (solids, HutSolid, i);
      const HutRect shadow = hut_frame3_shadow (&panel->frame, &solid->box);
      const double is_mm = to_rect_mm (placed->pocket_at, &shadow) - placed->need.bit_mm / 2.0;

      if (solid->panel != placed->panel)
        continue;
      if (solid->kind == HUT_SOLID_STRAP)
        mind (nearest, is_mm,
              N_ ("The pocket of {what} is {is} mm from a strap on {other}; {must} mm are usual."));
      else if (solid->kind == HUT_SOLID_LEDGE)
        mind (nearest, is_mm,
              N_ ("The pocket of {what} is {is} mm from the ledge on {other}; {must} mm are "
                  "usual."));
    }
}

static void
check_pocket (HutChecking *self,
              const HutPlacedHardware *placed)
{
  const HutPanel *panel = hut_check_panel (self->assembly, placed->panel);
  Nearest nearest = { HUT_POCKET_KEEP_MM - HUT_CHECK_TOLERANCE_MM, NULL };
  HutFinding *finding;

  if (!placed->bored)
    return;
  mind_edges (placed, panel, &nearest);
  mind_pockets (self, placed, &nearest);
  mind_backing (placed, panel, self->assembly->solids, &nearest);
  mind_backing (placed, panel, self->parts->solids, &nearest);
  if (nearest.message == NULL)
    return;
  finding = add_finding (self, placed, "mount.pocket", HUT_SEVERITY_WARNS, nearest.message,
                         MAX (nearest.is_mm, 0.0), HUT_POCKET_KEEP_MM);
  hut_finding_set_place_fix (finding, self, placed);
}

/* ---- how the pocket is made ------------------------------------------------------------------ */

static void
tell_way (HutChecking *self,
          const HutPlacedHardware *placed)
{
  if (!placed->bored)
    return;
  add_finding (self, placed, "mount.way", HUT_SEVERITY_NOTES,
               placed->hardware->pocket_way == HUT_POCKET_BORE
                   ? N_ ("{what} on {other}: bore its pocket, {is} mm across and {must} mm deep, "
                         "at the cut centre mark before the hole is opened along its scored line.")
                   : N_ ("{what} on {other}: put the waste disc back into the cut hole before its "
                         "pocket is bored, {is} mm across and {must} mm deep: the bit's spur needs "
                         "wood."),
               placed->need.bit_mm, placed->need.depth_mm);
}

static void
check_face (HutChecking *self,
            const HutPlacedHardware *placed)
{
  const gboolean outside = placed->hardware->face == HUT_FACE_OUTSIDE;
  HutFinding *finding;

  if (placed->leaf > 0 || (outside ? placed->item->from_outside : placed->item->from_inside))
    return;
  finding = add_finding (self, placed, "mount.face", HUT_SEVERITY_BLOCKS,
                         outside ? N_ ("{what} cannot be mounted on {other} from outside.")
                                 : N_ ("{what} cannot be mounted on {other} from inside."),
                         0.0, 1.0);
  hut_finding_set_fix (finding, HUT_FIX_FACE, placed, 0.0);
}

void
hut_check_mount (HutChecking *self)
{
  const GPtrArray *hardware = self->assembly->hardware;

  for (guint i = 0; i < hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (hardware, i);

      check_face (self, placed);
      check_thin (self, placed);
      check_thick (self, placed);
      check_pocket (self, placed);
      tell_way (self, placed);
    }
}
