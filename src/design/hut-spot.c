/* src/design/hut-spot.c: where parts lie on the sheets.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design.h"

HutSpot *
hut_spot_new (const char *part)
{
  HutSpot *self = g_new0 (HutSpot, 1);

  self->part = g_strdup (part);
  self->sheet = 1;
  return self;
}

HutSpot *
hut_spot_copy (const HutSpot *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  HutSpot *copy = g_memdup2 (self, sizeof *self);

  copy->part = g_strdup (self->part);
  return copy;
}

gboolean
hut_spot_equal (const HutSpot *a,
                const HutSpot *b)
{
  return g_strcmp0 (a->part, b->part) == 0 && a->sheet == b->sheet && a->left_mm == b->left_mm
         && a->front_mm == b->front_mm && a->turn_deg == b->turn_deg && a->width_mm == b->width_mm
         && a->height_mm == b->height_mm && !a->kept == !b->kept;
}

void
hut_spot_free (HutSpot *self)
{
  if (self == NULL)
    return;
  g_free (self->part);
  g_free (self);
}

HutSpot *
hut_design_get_spot (const HutDesign *self,
                     const char *part)
{
  g_return_val_if_fail (self != NULL, NULL);

  for (guint i = 0; part != NULL && i < self->spots->len; i++)
    {
      HutSpot *spot = g_ptr_array_index (self->spots, i);

      if (g_strcmp0 (spot->part, part) == 0)
        return spot;
    }
  return NULL;
}

gboolean
hut_design_release_part (HutDesign *self,
                         const char *part)
{
  HutSpot *spot = hut_design_get_spot (self, part);

  return spot != NULL && g_ptr_array_remove (self->spots, spot);
}

void
hut_design_drop_loose_spots (HutDesign *self)
{
  g_return_if_fail (self != NULL);

  for (guint i = self->spots->len; i-- > 0;)
    if (!((const HutSpot *) g_ptr_array_index (self->spots, i))->kept)
      g_ptr_array_remove_index (self->spots, i);
}
