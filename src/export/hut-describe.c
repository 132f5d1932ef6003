/* src/export/hut-describe.c: the description of all that is derived, and the report of findings.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Everything is written in the order in which it was derived, numbers as the shortest decimal that
 * reads back as the same double: the same design gives the same bytes on any machine. */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-describe.h"

#include <math.h>

#include "export/hut-describe-private.h"
#include "export/hut-export.h"

static HutXmlOut *
new_document (const char *root)
{
  HutXmlOut *out = hut_xml_out_new (root, HUT_DESCRIBE_NS);

  hut_xml_out_count (out, "version", HUT_DESCRIBE_VERSION);
  hut_xml_out_text (out, "program", "hutchwright " HUT_VERSION);
  return out;
}

static void
describe_design (HutXmlOut *out,
                 const char *name)
{
  hut_xml_out_open (out, "design");
  hut_xml_out_text (out, "name", name);
  hut_xml_out_close (out);
}

static void
describe_place (HutXmlOut *out,
                const HutPlace *place)
{
  if (!place->has_panel)
    return;
  hut_xml_out_open (out, "place");
  hut_xml_out_text (out, "panel", hut_panel_id_to_string (place->panel));
  if (isfinite (place->rect.u0) && isfinite (place->rect.v0)
      && isfinite (place->rect.u1) && isfinite (place->rect.v1))
    hut_describe_rect (out, "rect", place->rect);
  hut_xml_out_close (out);
}

static void
describe_finding (HutXmlOut *out,
                  const HutFinding *finding)
{
  g_autofree char *text = hut_finding_dup_text (finding, NULL, ".");

  hut_xml_out_open (out, "finding");
  hut_xml_out_text (out, "check", finding->check);
  hut_xml_out_text (out, "severity", hut_severity_to_string (finding->severity));
  hut_xml_out_text (out, "text", text);
  if (finding->item != NULL)
    hut_xml_out_text (out, "item", finding->item);
  if (isfinite (finding->is))
    hut_xml_out_number (out, "is", finding->is);
  if (isfinite (finding->must))
    hut_xml_out_number (out, "must", finding->must);
  for (guint i = 0; i < finding->places->len; i++)
    describe_place (out, &g_array_index (finding->places, HutPlace, i));
  hut_xml_out_close (out);
}

static void
describe_findings (HutXmlOut *out,
                   const GPtrArray *findings)
{
  guint counts[HUT_SEVERITY_NOTES + 1] = { 0 };

  for (guint i = 0; i < findings->len; i++)
    counts[((const HutFinding *) findings->pdata[i])->severity]++;
  hut_xml_out_open (out, "findings");
  for (HutSeverity severity = HUT_SEVERITY_BLOCKS; severity <= HUT_SEVERITY_NOTES; severity++)
    hut_xml_out_count (out, hut_severity_to_string (severity), counts[severity]);
  for (guint i = 0; i < findings->len; i++)
    describe_finding (out, findings->pdata[i]);
  hut_xml_out_close (out);
}

GBytes *
hut_write_report (const char *design_name,
                  const GPtrArray *findings,
                  GError **error)
{
  g_autoptr(HutXmlOut) out = NULL;

  g_return_val_if_fail (design_name != NULL && findings != NULL, NULL);

  out = new_document ("report");
  describe_design (out, design_name);
  describe_findings (out, findings);
  return hut_xml_out_finish (out, error);
}

GBytes *
hut_write_describe (const HutAssembly *assembly,
                    const HutPartSet *parts,
                    const HutSheetSet *sheets,
                    const GPtrArray *findings,
                    GError **error)
{
  g_autoptr(HutXmlOut) out = NULL;
  HutDescribeSums sums;

  g_return_val_if_fail (assembly != NULL && parts != NULL && sheets != NULL && findings != NULL,
                        NULL);

  out = new_document ("describe");
  describe_design (out, assembly->design->name);
  hut_describe_shell (out, assembly);
  hut_describe_panels (out, assembly);
  hut_describe_holes (out, assembly, parts);
  hut_describe_hardware (out, assembly);
  hut_describe_plates (out, assembly);
  hut_describe_solids (out, assembly, parts);
  hut_describe_parts (out, assembly, parts, &sums);
  hut_describe_splices (out, assembly, parts);
  hut_describe_sheets (out, parts, sheets);
  hut_describe_engineering (out, assembly, parts);
  describe_findings (out, findings);
  hut_describe_totals (out, parts, sheets, &sums);
  return hut_xml_out_finish (out, error);
}
