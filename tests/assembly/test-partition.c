/* tests/assembly/test-partition.c: every bit of the shell belongs to exactly one part, for any
 * design. SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Properties over random designs, all looked at once; the seed is told on failure. HUT_SEEDS=N runs
 * N designs instead of the default, HUT_FIRST_SEED=S begins there. */
#include "config.h"
#include "assembly/hut-part.h"
#include "assembly/hut-shell-layout.h"
#include "geom/hut-geos.h"
#include "geom/hut-width.h"
#include "hut-assert.h"
#include "hut-random-design.h"
#include "hut-random.h"

#define SEEDS_DEFAULT 1500
#define VOLUME_TOLERANCE_RATIO 1e-9
#define AREA_TOLERANCE_MM2 1e-6

typedef struct
{
  HutDesign *design;
  HutAssembly *assembly;
  HutPartSet *parts;
  guint64 seed;
} Case;

/* Designs of every flavour in turn. */
static Case
case_new (guint64 seed)
{
  static const HutRandomFlags flavours[] = {
    HUT_RANDOM_PLAIN,
    HUT_RANDOM_OPENINGS | HUT_RANDOM_WINDOWS | HUT_RANDOM_HARDWARE,
    HUT_RANDOM_OPENINGS | HUT_RANDOM_WINDOWS | HUT_RANDOM_SMALL_BED,
    HUT_RANDOM_SMALL_BED | HUT_RANDOM_HARDWARE,
    HUT_RANDOM_SMALL_BED,
    HUT_RANDOM_OPENINGS | HUT_RANDOM_WINDOWS | HUT_RANDOM_HARDWARE | HUT_RANDOM_WILD,
  };
  Case self = { .seed = seed };

  self.design = hut_random_design_with (seed, flavours[seed % G_N_ELEMENTS (flavours)]);
  self.assembly = hut_assembly_new (self.design);
  self.parts = hut_part_set_new (self.assembly);
  return self;
}

static void
case_clear (Case *self)
{
  hut_part_set_free (self->parts);
  hut_assembly_free (self->assembly);
  hut_design_free (self->design);
}

typedef enum
{
  OUTLINES,
  SHELLS,
  PIECES,
  BED,
  WEBS,
  PROPERTY_COUNT
} Property;

/* What a run over all designs has found: per property the first failure, or NULL. */
typedef struct
{
  char *failure[PROPERTY_COUNT];
  guint64 designs, whole;
  guint parts, given_up;
} Findings;

static Findings findings;

G_GNUC_PRINTF (3, 4)
static void
report (Property property, const Case *one, const char *format, ...)
{
  g_autofree char *what = NULL;
  va_list arguments;

  if (findings.failure[property] != NULL)
    return;
  va_start (arguments, format);
  what = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  findings.failure[property] = g_strdup_printf ("seed %" G_GUINT64_FORMAT ": %s", one->seed, what);
}

/* ---- outlines ---------------------------------------------------------------------------------
 */

static void
check_outlines (const Case *one)
{
  g_autoptr (GError) error = NULL;

  for (guint i = 0; i < one->assembly->panels->len; i++)
    {
      const HutPanel *panel = g_ptr_array_index (one->assembly->panels, i);

      if (!hut_geos_is_valid (panel->region, &error)
          || !hut_geos_path_is_simple (panel->region->outer))
        report (OUTLINES, one, "%s: %s", hut_panel_id_to_string (panel->id),
                error != NULL ? error->message : "not simple");
    }
  for (guint i = 0; i < one->parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (one->parts->parts, i);

      if (!hut_geos_is_valid (part->region, &error)
          || !hut_geos_path_is_simple (part->region->outer))
        report (OUTLINES, one, "%s: %s", part->id, error != NULL ? error->message : "not simple");
      for (guint v = 0; v < hut_path_get_count (part->region->outer); v++)
        {
          const HutPoint p = hut_path_get (part->region->outer, v)->p;

          if (p.u != hut_snap_mm (p.u) || p.v != hut_snap_mm (p.v))
            report (OUTLINES, one, "%s: corner %u (%.17g, %.17g) is off the grid", part->id, v, p.u,
                    p.v);
        }
    }
}

/* ---- panels partition the shell -----------------------------------------------------------------
 */

static double
outline_volume_mm3 (const HutPanel *panel)
{
  return hut_path_area_mm2 (panel->region->outer) * panel->thickness_mm;
}

