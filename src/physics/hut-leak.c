/* src/physics/hut-leak.c: where light gets out of the enclosure in a straight line.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-leak.h"
#include "physics/hut-ray.h"
#include "physics/hut-sight.h"

/* A ray ends this far outside of a panel, mm; own choice. */
#define OUT_MM 5.0
/* Rays per direction over what a hole shows of a source; own choice. */
#define RAYS 7u
/* Places per direction of a hole's outlines when something stands before it; own choice. */
#define BESIDE 5u
/* Gaps are looked for at the middle of a source and this share from its ends; own choice. */
#define END_RATIO 0.02

typedef struct
{
  const HutAssembly *assembly;
  GArray *blockers; /* HutBlocker */
  GArray *leaks;
  guint *met; /* index of the blocker that the last ray met */
} Search;

/* The box that a body sweeps, as far as it lies inside: one that pokes through a wall is a matter
 * for other checks. */
static HutBox3
source_box (const HutAssembly *assembly,
            const HutBody *body)
{
  const HutBox3 swept = hut_assembly_body_box (assembly, body), inside = assembly->inside;

  return (HutBox3) {
    { MAX (swept.min.x, inside.min.x), MAX (swept.min.y, inside.min.y),
      MAX (swept.min.z, inside.min.z) },
    { MIN (swept.max.x, inside.max.x), MIN (swept.max.y, inside.max.y),
      MIN (swept.max.z, inside.max.z) },
  };
}

/* ---- openings ------------------------------------------------------------------------------ */

/* A source as a panel sees it. */
typedef struct
{
  HutRect shadow;         /* mm, panel frame */
  double near_mm, far_mm; /* of its ends behind the inner face */
} SeenSource;

static SeenSource
seen_from (const HutPanel *panel,
           const HutBox3 *box)
{
  const HutVec3 off = hut_vec3_scale (panel->frame.origin, -1), w = panel->frame.w;
  const double a = hut_vec3_dot (hut_vec3_add (box->min, off), w);
  const double b = hut_vec3_dot (hut_vec3_add (box->max, off), w);

  return (SeenSource) { hut_frame3_shadow (&panel->frame, box), -MAX (a, b) - panel->thickness_mm,
                       -MIN (a, b) - panel->thickness_mm };
}

/* The ray in at @in and out at @out, from the source's far end. */
static gboolean
try_ray (const Search *self,
         const HutPanel *panel,
         HutPoint in,
         HutPoint out,
         const SeenSource *source,
         HutLeak *leak)
{
  const double t_mm = panel->thickness_mm;
  const HutPoint way = { (out.u - in.u) / t_mm, (out.v - in.v) / t_mm };
  const HutPoint far = hut_point_along (in, way, -source->far_mm);
  const HutRect s = source->shadow;
  /* Rounding may put a point of the shadow's border beside it. */
  const double room_mm = HUT_GRID_MM;
  const HutPoint to = hut_point_along (in, way, t_mm + OUT_MM);

  if (far.u < s.u0 - room_mm || far.u > s.u1 + room_mm || far.v < s.v0 - room_mm
      || far.v > s.v1 + room_mm)
    return FALSE;
  leak->from = hut_frame3_to_world (&panel->frame, far.u, far.v, -t_mm - source->far_mm);
  leak->to = hut_frame3_to_world (&panel->frame, to.u, to.v, OUT_MM);
  return hut_ray_passes (self->blockers, leak->from, leak->to, self->met);
}

static HutPoint
grid_point (const HutRect *rect,
            guint i,
            guint per_side)
{
  return (HutPoint) { rect->u0 + (rect->u1 - rect->u0) * (0.5 + i % per_side) / per_side,
                     rect->v0 + (rect->v1 - rect->v0) * (0.5 + i / per_side) / per_side };
}

/* Something stands before a part of the hole: rays from every part of its inner to every part of
 * its outer outline, to the far and to the near end of the source. */
static gboolean
find_beside (const Search *self,
             const HutPanel *panel,
             const HutPath *path,
             const SeenSource *source,
             HutLeak *leak)
{
  const HutRect bounds = hut_path_bounds (path);
  SeenSource near = *source;
  HutPoint points[BESIDE * BESIDE];
  guint count = 0;

  near.far_mm = MAX (source->near_mm, 0);
  for (guint i = 0; i < BESIDE * BESIDE; i++)
    {
      const HutPoint point = grid_point (&bounds, i, BESIDE);

      if (hut_path_contains (path, point))
        points[count++] = point;
    }
  for (guint i = 0; i < count; i++)
    for (guint j = 0; j < count; j++)
      if (try_ray (self, panel, points[i], points[j], source, leak)
          || try_ray (self, panel, points[i], points[j], &near, leak))
        return TRUE;
  return FALSE;
}

