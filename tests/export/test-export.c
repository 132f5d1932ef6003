/* tests/export/test-export.c: the ready-to-cut set.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-export.h"
#include "design/hut-file.h"
#include "hut-assert.h"
#include "hut-random-design.h"
#include "hut-scratch.h"
#include <libxml/parser.h>
#include <libxml/relaxng.h>
#include <string.h>

#define RANDOM_DESIGNS 12
#define EXAMPLE "engraver" /* glazing is bought, panels are split */

/* A scratch folder, and a place in it for the set. */
typedef struct
{
  char *scratch, *out;
} Place;

static int
set_up (void **state)
{
  Place *place = g_new0 (Place, 1);

  place->scratch = hut_scratch_new ();
  place->out = g_build_filename (place->scratch, "out", NULL);
  *state = place;
  return 0;
}

static int
tear_down (void **state)
{
  Place *place = *state;

  hut_scratch_free (place->scratch);
  g_free (place->out);
  g_free (place);
  return 0;
}

static HutDesign *
new_example (void)
{
  g_autoptr(GError) error = NULL;
  HutDesign *design = hut_example_load (EXAMPLE, &error);

  assert_ok (design != NULL, error);
  return design;
}

/* Its intake is a pattern whose holes now reach over the panel's edge: opening.outside blocks. */
static HutDesign *
new_blocked_example (void)
{
  HutDesign *design = new_example ();
  HutOpening *opening = hut_design_get_opening (design, "intake");

  assert_non_null (opening);
  opening->at.u_offset_mm = 0.0;
  return design;
}

static GStrv
export (const HutDesign *design,
        const char *folder,
        const HutExportOptions *options)
{
  g_autoptr(GError) error = NULL;
  GStrv written = NULL;

  assert_ok (hut_export_set (design, folder, options, NULL, NULL, NULL, &written, &error), error);
  assert_non_null (written);
  return written;
}

/* Fails with that code and leaves the scratch folder as it was. (transfer full): the message. */
static char *
refuse (const Place *place,
        const HutDesign *design,
        const HutExportOptions *options,
        int code)
{
  g_autofree char *before = hut_scratch_list (place->scratch);
  g_autofree char *after = NULL;
  g_autoptr(GError) error = NULL;
  GStrv written = NULL;

  assert_false (
      hut_export_set (design, place->out, options, NULL, NULL, NULL, &written, &error));
  assert_true (g_error_matches (error, HUT_EXPORT_ERROR, code));
  assert_null (written);
  after = hut_scratch_list (place->scratch);
  assert_string_equal (after, before);
  return g_strdup (error->message);
}

static char *
dup_file (const char *folder,
          const char *name)
{
  g_autofree char *path = g_build_filename (folder, name, NULL);
  g_autoptr(GError) error = NULL;
  char *content = NULL;

  assert_ok (g_file_get_contents (path, &content, NULL, &error), error);
  return content;
}

static gboolean
has (GStrv names,
     const char *name)
{
  return g_strv_contains ((const char *const *) names, name);
}

static const HutExportOptions EVERYTHING = { .formats = HUT_FORMAT_PLAIN };

/* ---- what is in a set ------------------------------------------------------------------------ */

static void
set_of_the_example_has_sheets_lists_design_and_manifest (void **state)
{
  const Place *place = *state;
  g_autoptr(HutDesign) design = new_example ();
  g_auto(GStrv) written = export (design, place->out, &EVERYTHING);

  assert_true (has (written, "ply6-sheet-01.svg") && has (written, "ply6-sheet-01.dxf"));
  assert_true (has (written, "ply6-sheet-02.svg") && has (written, "ply6-sheet-02.dxf"));
  assert_true (has (written, "cut-list.csv") && has (written, "cut-to-size.csv"));
  assert_true (has (written, "design.hutch") && has (written, "manifest.xml"));
  for (guint i = 1; written[i] != NULL; i++)
    assert_true (strcmp (written[i - 1], written[i]) < 0);
}

