/* src/checks/hut-check-spot.c: parts that the owner laid on the sheets by hand: room, bed, changes.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Only spots that are kept are looked at: all others give way by themselves. */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "assembly/hut-spot-place.h"
#include "checks/hut-checking.h"
#include <glib/gi18n-lib.h>
#include <math.h>

typedef struct
{
  const HutSpot *spot;
  const HutPart *part;
  HutLaidCut cut;
} Entry;

static void
entry_clear (gpointer data)
{
  hut_laid_cut_clear (&((Entry *) data)->cut);
}

static HutFinding *
add_finding (HutChecking *self,
             const HutSpot *spot,
             const char *check,
             HutSeverity severity,
             const char *message)
{
  HutFinding *finding = hut_checking_add (self, check, severity, message);

  hut_finding_set_names (finding, spot->part, NULL);
  hut_finding_set_item (finding, spot->part);
  finding->fix.kind = HUT_FIX_RELEASE;
  finding->fix.item = g_strdup (spot->part);
  return finding;
}

static void
check_gone (HutChecking *self,
            const HutSpot *spot)
{
  hut_finding_set_numbers (
      add_finding (self, spot, "sheet.gone", HUT_SEVERITY_NOTES,
                   N_ ("A place on sheet {is} is kept for {what}, of which {must} are cut: the "
                       "place is not used.")),
      spot->sheet, 0.0);
}

static void
check_size (HutChecking *self,
            const HutSpot *spot,
            const HutPart *part)
{
  const HutRect box = hut_region_bounds (part->region);
  const double width_mm = box.u1 - box.u0, height_mm = box.v1 - box.v0;
  const gboolean across
      = fabs (width_mm - spot->width_mm) >= fabs (height_mm - spot->height_mm);

  if (hut_spot_has_size (spot, part))
    return;
  hut_finding_set_numbers (
      add_finding (self, spot, "sheet.changed", HUT_SEVERITY_NOTES,
                   N_ ("{what} was laid by hand when one of its sides was {must} mm; it is {is} mm "
                       "now. Check whether it still lies where you want it.")),
      across ? width_mm : height_mm, across ? spot->width_mm : spot->height_mm);
}

static void
check_bed (HutChecking *self,
           const Entry *entry)
{
  const HutRect usable = hut_cutter_usable (&self->assembly->design->cutter, entry->part->stock);
  const double out_mm = hut_laid_cut_out_mm (&entry->cut, usable);

  if (out_mm <= HUT_CHECK_TOLERANCE_MM)
    return;
  hut_finding_set_numbers (
      add_finding (self, entry->spot, "sheet.outside", HUT_SEVERITY_BLOCKS,
                   N_ ("{what} lies {is} mm over the edge of what the cutter reaches on its sheet; "
                       "{must} mm is allowed.")),
      out_mm, 0.0);
}

static void
check_gap (HutChecking *self,
           const Entry *a,
           const Entry *b)
{
  const double must_mm = self->assembly->design->cutter.part_gap_mm;
  const double least_mm = must_mm - HUT_CHECK_TOLERANCE_MM;
  HutFinding *finding;
  double gap_mm;

  if (a->part->stock != b->part->stock || a->spot->sheet != b->spot->sheet)
    return;
  gap_mm = hut_laid_cut_gap_mm (&a->cut, &b->cut, least_mm);
  if (gap_mm >= least_mm && gap_mm > 0.0)
    return;
  finding = add_finding (self, a->spot, gap_mm > 0.0 ? "sheet.gap" : "sheet.overlap",
                         HUT_SEVERITY_BLOCKS,
                         gap_mm > 0.0
                             ? N_ ("{what} lies {is} mm from {other} on the sheet; {must} mm "
                                   "between cuts is asked for.")
                             : N_ ("{what} lies on {other} on the sheet: {is} mm between them, "
                                   "and {must} mm is asked for."));
  hut_finding_set_names (finding, a->spot->part, b->spot->part);
  hut_finding_set_numbers (finding, gap_mm, must_mm);
}

void
hut_check_spot (HutChecking *self)
{
  const HutDesign *design = self->assembly->design;
  g_autoptr(GArray) entries = g_array_new (FALSE, TRUE, sizeof (Entry));

  g_array_set_clear_func (entries, entry_clear);
  for (guint i = 0; i < design->spots->len; i++)
    {
      const HutSpot *spot = g_ptr_array_index (design->spots, i);
      const HutPart *part = spot->kept ? hut_spot_get_part (spot, self->parts, NULL) : NULL;
      Entry entry = { .spot = spot, .part = part };

      /* An assembly that is not whole has no parts at all, and says so by itself. */
      if (spot->kept && part == NULL && self->assembly->whole)
        check_gone (self, spot);
      if (part == NULL)
        continue;

      const HutPlacement placement = hut_spot_placement (spot, part);

      check_size (self, spot, part);
      hut_laid_cut_init (&entry.cut, part, &placement);
      check_bed (self, &entry);
      for (guint k = 0; k < entries->len; k++)
        check_gap (self, &entry, &g_array_index (entries, Entry, k));
      g_array_append_val (entries, entry);
    }
}
