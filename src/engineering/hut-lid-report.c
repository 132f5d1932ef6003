/* src/engineering/hut-lid-report.c: the weight of the lid, what holds it, and lifting the whole.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-engineering"
#include "config.h"
#include "engineering/hut-report.h"
#include "physics/hut-tip.h"
#include <glib/gi18n-lib.h>

#define RAD_PER_DEG (G_PI / 180.0)
#define MM_PER_M 1000.0
/* As in the findings: own choices, about half of what guidance on lifting gives at arm's length. */
#define ONE_HAND_N 50.0
#define TWO_PEOPLE_KG 25.0 /* common guidance for one person, close to the body (from memory) */
/* A stay is put where it holds by this share of the lid's reach. Own choice. */
#define PROP_RATIO 0.5

static void
sample_hand (HutReport *self,
             const HutSpringLid *lid)
{
  const double end_deg = lid->end_rad / RAD_PER_DEG;

  for (double angle_deg = 0; angle_deg <= end_deg; angle_deg += 1)
    {
      const double angle_rad = angle_deg * RAD_PER_DEG;
      HutHandPoint point = {
        .angle_deg = angle_deg,
        .bare_n = hut_lid_balance_hand_n (&lid->balance, self->assembly, angle_rad),
      };

      point.held_n = self->out->spring.found
                         ? hut_spring_hand_n (&self->out->spring, lid, angle_rad)
                         : point.bare_n;
      g_array_append_val (self->out->hand, point);
    }
}

static void
add_force (HutReport *self,
           const HutSpringLid *lid)
{
  const gboolean sprung = self->out->spring.found;
  double most_n = 0, at_deg = 0;
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_LID, "lid.hand");

  for (guint i = 0; i < self->out->hand->len; i++)
    {
      const HutHandPoint *point = &g_array_index (self->out->hand, HutHandPoint, i);
      const double force_n = sprung ? point->held_n : point->bare_n;

      if (fabs (force_n) <= fabs (most_n))
        continue;
      most_n = force_n;
      at_deg = point->angle_deg;
    }
  hut_figure_say (figure,
                  most_n < 0               ? N_ ("A hand must pull the lid down with up to this.")
                  : fabs (most_n) > ONE_HAND_N ? N_ ("The lid is heavy for one hand.")
                                           : N_ ("One hand lifts the lid with up to this."),
                  fabs (most_n), HUT_FIGURE_N, fabs (most_n) > ONE_HAND_N);
  figure->limit = ONE_HAND_N;
  hut_figure_explain (figure, "F = (m g x - n F s r) / a",
                      N_ ("Moments about the hinge line, without friction."));
  hut_figure_put (figure, "m", N_ ("mass of the lid with its hardware"), lid->balance.lid.mass_kg,
                  HUT_FIGURE_KG);
  hut_figure_put (figure, "a", N_ ("hinge line to the lid's far end"),
                  lid->balance.lever_m * MM_PER_M, HUT_FIGURE_MM);
  hut_figure_put (figure, "", N_ ("angle at which it is most"), at_deg, HUT_FIGURE_DEG);
  hut_figure_put (figure, "m g x", N_ ("moment of the closed lid"),
                  hut_spring_lid_moment_nm (lid, 0), HUT_FIGURE_NM);
}

