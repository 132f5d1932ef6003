/* tests/export/test-gcode-router.c: G-code for routers, and lead-ins and tabs of both machines, run by a
 * controller of the tests.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-gcode.h"
#include "export/hut-tool-tab.h"
#include "geom/hut-offset.h"
#include "hut-gcode-run.h"
#include "hut-random-design.h"
#include <string.h>

#define TRACE_MM 0.005 /* how far the trace may be from the path */
#define STEP_MM 3.0    /* between points that are compared */
#define RANDOM_DESIGNS 3
#define SAFE_MM 5.0
#define RAMP_RATIO 3.9 /* forwards to downwards, at least; the printed numbers are rounded */

static double
nearest_mm (const GArray *moves,
            const char *name,
            double z_mm,
            double x,
            double y)
{
  double least_mm = INFINITY;

  for (guint i = 0; i < moves->len && least_mm > TRACE_MM; i++)
    {
      const HutGcodeMove *move = &g_array_index (moves, HutGcodeMove, i);

      if (move->rapid || strcmp (move->name, name) != 0
          || !(MAX (move->z0, move->z1) <= z_mm + 0.0006) || (move->x0 == move->x1 && move->y0 == move->y1))
        continue;
      least_mm = MIN (least_mm, hut_gcode_move_distance_mm (move, x, y));
    }
  return least_mm;
}

static HutPoint
point_of (const HutSegment *segment,
          double share_ratio)
{
  return share_ratio >= 1.0 ? segment->end
                            : hut_segment_between (segment, 0.0, MAX (share_ratio, 1e-12)).end;
}

/* Whether a length of the way lies over a tab or on the ramp behind it. */
static gboolean
is_at_tab (const HutToolPath *path,
           double at_mm,
           double behind_mm)
{
  for (guint i = 0; path->tabs != NULL && i < path->tabs->len; i++)
    {
      const HutTab *tab = &g_array_index (path->tabs, HutTab, i);

      if (at_mm >= tab->from_mm - 0.01 && at_mm <= tab->to_mm + behind_mm + 0.01)
        return TRUE;
    }
  return FALSE;
}

/* Each point of the path is cut at each level: over a tab, at its height. */
static void
assert_cut_at_all_levels (const HutGcodeRun *run,
                          const HutToolPath *path,
                          const HutStock *stock,
                          const HutCutter *cutter,
                          guint64 seed)
{
  const gboolean router = cutter->kind == HUT_CUTTER_ROUTER;
  const double depth_mm = router ? hut_stock_max_mm (stock) + cutter->through_mm : 0.0;
  const double top_mm
      = router ? hut_tab_size (stock, cutter->kind).height_mm - hut_stock_mean_mm (stock) : 0.0;
  double at_mm = 0.0;

  for (guint i = 0; i < hut_path_get_count (path->closed); i++)
    {
      const HutSegment segment = hut_path_get_segment (path->closed, i);
      const double length_mm = hut_segment_length_mm (&segment);
      const guint steps = 1 + (guint) (length_mm / STEP_MM);

      for (guint k = 0; k <= steps; k++)
        {
          const HutPoint p = point_of (&segment, (double) k / steps);
          const double here_mm = at_mm + length_mm * k / steps;

          for (guint pass = 1; pass <= (router ? stock->passes : 1); pass++)
            {
              const double z_mm = -depth_mm * pass / stock->passes;
              const double behind_mm = z_mm < top_mm ? (top_mm - z_mm) * HUT_RAMP_RATIO : 0.0;
              const gboolean tab = is_at_tab (path, here_mm, behind_mm);

              if (tab && !router)
                continue;
              if (nearest_mm (run->moves, path->id, tab ? MAX (top_mm, z_mm) : z_mm, p.u, p.v) > TRACE_MM)
                fail_msg ("seed %" G_GUINT64_FORMAT ": %s is not cut at (%.4f, %.4f), pass %u", seed,
                          path->id, p.u, p.v, pass);
            }
        }
      at_mm += length_mm;
    }
}

