/* src/export/hut-tool-program.c: every move of the tool on a sheet, with its height, speed and
 * power.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-tool-program.h"
#include "export/hut-tool-tab.h"
#include <math.h>

/* Heights and lengths nearer than this are the same, mm. */
#define SAME_MM 1e-9

typedef struct
{
  GArray *moves;
  const HutStock *stock;
  const HutCutter *cutter;
  guint path;
  HutPoint at;
  double z_mm;
  double speed_mm_min, power_ratio;
  double tab_top_mm; /* Z over the tabs */
} Program;

double
hut_tool_move_length_mm (const HutToolMove *self)
{
  g_return_val_if_fail (self != NULL, 0.0);

  return hypot (hut_segment_length_mm (&self->way), self->z1_mm - self->z0_mm);
}

static void
add_move (Program *self,
          const HutSegment *way,
          double z1_mm,
          gboolean cuts)
{
  HutToolMove move = { .path = self->path, .cuts = cuts, .way = *way, .z0_mm = self->z_mm,
                       .z1_mm = z1_mm,
                       .speed_mm_min = cuts ? self->speed_mm_min : self->cutter->travel_mm_min,
                       .power_ratio = cuts ? self->power_ratio : 0.0 };
  const double down_mm = move.z0_mm - z1_mm;

  if (cuts && down_mm > SAME_MM) /* no faster downwards than the tool plunges */
    move.speed_mm_min
        = MIN (move.speed_mm_min,
               self->cutter->plunge_mm_min * hut_tool_move_length_mm (&move) / down_mm);
  g_array_append_val (self->moves, move);
  self->at = way->end;
  self->z_mm = z1_mm;
}

static void
travel_to (Program *self,
           HutPoint to)
{
  const HutSegment way = { self->at, to, 0.0, HUT_EDGE_PLAIN };

  add_move (self, &way, self->z_mm, FALSE);
}

static void
cut_to (Program *self,
        HutPoint to,
        double z_mm)
{
  const HutSegment way = { self->at, to, 0.0, HUT_EDGE_PLAIN };

  add_move (self, &way, z_mm, TRUE);
}

/* Along segments; the height changes evenly from where the tool is. */
static void
cut_along (Program *self,
           const GArray *segments,
           double z_mm)
{
  const double from_mm = self->z_mm;
  double whole_mm = 0.0, done_mm = 0.0;

  for (guint i = 0; i < segments->len; i++)
    whole_mm += hut_segment_length_mm (&g_array_index (segments, HutSegment, i));
  for (guint i = 0; i < segments->len; i++)
    {
      const HutSegment *segment = &g_array_index (segments, HutSegment, i);

      done_mm += hut_segment_length_mm (segment);
      add_move (self, segment,
                i + 1 == segments->len ? z_mm : from_mm + (z_mm - from_mm) * done_mm / whole_mm,
                TRUE);
    }
}

static void
cut_stretch (Program *self,
             const HutPath *path,
             double from_mm,
             double to_mm,
             double z_mm)
{
  g_autoptr(GArray) segments = g_array_new (FALSE, FALSE, sizeof (HutSegment));

  hut_path_append_stretch (path, from_mm, to_mm, segments);
  cut_along (self, segments, z_mm);
}

/* ---- a beam ---------------------------------------------------------------------------------- */

static void
burn_closed (Program *self,
             const HutToolPath *path)
{
  g_autoptr(GPtrArray) chains = hut_tool_path_dup_chains (path, HUT_CUTTER_LASER);

  if (chains == NULL)
    {
      travel_to (self, hut_path_get (path->closed, 0)->p);
      for (guint pass = 0; pass < self->stock->passes; pass++)
        cut_stretch (self, path->closed, 0.0, G_MAXDOUBLE, 0.0);
      return;
    }
  for (guint pass = 0; pass < self->stock->passes; pass++)
    for (guint i = 0; i < chains->len; i++)
      {
        GArray *chain = g_ptr_array_index (chains, i);

        if (pass == 0 || i > 0)
          travel_to (self, g_array_index (chain, HutSegment, 0).start);
        cut_along (self, chain, 0.0);
        if (pass == 0 && i == 0 && path->has_lead)
          g_array_remove_index (chain, 0); /* later passes go on from where this one ends */
      }
}

