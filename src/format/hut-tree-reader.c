/* src/format/hut-tree-reader.c: an XML tree, checked word by word, into structs.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One walk over the tree along the tables of hut-format.h. What the tables do not list is an
 * error, so that a slip of the pen is never lost silently. Ids are collected on the way and looked
 * up at the end, with the line of whoever named them. */
#define G_LOG_DOMAIN "hut-format"
#include "config.h"
#include "format/hut-tree-reader.h"
#include "format/hut-file-error.h"
#include "format/hut-value-reader.h"
#include <string.h>

/* XML 1.0, 2.3: white space. */
#define BLANKS " \t\r\n"
/* Under this length a text comes in one piece: XML_PARSER_BUFFER_SIZE of libxml2 is 100, and its
 * characters have up to 4 bytes, so half of that is safe. */
#define ONE_PIECE_BYTES 50

static void G_GNUC_PRINTF (3, 4)
set_value_error (const HutTreeReader *self,
                 long line,
                 const char *format,
                 ...)
{
  g_autofree char *message = NULL;
  va_list arguments;

  va_start (arguments, format);
  message = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  g_set_error (self->error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE, "%s:%ld: %s", self->name, line,
               message);
}

gboolean
hut_tree_reader_is_named (const HutTreeReader *self,
                          const xmlNode *node,
                          const char *name)
{
  return node->ns != NULL && strcmp ((const char *) node->ns->href, self->ns) == 0
         && strcmp ((const char *) node->name, name) == 0;
}

char *
hut_tree_dup_attribute (xmlNode *node,
                        const char *name)
{
  xmlChar *text = xmlGetNoNsProp (node, (const xmlChar *) name);
  char *copy = g_strdup ((const char *) text);

  xmlFree (text);
  return copy;
}

/* "stock 'plywood'" for an element with an id, else "<recipe>". (transfer full) */
static char *
dup_title (xmlNode *node,
           const HutElementFormat *format)
{
  g_autofree char *id
      = format->n_attributes > 0 && strcmp (format->attributes[0].name, "id") == 0
            ? hut_tree_dup_attribute (node, "id") : NULL;
  g_autofree char *shown = id != NULL ? hut_value_dup_shown (id) : NULL;

  return shown != NULL ? g_strdup_printf ("%s '%s'", format->name, shown)
                       : g_strdup_printf ("<%s>", format->name);
}

/* ---- attributes ----------------------------------------------------------------------------- */

static char *
dup_attribute_names (const HutElementFormat *format)
{
  g_autoptr(GString) names = g_string_new (NULL);

  for (guint i = 0; i < format->n_attributes; i++)
    g_string_append_printf (names, "%s%s", i > 0 ? ", " : "", format->attributes[i].name);
  return g_string_free (g_steal_pointer (&names), FALSE);
}

static gboolean
is_known_attribute (const HutElementFormat *format,
                    const xmlAttr *attribute)
{
  for (guint i = 0; attribute->ns == NULL && i < format->n_attributes; i++)
    if (strcmp (format->attributes[i].name, (const char *) attribute->name) == 0)
      return TRUE;
  return FALSE;
}

static gboolean
check_attribute_names (const HutTreeReader *self,
                       xmlNode *node,
                       const HutElementFormat *format)
{
  for (const xmlAttr *attribute = node->properties; attribute != NULL; attribute = attribute->next)
    if (!is_known_attribute (format, attribute))
      {
        g_autofree char *allowed = dup_attribute_names (format);
        g_autofree char *shown = hut_value_dup_shown ((const char *) attribute->name);

        set_value_error (self, xmlGetLineNo (node), "unknown attribute '%s' of <%s>; allowed: %s",
                         shown, format->name, allowed);
        return FALSE;
      }
  return TRUE;
}

/* Notes the id that an element has or names. */
static gboolean
note_id (const HutTreeReader *self,
         xmlNode *node,
         const HutElementFormat *element,
         const HutAttributeFormat *format,
         const char *id)
{
  const long line = xmlGetLineNo (node);

  if (format->kind == HUT_VALUE_ID)
    {
      g_autofree char *fault = hut_id_book_add (self->book, element->name, id, line);

      if (fault != NULL)
        set_value_error (self, line, "%s", fault);
      return fault == NULL;
    }
  if (format->kind == HUT_VALUE_REFERENCE)
    {
      g_autofree char *title = dup_title (node, element);
      g_autofree char *what = title[0] == '<' ? g_strdup (format->label)
                                              : g_strdup_printf ("%s of %s", format->label, title);

      hut_id_book_refer (self->book, format->refers_to, id, what, line);
    }
  return TRUE;
}