static double
off_path_mm (const HutToolPath *path,
             double x,
             double y)
{
  double least_mm = INFINITY;

  for (guint i = 0; i < hut_path_get_count (path->closed); i++)
    {
      const HutSegment segment = hut_path_get_segment (path->closed, i);
      const HutPoint p = { x, y };

      least_mm = MIN (least_mm, hut_point_distance_mm (hut_segment_nearest (&segment, p), p));
    }
  return least_mm;
}

/* Where the tool goes: on the path, or on its lead-in; deep into no tab; down on ramps only. */
static void
assert_moves (const HutGcodeRun *run,
              const HutToolPath *path,
              const HutStock *stock,
              const HutCutter *cutter,
              guint64 seed)
{
  const double depth_mm = hut_stock_max_mm (stock) + cutter->through_mm;

  for (guint i = 0; i < run->moves->len; i++)
    {
      const HutGcodeMove *move = &g_array_index (run->moves, HutGcodeMove, i);
      const double fall_mm = move->z0 - move->z1;

      if (move->rapid || strcmp (move->name, path->id) != 0)
        continue;
      if (cutter->kind == HUT_CUTTER_ROUTER && !(move->z1 >= -depth_mm - 0.0006))
        fail_msg ("seed %" G_GUINT64_FORMAT ": %s goes to %.4f", seed, path->id, move->z1);
      if (fall_mm > 0.0015 && move->z1 < -0.001
          && !(hut_gcode_move_length_mm (move) >= (fall_mm - 0.001) * RAMP_RATIO - 0.002))
        fail_msg ("seed %" G_GUINT64_FORMAT ": %s plunges %.4f over %.4f", seed, path->id, fall_mm,
                  hut_gcode_move_length_mm (move));
      for (guint k = 0; k <= 4; k++)
        {
          double x, y, lead_mm = INFINITY;

          hut_gcode_move_point (move, k / 4.0, &x, &y);
          if (path->has_lead)
            {
              const HutSegment lead = { path->lead, hut_path_get (path->closed, 0)->p, 0, HUT_EDGE_PLAIN };
              const HutPoint p = { x, y };

              lead_mm = hut_point_distance_mm (hut_segment_nearest (&lead, p), p);
              /* In the waste all the way: down is gone in the farther half only. */
              if (fall_mm > 0.0 && move->z1 < -0.001 && lead_mm < TRACE_MM && off_path_mm (path, x, y) > TRACE_MM)
                assert_true (hut_point_distance_mm (p, path->lead)
                             <= hut_point_distance_mm (lead.end, path->lead) / 2.0 + 0.002);
            }
          if (!(MIN (off_path_mm (path, x, y), lead_mm) <= TRACE_MM))
            fail_msg ("seed %" G_GUINT64_FORMAT ": %s: (%.4f, %.4f) is on no path", seed, path->id, x, y);
        }
    }
}

/* Nothing outside of the sheet; a lead-in lies in the waste, off all that is cut. */
static void
assert_leads_and_bounds (const HutGcodeRun *run,
                         const GPtrArray *paths,
                         const HutSheet *sheet,
                         const HutPartSet *parts,
                         guint *leads)
{
  for (guint i = 0; i < run->moves->len; i++)
    {
      const HutGcodeMove *move = &g_array_index (run->moves, HutGcodeMove, i);

      assert_true (move->x1 >= 0 && move->y1 >= 0 && move->x1 <= sheet->width_mm + 1e-9
                   && move->y1 <= sheet->depth_mm + 1e-9);
    }
  for (guint i = 0; i < paths->len; i++)
    {
      const HutToolPath *path = g_ptr_array_index (paths, i);

      if (!path->has_lead)
        continue;
      *leads += 1;
      for (guint k = 0; k < sheet->laid->len; k++)
        {
          const HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, k);
          const HutPart *part = g_ptr_array_index (parts->parts, laid->part);
          g_autoptr(HutRegion) region = hut_region_dup_placed (part->region, &laid->placement);

          assert_false (hut_region_contains (region, path->lead));
        }
    }
}

