/* tests/design/test-design-reader.c: what a file may not say, and how it is told.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "sample.h"

/* One spoilt place of the sample, and the whole message. */
typedef struct
{
  const char *from, *to;
  int code;
  const char *message;
} Case;

#define VALUE HUT_FILE_ERROR_VALUE
#define VERSION HUT_FILE_ERROR_VERSION

static void
check_cases (const Case *cases,
             gsize n_cases)
{
  g_autofree char *text = dup_sample ();

  for (gsize i = 0; i < n_cases; i++)
    {
      g_autofree char *spoilt = dup_spoilt (text, cases[i].from, cases[i].to);
      g_autoptr(GError) error = NULL;
      g_autoptr(HutDesign) design
          = hut_design_from_xml (spoilt, strlen (spoilt), "f", &error);

      if (design != NULL)
        fail_msg ("'%s' is taken", cases[i].to);
      if (strcmp (error->message, cases[i].message) != 0)
        fail_msg ("message is\n%s\nmust be\n%s", error->message, cases[i].message);
      if (!g_error_matches (error, HUT_FILE_ERROR, cases[i].code))
        fail_msg ("'%s': code is %d, must be %d", error->message, error->code, cases[i].code);
    }
}

static void
numbers_out_of_range_are_told_with_line_and_range (void **state)
{
  static const Case cases[] = {
    { "mm=\"6.04\"", "mm=\"-3\"", VALUE,
      "f:16: thickness reading is -3; allowed: 0.1 to 100 mm" },
    { "mm=\"6.04\"", "mm=\"1e400\"", VALUE,
      "f:16: thickness reading is 1e400; allowed: 0.1 to 100 mm" },
    { "mm=\"6.04\"", "mm=\"101\"", VALUE,
      "f:16: thickness reading is 101; allowed: 0.1 to 100 mm" },
    { "kerf=\"3.05\"", "kerf=\"-0.1\"", VALUE, "f:18: kerf is -0.1; allowed: 0 to 20 mm" },
    { "nominal=\"6\"", "nominal=\"0\"", VALUE,
      "f:14: nominal thickness of stock 'wall' is 0; allowed: 0.1 to 100 mm" },
    { "mass-kg=\"12.5\"", "mass-kg=\"-1\"", VALUE,
      "f:3: mass of the machine is -1; allowed: 0 to 1000 kg" },
    { "inside-width=\"330\"", "inside-width=\"123456789\"", VALUE,
      "f:24: inside width is 123456789; allowed: 1 to 10000 mm" },
    { "bed-width=\"610\"", "bed-width=\"0\"", VALUE,
      "f:13: width of the bed is 0; allowed: 1 to 10000 mm" },
    { "passes=\"3\"", "passes=\"0\"", VALUE,
      "f:18: number of passes is 0; allowed: whole numbers 1 to 1000" },
    { "passes=\"3\"", "passes=\"99999999999999999999\"", VALUE,
      "f:18: number of passes is 99999999999999999999; allowed: whole numbers 1 to 1000" },
    { "finger-ratio=\"2.5\"", "finger-ratio=\"1.4\"", VALUE,
      "f:28: finger width in thicknesses is 1.4; allowed: 1.5 to 6" },
    { "turn=\"90\"", "turn=\"361\"", VALUE,
      "f:31: turn of opening 'rectangle' is 361; allowed: -360 to 360 degrees" },
  };

  check_cases (cases, G_N_ELEMENTS (cases));
}

