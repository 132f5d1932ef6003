/* tests/engineering/test-spring.c: gas springs that are chosen for a lid.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "engineering/hut-spring.h"
#include "hut-assert.h"

#define RAD_PER_DEG (G_PI / 180.0)

typedef struct
{
  HutDesign *design;
  HutAssembly *assembly;
  HutPartSet *parts;
  HutSpringLid lid;
} Case;

static void
case_derive (Case *self)
{
  const double end_rad = self->design->shell.opening_angle_deg * RAD_PER_DEG;

  self->assembly = hut_assembly_new (self->design);
  self->parts = hut_part_set_new (self->assembly);
  self->lid = (HutSpringLid) {
    .assembly = self->assembly,
    .balance = hut_lid_balance_new (self->assembly, self->parts),
    .end_rad = end_rad,
  };
}

static void
case_init (Case *self,
           double density_kg_m3,
           double angle_deg)
{
  *self = (Case) { .design = hut_design_new () };
  self->design->shell.opening_angle_deg = angle_deg;
  hut_design_get_stock (self->design, "plywood")->density_kg_m3 = density_kg_m3;
  case_derive (self);
}

static void
case_clear (Case *self)
{
  hut_part_set_free (self->parts);
  hut_assembly_free (self->assembly);
  hut_design_free (self->design);
}

static void
the_chosen_spring_holds_the_lid_open_within_its_stroke (void **state)
{
  Case self;
  HutSpring spring;
  double open_mm, closed_mm;

  case_init (&self, 900, 60);
  assert_true (hut_spring_lid_moment_nm (&self.lid, self.lid.end_rad) > 0);
  spring = hut_spring_choose (&self.lid, 2, HUT_UNKNOWN);
  assert_true (spring.found && spring.holds);
  open_mm = hut_strut_length_m (&spring.mount, self.lid.end_rad) * 1000;
  closed_mm = hut_strut_length_m (&spring.mount, 0) * 1000;
  assert_near (open_mm, spring.long_mm, 1e-9);
  assert_true (open_mm - closed_mm <= spring.stroke_mm);
  assert_true (open_mm >= 2 * spring.stroke_mm + 65);
  case_clear (&self);
}

/* By hand: at the open end the spring is stretched, so n F r / a against m g x / a. */
static void
hand_force_is_the_moment_balance_at_the_open_end (void **state)
{
  Case self;
  HutSpring spring;
  double lever_m, expected_n;

  case_init (&self, 900, 60);
  spring = hut_spring_choose (&self.lid, 2, HUT_UNKNOWN);
  lever_m = hut_strut_lever_m (&spring.mount, self.lid.end_rad);
  expected_n = (hut_spring_lid_moment_nm (&self.lid, self.lid.end_rad)
                - 2 * spring.force_n * lever_m)
               / self.lid.balance.lever_m;
  assert_near (hut_spring_hand_n (&spring, &self.lid, self.lid.end_rad), expected_n, 1e-9);
  case_clear (&self);
}

static void
springs_ask_less_of_a_hand_than_none (void **state)
{
  Case self;
  HutSpring spring;

  case_init (&self, 2000, 60);
  spring = hut_spring_choose (&self.lid, 2, HUT_UNKNOWN);
  assert_true (spring.found);
  assert_true (fabs (spring.hand_most_n)
               < hut_lid_balance_hand_n (&self.lid.balance, self.assembly, 0));
  case_clear (&self);
}

static void
a_force_that_is_given_is_kept_and_a_weak_one_does_not_hold (void **state)
{
  Case self;
  HutSpring spring;

  case_init (&self, 4000, 45);
  spring = hut_spring_choose (&self.lid, 1, 5);
  assert_true (spring.found);
  assert_near (spring.force_n, 5, 0);
  assert_false (spring.holds);
  case_clear (&self);
}

static void
a_lid_that_turns_level_needs_no_spring (void **state)
{
  Case self;

  case_init (&self, 700, 75);
  self.design->shell.lid = HUT_LID_FRONT;
  self.design->shell.hinge = HUT_HINGE_LEFT;
  hut_part_set_free (self.parts);
  hut_assembly_free (self.assembly);
  case_derive (&self);
  assert_false (hut_spring_lid_is_heavy (self.assembly));
  assert_false (hut_spring_choose (&self.lid, 2, HUT_UNKNOWN).found);
  case_clear (&self);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (the_chosen_spring_holds_the_lid_open_within_its_stroke),
    cmocka_unit_test (hand_force_is_the_moment_balance_at_the_open_end),
    cmocka_unit_test (springs_ask_less_of_a_hand_than_none),
    cmocka_unit_test (a_force_that_is_given_is_kept_and_a_weak_one_does_not_hold),
    cmocka_unit_test (a_lid_that_turns_level_needs_no_spring),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
