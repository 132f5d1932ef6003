/* tests/export/test-dxf.c: cut files as readers of others see them.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * read_dxf.py reads DXF with ezdxf and SVG with a parser of its own, and compares both with numbers
 * that this test takes from the model. */
#include "design/hut-file.h"
#include "export/hut-export.h"
#include "export/hut-write.h"
#include "hut-assert.h"
#include "hut-hand-part.h"
#include "hut-random-design.h"
#include "hut-random.h"
#include "sheets/hut-label.h"
#include <glib/gstdio.h>

/* A layout will do: how good it is is not asked here. */
#define QUICK_WORK 1

#define RANDOM_DESIGNS 110
#define DESIGNS_LEAST 30 /* so that the shares mean something */
#define SMALL_BED_EVERY 20
#define LARGE_BED_MM 4000.0

/* A folder of cut files that read_dxf.py looks through in one go. */
typedef struct
{
  char *folder;
  GString *index;
  guint count;
} Batch;

static void
batch_init (Batch *self)
{
  g_autoptr(GError) error = NULL;

  self->folder = g_dir_make_tmp ("hut-dxf-XXXXXX", &error);
  assert_ok (self->folder != NULL, error);
  self->index = g_string_new (NULL);
  self->count = 0;
}

static void
batch_clear (Batch *self)
{
  g_autoptr(GDir) dir = g_dir_open (self->folder, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (self->folder, name, NULL);

      g_unlink (path);
    }
  g_rmdir (self->folder);
  g_free (self->folder);
  g_string_free (self->index, TRUE);
}

static void
write_bytes (const Batch *self,
             const char *name,
             const char *suffix,
             GBytes *bytes)
{
  g_autofree char *file = g_strconcat (name, suffix, NULL);
  g_autofree char *path = g_build_filename (self->folder, file, NULL);
  g_autoptr(GError) error = NULL;
  gsize size;
  const char *data = g_bytes_get_data (bytes, &size);

  assert_ok (g_file_set_contents (path, data, (gssize) size, &error), error);
}

/* Numbers of the model, not of the writers. */
typedef struct
{
  double score_mm, inside_mm, outside_mm, inside_mm2, outside_mm2;
  guint circles, arcs;
} Sums;

static gboolean
is_circle (const HutPath *path)
{
  const double area_mm2 = fabs (hut_path_area_mm2 (path)), length_mm = hut_path_length_mm (path);

  /* Of all closed lines the circle alone holds length^2 / (4 pi). */
  return fabs (length_mm * length_mm / (4.0 * G_PI) / area_mm2 - 1.0) < 1e-9;
}

static void
count_arcs (Sums *sums,
            const HutPath *path)
{
  if (is_circle (path))
    {
      sums->circles++;
      return;
    }
  for (guint i = 0; i < hut_path_get_count (path); i++)
    sums->arcs += hut_path_get (path, i)->bulge != 0.0;
}

/* Whether the part's own place lies in the hole of another one: outside of all outlines, and yet in
 * the outline of one without its holes. */
static gboolean
lies_in_a_hole (const HutPartSet *parts,
                const HutSheet *sheet,
                const HutLaidPart *laid)
{
  g_autoptr(HutRegion) own = hut_laid_part_dup_cut (laid, parts, NULL);

  for (guint i = 0; i < sheet->laid->len; i++)
    {
      const HutLaidPart *other = &g_array_index (sheet->laid, HutLaidPart, i);
      g_autoptr(HutRegion) around
          = other != laid ? hut_laid_part_dup_cut (other, parts, NULL) : NULL;

      for (guint k = 0; around != NULL && k < around->holes->len; k++)
        if (hut_path_contains (around->holes->pdata[k], hut_path_get (own->outer, 0)->p))
          return TRUE;
    }
  return FALSE;
}

/* An outline in a hole is cut inside, so that it does not drop out with the hole. */
static void
add_part (Sums *sums,
          const HutPartSet *parts,
          const HutSheet *sheet,
          const HutLaidPart *laid)
{
  const HutPart *part = g_ptr_array_index (parts->parts, laid->part);
  g_autoptr(HutRegion) cut = hut_part_dup_tool_way (part, sheet->cutter->kind, NULL);
  g_autoptr(HutLabel) label = hut_label_new (part);

  sums->score_mm += label != NULL ? hut_label_length_mm (label) : 0.0;
  if (lies_in_a_hole (parts, sheet, laid))
    {
      sums->inside_mm += hut_path_length_mm (cut->outer);
      sums->inside_mm2 += hut_path_area_mm2 (cut->outer);
    }
  else
    {
      sums->outside_mm += hut_path_length_mm (cut->outer);
      sums->outside_mm2 += hut_path_area_mm2 (cut->outer);
    }
  count_arcs (sums, cut->outer);
  for (guint i = 0; i < cut->holes->len; i++)
    {
      const HutPath *hole = g_ptr_array_index (cut->holes, i);

      sums->inside_mm += hut_path_length_mm (hole);
      sums->inside_mm2 += fabs (hut_path_area_mm2 (hole));
      count_arcs (sums, hole);
    }
}

