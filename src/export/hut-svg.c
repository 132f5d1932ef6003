/* src/export/hut-svg.c: a sheet as SVG, one user unit = 1 mm.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Source of the format: W3C, "Scalable Vector Graphics (SVG) 1.1", sections 7.10 (units), 8.3 (path
 * data), 8.3.8 (arcs). SVG's y points down: y = depth - v, which turns the sense of arc flags. */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "format/hut-number.h"
#include "export/hut-tool-path.h"
#include "export/hut-write.h"
#include "export/hut-xml-out.h"
#include <math.h>

/* Width of a drawn line, mm. Own choice: thin, yet seen on a screen; no meaning for cutting. */
#define STROKE_MM 0.1

/* Longer arcs are written in equal pieces, rad. Own choice: SVG gives an arc by its ends and
 * radius, and near a half circle the rounding of those moves the middle by the rounding's root. */
#define ARC_PIECE_RAD 1.75

/* Group id, title and colour per layer. Colours: own choice, apart for colour-blind eyes; the id
 * and the title say the same, so that nobody has to go by colour. */
static const struct
{
  const char *id, *title, *colour;
} LAYERS[HUT_LAYER_COUNT] = {
  [HUT_LAYER_SCORE] = { "score", "Score, first: names of the parts", "#00915f" },
  [HUT_LAYER_POCKET]
  = { "pocket", "Pocket outlines: bored by hand from the face in the name, not for the tool",
      "#8a5fb5" },
  [HUT_LAYER_DRILL] = { "drill", "Drill marks, second: centres, cut through", "#b08000" },
  [HUT_LAYER_CUT_INSIDE] = { "cut-inside", "Cut inside, third: holes", "#0060b8" },
  [HUT_LAYER_CUT_OUTSIDE] = { "cut-outside", "Cut outside, last: outlines", "#cc4c00" },
};

/* Frame of the sheet while its paths are written. */
typedef struct
{
  HutXmlOut *xml;
  double depth_mm;
  HutCutterKind cutter;
} Page;

static void
append_number (GString *text,
               double value)
{
  char buffer[HUT_NUMBER_SIZE];

  g_string_append (text, hut_number_fixed (buffer, value, HUT_WRITE_DECIMALS));
}

static void
append_point (GString *text,
              const Page *page,
              HutPoint p)
{
  append_number (text, p.u);
  g_string_append_c (text, ' ');
  append_number (text, page->depth_mm - p.v);
}

static void
append_arc (GString *text,
            const Page *page,
            const HutSegment *arc,
            HutPoint centre,
            double radius_mm)
{
  const double sweep_rad = 4.0 * atan (arc->bulge);
  const double start_rad = atan2 (arc->start.v - centre.v, arc->start.u - centre.u);
  const guint count = (guint) ceil (fabs (sweep_rad) / ARC_PIECE_RAD);

  for (guint i = 1; i <= count; i++)
    {
      const double at_rad = start_rad + sweep_rad * i / count;
      const HutPoint p = {
        centre.u + radius_mm * cos (at_rad), centre.v + radius_mm * sin (at_rad)
      };

      g_string_append (text, " A ");
      append_number (text, radius_mm);
      g_string_append_c (text, ' ');
      append_number (text, radius_mm);
      g_string_append (text, arc->bulge > 0.0 ? " 0 0 0 " : " 0 0 1 ");
      append_point (text, page, i == count ? arc->end : p);
    }
}

static char *
dup_closed_data (const Page *page,
                 const HutPath *path)
{
  GString *text = g_string_new ("M ");
  const guint count = hut_path_get_count (path);

  append_point (text, page, hut_path_get (path, 0)->p);
  for (guint i = 0; i < count; i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);
      HutPoint centre;
      double radius_mm;

      if (segment.bulge != 0.0 && hut_segment_get_circle (&segment, &centre, &radius_mm))
        append_arc (text, page, &segment, centre, radius_mm);
      else if (i + 1 < count) /* Z draws the last line */
        {
          g_string_append (text, " L ");
          append_point (text, page, segment.end);
        }
    }
  g_string_append (text, " Z");
  return g_string_free (text, FALSE);
}

static char *
dup_stroke_data (const Page *page,
                 const GPtrArray *strokes)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < strokes->len; i++)
    {
      const GArray *stroke = g_ptr_array_index (strokes, i);

      for (guint k = 0; k < stroke->len; k++)
        {
          g_string_append (text, k > 0 ? " L " : i > 0 ? " M " : "M ");
          append_point (text, page, g_array_index (stroke, HutPoint, k));
        }
    }
  return g_string_free (text, FALSE);
}

/* Open pieces: lead-in, and the outline without its tabs. */
static char *
dup_chain_data (const Page *page,
                const GPtrArray *chains)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < chains->len; i++)
    {
      const GArray *chain = g_ptr_array_index (chains, i);

      for (guint k = 0; k < chain->len; k++)
        {
          const HutSegment *segment = &g_array_index (chain, HutSegment, k);
          HutPoint centre;
          double radius_mm;

          if (k == 0)
            {
              g_string_append (text, i > 0 ? " M " : "M ");
              append_point (text, page, segment->start);
            }
          if (segment->bulge != 0.0 && hut_segment_get_circle (segment, &centre, &radius_mm))
            append_arc (text, page, segment, centre, radius_mm);
          else
            {
              g_string_append (text, " L ");
              append_point (text, page, segment->end);
            }
        }
    }
  return g_string_free (text, FALSE);
}