static gboolean
find_through_path (const Search *self,
                   const HutPanel *panel,
                   const HutPath *path,
                   const SeenSource *source,
                   HutLeak *leak)
{
  const HutRect bounds = hut_path_bounds (path);
  const HutPoint c = { 0.5 * (bounds.u0 + bounds.u1), 0.5 * (bounds.v0 + bounds.v1) };
  const double blown = 1 + 2 * source->far_mm / panel->thickness_mm;
  const HutRect s = source->shadow;
  /* The source, shrunk about the middle instead of blowing up the hole; cut to the hole's bounds.
   */
  const HutRect r = {
    MAX (c.u + (s.u0 - c.u) / blown, bounds.u0),
    MAX (c.v + (s.v0 - c.v) / blown, bounds.v0),
    MIN (c.u + (s.u1 - c.u) / blown, bounds.u1),
    MIN (c.v + (s.v1 - c.v) / blown, bounds.v1),
  };
  HutPoint in = { CLAMP (c.u, r.u0, r.u1), CLAMP (c.v, r.v0, r.v1) };
  gboolean reached = FALSE;

  if (!(source->far_mm > 0) || s.u1 < s.u0 || s.v1 < s.v0 || r.u1 < r.u0 || r.v1 < r.v0)
    return FALSE;
  for (guint i = 0; i <= RAYS * RAYS; i++)
    {
      if (hut_path_contains (path, in))
        {
          reached = TRUE;
          const HutPoint out = { 2 * c.u - in.u, 2 * c.v - in.v };

          if (try_ray (self, panel, in, out, source, leak))
            return TRUE;
        }
      in = (HutPoint) { r.u0 + (r.u1 - r.u0) * (i % RAYS) / (RAYS - 1),
                       r.v0 + (r.v1 - r.v0) * (double)(i / RAYS) / (RAYS - 1) };
    }
  return reached && find_beside (self, panel, path, source, leak);
}

static void
find_through_hole (const Search *self,
                   const HutPlacedHole *hole,
                   const HutBody *body)
{
  const HutPanel *panel = g_ptr_array_index (self->assembly->panels, hole->panel);
  const HutBox3 box = source_box (self->assembly, body);
  const SeenSource source = seen_from (panel, &box);
  HutLeak leak = { .body = body, .hole = hole, .side = panel->id.side };

  for (guint i = 0; i < hole->paths->len; i++)
    if (find_through_path (self, panel, hole->paths->pdata[i], &source, &leak))
      {
        g_array_append_val (self->leaks, leak);
        return;
      }
}

static gboolean
is_open (const HutAssembly *assembly,
         const HutPlacedHole *hole)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, hole->panel);
  const HutOpening *opening;

  if (hole->source != HUT_HOLE_OPENING || !hole->cut || panel->id.side == HUT_SIDE_BOTTOM)
    return FALSE;
  opening = hut_design_get_opening (assembly->design, hole->item);
  return opening != NULL && opening->serves == NULL;
}

/* ---- gaps ---------------------------------------------------------------------------------- */

/* A sheet of paper round the section, so to say, but for the wanted side. @low: the side of the
 * smaller coordinate. */
static void
add_curtains (GArray *walls,
              const HutRect *outer,
              gboolean along_u,
              gboolean low)
{
  const double apart_mm = 1.0, wide_mm = 1.0, far_mm = outer->u1 + outer->v1;
  const HutRect all[] = {
    { outer->u0 - apart_mm - wide_mm, outer->v0 - far_mm, outer->u0 - apart_mm,
      outer->v1 + far_mm },
    { outer->u1 + apart_mm, outer->v0 - far_mm, outer->u1 + apart_mm + wide_mm,
      outer->v1 + far_mm },
    { outer->u0 - apart_mm, outer->v0 - apart_mm - wide_mm, outer->u1 + apart_mm,
      outer->v0 - apart_mm },
    { outer->u0 - apart_mm, outer->v1 + apart_mm, outer->u1 + apart_mm,
      outer->v1 + apart_mm + wide_mm },
  };
  const guint open = (along_u ? 0 : 2) + (low ? 0 : 1);

  for (guint i = 0; i < G_N_ELEMENTS (all); i++)
    if (i != open)
      g_array_append_val (walls, all[i]);
}

static HutPoint
leaves_at (const HutRect *outer,
           const HutSightLine *line)
{
  const HutPoint d = line->direction;
  const double u_mm = d.u > 0   ? (outer->u1 + OUT_MM - line->from.u) / d.u
                      : d.u < 0 ? (outer->u0 - OUT_MM - line->from.u) / d.u
                                : INFINITY;
  const double v_mm = d.v > 0   ? (outer->v1 + OUT_MM - line->from.v) / d.v
                      : d.v < 0 ? (outer->v0 - OUT_MM - line->from.v) / d.v
                                : INFINITY;

  return hut_point_along (line->from, d, MIN (u_mm, v_mm));
}