static void
what_is_no_number_is_told_so (void **state)
{
  static const Case cases[] = {
    { "mm=\"6.04\"", "mm=\"NaN\"", VALUE,
      "f:16: thickness reading is 'NaN', not a number; allowed: 0.1 to 100 mm" },
    { "mm=\"6.04\"", "mm=\"INF\"", VALUE,
      "f:16: thickness reading is 'INF', not a number; allowed: 0.1 to 100 mm" },
    { "mm=\"6.04\"", "mm=\"-inf\"", VALUE,
      "f:16: thickness reading is '-inf', not a number; allowed: 0.1 to 100 mm" },
    { "mm=\"6.04\"", "mm=\"6,04\"", VALUE,
      "f:16: thickness reading is '6,04', not a number; allowed: 0.1 to 100 mm" },
    { "mm=\"6.04\"", "mm=\"0x6\"", VALUE,
      "f:16: thickness reading is '0x6', not a number; allowed: 0.1 to 100 mm" },
    { "mm=\"6.04\"", "mm=\"\"", VALUE,
      "f:16: thickness reading is '', not a number; allowed: 0.1 to 100 mm" },
    { "mm=\"6.04\"", "mm=\"6 mm\"", VALUE,
      "f:16: thickness reading is '6 mm', not a number; allowed: 0.1 to 100 mm" },
    { "passes=\"3\"", "passes=\"2.5\"", VALUE,
      "f:18: number of passes is '2.5', not a whole number; allowed: whole numbers 1 to 1000" },
    { "passes=\"3\"", "passes=\"-1\"", VALUE,
      "f:18: number of passes is '-1', not a whole number; allowed: whole numbers 1 to 1000" },
  };

  check_cases (cases, G_N_ELEMENTS (cases));
}

static void
words_that_are_not_in_the_list_are_told_with_the_list (void **state)
{
  static const Case cases[] = {
    { "kind=\"keep-out\"", "kind=\"flying\"", VALUE,
      "f:7: kind of body 'loop' is 'flying'; allowed: static, moving, keep-out" },
    { "any-angle=\"yes\"", "any-angle=\"true\"", VALUE,
      "f:13: parts at any angle is 'true'; allowed: yes, no" },
    { "lid=\"lift-off\"", "lid=\"Hood\"", VALUE,
      "f:24: kind of the lid is 'Hood'; allowed: hood, top, lift-off, front" },
    { "panel=\"lid-front\"", "panel=\"lid-roof\"", VALUE,
      "f:29: panel of window 'pane' is 'lid-roof'; allowed: base-front, base-back, base-left, "
      "base-right, base-bottom, base-top, lid-front, lid-back, lid-left, lid-right, lid-top" },
    { "id=\"lid-top\"", "id=\"lid-bottom\"", VALUE,
      "f:26: id of panel 'lid-bottom' is 'lid-bottom'; allowed: base-front, base-back, base-left, "
      "base-right, base-bottom, base-top, lid-front, lid-back, lid-left, lid-right, lid-top" },
    { "id=\"loop\"", "id=\"1loop\"", VALUE,
      "f:7: id of a body is '1loop'; allowed: a letter or '_', then letters, digits, '-', '_' and "
      "'.'" },
    { "id=\"loop\"", "id=\"\"", VALUE,
      "f:7: id of a body is ''; allowed: a letter or '_', then letters, digits, '-', '_' and '.'" },
  };

  check_cases (cases, G_N_ELEMENTS (cases));
}

static void
ids_and_references_must_agree (void **state)
{
  static const Case cases[] = {
    { "id=\"loop\"", "id=\"frame\"", VALUE,
      "f:7: id 'frame' of <body> is already used in line 5; allowed: a different id for every "
      "<body>" },
    { "ledge=\"18\" stock=\"wall\"", "ledge=\"18\" stock=\"ply\"", VALUE,
      "f:24: stock of the shell is 'ply', which no <stock> has; allowed: clear, wall" },
    { "id=\"lid-top\" stock=\"clear\"", "id=\"lid-top\" stock=\"ply\"", VALUE,
      "f:26: stock of panel 'lid-top' is 'ply', which no <stock> has; allowed: clear, wall" },
    { "glazing-stock=\"clear\"", "glazing-stock=\"glass\"", VALUE,
      "f:29: stock of the glazing of window 'pane' is 'glass', which no <stock> has; allowed: "
      "clear, wall" },
    { "frame-stock=\"wall\"", "frame-stock=\"pane\"", VALUE,
      "f:29: stock of the frame of window 'pane' is 'pane', which no <stock> has; allowed: clear, "
      "wall" },
    { "body=\"gantry\"", "body=\"slot\"", VALUE,
      "f:31: anchor's body of opening 'rectangle' is 'slot', which no <body> has; allowed: frame, "
      "gantry, loop" },
    { "serves=\"power\"", "serves=\"water\"", VALUE,
      "f:30: service of opening 'round' is 'water', which no <service> has; allowed: air, power, "
      "smoke" },
    { "<panel id=\"lid-top\"", "<panel id=\"base-bottom\"", VALUE,
      "f:26: panel 'base-bottom' comes twice; allowed: one <panel> for each" },
    { " body=\"gantry\"", "", VALUE,
      "f:31: opening 'rectangle' is anchored to a body but names none; allowed: 'body' with the id "
      "of a <body>, or another anchor" },
  };

  check_cases (cases, G_N_ELEMENTS (cases));
}

