/* src/design/hut-hardware.c: hardware put on panels, the items it uses, and the owner's bits.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design.h"
#include "design/hut-position.h"
#include <string.h>

/**
 * hut_hardware_new:
 * @id: its id
 * @item: id of its item
 * @panel: the panel in whose middle it sits
 */
HutHardware *
hut_hardware_new (const char *id,
                  const char *item,
                  HutPanelId panel)
{
  g_return_val_if_fail (id != NULL && item != NULL, NULL);

  HutHardware *self = g_new0 (HutHardware, 1);

  self->id = g_strdup (id);
  self->name = g_strdup (id);
  self->item = g_strdup (item);
  self->at = hut_position_centre_of (panel);
  self->hole_class = HUT_HOLE_MEDIUM;
  return self;
}

HutHardware *
hut_hardware_copy (const HutHardware *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  HutHardware *copy = g_memdup2 (self, sizeof *self);

  copy->id = g_strdup (self->id);
  copy->name = g_strdup (self->name);
  copy->item = g_strdup (self->item);
  copy->at = hut_position_copy (&self->at);
  copy->serves = g_strdup (self->serves);
  copy->plate_stock = g_strdup (self->plate_stock);
  return copy;
}

void
hut_hardware_free (HutHardware *self)
{
  if (self == NULL)
    return;
  g_free (self->id);
  g_free (self->name);
  g_free (self->item);
  hut_position_clear (&self->at);
  g_free (self->serves);
  g_free (self->plate_stock);
  g_free (self);
}

gboolean
hut_hardware_equal (const HutHardware *a,
                    const HutHardware *b)
{
  g_return_val_if_fail (a != NULL && b != NULL, FALSE);

  return g_strcmp0 (a->id, b->id) == 0 && g_strcmp0 (a->name, b->name) == 0
         && g_strcmp0 (a->item, b->item) == 0 && hut_position_equal (&a->at, &b->at)
         && a->face == b->face && a->turn_deg == b->turn_deg && a->hole_class == b->hole_class
         && g_strcmp0 (a->serves, b->serves) == 0 && a->pocket_way == b->pocket_way
         && g_strcmp0 (a->plate_stock, b->plate_stock) == 0 && a->narrow_mm == b->narrow_mm
         && !a->bolted == !b->bolted && !a->sunk == !b->sunk;
}

/* ---- look-ups ------------------------------------------------------------------------------- */

HutHardware *
hut_design_get_hardware (const HutDesign *self,
                         const char *id)
{
  g_return_val_if_fail (self != NULL, NULL);

  for (guint i = 0; id != NULL && i < self->hardware->len; i++)
    {
      HutHardware *hardware = g_ptr_array_index (self->hardware, i);

      if (g_strcmp0 (hardware->id, id) == 0)
        return hardware;
    }
  return NULL;
}

HutItem *
hut_design_get_item (const HutDesign *self,
                     const char *id)
{
  g_return_val_if_fail (self != NULL, NULL);

  for (guint i = 0; id != NULL && i < self->items->len; i++)
    {
      HutItem *item = g_ptr_array_index (self->items, i);

      if (g_strcmp0 (item->id, id) == 0)
        return item;
    }
  return NULL;
}

HutItem *
hut_design_get_hardware_item (const HutDesign *self,
                              const HutHardware *hardware)
{
  g_return_val_if_fail (self != NULL && hardware != NULL, NULL);

  return hut_design_get_item (self, hardware->item);
}

/* ---- items ---------------------------------------------------------------------------------- */

/* The same but for its id, which a design may have changed. */
static gboolean
says_the_same (HutItem *own,
               const HutItem *item)
{
  char *id = own->id;
  gboolean same;

  own->id = item->id;
  same = hut_item_equal (own, item);
  own->id = id;
  return same;
}

/* The design's own copy, which may bear another id: the catalogue's with a number behind it. */
static HutItem *
find_copy (const HutDesign *self,
           const HutItem *item)
{
  const gsize length = strlen (item->id);

  for (guint i = 0; i < self->items->len; i++)
    {
      HutItem *own = g_ptr_array_index (self->items, i);
      const char *rest = g_str_has_prefix (own->id, item->id) ? own->id + length : NULL;
      const gboolean numbered = rest != NULL && rest[0] == '-' && g_ascii_isdigit (rest[1]);

      if (rest != NULL && (*rest == '\0' || numbered) && says_the_same (own, item))
        return own;
    }
  return NULL;
}

const char *
hut_design_keep_item (HutDesign *self,
                      const HutItem *item)
{
  g_return_val_if_fail (self != NULL && item != NULL, NULL);

  HutItem *own = find_copy (self, item);

  if (own == NULL)
    {
      g_autofree char *id = g_strdup (item->id);

      for (guint n = 2; hut_design_get_item (self, id) != NULL; n++)
        {
          g_free (id);
          id = g_strdup_printf ("%s-%u", item->id, n);
        }
      own = hut_item_copy (item);
      g_free (own->id);
      own->id = g_steal_pointer (&id);
      g_ptr_array_add (self->items, own);
    }
  return own->id;
}

void
hut_design_drop_unused_items (HutDesign *self)
{
  g_return_if_fail (self != NULL);

  for (guint i = self->items->len; i > 0; i--)
    {
      const HutItem *item = g_ptr_array_index (self->items, i - 1);
      gboolean used = FALSE;

      for (guint k = 0; !used && k < self->hardware->len; k++)
        used = g_strcmp0 (((const HutHardware *) g_ptr_array_index (self->hardware, k))->item,
                          item->id)
               == 0;
      if (!used)
        g_ptr_array_remove_index (self->items, i - 1);
    }
}

/* ---- bits ----------------------------------------------------------------------------------- */

GArray *
hut_bits_new_common (void)
{
  static const double common_mm[] = { 10, 12, 14, 15, 16, 18, 20, 22, 24, 25, 26,
                                      28, 30, 32, 34, 35, 36, 38, 40, 42, 45, 50 };
  GArray *bits = g_array_new (FALSE, FALSE, sizeof (double));

  g_array_append_vals (bits, common_mm, G_N_ELEMENTS (common_mm));
  return bits;
}

double
hut_bits_next_mm (const GArray *bits_mm,
                  double least_mm)
{
  double next_mm = 0.0;

  g_return_val_if_fail (bits_mm != NULL, 0.0);

  for (guint i = 0; i < bits_mm->len; i++)
    {
      const double bit_mm = g_array_index (bits_mm, double, i);

      if (bit_mm >= least_mm && (next_mm == 0.0 || bit_mm < next_mm))
        next_mm = bit_mm;
    }
  return next_mm;
}
