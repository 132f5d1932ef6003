/* src/engineering/hut-light-report.c: what a window has to be certified for, what walls reflect.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A density from here is the least to ask a supplier's certificate for. Nothing here says that
 * anything is without danger. */
#define G_LOG_DOMAIN "hut-engineering"
#include "config.h"
#include "engineering/hut-report.h"
#include "physics/hut-bounce.h"
#include "physics/hut-laser-light.h"
#include <glib/gi18n-lib.h>

#define M_PER_MM 1e-3
#define M2_PER_MM2 1e-6
/* An eye at the window is no nearer to the work than this, m: own choice. */
#define LEAST_DISTANCE_M 0.05
/* White paper and bare plate spread nearly all of the light: the worst case. */
#define WORK_REFLECTS_RATIO 1.0
#define LIMITS                                                                                     \
  N_ ("ICNIRP, Health Physics 105 (3) 2013 and EU Directive 2006/25/EC, annex II: transcribed, "   \
      "confirm against your copy.")

/* Distance of the nearest pane to where the beam can be, m; INFINITY without a window. */
static double
window_distance_m (const HutAssembly *assembly)
{
  const GPtrArray *bodies = assembly->design->machine.bodies;
  double least_mm = INFINITY;

  for (guint i = 0; i < assembly->solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (assembly->solids, HutSolid, i);

      if (solid->kind != HUT_SOLID_GLAZING)
        continue;
      for (guint k = 0; k < bodies->len; k++)
        {
          const HutBody *body = g_ptr_array_index (bodies, k);
          const HutBox3 box = hut_assembly_body_box (assembly, body);

          if (body->kind == HUT_BODY_MOVING)
            least_mm = MIN (least_mm, hut_box3_distance_mm (&box, &solid->box));
        }
    }
  return MAX (least_mm * M_PER_MM, LEAST_DISTANCE_M);
}

static void
add_caution (HutReport *self)
{
  hut_figure_say (hut_figure_add (self->out->figures, HUT_SUBJECT_LIGHT, "light.caution"),
                  N_ ("Coloured sheet is no laser filter until its maker certifies it for exactly "
                      "this wavelength. These numbers are the least to ask for; they replace no "
                      "measurement by a competent person."),
                  NAN, HUT_FIGURE_RATIO, TRUE);
}

static void
add_density (HutReport *self,
             const char *id,
             const char *words,
             double irradiance_w_m2,
             double distance_m)
{
  const HutWork *work = &self->design->machine.work;
  const double limit_w_m2 = hut_laser_limit_w_m2 (work->laser_nm, work->exposure_s);
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_LIGHT, id);

  hut_figure_say (figure, words,
                  hut_window_density_ratio (irradiance_w_m2, work->laser_nm, work->exposure_s),
                  HUT_FIGURE_RATIO, TRUE);
  hut_figure_explain (figure,
                      isfinite (distance_m) ? "OD = lg (E / limit), E = P / (pi r2)"
                                            : "OD = lg (E / limit), E = P / pupil of 7 mm",
                      LIMITS);
  hut_figure_put (figure, "P", N_ ("power of the laser"), work->laser_w, HUT_FIGURE_W);
  hut_figure_put (figure, "", N_ ("wavelength"), work->laser_nm, HUT_FIGURE_NANOMETRE);
  hut_figure_put (figure, "t", N_ ("viewing time"), work->exposure_s, HUT_FIGURE_S);
  if (isfinite (distance_m))
    hut_figure_put (figure, "r", N_ ("work to window, at least"), distance_m, HUT_FIGURE_M);
  hut_figure_put (figure, "E", N_ ("irradiance at the window"), irradiance_w_m2, HUT_FIGURE_W_M2);
  hut_figure_put (figure, "limit", N_ ("exposure limit of the eye"), limit_w_m2, HUT_FIGURE_W_M2);
}

static double
reflects_ratio (HutCoat coat)
{
  switch (coat)
    {
    case HUT_COAT_BLACK:
      return HUT_REFLECTS_BLACK_RATIO;
    case HUT_COAT_WHITE:
      return HUT_REFLECTS_WHITE_RATIO;
    case HUT_COAT_BARE:
    case HUT_COAT_CLEAR:
      return HUT_REFLECTS_PLYWOOD_RATIO;
    case HUT_COAT_UNKNOWN:
    default:
      return NAN;
    }
}

static double
inner_m2 (const HutBox3 *inside)
{
  const double x = inside->max.x - inside->min.x, y = inside->max.y - inside->min.y,
               z = inside->max.z - inside->min.z;

  return 2 * (x * y + y * z + x * z) * M2_PER_MM2;
}

