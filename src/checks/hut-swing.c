/* src/checks/hut-swing.c: how near the opening lid comes to what stands around it.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * All solids are boxes along the world axes and so is the hinge line. A lid's solid is then a
 * rectangle that turns in the section across the hinge, times a span along it that stays. The
 * distance of two such bodies is the hypotenuse of their distance in the section and their gap
 * along the hinge. */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-swing.h"
#include "checks/hut-turn.h"
#include <math.h>

#define RAD_PER_DEG (G_PI / 180.0)

/* Nearer than when closed by more than this counts as coming nearer, mm: one step of the grid. */
#define NEARER_MM HUT_GRID_MM

/* The section across the hinge: world axes (0 x, 1 y, 2 z) such that the lid turns from u towards
 * v. */
typedef struct
{
  int along, u, v;
  HutVec3 hinge;
} Section;

typedef struct
{
  double from_mm, to_mm;
} Span;

/* A solid of the lid. */
typedef struct
{
  const HutSolid *solid;
  HutTurn turn;
  Span span;
} Mover;

/* Something that stands still. */
typedef struct
{
  HutBox3 box;
  HutRect rect;
  Span span;
  const char *name;
  HutSolidKind kind;
  HutSide side;
} Obstacle;

/* ---- section ------------------------------------------------------------------------------- */

static double
along_axis (HutVec3 v,
            int axis)
{
  return axis == 0 ? v.x : axis == 1 ? v.y : v.z;
}

static Section
find_section (const HutAssembly *assembly)
{
  const HutVec3 axis = assembly->hinge_axis;
  Section section = { .along = 0, .hinge = assembly->hinge_point };
  int next, last;

  for (int i = 1; i < 3; i++)
    if (fabs (along_axis (axis, i)) > fabs (along_axis (axis, section.along)))
      section.along = i;
  next = (section.along + 1) % 3;
  last = (section.along + 2) % 3;
  /* The right-hand rule about +x turns y towards z; about -x it turns z towards y. */
  section.u = along_axis (axis, section.along) >= 0.0 ? next : last;
  section.v = along_axis (axis, section.along) >= 0.0 ? last : next;
  return section;
}

static HutRect
section_rect (const Section *section,
              const HutBox3 *box)
{
  const double u_mm = along_axis (section->hinge, section->u),
               v_mm = along_axis (section->hinge, section->v);

  return (HutRect) {
    .u0 = along_axis (box->min, section->u) - u_mm,
    .v0 = along_axis (box->min, section->v) - v_mm,
    .u1 = along_axis (box->max, section->u) - u_mm,
    .v1 = along_axis (box->max, section->v) - v_mm,
  };
}

static Span
section_span (const Section *section,
              const HutBox3 *box)
{
  return (Span) { along_axis (box->min, section->along), along_axis (box->max, section->along) };
}

/* ---- who moves, who stands ----------------------------------------------------------------- */

/* Leads bend, and a hinge turns with the lid: neither can be hit. */
static gboolean
yields (const HutAssembly *assembly,
        const HutSolid *solid,
        gboolean as_obstacle)
{
  const HutHardware *hardware = solid->kind == HUT_SOLID_HARDWARE
                                    ? hut_design_get_hardware (assembly->design, solid->item)
                                    : NULL;
  const HutItem *item
      = hardware != NULL ? hut_design_get_hardware_item (assembly->design, hardware) : NULL;

  if (solid->kind == HUT_SOLID_LEADS)
    return TRUE;
  /* What a latch or a stay has on the base is let go of, or moves along. */
  return item != NULL
         && (as_obstacle ? item->span != HUT_SPAN_PANEL : item->span == HUT_SPAN_HINGE);
}

static void
add_movers (GArray *movers,
            const Section *section,
            const HutAssembly *assembly,
            const GArray *solids,
            double end_rad)
{
  for (guint i = 0; i < solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (solids, HutSolid, i);
      Mover mover = { .solid = solid, .span = section_span (section, &solid->box) };

      if (solid->shell != HUT_SHELL_LID || hut_box3_is_empty (&solid->box)
          || yields (assembly, solid, FALSE))
        continue;
      hut_turn_init (&mover.turn, section_rect (section, &solid->box), end_rad);
      g_array_append_val (movers, mover);
    }
}

static void
add_obstacle (GArray *obstacles,
              const Section *section,
              HutBox3 box,
              const char *name,
              HutSolidKind kind,
              HutSide side)
{
  const Obstacle obstacle = {
    .box = box,
    .rect = section_rect (section, &box),
    .span = section_span (section, &box),
    .name = name,
    .kind = kind,
    .side = side,
  };

  if (!hut_box3_is_empty (&box))
    g_array_append_val (obstacles, obstacle);
}

static void
add_bodies (GArray *obstacles,
            const Section *section,
            const HutAssembly *assembly)
{
  const GPtrArray *bodies = assembly->design->machine.bodies;

  for (guint i = 0; i < bodies->len; i++)
    {
      const HutBody *body = g_ptr_array_index (bodies, i);

      add_obstacle (obstacles, section, hut_assembly_body_box (assembly, body), body->id,
                    HUT_SOLID_PANEL, HUT_SIDE_COUNT);
    }
}

