/* src/export/hut-describe-hardware.c: placed hardware and the marks on parts in the description.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-describe-private.h"

static const char *
face_name (HutFace face)
{
  return face == HUT_FACE_INSIDE ? "inside" : "outside";
}

void
hut_describe_hardware (HutXmlOut *out,
                       const HutAssembly *assembly)
{
  hut_xml_out_open (out, "placed");
  for (guint i = 0; i < assembly->hardware->len; i++)
    {
      const HutPlacedHardware *placed = assembly->hardware->pdata[i];

      hut_xml_out_open (out, "leaf");
      hut_xml_out_text (out, "hardware", placed->hardware->id);
      hut_xml_out_text (out, "item", placed->item->id);
      hut_xml_out_count (out, "number", placed->leaf + 1);
      hut_xml_out_text (out, "panel", hut_describe_panel_name (assembly, placed->panel));
      hut_xml_out_text (out, "face", face_name (placed->face));
      hut_xml_out_number (out, "u", placed->placement.shift.u);
      hut_xml_out_number (out, "v", placed->placement.shift.v);
      if (placed->bored)
        {
          hut_xml_out_open (out, "pocket");
          hut_xml_out_number (out, "u", placed->pocket_at.u);
          hut_xml_out_number (out, "v", placed->pocket_at.v);
          hut_xml_out_number (out, "diameter", placed->need.bit_mm);
          hut_xml_out_number (out, "depth", placed->need.depth_mm);
          hut_xml_out_number (out, "floor", placed->need.floor_mm);
          hut_xml_out_close (out);
        }
      hut_xml_out_close (out);
    }
  hut_xml_out_close (out);
}

void
hut_describe_marks (HutXmlOut *out,
                    const HutPart *part)
{
  static const char *const kinds[] = {
    [HUT_PART_MARK_POCKET] = "pocket",
    [HUT_PART_MARK_CENTRE] = "centre",
    [HUT_PART_MARK_OUTLINE] = "by-hand",
    [HUT_PART_MARK_SINK] = "sink",
  };

  for (guint i = 0; i < part->marks->len; i++)
    {
      const HutPartMark *mark = part->marks->pdata[i];

      hut_xml_out_open (out, "mark");
      hut_xml_out_text (out, "kind", kinds[mark->kind]);
      hut_xml_out_text (out, "hardware", mark->item);
      hut_xml_out_text (out, "face", face_name (mark->face));
      hut_xml_out_number (out, "depth", mark->depth_mm);
      hut_describe_rect (out, "bounds", hut_path_bounds (mark->path));
      hut_xml_out_close (out);
    }
}
