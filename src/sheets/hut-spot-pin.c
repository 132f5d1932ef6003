/* src/sheets/hut-spot-pin.c: which of the design's spots the packing has to respect.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-spot-pin.h"
#include "assembly/hut-spot-place.h"

/* Gaps and margins may be less by this, mm. Own choice: spots lie on the grid, so that two of them
 * may have come nearer by one step; far under any cutter's repeatability. */
#define TOLERANCE_MM (5.0 * HUT_GRID_MM)

/* A part and its spot. */
typedef struct
{
  guint part;
  const HutSpot *spot;
  HutPlacement placement;
  HutLaidCut cut;
  gboolean gives_way;
} Entry;

static void
entry_clear (gpointer data)
{
  hut_laid_cut_clear (&((Entry *) data)->cut);
}

static GHashTable *
index_spots (const HutDesign *design)
{
  GHashTable *table = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < design->spots->len; i++)
    {
      HutSpot *spot = g_ptr_array_index (design->spots, i);

      g_hash_table_insert (table, spot->part, spot);
    }
  return table;
}

/* FALSE for a part that no sheet takes: it needs no spot. */
static gboolean
wants_spot (const HutPart *part,
            const HutCutter *cutter)
{
  const HutRect box = hut_region_bounds (part->region);

  return hut_cutter_takes_stock (cutter, part->stock, box.u1 - box.u0, box.v1 - box.v0);
}

/* The spots of one stock's parts. @whole: (out): whether each part that wants one has one that was
 * made for its size, or that is kept */
static GArray *
collect (const HutAssembly *assembly,
         const HutPartSet *parts,
         const HutStock *stock,
         GHashTable *spots,
         gboolean *whole)
{
  GArray *entries = g_array_new (FALSE, TRUE, sizeof (Entry));

  g_array_set_clear_func (entries, entry_clear);
  *whole = TRUE;
  for (guint i = 0; i < parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (parts->parts, i);
      const HutSpot *spot = g_hash_table_lookup (spots, part->id);
      Entry entry = { .part = i, .spot = spot };

      if (part->bought || part->stock != stock)
        continue;
      if (spot == NULL || (!spot->kept && !hut_spot_has_size (spot, part)))
        {
          *whole = *whole && !wants_spot (part, &assembly->design->cutter);
          continue;
        }
      entry.placement = hut_spot_placement (spot, part);
      hut_laid_cut_init (&entry.cut, part, &entry.placement);
      g_array_append_val (entries, entry);
    }
  return entries;
}

/* FALSE when the spots that are not kept do not go with each other. Those that do not go with a
 * kept one are marked. */
static gboolean
compare (GArray *entries,
         const HutCutter *cutter,
         const HutStock *stock)
{
  const HutRect usable = hut_cutter_usable (cutter, stock);
  const double least_mm = cutter->part_gap_mm - TOLERANCE_MM;

  for (guint i = 0; i < entries->len; i++)
    {
      Entry *a = &g_array_index (entries, Entry, i);

      if (!a->spot->kept && hut_laid_cut_out_mm (&a->cut, usable) > TOLERANCE_MM)
        return FALSE;
      for (guint k = 0; k < i; k++)
        {
          Entry *b = &g_array_index (entries, Entry, k);

          if (a->spot->sheet != b->spot->sheet || (a->spot->kept && b->spot->kept)
              || hut_laid_cut_gap_mm (&a->cut, &b->cut, least_mm) >= least_mm)
            continue;
          if (!a->spot->kept && !b->spot->kept)
            return FALSE;
          (a->spot->kept ? b : a)->gives_way = TRUE;
        }
    }
  return TRUE;
}

static void
append_pins (GArray *pins,
             const HutPartSet *parts,
             const GArray *entries,
             gboolean all)
{
  for (guint i = 0; i < entries->len; i++)
    {
      const Entry *entry = &g_array_index (entries, Entry, i);
      HutSheetPin pin;

      if (!entry->spot->kept && (!all || entry->gives_way))
        continue;
      pin = hut_sheet_pin_at (g_ptr_array_index (parts->parts, entry->part), entry->part,
                              entry->spot->sheet, &entry->placement);
      g_array_append_val (pins, pin);
    }
}

static int
compare_parts (gconstpointer a,
               gconstpointer b)
{
  const guint x = ((const HutSheetPin *) a)->part, y = ((const HutSheetPin *) b)->part;

  return (x > y) - (x < y);
}

GArray *
hut_sheet_pins_new_from_spots (const HutAssembly *assembly,
                               const HutPartSet *parts)
{
  g_return_val_if_fail (assembly != NULL && parts != NULL, NULL);

  const HutDesign *design = assembly->design;
  GArray *pins = g_array_new (FALSE, FALSE, sizeof (HutSheetPin));
  g_autoptr(GHashTable) spots = index_spots (design);

  for (guint i = 0; design->spots->len > 0 && i < design->stocks->len; i++)
    {
      const HutStock *stock = g_ptr_array_index (design->stocks, i);
      gboolean whole;
      g_autoptr(GArray) entries = collect (assembly, parts, stock, spots, &whole);

      /* Both are wanted: what gives way to what is kept is found in the comparison. */
      whole = whole && compare (entries, &design->cutter, stock);
      append_pins (pins, parts, entries, whole);
    }
  g_array_sort (pins, compare_parts);
  return pins;
}
