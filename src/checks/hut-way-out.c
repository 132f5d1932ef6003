/* src/checks/hut-way-out.c: a fitting way out for a service at a sensible free place.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-way-out.h"
#include "checks/hut-check-hole.h"
#include "checks/hut-fitting.h"
#include "checks/hut-pass.h"
#include <math.h>
#include <string.h>

#define PITCH_MM 10.0    /* of the places that are tried; own choice: finer than a hand's aim */
#define TRIES_MOST 60u   /* full checks; own choice: well under a second for large designs */
#define LID_EXTRA_MM 1e4 /* its line bends with each opening: only when nothing else is free */
#define SPREAD_MM 25.0   /* round a place that failed no other is tried; own choice */
#define ROUNDED_TO_MM 0.5
#define CORNER_MM 2.0    /* of rectangles; own choice: no notch for a crack to start from */

/* A place for the opening's middle. */
typedef struct
{
  guint panel;
  HutPoint at;
  double cost_mm; /* distance to the machine's end, and what the panel adds */
} Place;

/* ---- the opening ----------------------------------------------------------------------------- */

static double
round_up_mm (double size_mm)
{
  return ceil (size_mm / ROUNDED_TO_MM - 1e-9) * ROUNDED_TO_MM;
}

static HutHardware *
hardware_new (const char *id,
              const HutService *service,
              const HutItem *fitting)
{
  HutHardware *hardware
      = hut_hardware_new (id, fitting->id, (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_BACK });

  g_free (hardware->name);
  hardware->name = g_strdup (hut_check_name (service->name, service->id));
  g_free (hardware->serves);
  hardware->serves = g_strdup (service->id);
  return hardware;
}

static HutOpening *
opening_new (const char *id,
             const HutService *service)
{
  const HutHead head = hut_head_of (service);
  const double hole_mm = round_up_mm (hut_head_hole_mm (head));
  const gboolean round = head.round || hole_mm <= HUT_WAY_OUT_ROUND_MM;
  HutOpening *opening
      = hut_opening_new (id, (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_BACK },
                         round ? HUT_SHAPE_ROUND : HUT_SHAPE_RECTANGLE);

  g_free (opening->name);
  opening->name = g_strdup (hut_check_name (service->name, service->id));
  g_free (opening->serves);
  opening->serves = g_strdup (service->id);
  opening->diameter_mm = hole_mm;
  if (!round)
    {
      /* The play and the corners' radius: the head's own corners are sharp. */
      opening->width_mm = round_up_mm (head.width_mm + HUT_PASS_PLAY_MM + CORNER_MM);
      opening->height_mm = round_up_mm (head.height_mm + HUT_PASS_PLAY_MM + CORNER_MM);
      opening->radius_mm = CORNER_MM;
    }
  return opening;
}

static HutWayOut *
way_new (const HutDesign *design,
         const HutService *service,
         const HutItem *fitting)
{
  g_autofree char *stem = g_strdup_printf ("%s-way", service->id);
  g_autofree char *id = hut_design_dup_free_id (design, stem);
  HutWayOut *self = g_new0 (HutWayOut, 1);

  if (fitting != NULL)
    self->hardware = hardware_new (id, service, fitting);
  else
    self->opening = opening_new (id, service);
  return self;
}

void
hut_way_out_free (HutWayOut *self)
{
  if (self == NULL)
    return;
  g_clear_pointer (&self->opening, hut_opening_free);
  g_clear_pointer (&self->hardware, hut_hardware_free);
  g_free (self);
}

const char *
hut_way_out_add (const HutWayOut *self,
                 const HutItem *fitting,
                 HutDesign *design)
{
  g_return_val_if_fail (self != NULL && (self->hardware == NULL || fitting != NULL), NULL);

  if (self->hardware == NULL)
    {
      g_ptr_array_add (design->openings, hut_opening_copy (self->opening));
      return self->opening->id;
    }

  HutHardware *hardware = hut_hardware_copy (self->hardware);
  const char *item = hut_design_keep_item (design, fitting);

  if (strcmp (hardware->item, item) != 0) /* the design has another item of that id */
    {
      g_free (hardware->item);
      hardware->item = g_strdup (item);
    }
  g_ptr_array_add (design->hardware, hardware);
  return hardware->id;
}

/* Its flange needs room, or the opening itself. */
static void
half_size (const HutWayOut *self,
           const HutItem *fitting,
           double *u_mm,
           double *v_mm)
{
  if (self->hardware != NULL)
    {
      *u_mm = fitting->flange_width_mm / 2.0;
      *v_mm = fitting->flange_height_mm / 2.0;
      return;
    }

  const HutGate gate = hut_gate_of (self->opening);

  *u_mm = gate.width_mm / 2.0;
  *v_mm = gate.height_mm / 2.0;
}

/* ---- places ---------------------------------------------------------------------------------- */

