/* tests/bench/bench-route.c: the way between cuts, beside what it is at least.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * bench-route [DESIGNS]: each sheet of the shipped examples and of so many random designs. "points" is
 * the bound over the chosen start points in any order, "layers" the one with what must be cut first,
 * layer by layer; both leave out that a hole comes before its outline within a layer. */
#include "bench/hut-tour.h"
#include "design/hut-file.h"
#include "export/hut-tool-path.h"
#include "hut-random-design.h"
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#define DEFAULT_DESIGNS 20
#define CUTS_MIN 3 /* of fewer, order says nothing */

typedef struct
{
  GArray *to_points, *to_layers, *to_nearest; /* double: ratios, per sheet */
} Table;

static int
compare (gconstpointer a,
         gconstpointer b)
{
  const double x = *(const double *) a, y = *(const double *) b;

  return (x > y) - (x < y);
}

static double
median (GArray *values)
{
  g_array_sort (values, compare);
  return values->len > 0 ? g_array_index (values, double, values->len / 2) : NAN;
}

static void
bench_sheet (Table *table,
             const char *name,
             const HutPartSet *parts,
             const HutSheet *sheet)
{
  g_autoptr(GPtrArray) tool_paths = hut_sheet_dup_tool_paths (parts, sheet, NULL);
  g_autoptr(GPtrArray) closed = g_ptr_array_new ();
  g_autoptr(GArray) ranks = g_array_new (FALSE, FALSE, sizeof (guint));
  g_autoptr(GArray) groups = g_array_new (FALSE, FALSE, sizeof (guint));
  g_autoptr(GArray) starts = g_array_new (FALSE, FALSE, sizeof (HutPoint));
  HutPoint at = { 0, 0 };
  double way_mm = 0.0, nearest_mm, points_mm, layers_mm;
  guint group = 0;

  for (guint i = 0; tool_paths != NULL && i < tool_paths->len; i++)
    {
      const HutToolPath *path = g_ptr_array_index (tool_paths, i);
      const guint rank = path->layer;

      if (path->closed == NULL)
        continue;
      if (ranks->len > 0 && rank != g_array_index (ranks, guint, ranks->len - 1))
        group++;

      const HutPoint start = hut_path_get (path->closed, 0)->p;

      way_mm += hut_point_distance_mm (at, start);
      at = start;
      g_ptr_array_add (closed, path->closed);
      g_array_append_val (ranks, rank);
      g_array_append_val (groups, group);
      g_array_append_val (starts, start);
    }
  if (closed->len < CUTS_MIN)
    return;
  nearest_mm = hut_tour_nearest_mm (closed, (const guint *) (const void *) ranks->data);
  points_mm = hut_tour_bound_mm ((const HutPoint *) (const void *) starts->data, NULL, starts->len);
  layers_mm = hut_tour_bound_mm ((const HutPoint *) (const void *) starts->data,
                                 (const guint *) (const void *) groups->data, starts->len);
  printf ("  %-26s %5u %6u %9.1f %9.1f %9.1f %9.1f %7.3f %7.3f %7.3f\n", name, sheet->number,
          closed->len, way_mm, nearest_mm, points_mm, layers_mm, way_mm / points_mm,
          way_mm / layers_mm, way_mm / nearest_mm);
  g_array_append_val (table->to_points, ((double) { way_mm / points_mm }));
  g_array_append_val (table->to_layers, ((double) { way_mm / layers_mm }));
  g_array_append_val (table->to_nearest, ((double) { way_mm / nearest_mm }));
}

static void
bench_design (Table *table,
              const char *name,
              const HutDesign *design)
{
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
  g_autoptr(HutSheetSet) set = hut_sheet_set_new (assembly, parts);

  for (guint i = 0; i < set->sheets->len; i++)
    bench_sheet (table, name, parts, g_ptr_array_index (set->sheets, i));
}

int
main (int argc,
      char **argv)
{
  const guint64 count
      = argc > 1 ? g_ascii_strtoull (argv[1], NULL, 10) : (guint64) DEFAULT_DESIGNS;
  g_autoptr(GArray) to_points = g_array_new (FALSE, FALSE, sizeof (double));
  g_autoptr(GArray) to_layers = g_array_new (FALSE, FALSE, sizeof (double));
  g_autoptr(GArray) to_nearest = g_array_new (FALSE, FALSE, sizeof (double));
  Table table = { to_points, to_layers, to_nearest };

  printf ("  %-26s %5s %6s %9s %9s %9s %9s %7s %7s %7s\n", "design", "sheet", "cuts", "way mm",
          "nearest", "points", "layers", "/points", "/layers", "/near");
  for (const char *const *name = hut_example_names (); *name != NULL; name++)
    {
      g_autoptr(GError) error = NULL;
      g_autoptr(HutDesign) design = hut_example_load (*name, &error);

      if (design == NULL)
        g_error ("%s: %s", *name, error->message);
      bench_design (&table, *name, design);
    }
  for (guint64 seed = 1; seed <= count; seed++)
    {
      g_autofree char *name = g_strdup_printf ("random %" G_GUINT64_FORMAT, seed);
      g_autoptr(HutDesign) design = hut_random_design (seed);

      bench_design (&table, name, design);
    }
  printf ("  median of %u sheets: to points %.3f, to layers %.3f, to nearest neighbour %.3f\n",
          to_points->len, median (to_points), median (to_layers), median (to_nearest));
  return EXIT_SUCCESS;
}
