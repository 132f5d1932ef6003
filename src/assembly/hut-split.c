/* src/assembly/hut-split.c: panels and plates parted to the bed.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is too large for its sheet goes three ways: a job says what the seams must mind (openings,
 * edge joints, lines of neighbours), the plan chooses the lines, and the region is cleaved along
 * one line after the other, all vertical ones first. Panels come before plates, and a panel sees
 * only the seams of those before it: so the stagger does not depend on a second pass. A panel whose
 * cleaving fails on the way stays whole, its splices and troubles are taken back: nothing is ever
 * half parted, and pieces always partition their panel. */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-part-private.h"
#include "assembly/hut-seam-plan.h"
#include "assembly/hut-shell-layout.h"
#include "assembly/hut-strap.h"
#include <math.h>

/* Wanted stagger to the neighbour's seam, in widths of splice fingers: DESIGN 7. */
#define HUT_STAGGER_FINGERS 2.0

/* What a plate is, for its pieces, splices and troubles. */
typedef struct
{
  HutPartSet *set;
  HutPartKind kind;
  guint panel;
  const char *item;
  const char *id;
  const HutStock *stock;
  double depth_mm;
  gboolean bought;
} Source;

static void
add_trouble (const Source *source,
             HutSplitTroubleKind kind,
             HutPoint at,
             double is_mm,
             double must_mm)
{
  const HutSplitTrouble trouble = { kind, source->panel, source->item, at, is_mm, must_mm };

  g_array_append_val (source->set->troubles, trouble);
}

static void
add_part (const Source *source,
          const HutRegion *region,
          guint number)
{
  g_autofree char *id
      = number > 0 ? g_strdup_printf ("%s-%u", source->id, number) : g_strdup (source->id);
  HutPart *part = hut_part_new (source->kind, id, source->panel, source->stock);

  part->item = source->item;
  part->depth_mm = source->depth_mm;
  part->bought = source->bought;
  part->region = hut_region_copy (region);
  g_ptr_array_add (source->set->parts, part);
}

/* ---- the job: what a plate's seams must mind ------------------------------------------------- */

static HutSeamJob
job_new (const HutAssembly *assembly,
         const HutRegion *region,
         const HutStock *stock,
         double thickness_mm)
{
  const HutDesign *design = assembly->design;
  HutSeamJob job = {
    .region = region,
    .rect = hut_region_bounds (region),
    .obstacles = g_array_new (FALSE, FALSE, sizeof (HutObstacle)),
    .alignments = g_array_new (FALSE, FALSE, sizeof (HutAlignment)),
    .web_mm = stock->smallest_web_mm,
    .finger_mm = design->joints.splice_width_ratio * thickness_mm,
    .reach_mm = hut_snap_mm (design->joints.splice_length_ratio * thickness_mm / 2.0),
    .may_turn = TRUE,
  };

  hut_cutter_room (&design->cutter, stock, &job.room_u_mm, &job.room_v_mm);
  job.stagger_mm = HUT_STAGGER_FINGERS * MAX (job.finger_mm, 2.0 * job.web_mm);
  return job;
}

static void
job_clear (HutSeamJob *job)
{
  g_array_unref (job->obstacles);
  g_array_unref (job->alignments);
}

/* Each by itself, from number @first on: a line may run between the screws of a frame. */
static void
add_paths (HutSeamJob *job,
           const GPtrArray *paths,
           guint first)
{
  for (guint i = first; i < paths->len; i++)
    {
      const HutObstacle obstacle = { hut_path_bounds (g_ptr_array_index (paths, i)), FALSE, 0.0 };

      g_array_append_val (job->obstacles, obstacle);
    }
}

static void
add_holes (HutSeamJob *job,
           const HutAssembly *assembly,
           guint panel)
{
  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);
      const HutWindow *window = hole->source == HUT_HOLE_WINDOW
                                    ? hut_design_get_window (assembly->design, hole->item)
                                    : NULL;
      const HutObstacle obstacle
          = { hole->bounds, window != NULL, window != NULL ? window->radius_mm : 0.0 };

      if (hole->panel != panel || !hole->cut || hole->source == HUT_HOLE_HARDWARE)
        continue;
      if (hole->source == HUT_HOLE_SCREWS)
        add_paths (job, hole->paths, 0);
      else
        g_array_append_val (job->obstacles, obstacle);
    }
  for (guint i = 0; i < assembly->hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (assembly->hardware, i);
      HutObstacle obstacle = { placed->footprint, FALSE, 0.0 };

      if (placed->bored)
        {
          const double rim_mm = placed->need.bit_mm / 2.0;

          obstacle.rect.u0 = MIN (obstacle.rect.u0, placed->pocket_at.u - rim_mm);
          obstacle.rect.v0 = MIN (obstacle.rect.v0, placed->pocket_at.v - rim_mm);
          obstacle.rect.u1 = MAX (obstacle.rect.u1, placed->pocket_at.u + rim_mm);
          obstacle.rect.v1 = MAX (obstacle.rect.v1, placed->pocket_at.v + rim_mm);
        }
      if (placed->panel == panel)
        g_array_append_val (job->obstacles, obstacle);
    }
}