/* Where the middle of an opening may lie: clear of finger roots, and of what is not inside. */
static HutRect
find_room (const HutAssembly *assembly,
           const HutPanel *panel,
           double half_u_mm,
           double half_v_mm)
{
  const double keep_mm
      = MAX (panel->stock->smallest_web_mm, panel->thickness_mm + HUT_CHECK_ROOT_ROOM_MM);
  const HutRect inside = hut_frame3_shadow (&panel->frame, &assembly->inside);
  const double depth_mm[HUT_EDGE_COUNT]
      = { panel->edges[HUT_EDGE_BOTTOM].depth_mm, panel->edges[HUT_EDGE_RIGHT].depth_mm,
          panel->edges[HUT_EDGE_TOP].depth_mm, panel->edges[HUT_EDGE_LEFT].depth_mm };

  return (HutRect) {
    MAX (depth_mm[HUT_EDGE_LEFT] + keep_mm, inside.u0) + half_u_mm,
    MAX (depth_mm[HUT_EDGE_BOTTOM] + keep_mm, inside.v0) + half_v_mm,
    MIN (panel->width_mm - depth_mm[HUT_EDGE_RIGHT] - keep_mm, inside.u1) - half_u_mm,
    MIN (panel->height_mm - depth_mm[HUT_EDGE_TOP] - keep_mm, inside.v1) - half_v_mm,
  };
}

static gboolean
rects_meet (HutRect a,
            HutRect b,
            double apart_mm)
{
  return hut_check_rects_apart_mm (&a, &b) < apart_mm;
}

/* What the panel's own things leave free, by their bounds: the full check comes later. */
static gboolean
is_free (const HutAssembly *assembly,
         const HutPartSet *parts,
         guint index,
         HutRect bounds)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, index);
  const double web_mm = panel->stock->smallest_web_mm;

  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);

      if (hole->panel == index && rects_meet (hole->bounds, bounds, web_mm))
        return FALSE;
    }
  for (guint l = 0; l < 2; l++)
    {
      const GArray *solids = l == 0 ? assembly->solids : parts->solids;

      for (guint i = 0; i < solids->len; i++)
        {
          const HutSolid *solid = &g_array_index (solids, HutSolid, i);
          const HutPanel *other = g_ptr_array_index (assembly->panels, solid->panel);

          if (solid->kind != HUT_SOLID_PANEL && other->id.side == panel->id.side
              && rects_meet (hut_frame3_shadow (&panel->frame, &solid->box), bounds,
                             HUT_CHECK_TOLERANCE_MM))
            return FALSE;
        }
    }
  return TRUE;
}

static double
cost_of (const HutPanel *panel,
         HutPoint at,
         HutVec3 end)
{
  const HutVec3 point = hut_frame3_to_world (&panel->frame, at.u, at.v, -panel->thickness_mm);
  const HutVec3 way = hut_vec3_add (point, hut_vec3_scale (end, -1.0));

  return sqrt (hut_vec3_dot (way, way)) + (panel->id.shell == HUT_SHELL_LID ? LID_EXTRA_MM : 0.0);
}

/* The coordinate number @index of those from @from on; the last one is @to. */
static double
step_mm (double from_mm,
         double to_mm,
         guint index)
{
  return hut_snap_mm (MIN (from_mm + PITCH_MM * index, to_mm));
}

static guint
step_count (double from_mm,
            double to_mm)
{
  return to_mm < from_mm ? 0 : (guint) ceil ((to_mm - from_mm) / PITCH_MM) + 1;
}

static void
add_places (GArray *places,
            const HutAssembly *assembly,
            const HutPartSet *parts,
            guint index,
            double half_u_mm,
            double half_v_mm,
            HutVec3 end)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, index);
  HutRect room;

  room = find_room (assembly, panel, half_u_mm, half_v_mm);
  for (guint i = 0; i < step_count (room.u0, room.u1); i++)
    for (guint k = 0; k < step_count (room.v0, room.v1); k++)
      {
        const HutPoint at = { step_mm (room.u0, room.u1, i), step_mm (room.v0, room.v1, k) };
        const HutRect bounds = { at.u - half_u_mm, at.v - half_v_mm, at.u + half_u_mm,
                                 at.v + half_v_mm };
        const Place place = { index, at, cost_of (panel, at, end) };

        if (is_free (assembly, parts, index, bounds))
          g_array_append_val (places, place);
      }
}

static int
compare_places (gconstpointer a,
                gconstpointer b)
{
  const Place *p = a, *q = b;
  const double keys[][2] = { { p->cost_mm, q->cost_mm },
                             { p->panel, q->panel },
                             { p->at.u, q->at.u },
                             { p->at.v, q->at.v } };

  for (guint i = 0; i < G_N_ELEMENTS (keys); i++)
    if (keys[i][0] != keys[i][1])
      return keys[i][0] < keys[i][1] ? -1 : 1;
  return 0;
}

/* Leads leave through walls; a floor has the bench under it. */
static gboolean
is_wall (const HutPanel *panel)
{
  return panel->id.side != HUT_SIDE_BOTTOM && !panel->bought;
}

/* ---- the full check -------------------------------------------------------------------------- */

