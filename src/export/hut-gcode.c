/* src/export/hut-gcode.c: a page as G-code for the controller of a laser or a router, in
 * millimetres.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Source of the language: T. Kramer, F. Proctor, E. Messina, "The NIST RS274NGC Interpreter -
 * Version 3", NISTIR 6556 (from memory); of the laser words: the documents of the open firmware
 * grbl 1.1h, "Laser Mode". Only words that all common controllers know are used.
 *
 * What the tool does is hut-tool-program.h; this file only writes it down. Invariants: the beam is
 * off
 * (S0) in every G0, and a router's G0 goes across at its safe height only; no coordinate is
 * outside the
 * sheet or the bed; an arc's ends are equally far from its centre as printed, within
 * ARC_RADIUS_MM, and
 * the angle between them as printed is the one that is meant. Where rounding would break that, the
 * arc is
 * written as lines. */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-gcode.h"
#include "export/hut-tool-program.h"
#include "export/hut-tool-tab.h"
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
/* How long the spindle gets to come up to speed, s. Own choice: most hand routers take two or
 * three. */
#define SPIN_UP_S 4

typedef struct
{
  GString *text;
  const HutCutter *cutter;
  HutPoint at;       /* as printed, mm */
  double z_mm;       /* as printed */
  double feed_mm_min; /* as printed last; 0: not yet */
  gboolean armed;    /* M4 is on */
  gboolean travelled; /* the last move was a travel */
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
append_laser_head (Gcode *self)
{
  append_comment (self, "Needs a laser controller in laser mode, S1000 full power, M4 dynamic.");
  append_comment (self, "Scoring is faster and weaker than cutting: try it on waste first.");
  append_comment (self, "Stay with the machine, extinguisher in reach; rated eyewear; smoke drawn "
                        "off. No program knows whether a cut is safe.");
  g_string_append (self->text, "G21 G90 G17 G94\nG54\nM5 S0\n");
}

static void
append_router_head (Gcode *self,
                    const HutWritePage *page)
{
  char tool[HUT_NUMBER_SIZE], depth[HUT_NUMBER_SIZE], tab[HUT_NUMBER_SIZE], safe[HUT_NUMBER_SIZE];
  char speed[HUT_NUMBER_SIZE];
  g_autofree char *tools = g_strdup_printf (
      "Tool: %s mm measured cut width, flat end, cuts over its middle. Z0 is the upper face of the "
      "sheet. It goes %s mm deep: a spoil board has to lie under the sheet.",
      hut_number_fixed (tool, page->stock->kerf_mm, DECIMALS),
      hut_number_fixed (depth, hut_tool_depth_mm (page->stock, page->cutter), DECIMALS));
  g_autofree char *tabs = g_strdup_printf (
      "Tabs are %s mm high.",
      hut_number_fixed (tab, hut_tab_size (page->stock, page->cutter->kind).height_mm, DECIMALS));

  append_comment (self, tools);
  if (page->cutter->tabs)
    append_comment (self, tabs);
  append_comment (self, "Labels and lines to open by hand are not in here: the tool is wider than "
                        "letters. See the drill templates.");
  append_comment (self, "Clamps and screws stay outside of the cuts and under the safe height. "
                        "Parts without tabs come loose: hold them another way.");
  append_comment (self, "Run it in the air first. Guard, eye and ear protection; dust drawn off; "
                        "stay with the machine. No program knows whether a cut is safe.");
  g_string_append_printf (self->text, "G21 G90 G17 G94\nG54\nM5\nG0 Z%s\nM3 S%s\nG4 P%d\n",
                          hut_number_fixed (safe, page->cutter->safe_mm, DECIMALS),
                          hut_number_fixed (speed, page->cutter->spindle_rpm, 0), SPIN_UP_S);
  self->z_mm = rounded_mm (page->cutter->safe_mm);
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
  const gboolean router = page->cutter->kind == HUT_CUTTER_ROUTER;
  g_autofree char *recipe = g_strdup_printf (
      "Recipe: %s mm/min, %s%s passes: %u. Kerf and fit are in the path.",
      hut_number_fixed (speed, stock->speed_mm_min, DECIMALS),
      router ? "" : hut_number_fixed (power, stock->power_percent, 1), router ? "" : " percent,",
      stock->passes);

  append_comment (self, what);
  if (page->mark != NULL)
    append_comment (self, page->mark);
  append_comment (self, sheet);
  append_comment (self, recipe);
  if (page->cutter->kind == HUT_CUTTER_ROUTER)
    append_router_head (self, page);
  else
    append_laser_head (self);
}

/* ---- moves ----------------------------------------------------------------------------------- */

static void
append_at (Gcode *self,
           HutPoint to,
           double z_mm)
{
  append_word (self, 'X', to.u, DECIMALS);
  append_word (self, 'Y', to.v, DECIMALS);
  if (z_mm != self->z_mm)
    append_word (self, 'Z', z_mm, DECIMALS);
  self->at = to;
  self->z_mm = z_mm;
}

static void
append_feed (Gcode *self,
             double speed_mm_min)
{
  const double feed_mm_min = MAX (round (speed_mm_min * 10.0) / 10.0, 0.1);

  if (feed_mm_min != self->feed_mm_min)
    append_word (self, 'F', feed_mm_min, 1);
  self->feed_mm_min = feed_mm_min;
}

static void
append_travel (Gcode *self,
               const HutToolMove *move)
{
  const HutPoint to = { rounded_mm (move->way.end.u), rounded_mm (move->way.end.v) };
  const double z_mm = rounded_mm (move->z1_mm);

  if (self->cutter->kind == HUT_CUTTER_LASER)
    {
      g_string_append (self->text, "G0");
      append_at (self, to, 0.0);
      g_string_append (self->text, " S0\n");
      return;
    }
  if (z_mm != self->z_mm)
    {
      g_string_append (self->text, "G0");
      append_word (self, 'Z', z_mm, DECIMALS);
      g_string_append_c (self->text, '\n');
      self->z_mm = z_mm;
      return;
    }
  g_string_append (self->text, "G0");
  append_at (self, to, z_mm);
  g_string_append_c (self->text, '\n');
}

/* Where a beam begins; there S and F are set without a move. */
static void
begin_beam (Gcode *self,
            const HutToolMove *move)
{
  if (!self->armed)
    g_string_append (self->text, "M4 S0\n");
  self->armed = TRUE;
  g_string_append (self->text, "G1");
  append_at (self, self->at, 0.0);
  self->feed_mm_min = 0.0;
  append_feed (self, move->speed_mm_min);
  append_word (self, 'S', MAX (round (move->power_ratio * POWER_FULL), 1.0), 0);
  g_string_append_c (self->text, '\n');
}

static void
append_line (Gcode *self,
             HutPoint to,
             double z_mm,
             double speed_mm_min)
{
  const HutPoint end = { rounded_mm (to.u), rounded_mm (to.v) };
  const gboolean across = hut_point_distance_mm (end, self->at) >= STEP_MM / 2.0;

  z_mm = rounded_mm (z_mm);
  if (!across && z_mm == self->z_mm)
    return;
  g_string_append (self->text, "G1");
  if (across)
    append_at (self, end, z_mm);
  else
    append_word (self, 'Z', z_mm, DECIMALS);
  self->z_mm = z_mm;
  append_feed (self, speed_mm_min);
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
                 double sweep_rad,
                 double z_mm,
                 double speed_mm_min)
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
  append_at (self, end, rounded_mm (z_mm));
  append_word (self, 'I', arm.u, DECIMALS);
  append_word (self, 'J', arm.v, DECIMALS);
  append_feed (self, speed_mm_min);
  g_string_append_c (self->text, '\n');
  return TRUE;
}

