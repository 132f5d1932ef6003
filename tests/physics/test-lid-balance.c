/* tests/physics/test-lid-balance.c: the real lid on its hinge, by hand.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "hut-box-design.h"
#include "hut-random-design.h"
#include "physics/hut-lid-balance.h"

#define DEG (G_PI / 180)

typedef struct
{
  HutAssembly *assembly;
  HutPartSet *parts;
  HutLidBalance balance;
} Case;

static Case
case_new (HutDesign *design)
{
  Case self = { .assembly = hut_assembly_new (design) };

  hut_design_free (design);
  self.parts = hut_part_set_new (self.assembly);
  self.balance = hut_lid_balance_new (self.assembly, self.parts);
  return self;
}

static void
case_clear (Case *self)
{
  hut_part_set_free (self->parts);
  hut_assembly_free (self->assembly);
}

/* The plain box with a lid that is its top panel alone, hinged at the back: 312 x 212 x 6. */
static HutDesign *
flat_lid (void)
{
  HutDesign *design = hut_box_design_new ();

  design->shell.lid = HUT_LID_TOP;
  design->machine.mass_kg = 0;
  hut_design_get_stock (design, "wall")->density_kg_m3 = 1000;
  return design;
}

static void
a_flat_lid_takes_half_its_weight_to_lift (void **state)
{
  Case here = case_new (flat_lid ());
  const double weight_n = 0.312 * 0.212 * 0.006 * 1000 * HUT_GRAVITY_M_S2;
  const HutVec3 closed = hut_lid_balance_centre_mm (&here.balance, here.assembly, 0);

  assert_near (here.balance.lid.mass_kg, 0.312 * 0.212 * 0.006 * 1000, 1e-9);
  assert_near (closed.x, 156, 1e-6);
  assert_near (closed.y, 106, 1e-6);
  /* Level arm 106 of 212; the lever is a trifle longer, to the lid's far corner over or under the
   * hinge. */
  assert_near (hut_lid_balance_hand_n (&here.balance, here.assembly, 0) * here.balance.lever_m,
               weight_n * 0.106, 1e-9);
  assert_near (here.balance.lever_m, 0.212, 0.0005);
  case_clear (&here);
}

static void
opened_by_half_a_turn_the_lid_hangs_behind_the_box (void **state)
{
  Case here = case_new (flat_lid ());
  const HutVec3 closed = hut_lid_balance_centre_mm (&here.balance, here.assembly, 0);
  const HutVec3 up = hut_lid_balance_centre_mm (&here.balance, here.assembly, 90 * DEG);
  const HutVec3 open = hut_lid_balance_centre_mm (&here.balance, here.assembly, 180 * DEG);
  const HutVec3 hinge = here.assembly->hinge_point;

  /* Mirrored at the hinge line; half way it stands over it, 106 higher but for the hinge's height.
   */
  assert_near (open.y, 2 * hinge.y - closed.y, 1e-6);
  assert_near (open.z, 2 * hinge.z - closed.z, 1e-6);
  assert_near (up.z - hinge.z, hinge.y - closed.y, 1e-6);
  /* All weights lie 106 in front of the rear edge or behind it, so the ratio is that of the masses.
   */
  assert_near (hut_lid_balance_tip_ratio (&here.balance, here.assembly, 180 * DEG),
               here.balance.base.mass_kg / here.balance.lid.mass_kg, 1e-6);
  assert_true (isinf (hut_lid_balance_tip_ratio (&here.balance, here.assembly, 0)));
  /* It falls open by itself: the hand has to hold it back. */
  assert_true (hut_lid_balance_hand_n (&here.balance, here.assembly, 180 * DEG) < 0);
  case_clear (&here);
}

static void
the_machine_holds_the_box_down_unless_it_stands_on_the_bench (void **state)
{
  HutDesign *design = flat_lid (), *open;
  Case here, without;

  design->machine.mass_kg = 2;
  open = hut_design_copy (design);
  open->shell.bottom = HUT_BOTTOM_OPEN;
  here = case_new (design);
  without = case_new (open);
  /* 2 kg, and the base, against the lid, all measured from the rear edge at y = 212. */
  assert_near (hut_lid_balance_tip_ratio (&here.balance, here.assembly, 180 * DEG),
               (here.balance.base.mass_kg * 106 + 2 * (212 - here.balance.machine_at_mm.y))
                   / (here.balance.lid.mass_kg * 106),
               1e-6);
  assert_near (without.balance.machine_kg, 0, 0);
  case_clear (&here);
  case_clear (&without);
}

/* Another way to the hand's force: the lid's centre rises by dz for a small turn, so M = m g dz / d
 * angle. */
static void
the_force_of_the_hand_is_the_rise_of_the_weight (void **state)
{
  const guint64 first = hut_random_first_seed (), count = MIN (hut_random_seed_count (40), 100);
  const double step = 1e-5;
  guint hinged = 0;

  for (guint64 seed = first; seed < first + count; seed++)
    {
      Case here = case_new (hut_random_design (seed));

      if (here.assembly->whole && here.assembly->hinged && here.balance.lid.mass_kg > 0)
        for (double angle = 0.1; angle < 3; angle += 0.4)
          {
            const double rise_m
                = (hut_lid_balance_centre_mm (&here.balance, here.assembly, angle + step).z
                   - hut_lid_balance_centre_mm (&here.balance, here.assembly, angle - step).z)
                  / 1000;
            const double force_n = here.balance.lid.mass_kg * HUT_GRAVITY_M_S2 * rise_m / (2 * step)
                                   / here.balance.lever_m;

            assert_near (hut_lid_balance_hand_n (&here.balance, here.assembly, angle), force_n,
                         1e-4 * (1 + fabs (force_n)));
            hinged++;
          }
      case_clear (&here);
    }
  assert_true (hinged > 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_flat_lid_takes_half_its_weight_to_lift),
    cmocka_unit_test (opened_by_half_a_turn_the_lid_hangs_behind_the_box),
    cmocka_unit_test (the_machine_holds_the_box_down_unless_it_stands_on_the_bench),
    cmocka_unit_test (the_force_of_the_hand_is_the_rise_of_the_weight),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
