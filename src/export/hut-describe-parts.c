/* src/export/hut-describe-parts.c: parts, splices, holes and sheets in the description.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-describe-private.h"
#include "assembly/hut-part-grain.h"
#include "export/hut-sheet-figures.h"

#define DEGREES_PER_RADIAN (180.0 / G_PI)

const char *
hut_describe_part_kind (HutPartKind kind)
{
  switch (kind)
    {
    case HUT_PART_PANEL:
      return "panel";
    case HUT_PART_GLAZING:
      return "glazing";
    case HUT_PART_FRAME:
      return "frame";
    case HUT_PART_STRAP:
      return "strap";
    case HUT_PART_BAFFLE:
      return "baffle";
    case HUT_PART_FACE_PLATE:
      return "face-plate";
    case HUT_PART_EXTRA:
      return "extra";
    case HUT_PART_TRAP:
      return "trap";
    }
  g_return_val_if_reached ("panel");
}

/* How its grain shall run; NULL: as it comes. */
static const char *
describe_grain (const HutPart *part)
{
  switch (hut_part_grain_rule (part))
    {
    case HUT_GRAIN_RULE_UP:
      return "up";
    case HUT_GRAIN_RULE_ACROSS:
      return "across";
    case HUT_GRAIN_RULE_FREE:
    default:
      return NULL;
    }
}

/* The tool's path, or why there is none. Bought parts have neither: nobody cuts them here.
 * Returns: length of the cut, mm; 0 without one */
static double
describe_cut (HutXmlOut *out,
              const HutPart *part,
              HutCutterKind cutter)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(HutRegion) cut = NULL;
  double length_mm = 0.0;

  if (part->bought)
    return 0.0;
  cut = hut_part_dup_tool_way (part, cutter, &error);
  if (cut == NULL)
    {
      hut_xml_out_open (out, "no-cut");
      hut_xml_out_text (out, "reason", error->message);
    }
  else
    {
      length_mm = hut_region_length_mm (cut);
      hut_xml_out_open (out, "cut");
      hut_xml_out_number (out, "length", length_mm);
      hut_describe_region (out, cut);
    }
  hut_xml_out_close (out);
  return length_mm;
}

static void
describe_part (HutXmlOut *out,
               const HutAssembly *assembly,
               const HutPart *part,
               HutDescribeSums *sums)
{
  const double area_mm2 = hut_region_area_mm2 (part->region);
  const double volume_mm3 = area_mm2 * part->thickness_mm;
  double matrix[16];

  hut_part_get_matrix (part, assembly, matrix);
  hut_xml_out_open (out, "part");
  hut_xml_out_text (out, "id", part->id);
  hut_xml_out_text (out, "label", part->label);
  hut_xml_out_text (out, "kind", hut_describe_part_kind (part->kind));
  hut_xml_out_text (out, "shell", part->shell == HUT_SHELL_LID ? "lid" : "base");
  if (part->panel != HUT_PART_NO_PANEL)
    hut_xml_out_text (out, "panel", hut_describe_panel_name (assembly, part->panel));
  if (part->item != NULL)
    hut_xml_out_text (out,
                      part->kind == HUT_PART_FACE_PLATE ? "hardware"
                      : part->kind == HUT_PART_EXTRA    ? "extra"
                      : part->kind == HUT_PART_TRAP     ? "opening"
                                                        : "window",
                      part->item);
  hut_xml_out_text (out, "stock", part->stock->id);
  if (describe_grain (part) != NULL)
    hut_xml_out_text (out, "grain", describe_grain (part));
  hut_xml_out_number (out, "thickness", part->thickness_mm);
  hut_xml_out_number (out, "depth", part->depth_mm);
  hut_xml_out_flag (out, "bought", part->bought);
  hut_xml_out_number (out, "area", area_mm2);
  hut_xml_out_number (out, "volume", volume_mm3);
  hut_xml_out_numbers (out, "matrix", matrix, G_N_ELEMENTS (matrix));
  hut_describe_region (out, part->region);
  sums->cut_mm += describe_cut (out, part, assembly->design->cutter.kind);
  hut_describe_marks (out, part);
  hut_xml_out_close (out);

  sums->bought_count += part->bought ? 1 : 0;
  sums->area_mm2 += area_mm2;
  sums->volume_mm3 += volume_mm3;
}

