/* tests/export/test-gcode.c: G-code for lasers, run by a controller of the tests.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-gcode.h"
#include "export/hut-tool-path.h"
#include "hut-described.h"
#include "hut-gcode-run.h"
#include "hut-random-design.h"
#include <string.h>

#define TRACE_MM 0.005       /* how far the trace may be from the described path */
#define STEP_MM 2.0          /* between points that are compared */
#define RANDOM_DESIGNS 5
#define MOVES_MAX 4000       /* larger sheets only run, they are not compared point by point */

/* One path on a bed of 400 x 300, its stock's recipe 500 mm/min, 80 %, two passes. */
typedef struct
{
  HutStock *stock;
  HutCutter cutter;
  GPtrArray *paths;
  HutWritePage page;
} Bench;

static void
bench_init (Bench *self)
{
  *self = (Bench) {
    .stock = hut_stock_new ("ply-6"),
    .cutter = { .name = (char *) "Laser", .kind = HUT_CUTTER_LASER, .bed_width_mm = 400,
                .bed_depth_mm = 300 },
    .paths = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_tool_path_free),
  };
  self->stock->speed_mm_min = 500;
  self->stock->power_percent = 80;
  self->stock->passes = 2;
  self->page = (HutWritePage) { .paths = self->paths, .width_mm = 400, .depth_mm = 300,
                                .design_name = "Bench", .name = "ply-6-sheet-1",
                                .stock = self->stock };
}

static void
bench_clear (Bench *self)
{
  g_clear_pointer (&self->paths, g_ptr_array_unref);
  g_clear_pointer (&self->stock, hut_stock_free);
}

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Bench, bench_clear)

/* @path: (transfer full) */
static void
bench_take (Bench *self,
            HutPath *path)
{
  HutToolPath *tool = g_new0 (HutToolPath, 1);

  tool->layer = HUT_LAYER_CUT_OUTSIDE;
  tool->id = g_strdup ("a");
  tool->closed = path;
  g_ptr_array_add (self->paths, tool);
}

static GBytes *
bench_write (Bench *self)
{
  g_autoptr(GError) error = NULL;
  GBytes *file;

  self->page.cutter = &self->cutter;
  file = hut_write_page_gcode (&self->page, &error);
  assert_ok (file != NULL, error);
  return file;
}

static double
cut_length_mm (const HutGcodeRun *run)
{
  double length_mm = 0.0;

  for (guint i = 0; i < run->moves->len; i++)
    {
      const HutGcodeMove *move = &g_array_index (run->moves, HutGcodeMove, i);

      length_mm += move->rapid ? 0.0 : hut_gcode_move_length_mm (move);
    }
  return length_mm;
}

/* ---- by hand --------------------------------------------------------------------------------- */

static void
plate_with_round_corners_is_302_8319_mm_in_each_pass (void **state)
{
  g_auto(Bench) bench = { 0 };
  guint arcs = 0;

  bench_init (&bench);
  bench_take (&bench, hut_path_new_rect ((HutRect) { 10, 10, 110, 70 }, 10));

  g_autoptr(GBytes) file = bench_write (&bench);
  g_autoptr(HutGcodeRun) run = hut_gcode_run (file);

  for (guint i = 0; i < run->moves->len; i++)
    {
      const HutGcodeMove *move = &g_array_index (run->moves, HutGcodeMove, i);

      arcs += move->turn_rad != 0.0 ? 1 : 0;
      if (!move->rapid)
        {
          assert_near (move->s, 800, 0);
          assert_near (move->f, 500, 0);
        }
    }
  assert_int_equal (arcs, 2 * 4);
  /* 2 x 80 + 2 x 40 + 2 pi 10, twice. */
  assert_near_mm (cut_length_mm (run), 2 * 302.83185, 0.002);
}

