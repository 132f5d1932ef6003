/* src/checks/hut-check-splice.c: what the split of panels could not do as wanted.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * HUT_SPLIT_CANNOT (glazing is never spliced) is told by the bed check, with the sizes. */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include <glib/gi18n-lib.h>
#include <string.h>

typedef struct
{
  const char *check;
  HutSeverity severity;
  const char *message;
} Wording;

static const Wording wordings[] = {
  /* The part that stays too large blocks by itself. */
  [HUT_SPLIT_NO_PLACE] = { "splice.place", HUT_SEVERITY_WARNS,
                           N_ ("{what} measures {is} mm, the bed takes {must} mm, and no splice "
                               "keeps its distance from fingers and openings: it stays whole.") },
  [HUT_SPLIT_BUTT] = { "splice.butt", HUT_SEVERITY_WARNS,
                       N_ ("A splice of {what} is {is} mm long, too short for fingers ({must} "
                           "mm): it is cut straight, back it with a strap.") },
  [HUT_SPLIT_ALIGNED] = { "splice.stagger", HUT_SEVERITY_WARNS,
                          N_ ("A splice of {what} is {is} mm from the line of its neighbour's; "
                              "{must} mm are wanted.") },
  [HUT_SPLIT_NO_STRAP]
  = { "splice.strap", HUT_SEVERITY_WARNS,
      N_ ("No strap has room behind a splice of {what} that is {is} mm long; "
          "{must} mm of free length are the least.") },
  [HUT_SPLIT_CANNOT] = { NULL },
};

/* The part that no line could divide; NULL when it was divided after all. */
static const HutPart *
find_whole_part (const HutPartSet *parts,
                 const HutSplitTrouble *trouble)
{
  for (guint i = 0; i < parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (parts->parts, i);

      if (part->panel == trouble->panel && g_strcmp0 (part->item, trouble->item) == 0
          && part->kind != HUT_PART_GLAZING)
        return part;
    }
  return NULL;
}

static void
add_trouble (HutChecking *self,
             const HutSplitTrouble *trouble)
{
  const HutAssembly *assembly = self->assembly;
  const HutPanel *panel = hut_check_panel (assembly, trouble->panel);
  const Wording *wording = &wordings[trouble->kind];
  const HutPart *whole;
  HutFinding *finding;

  if (wording->check == NULL)
    return;
  finding = hut_checking_add (self, wording->check, wording->severity, wording->message);
  hut_finding_set_names (finding,
                         trouble->item != NULL
                             ? hut_check_item_name (assembly->design, trouble->item)
                             : hut_panel_name (panel->id),
                         NULL);
  hut_finding_set_item (finding, trouble->item);
  hut_finding_set_numbers (finding, trouble->is_mm, trouble->must_mm);
  if (trouble->kind == HUT_SPLIT_NO_PLACE
      && (whole = find_whole_part (self->parts, trouble)) != NULL)
    hut_check_bed_numbers (&assembly->design->cutter, whole, &finding->is, &finding->must);
  hut_finding_add_gap (finding, panel, trouble->at, trouble->at);
}

/* Whether the bed check said that the bed takes nothing at all: then no splice has a place
 * either. */
static gboolean
bed_takes_nothing (const HutChecking *self)
{
  for (guint i = 0; i < self->findings->len; i++)
    if (strcmp (((const HutFinding *)g_ptr_array_index (self->findings, i))->check, "bed.size")
        == 0)
      return TRUE;
  return FALSE;
}

void
hut_check_splice (HutChecking *self)
{
  const GArray *troubles = self->parts->troubles;
  const gboolean nothing = bed_takes_nothing (self);

  for (guint i = 0; i < troubles->len; i++)
    {
      const HutSplitTrouble *trouble = &g_array_index (troubles, HutSplitTrouble, i);

      if (!nothing || trouble->kind != HUT_SPLIT_NO_PLACE)
        add_trouble (self, trouble);
    }
}
