/* src/checks/hut-checking.h: what the families of checks share: making a finding, and their list.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "checks/hut-finding.h"

/* Two lengths nearer than this are the same for a check, mm. Own choice: half of the last digit
 * that a finding prints, so that a sentence never says "10 mm; 10 mm are wanted". */
#define HUT_CHECK_TOLERANCE_MM 0.005

/* A mark on the canvas reaches this far round a place that is only a point or a line, mm. Own
 * choice. */
#define HUT_PLACE_MARGIN_MM 1.0

/* One run over a design: what is checked, and what was found so far. */
typedef struct
{
  const HutAssembly *assembly;
  const HutPartSet *parts;
  GPtrArray *findings; /* HutFinding */
} HutChecking;

/* (transfer none): a new finding, already in the list. @check and @message: static. */
HutFinding *hut_checking_add (HutChecking *self,
                              const char *check,
                              HutSeverity severity,
                              const char *message);

/* Fillers; names and ids are copied. */
void hut_finding_set_names (HutFinding *self, const char *what, const char *other);
/* @is, @must: mm, degrees or a count, whatever the template writes behind them. */
void hut_finding_set_numbers (HutFinding *self, double is, double must);
void hut_finding_set_item (HutFinding *self, const char *item);
void hut_finding_add_place (HutFinding *self, const HutPanel *panel, HutRect rect);
/* The place of a thing between two points: their rectangle, grown by HUT_PLACE_MARGIN_MM. */
void hut_finding_add_gap (HutFinding *self, const HutPanel *panel, HutPoint a, HutPoint b);
/* The shadow of a world box, cut to the panel; the nearest border when it lies beside the panel. */
void hut_finding_add_shadow (HutFinding *self, const HutPanel *panel, const HutBox3 *box);

/* (transfer none): the name that the user gave, or the id when there is none. */
const char *hut_check_name (const char *name, const char *id);
/* (transfer none): name of an opening or window by id; the id itself when it is unknown. */
const char *hut_check_item_name (const HutDesign *design, const char *item);
/* (transfer none): name of the panel that a solid belongs to, or of its window. */
const char *hut_check_solid_name (const HutAssembly *assembly, const HutSolid *solid);
/* (transfer none): name of what a part belongs to: its window, baffle or panel. */
const char *hut_check_part_name (const HutAssembly *assembly, const HutPart *part);
/* (transfer none) */
const HutPanel *hut_check_panel (const HutAssembly *assembly, guint index);
/* (transfer none) (nullable): the panel of a part; NULL when it lies on none. */
const HutPanel *hut_check_part_panel (const HutAssembly *assembly, const HutPart *part);

/* The two numbers of a part that its bed and sheet do not take, mm: its breadth and what they
 * take, or, when that is no problem, its length and the greatest length that they take at that
 * breadth. */
void hut_check_bed_numbers (const HutCutter *cutter, const HutPart *part, double *is_mm, double *must_mm);

/* The families. Each adds its findings in an order that depends on the design alone. */
void hut_check_trouble (HutChecking *self);
void hut_check_bed (HutChecking *self);
void hut_check_clearance (HutChecking *self);
void hut_check_room (HutChecking *self);
void hut_check_swing (HutChecking *self);
void hut_check_joint (HutChecking *self);
void hut_check_splice (HutChecking *self);
void hut_check_opening (HutChecking *self);
void hut_check_seam (HutChecking *self);
void hut_check_glazing (HutChecking *self);
void hut_check_baffle (HutChecking *self);
void hut_check_window (HutChecking *self);
void hut_check_extra (HutChecking *self);
void hut_check_trap (HutChecking *self);
void hut_check_service (HutChecking *self);
void hut_check_depth (HutChecking *self);
void hut_check_mount (HutChecking *self);
void hut_check_fastener (HutChecking *self);
void hut_check_air (HutChecking *self);
void hut_check_lid (HutChecking *self);
void hut_check_engineering (HutChecking *self);
void hut_check_stiffness (HutChecking *self);
void hut_check_light (HutChecking *self);
void hut_check_cut (HutChecking *self);
void hut_check_spot (HutChecking *self);
void hut_check_caution (HutChecking *self);
