/* tests/gui/test-sheets.c: parts moved on the sheets with pointer and keys.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/hut-sheets-view.h"
#include "assembly/hut-spot-place.h"
#include "draw/hut-sheet-grid.h"
#include "app/hut-widget-look.h"
#include "hut-gui-app.h"

/* A pixel of a part on the first sheet is a few mm at most. */
#define HALF_PIXEL_RATIO 0.75

typedef struct
{
  HutGuiApp app;
  HutSheetsView *view;
  GtkWidget *area;
} Sheets;

/* Nothing is laid out any more, and the area is as high as the sheets want it. */
static void
wait_for_rest (Sheets *self)
{
  int height_px = 0, same_count = 0;

  hut_gui_wait_for (hut_sheets_view_get_packed (self->view) != NULL
                    && !hut_sheets_view_is_busy (self->view));
  hut_gui_wait_for (gtk_widget_get_height (self->area)
                    >= gtk_drawing_area_get_content_height (GTK_DRAWING_AREA (self->area)));
  while (same_count < 10)
    {
      hut_gui_spin ();
      same_count = gtk_widget_get_height (self->area) == height_px ? same_count + 1 : 0;
      height_px = gtk_widget_get_height (self->area);
    }
}

static void
open_sheets (Sheets *self)
{
  hut_gui_app_open (&self->app, "mini-router");
  hut_gui_app_activate (&self->app, "win.step", g_variant_new_string ("cut"));
  self->view = HUT_SHEETS_VIEW (
      hut_gui_find (self->app.gui.window, HUT_TYPE_SHEETS_VIEW, NULL));
  self->area = hut_gui_app_find (&self->app, "area");
  wait_for_rest (self);
}

static HutSheetGrid
grid_of (Sheets *self)
{
  return hut_sheet_grid_find (hut_sheets_view_get_packed (self->view)->sheets,
                              hut_widget_text_px (self->area), gtk_widget_get_width (self->area),
                              gtk_widget_get_height (self->area));
}

/* The first part of the first sheet, and a pixel of its material near its middle. */
static const HutLaidPart *
first_part (Sheets *self,
            const HutPart **part,
            HutGuiPoint *at)
{
  const HutPacked *packed = hut_sheets_view_get_packed (self->view);
  const HutSheet *sheet = g_ptr_array_index (packed->sheets->sheets, 0);
  const HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, 0);
  const HutSheetGrid grid = grid_of (self);
  const HutPoint front = hut_sheet_grid_front (&grid, packed->sheets, 0);
  g_autoptr(HutRegion) placed = NULL;
  HutRect box;

  *part = g_ptr_array_index (packed->parts->parts, laid->part);
  placed = hut_region_dup_placed ((*part)->region, &laid->placement);
  box = hut_region_bounds (placed);
  for (double share = 0.5; share > 0.0; share -= 0.05)
    {
      const HutPoint p = { box.u0 + share * (box.u1 - box.u0), box.v0 + share * (box.v1 - box.v0) };

      if (hut_sheet_pick_part (sheet, packed->parts, p) != 0)
        continue;
      *at = hut_gui_point (self->area, front.u + p.u * grid.scale_px_per_mm,
                           front.v - p.v * grid.scale_px_per_mm);
      return laid;
    }
  fail_msg ("no material of %s is on its diagonal", (*part)->id);
  return NULL;
}

static const HutSpot *
spot_of (Sheets *self,
         const char *id)
{
  return hut_design_get_spot (hut_session_get_design (self->app.gui.session), id);
}