void
hut_describe_parts (HutXmlOut *out,
                    const HutAssembly *assembly,
                    const HutPartSet *parts,
                    HutDescribeSums *sums)
{
  *sums = (HutDescribeSums) { 0 };
  hut_xml_out_open (out, "parts");
  for (guint i = 0; i < parts->parts->len; i++)
    describe_part (out, assembly, parts->parts->pdata[i], sums);
  hut_xml_out_close (out);
}

void
hut_describe_splices (HutXmlOut *out,
                      const HutAssembly *assembly,
                      const HutPartSet *parts)
{
  hut_xml_out_open (out, "splices");
  for (guint i = 0; i < parts->splices->len; i++)
    {
      const HutSplice *splice = &g_array_index (parts->splices, HutSplice, i);

      hut_xml_out_open (out, "splice");
      hut_xml_out_text (out, "panel", hut_describe_panel_name (assembly, splice->panel));
      hut_xml_out_text (out, "of", hut_describe_part_kind (splice->of));
      if (splice->item != NULL)
        hut_xml_out_text (out, "window", splice->item);
      hut_xml_out_text (out, "line", splice->vertical ? "vertical" : "horizontal");
      hut_xml_out_number (out, "at", splice->at_mm);
      hut_xml_out_number (out, "from", splice->from_mm);
      hut_xml_out_number (out, "to", splice->to_mm);
      hut_xml_out_count (out, "fingers", splice->finger_count);
      hut_xml_out_number (out, "reach", splice->reach_mm);
      hut_xml_out_close (out);
    }
  hut_xml_out_close (out);
}

/* TRUE when the border of a hole runs, at least for a piece, along the border of a part. A splice
 * that parts a hole's border puts a corner of each part on it; else a corner of the hole lies on
 * the part's border. No part has material inside a hole: what is in or on it lies on its border. */
static gboolean
path_borders_part (const HutPath *path,
                   const HutPart *part)
{
  for (guint i = 0; i < hut_path_get_count (path); i++)
    {
      if (hut_region_contains (part->region, hut_path_get (path, i)->p))
        return TRUE;
    }
  for (guint i = 0; i < hut_path_get_count (part->region->outer); i++)
    {
      if (hut_path_contains (path, hut_path_get (part->region->outer, i)->p))
        return TRUE;
    }
  return FALSE;
}

static gboolean
hole_is_in_part (const HutPlacedHole *hole,
                 const HutPart *part)
{
  if (part->kind != HUT_PART_PANEL || part->panel != hole->panel)
    return FALSE;
  for (guint i = 0; i < hole->paths->len; i++)
    {
      if (path_borders_part (hole->paths->pdata[i], part))
        return TRUE;
    }
  return FALSE;
}

static const char *
hole_name (const HutDesign *design,
           const HutPlacedHole *hole)
{
  switch (hole->source)
    {
    case HUT_HOLE_WINDOW:
    case HUT_HOLE_SCREWS:
      return hut_design_get_window (design, hole->item)->name;
    case HUT_HOLE_HARDWARE:
      return hut_design_get_hardware (design, hole->item)->name;
    case HUT_HOLE_OPENING:
    default:
      return hut_design_get_opening (design, hole->item)->name;
    }
}

static void
describe_hole (HutXmlOut *out,
               const HutAssembly *assembly,
               const HutPartSet *parts,
               const HutPlacedHole *hole)
{
  static const char *const kinds[] = {
    [HUT_HOLE_OPENING] = "opening",
    [HUT_HOLE_WINDOW] = "window",
    [HUT_HOLE_SCREWS] = "frame-screws",
    [HUT_HOLE_HARDWARE] = "hardware",
  };

  hut_xml_out_open (out, kinds[hole->source]);
  hut_xml_out_text (out, "id", hole->item);
  hut_xml_out_text (out, "name", hole_name (assembly->design, hole));
  hut_xml_out_text (out, "panel", hut_describe_panel_name (assembly, hole->panel));
  hut_xml_out_number (out, "u", hole->centre.u);
  hut_xml_out_number (out, "v", hole->centre.v);
  hut_xml_out_flag (out, "cut", hole->cut);
  hut_describe_rect (out, "bounds", hole->bounds);
  for (guint i = 0; hole->cut && i < parts->parts->len; i++)
    {
      const HutPart *part = parts->parts->pdata[i];

      if (hole_is_in_part (hole, part))
        {
          hut_xml_out_open (out, "in");
          hut_xml_out_text (out, "part", part->id);
          hut_xml_out_close (out);
        }
    }
  hut_xml_out_close (out);
}

