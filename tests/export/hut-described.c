/* tests/export/hut-described.c: reads a description back, without any code of the program.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "export/hut-described.h"

#include <libxml/parser.h>
#include <libxml/relaxng.h>
#include <string.h>

static void
keep_first_error (void *data,
                  const xmlError *error)
{
  char **first = data;

  if (*first == NULL)
    *first = g_strdup_printf ("line %d: %s", error->line, error->message);
}

/* (transfer none): parsed once; it stays until the test ends. */
static xmlRelaxNG *
get_schema (void)
{
  static xmlRelaxNG *schema;
  g_autofree char *path = g_build_filename (g_getenv ("HUT_SOURCE_ROOT"), "src", "export",
                                            "describe.rng", NULL);

  if (schema == NULL)
    {
      xmlRelaxNGParserCtxt *parser = xmlRelaxNGNewParserCtxt (path);

      schema = xmlRelaxNGParse (parser);
      xmlRelaxNGFreeParserCtxt (parser);
    }
  assert_non_null (schema);
  return schema;
}

/* (transfer full) (nullable): the first complaint of the schema. */
static char *
dup_complaint (xmlDoc *doc)
{
  xmlRelaxNGValidCtxt *validator = xmlRelaxNGNewValidCtxt (get_schema ());
  char *complaint = NULL;
  int result = 0;

  assert_non_null (validator);
  xmlRelaxNGSetValidStructuredErrors (validator, (xmlStructuredErrorFunc) keep_first_error, &complaint);
  result = xmlRelaxNGValidateDoc (validator, doc);
  if (result != 0 && complaint == NULL)
    complaint = g_strdup ("the schema refuses it without a word");
  xmlRelaxNGFreeValidCtxt (validator);
  return complaint;
}

xmlDoc *
hut_described_parse (GBytes *text)
{
  gsize size = 0;
  const char *data = g_bytes_get_data (text, &size);
  xmlDoc *doc = xmlReadMemory (data, (int) size, "describe.xml", NULL, XML_PARSE_NONET);

  assert_non_null (doc);
  return doc;
}

void
hut_described_assert_valid (xmlDoc *doc,
                            const char *label)
{
  g_autofree char *complaint = dup_complaint (doc);

  if (complaint != NULL)
    fail_msg ("%s: %s", label, complaint);
}

gboolean
hut_described_is_valid (const char *text)
{
  g_autoptr(xmlDoc) doc = xmlReadMemory (text, (int) strlen (text), "describe.xml", NULL,
                                         XML_PARSE_NONET | XML_PARSE_NOERROR | XML_PARSE_NOWARNING);
  g_autofree char *complaint = doc != NULL ? dup_complaint (doc) : g_strdup ("not XML");

  return complaint == NULL;
}

static gboolean
is_named (const xmlNode *node,
          const char *name)
{
  return node->type == XML_ELEMENT_NODE && xmlStrEqual (node->name, BAD_CAST name);
}

xmlNode *
hut_described_first (const xmlNode *parent,
                     const char *name)
{
  xmlNode *node = parent->children;

  while (node != NULL && !is_named (node, name))
    node = node->next;
  return node;
}

xmlNode *
hut_described_next (const xmlNode *node)
{
  xmlNode *next = node->next;

  while (next != NULL && !is_named (next, (const char *) node->name))
    next = next->next;
  return next;
}

char *
hut_described_dup_text (const xmlNode *node,
                        const char *name)
{
  xmlChar *value = xmlGetNoNsProp (node, BAD_CAST name);
  char *text = NULL;

  if (value == NULL)
    fail_msg ("<%s> in line %ld has no %s", node->name, xmlGetLineNo (node), name);
  text = g_strdup ((const char *) value);
  xmlFree (value);
  return text;
}

gboolean
hut_described_is (const xmlNode *node,
                  const char *name,
                  const char *value)
{
  g_autofree char *text = hut_described_dup_text (node, name);

  return g_str_equal (text, value);
}

void
hut_described_numbers (const xmlNode *node,
                       const char *name,
                       double *values,
                       guint count)
{
  g_autofree char *text = hut_described_dup_text (node, name);
  g_auto(GStrv) words = g_strsplit (text, " ", -1);

  assert_int_equal (g_strv_length (words), count);
  for (guint i = 0; i < count; i++)
    {
      char *end = NULL;

      values[i] = g_ascii_strtod (words[i], &end);
      if (end == words[i] || *end != '\0')
        fail_msg ("%s of <%s>: “%s” is no number", name, node->name, words[i]);
    }
}

