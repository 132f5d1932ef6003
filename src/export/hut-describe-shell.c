/* src/export/hut-describe-shell.c: sizes, machine, panels, plates and solids in the description.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-describe-private.h"

static const char *const edge_names[HUT_EDGE_COUNT] = {
  [HUT_EDGE_BOTTOM] = "bottom",
  [HUT_EDGE_RIGHT] = "right",
  [HUT_EDGE_TOP] = "top",
  [HUT_EDGE_LEFT] = "left",
};

static const char *
joint_name (HutJointKind kind)
{
  switch (kind)
    {
    case HUT_JOINT_NONE:
      return "none";
    case HUT_JOINT_FINGERS:
      return "fingers";
    case HUT_JOINT_BUTT:
      return "butt";
    }
  g_return_val_if_reached ("none");
}

static const char *
body_kind_name (HutBodyKind kind)
{
  switch (kind)
    {
    case HUT_BODY_STATIC:
      return "static";
    case HUT_BODY_MOVING:
      return "moving";
    case HUT_BODY_KEEP_OUT:
      return "keep-out";
    }
  g_return_val_if_reached ("static");
}

const char *
hut_describe_solid_kind (HutSolidKind kind)
{
  switch (kind)
    {
    case HUT_SOLID_PANEL:
      return "panel";
    case HUT_SOLID_GLAZING:
      return "glazing";
    case HUT_SOLID_FRAME:
      return "frame";
    case HUT_SOLID_STRAP:
      return "strap";
    case HUT_SOLID_LEDGE:
      return "ledge";
    case HUT_SOLID_BAFFLE:
      return "baffle";
    case HUT_SOLID_TRAP:
      return "trap";
    case HUT_SOLID_HARDWARE:
      return "hardware";
    case HUT_SOLID_LEADS:
      return "leads";
    case HUT_SOLID_FACE_PLATE:
      return "face-plate";
    }
  g_return_val_if_reached ("panel");
}

const char *
hut_describe_panel_name (const HutAssembly *assembly,
                         guint panel)
{
  const HutPanel *named = assembly->panels->pdata[panel];

  return hut_panel_id_to_string (named->id);
}

/* Where a body stands, and the room that it needs with its travel. The boxes are left out when the
 * design's numbers are not finite: a finding tells that. */
static void
describe_body (HutXmlOut *out,
               const HutAssembly *assembly,
               const HutBody *body)
{
  const HutBox3 standing = hut_box3_shift (&body->box, assembly->machine_at);
  const HutBox3 swept = hut_assembly_body_box (assembly, body);

  hut_xml_out_open (out, "body");
  hut_xml_out_text (out, "id", body->id);
  hut_xml_out_text (out, "name", body->name);
  hut_xml_out_text (out, "kind", body_kind_name (body->kind));
  if (hut_box3_is_finite (&standing) && hut_box3_is_finite (&swept))
    {
      hut_describe_box3 (out, "standing", &standing);
      hut_describe_box3 (out, "swept", &swept);
    }
  hut_xml_out_close (out);
}

void
hut_describe_shell (HutXmlOut *out,
                    const HutAssembly *assembly)
{
  const HutMachine *machine = &assembly->design->machine;

  if (assembly->whole)
    {
      hut_xml_out_open (out, "size");
      hut_describe_vec3 (out, "outer", assembly->outer_mm);
      hut_describe_box3 (out, "inside", &assembly->inside);
      hut_xml_out_close (out);
    }
  if (assembly->whole && assembly->hinged)
    {
      hut_xml_out_open (out, "hinge");
      hut_xml_out_number (out, "opening-angle", assembly->design->shell.opening_angle_deg);
      hut_describe_vec3 (out, "point", assembly->hinge_point);
      hut_describe_vec3 (out, "axis", assembly->hinge_axis);
      hut_xml_out_close (out);
    }
  hut_xml_out_open (out, "machine");
  hut_xml_out_text (out, "name", machine->name);
  for (guint i = 0; i < machine->bodies->len; i++)
    describe_body (out, assembly, machine->bodies->pdata[i]);
  hut_xml_out_close (out);
}

static void
describe_edge (HutXmlOut *out,
               HutEdge edge,
               const HutEdgeJoint *joint)
{
  hut_xml_out_open (out, "edge");
  hut_xml_out_text (out, "side", edge_names[edge]);
  hut_xml_out_text (out, "joint", joint_name (joint->kind));
  if (joint->kind != HUT_JOINT_NONE)
    {
      hut_xml_out_text (out, "other", hut_panel_id_to_string (joint->other));
      hut_xml_out_number (out, "depth", joint->depth_mm);
      hut_xml_out_flag (out, "owns-ends", joint->owns_ends);
      hut_xml_out_number (out, "start", joint->start_mm);
      hut_xml_out_number (out, "end", joint->end_mm);
      hut_xml_out_count (out, "fingers", joint->finger_count);
      hut_xml_out_numbers (out, "cuts", (const double *) joint->cuts_mm->data, joint->cuts_mm->len);
    }
  hut_xml_out_close (out);
}

