/* src/checks/hut-hardware-room.h: what a piece of hardware must keep off, and where else it can be.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "checks/hut-checking.h"

/* Overlaps that are not deeper than this are touches, mm: two sizes that are on the grid. */
#define HUT_ROOM_TOUCH_MM HUT_GRID_MM

/* TRUE when a hardware's solid and a body of the machine must keep @must_mm (out) apart. */
gboolean hut_room_minds_body (const HutAssembly *assembly, const HutSolid *own, const HutBody *body, double *must_mm);
/* TRUE when a hardware's solid must not run into that other solid. */
gboolean hut_room_minds_solid (const HutAssembly *assembly, const HutSolid *own, const HutSolid *other);

/* Free room between two boxes, mm; < 0 by how deep they overlap. */
double hut_room_gap_mm (const HutBox3 *a, const HutBox3 *b);

/* The shortest move on its panel after which all of it has room: its solids, its holes, its pocket.
 * FALSE when there is none, or when it lies across a line. */
gboolean hut_hardware_room_find_move (const HutChecking *self, const HutPlacedHardware *placed, HutPoint *by);
/* TRUE when it can be mounted from the other face and has room for all of it there. */
gboolean hut_hardware_room_other_face (const HutChecking *self, const HutPlacedHardware *placed);
/* A stock that can carry it on a face plate: the thickest within its range that holds webs of @web_mm;
 * NULL when there is none. */
const HutStock *hut_hardware_room_plate_stock (const HutAssembly *assembly, const HutItem *item, double web_mm);

/* Fills a finding's fix. */
void hut_finding_set_fix (HutFinding *self, HutFixKind kind, const HutPlacedHardware *placed, double value_mm);
/* The other face, or the shortest move, or another panel, or nothing. */
void hut_finding_set_room_fix (HutFinding *self, const HutChecking *checking, const HutPlacedHardware *placed);
/* The shortest move, or nothing. */
void hut_finding_set_move_fix (HutFinding *self, const HutChecking *checking, const HutPlacedHardware *placed);
/* The shortest move, or another panel, or nothing. */
void hut_finding_set_place_fix (HutFinding *self, const HutChecking *checking, const HutPlacedHardware *placed);
/* A face plate of a stock that holds webs of @web_mm (INFINITY: of any), or nothing. */
void hut_finding_set_plate_fix (HutFinding *self,
                                const HutAssembly *assembly,
                                const HutPlacedHardware *placed,
                                double web_mm);