static void
sheets_are_as_many_as_packing_says (void **state)
{
  const Place *place = *state;
  g_autoptr(HutDesign) design = new_example ();
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
  g_autoptr(HutSheetSet) sheets = hut_sheet_set_new (assembly, parts);
  const HutExportOptions only_svg = { .formats = HUT_FORMAT_SVG };
  g_auto(GStrv) written = export (design, place->out, &only_svg);

  /* One file per sheet, the design and the manifest. */
  assert_int_equal (g_strv_length (written), sheets->sheets->len + 2);
}

static void
formats_that_are_not_asked_for_are_not_written (void **state)
{
  const Place *place = *state;
  g_autoptr(HutDesign) design = new_example ();
  const HutExportOptions only_dxf = { .formats = HUT_FORMAT_DXF };
  g_auto(GStrv) written = export (design, place->out, &only_dxf);

  assert_true (has (written, "ply6-sheet-01.dxf"));
  assert_false (has (written, "ply6-sheet-01.svg"));
  assert_false (has (written, "cut-list.csv"));
}

static void
list_of_bought_parts_is_there_only_when_something_is_bought (void **state)
{
  const Place *place = *state;
  g_autoptr(HutDesign) design = new_example ();
  g_auto(GStrv) written = NULL;
  const HutExportOptions only_csv = { .formats = HUT_FORMAT_CSV };

  g_ptr_array_set_size (design->windows, 0);
  written = export (design, place->out, &only_csv);
  assert_true (has (written, "cut-list.csv"));
  assert_false (has (written, "cut-to-size.csv"));
}

static void
design_in_the_set_is_the_canonical_one (void **state)
{
  const Place *place = *state;
  g_autoptr(HutDesign) design = new_example ();
  g_auto(GStrv) written = export (design, place->out, &EVERYTHING);
  g_autofree char *file = dup_file (place->out, "design.hutch");
  g_autofree char *canonical = hut_design_to_xml (design);

  assert_string_equal (file, canonical);
}

static void
same_design_gives_the_same_bytes (void **state)
{
  const Place *place = *state;
  g_autofree char *other = g_build_filename (place->scratch, "other", NULL);
  g_autoptr(HutDesign) design = new_example ();
  g_autoptr(HutDesign) copy = hut_design_copy (design);
  g_auto(GStrv) first = export (design, place->out, &EVERYTHING);
  g_auto(GStrv) second = export (copy, other, &EVERYTHING);
  g_autofree char *first_bytes = hut_scratch_list (place->out);
  g_autofree char *second_bytes = hut_scratch_list (other);

  assert_string_equal (first_bytes, second_bytes);
}

static void
set_takes_the_place_of_an_earlier_one (void **state)
{
  const Place *place = *state;
  g_autoptr(HutDesign) design = new_example ();
  const HutExportOptions only_csv = { .formats = HUT_FORMAT_CSV };
  g_auto(GStrv) first = export (design, place->out, &EVERYTHING);
  g_auto(GStrv) second = export (design, place->out, &only_csv);
  g_autofree char *names = g_strjoinv (" ", second);

  assert_string_equal (names, "cut-list.csv cut-to-size.csv design.hutch manifest.xml sheets-to-buy.csv "
                       "sheets.csv shopping-list.csv");
}

/* ---- the manifest ---------------------------------------------------------------------------- */

static xmlDoc *
read_valid_manifest (const char *folder)
{
  g_autofree char *schema_path
      = g_build_filename (g_getenv ("HUT_SOURCE_ROOT"), "src", "export", "manifest.rng", NULL);
  g_autofree char *text = dup_file (folder, "manifest.xml");
  xmlRelaxNGParserCtxt *parser = xmlRelaxNGNewParserCtxt (schema_path);
  xmlRelaxNG *schema = xmlRelaxNGParse (parser);
  xmlRelaxNGValidCtxt *valid = xmlRelaxNGNewValidCtxt (schema);
  xmlDoc *doc = xmlReadMemory (text, (int) strlen (text), NULL, NULL, XML_PARSE_NONET);

  assert_non_null (doc);
  assert_int_equal (xmlRelaxNGValidateDoc (valid, doc), 0);
  xmlRelaxNGFreeValidCtxt (valid);
  xmlRelaxNGFree (schema);
  xmlRelaxNGFreeParserCtxt (parser);
  return doc;
}

