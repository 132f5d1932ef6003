/* src/export/hut-describe-engineering.c: what the engineering comes to, as a section.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "engineering/hut-engineering.h"
#include "export/hut-describe-private.h"
#include <math.h>

static void
describe_input (HutXmlOut *out,
                const HutFigureInput *input)
{
  hut_xml_out_open (out, "input");
  if (*input->symbol != '\0')
    hut_xml_out_text (out, "symbol", input->symbol);
  hut_xml_out_text (out, "name", input->name);
  if (isfinite (input->value))
    hut_xml_out_number (out, "value", input->value);
  hut_xml_out_text (out, "unit", hut_figure_unit_name (input->unit));
  if (input->assumed)
    hut_xml_out_text (out, "assumed", "yes");
  hut_xml_out_close (out);
}

static void
describe_figure (HutXmlOut *out,
                 const HutFigure *figure)
{
  g_autofree char *words = hut_figure_dup_words (figure, NULL);

  hut_xml_out_open (out, "figure");
  hut_xml_out_text (out, "id", figure->id);
  hut_xml_out_text (out, "subject", hut_subject_name (figure->subject));
  hut_xml_out_text (out, "known", figure->known ? "yes" : "no");
  hut_xml_out_text (out, "concern", figure->concern ? "yes" : "no");
  hut_xml_out_text (out, "words", words);
  if (figure->has_value)
    {
      hut_xml_out_number (out, "value", figure->value);
      hut_xml_out_text (out, "unit", hut_figure_unit_name (figure->unit));
      if (isfinite (figure->limit))
        hut_xml_out_number (out, "limit", figure->limit);
    }
  if (figure->formula != NULL)
    hut_xml_out_text (out, "formula", figure->formula);
  if (figure->source != NULL)
    hut_xml_out_text (out, "source", figure->source);
  for (guint i = 0; i < figure->n_inputs; i++)
    describe_input (out, &figure->inputs[i]);
  hut_xml_out_close (out);
}

void
hut_describe_engineering (HutXmlOut *out,
                          const HutAssembly *assembly,
                          const HutPartSet *parts)
{
  g_autoptr(HutEngineering) all = hut_engineering_new (assembly, parts);

  hut_xml_out_open (out, "engineering");
  for (guint i = 0; i < all->figures->len; i++)
    describe_figure (out, &g_array_index (all->figures, HutFigure, i));
  hut_xml_out_close (out);
}
