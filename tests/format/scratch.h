/* tests/format/scratch.h: a folder of its own for each test that touches the disk.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hut-assert.h"
#include <glib/gstdio.h>
#include <string.h>

/* cmocka setup: *state is the path of a new folder. */
static inline int
make_scratch (void **state)
{
  *state = g_dir_make_tmp ("hut-test-XXXXXX", NULL);
  return *state != NULL ? 0 : -1;
}

/* cmocka teardown: removes the folder with all that is in it. */
static inline int
remove_scratch (void **state)
{
  GDir *dir = g_dir_open (*state, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (*state, name, NULL);

      g_remove (path);
    }
  g_clear_pointer (&dir, g_dir_close);
  g_rmdir (*state);
  g_clear_pointer (state, g_free);
  return 0;
}

static inline guint
count_files (const char *folder)
{
  GDir *dir = g_dir_open (folder, 0, NULL);
  guint n = 0;

  assert_non_null (dir);
  while (g_dir_read_name (dir) != NULL)
    n++;
  g_dir_close (dir);
  return n;
}

static inline void
put_file (const char *path,
          const char *text)
{
  assert_true (g_file_set_contents (path, text, -1, NULL));
}

static inline void
assert_file (const char *path,
             const char *text)
{
  g_autofree char *found = NULL;

  if (!g_file_get_contents (path, &found, NULL, NULL))
    fail_msg ("%s cannot be read", path);
  assert_string_equal (found, text);
}
