/* tests/hut-scratch.c: a folder of its own for tests that write files.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "hut-scratch.h"
#include "hut-assert.h"
#include <glib/gstdio.h>
#include <string.h>

char *
hut_scratch_new (void)
{
  g_autoptr(GError) error = NULL;
  char *self = g_dir_make_tmp ("hut-scratch-XXXXXX", &error);

  assert_ok (self != NULL, error);
  return self;
}

void
hut_scratch_remove_tree (const char *path)
{
  if (g_file_test (path, G_FILE_TEST_IS_DIR) && !g_file_test (path, G_FILE_TEST_IS_SYMLINK))
    {
      g_autoptr(GDir) dir = g_dir_open (path, 0, NULL);
      const char *name;

      while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
        {
          g_autofree char *child = g_build_filename (path, name, NULL);

          hut_scratch_remove_tree (child);
        }
    }
  g_remove (path);
}

void
hut_scratch_free (char *self)
{
  if (self != NULL)
    hut_scratch_remove_tree (self);
  g_free (self);
}

static void
append_tree (GPtrArray *lines,
             const char *path,
             const char *prefix)
{
  g_autoptr(GDir) dir = g_dir_open (path, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *child = g_build_filename (path, name, NULL);
      g_autofree char *inner = g_strconcat (prefix, name, "/", NULL);
      g_autofree char *content = NULL;

      if (g_file_test (child, G_FILE_TEST_IS_DIR))
        {
          g_ptr_array_add (lines, g_strconcat (prefix, name, "/\n", NULL));
          append_tree (lines, child, inner);
        }
      else if (g_file_get_contents (child, &content, NULL, NULL))
        g_ptr_array_add (lines, g_strconcat (prefix, name, "=", content, "\n", NULL));
    }
}

static int
compare_lines (gconstpointer a,
               gconstpointer b)
{
  return strcmp (*(const char *const *) a, *(const char *const *) b);
}

char *
hut_scratch_list (const char *folder)
{
  g_autoptr(GPtrArray) lines = g_ptr_array_new_with_free_func (g_free);

  append_tree (lines, folder, "");
  g_ptr_array_sort (lines, compare_lines);
  g_ptr_array_add (lines, NULL);
  return g_strjoinv ("", (char **) lines->pdata);
}

void
hut_scratch_put (const char *folder,
                 const char *name,
                 const char *content)
{
  g_autofree char *path = g_build_filename (folder, name, NULL);
  g_autoptr(GError) error = NULL;

  assert_int_equal (g_mkdir_with_parents (folder, 0755), 0);
  assert_ok (g_file_set_contents (path, content, -1, &error), error);
}