static void
append_number (GString *text,
               double value)
{
  char buffer[G_ASCII_DTOSTR_BUF_SIZE];

  g_string_append_c (text, '\t');
  g_string_append (text, g_ascii_dtostr (buffer, sizeof buffer, value));
}

static void
append_index_line (Batch *self,
                   const char *name,
                   const HutPartSet *parts,
                   const HutSheet *sheet)
{
  Sums sums = { 0 };

  for (guint i = 0; i < sheet->laid->len; i++)
    add_part (&sums, parts, sheet, &g_array_index (sheet->laid, HutLaidPart, i));
  g_string_append (self->index, name);
  append_number (self->index, sheet->width_mm);
  append_number (self->index, sheet->depth_mm);
  append_number (self->index, sums.score_mm);
  append_number (self->index, sums.inside_mm);
  append_number (self->index, sums.outside_mm);
  append_number (self->index, sums.inside_mm2);
  append_number (self->index, sums.outside_mm2);
  g_string_append_printf (self->index, "\t%u\t%u\n", sums.circles, sums.arcs);
  self->count++;
}

/* Writes a sheet in both formats; FALSE when kerf swallows something of a part on it. */
static gboolean
batch_add (Batch *self,
           const char *name,
           const HutAssembly *assembly,
           const HutPartSet *parts,
           const HutSheet *sheet)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(GBytes) dxf = hut_write_sheet_dxf (assembly, parts, sheet, &error);
  g_autoptr(GBytes) svg = NULL;

  if (dxf == NULL)
    {
      assert_true (error->domain == HUT_GEOM_ERROR);
      return FALSE;
    }
  svg = hut_write_sheet_svg (assembly, parts, sheet, &error);
  assert_ok (svg != NULL, error);
  write_bytes (self, name, ".dxf", dxf);
  write_bytes (self, name, ".svg", svg);
  append_index_line (self, name, parts, sheet);
  return TRUE;
}

/* Returns: sheets that could not be written. */
static guint
batch_add_design (Batch *self,
                  const char *stem,
                  const HutDesign *design)
{
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
  g_autoptr(HutSheetSet) sheets
      = hut_sheet_set_new_within (assembly, parts, QUICK_WORK, NULL);
  guint failed = 0;

  for (guint i = 0; i < sheets->sheets->len; i++)
    {
      g_autofree char *name = g_strdup_printf ("%s-%u", stem, i);

      failed += !batch_add (self, name, assembly, parts, g_ptr_array_index (sheets->sheets, i));
    }
  return failed;
}

static void
batch_read (const Batch *self)
{
  g_autofree char *index = g_build_filename (self->folder, "index.tsv", NULL);
  g_autofree char *script
      = g_build_filename (g_getenv ("HUT_SOURCE_ROOT"), "tests", "export", "read_dxf.py", NULL);
  g_autofree char *output = NULL;
  g_autofree char *tail = g_strdup_printf ("read %u sheets\n", self->count);
  g_autoptr(GError) error = NULL;
  char *const argv[] = { (char *) "/usr/bin/python3", script, self->folder, NULL };
  int status = -1;

  assert_ok (g_file_set_contents (index, self->index->str, -1, &error), error);
  assert_ok (g_spawn_sync (NULL, (char **) argv, NULL, G_SPAWN_DEFAULT, NULL, NULL, &output, NULL,
                           &status, &error),
             error);
  if (status != 0 || !g_str_has_suffix (output, tail))
    fail_msg ("status %d:\n%s", status, output);
}

static void
files_of_the_examples_are_right_for_readers_of_others (void **state)
{
  const char *const *names = hut_example_names ();
  Batch batch;

  batch_init (&batch);
  for (guint i = 0; names[i] != NULL; i++)
    {
      g_autoptr(GError) error = NULL;
      g_autoptr(HutDesign) design = hut_example_load (names[i], &error);

      assert_ok (design != NULL, error);
      assert_int_equal (batch_add_design (&batch, names[i], design), 0);
    }
  assert_true (batch.count > 0);
  batch_read (&batch);
  batch_clear (&batch);
}

/* A bed as large as a workshop: all parts of a stock on one sheet or two, so that the test takes
 * seconds and yet reads as many outlines. */
static void
give_large_bed (HutDesign *design)
{
  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = LARGE_BED_MM;
  for (guint i = 0; i < design->stocks->len; i++)
    {
      HutStock *stock = g_ptr_array_index (design->stocks, i);

      stock->sheet_width_mm = stock->sheet_depth_mm = LARGE_BED_MM;
    }
}

static void
files_of_random_designs_are_right_for_readers_of_others (void **state)
{
  const guint64 count = MAX (hut_random_seed_count (RANDOM_DESIGNS), DESIGNS_LEAST);
  Batch batch;
  guint failed = 0;

  batch_init (&batch);
  for (guint64 seed = 1; seed <= count; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autofree char *stem = g_strdup_printf ("seed-%" G_GUINT64_FORMAT, seed);

      if (seed % SMALL_BED_EVERY != 0)
        give_large_bed (design);
      failed += batch_add_design (&batch, stem, design);
    }
  assert_true (batch.count > count);
  assert_true (failed < batch.count / 4);
  batch_read (&batch);
  batch_clear (&batch);
}

