/* tests/design/test-design-schema.c: the RELAX NG schema and the reader take the same files.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sample.h"
#include "design/hut-design-reader.h"
#include "design/hut-design-schema.h"
#include "format/hut-xml.h"
#include "hut-random-design.h"

#define N_RANDOM_DESIGNS 30

/* What only the program can check; the schema is silent about it. */
static gboolean
is_about_meaning (const char *message)
{
  static const char *const marks[] = {
    ", which no <",     " is already used ",  " comes twice; ",      " allowed: not less than ",
    " is anchored to ", ", whose shape is ",  " without holes; ",    " bytes of text",
    "too many <",       "from a newer program", "not a whole number; ",
    " has two spots; ",
  };

  for (gsize i = 0; i < G_N_ELEMENTS (marks); i++)
    if (strstr (message, marks[i]) != NULL)
      return TRUE;
  /* a number out of its range is shown without quotes */
  return g_regex_match_simple (" is [-+]?[0-9.]+([eE][-+]?[0-9]+)?; allowed: ", message, 0, 0);
}

/* Spoilt documents that were looked at. */
typedef struct
{
  xmlRelaxNG *schema;
  guint n_taken, n_refused_by_both, n_refused_by_reader;
} Tally;

static void
compare (xmlDoc *document,
         const char *what,
         const char *where,
         Tally *tally)
{
  g_autoptr(GError) read_error = NULL, schema_error = NULL;
  xmlNode *root = xmlDocGetRootElement (document);
  g_autoptr(HutDesign) design = hut_design_read (root, "f", &read_error);
  const gboolean valid = hut_design_schema_check (tally->schema, document, "f", &schema_error);

  if (design != NULL && !valid)
    fail_msg ("%s at %s: taken by the reader, but: %s", what, where, schema_error->message);
  if (design == NULL && valid && !is_about_meaning (read_error->message))
    fail_msg ("%s at %s: taken by the schema, but: %s", what, where, read_error->message);
  tally->n_taken += design != NULL;
  tally->n_refused_by_both += design == NULL && !valid;
  tally->n_refused_by_reader += design == NULL && valid;
}

static xmlDoc *
parse_sample (void)
{
  g_autofree char *text = dup_sample ();
  g_autoptr(GError) error = NULL;
  xmlDoc *document = hut_xml_parse (text, strlen (text), "sample", &error);

  assert_ok (document != NULL, error);
  return document;
}

/* The element number @n in document order, or NULL. */
static xmlNode *
nth_element (xmlNode *node,
             guint *n)
{
  for (; node != NULL; node = node->next)
    {
      xmlNode *found;

      if (node->type != XML_ELEMENT_NODE)
        continue;
      if ((*n)-- == 0)
        return node;
      found = nth_element (node->children, n);
      if (found != NULL)
        return found;
    }
  return NULL;
}

static xmlNode *
find_element (xmlDoc *document,
              guint n)
{
  return nth_element (xmlDocGetRootElement (document), &n);
}

typedef void (*Spoil) (xmlNode *node);

static void
remove_element (xmlNode *node)
{
  xmlUnlinkNode (node);
  xmlFreeNode (node);
}

static void
double_element (xmlNode *node)
{
  xmlAddNextSibling (node, xmlCopyNode (node, 1));
}

static void
rename_element (xmlNode *node)
{
  xmlNodeSetName (node, BAD_CAST "shelf");
}

static void
move_element_to_the_front (xmlNode *node)
{
  xmlNode *first = node->parent->children;

  if (first != node)
    xmlAddPrevSibling (first, node);
}

static void
add_attribute (xmlNode *node)
{
  xmlNewProp (node, BAD_CAST "colour", BAD_CAST "red");
}

static void
add_child (xmlNode *node)
{
  xmlNewChild (node, node->ns, BAD_CAST "reading", NULL);
}

static void
add_text (xmlNode *node)
{
  xmlNodeAddContent (node, BAD_CAST "text");
}

static void
add_blanks_and_comment (xmlNode *node)
{
  xmlNodeAddContent (node, BAD_CAST " \n\t");
  xmlAddChild (node, xmlNewComment (BAD_CAST "a comment"));
}

static void
take_namespace_away (xmlNode *node)
{
  xmlSetNs (node, NULL);
}