static void
add_base (GArray *obstacles,
          const Section *section,
          const HutAssembly *assembly,
          const GArray *solids)
{
  for (guint i = 0; i < solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (solids, HutSolid, i);
      const HutPanel *panel = g_ptr_array_index (assembly->panels, solid->panel);

      if (solid->shell == HUT_SHELL_BASE && !yields (assembly, solid, TRUE))
        add_obstacle (obstacles, section, solid->box,
                      solid->kind == HUT_SOLID_HARDWARE ? solid->item
                                                        : hut_panel_id_to_string (panel->id),
                      solid->kind, panel->id.side);
    }
}

static void
add_walls (GArray *obstacles,
           const Section *section,
           const HutAssembly *assembly)
{
  const HutRoom *room = &assembly->design->room_mm;
  const double far_mm = HUT_SWING_FAR_MM;
  const HutBox3 everywhere = { { -far_mm, -far_mm, -far_mm }, { far_mm, far_mm, far_mm } };
  HutBox3 wall[4] = { everywhere, everywhere, everywhere, everywhere };

  wall[HUT_SIDE_FRONT].max.y = -room->front;
  wall[HUT_SIDE_BACK].min.y = assembly->outer_mm.y + room->back;
  wall[HUT_SIDE_LEFT].max.x = -room->left;
  wall[HUT_SIDE_RIGHT].min.x = assembly->outer_mm.x + room->right;

  /* HUT_ROOM_FREE is negative, and so is anything else that is no distance. */
  if (room->front >= 0.0)
    add_obstacle (obstacles, section, wall[HUT_SIDE_FRONT], "wall", HUT_SOLID_PANEL,
                  HUT_SIDE_FRONT);
  if (room->back >= 0.0)
    add_obstacle (obstacles, section, wall[HUT_SIDE_BACK], "wall", HUT_SOLID_PANEL, HUT_SIDE_BACK);
  if (room->left >= 0.0)
    add_obstacle (obstacles, section, wall[HUT_SIDE_LEFT], "wall", HUT_SOLID_PANEL, HUT_SIDE_LEFT);
  if (room->right >= 0.0)
    add_obstacle (obstacles, section, wall[HUT_SIDE_RIGHT], "wall", HUT_SOLID_PANEL,
                  HUT_SIDE_RIGHT);
}

static void
add_shelf (GArray *obstacles,
           const Section *section,
           const HutAssembly *assembly)
{
  const double far_mm = HUT_SWING_FAR_MM, above_mm = assembly->design->room_mm.above;

  if (above_mm >= 0.0)
    add_obstacle (obstacles, section,
                  (HutBox3) { { -far_mm, -far_mm, above_mm }, { far_mm, far_mm, far_mm } },
                  "shelf", HUT_SOLID_PANEL, HUT_SIDE_TOP);
}

/* ---- search -------------------------------------------------------------------------------- */

/* How the pair comes nearest, when that is under @limit_mm. */
static gboolean
pair_find (const Mover *mover,
           const Obstacle *obstacle,
           double limit_mm,
           HutTurnNearest *nearest)
{
  const double gap_mm = fmax (obstacle->span.from_mm - mover->span.to_mm,
                              mover->span.from_mm - obstacle->span.to_mm);
  const double apart_mm = fmax (gap_mm, 0.0);

  if (apart_mm >= limit_mm)
    return FALSE;
  if (!hut_turn_find_nearest (&mover->turn, &obstacle->rect,
                              sqrt (limit_mm * limit_mm - apart_mm * apart_mm), nearest))
    return FALSE;
  if (gap_mm >= -HUT_TURN_TOUCH_MM)
    nearest->collides = FALSE;
  nearest->distance_mm = hypot (nearest->distance_mm, apart_mm);
  return TRUE;
}

static void
take_pair (HutApproach *approach,
           const Mover *mover,
           const Obstacle *obstacle,
           const HutTurnNearest *nearest)
{
  *approach = (HutApproach) {
    .exists = TRUE,
    .collides = nearest->collides,
    .distance_mm = nearest->distance_mm,
    .angle_rad = nearest->angle_rad,
    .solid = *mover->solid,
    .other = obstacle->name,
    .kind = obstacle->kind,
    .side = obstacle->side,
    .box = obstacle->box,
  };
}

/* A collision goes before any distance, an earlier one before a later one. */
static gboolean
is_worse (const HutTurnNearest *nearest,
          const HutApproach *than)
{
  if (!than->exists || nearest->collides != than->collides)
    return !than->exists || nearest->collides;
  return nearest->collides ? nearest->angle_rad < than->angle_rad
                           : nearest->distance_mm < than->distance_mm;
}