static void
set_attribute_error (const HutTreeReader *self,
                     xmlNode *node,
                     const HutElementFormat *element,
                     const HutAttributeFormat *format,
                     gboolean missing,
                     const char *fault)
{
  g_autofree char *title = dup_title (node, element);
  const long line = xmlGetLineNo (node);

  if (missing)
    set_value_error (self, line, "attribute '%s' of <%s> %s", format->name, element->name, fault);
  else if (title[0] == '<' || format->kind == HUT_VALUE_ID)
    set_value_error (self, line, "%s%s%s %s", format->label,
                     format->kind == HUT_VALUE_ID ? " of a " : "",
                     format->kind == HUT_VALUE_ID ? element->name : "", fault);
  else
    set_value_error (self, line, "%s of %s %s", format->label, title, fault);
}

static gboolean
read_attributes (const HutTreeReader *self,
                 xmlNode *node,
                 const HutElementFormat *element,
                 gpointer target)
{
  if (!check_attribute_names (self, node, element))
    return FALSE;
  for (guint i = 0; i < element->n_attributes; i++)
    {
      const HutAttributeFormat *format = &element->attributes[i];
      g_autofree char *text = hut_tree_dup_attribute (node, format->name);
      g_autofree char *fault = hut_value_read (format, text, target);

      if (fault != NULL)
        {
          set_attribute_error (self, node, element, format, text == NULL, fault);
          return FALSE;
        }
      if (text != NULL && !note_id (self, node, element, format, text))
        return FALSE;
    }
  return TRUE;
}

/* ---- children ------------------------------------------------------------------------------- */

static gboolean
read_kept (const HutTreeReader *self,
           xmlNode *node,
           const HutElementFormat *format,
           gpointer parent)
{
  g_autofree gpointer entry = g_malloc0 (format->size);
  g_autofree char *fault = NULL;
  gboolean ok = hut_tree_reader_read (self, node, format, entry);

  if (ok)
    fault = format->keeper->take (parent, entry);
  if (fault != NULL)
    set_value_error (self, xmlGetLineNo (node), "%s", fault);
  format->keeper->clear (entry);
  return ok && fault == NULL;
}

static gboolean
read_child (const HutTreeReader *self,
            xmlNode *node,
            const HutChildFormat *child,
            gpointer parent)
{
  gpointer member = (char *) parent + child->offset;

  switch (child->kind)
    {
    case HUT_CHILD_ITEMS:
      {
        gpointer item = child->new_item ();

        g_ptr_array_add (*(GPtrArray **) member, item);
        return hut_tree_reader_read (self, node, child->element, item);
      }
    case HUT_CHILD_VALUES:
      {
        GArray *values = *(GArray **) member;
        const guint n = values->len;

        g_array_set_size (values, n + 1);
        return hut_tree_reader_read (self, node, child->element,
                                     values->data + n * child->element->size);
      }
    case HUT_CHILD_KEPT:
      return read_kept (self, node, child->element, parent);
    case HUT_CHILD_MEMBER:
    default:
      return hut_tree_reader_read (self, node, child->element, member);
    }
}

/* Where the reader is among the children of an element. */
typedef struct
{
  guint next;  /* index of the first kind of child that may still come */
  guint n;     /* how many of that kind have come */
} Progress;

/* What may come next: "<body>, <service>, </machine>". (transfer full) */
static char *
dup_next_names (const HutElementFormat *format,
                const Progress *progress)
{
  g_autoptr(GString) names = g_string_new (NULL);

  if (format->n_children == 0)
    return g_strdup_printf ("nothing in <%s>", format->name);
  for (guint i = progress->next; i < format->n_children; i++)
    {
      const HutChildFormat *child = &format->children[i];
      const guint n = i == progress->next ? progress->n : 0;

      if (n < child->most)
        g_string_append_printf (names, "<%s>, ", child->element->name);
      if (n < child->least)
        {
          g_string_truncate (names, names->len - strlen (", "));
          return g_string_free (g_steal_pointer (&names), FALSE);
        }
    }
  g_string_append_printf (names, "</%s>", format->name);
  return g_string_free (g_steal_pointer (&names), FALSE);
}

/* What may stand between elements: comments, processing instructions and white space. */
static gboolean
is_filler (const xmlNode *node)
{
  return node->type == XML_COMMENT_NODE || node->type == XML_PI_NODE
         || ((node->type == XML_TEXT_NODE || node->type == XML_CDATA_SECTION_NODE)
             && xmlIsBlankNode (node));
}

/* Line of the first word of a text. libxml2 gives the line where its first piece ends. Whether a
 * longer text came in more pieces is not known: then its element must do. */
static long
line_of_text (xmlNode *node)
{
  const char *text = node->content != NULL ? (const char *) node->content : "";
  const gsize n_blanks = strspn (text, BLANKS);
  long line = xmlGetLineNo (node);

  if (strlen (text) >= ONE_PIECE_BYTES)
    return xmlGetLineNo (node->parent);
  for (const char *c = text; *c != '\0'; c++)
    line -= *c == '\n' && c >= text + n_blanks;
  return line;
}

