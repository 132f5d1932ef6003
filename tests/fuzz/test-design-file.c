/* tests/fuzz/test-design-file.c: spoilt design files are refused with a line, or read for good.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The same few thousand mutations every time, quick enough for each run of the tests. For a long
 * search there is tests/fuzz/fuzz-design.c. */
#include "design/hut-file.h"
#include "hut-assert.h"
#include "hut-random-design.h"
#include <string.h>

#define N_MUTANTS 2000
#define N_RANDOM_SEEDS 6
#define EDITS_MAX 4
#define RANGE_MAX_BYTES 60

/* What means something to the reader, and what has broken readers of numbers and of XML. */
static const char *const words[] = {
  "", "0", "-0", "-1", "1e400", "-1e-400", "1e308", "NaN", "INF", "-inf", "nan(1)", "0x1p1023",
  "1e", "1.", ".", "+", "99999999999999999999999999999999999", "0.1", "1e15", "4294967296",
  "-2147483649", "lid-roof", "lid-top", "base-front", "body", "pattern", "&#0;", "&#x110000;",
  "&lt;", "&amp;", "&a;", "<!-- -->", "<!--", "]]>", "<![CDATA[", "<?x?>", "<!DOCTYPE a>",
  "<!DOCTYPE a [<!ENTITY b 'c'>]>", "<", ">", "/>", "\"", "'", "=", " ", "\n", "\xff", "\xc3",
  "\xef\xbf\xbf", "\xf0\x9f\x94\xa5", "\xed\xa0\x80", "xmlns=\"\"", "xmlns:a=\"b\"", "a:b=\"c\"",
  "version=\"3\"", "design:2", "<reading mm=\"3\"/>", "<hole u=\"0\" v=\"0\"/>", "<body/>",
  "<stock>", "</stock>", "<panel id=\"lid-top\" stock=\"clear\"/>", "id=\"wall\"", "yes", "no",
  "static", "keep-out", "hood", "front",
};

static void
edit (HutRandom *random,
      GString *text)
{
  const gsize at = text->len > 0 ? hut_random_below (random, (guint) text->len) : 0;
  const gsize left = text->len - at;
  const gsize range = 1 + hut_random_below (random, RANGE_MAX_BYTES); /* MIN would draw it twice */
  const gsize n = MIN (left, range);
  const char *word = words[hut_random_below (random, G_N_ELEMENTS (words))];

  switch (hut_random_below (random, 8))
    {
    case 0: /* a bit flips */
      if (left > 0)
        text->str[at] = (char) (text->str[at] ^ (1 << hut_random_below (random, 8)));
      break;
    case 1: /* a byte changes */
      if (left > 0)
        text->str[at] = (char) hut_random_below (random, 256);
      break;
    case 2:
      g_string_erase (text, (gssize) at, (gssize) n);
      break;
    case 3:
      {
        g_autofree char *piece = g_strndup (text->str + at, n);

        g_string_insert (text, (gssize) hut_random_below (random, (guint) text->len + 1), piece);
        break;
      }
    case 4: /* the end is lost, seldom */
      if (hut_random_chance (random, 0.2))
        g_string_truncate (text, at);
      break;
    default:
      g_string_insert (text, (gssize) at, word);
      break;
    }
}

/* Puts a word in place of what is between a pair of quotes: most of these files are well-formed. */
static void
edit_value (HutRandom *random,
            GString *text)
{
  const gsize at = text->len > 0 ? hut_random_below (random, (guint) text->len) : 0;
  const char *open = strstr (text->str + at, "=\"");
  const char *close = open != NULL ? strchr (open + 2, '"') : NULL;

  if (close != NULL)
    {
      const gssize start = open + 2 - text->str;

      g_string_erase (text, start, close - open - 2);
      g_string_insert (text, start, words[hut_random_below (random, G_N_ELEMENTS (words))]);
    }
}

