/* src/engineering/hut-air-report.c: what the fans do: flow, speeds, purge, ways in.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-engineering"
#include "config.h"
#include "engineering/hut-report.h"
#include "physics/hut-hood.h"
#include "physics/hut-purge.h"
#include "physics/hut-unit.h"
#include <glib/gi18n-lib.h>

#define CM2_PER_M2 1e4
#define MM_PER_M 1000.0
#define PERCENT 100.0
#define S_PER_H 3600.0
/* Points of the curves that are drawn: own choice. */
#define CURVE_POINTS 49u
/* Speed in a duct that carries vapours and smoke along: ACGIH, Industrial Ventilation, 5 .. 10 m/s
 * (from memory). Over the upper one it is heard: common practice. */
#define DUCT_SLOW_M_S 5.0
#define DUCT_LOUD_M_S 10.0
/* Longer than that somebody opens the lid too early. Own choice. */
#define PURGE_LONG_S 120.0
/* A way in that is nearer to the fan than this share of the inside's longest side is a short cut.
 * Own choice. */
#define NEAR_RATIO (1.0 / 3)

static void
add_flow (HutReport *self)
{
  const HutEnclosureAir *air = &self->out->air;
  GArray *figures = self->out->figures;
  HutFigure *figure = hut_figure_add (figures, HUT_SUBJECT_AIR, "air.flow");

  hut_figure_say (figure,
                  air->fans > 1 ? N_ ("The fans, side by side, move this much air.")
                                : N_ ("The fan moves this much air."),
                  air->point.flow_m3_s / HUT_M3_H_M3_S, HUT_FIGURE_M3_H, FALSE);
  hut_figure_explain (figure, "p fan (Q) = K pv + f L/D pv + rho/2 (Q / (Cd A))2",
                      N_ ("Fan curve against system curve: friction after Colebrook, fittings "
                          "after ACGIH and ASHRAE tables, openings as sharp edges with Cd 0.6."));
  hut_figure_put (figure, "p", N_ ("pressure there"), air->point.pressure_pa, HUT_FIGURE_PA);
  hut_figure_put (figure, "A", N_ ("open ways in"), air->intake_m2 * CM2_PER_M2, HUT_FIGURE_CM2);
  hut_figure_put (figure, "A seam", N_ ("gap between base and lid"), air->seam_m2 * CM2_PER_M2,
                  HUT_FIGURE_CM2);
  hut_figure_put (figure, "D", N_ ("duct, inside"), hut_duct_diameter_m (self->design) * MM_PER_M,
                  HUT_FIGURE_MM);
  hut_figure_put (figure, "L", N_ ("duct, length"), self->design->shell.duct.length_mm / MM_PER_M,
                  HUT_FIGURE_M);
  hut_figure_put (figure, "n", N_ ("bends"), self->design->shell.duct.bends, HUT_FIGURE_COUNT);
}

static void
add_duct (HutReport *self)
{
  const double width_m = hut_duct_diameter_m (self->design);
  const double speed_m_s
      = width_m > 0 ? hut_duct_velocity_m_s (self->out->air.point.flow_m3_s, width_m) : NAN;
  const gboolean slow = speed_m_s < DUCT_SLOW_M_S, loud = speed_m_s > DUCT_LOUD_M_S;
  HutFigure *figure;

  if (!(width_m > 0) || !(self->design->shell.duct.length_mm > 0))
    return;
  figure = hut_figure_add (self->out->figures, HUT_SUBJECT_AIR, "air.duct-speed");
  hut_figure_say (figure,
                  slow   ? N_ ("Air is slow in the duct: smoke settles there and sticks.")
                  : loud ? N_ ("Air is fast in the duct: it will be heard.")
                         : N_ ("Air in the duct is fast enough to carry smoke along."),
                  speed_m_s, HUT_FIGURE_M_S, slow || loud);
  figure->limit = loud ? DUCT_LOUD_M_S : DUCT_SLOW_M_S;
  hut_figure_explain (figure, "v = 4 Q / (pi D2)",
                      N_ ("5 to 10 m/s for vapours and smoke: ACGIH, Industrial Ventilation (from "
                          "memory)."));
  hut_figure_put (figure, "Q", N_ ("flow of air"),
                  self->out->air.point.flow_m3_s / HUT_M3_H_M3_S, HUT_FIGURE_M3_H);
  hut_figure_put (figure, "D", N_ ("duct, inside"), width_m * MM_PER_M, HUT_FIGURE_MM);
}