/* Ctrl suspends the stops, so that the part goes as far as the pointer. */
static void
dragged_part_goes_with_the_pointer_and_stays (void **state)
{
  Sheets s = { 0 };
  const HutPart *part;
  HutGuiPoint from;
  g_autofree char *id = NULL;
  g_autoptr(HutSpot) before = NULL;
  double scale;

  open_sheets (&s);
  const HutLaidPart *laid = first_part (&s, &part, &from);

  id = g_strdup (part->id);
  before = hut_spot_new_at (part, 1, &laid->placement, FALSE);
  scale = grid_of (&s).scale_px_per_mm;
  hut_gui_hold ("ctrl", TRUE);
  hut_gui_drag (from, (HutGuiPoint) { from.x + 20, from.y - 12 });
  hut_gui_release ();
  hut_gui_hold ("ctrl", FALSE);
  hut_gui_wait_for (spot_of (&s, id) != NULL);
  assert_true (spot_of (&s, id)->kept);
  assert_near_mm (spot_of (&s, id)->left_mm, before->left_mm + 20 / scale, HALF_PIXEL_RATIO / scale);
  assert_near_mm (spot_of (&s, id)->front_mm, before->front_mm + 12 / scale,
                  HALF_PIXEL_RATIO / scale);

  hut_gui_app_activate (&s.app, "win.undo", NULL);
  assert_null (spot_of (&s, id));
  hut_gui_app_close (&s.app);
}

static void
keys_choose_move_turn_and_escape_ends_a_drag (void **state)
{
  Sheets s = { 0 };
  const HutPart *part;
  HutGuiPoint at;
  g_autofree char *id = NULL;
  double left_mm, turn_deg;

  open_sheets (&s);
  first_part (&s, &part, &at);
  id = g_strdup (part->id);
  hut_gui_move (at);
  hut_gui_press ();
  hut_gui_release ();
  hut_gui_key ("Right");
  hut_gui_wait_for (spot_of (&s, id) != NULL);
  left_mm = spot_of (&s, id)->left_mm;
  hut_gui_key ("shift+Right");
  hut_gui_wait_for (spot_of (&s, id)->left_mm > left_mm + 5.0);
  assert_near_mm (spot_of (&s, id)->left_mm, left_mm + 10.0, 1e-6);
  turn_deg = spot_of (&s, id)->turn_deg;
  hut_gui_key ("r");
  hut_gui_wait_for (spot_of (&s, id)->turn_deg != turn_deg);

  hut_gui_app_activate (&s.app, "win.undo", NULL);
  hut_gui_app_activate (&s.app, "win.undo", NULL);
  hut_gui_app_activate (&s.app, "win.undo", NULL);
  assert_null (spot_of (&s, id));
  wait_for_rest (&s);
  first_part (&s, &part, &at);
  hut_gui_drag (at, (HutGuiPoint) { at.x + 30, at.y });
  hut_gui_key ("Escape");
  hut_gui_release ();
  hut_gui_spin ();
  assert_int_equal (hut_session_get_design (s.app.gui.session)->spots->len, 0);
  hut_gui_app_close (&s.app);
}

static void
press (Sheets *self,
       const char *id)
{
  GtkWidget *button = hut_gui_app_find (&self->app, id);

  hut_gui_move (hut_gui_point (button, gtk_widget_get_width (button) / 2.0,
                               gtk_widget_get_height (button) / 2.0));
  hut_gui_press ();
  hut_gui_release ();
}

/* A search that finds at once that nothing is better needs neither. */
static void
a_search_for_fewer_sheets_can_be_cancelled_and_stopped (void **state)
{
  static const char *const endings[] = { "cancel", "stop" };
  Sheets self = { 0 };
  guint count;

  open_sheets (&self);
  count = hut_sheets_view_get_packed (self.view)->sheets->sheets->len;
  for (guint i = 0; i < G_N_ELEMENTS (endings); i++)
    {
      press (&self, "search");
      hut_gui_wait_for (hut_gui_app_look_for (&self.app, endings[i]) != NULL
                        || !hut_sheets_view_is_busy (self.view));
      if (hut_gui_app_look_for (&self.app, endings[i]) != NULL)
        press (&self, endings[i]);
      wait_for_rest (&self);
      assert_true (hut_sheets_view_get_packed (self.view)->sheets->sheets->len <= count);
      assert_non_null (hut_gui_app_look_for (&self.app, "search"));
    }
  hut_gui_app_close (&self.app);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (dragged_part_goes_with_the_pointer_and_stays),
    cmocka_unit_test (keys_choose_move_turn_and_escape_ends_a_drag),
    cmocka_unit_test (a_search_for_fewer_sheets_can_be_cancelled_and_stopped),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
