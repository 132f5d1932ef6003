/* tests/export/hut-gcode-run.c: a small controller that runs G-code.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The rules and where they come from (read in the sources of the open firmware grbl 1.1h unless said
 * otherwise): no line over 79 characters without blanks and comments; no two words of one group and
 * no letter twice; units, distances and feed set before they count; ends of an arc equally far from
 * the centre within 0.002 mm (NIST RS274NGC, from memory); equal angles of both ends are a full
 * circle. */
#include "config.h"
#include "hut-gcode-run.h"
#include <math.h>
#include <string.h>

#define LINE_MAX_BYTES 70       /* below the 79 */
#define RADIUS_MM 0.002
#define POWER_MAX 1000.0

/* What a line says; NAN: not said. */
typedef struct
{
  double words[26];
  GArray *codes; /* int: G as 100 + n, M as 300 + n */
} Line;

typedef struct
{
  HutGcodeRun *run;
  double x, y, z, s, f;
  double safe_mm; /* of a router; 0: a laser */
  gboolean units, absolute, armed, spun_up, ended;
  int motion;
  char *fault; /* the first one */
} State;

static void
tell (State *self,
      const char *format,
      ...)
{
  va_list arguments;

  if (self->fault != NULL)
    return;
  va_start (arguments, format);
  self->fault = g_strdup_vprintf (format, arguments);
  va_end (arguments);
}

static double
word (const Line *line,
      char letter)
{
  return line->words[letter - 'A'];
}

static gboolean
has (const Line *line,
     int code)
{
  for (guint i = 0; i < line->codes->len; i++)
    if (g_array_index (line->codes, int, i) == code)
      return TRUE;
  return FALSE;
}

/* The line without comments and blanks; comments are kept. (transfer full) */
static char *
dup_bare (State *self,
          const char *text)
{
  GString *bare = g_string_new (NULL);
  const char *at = text;

  while (*at != '\0')
    {
      if (*at == '(')
        {
          const char *end = strchr (at, ')');
          const char *nested = strchr (at + 1, '(');

          if (end == NULL || (nested != NULL && nested < end))
            {
              tell (self, "comment not closed, or one in another: %s", text);
              break;
            }
          g_ptr_array_add (self->run->comments, g_strndup (at + 1, (gsize) (end - at - 1)));
          at = end;
        }
      else if (*at == '%' || *at == ';' || *at == ')')
        tell (self, "a sign that some controllers refuse: %s", text);
      else if (*at != ' ')
        g_string_append_c (bare, *at);
      at++;
    }
  return g_string_free (bare, FALSE);
}

/* [A-Z][-]digits[.digits] ... */
static gboolean
read_words (State *self,
            const char *bare,
            Line *line)
{
  const char *at = bare;

  for (guint i = 0; i < G_N_ELEMENTS (line->words); i++)
    line->words[i] = NAN;
  while (*at != '\0')
    {
      const char letter = *at++;
      /* The digits alone: to the C library "0X20" would be one number. */
      const gsize size = strspn (at, "-.0123456789");
      g_autofree char *digits = g_strndup (at, size);
      char *end = NULL;
      const double value = g_ascii_strtod (digits, &end);

      if (letter < 'A' || letter > 'Z' || size == 0 || size > 9 || *end != '\0')
        {
          tell (self, "no word: %s", bare);
          return FALSE;
        }
      at += size;
      if (letter == 'G' || letter == 'M')
        {
          const int code = (letter == 'G' ? 100 : 300) + (int) value;

          if (value != floor (value))
            tell (self, "no code: %s", bare);
          g_array_append_val (line->codes, code);
        }
      else if (!isnan (line->words[letter - 'A']))
        tell (self, "letter twice: %s", bare);
      else if (strchr (self->safe_mm > 0.0 ? "XYZIJFSP" : "XYIJFS", letter) == NULL)
        tell (self, "letter %c is not for this machine: %s", letter, bare);
      else
        line->words[letter - 'A'] = value;
    }
  return TRUE;
}

