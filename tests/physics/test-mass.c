/* tests/physics/test-mass.c: mass properties against an independent integration of what `describe`
 * says. SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The other way: the XML is read back without code of the program, each outline becomes a fan of
 * triangles (arcs as many chords), each triangle a prism, and a quadratic function over a prism is
 * integrated exactly by its three edge middles times Simpson's rule, each point placed in the world
 * by the part's matrix. */
#include "config.h"
#include "export/hut-described.h"
#include "export/hut-export.h"
#include "hut-assert.h"
#include "hut-box-design.h"
#include "hut-random-design.h"
#include "physics/hut-finish.h"
#include "physics/hut-mass.h"

#define CHORDS 200
/* Chords of a 1/200 of an arc lose under this share of a part with arcs. */
#define ROOM_RATIO 1e-5

typedef struct
{
  double mass, first[3], turning; /* kg, kg m, kg m2 about the hinge line */
  double point[3], axis[3];       /* of the hinge line, m and ratio */
} Sum;

static void
add_place (Sum *sum,
           const double matrix[16],
           double u_mm,
           double v_mm,
           double w_mm,
           double mass_kg)
{
  double d[3], along = 0, square = 0;

  sum->mass += mass_kg;
  for (int i = 0; i < 3; i++)
    {
      const double x_m = (matrix[4 * i] * u_mm + matrix[4 * i + 1] * v_mm + matrix[4 * i + 2] * w_mm
                          + matrix[4 * i + 3])
                         / 1000;

      sum->first[i] += mass_kg * x_m;
      d[i] = x_m - sum->point[i];
      along += d[i] * sum->axis[i];
      square += d[i] * d[i];
    }
  sum->turning += mass_kg * (square - along * along);
}

/* One triangle (0, a, b) about the path's first point, as a prism from -t to 0; negative when it
 * turns clockwise. */
static void
add_prism (Sum *sum,
           const double matrix[16],
           const double corners[3][2],
           double thickness_mm,
           double density_kg_m3)
{
  static const double heights[] = { 0, -0.5, -1 }, weights[] = { 1 / 6.0, 4 / 6.0, 1 / 6.0 };
  const double au = corners[1][0] - corners[0][0], av = corners[1][1] - corners[0][1];
  const double bu = corners[2][0] - corners[0][0], bv = corners[2][1] - corners[0][1];
  const double mass_kg = 0.5 * (au * bv - av * bu) * thickness_mm * 1e-9 * density_kg_m3;

  for (int i = 0; i < 3; i++)
    for (int k = 0; k < 3; k++)
      {
        const double *p = corners[i], *q = corners[(i + 1) % 3];

        add_place (sum, matrix, 0.5 * (p[0] + q[0]), 0.5 * (p[1] + q[1]), heights[k] * thickness_mm,
                   mass_kg / 3 * weights[k]);
      }
}

/* A point of an arc of bulge b from p to q, at a share of its turn: by turning the chord's end
 * about the start (the angle at the border is half of that at the centre). */
static void
point_of_arc (const double p[2],
              const double q[2],
              double bulge,
              double share,
              double out[2])
{
  const double turn = 4 * atan (bulge), cu = q[0] - p[0], cv = q[1] - p[1];
  const double stretch = sin (share * turn / 2) / sin (turn / 2), aside = -(1 - share) * turn / 2;

  out[0] = p[0] + stretch * (cos (aside) * cu - sin (aside) * cv);
  out[1] = p[1] + stretch * (sin (aside) * cu + cos (aside) * cv);
}

static void
add_path (Sum *sum,
          const xmlNode *path,
          const double matrix[16],
          double thickness_mm,
          double density_kg_m3)
{
  const double start[2] = { hut_described_number (path, "u"), hut_described_number (path, "v") };
  double last[2] = { start[0], start[1] };

  for (const xmlNode *node = path->children; node != NULL; node = node->next)
    {
      if (node->type != XML_ELEMENT_NODE)
        continue;

      const double end[2] = { hut_described_number (node, "u"), hut_described_number (node, "v") };
      const gboolean arc = g_str_equal ((const char *)node->name, "arc");
      const double bulge = arc ? hut_described_number (node, "bulge") : 0;
      double here[2] = { last[0], last[1] };

      for (int i = 1; i <= (arc ? CHORDS : 1); i++)
        {
          double next[2] = { end[0], end[1] };

          if (arc && i < CHORDS)
            point_of_arc (last, end, bulge, (double)i / CHORDS, next);
          add_prism (sum, matrix,
                     (const double[3][2]) {
                         { start[0], start[1] }, { here[0], here[1] }, { next[0], next[1] } },
                     thickness_mm, density_kg_m3);
          here[0] = next[0];
          here[1] = next[1];
        }
      last[0] = end[0];
      last[1] = end[1];
    }
}

