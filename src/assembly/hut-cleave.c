/* src/assembly/hut-cleave.c: a region parted along a line.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Loops of corners are kept in one list for outlines and holes alike; a crossing of the line is a
 * corner with a number. From crossing to crossing in pairs, each chord either parts the loop that
 * both lie on or joins two loops; the corners of a chord are made once and used by both sides. In
 * the end counter-clockwise loops are pieces and clockwise ones their holes. */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-cleave.h"
#include <math.h>

/* Along runs with the line, across over it. */
static double
along (gboolean vertical,
       HutPoint p)
{
  return vertical ? p.v : p.u;
}

static double
across (gboolean vertical,
        HutPoint p)
{
  return vertical ? p.u : p.v;
}

static HutPoint
point_at (gboolean vertical,
          double along_mm,
          double across_mm)
{
  return vertical ? (HutPoint) { across_mm, along_mm } : (HutPoint) { along_mm, across_mm };
}

/* ---- crossings ------------------------------------------------------------------------------- */

/* A corner of a loop; crossing is 0, or the number of the crossing that it stands for. */
typedef struct
{
  HutVertex vertex;
  guint crossing;
} Corner;

typedef struct
{
  double along_mm;
  guint number; /* from 1, as in Corner */
} Crossing;

static int
compare_crossings (gconstpointer a,
                   gconstpointer b)
{
  const double x = ((const Crossing *) a)->along_mm, y = ((const Crossing *) b)->along_mm;

  return (x > y) - (x < y);
}

/* Whether the line runs through the bounds of an arc. */
static gboolean
arc_is_near (const HutSegment *segment,
             gboolean vertical,
             double at_mm)
{
  g_autoptr(HutPath) closed = hut_path_new ();
  HutRect bounds;

  hut_path_append (closed, segment->start, segment->bulge, segment->kind);
  hut_path_append (closed, segment->end, 0.0, segment->kind);
  bounds = hut_path_bounds (closed);
  return vertical ? at_mm >= bounds.u0 && at_mm <= bounds.u1
                  : at_mm >= bounds.v0 && at_mm <= bounds.v1;
}

/* TRUE when a segment passes over the line; FALSE without error when it stays on one side. */
static gboolean
segment_crosses (const HutSegment *segment,
                 gboolean vertical,
                 double at_mm,
                 GError **error)
{
  const double a_mm = across (vertical, segment->start) - at_mm,
               b_mm = across (vertical, segment->end) - at_mm;

  if (segment->bulge != 0.0)
    {
      if (arc_is_near (segment, vertical, at_mm))
        g_set_error (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID, "a seam cannot cross an arc");
      return FALSE;
    }
  if (a_mm == 0.0 || b_mm == 0.0)
    {
      g_set_error (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID,
                   "a seam cannot meet a corner of the outline");
      return FALSE;
    }
  if (a_mm * b_mm > 0.0)
    return FALSE;
  if (along (vertical, segment->start) != along (vertical, segment->end))
    {
      g_set_error (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID,
                   "a seam cannot cross a slanted edge");
      return FALSE;
    }
  return TRUE;
}

/* Appends a path's corners as a loop, with the crossings put in. */
static gboolean
append_loop (GPtrArray *loops,
             GArray *crossings,
             const HutPath *path,
             gboolean vertical,
             double at_mm,
             GError **error)
{
  GArray *loop = g_array_new (FALSE, TRUE, sizeof (Corner));

  g_ptr_array_add (loops, loop);
  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);
      g_autoptr(GError) own_error = NULL;
      Corner corner = { .vertex = *hut_path_get (path, i) };

      g_array_append_val (loop, corner);
      if (segment_crosses (&segment, vertical, at_mm, &own_error))
        {
          const Crossing crossing = { along (vertical, segment.start), crossings->len + 1 };

          corner.vertex.p = point_at (vertical, crossing.along_mm, at_mm);
          corner.crossing = crossing.number;
          g_array_append_val (loop, corner);
          g_array_append_val (crossings, crossing);
        }
      else if (own_error != NULL)
        {
          g_propagate_error (error, g_steal_pointer (&own_error));
          return FALSE;
        }
    }
  return TRUE;
}

/* Loops with crossings put in, and the crossings sorted along the line. */
static gboolean
trace (const HutRegion *region,
       gboolean vertical,
       double at_mm,
       GPtrArray *loops,
       GArray *crossings,
       GError **error)
{
  if (!append_loop (loops, crossings, region->outer, vertical, at_mm, error))
    return FALSE;
  for (guint i = 0; i < region->holes->len; i++)
    if (!append_loop (loops, crossings, g_ptr_array_index (region->holes, i), vertical, at_mm,
                      error))
      return FALSE;
  g_array_sort (crossings, compare_crossings);
  return TRUE;
}