static void
check_groups (State *self,
              const Line *line,
              const char *bare)
{
  static const int groups[][5] = {
    { 100, 101, 102, 103, 0 }, { 117, 0 }, { 121, 120, 0 }, { 190, 191, 0 }, { 193, 194, 0 },
    { 154, 0 }, { 303, 304, 305, 0 }, { 302, 330, 0 }, { 104, 0 },
  };
  guint known = 0;

  if (has (line, 104) && !(self->safe_mm > 0.0))
    tell (self, "a dwell of a beam: %s", bare);
  for (guint g = 0; g < G_N_ELEMENTS (groups); g++)
    {
      guint count = 0;

      for (guint k = 0; groups[g][k] != 0; k++)
        count += has (line, groups[g][k]) ? 1 : 0;
      if (count > 1)
        tell (self, "two codes of one group: %s", bare);
      known += count;
    }
  if (known != line->codes->len)
    tell (self, "a code that not all controllers have: %s", bare);
}

/* ---- moves ----------------------------------------------------------------------------------- */

static double
arc_turn_rad (State *self,
              const HutGcodeMove *move,
              gboolean clockwise)
{
  const double ax = move->x0 - move->cx, ay = move->y0 - move->cy;
  const double bx = move->x1 - move->cx, by = move->y1 - move->cy;
  double turn_rad = atan2 (ax * by - ay * bx, ax * bx + ay * by);

  if (fabs (hypot (ax, ay) - hypot (bx, by)) > RADIUS_MM)
    tell (self, "ends of an arc are %.4f and %.4f from its centre", hypot (ax, ay), hypot (bx, by));
  if (clockwise && turn_rad >= 0.0)
    turn_rad -= 2.0 * G_PI;
  if (!clockwise && turn_rad <= 0.0)
    turn_rad += 2.0 * G_PI;
  if (fabs (turn_rad) > G_PI)
    tell (self, "an arc of %.4f rad at (%.3f, %.3f): half a circle is the most", turn_rad, move->x0,
          move->y0);
  return turn_rad;
}

static void
check_router (State *self,
              const HutGcodeMove *move,
              const char *bare)
{
  const gboolean across = move->x0 != move->x1 || move->y0 != move->y1;

  if (move->rapid && across && !(MIN (move->z0, move->z1) >= self->safe_mm))
    tell (self, "a travel across at %g: %s", MIN (move->z0, move->z1), bare);
  if (move->rapid && across && move->z0 != move->z1)
    tell (self, "a travel across and up at once: %s", bare);
  if (move->rapid && !(move->z1 > 0.0))
    tell (self, "down into the sheet without feed: %s", bare);
  if (!move->rapid && !(self->f > 0.0))
    tell (self, "a cut without feed: %s", bare);
  if (!move->rapid && !self->spun_up)
    tell (self, "a cut before the spindle is up to speed: %s", bare);
}

static void
check_beam (State *self,
            const Line *line,
            const HutGcodeMove *move,
            const char *bare)
{
  if (move->rapid && word (line, 'S') != 0.0)
    tell (self, "a travel without S0: %s", bare);
  if (!move->rapid && !(self->f > 0.0))
    tell (self, "a cut without feed: %s", bare);
  if (!move->rapid && !self->armed)
    tell (self, "a cut without M4: %s", bare);
}