/* ---- by hand --------------------------------------------------------------------------------- */

/* An arc of a quarter, a half and almost a whole turn, and an outline that is a circle. */
static void
add_round_parts (HutHandParts *hand)
{
  HutPath *slot = hut_path_new ();
  HutPath *bite = hut_path_new ();
  HutPart *plate
      = hut_hand_parts_take (hand, "plate", hut_path_new_rect ((HutRect) { 0, 0, 100, 60 }, 10));

  hut_path_append (slot, (HutPoint) { 30, 20 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (slot, (HutPoint) { 60, 20 }, 1, HUT_EDGE_PLAIN);
  hut_path_append (slot, (HutPoint) { 60, 40 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (slot, (HutPoint) { 30, 40 }, 1, HUT_EDGE_PLAIN);
  hut_region_take_hole (plate->region, slot);

  hut_path_append (bite, (HutPoint) { 0, 0 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (bite, (HutPoint) { 10, 0 }, 5, HUT_EDGE_PLAIN);
  hut_path_append (bite, (HutPoint) { 10, 10 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (bite, (HutPoint) { 0, 10 }, 0, HUT_EDGE_PLAIN);
  hut_hand_parts_take (hand, "bite", bite);
  hut_hand_parts_take (hand, "disc", hut_path_new_circle ((HutPoint) { 5, 5 }, 33.3));
}

static void
round_parts_of_every_kind_keep_their_arcs (void **state)
{
  HutHandParts *hand = *state;
  Batch batch;

  add_round_parts (hand);
  batch_init (&batch);

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (set->sheets->len, 1);
  assert_true (
      batch_add (&batch, "round", hand->assembly, hand->parts, g_ptr_array_index (set->sheets, 0)));
  batch_read (&batch);
  batch_clear (&batch);
}

static void
parts_at_any_angle_keep_their_lengths (void **state)
{
  HutHandParts *hand = *state;
  Batch batch;

  hand->cutter->any_angle = TRUE;
  hut_hand_parts_take (hand, "long", hut_path_new_rect ((HutRect) { 0, 0, 440, 30 }, 8));
  batch_init (&batch);

  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);

  assert_int_equal (set->sheets->len, 1);
  assert_true (batch_add (&batch, "turned", hand->assembly, hand->parts,
                          g_ptr_array_index (set->sheets, 0)));
  batch_read (&batch);
  batch_clear (&batch);
}

static char *
dup_dxf (HutHandParts *hand,
         const char *mark)
{
  g_autoptr(HutSheetSet) set = hut_sheet_set_new (hand->assembly, hand->parts);
  g_autoptr(GError) error = NULL;
  g_autoptr(GBytes) dxf = hut_write_marked_dxf (hand->assembly, hand->parts,
                                                g_ptr_array_index (set->sheets, 0), mark, &error);
  gsize size;

  assert_ok (dxf != NULL, error);

  const char *data = g_bytes_get_data (dxf, &size);

  return g_strndup (data, size);
}

/* tan (22.5 degrees) at each rounded corner; the first one ends the lower edge at (100, 10). */
static void
quarter_circles_are_bulges_of_tan_22_5_degrees (void **state)
{
  hut_hand_parts_take (*state, "plate", hut_path_new_rect ((HutRect) { 0, 0, 100, 60 }, 10));

  g_autofree char *dxf = dup_dxf (*state, NULL);

  assert_non_null (strstr (dxf, " 10\r\n100.0\r\n 20\r\n10.0\r\n 42\r\n0.414213562373\r\n"));
}

static void
mark_of_overridden_checks_is_a_comment_of_plain_letters (void **state)
{
  hut_hand_parts_add_rect (*state, "a", 100, 60);

  g_autofree char *marked = dup_dxf (*state, "CHECKS OVERRIDDEN: a\nb");
  g_autofree char *plain = dup_dxf (*state, NULL);

  assert_true (g_str_has_prefix (marked, "999\r\nCHECKS OVERRIDDEN: a?b\r\n  0\r\nSECTION\r\n"));
  assert_null (strstr (plain, "999\r\n"));
}

#define BY_HAND(test) cmocka_unit_test_setup_teardown (test, \
        hut_hand_parts_set_up, hut_hand_parts_tear_down)

int
main (void)
{
  const struct CMUnitTest tests[] = {
    BY_HAND (round_parts_of_every_kind_keep_their_arcs),
    BY_HAND (parts_at_any_angle_keep_their_lengths),
    BY_HAND (quarter_circles_are_bulges_of_tan_22_5_degrees),
    BY_HAND (mark_of_overridden_checks_is_a_comment_of_plain_letters),
    cmocka_unit_test (files_of_the_examples_are_right_for_readers_of_others),
    cmocka_unit_test (files_of_random_designs_are_right_for_readers_of_others),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
