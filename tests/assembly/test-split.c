/* tests/assembly/test-split.c: panels parted to the bed: how many pieces, where, and what is in the way.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "assembly/hut-part.h"
#include "hut-assert.h"
#include "hut-box-design.h"

static const HutPanelId base_front = { HUT_SHELL_BASE, HUT_SIDE_FRONT };
static const HutPanelId lid_top = { HUT_SHELL_LID, HUT_SIDE_TOP };

typedef struct
{
  HutAssembly *assembly;
  HutPartSet *set;
} Split;

static Split
split_new (const HutDesign *design)
{
  Split self;

  self.assembly = hut_assembly_new (design);
  self.set = hut_part_set_new (self.assembly);
  return self;
}

static void
split_clear (Split *self)
{
  hut_part_set_free (self->set);
  hut_assembly_free (self->assembly);
}

static guint
count_pieces (const Split *self,
              HutPartKind kind,
              const char *prefix)
{
  guint count = 0;

  for (guint i = 0; i < self->set->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (self->set->parts, i);

      count += part->kind == kind && g_str_has_prefix (part->id, prefix);
    }
  return count;
}

static guint
count_troubles (const Split *self,
                HutSplitTroubleKind kind)
{
  guint count = 0;

  for (guint i = 0; i < self->set->troubles->len; i++)
    count += g_array_index (self->set->troubles, HutSplitTrouble, i).kind == kind;
  return count;
}

static const HutSplice *
first_splice (const Split *self,
              HutPanelId panel)
{
  for (guint i = 0; i < self->set->splices->len; i++)
    {
      const HutSplice *splice = &g_array_index (self->set->splices, HutSplice, i);

      if (splice->of == HUT_PART_PANEL && (int) splice->panel == hut_assembly_find_panel (self->assembly, panel))
        return splice;
    }
  return NULL;
}

static void
design_that_fits_stays_whole (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  Split split = split_new (design);

  assert_int_equal (split.set->parts->len, 10); /* base five, lid five */
  assert_int_equal (split.set->splices->len, 0);
  assert_string_equal (((HutPart *) g_ptr_array_index (split.set->parts, 0))->id, "base-front");
  assert_string_equal (((HutPart *) g_ptr_array_index (split.set->parts, 0))->label, "BASE FRONT");
  split_clear (&split);
}

/* 312 on a bed of 250 less the kerf of 0.2: two pieces; the even place is 156, the fingers reach 9. */
static void
long_panel_is_parted_near_its_middle (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  const HutSplice *splice;
  Split split;

  design->cutter.bed_width_mm = 250;
  design->cutter.bed_depth_mm = 250;
  split = split_new (design);
  splice = first_splice (&split, base_front);
  assert_int_equal (count_pieces (&split, HUT_PART_PANEL, "base-front"), 2);
  assert_non_null (splice);
  assert_true (splice->vertical);
  assert_near_mm (splice->at_mm, 156, 9.0); /* the middle of the finger next to it at the most */
  assert_near_mm (splice->reach_mm, 9, 0);
  assert_true (splice->finger_count >= 3 && splice->finger_count % 2 == 1);
  split_clear (&split);
}

static void
line_keeps_its_distance_from_finger_borders (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  const HutPanel *front;
  const HutSplice *splice;
  Split split;

  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 250;
  split = split_new (design);
  front = hut_assembly_get_panel (split.assembly, base_front);
  splice = first_splice (&split, base_front);
  for (guint i = 0; i <= front->edges[HUT_EDGE_BOTTOM].finger_count; i++)
    {
      const double border_mm = g_array_index (front->edges[HUT_EDGE_BOTTOM].cuts_mm, double, i);

      assert_true (fabs (border_mm - splice->at_mm) >= 6.0 - 1e-9); /* smallest web */
    }
  split_clear (&split);
}

static void
opening_in_the_middle_moves_the_line_aside (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  const HutSplice *splice;
  Split split;

  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 250;
  hut_box_design_add_opening (design, base_front, HUT_SHAPE_ROUND)->diameter_mm = 40;
  split = split_new (design);
  splice = first_splice (&split, base_front);
  assert_non_null (splice);
  assert_true (fabs (splice->at_mm - 156) >= 20 + 9 + 6); /* radius, reach of the fingers, web */
  split_clear (&split);
}

static void
line_through_a_window_parts_both_legs (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  HutWindow *window = hut_box_design_add_window (design, lid_top);
  guint legs = 0;
  Split split;

  window->width_mm = 200; /* too wide to be passed by: 312 - 200 leaves 56 each side */
  window->height_mm = 100;
  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 220;
  split = split_new (design);
  assert_int_equal (count_pieces (&split, HUT_PART_PANEL, "lid-top"), 2);
  for (guint i = 0; i < split.set->splices->len; i++)
    {
      const HutSplice *splice = &g_array_index (split.set->splices, HutSplice, i);

      if (splice->of == HUT_PART_PANEL && (int) splice->panel == hut_assembly_find_panel (split.assembly, lid_top))
        {
          legs++;
          assert_true (splice->finger_count >= 3);
        }
    }
  assert_int_equal (legs, 2);
  split_clear (&split);
}