/* Removes one line or moves it elsewhere: well-formed where it was a whole element. */
static void
edit_line (HutRandom *random,
           GString *text)
{
  const gsize at = text->len > 0 ? hut_random_below (random, (guint) text->len) : 0;
  const char *start = strchr (text->str + at, '\n');
  const char *end = start != NULL ? strchr (start + 1, '\n') : NULL;
  g_autofree char *line = end != NULL ? g_strndup (start, (gsize) (end - start)) : NULL;

  if (line == NULL)
    return;
  if (hut_random_chance (random, 0.5))
    g_string_erase (text, start - text->str, end - start);
  if (hut_random_chance (random, 0.5))
    {
      const gsize to = hut_random_below (random, (guint) text->len);
      const char *next = strchr (text->str + to, '\n');

      if (next != NULL)
        g_string_insert (text, next - text->str, line);
    }
}

/* TRUE when "NAME:LINE: what is wrong; what is allowed". */
static gboolean
is_well_told (const char *message)
{
  return g_regex_match_simple ("^fuzz:[1-9][0-9]*: .+; allowed: .+", message, G_REGEX_DOTALL, 0)
         && g_utf8_validate (message, -1, NULL) && strstr (message, "against the schema") == NULL;
}

static gboolean
check_mutant (const GString *text,
              guint number)
{
  /* a copy that ends where the file ends, so that a sanitizer sees one byte too many */
  g_autofree char *bytes = g_memdup2 (text->str, text->len);
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) design = hut_design_from_xml (bytes, text->len, "fuzz", &error);
  g_autofree char *written = NULL;
  g_autoptr(HutDesign) again = NULL;

  if (design == NULL)
    {
      if (error->domain != HUT_FILE_ERROR || error->code == HUT_FILE_ERROR_IO
          || !is_well_told (error->message))
        fail_msg ("mutant %u: %s", number, error->message);
      return FALSE;
    }
  assert_null (error);
  written = hut_design_to_xml (design);
  again = hut_design_from_xml (written, strlen (written), "fuzz", &error);
  if (again == NULL || !hut_design_equal (design, again))
    fail_msg ("mutant %u comes back different: %s", number, error != NULL ? error->message : "");
  return TRUE;
}

static GPtrArray *
new_seeds (void)
{
  GPtrArray *seeds = g_ptr_array_new_with_free_func (g_free);

  for (guint i = 0; hut_example_names ()[i] != NULL; i++)
    {
      g_autoptr(HutDesign) design = hut_example_load (hut_example_names ()[i], NULL);

      g_ptr_array_add (seeds, hut_design_to_xml (design));
    }
  for (guint64 seed = 0; seed < N_RANDOM_SEEDS; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);

      g_ptr_array_add (seeds, hut_design_to_xml (design));
    }
  return seeds;
}

static void
any_spoilt_file_is_refused_with_a_line_or_read_for_good (void **state)
{
  g_autoptr(GPtrArray) seeds = new_seeds ();
  HutRandom random;
  guint n_read = 0;

  hut_random_init (&random, 2);
  for (guint i = 0; i < N_MUTANTS; i++)
    {
      const char *seed = g_ptr_array_index (seeds, hut_random_below (&random, seeds->len));
      g_autoptr(GString) text = g_string_new (seed);
      const guint n_edits = 1 + hut_random_below (&random, EDITS_MAX);

      for (guint j = 0; j < n_edits; j++)
        switch (hut_random_below (&random, 3))
          {
          case 0:
            edit_value (&random, text);
            break;
          case 1:
            edit_line (&random, text);
            break;
          default:
            edit (&random, text);
            break;
          }
      n_read += check_mutant (text, i);
    }
  /* neither all refused nor all read: then the mutations would say nothing */
  assert_in_range (n_read, N_MUTANTS / 50, N_MUTANTS / 2);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (any_spoilt_file_is_refused_with_a_line_or_read_for_good),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
