/* src/engineering/hut-finish-report.c: areas for paint and wax, joints for glue, what to buy.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-engineering"
#include "config.h"
#include "engineering/hut-report.h"
#include "physics/hut-cover.h"
#include "physics/hut-finish.h"
#include <glib/gi18n-lib.h>

#define COATS 2u
/* What sticks to brush and pot: common practice 10 .. 20 %. */
#define WASTE_RATIO 0.15

static void
add_area (HutReport *self,
          const char *id,
          const char *words,
          double area_m2)
{
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_FINISH, id);

  hut_figure_say (figure, words, area_m2, HUT_FIGURE_M2, FALSE);
  hut_figure_explain (figure, "A = sum of the faces of all parts but glazing",
                      N_ ("Sum over the parts as they are cut."));
}

static void
add_coat (HutReport *self,
          const char *id,
          HutCoat coat,
          const char *paint,
          const char *varnish,
          double area_m2)
{
  const double rate = coat == HUT_COAT_CLEAR ? HUT_COVERS_VARNISH_M2_L : HUT_COVERS_PAINT_M2_L;
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_FINISH, id);

  if (coat == HUT_COAT_UNKNOWN)
    {
      hut_figure_ask (figure, N_ ("Enter the finish inside and outside to get quantities."),
                      "engineering");
      return;
    }
  if (coat == HUT_COAT_BARE)
    {
      hut_figure_say (figure, N_ ("This face stays bare: nothing to buy."), NAN, HUT_FIGURE_LITRE,
                      FALSE);
      return;
    }
  hut_figure_say (figure, coat == HUT_COAT_CLEAR ? varnish : paint,
                  hut_litres_for (area_m2, COATS, rate, WASTE_RATIO), HUT_FIGURE_LITRE, FALSE);
  hut_figure_explain (figure, "V = A n / rate (1 + waste)",
                      N_ ("Rates of makers' pages; raw board takes more the first time. The tin's "
                          "own figure comes first."));
  hut_figure_put (figure, "A", N_ ("area"), area_m2, HUT_FIGURE_M2);
  hut_figure_put (figure, "n", N_ ("coats"), COATS, HUT_FIGURE_COUNT);
  hut_figure_assume (figure, TRUE);
  hut_figure_put (figure, "rate", N_ ("m² from a litre"), rate, HUT_FIGURE_RATIO);
  hut_figure_assume (figure, TRUE);
  hut_figure_put (figure, "waste", N_ ("left in brush and pot"), WASTE_RATIO, HUT_FIGURE_RATIO);
  hut_figure_assume (figure, TRUE);
}

void
hut_report_finish (HutReport *self)
{
  const HutFinish finish = hut_finish_of (self->parts);
  const HutFinishing *coats = &self->design->shell.finishing;
  HutFigure *figure;

  add_area (self, "finish.outside", N_ ("Outer faces to treat."), finish.outside_m2);
  add_coat (self, "finish.outside-buy", coats->outside, N_ ("Paint for outside, two coats."),
            N_ ("Varnish, oil or wax for outside, two coats."), finish.outside_m2);
  add_area (self, "finish.inside", N_ ("Inner faces to treat."), finish.inside_m2);
  add_coat (self, "finish.inside-buy", coats->inside, N_ ("Paint for inside, two coats."),
            N_ ("Varnish, oil or wax for inside, two coats."), finish.inside_m2);
  figure = hut_figure_add (self->out->figures, HUT_SUBJECT_FINISH, "finish.joints");
  hut_figure_say (figure, N_ ("Joints to glue, all edges together."), finish.joint_m, HUT_FIGURE_M,
                  FALSE);
  hut_figure_explain (figure, "l = sum of mating edges / 2",
                      N_ ("Sum over the parts as they are cut."));
  figure = hut_figure_add (self->out->figures, HUT_SUBJECT_FINISH, "finish.glue");
  hut_figure_say (figure, N_ ("Wood glue for joints and straps."),
                  hut_litres_for (finish.joint_m2 + finish.strap_m2, 1, HUT_COVERS_GLUE_M2_L,
                                  WASTE_RATIO),
                  HUT_FIGURE_LITRE, FALSE);
  hut_figure_explain (figure, "V = A / rate (1 + waste)",
                      N_ ("150 g/m² at 1.1 kg/l: common practice."));
  hut_figure_put (figure, "A", N_ ("area to glue"), finish.joint_m2 + finish.strap_m2,
                  HUT_FIGURE_M2);
}
