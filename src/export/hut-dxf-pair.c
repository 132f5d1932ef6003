/* src/export/hut-dxf-pair.c: the pairs of code and value that a DXF file is made of.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "export/hut-dxf-pair.h"
#include "export/hut-write.h"
#include "format/hut-number.h"
#include <string.h>

void
hut_dxf_pair (GString *file,
              int code,
              const char *value)
{
  g_string_append_printf (file, "%3d\r\n%s\r\n", code, value);
}

void
hut_dxf_short (GString *file,
               const char *notation)
{
  g_auto(GStrv) pairs = g_strsplit (notation, "|", -1);

  for (guint i = 0; pairs[i] != NULL; i++)
    {
      const char *blank = strchr (pairs[i], ' ');

      if (blank != NULL)
        hut_dxf_pair (file, (int) g_ascii_strtoll (pairs[i], NULL, 10), blank + 1);
    }
}

/* A real number always has a decimal mark, so that strict readers see its type. */
void
hut_dxf_real (GString *file,
              int code,
              double value,
              guint decimals)
{
  char buffer[HUT_NUMBER_SIZE];

  hut_number_fixed (buffer, value, decimals);
  g_string_append_printf (file, "%3d\r\n%s%s\r\n", code, buffer,
                          strchr (buffer, '.') != NULL ? "" : ".0");
}

void
hut_dxf_point (GString *file,
               int code,
               HutPoint p)
{
  hut_dxf_real (file, code, p.u, HUT_WRITE_DECIMALS);
  hut_dxf_real (file, code + 10, p.v, HUT_WRITE_DECIMALS);
}

void
hut_dxf_point_3 (GString *file,
                 int code,
                 HutPoint p)
{
  hut_dxf_point (file, code, p);
  hut_dxf_real (file, code + 20, 0.0, HUT_WRITE_DECIMALS);
}

/* Comments of this version are plain ASCII on one line. */
void
hut_dxf_comment (GString *file,
                 const char *text)
{
  g_autofree char *line = g_strdup (text);

  for (char *at = line; *at != '\0'; at++)
    if (!g_ascii_isprint (*at))
      *at = '?';
  hut_dxf_pair (file, 999, line);
}