static GPtrArray *
loops_new (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
}

GArray *
hut_cleave_intervals (const HutRegion *region,
                      gboolean vertical,
                      double at_mm,
                      GError **error)
{
  g_autoptr(GPtrArray) loops = loops_new ();
  g_autoptr(GArray) crossings = g_array_new (FALSE, FALSE, sizeof (Crossing));
  GArray *intervals;

  if (!trace (region, vertical, at_mm, loops, crossings, error))
    return NULL;
  intervals = g_array_new (FALSE, FALSE, sizeof (HutSolidInterval));
  for (guint i = 0; i + 1 < crossings->len; i += 2)
    {
      const HutSolidInterval interval = { g_array_index (crossings, Crossing, i).along_mm,
                                          g_array_index (crossings, Crossing, i + 1).along_mm };

      g_array_append_val (intervals, interval);
    }
  return intervals;
}

/* ---- chords ---------------------------------------------------------------------------------- */

/* Inner corners of the chord over one solid interval, ascending. */
static GArray *
chord_corners (const HutSeam *seam,
               double from_mm,
               double to_mm)
{
  GArray *corners = g_array_new (FALSE, TRUE, sizeof (Corner));
  double last_mm = seam->at_mm;

  for (guint z = 0; z < seam->zones->len; z++)
    {
      const HutFingerZone *zone = &g_array_index (seam->zones, HutFingerZone, z);

      if (zone->from_mm <= from_mm || zone->to_mm >= to_mm)
        continue;
      for (guint i = 0; i <= zone->count; i++)
        {
          const double at_mm
              = hut_snap_mm (zone->from_mm + (zone->to_mm - zone->from_mm) * i / zone->count);
          const double next_mm
              = i == zone->count
                    ? seam->at_mm
                    : hut_snap_mm (seam->at_mm + (i % 2 == 0 ? 1.0 : -1.0) * seam->reach_mm);
          const Corner pair[2] = {
            { .vertex
              = { .p = point_at (seam->vertical, at_mm, last_mm), .kind = HUT_EDGE_MATING } },
            { .vertex
              = { .p = point_at (seam->vertical, at_mm, next_mm), .kind = HUT_EDGE_MATING } },
          };

          g_array_append_vals (corners, pair, 2);
          last_mm = next_mm;
        }
    }
  return corners;
}

static void
append_reversed (GArray *loop,
                 const GArray *corners)
{
  for (guint i = corners->len; i > 0; i--)
    g_array_append_val (loop, g_array_index (corners, Corner, i - 1));
}

/* Appends @count corners of a loop from @first on, round the end. */
static void
append_round (GArray *target,
              const GArray *loop,
              guint first,
              guint count)
{
  for (guint i = 0; i < count; i++)
    g_array_append_val (target, g_array_index (loop, Corner, (first + i) % loop->len));
}

/* The corner of a crossing as the start of a stretch along the chord. */
static void
append_onto_chord (GArray *target,
                   const GArray *loop,
                   guint index)
{
  Corner corner = g_array_index (loop, Corner, index);

  corner.vertex.kind = HUT_EDGE_MATING;
  corner.vertex.bulge = 0.0;
  g_array_append_val (target, corner);
}

static gboolean
find_crossing (const GPtrArray *loops,
               guint number,
               guint *loop_index,
               guint *corner_index)
{
  for (guint l = 0; l < loops->len; l++)
    {
      const GArray *loop = g_ptr_array_index (loops, l);

      for (guint i = 0; i < loop->len; i++)
        if (g_array_index (loop, Corner, i).crossing == number)
          {
            *loop_index = l;
            *corner_index = i;
            return TRUE;
          }
    }
  return FALSE;
}

/* One loop is parted into two: from p to q and back along the chord, and from q to p and back. */
static void
part_loop (GPtrArray *loops,
           guint index,
           guint p,
           guint q,
           const GArray *chord)
{
  g_autoptr(GArray) loop = g_array_ref (g_ptr_array_index (loops, index));
  const guint to_q = (q + loop->len - p) % loop->len;
  GArray *first = g_array_new (FALSE, TRUE, sizeof (Corner)),
         *second = g_array_new (FALSE, TRUE, sizeof (Corner));

  append_round (first, loop, p, to_q);
  append_onto_chord (first, loop, q);
  append_reversed (first, chord);
  append_round (second, loop, q, loop->len - to_q);
  append_onto_chord (second, loop, p);
  g_array_append_vals (second, chord->data, chord->len);
  g_ptr_array_remove_index (loops, index);
  g_ptr_array_add (loops, first);
  g_ptr_array_add (loops, second);
}