static void
add_part (Sum *sum,
          const xmlNode *part,
          const HutDesign *design)
{
  g_autofree char *stock = hut_described_dup_text (part, "stock");
  const double density = hut_design_get_stock (design, stock)->density_kg_m3;
  const double thickness = hut_described_number (part, "thickness");
  double matrix[16];

  hut_described_numbers (part, "matrix", matrix, 16);
  add_path (sum, hut_described_first (part, "outline"), matrix, thickness, density);
  for (const xmlNode *hole = hut_described_first (part, "hole"); hole != NULL;
       hole = hut_described_next (hole))
    add_path (sum, hole, matrix, thickness, density);
}

static void
compare (const HutDesign *design,
         const HutAssembly *assembly,
         const HutPartSet *parts,
         const xmlNode *described,
         HutShellId shell,
         guint64 seed)
{
  const HutMass mass = hut_shell_mass (assembly, parts, shell);
  const HutVec3 at = assembly->hinged ? assembly->hinge_point : (HutVec3) { 10, 20, 30 };
  const HutVec3 axis = assembly->hinged ? assembly->hinge_axis : (HutVec3) { 0.6, 0.8, 0 };
  Sum sum
      = { .point = { at.x / 1000, at.y / 1000, at.z / 1000 }, .axis = { axis.x, axis.y, axis.z } };
  double centre_m[3], size = 0, inertia;

  for (const xmlNode *part = hut_described_first (described, "part"); part != NULL;
       part = hut_described_next (part))
    {
      g_autofree char *moves_with = hut_described_dup_text (part, "shell");

      if (g_str_equal (moves_with, shell == HUT_SHELL_LID ? "lid" : "base"))
        add_part (&sum, part, design);
    }
  if (sum.mass == 0)
    {
      assert_near (mass.mass_kg, 0, 0);
      assert_false (hut_mass_centre (&mass, centre_m));
      return;
    }
  assert_true (hut_mass_centre (&mass, centre_m));
  inertia = hut_mass_inertia (&mass, at, axis);
  for (int i = 0; i < 3; i++)
    size += fabs (sum.first[i] / sum.mass);
  if (fabs (mass.mass_kg - sum.mass) > ROOM_RATIO * sum.mass
      || fabs (inertia - sum.turning) > ROOM_RATIO * sum.turning)
    fail_msg ("seed %" G_GUINT64_FORMAT ": mass %.12g and %.12g kg, inertia %.12g and %.12g kg m2",
              seed, mass.mass_kg, sum.mass, inertia, sum.turning);
  for (int i = 0; i < 3; i++)
    if (fabs (centre_m[i] - sum.first[i] / sum.mass) > ROOM_RATIO * size)
      fail_msg ("seed %" G_GUINT64_FORMAT ": centre %d at %.12g and %.12g m", seed, i, centre_m[i],
                sum.first[i] / sum.mass);
}

static void
parts_of_random_designs_weigh_what_their_description_weighs (void **state)
{
  const guint64 first = hut_random_first_seed (), count = hut_random_seed_count (30);

  for (guint64 seed = first; seed < first + count; seed++)
    {
      g_autoptr(HutDesign) design = hut_random_design (seed);
      g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
      g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
      /* Neither sheets nor findings change the parts. */
      g_autoptr(GPtrArray) none = g_ptr_array_new ();
      g_autoptr(GArray) unplaced = g_array_new (FALSE, FALSE, sizeof (guint));
      const HutSheetSet sheets = { none, unplaced };
      g_autoptr(GError) error = NULL;
      g_autoptr(GBytes) text = hut_write_describe (assembly, parts, &sheets, none, &error);
      g_autoptr(xmlDoc) document = NULL;
      const xmlNode *described;

      assert_ok (text != NULL, error);
      document = hut_described_parse (text);
      described = hut_described_first (xmlDocGetRootElement (document), "parts");
      compare (design, assembly, parts, described, HUT_SHELL_BASE, seed);
      compare (design, assembly, parts, described, HUT_SHELL_LID, seed);
      for (HutShellId shell = HUT_SHELL_BASE; shell < HUT_SHELL_COUNT; shell++)
        assert_near (hut_hardware_mass (assembly, shell).mass_kg,
                     hut_assembly_hardware_mass_kg (assembly, shell), 1e-12);
    }
}

