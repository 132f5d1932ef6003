/* src/format/hut-id-book.c: which ids a file has given, and which it names.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-format"
#include "config.h"
#include "format/hut-id-book.h"
#include "format/hut-value-reader.h"
#include <string.h>

/* Ids that a message lists at most. Own choice: fits a line. */
#define LISTED_IDS_MAX 12

typedef struct
{
  char *element, *id, *what;
  long line;
} Reference;

struct _HutIdBook
{
  GHashTable *lines;  /* "stock plywood" -> line of that element */
  GArray *references; /* Reference */
};

static void
reference_clear (gpointer data)
{
  Reference *reference = data;

  g_free (reference->element);
  g_free (reference->id);
  g_free (reference->what);
}

HutIdBook *
hut_id_book_new (void)
{
  HutIdBook *self = g_new0 (HutIdBook, 1);

  self->lines = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  self->references = g_array_new (FALSE, FALSE, sizeof (Reference));
  g_array_set_clear_func (self->references, reference_clear);
  return self;
}

void
hut_id_book_free (HutIdBook *self)
{
  if (self == NULL)
    return;
  g_hash_table_unref (self->lines);
  g_array_unref (self->references);
  g_free (self);
}

char *
hut_id_book_add (HutIdBook *self,
                 const char *element,
                 const char *id,
                 long line)
{
  g_autofree char *key = g_strdup_printf ("%s %s", element, id);
  gpointer first = NULL;

  if (g_hash_table_lookup_extended (self->lines, key, NULL, &first))
    return g_strdup_printf ("id '%s' of <%s> is already used in line %ld; "
                            "allowed: a different id for every <%s>",
                            id, element, (long) GPOINTER_TO_SIZE (first), element);
  g_hash_table_insert (self->lines, g_steal_pointer (&key), GSIZE_TO_POINTER (line));
  return NULL;
}

void
hut_id_book_refer (HutIdBook *self,
                   const char *element,
                   const char *id,
                   const char *what,
                   long line)
{
  const Reference reference = {
    .element = g_strdup (element),
    .id = g_strdup (id),
    .what = g_strdup (what),
    .line = line,
  };

  g_array_append_val (self->references, reference);
}

static int
compare_texts (gconstpointer a,
               gconstpointer b)
{
  return strcmp (*(const char *const *) a, *(const char *const *) b);
}

/* The ids of all elements of that name, sorted. (transfer full) */
static char *
dup_ids (const HutIdBook *self,
         const char *element)
{
  g_autofree char *start = g_strdup_printf ("%s ", element);
  g_autoptr(GPtrArray) ids = g_ptr_array_new ();
  g_autoptr(GString) list = g_string_new (NULL);
  GHashTableIter iter;
  gpointer key;

  g_hash_table_iter_init (&iter, self->lines);
  while (g_hash_table_iter_next (&iter, &key, NULL))
    if (g_str_has_prefix (key, start))
      g_ptr_array_add (ids, (char *) key + strlen (start));
  g_ptr_array_sort (ids, compare_texts);
  for (guint i = 0; i < ids->len && i < LISTED_IDS_MAX; i++)
    g_string_append_printf (list, "%s%s", i > 0 ? ", " : "", (char *) g_ptr_array_index (ids, i));
  if (ids->len > LISTED_IDS_MAX)
    g_string_append (list, ", ...");
  if (ids->len == 0)
    g_string_append_printf (list, "none, as there is no <%s>", element);
  return g_string_free (g_steal_pointer (&list), FALSE);
}

char *
hut_id_book_dup_fault (const HutIdBook *self,
                       long *line)
{
  for (guint i = 0; i < self->references->len; i++)
    {
      const Reference *reference = &g_array_index (self->references, Reference, i);
      g_autofree char *key = g_strdup_printf ("%s %s", reference->element, reference->id);

      if (!g_hash_table_contains (self->lines, key))
        {
          g_autofree char *allowed = dup_ids (self, reference->element);
          g_autofree char *shown = hut_value_dup_shown (reference->id);

          *line = reference->line;
          return g_strdup_printf ("%s is '%s', which no <%s> has; allowed: %s", reference->what,
                                  shown, reference->element, allowed);
        }
    }
  return NULL;
}
