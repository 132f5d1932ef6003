/* src/export/hut-dxf.c: a sheet as DXF R2000 (AC1015) in millimetres.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The file is a list of pairs: group code, value, each on a line of its own. Fixed parts stand
 * below in a short notation: '|' ends a pair, the first blank parts its code from its value.
 * Source of the structure: documentation of the reader ezdxf 0.18, "DXF File Structure"; checked by
 * reading every written file with it in the tests. */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-dxf-pair.h"
#include "export/hut-tool-path.h"
#include "export/hut-write.h"
#include <math.h>

/* Handles below this one belong to the fixed parts. */
#define FIRST_HANDLE 0x40u

/* Names of layers: letters and '_' only, which every version reads. Colours are the standard's
 * indices: 3 green, 5 blue, 1 red. Own choice, one per operation. */
static const char *const LAYER_NAMES[HUT_LAYER_COUNT] = {
  [HUT_LAYER_SCORE] = "SCORE",
  [HUT_LAYER_POCKET] = "POCKET",
  [HUT_LAYER_DRILL] = "DRILL",
  [HUT_LAYER_CUT_INSIDE] = "CUT_INSIDE",
  [HUT_LAYER_CUT_OUTSIDE] = "CUT_OUTSIDE",
};

static const char BEFORE_SEED[] = "0 SECTION|2 HEADER|9 $ACADVER|1 AC1015|9 $HANDSEED|";
static const char AFTER_SEED[] = "9 $INSUNITS|70 4|9 $MEASUREMENT|70 1|";

static const char TABLES[]
    = "0 ENDSEC|0 SECTION|2 CLASSES|0 ENDSEC|"
      "0 SECTION|2 TABLES|"
      "0 TABLE|2 VPORT|5 8|330 0|100 AcDbSymbolTable|70 0|0 ENDTAB|"
      "0 TABLE|2 LTYPE|5 5|330 0|100 AcDbSymbolTable|70 3|"
      "0 LTYPE|5 14|330 5|100 AcDbSymbolTableRecord|100 AcDbLinetypeTableRecord|2 ByBlock|70 0|3 |"
      "72 65|73 0|40 0.0|"
      "0 LTYPE|5 15|330 5|100 AcDbSymbolTableRecord|100 AcDbLinetypeTableRecord|2 ByLayer|70 0|3 |"
      "72 65|73 0|40 0.0|"
      "0 LTYPE|5 16|330 5|100 AcDbSymbolTableRecord|100 AcDbLinetypeTableRecord|2 Continuous|70 0|"
      "3 |72 65|73 0|40 0.0|0 ENDTAB|"
      "0 TABLE|2 LAYER|5 2|330 0|100 AcDbSymbolTable|70 6|"
      "0 LAYER|5 30|330 2|100 AcDbSymbolTableRecord|100 AcDbLayerTableRecord|2 0|70 0|62 7|"
      "6 Continuous|"
      "0 LAYER|5 31|330 2|100 AcDbSymbolTableRecord|100 AcDbLayerTableRecord|2 SCORE|70 0|62 3|"
      "6 Continuous|"
      "0 LAYER|5 34|330 2|100 AcDbSymbolTableRecord|100 AcDbLayerTableRecord|2 POCKET|70 0|62 6|"
      "6 Continuous|"
      "0 LAYER|5 35|330 2|100 AcDbSymbolTableRecord|100 AcDbLayerTableRecord|2 DRILL|70 0|62 2|"
      "6 Continuous|"
      "0 LAYER|5 32|330 2|100 AcDbSymbolTableRecord|100 AcDbLayerTableRecord|2 CUT_INSIDE|70 0|"
      "62 5|6 Continuous|"
      "0 LAYER|5 33|330 2|100 AcDbSymbolTableRecord|100 AcDbLayerTableRecord|2 CUT_OUTSIDE|70 0|"
      "62 1|6 Continuous|0 ENDTAB|"
      "0 TABLE|2 STYLE|5 3|330 0|100 AcDbSymbolTable|70 1|"
      "0 STYLE|5 13|330 3|100 AcDbSymbolTableRecord|100 AcDbTextStyleTableRecord|2 Standard|70 0|"
      "40 0.0|41 1.0|50 0.0|71 0|42 2.5|3 txt|4 |0 ENDTAB|"
      "0 TABLE|2 VIEW|5 6|330 0|100 AcDbSymbolTable|70 0|0 ENDTAB|"
      "0 TABLE|2 UCS|5 7|330 0|100 AcDbSymbolTable|70 0|0 ENDTAB|"
      "0 TABLE|2 APPID|5 9|330 0|100 AcDbSymbolTable|70 1|"
      "0 APPID|5 17|330 9|100 AcDbSymbolTableRecord|100 AcDbRegAppTableRecord|2 ACAD|70 0|0 ENDTAB|"
      "0 TABLE|2 DIMSTYLE|5 A|330 0|100 AcDbSymbolTable|70 1|100 AcDbDimStyleTable|"
      "0 DIMSTYLE|105 27|330 A|100 AcDbSymbolTableRecord|100 AcDbDimStyleTableRecord|2 Standard|"
      "70 0|0 ENDTAB|"
      "0 TABLE|2 BLOCK_RECORD|5 1|330 0|100 AcDbSymbolTable|70 2|"
      "0 BLOCK_RECORD|5 1F|330 1|100 AcDbSymbolTableRecord|100 AcDbBlockTableRecord|2 *Model_Space|"
      "0 BLOCK_RECORD|5 1B|330 1|100 AcDbSymbolTableRecord|100 AcDbBlockTableRecord|2 *Paper_Space|"
      "0 ENDTAB|0 ENDSEC|"
      "0 SECTION|2 BLOCKS|"
      "0 BLOCK|5 20|330 1F|100 AcDbEntity|8 0|100 AcDbBlockBegin|2 *Model_Space|70 0|10 0.0|20 0.0|"
      "30 0.0|3 *Model_Space|1 |0 ENDBLK|5 21|330 1F|100 AcDbEntity|8 0|100 AcDbBlockEnd|"
      "0 BLOCK|5 1C|330 1B|100 AcDbEntity|67 1|8 0|100 AcDbBlockBegin|2 *Paper_Space|70 0|10 0.0|"
      "20 0.0|30 0.0|3 *Paper_Space|1 |0 ENDBLK|5 1D|330 1B|100 AcDbEntity|67 1|8 0|"
      "100 AcDbBlockEnd|0 ENDSEC|"
      "0 SECTION|2 ENTITIES|";

