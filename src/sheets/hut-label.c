/* src/sheets/hut-label.c: where a part's name is scored on it.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strategy: the border of the part becomes short lines; a label is a box with its distance to the
 * edge all round. A box lies in the material when its middle does and no border line touches it.
 * Middles are tried on a grid over the part, nearest to the middle first. Not promised: the one
 * best place; a gap between two grid points may be missed. */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-label.h"
#include "sheets/hut-stroke-font.h"
#include <math.h>

/* Heights of letters that are tried, mm. Own choice: readable, but not a day of scoring. */
static const double HEIGHTS_MM[] = { 10.0, 7.0, HUT_LABEL_HEIGHT_MIN_MM };

/* Middles tried per axis, and their least distance, mm. Own choice: finds the legs of a frame. */
#define TRIES_PER_AXIS 64
#define TRY_STEP_MIN_MM 0.5

/* Arcs become lines of at most this angle, rad; own choice. The sagitta r (1 - cos (angle / 2)) of
 * 0.1 rad is 0.00125 r; it is added to the box's distance from the edge per arc. */
#define ARC_STEP_RAD 0.1

typedef struct
{
  HutPoint a, b;
  double reach_mm; /* how far the true border may be from the line */
} Line;

static void
append_segment (GArray *lines,
                HutSegment segment)
{
  HutPoint centre;
  double radius_mm;
  const double sweep_rad = 4.0 * atan (segment.bulge);

  if (segment.bulge == 0.0 || !hut_segment_get_circle (&segment, &centre, &radius_mm))
    {
      const Line line = { segment.start, segment.end, 0.0 };

      g_array_append_val (lines, line);
      return;
    }

  const guint count = (guint) ceil (fabs (sweep_rad) / ARC_STEP_RAD);
  const double start_rad = atan2 (segment.start.v - centre.v, segment.start.u - centre.u);
  const double step_rad = sweep_rad / count;
  Line line = { .b = segment.start, .reach_mm = radius_mm * (1.0 - cos (step_rad / 2.0)) };

  for (guint i = 1; i <= count; i++)
    {
      line.a = line.b;
      line.b.u = centre.u + radius_mm * cos (start_rad + i * step_rad);
      line.b.v = centre.v + radius_mm * sin (start_rad + i * step_rad);
      g_array_append_val (lines, line);
    }
}

static void
append_path (GArray *lines,
             const HutPath *path)
{
  for (guint i = 0; i < hut_path_get_count (path); i++)
    append_segment (lines, hut_path_get_segment (path, i));
}

/* TRUE when a line has a point inside the rectangle or on its border (slab test). */
static gboolean
line_meets (const Line *line,
            HutRect rect)
{
  const double start[2] = { line->a.u, line->a.v };
  const double step[2] = { line->b.u - line->a.u, line->b.v - line->a.v };
  const double low[2] = { rect.u0 - line->reach_mm, rect.v0 - line->reach_mm };
  const double high[2] = { rect.u1 + line->reach_mm, rect.v1 + line->reach_mm };
  double from = 0.0, to = 1.0;

  for (guint axis = 0; axis < 2; axis++)
    {
      if (step[axis] == 0.0)
        {
          if (start[axis] < low[axis] || start[axis] > high[axis])
            return FALSE;
          continue;
        }
      const double a = (low[axis] - start[axis]) / step[axis];
      const double b = (high[axis] - start[axis]) / step[axis];

      from = MAX (from, MIN (a, b));
      to = MIN (to, MAX (a, b));
    }
  return from <= to;
}

static gboolean
has_room (const HutPart *part,
          const GArray *lines,
          HutPoint middle,
          double half_width_mm,
          double half_height_mm)
{
  const HutRect rect = { middle.u - half_width_mm, middle.v - half_height_mm,
                         middle.u + half_width_mm, middle.v + half_height_mm };

  for (guint i = 0; i < lines->len; i++)
    if (line_meets (&g_array_index (lines, Line, i), rect))
      return FALSE;
  return hut_region_contains (part->region, middle);
}

/* A middle to try, in steps from the part's own middle. */
typedef struct
{
  int u_count, v_count;
  double away_mm2;
} Try;

static int
compare_tries (gconstpointer a_,
               gconstpointer b_)
{
  const Try *a = a_, *b = b_;

  if (a->away_mm2 != b->away_mm2)
    return a->away_mm2 < b->away_mm2 ? -1 : 1;
  if (a->v_count != b->v_count)
    return a->v_count - b->v_count;
  return a->u_count - b->u_count;
}

/* (transfer full) (element-type Try): a grid around (0, 0), which is its first point. */
static GArray *
new_tries (double step_u_mm,
           double step_v_mm,
           double room_u_mm,
           double room_v_mm)
{
  const int last_u = (int) floor (room_u_mm / step_u_mm);
  const int last_v = (int) floor (room_v_mm / step_v_mm);
  GArray *tries = g_array_new (FALSE, FALSE, sizeof (Try));

  for (int j = -last_v; j <= last_v; j++)
    for (int i = -last_u; i <= last_u; i++)
      {
        const double u_mm = i * step_u_mm, v_mm = j * step_v_mm;
        const Try try = { i, j, u_mm * u_mm + v_mm * v_mm };

        g_array_append_val (tries, try);
      }
  g_array_sort (tries, compare_tries);
  return tries;
}

