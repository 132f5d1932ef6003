/* tests/export/test-describe.c: the description is valid, complete, and its numbers add up.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "export/hut-describe.h"

#include "design/hut-file.h"
#include "export/hut-described.h"
#include "export/hut-export.h"
#include "hut-random-design.h"

#define RANDOM_DESIGNS 150 /* or HUT_SEEDS: DEVELOPERS.md has the long run */
/* A layout will do: how good it is is not asked here. */
#define QUICK_WORK 1
/* Sums of a few thousand doubles of about 1e6. */
#define AREA_RELATIVE 1e-11
#define MATRIX_CELLS 16

/* A design with all that is derived from it, and its description. */
typedef struct
{
  HutAssembly *assembly;
  HutPartSet *parts;
  HutSheetSet *sheets;
  GPtrArray *findings;
  GBytes *text;
  xmlDoc *doc;
  xmlNode *root;
} Described;

/* @design: (transfer full) */
static Described *
describe (HutDesign *design,
          const char *label)
{
  Described *self = g_new0 (Described, 1);
  g_autoptr(GError) error = NULL;

  self->assembly = hut_assembly_new (design);
  hut_design_free (design);
  self->parts = hut_part_set_new (self->assembly);
  self->sheets = hut_sheet_set_new_within (self->assembly, self->parts, QUICK_WORK, NULL);
  self->findings = hut_check_all (self->assembly, self->parts);
  self->text = hut_write_describe (self->assembly, self->parts, self->sheets, self->findings, &error);
  assert_ok (self->text != NULL, error);
  self->doc = hut_described_parse (self->text);
  hut_described_assert_valid (self->doc, label);
  self->root = xmlDocGetRootElement (self->doc);
  return self;
}

static void
described_free (Described *self)
{
  xmlFreeDoc (self->doc);
  g_bytes_unref (self->text);
  g_ptr_array_unref (self->findings);
  hut_sheet_set_free (self->sheets);
  hut_part_set_free (self->parts);
  hut_assembly_free (self->assembly);
  g_free (self);
}
G_DEFINE_AUTOPTR_CLEANUP_FUNC (Described, described_free)

static HutDesign *
load_example (const char *name)
{
  g_autoptr(GError) error = NULL;
  HutDesign *design = hut_example_load (name, &error);

  assert_ok (design != NULL, error);
  return design;
}

static void
assert_relative (double value,
                 double expected,
                 double relative,
                 const char *what,
                 const char *label)
{
  if (!(fabs (value - expected) <= relative * MAX (1.0, fabs (expected))))
    fail_msg ("%s: %s is %.17g, must be %.17g", label, what, value, expected);
}

static void
assert_amount (const xmlNode *node,
               const char *label)
{
  const double area_mm2 = hut_described_area_mm2 (node);

  assert_relative (hut_described_number (node, "area"), area_mm2, AREA_RELATIVE, "area", label);
  assert_relative (hut_described_number (node, "volume"),
                   area_mm2 * hut_described_number (node, "thickness"), AREA_RELATIVE, "volume", label);
}

/* Volume of all panel pieces of that panel, from their outlines; @count: (out) */
static double
piece_volume_mm3 (const xmlNode *root,
                  const char *panel,
                  guint *count)
{
  double volume_mm3 = 0.0;

  *count = 0;
  for (const xmlNode *part = hut_described_first (hut_described_first (root, "parts"), "part");
       part != NULL; part = hut_described_next (part))
    {
      if (!hut_described_is (part, "kind", "panel") || !hut_described_is (part, "panel", panel))
        continue;
      volume_mm3 += hut_described_area_mm2 (part) * hut_described_number (part, "thickness");
      (*count)++;
    }
  return volume_mm3;
}

static void
assert_panels_are_their_pieces (const xmlNode *root,
                                const char *label)
{
  for (const xmlNode *panel = hut_described_first (hut_described_first (root, "panels"), "panel");
       panel != NULL; panel = hut_described_next (panel))
    {
      g_autofree char *id = hut_described_dup_text (panel, "id");
      guint count = 0;
      const double volume_mm3 = piece_volume_mm3 (root, id, &count);

      assert_amount (panel, label);
      if (count == 0)
        fail_msg ("%s: %s has no part", label, id);
      assert_relative (volume_mm3, hut_described_number (panel, "volume"), 1e-9, id, label);
    }
}

