/* src/export/hut-gcode.c: a page as G-code for the controller of a laser, in millimetres.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Source of the language: T. Kramer, F. Proctor, E. Messina, "The NIST RS274NGC Interpreter -
 * Version 3", NISTIR 6556 (from memory); of the laser words: the documents of the open firmware
 * grbl 1.1h, "Laser Mode". Only words that all common controllers know are used.
 *
 * Invariants: the beam is off (S0) in every G0; every contour is traced as often as the recipe has
 * passes; no coordinate is outside the sheet or the bed; an arc's ends are equally far from its
 * centre as printed, within ARC_RADIUS_MM, and the angle between them as printed is the one that
 * is meant. Where rounding would break that, the arc is written as lines. */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-gcode.h"
#include "export/hut-tool-path.h"
#include "format/hut-number.h"
#include <math.h>
#include <string.h>

#define DECIMALS 3 /* controllers use single precision: right for beds of some metres */
#define STEP_MM 0.001
/* Longest line, bytes. The shortest buffer of a common controller is 80. */
#define LINE_MAX_BYTES 70
/* How far the ends of an arc may differ in their distance from its centre, mm: the strictest limit
 * of the common controllers is 0.002 (NIST; from memory). */
#define ARC_RADIUS_MM 0.0015
/* Longest piece of an arc, rad. Own choice: far from half a circle, where rounding moves much. */
#define ARC_PIECE_RAD 1.6
/* Shorter arcs are lines: controllers may take one for a full circle. */
#define ARC_LENGTH_MIN_MM 0.02
#define ARC_SWEEP_MIN_RAD 1e-3
#define ARC_SWEEP_ERROR_RATIO 0.01
/* Chord error of lines in place of an arc, mm. Own choice: a step of the printed numbers. */
#define CHORD_MM 0.001
/* How far work may stick out by rounding, mm. */
#define OUTSIDE_MM 0.0005
/* S of full power: what the common controllers have as set on delivery. */
#define POWER_FULL 1000.0
/* Scoring, to cutting. Own choice: under a tenth of the energy that one pass puts into a
 * millimetre; to be tried on waste first, which the file says. */
#define SCORE_SPEED_RATIO 3.0
#define SCORE_POWER_RATIO 0.3

typedef struct
{
  GString *text;
  HutPoint at;       /* as printed, mm */
  double power, speed_mm_min; /* of the contour at hand; power in S, a number to POWER_FULL */
  gboolean armed;    /* M4 is on */
} Gcode;

static double
rounded_mm (double value_mm)
{
  return round (value_mm / STEP_MM) * STEP_MM;
}

static void
append_word (Gcode *self,
             char letter,
             double value,
             guint decimals)
{
  char number[HUT_NUMBER_SIZE];

  g_string_append_printf (self->text, " %c%s", letter, hut_number_fixed (number, value, decimals));
}

/* ---- comments -------------------------------------------------------------------------------- */

/* In brackets, plain ASCII, on lines that no controller finds too long. */
static void
append_comment (Gcode *self,
                const char *text)
{
  g_autofree char *plain = g_str_to_ascii (text, "C");

  for (char *at = plain; *at != '\0'; at++)
    if (!g_ascii_isprint (*at) || strchr ("();%", *at) != NULL)
      *at = ' ';
  g_strstrip (plain);
  for (const char *rest = plain; *rest != '\0';)
    {
      gsize count = MIN (strlen (rest), LINE_MAX_BYTES - 2);

      while (rest[count] != '\0' && count > 1 && rest[count] != ' ')
        count--;
      if (count <= 1)
        count = MIN (strlen (rest), LINE_MAX_BYTES - 2);
      g_string_append_printf (self->text, "(%.*s)\n", (int) count, rest);
      for (rest += count; *rest == ' ';)
        rest++;
    }
}

static void
append_head (Gcode *self,
             const HutWritePage *page)
{
  char width[HUT_NUMBER_SIZE], depth[HUT_NUMBER_SIZE], thickness[HUT_NUMBER_SIZE];
  char speed[HUT_NUMBER_SIZE], power[HUT_NUMBER_SIZE];
  const HutStock *stock = page->stock;
  g_autofree char *what = g_strdup_printf (
      "%s: %s", page->design_name != NULL ? page->design_name : "", page->name);
  g_autofree char *sheet = g_strdup_printf (
      "Stock %s, %s mm; sheet %s x %s mm, its front left corner in the origin.", stock->name,
      hut_number_fixed (thickness, hut_stock_mean_mm (stock), DECIMALS),
      hut_number_fixed (width, page->width_mm, DECIMALS),
      hut_number_fixed (depth, page->depth_mm, DECIMALS));
  g_autofree char *recipe = g_strdup_printf (
      "Recipe: %s mm/min, %s percent, passes: %u. Kerf and fit are in the path.",
      hut_number_fixed (speed, stock->speed_mm_min, DECIMALS),
      hut_number_fixed (power, stock->power_percent, 1), stock->passes);

  append_comment (self, what);
  if (page->mark != NULL)
    append_comment (self, page->mark);
  append_comment (self, sheet);
  append_comment (self, recipe);
  append_comment (self, "Needs a laser controller in laser mode, S1000 full power, M4 dynamic.");
  append_comment (self, "Scoring is faster and weaker than cutting: try it on waste first.");
  append_comment (self, "Stay with the machine, extinguisher in reach; rated eyewear; smoke drawn "
                        "off. No program knows whether a cut is safe.");
  g_string_append (self->text, "G21 G90 G17 G94\nG54\nM5 S0\n");
}