/* The place nearest to the middle of the part for a box of that size; FALSE when there is none. */
static gboolean
find_place (const HutPart *part,
            const GArray *lines,
            double width_mm,
            double height_mm,
            HutPoint *place)
{
  const HutRect bounds = hut_region_bounds (part->region);
  const double half_width_mm = width_mm / 2.0 + HUT_LABEL_EDGE_MM;
  const double half_height_mm = height_mm / 2.0 + HUT_LABEL_EDGE_MM;
  const double room_u_mm = (bounds.u1 - bounds.u0) / 2.0 - half_width_mm;
  const double room_v_mm = (bounds.v1 - bounds.v0) / 2.0 - half_height_mm;

  if (room_u_mm < 0.0 || room_v_mm < 0.0)
    return FALSE;

  const double step_u_mm = MAX (TRY_STEP_MIN_MM, 2.0 * room_u_mm / TRIES_PER_AXIS);
  const double step_v_mm = MAX (TRY_STEP_MIN_MM, 2.0 * room_v_mm / TRIES_PER_AXIS);
  g_autoptr(GArray) tries = new_tries (step_u_mm, step_v_mm, room_u_mm, room_v_mm);

  for (guint i = 0; i < tries->len; i++)
    {
      const Try *try = &g_array_index (tries, Try, i);

      place->u = (bounds.u0 + bounds.u1) / 2.0 + try->u_count * step_u_mm;
      place->v = (bounds.v0 + bounds.v1) / 2.0 + try->v_count * step_v_mm;
      if (has_room (part, lines, *place, half_width_mm, half_height_mm))
        return TRUE;
    }
  return FALSE;
}

/* Moves strokes of a text with its lower left corner at (0, 0) to a middle, turned if asked. */
static void
append_strokes (GPtrArray *all,
                GPtrArray *strokes,
                HutPoint text_middle,
                HutPoint place,
                gboolean turned)
{
  for (guint i = 0; i < strokes->len; i++)
    {
      GArray *stroke = g_ptr_array_index (strokes, i);

      for (guint k = 0; k < stroke->len; k++)
        {
          HutPoint *p = &g_array_index (stroke, HutPoint, k);
          const double u_mm = p->u - text_middle.u, v_mm = p->v - text_middle.v;

          p->u = place.u + (turned ? -v_mm : u_mm);
          p->v = place.v + (turned ? u_mm : v_mm);
        }
      g_ptr_array_add (all, g_array_ref (stroke));
    }
}

/* Name and arrow about @place. A text along v needs an arrow that lies along the text. */
static GPtrArray *
strokes_at (const char *name,
            double height_mm,
            HutPoint place,
            gboolean turned)
{
  const char arrow_text[] = { HUT_STROKE_ARROW, '\0' };
  g_autofree char *text = g_strdup_printf ("%s %s", name, turned ? "" : arrow_text);
  const double unit_mm = height_mm / HUT_STROKE_HEIGHT_UNITS;
  /* Along v the arrow takes the place of the last letter, and is as long as a letter is high. */
  const double arrow_mm = turned ? height_mm : 0.0;
  const double before_mm = (double) strlen (text) * HUT_STROKE_STEP_UNITS * unit_mm;
  const double width_mm
      = turned ? before_mm + arrow_mm : hut_stroke_text_width_mm (text, height_mm);
  g_autoptr(GPtrArray) strokes = hut_stroke_text_new (text, height_mm);
  GPtrArray *all = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);

  append_strokes (all, strokes, (HutPoint) { width_mm / 2.0, height_mm / 2.0 }, place, turned);
  if (turned)
    {
      g_autoptr(GPtrArray) arrow = hut_stroke_text_new (arrow_text, height_mm);
      const HutPoint middle = { HUT_STROKE_WIDTH_UNITS * unit_mm / 2.0, height_mm / 2.0 };
      const HutPoint at = { place.u, place.v + width_mm / 2.0 - arrow_mm / 2.0 };

      append_strokes (all, arrow, middle, at, FALSE);
    }
  return all;
}

HutLabel *
hut_label_new (const HutPart *part)
{
  g_return_val_if_fail (part != NULL && part->label != NULL, NULL);

  g_autoptr(GArray) lines = g_array_new (FALSE, FALSE, sizeof (Line));
  const double letters = (double) strlen (part->label) + 2.0; /* a blank and the arrow */

  append_path (lines, part->region->outer);
  for (guint i = 0; i < part->region->holes->len; i++)
    append_path (lines, g_ptr_array_index (part->region->holes, i));
  for (guint i = 0; i < G_N_ELEMENTS (HEIGHTS_MM); i++)
    {
      const double height_mm = HEIGHTS_MM[i];
      /* One step per letter is an upper bound of both ways to set the text. */
      const double width_mm
          = letters * HUT_STROKE_STEP_UNITS * height_mm / HUT_STROKE_HEIGHT_UNITS;

      for (int turned = 0; turned < 2; turned++)
        {
          HutPoint place = { 0, 0 };

          if (find_place (part, lines, turned ? height_mm : width_mm, turned ? width_mm : height_mm,
                          &place))
            {
              HutLabel *self = g_new0 (HutLabel, 1);

              self->height_mm = height_mm;
              self->strokes = strokes_at (part->label, height_mm, place, turned);
              return self;
            }
        }
    }
  return NULL;
}

void
hut_label_free (HutLabel *self)
{
  if (self == NULL)
    return;
  g_ptr_array_unref (self->strokes);
  g_free (self);
}

double
hut_label_length_mm (const HutLabel *self)
{
  g_return_val_if_fail (self != NULL, 0.0);

  double length_mm = 0.0;

  for (guint i = 0; i < self->strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (self->strokes, i);

      for (guint k = 1; k < stroke->len; k++)
        length_mm += hut_point_distance_mm (g_array_index (stroke, HutPoint, k - 1),
                                            g_array_index (stroke, HutPoint, k));
    }
  return length_mm;
}
