/* src/export/hut-describe-geom.c: points, boxes and outlines in the description.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-describe-private.h"

#include <math.h>

static const char *
edge_kind_name (HutEdgeKind kind)
{
  switch (kind)
    {
    case HUT_EDGE_PLAIN:
      return "plain";
    case HUT_EDGE_MATING:
      return "mating";
    }
  g_return_val_if_reached ("plain");
}

void
hut_describe_vec3 (HutXmlOut *out,
                   const char *name,
                   HutVec3 value)
{
  hut_xml_out_open (out, name);
  hut_xml_out_number (out, "x", value.x);
  hut_xml_out_number (out, "y", value.y);
  hut_xml_out_number (out, "z", value.z);
  hut_xml_out_close (out);
}

gboolean
hut_box3_is_finite (const HutBox3 *box)
{
  return isfinite (box->min.x) && isfinite (box->min.y) && isfinite (box->min.z)
         && isfinite (box->max.x) && isfinite (box->max.y) && isfinite (box->max.z);
}

void
hut_describe_box3 (HutXmlOut *out,
                   const char *name,
                   const HutBox3 *box)
{
  hut_xml_out_open (out, name);
  hut_xml_out_number (out, "x0", box->min.x);
  hut_xml_out_number (out, "y0", box->min.y);
  hut_xml_out_number (out, "z0", box->min.z);
  hut_xml_out_number (out, "x1", box->max.x);
  hut_xml_out_number (out, "y1", box->max.y);
  hut_xml_out_number (out, "z1", box->max.z);
  hut_xml_out_close (out);
}

void
hut_describe_rect (HutXmlOut *out,
                   const char *name,
                   HutRect rect)
{
  hut_xml_out_open (out, name);
  hut_xml_out_number (out, "u0", rect.u0);
  hut_xml_out_number (out, "v0", rect.v0);
  hut_xml_out_number (out, "u1", rect.u1);
  hut_xml_out_number (out, "v1", rect.v1);
  hut_xml_out_close (out);
}

/* The element stands at the first point; each child goes from where the path is to its (u, v), the
 * last one back to the first point. */
static void
describe_path (HutXmlOut *out,
               const char *name,
               const HutPath *path)
{
  const guint count = hut_path_get_count (path);

  hut_xml_out_open (out, name);
  hut_xml_out_number (out, "u", hut_path_get (path, 0)->p.u);
  hut_xml_out_number (out, "v", hut_path_get (path, 0)->p.v);
  for (guint i = 0; i < count; i++)
    {
      const HutSegment segment = hut_path_get_segment (path, i);
      const gboolean is_arc = segment.bulge != 0.0;

      hut_xml_out_open (out, is_arc ? "arc" : "line");
      hut_xml_out_number (out, "u", segment.end.u);
      hut_xml_out_number (out, "v", segment.end.v);
      if (is_arc)
        hut_xml_out_number (out, "bulge", segment.bulge);
      hut_xml_out_text (out, "edge", edge_kind_name (segment.kind));
      hut_xml_out_close (out);
    }
  hut_xml_out_close (out);
}

void
hut_describe_region (HutXmlOut *out,
                     const HutRegion *region)
{
  describe_path (out, "outline", region->outer);
  for (guint i = 0; i < region->holes->len; i++)
    describe_path (out, "hole", region->holes->pdata[i]);
}
