/* src/checks/hut-check-depth.c: what hardware takes up, against machine, panels, straps and each
 * other.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Solids keep the clearance that the owner wants from the machine; soft room (leads, hoses) may
 * come
 * up to it, and may meet other soft room. Everything else must only not be run into. The opening
 * lid is looked at by the swing check. */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include "checks/hut-hardware-room.h"
#include <glib/gi18n-lib.h>
#include <math.h>

static const HutPlacedHardware *
placed_of (const HutAssembly *assembly,
           const HutSolid *solid)
{
  for (guint i = 0; i < assembly->hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (assembly->hardware, i);

      if (placed->panel == solid->panel && g_strcmp0 (placed->hardware->id, solid->item) == 0)
        return placed;
    }
  return NULL;
}

static gboolean
is_hardware (const HutSolid *solid)
{
  return solid->kind == HUT_SOLID_HARDWARE || solid->kind == HUT_SOLID_LEADS
         || solid->kind == HUT_SOLID_FACE_PLATE;
}

static HutFinding *
add_finding (HutChecking *self,
             const HutSolid *own,
             const char *check,
             const char *message,
             const char *other,
             double gap_mm,
             double must_mm)
{
  const HutAssembly *assembly = self->assembly;
  const HutPlacedHardware *placed = placed_of (assembly, own);
  const gboolean collides = gap_mm < -HUT_ROOM_TOUCH_MM;
  HutFinding *finding
      = hut_checking_add (self, check,
                          collides && own->kind != HUT_SOLID_LEADS ? HUT_SEVERITY_BLOCKS
                                                                   : HUT_SEVERITY_WARNS,
                          message);

  hut_finding_set_names (finding, hut_check_item_name (assembly->design, own->item), other);
  hut_finding_set_item (finding, own->item);
  hut_finding_set_numbers (finding, fabs (gap_mm), must_mm);
  hut_finding_add_shadow (finding, hut_check_panel (assembly, own->panel), &own->box);
  if (placed != NULL)
    hut_finding_set_room_fix (finding, self, placed);
  return finding;
}

/* ---- machine --------------------------------------------------------------------------------- */

static const char *const machine_checks[]
    = { "depth.machine", "depth.motion", "depth.keep-out" };

static const char *
machine_message (HutBodyKind kind,
                 gboolean collides,
                 gboolean leads)
{
  if (leads)
    return kind == HUT_BODY_MOVING
               ? N_ ("The leads of {what} need {is} mm of the way of {other}; {must} mm is "
                     "allowed.")
               : N_ ("The leads of {what} need {is} mm of the room of {other}; {must} mm is "
                     "allowed.");
  switch (kind)
    {
    case HUT_BODY_MOVING:
      return collides ? N_ ("{other} moves {is} mm into {what}; {must} mm of free room are wanted.")
                      : N_ ("{other} moves to within {is} mm of {what}; {must} mm are wanted.");
    case HUT_BODY_KEEP_OUT:
      return collides ? N_ ("{what} takes {is} mm of {other}; it and {must} mm around must "
                             "be free.")
                      : N_ ("{what} is {is} mm from {other}; {must} mm around it are to stay "
                             "free.");
    case HUT_BODY_STATIC:
    default:
      return collides
                 ? N_ ("{what} reaches {is} mm into {other}; {must} mm of free room are wanted.")
                 : N_ ("{what} comes within {is} mm of {other}; {must} mm are wanted.");
    }
}

/* One finding for a piece of hardware and a body of the machine: the worst of its solids. */
static void
check_body (HutChecking *self,
            const HutPlacedHardware *placed,
            const HutBody *body)
{
  const HutAssembly *assembly = self->assembly;
  const HutBox3 box = hut_assembly_body_box (assembly, body);
  const HutSolid *worst = NULL;
  double worst_mm = -HUT_CHECK_TOLERANCE_MM, worst_gap_mm = 0.0, worst_must_mm = 0.0;

  if (hut_box3_is_empty (&box))
    return;
  for (guint i = 0; i < assembly->solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (assembly->solids, HutSolid, i);
      double must_mm, gap_mm;

      if (!is_hardware (solid) || solid->panel != placed->panel
          || g_strcmp0 (solid->item, placed->hardware->id) != 0
          || !hut_room_minds_body (assembly, solid, body, &must_mm))
        continue;
      gap_mm = hut_room_gap_mm (&box, &solid->box);
      if (gap_mm - must_mm >= worst_mm)
        continue;
      worst = solid;
      worst_mm = gap_mm - must_mm;
      worst_gap_mm = gap_mm;
      worst_must_mm = must_mm;
    }
  if (worst != NULL)
    add_finding (self, worst, machine_checks[body->kind],
                 machine_message (body->kind, worst_gap_mm < -HUT_ROOM_TOUCH_MM,
                                  worst->kind == HUT_SOLID_LEADS),
                 hut_check_name (body->name, body->id), worst_gap_mm, worst_must_mm);
}

