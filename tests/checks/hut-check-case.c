/* tests/checks/hut-check-case.c: a design with what is derived from it and what the checks say.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"
#include <string.h>

#define NUMBER_TOLERANCE 1e-6

HutCheckCase *
hut_check_case_new (HutDesign *design)
{
  HutCheckCase *self = g_new0 (HutCheckCase, 1);

  self->assembly = hut_assembly_new (design);
  self->parts = hut_part_set_new (self->assembly);
  self->findings = hut_check_all (self->assembly, self->parts);
  hut_design_free (design);
  return self;
}

void
hut_check_case_check (HutCheckCase *self)
{
  g_ptr_array_unref (self->findings);
  self->findings = hut_check_all (self->assembly, self->parts);
}

void
hut_check_case_free (HutCheckCase *self)
{
  if (self == NULL)
    return;
  g_ptr_array_unref (self->findings);
  hut_part_set_free (self->parts);
  hut_assembly_free (self->assembly);
  g_free (self);
}

guint
hut_check_case_count (const HutCheckCase *self,
                      const char *check)
{
  guint count = 0;

  for (guint i = 0; i < self->findings->len; i++)
    if (strcmp (((const HutFinding *)g_ptr_array_index (self->findings, i))->check, check) == 0)
      count++;
  return count;
}

static void
print_all (const HutCheckCase *self)
{
  for (guint i = 0; i < self->findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (self->findings, i);
      g_autofree char *text = hut_finding_dup_text (finding, NULL, ".");

      print_message ("  %s %s: %s\n", hut_severity_to_string (finding->severity), finding->check,
                     text);
    }
}

const HutFinding *
hut_check_case_get (const HutCheckCase *self,
                    const char *check,
                    guint index)
{
  for (guint i = 0; i < self->findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (self->findings, i);

      if (strcmp (finding->check, check) == 0 && index-- == 0)
        return finding;
    }
  print_all (self);
  fail_msg ("there is no such finding of %s", check);
  return NULL;
}

const HutFinding *
hut_check_case_find (const HutCheckCase *self,
                     const char *check,
                     const char *text)
{
  for (guint i = 0; i < self->findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (self->findings, i);
      g_autofree char *own = hut_finding_dup_text (finding, NULL, ".");

      if (strcmp (finding->check, check) == 0 && strcmp (own, text) == 0)
        return finding;
    }
  print_all (self);
  fail_msg ("no finding of %s says \"%s\"", check, text);
  return NULL;
}

void
hut_check_case_assert (const HutFinding *finding,
                       HutSeverity severity,
                       double is,
                       double must)
{
  assert_string_equal (hut_severity_to_string (finding->severity),
                       hut_severity_to_string (severity));
  assert_near (finding->is, is, NUMBER_TOLERANCE);
  assert_near (finding->must, must, NUMBER_TOLERANCE);
}

void
hut_check_case_assert_place (const HutFinding *finding,
                             guint index,
                             HutPanelId panel,
                             HutRect rect)
{
  const HutPlace *place;

  assert_true (index < finding->places->len);
  place = &g_array_index (finding->places, HutPlace, index);
  assert_true (place->has_panel);
  assert_string_equal (hut_panel_id_to_string (place->panel), hut_panel_id_to_string (panel));
  assert_near (place->rect.u0, rect.u0, NUMBER_TOLERANCE);
  assert_near (place->rect.v0, rect.v0, NUMBER_TOLERANCE);
  assert_near (place->rect.u1, rect.u1, NUMBER_TOLERANCE);
  assert_near (place->rect.v1, rect.v1, NUMBER_TOLERANCE);
}

static void
set_readings (HutStock *stock,
              double a_mm,
              double b_mm)
{
  g_array_set_size (stock->readings_mm, 0);
  g_array_append_val (stock->readings_mm, a_mm);
  g_array_append_val (stock->readings_mm, b_mm);
}

HutDesign *
hut_check_case_design (void)
{
  HutDesign *design = hut_design_new ();
  HutStock *stock = hut_design_get_stock (design, "plywood"),
           *clear = hut_design_get_stock (design, "acrylic");
  HutBody *body = g_ptr_array_index (design->machine.bodies, 0);

  set_readings (stock, 6.0, 6.0);
  set_readings (clear, 3.0, 3.0);
  stock->smallest_web_mm = 6.0;
  stock->kerf_mm = 0.2;
  stock->kerf_error_mm = 0.0;
  stock->fit = HUT_FIT_GLUE;
  stock->allowance_mm = 0.1;
  body->box = (HutBox3) { { 0, 0, 0 }, { 320, 300, 220 } };
  design->machine.clearance_mm = (HutClearance) { 20, 20, 20, 20, 20 };
  design->shell.seam_height_mm = 140.0;
  design->shell.seam_gap_mm = 1.0;
  design->cutter.bed_width_mm = 600.0;
  design->cutter.bed_depth_mm = 400.0;
  design->cutter.margin_mm = 5.0;
  return design;
}

HutOpening *
hut_check_case_add_round (HutDesign *design,
                          const char *id,
                          HutPanelId panel,
                          double u_mm,
                          double v_mm,
                          double diameter_mm)
{
  HutOpening *opening = hut_opening_new (id, panel, HUT_SHAPE_ROUND);

  opening->at = (HutPosition) { panel, HUT_ANCHOR_START, HUT_ANCHOR_START, u_mm, v_mm, NULL };
  opening->diameter_mm = diameter_mm;
  g_ptr_array_add (design->openings, opening);
  return opening;
}

HutWindow *
hut_check_case_add_window (HutDesign *design,
                           const char *id,
                           HutPanelId panel,
                           HutRect clear)
{
  HutWindow *window = hut_window_new (id, panel);

  g_free (window->at.body);
  window->at = (HutPosition) { panel,
                              HUT_ANCHOR_START,
                              HUT_ANCHOR_START,
                              (clear.u0 + clear.u1) / 2.0,
                              (clear.v0 + clear.v1) / 2.0,
                              NULL };
  window->width_mm = clear.u1 - clear.u0;
  window->height_mm = clear.v1 - clear.v0;
  window->radius_mm = 0.0;
  window->overlap_mm = 10.0;
  window->glazing_bought = TRUE;
  g_free (window->glazing_stock);
  g_free (window->frame_stock);
  window->glazing_stock = g_strdup ("acrylic");
  window->frame_stock = g_strdup ("plywood");
  g_ptr_array_add (design->windows, window);
  return window;
}