/* Back on every other pass. */
static void
burn_strokes (Program *self,
              const HutToolPath *path,
              guint passes)
{
  for (guint i = 0; i < path->strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (path->strokes, i);

      travel_to (self, g_array_index (stroke, HutPoint, 0));
      for (guint pass = 0; pass < passes; pass++)
        for (guint k = 1; k < stroke->len; k++)
          cut_to (self,
                  g_array_index (stroke, HutPoint, pass % 2 == 0 ? k : stroke->len - 1 - k), 0.0);
    }
}

static void
burn (Program *self,
      const HutToolPath *path)
{
  const gboolean score = path->layer == HUT_LAYER_SCORE;

  self->speed_mm_min = self->stock->speed_mm_min * (score ? HUT_SCORE_SPEED_RATIO : 1.0);
  self->power_ratio
      = self->stock->power_percent / 100.0 * (score ? HUT_SCORE_POWER_RATIO : 1.0);
  if (path->closed != NULL)
    burn_closed (self, path);
  else
    burn_strokes (self, path, score ? 1 : self->stock->passes);
}

/* ---- a router -------------------------------------------------------------------------------- */

/* Over @to, and down to the face of the sheet. */
static void
come_down (Program *self,
           HutPoint to)
{
  const HutSegment there = { to, to, 0.0, HUT_EDGE_PLAIN };

  travel_to (self, to);
  add_move (self, &there, MIN (HUT_APPROACH_MM, self->cutter->safe_mm), FALSE);
  add_move (self, &there, 0.0, TRUE);
}

static void
go_up (Program *self)
{
  const HutSegment here = { self->at, self->at, 0.0, HUT_EDGE_PLAIN };

  add_move (self, &here, self->cutter->safe_mm, FALSE);
}

/* Once round at that height, over the tabs. */
static void
go_round (Program *self,
          const HutToolPath *path,
          double z_mm)
{
  double at_mm = 0.0;

  for (guint i = 0; path->tabs != NULL && z_mm < self->tab_top_mm && i < path->tabs->len; i++)
    {
      const HutTab *tab = &g_array_index (path->tabs, HutTab, i);
      const double behind_mm = (self->tab_top_mm - z_mm) * HUT_RAMP_RATIO;

      cut_stretch (self, path->closed, at_mm, tab->from_mm, z_mm);
      cut_to (self, self->at, self->tab_top_mm);
      cut_stretch (self, path->closed, tab->from_mm, tab->to_mm, self->tab_top_mm);
      cut_stretch (self, path->closed, tab->to_mm, tab->to_mm + behind_mm, z_mm);
      at_mm = tab->to_mm + behind_mm;
    }
  cut_stretch (self, path->closed, at_mm, G_MAXDOUBLE, z_mm);
}

/* To and fro between the begin of the lead-in and its middle. */
static void
ramp_in_waste (Program *self,
               const HutToolPath *path,
               double z_mm)
{
  const HutPoint start = hut_path_get (path->closed, 0)->p;
  const HutPoint middle = { (path->lead.u + start.u) / 2.0, (path->lead.v + start.v) / 2.0 };
  const double stroke_mm = hut_point_distance_mm (path->lead, middle);
  const double from_mm = self->z_mm;
  const guint pairs
      = MAX (1u, (guint) ceil ((from_mm - z_mm) * HUT_RAMP_RATIO / (2.0 * stroke_mm)));

  for (guint i = 1; i <= 2 * pairs; i++)
    cut_to (self, i % 2 == 1 ? middle : path->lead,
            i == 2 * pairs ? z_mm : from_mm + (z_mm - from_mm) * i / (2.0 * pairs));
}

