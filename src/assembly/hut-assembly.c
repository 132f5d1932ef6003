/* src/assembly/hut-assembly.c: the enclosure as derived from a design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-assembly.h"
#include "assembly/hut-fit.h"
#include "assembly/hut-hardware-placing.h"
#include "assembly/hut-placing.h"
#include "assembly/hut-shell-layout.h"
#include "assembly/hut-strip.h"
#include "assembly/hut-trap.h"
#include <math.h>

/* Least height of wall that base and lid must have beside floor or top, in thicknesses. Own choice:
 * a lower wall has no room for a hinge screw or a joint. */
#define HUT_WALL_LEAST_RATIO 2.0

static void
add_trouble (HutAssembly *self,
             HutTrouble trouble)
{
  g_array_append_val (self->troubles, trouble);
}

/* ---- can it be built at all ------------------------------------------------------------------ */

static void
check_stocks (HutAssembly *self)
{
  for (int shell = 0; shell < HUT_SHELL_COUNT; shell++)
    for (int side = 0; side < HUT_SIDE_COUNT; side++)
      {
        const HutPanelId id = { (HutShellId) shell, (HutSide) side };

        if (hut_shell_has_panel (&self->design->shell, id)
            && hut_design_get_panel_stock (self->design, id) == NULL)
          add_trouble (self, (HutTrouble) { .kind = HUT_TROUBLE_STOCK_MISSING, .panel = id });
      }
}

static gboolean
is_sane (double size_mm)
{
  return isfinite (size_mm) && size_mm <= HUT_SIZE_MAX_MM;
}

static void
check_sizes (HutAssembly *self,
             const HutFit *fit)
{
  const HutVec3 outer = fit->outer;
  const double inside[3]
      = { fit->inside.max.x - fit->inside.min.x, fit->inside.max.y - fit->inside.min.y,
          fit->inside.max.z - fit->inside.min.z };
  const double largest_mm = MAX (outer.x, MAX (outer.y, outer.z));
  double walls_mm = 0.0;

  if (!is_sane (outer.x) || !is_sane (outer.y) || !is_sane (outer.z))
    add_trouble (
        self,
        (HutTrouble) { .kind = HUT_TROUBLE_SIZE, .is_mm = largest_mm, .must_mm = HUT_SIZE_MAX_MM });

  for (int side = 0; side < HUT_SIDE_COUNT; side++)
    walls_mm = MAX (walls_mm, hut_fit_wall_mm (self->design, (HutSide) side));
  for (int axis = 0; axis < 3; axis++)
    if (!(inside[axis] > walls_mm))
      {
        add_trouble (self, (HutTrouble) { .kind = HUT_TROUBLE_TOO_THIN_BOX,
                                         .is_mm = inside[axis],
                                         .must_mm = walls_mm });
        break;
      }
}

static void
check_seam (HutAssembly *self,
            const HutFit *fit)
{
  const HutShell *shell = &self->design->shell;
  const double least_ratio = HUT_WALL_LEAST_RATIO;
  const double low_mm = hut_fit_floor_mm (self->design)
                        + least_ratio * hut_fit_wall_mm (self->design, HUT_SIDE_FRONT);
  const double high_mm = fit->outer.z - shell->seam_gap_mm
                         - (1.0 + least_ratio) * hut_fit_wall_mm (self->design, HUT_SIDE_TOP);

  if (shell->lid != HUT_LID_HOOD && shell->lid != HUT_LID_LIFT_OFF)
    return;
  if (shell->seam_height_mm < low_mm)
    add_trouble (self, (HutTrouble) { .kind = HUT_TROUBLE_SEAM,
                                     .is_mm = shell->seam_height_mm,
                                     .must_mm = low_mm });
  else if (shell->seam_height_mm > high_mm)
    add_trouble (self, (HutTrouble) { .kind = HUT_TROUBLE_SEAM,
                                     .is_mm = shell->seam_height_mm,
                                     .must_mm = high_mm });
}

static gboolean
can_be_built (HutAssembly *self,
              const HutFit *fit)
{
  const HutShell *shell = &self->design->shell;
  const HutBox3 swept = hut_machine_swept (&self->design->machine);
  const guint before = self->troubles->len;
  gboolean can;

  check_sizes (self, fit);
  check_seam (self, fit);
  can = self->troubles->len == before;
  if (shell->fitted && hut_box3_is_empty (&swept))
    {
      add_trouble (self, (HutTrouble) { .kind = HUT_TROUBLE_NO_MACHINE });
      can = FALSE;
    }
  if (shell->lid != HUT_LID_LIFT_OFF && !hut_lid_allows_hinge (shell->lid, shell->hinge))
    add_trouble (
        self, (HutTrouble) { .kind = HUT_TROUBLE_HINGE, .panel = { HUT_SHELL_LID, HUT_SIDE_TOP } });
  return can;
}

