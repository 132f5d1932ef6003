/* tests/checks/test-fitting.c: which item lets a lead, hose or duct through the wall.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-fitting.h"
#include "hut-assert.h"

static HutService *
new_service (HutServiceKind kind,
             double line_mm,
             double head_width_mm,
             double head_height_mm)
{
  HutService *service = hut_service_new ("line", kind);

  service->line_mm = line_mm;
  service->head_width_mm = head_width_mm;
  service->head_height_mm = head_height_mm;
  return service;
}

/* What the shipped catalogue has for the panel; the choice by hand stands beside each. */
static void
the_smallest_that_passes_closes_and_holds_is_chosen (void **state)
{
  static const struct
  {
    HutServiceKind kind;
    double line_mm, head_width_mm, head_height_mm, thickness_mm;
    const char *id;
  } rows[] = {
    /* Head 4 + 1 under the 6 that M12 passes; the long thread holds up to 9. */
    { HUT_SERVICE_LEAD, 4.0, 3.0, 3.0, 6.0, "gl-m12-long" },
    /* A sheet of 1.5: grommets hold there, and 8 has the smallest collar for a lead of 4. */
    { HUT_SERVICE_LEAD, 4.0, 3.0, 3.0, 1.5, "gr-8" },
    /* A plug of 11.5 x 10.5: its diagonal of 15.6 passes no gland up to M20; brushes hold anywhere. */
    { HUT_SERVICE_LEAD, 5.0, 11.5, 10.5, 6.0, "brush-entry" },
    /* The same through 18 mm: a desk bush passes 32 and is smaller than the brush. */
    { HUT_SERVICE_LEAD, 5.0, 11.5, 10.5, 18.0, "desk-35" },
    /* A bare air tube: its bulkhead carries it. */
    { HUT_SERVICE_HOSE, 8.0, 8.0, 8.0, 6.0, "air-8" },
    { HUT_SERVICE_HOSE, 4.0, 4.0, 4.0, 3.0, "air-4" }, /* as small as ptfe-4, and first */
    /* A cuff of 40 on a hose of 38: nothing closes round that. */
    { HUT_SERVICE_HOSE, 38.0, 40.0, 40.0, 6.0, NULL },
    /* Ducts get a spigot by hand. */
    { HUT_SERVICE_DUCT, 20.0, 20.0, 20.0, 12.0, NULL },
  };
  g_autoptr(HutCatalog) catalog = hut_catalog_new ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr(HutService) service = new_service (rows[i].kind, rows[i].line_mm,
                                                   rows[i].head_width_mm, rows[i].head_height_mm);
      const HutItem *item = hut_fitting_choose (catalog, service, rows[i].thickness_mm);

      print_message ("row %u\n", i);
      if (rows[i].id == NULL)
        assert_null (item);
      else
        {
          assert_non_null (item);
          assert_string_equal (item->id, rows[i].id);
        }
    }
}

static void
a_tube_needs_no_play_where_something_closes_round_it (void **state)
{
  g_autoptr(HutItem) item = hut_item_new ("entry");
  g_autoptr(HutService) bare = new_service (HUT_SERVICE_HOSE, 4.0, 4.0, 4.0);
  g_autoptr(HutService) coupling = new_service (HUT_SERVICE_HOSE, 4.0, 6.0, 6.0);
  g_autoptr(HutService) lead = new_service (HUT_SERVICE_LEAD, 4.0, 4.0, 4.0);

  item->pass_round = TRUE;
  item->pass_width_mm = item->pass_height_mm = 4.0;
  assert_false (hut_fitting_passes (item, bare)); /* a plain hole of 4 */
  item->line_min_mm = item->line_max_mm = 4.0;
  assert_true (hut_fitting_passes (item, bare));
  assert_false (hut_fitting_passes (item, coupling));
  assert_false (hut_fitting_passes (item, lead)); /* a plug is no line */
  assert_true (hut_fitting_closes (item, coupling));
  item->pass_width_mm = 0.0;
  assert_true (hut_fitting_carries (item));
  assert_false (hut_fitting_passes (item, bare));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (the_smallest_that_passes_closes_and_holds_is_chosen),
    cmocka_unit_test (a_tube_needs_no_play_where_something_closes_round_it),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
