/* tests/app/test-session-spots.c: parts laid on the sheets by hand, as edits of the design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-session-spots.h"
#include "assembly/hut-spot-place.h"
#include "hut-assert.h"
#include "hut-box-design.h"

typedef struct
{
  HutSession *session;
  HutSheetSet *sheets;
} Case;

static int
set_up (void **state)
{
  Case *c = g_new0 (Case, 1);

  c->session = hut_session_new (hut_box_design_new ());
  c->sheets = hut_sheet_set_new (hut_session_get_assembly (c->session),
                                 hut_session_get_parts (c->session));
  *state = c;
  return 0;
}

static int
tear_down (void **state)
{
  Case *c = *state;

  hut_sheet_set_free (c->sheets);
  g_object_unref (c->session);
  g_free (c);
  return 0;
}

static HutLaidPart *
first_laid (Case *c)
{
  const HutSheet *sheet = g_ptr_array_index (c->sheets->sheets, 0);

  return &g_array_index (sheet->laid, HutLaidPart, 0);
}

static char *
keep_first (Case *c,
            double by_mm)
{
  HutLaidPart *laid = first_laid (c);
  const HutPartSet *parts = hut_session_get_parts (c->session);
  char *id = g_strdup (((const HutPart *) g_ptr_array_index (parts->parts, laid->part))->id);

  laid->placement.shift.u += by_mm;
  assert_true (hut_session_keep_part (c->session, parts, c->sheets, laid->part));
  return id;
}

/* The same layout comes out again with only that part moved; undo takes the list away. */
static void
moved_part_is_kept_and_the_others_stay_as_they_lay (void **state)
{
  Case *c = *state;
  const guint count = ((const HutSheet *) g_ptr_array_index (c->sheets->sheets, 0))->laid->len;
  g_autofree char *id = keep_first (c, 500.0);
  const HutDesign *design = hut_session_get_design (c->session);
  g_autoptr(HutSheetSet) again = hut_sheet_set_new (hut_session_get_assembly (c->session),
                                                    hut_session_get_parts (c->session));
  guint kept = 0;

  assert_int_equal (design->spots->len, count);
  for (guint i = 0; i < design->spots->len; i++)
    kept += ((const HutSpot *) g_ptr_array_index (design->spots, i))->kept ? 1 : 0;
  assert_int_equal (kept, 1);
  assert_true (hut_design_get_spot (design, id)->kept);
  assert_int_equal (again->sheets->len, c->sheets->sheets->len);
  hut_session_undo (c->session);
  assert_int_equal (hut_session_get_design (c->session)->spots->len, 0);
}

static void
released_part_is_free_again (void **state)
{
  Case *c = *state;
  g_autofree char *id = keep_first (c, 1.0);

  assert_false (hut_session_release_part (c->session, "no such part"));
  assert_true (hut_session_release_part (c->session, id));
  assert_null (hut_design_get_spot (hut_session_get_design (c->session), id));
  assert_false (hut_session_release_part (c->session, id));
  hut_session_undo (c->session);
  assert_true (hut_design_get_spot (hut_session_get_design (c->session), id)->kept);
}

static void
all_are_released_at_once (void **state)
{
  Case *c = *state;
  g_autofree char *id = keep_first (c, 1.0);

  assert_true (hut_session_release_all (c->session));
  assert_int_equal (hut_session_get_design (c->session)->spots->len, 0);
  assert_false (hut_session_release_all (c->session));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test_setup_teardown (moved_part_is_kept_and_the_others_stay_as_they_lay, set_up,
                                     tear_down),
    cmocka_unit_test_setup_teardown (released_part_is_free_again, set_up, tear_down),
    cmocka_unit_test_setup_teardown (all_are_released_at_once, set_up, tear_down),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
