/* src/export/hut-write.h: the writers of single files, with the mark of overridden checks.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * @mark is one line of plain text that says which checks were overridden, or NULL; every writer
 * puts it where a reader of that file finds it. All are pure. */
#pragma once
#include "export/hut-export.h"
#include "export/hut-tool-path.h"

/* Decimals of a coordinate in cut files: lengths of both formats then agree far under 1e-6 mm. */
#define HUT_WRITE_DECIMALS 9

/* What the tool does on one piece of stock, and what a reader of the file has to know. All lent. */
typedef struct
{
  const GPtrArray *paths;    /* HutToolPath, in the order of the work; frame of the page, mm */
  double width_mm, depth_mm; /* of the page: a sheet as it lies on the bed, (0,0) front left */
  const char *design_name;   /* or NULL */
  const char *name;          /* of the page: "plywood-6-sheet-1" */
  const char *mark;          /* or NULL */
  const HutStock *stock;
  const HutCutter *cutter;
  const char *const *notes; /* NULL-terminated lines for the first page on paper; NULL: those on cutting */
} HutWritePage;

/* (transfer none) (nullable): a sentence on lead-ins and tabs for files that have only the lines;
 * NULL
 * where the cutter has none. */
const char *hut_write_entry_note (const HutCutter *cutter);

/* A page as SVG or DXF R2000. @error: when memory ran out. */
GBytes *hut_write_page_svg (const HutWritePage *page, GError **error) G_GNUC_WARN_UNUSED_RESULT;
GBytes *hut_write_page_dxf (const HutWritePage *page, GError **error) G_GNUC_WARN_UNUSED_RESULT;

typedef GBytes *(*HutPageWriter) (const HutWritePage *page, GError **error);
/* The tool paths of a sheet through @writer. @error: as the writer has it, or HUT_GEOM_ERROR_* when
 * kerf or fit swallow something of a part. */
GBytes *hut_write_sheet_page (const HutAssembly *assembly,
                              const HutPartSet *parts,
                              const HutSheet *sheet,
                              const char *mark,
                              HutPageWriter writer,
                              GError **error) G_GNUC_WARN_UNUSED_RESULT;

/* A sheet as SVG. @error: HUT_GEOM_ERROR_* when kerf or fit swallow something of a part. */
GBytes *hut_write_marked_svg (const HutAssembly *assembly,
                              const HutPartSet *parts,
                              const HutSheet *sheet,
                              const char *mark,
                              GError **error) G_GNUC_WARN_UNUSED_RESULT;
/* The same as DXF R2000. */
GBytes *hut_write_marked_dxf (const HutAssembly *assembly,
                              const HutPartSet *parts,
                              const HutSheet *sheet,
                              const char *mark,
                              GError **error) G_GNUC_WARN_UNUSED_RESULT;
/* One line per part that is cut: what it is, where it lies, how long its cut is, what it weighs. */
GBytes *hut_write_marked_cut_list (const HutAssembly *assembly,
                                   const HutPartSet *parts,
                                   const HutSheetSet *sheets,
                                   const char *mark) G_GNUC_WARN_UNUSED_RESULT;
/* Sheets to buy of each stock, and where they are larger than the bed, how they are sawn down to it:
 * the cuts are by hand or by the supplier. (nullable): NULL when nothing is cut. */
GBytes *hut_write_marked_blank_list (const HutAssembly *assembly,
                                     const HutSheetSet *sheets,
                                     const char *mark) G_GNUC_WARN_UNUSED_RESULT;
/* One line per sheet: its parts, how much of it is used, length, pierces, time; then one for all. */
GBytes *hut_write_marked_sheet_list (const HutPartSet *parts,
                                     const HutSheetSet *sheets,
                                     const char *mark) G_GNUC_WARN_UNUSED_RESULT;
/* Hardware, screws, nuts and washers to buy. (nullable): NULL when there is nothing. */
GBytes *hut_write_marked_shopping_list (const HutAssembly *assembly,
                                        const HutPartSet *parts,
                                        const char *mark) G_GNUC_WARN_UNUSED_RESULT;
/* Bought parts with their sizes. (nullable): NULL when none is bought. */
GBytes *hut_write_marked_cut_to_size (const HutAssembly *assembly,
                                      const HutPartSet *parts,
                                      const char *mark) G_GNUC_WARN_UNUSED_RESULT;

/* (transfer full): "plywood-6-sheet-01": at least two digits, so that names sort by number. */
char *hut_sheet_dup_stem (const HutSheet *sheet) G_GNUC_WARN_UNUSED_RESULT;