static const xmlNode *
find_child (const xmlNode *parent,
            const char *name)
{
  for (const xmlNode *node = parent->children; node != NULL; node = node->next)
    if (xmlStrEqual (node->name, BAD_CAST name))
      return node;
  fail_msg ("no %s in the manifest", name);
  return NULL;
}

static void
assert_attribute (const xmlNode *node,
                  const char *name,
                  const char *must)
{
  xmlChar *value = xmlGetNoNsProp (node, BAD_CAST name);

  assert_non_null (value);
  assert_string_equal ((const char *) value, must);
  xmlFree (value);
}

static void
manifest_lists_every_file_with_its_size_and_sha_256 (void **state)
{
  const Place *place = *state;
  g_autoptr(HutDesign) design = new_example ();
  const HutExportOptions options = { .formats = HUT_FORMAT_PLAIN, .source_name = "bench.hutch" };
  g_auto(GStrv) written = export (design, place->out, &options);
  g_autofree char *canonical = hut_design_to_xml (design);
  g_autofree char *hash = g_compute_checksum_for_string (G_CHECKSUM_SHA256, canonical, -1);
  xmlDoc *doc = read_valid_manifest (place->out);
  const xmlNode *root = xmlDocGetRootElement (doc);
  guint listed = 0;

  assert_attribute (find_child (root, "design"), "sha256", hash);
  assert_attribute (find_child (root, "design"), "source", "bench.hutch");
  for (const xmlNode *file = find_child (root, "files")->children; file != NULL; file = file->next)
    {
      if (file->type != XML_ELEMENT_NODE)
        continue;

      xmlChar *name = xmlGetNoNsProp (file, BAD_CAST "name");
      g_autofree char *content = dup_file (place->out, (const char *) name);
      g_autofree char *sha256 = g_compute_checksum_for_string (G_CHECKSUM_SHA256, content, -1);
      g_autofree char *size = g_strdup_printf ("%" G_GSIZE_FORMAT, strlen (content));

      assert_true (has (written, (const char *) name));
      assert_attribute (file, "size", size);
      assert_attribute (file, "sha256", sha256);
      xmlFree (name);
      listed++;
    }
  assert_int_equal (listed + 1, g_strv_length (written)); /* all but the manifest */
  assert_null (find_child (root, "overrides")->children);
  xmlFreeDoc (doc);
}

/* ---- what blocks ----------------------------------------------------------------------------- */

static void
blocking_finding_refuses_and_is_named (void **state)
{
  g_autoptr(HutDesign) design = new_blocked_example ();
  g_autofree char *message = refuse (*state, design, &EVERYTHING, HUT_EXPORT_ERROR_BLOCKED);

  assert_non_null (strstr (message, "opening.outside"));
}

static void
another_check_that_is_allowed_does_not_help (void **state)
{
  g_autoptr(HutDesign) design = new_blocked_example ();
  const char *const allowed[] = { "bed.part", NULL };
  const HutExportOptions options = { .formats = HUT_FORMAT_PLAIN, .allowed = allowed };
  g_autofree char *message = refuse (*state, design, &options, HUT_EXPORT_ERROR_BLOCKED);

  assert_non_null (strstr (message, "opening.outside"));
}

