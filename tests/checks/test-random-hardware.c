/* tests/checks/test-random-hardware.c: hardware of the catalogue anywhere on random designs: either its
 * holes are in the sheet or a finding blocks, and what a finding offers cures it.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * HUT_SEEDS=N goes over N designs, HUT_FIRST_SEED=S begins there. */
#include "config.h"
#include "checks/hut-check-case.h"
#include "geom/hut-geos.h"
#include "hut-assert.h"
#include "hut-random-design.h"
#include <string.h>

#define SEEDS_DEFAULT 120
#define AREA_TOLERANCE_MM2 1e-6

static gboolean
is_blocked (const HutCheckCase *c,
            const char *item)
{
  for (guint i = 0; i < c->findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (c->findings, i);

      if (finding->severity == HUT_SEVERITY_BLOCKS && g_strcmp0 (finding->item, item) == 0)
        return TRUE;
    }
  return FALSE;
}

/* ---- holes ---------------------------------------------------------------------------------- */

static double
outside_mm2 (const HutPath *path,
             const HutPanel *panel)
{
  g_autoptr(HutRegion) hole = hut_region_new (hut_path_copy (path));
  g_autoptr(HutRegion) sheet = hut_region_new (hut_path_copy (panel->region->outer));

  return hut_geos_op_area_mm2 (hole, sheet, HUT_GEOS_DIFFERENCE, NULL);
}

static double
shared_mm2 (const HutPlacedHole *a,
            const HutPlacedHole *b)
{
  double sum_mm2 = 0.0;

  for (guint i = 0; i < a->paths->len; i++)
    for (guint k = 0; k < b->paths->len; k++)
      {
        g_autoptr(HutRegion) one = hut_region_new (hut_path_copy (g_ptr_array_index (a->paths, i)));
        g_autoptr(HutRegion) other
            = hut_region_new (hut_path_copy (g_ptr_array_index (b->paths, k)));
        const double mm2 = hut_geos_op_area_mm2 (one, other, HUT_GEOS_INTERSECTION, NULL);

        sum_mm2 += MAX (mm2, 0.0);
      }
  return sum_mm2;
}

static void
check_hole (guint64 seed,
            const HutCheckCase *c,
            guint index,
            guint *inside)
{
  const GPtrArray *holes = c->assembly->holes;
  const HutPlacedHole *hole = g_ptr_array_index (holes, index);
  const HutPanel *panel = g_ptr_array_index (c->assembly->panels, hole->panel);

  if (is_blocked (c, hole->item))
    return;
  for (guint i = 0; i < hole->paths->len; i++)
    {
      const double mm2 = outside_mm2 (g_ptr_array_index (hole->paths, i), panel);

      if (!(mm2 >= 0.0 && mm2 <= AREA_TOLERANCE_MM2))
        fail_msg ("seed %" G_GUINT64_FORMAT ": %s has %g mm2 of its holes beside %s", seed,
                  hole->item, mm2, hut_panel_name (panel->id));
    }
  for (guint k = 0; k < holes->len; k++)
    {
      const HutPlacedHole *other = g_ptr_array_index (holes, k);

      if (k != index && other->panel == hole->panel && !is_blocked (c, other->item)
          && shared_mm2 (hole, other) > AREA_TOLERANCE_MM2)
        fail_msg ("seed %" G_GUINT64_FORMAT ": %s and %s share holes", seed, hole->item,
                  other->item);
    }
  (*inside)++;
}

static void
holes_of_hardware_lie_in_the_sheet_or_a_finding_blocks (void **state)
{
  const guint64 first = hut_random_first_seed (), count = hut_random_seed_count (SEEDS_DEFAULT);
  guint met = 0, inside = 0;

  for (guint64 seed = first; seed < first + count; seed++)
    {
      g_autoptr(HutCheckCase) c = hut_check_case_new (hut_random_design (seed));

      for (guint i = 0; i < c->assembly->holes->len; i++)
        {
          const HutPlacedHole *hole = g_ptr_array_index (c->assembly->holes, i);

          if (hole->source != HUT_HOLE_HARDWARE)
            continue;
          met++;
          check_hole (seed, c, i, &inside);
        }
    }
  print_message ("%u leaves with holes, %u without a blocking finding\n", met, inside);
  assert_true (met >= count); /* about 2.5 of a design */
  assert_true (inside > 0);
}

/* ---- fixes ---------------------------------------------------------------------------------- */

static gboolean
is_told (const HutCheckCase *c,
         const char *check,
         const char *item)
{
  for (guint i = 0; i < c->findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (c->findings, i);

      if (strcmp (finding->check, check) == 0 && g_strcmp0 (finding->item, item) == 0)
        return TRUE;
    }
  return FALSE;
}

static void
what_a_finding_offers_cures_it (void **state)
{
  const guint64 first = hut_random_first_seed (), count = hut_random_seed_count (SEEDS_DEFAULT);
  guint met = 0;

  for (guint64 seed = first; seed < first + count; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autoptr(HutCheckCase) c = NULL;
      HutFixKind done = HUT_FIX_NONE;

      design->shell.fitted = FALSE; /* a fitted box changes its size with its hardware */
      c = hut_check_case_new (hut_design_copy (design));
      for (guint i = 0; i < c->findings->len; i++)
        {
          const HutFinding *finding = g_ptr_array_index (c->findings, i);
          g_autoptr(HutDesign) cured = NULL;
          g_autoptr(HutCheckCase) after = NULL;
          g_autofree char *text = NULL, *fix = NULL;

          /* A way out is looked for when it is asked for: its test has the room. */
          if (finding->fix.kind == HUT_FIX_NONE || finding->fix.kind == HUT_FIX_WAY_OUT
              || finding->fix.kind == done)
            continue;
          done = finding->fix.kind;
          cured = hut_design_copy (design);
          text = hut_finding_dup_text (finding, NULL, ".");
          fix = hut_finding_dup_fix_text (finding, NULL, ".");
          met++;
          assert_true (hut_finding_apply_fix (finding, cured));
          after = hut_check_case_new (g_steal_pointer (&cured));
          if (is_told (after, finding->check, finding->item))
            fail_msg ("seed %" G_GUINT64_FORMAT ": %s is still told: %s %s", seed, finding->check,
                      text, fix);
        }
    }
  print_message ("%u fixes\n", met);
  assert_true (met * 4 >= count);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (holes_of_hardware_lie_in_the_sheet_or_a_finding_blocks),
    cmocka_unit_test (what_a_finding_offers_cures_it),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
