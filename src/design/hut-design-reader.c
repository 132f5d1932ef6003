/* src/design/hut-design-reader.c: an XML tree, checked word by word, into a design.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One walk over the tree along the tables of hut-design-format.h. What the tables do not list is an
 * error, so that a slip of the pen is never lost silently. Ids are collected on the way and looked
 * up at the end, with the line of whoever named them. */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design-reader.h"
#include "design/hut-file.h"
#include "design/hut-id-book.h"
#include "design/hut-value-reader.h"
#include <string.h>

/* XML 1.0, 2.3: white space. */
#define BLANKS " \t\r\n"
/* Under this length a text comes in one piece: XML_PARSER_BUFFER_SIZE of libxml2 is 100, and its
 * characters have up to 4 bytes, so half of that is safe. */
#define ONE_PIECE_BYTES 50

typedef struct
{
  const char *name;
  GError **error;
  HutIdBook *book;
} Reader;

static gboolean read_element (Reader *self,
                              xmlNode *node,
                              const HutElementFormat *format,
                              gpointer target);

static void G_GNUC_PRINTF (3, 4)
set_value_error (Reader *self,
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

static gboolean
is_named (const xmlNode *node,
          const char *name)
{
  return node->ns != NULL && strcmp ((const char *) node->ns->href, HUT_DESIGN_NS) == 0
         && strcmp ((const char *) node->name, name) == 0;
}

/* The text of an attribute: NULL when absent. (transfer full) */
static char *
dup_attribute (xmlNode *node,
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
      = strcmp (format->attributes[0].name, "id") == 0 ? dup_attribute (node, "id") : NULL;
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
check_attribute_names (Reader *self,
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
note_id (Reader *self,
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
set_attribute_error (Reader *self,
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
read_attributes (Reader *self,
                 xmlNode *node,
                 const HutElementFormat *element,
                 gpointer target)
{
  if (!check_attribute_names (self, node, element))
    return FALSE;
  for (guint i = 0; i < element->n_attributes; i++)
    {
      const HutAttributeFormat *format = &element->attributes[i];
      g_autofree char *text = dup_attribute (node, format->name);
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
read_panel (Reader *self,
            xmlNode *node,
            const HutElementFormat *format,
            HutShell *shell)
{
  HutPanelStock entry = { .stock = NULL };
  g_autofree char *stock = NULL;

  const gboolean ok = read_element (self, node, format, &entry);

  stock = entry.stock;
  if (!ok)
    return FALSE;

  char **member = &shell->stock[entry.panel.shell][entry.panel.side];

  if (*member != NULL)
    {
      set_value_error (self, xmlGetLineNo (node),
                       "panel '%s' comes twice; allowed: one <panel> for each",
                       hut_panel_id_to_string (entry.panel));
      return FALSE;
    }
  *member = g_steal_pointer (&stock);
  return TRUE;
}

static gboolean
read_child (Reader *self,
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
        return read_element (self, node, child->element, item);
      }
    case HUT_CHILD_VALUES:
      {
        GArray *values = *(GArray **) member;
        const guint n = values->len;

        g_array_set_size (values, n + 1);
        return read_element (self, node, child->element, values->data + n * child->element->size);
      }
    case HUT_CHILD_PANELS:
      return read_panel (self, node, child->element, parent);
    case HUT_CHILD_MEMBER:
    default:
      return read_element (self, node, child->element, member);
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
set_child_error (Reader *self,
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
    if (is_named (node, format->children[i].element->name))
      {
        set_value_error (self, xmlGetLineNo (node), "<%s> is not allowed here; allowed: %s", shown,
                         allowed);
        return;
      }
  set_value_error (self, xmlGetLineNo (node), "unknown element <%s> in <%s>; allowed: %s",
                   shown, format->name, allowed);
}

static gboolean
check_count (Reader *self,
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
read_children (Reader *self,
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

      for (; node != NULL && is_named (node, child->element->name); node = skip_filler (node->next))
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

static gboolean
read_element (Reader *self,
              xmlNode *node,
              const HutElementFormat *format,
              gpointer target)
{
  g_autofree char *fault = NULL;

  if (!read_attributes (self, node, format, target) || !read_children (self, node, format, target))
    return FALSE;
  if (format->dup_fault != NULL)
    fault = format->dup_fault (target);
  if (fault != NULL)
    set_value_error (self, xmlGetLineNo (node), "%s", fault);
  return fault == NULL;
}

/* ---- the whole ------------------------------------------------------------------------------ */

static gboolean
check_references (Reader *self)
{
  long line = 0;
  g_autofree char *fault = hut_id_book_dup_fault (self->book, &line);

  if (fault != NULL)
    set_value_error (self, line, "%s", fault);
  return fault == NULL;
}

/* A namespace of ours with another number, or a higher version: what a later program writes. */
static gboolean
check_version (Reader *self,
               xmlNode *root)
{
  const char *uri = root->ns != NULL ? (const char *) root->ns->href : "";
  g_autofree char *version = dup_attribute (root, "version");
  g_autofree char *shown = version != NULL ? hut_value_dup_shown (version) : NULL;
  const gsize stem = strlen (HUT_DESIGN_NS) - strlen ("1");
  const gboolean is_ours = strncmp (uri, HUT_DESIGN_NS, stem) == 0
                           && strcmp ((const char *) root->name, "enclosure") == 0;
  const char *number = is_ours ? uri + stem : "";
  const gboolean is_other = is_ours && strcmp (uri, HUT_DESIGN_NS) != 0 && number[0] != '\0'
                            && number[strspn (number, "0123456789")] == '\0';
  const gboolean is_newer = is_ours && version != NULL && version[0] != '\0'
                            && version[strspn (version, "0123456789")] == '\0'
                            && g_ascii_strtod (version, NULL) > HUT_DESIGN_VERSION;

  if (is_other || is_newer)
    {
      g_set_error (self->error, HUT_FILE_ERROR, HUT_FILE_ERROR_VERSION,
                   "%s:%ld: the file has version %s, from a newer program; allowed: version %d",
                   self->name, xmlGetLineNo (root), is_newer ? shown : number, HUT_DESIGN_VERSION);
      return FALSE;
    }
  if (!is_named (root, "enclosure"))
    {
      g_autofree char *name = hut_value_dup_shown ((const char *) root->name);

      set_value_error (self, xmlGetLineNo (root),
                       "the root element is <%s>%s; allowed: <enclosure xmlns=\"%s\">", name,
                       strcmp (name, "enclosure") == 0 ? " of another namespace" : "",
                       HUT_DESIGN_NS);
      return FALSE;
    }
  return TRUE;
}

HutDesign *
hut_design_read (xmlNode *root,
                 const char *name,
                 GError **error)
{
  g_return_val_if_fail (root != NULL && name != NULL, NULL);

  g_autoptr(HutIdBook) book = hut_id_book_new ();
  g_autoptr(HutDesign) design = hut_design_new_empty ();
  Reader reader = { name, error, book };

  if (!check_version (&reader, root) || !read_element (&reader, root, &hut_design_format, design)
      || !check_references (&reader))
    return NULL;
  return g_steal_pointer (&design);
}
