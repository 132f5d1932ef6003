/* tests/hut-box-design.h: a plain design whose derived numbers can be worked out by hand.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"

/* Inside 300 x 200 x 150 by hand, all walls 6.0 mm (stock "wall", web 6, kerf 0.2, allowance 0), hood with
 * seam at 90 and gap 1, hinge at the back in the wall's face, jointed bottom, no windows or openings, a
 * bed of 2000 x 2000 without margin. Outer size: 312 x 212 x 162. One static body 100 x 80 x 60 at (0, 0, 0),
 * clearance 20 all round. */
HutDesign *hut_box_design_new (void) G_GNUC_WARN_UNUSED_RESULT;
/* Sets the one reading of the wall stock. */
void hut_box_design_set_wall (HutDesign *design, double thickness_mm);
/* Adds an opening or a window in the middle of a panel; (transfer none). */
HutOpening *hut_box_design_add_opening (HutDesign *design, HutPanelId panel, HutShape shape);
HutWindow *hut_box_design_add_window (HutDesign *design, HutPanelId panel);
