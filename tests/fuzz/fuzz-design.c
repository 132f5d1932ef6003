/* tests/fuzz/fuzz-design.c: a search without end for design files that break the reader.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Not built by default; needs clang and its libFuzzer:
 *   CC=clang meson setup build-fuzz -Db_sanitize=address,undefined -Db_lundef=false \
 *     -Dc_args=-fsanitize=fuzzer-no-link
 *   ninja -C build-fuzz tests/fuzz/fuzz-design
 *   mkdir -p build-fuzz/corpus
 *   build-fuzz/tests/fuzz/fuzz-design -max_len=20000 build-fuzz/corpus src/design/examples
 * A file that it finds becomes a case of tests/design/test-design-reader.c or test-xml.c. */
#include "config.h"
#include "design/hut-file.h"
#include <stdint.h>
#include <string.h>

int LLVMFuzzerTestOneInput (const uint8_t *data, size_t size);

int
LLVMFuzzerTestOneInput (const uint8_t *data,
                        size_t size)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) design = hut_design_from_xml ((const char *) data, size, "fuzz", &error);
  g_autofree char *text = NULL;
  g_autoptr(HutDesign) again = NULL;

  if (design == NULL)
    {
      g_assert_error (error, HUT_FILE_ERROR, error->code);
      /* what the schema refuses, the reader has refused before it */
      g_assert_false (g_regex_match_simple ("^fuzz:\\d+: against the schema: ", error->message, 0, 0));
      return 0;
    }
  text = hut_design_to_xml (design);
  again = hut_design_from_xml (text, strlen (text), "fuzz", &error);
  g_assert_no_error (error);
  g_assert_true (hut_design_equal (design, again));
  return 0;
}