/* Along the cut, and back at the new height, so that none of the ramp stays. */
static void
ramp_along (Program *self,
            const HutToolPath *path,
            double z_mm)
{
  const double length_mm = hut_path_length_mm (path->closed);
  const double ramp_mm = (self->z_mm - z_mm) * HUT_RAMP_ALONG_RATIO;
  const double from_mm = self->z_mm;
  const guint rounds = (guint) ceil (ramp_mm / length_mm);

  if (rounds > 1)
    {
      for (guint i = 1; i <= rounds; i++)
        cut_stretch (self, path->closed, 0.0, G_MAXDOUBLE,
                     i == rounds ? z_mm : from_mm + (z_mm - from_mm) * i / rounds);
      return;
    }

  g_autoptr(GArray) segments = g_array_new (FALSE, FALSE, sizeof (HutSegment));

  hut_path_append_stretch (path->closed, 0.0, ramp_mm, segments);
  cut_along (self, segments, z_mm);
  for (guint i = segments->len; i-- > 0;)
    {
      const HutSegment *segment = &g_array_index (segments, HutSegment, i);
      const HutSegment back = { segment->end, segment->start, -segment->bulge, segment->kind };

      add_move (self, &back, z_mm, TRUE);
    }
}

static void
mill_closed (Program *self,
             const HutToolPath *path)
{
  const HutPoint start = hut_path_get (path->closed, 0)->p;
  const double depth_mm = hut_tool_depth_mm (self->stock, self->cutter);
  const guint passes = self->stock->passes;

  come_down (self, path->has_lead ? path->lead : start);
  for (guint pass = 1; pass <= passes; pass++)
    {
      const double z_mm = -depth_mm * pass / passes;

      if (path->has_lead)
        {
          ramp_in_waste (self, path, z_mm);
          cut_to (self, start, z_mm);
        }
      else
        ramp_along (self, path, z_mm);
      go_round (self, path, z_mm);
      if (path->has_lead && pass < passes)
        cut_to (self, path->lead, z_mm);
    }
  go_up (self);
}

static void
run_stroke (Program *self,
            const GArray *stroke,
            gboolean back,
            double z_mm)
{
  const double from_mm = self->z_mm;

  for (guint k = 1; k < stroke->len; k++)
    cut_to (self, g_array_index (stroke, HutPoint, back ? stroke->len - 1 - k : k),
            from_mm + (z_mm - from_mm) * k / (stroke->len - 1));
}

/* To and fro, down while it goes there, level on the way back. */
static void
mill_strokes (Program *self,
              const HutToolPath *path)
{
  const double depth_mm = hut_tool_depth_mm (self->stock, self->cutter);
  const guint passes = self->stock->passes;

  for (guint i = 0; i < path->strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (path->strokes, i);
      const double length_mm = hut_point_distance_mm (
          g_array_index (stroke, HutPoint, 0), g_array_index (stroke, HutPoint, stroke->len - 1));
      const guint runs
          = MAX (1u, (guint) ceil (depth_mm / passes * HUT_RAMP_RATIO / MAX (length_mm, SAME_MM)));

      come_down (self, g_array_index (stroke, HutPoint, 0));
      for (guint pass = 0; pass < passes; pass++)
        for (guint run = 1; run <= runs; run++)
          {
            run_stroke (self, stroke, FALSE, -depth_mm * (pass + (double) run / runs) / passes);
            run_stroke (self, stroke, TRUE, self->z_mm);
          }
      go_up (self);
    }
}

static void
mill (Program *self,
      const HutToolPath *path)
{
  self->speed_mm_min = self->stock->speed_mm_min;
  if (path->closed != NULL)
    mill_closed (self, path);
  else if (path->layer != HUT_LAYER_SCORE)
    mill_strokes (self, path);
}

/* ---- all ------------------------------------------------------------------------------------- */

GArray *
hut_tool_program_new (const GPtrArray *paths,
                      const HutStock *stock,
                      const HutCutter *cutter)
{
  g_return_val_if_fail (paths != NULL && stock != NULL && cutter != NULL, NULL);

  const gboolean router = cutter->kind == HUT_CUTTER_ROUTER;
  Program self = {
    .moves = g_array_new (FALSE, FALSE, sizeof (HutToolMove)),
    .stock = stock,
    .cutter = cutter,
    .z_mm = router ? cutter->safe_mm : 0.0,
    .tab_top_mm = hut_tab_size (stock, cutter->kind).height_mm - hut_stock_mean_mm (stock),
  };

  for (self.path = 0; self.path < paths->len; self.path++)
    {
      const HutToolPath *path = g_ptr_array_index (paths, self.path);

      if (path->layer == HUT_LAYER_POCKET)
        continue;
      if (router)
        mill (&self, path);
      else
        burn (&self, path);
    }
  return self.moves;
}