static void
file_opens_safely_and_ends_off (void **state)
{
  g_auto(Bench) bench = { 0 };

  bench_init (&bench);
  bench_take (&bench, hut_path_new_rect ((HutRect) { 10, 10, 20, 20 }, 0));
  bench.stock->passes = 1;

  g_autoptr(GBytes) file = bench_write (&bench);
  g_autofree char *text = g_strndup (g_bytes_get_data (file, NULL), g_bytes_get_size (file));

  assert_non_null (strstr (text, "(Bench: ply-6-sheet-1)\n"));
  assert_non_null (strstr (text, "\nG21 G90 G17 G94\nG54\nM5 S0\n(a)\nG0 X10 Y10 S0\nM4 S0\n"
                                 "G1 X10 Y10 F500 S800\nG1 X20 Y10\nG1 X20 Y20\nG1 X10 Y20\n"
                                 "G1 X10 Y10\nM5 S0\nG0 X0 Y0 S0\nM2\n"));
}

static void
full_circle_is_cut_in_pieces_and_comes_to_its_length (void **state)
{
  g_auto(Bench) bench = { 0 };

  bench_init (&bench);
  bench.stock->passes = 1;
  for (guint i = 0; i < 40; i++) /* radii down to that of a pin hole, at odd places */
    bench_take (&bench, hut_path_new_circle ((HutPoint) { 100.12345 + 3.777 * i, 150.54321 - i },
                                             40.0 / (1 << (i / 4)) + 0.0137 * i));

  g_autoptr(GBytes) file = bench_write (&bench);
  g_autoptr(HutGcodeRun) run = hut_gcode_run (file);
  double expected_mm = 0.0;

  for (guint i = 0; i < 40; i++)
    expected_mm += 2 * G_PI * (40.0 / (1 << (i / 4)) + 0.0137 * i);
  assert_near_mm (cut_length_mm (run), expected_mm, 40 * 0.004);
}

static void
arcs_that_rounding_would_close_are_lines (void **state)
{
  /* From the trap in the sources of open firmware: ends 0.0004 apart round to one point, and a
   * controller makes a circle of radius 5 of it. */
  g_auto(Bench) bench = { 0 };
  HutPath *path = hut_path_new ();
  const double tiny_bulge = tan (0.00008 / 4.0);

  bench_init (&bench);
  bench.stock->passes = 1;
  hut_path_append (path, (HutPoint) { 20, 10 }, -tiny_bulge, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 20.0004, 10 }, 0.0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 60, 10 }, tan (0.0005 / 4.0), HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 60, 10.5 }, 0.0, HUT_EDGE_PLAIN);
  hut_path_append (path, (HutPoint) { 20, 40 }, 0.0, HUT_EDGE_PLAIN);
  bench_take (&bench, path);

  g_autoptr(GBytes) file = bench_write (&bench);
  g_autoptr(HutGcodeRun) run = hut_gcode_run (file);

  for (guint i = 0; i < run->moves->len; i++)
    assert_near (g_array_index (run->moves, HutGcodeMove, i).turn_rad, 0.0, 0);
  assert_near_mm (cut_length_mm (run), hut_path_length_mm (path), 0.003);
}

static void
pockets_are_left_to_hands_and_drill_marks_are_cut (void **state)
{
  g_auto(Bench) bench = { 0 };

  bench_init (&bench);
  bench_take (&bench, hut_path_new_circle ((HutPoint) { 50, 50 }, 20));
  ((HutToolPath *) g_ptr_array_index (bench.paths, 0))->layer = HUT_LAYER_POCKET;
  bench_take (&bench, hut_path_new_rect ((HutRect) { 100, 100, 102, 102 }, 0));
  ((HutToolPath *) g_ptr_array_index (bench.paths, 1))->layer = HUT_LAYER_DRILL;

  g_autoptr(GBytes) file = bench_write (&bench);
  g_autoptr(HutGcodeRun) run = hut_gcode_run (file);

  assert_near_mm (cut_length_mm (run), 2 * 8, 1e-9); /* two passes of the small square alone */
}

static void
work_outside_the_bed_or_without_power_is_refused (void **state)
{
  g_auto(Bench) bench = { 0 };
  g_autoptr(GError) error = NULL;

  bench_init (&bench);
  bench_take (&bench, hut_path_new_circle ((HutPoint) { 395, 100 }, 5.01)); /* 0.01 over the edge */
  bench.page.cutter = &bench.cutter;
  assert_null (hut_write_page_gcode (&bench.page, &error));
  assert_true (g_error_matches (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_BLOCKED));
  g_clear_error (&error);
  g_ptr_array_set_size (bench.paths, 0);
  bench.stock->power_percent = 0;
  assert_null (hut_write_page_gcode (&bench.page, &error));
  assert_true (g_error_matches (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_BLOCKED));
}