static void
append_arc (Gcode *self,
            const HutToolMove *move,
            HutPoint centre,
            double radius_mm)
{
  const HutSegment *arc = &move->way;
  const double sweep_rad = hut_segment_turn_rad (arc);
  const double start_rad = atan2 (arc->start.v - centre.v, arc->start.u - centre.u);
  const guint pieces = (guint) ceil (fabs (sweep_rad) / ARC_PIECE_RAD);
  const double piece_rad = sweep_rad / pieces, fall_mm = move->z1_mm - move->z0_mm;
  /* Sagitta r (1 - cos (a / 2)) = CHORD_MM. */
  const double chord_rad = 2.0 * acos (MAX (1.0 - CHORD_MM / radius_mm, 0.0));
  const guint chords = (guint) ceil (fabs (piece_rad) / chord_rad);

  for (guint i = 1; i <= pieces; i++)
    {
      const double at_rad = start_rad + piece_rad * i;
      const HutPoint p = { centre.u + radius_mm * cos (at_rad),
                           centre.v + radius_mm * sin (at_rad) };
      const HutPoint to = i == pieces ? arc->end : p;
      const double z_mm = move->z0_mm + fall_mm * i / pieces;

      if (append_true_arc (self, to, centre, radius_mm, piece_rad, z_mm, move->speed_mm_min))
        continue;
      for (guint k = 1; k < chords; k++)
        {
          const double share_ratio = 1.0 - (double) k / chords;
          const double chord_at_rad = at_rad - piece_rad * share_ratio;

          append_line (self, (HutPoint) { centre.u + radius_mm * cos (chord_at_rad),
                                          centre.v + radius_mm * sin (chord_at_rad) },
                       z_mm - fall_mm / pieces * share_ratio, move->speed_mm_min);
        }
      append_line (self, to, z_mm, move->speed_mm_min);
    }
}

