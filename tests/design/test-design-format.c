/* tests/design/test-design-format.c: the tables of the file format, walked row by row.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sample.h"
#include "walk.h"

/* Rows whose value another one bounds as well, so that their own limits cannot be set alone. */
static gboolean
is_bound_by_others (const Nth *nth)
{
  static const char *const rows[] = {
    "body left", "body right", "body front", "body back", "body bottom", "body top",
    "opening diameter", "opening width", "opening height",
  };
  g_autofree char *row = g_strdup_printf ("%s %s", nth->element->name, nth->attribute->name);

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    if (strcmp (row, rows[i]) == 0)
      return TRUE;
  return FALSE;
}

/* Loads the sample with the number @n set to @value; NULL when it is refused. */
static HutDesign *
load_with (const HutDesign *design,
           guint n,
           double value,
           GError **error)
{
  g_autoptr(HutDesign) other = hut_design_copy (design);
  const Nth nth = nth_attribute (other, n);
  g_autofree char *text = NULL;

  if (nth.attribute->kind == HUT_VALUE_COUNT)
    *(guint *) nth.member = (guint) (gint64) value; /* -1: more than any */
  else
    *(double *) nth.member = value;
  text = hut_design_to_xml (other);
  return hut_design_from_xml (text, strlen (text), "f", error);
}

static void
assert_taken (const HutDesign *design,
              guint n,
              double value)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) loaded = load_with (design, n, value, &error);

  assert_ok (loaded != NULL, error);
}

static void
assert_refused (const HutDesign *design,
                guint n,
                double value,
                const HutAttributeFormat *format)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) loaded = load_with (design, n, value, &error);

  if (loaded != NULL)
    fail_msg ("%s of %.17g is taken", format->name, value);
  assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE));
  if (strstr (error->message, format->label) == NULL
      || strstr (error->message, "; allowed: ") == NULL)
    fail_msg ("%s", error->message);
}

static void
each_number_is_taken_up_to_its_limits_and_refused_beyond (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();
  guint n_numbers = 0;

  for (guint n = 0;; n++)
    {
      const Nth nth = nth_attribute (design, n);
      const HutAttributeFormat *format = nth.attribute;
      const double step = format != NULL && format->kind == HUT_VALUE_COUNT ? 1.0 : 0.001;

      if (format == NULL)
        break;
      if (format->kind != HUT_VALUE_NUMBER && format->kind != HUT_VALUE_COUNT)
        continue;
      if (strcmp (nth.element->name, "item") == 0)
        continue; /* its numbers hang together: tests/catalog looks at them */
      n_numbers++;
      assert_true (format->least < format->most);
      if (!is_bound_by_others (&nth))
        {
          assert_taken (design, n, format->least);
          assert_taken (design, n, format->most);
        }
      assert_refused (design, n, format->least - step, format);
      assert_refused (design, n, format->most + step, format);
      if (format->kind == HUT_VALUE_NUMBER)
        {
          assert_refused (design, n, (double) NAN, format);
          assert_refused (design, n, (double) INFINITY, format);
          assert_refused (design, n, -(double) INFINITY, format);
          assert_refused (design, n, 1e300, format);
        }
    }
  assert_true (n_numbers > 100);
}

static void
collect_row (const HutElementFormat *element,
             gpointer self,
             gpointer data)
{
  GHashTable *seen = g_hash_table_new_full (g_str_hash, g_str_equal, NULL, NULL);

  for (guint i = 0; i < element->n_attributes; i++)
    {
      const HutAttributeFormat *format = &element->attributes[i];

      assert_true (g_hash_table_add (seen, (char *) format->name)); /* no name twice */
      assert_non_null (format->label);
      assert_true (format->offset < element->size);
      if (format->kind == HUT_VALUE_NUMBER || format->kind == HUT_VALUE_COUNT)
        assert_non_null (format->unit);
      if (format->kind == HUT_VALUE_CHOICE)
        assert_true (g_strv_length ((char **) format->choices) >= 2);
      if (format->kind == HUT_VALUE_REFERENCE)
        assert_non_null (format->refers_to);
    }
  g_hash_table_unref (seen);
  (*(guint *) data)++;
}

static void
each_row_is_whole (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();
  guint n_elements = 0;

  walk (&hut_design_format, design, collect_row, &n_elements);
  /* by hand: enclosure, machine, clearance, 3 bodies, 3 services, room, cutter, 2 stocks with 4
   * readings and 2 recipes, shell, joints, window, 4 openings, 2 holes, 2 baffles, plate with
   * 3 shapes; item with a
   * source, hardware, 2 bits, 2 spots */
  assert_int_equal (n_elements, 3 + 6 + 2 + 2 + 4 + 2 + 2 + 1 + 4 + 2 + 2 + 4 + 2 + 1 + 2 + 2);
}

static void
a_side_of_the_room_may_be_free (void **state)
{
  g_autofree char *text = dup_sample ();
  g_autofree char *free_text = dup_spoilt (text, " back=\"300\"", "");
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) design = hut_design_from_xml (free_text, strlen (free_text), "f", &error);

  assert_ok (design != NULL, error);
  assert_near_mm (design->room_mm.back, HUT_ROOM_FREE, 0.0);
  assert_near_mm (design->room_mm.front, HUT_ROOM_FREE, 0.0);
  assert_near_mm (design->room_mm.left, 100.0, 0.0);
  assert_near_mm (design->room_mm.above, 900.0, 0.0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_number_is_taken_up_to_its_limits_and_refused_beyond),
    cmocka_unit_test (each_row_is_whole),
    cmocka_unit_test (a_side_of_the_room_may_be_free),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
