/* src/assembly/hut-part-mark.c: work on parts that cuts nothing out of them: pockets, centres,
 * countersinks.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-part-private.h"
#include <math.h>

/* Hole for a bit's spur, mm: own choice, wide enough for a laser to pass and narrow enough to
 * guide a spur of 2 .. 4. */
#define CENTRE_HOLE_MM 1.5
/* Two bounds of one path differ by no more, mm: copies are exact, this only names the comparison.
 * */
#define SAME_MM 1e-9

void
hut_part_mark_free (HutPartMark *self)
{
  if (self == NULL)
    return;
  hut_path_free (self->path);
  g_free (self);
}

static HutPartMark *
add_circle (HutPart *part,
            HutPartMarkKind kind,
            const HutPlacedHardware *placed,
            HutPoint middle,
            double diameter_mm)
{
  HutPartMark *mark = g_new0 (HutPartMark, 1);

  mark->kind = kind;
  mark->item = placed->hardware->id;
  mark->face = placed->face == HUT_FACE_OUTSIDE ? HUT_FACE_INSIDE : HUT_FACE_OUTSIDE;
  mark->path = hut_path_new_circle (
      (HutPoint) { hut_snap_mm (middle.u), hut_snap_mm (middle.v) }, diameter_mm / 2.0);
  g_ptr_array_add (part->marks, mark);
  return mark;
}

/* The piece of a panel that a point lies in, its holes counted in. */
static HutPart *
find_piece (const HutPartSet *set,
            guint panel,
            HutPoint at)
{
  for (guint i = 0; i < set->parts->len; i++)
    {
      HutPart *part = g_ptr_array_index (set->parts, i);

      if (part->kind == HUT_PART_PANEL && part->panel == panel
          && hut_path_contains (part->region->outer, at))
        return part;
    }
  return NULL;
}

static gboolean
same_bounds (HutRect a,
             HutRect b)
{
  return fabs (a.u0 - b.u0) < SAME_MM && fabs (a.v0 - b.v0) < SAME_MM
         && fabs (a.u1 - b.u1) < SAME_MM
         && fabs (a.v1 - b.v1) < SAME_MM;
}

/* The cutout stays shut until its pocket is bored: what the pocket covers of the hardware's holes
 * is scored. Screw holes beside the pocket are cut as ever. */
static void
leave_shut (const HutAssembly *assembly,
            const HutPlacedHardware *placed,
            HutPart *part)
{
  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);

      if (hole->source != HUT_HOLE_HARDWARE || hole->panel != placed->panel
          || g_strcmp0 (hole->item, placed->hardware->id) != 0)
        continue;
      for (guint k = 0; k < hole->paths->len; k++)
        {
          const HutPath *path = g_ptr_array_index (hole->paths, k);
          const HutRect bounds = hut_path_bounds (path);

          if (!hut_path_contains (path, placed->pocket_at))
            continue;
          for (guint n = 0; n < part->region->holes->len; n++)
            if (same_bounds (bounds,
                             hut_path_bounds (g_ptr_array_index (part->region->holes, n))))
              {
                HutPartMark *mark = g_new0 (HutPartMark, 1);

                mark->kind = HUT_PART_MARK_OUTLINE;
                mark->item = placed->hardware->id;
                mark->face = HUT_FACE_OUTSIDE;
                mark->hole = n;
                mark->path = hut_path_copy (path);
                g_ptr_array_add (part->marks, mark);
              }
        }
    }
}

static void
mark_pocket (const HutAssembly *assembly,
             const HutPlacedHardware *placed,
             HutPartSet *set)
{
  HutPart *part = find_piece (set, placed->panel, placed->pocket_at);

  if (!placed->bored || part == NULL)
    return;
  add_circle (part, HUT_PART_MARK_POCKET, placed, placed->pocket_at, placed->need.bit_mm)->depth_mm
      = placed->need.depth_mm;
  add_circle (part, HUT_PART_MARK_CENTRE, placed, placed->pocket_at, CENTRE_HOLE_MM);
  if (placed->hardware->pocket_way == HUT_POCKET_BORE)
    leave_shut (assembly, placed, part);
}

static void
mark_sinks (const HutPlacedHardware *placed,
            HutPartSet *set)
{
  if (!placed->hardware->sunk || placed->plate >= 0)
    return;
  for (guint i = 0; i < placed->item->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (placed->item->cuts, HutItemCut, i);
      const HutScrew *screw = cut->role == HUT_CUT_SCREW ? hut_screw_get (cut->thread_mm) : NULL;
      const HutPoint at = hut_placement_apply (&placed->placement, cut->at);
      HutPart *part = find_piece (set, placed->panel, at);

      if (screw != NULL && cut->leaf == placed->leaf && part != NULL
          && (!cut->wood_screw || placed->hardware->bolted))
        add_circle (part, HUT_PART_MARK_SINK, placed, at, screw->sunk_head_mm);
    }
}

void
hut_part_mark_add_all (const HutAssembly *assembly,
                  HutPartSet *set)
{
  for (guint i = 0; i < assembly->hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (assembly->hardware, i);

      mark_pocket (assembly, placed, set);
      mark_sinks (placed, set);
    }
}

gboolean
hut_part_opens_by_hand (const HutPart *self,
                        guint hole)
{
  g_return_val_if_fail (self != NULL, FALSE);

  for (guint i = 0; self->marks != NULL && i < self->marks->len; i++)
    {
      const HutPartMark *mark = g_ptr_array_index (self->marks, i);

      if (mark->kind == HUT_PART_MARK_OUTLINE && mark->hole == hole)
        return TRUE;
    }
  return FALSE;
}