static void
overridden_set_is_marked_in_every_file (void **state)
{
  const Place *place = *state;
  g_autoptr(HutDesign) design = new_blocked_example ();
  g_autoptr(HutDesign) again = NULL;
  g_autoptr(GError) error = NULL;
  const char *const allowed[] = { "opening.outside", "bed.part", NULL };
  const HutExportOptions options = { .formats = HUT_FORMAT_PLAIN, .allowed = allowed };
  g_auto(GStrv) written = export (design, place->out, &options);
  g_autofree char *design_file = dup_file (place->out, "design.hutch");
  xmlDoc *doc = read_valid_manifest (place->out);
  const xmlNode *overrides = find_child (xmlDocGetRootElement (doc), "overrides");

  for (guint i = 0; written[i] != NULL; i++)
    {
      g_autofree char *content = dup_file (place->out, written[i]);
      const gboolean manifest = g_str_equal (written[i], "manifest.xml");

      /* Only what really blocked is named. */
      if (strstr (content, manifest ? "<override check=\"opening.outside\"/>"
                                    : "CHECKS OVERRIDDEN: opening.outside")
          == NULL)
        fail_msg ("%s is not marked", written[i]);
      assert_null (strstr (content, "bed.part"));
    }
  assert_attribute (find_child (overrides, "override"), "check", "opening.outside");
  xmlFreeDoc (doc);

  /* The mark does not keep the design from being opened. */
  again = hut_design_from_xml (design_file, strlen (design_file), "design.hutch", &error);
  assert_ok (again != NULL, error);
  assert_true (hut_design_equal (design, again));
}

static void
allowing_what_does_not_block_leaves_no_mark (void **state)
{
  const Place *place = *state;
  g_autoptr(HutDesign) design = new_example ();
  const char *const allowed[] = { "opening.outside", NULL };
  const HutExportOptions options = { .formats = HUT_FORMAT_PLAIN, .allowed = allowed };
  g_auto(GStrv) written = export (design, place->out, &options);

  for (guint i = 0; written[i] != NULL; i++)
    {
      g_autofree char *content = dup_file (place->out, written[i]);

      assert_null (strstr (content, "OVERRIDDEN"));
    }
}

static void
bed_too_small_for_anything_leaves_nothing_to_cut (void **state)
{
  g_autoptr(HutDesign) design = new_example ();
  HutExportOptions options = { .formats = HUT_FORMAT_PLAIN, .allowed = hut_check_ids () };
  g_autofree char *message = NULL;
  g_autofree char *plain = NULL;

  design->cutter.bed_width_mm = design->cutter.bed_depth_mm = 12.0;
  message = refuse (*state, design, &options, HUT_EXPORT_ERROR_BLOCKED);
  assert_non_null (strstr (message, "no part to cut"));
  plain = refuse (*state, design, &EVERYTHING, HUT_EXPORT_ERROR_BLOCKED);
  assert_non_null (strstr (plain, "bed."));
}

static void
cut_that_kerf_swallows_cannot_be_overridden (void **state)
{
  g_autoptr(HutDesign) design = new_example ();
  const HutExportOptions options = { .formats = HUT_FORMAT_PLAIN, .allowed = hut_check_ids () };
  HutStock *stock = hut_design_get_stock (design, "ply6");
  g_autofree char *message = NULL;

  stock->kerf_mm = 8.5; /* the intake's holes are 8 mm wide */
  ((HutWindow *) g_ptr_array_index (design->windows, 0))->screw_mm = HUT_ROOM_FREE; /* narrower */
  message = refuse (*state, design, &options, HUT_EXPORT_ERROR_BLOCKED);
  assert_non_null (strstr (message, "part base-front"));
}

static void
design_that_is_not_whole_leaves_nothing_to_cut (void **state)
{
  g_autoptr(HutDesign) design = new_example ();
  const HutExportOptions options = { .formats = HUT_FORMAT_PLAIN, .allowed = hut_check_ids () };
  g_autofree char *message = NULL;

  g_free (design->shell.default_stock);
  design->shell.default_stock = g_strdup ("nothing");
  message = refuse (*state, design, &options, HUT_EXPORT_ERROR_BLOCKED);
  assert_non_null (strstr (message, "no part to cut"));
}

/* ---- wrong calls ----------------------------------------------------------------------------- */

