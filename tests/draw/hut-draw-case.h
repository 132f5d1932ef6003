/* tests/draw/hut-draw-case.h: an enclosure with its layout, as most tests of drawings need it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-file.h"
#include "draw/hut-flat-scene.h"
#include "hut-assert.h"

#define CASE_WIDTH_PX 1366
#define CASE_HEIGHT_PX 768

typedef struct
{
  HutAssembly *assembly;
  HutPartSet *parts;
  HutFlatLayout *layout;
  HutFlatView view;
} HutDrawCase;

static inline HutDrawCase
hut_draw_case_take (HutDesign *design)
{
  HutDrawCase self = { 0 };

  self.assembly = hut_assembly_new (design);
  hut_design_free (design);
  self.parts = hut_part_set_new (self.assembly);
  self.layout = hut_flat_layout_new (self.assembly);
  self.view = hut_flat_view_fit (self.layout->bounds, CASE_WIDTH_PX, CASE_HEIGHT_PX, 40.0);
  return self;
}

static inline HutDrawCase
hut_draw_case_example (const char *name)
{
  g_autoptr (GError) error = NULL;
  HutDesign *design = hut_example_load (name, &error);

  assert_ok (design != NULL, error);
  return hut_draw_case_take (design);
}

static inline void
hut_draw_case_clear (HutDrawCase *self)
{
  hut_flat_layout_free (self->layout);
  hut_part_set_free (self->parts);
  hut_assembly_free (self->assembly);
}

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (HutDrawCase, hut_draw_case_clear)

static inline guint
hut_draw_case_panel (const HutDrawCase *self,
                     const char *name)
{
  HutPanelId id;

  assert_true (hut_panel_id_from_string (name, &id));
  const int index = hut_assembly_find_panel (self->assembly, id);
  assert_true (index >= 0);
  return (guint)index;
}

/* A design with one round opening of that diameter in a 300 x 200 x 150 mm box of the default
 * stock. */
static inline HutDesign *
hut_draw_case_box (const char *panel,
                   double u_mm,
                   double v_mm,
                   double diameter_mm)
{
  HutDesign *design = hut_design_new ();
  HutPanelId id;
  HutOpening *opening;

  assert_true (hut_panel_id_from_string (panel, &id));
  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3){ 300.0, 200.0, 150.0 };
  design->shell.seam_height_mm = 80.0;
  opening = hut_opening_new ("hole", id, HUT_SHAPE_ROUND);
  opening->at.u_anchor = HUT_ANCHOR_START;
  opening->at.v_anchor = HUT_ANCHOR_START;
  opening->at.u_offset_mm = u_mm;
  opening->at.v_offset_mm = v_mm;
  opening->diameter_mm = diameter_mm;
  g_ptr_array_add (design->openings, opening);
  return design;
}