static double
length_with_beam_mm (const HutGcodeRun *run,
                     const char *name)
{
  double length_mm = 0.0;

  for (guint i = 0; i < run->moves->len; i++)
    {
      const HutGcodeMove *move = &g_array_index (run->moves, HutGcodeMove, i);

      if (!move->rapid && strcmp (move->name, name) == 0)
        length_mm += hut_gcode_move_length_mm (move);
    }
  return length_mm;
}

static void
check_sheet (const HutAssembly *assembly,
             const HutPartSet *parts,
             const HutSheet *sheet,
             guint64 seed,
             guint *leads,
             guint *tabs)
{
  const HutCutter *cutter = sheet->cutter;
  const gboolean router = cutter->kind == HUT_CUTTER_ROUTER;
  g_autoptr(GPtrArray) paths = hut_sheet_dup_tool_paths (parts, sheet, NULL);

  if (paths == NULL)
    return;

  g_autoptr(GError) error = NULL;
  g_autoptr(GBytes) file
      = hut_write_sheet_page (assembly, parts, sheet, NULL, hut_write_page_gcode, &error);

  assert_ok (file != NULL, error);

  g_autoptr(HutGcodeRun) run = hut_gcode_run_router (file, router ? cutter->safe_mm : 0.0);

  assert_leads_and_bounds (run, paths, sheet, parts, leads);
  for (guint i = 0; i < paths->len; i++)
    {
      const HutToolPath *path = g_ptr_array_index (paths, i);

      if (path->closed == NULL || path->layer == HUT_LAYER_POCKET)
        continue;
      *tabs += path->tabs != NULL ? path->tabs->len : 0;
      assert_cut_at_all_levels (run, path, sheet->stock, cutter, seed);
      assert_moves (run, path, sheet->stock, cutter, seed);
      if (!router) /* the lead-in once, the rest in each pass */
        {
          const double lead_mm
              = path->has_lead
                    ? hut_point_distance_mm (path->lead, hut_path_get (path->closed, 0)->p)
                    : 0.0;

          assert_near_mm (length_with_beam_mm (run, path->id),
                          lead_mm
                              + sheet->stock->passes
                                    * (hut_tool_path_length_mm (path, cutter->kind) - lead_mm),
                          0.002 * sheet->stock->passes * (4 + hut_path_get_count (path->closed)));
        }
    }
}

static void
files_of_both_machines_cut_each_path_in_each_pass (void **state)
{
  const guint64 first = hut_random_first_seed ();
  const guint64 count = MIN (hut_random_seed_count (RANDOM_DESIGNS), 200);
  guint leads = 0, tabs = 0;

  for (guint64 seed = first; seed < first + count; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);

      design->cutter.tabs = seed % 4 != 3;
      design->cutter.lead_in_mm = seed % 3 == 2 ? 0.0 : 1.0 + (double) (seed % 5);
      design->cutter.safe_mm = SAFE_MM;
      for (guint i = 0; i < design->stocks->len; i++)
        {
          HutStock *stock = g_ptr_array_index (design->stocks, i);

          stock->power_percent = MAX (stock->power_percent, 1.0);
          stock->passes = 1 + i % 3;
        }

      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
      g_autoptr(HutSheetSet) sheets = hut_sheet_set_new_within (assembly, parts, 1, NULL);

      for (guint i = 0; i < MIN (sheets->sheets->len, 2); i++)
        check_sheet (assembly, parts, g_ptr_array_index (sheets->sheets, i), seed, &leads, &tabs);
    }
  assert_true (leads > 0 && tabs > 0);
}

/* ---- by hand --------------------------------------------------------------------------------- */