static void
check_that_does_not_exist_is_refused_with_a_list_of_those_that_do (void **state)
{
  g_autoptr(HutDesign) design = new_example ();
  const char *const allowed[] = { "opening.outside", "opening.typo", NULL };
  const HutExportOptions options = { .formats = HUT_FORMAT_PLAIN, .allowed = allowed };
  g_autofree char *message = refuse (*state, design, &options, HUT_EXPORT_ERROR_FORMAT);

  assert_non_null (strstr (message, "“opening.typo”"));
  assert_non_null (strstr (message, "opening.outside"));
}

static void
export_without_a_format_is_refused (void **state)
{
  g_autoptr(HutDesign) design = new_example ();
  const HutExportOptions options = { .formats = (HutFormats) 0 };
  g_autofree char *message = refuse (*state, design, &options, HUT_EXPORT_ERROR_FORMAT);

  assert_non_null (strstr (message, "svg, dxf, csv"));
}

static void
folder_with_other_files_is_refused (void **state)
{
  const Place *place = *state;
  g_autoptr(HutDesign) design = new_example ();
  g_autofree char *message = NULL;

  hut_scratch_put (place->out, "photo.txt", "mine");
  message = refuse (place, design, &EVERYTHING, HUT_EXPORT_ERROR_IO);
  assert_non_null (strstr (message, "photo.txt"));
}

