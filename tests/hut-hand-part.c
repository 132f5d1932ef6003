/* tests/hut-hand-part.c: parts put together by hand, for tests of what comes after splitting.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "hut-hand-part.h"

static void
free_part (gpointer data)
{
  HutPart *part = data;

  g_free (part->id);
  g_free (part->label);
  hut_region_free (part->region);
  g_ptr_array_unref (part->marks);
  g_free (part);
}

void
hut_hand_parts_init (HutHandParts *self)
{
  HutDesign *design = hut_design_new ();
  HutStock *stock = hut_stock_new ("ply");
  HutPanel *panel = g_new0 (HutPanel, 1);

  g_ptr_array_set_size (design->stocks, 0);
  g_ptr_array_add (design->stocks, stock);
  g_array_set_size (stock->readings_mm, 0);
  g_array_append_val (stock->readings_mm, ((double) { 6.0 }));
  stock->sheet_width_mm = stock->sheet_depth_mm = 2000.0;
  stock->kerf_mm = stock->allowance_mm = 0.0;
  stock->density_kg_m3 = 700.0;
  design->cutter.bed_width_mm = 400.0;
  design->cutter.bed_depth_mm = 300.0;
  design->cutter.margin_mm = 10.0;
  design->cutter.part_gap_mm = 5.0;
  design->cutter.any_angle = FALSE;

  panel->id = (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_FRONT };
  panel->stock = stock;

  self->design = design;
  self->stock = stock;
  self->cutter = &design->cutter;
  self->assembly = g_new0 (HutAssembly, 1);
  self->assembly->design = design;
  self->assembly->panels = g_ptr_array_new_with_free_func (g_free);
  self->assembly->hardware = g_ptr_array_new ();
  g_ptr_array_add (self->assembly->panels, panel);
  self->parts = g_new0 (HutPartSet, 1);
  self->parts->parts = g_ptr_array_new_with_free_func (free_part);
}

void
hut_hand_parts_clear (HutHandParts *self)
{
  g_ptr_array_unref (self->parts->parts);
  g_free (self->parts);
  g_ptr_array_unref (self->assembly->panels);
  g_ptr_array_unref (self->assembly->hardware);
  g_free (self->assembly);
  hut_design_free (self->design);
}

HutPart *
hut_hand_parts_take (HutHandParts *self,
                     const char *id,
                     HutPath *outer)
{
  HutPart *part = g_new0 (HutPart, 1);

  part->id = g_strdup (id);
  part->label = g_strdup (id);
  part->stock = self->stock;
  part->thickness_mm = 6.0;
  part->region = hut_region_new (outer);
  part->marks = g_ptr_array_new ();
  g_ptr_array_add (self->parts->parts, part);
  return part;
}

HutPart *
hut_hand_parts_add_rect (HutHandParts *self,
                         const char *id,
                         double width_mm,
                         double height_mm)
{
  return hut_hand_parts_take (self, id,
                              hut_path_new_rect ((HutRect) { 0, 0, width_mm, height_mm }, 0.0));
}

int
hut_hand_parts_set_up (void **state)
{
  HutHandParts *hand = g_new0 (HutHandParts, 1);

  hut_hand_parts_init (hand);
  *state = hand;
  return 0;
}

int
hut_hand_parts_tear_down (void **state)
{
  hut_hand_parts_clear (*state);
  g_free (*state);
  return 0;
}