/* ---- hinge and solids ------------------------------------------------------------------------ */

static void
set_hinge (HutAssembly *self)
{
  const HutShell *shell = &self->design->shell;
  const HutVec3 outer = self->outer_mm;
  const double out_mm = shell->hinge_offset_mm;

  self->hinged = shell->lid != HUT_LID_LIFT_OFF && hut_lid_allows_hinge (shell->lid, shell->hinge);
  if (!self->hinged)
    return;
  if (shell->lid == HUT_LID_FRONT)
    {
      const double y_mm = hut_fit_wall_mm (self->design, HUT_SIDE_FRONT) + shell->seam_gap_mm / 2.0;

      self->hinge_point
          = (HutVec3) { shell->hinge == HUT_HINGE_RIGHT ? outer.x + out_mm : -out_mm, y_mm, 0.0 };
      self->hinge_axis = (HutVec3) { 0, 0, shell->hinge == HUT_HINGE_RIGHT ? 1 : -1 };
      if (shell->hinge == HUT_HINGE_TOP)
        {
          self->hinge_point = (HutVec3) { 0.0, y_mm, outer.z + out_mm };
          self->hinge_axis = (HutVec3) { -1, 0, 0 };
        }
      return;
    }
  self->hinge_point = (HutVec3) { shell->hinge == HUT_HINGE_RIGHT ? outer.x + out_mm : -out_mm, 0.0,
                                  self->seam_z_mm + shell->seam_gap_mm / 2.0 };
  self->hinge_axis = (HutVec3) { 0, shell->hinge == HUT_HINGE_RIGHT ? 1 : -1, 0 };
  if (shell->hinge == HUT_HINGE_BACK)
    {
      self->hinge_point.x = 0.0;
      self->hinge_point.y = outer.y + out_mm;
      self->hinge_axis = (HutVec3) { -1, 0, 0 };
    }
}

static void
add_solids (HutAssembly *self)
{
  for (guint i = 0; i < self->panels->len; i++)
    {
      const HutPanel *panel = g_ptr_array_index (self->panels, i);
      const HutSolid solid = {
        .kind = HUT_SOLID_PANEL,
        .shell = panel->id.shell,
        .panel = i,
        .box = hut_frame3_box (&panel->frame, (HutRect) { 0, 0, panel->width_mm, panel->height_mm },
                               -panel->thickness_mm, 0.0),
      };

      g_array_append_val (self->solids, solid);
    }
  for (guint i = 0; i < self->plates->len; i++)
    {
      const HutPlate *plate = g_ptr_array_index (self->plates, i);
      const HutPanel *panel = g_ptr_array_index (self->panels, plate->panel);
      const HutSolid solid = {
        .kind = plate->kind,
        .shell = panel->id.shell,
        .panel = plate->panel,
        .item = plate->item,
        .box = hut_frame3_box (&panel->frame, hut_region_bounds (plate->region), -plate->depth1_mm,
                               -plate->depth0_mm),
      };

      g_array_append_val (self->solids, solid);
    }
}

/* Ledges run along the walls under an inset bottom. */
static void
add_ledges (HutAssembly *self)
{
  static const HutSide walls[] = { HUT_SIDE_FRONT, HUT_SIDE_BACK, HUT_SIDE_LEFT, HUT_SIDE_RIGHT };
  const HutPanel *bottom
      = hut_assembly_get_panel (self, (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_BOTTOM });
  const double ledge_mm = self->design->shell.ledge_mm;

  if (self->design->shell.bottom != HUT_BOTTOM_INSET || bottom == NULL || ledge_mm <= 0.0)
    return;
  for (guint i = 0; i < G_N_ELEMENTS (walls); i++)
    {
      const int index = hut_assembly_find_panel (self, (HutPanelId) { HUT_SHELL_BASE, walls[i] });
      HutSolid solid = { .kind = HUT_SOLID_LEDGE, .shell = HUT_SHELL_BASE };

      if (index < 0)
        continue;
      solid.panel = (guint) index;
      solid.box = hut_frame3_box (
          &bottom->frame, (HutRect) { 0, 0, bottom->width_mm, bottom->height_mm }, 0.0, ledge_mm);
      if (walls[i] == HUT_SIDE_FRONT)
        solid.box.max.y = MIN (solid.box.max.y, solid.box.min.y + ledge_mm);
      else if (walls[i] == HUT_SIDE_BACK)
        solid.box.min.y = MAX (solid.box.min.y, solid.box.max.y - ledge_mm);
      else if (walls[i] == HUT_SIDE_LEFT)
        solid.box.max.x = MIN (solid.box.max.x, solid.box.min.x + ledge_mm);
      else
        solid.box.min.x = MAX (solid.box.min.x, solid.box.max.x - ledge_mm);
      g_array_append_val (self->solids, solid);
    }
}

