/* tests/export/test-pdf.c: a page in full size on paper, as poppler reads it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "export/hut-gcode.h"
#include "export/hut-pdf.h"
#include "hut-assert.h"
#include "hut-gcode-run.h"
#include "hut-scratch.h"
#include <gio/gio.h>
#include <string.h>

#define PT_PER_MM (72.0 / 25.4)
/* Cairo keeps points in steps of 1/256 pt, 0.0014 mm; twice that for both ends of a line. */
#define POINT_MM 0.003
#define PIECES 64 /* of a curve, to measure it */

typedef struct
{
  HutStock *stock;
  HutCutter cutter;
  GPtrArray *paths;
  HutWritePage page;
  char *folder;
} Desk;

static void
desk_init (Desk *self)
{
  *self = (Desk) {
    .stock = hut_stock_new ("ply-6"),
    .cutter = { .kind = HUT_CUTTER_LASER, .bed_width_mm = 600, .bed_depth_mm = 400 },
    .paths = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_tool_path_free),
    .folder = hut_scratch_new (),
  };
  self->page = (HutWritePage) { .paths = self->paths, .width_mm = 600, .depth_mm = 400,
                                .design_name = "Desk", .name = "ply-6-sheet-01",
                                .stock = self->stock };
}

static void
desk_clear (Desk *self)
{
  g_clear_pointer (&self->paths, g_ptr_array_unref);
  g_clear_pointer (&self->stock, hut_stock_free);
  g_clear_pointer (&self->folder, hut_scratch_free);
}

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Desk, desk_clear)

/* @path: (transfer full) */
static void
desk_take (Desk *self,
           HutLayer layer,
           HutPath *path)
{
  HutToolPath *tool = g_new0 (HutToolPath, 1);

  tool->layer = layer;
  tool->id = g_strdup_printf ("p%u", self->paths->len);
  tool->closed = path;
  g_ptr_array_add (self->paths, tool);
}

/* Runs a program that must succeed. (transfer full): what it printed */
static char *
dup_output (const char *const *argv)
{
  char *text = NULL;
  int status = -1;
  g_autoptr(GError) error = NULL;

  assert_ok (g_spawn_sync (NULL, (char **) argv, NULL, G_SPAWN_SEARCH_PATH, NULL, NULL, &text, NULL,
                           &status, &error),
             error);
  assert_int_equal (status, 0);
  return text;
}

/* (transfer full): path of the written file */
static char *
desk_write (Desk *self,
            HutPageWriter writer)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(GBytes) file = NULL;
  char *path = g_build_filename (self->folder, "page.pdf", NULL);

  self->page.cutter = &self->cutter;
  file = writer (&self->page, &error);
  assert_ok (file != NULL, error);
  assert_ok (g_file_set_contents (path, g_bytes_get_data (file, NULL),
                                  (gssize) g_bytes_get_size (file), &error),
             error);
  return path;
}

/* Number behind a word of pdfinfo's output. */
static double
info_number (const char *text,
             const char *name)
{
  const char *at = strstr (text, name);

  if (at == NULL)
    fail_msg ("no %s in: %s", name, text);
  return g_ascii_strtod (at + strlen (name), NULL);
}

/* A page as the drawing commands of an SVG, unscaled. (transfer full) */
static char *
dup_page_svg (Desk *self,
              const char *pdf,
              guint page)
{
  g_autofree char *svg = g_build_filename (self->folder, "page.svg", NULL);
  g_autofree char *number = g_strdup_printf ("%u", page);
  const char *const argv[] = { "pdftocairo", "-svg", "-noshrink", "-nocenter", "-f", number, "-l",
                               number, pdf, svg, NULL };
  g_autofree char *output = dup_output (argv);
  char *text = NULL;
  g_autoptr(GError) error = NULL;

  assert_ok (g_file_get_contents (svg, &text, NULL, &error), error);
  return text;
}

/* One drawn path of a page, mm. */
typedef struct
{
  double length_mm, width_mm;
  HutRect box;
} Drawn;

static void
reach (Drawn *self,
       double x,
       double y)
{
  self->box = (HutRect) { MIN (self->box.u0, x), MIN (self->box.v0, y), MAX (self->box.u1, x),
                          MAX (self->box.v1, y) };
}

static double
curve_length_mm (const double p[8],
                 Drawn *drawn)
{
  double length_mm = 0.0, x0 = p[0], y0 = p[1];

  for (int i = 1; i <= PIECES; i++)
    {
      const double t = (double) i / PIECES, s = 1.0 - t;
      const double x = s * s * s * p[0] + 3 * s * s * t * p[2] + 3 * s * t * t * p[4] + t * t * t * p[6];
      const double y = s * s * s * p[1] + 3 * s * s * t * p[3] + 3 * s * t * t * p[5] + t * t * t * p[7];

      length_mm += hypot (x - x0, y - y0);
      reach (drawn, x, y);
      x0 = x;
      y0 = y;
    }
  return length_mm;
}