static void
assert_parts_and_totals_add_up (const xmlNode *root,
                                const char *label)
{
  const xmlNode *totals = hut_described_first (root, "totals");
  double area_mm2 = 0.0, volume_mm3 = 0.0, length_mm = 0.0;
  guint count = 0, bought_count = 0;

  for (const xmlNode *part = hut_described_first (hut_described_first (root, "parts"), "part");
       part != NULL; part = hut_described_next (part))
    {
      const xmlNode *cut = hut_described_first (part, "cut");

      assert_amount (part, label);
      area_mm2 += hut_described_number (part, "area");
      volume_mm3 += hut_described_number (part, "volume");
      count++;
      bought_count += hut_described_is (part, "bought", "true") ? 1 : 0;
      if (cut == NULL)
        continue;
      assert_relative (hut_described_number (cut, "length"), hut_described_length_mm (cut), AREA_RELATIVE,
                       "length of a cut", label);
      length_mm += hut_described_number (cut, "length");
    }
  assert_relative (hut_described_number (totals, "area"), area_mm2, AREA_RELATIVE, "area of all", label);
  assert_relative (hut_described_number (totals, "volume"), volume_mm3, AREA_RELATIVE, "volume of all",
                   label);
  assert_relative (hut_described_number (totals, "cut-length"), length_mm, AREA_RELATIVE,
                   "length of all cuts", label);
  assert_true (hut_described_number (totals, "parts") == count);
  assert_true (hut_described_number (totals, "bought") == bought_count);
}

/* Turned by the file's matrix, each corner of a piece of a panel, or of a strap, lies in the box of the whole shell. */
static void
assert_in_shell (const xmlNode *part,
                 const xmlNode *outer,
                 const char *label)
{
  static const char *const axes[] = { "x", "y", "z" };
  const xmlNode *outline = hut_described_first (part, "outline");
  double matrix[MATRIX_CELLS];

  hut_described_numbers (part, "matrix", matrix, MATRIX_CELLS);
  for (const xmlNode *edge = outline->children; edge != NULL; edge = edge->next)
    {
      if (edge->type != XML_ELEMENT_NODE)
        continue;
      for (guint face = 0; face < 2; face++)
        {
          const double u = hut_described_number (edge, "u"), v = hut_described_number (edge, "v");
          const double w = face == 0 ? 0.0 : -hut_described_number (part, "thickness");

          for (guint axis = 0; axis < 3; axis++)
            {
              const double *row = matrix + 4 * axis;
              const double at_mm = row[0] * u + row[1] * v + row[2] * w + row[3];

              if (at_mm < -1e-6 || at_mm > hut_described_number (outer, axes[axis]) + 1e-6)
                fail_msg ("%s: a corner of a part is at %s = %.17g mm, outside the shell", label,
                          axes[axis], at_mm);
            }
        }
    }
}

static void
assert_parts_are_in_the_shell (const xmlNode *root,
                               const char *label)
{
  const xmlNode *size = hut_described_first (root, "size");

  for (const xmlNode *part = hut_described_first (hut_described_first (root, "parts"), "part");
       part != NULL; part = hut_described_next (part))
    {
      /* Plates of a wild window may stick out: opening.glazing blocks then. */
      if (hut_described_is (part, "kind", "panel") || hut_described_is (part, "kind", "strap"))
        assert_in_shell (part, hut_described_first (size, "outer"), label);
    }
}

/* Each part that is cut here lies on one sheet or is unplaced, a bought one on none. */
static void
assert_parts_are_laid_once (const xmlNode *root,
                            const char *label)
{
  const xmlNode *sheets = hut_described_first (root, "sheets");
  g_autoptr(GHashTable) laid = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  for (const xmlNode *sheet = hut_described_first (sheets, "sheet"); sheet != NULL;
       sheet = hut_described_next (sheet))
    {
      for (const xmlNode *part = hut_described_first (sheet, "laid"); part != NULL;
           part = hut_described_next (part))
        assert_true (g_hash_table_add (laid, hut_described_dup_text (part, "part")));
    }
  for (const xmlNode *part = hut_described_first (sheets, "unplaced"); part != NULL;
       part = hut_described_next (part))
    assert_true (g_hash_table_add (laid, hut_described_dup_text (part, "part")));
  for (const xmlNode *part = hut_described_first (hut_described_first (root, "parts"), "part");
       part != NULL; part = hut_described_next (part))
    {
      g_autofree char *id = hut_described_dup_text (part, "id");

      if (g_hash_table_contains (laid, id) == hut_described_is (part, "bought", "true"))
        fail_msg ("%s: part %s is bought and laid, or neither", label, id);
    }
}

