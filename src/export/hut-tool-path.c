/* src/export/hut-tool-path.c: what the tool does on a sheet, in the order in which it does it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-tool-path.h"
#include "export/hut-tool-lead.h"
#include "export/hut-tool-tab.h"
#include "geom/hut-flatten.h"
#include "sheets/hut-cut-order.h"
#include "sheets/hut-label.h"

/* Parts up to this size tip over and fall through the bars of a bed: they are cut first where
 * nothing
 * holds them, mm2. Own choice: a square decimetre. */
#define SMALL_PART_MM2 10000.0

void
hut_tool_path_free (HutToolPath *self)
{
  if (self == NULL)
    return;
  g_free (self->id);
  g_clear_pointer (&self->closed, hut_path_free);
  g_clear_pointer (&self->strokes, g_ptr_array_unref);
  g_clear_pointer (&self->tabs, g_array_unref);
  g_free (self);
}

/* @id: (transfer full) */
static void
take_closed (GPtrArray *cuts,
             HutLayer layer,
             char *id,
             const HutPath *path)
{
  HutToolPath *self = g_new0 (HutToolPath, 1);

  self->layer = layer;
  self->id = id;
  self->closed = hut_path_copy (path);
  self->outline = layer == HUT_LAYER_CUT_OUTSIDE;
  g_ptr_array_add (cuts, self);
}

static void
append_label (GPtrArray *layer_paths,
              const HutPart *part,
              const HutPlacement *placement)
{
  g_autoptr(HutLabel) label = hut_label_new (part);

  if (label == NULL)
    return;

  HutToolPath *self = g_new0 (HutToolPath, 1);

  self->layer = HUT_LAYER_SCORE;
  self->id = g_strdup_printf ("%s-label", part->id);
  self->strokes = g_ptr_array_ref (label->strokes);
  for (guint i = 0; i < self->strokes->len; i++)
    {
      GArray *stroke = g_ptr_array_index (self->strokes, i);

      for (guint k = 0; k < stroke->len; k++)
        {
          HutPoint *p = &g_array_index (stroke, HutPoint, k);

          *p = hut_placement_apply (placement, *p);
        }
    }
  g_ptr_array_add (layer_paths, self);
}

/* The line of a closed path as a stroke that comes back to its start. */
static void
append_scored (GPtrArray *layer_paths,
               char *id,
               const HutPath *path)
{
  HutToolPath *self = g_new0 (HutToolPath, 1);
  GArray *stroke = hut_path_dup_flat (path, NULL);

  self->layer = HUT_LAYER_SCORE;
  self->id = id;
  self->strokes = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  if (stroke != NULL && stroke->len > 0)
    {
      const HutPoint first = g_array_index (stroke, HutPoint, 0);

      g_array_append_val (stroke, first);
      g_ptr_array_add (self->strokes, stroke);
    }
  g_ptr_array_add (layer_paths, self);
}

/* The middle of the tool in a centre mark; NULL when the tool is as wide as the mark. */
static HutPath *
dup_centre_cut (const HutPath *mark,
                double kerf_mm)
{
  HutPoint centre;
  double radius_mm;

  if (!hut_path_get_circle (mark, &centre, &radius_mm) || radius_mm - kerf_mm / 2.0 < HUT_GRID_MM)
    return NULL;
  return hut_path_new_circle (centre, radius_mm - kerf_mm / 2.0);
}

static void
append_marks (GPtrArray *scores,
              GPtrArray *cuts,
              const HutPart *part,
              const HutPlacement *placement)
{
  for (guint i = 0; part->marks != NULL && i < part->marks->len; i++)
    {
      const HutPartMark *mark = g_ptr_array_index (part->marks, i);
      g_autoptr(HutPath) placed = hut_path_dup_placed (mark->path, placement);
      g_autoptr(HutPath) centre = NULL;

      switch (mark->kind)
        {
        case HUT_PART_MARK_POCKET:
        case HUT_PART_MARK_SINK:
          take_closed (cuts, HUT_LAYER_POCKET,
                       g_strdup_printf ("%s-%s-%u-%s", part->id,
                                        mark->kind == HUT_PART_MARK_POCKET ? "pocket" : "sink",
                                        i + 1,
                                        mark->face == HUT_FACE_INSIDE ? "inside" : "outside"),
                       placed);
          break;
        case HUT_PART_MARK_CENTRE:
          centre = dup_centre_cut (placed, part->stock->kerf_mm);
          if (centre != NULL)
            take_closed (cuts, HUT_LAYER_DRILL,
                         g_strdup_printf ("%s-drill-%u", part->id, i + 1), centre);
          break;
        case HUT_PART_MARK_OUTLINE:
        default:
          append_scored (scores, g_strdup_printf ("%s-by-hand-%u", part->id, i + 1),
                         placed);
          break;
        }
    }
}