/* Union of the slabs of a shell: its outer box less the core that no slab reaches. */
static double
slabs_volume_mm3 (const HutShellBox *box)
{
  HutBox3 core = box->box;

  core.min.x += box->present[HUT_SIDE_LEFT] ? box->thickness_mm[HUT_SIDE_LEFT] : 0.0;
  core.max.x -= box->present[HUT_SIDE_RIGHT] ? box->thickness_mm[HUT_SIDE_RIGHT] : 0.0;
  core.min.y += box->present[HUT_SIDE_FRONT] ? box->thickness_mm[HUT_SIDE_FRONT] : 0.0;
  core.max.y -= box->present[HUT_SIDE_BACK] ? box->thickness_mm[HUT_SIDE_BACK] : 0.0;
  core.min.z += box->present[HUT_SIDE_BOTTOM] ? box->thickness_mm[HUT_SIDE_BOTTOM] : 0.0;
  core.max.z -= box->present[HUT_SIDE_TOP] ? box->thickness_mm[HUT_SIDE_TOP] : 0.0;
  return hut_box3_volume_mm3 (&box->box) - hut_box3_volume_mm3 (&core);
}

/* Whether a panel's own material is at a world point. */
static gboolean
panel_holds (const HutPanel *panel, HutVec3 p)
{
  const HutVec3 r = hut_vec3_add (p, hut_vec3_scale (panel->frame.origin, -1.0));
  const double depth_mm = -hut_vec3_dot (r, panel->frame.w);

  return depth_mm > 0.0 && depth_mm < panel->thickness_mm
         && hut_path_contains (
             panel->region->outer,
             (HutPoint){ hut_vec3_dot (r, panel->frame.u), hut_vec3_dot (r, panel->frame.v) });
}

/* A random point of the slab of one of the shell's panels. */
static HutVec3
random_slab_point (HutRandom *random, const HutPanel *panel)
{
  const double u_mm = hut_random_between (random, 0.0, panel->width_mm);
  const double v_mm = hut_random_between (random, 0.0, panel->height_mm);
  /* Half of the points are put near an edge, where the joints are. */
  const double edge_u_mm = hut_random_between (random, 0.0, 20.0),
               edge_v_mm = hut_random_between (random, 0.0, 20.0);
  const gboolean near_u = hut_random_between (random, 0.0, 1.0) < 0.5,
                 near_v = hut_random_between (random, 0.0, 1.0) < 0.5;

  return hut_frame3_to_world (&panel->frame, near_u ? MIN (edge_u_mm, panel->width_mm) : u_mm,
                              near_v ? MIN (edge_v_mm, panel->height_mm) : v_mm,
                              -hut_random_between (random, 0.0, panel->thickness_mm));
}

static void
check_points (const Case *one, const HutShellBox *box)
{
  HutRandom random;

  hut_random_init (&random, one->seed);
  for (guint i = 0; i < one->assembly->panels->len; i++)
    {
      const HutPanel *panel = g_ptr_array_index (one->assembly->panels, i);

      if (panel->id.shell != box->shell || !box->present[panel->id.side])
        continue;
      for (int point = 0; point < 12; point++)
        {
          const HutVec3 p = random_slab_point (&random, panel);
          guint owners = 0;

          for (guint j = 0; j < one->assembly->panels->len; j++)
            owners += panel_holds (g_ptr_array_index (one->assembly->panels, j), p);
          if (owners != 1)
            report (SHELLS, one, "(%.6f, %.6f, %.6f) near %s belongs to %u panels", p.x, p.y, p.z,
                    hut_panel_id_to_string (panel->id), owners);
        }
    }
}

static void
check_shells (const Case *one)
{
  const HutIntrusion intrusion = hut_fit_intrusion (one->design);
  const HutFit fit = hut_fit_find (one->design, &intrusion);
  HutShellBox boxes[HUT_SHELL_COUNT];

  hut_shell_layout_boxes (one->design, &fit, boxes);
  for (int shell = 0; shell < HUT_SHELL_COUNT; shell++)
    {
      double sum_mm3 = 0.0;
      const double shell_mm3 = slabs_volume_mm3 (&boxes[shell]);

      for (guint i = 0; i < one->assembly->panels->len; i++)
        {
          const HutPanel *panel = g_ptr_array_index (one->assembly->panels, i);

          if (panel->id.shell == boxes[shell].shell && boxes[shell].present[panel->id.side])
            sum_mm3 += outline_volume_mm3 (panel);
        }
      if (!(fabs (sum_mm3 - shell_mm3) <= VOLUME_TOLERANCE_RATIO * shell_mm3))
        report (SHELLS, one, "shell %d: panels %.9f mm3, shell %.9f mm3", shell, sum_mm3,
                shell_mm3);
      check_points (one, &boxes[shell]);
    }
}