/* M, L, C, Z with absolute numbers, which is all that pdftocairo writes; [a, b, c, d, e, f] is its
 * transform, points to mm. */
static Drawn
measure (const char *data,
         const double m[6])
{
  g_auto(GStrv) words = g_strsplit_set (data, " ", -1);
  Drawn drawn = { .box = { INFINITY, INFINITY, -INFINITY, -INFINITY } };
  double n[8] = { 0 }, start[2] = { 0 };
  guint have = 0;
  char command = 'M';

  for (guint i = 0; words[i] != NULL; i++)
    {
      if (*words[i] == '\0')
        continue;
      if (g_ascii_isalpha (*words[i]))
        {
          command = *words[i];
          have = 0;
          if (command == 'Z')
            {
              drawn.length_mm += hypot (start[0] - n[0], start[1] - n[1]);
              n[0] = start[0];
              n[1] = start[1];
            }
          continue;
        }
      n[2 + have++] = g_ascii_strtod (words[i], NULL);
      if (have % 2 == 0)
        {
          const double x = n[have], y = n[have + 1];

          n[have] = (m[0] * x + m[2] * y + m[4]) / PT_PER_MM;
          n[have + 1] = (m[1] * x + m[3] * y + m[5]) / PT_PER_MM;
        }
      if (have < (command == 'C' ? 6u : 2u))
        continue;
      if (command == 'C')
        drawn.length_mm += curve_length_mm (n, &drawn);
      else if (command == 'L')
        drawn.length_mm += hypot (n[2] - n[0], n[3] - n[1]);
      n[0] = n[have];
      n[1] = n[have + 1];
      reach (&drawn, n[0], n[1]);
      if (command == 'M')
        {
          start[0] = n[0];
          start[1] = n[1];
        }
      have = 0;
    }
  return drawn;
}

/* Value of an attribute of the element that begins at @at. (transfer full) (nullable) */
static char *
dup_attribute (const char *at,
               const char *name)
{
  const char *end = strchr (at, '>');
  g_autofree char *key = g_strdup_printf (" %s=\"", name);
  const char *found = strstr (at, key);

  if (found == NULL || found > end)
    return NULL;
  found += strlen (key);
  return g_strndup (found, strcspn (found, "\""));
}

/* All stroked paths. (transfer full) (element-type Drawn) */
static GArray *
drawn_paths (const char *svg)
{
  GArray *all = g_array_new (FALSE, FALSE, sizeof (Drawn));

  for (const char *at = strstr (svg, "<path "); at != NULL; at = strstr (at + 1, "<path "))
    {
      g_autofree char *data = dup_attribute (at, "d");
      g_autofree char *style = dup_attribute (at, "style");
      g_autofree char *stroke = dup_attribute (at, "stroke-width");
      g_autofree char *transform = dup_attribute (at, "transform");
      const char *width = style != NULL ? strstr (style, "stroke-width:") : NULL;
      double m[6] = { 1, 0, 0, 1, 0, 0 };
      Drawn drawn;

      if (data == NULL || (width == NULL && stroke == NULL))
        continue;
      if (transform != NULL)
        {
          g_auto(GStrv) numbers = g_strsplit_set (transform, "(,)", -1);

          assert_string_equal (numbers[0], "matrix");
          for (guint i = 0; i < 6; i++)
            m[i] = g_ascii_strtod (numbers[i + 1], NULL);
        }
      drawn = measure (data, m);
      drawn.width_mm = g_ascii_strtod (
                           stroke != NULL ? stroke : width + strlen ("stroke-width:"), NULL)
                       * m[0] / PT_PER_MM;
      g_array_append_val (all, drawn);
    }
  return all;
}

/* The drawn path with that width and height; fails the test when there is none. */
static Drawn
find_size (const GArray *all,
           double width_mm,
           double height_mm)
{
  for (guint i = 0; i < all->len; i++)
    {
      const Drawn *drawn = &g_array_index (all, Drawn, i);

      if (fabs (drawn->box.u1 - drawn->box.u0 - width_mm) <= 2 * POINT_MM
          && fabs (drawn->box.v1 - drawn->box.v0 - height_mm) <= 2 * POINT_MM)
        return *drawn;
    }
  fail_msg ("nothing of %g x %g is drawn", width_mm, height_mm);
  return (Drawn) { 0 };
}

