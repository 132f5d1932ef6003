/* tests/export/test-tool-lead.c: lead-ins and tabs in the files that have only lines.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The files are read here without any code of the program. */
#include "export/hut-dxf-r12.h"
#include "export/hut-tool-lead.h"
#include "export/hut-write.h"
#include "hut-assert.h"
#include "hut-random-design.h"
#include <math.h>
#include <string.h>

#define RANDOM_DESIGNS 3

/* Length of a polyline edge with a bulge, mm: chord c, angle 4 atan b, r = c / (2 sin (angle / 2)). */
static double
edge_mm (double chord_mm,
         double bulge)
{
  const double angle_rad = 4.0 * atan (fabs (bulge));

  return bulge == 0.0 ? chord_mm : angle_rad * chord_mm / (2.0 * sin (angle_rad / 2.0));
}

/* A polyline while it is read; all-zero: none. */
typedef struct
{
  gboolean open, closed;
  guint count;
  double x0, y0, x, y, bulge; /* first and last corner */
} Line;

static double
end_line (Line *self)
{
  const double back_mm
      = self->closed ? edge_mm (hypot (self->x0 - self->x, self->y0 - self->y), self->bulge) : 0.0;

  *self = (Line) { 0 };
  return back_mm;
}

/* All cut lines of a DXF file: LWPOLYLINE or POLYLINE with VERTEX, and CIRCLE. */
static double
dxf_length_mm (GBytes *file)
{
  g_autofree char *text = g_strndup (g_bytes_get_data (file, NULL), g_bytes_get_size (file));
  g_auto(GStrv) lines = g_strsplit (text, "\r\n", -1);
  g_autofree char *entity = g_strdup ("");
  Line line = { 0 };
  double length_mm = 0.0, x = 0.0, next_bulge = 0.0;
  gboolean cut = FALSE;

  for (guint i = 0; lines[i] != NULL && lines[i + 1] != NULL; i += 2)
    {
      const int code = atoi (lines[i]);
      const char *value = lines[i + 1];
      const gboolean corners = strcmp (entity, "LWPOLYLINE") == 0 || strcmp (entity, "VERTEX") == 0;

      if (code == 0)
        {
          if (strcmp (value, "VERTEX") != 0)
            {
              length_mm += end_line (&line);
              next_bulge = 0.0;
            }
          g_free (entity);
          entity = g_strdup (value);
        }
      else if (code == 8)
        cut = g_str_has_prefix (value, "CUT") || strcmp (value, "DRILL") == 0;
      else if (code == 70 && strcmp (entity, "VERTEX") != 0)
        line.closed = cut && atoi (value) == 1 && g_str_has_suffix (entity, "POLYLINE");
      else if (code == 40 && cut && strcmp (entity, "CIRCLE") == 0)
        length_mm += 2.0 * G_PI * g_ascii_strtod (value, NULL);
      else if (code == 10)
        x = g_ascii_strtod (value, NULL);
      else if (code == 42 && corners)
        line.bulge = g_ascii_strtod (value, NULL);
      else if (code == 20 && corners && cut)
        {
          const double y = g_ascii_strtod (value, NULL);

          if (line.count++ > 0)
            length_mm += edge_mm (hypot (x - line.x, y - line.y), line.bulge);
          else
            line.x0 = x, line.y0 = y;
          line.x = x;
          line.y = y;
          line.bulge = next_bulge;
        }
    }
  return length_mm;
}

/* "M x y", "L x y", "A r r 0 0 s x y", "Z". */
static double
svg_path_mm (const char *data)
{
  g_auto(GStrv) words = g_strsplit (data, " ", -1);
  double length_mm = 0.0, x0 = 0.0, y0 = 0.0, x = 0.0, y = 0.0;

  for (guint i = 0; words[i] != NULL; i++)
    {
      const char command = words[i][0];
      const guint skip = command == 'A' ? 5 : 0;

      if (command == 'Z')
        {
          length_mm += hypot (x0 - x, y0 - y);
          continue;
        }

      const double to_x = g_ascii_strtod (words[i + 1 + skip], NULL);
      const double to_y = g_ascii_strtod (words[i + 2 + skip], NULL);
      const double chord_mm = hypot (to_x - x, to_y - y);

      if (command == 'A') /* all are under half a circle */
        {
          const double r_mm = g_ascii_strtod (words[i + 1], NULL);

          length_mm += 2.0 * r_mm * asin (MIN (chord_mm / (2.0 * r_mm), 1.0));
        }
      else if (command == 'L')
        length_mm += chord_mm;
      else
        x0 = to_x, y0 = to_y;
      x = to_x;
      y = to_y;
      i += 2 + skip;
    }
  return length_mm;
}

static double
svg_length_mm (GBytes *file)
{
  g_autofree char *text = g_strndup (g_bytes_get_data (file, NULL), g_bytes_get_size (file));
  const char *from = strstr (text, "<g id=\"drill\"");
  double length_mm = 0.0;

  assert_non_null (from); /* the first group that is cut */
  for (const char *at = from; (at = strstr (at, " d=\"")) != NULL; at += 4)
    {
      g_autofree char *data = g_strndup (at + 4, strcspn (at + 4, "\""));

      length_mm += svg_path_mm (data);
    }
  for (const char *at = from; (at = strstr (at, " r=\"")) != NULL; at += 4)
    length_mm += 2.0 * G_PI * g_ascii_strtod (at + 4, NULL);
  return length_mm;
}

