/* tests/app/test-ready-opening.c: what lies on the shelf can be cut.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-ready-opening.h"
#include "assembly/hut-assembly.h"
#include "hut-assert.h"
#include <string.h>

/* Area that an opening cuts away, mm2. */
static double
area_mm2 (const HutOpening *opening)
{
  g_autoptr (GPtrArray) paths = hut_opening_dup_paths (opening);
  double sum = 0.0;

  for (guint i = 0; i < paths->len; i++)
    sum += hut_path_area_mm2 (g_ptr_array_index (paths, i));
  return sum;
}

static HutOpening *
find (const char *name)
{
  for (guint i = 0; i < hut_ready_opening_get_count (); i++)
    if (g_str_equal (hut_ready_opening_get_name (i), name))
      return hut_ready_opening_new (i);
  fail_msg ("there is no %s", name);
  return NULL;
}

static void
entries_are_as_large_as_their_names_say (void **state)
{
  /* By hand: pi 15^2; 60 x 40 less the corners (4 - pi) 3^2; 30 x 10 + pi 5^2; 25 pi 4^2; 8 pi 3^2. */
  const struct
  {
    const char *name;
    double area_mm2;
  } cases[] = {
    { "Round hole 30", 706.858 },       { "Rectangle 60 × 40", 2392.274 }, { "Slot 40 × 10", 378.540 },
    { "Vent pattern 5 × 5", 1256.637 }, { "Ring of 8 holes 60", 226.195 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (HutOpening) opening = find (cases[i].name);

      assert_near (area_mm2 (opening), cases[i].area_mm2, 0.01);
    }
}

/* Dropped in the middle of a large panel, each is cut: no hole of a pattern meets another. */
static void
each_entry_can_be_cut (void **state)
{
  for (guint i = 0; i < hut_ready_opening_get_count (); i++)
    {
      HutDesign *design = hut_design_new ();
      g_autoptr (HutAssembly) assembly = NULL;
      HutOpening *opening = hut_ready_opening_new (i);

      design->shell.fitted = FALSE;
      design->shell.inside_mm = (HutVec3) { 500.0, 400.0, 600.0 };
      design->shell.seam_height_mm = 300.0;
      opening->at.u_offset_mm = 250.0;
      opening->at.v_offset_mm = 150.0;
      g_ptr_array_add (design->openings, opening);
      assembly = hut_assembly_new (design);
      const HutPlacedHole *hole = hut_assembly_get_hole (assembly, opening->id);
      if (hole == NULL || !hole->cut)
        fail_msg ("%s is not cut", hut_ready_opening_get_name (i));
      assert_near_mm (hole->centre.u, 250.0, 1e-9);
      hut_design_free (design);
    }
}

static void
names_differ_and_groups_hang_together (void **state)
{
  g_autoptr (GHashTable) names = g_hash_table_new (g_str_hash, g_str_equal);
  g_autoptr (GHashTable) groups = g_hash_table_new (g_str_hash, g_str_equal);
  const char *group = NULL;

  for (guint i = 0; i < hut_ready_opening_get_count (); i++)
    {
      assert_true (g_hash_table_add (names, (gpointer) hut_ready_opening_get_name (i)));
      assert_true (strlen (hut_ready_opening_get_words (i)) > 0);
      if (g_strcmp0 (group, hut_ready_opening_get_group (i)) == 0)
        continue;
      group = hut_ready_opening_get_group (i);
      assert_true (g_hash_table_add (groups, (gpointer) group)); /* a heading comes once */
    }
  assert_int_equal (g_hash_table_size (groups), 4);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (entries_are_as_large_as_their_names_say),
    cmocka_unit_test (each_entry_can_be_cut),
    cmocka_unit_test (names_differ_and_groups_hang_together),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
