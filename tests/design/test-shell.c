/* tests/design/test-shell.c: panel names, and which panels and hinges a kind of enclosure has.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "design/hut-design.h"
#include "hut-assert.h"
#include <string.h>

static void
panel_names_read_back (void **state)
{
  int n_names = 0;

  for (int shell = 0; shell < HUT_SHELL_COUNT; shell++)
    for (int side = 0; side < HUT_SIDE_COUNT; side++)
      {
        const HutPanelId id = { (HutShellId) shell, (HutSide) side };
        HutPanelId again;

        if (!hut_panel_id_from_string (hut_panel_id_to_string (id), &again))
          continue;
        n_names++;
        assert_true (hut_panel_id_equal (id, again));
      }
  assert_int_equal (n_names, 11); /* six of the base, five of the lid: a lid has no bottom */
}

static void
panel_names_are_those_of_the_file_format (void **state)
{
  assert_string_equal (hut_panel_id_to_string ((HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_FRONT }),
                       "base-front");
  assert_string_equal (hut_panel_id_to_string ((HutPanelId) { HUT_SHELL_LID, HUT_SIDE_TOP }),
                       "lid-top");
}

static void
unknown_panel_names_are_refused_and_write_nothing (void **state)
{
  static const char *const bad[]
      = { NULL, "", "lid", "lid-", "lid-roof", "LID-TOP", "lid-top ", "lid-bottom", "base-topp" };

  for (gsize i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      HutPanelId id = { HUT_SHELL_LID, HUT_SIDE_LEFT };

      assert_false (hut_panel_id_from_string (bad[i], &id));
      assert_int_equal (id.shell, HUT_SHELL_LID);
      assert_int_equal (id.side, HUT_SIDE_LEFT);
    }
}

static void
each_kind_of_lid_turns_on_its_own_lines (void **state)
{
  /* columns: back, left, right, top */
  static const gboolean allowed[4][4] = {
    [HUT_LID_HOOD] = { TRUE, TRUE, TRUE, FALSE },
    [HUT_LID_TOP] = { TRUE, TRUE, TRUE, FALSE },
    [HUT_LID_LIFT_OFF] = { FALSE, FALSE, FALSE, FALSE },
    [HUT_LID_FRONT] = { FALSE, TRUE, TRUE, TRUE },
  };

  for (int lid = 0; lid < 4; lid++)
    for (int hinge = 0; hinge < 4; hinge++)
      assert_int_equal (hut_lid_allows_hinge ((HutLidKind) lid, (HutHinge) hinge),
                        allowed[lid][hinge]);
}

/* "FBLRbt" for the sides that are there: front back left right bottom top. */
static const char *
list_panels (char text[HUT_SIDE_COUNT + 1],
             HutLidKind lid,
             HutBottomKind bottom,
             HutShellId shell)
{
  const HutShell self = { .lid = lid, .bottom = bottom };
  int n = 0;

  for (int side = 0; side < HUT_SIDE_COUNT; side++)
    if (hut_shell_has_panel (&self, (HutPanelId) { shell, (HutSide) side }))
      text[n++] = "FBLRbt"[side];
  text[n] = '\0';
  return text;
}

static void
each_kind_of_enclosure_has_its_panels (void **state)
{
  static const struct
  {
    HutLidKind lid;
    HutBottomKind bottom;
    const char *base, *lid_panels;
  } cases[] = {
    { HUT_LID_HOOD, HUT_BOTTOM_JOINTED, "FBLRb", "FBLRt" },
    { HUT_LID_HOOD, HUT_BOTTOM_OPEN, "FBLR", "FBLRt" },
    { HUT_LID_LIFT_OFF, HUT_BOTTOM_INSET, "FBLRb", "FBLRt" },
    { HUT_LID_TOP, HUT_BOTTOM_UNDER, "FBLRb", "t" },
    { HUT_LID_FRONT, HUT_BOTTOM_BOUGHT, "BLRbt", "F" },
    { HUT_LID_FRONT, HUT_BOTTOM_OPEN, "BLRt", "F" },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      char text[HUT_SIDE_COUNT + 1];

      assert_string_equal (list_panels (text, cases[i].lid, cases[i].bottom, HUT_SHELL_BASE),
                           cases[i].base);
      assert_string_equal (list_panels (text, cases[i].lid, cases[i].bottom, HUT_SHELL_LID),
                           cases[i].lid_panels);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (panel_names_read_back),
    cmocka_unit_test (panel_names_are_those_of_the_file_format),
    cmocka_unit_test (unknown_panel_names_are_refused_and_write_nothing),
    cmocka_unit_test (each_kind_of_lid_turns_on_its_own_lines),
    cmocka_unit_test (each_kind_of_enclosure_has_its_panels),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