static gboolean
append_part (GPtrArray *scores,
             GPtrArray *cuts,
             const HutPartSet *parts,
             const HutLaidPart *laid,
             HutCutterKind cutter,
             GError **error)
{
  const HutPart *part = g_ptr_array_index (parts->parts, laid->part);
  g_autoptr(HutRegion) way = hut_part_dup_tool_way (part, cutter, error);
  g_autoptr(HutRegion) cut = NULL;

  if (way == NULL)
    {
      g_prefix_error (error, "part %s: ", part->id);
      return FALSE;
    }
  cut = hut_region_dup_placed (way, &laid->placement);
  append_label (scores, part, &laid->placement);
  append_marks (scores, cuts, part, &laid->placement);
  for (guint i = 0; i < cut->holes->len; i++)
    if (!hut_part_opens_by_hand (part, i))
      take_closed (cuts, HUT_LAYER_CUT_INSIDE, g_strdup_printf ("%s-inside-%u", part->id, i + 1),
                   g_ptr_array_index (cut->holes, i));
  take_closed (cuts, HUT_LAYER_CUT_OUTSIDE,
               g_strdup_printf ("%s-outside", part->id), cut->outer);
  return TRUE;
}

/* ---- the order ------------------------------------------------------------------------------- */

/* The same path, begun at another corner. (transfer full) */
static HutPath *
dup_begun (const HutPath *path,
           guint start)
{
  const guint count = hut_path_get_count (path);
  HutPath *begun = hut_path_new ();

  for (guint i = 0; i < count; i++)
    {
      const HutVertex *vertex = hut_path_get (path, (start + i) % count);

      hut_path_append (begun, vertex->p, vertex->bulge, vertex->kind);
    }
  return begun;
}

/* A part that lies in a hole of another one drops out with the hole: its outline is cut inside,
 * too. */
static void
bring_nested_outlines_forward (GPtrArray *cuts)
{
  for (guint i = 0; i < cuts->len; i++)
    {
      HutToolPath *inner = g_ptr_array_index (cuts, i);
      const HutPoint p = hut_path_get (inner->closed, 0)->p;

      for (guint k = 0; inner->outline && k < cuts->len; k++)
        {
          const HutToolPath *outer = g_ptr_array_index (cuts, k);

          if (k != i && outer->outline && hut_path_contains (outer->closed, p))
            inner->layer = HUT_LAYER_CUT_INSIDE;
        }
    }
}

/* Lower ranks are cut first. */
static guint
rank_of (const HutToolPath *cut,
         gboolean held)
{
  const guint large = !held && cut->layer == HUT_LAYER_CUT_OUTSIDE
                      && hut_path_area_mm2 (cut->closed) > SMALL_PART_MM2;

  return 2 * cut->layer + large;
}

/* @cuts: all that is closed, in the order of the parts. Sorts it as it is cut and begins each path
 * where the tool comes from. @held: by tabs. */
static void
sort_cuts (GPtrArray *cuts,
           gboolean held)
{
  g_autoptr(GPtrArray) paths = g_ptr_array_new ();
  g_autoptr(GPtrArray) unsorted = g_ptr_array_new (); /* lends what cuts owns */
  g_autofree guint *ranks = g_new0 (guint, cuts->len + 1);

  for (guint i = 0; i < cuts->len; i++)
    {
      const HutToolPath *cut = g_ptr_array_index (cuts, i);

      g_ptr_array_add (paths, cut->closed);
      g_ptr_array_add (unsorted, (gpointer) cut);
      ranks[i] = rank_of (cut, held);
    }

  g_autoptr(GArray) steps = hut_cut_order_new (paths, ranks, (HutPoint) { 0, 0 });

  for (guint i = 0; i < steps->len; i++)
    {
      const HutCutStep step = g_array_index (steps, HutCutStep, i);
      HutToolPath *cut = g_ptr_array_index (unsorted, step.path);
      HutPath *begun = dup_begun (cut->closed, step.start);

      g_clear_pointer (&cut->closed, hut_path_free);
      cut->closed = begun;
      cuts->pdata[i] = cut;
    }
}

GPtrArray *
hut_sheet_dup_tool_paths (const HutPartSet *parts,
                          const HutSheet *sheet,
                          GError **error)
{
  g_return_val_if_fail (parts != NULL && sheet != NULL, NULL);

  g_autoptr(GPtrArray) scores
      = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_tool_path_free);
  g_autoptr(GPtrArray) cuts
      = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_tool_path_free);

  for (guint i = 0; i < sheet->laid->len; i++)
    if (!append_part (scores, cuts, parts, &g_array_index (sheet->laid, HutLaidPart, i),
                      sheet->cutter->kind, error))
      return NULL;
  bring_nested_outlines_forward (cuts);
  sort_cuts (cuts, sheet->cutter->tabs);
  hut_tool_paths_add_leads (cuts, sheet->cutter, hut_sheet_usable (sheet->cutter, sheet->stock));
  hut_tool_paths_add_tabs (cuts, sheet->cutter, sheet->stock);
  g_ptr_array_extend_and_steal (scores, g_steal_pointer (&cuts));
  return g_steal_pointer (&scores);
}