/* ---- public ---------------------------------------------------------------------------------- */

HutAssembly *
hut_assembly_new (const HutDesign *design)
{
  HutAssembly *self = g_new0 (HutAssembly, 1);
  HutShellBox boxes[HUT_SHELL_COUNT];
  HutIntrusion intrusion;
  HutFit fit;

  g_return_val_if_fail (design != NULL, NULL);

  self->design = hut_design_copy (design);
  self->panels = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_panel_free);
  self->holes = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_placed_hole_free);
  self->plates = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_plate_free);
  self->strips = g_array_new (FALSE, TRUE, sizeof (HutStrip));
  self->hardware = g_ptr_array_new_with_free_func (g_free);
  self->solids = g_array_new (FALSE, TRUE, sizeof (HutSolid));
  self->troubles = g_array_new (FALSE, TRUE, sizeof (HutTrouble));

  check_stocks (self);
  if (self->troubles->len > 0)
    return self;
  intrusion = hut_fit_intrusion (self->design);
  fit = hut_fit_find (self->design, &intrusion);
  self->outer_mm = fit.outer;
  self->inside = fit.inside;
  self->machine_at = fit.machine_at;
  if (!can_be_built (self, &fit))
    return self;

  self->whole = TRUE;
  hut_shell_layout_panels (self->design, &fit, self->panels);
  hut_shell_layout_boxes (self->design, &fit, boxes);
  self->seam_z_mm = boxes[HUT_SHELL_BASE].box.max.z;
  set_hinge (self);
  hut_placing_run (self);
  add_solids (self);
  add_ledges (self);
  hut_strip_run (self, boxes);
  hut_trap_run (self);
  hut_hardware_add_solids (self);
  return self;
}

void
hut_assembly_free (HutAssembly *self)
{
  if (self == NULL)
    return;
  g_clear_pointer (&self->panels, g_ptr_array_unref);
  g_clear_pointer (&self->holes, g_ptr_array_unref);
  g_clear_pointer (&self->plates, g_ptr_array_unref);
  g_clear_pointer (&self->strips, g_array_unref);
  g_clear_pointer (&self->hardware, g_ptr_array_unref);
  g_clear_pointer (&self->solids, g_array_unref);
  g_clear_pointer (&self->troubles, g_array_unref);
  hut_design_free ((HutDesign *) self->design);
  g_free (self);
}

int
hut_assembly_find_panel (const HutAssembly *self,
                         HutPanelId id)
{
  for (guint i = 0; i < self->panels->len; i++)
    if (hut_panel_id_equal (((const HutPanel *) g_ptr_array_index (self->panels, i))->id, id))
      return (int) i;
  return -1;
}

const HutPanel *
hut_assembly_get_panel (const HutAssembly *self,
                        HutPanelId id)
{
  const int index = hut_assembly_find_panel (self, id);

  return index >= 0 ? g_ptr_array_index (self->panels, index) : NULL;
}

const HutPlacedHole *
hut_assembly_get_hole (const HutAssembly *self,
                       const char *item)
{
  for (guint i = 0; i < self->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (self->holes, i);

      if (g_strcmp0 (hole->item, item) == 0)
        return hole;
    }
  return NULL;
}

const HutPlacedHardware *
hut_assembly_get_hardware (const HutAssembly *self,
                           const char *id)
{
  for (guint i = 0; i < self->hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (self->hardware, i);

      if (g_strcmp0 (placed->hardware->id, id) == 0)
        return placed;
    }
  return NULL;
}

double
hut_assembly_hardware_mass_kg (const HutAssembly *self,
                               HutShellId shell)
{
  double mass_kg = 0.0;

  for (guint i = 0; i < self->hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (self->hardware, i);
      const HutPanel *panel = g_ptr_array_index (self->panels, placed->panel);

      if (panel->id.shell == shell)
        mass_kg
            += placed->item->mass_kg * (placed->item->span == HUT_SPAN_PANEL ? 1.0 : 0.5);
    }
  return mass_kg;
}

HutBox3
hut_assembly_body_box (const HutAssembly *self,
                       const HutBody *body)
{
  const HutBox3 swept = hut_body_swept (body);

  return hut_box3_shift (&swept, self->machine_at);
}
