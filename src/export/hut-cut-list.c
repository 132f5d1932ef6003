/* src/export/hut-cut-list.c: the parts as tables, CSV.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Source of the format: RFC 4180 (fields with commas, quotes or line ends are quoted; CR LF). */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "format/hut-number.h"
#include "export/hut-write.h"
#include <string.h>

/* Decimals: the grid for lengths; grams for masses. */
#define LENGTH_DECIMALS 3
#define MASS_DECIMALS 3
#define ANGLE_DECIMALS 4
#define KG_PER_MM3_PER_KG_M3 1e-9

static const char CUT_LIST_HEAD[]
    = "part,kind,panel,stock,thickness_mm,width_mm,height_mm,sheet,x_mm,y_mm,turn_deg,"
      "cut_length_mm,mass_kg,note\r\n";
static const char CUT_TO_SIZE_HEAD[]
    = "part,kind,panel,stock,thickness_mm,width_mm,height_mm,thickness_from_mm,thickness_to_mm,"
      "larger_by_mm,smaller_by_mm,diagonals_mm,openings,mass_kg,note\r\n";

/* What the supplier may be off. Common practice, no source: a panel saw keeps half a millimetre, a
 * glass or plastics shop one. */
#define PANEL_OFF_MM 0.5
#define PANE_SMALLER_MM 1.0
/* Most of a pane's hold that may be missing; own choice: three quarters of it stay on each side. */
#define HOLD_RATIO 0.25
/* The two diagonals may differ by a thousandth: edges straight within 1 in 1000. */
#define DIAGONAL_RATIO 1e-3
#define DIAGONAL_MIN_MM 0.5

static const char *
kind_to_string (HutPartKind kind)
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
  g_assert_not_reached ();
}

static void
append_field (GString *table,
              const char *field)
{
  if (strpbrk (field, ",\"\r\n") == NULL)
    {
      g_string_append (table, field);
      return;
    }
  g_string_append_c (table, '"');
  for (const char *at = field; *at != '\0'; at++)
    {
      if (*at == '"')
        g_string_append_c (table, '"');
      g_string_append_c (table, *at);
    }
  g_string_append_c (table, '"');
}

static void
append_number (GString *table,
               double value,
               guint decimals)
{
  char buffer[HUT_NUMBER_SIZE];

  g_string_append_c (table, ',');
  g_string_append (table, hut_number_fixed (buffer, value, decimals));
}

/* The columns that both tables begin with: what it is, of what, and how large. */
static void
append_what (GString *table,
             const HutAssembly *assembly,
             const HutPart *part)
{
  const HutPanel *panel = part->panel != HUT_PART_NO_PANEL
                              ? g_ptr_array_index (assembly->panels, part->panel)
                              : NULL;
  const HutRect bounds = hut_region_bounds (part->region);

  append_field (table, part->id);
  g_string_append_printf (table, ",%s,%s,", kind_to_string (part->kind),
                          panel != NULL ? hut_panel_id_to_string (panel->id) : "");
  append_field (table, part->stock->id);
  append_number (table, part->thickness_mm, LENGTH_DECIMALS);
  append_number (table, bounds.u1 - bounds.u0, LENGTH_DECIMALS);
  append_number (table, bounds.v1 - bounds.v0, LENGTH_DECIMALS);
}

static double
part_mass_kg (const HutPart *part)
{
  return hut_region_area_mm2 (part->region) * part->thickness_mm * part->stock->density_kg_m3
         * KG_PER_MM3_PER_KG_M3;
}

static const HutLaidPart *
find_laid (const HutSheetSet *sheets,
           guint part,
           const HutSheet **sheet)
{
  for (guint i = 0; i < sheets->sheets->len; i++)
    {
      *sheet = g_ptr_array_index (sheets->sheets, i);
      for (guint k = 0; k < (*sheet)->laid->len; k++)
        {
          const HutLaidPart *laid = &g_array_index ((*sheet)->laid, HutLaidPart, k);

          if (laid->part == part)
            return laid;
        }
    }
  return NULL;
}

/* Sheet, the lower left corner of the part's box on it, and how far it is turned. */
static void
append_place (GString *table,
              const HutPartSet *parts,
              const HutSheetSet *sheets,
              guint part)
{
  const HutSheet *sheet = NULL;
  const HutLaidPart *laid = find_laid (sheets, part, &sheet);

  if (laid == NULL)
    {
      g_string_append (table, ",,,,");
      return;
    }

  const HutPart *laid_part = g_ptr_array_index (parts->parts, part);
  g_autoptr(HutPath) outer = hut_path_dup_placed (laid_part->region->outer, &laid->placement);
  const HutRect bounds = hut_path_bounds (outer);
  g_autofree char *stem = hut_sheet_dup_stem (sheet);

  g_string_append_c (table, ',');
  append_field (table, stem);
  append_number (table, bounds.u0, LENGTH_DECIMALS);
  append_number (table, bounds.v0, LENGTH_DECIMALS);
  append_number (table, laid->placement.turn_rad * 180.0 / G_PI, ANGLE_DECIMALS);
}

