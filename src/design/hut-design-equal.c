/* src/design/hut-design-equal.c: whether two designs say the same.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design.h"

static gboolean
items_equal (const GPtrArray *a,
             const GPtrArray *b,
             gboolean (*equal) (gconstpointer, gconstpointer))
{
  if (a->len != b->len)
    return FALSE;
  for (guint i = 0; i < a->len; i++)
    if (!equal (g_ptr_array_index (a, i), g_ptr_array_index (b, i)))
      return FALSE;
  return TRUE;
}

static gboolean
body_equal (gconstpointer a,
            gconstpointer b)
{
  return hut_body_equal (a, b);
}

static gboolean
service_equal (gconstpointer a,
               gconstpointer b)
{
  return hut_service_equal (a, b);
}

static gboolean
stock_equal (gconstpointer a,
             gconstpointer b)
{
  return hut_stock_equal (a, b);
}

static gboolean
baffle_equal (gconstpointer a,
              gconstpointer b)
{
  return hut_baffle_equal (a, b);
}

static gboolean
spot_equal (gconstpointer a,
            gconstpointer b)
{
  return hut_spot_equal (a, b);
}

static gboolean
extra_equal (gconstpointer a,
             gconstpointer b)
{
  return hut_extra_equal (a, b);
}

static gboolean
window_equal (gconstpointer a,
              gconstpointer b)
{
  return hut_window_equal (a, b);
}

static gboolean
opening_equal (gconstpointer a,
               gconstpointer b)
{
  return hut_opening_equal (a, b);
}

static gboolean
item_equal (gconstpointer a,
            gconstpointer b)
{
  return hut_item_equal (a, b);
}

static gboolean
hardware_equal (gconstpointer a,
                gconstpointer b)
{
  return hut_hardware_equal (a, b);
}

static gboolean
bits_equal (const GArray *a,
            const GArray *b)
{
  if (a->len != b->len)
    return FALSE;
  for (guint i = 0; i < a->len; i++)
    if (g_array_index (a, double, i) != g_array_index (b, double, i))
      return FALSE;
  return TRUE;
}

static gboolean
machine_equal (const HutMachine *a,
               const HutMachine *b)
{
  return g_strcmp0 (a->name, b->name) == 0 && a->mass_kg == b->mass_kg
         && hut_work_equal (&a->work, &b->work)
         && items_equal (a->bodies, b->bodies, body_equal)
         && items_equal (a->services, b->services, service_equal)
         && a->clearance_mm.left == b->clearance_mm.left
         && a->clearance_mm.right == b->clearance_mm.right
         && a->clearance_mm.front == b->clearance_mm.front
         && a->clearance_mm.back == b->clearance_mm.back
         && a->clearance_mm.top == b->clearance_mm.top;
}

static gboolean
room_equal (const HutRoom *a,
            const HutRoom *b)
{
  return a->left == b->left && a->right == b->right && a->front == b->front && a->back == b->back
         && a->above == b->above && a->temperature_c == b->temperature_c
         && a->altitude_m == b->altitude_m;
}

static gboolean
cutter_equal (const HutCutter *a,
              const HutCutter *b)
{
  return g_strcmp0 (a->name, b->name) == 0 && a->kind == b->kind
         && a->bed_width_mm == b->bed_width_mm && a->bed_depth_mm == b->bed_depth_mm
         && a->margin_mm == b->margin_mm && a->part_gap_mm == b->part_gap_mm
         && !a->any_angle == !b->any_angle && a->lead_in_mm == b->lead_in_mm
         && !a->tabs == !b->tabs && a->travel_mm_min == b->travel_mm_min
         && a->acceleration_mm_s2 == b->acceleration_mm_s2 && a->plunge_mm_min == b->plunge_mm_min
         && a->spindle_rpm == b->spindle_rpm && a->safe_mm == b->safe_mm
         && a->through_mm == b->through_mm;
}

static gboolean
panel_stocks_equal (const HutShell *a,
                    const HutShell *b)
{
  for (int shell = 0; shell < HUT_SHELL_COUNT; shell++)
    for (int side = 0; side < HUT_SIDE_COUNT; side++)
      if (g_strcmp0 (a->stock[shell][side], b->stock[shell][side]) != 0)
        return FALSE;
  return g_strcmp0 (a->default_stock, b->default_stock) == 0;
}

static gboolean
shell_equal (const HutShell *a,
             const HutShell *b)
{
  return !a->fitted == !b->fitted && a->inside_mm.x == b->inside_mm.x
         && a->inside_mm.y == b->inside_mm.y && a->inside_mm.z == b->inside_mm.z
         && a->lid == b->lid && a->hinge == b->hinge && a->seam_height_mm == b->seam_height_mm
         && a->seam_gap_mm == b->seam_gap_mm && a->hinge_offset_mm == b->hinge_offset_mm
         && a->opening_angle_deg == b->opening_angle_deg
         && a->swing_clearance_mm == b->swing_clearance_mm && a->bottom == b->bottom
         && a->ledge_mm == b->ledge_mm && hut_duct_equal (&a->duct, &b->duct)
         && hut_finishing_equal (&a->finishing, &b->finishing)
         && hut_stay_equal (&a->stay, &b->stay) && panel_stocks_equal (a, b);
}

static gboolean
joints_equal (const HutJoints *a,
              const HutJoints *b)
{
  return a->finger_ratio == b->finger_ratio && a->splice_length_ratio == b->splice_length_ratio
         && a->splice_width_ratio == b->splice_width_ratio && !a->straps == !b->straps
         && a->strap_ratio == b->strap_ratio;
}

/**
 * hut_design_equal:
 * @a: a design
 * @b: another
 *
 * Order of items counts; pointers and array capacities do not.
 *
 * Returns: TRUE when both say the same: then hut_design_to_xml() gives the same text for both
 */
gboolean
hut_design_equal (const HutDesign *a,
                  const HutDesign *b)
{
  g_return_val_if_fail (a != NULL && b != NULL, FALSE);

  return g_strcmp0 (a->name, b->name) == 0 && machine_equal (&a->machine, &b->machine)
         && room_equal (&a->room_mm, &b->room_mm) && cutter_equal (&a->cutter, &b->cutter)
         && items_equal (a->stocks, b->stocks, stock_equal) && shell_equal (&a->shell, &b->shell)
         && joints_equal (&a->joints, &b->joints)
         && items_equal (a->baffles, b->baffles, baffle_equal)
         && items_equal (a->extras, b->extras, extra_equal)
         && items_equal (a->windows, b->windows, window_equal)
         && items_equal (a->openings, b->openings, opening_equal)
         && items_equal (a->items, b->items, item_equal)
         && items_equal (a->hardware, b->hardware, hardware_equal)
         && bits_equal (a->bits_mm, b->bits_mm) && items_equal (a->spots, b->spots, spot_equal);
}
