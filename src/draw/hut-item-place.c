/* src/draw/hut-item-place.c: a place for what nobody has pointed at: openings and hardware.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-item-place.h"
#include "assembly/hut-leaf.h"
#include "draw/hut-item-view.h"

/* Shares of the length of a line where things are tried, in order. Hinges at a sixth from the ends:
 * common practice, no source. */
static const double hinge_ratios[] = { 1.0 / 6.0, 5.0 / 6.0, 0.5, 1.0 / 3.0, 2.0 / 3.0 };
static const double seam_ratios[] = { 0.5, 0.25, 0.75, 0.125, 0.875 };

HutRect
hut_item_place_bounds (const HutItem *item)
{
  g_return_val_if_fail (item != NULL, ((HutRect){ 0, 0, 0, 0 }));

  return hut_item_view_bounds (item);
}

gboolean
hut_place_find (const HutAssembly *assembly,
                HutRect bounds,
                int preferred,
                guint *panel,
                HutPoint *at)
{
  g_return_val_if_fail (assembly != NULL && panel != NULL && at != NULL, FALSE);

  if (assembly->panels->len == 0)
    return FALSE;
  if (preferred >= 0)
    {
      *panel = (guint)preferred;
      if (hut_free_place_find (assembly, *panel, bounds, at))
        return TRUE;
    }
  for (*panel = 0; *panel < assembly->panels->len; (*panel)++)
    if (hut_free_place_find (assembly, *panel, bounds, at))
      return TRUE;
  *panel = preferred >= 0 ? (guint)preferred : 0;
  hut_free_place_find (assembly, *panel, bounds, at);
  return TRUE;
}

static HutRect
placed_rect (const HutPlacement *placement,
             HutRect rect)
{
  const HutPoint a = hut_placement_apply (placement, (HutPoint){ rect.u0, rect.v0 });
  const HutPoint b = hut_placement_apply (placement, (HutPoint){ rect.u1, rect.v1 });

  return (HutRect){ MIN (a.u, b.u), MIN (a.v, b.v), MAX (a.u, b.u), MAX (a.v, b.v) };
}

static gboolean
meets_hardware (const HutAssembly *assembly,
                guint panel,
                HutRect rect)
{
  for (guint i = 0; i < assembly->hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (assembly->hardware, i);
      const HutRect other = placed->footprint;

      if (placed->panel == panel && rect.u0 < other.u1 && other.u0 < rect.u1 && rect.v0 < other.v1
          && other.v0 < rect.v1)
        return TRUE;
    }
  return FALSE;
}

/* TRUE when both leaves have a place there and the first lies on that panel. */
static gboolean
lies_across (const HutAssembly *assembly,
             const HutItem *item,
             guint index,
             HutPoint at,
             HutLeaf *first)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, index);
  g_autoptr (HutHardware) hardware = hut_hardware_new ("tried", item->id, panel->id);
  HutLeaf second;
  HutTroubleKind trouble;

  return hut_assembly_position_for (assembly, at, &hardware->at)
         && hut_leaf_find (assembly, hardware, item->span, 0, first, &trouble)
         && hut_leaf_find (assembly, hardware, item->span, 1, &second, &trouble)
         && first->panel == index;
}

static gboolean
find_along (const HutAssembly *assembly,
            const HutItem *item,
            guint index,
            gboolean must_be_free,
            HutPoint *at)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, index);
  const gboolean hinge = item->span == HUT_SPAN_HINGE;
  const double *ratios = hinge ? hinge_ratios : seam_ratios;
  const guint n = hinge ? G_N_ELEMENTS (hinge_ratios) : G_N_ELEMENTS (seam_ratios);

  for (guint i = 0; i < n; i++)
    {
      const HutPoint tried = { panel->width_mm * ratios[i], panel->height_mm * ratios[i] };
      HutLeaf leaf;

      if (lies_across (assembly, item, index, tried, &leaf)
          && !(must_be_free
               && meets_hardware (assembly, index,
                                  placed_rect (&leaf.placement, hut_item_place_bounds (item)))))
        {
          *at = tried;
          return TRUE;
        }
    }
  return FALSE;
}

gboolean
hut_item_place_find (const HutAssembly *assembly,
                     const HutItem *item,
                     int preferred,
                     guint *panel,
                     HutPoint *at)
{
  g_return_val_if_fail (assembly != NULL && item != NULL && panel != NULL && at != NULL, FALSE);

  if (item->span == HUT_SPAN_PANEL)
    return hut_place_find (assembly, hut_item_place_bounds (item), preferred, panel, at);
  if (preferred >= 0 && find_along (assembly, item, (guint)preferred, TRUE, at))
    {
      *panel = (guint)preferred;
      return TRUE;
    }
  for (int must_be_free = TRUE; must_be_free >= FALSE; must_be_free--)
    for (*panel = 0; *panel < assembly->panels->len; (*panel)++)
      if (find_along (assembly, item, *panel, must_be_free, at))
        return TRUE;
  return FALSE;
}