static double
vec_axis (HutVec3 v,
          HutVec3 axis)
{
  return fabs (hut_vec3_dot (v, axis));
}

/* A line of a panel meets the neighbour's line where both cross their common edge. @other's line is
 * across that edge when it runs along the direction that leaves the edge. */
static void
add_neighbour_seams (HutSeamJob *job,
                     const HutAssembly *assembly,
                     const HutPartSet *set,
                     guint panel)
{
  const HutPanel *own = g_ptr_array_index (assembly->panels, panel);

  for (guint i = 0; i < set->splices->len; i++)
    {
      const HutSplice *splice = &g_array_index (set->splices, HutSplice, i);
      const HutPanel *other = g_ptr_array_index (assembly->panels, splice->panel);
      const HutVec3 across = splice->vertical ? other->frame.u : other->frame.v;
      const HutVec3 at = hut_frame3_to_world (&other->frame, splice->vertical ? splice->at_mm : 0.0,
                                              splice->vertical ? 0.0 : splice->at_mm, 0.0);

      if (splice->of != HUT_PART_PANEL || splice->panel == panel
          || other->id.shell != own->id.shell)
        continue;
      for (int edge = 0; edge < HUT_EDGE_COUNT; edge++)
        {
          const gboolean level = edge == HUT_EDGE_BOTTOM || edge == HUT_EDGE_TOP;
          const HutVec3 along = level ? own->frame.u : own->frame.v;
          const HutVec3 from_origin = hut_vec3_add (at, hut_vec3_scale (own->frame.origin, -1.0));
          const HutAlignment alignment = { level, hut_vec3_dot (from_origin, along) };

          if (own->edges[edge].kind != HUT_JOINT_NONE
              && hut_panel_id_equal (own->edges[edge].other, other->id)
              && vec_axis (across, along) > 0.5)
            g_array_append_val (job->alignments, alignment);
        }
    }
}

/* ---- cutting --------------------------------------------------------------------------------- */

static void
record_splices (const Source *source,
                const HutSeamJob *job,
                const HutSeam *seam,
                const GArray *intervals)
{
  for (guint i = 0; i < intervals->len; i++)
    {
      const HutSolidInterval *interval = &g_array_index (intervals, HutSolidInterval, i);
      const double middle_mm = (interval->from_mm + interval->to_mm) / 2.0;
      const HutPoint at = seam->vertical ? (HutPoint) { seam->at_mm, middle_mm }
                                         : (HutPoint) { middle_mm, seam->at_mm };
      HutSplice splice = {
        .panel = source->panel,
        .of = source->kind,
        .item = source->item,
        .vertical = seam->vertical,
        .at_mm = seam->at_mm,
        .from_mm = interval->from_mm,
        .to_mm = interval->to_mm,
      };

      for (guint z = 0; z < seam->zones->len; z++)
        {
          const HutFingerZone *zone = &g_array_index (seam->zones, HutFingerZone, z);

          if (zone->from_mm > interval->from_mm && zone->to_mm < interval->to_mm)
            splice.finger_count += zone->count;
        }
      splice.reach_mm = splice.finger_count > 0 ? seam->reach_mm : 0.0;
      g_array_append_val (source->set->splices, splice);
      if (splice.finger_count == 0 && source->kind == HUT_PART_PANEL)
        add_trouble (source, HUT_SPLIT_BUTT, at, interval->to_mm - interval->from_mm,
                     hut_seam_plan_shortest_mm (job));
    }
}

