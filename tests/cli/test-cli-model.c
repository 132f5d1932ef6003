/* tests/cli/test-cli-model.c: designs that cannot be read: a line number, the right status, no harm done.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "design/hut-file.h"

#include "cli/hut-blocked-design.h"
#include "hut-run.h"
#include "hut-scratch.h"
#include <glib/gstdio.h>
#include <string.h>
#include <unistd.h>

/* A number that occurs once in the file that it is typed into. */
#define MARKED_MM 777.125
#define MARKED "777.125"

/* A small whole design with MARKED as the width of its bed. */
static char *
dup_marked_xml (void)
{
  g_autoptr(HutDesign) design = hut_sound_design_new ();
  HutOpening *opening = hut_opening_new ("vent", (HutPanelId) { HUT_SHELL_LID, HUT_SIDE_TOP },
                                         HUT_SHAPE_ROUND);

  opening->diameter_mm = 30.0;
  g_ptr_array_add (design->openings, opening);
  design->cutter.bed_width_mm = MARKED_MM;
  return hut_design_to_xml (design);
}

static char *
dup_replaced (const char *text,
              const char *from,
              const char *to)
{
  const char *at = strstr (text, from);

  if (at == NULL)
    fail_msg ("there is no “%s” to spoil in\n%s", from, text);
  return g_strdup_printf ("%.*s%s%s", (int) (at - text), text, to, at + strlen (from));
}

static char *
dup_deep (void)
{
  GString *text = g_string_new ("");

  for (guint i = 0; i < 100000; i++)
    g_string_append (text, "<a>");
  return g_string_free (text, FALSE);
}

static char *
dup_huge (void)
{
  return g_strnfill (65 * 1024 * 1024, ' ');
}

typedef struct
{
  const char *why;
  const char *from, *to;    /* in the marked design; @from NULL: @to is the file, unless @make */
  char *(*make) (void);     /* (transfer full) */
} BadFile;

static const BadFile bad_files[] = {
  { "empty", NULL, "" },
  { "blanks", NULL, " \n\n " },
  { "not XML", NULL, "a box, please\n" },
  { "a picture", NULL, "\x89PNG\r\n\x1a\n\x01\x02" },
  { "no UTF-8", NULL, "<enclosure name=\"\xff\xfe\"/>" },
  { "other XML", NULL, "<?xml version=\"1.0\"?>\n<html xmlns=\"http://www.w3.org/1999/xhtml\"/>\n" },
  { "truncated in a tag", MARKED, NULL },
  { "newer version", "version=\"3\"", "version=\"4\"" },
  { "NaN", MARKED, "NaN" },
  { "nan", MARKED, "nan" },
  { "INF", MARKED, "INF" },
  { "inf", MARKED, "-inf" },
  { "negative", MARKED, "-" MARKED },
  { "huge", MARKED, "1e300" },
  { "more than a double", MARKED, "1e999" },
  { "no number", MARKED, "wide" },
  { "nothing", MARKED, "" },
  { "decimal comma", MARKED, "777,125" },
  { "unknown panel", "lid-top", "lid-middle" },
  { "unknown attribute", " name=\"", " colour=\"red\" name=\"" },
  { "unknown element", "</enclosure>", "<extra/></enclosure>" },
  { "text after the end", "</enclosure>", "</enclosure>more" },
  { "a DOCTYPE with an entity", "<enclosure", "<!DOCTYPE d [<!ENTITY e \"x\">]>\n<enclosure" },
  { "an external entity", "<enclosure", "<!DOCTYPE d SYSTEM \"file:///etc/passwd\">\n<enclosure" },
  { "a hundred thousand elements deep", NULL, NULL, dup_deep },
  { "larger than any design", NULL, NULL, dup_huge },
};

