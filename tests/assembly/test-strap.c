/* tests/assembly/test-strap.c: straps find their place between everything else.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-strap.h"
#include "hut-assert.h"
#include "hut-random-design.h"

#define SEEDS 250
/* Everything lies on the grid: less is rounding. */
#define TOUCH_MM (HUT_GRID_MM / 2.0)

static void
assert_within_panel (const HutAssembly *assembly,
                     const HutSolid *strap,
                     guint64 seed)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, strap->panel);
  const HutRect shadow = hut_frame3_shadow (&panel->frame, &strap->box);

  if (shadow.u0 < 0.0 || shadow.v0 < 0.0 || shadow.u1 > panel->width_mm
      || shadow.v1 > panel->height_mm)
    fail_msg ("seed %" G_GUINT64_FORMAT ": a strap sticks out of %s", seed,
              hut_panel_id_to_string (panel->id));
}

static void
assert_apart (const HutAssembly *assembly,
              const HutSolid *strap,
              const GArray *solids,
              guint from,
              guint64 seed)
{
  for (guint i = from; i < solids->len; i++)
    {
      const HutSolid *other = &g_array_index (solids, HutSolid, i);
      const double overlap_mm = hut_box3_overlap_mm (&strap->box, &other->box);
      const HutPanel *of_strap = g_ptr_array_index (assembly->panels, strap->panel);
      const HutPanel *of_other = g_ptr_array_index (assembly->panels, other->panel);

      /* Leads pass over a strap. */
      if (overlap_mm > TOUCH_MM && other->kind != HUT_SOLID_LEADS)
        fail_msg ("seed %" G_GUINT64_FORMAT ": a strap of %s is %g mm inside a solid of %s", seed,
                  hut_panel_id_to_string (of_strap->id), overlap_mm,
                  hut_panel_id_to_string (of_other->id));
    }
}

/* Of all lids, bottoms and thicknesses: no two things are in one place with the lid closed. */
static void
straps_lie_behind_their_panel_and_in_nothing_else (void **state)
{
  guint count = 0;

  for (guint64 seed = 1; seed <= SEEDS; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);

      for (guint i = 0; i < parts->solids->len; i++)
        {
          const HutSolid *strap = &g_array_index (parts->solids, HutSolid, i);

          assert_within_panel (assembly, strap, seed);
          assert_apart (assembly, strap, assembly->solids, 0, seed);
          assert_apart (assembly, strap, parts->solids, i + 1, seed);
          count++;
        }
    }
  assert_true (count > SEEDS); /* several a design that needs any */
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (straps_lie_behind_their_panel_and_in_nothing_else),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