/* ---- solids ---------------------------------------------------------------------------------- */

static const char *
solid_message (const HutSolid *own,
               const HutSolid *other)
{
  if (own->kind == HUT_SOLID_LEADS)
    return N_ ("The leads of {what} need {is} mm of the room of {other}; {must} mm is allowed.");
  switch (other->kind)
    {
    case HUT_SOLID_STRAP:
      return N_ ("{what} reaches {is} mm into a strap on {other}; {must} mm is allowed.");
    case HUT_SOLID_LEDGE:
      return N_ ("{what} reaches {is} mm into the ledge on {other}; {must} mm is allowed.");
    case HUT_SOLID_BAFFLE:
      return N_ ("{what} reaches {is} mm into a baffle on {other}; {must} mm is allowed.");
    case HUT_SOLID_GLAZING:
    case HUT_SOLID_FRAME:
      return N_ ("{what} reaches {is} mm into the plates of {other}; {must} mm is allowed.");
    default:
      return N_ ("{what} reaches {is} mm into {other}; {must} mm is allowed.");
    }
}

/* What is told together. */
static gboolean
is_same_thing (const HutSolid *a,
               const HutSolid *b)
{
  if (a->item != NULL || b->item != NULL)
    return g_strcmp0 (a->item, b->item) == 0;
  return a->kind == b->kind && a->panel == b->panel;
}

/* The deepest overlap of a piece of hardware with all solids like the one at @first. */
static void
check_things (HutChecking *self,
              const HutPlacedHardware *placed,
              const GArray *solids,
              guint first)
{
  const HutAssembly *assembly = self->assembly;
  const HutSolid *like = &g_array_index (solids, HutSolid, first);
  const HutSolid *worst_own = NULL, *worst_other = NULL;
  double worst_mm = HUT_ROOM_TOUCH_MM;

  for (guint i = 0; i < first; i++)
    if (is_same_thing (&g_array_index (solids, HutSolid, i), like))
      return; /* told with the first one */
  for (guint k = 0; k < assembly->solids->len; k++)
    {
      const HutSolid *own = &g_array_index (assembly->solids, HutSolid, k);

      if (!is_hardware (own) || own->panel != placed->panel
          || g_strcmp0 (own->item, placed->hardware->id) != 0)
        continue;
      for (guint i = first; i < solids->len; i++)
        {
          const HutSolid *other = &g_array_index (solids, HutSolid, i);
          double deep_mm;

          if (!is_same_thing (other, like) || !hut_room_minds_solid (assembly, own, other))
            continue;
          deep_mm = hut_box3_overlap_mm (&own->box, &other->box);
          if (deep_mm <= worst_mm)
            continue;
          worst_mm = deep_mm;
          worst_own = own;
          worst_other = other;
        }
    }
  if (worst_own != NULL)
    add_finding (self, worst_own, is_hardware (worst_other) ? "depth.hardware" : "depth.solid",
                 solid_message (worst_own, worst_other),
                 hut_check_solid_name (assembly, worst_other), -worst_mm, 0.0);
}

/* Two pieces of hardware are told once: from the later one. */
static gboolean
is_told_by_other (const HutAssembly *assembly,
                  guint index,
                  const HutSolid *solid)
{
  for (guint i = index + 1; i < assembly->hardware->len; i++)
    {
      const HutPlacedHardware *later = g_ptr_array_index (assembly->hardware, i);

      if (g_strcmp0 (later->hardware->id, solid->item) == 0)
        return TRUE;
    }
  return FALSE;
}

static void
check_solids (HutChecking *self,
              guint index,
              const GArray *solids)
{
  const HutPlacedHardware *placed = g_ptr_array_index (self->assembly->hardware, index);

  for (guint i = 0; i < solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (solids, HutSolid, i);

      if (!is_hardware (solid) || !is_told_by_other (self->assembly, index, solid))
        check_things (self, placed, solids, i);
    }
}

void
hut_check_depth (HutChecking *self)
{
  const HutAssembly *assembly = self->assembly;
  const GPtrArray *bodies = assembly->design->machine.bodies;

  for (guint i = 0; i < assembly->hardware->len; i++)
    {
      for (guint k = 0; k < bodies->len; k++)
        check_body (self, g_ptr_array_index (assembly->hardware, i),
                    g_ptr_array_index (bodies, k));
      check_solids (self, i, assembly->solids);
      check_solids (self, i, self->parts->solids);
    }
}
