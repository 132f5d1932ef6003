/* src/checks/hut-fix.c: what would cure a finding, as an edit of the design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-fix.h"
#include "checks/hut-finding.h"
#include "checks/hut-way-out.h"
#include "design/hut-position.h"

void
hut_fix_clear (HutFix *self)
{
  g_clear_pointer (&self->item, g_free);
  g_clear_pointer (&self->stock, g_free);
  self->kind = HUT_FIX_NONE;
}

static HutPosition *
find_position (HutDesign *design,
               const char *item)
{
  HutOpening *opening = hut_design_get_opening (design, item);
  HutWindow *window = hut_design_get_window (design, item);
  HutHardware *hardware = hut_design_get_hardware (design, item);

  if (opening != NULL)
    return &opening->at;
  if (window != NULL)
    return &window->at;
  return hardware != NULL ? &hardware->at : NULL;
}

static gboolean
move (const HutFix *self,
      HutDesign *design)
{
  HutPosition *at = find_position (design, self->item);

  if (at == NULL)
    return FALSE;
  hut_position_shift (at, self->du_mm, self->dv_mm);
  return TRUE;
}

static gboolean
put_on_plate (HutHardware *hardware,
              const HutDesign *design,
              const char *stock)
{
  if (hut_design_get_stock (design, stock) == NULL)
    return FALSE;
  hardware->pocket_way = HUT_POCKET_PLATE;
  g_free (hardware->plate_stock);
  hardware->plate_stock = g_strdup (stock);
  return TRUE;
}

static gboolean
put_on_panel (HutHardware *hardware,
              const HutFix *self,
              const HutDesign *design)
{
  if (!hut_shell_has_panel (&design->shell, self->panel))
    return FALSE;
  hut_position_clear (&hardware->at);
  hardware->at = (HutPosition) { .panel = self->panel,
                                 .u_anchor = HUT_ANCHOR_START,
                                 .v_anchor = HUT_ANCHOR_START,
                                 .u_offset_mm = self->du_mm,
                                 .v_offset_mm = self->dv_mm };
  return TRUE;
}

/* The place is looked for only now: a search by full checks would be too slow for every frame. */
static gboolean
make_way_out (HutDesign *design,
              const char *service)
{
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
  g_autoptr(GPtrArray) findings = hut_check_all (assembly, parts);
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();
  const HutItem *fitting = NULL;
  g_autoptr(HutWayOut) way
      = hut_way_out_choose (assembly, parts, findings, service, catalog, &fitting);

  if (way == NULL)
    return FALSE;
  hut_way_out_add (way, fitting, design);
  return TRUE;
}

gboolean
hut_fix_apply (const HutFix *self,
               HutDesign *design)
{
  HutHardware *hardware;

  g_return_val_if_fail (self != NULL && design != NULL, FALSE);

  if (self->kind == HUT_FIX_SPRINGS)
    {
      design->shell.stay = (HutStay) { HUT_STAY_SPRING, HUT_STAYS_USUAL, HUT_UNKNOWN };
      return TRUE;
    }
  hardware = hut_design_get_hardware (design, self->item);
  if (self->kind == HUT_FIX_MOVE)
    return move (self, design);
  if (self->kind == HUT_FIX_RELEASE)
    return hut_design_release_part (design, self->item);
  if (self->kind == HUT_FIX_WAY_OUT)
    return make_way_out (design, self->item);
  if (hardware == NULL)
    return FALSE;
  switch (self->kind)
    {
    case HUT_FIX_FACE:
      hardware->face
          = hardware->face == HUT_FACE_OUTSIDE ? HUT_FACE_INSIDE : HUT_FACE_OUTSIDE;
      return TRUE;
    case HUT_FIX_NARROW:
      hardware->narrow_mm = self->value_mm;
      return TRUE;
    case HUT_FIX_PLATE:
      return put_on_plate (hardware, design, self->stock);
    case HUT_FIX_BOLTS:
      hardware->bolted = TRUE;
      return TRUE;
    case HUT_FIX_PLAIN_HEADS:
      hardware->sunk = FALSE;
      return TRUE;
    case HUT_FIX_PANEL:
      return put_on_panel (hardware, self, design);
    case HUT_FIX_NONE:
    case HUT_FIX_SPRINGS:
    case HUT_FIX_MOVE:
    case HUT_FIX_RELEASE:
    case HUT_FIX_WAY_OUT:
    default:
      return FALSE;
    }
}