static void
members_that_contradict_each_other_are_told (void **state)
{
  static const Case cases[] = {
    { "right=\"290\"", "right=\"9.5\"", VALUE,
      "f:6: 'right' of body 'gantry' is 9.5; allowed: not less than 'left', which is 10 mm" },
    { "back=\"260\"", "back=\"-1\"", VALUE,
      "f:7: 'back' of body 'loop' is -1; allowed: not less than 'front', which is 100 mm" },
    { "top=\"180.5\"", "top=\"0\"", VALUE,
      "f:7: 'top' of body 'loop' is 0; allowed: not less than 'bottom', which is 120 mm" },
    { "diameter=\"33\"", "diameter=\"0\"", VALUE,
      "f:30: diameter of opening 'round', whose shape is round, is 0; allowed: 0.1 to 10000 mm" },
    { "width=\"30\" height=\"20\"", "width=\"30\" height=\"0\"", VALUE,
      "f:31: height of opening 'rectangle', whose shape is rectangle, is 0; allowed: 0.1 to 10000 "
      "mm" },
    { "width=\"40\"", "width=\"0.05\"", VALUE,
      "f:32: width of opening 'slot', whose shape is slot, is 0.05; allowed: 0.1 to 10000 mm" },
    { "<hole u=\"-8\" v=\"0\"/>\n    <hole u=\"8\" v=\"0.5\"/>", "", VALUE,
      "f:33: opening 'vent' is a pattern without holes; allowed: 1 to 10000 <hole>" },
    { "diameter=\"5\"", "diameter=\"0.01\"", VALUE,
      "f:33: diameter of opening 'vent', whose shape is pattern, is 0.01; allowed: 0.1 to 10000 "
      "mm" },
  };

  check_cases (cases, G_N_ELEMENTS (cases));
}

static void
attributes_that_are_missing_or_unknown_are_told (void **state)
{
  static const Case cases[] = {
    { " nominal=\"6\"", "", VALUE,
      "f:14: attribute 'nominal' of <stock> is missing; allowed: 0.1 to 100 mm" },
    { " id=\"wall\"", "", VALUE,
      "f:14: attribute 'id' of <stock> is missing; allowed: a letter or '_', then letters, digits, "
      "'-', '_' and '.'" },
    { " fitted=\"no\"", "", VALUE,
      "f:24: attribute 'fitted' of <shell> is missing; allowed: yes, no" },
    { " frame-stock=\"wall\"", "", VALUE,
      "f:29: attribute 'frame-stock' of <window> is missing; allowed: the id of a <stock>" },
    { " left=\"11\"", " left=\"11\" bottom=\"3\"", VALUE,
      "f:4: unknown attribute 'bottom' of <clearance>; allowed: left, right, front, back, top" },
    { "<room left", "<room xmlns:a=\"urn:a\" a:left=\"1\" left", VALUE,
      "f:12: unknown attribute 'left' of <room>; allowed: left, right, front, back, above, "
      "temperature-c, altitude-m" },
    { " version=\"3\"", "", VALUE,
      "f:2: attribute 'version' of <enclosure> is missing; allowed: 3" },
    { " version=\"3\"", " version=\"0\"", VALUE, "f:2: version of the file is '0'; allowed: 3" },
    { " version=\"3\"", " version=\"one\"", VALUE,
      "f:2: version of the file is 'one'; allowed: 3" },
  };

  check_cases (cases, G_N_ELEMENTS (cases));
}

