/* tests/checks/test-finding.c: findings, their text, their list.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"
#include "hut-random-design.h"
#include <string.h>

#define RANDOM_DESIGNS 600
#define AGAIN_EVERY 8 /* of these is derived and checked a second time */

/* ---- text ---------------------------------------------------------------------------------- */

static char *
text_of (const char *message,
         double is,
         HutTranslate translate,
         const char *point)
{
  const HutFinding finding = { .message = message,
                               .what = (char *)"lid top",
                               .other = (char *)"{is}",
                               .is = is,
                               .must = 12.346,
                               .at = -0.5 };

  return hut_finding_dup_text (&finding, translate, point);
}

static void
template_gets_names_and_numbers (void **state)
{
  g_autofree char *all = text_of ("{what}|{other}|{is}|{must}|{at}", 3, NULL, ".");
  g_autofree char *comma = text_of ("{is} mm, {must} mm", 2.5, NULL, ",");
  g_autofree char *odd = text_of ("{ {nothing} {what {is} }{", 1, NULL, ".");
  g_autofree char *utf8 = text_of ("\xc3\xbc{is}\xc3\xbc", 1, NULL, ".");

  /* A name is not looked into for placeholders. */
  assert_string_equal (all, "lid top|{is}|3|12.35|-0.5");
  assert_string_equal (comma, "2,5 mm, 12,35 mm");
  assert_string_equal (odd, "{ {nothing} {what 1 }{");
  assert_string_equal (utf8, "\xc3\xbc"
                             "1\xc3\xbc");
}

static const char *
to_german (const char *msgid)
{
  if (strcmp (msgid, "") == 0)
    return "a header that nobody may see";
  if (strcmp (msgid, "{what} is {is}") == 0)
    return "{is} ist {what}";
  return strcmp (msgid, "lid top") == 0 ? "Deckel oben" : msgid;
}

static void
template_and_names_are_translated (void **state)
{
  g_autofree char *known = text_of ("{what} is {is}", 1.5, to_german, ",");
  g_autofree char *unknown = text_of ("{other}", 1, to_german, ",");
  const HutFinding unnamed = { .message = "[{what}]", .what = (char *)"" };
  const HutFinding nothing = { .message = "[{what}]" };
  g_autofree char *empty = hut_finding_dup_text (&unnamed, to_german, ",");
  g_autofree char *none = hut_finding_dup_text (&nothing, to_german, ",");

  assert_string_equal (known, "1,5 ist Deckel oben");
  assert_string_equal (unknown, "{is}");
  assert_string_equal (empty, "[]");
  assert_string_equal (none, "[]");
}

static void
names_of_panels_and_severities (void **state)
{
  assert_string_equal (hut_panel_name ((HutPanelId) { HUT_SHELL_LID, HUT_SIDE_TOP }), "lid top");
  assert_string_equal (hut_panel_name ((HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_BOTTOM }),
                       "base bottom");
  assert_string_equal (hut_severity_to_string (HUT_SEVERITY_BLOCKS), "blocks");
  assert_string_equal (hut_severity_to_string (HUT_SEVERITY_WARNS), "warns");
  assert_string_equal (hut_severity_to_string (HUT_SEVERITY_NOTES), "notes");
}

/* ---- the list ------------------------------------------------------------------------------ */

static void
ids_are_sorted_and_different (void **state)
{
  const char *const *ids = hut_check_ids ();

  assert_true (g_strv_length ((char **)ids) > 30);
  for (guint i = 1; ids[i] != NULL; i++)
    assert_true (strcmp (ids[i - 1], ids[i]) < 0);
}

static void
only_what_is_not_allowed_blocks (void **state)
{
  const char *const one[] = { "opening.overlap", NULL };
  const char *const both[] = { "opening.overlap", "cut.web", NULL };
  const HutPanelId lid_top = { HUT_SHELL_LID, HUT_SIDE_TOP };
  HutDesign *design = hut_check_case_design ();
  g_autoptr(HutCheckCase) clean = hut_check_case_new (hut_check_case_design ());
  g_autoptr(HutCheckCase) c = NULL;

  /* One pair crosses, another one leaves a web of 2: two checks block. */
  hut_check_case_add_round (design, "a", lid_top, 100, 100, 20);
  hut_check_case_add_round (design, "b", lid_top, 110, 100, 20);
  hut_check_case_add_round (design, "c", lid_top, 200, 100, 20);
  hut_check_case_add_round (design, "d", lid_top, 222, 100, 20);
  c = hut_check_case_new (design);
  assert_false (hut_findings_block (clean->findings, NULL));
  assert_true (hut_findings_block (c->findings, NULL));
  assert_true (hut_findings_block (c->findings, one));
  assert_false (hut_findings_block (c->findings, both));
}