/* Parts every piece that the line runs through. */
static gboolean
cut_line (const Source *source,
          const HutSeamJob *job,
          GPtrArray **pieces,
          gboolean vertical,
          double at_mm,
          const GArray *crossings,
          GError **error)
{
  g_autoptr(GPtrArray) result = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_region_free);

  for (guint i = 0; i < (*pieces)->len; i++)
    {
      const HutRegion *piece = g_ptr_array_index (*pieces, i);
      g_autoptr(GArray) intervals = hut_cleave_intervals (piece, vertical, at_mm, error);
      g_autoptr(GArray) zones = NULL;
      g_autoptr(GPtrArray) halves = NULL;
      HutSeam seam = { vertical, at_mm, job->reach_mm, NULL };

      if (intervals == NULL)
        return FALSE;
      if (intervals->len == 0)
        {
          g_ptr_array_add (result, hut_region_copy (piece));
          continue;
        }
      seam.zones = zones = hut_seam_plan_zones (job, vertical, intervals, crossings);
      halves = hut_region_cleave (piece, &seam, error);
      if (halves == NULL)
        return FALSE;
      record_splices (source, job, &seam, intervals);
      g_ptr_array_extend_and_steal (result, g_steal_pointer (&halves));
    }
  g_ptr_array_unref (*pieces);
  *pieces = g_steal_pointer (&result);
  return TRUE;
}

static gboolean
cut_lines (const Source *source,
           const HutSeamJob *job,
           const HutSeamPlan *plan,
           GPtrArray **pieces,
           GError **error)
{
  for (guint i = 0; i < plan->vertical->len; i++)
    if (!cut_line (source, job, pieces, TRUE, g_array_index (plan->vertical, double, i),
                   plan->horizontal, error))
      return FALSE;
  for (guint i = 0; i < plan->horizontal->len; i++)
    if (!cut_line (source, job, pieces, FALSE, g_array_index (plan->horizontal, double, i),
                   plan->vertical, error))
      return FALSE;
  return TRUE;
}

static void
note_alignments (const Source *source,
                 const HutSeamJob *job,
                 gboolean vertical,
                 const GArray *lines)
{
  for (guint i = 0; i < lines->len; i++)
    {
      const double at_mm = g_array_index (lines, double, i);
      const double missing_ratio = hut_seam_plan_misaligned_ratio (job, vertical, at_mm);
      const HutPoint at = vertical ? (HutPoint) { at_mm, (job->rect.v0 + job->rect.v1) / 2.0 }
                                   : (HutPoint) { (job->rect.u0 + job->rect.u1) / 2.0, at_mm };

      if (missing_ratio > 0.0 && source->kind == HUT_PART_PANEL)
        add_trouble (source, HUT_SPLIT_ALIGNED, at, job->stagger_mm * (1.0 - missing_ratio),
                     job->stagger_mm);
    }
}

/* A plate that no plan parts stays whole: the bed check will block. */
static void
add_whole (const Source *source,
           const HutSeamJob *job,
           double shortfall_mm)
{
  const HutPoint middle
      = { (job->rect.u0 + job->rect.u1) / 2.0, (job->rect.v0 + job->rect.v1) / 2.0 };
  const double room_mm = MAX (job->room_u_mm, job->room_v_mm);

  add_trouble (source, HUT_SPLIT_NO_PLACE, middle, room_mm + shortfall_mm, room_mm);
  add_part (source, job->region, 0);
}

static void
split (const Source *source,
       const HutSeamJob *job)
{
  const guint splices_before = source->set->splices->len,
              troubles_before = source->set->troubles->len;
  g_autoptr(GPtrArray) pieces = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_region_free);
  g_autoptr(GError) error = NULL;
  HutSeamPlan plan;

  if (!hut_seam_plan_find (job, &plan))
    add_whole (source, job, plan.shortfall_mm);
  else
    {
      g_ptr_array_add (pieces, hut_region_copy (job->region));
      note_alignments (source, job, TRUE, plan.vertical);
      note_alignments (source, job, FALSE, plan.horizontal);
      if (cut_lines (source, job, &plan, &pieces, &error))
        for (guint i = 0; i < pieces->len; i++)
          add_part (source, g_ptr_array_index (pieces, i), pieces->len > 1 ? i + 1 : 0);
      else
        {
          /* A line met an arc or a corner after all: nothing is half cut, the finding names the
           * panel. */
          g_array_set_size (source->set->splices, splices_before);
          g_array_set_size (source->set->troubles, troubles_before);
          add_whole (source, job, MAX (job->rect.u1 - job->rect.u0, job->rect.v1 - job->rect.v0)
                                      - MAX (job->room_u_mm, job->room_v_mm));
        }
    }
  hut_seam_plan_clear (&plan);
}

