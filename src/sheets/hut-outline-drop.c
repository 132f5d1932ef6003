/* src/sheets/hut-outline-drop.c: a layout gets along with one bin less.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-separate.h"

/* The bin behind all fixed items with the least material in it; @bin_count when there is none. */
static guint
find_emptiest (const HutOutlinePack *self,
               const GArray *places,
               guint bin_count)
{
  g_autofree double *loads_mm2 = g_new0 (double, bin_count);
  guint first = 0, emptiest = bin_count;

  for (guint i = 0; i < self->items->len; i++)
    {
      const HutPackItem *item = g_ptr_array_index (self->items, i);
      const guint bin = g_array_index (places, HutOutlinePlace, i).bin;

      loads_mm2[bin] += item->area_mm2;
      if (item->fixed)
        first = MAX (first, bin + 1);
    }
  for (guint i = first; i < bin_count; i++)
    if (emptiest == bin_count || loads_mm2[i] < loads_mm2[emptiest])
      emptiest = i;
  return emptiest;
}

/* The layout without bin @dropped, whose items go to others by lot. */
static void
take_over (HutSeparation *self,
           const GArray *places,
           guint dropped)
{
  for (guint i = 0; i < self->pack->items->len; i++)
    {
      const HutPackItem *item = g_ptr_array_index (self->pack->items, i);
      const HutOutlinePlace *place = &g_array_index (places, HutOutlinePlace, i);

      if (place->bin == dropped)
        hut_separation_draw (self, i);
      else
        self->spots[i] = (HutSpot) { place->bin - (place->bin > dropped ? 1 : 0),
                                     hut_pack_item_find_way (item, place->way), place->at };
    }
}

gboolean
hut_outline_pack_drop_bin (HutOutlinePack *self,
                           GArray *places,
                           guint64 seed,
                           guint64 work_limit,
                           const HutPackWatch *watch)
{
  guint bin_count = 0, dropped;
  g_auto(HutSeparation) separation = { NULL };

  for (guint i = 0; i < places->len; i++)
    bin_count = MAX (bin_count, g_array_index (places, HutOutlinePlace, i).bin + 1);
  dropped = find_emptiest (self, places, bin_count);
  if (dropped == bin_count || bin_count < 2)
    return FALSE;
  hut_separation_init (&separation, self, seed);
  separation.bin_count = bin_count - 1;
  take_over (&separation, places, dropped);
  if (!hut_separation_run (&separation, work_limit, watch))
    return FALSE;
  for (guint i = 0; i < self->items->len; i++)
    {
      const HutPackItem *item = g_ptr_array_index (self->items, i);
      const HutSpot *spot = &separation.spots[i];

      g_array_index (places, HutOutlinePlace, i) = (HutOutlinePlace) {
        spot->bin, g_array_index (item->ways, HutPackWay, spot->way).way, spot->at
      };
    }
  return TRUE;
}