/* ---- moves ----------------------------------------------------------------------------------- */

static void
append_at (Gcode *self,
           HutPoint to)
{
  append_word (self, 'X', to.u, DECIMALS);
  append_word (self, 'Y', to.v, DECIMALS);
  self->at = to;
}

/* Beam off, to where a contour begins; there S and F are set without a move. */
static void
begin_contour (Gcode *self,
               HutPoint to)
{
  const HutPoint start = { rounded_mm (to.u), rounded_mm (to.v) };

  g_string_append (self->text, "G0");
  append_at (self, start);
  g_string_append (self->text, " S0\n");
  if (!self->armed)
    g_string_append (self->text, "M4 S0\n");
  self->armed = TRUE;
  g_string_append (self->text, "G1");
  append_at (self, start);
  append_word (self, 'F', self->speed_mm_min, 1);
  append_word (self, 'S', self->power, 0);
  g_string_append_c (self->text, '\n');
}

static void
append_line (Gcode *self,
             HutPoint to)
{
  const HutPoint end = { rounded_mm (to.u), rounded_mm (to.v) };

  if (hut_point_distance_mm (end, self->at) < STEP_MM / 2.0)
    return;
  g_string_append (self->text, "G1");
  append_at (self, end);
  g_string_append_c (self->text, '\n');
}

/* The printed centre near the true one from which both printed ends are the most equally far. */
static HutPoint
find_centre (HutPoint from,
             HutPoint to,
             HutPoint centre,
             double *difference_mm)
{
  HutPoint best = centre;
  double least_mm = INFINITY;

  *difference_mm = INFINITY;
  for (int i = -1; i <= 1; i++)
    for (int j = -1; j <= 1; j++)
      {
        const HutPoint c = { from.u + rounded_mm (centre.u - from.u) + i * STEP_MM,
                             from.v + rounded_mm (centre.v - from.v) + j * STEP_MM };
        /* Near to the true centre first: a step away has to be worth it. */
        const double off_mm
            = fabs (hut_point_distance_mm (c, from) - hut_point_distance_mm (c, to));
        const double score_mm = off_mm + (i != 0 || j != 0 ? ARC_RADIUS_MM / 4.0 : 0.0);

        if (score_mm < least_mm)
          {
            least_mm = score_mm;
            *difference_mm = off_mm;
            best = c;
          }
      }
  return best;
}

/* The angle between the printed ends as a controller finds it, rad, > 0 counter-clockwise. */
static double
printed_sweep_rad (HutPoint from,
                   HutPoint to,
                   HutPoint centre,
                   gboolean clockwise)
{
  const HutPoint a = hut_point_minus (from, centre), b = hut_point_minus (to, centre);
  double sweep_rad = atan2 (hut_point_cross (a, b), hut_point_dot (a, b));

  if (clockwise && sweep_rad >= 0.0)
    sweep_rad -= 2.0 * G_PI;
  if (!clockwise && sweep_rad <= 0.0)
    sweep_rad += 2.0 * G_PI;
  return sweep_rad;
}

/* FALSE, with nothing written, when the printed numbers would not be that arc. */
static gboolean
append_true_arc (Gcode *self,
                 HutPoint to,
                 HutPoint true_centre,
                 double radius_mm,
                 double sweep_rad)
{
  const HutPoint end = { rounded_mm (to.u), rounded_mm (to.v) };
  const gboolean clockwise = sweep_rad < 0.0;
  double difference_mm;
  const HutPoint centre = find_centre (self->at, end, true_centre, &difference_mm);
  const HutPoint arm = hut_point_minus (centre, self->at);

  if (fabs (sweep_rad) < ARC_SWEEP_MIN_RAD || fabs (sweep_rad) * radius_mm < ARC_LENGTH_MIN_MM
      || difference_mm > ARC_RADIUS_MM)
    return FALSE;
  if (fabs (printed_sweep_rad (self->at, end, centre, clockwise) - sweep_rad)
      > ARC_SWEEP_ERROR_RATIO * fabs (sweep_rad))
    return FALSE;
  g_string_append (self->text, clockwise ? "G2" : "G3");
  append_at (self, end);
  append_word (self, 'I', arm.u, DECIMALS);
  append_word (self, 'J', arm.v, DECIMALS);
  g_string_append_c (self->text, '\n');
  return TRUE;
}

