/* src/engineering/hut-spring.c: gas springs for the lid: force, stroke, and where they are mounted.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-engineering"
#include "config.h"
#include "engineering/hut-spring.h"

#define MM_PER_M 1000.0
/* A level line: own choice, a hinge that is mounted by hand lies this well. */
#define LEVEL_RATIO 0.1
/* Forces and strokes that small gas springs are sold in; length stretched = 2 stroke + ends. Common
 * practice, no source: the maker's list decides. */
static const double forces_n[]
    = { 50, 80, 100, 120, 150, 200, 250, 300, 350, 400, 500, 600, 700, 800, 1000, 1200 };
static const double strokes_m[] = { 0.05, 0.08, 0.1, 0.12, 0.15, 0.2, 0.25, 0.3, 0.4 };
#define ENDS_M 0.065
/* The grid of mounting points, in shares of the lid's reach, and under the hinge line, m. Own
 * choices. */
#define LID_STEPS 8u
#define LID_FIRST_RATIO 0.15
#define LID_LAST_RATIO 0.7
#define BASE_STEPS 6u
#define BASE_LAST_RATIO 0.5
#define DEPTH_STEPS 5u
#define DEPTH_FIRST_M 0.02
#define DEPTH_LAST_M 0.2
#define LID_INSIDE_M 0.02
/* Angles that a candidate is looked at. */
#define ANGLES 13u
#define LEVER_MIN_M 0.004

gboolean
hut_spring_lid_is_heavy (const HutAssembly *assembly)
{
  return assembly->whole && assembly->hinged && fabs (assembly->hinge_axis.z) < LEVEL_RATIO;
}

double
hut_spring_lid_moment_nm (const HutSpringLid *lid,
                          double angle_rad)
{
  return hut_lid_balance_hand_n (&lid->balance, lid->assembly, angle_rad) * lid->balance.lever_m;
}

/* Share of the stroke that is pushed in, 0 stretched .. 1. */
static double
pushed_ratio (const HutSpring *self,
              double angle_rad)
{
  const double length_m = hut_strut_length_m (&self->mount, angle_rad);

  return CLAMP ((self->long_mm - length_m * MM_PER_M) / self->stroke_mm, 0, 1);
}

/* The lever with its sign: > 0 when a push of the spring opens the lid. */
static double
opening_lever_m (const HutStrut *mount,
                 double angle_rad)
{
  const double x = mount->lid_x_m * cos (angle_rad) - mount->lid_y_m * sin (angle_rad);
  const double y = mount->lid_x_m * sin (angle_rad) + mount->lid_y_m * cos (angle_rad);
  const double length_m = hypot (x - mount->base_x_m, y - mount->base_y_m);

  return (mount->base_x_m * y - mount->base_y_m * x) / length_m;
}

double
hut_spring_hand_n (const HutSpring *self,
                   const HutSpringLid *lid,
                   double angle_rad)
{
  const double force_n
      = self->force_n
        * (1 + (HUT_SPRING_PROGRESSION_RATIO - 1) * pushed_ratio (self, angle_rad));
  const double lift_nm = self->count * force_n * opening_lever_m (&self->mount, angle_rad);

  return hut_hand_force_n (hut_spring_lid_moment_nm (lid, angle_rad) - lift_nm,
                           lid->balance.lever_m);
}

static void
look (HutSpring *self,
      const HutSpringLid *lid)
{
  self->hand_most_n = 0;
  for (guint i = 0; i < ANGLES; i++)
    {
      const double angle_rad = lid->end_rad * i / (ANGLES - 1);
      const double hand_n = hut_spring_hand_n (self, lid, angle_rad);

      if (fabs (hand_n) > fabs (self->hand_most_n))
        {
          self->hand_most_n = hand_n;
          self->hand_most_rad = angle_rad;
        }
    }
  self->holds = hut_spring_hand_n (self, lid, lid->end_rad) <= 0;
  self->shut = hut_spring_hand_n (self, lid, 0) >= 0;
}