static gboolean
is_known_id (const char *check)
{
  return g_strv_contains (hut_check_ids (), check);
}

static void
check_place (guint seed,
             const HutCheckCase *c,
             const HutFinding *finding,
             const HutPlace *place)
{
  const HutPanel *panel = hut_assembly_get_panel (c->assembly, place->panel);
  const gboolean ordered = place->rect.u0 <= place->rect.u1 && place->rect.v0 <= place->rect.v1;

  if (!place->has_panel || panel == NULL || !ordered
      || !isfinite (place->rect.u0 + place->rect.v0)
      || !isfinite (place->rect.u1 + place->rect.v1))
    fail_msg ("seed %u: %s has a place that is none", seed, finding->check);
}

static void
check_finding (guint seed,
               const HutCheckCase *c,
               const HutFinding *finding)
{
  g_autofree char *text = hut_finding_dup_text (finding, NULL, ".");

  if (!is_known_id (finding->check))
    fail_msg ("seed %u: %s is no check", seed, finding->check);
  if (!isfinite (finding->is) || !isfinite (finding->must) || !isfinite (finding->at))
    fail_msg ("seed %u: %s has a number that is none: %s", seed, finding->check, text);
  if (strstr (text, "{what}") != NULL || strstr (text, "{other}") != NULL
      || strstr (text, "{is}") != NULL || strstr (text, "{must}") != NULL
      || strstr (text, "{at}") != NULL)
    fail_msg ("seed %u: %s has a placeholder left: %s", seed, finding->check, text);
  for (guint i = 0; i < finding->places->len; i++)
    check_place (seed, c, finding, &g_array_index (finding->places, HutPlace, i));
}

/* The order that the header promises: severity, then check. */
static void
check_order (guint seed,
             const GPtrArray *findings)
{
  for (guint i = 1; i < findings->len; i++)
    {
      const HutFinding *a = g_ptr_array_index (findings, i - 1),
                       *b = g_ptr_array_index (findings, i);

      if (a->severity > b->severity
          || (a->severity == b->severity && strcmp (a->check, b->check) > 0))
        fail_msg ("seed %u: %s before %s", seed, a->check, b->check);
    }
}

static char *
dup_all_texts (const GPtrArray *findings)
{
  GString *all = g_string_new (NULL);

  for (guint i = 0; i < findings->len; i++)
    {
      g_autofree char *text = hut_finding_dup_text (g_ptr_array_index (findings, i), NULL, ".");

      g_string_append_printf (all, "%s\n", text);
    }
  return g_string_free (all, FALSE);
}

static void
random_designs_are_told_in_order_and_alike (void **state)
{
  g_autoptr(GHashTable) met = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint seed = 0; seed < RANDOM_DESIGNS; seed++)
    {
      HutDesign *design
          = seed % 2
                ? hut_random_design (seed)
                : hut_random_design_with (seed, HUT_RANDOM_OPENINGS | HUT_RANDOM_WINDOWS
                                                    | HUT_RANDOM_WILD | HUT_RANDOM_SMALL_BED);
      g_autoptr(HutCheckCase) c = hut_check_case_new (hut_design_copy (design));
      g_autofree char *first = dup_all_texts (c->findings), *again = NULL;

      for (guint i = 0; i < c->findings->len; i++)
        {
          const HutFinding *finding = g_ptr_array_index (c->findings, i);

          check_finding (seed, c, finding);
          g_hash_table_add (met, (gpointer)finding->check);
        }
      check_order (seed, c->findings);
      if (seed % AGAIN_EVERY != 0)
        {
          hut_design_free (design);
          continue;
        }
      hut_check_case_free (g_steal_pointer (&c));
      c = hut_check_case_new (design);
      again = dup_all_texts (c->findings);
      assert_string_equal (first, again);
    }
  /* The random designs must reach most of the checks to be worth anything. */
  assert_true (g_hash_table_size (met) >= 18);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (template_gets_names_and_numbers),
    cmocka_unit_test (template_and_names_are_translated),
    cmocka_unit_test (names_of_panels_and_severities),
    cmocka_unit_test (ids_are_sorted_and_different),
    cmocka_unit_test (only_what_is_not_allowed_blocks),
    cmocka_unit_test (random_designs_are_told_in_order_and_alike),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
