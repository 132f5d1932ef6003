/* src/assembly/hut-fit.c: outer and inside size of the enclosure.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-fit.h"
#include "assembly/hut-part.h"
#include "assembly/hut-pocket.h"
#include "assembly/hut-strip.h"
#include "assembly/hut-trap.h"
#include <math.h>

double
hut_fit_thickness_mm (const HutDesign *design,
                      HutPanelId panel)
{
  const HutStock *stock = hut_design_get_panel_stock (design, panel);

  return stock != NULL ? hut_snap_mm (hut_stock_mean_mm (stock)) : 0.0;
}

double
hut_fit_wall_mm (const HutDesign *design,
                 HutSide side)
{
  double wall_mm = 0.0;

  for (int shell = 0; shell < HUT_SHELL_COUNT; shell++)
    {
      const HutPanelId panel = { (HutShellId) shell, side };

      if (hut_shell_has_panel (&design->shell, panel))
        wall_mm = MAX (wall_mm, hut_fit_thickness_mm (design, panel));
    }
  return wall_mm;
}

double
hut_fit_floor_mm (const HutDesign *design)
{
  const double bottom_mm = hut_fit_wall_mm (design, HUT_SIDE_BOTTOM);

  return design->shell.bottom == HUT_BOTTOM_INSET ? hut_snap_mm (bottom_mm + design->shell.ledge_mm)
                                                  : bottom_mm;
}

/* Glazing and frame of the thickest window of a side. */
static double
plates_mm (const HutDesign *design,
           HutSide side)
{
  double deepest_mm = 0.0;

  for (guint i = 0; i < design->windows->len; i++)
    {
      const HutWindow *window = g_ptr_array_index (design->windows, i);
      const HutStock *glazing = hut_design_get_stock (design, window->glazing_stock);
      const HutStock *frame = hut_design_get_stock (design, window->frame_stock);

      if (window->at.panel.side != side || !hut_shell_has_panel (&design->shell, window->at.panel))
        continue;
      deepest_mm = MAX (deepest_mm,
                        hut_snap_mm ((glazing != NULL ? hut_stock_mean_mm (glazing) : 0.0)
                                     + (frame != NULL ? hut_stock_mean_mm (frame) : 0.0)));
    }
  return deepest_mm;
}

/* How far a piece of hardware reaches inside. What is soft may use the machine's clearance. */
static double
hardware_mm (const HutDesign *design,
             const HutHardware *hardware,
             const HutItem *item)
{
  const HutStock *panel = hut_design_get_panel_stock (design, hardware->at.panel);
  const HutStock *plate = hardware->pocket_way == HUT_POCKET_PLATE
                              ? hut_design_get_stock (design, hardware->plate_stock)
                              : NULL;
  const gboolean outside = hardware->face == HUT_FACE_OUTSIDE;
  double base_mm = 0.0, deepest_mm = 0.0;
  HutPocketNeed need = { 0 };

  if (panel == NULL)
    return 0.0;
  hut_pocket_find_need (item, panel, design->bits_mm, &need);
  if (plate != NULL) /* what is behind an outer plate begins at the panel's outer face */
    base_mm = outside ? -hut_stock_mean_mm (panel) : hut_stock_mean_mm (plate);
  else if (outside && need.needed && need.bit_mm > 0.0)
    base_mm = -need.depth_mm;
  for (guint i = 0; i < item->bodies->len; i++)
    {
      const HutItemBody *body = &g_array_index (item->bodies, HutItemBody, i);
      const double soft_mm
          = body->soft ? hut_machine_clearance_mm (&design->machine, hardware->at.panel.side) : 0.0;

      if ((body->side == HUT_ITEM_BEHIND) == outside)
        deepest_mm = MAX (deepest_mm, base_mm + body->depth_mm - MAX (soft_mm, 0.0));
    }
  return deepest_mm;
}

/* What reaches deepest into the inside of a side of all its hardware. The floor carries the
 * machine: what reaches through it is not counted. In a size given by hand the machine does not
 * step aside for it: the depth checks tell. */
static double
deepest_hardware_mm (const HutDesign *design,
                     HutSide side)
{
  double deepest_mm = 0.0;

  if (side == HUT_SIDE_BOTTOM || !design->shell.fitted)
    return 0.0;
  for (guint i = 0; i < design->hardware->len; i++)
    {
      const HutHardware *hardware = g_ptr_array_index (design->hardware, i);
      const HutItem *item = hut_design_get_hardware_item (design, hardware);

      if (hardware->at.panel.side == side && item != NULL && item->span == HUT_SPAN_PANEL
          && hut_shell_has_panel (&design->shell, hardware->at.panel))
        deepest_mm = MAX (deepest_mm, hardware_mm (design, hardware, item));
    }
  return hut_snap_mm (deepest_mm);
}

