/* tests/export/hut-gcode-run.h: a small controller that runs G-code, without any code of the program.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * As strict as the strictest of the common controllers: what any of them refuses fails the test. */
#pragma once
#include "hut-assert.h"

/* Distances in mm, S as printed, F in mm/min. */
typedef struct
{
  double x0, y0, x1, y1;
  double cx, cy, turn_rad; /* arcs: > 0 counter-clockwise; 0 for a line */
  double z0, z1; /* 0 of a laser */
  double s, f;
  gboolean rapid;
  char *name;              /* of the comment before; lent by the run */
} HutGcodeMove;

typedef struct
{
  GArray *moves;       /* HutGcodeMove, none without length */
  GPtrArray *comments; /* in order */
} HutGcodeRun;

/* Fails the test at the first thing that a controller would refuse or misread. */
HutGcodeRun *hut_gcode_run (GBytes *file) G_GNUC_WARN_UNUSED_RESULT;
/* The same for a router: across only at @safe_mm or higher, cuts only with the spindle up to speed, down
 * no further than over the sheet without feed; ends high and with the spindle off. */
HutGcodeRun *hut_gcode_run_router (GBytes *file, double safe_mm) G_GNUC_WARN_UNUSED_RESULT;
char *hut_gcode_dup_router_fault (const char *text, double safe_mm);
/* NULL when all is well, else what is wrong. (transfer full) */
char *hut_gcode_dup_fault (const char *text);
void hut_gcode_run_free (HutGcodeRun *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutGcodeRun, hut_gcode_run_free)

double hut_gcode_move_length_mm (const HutGcodeMove *self);
/* Distance of a point from the way of the tool, seen from above, mm. */
double hut_gcode_move_distance_mm (const HutGcodeMove *self, double x, double y);
/* A point of the way; @share_ratio 0 .. 1. */
void hut_gcode_move_point (const HutGcodeMove *self, double share_ratio, double *x, double *y);
