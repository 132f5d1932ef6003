/* src/checks/hut-check-lid.c: the weight of the lid: on the hand, and on the feet of the enclosure.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include "physics/hut-lid-balance.h"
#include "physics/hut-tip.h"
#include <glib/gi18n-lib.h>

#define RAD_PER_DEG (G_PI / 180.0)

/* From here on a lid is hard to lift with one hand, or with two, N. Own choice: about half of what
 * guidance on lifting gives for a load at arm's length, 5 and 10 kg; twice of it warns. */
#define ONE_HAND_N 50.0
#define TWO_HANDS_N 100.0
#define WARN_RATIO 2.0

static void
check_hinged (HutChecking *self,
              const HutLidBalance *balance,
              double end_deg)
{
  double most_n = 0, at_deg = 0;
  HutFinding *finding;

  for (double angle_deg = 0; angle_deg <= end_deg; angle_deg += 1)
    {
      const double force_n
          = hut_lid_balance_hand_n (balance, self->assembly, angle_deg * RAD_PER_DEG);

      if (force_n > most_n)
        {
          most_n = force_n;
          at_deg = angle_deg;
        }
    }
  if (most_n <= ONE_HAND_N)
    return;
  finding = hut_checking_add (
      self, "lid.force", most_n > WARN_RATIO * ONE_HAND_N ? HUT_SEVERITY_WARNS : HUT_SEVERITY_NOTES,
      N_ ("The lid takes {is} N to lift at its far edge (most at {at} degrees); "
          "over {must} N is hard with one hand: thinner sheet, a gas spring or a stay helps."));
  hut_finding_set_numbers (finding, most_n, ONE_HAND_N);
  finding->at = at_deg;
}

static void
check_lifted (HutChecking *self,
              const HutLidBalance *balance)
{
  const double weight_n = balance->lid.mass_kg * HUT_GRAVITY_M_S2;
  HutFinding *finding;

  if (weight_n <= TWO_HANDS_N)
    return;
  finding = hut_checking_add (
      self, "lid.force",
      weight_n > WARN_RATIO * TWO_HANDS_N ? HUT_SEVERITY_WARNS : HUT_SEVERITY_NOTES,
      N_ ("The lid weighs {is} N; over {must} N is hard to lift off with two "
          "hands: thinner sheet or a hinge helps."));
  hut_finding_set_numbers (finding, weight_n, TWO_HANDS_N);
}

static void
check_tipping (HutChecking *self,
               const HutLidBalance *balance,
               double end_deg)
{
  double least = INFINITY, at_deg = 0;
  HutFinding *finding;

  for (double angle_deg = 0; angle_deg <= end_deg; angle_deg += 1)
    {
      const double ratio
          = hut_lid_balance_tip_ratio (balance, self->assembly, angle_deg * RAD_PER_DEG);

      if (ratio < least)
        {
          least = ratio;
          at_deg = angle_deg;
        }
    }
  if (least >= HUT_TIP_RATIO)
    return;
  finding = hut_checking_add (self, "lid.tip", HUT_SEVERITY_WARNS,
                              N_ ("With the lid open at {at} degrees, what holds the enclosure on "
                                  "the bench is {is} times what "
                                  "tips it over; {must} times is wanted: open it less far, weigh "
                                  "the base down, or fix it."));
  hut_finding_set_numbers (finding, least, HUT_TIP_RATIO);
  finding->at = at_deg;
}

void
hut_check_lid (HutChecking *self)
{
  const HutAssembly *assembly = self->assembly;
  const double end_deg = assembly->design->shell.opening_angle_deg;
  HutLidBalance balance;

  if (!assembly->whole)
    return;
  balance = hut_lid_balance_new (assembly, self->parts);
  if (!assembly->hinged)
    {
      check_lifted (self, &balance);
      return;
    }
  /* With gas springs the step Engineering tells the force that is left. */
  if (assembly->design->shell.stay.kind != HUT_STAY_SPRING)
    check_hinged (self, &balance, end_deg);
  check_tipping (self, &balance, end_deg);
}