static char *
dup_data (const Page *page,
          const HutToolPath *path,
          const GPtrArray *chains)
{
  if (chains != NULL)
    return dup_chain_data (page, chains);
  return path->closed != NULL ? dup_closed_data (page, path->closed)
                              : dup_stroke_data (page, path->strokes);
}

static void
write_number (const Page *page,
              const char *name,
              double value)
{
  char buffer[HUT_NUMBER_SIZE];

  hut_xml_out_text (page->xml, name, hut_number_fixed (buffer, value, HUT_WRITE_DECIMALS));
}

static void
write_element (const Page *page,
               const char *name,
               const char *text)
{
  hut_xml_out_open (page->xml, name);
  hut_xml_out_content (page->xml, text);
  hut_xml_out_close (page->xml);
}

static void
write_tool_path (const Page *page,
                 const HutToolPath *path)
{
  g_autoptr(GPtrArray) chains
      = path->closed != NULL ? hut_tool_path_dup_chains (path, page->cutter) : NULL;
  HutPoint centre;
  double radius_mm;

  if (path->closed != NULL && chains == NULL
      && hut_path_get_circle (path->closed, &centre, &radius_mm))
    {
      hut_xml_out_open (page->xml, "circle");
      hut_xml_out_text (page->xml, "id", path->id);
      write_number (page, "cx", centre.u);
      write_number (page, "cy", page->depth_mm - centre.v);
      write_number (page, "r", radius_mm);
    }
  else
    {
      g_autofree char *data = dup_data (page, path, chains);

      hut_xml_out_open (page->xml, "path");
      hut_xml_out_text (page->xml, "id", path->id);
      hut_xml_out_text (page->xml, "d", data);
    }
  hut_xml_out_close (page->xml);
}

static void
write_layer (const Page *page,
             HutLayer layer,
             const GPtrArray *paths)
{
  hut_xml_out_open (page->xml, "g");
  hut_xml_out_text (page->xml, "id", LAYERS[layer].id);
  hut_xml_out_text (page->xml, "fill", "none");
  hut_xml_out_text (page->xml, "stroke", LAYERS[layer].colour);
  write_number (page, "stroke-width", STROKE_MM);
  write_element (page, "title", LAYERS[layer].title);
  for (guint i = 0; i < paths->len; i++)
    {
      const HutToolPath *path = g_ptr_array_index (paths, i);

      if (path->layer == layer)
        write_tool_path (page, path);
    }
  hut_xml_out_close (page->xml);
}

static void
write_head (const Page *page,
            const HutWritePage *what)
{
  char width[HUT_NUMBER_SIZE], depth[HUT_NUMBER_SIZE];

  hut_number_fixed (width, what->width_mm, HUT_WRITE_DECIMALS);
  hut_number_fixed (depth, what->depth_mm, HUT_WRITE_DECIMALS);

  g_autofree char *width_mm = g_strdup_printf ("%smm", width);
  g_autofree char *depth_mm = g_strdup_printf ("%smm", depth);
  g_autofree char *view_box = g_strdup_printf ("0 0 %s %s", width, depth);
  const char *design_name = what->design_name != NULL ? what->design_name : "";
  g_autofree char *title = g_strdup_printf ("%s: %s", design_name, what->name);
  const char *note = hut_write_entry_note (what->cutter);
  g_autofree char *desc = g_strjoin (" ",
                                     "One user unit is one millimetre. The lines are the middle of "
                                     "the tool's way: kerf and fit allowance are in them.",
                                     note != NULL ? note : what->mark,
                                     note != NULL ? what->mark : NULL, NULL);

  hut_xml_out_text (page->xml, "version", "1.1");
  hut_xml_out_text (page->xml, "width", width_mm);
  hut_xml_out_text (page->xml, "height", depth_mm);
  hut_xml_out_text (page->xml, "viewBox", view_box);
  write_element (page, "title", title);
  write_element (page, "desc", desc);
}

GBytes *
hut_write_page_svg (const HutWritePage *what,
                    GError **error)
{
  g_return_val_if_fail (what != NULL && what->paths != NULL, NULL);

  g_autoptr(HutXmlOut) xml = hut_xml_out_new ("svg", "http://www.w3.org/2000/svg");
  const Page page = { xml, what->depth_mm, what->cutter->kind };

  write_head (&page, what);
  for (guint layer = 0; layer < HUT_LAYER_COUNT; layer++)
    write_layer (&page, (HutLayer) layer, what->paths);
  return hut_xml_out_finish (xml, error);
}

GBytes *
hut_write_marked_svg (const HutAssembly *assembly,
                      const HutPartSet *parts,
                      const HutSheet *sheet,
                      const char *mark,
                      GError **error)
{
  return hut_write_sheet_page (assembly, parts, sheet, mark, hut_write_page_svg, error);
}

GBytes *
hut_write_sheet_svg (const HutAssembly *assembly,
                     const HutPartSet *parts,
                     const HutSheet *sheet,
                     GError **error)
{
  return hut_write_marked_svg (assembly, parts, sheet, NULL, error);
}
