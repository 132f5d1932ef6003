/* src/checks/hut-check-clearance.c: the machine against the inside of the enclosure.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Each body, swept by its travel, is measured square to each wall, and box against box to each
 * plate, strap and ledge. What a thing must keep is the clearance of the side that it stands on;
 * the floor and what lies on it carry the machine and need none. */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include "checks/hut-hardware-room.h"
#include <glib/gi18n-lib.h>
#include <math.h>

typedef enum
{
  NEAR_WALL, /* a panel, or the plates of a window */
  NEAR_STRAP,
  NEAR_LEDGE,
  NEAR_COUNT
} Near;

typedef struct
{
  const char *check;
  const char *close[NEAR_COUNT], *collides[NEAR_COUNT];
} Wording;

static const Wording wordings[] = {
  [HUT_BODY_STATIC] = {
    "clearance.static",
    { N_ ("{what} comes within {is} mm of {other}; {must} mm are wanted."),
      N_ ("{what} comes within {is} mm of a strap on {other}; {must} mm are wanted."),
      N_ ("{what} comes within {is} mm of the ledge on {other}; {must} mm are wanted.") },
    { N_ ("{what} reaches {is} mm into {other}; {must} mm of free room are wanted."),
      N_ ("{what} reaches {is} mm into a strap on {other}; {must} mm of free room are wanted."),
      N_ ("{what} reaches {is} mm into the ledge on {other}; {must} mm of free room are wanted.") },
  },
  [HUT_BODY_MOVING] = {
    "clearance.motion",
    { N_ ("{what} moves to within {is} mm of {other}; {must} mm are wanted."),
      N_ ("{what} moves to within {is} mm of a strap on {other}; {must} mm are wanted."),
      N_ ("{what} moves to within {is} mm of the ledge on {other}; {must} mm are wanted.") },
    { N_ ("{what} moves {is} mm into {other}; {must} mm of free room are wanted."),
      N_ ("{what} moves {is} mm into a strap on {other}; {must} mm of free room are wanted."),
      N_ ("{what} moves {is} mm into the ledge on {other}; {must} mm of free room are wanted.") },
  },
  [HUT_BODY_KEEP_OUT] = {
    "clearance.keep-out",
    { N_ ("{other} is {is} mm from {what}; {must} mm around it are to stay free."),
      N_ ("A strap on {other} is {is} mm from {what}; {must} mm around it are to stay free."),
      N_ ("The ledge on {other} is {is} mm from {what}; {must} mm around it are to stay free.") },
    { N_ ("{other} takes {is} mm of {what}; it and {must} mm around must be free."),
      N_ ("A strap on {other} takes {is} mm of {what}; it and {must} mm around must be free."),
      N_ ("The ledge on {other} takes {is} mm of {what}; it and {must} mm around must be free.") },
  },
};

static HutFinding *
add_finding (HutChecking *self,
             const HutBody *body,
             Near near,
             const char *other,
             double gap_mm,
             double must_mm)
{
  const Wording *wording = &wordings[body->kind];
  const gboolean collides = gap_mm < -HUT_CHECK_TOLERANCE_MM;
  HutFinding *finding = hut_checking_add (
      self, wording->check, collides ? HUT_SEVERITY_BLOCKS : HUT_SEVERITY_WARNS,
      collides ? wording->collides[near] : wording->close[near]);

  hut_finding_set_names (finding, hut_check_name (body->name, body->id), other);
  hut_finding_set_numbers (finding, fabs (gap_mm), must_mm);
  hut_finding_set_item (finding, body->id);
  return finding;
}

static gboolean
is_too_near (double gap_mm,
             double must_mm)
{
  return gap_mm < MAX (must_mm, 0.0) - HUT_CHECK_TOLERANCE_MM;
}

/* Free room between a body and a panel, square to it, mm; < 0 by how far the body reaches into or
 * past it. FALSE when the panel is not beside the body. */
static gboolean
wall_gap (const HutPanel *panel,
          const HutBox3 *box,
          double *gap_mm)
{
  const HutFrame3 *frame = &panel->frame;
  const HutRect shadow = hut_frame3_shadow (frame, box);
  const double origin_mm = hut_vec3_dot (frame->origin, frame->w);
  const double far_mm
      = MAX (hut_vec3_dot (box->min, frame->w), hut_vec3_dot (box->max, frame->w));

  if (shadow.u1 <= 0.0 || shadow.v1 <= 0.0 || shadow.u0 >= panel->width_mm
      || shadow.v0 >= panel->height_mm)
    return FALSE;
  *gap_mm = origin_mm - panel->thickness_mm - far_mm;
  return TRUE;
}

/* Base and lid have a panel each on most sides: one finding for both, with the nearer one's
 * number. */
