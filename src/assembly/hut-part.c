/* src/assembly/hut-part.c: the pieces to cut.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-extra-part.h"
#include "assembly/hut-part-private.h"
#include "assembly/hut-strap.h"
#include "assembly/hut-strip.h"
#include "assembly/hut-trap.h"
#include "geom/hut-offset.h"
#include "geom/hut-relief.h"

/* Labels are cut with a font that has capitals, digits and a few signs. */
static char *
label_from_id (const char *id)
{
  char *label = g_ascii_strup (id, -1);

  for (char *c = label; *c != '\0'; c++)
    if (*c == '-' || *c == '_')
      *c = ' ';
    else if (!g_ascii_isalnum (*c))
      *c = '.';
  return label;
}

HutPart *
hut_part_new (HutPartKind kind,
              const char *id,
              guint panel,
              const HutStock *stock)
{
  HutPart *self = g_new0 (HutPart, 1);

  self->kind = kind;
  self->id = g_strdup (id);
  self->label = label_from_id (id);
  self->panel = panel;
  self->stock = stock;
  self->thickness_mm = hut_snap_mm (hut_stock_mean_mm (stock));
  self->marks = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_part_mark_free);
  return self;
}

void
hut_part_free (HutPart *self)
{
  if (self == NULL)
    return;
  g_free (self->id);
  g_free (self->label);
  hut_region_free (self->region);
  g_clear_pointer (&self->marks, g_ptr_array_unref);
  g_free (self);
}

HutPartSet *
hut_part_set_new (const HutAssembly *assembly)
{
  HutPartSet *self = g_new0 (HutPartSet, 1);

  g_return_val_if_fail (assembly != NULL, NULL);

  self->parts = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_part_free);
  self->splices = g_array_new (FALSE, TRUE, sizeof (HutSplice));
  self->solids = g_array_new (FALSE, TRUE, sizeof (HutSolid));
  self->troubles = g_array_new (FALSE, TRUE, sizeof (HutSplitTrouble));

  for (guint i = 0; i < assembly->panels->len; i++)
    hut_split_panel (assembly, i, self);
  for (guint i = 0; i < assembly->plates->len; i++)
    hut_split_plate (assembly, i, self);
  if (assembly->design->joints.straps)
    for (guint i = 0; i < assembly->panels->len; i++)
      hut_strap_add (assembly, i, self);
  for (guint i = 0; i < self->parts->len; i++)
    {
      HutPart *part = g_ptr_array_index (self->parts, i);

      const HutPanel *panel = g_ptr_array_index (assembly->panels, part->panel);

      part->shell = panel->id.shell;
    }
  hut_strip_add_parts (assembly, self);
  hut_extra_add_parts (assembly, self);
  hut_trap_add_parts (assembly, self);
  hut_part_mark_add_all (assembly, self);
  return self;
}

void
hut_part_set_free (HutPartSet *self)
{
  if (self == NULL)
    return;
  g_clear_pointer (&self->parts, g_ptr_array_unref);
  g_clear_pointer (&self->splices, g_array_unref);
  g_clear_pointer (&self->solids, g_array_unref);
  g_clear_pointer (&self->troubles, g_array_unref);
  g_free (self);
}

void
hut_part_get_matrix (const HutPart *self,
                     const HutAssembly *assembly,
                     double matrix[16])
{
  const HutFrame3 *frame
      = self->panel == HUT_PART_NO_PANEL
            ? &self->frame
            : &((const HutPanel *) g_ptr_array_index (assembly->panels, self->panel))->frame;
  const HutVec3 at = hut_frame3_to_world (frame, 0.0, 0.0, -self->depth_mm);
  const double rows[16] = {
    frame->u.x, frame->v.x, frame->w.x, hut_snap_mm (at.x), /**/
    frame->u.y, frame->v.y, frame->w.y, hut_snap_mm (at.y), /**/
    frame->u.z, frame->v.z, frame->w.z, hut_snap_mm (at.z), /**/
    0.0,        0.0,        0.0,        1.0,
  };

  for (int i = 0; i < 16; i++)
    matrix[i] = rows[i];
}

HutRegion *
hut_part_dup_cut (const HutPart *self,
                  GError **error)
{
  const HutOffset offset = hut_offset_for_fit (self->stock->kerf_mm, self->stock->allowance_mm);

  return hut_region_dup_offset (self->region, &offset, error);
}

HutRegion *
hut_part_dup_tool_way (const HutPart *self,
                       HutCutterKind cutter,
                       GError **error)
{
  g_return_val_if_fail (self != NULL, NULL);

  g_autoptr(HutRegion) cut = hut_part_dup_cut (self, error);

  if (cut == NULL || cutter != HUT_CUTTER_ROUTER || !(self->stock->kerf_mm > 0.0))
    return g_steal_pointer (&cut);
  return hut_region_dup_relieved (cut, self->stock->kerf_mm / 2.0);
}