static void
names_with_brackets_and_accents_stay_comments (void **state)
{
  g_auto(Bench) bench = { 0 };

  bench_init (&bench);
  bench.page.design_name = "Geh\xc3\xa4use (alt); 50 % (so\nlang, dass es auf keine Zeile passt, "
                           "die eine Steuerung lesen kann, ohne etwas davon zu verlieren)";
  bench.page.mark = "CHECKS OVERRIDDEN: cut.web";
  bench_take (&bench, hut_path_new_rect ((HutRect) { 10, 10, 20, 20 }, 0));

  g_autoptr(GBytes) file = bench_write (&bench);
  g_autoptr(HutGcodeRun) run = hut_gcode_run (file);
  gboolean marked = FALSE;

  for (guint i = 0; i < run->comments->len; i++)
    marked = marked
             || g_str_equal (g_ptr_array_index (run->comments, i), "CHECKS OVERRIDDEN: cut.web");
  assert_true (marked);
}

/* ---- the controller of the tests itself ------------------------------------------------------ */

static void
controller_refuses_what_real_ones_refuse (void **state)
{
#define FRAME(body) "G21 G90\nM5 S0\nG0 X10 Y10 S0\nM4 S0\n" body "M5 S0\nM2\n"
  static const char *const bad[] = {
    FRAME ("G1 X20 Y10 S5\n"),                           /* no feed */
    FRAME ("G1 X20 Y10 F100 S5\nG0 X30 Y10\n"),          /* travel with power */
    FRAME ("G2 X10.0004 Y10 I5 J0 F100 S5\n"),           /* planned as a full circle */
    FRAME ("G2 X20 Y10 I5.004 J0 F100 S5\n"),            /* 0.008 between the radii */
    FRAME ("G1 X20 X30 F100 S5\n"),                      /* letter twice */
    FRAME ("G1 G0 X20 F100 S5\n"),                       /* two of a group */
    FRAME ("G1 X20 Z1 F100 S5\n"),                       /* no such axis */
    FRAME ("G1 X2e1 F100 S5\n"),                         /* exponent */
    FRAME ("G1 X20 F100 S-5\n"),                         /* negative power */
    FRAME ("(a (b) c)\n"),                               /* nested comment */
    "G0 X10 Y10 S0\nM2\n",                               /* no units */
    "G21 G90\nG0 X10 Y10 S0\nM4 S0\nG1 X20 F100 S5\nM2\n", /* ends armed */
  };
  g_autofree char *good = hut_gcode_dup_fault (FRAME ("G2 X20 Y10 I5 J0 F100 S5\nG1 X30\n"));

  if (good != NULL)
    fail_msg ("%s", good);
  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      g_autofree char *fault = hut_gcode_dup_fault (bad[i]);

      if (fault == NULL)
        fail_msg ("not refused: %s", bad[i]);
    }
}

/* ---- against the description ----------------------------------------------------------------- */

/* One described edge, placed on its sheet, in the terms of the controller. */
static void
append_edge (GArray *edges,
             const xmlNode *edge,
             double u0,
             double v0,
             const double place[4])
{
  const double c = place[2], s = place[3];
  const double u1 = hut_described_number (edge, "u"), v1 = hut_described_number (edge, "v");
  HutGcodeMove move = { 0 };

  move.x0 = place[0] + c * u0 - s * v0;
  move.y0 = place[1] + s * u0 + c * v0;
  move.x1 = place[0] + c * u1 - s * v1;
  move.y1 = place[1] + s * u1 + c * v1;
  if (xmlStrEqual (edge->name, BAD_CAST "arc"))
    {
      /* Centre: middle of the chord, and along its left normal by (1 - b^2) / (4 b) chords. */
      const double bulge = hut_described_number (edge, "bulge");
      const double along = (1.0 - bulge * bulge) / (4.0 * bulge);

      move.turn_rad = 4.0 * atan (bulge);
      move.cx = (move.x0 + move.x1) / 2.0 - (move.y1 - move.y0) * along;
      move.cy = (move.y0 + move.y1) / 2.0 + (move.x1 - move.x0) * along;
    }
  if (hut_gcode_move_length_mm (&move) > 0.0)
    g_array_append_val (edges, move);
}