static void
reader_and_schema_agree_about_elements (void **state)
{
  static const struct
  {
    const char *what;
    Spoil spoil;
  } cases[] = {
    { "remove", remove_element },       { "double", double_element },
    { "rename", rename_element },       { "move", move_element_to_the_front },
    { "attribute", add_attribute },     { "child", add_child },
    { "text", add_text },               { "blanks", add_blanks_and_comment },
    { "namespace", take_namespace_away },
  };
  g_autoptr(xmlRelaxNG) schema = hut_design_schema_new ();
  Tally tally = { .schema = schema };

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    for (guint n = 1;; n++) /* 0 is the root */
      {
        g_autoptr(xmlDoc) document = parse_sample ();
        xmlNode *node = find_element (document, n);
        g_autofree char *where = NULL;

        if (node == NULL)
          break;
        where = g_strdup_printf ("<%s> %u", (const char *) node->name, n);
        cases[i].spoil (node);
        compare (document, cases[i].what, where, &tally);
      }
  assert_true (tally.n_taken > 40); /* all with blanks, some with one item less or elsewhere */
  assert_true (tally.n_refused_by_both > 150);
}

static const char *const texts[] = {
  "", " ", "5", " 5", "5 ", "+5", "-5", ".5", "5.", "5.e1", "1e400", "NaN", "INF", "0x10", "1,5",
  "5e", ".", "1.2.3", "yes", "Yes", "static", "wall", " wall", "wall ", "lid-top", "lid-roof",
  "centre", "a b", "a:b", "-a", "\u00e4", "01", "1",
};

/* The schema's library takes long over elements with many optional attributes: each attribute is tried
 * with one text of so many, another part of them at the next one. Under the sanitizers with fewer. */
static gsize
text_stride (void)
{
  return g_getenv ("HUT_SEEDS_MOST") != NULL ? 15 : 3;
}

/* Compares the document with texts as attribute @name of element @n, and without it; leaves it as it
 * was. @name is not of this document. */
static void
compare_texts (xmlDoc *document,
               guint n,
               const xmlChar *name,
               gsize first,
               const char *where,
               Tally *tally)
{
  xmlNode *node = find_element (document, n);
  xmlChar *right = xmlGetProp (node, name);

  for (gsize i = first % text_stride (); i < G_N_ELEMENTS (texts); i += text_stride ())
    {
      xmlSetProp (node, name, BAD_CAST texts[i]);
      compare (document, texts[i], where, tally);
    }
  xmlUnsetProp (node, name);
  compare (document, "no value", where, tally);
  xmlSetProp (node, name, right);
  xmlFree (right);
}

static void
reader_and_schema_agree_about_attributes (void **state)
{
  g_autoptr(xmlRelaxNG) schema = hut_design_schema_new ();
  Tally tally = { .schema = schema };
  g_autoptr(xmlDoc) whole = parse_sample ();
  g_autoptr(GHashTable) seen = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  const xmlNode *node;

  for (guint n = 0; (node = find_element (whole, n)) != NULL; n++)
    {
      g_autoptr(xmlDoc) document = xmlCopyDoc (whole, 1);

      for (const xmlAttr *row = node->properties; row != NULL; row = row->next)
        {
          char *where = g_strdup_printf ("%s of <%s>", (const char *) row->name,
                                         (const char *) node->name);

          if (g_hash_table_add (seen, where)) /* takes it over */
            compare_texts (document, n, row->name, g_hash_table_size (seen), where, &tally);
        }
    }
  assert_true (g_hash_table_size (seen) > 100);
  assert_true (tally.n_taken > 300 / text_stride ());
  assert_true (tally.n_refused_by_both > 1500 / text_stride ());
  assert_true (tally.n_refused_by_reader > 100 / text_stride ());
}

static void
schema_takes_every_written_design (void **state)
{
  g_autoptr(xmlRelaxNG) schema = hut_design_schema_new ();

  for (guint64 seed = 0; seed < N_RANDOM_DESIGNS; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autofree char *text = hut_design_to_xml (design);
      g_autoptr(GError) error = NULL;
      g_autoptr(xmlDoc) document = hut_xml_parse (text, strlen (text), "random", &error);

      assert_ok (document != NULL, error);
      assert_ok (hut_design_schema_check (schema, document, "random", &error), error);
    }
}

static void
schema_says_the_line (void **state)
{
  g_autofree char *text = dup_sample ();
  g_autofree char *spoilt = dup_spoilt (text, "kind=\"keep-out\"", "kind=\"flying\"");
  g_autoptr(GError) error = NULL;
  g_autoptr(xmlRelaxNG) schema = hut_design_schema_new ();
  g_autoptr(xmlDoc) document = hut_xml_parse (spoilt, strlen (spoilt), "f", &error);

  assert_ok (document != NULL, error);
  assert_false (hut_design_schema_check (schema, document, "f", &error));
  assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE));
  assert_true (g_str_has_prefix (error->message, "f:7: against the schema: "));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (reader_and_schema_agree_about_elements),
    cmocka_unit_test (reader_and_schema_agree_about_attributes),
    cmocka_unit_test (schema_takes_every_written_design),
    cmocka_unit_test (schema_says_the_line),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
