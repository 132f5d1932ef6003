/* tests/physics/test-published.c: every published check value, as a table in the output.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-assert.h"
#include "physics/hut-published.h"

/* Rows of the list of check values. */
#define LISTED 204

static void
each_published_value_is_met (void **state)
{
  static void (*const sections[]) (HutPublished *) = {
    hut_published_air,
    hut_published_fan,
    hut_published_lid,
    hut_published_plate,
    hut_published_laser,
    hut_published_gap,
    hut_published_noise_and_heat,
    hut_published_board,
  };
  g_autoptr(GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);
  HutPublished published = { .ids = ids };

  printf ("%-8s %14s %14s %9s  %s\n", "check", "computed", "published", "rel. off", "source");
  for (guint i = 0; i < G_N_ELEMENTS (sections); i++)
    sections[i](&published);
  printf ("%u rows, %u check ids, %u off\n", published.rows, g_hash_table_size (ids),
          published.bad);
  assert_int_equal (published.bad, 0);
  assert_int_equal (g_hash_table_size (ids), LISTED);
}

static void
a_value_outside_of_its_room_is_counted (void **state)
{
  g_autoptr(GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);
  HutPublished published = { .ids = ids };

  hut_published_row (&published, "TRY-01", 1.02, 1, REL (0.01), "a row that must be off");
  hut_published_row (&published, "TRY-02", NAN, 1, REL (0.01), "a row that must be off");
  hut_published_row (&published, "TRY-03", 1.005, 1, REL (0.01), "a row that is met");
  assert_int_equal (published.bad, 2);
  assert_int_equal (published.rows, 3);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_published_value_is_met),
    cmocka_unit_test (a_value_outside_of_its_room_is_counted),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