static void
go (State *self,
    const Line *line,
    const char *bare)
{
  const double x = isnan (word (line, 'X')) ? self->x : word (line, 'X');
  const double y = isnan (word (line, 'Y')) ? self->y : word (line, 'Y');
  const gboolean arc = self->motion == 2 || self->motion == 3;
  const double z = isnan (word (line, 'Z')) ? self->z : word (line, 'Z');
  HutGcodeMove move = { .x0 = self->x, .y0 = self->y, .x1 = x, .y1 = y, .z0 = self->z, .z1 = z,
                        .s = self->s, .f = self->f, .rapid = self->motion == 0 };

  if (!self->units || !self->absolute)
    tell (self, "a move before G21 and G90: %s", bare);
  if (self->safe_mm > 0.0)
    check_router (self, &move, bare);
  else
    check_beam (self, line, &move, bare);
  if (arc == (isnan (word (line, 'I')) || isnan (word (line, 'J'))))
    tell (self, "I and J belong to arcs: %s", bare);
  if (arc)
    {
      move.cx = self->x + word (line, 'I');
      move.cy = self->y + word (line, 'J');
      move.turn_rad = arc_turn_rad (self, &move, self->motion == 2);
    }
  if (self->run->comments->len > 0)
    move.name = g_ptr_array_index (self->run->comments, self->run->comments->len - 1);
  self->x = x;
  self->y = y;
  self->z = z;
  if (hut_gcode_move_length_mm (&move) > 0.0 || move.z0 != move.z1)
    g_array_append_val (self->run->moves, move);
}

static void
arm_beam (State *self,
          const Line *line,
          const char *bare)
{
  if (!(self->s >= 0.0 && self->s <= POWER_MAX))
    tell (self, "S out of range: %s", bare);
  if ((has (line, 303) || has (line, 304)) && self->s != 0.0)
    tell (self, "armed with power: %s", bare);
  self->armed = (self->armed || has (line, 304)) && !has (line, 305);
  if (has (line, 303))
    tell (self, "constant power burns where the head stands: %s", bare);
}

static void
turn_spindle (State *self,
              const Line *line,
              const char *bare)
{
  if (has (line, 304))
    tell (self, "a spindle that turns the wrong way: %s", bare);
  if (has (line, 303) && (!(self->s > 0.0) || !(self->z >= self->safe_mm)))
    tell (self, "a spindle without speed, or started low: %s", bare);
  self->armed = (self->armed || has (line, 303)) && !has (line, 305);
  if (has (line, 104) && !(word (line, 'P') > 0.0))
    tell (self, "a dwell without time: %s", bare);
  self->spun_up = self->armed && (self->spun_up || has (line, 104));
}

static void
run_line (State *self,
          const char *text)
{
  g_autofree char *bare = dup_bare (self, text);
  g_autoptr(GArray) codes = g_array_new (FALSE, FALSE, sizeof (int));
  Line line = { .codes = codes };

  if (strlen (text) > LINE_MAX_BYTES)
    tell (self, "line too long: %s", text);
  if (*bare == '\0' || !read_words (self, bare, &line))
    return;
  if (self->ended)
    tell (self, "something after the end: %s", bare);
  check_groups (self, &line, bare);
  if (has (&line, 120) || has (&line, 191) || has (&line, 193))
    tell (self, "inches, relative or inverse time: %s", bare);
  self->units = self->units || has (&line, 121);
  self->absolute = self->absolute || has (&line, 190);
  for (int code = 0; code < 4; code++)
    self->motion = has (&line, 100 + code) ? code : self->motion;
  if (!isnan (word (&line, 'F')))
    self->f = word (&line, 'F');
  if (!isnan (word (&line, 'S')))
    self->s = word (&line, 'S');
  if (self->safe_mm > 0.0)
    turn_spindle (self, &line, bare);
  else
    arm_beam (self, &line, bare);
  if (!isnan (word (&line, 'X')) || !isnan (word (&line, 'Y')) || !isnan (word (&line, 'Z')))
    go (self, &line, bare);
  self->ended = has (&line, 302);
}

static char *
run_text (const char *text,
          double safe_mm,
          HutGcodeRun *run)
{
  g_auto(GStrv) lines = g_strsplit (text, "\n", -1);
  State state = { .run = run, .motion = -1, .safe_mm = safe_mm };

  for (const char *at = text; *at != '\0'; at++)
    if ((guchar) *at > 126 || ((guchar) *at < 32 && *at != '\n'))
      tell (&state, "byte %d is not plain ASCII", (guchar) *at);
  for (guint i = 0; lines[i] != NULL; i++)
    run_line (&state, lines[i]);
  if (!state.ended || state.armed || (safe_mm > 0.0 ? state.z < safe_mm : state.s != 0.0))
    tell (&state, "the file ends with the tool on, with power, low, or without M2");
  return state.fault;
}