HutFit
hut_fit_find (const HutDesign *design,
              const HutIntrusion *intrusion)
{
  const HutBox3 swept = hut_machine_swept (&design->machine);
  const gboolean has_machine = !hut_box3_is_empty (&swept);
  const HutClearance *clear = &design->machine.clearance_mm;
  const double *in = intrusion->side;
  const double left_mm = clear->left + in[HUT_SIDE_LEFT],
               right_mm = clear->right + in[HUT_SIDE_RIGHT];
  const double front_mm = clear->front + in[HUT_SIDE_FRONT],
               back_mm = clear->back + in[HUT_SIDE_BACK];
  HutVec3 need = { left_mm + right_mm, front_mm + back_mm,
                   in[HUT_SIDE_BOTTOM] + clear->top + in[HUT_SIDE_TOP] };
  HutVec3 size, first;
  HutFit fit;

  if (has_machine)
    {
      need.x += swept.max.x - swept.min.x;
      need.y += swept.max.y - swept.min.y;
      need.z += MAX (swept.max.z, 0.0);
    }
  size = design->shell.fitted ? need : design->shell.inside_mm;
  size = (HutVec3) { hut_snap_mm (size.x), hut_snap_mm (size.y), hut_snap_mm (size.z) };

  first = (HutVec3) { hut_fit_wall_mm (design, HUT_SIDE_LEFT),
                     hut_fit_wall_mm (design, HUT_SIDE_FRONT), hut_fit_floor_mm (design) };
  fit.inside.min = first;
  fit.inside.max = (HutVec3) { hut_snap_mm (first.x + size.x), hut_snap_mm (first.y + size.y),
                               hut_snap_mm (first.z + size.z) };
  fit.outer = (HutVec3) { hut_snap_mm (fit.inside.max.x + hut_fit_wall_mm (design, HUT_SIDE_RIGHT)),
                          hut_snap_mm (fit.inside.max.y + hut_fit_wall_mm (design, HUT_SIDE_BACK)),
                          hut_snap_mm (fit.inside.max.z + hut_fit_wall_mm (design, HUT_SIDE_TOP)) };

  /* Spare room (negative when made too small by hand) is shared between the two sides. */
  fit.machine_at = (HutVec3) {
    hut_snap_mm (first.x + left_mm + (size.x - need.x) / 2.0 - (has_machine ? swept.min.x : 0.0)),
    hut_snap_mm (first.y + front_mm + (size.y - need.y) / 2.0 - (has_machine ? swept.min.y : 0.0)),
    hut_snap_mm (first.z + in[HUT_SIDE_BOTTOM]),
  };
  return fit;
}

/* Whether a panel of that side, as large as the outer box allows, misses the bed. */
static gboolean
side_is_oversize (const HutDesign *design,
                  const HutFit *fit,
                  HutSide side)
{
  const HutVec3 *outer = &fit->outer;

  for (int shell = 0; shell < HUT_SHELL_COUNT; shell++)
    {
      const HutPanelId panel = { (HutShellId) shell, side };
      const HutStock *stock = hut_design_get_panel_stock (design, panel);
      const gboolean flat = side == HUT_SIDE_BOTTOM || side == HUT_SIDE_TOP;
      double height_mm = outer->z;

      if (!hut_shell_has_panel (&design->shell, panel))
        continue;
      if (side == HUT_SIDE_BOTTOM && design->shell.bottom == HUT_BOTTOM_BOUGHT)
        continue;
      if (design->shell.lid == HUT_LID_HOOD || design->shell.lid == HUT_LID_LIFT_OFF)
        height_mm = shell == HUT_SHELL_BASE
                        ? design->shell.seam_height_mm
                        : outer->z - design->shell.seam_height_mm - design->shell.seam_gap_mm;
      if (stock != NULL
          && !hut_cutter_takes_stock (&design->cutter, stock,
                                      side == HUT_SIDE_LEFT || side == HUT_SIDE_RIGHT ? outer->y
                                                                                      : outer->x,
                                      flat ? outer->y : height_mm))
        return TRUE;
    }
  return FALSE;
}

HutIntrusion
hut_fit_intrusion (const HutDesign *design)
{
  HutIntrusion intrusion = { { 0.0 } };
  gboolean strapped[HUT_SIDE_COUNT] = { FALSE };
  gboolean grew = TRUE;

  for (int side = 0; side < HUT_SIDE_COUNT; side++)
    intrusion.side[side]
        = MAX (MAX (plates_mm (design, (HutSide) side),
                    deepest_hardware_mm (design, (HutSide) side)),
               /* The machine stands on the floor beside a strip there, not on it. */
               side == HUT_SIDE_BOTTOM ? 0.0
                                       : MAX (hut_strip_intrusion_mm (design, (HutSide) side),
                                              hut_trap_intrusion_mm (design, (HutSide) side)));

  while (design->joints.straps && grew)
    {
      const HutFit fit = hut_fit_find (design, &intrusion);

      grew = FALSE;
      for (int side = 0; side < HUT_SIDE_COUNT; side++)
        if (!strapped[side] && side_is_oversize (design, &fit, (HutSide) side))
          {
            strapped[side] = grew = TRUE;
            intrusion.side[side]
                = MAX (intrusion.side[side], hut_fit_wall_mm (design, (HutSide)side));
          }
    }
  return intrusion;
}
