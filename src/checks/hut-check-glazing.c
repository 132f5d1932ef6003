/* src/checks/hut-check-glazing.c: glazing and frames behind windows against what is beside them.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-check-hole.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* Overlaps that are not deeper than this are touches, mm: two thicknesses that are on the grid. */
#define TOUCH_MM HUT_GRID_MM

static HutFinding *
add_finding (HutChecking *self,
             const HutPlate *plate,
             const char *message,
             const char *other)
{
  HutFinding *finding = hut_checking_add (self, "opening.glazing", HUT_SEVERITY_BLOCKS, message);

  hut_finding_set_names (finding, hut_check_name (plate->window->name, plate->item), other);
  hut_finding_set_item (finding, plate->item);
  return finding;
}

/* The frame of a window is as large as its glazing, or larger: what one covers, the other does as
 * well. */
static gboolean
is_largest_of_window (const HutAssembly *assembly,
                      guint index)
{
  const HutPlate *plate = g_ptr_array_index (assembly->plates, index);

  for (guint i = index + 1; i < assembly->plates->len; i++)
    if (((const HutPlate *)g_ptr_array_index (assembly->plates, i))->window == plate->window)
      return FALSE;
  return TRUE;
}

/* Bonded, they are of one size and told as the glazing; a screwed frame reaches further. */
static gboolean
is_frame (const HutPlate *plate)
{
  return plate->kind == HUT_SOLID_FRAME && plate->window->screw_mm > 0.0;
}

/* ---- other holes under the plates
 * ----------------------------------------------------------------- */

static void
check_hole (HutChecking *self,
            const HutPlate *plate,
            const HutCheckHole *hole)
{
  const HutRect outer = hut_region_bounds (plate->region);

  for (guint i = 0; i < hole->placed->paths->len; i++)
    {
      HutFinding *finding;
      double deep_mm;
      HutWeb gap;

      if (hut_check_rects_apart_mm (&outer, &hole->bounds[i]) > 0.0
          || !hut_check_material_between (g_ptr_array_index (hole->placed->paths, i),
                                          plate->region->outer, HUT_CHECK_TOLERANCE_MM, &gap))
        continue;
      deep_mm
          = MIN (MIN (hole->placed->bounds.u1 - outer.u0, outer.u1 - hole->placed->bounds.u0),
                 MIN (hole->placed->bounds.v1 - outer.v0, outer.v1 - hole->placed->bounds.v0));
      finding = add_finding (self, plate,
                             is_frame (plate)
                                 ? N_ ("The frame of {what} lies {is} mm over {other} and closes "
                                       "it; {must} mm is allowed.")
                                 : N_ ("The glazing of {what} lies {is} mm over {other} and "
                                       "closes it; {must} mm is allowed."),
                             hut_check_hole_name (hole, self->assembly));
      hut_finding_set_numbers (finding, deep_mm, 0.0);
      hut_finding_add_place (finding, hole->panel, hole->placed->bounds);
      return;
    }
}

static void
check_holes (HutChecking *self,
             const HutPlate *plate,
             const GPtrArray *holes)
{
  for (guint i = 0; i < holes->len; i++)
    {
      const HutCheckHole *hole = g_ptr_array_index (holes, i);

      if (hole->placed->panel == plate->panel
          && g_strcmp0 (hole->placed->item, plate->item) != 0)
        check_hole (self, plate, hole);
    }
}

/* ---- past the panel's own border
 * ------------------------------------------------------------------ */

static void
check_border (HutChecking *self,
              const HutPlate *plate)
{
  const HutPanel *panel = hut_check_panel (self->assembly, plate->panel);
  const HutRect outer = hut_region_bounds (plate->region);
  const double past_mm = MAX (MAX (-outer.u0, outer.u1 - panel->width_mm),
                              MAX (-outer.v0, outer.v1 - panel->height_mm));
  HutFinding *finding;

  if (past_mm <= HUT_CHECK_TOLERANCE_MM)
    return;
  finding = add_finding (self, plate,
                         is_frame (plate)
                             ? N_ ("The frame of {what} reaches {is} mm past the edge of {other}; "
                                   "{must} mm is allowed.")
                             : N_ ("The glazing of {what} reaches {is} mm past the edge of "
                                   "{other}; {must} mm is allowed."),
                         hut_panel_name (panel->id));
  hut_finding_set_numbers (finding, past_mm, 0.0);
  hut_finding_add_place (finding, panel, outer);
}

/* ---- into other solids
 * ---------------------------------------------------------------------------- */

