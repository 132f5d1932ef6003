/* tests/hut-assert.h: cmocka, and asserts that print both values.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
#include <locale.h>
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <cmocka.h>

/* Tests run in the locale of their environment, as the program does: the setup "comma" depends on it.
 * HUT_CASES='*arc*' runs only the cases of such a name. */
__attribute__ ((constructor)) static void
hut_assert_prepare (void)
{
  const char *cases = g_getenv ("HUT_CASES");

  setlocale (LC_ALL, "");
  if (cases != NULL)
    cmocka_set_test_filter (cases);
}

#define assert_near(value, expected, tolerance)                                                     \
  do                                                                                                \
    {                                                                                               \
      const double value_ = (value), expected_ = (expected), tolerance_ = (tolerance);              \
      if (!(fabs (value_ - expected_) <= tolerance_))                                               \
        fail_msg ("%s is %.12g, must be %.12g within %.3g", #value, value_, expected_, tolerance_); \
    }                                                                                               \
  while (0)

#define assert_near_mm(value_mm, expected_mm, tolerance_mm) \
  assert_near (value_mm, expected_mm, tolerance_mm)

/* A call that must succeed: prints the GError if it did not. */
#define assert_ok(call, error)                                                                  \
  do                                                                                            \
    {                                                                                           \
      if (!(call))                                                                              \
        fail_msg ("%s: %s", #call, (error) != NULL ? (error)->message : "failed without error"); \
    }                                                                                           \
  while (0)