static char *
dup_bad_text (const BadFile *row)
{
  g_autofree char *marked = NULL;

  if (row->make != NULL)
    return row->make ();
  if (row->from == NULL)
    return g_strdup (row->to);
  marked = dup_marked_xml ();
  if (row->to == NULL)
    return g_strndup (marked, (gsize) (strstr (marked, row->from) - marked));
  return dup_replaced (marked, row->from, row->to);
}

/* "hutchwright: FILE:LINE: what is wrong; what is allowed" */
static void
assert_names_line (const HutRun *run,
                   const char *file)
{
  g_autofree char *start = g_strdup_printf ("hutchwright: %s:", file);
  char *end = NULL;

  hut_run_assert_refused (run, 2, file);
  if (!g_str_has_prefix (run->errors, start))
    fail_msg ("“%s” must begin with “%s”", run->errors, start);
  if (g_ascii_strtoull (run->errors + strlen (start), &end, 10) < 1 || !g_str_has_prefix (end, ": "))
    fail_msg ("“%s” must have a line number after “%s”", run->errors, start);
  assert_string_equal (run->text, "");
}

typedef struct
{
  char *folder, *design, *target;
} Place;

static int
set_up (void **state)
{
  Place *place = g_new0 (Place, 1);

  place->folder = hut_scratch_new ();
  place->design = g_build_filename (place->folder, "a.hutch", NULL);
  place->target = g_build_filename (place->folder, "target", NULL);
  *state = place;
  return 0;
}

static int
tear_down (void **state)
{
  Place *place = *state;

  hut_scratch_free (place->folder);
  g_free (place->design);
  g_free (place->target);
  g_free (place);
  return 0;
}

/* A set and a picture of the good design, which no bad one may replace. */
typedef struct
{
  char *picture, *manifest;
  GBytes *picture_before, *manifest_before;
} Kept;

static GBytes *
read_bytes (const char *path)
{
  g_autoptr(GError) error = NULL;
  char *data = NULL;
  gsize size = 0;

  assert_ok (g_file_get_contents (path, &data, &size, &error), error);
  return g_bytes_new_take (data, size);
}

static void
kept_init (Kept *self,
           const Place *place)
{
  g_autofree char *good = dup_marked_xml ();
  g_autoptr(HutRun) set = NULL;
  g_autoptr(HutRun) png = NULL;

  self->picture = g_build_filename (place->folder, "a.png", NULL);
  self->manifest = g_build_filename (place->target, "manifest.xml", NULL);
  hut_run_write_text (place->design, good);
  set = hut_run ("export", place->design, "--to", place->target, NULL);
  png = hut_run ("render", place->design, "--view", "flat", "--to", self->picture, NULL);
  hut_run_assert_status (set, 0);
  hut_run_assert_status (png, 0);
  self->picture_before = read_bytes (self->picture);
  self->manifest_before = read_bytes (self->manifest);
}

static void
kept_assert_and_clear (Kept *self)
{
  g_autoptr(GBytes) picture_after = read_bytes (self->picture);
  g_autoptr(GBytes) manifest_after = read_bytes (self->manifest);

  assert_true (g_bytes_equal (self->picture_before, picture_after));
  assert_true (g_bytes_equal (self->manifest_before, manifest_after));
  g_bytes_unref (self->picture_before);
  g_bytes_unref (self->manifest_before);
  g_free (self->picture);
  g_free (self->manifest);
}

static void
a_bad_file_is_refused_with_its_line_and_replaces_nothing (void **state)
{
  const Place *place = *state;
  Kept kept;

  kept_init (&kept, place);
  for (guint i = 0; i < G_N_ELEMENTS (bad_files); i++)
    {
      g_autofree char *text = dup_bad_text (&bad_files[i]);
      g_autoptr(HutRun) check = NULL;
      g_autoptr(HutRun) export = NULL;
      g_autoptr(HutRun) other = NULL;

      print_message ("%s\n", bad_files[i].why);
      hut_run_write_text (place->design, text);
      check = hut_run ("check", place->design, NULL);
      export = hut_run ("export", place->design, "--to", place->target, NULL);
      other = i % 2 == 0 ? hut_run ("describe", place->design, NULL)
                         : hut_run ("render", place->design, "--view", "flat", "--to", kept.picture,
                                    NULL);
      assert_names_line (check, place->design);
      assert_names_line (export, place->design);
      assert_names_line (other, place->design);
    }
  kept_assert_and_clear (&kept);
}