void
hut_describe_holes (HutXmlOut *out,
                    const HutAssembly *assembly,
                    const HutPartSet *parts)
{
  hut_xml_out_open (out, "holes");
  for (guint i = 0; i < assembly->holes->len; i++)
    describe_hole (out, assembly, parts, assembly->holes->pdata[i]);
  hut_xml_out_close (out);
}

static void
describe_laid_part (HutXmlOut *out,
                    const HutPartSet *parts,
                    const HutLaidPart *laid)
{
  const HutPart *part = parts->parts->pdata[laid->part];

  hut_xml_out_open (out, "laid");
  hut_xml_out_text (out, "part", part->id);
  hut_xml_out_number (out, "turn", laid->placement.turn_rad * DEGREES_PER_RADIAN);
  hut_xml_out_number (out, "u", laid->placement.shift.u);
  hut_xml_out_number (out, "v", laid->placement.shift.v);
  hut_xml_out_close (out);
}

/* None for a sheet that cannot be cut: why is among the findings. */
static void
describe_figures (HutXmlOut *out,
                  const HutPartSet *parts,
                  const HutSheet *sheet)
{
  HutSheetFigures figures;

  if (!hut_sheet_get_figures (parts, sheet, &figures, NULL))
    return;
  hut_xml_out_number (out, "used", figures.used_ratio);
  hut_xml_out_number (out, "cut-length", figures.cut_length_mm);
  hut_xml_out_number (out, "travel", figures.travel_mm);
  hut_xml_out_count (out, "pierces", figures.pierces);
  if (figures.cutting_s > 0.0)
    {
      hut_xml_out_number (out, "cutting-seconds", figures.cutting_s);
      hut_xml_out_number (out, "seconds", figures.time_s);
    }
  hut_xml_out_count (out, "tabs", figures.tabs);
}

void
hut_describe_sheets (HutXmlOut *out,
                     const HutPartSet *parts,
                     const HutSheetSet *sheets)
{
  hut_xml_out_open (out, "sheets");
  for (guint i = 0; i < sheets->sheets->len; i++)
    {
      const HutSheet *sheet = sheets->sheets->pdata[i];

      hut_xml_out_open (out, "sheet");
      hut_xml_out_text (out, "stock", sheet->stock->id);
      hut_xml_out_count (out, "number", sheet->number);
      hut_xml_out_number (out, "width", sheet->width_mm);
      hut_xml_out_number (out, "depth", sheet->depth_mm);
      describe_figures (out, parts, sheet);
      for (guint j = 0; j < sheet->laid->len; j++)
        describe_laid_part (out, parts, &g_array_index (sheet->laid, HutLaidPart, j));
      hut_xml_out_close (out);
    }
  for (guint i = 0; i < sheets->unplaced->len; i++)
    {
      const HutPart *part = parts->parts->pdata[g_array_index (sheets->unplaced, guint, i)];

      hut_xml_out_open (out, "unplaced");
      hut_xml_out_text (out, "part", part->id);
      hut_xml_out_close (out);
    }
  hut_xml_out_close (out);
}

void
hut_describe_totals (HutXmlOut *out,
                     const HutPartSet *parts,
                     const HutSheetSet *sheets,
                     const HutDescribeSums *sums)
{
  HutSheetTotals totals;

  hut_sheet_set_get_totals (parts, sheets, &totals);
  hut_xml_out_open (out, "totals");
  hut_xml_out_count (out, "parts", parts->parts->len);
  hut_xml_out_count (out, "bought", sums->bought_count);
  hut_xml_out_count (out, "sheets", sheets->sheets->len);
  hut_xml_out_count (out, "unplaced", sheets->unplaced->len);
  hut_xml_out_number (out, "area", sums->area_mm2);
  hut_xml_out_number (out, "volume", sums->volume_mm3);
  hut_xml_out_number (out, "cut-length", sums->cut_mm);
  hut_xml_out_number (out, "used", totals.used_ratio);
  hut_xml_out_number (out, "tool-length", totals.cut_length_mm);
  hut_xml_out_count (out, "pierces", totals.pierces);
  hut_xml_out_number (out, "seconds", totals.time_s);
  if (totals.price_known)
    hut_xml_out_number (out, "price", totals.price);
  hut_xml_out_close (out);
}