double
hut_described_number (const xmlNode *node,
                      const char *name)
{
  double value = 0.0;

  hut_described_numbers (node, name, &value, 1);
  return value;
}

/* One edge of a path, as the file has it. */
typedef struct
{
  double u0, v0, u1, v1; /* mm */
  double angle_rad;      /* of an arc, signed; 0 for a line */
} Edge;

/* Source: bulge = tan (angle / 4); reference values of bulge in DXF, any description of LWPOLYLINE. */
static GArray *
read_edges (const xmlNode *path)
{
  GArray *edges = g_array_new (FALSE, FALSE, sizeof (Edge));
  const double start_u = hut_described_number (path, "u");
  const double start_v = hut_described_number (path, "v");
  Edge edge = { .u1 = start_u, .v1 = start_v };

  for (const xmlNode *node = path->children; node != NULL; node = node->next)
    {
      if (node->type != XML_ELEMENT_NODE)
        continue;
      edge.u0 = edge.u1;
      edge.v0 = edge.v1;
      edge.u1 = hut_described_number (node, "u");
      edge.v1 = hut_described_number (node, "v");
      edge.angle_rad = is_named (node, "arc") ? 4.0 * atan (hut_described_number (node, "bulge")) : 0.0;
      g_array_append_val (edges, edge);
    }
  assert_true (edge.u1 == start_u && edge.v1 == start_v);
  return edges;
}

static double
chord_mm (const Edge *edge)
{
  return hypot (edge->u1 - edge->u0, edge->v1 - edge->v0);
}

/* From chord = 2 r sin (angle / 2). */
static double
radius_mm (const Edge *edge)
{
  return fabs (chord_mm (edge) / (2.0 * sin (edge->angle_rad / 2.0)));
}

/* Shoelace over the chords, about the first point, and for each arc the circular segment on it:
 * r^2 (angle - sin (angle)) / 2. Source: any table of plane areas. */
double
hut_described_path_area_mm2 (const xmlNode *path)
{
  g_autoptr(GArray) edges = read_edges (path);
  const Edge *first = &g_array_index (edges, Edge, 0);
  const double u = first->u0, v = first->v0;
  double area_mm2 = 0.0;

  for (guint i = 0; i < edges->len; i++)
    {
      const Edge *edge = &g_array_index (edges, Edge, i);

      area_mm2 += 0.5 * ((edge->u0 - u) * (edge->v1 - v) - (edge->u1 - u) * (edge->v0 - v));
      if (edge->angle_rad != 0.0)
        area_mm2 += 0.5 * radius_mm (edge) * radius_mm (edge)
                    * (edge->angle_rad - sin (edge->angle_rad));
    }
  return area_mm2;
}

double
hut_described_path_length_mm (const xmlNode *path)
{
  g_autoptr(GArray) edges = read_edges (path);
  double length_mm = 0.0;

  for (guint i = 0; i < edges->len; i++)
    {
      const Edge *edge = &g_array_index (edges, Edge, i);

      length_mm += edge->angle_rad != 0.0 ? radius_mm (edge) * fabs (edge->angle_rad) : chord_mm (edge);
    }
  return length_mm;
}

double
hut_described_area_mm2 (const xmlNode *node)
{
  double area_mm2 = hut_described_path_area_mm2 (hut_described_first (node, "outline"));

  assert_true (area_mm2 > 0.0); /* counter-clockwise */
  for (const xmlNode *hole = hut_described_first (node, "hole"); hole != NULL;
       hole = hut_described_next (hole))
    {
      const double hole_mm2 = hut_described_path_area_mm2 (hole);

      assert_true (hole_mm2 < 0.0); /* clockwise */
      area_mm2 += hole_mm2;
    }
  return area_mm2;
}

double
hut_described_length_mm (const xmlNode *node)
{
  double length_mm = hut_described_path_length_mm (hut_described_first (node, "outline"));

  for (const xmlNode *hole = hut_described_first (node, "hole"); hole != NULL;
       hole = hut_described_next (hole))
    length_mm += hut_described_path_length_mm (hole);
  return length_mm;
}