static void
append_path (GArray *edges,
             const xmlNode *path,
             const double place[4])
{
  double u = hut_described_number (path, "u"), v = hut_described_number (path, "v");

  for (const xmlNode *edge = path->children; edge != NULL; edge = edge->next)
    {
      if (edge->type != XML_ELEMENT_NODE)
        continue;
      append_edge (edges, edge, u, v, place);
      u = hut_described_number (edge, "u");
      v = hut_described_number (edge, "v");
    }
}

/* All that is cut on a sheet. (transfer full) */
static GArray *
described_edges (const xmlNode *root,
                 const xmlNode *sheet)
{
  GArray *edges = g_array_new (FALSE, FALSE, sizeof (HutGcodeMove));
  const xmlNode *parts = hut_described_first (root, "parts");

  for (const xmlNode *laid = hut_described_first (sheet, "laid"); laid != NULL;
       laid = hut_described_next (laid))
    {
      g_autofree char *id = hut_described_dup_text (laid, "part");
      const double turn_rad = hut_described_number (laid, "turn") * G_PI / 180.0;
      const double place[4] = { hut_described_number (laid, "u"), hut_described_number (laid, "v"),
                                cos (turn_rad), sin (turn_rad) };
      const xmlNode *part = hut_described_first (parts, "part");

      while (!hut_described_is (part, "id", id))
        part = hut_described_next (part);

      const xmlNode *cut = hut_described_first (part, "cut");

      assert_non_null (cut);
      append_path (edges, hut_described_first (cut, "outline"), place);
      for (const xmlNode *hole = hut_described_first (cut, "hole"); hole != NULL;
           hole = hut_described_next (hole))
        append_path (edges, hole, place);
    }
  return edges;
}

static double
total_mm (const GArray *moves)
{
  double length_mm = 0.0;

  for (guint i = 0; i < moves->len; i++)
    length_mm += hut_gcode_move_length_mm (&g_array_index (moves, HutGcodeMove, i));
  return length_mm;
}

static double
nearest_mm (const GArray *moves,
            double x,
            double y)
{
  double least_mm = INFINITY;

  for (guint i = 0; i < moves->len && least_mm > TRACE_MM; i++)
    {
      const double distance_mm
          = hut_gcode_move_distance_mm (&g_array_index (moves, HutGcodeMove, i), x, y);

      least_mm = MIN (least_mm, distance_mm);
    }
  return least_mm;
}

static void
assert_on (const GArray *moves,
           const GArray *ways,
           guint64 seed)
{
  for (guint i = 0; i < moves->len; i++)
    {
      const HutGcodeMove *move = &g_array_index (moves, HutGcodeMove, i);
      const guint count = 1 + (guint) (hut_gcode_move_length_mm (move) / STEP_MM);

      for (guint k = 0; k <= count; k++)
        {
          double x, y;

          hut_gcode_move_point (move, (double) k / count, &x, &y);
          if (!(nearest_mm (ways, x, y) <= TRACE_MM))
            fail_msg ("seed %" G_GUINT64_FORMAT ": (%.4f, %.4f) is %.4f off", seed, x, y,
                      nearest_mm (ways, x, y));
        }
    }
}

/* The outlines and openings of a run, without labels and marks. (transfer full) */
static GArray *
cuts_of (const HutGcodeRun *run)
{
  GArray *cuts = g_array_new (FALSE, FALSE, sizeof (HutGcodeMove));

  for (guint i = 0; i < run->moves->len; i++)
    {
      const HutGcodeMove *move = &g_array_index (run->moves, HutGcodeMove, i);

      if (!move->rapid
          && (strstr (move->name, "-inside-") != NULL || g_str_has_suffix (move->name, "-outside")))
        g_array_append_vals (cuts, move, 1);
    }
  return cuts;
}

