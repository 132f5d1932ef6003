/* src/export/hut-manifest.c: the list of what a set holds, and what was found when it was made.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-manifest.h"
#include "export/hut-xml-out.h"
#include <libxml/parser.h>

/* A larger file is no manifest of ours, bytes. Own choice: some 100,000 files. */
#define MANIFEST_SIZE_MAX (16 * 1024 * 1024)

HutSetFile *
hut_set_file_new (const char *name,
                  GBytes *bytes)
{
  HutSetFile *self = g_new0 (HutSetFile, 1);

  self->name = g_strdup (name);
  self->bytes = bytes;
  return self;
}

void
hut_set_file_free (HutSetFile *self)
{
  if (self == NULL)
    return;
  g_free (self->name);
  g_bytes_unref (self->bytes);
  g_free (self);
}

static void
write_design (HutXmlOut *xml,
              const HutManifestFacts *facts)
{
  hut_xml_out_open (xml, "program");
  hut_xml_out_text (xml, "name", "hutchwright");
  hut_xml_out_text (xml, "version", HUT_VERSION);
  hut_xml_out_close (xml);
  hut_xml_out_open (xml, "design");
  if (facts->design_name != NULL)
    hut_xml_out_text (xml, "name", facts->design_name);
  if (facts->source_name != NULL)
    hut_xml_out_text (xml, "source", facts->source_name);
  hut_xml_out_text (xml, "sha256", facts->design_sha256);
  hut_xml_out_close (xml);
}

static void
write_overrides (HutXmlOut *xml,
                 const char *const *overrides)
{
  hut_xml_out_open (xml, "overrides");
  for (guint i = 0; overrides != NULL && overrides[i] != NULL; i++)
    {
      hut_xml_out_open (xml, "override");
      hut_xml_out_text (xml, "check", overrides[i]);
      hut_xml_out_close (xml);
    }
  hut_xml_out_close (xml);
}

static void
write_totals (HutXmlOut *xml,
              const HutSheetTotals *totals)
{
  hut_xml_out_open (xml, "cutting");
  hut_xml_out_count (xml, "sheets", totals->sheets);
  hut_xml_out_number (xml, "used", totals->used_ratio);
  hut_xml_out_number (xml, "length", totals->cut_length_mm);
  hut_xml_out_count (xml, "pierces", totals->pierces);
  hut_xml_out_number (xml, "seconds", totals->time_s);
  if (totals->price_known)
    hut_xml_out_number (xml, "price", totals->price);
  hut_xml_out_close (xml);
}

static void
write_files (HutXmlOut *xml,
             const GPtrArray *files)
{
  hut_xml_out_open (xml, "files");
  for (guint i = 0; i < files->len; i++)
    {
      const HutSetFile *file = g_ptr_array_index (files, i);
      g_autofree char *size = g_strdup_printf ("%" G_GSIZE_FORMAT, g_bytes_get_size (file->bytes));
      g_autofree char *sha256 = g_compute_checksum_for_bytes (G_CHECKSUM_SHA256, file->bytes);

      hut_xml_out_open (xml, "file");
      hut_xml_out_text (xml, "name", file->name);
      hut_xml_out_text (xml, "size", size);
      hut_xml_out_text (xml, "sha256", sha256);
      hut_xml_out_close (xml);
    }
  hut_xml_out_close (xml);
}

static void
write_findings (HutXmlOut *xml,
                const GPtrArray *findings)
{
  hut_xml_out_open (xml, "findings");
  for (guint i = 0; i < findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (findings, i);
      g_autofree char *text = hut_finding_dup_text (finding, NULL, ".");

      hut_xml_out_open (xml, "finding");
      hut_xml_out_text (xml, "check", finding->check);
      hut_xml_out_text (xml, "severity", hut_severity_to_string (finding->severity));
      if (finding->item != NULL)
        hut_xml_out_text (xml, "item", finding->item);
      hut_xml_out_content (xml, text);
      hut_xml_out_close (xml);
    }
  hut_xml_out_close (xml);
}

GBytes *
hut_manifest_write (const HutManifestFacts *facts,
                    const GPtrArray *files,
                    GError **error)
{
  g_return_val_if_fail (facts != NULL && files != NULL, NULL);

  g_autoptr(HutXmlOut) xml = hut_xml_out_new ("manifest", HUT_MANIFEST_NS);

  write_design (xml, facts);
  write_overrides (xml, facts->overrides);
  if (facts->totals != NULL)
    write_totals (xml, facts->totals);
  write_files (xml, files);
  write_findings (xml, facts->findings);
  return hut_xml_out_finish (xml, error);
}

static gboolean
is_element (const xmlNode *node,
            const char *name)
{
  return node->type == XML_ELEMENT_NODE && node->ns != NULL
         && xmlStrEqual (node->ns->href, BAD_CAST HUT_MANIFEST_NS)
         && xmlStrEqual (node->name, BAD_CAST name);
}

static void
append_names (GPtrArray *names,
              const xmlNode *files)
{
  for (xmlNode *file = files->children; file != NULL; file = file->next)
    {
      if (!is_element (file, "file"))
        continue;

      xmlChar *name = xmlGetNoNsProp (file, BAD_CAST "name");

      if (name != NULL)
        g_ptr_array_add (names, g_strdup ((const char *) name));
      xmlFree (name);
    }
}

static void
ignore_error (void *user_data,
              xmlError *error)
{
}

static xmlDoc *
parse_quietly (const char *data,
               gsize size)
{
  xmlParserCtxt *context = xmlNewParserCtxt ();

  if (context == NULL)
    return NULL;

  /* Errors mean "no manifest"; they are not for the terminal. */
  context->sax->serror = ignore_error;
  xmlDoc *doc = xmlCtxtReadMemory (context, data, (int) size, NULL, NULL,
                                   XML_PARSE_NONET | XML_PARSE_NOERROR | XML_PARSE_NOWARNING);

  xmlFreeParserCtxt (context);
  return doc;
}

GStrv
hut_manifest_read_names (const char *data,
                         gsize size)
{
  g_return_val_if_fail (data != NULL, NULL);

  if (size == 0 || size > MANIFEST_SIZE_MAX)
    return NULL;

  g_autoptr(GPtrArray) names = g_ptr_array_new_with_free_func (g_free);
  xmlDoc *doc = parse_quietly (data, size);
  const xmlNode *root = doc != NULL ? xmlDocGetRootElement (doc) : NULL;
  const gboolean ours
      = root != NULL && xmlGetIntSubset (doc) == NULL && is_element (root, "manifest");

  for (xmlNode *node = ours ? root->children : NULL; node != NULL; node = node->next)
    if (is_element (node, "files"))
      append_names (names, node);
  if (doc != NULL)
    xmlFreeDoc (doc);
  if (!ours)
    return NULL;
  g_ptr_array_add (names, NULL);
  return (GStrv) g_ptr_array_free (g_steal_pointer (&names), FALSE);
}