static const char *
message_into (HutSolidKind kind,
              gboolean frame)
{
  switch (kind)
    {
    case HUT_SOLID_STRAP:
      return frame ? N_ ("The frame of {what} runs {is} mm into a strap on {other}; {must} mm is "
                         "allowed.")
                   : N_ ("The glazing of {what} runs {is} mm into a strap on {other}; {must} mm "
                         "is allowed.");
    case HUT_SOLID_LEDGE:
      return frame ? N_ ("The frame of {what} runs {is} mm into the ledge on {other}; {must} mm "
                         "is allowed.")
                   : N_ ("The glazing of {what} runs {is} mm into the ledge on {other}; {must} "
                         "mm is allowed.");
    case HUT_SOLID_GLAZING:
    case HUT_SOLID_FRAME:
      return frame ? N_ ("The frame of {what} runs {is} mm into that of {other}; {must} mm is "
                         "allowed.")
                   : N_ ("The glazing of {what} runs {is} mm into that of {other}; {must} mm is "
                         "allowed.");
    default:
      return frame ? N_ ("The frame of {what} runs {is} mm into {other}; {must} mm is allowed.")
                   : N_ ("The glazing of {what} runs {is} mm into {other}; {must} mm is allowed.");
    }
}

/* The solids of a window's plates, box against box with everything else inside. */
static double
overlap_mm (const HutAssembly *assembly,
            const HutPlate *plate,
            const HutSolid *solid)
{
  double deepest_mm = 0.0;

  for (guint i = 0; i < assembly->solids->len; i++)
    {
      const HutSolid *own = &g_array_index (assembly->solids, HutSolid, i);

      if ((own->kind == HUT_SOLID_GLAZING || own->kind == HUT_SOLID_FRAME)
          && g_strcmp0 (own->item, plate->item) == 0)
        deepest_mm = MAX (deepest_mm, hut_box3_overlap_mm (&own->box, &solid->box));
    }
  return deepest_mm;
}

static guint
rank_of (const HutAssembly *assembly,
         const char *window)
{
  for (guint i = 0; i < assembly->plates->len; i++)
    if (g_strcmp0 (((const HutPlate *)g_ptr_array_index (assembly->plates, i))->item,
                   window)
        == 0)
      return i;
  return assembly->plates->len;
}

static gboolean
check_solid (HutChecking *self,
             const HutPlate *plate,
             const HutSolid *solid)
{
  const double deep_mm = overlap_mm (self->assembly, plate, solid);
  const HutPanel *panel = hut_check_panel (self->assembly, plate->panel);
  HutFinding *finding;

  if (deep_mm <= TOUCH_MM)
    return FALSE;
  finding = add_finding (self, plate, message_into (solid->kind, is_frame (plate)),
                         hut_check_solid_name (self->assembly, solid));
  hut_finding_set_numbers (finding, deep_mm, 0.0);
  hut_finding_add_place (finding, panel, hut_region_bounds (plate->region));
  return TRUE;
}

/* Two windows that meet are told once, from the first one and by the first of their plates. */
static void
check_solids (HutChecking *self,
              const HutPlate *plate)
{
  const HutAssembly *assembly = self->assembly;
  const char *told = NULL;

  for (guint i = 0; i < assembly->solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (assembly->solids, HutSolid, i);
      const gboolean is_plate
          = solid->kind == HUT_SOLID_GLAZING || solid->kind == HUT_SOLID_FRAME;

      if (solid->kind == HUT_SOLID_HARDWARE || solid->kind == HUT_SOLID_LEADS
          || solid->kind == HUT_SOLID_FACE_PLATE)
        continue; /* told by the depth checks */
      if (is_plate
          && (rank_of (assembly, solid->item) <= rank_of (assembly, plate->item)
              || g_strcmp0 (solid->item, told) == 0))
        continue;
      if (check_solid (self, plate, solid) && is_plate)
        told = solid->item;
    }
  for (guint i = 0; i < self->parts->solids->len; i++)
    check_solid (self, plate, &g_array_index (self->parts->solids, HutSolid, i));
}

void
hut_check_glazing (HutChecking *self)
{
  const GPtrArray *plates = self->assembly->plates;
  g_autoptr(GPtrArray) holes = NULL;

  if (plates->len == 0)
    return;
  holes = hut_check_holes_new (self->assembly);
  for (guint i = 0; i < plates->len; i++)
    {
      const HutPlate *plate = g_ptr_array_index (plates, i);

      if (plate->window == NULL || !is_largest_of_window (self->assembly, i))
        continue;
      check_holes (self, plate, holes);
      check_border (self, plate);
      check_solids (self, plate);
    }
}
