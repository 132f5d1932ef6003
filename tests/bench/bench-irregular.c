/* tests/bench/bench-irregular.c: shapes in a strip, beside the best that was ever published.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * bench-irregular [SECONDS [SET ...]]: the 13 published sets, or those named, for so many seconds of
 * processor time each. Prints the density, the best published one and what GEOS says of the layout. */
#include "bench/hut-irregular-set.h"
#include <stdlib.h>
#include <string.h>
#include <time.h>

#define DEFAULT_SECONDS 60.0
/* GEOS rounds along the border: of the strip's width by the strip's width, ratio. */
#define OVERLAP_RATIO 1e-7
#define OUTSIDE_RATIO 1e-7
/* Strips are at most so many times as long as the area asks for. */
#define LONGEST_RATIO 5.0
#define PERCENT 100.0

static double
now_s (void)
{
  return (double) clock () / CLOCKS_PER_SEC;
}

static gboolean
time_is_left (double done_ratio,
              gpointer until_s)
{
  return now_s () < *(const double *) until_s;
}

static gboolean
run (const HutIrregularSet *set,
     double seconds)
{
  const double start_s = now_s (), area_length_mm = set->area_mm2 / set->width_mm;
  double until_s = start_s + seconds, length_mm, overlap_mm2, outside_mm;
  g_autoptr(HutOutlinePack) pack
      = hut_irregular_set_dup_pack (set, LONGEST_RATIO * area_length_mm);
  g_autoptr(GArray) places = hut_outline_pack_run_strip (
    pack, G_MAXUINT64, &(HutPackWatch) { time_is_left, &until_s }, &length_mm);
  const double took_s = now_s () - start_s;
  double density_percent;

  if (places->len == 0)
    {
      printf ("  %-9s no layout was found\n", set->name);
      return FALSE;
    }
  hut_irregular_set_measure (set, places, length_mm, &overlap_mm2, &outside_mm);
  density_percent = PERCENT * area_length_mm / length_mm;
  printf ("  %-9s %6u %10.2f %9.2f %9.2f %8.1f %8.1f %10.1e %9.1e\n", set->name,
          set->pieces->len, length_mm, density_percent, set->best_percent,
          PERCENT * density_percent / set->best_percent, took_s, overlap_mm2, outside_mm);
  fflush (stdout);
  return overlap_mm2 <= OVERLAP_RATIO * set->width_mm * set->width_mm
         && outside_mm <= OUTSIDE_RATIO * set->width_mm;
}

static gboolean
is_wanted (const char *name,
           int argc,
           char **argv)
{
  for (int i = 2; i < argc; i++)
    if (strcmp (argv[i], name) == 0)
      return TRUE;
  return argc <= 2;
}

int
main (int argc,
      char **argv)
{
  const double seconds = argc > 1 ? g_ascii_strtod (argv[1], NULL) : DEFAULT_SECONDS;
  FILE *file = hut_irregular_sets_open ();
  gboolean right = TRUE;

  if (file == NULL)
    {
      fprintf (stderr, "run it in the folder that has tests/bench, or set HUT_SOURCE_ROOT\n");
      return EXIT_FAILURE;
    }
  printf ("  set       pieces     length   density published  of that  seconds    overlap   outside\n");
  for (;;)
    {
      g_auto(HutIrregularSet) set = { "" };

      if (!hut_irregular_sets_next (file, &set))
        break;
      if (is_wanted (set.name, argc, argv))
        right &= run (&set, seconds);
    }
  fclose (file);
  return right ? EXIT_SUCCESS : EXIT_FAILURE;
}