static void
add_purge (HutReport *self,
           const HutAirGuess *guess)
{
  const HutEnclosureAir *air = &self->out->air;
  const gboolean slow = air->purge_s > PURGE_LONG_S;
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_AIR, "air.changes");

  hut_figure_say (figure, N_ ("So often the air inside is changed."), air->changes_count,
                  HUT_FIGURE_PER_HOUR, FALSE);
  hut_figure_explain (figure, "n = Q / V", N_ ("Definition of air changes."));
  hut_figure_put (figure, "Q", N_ ("flow of air"), air->point.flow_m3_s / HUT_M3_H_M3_S,
                  HUT_FIGURE_M3_H);
  hut_figure_put (figure, "V", N_ ("free room inside, litres"), air->free_m3 * MM_PER_M,
                  HUT_FIGURE_LITRE);
  figure = hut_figure_add (self->out->figures, HUT_SUBJECT_AIR, "air.purge");
  hut_figure_say (figure,
                  slow ? /* xgettext:no-c-format */
                         N_ ("After the work it takes long until 99 % of the smoke is gone.")
                       : /* xgettext:no-c-format */
                         N_ ("So long after the work 99 % of the smoke is gone: keep the lid shut "
                             "until then."),
                  air->purge_s, HUT_FIGURE_S, slow);
  figure->limit = PURGE_LONG_S;
  hut_figure_explain (figure, "t = k V / Q ln 100",
                      N_ ("CDC, MMWR 1994;43(RR-13), table S3-1; mixing factor 3 for a usual "
                          "layout (common practice)."));
  hut_figure_put (figure, "k", N_ ("mixing factor"), guess->mixing_ratio, HUT_FIGURE_RATIO);
  hut_figure_assume (figure, TRUE);
  hut_figure_put (figure, "V", N_ ("free room inside, litres"), air->free_m3 * MM_PER_M,
                  HUT_FIGURE_LITRE);
  hut_figure_put (figure, "Q", N_ ("flow of air"), air->point.flow_m3_s / HUT_M3_H_M3_S,
                  HUT_FIGURE_M3_H);
}

static void
add_face (HutReport *self)
{
  const HutEnclosureAir *air = &self->out->air;
  const gboolean slow = air->face_m_s < HUT_HOLD_VELOCITY_M_S;
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_AIR, "air.face");

  hut_figure_say (figure,
                  slow ? N_ ("Air comes in slowly at openings and seam: smoke may drift out.")
                       : N_ ("Air is drawn in at openings and seam, faster than the usual least."),
                  air->face_m_s, HUT_FIGURE_M_S, slow);
  figure->limit = HUT_HOLD_VELOCITY_M_S;
  hut_figure_explain (figure, "v = Q / A",
                      N_ ("0.5 m/s and more: common practice of local exhaust; rooms with draughts "
                          "want more."));
  hut_figure_put (figure, "Q", N_ ("flow of air"), air->point.flow_m3_s / HUT_M3_H_M3_S,
                  HUT_FIGURE_M3_H);
  hut_figure_put (figure, "A", N_ ("all that is open"),
                  (air->intake_m2 + air->seam_m2) * CM2_PER_M2, HUT_FIGURE_CM2);
}

/* How far the lid may stand open, at its far edge, until air is too slow: the gap is a wedge, open
 * all along the far side and half along the sides. */
static void
add_ajar (HutReport *self,
          const HutAirGuess *guess)
{
  const HutEnclosureAir *air = &self->out->air;
  const double hold_m2 = hut_enclosure_air_hold_m2 (self->assembly, guess);
  const double spare_m2 = hold_m2 - air->intake_m2 - air->seam_m2;
  const double seam_m = hut_enclosure_seam_m (self->assembly);
  const double gap_mm = seam_m > 0 ? MAX (spare_m2, 0) / (seam_m / 2) * MM_PER_M : NAN;
  HutFigure *figure;

  if (!self->assembly->hinged || !isfinite (gap_mm))
    return;
  figure = hut_figure_add (self->out->figures, HUT_SUBJECT_AIR, "air.ajar");
  hut_figure_say (figure,
                  gap_mm > 0 ? N_ ("With the lid ajar further than this, smoke may come out.")
                             : N_ ("Smoke may come out as soon as the lid is ajar."),
                  gap_mm, HUT_FIGURE_MM, !(gap_mm > 0));
  hut_figure_explain (figure, "g = 2 (Q / v - A) / l",
                      N_ ("Own derivation: an open lid leaves a wedge all round; at that flow the "
                          "suction is what drives air in at 0.5 m/s."));
  hut_figure_put (figure, "Q / v", N_ ("what can be open in all"), hold_m2 * CM2_PER_M2,
                  HUT_FIGURE_CM2);
  hut_figure_put (figure, "A", N_ ("what is open already"),
                  (air->intake_m2 + air->seam_m2) * CM2_PER_M2, HUT_FIGURE_CM2);
  hut_figure_put (figure, "l", N_ ("length of the seam"), seam_m, HUT_FIGURE_M);
}

/* Distance of the nearest way in from any fan, middle to middle, mm; INFINITY without one.
 * @name: (out): of that way in */
