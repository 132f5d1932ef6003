/* src/checks/hut-check-air.c: the fans of the design against its openings.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include "physics/hut-enclosure-air.h"
#include "physics/hut-hood.h"
#include <glib/gi18n-lib.h>

#define CM2_PER_M2 1e4

/* Ways in that are as large as the way out: common practice, no source. */
static void
check_intake (HutChecking *self,
              const HutEnclosureAir *air)
{
  HutFinding *finding;

  if (air->intake_m2 >= air->fan_m2)
    return;
  finding = hut_checking_add (
      self, "air.intake", air->intake_m2 > 0 ? HUT_SEVERITY_NOTES : HUT_SEVERITY_WARNS,
      N_ ("The openings that let air in have {is} cm² together; the fan blows through {must} cm². "
          "Smaller ways in take flow from it, and draw air through every gap."));
  hut_finding_set_numbers (finding, air->intake_m2 * CM2_PER_M2, air->fan_m2 * CM2_PER_M2);
}

static void
check_hold (HutChecking *self,
            const HutEnclosureAir *air,
            const HutAirGuess *guess)
{
  HutFinding *finding;

  if (air->moves && air->face_m_s >= HUT_HOLD_VELOCITY_M_S)
    return;
  finding
      = hut_checking_add (self, "air.hold", HUT_SEVERITY_NOTES,
                          hut_duct_is_told (self->assembly->design)
                              ? N_ ("With the fan, air comes in through openings and seam at "
                                    "about {is} m/s; under {must} m/s fumes may drift out.")
                              : N_ ("With the fan, air comes in through openings and seam at "
                                    "about {is} m/s (a hose of {at} m with two bends is assumed); "
                                    "under {must} m/s fumes may drift out."));
  hut_finding_set_numbers (finding, air->face_m_s, HUT_HOLD_VELOCITY_M_S);
  finding->at = guess->hose_m;
}

void
hut_check_air (HutChecking *self)
{
  HutAirGuess guess;
  HutEnclosureAir air;

  if (!self->assembly->whole)
    return;
  guess = hut_air_guess_of (self->assembly->design);
  air = hut_enclosure_air_find (self->assembly, &guess);
  if (air.fans == 0)
    return;
  check_intake (self, &air);
  check_hold (self, &air, &guess);
}
