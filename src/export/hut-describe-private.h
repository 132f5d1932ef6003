/* src/export/hut-describe-private.h: the sections of the description.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"
#include "export/hut-xml-out.h"
#include "sheets/hut-sheet.h"

/* hut-describe-geom.c: values as elements and attributes */
void hut_describe_vec3 (HutXmlOut *out, const char *name, HutVec3 value);
void hut_describe_box3 (HutXmlOut *out, const char *name, const HutBox3 *box);
void hut_describe_rect (HutXmlOut *out, const char *name, HutRect rect);
void hut_describe_region (HutXmlOut *out, const HutRegion *region);
gboolean hut_box3_is_finite (const HutBox3 *box);

/* hut-describe-shell.c: what the assembly holds */
void hut_describe_shell (HutXmlOut *out, const HutAssembly *assembly);
void hut_describe_panels (HutXmlOut *out, const HutAssembly *assembly);
void hut_describe_plates (HutXmlOut *out, const HutAssembly *assembly);
void hut_describe_solids (HutXmlOut *out, const HutAssembly *assembly, const HutPartSet *parts);

/* Of all parts. */
typedef struct
{
  guint bought_count;
  double area_mm2, volume_mm3;
  double cut_mm; /* length of the tool's paths */
} HutDescribeSums;

/* hut-describe-parts.c: what is cut */
/* @sums: (out caller-allocates) */
void hut_describe_parts (HutXmlOut *out, const HutAssembly *assembly, const HutPartSet *parts, HutDescribeSums *sums);
void hut_describe_splices (HutXmlOut *out, const HutAssembly *assembly, const HutPartSet *parts);
void hut_describe_holes (HutXmlOut *out, const HutAssembly *assembly, const HutPartSet *parts);
void hut_describe_sheets (HutXmlOut *out, const HutPartSet *parts, const HutSheetSet *sheets);
void hut_describe_totals (HutXmlOut *out, const HutPartSet *parts, const HutSheetSet *sheets, const HutDescribeSums *sums);

/* hut-describe-engineering.c: what is reckoned of the design */
void hut_describe_engineering (HutXmlOut *out, const HutAssembly *assembly, const HutPartSet *parts);

/* hut-describe-hardware.c */
void hut_describe_hardware (HutXmlOut *out, const HutAssembly *assembly);
void hut_describe_marks (HutXmlOut *out, const HutPart *part);

/* (transfer none): names in the file; static */
const char *hut_describe_panel_name (const HutAssembly *assembly, guint panel);
const char *hut_describe_part_kind (HutPartKind kind);
const char *hut_describe_solid_kind (HutSolidKind kind);