/* ---- parts partition their panel
 * ----------------------------------------------------------------- */

static gboolean
is_piece_of (const HutPart *part, HutPartKind kind, guint panel, const char *item)
{
  return part->kind == kind && part->panel == panel && g_strcmp0 (part->item, item) == 0;
}

static gboolean
are_apart (const HutRegion *a, const HutRegion *b)
{
  const HutRect p = hut_region_bounds (a), q = hut_region_bounds (b);

  return p.u1 <= q.u0 || q.u1 <= p.u0 || p.v1 <= q.v0 || q.v1 <= p.v0;
}

static void
check_pieces_of (const Case *one,
                 const HutRegion *whole,
                 HutPartKind kind,
                 guint panel,
                 const char *item)
{
  const GPtrArray *parts = one->parts->parts;
  double sum_mm2 = 0.0;

  for (guint i = 0; i < parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (parts, i);
      double outside_mm2;

      if (!is_piece_of (part, kind, panel, item))
        continue;
      sum_mm2 += hut_region_area_mm2 (part->region);
      outside_mm2 = hut_geos_op_area_mm2 (part->region, whole, HUT_GEOS_DIFFERENCE, NULL);
      if (!(outside_mm2 >= 0.0 && outside_mm2 <= AREA_TOLERANCE_MM2))
        report (PIECES, one, "%s: %.9f mm2 of it lie outside", part->id, outside_mm2);
      for (guint j = i + 1; j < parts->len; j++)
        {
          const HutPart *other = g_ptr_array_index (parts, j);
          double shared_mm2;

          if (!is_piece_of (other, kind, panel, item) || are_apart (part->region, other->region))
            continue;
          shared_mm2
              = hut_geos_op_area_mm2 (part->region, other->region, HUT_GEOS_INTERSECTION, NULL);
          if (!(shared_mm2 >= 0.0 && shared_mm2 <= AREA_TOLERANCE_MM2))
            report (PIECES, one, "%s and %s share %.9f mm2", part->id, other->id, shared_mm2);
        }
    }
  if (!(fabs (sum_mm2 - hut_region_area_mm2 (whole))
        <= VOLUME_TOLERANCE_RATIO * hut_region_area_mm2 (whole)))
    report (PIECES, one, "pieces %.9f mm2, whole %.9f mm2", sum_mm2, hut_region_area_mm2 (whole));
}

static HutPartKind
part_kind (HutSolidKind of_plate)
{
  switch (of_plate)
    {
    case HUT_SOLID_GLAZING:
      return HUT_PART_GLAZING;
    case HUT_SOLID_FACE_PLATE:
      return HUT_PART_FACE_PLATE;
    default:
      return HUT_PART_FRAME;
    }
}

static void
check_pieces (const Case *one)
{
  for (guint i = 0; i < one->assembly->panels->len; i++)
    check_pieces_of (one, ((const HutPanel *)g_ptr_array_index (one->assembly->panels, i))->region,
                     HUT_PART_PANEL, i, NULL);
  for (guint i = 0; i < one->assembly->plates->len; i++)
    {
      const HutPlate *plate = g_ptr_array_index (one->assembly->plates, i);

      check_pieces_of (one, plate->region, part_kind (plate->kind), plate->panel, plate->item);
    }
}

/* ---- bed and webs
 * --------------------------------------------------------------------------------- */

static gboolean
is_given_up (const Case *one, const HutPart *part)
{
  for (guint i = 0; i < one->parts->troubles->len; i++)
    {
      const HutSplitTrouble *trouble = &g_array_index (one->parts->troubles, HutSplitTrouble, i);

      if ((trouble->kind == HUT_SPLIT_NO_PLACE || trouble->kind == HUT_SPLIT_CANNOT)
          && trouble->panel == part->panel && g_strcmp0 (trouble->item, part->item) == 0)
        return TRUE;
    }
  return FALSE;
}

static void
check_bed (const Case *one)
{
  for (guint i = 0; i < one->parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (one->parts->parts, i);
      const HutRect bounds = hut_region_bounds (part->region);

      if (part->bought)
        continue;
      findings.parts++;
      if (hut_cutter_takes_stock (&one->design->cutter, part->stock, bounds.u1 - bounds.u0,
                                  bounds.v1 - bounds.v0))
        continue;
      if (is_given_up (one, part))
        findings.given_up++;
      else
        report (BED, one, "%s is %.3f x %.3f and no finding says that it cannot be parted",
                part->id, bounds.u1 - bounds.u0, bounds.v1 - bounds.v0);
    }
}

