/* src/export/hut-coupon-set.c: the cut files of coupons.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-coupon-set.h"
#include "design/hut-file.h"
#include "export/hut-formats.h"
#include "export/hut-manifest.h"
#include "export/hut-set-folder.h"
#include "export/hut-write.h"
#include "format/hut-number.h"
#include "sheets/hut-sheet.h"
#include <string.h>

#define READINGS_NAME "coupon-readings.csv"
#define READINGS_HEAD "stock,drawn_for_kerf_mm,bars,play_of_all_bars_mm,tooth,feels\r\n"
#define KERF_DECIMALS 3

/* ---- tool paths ------------------------------------------------------------------------------ */

static HutToolPath *
new_tool_path (HutLayer layer,
               const char *id)
{
  HutToolPath *self = g_new0 (HutToolPath, 1);

  self->layer = layer;
  self->id = g_strdup (id);
  return self;
}

static void
add_closed (GPtrArray *paths,
            HutLayer layer,
            const char *id,
            const HutPath *path,
            HutPoint at)
{
  HutToolPath *self = new_tool_path (layer, id);
  const HutPlacement placement = { .shift = at };

  self->closed = hut_path_dup_placed (path, &placement);
  self->outline = layer == HUT_LAYER_CUT_OUTSIDE;
  g_ptr_array_add (paths, self);
}

static void
add_lines (GPtrArray *paths,
           HutLayer layer,
           const char *id,
           const GPtrArray *lines,
           HutPoint at)
{
  HutToolPath *self = new_tool_path (layer, id);

  self->strokes = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  for (guint i = 0; i < lines->len; i++)
    {
      GArray *line = g_array_copy (g_ptr_array_index (lines, i));

      for (guint k = 0; k < line->len; k++)
        {
          g_array_index (line, HutPoint, k).u += at.u;
          g_array_index (line, HutPoint, k).v += at.v;
        }
      g_ptr_array_add (self->strokes, line);
    }
  g_ptr_array_add (paths, self);
}

GPtrArray *
hut_coupon_dup_tool_paths (const HutCoupon *self,
                           HutPoint at)
{
  g_return_val_if_fail (self != NULL, NULL);

  GPtrArray *paths = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_tool_path_free);

  add_lines (paths, HUT_LAYER_SCORE, "labels", self->labels, at);
  add_lines (paths, HUT_LAYER_CUT_INSIDE, "between-bars", self->parting, at);
  add_closed (paths, HUT_LAYER_CUT_INSIDE, "bars-window", self->window, at);
  add_closed (paths, HUT_LAYER_CUT_INSIDE, "gauge", self->gauge, at);
  add_closed (paths, HUT_LAYER_CUT_OUTSIDE, "plate", self->plate, at);
  return paths;
}

/* ---- files ----------------------------------------------------------------------------------- */

static gboolean
add_coupon (GPtrArray *files,
            const HutDesign *design,
            const HutStock *stock,
            const HutCoupon *coupon,
            HutFormats formats,
            GError **error)
{
  const HutRect room = hut_sheet_usable (&design->cutter, stock);
  g_autoptr(GPtrArray) paths
      = hut_coupon_dup_tool_paths (coupon, (HutPoint) { room.u0, room.v0 });
  g_autofree char *name = g_strconcat ("coupon-", stock->id, NULL);
  guint format_count = 0;
  const HutSheetFormat *sheet_formats = hut_sheet_formats (&format_count);
  HutWritePage page = {
    .paths = paths,
    .design_name = design->name,
    .name = name,
    .stock = stock,
    .cutter = &design->cutter,
  };

  hut_cutter_sheet (&design->cutter, stock, &page.width_mm, &page.depth_mm);
  for (guint i = 0; i < format_count; i++)
    if ((formats & sheet_formats[i].format) != 0)
      {
        g_autofree char *file_name = g_strconcat (name, sheet_formats[i].suffix, NULL);
        GBytes *bytes = sheet_formats[i].write (&page, error);

        if (bytes == NULL)
          return FALSE;
        g_ptr_array_add (files, hut_set_file_new (file_name, bytes));
      }
  return TRUE;
}