static void
add_mount (HutReport *self,
           const HutSpringLid *lid)
{
  const HutSpring *spring = &self->out->spring;
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_LID, "lid.spring");

  if (!spring->found)
    {
      hut_figure_say (figure, N_ ("No gas spring of the usual sizes fits this lid: take a stay."),
                      NAN, HUT_FIGURE_N, TRUE);
      return;
    }
  hut_figure_say (figure,
                  spring->count > 1 ? N_ ("Gas springs to buy: two of this force each.")
                                    : N_ ("Gas spring to buy: one of this force."),
                  spring->force_n, HUT_FIGURE_N, FALSE);
  hut_figure_explain (figure, "F = 1.1 m g x / (n r) at the open end",
                      N_ ("Moment balance; standard forces and strokes: common practice, the "
                          "maker's list decides. A tenth more is the habit of one maker."));
  hut_figure_put (figure, "s", N_ ("stroke, at least"), spring->stroke_mm, HUT_FIGURE_MM);
  hut_figure_put (figure, "L", N_ ("between its ends, stretched"), spring->long_mm, HUT_FIGURE_MM);
  hut_figure_put (figure, "r", N_ ("lever with the lid open"),
                  fabs (hut_strut_lever_m (&spring->mount, lid->end_rad)) * MM_PER_M,
                  HUT_FIGURE_MM);
  figure = hut_figure_add (self->out->figures, HUT_SUBJECT_LID, "lid.mount");
  hut_figure_say (figure,
                  N_ ("On the lid, the spring's ball sits this far from the hinge line; its other "
                      "places are below."),
                  hypot (spring->mount.lid_x_m, spring->mount.lid_y_m) * MM_PER_M, HUT_FIGURE_MM,
                  FALSE);
  hut_figure_explain (figure, NULL,
                      N_ ("Chosen on a grid so that a hand needs least. Check on the machine that "
                          "nothing is in its way."));
  hut_figure_put (figure, "", N_ ("lid: away from the hinge line, level, lid closed"),
                  spring->mount.lid_x_m * MM_PER_M, HUT_FIGURE_MM);
  hut_figure_put (figure, "", N_ ("lid: over the hinge line, lid closed"),
                  spring->mount.lid_y_m * MM_PER_M, HUT_FIGURE_MM);
  hut_figure_put (figure, "", N_ ("base: away from the hinge line, level"),
                  spring->mount.base_x_m * MM_PER_M, HUT_FIGURE_MM);
  hut_figure_put (figure, "", N_ ("base: over the hinge line"), spring->mount.base_y_m * MM_PER_M,
                  HUT_FIGURE_MM);
}

/* Does it stay open, and does it stay shut? */
static void
add_stay (HutReport *self,
          const HutSpringLid *lid)
{
  const double open_nm = hut_spring_lid_moment_nm (lid, lid->end_rad);
  const HutSpring *spring = &self->out->spring;
  const HutStayKind kind = self->design->shell.stay.kind;
  const gboolean holds = kind == HUT_STAY_PROP || (spring->found ? spring->holds : open_nm <= 0);
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_LID, "lid.stays-open");

  hut_figure_say (figure,
                  holds ? (kind == HUT_STAY_NONE
                               ? N_ ("Open, the lid rests past its balance and stays there.")
                               : N_ ("Open, the lid is held."))
                        : N_ ("Open, the lid falls shut when it is let go: hands get caught."),
                  kind == HUT_STAY_PROP ? open_nm / (PROP_RATIO * lid->balance.lever_m)
                                        : fabs (open_nm),
                  kind == HUT_STAY_PROP ? HUT_FIGURE_N : HUT_FIGURE_NM, !holds);
  hut_figure_explain (figure, "M = m g x",
                      N_ ("Moment of the open lid about the hinge line; on a stay at half of its "
                          "reach, the force that it bears."));
  hut_figure_put (figure, "", N_ ("opening angle"), lid->end_rad / RAD_PER_DEG, HUT_FIGURE_DEG);
  hut_figure_put (figure, "M", N_ ("moment that closes the open lid"), open_nm, HUT_FIGURE_NM);
  if (!spring->found || spring->shut)
    return;
  hut_figure_say (hut_figure_add (self->out->figures, HUT_SUBJECT_LID, "lid.stays-shut"),
                  N_ ("Shut, the springs push the lid open: it needs a latch."),
                  -spring->hand_most_n, HUT_FIGURE_N, TRUE);
}

static guint
hinge_count (const HutAssembly *assembly)
{
  guint count = 0;

  for (guint i = 0; i < assembly->hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (assembly->hardware, i);

      if (placed->leaf == 0 && placed->item->group == HUT_ITEM_HINGE)
        count++;
    }
  return count;
}

