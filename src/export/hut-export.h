/* src/export/hut-export.h: the ready-to-cut set.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "checks/hut-finding.h"
#include "sheets/hut-sheet.h"
#include <gio/gio.h>

typedef enum
{
  HUT_EXPORT_ERROR_BLOCKED, /* a finding blocks: status 1 */
  HUT_EXPORT_ERROR_FORMAT,  /* a format or check id that does not exist: status 2 */
  HUT_EXPORT_ERROR_IO,      /* writing failed; nothing is left behind: status 3 */
} HutExportError;

#define HUT_EXPORT_ERROR (hut_export_error_quark ())
GQuark hut_export_error_quark (void);

typedef enum
{
  HUT_FORMAT_SVG = 1 << 0,
  HUT_FORMAT_DXF = 1 << 1,
  HUT_FORMAT_CSV = 1 << 2,
  HUT_FORMAT_PLAIN = 7, /* what serves any cutter */
  HUT_FORMAT_GCODE = 1 << 3,
  HUT_FORMAT_PDF_A4 = 1 << 4, /* full size on paper */
  HUT_FORMAT_PDF_A3 = 1 << 5,
  HUT_FORMAT_PDF_LETTER = 1 << 6,
  HUT_FORMAT_DXF_R12 = 1 << 7, /* for old readers */
} HutFormats;

/* Check id under which a part blocks that checks let pass and that still fits no sheet. */
#define HUT_EXPORT_UNPLACED_CHECK "bed.part"

/**
 * hut_export_add_unplaced:
 * @findings: (element-type HutFinding): of hut_check_all (), which knows of no sheets
 *
 * Adds one that blocks for each part that is on no sheet although bed and stock would take it:
 * those that
 * they do not take are findings already. They come behind the others that block.
 */
void hut_export_add_unplaced (GPtrArray *findings,
                              const HutAssembly *assembly,
                              const HutPartSet *parts,
                              const HutSheetSet *sheets);

/* "svg,dxf,csv" -> flags; FALSE with HUT_EXPORT_ERROR_FORMAT naming what is allowed. */
gboolean hut_formats_parse (const char *list, HutFormats *formats, GError **error);
/* Where none is named: the plain ones, and G-code for a router, or a laser all of whose recipes
 * have power. */
HutFormats hut_formats_usual (const HutDesign *design);
/* FALSE with HUT_EXPORT_ERROR_FORMAT when there is none. */
gboolean hut_formats_check (HutFormats formats, GError **error);

typedef struct
{
  HutFormats formats;
  const char *const *allowed; /* NULL-terminated check ids, or NULL */
  const char *source_name;    /* file name of the design for the manifest, no folder; or NULL */
} HutExportOptions;

/* @fraction_ratio 0..1, @file what is being written. */
typedef void (*HutExportProgress) (double fraction_ratio, const char *file, gpointer user_data);

/**
 * hut_export_set:
 * @folder: where the set shall be; must not exist, be empty, or hold an earlier set (its manifest
 *   is read: only files that it lists are replaced, a folder with other files in it is refused)
 * @written: (out) (transfer full) (element-type utf8): names of the files, sorted
 *
 * Everything is written to a folder beside @folder and renamed when whole.
 */
gboolean hut_export_set (const HutDesign *design,
                         const char *folder,
                         const HutExportOptions *options,
                         HutExportProgress progress,
                         gpointer user_data,
                         GCancellable *cancellable,
                         GStrv *written,
                         GError **error);

/* Bytes of single files (transfer full); pure. */
GBytes *hut_write_sheet_svg (const HutAssembly *assembly,
                             const HutPartSet *parts,
                             const HutSheet *sheet,
                             GError **error) G_GNUC_WARN_UNUSED_RESULT;
GBytes *hut_write_sheet_dxf (const HutAssembly *assembly,
                             const HutPartSet *parts,
                             const HutSheet *sheet,
                             GError **error) G_GNUC_WARN_UNUSED_RESULT;
GBytes *hut_write_cut_list_csv (const HutAssembly *assembly,
                                const HutPartSet *parts,
                                const HutSheetSet *sheets) G_GNUC_WARN_UNUSED_RESULT;
/* XML of all that is derived; schema in src/export/describe.rng. */
GBytes *hut_write_describe (const HutAssembly *assembly,
                            const HutPartSet *parts,
                            const HutSheetSet *sheets,
                            const GPtrArray *findings,
                            GError **error) G_GNUC_WARN_UNUSED_RESULT;
