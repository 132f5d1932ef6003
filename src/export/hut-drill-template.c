/* src/export/hut-drill-template.c: where a part is bored by hand, in full size on paper.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-drill-template.h"
#include "export/hut-pdf.h"
#include "format/hut-number.h"
#include "sheets/hut-stroke-font.h"

/* Own choice, all of them, mm: arms of a cross beyond its circle, letters, and their distance. */
#define CROSS_MM 4.0
#define LETTER_MM 2.5
#define BESIDE_MM 1.5
#define ROWS 3 /* of letters of works that lie in each other (count) */

static const char *const NOTES[] = {
  "Drill template. Print at 100 percent / actual size.",
  "If bar and square are not 100 mm wide and high - do not use it.",
  "It shows the face that its name says. Arrow of the label is up.",
  "Thick line - edge of the part. Prick the crosses through the paper.",
  "Letters - diameter and depth in mm. Try the depth on waste first.",
  "Clamp the part. Wear eye protection. Local rules come first.",
  NULL,
};

/* The template's frame: mirrored for the inside, its corner in (0, 0). */
static HutPlacement
placement_for (const HutPart *part,
               HutFace face)
{
  const HutRect box = hut_region_bounds (part->region);
  const gboolean inside = face == HUT_FACE_INSIDE;

  return (HutPlacement) { .mirrored = inside,
                          .shift = { inside ? box.u1 : -box.u0, -box.v0 } };
}

gboolean
hut_part_has_hand_work (const HutPart *part,
                        HutFace face)
{
  g_return_val_if_fail (part != NULL, FALSE);

  for (guint i = 0; part->marks != NULL && i < part->marks->len; i++)
    if (((const HutPartMark *) g_ptr_array_index (part->marks, i))->face == face)
      return TRUE;
  return FALSE;
}

/* @path: (transfer full) */
static void
take_closed (GPtrArray *paths,
             HutLayer layer,
             char *id,
             HutPath *path)
{
  HutToolPath *self = g_new0 (HutToolPath, 1);

  self->layer = layer;
  self->id = id;
  self->closed = path;
  g_ptr_array_add (paths, self);
}

static void
append_line (GPtrArray *strokes,
             HutPoint a,
             HutPoint b)
{
  GArray *line = g_array_new (FALSE, FALSE, sizeof (HutPoint));

  g_array_append_val (line, a);
  g_array_append_val (line, b);
  g_ptr_array_add (strokes, line);
}

/* "2 D12 T3.5": number, diameter or width, depth; "C" a centre mark, "S" a countersink, "H" a hole
 * to
 * open. (transfer full) */
static char *
dup_text (const HutPartMark *mark,
          guint number,
          double width_mm)
{
  char width[HUT_NUMBER_SIZE], depth[HUT_NUMBER_SIZE];

  hut_number_fixed (width, width_mm, 2);
  hut_number_fixed (depth, mark->depth_mm, 2);
  switch (mark->kind)
    {
    case HUT_PART_MARK_POCKET:
      return g_strdup_printf ("%u D%s DEEP %s", number, width, depth);
    case HUT_PART_MARK_CENTRE:
      return g_strdup_printf ("%u CENTRE", number);
    case HUT_PART_MARK_SINK:
      return g_strdup_printf ("%u SINK D%s", number, width);
    case HUT_PART_MARK_OUTLINE:
    default:
      return g_strdup_printf ("%u OPEN BY HAND D%s", number, width);
    }
}

static void
append_cross (GPtrArray *paths,
              const HutPartMark *mark,
              guint number,
              HutRect box)
{
  const HutPoint centre = { (box.u0 + box.u1) / 2.0, (box.v0 + box.v1) / 2.0 };
  const double arm_u_mm = (box.u1 - box.u0) / 2.0 + CROSS_MM;
  const double arm_v_mm = (box.v1 - box.v0) / 2.0 + CROSS_MM;
  g_autofree char *text = dup_text (mark, number, box.u1 - box.u0);
  g_autoptr(GPtrArray) letters = hut_stroke_text_new (text, LETTER_MM);
  /* A centre mark lies in its pocket: their letters stand in rows. */
  const double row_mm = (number - 1) % ROWS * 2.0 * LETTER_MM;
  const HutPoint at = { box.u1 + BESIDE_MM, centre.v + BESIDE_MM - row_mm };
  HutToolPath *self = g_new0 (HutToolPath, 1);

  self->layer = HUT_LAYER_DRILL;
  self->id = g_strdup_printf ("cross-%u", number);
  self->strokes = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  append_line (self->strokes, (HutPoint) { centre.u - arm_u_mm, centre.v },
               (HutPoint) { centre.u + arm_u_mm, centre.v });
  append_line (self->strokes, (HutPoint) { centre.u, centre.v - arm_v_mm },
               (HutPoint) { centre.u, centre.v + arm_v_mm });
  for (guint i = 0; i < letters->len; i++)
    {
      GArray *line = g_array_copy (g_ptr_array_index (letters, i));

      for (guint k = 0; k < line->len; k++)
        {
          g_array_index (line, HutPoint, k).u += at.u;
          g_array_index (line, HutPoint, k).v += at.v;
        }
      g_ptr_array_add (self->strokes, line);
    }
  g_ptr_array_add (paths, self);
}

GPtrArray *
hut_drill_template_dup_paths (const HutPart *part,
                              HutFace face,
                              HutPoint *size_mm)
{
  g_return_val_if_fail (part != NULL && size_mm != NULL, NULL);

  const HutPlacement placement = placement_for (part, face);
  const HutRect box = hut_region_bounds (part->region);
  GPtrArray *paths = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_tool_path_free);
  guint number = 0;

  *size_mm = (HutPoint) { box.u1 - box.u0, box.v1 - box.v0 };
  take_closed (paths, HUT_LAYER_CUT_OUTSIDE, g_strdup ("edge"),
               hut_path_dup_placed (part->region->outer, &placement));
  for (guint i = 0; i < part->region->holes->len; i++)
    take_closed (paths, HUT_LAYER_CUT_INSIDE, g_strdup_printf ("hole-%u", i + 1),
                 hut_path_dup_placed (g_ptr_array_index (part->region->holes, i), &placement));
  for (guint i = 0; part->marks != NULL && i < part->marks->len; i++)
    {
      const HutPartMark *mark = g_ptr_array_index (part->marks, i);

      if (mark->face != face)
        continue;
      take_closed (paths, HUT_LAYER_POCKET, g_strdup_printf ("work-%u", ++number),
                   hut_path_dup_placed (mark->path, &placement));
      append_cross (paths, mark, number,
                    hut_path_bounds (((HutToolPath *) g_ptr_array_index (paths, paths->len - 1))
                                         ->closed));
    }
  return paths;
}

GBytes *
hut_write_drill_template (const HutAssembly *assembly,
                          const HutPart *part,
                          HutFace face,
                          const char *name,
                          const char *mark,
                          GError **error)
{
  g_return_val_if_fail (assembly != NULL && part != NULL && name != NULL, NULL);

  HutPoint size_mm;
  g_autoptr(GPtrArray) paths = hut_drill_template_dup_paths (part, face, &size_mm);
  const HutWritePage page = {
    .paths = paths,
    .width_mm = size_mm.u,
    .depth_mm = size_mm.v,
    .design_name = assembly->design->name,
    .name = name,
    .mark = mark,
    .stock = part->stock,
    .cutter = &assembly->design->cutter,
    .notes = NOTES,
  };

  return hut_write_page_pdf_a4 (&page, error);
}