/* A line per tooth, to be filled in beside the machine. */
static void
append_readings (GString *table,
                 const HutStock *stock,
                 const HutCouponPlan *plan)
{
  char kerf[HUT_NUMBER_SIZE];

  hut_number_fixed (kerf, plan->kerf_mm, KERF_DECIMALS);
  for (guint i = 0; i < plan->tooth_count; i++)
    g_string_append_printf (table, "%s,%s,%u,,%d,\r\n", stock->id, kerf, plan->bar_count,
                            hut_coupon_tooth_label (plan, i));
}

/* FALSE with an error only when the one wanted stock, or none at all, gets a coupon. */
static gboolean
add_coupons (GPtrArray *files,
             const HutDesign *design,
             const char *only,
             HutFormats formats,
             GError **error)
{
  GString *table = g_string_new (READINGS_HEAD);
  g_autoptr(GError) last = NULL;
  guint count = 0;
  gboolean whole = TRUE;

  for (guint i = 0; whole && i < design->stocks->len; i++)
    {
      const HutStock *stock = g_ptr_array_index (design->stocks, i);
      g_autoptr(HutCoupon) coupon = NULL;

      if (only != NULL && !g_str_equal (only, stock->id))
        continue;
      g_clear_error (&last);
      coupon = hut_coupon_new (stock, &design->cutter, &last);
      if (coupon == NULL)
        continue;
      whole = add_coupon (files, design, stock, coupon, formats, error);
      append_readings (table, stock, &coupon->plan);
      count++;
    }
  if ((formats & HUT_FORMAT_CSV) != 0)
    g_ptr_array_add (files, hut_set_file_new (READINGS_NAME, g_string_free_to_bytes (table)));
  else
    g_string_free (table, TRUE);
  if (whole && count == 0)
    g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_BLOCKED,
                 "nothing was written, because %s",
                 last != NULL ? last->message : "the design has no stock");
  return whole && count > 0;
}

static int
compare_files (gconstpointer a,
               gconstpointer b)
{
  return strcmp ((*(HutSetFile *const *) a)->name, (*(HutSetFile *const *) b)->name);
}

static gboolean
add_manifest (GPtrArray *files,
              const HutDesign *design,
              GError **error)
{
  g_autofree char *xml = hut_design_to_xml (design);
  g_autofree char *sha256 = g_compute_checksum_for_string (G_CHECKSUM_SHA256, xml, -1);
  g_autoptr(GPtrArray) none = g_ptr_array_new ();
  const HutManifestFacts facts = {
    .design_name = design->name, .design_sha256 = sha256, .findings = none,
  };
  GBytes *manifest;

  g_ptr_array_sort (files, compare_files);
  manifest = hut_manifest_write (&facts, files, error);
  if (manifest == NULL)
    return FALSE;
  g_ptr_array_add (files, hut_set_file_new (HUT_MANIFEST_NAME, manifest));
  return TRUE;
}

static GStrv
dup_names (GPtrArray *files)
{
  g_autoptr(GStrvBuilder) names = g_strv_builder_new ();

  g_ptr_array_sort (files, compare_files);
  for (guint i = 0; i < files->len; i++)
    g_strv_builder_add (names, ((HutSetFile *) g_ptr_array_index (files, i))->name);
  return g_strv_builder_end (names);
}

gboolean
hut_coupon_set (const HutDesign *design,
                const char *stock,
                HutFormats formats,
                const char *folder,
                GCancellable *cancellable,
                GStrv *written,
                GError **error)
{
  g_return_val_if_fail (design != NULL && folder != NULL, FALSE);

  g_autoptr(GPtrArray) files
      = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_set_file_free);
  const HutSetWatch watch = { NULL, NULL, cancellable };

  if (stock != NULL && hut_design_get_stock (design, stock) == NULL)
    {
      g_set_error (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_FORMAT,
                   "the design has no stock “%s”; allowed: the id of one", stock);
      return FALSE;
    }
  if (!hut_formats_check (formats, error) || !hut_set_folder_check (folder, error)
      || !add_coupons (files, design, stock, formats, error)
      || !add_manifest (files, design, error)
      || !hut_set_folder_write (folder, files, 0.0, &watch, error))
    return FALSE;
  if (written != NULL)
    *written = dup_names (files);
  return TRUE;
}