/* Two loops become one, joined by the chord run both ways. */
static void
join_loops (GPtrArray *loops,
            guint p_loop,
            guint p,
            guint q_loop,
            guint q,
            const GArray *chord)
{
  const GArray *a = g_ptr_array_index (loops, p_loop), *b = g_ptr_array_index (loops, q_loop);
  GArray *joined = g_array_new (FALSE, TRUE, sizeof (Corner));

  append_round (joined, a, p, a->len);
  append_onto_chord (joined, a, p);
  g_array_append_vals (joined, chord->data, chord->len);
  append_round (joined, b, q, b->len);
  append_onto_chord (joined, b, q);
  append_reversed (joined, chord);
  g_ptr_array_remove_index (loops, MAX (p_loop, q_loop));
  g_ptr_array_remove_index (loops, MIN (p_loop, q_loop));
  g_ptr_array_add (loops, joined);
}

/* ---- pieces ---------------------------------------------------------------------------------- */

static HutPath *
loop_to_path (const GArray *loop)
{
  HutPath *path = hut_path_new ();

  for (guint i = 0; i < loop->len; i++)
    {
      const HutVertex *vertex = &g_array_index (loop, Corner, i).vertex;

      hut_path_append (path, vertex->p, vertex->bulge, vertex->kind);
    }
  return path;
}

typedef struct
{
  HutRegion *region;
  double across_mm, along_mm;
} Piece;

static int
compare_pieces (gconstpointer a,
                gconstpointer b)
{
  const Piece *p = a, *q = b;

  if (p->across_mm != q->across_mm)
    return (p->across_mm > q->across_mm) - (p->across_mm < q->across_mm);
  return (p->along_mm > q->along_mm) - (p->along_mm < q->along_mm);
}

/* Each hole lies in one piece, as the region was valid and no hole without a crossing moved. */
static gboolean
give_hole (GPtrArray *regions,
           HutPath *hole)
{
  const HutPoint probe = hut_path_get (hole, 0)->p;

  for (guint i = 0; i < regions->len; i++)
    {
      HutRegion *region = g_ptr_array_index (regions, i);

      if (!hut_path_contains (region->outer, probe))
        continue;
      hut_region_take_hole (region, hole);
      return TRUE;
    }
  return FALSE;
}

static GPtrArray *
collect_pieces (const GPtrArray *loops,
                gboolean vertical,
                GError **error)
{
  g_autoptr(GArray) pieces = g_array_new (FALSE, FALSE, sizeof (Piece));
  g_autoptr(GPtrArray) holes = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_path_free);
  g_autoptr(GPtrArray) regions = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_region_free);

  for (guint l = 0; l < loops->len; l++)
    {
      HutPath *path = loop_to_path (g_ptr_array_index (loops, l));
      const HutRect bounds = hut_path_bounds (path);

      if (hut_path_area_mm2 (path) > 0.0)
        {
          const Piece piece = { hut_region_new (path), vertical ? bounds.u0 : bounds.v0,
                                vertical ? bounds.v0 : bounds.u0 };

          g_array_append_val (pieces, piece);
        }
      else
        g_ptr_array_add (holes, path);
    }
  g_array_sort (pieces, compare_pieces);
  for (guint i = 0; i < pieces->len; i++)
    g_ptr_array_add (regions, g_array_index (pieces, Piece, i).region);
  while (holes->len > 0)
    {
      HutPath *hole = g_ptr_array_steal_index (holes, 0);

      if (give_hole (regions, hole))
        continue;
      hut_path_free (hole);
      g_set_error_literal (error, HUT_GEOM_ERROR, HUT_GEOM_ERROR_INVALID,
                           "a hole of the region lies in none of its pieces");
      return NULL;
    }
  return g_steal_pointer (&regions);
}

GPtrArray *
hut_region_cleave (const HutRegion *region,
                   const HutSeam *seam,
                   GError **error)
{
  g_autoptr(GPtrArray) loops = loops_new ();
  g_autoptr(GArray) crossings = g_array_new (FALSE, FALSE, sizeof (Crossing));

  g_return_val_if_fail (region != NULL && seam != NULL && seam->zones != NULL, NULL);

  if (!trace (region, seam->vertical, seam->at_mm, loops, crossings, error))
    return NULL;
  for (guint i = 0; i + 1 < crossings->len; i += 2)
    {
      const Crossing *from = &g_array_index (crossings, Crossing, i),
                     *to = &g_array_index (crossings, Crossing, i + 1);
      g_autoptr(GArray) chord = chord_corners (seam, from->along_mm, to->along_mm);
      guint p_loop, p, q_loop, q;

      if (!find_crossing (loops, from->number, &p_loop, &p)
          || !find_crossing (loops, to->number, &q_loop, &q))
        g_assert_not_reached ();
      if (p_loop == q_loop)
        part_loop (loops, p_loop, p, q, chord);
      else
        join_loops (loops, p_loop, p, q_loop, q, chord);
    }
  return collect_pieces (loops, seam->vertical, error);
}
