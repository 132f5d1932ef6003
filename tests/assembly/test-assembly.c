/* tests/assembly/test-assembly.c: the whole: size, hinge, solids, and what stops it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-assembly.h"
#include "hut-assert.h"
#include "hut-box-design.h"

static gboolean
has_trouble (const HutAssembly *assembly,
             HutTroubleKind kind)
{
  for (guint i = 0; i < assembly->troubles->len; i++)
    if (g_array_index (assembly->troubles, HutTrouble, i).kind == kind)
      return TRUE;
  return FALSE;
}

static void
box_of_ten_panels_has_the_size_worked_out_by_hand (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);

  assert_true (assembly->whole);
  assert_int_equal (assembly->panels->len, 10);
  assert_near_mm (assembly->outer_mm.x, 312, 1e-9);
  assert_near_mm (assembly->outer_mm.z, 162, 1e-9);
  assert_near_mm (assembly->seam_z_mm, 90, 1e-9);
  assert_int_equal (assembly->solids->len, 10);
}

/* A point of the lid far from the hinge must move up (hood, top) or to the front (front) when it opens. */
static void
lid_opens_outwards_on_every_hinge_line (void **state)
{
  static const struct
  {
    HutLidKind lid;
    HutHinge hinge;
    HutVec3 far, way;
  } cases[] = {
    { HUT_LID_HOOD, HUT_HINGE_BACK, { 156, 0, 90.5 }, { 0, 0, 1 } },
    { HUT_LID_HOOD, HUT_HINGE_LEFT, { 312, 100, 90.5 }, { 0, 0, 1 } },
    { HUT_LID_HOOD, HUT_HINGE_RIGHT, { 0, 100, 90.5 }, { 0, 0, 1 } },
    { HUT_LID_TOP, HUT_HINGE_BACK, { 156, 0, 155.5 }, { 0, 0, 1 } },
    { HUT_LID_FRONT, HUT_HINGE_LEFT, { 312, 6.5, 50 }, { 0, -1, 0 } },
    { HUT_LID_FRONT, HUT_HINGE_RIGHT, { 0, 6.5, 50 }, { 0, -1, 0 } },
    { HUT_LID_FRONT, HUT_HINGE_TOP, { 156, 6.5, 0 }, { 0, -1, 0 } },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr(HutDesign) design = hut_box_design_new ();
      g_autoptr(HutAssembly) assembly = NULL;
      HutVec3 r, speed, axis;

      design->shell.lid = cases[i].lid;
      design->shell.hinge = cases[i].hinge;
      assembly = hut_assembly_new (design);
      assert_true (assembly->hinged);
      axis = assembly->hinge_axis;
      r = hut_vec3_add (cases[i].far, hut_vec3_scale (assembly->hinge_point, -1));
      speed = (HutVec3) { axis.y * r.z - axis.z * r.y, axis.z * r.x - axis.x * r.z, axis.x * r.y - axis.y * r.x };
      if (!(hut_vec3_dot (speed, cases[i].way) > 150))
        fail_msg ("case %u: the far edge does not open", i);
    }
}

static void
hinge_offset_moves_the_axis_out_of_the_wall (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutAssembly) assembly = NULL;

  design->shell.hinge_offset_mm = 4;
  assembly = hut_assembly_new (design);
  assert_near_mm (assembly->hinge_point.y, 216, 1e-9);
  assert_near_mm (assembly->hinge_point.z, 90.5, 1e-9);
}

static void
lift_off_lid_has_no_hinge (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutAssembly) assembly = NULL;

  design->shell.lid = HUT_LID_LIFT_OFF;
  assembly = hut_assembly_new (design);
  assert_false (assembly->hinged);
  assert_true (assembly->whole);
}

static void
ledges_run_under_an_inset_bottom (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutAssembly) assembly = NULL;
  guint ledges = 0;

  design->shell.bottom = HUT_BOTTOM_INSET;
  assembly = hut_assembly_new (design);
  for (guint i = 0; i < assembly->solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (assembly->solids, HutSolid, i);

      if (solid->kind != HUT_SOLID_LEDGE)
        continue;
      ledges++;
      assert_near_mm (solid->box.min.z, 0, 1e-9);
      assert_near_mm (solid->box.max.z, 15, 1e-9);
    }
  assert_int_equal (ledges, 4);
}

static void
what_cannot_be_built_is_named_and_has_no_panels (void **state)
{
  g_autoptr(HutDesign) thick = hut_box_design_new (), huge = hut_box_design_new (), high = hut_box_design_new ();
  g_autoptr(HutDesign) low = hut_box_design_new (), empty = hut_box_design_new (), bare = hut_box_design_new ();
  const struct
  {
    HutDesign *design;
    HutTroubleKind kind;
  } cases[] = {
    { thick, HUT_TROUBLE_TOO_THIN_BOX }, { huge, HUT_TROUBLE_SIZE }, { high, HUT_TROUBLE_SEAM },
    { low, HUT_TROUBLE_SEAM },           { empty, HUT_TROUBLE_NO_MACHINE }, { bare, HUT_TROUBLE_STOCK_MISSING },
  };

  hut_box_design_set_wall (thick, 200); /* inside 150 high */
  huge->shell.inside_mm.x = 20000;
  high->shell.seam_height_mm = 161;
  low->shell.seam_height_mm = 7;
  empty->shell.fitted = TRUE;
  g_ptr_array_set_size (empty->machine.bodies, 0);
  g_free (bare->shell.default_stock);
  bare->shell.default_stock = g_strdup ("gone");
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr(HutAssembly) assembly = hut_assembly_new (cases[i].design);

      if (assembly->whole || assembly->panels->len > 0 || !has_trouble (assembly, cases[i].kind))
        fail_msg ("case %u: whole %d, %u panels", i, assembly->whole, assembly->panels->len);
    }
}

static void
hinge_that_the_lid_cannot_have_is_named_but_the_panels_are_there (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutAssembly) assembly = NULL;

  design->shell.hinge = HUT_HINGE_TOP;
  assembly = hut_assembly_new (design);
  assert_true (assembly->whole);
  assert_false (assembly->hinged);
  assert_true (has_trouble (assembly, HUT_TROUBLE_HINGE));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (box_of_ten_panels_has_the_size_worked_out_by_hand),
    cmocka_unit_test (lid_opens_outwards_on_every_hinge_line),
    cmocka_unit_test (hinge_offset_moves_the_axis_out_of_the_wall),
    cmocka_unit_test (lift_off_lid_has_no_hinge),
    cmocka_unit_test (ledges_run_under_an_inset_bottom),
    cmocka_unit_test (what_cannot_be_built_is_named_and_has_no_panels),
    cmocka_unit_test (hinge_that_the_lid_cannot_have_is_named_but_the_panels_are_there),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