static void
append_cut_length (GString *table,
                   const HutPart *part,
                   HutCutterKind cutter)
{
  /* A part that cannot be cut has no length; that it cannot is reported by the cut files. */
  g_autoptr(HutRegion) cut = hut_part_dup_tool_way (part, cutter, NULL);

  if (cut != NULL)
    append_number (table, hut_region_length_mm (cut), LENGTH_DECIMALS);
  else
    g_string_append_c (table, ',');
}

static void
append_note (GString *table,
             gboolean unplaced,
             const char *mark)
{
  g_autofree char *note
      = g_strconcat (unplaced ? "fits no sheet" : "", unplaced && mark != NULL ? "; " : "",
                     mark != NULL ? mark : "", NULL);

  g_string_append_c (table, ',');
  append_field (table, note);
  g_string_append (table, "\r\n");
}

GBytes *
hut_write_marked_cut_list (const HutAssembly *assembly,
                           const HutPartSet *parts,
                           const HutSheetSet *sheets,
                           const char *mark)
{
  g_return_val_if_fail (assembly != NULL && parts != NULL && sheets != NULL, NULL);

  GString *table = g_string_new (CUT_LIST_HEAD);

  for (guint i = 0; i < parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (parts->parts, i);
      const HutSheet *sheet = NULL;

      if (part->bought)
        continue;
      append_what (table, assembly, part);
      append_place (table, parts, sheets, i);
      append_cut_length (table, part, assembly->design->cutter.kind);
      append_number (table, part_mass_kg (part), MASS_DECIMALS);
      append_note (table, find_laid (sheets, i, &sheet) == NULL, mark);
    }
  return g_string_free_to_bytes (table);
}

/* How much smaller a part may be and still do; a pane is held by its overlap all round. */
static double
smaller_by_mm (const HutAssembly *assembly,
               const HutPart *part)
{
  const HutWindow *window
      = part->item != NULL ? hut_design_get_window (assembly->design, part->item) : NULL;

  if (part->kind != HUT_PART_GLAZING)
    return PANEL_OFF_MM;
  return window != NULL ? MIN (PANE_SMALLER_MM, 2.0 * HOLD_RATIO * window->overlap_mm)
                        : PANEL_OFF_MM;
}

/* What the supplier has to know beside the size: what it may be off, and that it has openings. */
static void
append_tolerances (GString *table,
                   const HutAssembly *assembly,
                   const HutPart *part)
{
  const HutRect box = hut_region_bounds (part->region);
  const double diagonal_mm = hypot (box.u1 - box.u0, box.v1 - box.v0);

  append_number (table, hut_stock_min_mm (part->stock), LENGTH_DECIMALS);
  append_number (table, hut_stock_max_mm (part->stock), LENGTH_DECIMALS);
  /* Anything larger than planned could meet a screw, a frame or the next part. */
  append_number (table, part->kind == HUT_PART_GLAZING ? 0.0 : PANEL_OFF_MM, LENGTH_DECIMALS);
  append_number (table, smaller_by_mm (assembly, part), LENGTH_DECIMALS);
  append_number (table, MAX (DIAGONAL_MIN_MM, DIAGONAL_RATIO * diagonal_mm), LENGTH_DECIMALS);
  g_string_append_printf (table, ",%u", part->region->holes->len);
}

GBytes *
hut_write_marked_cut_to_size (const HutAssembly *assembly,
                              const HutPartSet *parts,
                              const char *mark)
{
  g_return_val_if_fail (assembly != NULL && parts != NULL, NULL);

  GString *table = g_string_new (CUT_TO_SIZE_HEAD);
  gboolean any = FALSE;

  for (guint i = 0; i < parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (parts->parts, i);

      if (!part->bought)
        continue;
      any = TRUE;
      append_what (table, assembly, part);
      append_tolerances (table, assembly, part);
      append_number (table, part_mass_kg (part), MASS_DECIMALS);
      append_note (table, FALSE, mark);
    }
  if (any)
    return g_string_free_to_bytes (table);
  g_string_free (table, TRUE);
  return NULL;
}

GBytes *
hut_write_cut_list_csv (const HutAssembly *assembly,
                        const HutPartSet *parts,
                        const HutSheetSet *sheets)
{
  return hut_write_marked_cut_list (assembly, parts, sheets, NULL);
}