/* ---- facts ----------------------------------------------------------------------------------- */

static void
pages_have_the_size_of_their_paper (void **state)
{
  static const struct
  {
    HutPageWriter writer;
    double width_pt, height_pt;
  } papers[] = {
    { hut_write_page_pdf_a4, 595.276, 841.89 },
    { hut_write_page_pdf_a3, 841.89, 1190.55 },
    { hut_write_page_pdf_letter, 612, 792 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (papers); i++)
    {
      g_auto(Desk) desk = { 0 };
      g_autofree char *pdf = NULL, *info = NULL;

      desk_init (&desk);
      desk_take (&desk, HUT_LAYER_CUT_OUTSIDE,
                 hut_path_new_rect ((HutRect) { 10, 10, 110, 70 }, 10));
      pdf = desk_write (&desk, papers[i].writer);
      info = dup_output ((const char *const[]) { "pdfinfo", pdf, NULL });
      assert_near (info_number (info, "Pages:"), 2, 0);
      assert_near (info_number (info, "Page size:"), papers[i].width_pt, 0.01);
      assert_near (info_number (strstr (info, "Page size:"), " x "), papers[i].height_pt, 0.01);
    }
}

static void
plate_of_302_8319_mm_is_drawn_in_full_size (void **state)
{
  g_auto(Desk) desk = { 0 };
  g_autofree char *pdf = NULL, *svg = NULL;
  g_autoptr(GArray) drawn = NULL;

  desk_init (&desk);
  desk_take (&desk, HUT_LAYER_CUT_OUTSIDE, hut_path_new_rect ((HutRect) { 10, 10, 110, 70 }, 10));
  desk_take (&desk, HUT_LAYER_CUT_INSIDE, hut_path_new_circle ((HutPoint) { 60, 40 }, 15));
  pdf = desk_write (&desk, hut_write_page_pdf_a4);
  svg = dup_page_svg (&desk, pdf, 2);
  drawn = drawn_paths (svg);

  const Drawn plate = find_size (drawn, 100, 60), hole = find_size (drawn, 30, 30);

  assert_near_mm (plate.length_mm, 302.83185, 0.01);
  assert_near_mm (hole.length_mm, 2 * G_PI * 15, 0.01);
  assert_true (plate.width_mm > hole.width_mm); /* told apart without colour */
  assert_near_mm (hole.box.u0 - plate.box.u0, 35, POINT_MM);
  assert_near_mm (hole.box.v0 - plate.box.v0, 15, POINT_MM);
}

static void
each_page_has_a_bar_of_100_mm_and_the_first_a_square (void **state)
{
  g_auto(Desk) desk = { 0 };
  g_autofree char *pdf = NULL;

  desk_init (&desk);
  desk_take (&desk, HUT_LAYER_CUT_OUTSIDE, hut_path_new_rect ((HutRect) { 10, 10, 310, 160 }, 0));
  pdf = desk_write (&desk, hut_write_page_pdf_a4);
  for (guint page = 1; page <= 3; page++)
    {
      g_autofree char *svg = dup_page_svg (&desk, pdf, page);
      g_autoptr(GArray) drawn = drawn_paths (svg);

      (void) find_size (drawn, 100, 2); /* with its ticks */
      if (page == 1)
        (void) find_size (drawn, 100, 100);
    }
}

/* 302 x 152 mm on A4, 182 x 269: two papers; both show the plate where the marks say. */
static void
plate_over_two_papers_meets_at_the_marks (void **state)
{
  g_auto(Desk) desk = { 0 };
  g_autofree char *pdf = NULL, *info = NULL;
  double plate_mm[2] = { 0 }, mark_mm[2] = { 0 };

  desk_init (&desk);
  desk_take (&desk, HUT_LAYER_CUT_OUTSIDE, hut_path_new_rect ((HutRect) { 10, 10, 310, 160 }, 0));
  pdf = desk_write (&desk, hut_write_page_pdf_a4);
  info = dup_output ((const char *const[]) { "pdfinfo", pdf, NULL });
  assert_near (info_number (info, "Pages:"), 3, 0);
  for (guint i = 0; i < 2; i++)
    {
      g_autofree char *svg = dup_page_svg (&desk, pdf, 2 + i);
      g_autoptr(GArray) drawn = drawn_paths (svg);

      plate_mm[i] = find_size (drawn, 300, 150).box.u0;
      mark_mm[i] = find_size (drawn, 8, 8).box.u0 + 4.0;
    }
  assert_near_mm (mark_mm[0] - plate_mm[0], mark_mm[1] - plate_mm[1], 2 * POINT_MM);
  /* The plate begins 1 mm in the first paper; the overlap's middle is 182 - 5 in. */
  assert_near_mm (mark_mm[0] - plate_mm[0], 182.0 - 5.0 - 1.0, 2 * POINT_MM);
}

static void
papers_without_lines_are_left_out (void **state)
{
  g_auto(Desk) desk = { 0 };
  g_autofree char *pdf = NULL, *info = NULL;

  desk_init (&desk);
  /* Two corners of 590 x 390: of 4 x 2 papers two have something. */
  desk_take (&desk, HUT_LAYER_CUT_OUTSIDE, hut_path_new_rect ((HutRect) { 5, 5, 25, 25 }, 0));
  desk_take (&desk, HUT_LAYER_CUT_OUTSIDE, hut_path_new_rect ((HutRect) { 575, 375, 595, 395 }, 0));
  pdf = desk_write (&desk, hut_write_page_pdf_a4);
  info = dup_output ((const char *const[]) { "pdfinfo", pdf, NULL });
  assert_near (info_number (info, "Pages:"), 3, 0);
}

/* DXF and SVG are measured against the same numbers in test-dxf.c, to 1e-6 mm. */
static void
paper_and_gcode_have_the_cut_length_of_the_model (void **state)
{
  g_auto(Desk) desk = { 0 };
  HutPath *slot = hut_path_new ();
  g_autofree char *pdf = NULL, *svg = NULL;
  g_autoptr(GArray) drawn = NULL;
  double paper_mm = 0.0, gcode_mm = 0.0, model_mm = 0.0;

  desk_init (&desk);
  hut_path_append (slot, (HutPoint) { 30, 120 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (slot, (HutPoint) { 60, 120 }, 1, HUT_EDGE_PLAIN);
  hut_path_append (slot, (HutPoint) { 60, 140 }, 0, HUT_EDGE_PLAIN);
  hut_path_append (slot, (HutPoint) { 30, 140 }, 0.4, HUT_EDGE_PLAIN);
  desk_take (&desk, HUT_LAYER_CUT_INSIDE, slot);
  desk_take (&desk, HUT_LAYER_CUT_INSIDE, hut_path_new_circle ((HutPoint) { 80, 40 }, 21.7));
  desk_take (&desk, HUT_LAYER_CUT_OUTSIDE, hut_path_new_rect ((HutRect) { 5, 5, 170, 210 }, 33.3));
  for (guint layer = 0; layer < HUT_LAYER_COUNT; layer++)
    model_mm += hut_tool_paths_length_mm (desk.paths, (HutLayer) layer, HUT_CUTTER_ROUTER);

  pdf = desk_write (&desk, hut_write_page_pdf_a4);
  svg = dup_page_svg (&desk, pdf, 2);
  drawn = drawn_paths (svg);
  for (guint i = 0; i < 3; i++) /* bar and text come behind */
    paper_mm += g_array_index (drawn, Drawn, i).length_mm;

  g_autoptr(GBytes) gcode = hut_write_page_gcode (&desk.page, NULL);
  g_autoptr(HutGcodeRun) run = hut_gcode_run (gcode);

  for (guint i = 0; i < run->moves->len; i++)
    {
      const HutGcodeMove *move = &g_array_index (run->moves, HutGcodeMove, i);

      gcode_mm += move->rapid ? 0.0 : hut_gcode_move_length_mm (move);
    }
  assert_near_mm (gcode_mm, model_mm, 0.01);
  assert_near_mm (paper_mm, model_mm, 0.02);
}

static void
same_page_gives_the_same_bytes (void **state)
{
  g_auto(Desk) desk = { 0 };
  g_autoptr(GBytes) first = NULL, second = NULL;

  desk_init (&desk);
  desk.page.cutter = &desk.cutter;
  desk.page.mark = "CHECKS OVERRIDDEN: cut.web";
  desk_take (&desk, HUT_LAYER_CUT_OUTSIDE, hut_path_new_rect ((HutRect) { 10, 10, 310, 160 }, 5));
  first = hut_write_page_pdf_a4 (&desk.page, NULL);
  second = hut_write_page_pdf_a4 (&desk.page, NULL);
  assert_true (g_bytes_equal (first, second));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (pages_have_the_size_of_their_paper),
    cmocka_unit_test (plate_of_302_8319_mm_is_drawn_in_full_size),
    cmocka_unit_test (each_page_has_a_bar_of_100_mm_and_the_first_a_square),
    cmocka_unit_test (plate_over_two_papers_meets_at_the_marks),
    cmocka_unit_test (papers_without_lines_are_left_out),
    cmocka_unit_test (paper_and_gcode_have_the_cut_length_of_the_model),
    cmocka_unit_test (same_page_gives_the_same_bytes),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