static HutGcodeRun *
run_new (void)
{
  HutGcodeRun *self = g_new0 (HutGcodeRun, 1);

  self->moves = g_array_new (FALSE, FALSE, sizeof (HutGcodeMove));
  self->comments = g_ptr_array_new_with_free_func (g_free);
  return self;
}

char *
hut_gcode_dup_fault (const char *text)
{
  return hut_gcode_dup_router_fault (text, 0.0);
}

char *
hut_gcode_dup_router_fault (const char *text,
                            double safe_mm)
{
  g_autoptr(HutGcodeRun) run = run_new ();

  return run_text (text, safe_mm, run);
}

HutGcodeRun *
hut_gcode_run (GBytes *file)
{
  return hut_gcode_run_router (file, 0.0);
}

HutGcodeRun *
hut_gcode_run_router (GBytes *file,
                      double safe_mm)
{
  HutGcodeRun *self = run_new ();
  gsize size;
  const char *data = g_bytes_get_data (file, &size);
  g_autofree char *text = g_strndup (data, size);
  g_autofree char *fault = run_text (text, safe_mm, self);

  if (fault != NULL)
    fail_msg ("%s", fault);
  assert_int_equal (strlen (text), size);
  return self;
}

void
hut_gcode_run_free (HutGcodeRun *self)
{
  if (self == NULL)
    return;
  g_array_unref (self->moves);
  g_ptr_array_unref (self->comments);
  g_free (self);
}

/* ---- measures -------------------------------------------------------------------------------- */

double
hut_gcode_move_length_mm (const HutGcodeMove *self)
{
  if (self->turn_rad == 0.0)
    return hypot (self->x1 - self->x0, self->y1 - self->y0);
  return fabs (self->turn_rad) * hypot (self->x0 - self->cx, self->y0 - self->cy);
}

void
hut_gcode_move_point (const HutGcodeMove *self,
                      double share_ratio,
                      double *x,
                      double *y)
{
  if (self->turn_rad == 0.0)
    {
      *x = self->x0 + share_ratio * (self->x1 - self->x0);
      *y = self->y0 + share_ratio * (self->y1 - self->y0);
      return;
    }

  const double start_rad = atan2 (self->y0 - self->cy, self->x0 - self->cx);
  const double radius_mm = hypot (self->x0 - self->cx, self->y0 - self->cy);

  *x = self->cx + radius_mm * cos (start_rad + share_ratio * self->turn_rad);
  *y = self->cy + radius_mm * sin (start_rad + share_ratio * self->turn_rad);
}

double
hut_gcode_move_distance_mm (const HutGcodeMove *self,
                            double x,
                            double y)
{
  const double to_ends_mm = MIN (hypot (x - self->x0, y - self->y0), hypot (x - self->x1, y - self->y1));
  const double dx = self->x1 - self->x0, dy = self->y1 - self->y0;

  if (self->turn_rad == 0.0)
    {
      const double t = ((x - self->x0) * dx + (y - self->y0) * dy) / (dx * dx + dy * dy);

      return t > 0.0 && t < 1.0 ? fabs ((x - self->x0) * dy - (y - self->y0) * dx) / hypot (dx, dy)
                                : to_ends_mm;
    }

  const double start_rad = atan2 (self->y0 - self->cy, self->x0 - self->cx);
  double at_rad = atan2 (y - self->cy, x - self->cx) - start_rad;

  at_rad *= self->turn_rad > 0.0 ? 1.0 : -1.0;
  at_rad -= 2.0 * G_PI * floor (at_rad / (2.0 * G_PI));
  if (at_rad > fabs (self->turn_rad))
    return to_ends_mm;
  return fabs (hypot (x - self->cx, y - self->cy) - hypot (self->x0 - self->cx, self->y0 - self->cy));
}