/* A distance of 0 is only beaten by a collision, so the search goes on a little above it. */
static double
limit_of (const HutApproach *approach,
          double most_mm)
{
  const double least_mm = HUT_GRID_MM;

  return approach->exists ? fmax (approach->distance_mm, least_mm) : most_mm;
}

/* Whether the pair is worse at some angle than it is with the lid closed. */
static gboolean
comes_nearer (const Mover *mover,
              const Obstacle *obstacle,
              const HutTurnNearest *nearest)
{
  if (nearest->collides)
    return hut_box3_overlap_mm (&mover->solid->box, &obstacle->box) <= HUT_TURN_TOUCH_MM;
  return hut_box3_distance_mm (&mover->solid->box, &obstacle->box) - nearest->distance_mm
         > NEARER_MM;
}

/* Pairs with a baffle of either side are a family of their own. */
static gboolean
is_of (HutAround around,
       const Mover *mover,
       const Obstacle *obstacle)
{
  const gboolean baffle
      = mover->solid->kind == HUT_SOLID_BAFFLE || obstacle->kind == HUT_SOLID_BAFFLE;

  return around == HUT_AROUND_BASE ? !baffle : around != HUT_AROUND_BAFFLE || baffle;
}

/* The worst of all pairs in @overall. In @moving (nullable) the worst of those that come nearer
 * than @moving_limit_mm while the lid moves. */
static void
find_worst (const GArray *movers,
            const GArray *obstacles,
            HutAround around,
            double moving_limit_mm,
            HutApproach *overall,
            HutApproach *moving)
{
  for (guint i = 0; i < movers->len; i++)
    for (guint k = 0; k < obstacles->len; k++)
      {
        const Mover *mover = &g_array_index (movers, Mover, i);
        const Obstacle *obstacle = &g_array_index (obstacles, Obstacle, k);
        double limit_mm = limit_of (overall, INFINITY);
        HutTurnNearest nearest;

        if (!is_of (around, mover, obstacle))
          continue;
        if (moving != NULL)
          limit_mm = fmax (limit_mm, limit_of (moving, moving_limit_mm));
        if (!pair_find (mover, obstacle, limit_mm, &nearest))
          continue;
        if (is_worse (&nearest, overall))
          take_pair (overall, mover, obstacle, &nearest);
        if (moving != NULL && nearest.distance_mm < moving_limit_mm
            && comes_nearer (mover, obstacle, &nearest) && is_worse (&nearest, moving))
          take_pair (moving, mover, obstacle, &nearest);
      }
}

static void
find_machine (const GArray *movers,
              const GArray *obstacles,
              double clearance_mm,
              HutApproach *approach)
{
  HutApproach moving = { .exists = FALSE };

  /* A collision counts even where no clearance is asked for. */
  find_worst (movers, obstacles, HUT_AROUND_MACHINE, fmax (clearance_mm, HUT_GRID_MM), approach,
              &moving);
  if (moving.exists)
    *approach = moving;
}

void
hut_swing_find (const HutAssembly *assembly,
                const HutPartSet *parts,
                HutApproach approaches[HUT_AROUND_COUNT])
{
  g_autoptr(GArray) movers = g_array_new (FALSE, FALSE, sizeof (Mover));
  g_autoptr(GArray) obstacles = g_array_new (FALSE, FALSE, sizeof (Obstacle));
  Section section;
  double end_rad;

  g_return_if_fail (assembly != NULL && parts != NULL && approaches != NULL);

  for (int i = 0; i < HUT_AROUND_COUNT; i++)
    approaches[i] = (HutApproach) { .exists = FALSE };
  if (!assembly->whole || !assembly->hinged)
    return;

  section = find_section (assembly);
  end_rad = assembly->design->shell.opening_angle_deg * RAD_PER_DEG;
  add_movers (movers, &section, assembly, assembly->solids, end_rad);
  add_movers (movers, &section, assembly, parts->solids, end_rad);

  add_bodies (obstacles, &section, assembly);
  find_machine (movers, obstacles, assembly->design->shell.swing_clearance_mm,
                &approaches[HUT_AROUND_MACHINE]);
  g_array_set_size (obstacles, 0);
  add_base (obstacles, &section, assembly, assembly->solids);
  add_base (obstacles, &section, assembly, parts->solids);
  find_worst (movers, obstacles, HUT_AROUND_BASE, 0.0, &approaches[HUT_AROUND_BASE], NULL);
  find_worst (movers, obstacles, HUT_AROUND_BAFFLE, 0.0, &approaches[HUT_AROUND_BAFFLE], NULL);
  g_array_set_size (obstacles, 0);
  add_walls (obstacles, &section, assembly);
  find_worst (movers, obstacles, HUT_AROUND_WALL, 0.0, &approaches[HUT_AROUND_WALL], NULL);
  g_array_set_size (obstacles, 0);
  add_shelf (obstacles, &section, assembly);
  find_worst (movers, obstacles, HUT_AROUND_SHELF, 0.0, &approaches[HUT_AROUND_SHELF], NULL);
}
