/* tests/draw/test-panel-title.c: every panel has a name of its own.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-panel-title.h"
#include "hut-assert.h"

static void
titles_say_shell_and_side (void **state)
{
  assert_string_equal (hut_panel_id_title ((HutPanelId){ HUT_SHELL_BASE, HUT_SIDE_FRONT }),
                       "Base front");
  assert_string_equal (hut_panel_id_title ((HutPanelId){ HUT_SHELL_LID, HUT_SIDE_TOP }), "Lid top");
}

static void
no_two_panels_have_the_same_title (void **state)
{
  g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);

  for (int shell = 0; shell < HUT_SHELL_COUNT; shell++)
    for (int side = 0; side < HUT_SIDE_COUNT; side++)
      {
        const char *title = hut_panel_id_title ((HutPanelId){ (HutShellId)shell, (HutSide)side });

        assert_true (*title != '\0');
        assert_true (g_hash_table_add (seen, (gpointer)title));
      }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (titles_say_shell_and_side),
    cmocka_unit_test (no_two_panels_have_the_same_title),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
