/* src/format/hut-file-read.c: the bytes of a file from outside.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-format"
#include "config.h"
#include "format/hut-file-read.h"
#include "format/hut-file-error.h"
#include "format/hut-xml.h"
#include <errno.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

static gboolean
read_all (int fd,
          GByteArray *bytes)
{
  guint8 block[65536];

  for (;;)
    {
      const gssize n = read (fd, block, sizeof block);

      if (n < 0 && errno == EINTR)
        continue;
      if (n <= 0)
        return n == 0;
      g_byte_array_append (bytes, block, (guint) n);
      /* hut_xml_parse () refuses it with a message; a file that grows must not fill the memory. */
      if (bytes->len > HUT_XML_SIZE_MAX_BYTES)
        return TRUE;
    }
}

gboolean
hut_file_read (const char *path,
               const char *name,
               GByteArray *bytes,
               GError **error)
{
  const int fd = open (path, O_RDONLY | O_NONBLOCK | O_CLOEXEC);
  struct stat status;
  gboolean ok = fd >= 0 && fstat (fd, &status) == 0;
  int code = errno;

  if (ok && !S_ISREG (status.st_mode))
    {
      ok = FALSE;
      code = S_ISDIR (status.st_mode) ? EISDIR : EINVAL;
    }
  else if (ok)
    {
      ok = read_all (fd, bytes);
      code = errno;
    }
  if (fd >= 0)
    close (fd);
  if (!ok)
    g_set_error (error, HUT_FILE_ERROR, HUT_FILE_ERROR_IO, "%s: cannot be read: %s", name,
                 g_strerror (code));
  return ok;
}
