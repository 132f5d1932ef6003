/* src/checks/hut-fix.h: what would cure a finding, as an edit of the design.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A check that knows a cure puts it into its finding. It is data, not code: the interface can say it,
 * and hut_finding_apply_fix () does it. After that the same check finds nothing there. */
#pragma once
#include "design/hut-design.h"

typedef enum
{
  HUT_FIX_NONE,
  HUT_FIX_FACE,        /* hardware: mounted from the other face */
  HUT_FIX_MOVE,        /* opening, window or hardware: (du, dv) further on its panel */
  HUT_FIX_NARROW,      /* hardware: its cutout narrower by value_mm, all told */
  HUT_FIX_PLATE,       /* hardware: on a face plate of `stock` */
  HUT_FIX_BOLTS,       /* hardware: bolts and nuts for its wood screws */
  HUT_FIX_PLAIN_HEADS, /* hardware: no heads in the panel */
  HUT_FIX_SPRINGS,     /* the lid: two gas springs hold it */
  HUT_FIX_PANEL,       /* hardware: on `panel`, its middle (du, dv) from the lower left */
  HUT_FIX_RELEASE,     /* part: its place on the sheet is not kept any more */
  HUT_FIX_WAY_OUT,     /* service: a fitting way out for it; FALSE where no place is found */
} HutFixKind;

typedef struct
{
  HutFixKind kind;
  char *item;      /* id of what it changes; owned */
  double du_mm, dv_mm;
  double value_mm;
  HutPanelId panel; /* PANEL */
  char *stock;     /* id, or NULL; owned */
} HutFix;

/* Frees what is in a fix and makes it NONE; all-zero is fine. */
void hut_fix_clear (HutFix *self);

/* FALSE, with nothing changed, when the design has not what the fix speaks of. */
gboolean hut_fix_apply (const HutFix *self, HutDesign *design);