static GBytes *
write_square (HutCutter *cutter,
              HutStock *stock,
              gboolean lead,
              const HutTab *tab)
{
  g_autoptr(GPtrArray) paths
      = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_tool_path_free);
  HutToolPath *path = g_new0 (HutToolPath, 1);
  const HutWritePage page = { .paths = paths, .width_mm = 400, .depth_mm = 300, .name = "a",
                              .stock = stock, .cutter = cutter };
  GBytes *file;

  path->layer = HUT_LAYER_CUT_OUTSIDE;
  path->id = g_strdup ("a");
  path->closed = hut_path_new_rect ((HutRect) { 20, 20, 120, 120 }, 0);
  path->has_lead = lead;
  path->lead = (HutPoint) { 17, 16 };
  if (tab != NULL)
    {
      path->tabs = g_array_new (FALSE, FALSE, sizeof (HutTab));
      g_array_append_vals (path->tabs, tab, 1);
    }
  g_ptr_array_add (paths, path);
  file = hut_write_page_gcode (&page, NULL);
  assert_non_null (file);
  return file;
}

static void
router_opens_safely_goes_down_in_the_waste_and_over_the_tab (void **state)
{
  HutCutter cutter = { .name = (char *) "Mill", .kind = HUT_CUTTER_ROUTER, .bed_width_mm = 400,
                       .bed_depth_mm = 300, .tabs = TRUE };
  g_autoptr(HutStock) stock = hut_stock_new ("ply");
  const HutTab tab = { 50, 60 };

  hut_cutter_fill_usual (&cutter);
  cutter.tabs = TRUE;
  stock->passes = 2;
  stock->speed_mm_min = 1000;
  stock->kerf_mm = 3;
  g_array_index (stock->readings_mm, double, 0) = 6.0;
  cutter.through_mm = 0.4; /* 6.4 in two passes of 3.2 */

  g_autoptr(GBytes) file = write_square (&cutter, stock, TRUE, &tab);
  g_autofree char *text = g_strndup (g_bytes_get_data (file, NULL), g_bytes_get_size (file));
  g_autoptr(HutGcodeRun) run = hut_gcode_run_router (file, 5.0);

  /* Lead-in 5 long, its half 2.5; 3.2 down with 4 : 1 is 12.8, three pairs of 5. */
  assert_non_null (strstr (text, "\nG21 G90 G17 G94\nG54\nM5\nG0 Z5\nM3 S18000\nG4 P4\n(a)\n"
                                 "G0 X17 Y16\nG0 Z1\nG1 Z0 F300\nG1 X18.5 Y18 Z-0.533 F1000\n"));
  assert_non_null (strstr (text, "\nG1 X17 Y16 Z-3.2\nG1 X20 Y20\nG1 X120 Y20\nG1 X120 Y120\n"));
  /* Over the tab, whose top is 1.5 over the lower face: Z -4.5; behind it 1.9 down over 7.6. */
  assert_non_null (strstr (text, "\nG1 X70 Y20\nG1 Z-4.5\nG1 X80 Y20\nG1 X87.6 Y20 Z-6.4\nG1 X120 Y20\n"));
  assert_true (g_str_has_suffix (text, "\nG1 X20 Y20\nG0 Z5\nM5\nG0 X0 Y0\nM2\n"));
}

static void
laser_leaves_the_tab_out_in_each_pass (void **state)
{
  HutCutter cutter = { .name = (char *) "Laser", .kind = HUT_CUTTER_LASER, .bed_width_mm = 400,
                       .bed_depth_mm = 300 };
  g_autoptr(HutStock) stock = hut_stock_new ("ply");
  const HutTab tab = { 50, 51 };

  stock->passes = 2;
  stock->speed_mm_min = 300;
  stock->power_percent = 90;

  g_autoptr(GBytes) file = write_square (&cutter, stock, TRUE, &tab);
  g_autofree char *text = g_strndup (g_bytes_get_data (file, NULL), g_bytes_get_size (file));
  g_autoptr(HutGcodeRun) run = hut_gcode_run (file);

  assert_non_null (strstr (text, "(a)\nG0 X17 Y16 S0\nM4 S0\nG1 X17 Y16 F300 S900\nG1 X20 Y20\n"
                                 "G1 X70 Y20\nG0 X71 Y20 S0\nG1 X71 Y20 F300 S900\nG1 X120 Y20\n"));
  /* 5 of lead-in once, and twice the outline of 400 without the tab. */
  assert_near_mm (length_with_beam_mm (run, "a"), 5 + 2 * 399, 1e-9);
}