static void
assert_inside (const HutGcodeRun *run,
               const HutSheet *sheet,
               guint64 seed)
{
  const double slack_mm = 1e-9; /* what the test itself rounds */

  for (guint i = 0; i < run->moves->len; i++)
    for (guint k = 0; k <= 16; k++)
      {
        double x, y;

        hut_gcode_move_point (&g_array_index (run->moves, HutGcodeMove, i), k / 16.0, &x, &y);
        if (!(x >= -slack_mm && y >= -slack_mm && x <= sheet->width_mm + slack_mm
              && y <= sheet->depth_mm + slack_mm))
          fail_msg ("seed %" G_GUINT64_FORMAT ": (%.7f, %.7f) is outside of %g x %g", seed, x, y,
                    sheet->width_mm, sheet->depth_mm);
      }
}

/* Returns: FALSE when kerf swallows something: there is no file then, for any format. */
static gboolean
check_sheet (const HutAssembly *assembly,
             const HutPartSet *parts,
             const HutSheet *sheet,
             const xmlNode *root,
             const xmlNode *described,
             guint64 seed)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(GBytes) file
      = hut_write_sheet_page (assembly, parts, sheet, NULL, hut_write_page_gcode, &error);

  if (file == NULL && error->domain == HUT_GEOM_ERROR)
    return FALSE;
  assert_ok (file != NULL, error);

  g_autoptr(HutGcodeRun) run = hut_gcode_run (file);
  g_autoptr(GArray) cuts = cuts_of (run);
  g_autoptr(GArray) edges = described_edges (root, described);

  assert_inside (run, sheet, seed);
  assert_near_mm (total_mm (cuts) / sheet->stock->passes, total_mm (edges),
                  0.001 * edges->len + 0.01);
  if (cuts->len <= MOVES_MAX)
    {
      assert_on (cuts, edges, seed);
      assert_on (edges, cuts, seed);
    }
  return TRUE;
}

static void
traces_are_the_described_paths_as_often_as_there_are_passes (void **state)
{
  const guint64 first = hut_random_first_seed ();
  const guint64 count = MIN (hut_random_seed_count (RANDOM_DESIGNS), 200);
  guint checked = 0;

  for (guint64 seed = first; seed < first + count; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);

      design->cutter.kind = HUT_CUTTER_LASER;
      design->cutter.tabs = FALSE; /* with these the paths are not the described ones alone */
      design->cutter.lead_in_mm = 0.0;
      for (guint i = 0; i < design->stocks->len; i++)
        {
          HutStock *stock = g_ptr_array_index (design->stocks, i);

          stock->power_percent = MAX (stock->power_percent, 1.0);
          stock->passes = 1 + i % 3;
        }

      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
      g_autoptr(HutSheetSet) sheets = hut_sheet_set_new (assembly, parts);
      g_autoptr(GPtrArray) findings = g_ptr_array_new ();
      g_autoptr(GBytes) text = hut_write_describe (assembly, parts, sheets, findings, NULL);
      g_autoptr(xmlDoc) doc = hut_described_parse (text);
      const xmlNode *root = xmlDocGetRootElement (doc);
      const xmlNode *described = hut_described_first (hut_described_first (root, "sheets"), "sheet");

      for (guint i = 0; i < sheets->sheets->len; i++)
        {
          const HutSheet *sheet = g_ptr_array_index (sheets->sheets, i);

          checked += check_sheet (assembly, parts, sheet, root, described, seed) ? 1 : 0;
          described = hut_described_next (described);
        }
    }
  assert_true (checked > 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (plate_with_round_corners_is_302_8319_mm_in_each_pass),
    cmocka_unit_test (file_opens_safely_and_ends_off),
    cmocka_unit_test (full_circle_is_cut_in_pieces_and_comes_to_its_length),
    cmocka_unit_test (arcs_that_rounding_would_close_are_lines),
    cmocka_unit_test (pockets_are_left_to_hands_and_drill_marks_are_cut),
    cmocka_unit_test (work_outside_the_bed_or_without_power_is_refused),
    cmocka_unit_test (names_with_brackets_and_accents_stay_comments),
    cmocka_unit_test (controller_refuses_what_real_ones_refuse),
    cmocka_unit_test (traces_are_the_described_paths_as_often_as_there_are_passes),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
