/* tests/bench/hut-irregular-set.c: the published sets of shapes for a strip, and a check of layouts.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "bench/hut-irregular-set.h"
#include "geom/hut-geos.h"
#include <stdlib.h>
#include <string.h>

#define LINE_MAX_BYTES 4096
#define DEGREES_PER_HALF_TURN 180.0

void
hut_irregular_set_clear (HutIrregularSet *self)
{
  for (guint i = 0; self->pieces != NULL && i < self->pieces->len; i++)
    hut_region_free (g_array_index (self->pieces, HutIrregularPiece, i).region);
  g_clear_pointer (&self->pieces, g_array_unref);
}

FILE *
hut_irregular_sets_open (void)
{
  const char *root = g_getenv ("HUT_SOURCE_ROOT");
  g_autofree char *path
      = g_build_filename (root != NULL ? root : ".", "tests", "bench", "irregular.txt", NULL);

  return fopen (path, "r");
}

static void
read_ways (HutIrregularPiece *piece,
           const char *angles)
{
  g_auto(GStrv) parts = g_strsplit (angles, ",", -1);

  for (guint i = 0; parts[i] != NULL; i++)
    {
      const HutPlacement turn
          = { .turn_rad = g_ascii_strtod (parts[i], NULL) * G_PI / DEGREES_PER_HALF_TURN };
      g_autoptr(HutRegion) turned = hut_region_dup_placed (piece->region, &turn);

      g_assert (piece->way_count < HUT_IRREGULAR_WAYS_MAX);
      piece->ways[piece->way_count++]
          = (HutOutlineWay) { turn.turn_rad, hut_region_bounds (turned) };
    }
}

/* Adds the pieces of one type. Returns: how many */
static guint
read_pieces (HutIrregularSet *self,
             const char *line)
{
  g_autoptr(HutPath) outer = hut_path_new ();
  guint demand;
  char angles[32];
  int used;
  const char *at;
  double u, v;

  if (sscanf (line, "piece %u %31s :%n", &demand, angles, &used) != 2)
    g_error ("not a piece: %s", line);
  for (at = line + used; *at != '\0' && *at != '\n';)
    {
      char *end;

      u = g_ascii_strtod (at, &end);
      g_assert (*end == ',');
      v = g_ascii_strtod (end + 1, &end);
      hut_path_append (outer, (HutPoint) { u, v }, 0.0, HUT_EDGE_PLAIN);
      for (at = end; *at == ' '; at++)
        ;
    }
  for (guint i = 0; i < demand; i++)
    {
      HutIrregularPiece piece = { NULL };

      piece.region = hut_region_new (hut_path_copy (outer));
      read_ways (&piece, angles);
      self->area_mm2 += hut_region_area_mm2 (piece.region);
      g_array_append_val (self->pieces, piece);
    }
  return demand;
}

gboolean
hut_irregular_sets_next (FILE *file,
                         HutIrregularSet *self)
{
  char line[LINE_MAX_BYTES];
  guint wanted, found = 0;

  do
    if (fgets (line, sizeof line, file) == NULL)
      return FALSE;
  while (line[0] == '#');
  memset (self, 0, sizeof *self);
  self->pieces = g_array_new (FALSE, FALSE, sizeof (HutIrregularPiece));
  {
    g_auto(GStrv) words = g_strsplit (g_strchomp (line), " ", -1);

    g_assert (g_strv_length (words) == 5 && strcmp (words[0], "set") == 0);
    g_strlcpy (self->name, words[1], sizeof self->name);
    self->width_mm = g_ascii_strtod (words[2], NULL);
    wanted = (guint) g_ascii_strtoull (words[3], NULL, 10);
    self->best_percent = g_ascii_strtod (words[4], NULL);
  }
  while (found < wanted && fgets (line, sizeof line, file) != NULL)
    found += read_pieces (self, line);
  g_assert (found == wanted);
  return TRUE;
}

HutOutlinePack *
hut_irregular_set_dup_pack (const HutIrregularSet *self,
                            double length_mm)
{
  HutOutlinePack *pack = hut_outline_pack_new (length_mm, self->width_mm);

  for (guint i = 0; i < self->pieces->len; i++)
    {
      const HutIrregularPiece *piece = &g_array_index (self->pieces, HutIrregularPiece, i);
      g_autoptr(HutConvexSet) shape = hut_convex_set_new_around (piece->region, 0.0, 0.0);

      if (!hut_outline_pack_add (pack, shape, piece->ways, piece->way_count,
                                 hut_region_area_mm2 (piece->region)))
        g_error ("%s: piece %u does not fit the strip", self->name, i);
    }
  return pack;
}

static HutRegion *
dup_placed (const HutIrregularSet *self,
            const GArray *places,
            guint i)
{
  const HutIrregularPiece *piece = &g_array_index (self->pieces, HutIrregularPiece, i);
  const HutOutlinePlace *place = &g_array_index (places, HutOutlinePlace, i);
  const HutOutlineWay *way = &piece->ways[place->way];
  const HutPlacement placement = {
    .turn_rad = way->turn_rad,
    .shift = { place->at.u - way->box.u0, place->at.v - way->box.v0 },
  };

  return hut_region_dup_placed (piece->region, &placement);
}

void
hut_irregular_set_measure (const HutIrregularSet *self,
                           const GArray *places,
                           double length_mm,
                           double *overlap_mm2,
                           double *outside_mm)
{
  *overlap_mm2 = *outside_mm = 0.0;
  g_assert (places->len == self->pieces->len);
  for (guint i = 0; i < places->len; i++)
    {
      g_autoptr(HutRegion) a = dup_placed (self, places, i);
      const HutRect box = hut_region_bounds (a);

      *outside_mm = MAX (*outside_mm, MAX (MAX (-box.u0, -box.v0),
                                           MAX (box.u1 - length_mm, box.v1 - self->width_mm)));
      for (guint k = 0; k < i; k++)
        {
          g_autoptr(GError) error = NULL;
          g_autoptr(HutRegion) b = dup_placed (self, places, k);
          const double area_mm2 = hut_geos_op_area_mm2 (a, b, HUT_GEOS_INTERSECTION, &error);

          if (error != NULL)
            g_error ("%s: %s", self->name, error->message);
          *overlap_mm2 = MAX (*overlap_mm2, area_mm2);
        }
    }
}