static void
controller_refuses_what_breaks_routers (void **state)
{
#define FRAME(body) "G21 G90\nG0 Z5\nM3 S1000\nG4 P1\nG0 X10 Y10\n" body "G0 Z5\nM5\nM2\n"
  static const char *const bad[] = {
    FRAME ("G1 Z-1 F100\nG0 X20 Y10\n"),                     /* across in the sheet */
    FRAME ("G0 Z-1\n"),                                      /* down without feed */
    FRAME ("G1 Z-1\n"),                                      /* no feed */
    FRAME ("G0 X20 Z1\n"),                                   /* across and down at once */
    "G21 G90\nG0 Z5\nM3 S1000\nG1 Z-1 F100\nG0 Z5\nM5\nM2\n", /* no time to spin up */
    "G21 G90\nM3 S1000\nG4 P1\nG0 Z5\nM5\nM2\n",             /* started low */
    "G21 G90\nG0 Z5\nM3 S1000\nG4 P1\nG0 Z5\nM2\n",          /* still turning */
  };
  g_autofree char *good
      = hut_gcode_dup_router_fault (FRAME ("G0 Z1\nG1 Z-1 F100\nG2 X20 Y10 Z-2 I5 J0\n"), 5.0);

  if (good != NULL)
    fail_msg ("%s", good);
  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      g_autofree char *fault = hut_gcode_dup_router_fault (bad[i], 5.0);

      if (fault == NULL)
        fail_msg ("not refused: %s", bad[i]);
    }
}

/* ---- tabs ------------------------------------------------------------------------------------ */

static void
tabs_stay_off_joints_and_small_holes (void **state)
{
  const guint64 first = hut_random_first_seed ();
  guint tabs = 0;

  for (guint64 seed = first; seed < first + MIN (hut_random_seed_count (RANDOM_DESIGNS), 200); seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);

      design->cutter.tabs = TRUE;

      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
      g_autoptr(HutSheetSet) sheets = hut_sheet_set_new_within (assembly, parts, 1, NULL);

      for (guint i = 0; i < sheets->sheets->len; i++)
        {
          g_autoptr(GPtrArray) paths
              = hut_sheet_dup_tool_paths (parts, g_ptr_array_index (sheets->sheets, i), NULL);

          for (guint k = 0; paths != NULL && k < paths->len; k++)
            {
              const HutToolPath *path = g_ptr_array_index (paths, k);

              for (guint t = 0; path->tabs != NULL && t < path->tabs->len; t++)
                {
                  const HutTab *tab = &g_array_index (path->tabs, HutTab, t);
                  const HutRect box = hut_path_bounds (path->closed);
                  g_autoptr(GArray) under = g_array_new (FALSE, FALSE, sizeof (HutSegment));

                  hut_path_append_stretch (path->closed, tab->from_mm, tab->to_mm, under);
                  assert_int_equal (under->len, 1); /* within one edge */
                  assert_int_equal (g_array_index (under, HutSegment, 0).kind, HUT_EDGE_PLAIN);
                  assert_true (path->outline || MIN (box.u1 - box.u0, box.v1 - box.v0) >= 40.0);
                  tabs++;
                }
            }
        }
    }
  assert_true (tabs > 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (router_opens_safely_goes_down_in_the_waste_and_over_the_tab),
    cmocka_unit_test (laser_leaves_the_tab_out_in_each_pass),
    cmocka_unit_test (controller_refuses_what_breaks_routers),
    cmocka_unit_test (tabs_stay_off_joints_and_small_holes),
    cmocka_unit_test (files_of_both_machines_cut_each_path_in_each_pass),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