static void
assert_all_adds_up (const Described *described,
                    const char *label)
{
  if (!described->assembly->whole)
    {
      assert_null (hut_described_first (described->root, "size"));
      return;
    }
  assert_panels_are_their_pieces (described->root, label);
  assert_parts_and_totals_add_up (described->root, label);
  assert_parts_are_in_the_shell (described->root, label);
  assert_parts_are_laid_once (described->root, label);
}

static void
every_example_is_valid_and_adds_up (void **state)
{
  guint count = 0;

  for (const char *const *name = hut_example_names (); *name != NULL; name++, count++)
    {
      g_autoptr(Described) described = describe (load_example (*name), *name);

      assert_true (described->assembly->whole);
      assert_all_adds_up (described, *name);
    }
  assert_true (count >= 2);
}

static void
random_designs_are_valid_and_add_up (void **state)
{
  const guint64 design_count = hut_random_seed_count (RANDOM_DESIGNS), first = hut_random_first_seed ();
  guint whole_count = 0, spliced_count = 0;

  for (guint64 seed = first; seed < first + design_count; seed++)
    {
      g_autofree char *label = g_strdup_printf ("seed %" G_GUINT64_FORMAT, seed);
      g_autoptr(Described) described = describe (hut_random_design (seed), label);

      assert_all_adds_up (described, label);
      whole_count += described->assembly->whole ? 1 : 0;
      spliced_count += described->parts->splices->len > 0 ? 1 : 0;
    }
  /* The designs must really reach what the sums are about. */
  assert_true (whole_count >= design_count / 2);
  assert_true (spliced_count >= design_count / 10);
}

/* By hand: inside 300 x 200 x 150 between walls of 4 mm and the seam gap, front, back, left, right, top
 * and a jointed bottom, so the shell is 308 x 208 x (158 + gap). */
static HutDesign *
new_plain_box (void)
{
  HutDesign *design = hut_design_new ();
  HutStock *stock = hut_design_get_stock (design, design->shell.default_stock);
  const double reading_mm = 4.0;

  g_array_set_size (stock->readings_mm, 0);
  g_array_append_val (stock->readings_mm, reading_mm);
  stock->allowance_mm = 0.0;
  stock->kerf_mm = 0.2;
  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 300.0, 200.0, 150.0 };
  design->shell.bottom = HUT_BOTTOM_JOINTED;
  design->shell.lid = HUT_LID_HOOD;
  design->shell.hinge = HUT_HINGE_BACK;
  design->shell.seam_height_mm = 60.0;
  design->cutter.bed_width_mm = 1000.0;
  design->cutter.bed_depth_mm = 1000.0;
  return design;
}

static void
a_box_has_the_sizes_worked_out_by_hand (void **state)
{
  g_autoptr(Described) described = describe (new_plain_box (), "plain box");
  const xmlNode *size = hut_described_first (described->root, "size");
  const xmlNode *outer = hut_described_first (size, "outer");
  const xmlNode *inside = hut_described_first (size, "inside");

  assert_near_mm (hut_described_number (outer, "x"), 308.0, 1e-9);
  assert_near_mm (hut_described_number (outer, "y"), 208.0, 1e-9);
  assert_near_mm (hut_described_number (inside, "x0"), 4.0, 1e-9);
  assert_near_mm (hut_described_number (inside, "x1"), 304.0, 1e-9);
  assert_near_mm (hut_described_number (inside, "y1"), 204.0, 1e-9);
  assert_near_mm (hut_described_number (inside, "z0"), 4.0, 1e-9);
}

/* Corners of a path of lines that turn right angles: left turns less right turns are 4. Moved outwards
 * by d, it gains length * d and 4 d^2. Source: Steiner's formula for a mitred parallel of a polygon. */
static void
a_cut_goes_half_a_kerf_round_the_outline (void **state)
{
  g_autoptr(Described) described = describe (new_plain_box (), "plain box");
  const double half_kerf_mm = 0.1;
  guint count = 0;

  for (const xmlNode *part = hut_described_first (hut_described_first (described->root, "parts"), "part");
       part != NULL; part = hut_described_next (part), count++)
    {
      const xmlNode *outline = hut_described_first (part, "outline");
      const xmlNode *cut = hut_described_first (hut_described_first (part, "cut"), "outline");
      const double grown_mm2 = hut_described_path_area_mm2 (outline)
                               + hut_described_path_length_mm (outline) * half_kerf_mm
                               + 4.0 * half_kerf_mm * half_kerf_mm;

      assert_relative (hut_described_path_area_mm2 (cut), grown_mm2, 1e-12, "area in the cut",
                       "plain box");
    }
  assert_int_equal (count, 10); /* base: bottom and 4 walls; lid: top and 4 walls */
}

