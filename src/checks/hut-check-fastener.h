/* src/checks/hut-check-fastener.h: where a screw of the hardware may be on its panel.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-fastener.h"
#include "checks/hut-checking.h"

/* Distance of a screw's middle to an edge that runs along the sheet, and to one at its end: wood, in
 * diameters and at least, mm. Common practice for light work, predrilled; no source. */
#define HUT_SCREW_EDGE_RATIO 3.0
#define HUT_SCREW_EDGE_MM 8.0
#define HUT_SCREW_END_RATIO 5.0
#define HUT_SCREW_END_MM 10.0
/* In acrylic and polycarbonate: middle to edge in hole diameters (common practice, no source). */
#define HUT_SCREW_PLASTIC_RATIO 2.0

/* What a screw must keep to an edge, mm. Boards of fibres have no grain; plywood's face grain is taken
 * to run along the panel's longer side, as sheets are cut (own choice). */
double hut_fastener_edge_mm (const HutFastener *fastener, const HutPanel *panel, HutEdge edge);
/* Where its middle may be, panel frame, mm. */
HutRect hut_fastener_room (const HutFastener *fastener, const HutPanel *panel);