static void
add_hinges (HutReport *self,
            const HutSpringLid *lid)
{
  const guint count = hinge_count (self->assembly);
  const double weight_n = lid->balance.lid.mass_kg * HUT_GRAVITY_M_S2;
  const double spring_n = self->out->spring.found ? self->out->spring.count
                                                        * self->out->spring.force_n
                                                        * HUT_SPRING_PROGRESSION_RATIO
                                                  : 0;
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_LID, "lid.hinge-load");

  if (count == 0)
    {
      hut_figure_ask (figure, N_ ("No hinges are in the design yet: put them on the hinge line."),
                      "openings");
      return;
    }
  hut_figure_say (figure, N_ ("Each hinge, and the screws of each of its leaves, bears this."),
                  (weight_n + spring_n) / count, HUT_FIGURE_N, FALSE);
  hut_figure_explain (figure, "F = (m g + n F s) / hinges",
                      N_ ("Upper bound: weight and springs pull the same way, shared evenly."));
  hut_figure_put (figure, "m g", N_ ("weight of the lid"), weight_n, HUT_FIGURE_N);
  hut_figure_put (figure, "n F s", N_ ("springs, pushed together"), spring_n, HUT_FIGURE_N);
  hut_figure_put (figure, "hinges", N_ ("hinges"), count, HUT_FIGURE_COUNT);
}

static void
add_tip (HutReport *self,
         const HutSpringLid *lid)
{
  double least = INFINITY;
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_LID, "lid.tip");

  for (double angle_rad = 0; angle_rad <= lid->end_rad; angle_rad += RAD_PER_DEG)
    least = MIN (least, hut_lid_balance_tip_ratio (&lid->balance, self->assembly, angle_rad));
  hut_figure_say (figure,
                  least < HUT_TIP_RATIO
                      ? N_ ("Opening the lid nearly tips the enclosure over.")
                      : N_ ("With the lid open the enclosure stands: holding over tipping moment."),
                  least, HUT_FIGURE_RATIO, least < HUT_TIP_RATIO);
  figure->limit = HUT_TIP_RATIO;
  hut_figure_explain (figure, "sum m x inside / sum m x outside of the edge",
                      N_ ("Moments about the worst lower edge; 1.5 to 2 and more is asked for: "
                          "common practice."));
  hut_figure_put (figure, "m lid", N_ ("mass of the lid with its hardware"),
                  lid->balance.lid.mass_kg, HUT_FIGURE_KG);
  hut_figure_put (figure, "m base", N_ ("mass of the base"), lid->balance.base.mass_kg,
                  HUT_FIGURE_KG);
  hut_figure_put (figure, "m machine", N_ ("machine that stands on its bottom"),
                  lid->balance.machine_kg, HUT_FIGURE_KG);
}

static void
add_lift (HutReport *self,
          const HutLidBalance *balance)
{
  const double mass_kg = balance->lid.mass_kg + balance->base.mass_kg;
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_LID, "lid.whole");

  hut_figure_say (figure,
                  mass_kg > TWO_PEOPLE_KG
                      ? N_ ("The empty enclosure is more than one person should lift.")
                      : N_ ("The empty enclosure weighs this, without the machine."),
                  mass_kg, HUT_FIGURE_KG, mass_kg > TWO_PEOPLE_KG);
  figure->limit = TWO_PEOPLE_KG;
  hut_figure_explain (figure, "m = sum rho A t + hardware",
                      N_ ("All parts as they are cut. 25 kg close to the body is common guidance "
                          "(from memory): your local rules come first."));
  hut_figure_put (figure, "m lid", N_ ("mass of the lid with its hardware"), balance->lid.mass_kg,
                  HUT_FIGURE_KG);
  hut_figure_put (figure, "m base", N_ ("mass of the base"), balance->base.mass_kg, HUT_FIGURE_KG);
}

void
hut_report_lid (HutReport *self)
{
  const HutStay *stay = &self->design->shell.stay;
  const HutSpringLid lid = {
    .assembly = self->assembly,
    .balance = hut_lid_balance_new (self->assembly, self->parts),
    .end_rad = self->design->shell.opening_angle_deg * RAD_PER_DEG,
  };

  if (hut_spring_lid_is_heavy (self->assembly) && lid.balance.lever_m > 0)
    {
      if (stay->kind == HUT_STAY_SPRING)
        self->out->spring = hut_spring_choose (&lid, MAX (stay->count, 1), stay->force_n);
      sample_hand (self, &lid);
      add_force (self, &lid);
      add_stay (self, &lid);
      if (stay->kind == HUT_STAY_SPRING)
        add_mount (self, &lid);
    }
  if (self->assembly->hinged)
    {
      add_hinges (self, &lid);
      add_tip (self, &lid);
    }
  add_lift (self, &lid.balance);
}