/* Row-major; columns are the frame's unit vectors and its origin. */
static void
describe_frame (HutXmlOut *out,
                const HutFrame3 *frame)
{
  const double matrix[16] = {
    frame->u.x, frame->v.x, frame->w.x, frame->origin.x,
    frame->u.y, frame->v.y, frame->w.y, frame->origin.y,
    frame->u.z, frame->v.z, frame->w.z, frame->origin.z,
    0.0,        0.0,        0.0,        1.0,
  };

  hut_xml_out_numbers (out, "matrix", matrix, G_N_ELEMENTS (matrix));
}

void
hut_describe_panels (HutXmlOut *out,
                     const HutAssembly *assembly)
{
  hut_xml_out_open (out, "panels");
  for (guint i = 0; i < assembly->panels->len; i++)
    {
      const HutPanel *panel = assembly->panels->pdata[i];
      const double area_mm2 = hut_region_area_mm2 (panel->region);

      hut_xml_out_open (out, "panel");
      hut_xml_out_text (out, "id", hut_panel_id_to_string (panel->id));
      hut_xml_out_text (out, "stock", panel->stock->id);
      hut_xml_out_number (out, "thickness", panel->thickness_mm);
      hut_xml_out_number (out, "width", panel->width_mm);
      hut_xml_out_number (out, "height", panel->height_mm);
      hut_xml_out_flag (out, "bought", panel->bought);
      hut_xml_out_number (out, "area", area_mm2);
      hut_xml_out_number (out, "volume", area_mm2 * panel->thickness_mm);
      describe_frame (out, &panel->frame);
      hut_describe_region (out, panel->region);
      for (HutEdge edge = HUT_EDGE_BOTTOM; edge < HUT_EDGE_COUNT; edge++)
        describe_edge (out, edge, &panel->edges[edge]);
      hut_xml_out_close (out);
    }
  hut_xml_out_close (out);
}

void
hut_describe_plates (HutXmlOut *out,
                     const HutAssembly *assembly)
{
  hut_xml_out_open (out, "plates");
  for (guint i = 0; i < assembly->plates->len; i++)
    {
      const HutPlate *plate = assembly->plates->pdata[i];

      hut_xml_out_open (out, "plate");
      hut_xml_out_text (out, "kind", hut_describe_solid_kind (plate->kind));
      hut_xml_out_text (out, plate->window != NULL ? "window" : "hardware", plate->item);
      hut_xml_out_text (out, "panel", hut_describe_panel_name (assembly, plate->panel));
      hut_xml_out_text (out, "stock", plate->stock->id);
      hut_xml_out_number (out, "depth0", plate->depth0_mm);
      hut_xml_out_number (out, "depth1", plate->depth1_mm);
      hut_xml_out_flag (out, "bought", plate->bought);
      hut_describe_region (out, plate->region);
      hut_xml_out_close (out);
    }
  hut_xml_out_close (out);
}

static void
describe_solid_list (HutXmlOut *out,
                     const HutAssembly *assembly,
                     const GArray *solids)
{
  for (guint i = 0; i < solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (solids, HutSolid, i);

      hut_xml_out_open (out, "solid");
      hut_xml_out_text (out, "kind", hut_describe_solid_kind (solid->kind));
      hut_xml_out_text (out, "shell", solid->shell == HUT_SHELL_LID ? "lid" : "base");
      hut_xml_out_text (out, "panel", hut_describe_panel_name (assembly, solid->panel));
      if (solid->item != NULL)
        hut_xml_out_text (out,
                          solid->kind == HUT_SOLID_GLAZING || solid->kind == HUT_SOLID_FRAME
                              ? "window"
                          : solid->kind == HUT_SOLID_TRAP ? "opening"
                                                          : "hardware",
                          solid->item);
      hut_describe_box3 (out, "box", &solid->box);
      hut_xml_out_close (out);
    }
}

void
hut_describe_solids (HutXmlOut *out,
                     const HutAssembly *assembly,
                     const HutPartSet *parts)
{
  hut_xml_out_open (out, "solids");
  describe_solid_list (out, assembly, assembly->solids);
  describe_solid_list (out, assembly, parts->solids);
  hut_xml_out_close (out);
}