static double
shortest_way_mm (const HutReport *self,
                 const char **name)
{
  const HutAssembly *assembly = self->assembly;
  double least_mm = INFINITY;

  for (guint i = 0; i < assembly->holes->len; i++)
    for (guint k = 0; k < assembly->hardware->len; k++)
      {
        const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);
        const HutPlacedHardware *fan = g_ptr_array_index (assembly->hardware, k);
        const HutPanel *a = g_ptr_array_index (assembly->panels, hole->panel);
        const HutPanel *b = g_ptr_array_index (assembly->panels, fan->panel);
        const HutOpening *opening = hole->source == HUT_HOLE_OPENING
                                        ? hut_design_get_opening (self->design, hole->item)
                                        : NULL;
        HutVec3 p, q;
        double apart_mm;

        if (fan->item->group != HUT_ITEM_FAN || opening == NULL || opening->serves != NULL)
          continue;
        p = hut_frame3_to_world (&a->frame, hole->centre.u, hole->centre.v, 0);
        q = hut_frame3_to_world (&b->frame, (fan->footprint.u0 + fan->footprint.u1) / 2,
                                 (fan->footprint.v0 + fan->footprint.v1) / 2, 0);
        apart_mm = sqrt ((p.x - q.x) * (p.x - q.x) + (p.y - q.y) * (p.y - q.y)
                         + (p.z - q.z) * (p.z - q.z));
        if (apart_mm >= least_mm)
          continue;
        least_mm = apart_mm;
        *name = *opening->name != '\0' ? opening->name : opening->id;
      }
  return least_mm;
}

static void
add_short_cut (HutReport *self)
{
  const HutBox3 *inside = &self->assembly->inside;
  const double longest_mm = MAX (MAX (inside->max.x - inside->min.x, inside->max.y - inside->min.y),
                                 inside->max.z - inside->min.z);
  const char *name = NULL;
  const double apart_mm = shortest_way_mm (self, &name);
  const gboolean near = apart_mm < NEAR_RATIO * longest_mm;
  HutFigure *figure;

  if (!isfinite (apart_mm))
    return;
  figure = hut_figure_add (self->out->figures, HUT_SUBJECT_AIR, "air.short-cut");
  hut_figure_say (figure,
                  near ? N_ ("“{what}” is close to the fan: fresh air goes straight out again.")
                       : N_ ("“{what}”, the nearest way in, is well away from the fan."),
                  apart_mm, HUT_FIGURE_MM, near);
  figure->what = g_strdup (name);
  figure->limit = NEAR_RATIO * longest_mm;
  hut_figure_explain (figure, "d >= a / 3",
                      N_ ("Own choice: a way in nearer to the fan than a third of the longest side "
                          "inside leaves the far corners still."));
  hut_figure_put (figure, "a", N_ ("longest side inside"), longest_mm, HUT_FIGURE_MM);
}

static void
add_thin_air (HutReport *self,
              const HutAirGuess *guess)
{
  const double here = hut_air_in_room (guess->temperature_c, guess->altitude_m).density_kg_m3;
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_AIR, "air.density");

  hut_figure_say (figure, N_ ("In the air of this place the fan makes that share of its pressure."),
                  here / HUT_FAN_RATED_KG_M3 * PERCENT, HUT_FIGURE_PERCENT, FALSE);
  hut_figure_explain (figure, "p ~ rho = p0 / (R T)",
                      N_ ("Fan laws; US Standard Atmosphere 1976; curves hold for 1.2 kg/m³."));
  hut_figure_put (figure, "T", N_ ("room"), guess->temperature_c, HUT_FIGURE_C);
  hut_figure_assume (figure, !HUT_IS_KNOWN (self->design->room_mm.temperature_c));
  hut_figure_put (figure, "h", N_ ("over sea level"), guess->altitude_m, HUT_FIGURE_M);
  hut_figure_assume (figure, !HUT_IS_KNOWN (self->design->room_mm.altitude_m));
  hut_figure_put (figure, "rho", N_ ("density of air"), here, HUT_FIGURE_KG_M3);
}

void
hut_report_air (HutReport *self)
{
  const HutAirGuess guess = hut_air_guess_of (self->design);
  HutEngineering *out = self->out;

  out->air_told = hut_duct_is_told (self->design);
  if (out->air_told)
    out->air = hut_enclosure_air_find (self->assembly, &guess);
  else
    out->air.fans = hut_enclosure_air_find (self->assembly, &guess).fans;
  if (out->air.fans == 0)
    {
      hut_figure_ask (hut_figure_add (out->figures, HUT_SUBJECT_AIR, "air.flow"),
                      N_ ("No fan with a curve is in the design: put one on a panel."), "openings");
      return;
    }
  if (!out->air_told)
    {
      hut_figure_ask (hut_figure_add (out->figures, HUT_SUBJECT_AIR, "air.flow"),
                      N_ ("Enter the duct: its kind, width and length, or a length of 0."),
                      "engineering");
      return;
    }
  g_array_unref (out->air_curves);
  out->air_curves = hut_enclosure_air_curves (self->assembly, &guess, CURVE_POINTS);
  if (!out->air.moves)
    {
      hut_figure_say (hut_figure_add (out->figures, HUT_SUBJECT_AIR, "air.flow"),
                      N_ ("No air moves: there is no way in, or the flap is too heavy for "
                          "the fan."),
                      NAN, HUT_FIGURE_M3_H, TRUE);
      return;
    }
  add_flow (self);
  add_duct (self);
  add_face (self);
  add_ajar (self, &guess);
  add_purge (self, &guess);
  add_short_cut (self);
  add_thin_air (self, &guess);
}