/* @walls: of the section, with all holes closed. */
static gboolean
find_gap_at (const Search *self,
             HutAxis axis,
             double at_mm,
             const GArray *walls,
             HutSide side,
             HutLeak *leak)
{
  const HutBox3 body = source_box (self->assembly, leak->body);
  const HutBox3 shell = { { 0, 0, 0 }, self->assembly->outer_mm };
  const HutRect source = hut_section_box (axis, at_mm, &body);
  const HutRect outer = hut_section_box (axis, at_mm, &shell);
  const gboolean along_u = side == HUT_SIDE_LEFT || side == HUT_SIDE_RIGHT
                           || (axis == HUT_AXIS_X && side != HUT_SIDE_TOP);
  const gboolean low = side == HUT_SIDE_LEFT || side == HUT_SIDE_FRONT;
  g_autoptr(GArray) all = g_array_new (FALSE, FALSE, sizeof (HutRect));
  HutSightLine line;
  HutSightSection section;

  if (outer.u1 < outer.u0 || source.u1 < source.u0)
    return FALSE;
  g_array_append_vals (all, walls->data, walls->len);
  add_curtains (all, &outer, along_u, low);
  section = (HutSightSection) { (const HutRect *)(gpointer)all->data, all->len, &source, 1 };
  if (!hut_sight_find (&section, &line))
    return FALSE;
  leak->side = side;
  leak->from = hut_section_world (axis, at_mm, line.from);
  leak->to = hut_section_world (axis, at_mm, leaves_at (&outer, &line));
  return TRUE;
}

/* FALSE: on no side, which is mostly so. */
static gboolean
gets_out (HutAxis axis,
          double at_mm,
          const GArray *walls,
          const HutBox3 *body)
{
  const HutRect source = hut_section_box (axis, at_mm, body);
  const HutSightSection section
      = { (const HutRect *)(gpointer)walls->data, walls->len, &source, 1 };
  HutSightLine line;

  return hut_sight_find (&section, &line);
}

/* Sides that a section across an axis shows. */
static gboolean
shows_side (HutAxis axis,
            HutSide side)
{
  switch (side)
    {
    case HUT_SIDE_FRONT:
    case HUT_SIDE_BACK:
      return axis != HUT_AXIS_Y;
    case HUT_SIDE_LEFT:
    case HUT_SIDE_RIGHT:
      return axis != HUT_AXIS_X;
    case HUT_SIDE_TOP:
      return axis != HUT_AXIS_Z;
    default:
      return FALSE;
    }
}

static void
find_gaps (const Search *self,
           const HutBody *body)
{
  static const double shares[] = { 0.5, END_RATIO, 1 - END_RATIO };
  const HutBox3 box = source_box (self->assembly, body);
  HutLeak leaks[HUT_SIDE_COUNT];
  gboolean found[HUT_SIDE_COUNT] = { FALSE };

  if (hut_box3_is_empty (&box))
    return;
  for (HutAxis axis = HUT_AXIS_X; axis <= HUT_AXIS_Z; axis++)
    for (guint i = 0; i < G_N_ELEMENTS (shares); i++)
      {
        const double lo_mm = hut_axis_of_mm (axis, box.min), hi_mm = hut_axis_of_mm (axis, box.max);
        const double at_mm = lo_mm + shares[i] * (hi_mm - lo_mm);
        g_autoptr(GArray) walls
            = hut_section_walls (self->assembly, self->blockers, axis, at_mm, FALSE);

        if (!gets_out (axis, at_mm, walls, &box))
          continue;
        for (HutSide side = 0; side < HUT_SIDE_COUNT; side++)
          if (!found[side] && shows_side (axis, side))
            {
              leaks[side] = (HutLeak) { .body = body };
              found[side] = find_gap_at (self, axis, at_mm, walls, side, &leaks[side]);
            }
      }
  for (HutSide side = 0; side < HUT_SIDE_COUNT; side++)
    if (found[side])
      g_array_append_val (self->leaks, leaks[side]);
}

/* ---- all ----------------------------------------------------------------------------------- */

/* (transfer full) (element-type HutBody) */
static GPtrArray *
sources_of (const HutMachine *machine)
{
  GPtrArray *sources = g_ptr_array_new ();

  for (guint pass = 0; pass < 2 && sources->len == 0; pass++)
    for (guint i = 0; i < machine->bodies->len; i++)
      {
        HutBody *body = g_ptr_array_index (machine->bodies, i);

        if (body->kind == (pass == 0 ? HUT_BODY_MOVING : HUT_BODY_STATIC))
          g_ptr_array_add (sources, body);
      }
  return sources;
}

GArray *
hut_leaks_find (const HutAssembly *assembly,
                const HutPartSet *parts)
{
  g_return_val_if_fail (assembly != NULL && parts != NULL, NULL);

  g_autoptr(GArray) blockers = hut_blockers_new (assembly, parts);
  guint met = 0;
  const Search self
      = { assembly, blockers, g_array_new (FALSE, FALSE, sizeof (HutLeak)), &met };
  g_autoptr(GPtrArray) sources = sources_of (&assembly->design->machine);

  if (!assembly->whole)
    return self.leaks;
  for (guint i = 0; i < assembly->holes->len; i++)
    if (is_open (assembly, assembly->holes->pdata[i]))
      for (guint k = 0; k < sources->len; k++)
        find_through_hole (&self, assembly->holes->pdata[i], sources->pdata[k]);
  for (guint k = 0; k < sources->len; k++)
    find_gaps (&self, sources->pdata[k]);
  return self.leaks;
}