static void
a_file_that_cannot_be_read_is_status_3 (void **state)
{
  const Place *place = *state;
  const char *const paths[] = { place->design, place->folder, "/dev/zero" };

  for (guint i = 0; i < G_N_ELEMENTS (paths); i++)
    {
      g_autoptr(HutRun) check = hut_run ("check", paths[i], NULL);
      g_autoptr(HutRun) export = hut_run ("export", paths[i], "--to", place->target, NULL);

      hut_run_assert_refused (check, 3, paths[i]);
      hut_run_assert_refused (export, 3, paths[i]);
      assert_false (g_file_test (place->target, G_FILE_TEST_EXISTS));
    }
}

static HutRun *
run_with_input (const char *command,
                const char *input)
{
  g_autoptr(GBytes) bytes = g_bytes_new (input, strlen (input));
  const char *const arguments[] = { command, "-", NULL };
  const HutRunSetup setup = { .input = bytes };

  return hut_run_argv (arguments, &setup);
}

static void
standard_input_is_read_like_a_file (void **state)
{
  const Place *place = *state;
  g_autofree char *xml = dup_marked_xml ();
  g_autoptr(HutRun) piped = run_with_input ("describe", xml);
  g_autoptr(HutRun) filed = NULL;

  hut_run_write_text (place->design, xml);
  filed = hut_run ("describe", place->design, NULL);
  hut_run_assert_status (piped, 0);
  hut_run_assert_status (filed, 0);
  assert_string_equal (piped->text, filed->text);
}

static void
bad_standard_input_is_refused_with_its_line (void **state)
{
  /* One of each kind: what is behind the first byte is read as from a file. */
  for (guint i = 0; i < G_N_ELEMENTS (bad_files); i += 5)
    {
      g_autofree char *text = dup_bad_text (&bad_files[i]);
      g_autoptr(HutRun) run = run_with_input ("check", text);

      print_message ("%s\n", bad_files[i].why);
      assert_names_line (run, "-");
    }
}

/* At places all over a good file it is cut off, or a byte is turned: read or refused, never a crash. */
static void
no_damage_to_a_file_crashes_the_program (void **state)
{
  g_autofree char *xml = dup_marked_xml ();
  const gsize size = strlen (xml);
  const gsize step = size / 24 + 1;

  for (gsize at = 0; at < size; at += step)
    {
      g_autofree char *cut = g_strndup (xml, at);
      g_autofree char *turned = g_strdup (xml);
      g_autoptr(HutRun) of_cut = run_with_input ("check", cut);
      g_autoptr(HutRun) of_turned = NULL;

      turned[at] = (char) (turned[at] ^ 0x11);
      of_turned = run_with_input ("check", turned);
      assert_names_line (of_cut, "-");
      if (of_turned->status < 0 || of_turned->status > 2)
        fail_msg ("byte %" G_GSIZE_FORMAT " turned: status %d\n%s", at, of_turned->status,
                  of_turned->errors);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test_setup_teardown (a_bad_file_is_refused_with_its_line_and_replaces_nothing, set_up,
                                     tear_down),
    cmocka_unit_test_setup_teardown (a_file_that_cannot_be_read_is_status_3, set_up, tear_down),
    cmocka_unit_test_setup_teardown (standard_input_is_read_like_a_file, set_up, tear_down),
    cmocka_unit_test (bad_standard_input_is_refused_with_its_line),
    cmocka_unit_test (no_damage_to_a_file_crashes_the_program),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