/* ---- work ------------------------------------------------------------------------------------ */

static void
append_cut (Gcode *self,
            const HutToolMove *move)
{
  HutPoint centre;
  double radius_mm;

  if (self->travelled && self->cutter->kind == HUT_CUTTER_LASER)
    begin_beam (self, move);
  if (move->way.bulge != 0.0 && hut_segment_get_circle (&move->way, &centre, &radius_mm))
    append_arc (self, move, centre, radius_mm);
  else
    append_line (self, move->way.end, move->z1_mm, move->speed_mm_min);
}

static void
append_program (Gcode *self,
                const HutWritePage *page)
{
  g_autoptr(GArray) moves = hut_tool_program_new (page->paths, page->stock, page->cutter);
  guint path = G_MAXUINT;

  for (guint i = 0; i < moves->len; i++)
    {
      const HutToolMove *move = &g_array_index (moves, HutToolMove, i);

      if (move->path != path)
        append_comment (self, ((HutToolPath *) g_ptr_array_index (page->paths, move->path))->id);
      path = move->path;
      if (move->cuts)
        append_cut (self, move);
      else
        append_travel (self, move);
      self->travelled = !move->cuts;
    }
}

static gboolean
check_page (const HutWritePage *page,
            GError **error)
{
  const HutRect work = hut_tool_paths_bounds (page->paths);
  const double width_mm = MIN (page->width_mm, page->cutter->bed_width_mm);
  const double depth_mm = MIN (page->depth_mm, page->cutter->bed_depth_mm);

  if (page->cutter->kind == HUT_CUTTER_LASER && !(page->stock->power_percent > 0.0))
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

  Gcode self = { .cutter = page->cutter };

  if (!check_page (page, error))
    return NULL;
  self.text = g_string_new (NULL);
  append_head (&self, page);
  append_program (&self, page);
  g_string_append (self.text, page->cutter->kind == HUT_CUTTER_LASER ? "M5 S0\nG0 X0 Y0 S0\nM2\n"
                                                                     : "M5\nG0 X0 Y0\nM2\n");
  return g_string_free_to_bytes (self.text);
}