static void
a_point_turns_with_mass_times_distance_squared (void **state)
{
  HutMass sum = hut_mass_point (2, 0.3, 0.4, 1);
  const HutMass other = hut_mass_point (1, 0.6, -0.8, 0);
  double centre_m[3];

  /* About z through (0, 0): 2 0.25; with the other one 1 1.0. */
  assert_near (hut_mass_inertia (&sum, (HutVec3) { 0, 0, 5 }, (HutVec3) { 0, 0, 1 }), 0.5, 1e-15);
  hut_mass_add (&sum, &other);
  assert_near (hut_mass_inertia (&sum, (HutVec3) { 0, 0, 5 }, (HutVec3) { 0, 0, 1 }), 1.5, 1e-15);
  /* About the line along x at y = 400 mm, z = 0: 2 (0 + 1) + 1 1.44. */
  assert_near (hut_mass_inertia (&sum, (HutVec3) { 9, 400, 0 }, (HutVec3) { 1, 0, 0 }), 3.44, 1e-14);
  assert_true (hut_mass_centre (&sum, centre_m));
  assert_near (centre_m[0], 0.4, 1e-15);
  assert_near (centre_m[1], 0, 1e-15);
  assert_near (centre_m[2], 2.0 / 3, 1e-15);
}

static void
the_box_weighs_what_its_shell_weighs (void **state)
{
  /* 312 x 212 x 162 outside, 300 x 200 x 150 inside, with a seam gap of 1 mm all round that takes
   * its share of the walls: 2 (312 + 200) 6 1. */
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
  const double volume_m3 = (312.0 * 212 * 162 - 300.0 * 200 * 150 - 2 * 512 * 6 * 1) * 1e-9;
  HutMass sum = hut_shell_mass (assembly, parts, HUT_SHELL_BASE);
  const HutMass lid = hut_shell_mass (assembly, parts, HUT_SHELL_LID);
  double centre_m[3];

  hut_mass_add (&sum, &lid);
  assert_near (sum.mass_kg, volume_m3 * hut_design_get_stock (design, "wall")->density_kg_m3, 1e-9);
  assert_true (hut_mass_centre (&sum, centre_m));
  /* The fingers of the corners alternate, so that the two halves differ a little. */
  assert_near (centre_m[0], 0.156, 1e-12);
  assert_near (centre_m[1], 0.106, 1e-12);
}

static void
the_box_has_the_faces_and_joints_of_its_shell (void **state)
{
  g_autoptr(HutDesign) design = hut_box_design_new ();
  g_autoptr(HutAssembly) assembly = hut_assembly_new (design);
  g_autoptr(HutPartSet) parts = hut_part_set_new (assembly);
  const HutFinish finish = hut_finish_of (parts);
  double volume_m3 = 0;

  for (guint i = 0; i < parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (parts->parts, i);

      volume_m3 += hut_region_area_mm2 (part->region) * part->thickness_mm * 1e-9;
    }
  assert_near (finish.outside_m2, volume_m3 / 0.006, 1e-12);
  assert_near (finish.inside_m2, finish.outside_m2, 0);
  assert_near (finish.strap_m2, 0, 0);
  assert_true (finish.joint_m > 0 && finish.edge_m2 > 0);
  assert_near (finish.joint_m2, finish.joint_m * 0.006, 1e-12);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (a_point_turns_with_mass_times_distance_squared),
    cmocka_unit_test (the_box_weighs_what_its_shell_weighs),
    cmocka_unit_test (the_box_has_the_faces_and_joints_of_its_shell),
    cmocka_unit_test (parts_of_random_designs_weigh_what_their_description_weighs),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