static void
append_arc (Gcode *self,
            const HutSegment *arc,
            HutPoint centre,
            double radius_mm)
{
  const double sweep_rad = hut_segment_turn_rad (arc);
  const double start_rad = atan2 (arc->start.v - centre.v, arc->start.u - centre.u);
  const guint pieces = (guint) ceil (fabs (sweep_rad) / ARC_PIECE_RAD);
  const double piece_rad = sweep_rad / pieces;
  /* Sagitta r (1 - cos (a / 2)) = CHORD_MM. */
  const double chord_rad = 2.0 * acos (MAX (1.0 - CHORD_MM / radius_mm, 0.0));
  const guint chords = (guint) ceil (fabs (piece_rad) / chord_rad);

  for (guint i = 1; i <= pieces; i++)
    {
      const double at_rad = start_rad + piece_rad * i;
      const HutPoint p = { centre.u + radius_mm * cos (at_rad),
                           centre.v + radius_mm * sin (at_rad) };
      const HutPoint to = i == pieces ? arc->end : p;

      if (append_true_arc (self, to, centre, radius_mm, piece_rad))
        continue;
      for (guint k = 1; k < chords; k++)
        {
          const double chord_at_rad = at_rad - piece_rad * (1.0 - (double) k / chords);

          append_line (self, (HutPoint) { centre.u + radius_mm * cos (chord_at_rad),
                                          centre.v + radius_mm * sin (chord_at_rad) });
        }
      append_line (self, to);
    }
}

static void
append_closed (Gcode *self,
               const HutPath *path)
{
  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);
      HutPoint centre;
      double radius_mm;

      if (segment.bulge != 0.0 && hut_segment_get_circle (&segment, &centre, &radius_mm))
        append_arc (self, &segment, centre, radius_mm);
      else
        append_line (self, segment.end);
    }
}

/* ---- work ------------------------------------------------------------------------------------ */

static void
append_path (Gcode *self,
             const HutWritePage *page,
             const HutToolPath *path)
{
  const HutStock *stock = page->stock;
  const gboolean score = path->layer == HUT_LAYER_SCORE;
  const guint passes = score ? 1 : stock->passes;

  self->speed_mm_min = stock->speed_mm_min * (score ? SCORE_SPEED_RATIO : 1.0);
  self->power = MAX (round (stock->power_percent / 100.0 * POWER_FULL
                            * (score ? SCORE_POWER_RATIO : 1.0)),
                     1.0);
  if (path->layer == HUT_LAYER_POCKET)
    return; /* bored by hand: a beam along it would cut it out */
  append_comment (self, path->id);
  if (path->closed != NULL)
    {
      begin_contour (self, hut_path_get (path->closed, 0)->p);
      for (guint pass = 0; pass < passes; pass++)
        append_closed (self, path->closed);
      return;
    }
  for (guint i = 0; i < path->strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (path->strokes, i);

      begin_contour (self, g_array_index (stroke, HutPoint, 0));
      for (guint pass = 0; pass < passes; pass++)
        for (guint k = 1; k < stroke->len; k++) /* back on every other pass */
          append_line (self, g_array_index (stroke, HutPoint,
                                            pass % 2 == 0 ? k : stroke->len - 1 - k));
    }
}

gboolean
hut_gcode_check_cutter (const HutCutter *cutter,
                        GError **error)
{
  g_return_val_if_fail (cutter != NULL, FALSE);

  if (cutter->kind == HUT_CUTTER_LASER)
    return TRUE;
  g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_FORMAT,
               "gcode is for lasers, and the cutter “%s” is a router: its plunges, depth per pass, "
               "spindle and clamps are in no recipe here; allowed: svg, dxf, which the software of "
               "the router reads", cutter->name != NULL ? cutter->name : "");
  return FALSE;
}

static gboolean
check_page (const HutWritePage *page,
            GError **error)
{
  const HutRect work = hut_tool_paths_bounds (page->paths);
  const double width_mm = MIN (page->width_mm, page->cutter->bed_width_mm);
  const double depth_mm = MIN (page->depth_mm, page->cutter->bed_depth_mm);

  if (!hut_gcode_check_cutter (page->cutter, error))
    return FALSE;
  if (!(page->stock->power_percent > 0.0))
    {
      g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_BLOCKED,
                   "the recipe of stock “%s” has a power of 0", page->stock->id);
      return FALSE;
    }
  if (work.u1 >= work.u0
      && !(work.u0 >= -OUTSIDE_MM && work.v0 >= -OUTSIDE_MM && work.u1 <= width_mm + OUTSIDE_MM
           && work.v1 <= depth_mm + OUTSIDE_MM))
    {
      g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_BLOCKED,
                   "the work of %s leaves the sheet or the bed", page->name);
      return FALSE;
    }
  return TRUE;
}

GBytes *
hut_write_page_gcode (const HutWritePage *page,
                      GError **error)
{
  g_return_val_if_fail (page != NULL && page->paths != NULL, NULL);
  g_return_val_if_fail (page->stock != NULL && page->cutter != NULL, NULL);

  Gcode self = { .at = { 0, 0 } };

  if (!check_page (page, error))
    return NULL;
  self.text = g_string_new (NULL);
  append_head (&self, page);
  for (guint i = 0; i < page->paths->len; i++)
    append_path (&self, page, g_ptr_array_index (page->paths, i));
  g_string_append (self.text, "M5 S0\nG0 X0 Y0 S0\nM2\n");
  return g_string_free_to_bytes (self.text);
}
