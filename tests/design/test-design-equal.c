/* tests/design/test-design-equal.c: whether two designs say the same.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sample.h"
#include "walk.h"

/* Members of the sample's structs that the file format lists: counted by hand below. */
#define LEAST_ATTRIBUTES 200

static void
change_member (const HutAttributeFormat *format,
               gpointer member)
{
  HutPanelId *panel;

  switch (format->kind)
    {
    case HUT_VALUE_NUMBER:
      *(double *) member += 0.25;
      break;
    case HUT_VALUE_COUNT:
      *(guint *) member += 1;
      break;
    case HUT_VALUE_SWITCH:
      *(gboolean *) member = !*(gboolean *) member;
      break;
    case HUT_VALUE_CHOICE:
      *(guint *) member = *(guint *) member == 0 ? 1 : 0;
      break;
    case HUT_VALUE_WORD:
      panel = member;
      panel->side = panel->side == HUT_SIDE_TOP ? HUT_SIDE_LEFT : HUT_SIDE_TOP;
      break;
    case HUT_VALUE_TEXT:
    case HUT_VALUE_ID:
    case HUT_VALUE_REFERENCE:
      g_free (*(char **) member);
      *(char **) member = g_strdup ("changed");
      break;
    case HUT_VALUE_VERSION:
    default:
      break;
    }
}

static void
each_member_that_a_file_holds_makes_a_difference (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();
  g_autofree char *text = hut_design_to_xml (design);
  guint n = 0;

  for (;; n++)
    {
      g_autoptr(HutDesign) other = hut_design_copy (design);
      const Nth nth = nth_attribute (other, n);
      g_autofree char *other_text = NULL;

      if (nth.attribute == NULL)
        break;
      if (nth.attribute->kind == HUT_VALUE_VERSION)
        continue;
      change_member (nth.attribute, nth.member);
      other_text = hut_design_to_xml (other);
      if (hut_design_equal (design, other) || hut_design_equal (other, design))
        fail_msg ("%s of <%s> is not compared", nth.attribute->name, nth.element->name);
      if (strcmp (text, other_text) == 0)
        fail_msg ("%s of <%s> is not written", nth.attribute->name, nth.element->name);
    }
  assert_true (n > LEAST_ATTRIBUTES);
}

static void
one_item_less_makes_a_difference (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();
  static const gsize lists[] = {
    offsetof (HutDesign, machine.bodies), offsetof (HutDesign, machine.services),
    offsetof (HutDesign, stocks),         offsetof (HutDesign, windows),
    offsetof (HutDesign, openings),       offsetof (HutDesign, extras),
    offsetof (HutDesign, baffles),         offsetof (HutDesign, spots),
  };

  for (gsize i = 0; i < G_N_ELEMENTS (lists); i++)
    {
      g_autoptr(HutDesign) other = hut_design_copy (design);
      GPtrArray *items = *(GPtrArray **) ((char *) other + lists[i]);

      g_ptr_array_set_size (items, (int) items->len - 1);
      assert_false (hut_design_equal (design, other));
    }
}

static void
the_stock_of_a_panel_makes_a_difference (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();
  g_autoptr(HutDesign) other = hut_design_copy (design);

  other->shell.stock[HUT_SHELL_LID][HUT_SIDE_BACK] = g_strdup ("wall");
  assert_false (hut_design_equal (design, other));
}

static void
order_of_items_counts (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();
  g_autoptr(HutDesign) other = hut_design_copy (design);
  gpointer *openings = other->openings->pdata;
  gpointer first = openings[0];

  openings[0] = openings[1];
  openings[1] = first;
  assert_false (hut_design_equal (design, other));
}

static void
switches_are_compared_as_yes_or_no (void **state)
{
  g_autoptr(HutDesign) design = new_sample ();
  g_autoptr(HutDesign) other = hut_design_copy (design);

  design->joints.straps = TRUE;
  other->joints.straps = 2;
  assert_true (hut_design_equal (design, other));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (each_member_that_a_file_holds_makes_a_difference),
    cmocka_unit_test (one_item_less_makes_a_difference),
    cmocka_unit_test (the_stock_of_a_panel_makes_a_difference),
    cmocka_unit_test (order_of_items_counts),
    cmocka_unit_test (switches_are_compared_as_yes_or_no),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