static void
elements_that_are_missing_unknown_or_misplaced_are_told (void **state)
{
  static const Case cases[] = {
    { "<room left=\"100\" right=\"200\" back=\"300\" above=\"900\" temperature-c=\"24\" "
      "altitude-m=\"310\"/>", "", VALUE,
      "f:13: <cutter> is not allowed here; allowed: <room>" },
    { "<room left", "<ceiling/><room left", VALUE,
      "f:12: unknown element <ceiling> in <enclosure>; allowed: <room>" },
    { "</machine>", "<ceiling/></machine>", VALUE,
      "f:11: unknown element <ceiling> in <machine>; allowed: <service>, </machine>" },
    { "<shell fitted", "<wall/><shell fitted", VALUE,
      "f:24: unknown element <wall> in <enclosure>; allowed: <stock>, <shell>" },
    { "</enclosure>", "<room/></enclosure>", VALUE,
      "f:52: <room> is not allowed here; allowed: <spot>, </enclosure>" },
    { "<baffle side=\"front\"", "<opening id=\"a\"/><baffle side=\"front\"", VALUE,
      "f:37: attribute 'name' of <opening> is missing; allowed: at most 2000 bytes of text" },
    { "<reading mm=\"3.9\"/>", "", VALUE,
      "f:22: <recipe> is not allowed here; allowed: <reading>" },
    { "<recipe kerf=\"3\" kerf-error=\"0.05\" speed-mm-min=\"900\" power-percent=\"10\" "
      "passes=\"2\"/>",
      "", VALUE, "f:20: <recipe> is missing in <stock>; allowed: at least 1" },
    { "<reading mm=\"3.9\"/>", "<reading mm=\"3.9\"><note/></reading>", VALUE,
      "f:21: unknown element <note> in <reading>; allowed: nothing in <reading>" },
    { "<reading mm=\"3.9\"/>", "<reading mm=\"3.9\">4</reading>", VALUE,
      "f:21: text '4' in <reading>; allowed: only elements" },
    { "<shell fitted", "about here\n\n <shell fitted", VALUE,
      "f:24: text 'about here' in <enclosure>; allowed: only elements" },
    { "<room left", "<room xmlns=\"urn:other\"/><room left", VALUE,
      "f:12: unknown element <room> in <enclosure>; allowed: <room>" },
    { "<room left", "<room/><room left", VALUE,
      "f:12: too many <room> in <enclosure>; allowed: at most 1" },
  };

  check_cases (cases, G_N_ELEMENTS (cases));
}

static void
files_of_a_newer_program_are_told_apart (void **state)
{
  static const Case cases[] = {
    { "version=\"3\" name", "version=\"4\" name", VERSION,
      "f:2: the file has version 4, from a newer program; allowed: version 3" },
    { "design:1", "design:7", VERSION,
      "f:2: the file has version 7, from a newer program; allowed: version 3" },
    { "version=\"3\" name", "version=\"12\" colour=\"new\" name", VERSION,
      "f:2: the file has version 12, from a newer program; allowed: version 3" },
    { "design:1", "design:x", VALUE,
      "f:2: the root element is <enclosure> of another namespace; allowed: <enclosure "
      "xmlns=\"urn:hutchwright:design:1\">" },
  };

  check_cases (cases, G_N_ELEMENTS (cases));
}

static void
other_xml_is_no_design (void **state)
{
  static const char *const texts[] = {
    "<html/>",
    "<enclosure/>",
    "<enclosure version=\"9\"/>",
    "<machine xmlns=\"urn:hutchwright:design:1\"/>",
  };

  for (gsize i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_autoptr(GError) error = NULL;

      assert_null (hut_design_from_xml (texts[i], strlen (texts[i]), "f", &error));
      assert_true (g_error_matches (error, HUT_FILE_ERROR, HUT_FILE_ERROR_VALUE));
      assert_true (g_str_has_prefix (error->message, "f:1: the root element is <"));
    }
}

static void
line_is_right_after_the_65535th (void **state)
{
  g_autofree char *text = dup_sample ();
  g_autofree char *blank = g_strnfill (70000, '\n');
  g_autofree char *padded = dup_spoilt (text, "<room left", blank);
  g_autofree char *head = dup_spoilt (padded, "=\"100\" right", "<room left=\"-1\" right");
  g_autoptr(GError) error = NULL;
  int line = 0;

  assert_null (hut_design_from_xml (head, strlen (head), "f", &error));
  assert_int_equal (sscanf (error->message, "f:%d: room on the left is -1", &line), 1);
  assert_true (line >= 70012 && line <= 70013); /* libxml2 counts the line of the text after it */
}