/* Smallest step of the list that holds the lid open at its end. 0: none does. */
static double
force_for (const HutSpringLid *lid,
           const HutStrut *mount,
           guint count)
{
  const double lever_m = opening_lever_m (mount, lid->end_rad);
  const double need_n = hut_spring_force_n (MAX (hut_spring_lid_moment_nm (lid, lid->end_rad), 0),
                                            count, lever_m, HUT_SPRING_MARGIN_RATIO);

  for (guint i = 0; i < G_N_ELEMENTS (forces_n); i++)
    if (forces_n[i] >= need_n)
      return forces_n[i];
  return 0;
}

/* The shortest stroke of the list that lasts from closed to open. FALSE: none does. */
static gboolean
fit_stroke (HutSpring *self,
            double end_rad)
{
  const double open_m = hut_strut_length_m (&self->mount, end_rad);
  const double closed_m = hut_strut_length_m (&self->mount, 0);

  for (guint i = 0; i < G_N_ELEMENTS (strokes_m); i++)
    {
      /* Never longer than its ends: the spring stops the lid at its open end. */
      if (open_m < 2 * strokes_m[i] + ENDS_M || open_m - closed_m > strokes_m[i])
        continue;
      self->stroke_mm = strokes_m[i] * MM_PER_M;
      self->long_mm = open_m * MM_PER_M;
      return TRUE;
    }
  return FALSE;
}

/* What stays open and shut comes first, then what asks least of a hand. */
static gboolean
is_better (const HutSpring *a,
           const HutSpring *b)
{
  const int a_good = (a->holds ? 2 : 0) + (a->shut ? 1 : 0);
  const int b_good = (b->holds ? 2 : 0) + (b->shut ? 1 : 0);

  if (!b->found || a_good != b_good)
    return !b->found || a_good > b_good;
  if (fabs (a->hand_most_n) != fabs (b->hand_most_n))
    return fabs (a->hand_most_n) < fabs (b->hand_most_n);
  return a->force_n < b->force_n;
}

static void
try_mount (const HutSpringLid *lid,
           const HutStrut *mount,
           guint count,
           double force_n,
           HutSpring *best)
{
  HutSpring self = { .found = TRUE, .count = count, .mount = *mount };

  if (opening_lever_m (mount, lid->end_rad) < LEVER_MIN_M || !fit_stroke (&self, lid->end_rad))
    return;
  self.force_n = force_n >= 0 ? force_n : force_for (lid, mount, count);
  if (!(self.force_n > 0))
    return;
  look (&self, lid);
  if (is_better (&self, best))
    *best = self;
}

static double
between (double first,
         double last,
         guint step,
         guint steps)
{
  return first + (last - first) * step / (steps - 1);
}

HutSpring
hut_spring_choose (const HutSpringLid *lid,
                   guint count,
                   double force_n)
{
  HutSpring best = { .count = count };
  const double reach_m = lid->balance.lever_m;
  const gboolean hangs = lid->assembly->design->shell.lid == HUT_LID_FRONT;

  g_return_val_if_fail (count >= 1, best);

  if (!hut_spring_lid_is_heavy (lid->assembly) || !(reach_m > 0))
    return best;
  for (guint i = 0; i < LID_STEPS; i++)
    for (guint k = 0; k < BASE_STEPS; k++)
      for (guint j = 0; j < DEPTH_STEPS; j++)
        {
          const double out_m
              = reach_m * between (LID_FIRST_RATIO, LID_LAST_RATIO, i, LID_STEPS);
          const double along_m = reach_m * between (0, BASE_LAST_RATIO, k, BASE_STEPS);
          const double under_m = between (DEPTH_FIRST_M, DEPTH_LAST_M, j, DEPTH_STEPS);
          /* A front that hangs from its hinge has the base behind it. */
          const HutStrut mount = hangs ? (HutStrut) { -under_m, -along_m, -LID_INSIDE_M, -out_m }
                                       : (HutStrut) { along_m, -under_m, out_m, LID_INSIDE_M };

          try_mount (lid, &mount, count, force_n, &best);
        }
  return best;
}
