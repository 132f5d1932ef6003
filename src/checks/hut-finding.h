/* src/checks/hut-finding.h: what a check says.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"
#include "checks/hut-fix.h"

typedef enum
{
  HUT_SEVERITY_BLOCKS, /* export refuses unless this check is named */
  HUT_SEVERITY_WARNS,
  HUT_SEVERITY_NOTES,
} HutSeverity;

/* Where the canvas marks it. Without a panel it concerns the design as a whole. */
typedef struct
{
  gboolean has_panel;
  HutPanelId panel;
  HutRect rect; /* mm, panel frame */
} HutPlace;

typedef struct
{
  const char *check;    /* stable id "opening.edge"; static */
  HutSeverity severity;
  const char *message;  /* template, English msgid (N_): {what} {other} {is} {must} {at}; static */
  char *what, *other;   /* names put into the template; owned, may be NULL */
  double is, must;      /* the two numbers, in the unit that the template writes */
  double at;            /* a third one for a few templates, such as the angle; else 0 */
  char *item;           /* id of the opening, window, body or stock it speaks of, or NULL; owned */
  GArray *places;       /* HutPlace, may be empty */
  HutFix fix;           /* kind NONE when no cure is known */
} HutFinding;

void hut_finding_free (HutFinding *self);

/* @translate: gettext, or NULL for English (files are English). The names go through it as well:
 * names of panels are msgids, what the user named comes back unchanged. Numbers get at most 2
 * decimals with @decimal_point as the mark ("." in files). (transfer full) */
typedef const char *(*HutTranslate) (const char *msgid);
char *hut_finding_dup_text (const HutFinding *self, HutTranslate translate, const char *decimal_point) G_GNUC_WARN_UNUSED_RESULT;
/* What its fix does, as an order: "Move it 12 mm to the left." Likewise; NULL without a fix.
 * (transfer full) (nullable) */
char *hut_finding_dup_fix_text (const HutFinding *self, HutTranslate translate, const char *decimal_point) G_GNUC_WARN_UNUSED_RESULT;
/**
 * hut_finding_apply_fix:
 * @design: the design that the finding speaks of, or a copy of it; changed
 *
 * Pure. Returns: FALSE, with nothing changed, when there is no fix or the design has changed since
 */
gboolean hut_finding_apply_fix (const HutFinding *self, HutDesign *design);
/* (transfer none): "blocks", "warns", "notes". */
const char *hut_severity_to_string (HutSeverity severity);
/* (transfer none): a panel's name as a person reads it, "lid top"; an English msgid (N_), static. */
const char *hut_panel_name (HutPanelId id);
/* (transfer none): likewise of a baffle, "baffle at the front". */
const char *hut_baffle_name (HutSide side);

/**
 * hut_check_all: runs all families: trouble, bed, clearance, room, lid swing, joint, splice,
 * opening, seam, glazing, window, baffle, service, trap, extra, depth, mount, fastener, air, lid,
 * engineering, stiffness, light, cut, spot, caution.
 *
 * Returns: (transfer full) (element-type HutFinding): most severe first, then by check id, then by
 *   place; the order is the same for the same design
 */
GPtrArray *hut_check_all (const HutAssembly *assembly, const HutPartSet *parts) G_GNUC_WARN_UNUSED_RESULT;
/* TRUE when a finding blocks and its check id is not in @allowed (NULL-terminated, may be NULL). */
gboolean hut_findings_block (const GPtrArray *findings, const char *const *allowed);
/* NULL-terminated list of all check ids, static. */
const char *const *hut_check_ids (void);