static void
seams_of_neighbours_are_staggered (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  const HutSplice *front, *bottom;
  Split split;

  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 250;
  split = split_new (design);
  front = first_splice (&split, base_front);
  bottom = first_splice (&split, (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_BOTTOM });
  assert_non_null (bottom);
  assert_true (bottom->vertical);
  assert_true (fabs (front->at_mm - bottom->at_mm) >= 24 - 1e-9); /* two fingers of 2 t = 12 */
  assert_int_equal (count_troubles (&split, HUT_SPLIT_ALIGNED), 0);
  split_clear (&split);
}

static void
panel_larger_both_ways_is_parted_both_ways (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  Split split;

  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 180; /* 312 x 212: 2 x 2 */
  split = split_new (design);
  assert_int_equal (count_pieces (&split, HUT_PART_PANEL, "lid-top"), 4);
  split_clear (&split);
}

static void
bed_that_takes_nothing_leaves_the_panel_whole_and_says_so (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  Split split;

  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 15;
  split = split_new (design);
  assert_int_equal (count_pieces (&split, HUT_PART_PANEL, "base-front"), 1);
  assert_int_equal (count_troubles (&split, HUT_SPLIT_NO_PLACE), 10);
  assert_int_equal (split.set->splices->len, 0);
  split_clear (&split);
}

static void
bought_bottom_is_not_parted (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  Split split;

  design->shell.bottom = HUT_BOTTOM_BOUGHT;
  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 180;
  split = split_new (design);
  assert_int_equal (count_pieces (&split, HUT_PART_PANEL, "base-bottom"), 1);
  split_clear (&split);
}

static void
glazing_is_never_spliced_but_its_frame_is (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  HutWindow *window = hut_box_design_add_window (design, lid_top);
  Split split;

  window->width_mm = 200;
  window->height_mm = 100;
  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 220; /* glazing and frame are 230 x 130 */
  split = split_new (design);
  assert_int_equal (count_pieces (&split, HUT_PART_GLAZING, "glazing-window"), 1);
  assert_int_equal (count_troubles (&split, HUT_SPLIT_CANNOT), 1);
  assert_int_equal (count_pieces (&split, HUT_PART_FRAME, "frame-window"), 2);
  split_clear (&split);
}

static void
straps_back_the_splice_and_stop_before_the_neighbours (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  const HutSolid *strap = NULL;
  Split split;

  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 250;
  split = split_new (design);
  for (guint i = 0; i < split.set->solids->len; i++)
    if ((int) g_array_index (split.set->solids, HutSolid, i).panel == hut_assembly_find_panel (split.assembly, base_front))
      strap = &g_array_index (split.set->solids, HutSolid, i);
  assert_non_null (strap);
  assert_near_mm (strap->box.max.x - strap->box.min.x, 90, 1e-9); /* 15 t */
  assert_near_mm (strap->box.min.y, 6, 1e-9);                    /* on the inside face */
  assert_near_mm (strap->box.max.y, 12, 1e-9);
  assert_near_mm (strap->box.min.z, 6 + 6 + 1, 1e-9); /* bottom 6, one thickness, 1 */
  assert_near_mm (strap->box.max.z, 90 - 2, 1e-9);    /* free upper edge */
  split_clear (&split);
}

static void
matrix_puts_a_part_where_its_panel_is (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  Split split = split_new (design);
  double m[16];

  /* base-back: seen from behind, its (0,0) is at x 312, y 212, z 0 */
  hut_part_get_matrix (g_ptr_array_index (split.set->parts, 1), split.assembly, m);
  assert_near_mm (m[3], 312, 1e-9);
  assert_near_mm (m[7], 212, 1e-9);
  assert_near_mm (m[11], 0, 1e-9);
  assert_near (m[0], -1, 0);
  assert_near (m[9], 1, 0);
  assert_near (m[6], 1, 0);
  split_clear (&split);
}

static void
cut_path_lies_half_a_kerf_outside (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutRegion) cut = NULL;
  HutRect bounds;
  Split split;

  split = split_new (design);
  cut = hut_part_dup_cut (g_ptr_array_index (split.set->parts, 0), NULL);
  bounds = hut_region_bounds (cut);
  assert_near_mm (bounds.u1 - bounds.u0, 312.2, 1e-9);
  assert_near_mm (bounds.v1 - bounds.v0, 90.2, 1e-9);
  split_clear (&split);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (design_that_fits_stays_whole),
    cmocka_unit_test (long_panel_is_parted_near_its_middle),
    cmocka_unit_test (line_keeps_its_distance_from_finger_borders),
    cmocka_unit_test (opening_in_the_middle_moves_the_line_aside),
    cmocka_unit_test (line_through_a_window_parts_both_legs),
    cmocka_unit_test (seams_of_neighbours_are_staggered),
    cmocka_unit_test (panel_larger_both_ways_is_parted_both_ways),
    cmocka_unit_test (bed_that_takes_nothing_leaves_the_panel_whole_and_says_so),
    cmocka_unit_test (bought_bottom_is_not_parted),
    cmocka_unit_test (glazing_is_never_spliced_but_its_frame_is),
    cmocka_unit_test (straps_back_the_splice_and_stop_before_the_neighbours),
    cmocka_unit_test (matrix_puts_a_part_where_its_panel_is),
    cmocka_unit_test (cut_path_lies_half_a_kerf_outside),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
