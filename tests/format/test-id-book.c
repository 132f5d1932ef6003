/* tests/format/test-id-book.c: which ids a file has given, and which it names.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "format/hut-id-book.h"
#include "hut-assert.h"
#include <string.h>

static void
an_id_is_given_once_for_each_kind_of_element (void **state)
{
  g_autoptr(HutIdBook) book = hut_id_book_new ();
  g_autofree char *fault = NULL;

  assert_null (hut_id_book_add (book, "stock", "ply", 3));
  assert_null (hut_id_book_add (book, "body", "ply", 4));
  fault = hut_id_book_add (book, "stock", "ply", 5);
  assert_string_equal (fault, "id 'ply' of <stock> is already used in line 3; "
                              "allowed: a different id for every <stock>");
}

static void
a_reference_may_come_before_its_id (void **state)
{
  g_autoptr(HutIdBook) book = hut_id_book_new ();
  long line = 0;

  hut_id_book_refer (book, "stock", "ply", "stock of the shell", 2);
  assert_null (hut_id_book_add (book, "stock", "ply", 9));
  assert_null (hut_id_book_dup_fault (book, &line));
  assert_int_equal (line, 0);
}

static void
the_first_reference_to_nothing_is_told_with_the_ids_there_are (void **state)
{
  g_autoptr(HutIdBook) book = hut_id_book_new ();
  long line = 0;
  g_autofree char *fault = NULL;

  assert_null (hut_id_book_add (book, "stock", "ply", 3));
  assert_null (hut_id_book_add (book, "stock", "glass", 4));
  assert_null (hut_id_book_add (book, "body", "frame", 5)); /* another kind */
  hut_id_book_refer (book, "stock", "ply", "stock of the shell", 6);
  hut_id_book_refer (book, "stock", "frame", "stock of panel 'lid-top'", 7);
  hut_id_book_refer (book, "stock", "none", "stock of panel 'lid-left'", 8);
  fault = hut_id_book_dup_fault (book, &line);
  assert_string_equal (fault, "stock of panel 'lid-top' is 'frame', which no <stock> has; "
                              "allowed: glass, ply");
  assert_int_equal (line, 7);
}

static void
a_long_list_of_ids_is_cut_and_an_empty_one_is_said (void **state)
{
  g_autoptr(HutIdBook) book = hut_id_book_new ();
  long line = 0;
  g_autofree char *none = NULL, *many = NULL;

  hut_id_book_refer (book, "body", "x", "anchor's body", 1);
  none = hut_id_book_dup_fault (book, &line);
  assert_true (g_str_has_suffix (none, "; allowed: none, as there is no <body>"));
  for (char id[] = "a"; id[0] <= 'm'; id[0]++) /* 13 of them */
    assert_null (hut_id_book_add (book, "body", id, 2));
  many = hut_id_book_dup_fault (book, &line);
  assert_true (g_str_has_suffix (many, "; allowed: a, b, c, d, e, f, g, h, i, j, k, l, ..."));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (an_id_is_given_once_for_each_kind_of_element),
    cmocka_unit_test (a_reference_may_come_before_its_id),
    cmocka_unit_test (the_first_reference_to_nothing_is_told_with_the_ids_there_are),
    cmocka_unit_test (a_long_list_of_ids_is_cut_and_an_empty_one_is_said),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
