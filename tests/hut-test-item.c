/* tests/hut-test-item.c: items of hardware with round numbers, and how tests put them on panels.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-test-item.h"

HutItem *
hut_test_item_new (const char *id)
{
  HutItem *item = hut_item_new (id);

  item->group = HUT_ITEM_CONTROL;
  item->hold = HUT_HOLD_SCREWS;
  item->from_outside = item->from_inside = TRUE;
  return item;
}

void
hut_test_item_add_round (HutItem *self,
                         double diameter_mm)
{
  const HutItemCut cut
      = { .role = HUT_CUT_BODY, .shape = HUT_CUT_ROUND, .diameter_mm = diameter_mm };

  g_array_append_val (self->cuts, cut);
}

HutItemCut *
hut_test_item_add_screw (HutItem *self,
                         guint leaf,
                         double u_mm,
                         double v_mm,
                         double thread_mm)
{
  const HutItemCut cut = { .role = HUT_CUT_SCREW,
                           .leaf = leaf,
                           .at = { u_mm, v_mm },
                           .thread_mm = thread_mm,
                           .grip_mm = 1.0 };

  g_array_append_val (self->cuts, cut);
  return &g_array_index (self->cuts, HutItemCut, self->cuts->len - 1);
}

void
hut_test_item_add_body (HutItem *self,
                        HutItemSide side,
                        guint leaf,
                        HutRect rect,
                        double depth_mm,
                        gboolean soft)
{
  const HutItemBody body = { side, leaf, rect, depth_mm, soft };

  g_array_append_val (self->bodies, body);
}

HutItem *
hut_test_item_new_fan (double frame_mm,
                       double pitch_mm,
                       double thread_mm,
                       double opening_mm,
                       double depth_mm)
{
  HutItem *item = hut_test_item_new ("fan");
  const double half_mm = frame_mm / 2.0, at_mm = pitch_mm / 2.0;

  hut_test_item_add_round (item, opening_mm);
  hut_test_item_add_screw (item, 0, -at_mm, -at_mm, thread_mm);
  hut_test_item_add_screw (item, 0, at_mm, -at_mm, thread_mm);
  hut_test_item_add_screw (item, 0, at_mm, at_mm, thread_mm);
  hut_test_item_add_screw (item, 0, -at_mm, at_mm, thread_mm);
  hut_test_item_add_body (item, HUT_ITEM_BEHIND, 0,
                          (HutRect) { -half_mm, -half_mm, half_mm, half_mm }, depth_mm, FALSE);
  item->group = HUT_ITEM_FAN;
  item->mass_kg = 0.1;
  return item;
}

HutItem *
hut_test_item_new_switch (void)
{
  HutItem *item = hut_test_item_new ("switch");

  hut_test_item_add_round (item, 12.0);
  item->hold = HUT_HOLD_NUT;
  item->nut_corners_mm = 18.0;
  item->thickness_min_mm = 1.0;
  item->thickness_max_mm = 3.0;
  item->flange_width_mm = item->flange_height_mm = 20.0;
  item->flange_round = TRUE;
  item->mass_kg = 0.05;
  hut_test_item_add_body (item, HUT_ITEM_BEHIND, 0, (HutRect) { -9, -9, 9, 9 }, 15.0, FALSE);
  return item;
}

HutItem *
hut_test_item_new_hinge (void)
{
  HutItem *item = hut_test_item_new ("hinge");

  item->group = HUT_ITEM_HINGE;
  item->span = HUT_SPAN_HINGE;
  for (guint leaf = 0; leaf < 2; leaf++)
    {
      const double sign = leaf == 0 ? -1.0 : 1.0;

      hut_test_item_add_screw (item, leaf, -12.5, sign * 10.0, 3.0)->wood_screw = TRUE;
      hut_test_item_add_screw (item, leaf, 12.5, sign * 10.0, 3.0)->wood_screw = TRUE;
      hut_test_item_add_body (item, HUT_ITEM_FRONT, leaf,
                              leaf == 0 ? (HutRect) { -20, -16, 20, 0 }
                                        : (HutRect) { -20, 0, 20, 16 },
                              2.0, FALSE);
    }
  item->mass_kg = 0.06;
  return item;
}

HutHardware *
hut_test_put (HutDesign *design,
              const char *id,
              HutItem *item,
              HutPanelId panel,
              double u_mm,
              double v_mm)
{
  HutHardware *hardware = hut_hardware_new (id, hut_design_keep_item (design, item), panel);

  hardware->at.u_anchor = hardware->at.v_anchor = HUT_ANCHOR_START;
  hardware->at.u_offset_mm = u_mm;
  hardware->at.v_offset_mm = v_mm;
  g_ptr_array_add (design->hardware, hardware);
  hut_item_free (item);
  return hardware;
}