static void
add_walls (HutReport *self)
{
  const double reflects = reflects_ratio (self->design->shell.finishing.inside);
  const double area_m2 = inner_m2 (&self->assembly->inside);
  const double power_w = self->design->machine.work.laser_w;
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_LIGHT, "light.walls");

  if (!(reflects >= 0))
    {
      hut_figure_ask (figure, N_ ("Enter the finish inside: bright walls throw light about."),
                      "engineering");
      return;
    }
  hut_figure_say (figure,
                  reflects > HUT_REFLECTS_BLACK_RATIO
                      ? N_ ("The walls inside throw light about: matt black brings it down.")
                      : N_ ("Matt black walls leave this much stray light on them."),
                  hut_cavity_irradiance_w_m2 (power_w, area_m2, reflects, 0), HUT_FIGURE_W_M2,
                  reflects > HUT_REFLECTS_BLACK_RATIO);
  hut_figure_explain (figure, "E = P / A rho / (1 - rho)",
                      N_ ("Integrating sphere; reflectances at 445 nm, from memory: many black "
                          "paints are bright in the near infrared."));
  hut_figure_put (figure, "P", N_ ("power of the laser"), power_w, HUT_FIGURE_W);
  hut_figure_put (figure, "A", N_ ("walls inside"), area_m2, HUT_FIGURE_M2);
  hut_figure_put (figure, "rho", N_ ("share that they reflect"), reflects, HUT_FIGURE_RATIO);
}

/* TRUE when wavelength, power and time are there; else asks for them. */
static gboolean
ask_for_laser (HutReport *self)
{
  const HutWork *work = &self->design->machine.work;
  HutFigure *figure;

  if (HUT_IS_KNOWN (work->laser_w) && HUT_IS_KNOWN (work->laser_nm)
      && HUT_IS_KNOWN (work->exposure_s)
      && isfinite (hut_laser_limit_w_m2 (work->laser_nm, work->exposure_s)))
    return TRUE;
  figure = hut_figure_add (self->out->figures, HUT_SUBJECT_LIGHT, "light.density");
  if (HUT_IS_KNOWN (work->laser_w) && HUT_IS_KNOWN (work->laser_nm)
      && HUT_IS_KNOWN (work->exposure_s))
    hut_figure_say (figure,
                    N_ ("For this wavelength no limit is at hand here: ask the standard, or a "
                        "laser safety officer."),
                    NAN, HUT_FIGURE_RATIO, TRUE);
  else
    hut_figure_ask (figure,
                    N_ ("Enter power and wavelength of the laser, and how long somebody looks: "
                        "nothing is assumed here."),
                    "measure");
  return FALSE;
}

void
hut_report_light (HutReport *self)
{
  const HutWork *work = &self->design->machine.work;
  const double distance_m = window_distance_m (self->assembly);
  GArray *figures = self->out->figures;

  if (work->glow == HUT_GLOW_UNKNOWN)
    hut_figure_ask (hut_figure_add (figures, HUT_SUBJECT_LIGHT, "light.source"),
                    N_ ("Say what light the machine makes at work."), "measure");
  else if (work->glow == HUT_GLOW_NONE)
    hut_figure_say (hut_figure_add (figures, HUT_SUBJECT_LIGHT, "light.source"),
                    N_ ("You said that the machine makes no light to speak of."), NAN,
                    HUT_FIGURE_RATIO, FALSE);
  else if (work->glow == HUT_GLOW_ARC)
    hut_figure_say (hut_figure_add (figures, HUT_SUBJECT_LIGHT, "light.source"),
                    N_ ("Arcs and ultraviolet lamps burn eyes and skin. Their limits are not "
                        "worked out here: ask for filters by the standard for welding or for your "
                        "lamp."),
                    NAN, HUT_FIGURE_RATIO, TRUE);
  if (work->glow != HUT_GLOW_LASER)
    return;
  add_caution (self);
  if (!ask_for_laser (self))
    return;
  if (isfinite (distance_m))
    add_density (self, "light.density",
                 N_ ("Light that the work scatters: least optical density to ask for."),
                 hut_diffuse_irradiance_w_m2 (work->laser_w, WORK_REFLECTS_RATIO, 0, distance_m),
                 distance_m);
  add_density (self, "light.beam",
               N_ ("The beam itself, or off bare metal: least optical density to ask for. The "
                   "window must stand the beam, too."),
               hut_beam_irradiance_w_m2 (work->laser_w, 0), INFINITY);
  add_walls (self);
}