static void
each_hole_that_is_cut_lies_in_a_part_of_its_panel (void **state)
{
  guint count = 0;

  for (const char *const *name = hut_example_names (); *name != NULL; name++)
    {
      g_autoptr(Described) described = describe (load_example (*name), *name);
      const xmlNode *holes = hut_described_first (described->root, "holes");

      for (const xmlNode *hole = hut_described_first (holes, "opening"); hole != NULL;
           hole = hut_described_next (hole))
        {
          const xmlNode *in = hut_described_first (hole, "in");
          g_autofree char *part = NULL;
          g_autofree char *panel = hut_described_dup_text (hole, "panel");

          if (!hut_described_is (hole, "cut", "true"))
            continue;
          part = hut_described_dup_text (in, "part");
          if (!g_str_has_prefix (part, panel))
            fail_msg ("%s: an opening of %s is in part %s", *name, panel, part);
          count++;
        }
    }
  assert_true (count >= 2);
}

/* What cannot be built: the reason in the row. */
static void
break_stock (HutDesign *design)
{
  g_free (design->shell.default_stock);
  design->shell.default_stock = g_strdup ("no-such-stock");
}

static void
break_inside (HutDesign *design)
{
  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { -5.0, 200.0, 100.0 };
}

static void
break_machine (HutDesign *design)
{
  design->shell.fitted = TRUE;
  g_ptr_array_set_size (design->machine.bodies, 0);
}

static void
break_numbers (HutDesign *design)
{
  HutBody *body = design->machine.bodies->pdata[0];

  design->shell.fitted = TRUE;
  body->box.max.x = INFINITY;
  body->box.min.y = -INFINITY;
}

static void
break_size (HutDesign *design)
{
  design->shell.fitted = FALSE;
  design->shell.inside_mm = (HutVec3) { 1e9, NAN, 100.0 };
}

static void
a_design_that_cannot_be_built_is_still_described (void **state)
{
  static const struct
  {
    const char *why;
    void (*spoil) (HutDesign *design);
  } rows[] = {
    { "no such stock", break_stock },
    { "no room inside", break_inside },
    { "fitted to a machine without a body", break_machine },
    { "a body without end", break_numbers },
    { "a size that no bench has", break_size },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      HutDesign *design = hut_design_new ();
      g_autoptr(Described) described = NULL;

      rows[i].spoil (design);
      described = describe (design, rows[i].why);
      if (described->assembly->whole)
        fail_msg ("%s: must not be whole", rows[i].why);
      assert_null (hut_described_first (described->root, "size"));
      assert_null (hut_described_first (hut_described_first (described->root, "panels"), "panel"));
      if (!hut_findings_block (described->findings, NULL))
        fail_msg ("%s: must block", rows[i].why);
      assert_true (hut_described_number (hut_described_first (described->root, "findings"), "blocks")
                   >= 1.0);
    }
}

static void
the_same_design_gives_the_same_bytes (void **state)
{
  for (guint64 seed = 1; seed <= 20; seed++)
    {
      g_autoptr(Described) first = describe (hut_random_design (seed), "first");
      g_autoptr(Described) second = describe (hut_random_design (seed), "second");

      assert_true (g_bytes_equal (first->text, second->text));
    }
}

static void
a_name_comes_back_as_it_was_but_for_what_xml_cannot_hold (void **state)
{
  static const char typed[] = "a<b & \"c\" \xc3\xa4 'd'\x01\tend";
  static const char expected[] = "a<b & \"c\" \xc3\xa4 'd'\xef\xbf\xbd\tend";
  HutDesign *design = hut_design_new ();
  g_autoptr(Described) described = NULL;
  g_autofree char *name = NULL;

  g_free (design->name);
  design->name = g_strdup (typed);
  described = describe (design, "name");
  name = hut_described_dup_text (hut_described_first (described->root, "design"), "name");
  assert_string_equal (name, expected);
}

