/* src/export/hut-dxf-r12.c: a page as DXF R12 (AC1009), for readers that know no later version.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * This version knows no unit: the file says in a comment that it is millimetres. Source of the
 * structure: documentation of the reader ezdxf 0.18, "DXF File Structure"; every file of the tests
 * is read with it. */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-dxf-r12.h"
#include "export/hut-dxf-pair.h"
#include "export/hut-tool-path.h"

/* As in the later version: capitals and '_', which every reader takes. */
static const char *const LAYER_NAMES[HUT_LAYER_COUNT] = {
  [HUT_LAYER_SCORE] = "SCORE",
  [HUT_LAYER_POCKET] = "POCKET",
  [HUT_LAYER_DRILL] = "DRILL",
  [HUT_LAYER_CUT_INSIDE] = "CUT_INSIDE",
  [HUT_LAYER_CUT_OUTSIDE] = "CUT_OUTSIDE",
};

/* The standard's indices: 3 green, 5 blue, 1 red. */
static const char *const LAYER_COLOURS[HUT_LAYER_COUNT] = {
  [HUT_LAYER_SCORE] = "3",
  [HUT_LAYER_POCKET] = "6",
  [HUT_LAYER_DRILL] = "2",
  [HUT_LAYER_CUT_INSIDE] = "5",
  [HUT_LAYER_CUT_OUTSIDE] = "1",
};

static const char LINE_TYPES[]
    = "0 ENDSEC|0 SECTION|2 TABLES|0 TABLE|2 LTYPE|70 1|0 LTYPE|2 CONTINUOUS|70 0|3 Solid line|"
      "72 65|73 0|40 0.0|0 ENDTAB|";

static void
append_layers (GString *file)
{
  g_autofree char *count = g_strdup_printf ("70 %d|", HUT_LAYER_COUNT + 1);

  hut_dxf_short (file, "0 TABLE|2 LAYER|");
  hut_dxf_short (file, count);
  hut_dxf_short (file, "0 LAYER|2 0|70 0|62 7|6 CONTINUOUS|");
  for (guint layer = 0; layer < HUT_LAYER_COUNT; layer++)
    {
      hut_dxf_short (file, "0 LAYER|");
      hut_dxf_pair (file, 2, LAYER_NAMES[layer]);
      hut_dxf_short (file, "70 0|");
      hut_dxf_pair (file, 62, LAYER_COLOURS[layer]);
      hut_dxf_short (file, "6 CONTINUOUS|");
    }
  hut_dxf_short (file, "0 ENDTAB|0 ENDSEC|0 SECTION|2 ENTITIES|");
}

static void
begin_polyline (GString *file,
                const char *layer,
                gboolean closed)
{
  hut_dxf_pair (file, 0, "POLYLINE");
  hut_dxf_pair (file, 8, layer);
  hut_dxf_pair (file, 66, "1");
  hut_dxf_point_3 (file, 10, (HutPoint) { 0, 0 });
  hut_dxf_pair (file, 70, closed ? "1" : "0");
}

static void
append_vertex (GString *file,
               const char *layer,
               HutPoint p,
               double bulge)
{
  hut_dxf_pair (file, 0, "VERTEX");
  hut_dxf_pair (file, 8, layer);
  hut_dxf_point_3 (file, 10, p);
  if (bulge != 0.0)
    hut_dxf_real (file, 42, bulge, HUT_DXF_BULGE_DECIMALS);
}

static void
end_polyline (GString *file,
              const char *layer)
{
  hut_dxf_pair (file, 0, "SEQEND");
  hut_dxf_pair (file, 8, layer);
}

static void
append_closed (GString *file,
               const HutToolPath *path)
{
  const char *layer = LAYER_NAMES[path->layer];
  HutPoint centre;
  double radius_mm;

  if (hut_path_get_circle (path->closed, &centre, &radius_mm))
    {
      hut_dxf_pair (file, 0, "CIRCLE");
      hut_dxf_pair (file, 8, layer);
      hut_dxf_point_3 (file, 10, centre);
      hut_dxf_real (file, 40, radius_mm, HUT_WRITE_DECIMALS);
      return;
    }
  begin_polyline (file, layer, TRUE);
  for (guint i = 0; i < hut_path_get_count (path->closed); i++)
    append_vertex (file, layer, hut_path_get (path->closed, i)->p,
                   hut_path_get (path->closed, i)->bulge);
  end_polyline (file, layer);
}

static void
append_strokes (GString *file,
                const HutToolPath *path)
{
  for (guint i = 0; i < path->strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (path->strokes, i);

      begin_polyline (file, LAYER_NAMES[path->layer], FALSE);
      for (guint k = 0; k < stroke->len; k++)
        append_vertex (file, LAYER_NAMES[path->layer], g_array_index (stroke, HutPoint, k), 0.0);
      end_polyline (file, LAYER_NAMES[path->layer]);
    }
}

static void
append_chains (GString *file,
               const HutToolPath *path,
               const GPtrArray *chains)
{
  const char *layer = LAYER_NAMES[path->layer];

  for (guint i = 0; i < chains->len; i++)
    {
      const GArray *chain = g_ptr_array_index (chains, i);

      begin_polyline (file, layer, FALSE);
      for (guint k = 0; k < chain->len; k++)
        {
          const HutSegment *segment = &g_array_index (chain, HutSegment, k);

          append_vertex (file, layer, segment->start, segment->bulge);
        }
      append_vertex (file, layer, g_array_index (chain, HutSegment, chain->len - 1).end, 0.0);
      end_polyline (file, layer);
    }
}

GBytes *
hut_write_page_dxf_r12 (const HutWritePage *page,
                        GError **error)
{
  g_return_val_if_fail (page != NULL && page->paths != NULL, NULL);

  GString *file = g_string_new (NULL);
  const HutRect bounds = hut_tool_paths_bounds (page->paths);
  const char *note = hut_write_entry_note (page->cutter);

  hut_dxf_comment (file, "All numbers are millimetres.");
  if (page->mark != NULL)
    hut_dxf_comment (file, page->mark);
  if (note != NULL)
    hut_dxf_comment (file, note);
  hut_dxf_short (file, "0 SECTION|2 HEADER|9 $ACADVER|1 AC1009|9 $EXTMIN|");
  hut_dxf_point_3 (file, 10, (HutPoint) { bounds.u0, bounds.v0 });
  hut_dxf_short (file, "9 $EXTMAX|");
  hut_dxf_point_3 (file, 10, (HutPoint) { bounds.u1, bounds.v1 });
  hut_dxf_short (file, LINE_TYPES);
  append_layers (file);
  for (guint i = 0; i < page->paths->len; i++)
    {
      const HutToolPath *path = g_ptr_array_index (page->paths, i);

      g_autoptr(GPtrArray) chains
          = path->closed != NULL ? hut_tool_path_dup_chains (path, page->cutter->kind) : NULL;

      if (chains != NULL)
        append_chains (file, path, chains);
      else if (path->closed != NULL)
        append_closed (file, path);
      else
        append_strokes (file, path);
    }
  hut_dxf_short (file, "0 ENDSEC|0 EOF|");
  return g_string_free_to_bytes (file);
}