static const char TAIL[] = "0 ENDSEC|0 SECTION|2 OBJECTS|"
                           "0 DICTIONARY|5 C|330 0|100 AcDbDictionary|281 1|3 ACAD_GROUP|350 D|"
                           "0 DICTIONARY|5 D|330 C|100 AcDbDictionary|281 1|0 ENDSEC|0 EOF|";

static void
append_handle (GString *file,
               guint handle)
{
  g_string_append_printf (file, "%3d\r\n%X\r\n", 5, handle);
}

static void
begin_entity (GString *file,
              const char *type,
              guint *handle,
              HutLayer layer,
              const char *subclass)
{
  hut_dxf_pair (file, 0, type);
  append_handle (file, (*handle)++);
  hut_dxf_short (file, "330 1F|100 AcDbEntity|");
  hut_dxf_pair (file, 8, LAYER_NAMES[layer]);
  hut_dxf_pair (file, 100, subclass);
}

static void
begin_polyline (GString *file,
                guint *handle,
                HutLayer layer,
                guint count,
                gboolean closed)
{
  g_autofree char *count_text = g_strdup_printf ("%u", count);

  begin_entity (file, "LWPOLYLINE", handle, layer, "AcDbPolyline");
  hut_dxf_pair (file, 90, count_text);
  hut_dxf_pair (file, 70, closed ? "1" : "0");
  hut_dxf_real (file, 43, 0.0, HUT_WRITE_DECIMALS);
}

static void
append_closed (GString *file,
               guint *handle,
               const HutToolPath *path)
{
  HutPoint centre;
  double radius_mm;
  const guint count = hut_path_get_count (path->closed);

  if (hut_path_get_circle (path->closed, &centre, &radius_mm))
    {
      begin_entity (file, "CIRCLE", handle, path->layer, "AcDbCircle");
      hut_dxf_point_3 (file, 10, centre);
      hut_dxf_real (file, 40, radius_mm, HUT_WRITE_DECIMALS);
      return;
    }
  begin_polyline (file, handle, path->layer, count, TRUE);
  for (guint i = 0; i < count; i++)
    {
      const HutVertex *vertex = hut_path_get (path->closed, i);

      hut_dxf_point (file, 10, vertex->p);
      if (vertex->bulge != 0.0)
        hut_dxf_real (file, 42, vertex->bulge, HUT_DXF_BULGE_DECIMALS);
    }
}