static gboolean
was_said (const GPtrArray *findings,
          const HutFinding *finding)
{
  g_autofree char *text = hut_finding_dup_text (finding, NULL, ".");

  for (guint i = 0; i < findings->len; i++)
    {
      g_autofree char *other = hut_finding_dup_text (g_ptr_array_index (findings, i), NULL, ".");

      if (strcmp (text, other) == 0)
        return TRUE;
    }
  return FALSE;
}

static gboolean
is_good (const HutAssembly *assembly,
         const GPtrArray *findings,
         const HutWayOut *way,
         const HutItem *fitting)
{
  g_autoptr(HutDesign) design = hut_design_copy (assembly->design);
  g_autoptr(HutAssembly) with = NULL;
  g_autoptr(HutPartSet) parts = NULL;
  g_autoptr(GPtrArray) said = NULL;

  hut_way_out_add (way, fitting, design);
  with = hut_assembly_new (design);
  parts = hut_part_set_new (with);
  said = hut_check_all (with, parts);
  for (guint i = 0; i < said->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (said, i);

      if (finding->severity != HUT_SEVERITY_NOTES && !was_said (findings, finding))
        return FALSE;
    }
  return TRUE;
}

static void
put (const HutAssembly *assembly,
     const Place *place,
     HutWayOut *way)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, place->panel);
  HutPosition *at = way->hardware != NULL ? &way->hardware->at : &way->opening->at;

  at->panel = panel->id;
  at->u_anchor = place->at.u <= panel->width_mm / 2.0 ? HUT_ANCHOR_START : HUT_ANCHOR_END;
  at->v_anchor = place->at.v <= panel->height_mm / 2.0 ? HUT_ANCHOR_START : HUT_ANCHOR_END;
  hut_assembly_position_for (assembly, place->at, at);
}

/* What spoils one place often spoils those round it. */
static gboolean
is_beside (const GArray *failed,
           const Place *place)
{
  for (guint i = 0; i < failed->len; i++)
    {
      const Place *other = &g_array_index (failed, Place, i);

      if (other->panel == place->panel && fabs (other->at.u - place->at.u) < SPREAD_MM
          && fabs (other->at.v - place->at.v) < SPREAD_MM)
        return TRUE;
    }
  return FALSE;
}

HutWayOut *
hut_way_out_find (const HutAssembly *assembly,
                  const HutPartSet *parts,
                  const GPtrArray *findings,
                  const char *service_id,
                  const HutItem *fitting)
{
  const HutService *service;
  g_autoptr(HutWayOut) way = NULL;
  g_autoptr(GArray) places = g_array_new (FALSE, FALSE, sizeof (Place));
  g_autoptr(GArray) failed = g_array_new (FALSE, FALSE, sizeof (Place));
  double half_u_mm, half_v_mm;
  HutVec3 end;

  g_return_val_if_fail (assembly != NULL && parts != NULL && findings != NULL, NULL);

  service = hut_design_get_service (assembly->design, service_id);
  if (service == NULL || !assembly->whole)
    return NULL;
  way = way_new (assembly->design, service, fitting);
  half_size (way, fitting, &half_u_mm, &half_v_mm);
  end = hut_vec3_add (assembly->machine_at, service->at);
  for (guint i = 0; i < assembly->panels->len; i++)
    if (is_wall (g_ptr_array_index (assembly->panels, i)))
      add_places (places, assembly, parts, i, half_u_mm, half_v_mm, end);
  g_array_sort (places, compare_places);
  for (guint i = 0; i < places->len && failed->len < TRIES_MOST; i++)
    {
      const Place *place = &g_array_index (places, Place, i);

      if (is_beside (failed, place))
        continue;
      put (assembly, place, way);
      if (is_good (assembly, findings, way, fitting))
        return g_steal_pointer (&way);
      g_array_append_vals (failed, place, 1);
    }
  return NULL;
}

/* A wall's thickness: what the fitting must hold in. */
static double
wall_thickness_mm (const HutDesign *design)
{
  const HutStock *stock
      = hut_design_get_panel_stock (design, (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_BACK });

  return stock != NULL ? hut_stock_max_mm (stock) : 0.0;
}

HutWayOut *
hut_way_out_choose (const HutAssembly *assembly,
                    const HutPartSet *parts,
                    const GPtrArray *findings,
                    const char *service,
                    const HutCatalog *catalog,
                    const HutItem **fitting)
{
  HutWayOut *way = NULL;
  const HutService *served;

  g_return_val_if_fail (assembly != NULL && fitting != NULL, NULL);

  served = hut_design_get_service (assembly->design, service);
  *fitting = catalog != NULL && served != NULL
                 ? hut_fitting_choose (catalog, served, wall_thickness_mm (assembly->design))
                 : NULL;
  if (*fitting != NULL)
    way = hut_way_out_find (assembly, parts, findings, service, *fitting);
  if (way != NULL)
    return way;
  *fitting = NULL;
  return hut_way_out_find (assembly, parts, findings, service, NULL);
}