static gboolean
fits_whole (const HutAssembly *assembly,
            const HutRegion *region,
            const HutStock *stock)
{
  const HutRect bounds = hut_region_bounds (region);

  return hut_cutter_takes_stock (&assembly->design->cutter, stock, bounds.u1 - bounds.u0,
                                 bounds.v1 - bounds.v0);
}

void
hut_split_panel (const HutAssembly *assembly,
                 guint panel,
                 HutPartSet *set)
{
  const HutPanel *plate = g_ptr_array_index (assembly->panels, panel);
  const Source source
      = { set, HUT_PART_PANEL, panel, NULL, hut_panel_id_to_string (plate->id), plate->stock,
          0.0, plate->bought };
  HutSeamJob job;

  if (plate->bought || fits_whole (assembly, plate->region, plate->stock))
    {
      add_part (&source, plate->region, 0);
      return;
    }
  job = job_new (assembly, plate->region, plate->stock, plate->thickness_mm);
  job.rect = (HutRect) { 0, 0, plate->width_mm, plate->height_mm };
  if (assembly->design->joints.straps)
    job.strap_half_mm = hut_strap_width_mm (assembly->design, plate) / 2.0;
  for (int edge = 0; edge < HUT_EDGE_COUNT; edge++)
    {
      job.depth_mm[edge] = plate->edges[edge].depth_mm;
      job.borders[edge] = plate->edges[edge].cuts_mm;
    }
  add_holes (&job, assembly, panel);
  add_neighbour_seams (&job, assembly, set, panel);
  split (&source, &job);
  job_clear (&job);
}

static HutPartKind
plate_kind (const HutPlate *plate)
{
  switch (plate->kind)
    {
    case HUT_SOLID_GLAZING:
      return HUT_PART_GLAZING;
    case HUT_SOLID_FACE_PLATE:
      return HUT_PART_FACE_PLATE;
    default:
      return HUT_PART_FRAME;
    }
}

static const char *
plate_stem (HutPartKind kind)
{
  switch (kind)
    {
    case HUT_PART_GLAZING:
      return "glazing";
    case HUT_PART_FACE_PLATE:
      return "face-plate";
    default:
      return "frame";
    }
}

void
hut_split_plate (const HutAssembly *assembly,
                 guint plate_index,
                 HutPartSet *set)
{
  const HutPlate *plate = g_ptr_array_index (assembly->plates, plate_index);
  const gboolean frame = plate->kind == HUT_SOLID_FRAME;
  const HutPartKind kind = plate_kind (plate);
  g_autofree char *id = g_strdup_printf ("%s-%s", plate_stem (kind), plate->item);
  const Source source = {
    set,
    kind,
    plate->panel,
    plate->item,
    id,
    plate->stock,
    plate->depth0_mm,
    plate->bought,
  };
  const HutRect bounds = hut_region_bounds (plate->region);
  HutSeamJob job;

  if (plate->bought || !frame || fits_whole (assembly, plate->region, plate->stock))
    {
      if (!frame && !plate->bought && !fits_whole (assembly, plate->region, plate->stock))
        {
          double room_width_mm, room_depth_mm;

          hut_cutter_room (&assembly->design->cutter, plate->stock, &room_width_mm, &room_depth_mm);
          add_trouble (&source, HUT_SPLIT_CANNOT,
                       (HutPoint) { (bounds.u0 + bounds.u1) / 2.0, (bounds.v0 + bounds.v1) / 2.0 },
                       MAX (bounds.u1 - bounds.u0, bounds.v1 - bounds.v0),
                       MAX (room_width_mm, room_depth_mm));
        }
      add_part (&source, plate->region, 0);
      return;
    }
  job = job_new (assembly, plate->region, plate->stock, plate->depth1_mm - plate->depth0_mm);
  {
    const HutObstacle opening = { hut_path_bounds (g_ptr_array_index (plate->region->holes, 0)),
                                  TRUE, plate->window->radius_mm };

    g_array_append_val (job.obstacles, opening);
    add_paths (&job, plate->region->holes, 1);
  }
  for (guint i = 0; i < set->splices->len; i++)
    {
      const HutSplice *splice = &g_array_index (set->splices, HutSplice, i);
      const HutAlignment alignment = { splice->vertical, splice->at_mm };

      if (splice->panel == plate->panel && splice->of == HUT_PART_PANEL)
        g_array_append_val (job.alignments, alignment);
    }
  split (&source, &job);
  job_clear (&job);
}
