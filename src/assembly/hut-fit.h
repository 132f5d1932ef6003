/* src/assembly/hut-fit.h: outer and inside size of the enclosure, and where the machine stands.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"

/* What the enclosure itself puts inside, per side, mm: plates behind windows, straps behind splices. */
typedef struct
{
  double side[HUT_SIDE_COUNT];
} HutIntrusion;

typedef struct
{
  HutVec3 outer;      /* mm */
  HutBox3 inside;     /* world: between the inner faces of the walls, floor and top */
  HutVec3 machine_at; /* world: the machine frame's origin */
} HutFit;

/* Thickness of a panel by its measured mean, mm, on the grid; 0 when its stock is missing. */
double hut_fit_thickness_mm (const HutDesign *design, HutPanelId panel);

/* Thickest panel of a side over both shells, mm: the inside begins behind it. */
double hut_fit_wall_mm (const HutDesign *design, HutSide side);

/* Height of the floor's upper face over the bench, mm. */
double hut_fit_floor_mm (const HutDesign *design);

/* Plates behind the windows of each side (their thickness), how deep its hardware reaches, baffles, and a strap's thickness where a panel of
 * that side is larger than the bed and splices are strapped. Straps depend on the size and the size on
 * the straps: sides only ever join the set, so this ends after at most HUT_SIDE_COUNT rounds. */
HutIntrusion hut_fit_intrusion (const HutDesign *design);

/**
 * hut_fit_find:
 * @intrusion: see hut_fit_intrusion ()
 *
 * Fitted: inside = swept machine + clearance + intrusion per side; by hand: the sizes given, with the
 * spare room shared evenly between opposite sides. The machine always stands on the floor.
 */
HutFit hut_fit_find (const HutDesign *design, const HutIntrusion *intrusion);
