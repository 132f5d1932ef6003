/* src/assembly/hut-strip-part.c: the pieces of the strips along the seam.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-part-private.h"
#include "assembly/hut-strip.h"
#include <string.h>

/* The rectangle of piece @index of @count along the strip's longer way. */
static HutRect
piece_of (HutRect rect,
          guint index,
          guint count)
{
  const double wide_mm = rect.u1 - rect.u0, high_mm = rect.v1 - rect.v0;
  HutRect piece = rect;

  if (wide_mm >= high_mm)
    {
      piece.u0 = hut_snap_mm (rect.u0 + wide_mm * index / count);
      piece.u1 = hut_snap_mm (rect.u0 + wide_mm * (index + 1) / count);
    }
  else
    {
      piece.v0 = hut_snap_mm (rect.v0 + high_mm * index / count);
      piece.v1 = hut_snap_mm (rect.v0 + high_mm * (index + 1) / count);
    }
  return piece;
}

static gboolean
all_fit (const HutCutter *cutter,
         const HutStrip *strip,
         guint count)
{
  for (guint i = 0; i < count; i++)
    {
      const HutRect piece = piece_of (strip->rect, i, count);

      if (!hut_cutter_takes_stock (cutter, strip->stock, piece.u1 - piece.u0, piece.v1 - piece.v0))
        return FALSE;
    }
  return TRUE;
}

/* 1 when no number of pieces would do: then the bed check blocks. */
static guint
count_pieces (const HutCutter *cutter,
              const HutStrip *strip)
{
  const double length_mm
      = MAX (strip->rect.u1 - strip->rect.u0, strip->rect.v1 - strip->rect.v0);
  const guint most = (guint) (length_mm / MAX (1.0, strip->stock->smallest_web_mm)) + 1;

  for (guint count = 1; count <= most; count++)
    if (all_fit (cutter, strip, count))
      return count;
  return 1;
}

void
hut_strip_add_parts (const HutAssembly *assembly,
                     HutPartSet *set)
{
  for (guint i = 0; i < assembly->strips->len; i++)
    {
      const HutStrip *strip = &g_array_index (assembly->strips, HutStrip, i);
      const HutPanel *panel = g_ptr_array_index (assembly->panels, strip->panel);
      const char *side = strchr (hut_panel_id_to_string (panel->id), '-') + 1;
      const guint count = count_pieces (&assembly->design->cutter, strip);

      for (guint k = 0; k < count; k++)
        {
          g_autofree char *id = count > 1 ? g_strdup_printf ("baffle-%s-%u", side, k + 1)
                                          : g_strdup_printf ("baffle-%s", side);
          HutPart *part = hut_part_new (HUT_PART_BAFFLE, id, strip->panel, strip->stock);

          part->depth_mm = strip->depth_mm;
          part->shell = strip->shell;
          part->region = hut_region_new (hut_path_new_rect (piece_of (strip->rect, k, count), 0.0));
          g_ptr_array_add (set->parts, part);
        }
    }
}