static void
append_strokes (GString *file,
                guint *handle,
                const HutToolPath *path)
{
  for (guint i = 0; i < path->strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (path->strokes, i);

      begin_polyline (file, handle, path->layer, stroke->len, FALSE);
      for (guint k = 0; k < stroke->len; k++)
        hut_dxf_point (file, 10, g_array_index (stroke, HutPoint, k));
    }
}

static void
append_chains (GString *file,
               guint *handle,
               const HutToolPath *path,
               const GPtrArray *chains)
{
  for (guint i = 0; i < chains->len; i++)
    {
      const GArray *chain = g_ptr_array_index (chains, i);

      begin_polyline (file, handle, path->layer, chain->len + 1, FALSE);
      for (guint k = 0; k <= chain->len; k++)
        {
          const HutSegment *segment
              = &g_array_index (chain, HutSegment, MIN (k, chain->len - 1));

          hut_dxf_point (file, 10, k < chain->len ? segment->start : segment->end);
          if (k < chain->len && segment->bulge != 0.0)
            hut_dxf_real (file, 42, segment->bulge, HUT_DXF_BULGE_DECIMALS);
        }
    }
}

static guint
count_entities (const GPtrArray *paths,
                HutCutterKind cutter)
{
  guint count = 0;

  for (guint i = 0; i < paths->len; i++)
    {
      const HutToolPath *path = g_ptr_array_index (paths, i);

      if (path->closed == NULL)
        count += path->strokes->len;
      else
        {
          g_autoptr(GPtrArray) chains = hut_tool_path_dup_chains (path, cutter);

          count += chains != NULL ? chains->len : 1;
        }
    }
  return count;
}

GBytes *
hut_write_page_dxf (const HutWritePage *page,
                    GError **error)
{
  g_return_val_if_fail (page != NULL && page->paths != NULL, NULL);

  const GPtrArray *paths = page->paths;
  GString *file = g_string_new (NULL);
  const HutRect bounds = hut_tool_paths_bounds (paths);
  const char *note = hut_write_entry_note (page->cutter);
  guint handle = FIRST_HANDLE;

  if (page->mark != NULL)
    hut_dxf_comment (file, page->mark);
  if (note != NULL)
    hut_dxf_comment (file, note);
  hut_dxf_short (file, BEFORE_SEED);
  append_handle (file, FIRST_HANDLE + count_entities (paths, page->cutter->kind));
  hut_dxf_short (file, AFTER_SEED);
  hut_dxf_pair (file, 9, "$EXTMIN");
  hut_dxf_point_3 (file, 10, (HutPoint) { bounds.u0, bounds.v0 });
  hut_dxf_pair (file, 9, "$EXTMAX");
  hut_dxf_point_3 (file, 10, (HutPoint) { bounds.u1, bounds.v1 });
  hut_dxf_short (file, TABLES);
  for (guint i = 0; i < paths->len; i++)
    {
      const HutToolPath *path = g_ptr_array_index (paths, i);

      g_autoptr(GPtrArray) chains
          = path->closed != NULL ? hut_tool_path_dup_chains (path, page->cutter->kind) : NULL;

      if (chains != NULL)
        append_chains (file, &handle, path, chains);
      else if (path->closed != NULL)
        append_closed (file, &handle, path);
      else
        append_strokes (file, &handle, path);
    }
  hut_dxf_short (file, TAIL);
  return g_string_free_to_bytes (file);
}

GBytes *
hut_write_marked_dxf (const HutAssembly *assembly,
                      const HutPartSet *parts,
                      const HutSheet *sheet,
                      const char *mark,
                      GError **error)
{
  return hut_write_sheet_page (assembly, parts, sheet, mark, hut_write_page_dxf, error);
}

GBytes *
hut_write_sheet_dxf (const HutAssembly *assembly,
                     const HutPartSet *parts,
                     const HutSheet *sheet,
                     GError **error)
{
  return hut_write_marked_dxf (assembly, parts, sheet, NULL, error);
}