static gboolean
is_on_border (const HutPath *path, HutPoint p)
{
  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);
      const double du = segment.end.u - segment.start.u, dv = segment.end.v - segment.start.v;
      const double t = CLAMP (((p.u - segment.start.u) * du + (p.v - segment.start.v) * dv)
                                  / (du * du + dv * dv),
                              0.0, 1.0);

      if (hut_point_distance_mm (p,
                                 (HutPoint){ segment.start.u + t * du, segment.start.v + t * dv })
          < 1e-6)
        return TRUE;
    }
  return FALSE;
}

/* Holes that the user put close to something make narrow webs; the program's own joints never do.
 */
static void
check_webs (const Case *one)
{
  for (guint i = 0; i < one->parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (one->parts->parts, i);
      HutWeb web;

      if (part->kind == HUT_PART_FRAME || part->kind == HUT_PART_GLAZING
          || !hut_region_find_web (part->region, part->stock->smallest_web_mm - 1e-6, &web))
        continue;
      if (part->region->holes->len == 0 && one->assembly->holes->len == 0)
        report (WEBS, one, "%s: web of %.6f mm at (%.3f, %.3f)-(%.3f, %.3f), smallest is %.3f",
                part->id, web.width_mm, web.a.u, web.a.v, web.b.u, web.b.v,
                part->stock->smallest_web_mm);
      if (part->region->holes->len == 0 || !is_on_border (part->region->outer, web.a)
          || !is_on_border (part->region->outer, web.b))
        continue;
      report (
          WEBS, one,
          "%s: web of %.6f mm in its own outline at (%.3f, %.3f)-(%.3f, %.3f), smallest is %.3f",
          part->id, web.width_mm, web.a.u, web.a.v, web.b.u, web.b.v, part->stock->smallest_web_mm);
    }
}

/* ---- one run, five properties ------------------------------------------------------------------
 */

static int
look_at_all_designs (void **state)
{
  const guint64 first = hut_random_first_seed ();
  const guint64 count = hut_random_seed_count (SEEDS_DEFAULT);

  findings.designs = count;
  for (guint64 seed = first; seed < first + count; seed++)
    {
      Case one = case_new (seed);

      if (one.assembly->whole)
        {
          findings.whole++;
          check_outlines (&one);
          check_shells (&one);
          check_pieces (&one);
          check_bed (&one);
          check_webs (&one);
        }
      case_clear (&one);
    }
  print_message ("%" G_GUINT64_FORMAT " designs, %" G_GUINT64_FORMAT
                 " could be built; %u parts to cut, %u could not be parted\n",
                 count, findings.whole, findings.parts, findings.given_up);
  return 0;
}

static int
free_findings (void **state)
{
  for (int property = 0; property < PROPERTY_COUNT; property++)
    g_clear_pointer (&findings.failure[property], g_free);
  return 0;
}

static void
assert_holds (Property property)
{
  if (findings.failure[property] != NULL)
    fail_msg ("%s", findings.failure[property]);
}

static void
most_random_designs_can_be_built (void **state)
{
  assert_true (findings.designs > 0);
  assert_true (findings.whole * 10 >= findings.designs * 8);
}

static void
every_outline_is_valid_and_simple_and_on_the_grid (void **state)
{
  assert_holds (OUTLINES);
}

static void
panels_partition_their_shell (void **state)
{
  assert_holds (SHELLS);
}

static void
parts_partition_their_panel (void **state)
{
  assert_holds (PIECES);
}

static void
every_part_fits_the_bed_or_is_named (void **state)
{
  assert_holds (BED);
  assert_true (findings.given_up * 50
               <= findings.parts); /* rare: openings all over a small panel, huge glazing */
}

static void
no_joint_or_splice_is_under_the_smallest_web (void **state)
{
  assert_holds (WEBS);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (most_random_designs_can_be_built),
    cmocka_unit_test (every_outline_is_valid_and_simple_and_on_the_grid),
    cmocka_unit_test (panels_partition_their_shell),
    cmocka_unit_test (parts_partition_their_panel),
    cmocka_unit_test (every_part_fits_the_bed_or_is_named),
    cmocka_unit_test (no_joint_or_splice_is_under_the_smallest_web),
  };

  return cmocka_run_group_tests (tests, look_at_all_designs, free_findings);
}
