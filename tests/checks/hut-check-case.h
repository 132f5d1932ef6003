/* tests/checks/hut-check-case.h: a design with what is derived from it and what the checks say.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "checks/hut-finding.h"

typedef struct
{
  HutAssembly *assembly;
  HutPartSet *parts;
  GPtrArray *findings;
} HutCheckCase;

/* @design: (transfer full) */
HutCheckCase *hut_check_case_new (HutDesign *design) G_GNUC_WARN_UNUSED_RESULT;
/* Checks again, after a test has changed the derived structs by hand. */
void hut_check_case_check (HutCheckCase *self);
void hut_check_case_free (HutCheckCase *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutCheckCase, hut_check_case_free)

/* Number of findings of a check. */
guint hut_check_case_count (const HutCheckCase *self, const char *check);
/* The finding number @index of a check; fails the test, and prints all findings, when there is
 * none. */
const HutFinding *hut_check_case_get (const HutCheckCase *self, const char *check, guint index);
/* The finding of a check whose English text is @text; fails likewise. */
const HutFinding *hut_check_case_find (const HutCheckCase *self, const char *check, const char *text);

/* Fails unless the finding has that severity and those numbers, to 1e-6. */
void hut_check_case_assert (const HutFinding *finding, HutSeverity severity, double is, double must);
/* Fails unless place @index is on that panel at that rectangle, to 1e-6 mm. */
void hut_check_case_assert_place (const HutFinding *finding, guint index, HutPanelId panel, HutRect rect);

/**
 * hut_check_case_design:
 *
 * All numbers round, to be checked on paper. One stock "plywood", 6 mm thick by two equal
 * readings, smallest web 6, kerf 0.2 without error, glued fit with 0.1. A machine "machine" of 320
 * x 300 x 220 with 20 around it. A hood hinged at the back, seam at 140, gap 1. So the outside is
 * 372 x 352 x 252: 6 + 20 + 320 + 20 + 6, 6 + 20 + 300 + 20 + 6, 6 + 220 + 20 + 6. The bed takes
 * every panel whole. Its only findings are cautions.
 *
 * Returns: (transfer full)
 */
HutDesign *hut_check_case_design (void) G_GNUC_WARN_UNUSED_RESULT;
/* (transfer none): a round opening of @diameter_mm, its middle at (u, v) from the panel's lower
 * left. */
HutOpening *hut_check_case_add_round (HutDesign *design,
                                      const char *id,
                                      HutPanelId panel,
                                      double u_mm,
                                      double v_mm,
                                      double diameter_mm);
/* (transfer none): a window with square corners, glazing and frame 10 over its border: 3 mm
 * acrylic "acrylic" bought cut to size, a frame of "plywood". */
HutWindow *hut_check_case_add_window (HutDesign *design, const char *id, HutPanelId panel, HutRect clear);
