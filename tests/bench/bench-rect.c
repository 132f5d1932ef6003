/* tests/bench/bench-rect.c: rectangles in bins, beside the best that was ever published.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * bench-rect [WORK]: the 500 published instances, as they lie and turned by 90 degrees, at most WORK a
 * piece. Prints per class the sum of bins, of the best known and of the lower bound, and the
 * seconds of processor time. */
#include "bench/hut-rect-instance.h"
#include <stdlib.h>
#include <time.h>

#define DEFAULT_WORK 6000000 /* a tenth of a second for the hardest instance; ten times that: one */

typedef struct
{
  guint bins, best, bound;
  double seconds, longest_s;
} Row;

static gboolean
run (const HutRectInstance *instance,
     gboolean may_turn,
     guint64 work,
     Row *row)
{
  const clock_t start = clock ();
  guint bins;
  g_autofree HutRectPlace *places
      = hut_rect_pack (instance->sizes, instance->count, instance->bin, may_turn, work, &bins);
  const double seconds = (double) (clock () - start) / CLOCKS_PER_SEC;
  const guint bound
      = hut_rect_bound (instance->sizes, instance->count, instance->bin, may_turn);

  row->bins += bins;
  row->best += instance->best[may_turn ? 1 : 0];
  row->bound += bound;
  row->seconds += seconds;
  row->longest_s = MAX (row->longest_s, seconds);
  if (places != NULL && bins >= bound && hut_rect_layout_is_right (instance, places, bins))
    return TRUE;
  fprintf (stderr, "class %u, n %u, index %u: the layout is wrong\n", instance->class_number,
           instance->count, instance->index);
  return FALSE;
}

static void
print_row (const char *name,
           const Row *row)
{
  printf ("  %-6s %6u %6u %6u %9.2f %9.3f\n", name, row->bins, row->best, row->bound, row->seconds,
          row->longest_s);
}

static gboolean
bench (gboolean may_turn,
       guint64 work)
{
  Row rows[HUT_RECT_CLASSES + 1] = { 0 };
  Row *sum = &rows[0];
  HutRectInstance instance;
  gboolean right = TRUE;
  FILE *file = hut_rect_instances_open ();

  if (file == NULL)
    {
      fprintf (stderr, "run it in the folder that has tests/bench, or set HUT_SOURCE_ROOT\n");
      return FALSE;
    }
  while (hut_rect_instances_next (file, &instance))
    right &= run (&instance, may_turn, work, &rows[instance.class_number]);
  fclose (file);
  printf ("%s\n  class    bins   best  bound   seconds   longest\n",
          may_turn ? "turned by 90 degrees" : "as they lie");
  for (guint i = 1; i <= HUT_RECT_CLASSES; i++)
    {
      g_autofree char *name = g_strdup_printf ("%u", i);

      print_row (name, &rows[i]);
      sum->bins += rows[i].bins;
      sum->best += rows[i].best;
      sum->bound += rows[i].bound;
      sum->seconds += rows[i].seconds;
      sum->longest_s = MAX (sum->longest_s, rows[i].longest_s);
    }
  print_row ("sum", sum);
  return right;
}

int
main (int argc,
      char **argv)
{
  const guint64 work = argc > 1 ? g_ascii_strtoull (argv[1], NULL, 10) : DEFAULT_WORK;

  return bench (FALSE, work) && bench (TRUE, work) ? EXIT_SUCCESS : EXIT_FAILURE;
}