static void
comments_blanks_and_any_order_of_attributes_are_fine (void **state)
{
  g_autofree char *text = dup_sample ();
  g_autofree char *commented = dup_spoilt (text, "<room left=\"100\" right=\"200\"",
                                           "<!-- a --><?b c?>\n\n"
                                           "<room right='200'\n left='&#49;00'");
  g_autofree char *marked = g_strconcat ("\xef\xbb\xbf", commented, "<!-- end -->\n", NULL);
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) design = hut_design_from_xml (marked, strlen (marked), "f", &error);
  g_autoptr(HutDesign) sample = new_sample ();

  assert_ok (design != NULL, error);
  assert_true (hut_design_equal (design, sample));
}

/* Checks make findings of these: an owner must be able to open and mend them. */
static void
designs_that_cannot_be_built_can_be_opened (void **state)
{
  static const struct
  {
    const char *from, *to;
  } cases[] = {
    { "u-offset=\"50\"", "u-offset=\"-9000\"" },           /* opening outside of its panel */
    { "bed-width=\"610\"", "bed-width=\"1\"" },            /* bed smaller than any part */
    { "mm=\"5.92\"", "mm=\"100\"" },                       /* thickness larger than the box */
    { "inside-width=\"330\"", "inside-width=\"1\"" },
    { "panel=\"lid-front\"", "panel=\"base-top\"" },       /* not with a lift-off lid */
    { "seam-height=\"95\"", "seam-height=\"5000\"" },
    { "hinge=\"right\"", "hinge=\"top\"" },
    { "radius=\"2\"", "radius=\"500\"" },
    { "margin=\"6\"", "margin=\"900\"" },                  /* nothing left of the bed */
    { "width=\"150\" height=\"70\"", "width=\"9000\" height=\"9000\"" },
  };
  g_autofree char *text = dup_sample ();

  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *spoilt = dup_spoilt (text, cases[i].from, cases[i].to);
      g_autoptr(GError) error = NULL;
      g_autoptr(HutDesign) design = hut_design_from_xml (spoilt, strlen (spoilt), "f", &error);

      assert_ok (design != NULL, error);
    }
}

static void
machine_without_bodies_can_be_opened (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  g_autofree char *text = NULL;
  g_autoptr(GError) error = NULL;
  g_autoptr(HutDesign) again = NULL;

  g_ptr_array_set_size (design->machine.bodies, 0);
  text = hut_design_to_xml (design);
  again = hut_design_from_xml (text, strlen (text), "f", &error);
  assert_ok (again != NULL, error);
  assert_int_equal (again->machine.bodies->len, 0);
}

static void
more_items_than_allowed_are_refused (void **state)
{
  g_autoptr(HutDesign) design = hut_design_new ();
  HutStock *stock = g_ptr_array_index (design->stocks, 0);
  const double reading_mm = 6.0;
  g_autofree char *text = NULL;
  g_autoptr(GError) error = NULL;

  while (stock->readings_mm->len < 1001)
    g_array_append_val (stock->readings_mm, reading_mm);
  text = hut_design_to_xml (design);
  assert_null (hut_design_from_xml (text, strlen (text), "f", &error));
  assert_non_null (strstr (error->message, "too many <reading> in <stock>; allowed: at most 1000"));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (numbers_out_of_range_are_told_with_line_and_range),
    cmocka_unit_test (what_is_no_number_is_told_so),
    cmocka_unit_test (words_that_are_not_in_the_list_are_told_with_the_list),
    cmocka_unit_test (ids_and_references_must_agree),
    cmocka_unit_test (members_that_contradict_each_other_are_told),
    cmocka_unit_test (attributes_that_are_missing_or_unknown_are_told),
    cmocka_unit_test (elements_that_are_missing_unknown_or_misplaced_are_told),
    cmocka_unit_test (files_of_a_newer_program_are_told_apart),
    cmocka_unit_test (other_xml_is_no_design),
    cmocka_unit_test (line_is_right_after_the_65535th),
    cmocka_unit_test (comments_blanks_and_any_order_of_attributes_are_fine),
    cmocka_unit_test (designs_that_cannot_be_built_can_be_opened),
    cmocka_unit_test (machine_without_bodies_can_be_opened),
    cmocka_unit_test (more_items_than_allowed_are_refused),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