static double
model_mm (const GPtrArray *paths,
          HutCutterKind cutter)
{
  return hut_tool_paths_length_mm (paths, HUT_LAYER_DRILL, cutter)
         + hut_tool_paths_length_mm (paths, HUT_LAYER_CUT_INSIDE, cutter)
         + hut_tool_paths_length_mm (paths, HUT_LAYER_CUT_OUTSIDE, cutter);
}

static void
formats_agree_on_the_length_with_lead_ins_and_tabs (void **state)
{
  const guint64 first = hut_random_first_seed ();
  guint changed = 0;

  for (guint64 seed = first; seed < first + MIN (hut_random_seed_count (RANDOM_DESIGNS), 200); seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);

      design->cutter.tabs = seed % 3 != 2;
      design->cutter.lead_in_mm = seed % 2 == 0 ? 2.0 : 0.0;

      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
      g_autoptr(HutSheetSet) sheets = hut_sheet_set_new_within (assembly, parts, 1, NULL);

      for (guint i = 0; i < MIN (sheets->sheets->len, 2); i++)
        {
          const HutSheet *sheet = g_ptr_array_index (sheets->sheets, i);
          g_autoptr(GPtrArray) paths = hut_sheet_dup_tool_paths (parts, sheet, NULL);

          if (paths == NULL)
            continue;

          g_autoptr(GBytes) svg
              = hut_write_sheet_page (assembly, parts, sheet, NULL, hut_write_page_svg, NULL);
          g_autoptr(GBytes) dxf
              = hut_write_sheet_page (assembly, parts, sheet, NULL, hut_write_page_dxf, NULL);
          g_autoptr(GBytes) old
              = hut_write_sheet_page (assembly, parts, sheet, NULL, hut_write_page_dxf_r12, NULL);
          const double must_mm = model_mm (paths, design->cutter.kind);

          assert_near_mm (svg_length_mm (svg), must_mm, 1e-4);
          assert_near_mm (dxf_length_mm (dxf), must_mm, 1e-4);
          assert_near_mm (dxf_length_mm (old), must_mm, 1e-4);
          changed += fabs (must_mm - model_mm (paths, HUT_CUTTER_ROUTER)) > 0.1 ? 1 : 0;
        }
    }
  assert_true (changed > 0);
}

/* ---- by hand --------------------------------------------------------------------------------- */

static HutToolPath *
take (GPtrArray *paths,
      HutPath *closed)
{
  HutToolPath *path = g_new0 (HutToolPath, 1);

  path->layer = HUT_LAYER_CUT_OUTSIDE;
  path->id = g_strdup_printf ("p%u", paths->len);
  path->closed = closed;
  g_ptr_array_add (paths, path);
  return path;
}

static void
lead_in_goes_away_from_a_corner_into_the_waste (void **state)
{
  g_autoptr(GPtrArray) paths
      = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_tool_path_free);
  HutPath *hole = hut_path_new_rect ((HutRect) { 200, 100, 260, 160 }, 0);
  const HutCutter cutter = { .kind = HUT_CUTTER_LASER, .lead_in_mm = 3 };
  const HutToolPath *outside, *inside;

  hut_path_reverse (hole);
  outside = take (paths, hut_path_new_rect ((HutRect) { 20, 20, 120, 120 }, 0));
  inside = take (paths, hole);
  hut_tool_paths_add_leads (paths, &cutter, (HutRect) { 0, 0, 400, 300 });
  /* By hand: along the line that halves the corner, 3 / sqrt 2 each way. */
  assert_true (outside->has_lead && inside->has_lead);
  assert_near_mm (hut_point_distance_mm (outside->lead, hut_path_get (outside->closed, 0)->p), 3, 1e-9);
  assert_false (hut_path_contains (outside->closed, outside->lead));
  assert_true (hut_path_contains (inside->closed, inside->lead));
  assert_near_mm (outside->lead.u, 20 - 3 / G_SQRT2, 1e-9);
  assert_near_mm (outside->lead.v, 20 - 3 / G_SQRT2, 1e-9);
}

static void
lead_in_is_shorter_where_the_waste_is_narrow_and_left_out_where_there_is_none (void **state)
{
  g_autoptr(GPtrArray) paths
      = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_tool_path_free);
  const HutCutter cutter = { .kind = HUT_CUTTER_LASER, .lead_in_mm = 4 };
  HutPath *hole = hut_path_new_circle ((HutPoint) { 100, 100 }, 2.5);
  const HutToolPath *narrow, *tiny;

  hut_path_reverse (hole);
  narrow = take (paths, hole);
  hole = hut_path_new_circle ((HutPoint) { 200, 100 }, 0.3);
  hut_path_reverse (hole);
  tiny = take (paths, hole);
  hut_tool_paths_add_leads (paths, &cutter, (HutRect) { 0, 0, 400, 300 });
  assert_true (narrow->has_lead);
  assert_near_mm (hut_point_distance_mm (narrow->lead, hut_path_get (narrow->closed, 0)->p), 2, 1e-9);
  assert_false (tiny->has_lead);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (lead_in_goes_away_from_a_corner_into_the_waste),
    cmocka_unit_test (lead_in_is_shorter_where_the_waste_is_narrow_and_left_out_where_there_is_none),
    cmocka_unit_test (formats_agree_on_the_length_with_lead_ins_and_tabs),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
