/* tests/hut-test-item.h: items of hardware with round numbers, and how tests put them on panels.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"

/* (transfer full): holds by screws in panels of any thickness, from both faces; no cut, no body. */
HutItem *hut_test_item_new (const char *id) G_GNUC_WARN_UNUSED_RESULT;
void hut_test_item_add_round (HutItem *self, double diameter_mm);
/* @thread_mm: of a bolt; its own flange is 1 mm thick. */
HutItemCut *hut_test_item_add_screw (HutItem *self, guint leaf, double u_mm, double v_mm, double thread_mm);
void hut_test_item_add_body (HutItem *self,
                             HutItemSide side,
                             guint leaf,
                             HutRect rect,
                             double depth_mm,
                             gboolean soft);
/* A fan of that frame: opening, four M3 or M4 holes at the pitch, a body behind. */
HutItem *hut_test_item_new_fan (double frame_mm,
                                double pitch_mm,
                                double thread_mm,
                                double opening_mm,
                                double depth_mm) G_GNUC_WARN_UNUSED_RESULT;
/* A switch with a nut of 18 over its corners in a hole of 12; panels of 1 .. 3 mm. */
HutItem *hut_test_item_new_switch (void) G_GNUC_WARN_UNUSED_RESULT;
/* A butt hinge 40 long: per leaf two screws 3.0 at +-12.5 along and 10 from the line, a leaf 16 deep. */
HutItem *hut_test_item_new_hinge (void) G_GNUC_WARN_UNUSED_RESULT;

/* (transfer none): its middle at (u, v) from the panel's lower left. @item: (transfer full) */
HutHardware *hut_test_put (HutDesign *design, const char *id, HutItem *item, HutPanelId panel, double u_mm, double v_mm);