static void
check_side (HutChecking *self,
            const HutBody *body,
            const HutBox3 *box,
            HutSide side)
{
  const HutAssembly *assembly = self->assembly;
  const double must_mm = hut_machine_clearance_mm (&assembly->design->machine, side);
  const HutPanel *nearest = NULL;
  double nearest_mm = INFINITY, gap_mm;
  HutFinding *finding;

  for (guint i = 0; i < assembly->panels->len; i++)
    {
      const HutPanel *panel = g_ptr_array_index (assembly->panels, i);

      if (panel->id.side == side && wall_gap (panel, box, &gap_mm) && gap_mm < nearest_mm)
        {
          nearest = panel;
          nearest_mm = gap_mm;
        }
    }
  if (nearest == NULL || !is_too_near (nearest_mm, must_mm))
    return;
  finding
      = add_finding (self, body, NEAR_WALL, hut_panel_name (nearest->id), nearest_mm, must_mm);
  hut_finding_add_shadow (finding, nearest, box);
  for (guint i = 0; i < assembly->panels->len; i++)
    {
      const HutPanel *panel = g_ptr_array_index (assembly->panels, i);

      if (panel != nearest && panel->id.side == side && wall_gap (panel, box, &gap_mm)
          && is_too_near (gap_mm, must_mm))
        hut_finding_add_shadow (finding, panel, box);
    }
}

static Near
near_of (HutSolidKind kind)
{
  return kind == HUT_SOLID_STRAP ? NEAR_STRAP : kind == HUT_SOLID_LEDGE ? NEAR_LEDGE : NEAR_WALL;
}

/* The frame of a window lies over its glazing and is nearer to everything inside. */
static gboolean
is_under_frame (const HutSolid *solid,
                const GArray *solids)
{
  for (guint i = 0; solid->kind == HUT_SOLID_GLAZING && i < solids->len; i++)
    {
      const HutSolid *other = &g_array_index (solids, HutSolid, i);

      if (other->kind == HUT_SOLID_FRAME && g_strcmp0 (other->item, solid->item) == 0)
        return TRUE;
    }
  return FALSE;
}

static double
solid_gap_mm (const HutBox3 *box,
              const HutSolid *solid)
{
  const double overlap_mm = hut_box3_overlap_mm (box, &solid->box);

  return overlap_mm > 0.0 ? -overlap_mm : hut_box3_distance_mm (box, &solid->box);
}

/* What is told together: all straps of a panel, all ledges of a wall, each window by itself. */
static gboolean
is_same_thing (const HutSolid *a,
               const HutSolid *b)
{
  return a->kind == b->kind && a->panel == b->panel && g_strcmp0 (a->item, b->item) == 0;
}

/* One finding for all solids like the one at @first, with the number of the nearest. */
static void
check_things (HutChecking *self,
              const HutBody *body,
              const HutBox3 *box,
              const GArray *solids,
              guint first)
{
  const HutAssembly *assembly = self->assembly;
  const HutSolid *like = &g_array_index (solids, HutSolid, first), *nearest = NULL;
  const HutPanel *panel = hut_check_panel (assembly, like->panel);
  const HutMachine *machine = &assembly->design->machine;
  /* Ledges lie under the floor. */
  const double must_mm = like->kind == HUT_SOLID_LEDGE
                             ? 0.0
                             : hut_machine_clearance_mm (machine, panel->id.side);
  HutFinding *finding;

  for (guint i = 0; i < solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (solids, HutSolid, i);

      if (!is_same_thing (solid, like))
        continue;
      if (i < first)
        return; /* told with the first one */
      if (nearest == NULL || solid_gap_mm (box, solid) < solid_gap_mm (box, nearest))
        nearest = solid;
    }
  if (!is_too_near (solid_gap_mm (box, nearest), must_mm))
    return;
  finding = add_finding (self, body, near_of (like->kind), hut_check_solid_name (assembly, like),
                         solid_gap_mm (box, nearest), must_mm);
  hut_finding_add_shadow (finding, panel, &nearest->box);
  for (guint i = first; i < solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (solids, HutSolid, i);

      if (solid != nearest && is_same_thing (solid, like)
          && is_too_near (solid_gap_mm (box, solid), must_mm))
        hut_finding_add_shadow (finding, panel, &solid->box);
    }
}

static void
check_solids (HutChecking *self,
              const HutBody *body,
              const HutBox3 *box,
              const GArray *solids)
{
  for (guint i = 0; i < solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (solids, HutSolid, i);

      if (solid->kind != HUT_SOLID_PANEL && solid->kind != HUT_SOLID_HARDWARE
          && solid->kind != HUT_SOLID_LEADS && solid->kind != HUT_SOLID_FACE_PLATE
          && !is_under_frame (solid, solids))
        check_things (self, body, box, solids, i);
    }
}

void
hut_check_clearance (HutChecking *self)
{
  const GPtrArray *bodies = self->assembly->design->machine.bodies;

  if (!self->assembly->whole)
    return;
  for (guint i = 0; i < bodies->len; i++)
    {
      const HutBody *body = g_ptr_array_index (bodies, i);
      const HutBox3 box = hut_assembly_body_box (self->assembly, body);

      if (hut_box3_is_empty (&box))
        continue;
      for (int side = 0; side < HUT_SIDE_COUNT; side++)
        check_side (self, body, &box, (HutSide)side);
      check_solids (self, body, &box, self->assembly->solids);
      check_solids (self, body, &box, self->parts->solids);
    }
}