static void
the_report_has_the_findings_of_the_description (void **state)
{
  for (guint64 seed = 1; seed <= 30; seed++)
    {
      g_autoptr(Described) described = describe (hut_random_design (seed), "seed");
      g_autoptr(GError) error = NULL;
      g_autoptr(GBytes) text = hut_write_report ("x", described->findings, &error);
      g_autoptr(xmlDoc) report = NULL;
      const xmlNode *whole = NULL, *alone = NULL;

      assert_ok (text != NULL, error);
      report = hut_described_parse (text);
      hut_described_assert_valid (report, "report");
      whole = hut_described_first (hut_described_first (described->root, "findings"), "finding");
      alone = hut_described_first (hut_described_first (xmlDocGetRootElement (report), "findings"),
                                   "finding");
      for (; whole != NULL && alone != NULL;
           whole = hut_described_next (whole), alone = hut_described_next (alone))
        {
          g_autofree char *text_whole = hut_described_dup_text (whole, "text");
          g_autofree char *text_alone = hut_described_dup_text (alone, "text");

          assert_string_equal (text_whole, text_alone);
        }
      assert_true (whole == NULL && alone == NULL);
    }
}

/* The first @from in a valid description becomes @to: the schema must see each of these. */
static void
the_schema_refuses_what_is_not_right (void **state)
{
  static const struct
  {
    const char *why, *from, *to;
  } rows[] = {
    { "other namespace", "urn:hutchwright:describe:1", "urn:hutchwright:describe:9" },
    { "newer version", "version=\"1\"", "version=\"2\"" },
    { "unknown panel", "panel id=\"base-front\"", "panel id=\"base-middle\"" },
    { "missing thickness", " thickness=\"", " thicknes=\"" },
    { "decimal comma", "thickness=\"4\"", "thickness=\"4,0\"" },
    { "no thickness at all", "thickness=\"4\"", "thickness=\"0\"" },
    { "negative thickness", "thickness=\"4\"", "thickness=\"-4\"" },
    { "not a number", "thickness=\"4\"", "thickness=\"NaN\"" },
    { "without end", "thickness=\"4\"", "thickness=\"INF\"" },
    { "a coordinate that is no number", "<outer x=\"308\"", "<outer x=\"NaN\"" },
    { "a coordinate without end", "<outer x=\"308\"", "<outer x=\"INF\"" },
    { "a coordinate with a comma", "<outer x=\"308\"", "<outer x=\"308,0\"" },
    { "unknown joint", "joint=\"fingers\"", "joint=\"dovetail\"" },
    { "unknown edge kind", "edge=\"plain\"", "edge=\"rough\"" },
    { "matrix of 15 numbers", " 0 0 0 1\"", " 0 0 1\"" },
    { "perspective in the matrix", " 0 0 0 1\"", " 0 0 1 1\"" },
    { "flag that is no flag", "bought=\"false\"", "bought=\"no\"" },
    { "bought with a cut", "depth=\"0\" bought=\"false\"", "depth=\"0\" bought=\"true\"" },
    { "unknown element", "<holes", "<gaps/><holes" },
    { "unknown attribute", "<machine ", "<machine colour=\"red\" " },
  };
  g_autoptr(Described) described = describe (new_plain_box (), "plain box");
  gsize size = 0;
  const char *data = g_bytes_get_data (described->text, &size);
  g_autofree char *text = g_strndup (data, size);

  assert_true (hut_described_is_valid (text));
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      const char *at = strstr (text, rows[i].from);
      g_autofree char *spoiled = NULL;

      if (at == NULL)
        fail_msg ("%s: there is no “%s” to spoil", rows[i].why, rows[i].from);
      spoiled = g_strdup_printf ("%.*s%s%s", (int) (at - text), text, rows[i].to,
                                 at + strlen (rows[i].from));
      if (hut_described_is_valid (spoiled))
        fail_msg ("%s: the schema takes “%s”", rows[i].why, rows[i].to);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (every_example_is_valid_and_adds_up),
    cmocka_unit_test (random_designs_are_valid_and_add_up),
    cmocka_unit_test (a_box_has_the_sizes_worked_out_by_hand),
    cmocka_unit_test (a_cut_goes_half_a_kerf_round_the_outline),
    cmocka_unit_test (each_hole_that_is_cut_lies_in_a_part_of_its_panel),
    cmocka_unit_test (a_design_that_cannot_be_built_is_still_described),
    cmocka_unit_test (the_same_design_gives_the_same_bytes),
    cmocka_unit_test (a_name_comes_back_as_it_was_but_for_what_xml_cannot_hold),
    cmocka_unit_test (the_report_has_the_findings_of_the_description),
    cmocka_unit_test (the_schema_refuses_what_is_not_right),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