static void
set_child_error (const HutTreeReader *self,
                 xmlNode *node,
                 const HutElementFormat *format,
                 const Progress *progress)
{
  g_autofree char *allowed = dup_next_names (format, progress);

  if (node->type != XML_ELEMENT_NODE)
    {
      const char *text = node->content != NULL ? (const char *) node->content : "";
      g_autofree char *words = g_strstrip (g_strdup (text));
      g_autofree char *shown = hut_value_dup_shown (words);

      set_value_error (self, line_of_text (node), "text '%s' in <%s>; allowed: only elements",
                       shown, format->name);
      return;
    }

  g_autofree char *shown = hut_value_dup_shown ((const char *) node->name);

  for (guint i = 0; i < format->n_children; i++)
    if (hut_tree_reader_is_named (self, node, format->children[i].element->name))
      {
        set_value_error (self, xmlGetLineNo (node), "<%s> is not allowed here; allowed: %s", shown,
                         allowed);
        return;
      }
  set_value_error (self, xmlGetLineNo (node), "unknown element <%s> in <%s>; allowed: %s",
                   shown, format->name, allowed);
}

static gboolean
check_count (const HutTreeReader *self,
             xmlNode *node,
             const HutElementFormat *format,
             const HutChildFormat *child,
             guint n)
{
  if (n >= child->least && n <= child->most)
    return TRUE;
  if (n < child->least)
    set_value_error (self, xmlGetLineNo (node),
                     "<%s> is missing in <%s>; allowed: at least %u", child->element->name,
                     format->name, child->least);
  else
    set_value_error (self, xmlGetLineNo (node), "too many <%s> in <%s>; allowed: at most %u",
                     child->element->name, format->name, child->most);
  return FALSE;
}

static xmlNode *
skip_filler (xmlNode *node)
{
  while (node != NULL && is_filler (node))
    node = node->next;
  return node;
}

static gboolean
read_children (const HutTreeReader *self,
               xmlNode *parent,
               const HutElementFormat *format,
               gpointer target)
{
  xmlNode *node = skip_filler (parent->children);
  Progress progress = { 0, 0 };

  for (guint i = 0; i < format->n_children; i++)
    {
      const HutChildFormat *child = &format->children[i];
      guint n = 0;

      for (; node != NULL && hut_tree_reader_is_named (self, node, child->element->name);
           node = skip_filler (node->next))
        {
          progress = (Progress) { i, ++n };
          if (n > child->most)
            return check_count (self, node, format, child, n);
          if (!read_child (self, node, child, target))
            return FALSE;
        }
      if (n < child->least && node != NULL)
        break;
      if (!check_count (self, parent, format, child, n))
        return FALSE;
    }
  if (node != NULL)
    set_child_error (self, node, format, &progress);
  return node == NULL;
}

/* The text inside an element, without the blanks round it. */
static gboolean
read_content (const HutTreeReader *self,
              xmlNode *node,
              const HutElementFormat *format,
              gpointer target)
{
  g_autoptr(GString) text = g_string_new (NULL);
  g_autofree char *fault = NULL;

  for (xmlNode *child = node->children; child != NULL; child = child->next)
    {
      if (child->type == XML_TEXT_NODE || child->type == XML_CDATA_SECTION_NODE)
        g_string_append (text, (const char *) child->content);
      else if (!is_filler (child))
        {
          g_autofree char *shown = hut_value_dup_shown ((const char *) child->name);

          set_value_error (self, xmlGetLineNo (child),
                           "unknown element <%s> in <%s>; allowed: text", shown, format->name);
          return FALSE;
        }
    }
  g_strchug (text->str);
  g_strchomp (text->str);
  fault = hut_value_read (format->content, text->str, target);
  if (fault != NULL)
    set_value_error (self, xmlGetLineNo (node), "%s %s", format->content->label, fault);
  return fault == NULL;
}

gboolean
hut_tree_reader_read (const HutTreeReader *self,
                      xmlNode *node,
                      const HutElementFormat *format,
                      gpointer target)
{
  g_autofree char *fault = NULL;

  if (!read_attributes (self, node, format, target))
    return FALSE;
  if (format->content != NULL ? !read_content (self, node, format, target)
                              : !read_children (self, node, format, target))
    return FALSE;
  if (format->dup_fault != NULL)
    fault = format->dup_fault (target);
  if (fault != NULL)
    set_value_error (self, xmlGetLineNo (node), "%s", fault);
  return fault == NULL;
}

gboolean
hut_tree_reader_finish (const HutTreeReader *self)
{
  long line = 0;
  g_autofree char *fault = hut_id_book_dup_fault (self->book, &line);

  if (fault != NULL)
    set_value_error (self, line, "%s", fault);
  return fault == NULL;
}