static void
format_lists_are_read (void **state)
{
  static const struct
  {
    const char *list;
    guint formats; /* 0: refused */
  } cases[] = {
    { "svg", HUT_FORMAT_SVG },
    { "svg,dxf,csv", HUT_FORMAT_PLAIN },
    { " dxf , csv ", HUT_FORMAT_DXF | HUT_FORMAT_CSV },
    { "csv,csv", HUT_FORMAT_CSV },
    { "", 0 },
    { "svg,", 0 },
    { "SVG", 0 },
    { "svg,pdf", 0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr(GError) error = NULL;
      HutFormats formats = (HutFormats) 99;
      const gboolean taken = hut_formats_parse (cases[i].list, &formats, &error);

      if (taken != (cases[i].formats != 0))
        fail_msg ("\"%s\" is %s", cases[i].list, taken ? "taken" : "refused");
      assert_int_equal (formats, taken ? cases[i].formats : 99);
      if (!taken)
        {
          assert_true (g_error_matches (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_FORMAT));
          assert_non_null (strstr (error->message, "svg, dxf, csv"));
        }
    }
}

/* ---- progress and stopping ------------------------------------------------------------------- */

typedef struct
{
  GCancellable *cancellable;
  guint stop_at_call; /* 0: never */
  guint calls;
  double last_ratio;
} Watcher;

static void
watch (double fraction_ratio,
       const char *file,
       gpointer user_data)
{
  Watcher *self = user_data;

  assert_non_null (file);
  if (fraction_ratio < self->last_ratio || fraction_ratio > 1.0)
    fail_msg ("%s goes from %g to %g", file, self->last_ratio, fraction_ratio);
  self->last_ratio = fraction_ratio;
  self->calls++;
  if (self->calls == self->stop_at_call)
    g_cancellable_cancel (self->cancellable);
}

static void
progress_goes_from_nothing_to_one_without_going_back (void **state)
{
  const Place *place = *state;
  g_autoptr(HutDesign) design = new_example ();
  g_autoptr(GError) error = NULL;
  g_auto(GStrv) written = NULL;
  Watcher watcher = { NULL };

  assert_ok (hut_export_set (design, place->out, &EVERYTHING, watch, &watcher, NULL, &written,
                             &error),
             error);
  assert_near (watcher.last_ratio, 1.0, 0.0);
  assert_true (watcher.calls > g_strv_length (written));
}

/* The last call comes when the set is in place: stopping then is too late. */
static void
stopping_at_any_moment_leaves_nothing (void **state)
{
  const Place *place = *state;
  g_autoptr(HutDesign) design = new_example ();
  const HutExportOptions only_csv = { .formats = HUT_FORMAT_CSV };
  guint stopped = 0;

  for (guint call = 1;; call++)
    {
      g_autoptr(GCancellable) cancellable = g_cancellable_new ();
      g_autoptr(GError) error = NULL;
      g_autofree char *left = NULL;
      Watcher watcher = { .cancellable = cancellable, .stop_at_call = call };

      if (hut_export_set (design, place->out, &only_csv, watch, &watcher, cancellable, NULL,
                          &error))
        {
          assert_near (watcher.last_ratio, 1.0, 0.0);
          break;
        }
      assert_true (g_error_matches (error, G_IO_ERROR, G_IO_ERROR_CANCELLED));
      left = hut_scratch_list (place->scratch);
      assert_string_equal (left, "");
      stopped++;
    }
  assert_true (stopped >= 6);
}

/* ---- random ---------------------------------------------------------------------------------- */

/* Either a whole set with a valid manifest or a refusal that leaves nothing. */
static void
random_designs_give_a_set_or_a_reason (void **state)
{
  const Place *place = *state;
  const HutExportOptions options = { .formats = HUT_FORMAT_PLAIN, .allowed = hut_check_ids () };
  guint sets = 0;

  for (guint64 seed = 1; seed <= RANDOM_DESIGNS; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autofree char *name = g_strdup_printf ("set-%" G_GUINT64_FORMAT, seed);
      g_autofree char *out = g_build_filename (place->scratch, name, NULL);
      g_autoptr(GError) error = NULL;

      if (hut_export_set (design, out, &options, NULL, NULL, NULL, NULL, &error))
        {
          xmlFreeDoc (read_valid_manifest (out));
          sets++;
          continue;
        }
      if (!g_error_matches (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_BLOCKED))
        fail_msg ("seed %" G_GUINT64_FORMAT ": %s", seed, error->message);
      assert_false (g_file_test (out, G_FILE_TEST_EXISTS));
    }
  assert_true (sets >= RANDOM_DESIGNS / 2);
}

#define IN_SCRATCH(test) cmocka_unit_test_setup_teardown (test, set_up, tear_down)

int
main (void)
{
  const struct CMUnitTest tests[] = {
    IN_SCRATCH (set_of_the_example_has_sheets_lists_design_and_manifest),
    IN_SCRATCH (sheets_are_as_many_as_packing_says),
    IN_SCRATCH (formats_that_are_not_asked_for_are_not_written),
    IN_SCRATCH (list_of_bought_parts_is_there_only_when_something_is_bought),
    IN_SCRATCH (design_in_the_set_is_the_canonical_one),
    IN_SCRATCH (same_design_gives_the_same_bytes),
    IN_SCRATCH (set_takes_the_place_of_an_earlier_one),
    IN_SCRATCH (manifest_lists_every_file_with_its_size_and_sha_256),
    IN_SCRATCH (blocking_finding_refuses_and_is_named),
    IN_SCRATCH (another_check_that_is_allowed_does_not_help),
    IN_SCRATCH (overridden_set_is_marked_in_every_file),
    IN_SCRATCH (allowing_what_does_not_block_leaves_no_mark),
    IN_SCRATCH (bed_too_small_for_anything_leaves_nothing_to_cut),
    IN_SCRATCH (cut_that_kerf_swallows_cannot_be_overridden),
    IN_SCRATCH (design_that_is_not_whole_leaves_nothing_to_cut),
    IN_SCRATCH (check_that_does_not_exist_is_refused_with_a_list_of_those_that_do),
    IN_SCRATCH (export_without_a_format_is_refused),
    IN_SCRATCH (folder_with_other_files_is_refused),
    cmocka_unit_test (format_lists_are_read),
    IN_SCRATCH (progress_goes_from_nothing_to_one_without_going_back),
    IN_SCRATCH (stopping_at_any_moment_leaves_nothing),
    IN_SCRATCH (random_designs_give_a_set_or_a_reason),
  };
  const int failed = cmocka_run_group_tests (tests, NULL, NULL);

  xmlRelaxNGCleanupTypes ();
  xmlCleanupParser ();
  return failed;
}
