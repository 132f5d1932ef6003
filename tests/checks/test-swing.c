/* tests/checks/test-swing.c: how near the opening lid comes to what stands around it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "checks/hut-swing.h"
#include "checks/hut-check-case.h"
#include "hut-assert.h"
#include "hut-random-design.h"

#define DEG (G_PI / 180.0)
#define STEP_DEG 0.25

/* ---- by hand
 * ------------------------------------------------------------------------------------ Of
 * hut_check_case_design (): outside 372 x 352 x 252, seam 140, gap 1, hinge line at the back: y =
 * 352, z = 140.5. Seen from the hinge the lid is from 0.5 to 111.5 high and reaches to -352. */

static void
find (HutDesign *design,
      HutApproach approaches[HUT_AROUND_COUNT])
{
  g_autoptr(HutCheckCase) c = hut_check_case_new (design);

  hut_swing_find (c->assembly, c->parts, approaches);
}

static void
hood_at_90_degrees_needs_its_own_height_behind (void **state)
{
  /* The lid's top, 111.5 over the hinge, then is 111.5 behind it. A wall at 150 leaves 38.5. */
  HutDesign *design = hut_check_case_design ();
  HutApproach approaches[HUT_AROUND_COUNT];

  design->shell.opening_angle_deg = 90.0;
  design->room_mm.back = 150.0;
  find (design, approaches);
  assert_true (approaches[HUT_AROUND_WALL].exists);
  assert_false (approaches[HUT_AROUND_WALL].collides);
  assert_near_mm (approaches[HUT_AROUND_WALL].distance_mm, 38.5, 1e-9);
  assert_near (approaches[HUT_AROUND_WALL].angle_rad, 90 * DEG, 1e-9);
  assert_string_equal (approaches[HUT_AROUND_WALL].other, "wall");
  assert_int_equal (approaches[HUT_AROUND_WALL].side, HUT_SIDE_BACK);
  assert_false (approaches[HUT_AROUND_SHELF].exists);
}

static void
hood_past_90_degrees_needs_more (void **state)
{
  /* At 100 degrees its front upper edge (-352, 111.5) is behind by 352 cos 80 + 111.5 sin 100. */
  HutDesign *design = hut_check_case_design ();
  HutApproach approaches[HUT_AROUND_COUNT];

  design->shell.opening_angle_deg = 100.0;
  design->room_mm.back = 200.0;
  find (design, approaches);
  assert_near_mm (approaches[HUT_AROUND_WALL].distance_mm,
                  200 - 352 * cos (80 * DEG) - 111.5 * cos (10 * DEG), 1e-9);
}

static void
hood_hits_the_wall_behind_when_its_height_does_not_fit (void **state)
{
  /* Wall at 100: the back upper edge, 111.5 from the hinge and straight above it, gets there at
   * asin (100 / 111.5); its front upper edge later. */
  HutDesign *design = hut_check_case_design ();
  HutApproach approaches[HUT_AROUND_COUNT];

  design->room_mm.back = 100.0;
  find (design, approaches);
  assert_true (approaches[HUT_AROUND_WALL].collides);
  assert_near_mm (approaches[HUT_AROUND_WALL].distance_mm, 0, 0);
  assert_near (approaches[HUT_AROUND_WALL].angle_rad, asin (100 / 111.5), 1e-4);
}

static void
shelf_is_nearest_when_the_front_edge_is_on_top (void **state)
{
  /* The front upper edge is sqrt (352^2 + 111.5^2) = 369.237 from the hinge and on top when it
   * has turned by 90 - atan (111.5 / 352) degrees: 140.5 + 369.237 = 509.737 over the bench. */
  HutDesign *design = hut_check_case_design ();
  HutApproach approaches[HUT_AROUND_COUNT];

  design->shell.opening_angle_deg = 90.0;
  design->room_mm.above = 520.0;
  find (design, approaches);
  assert_near_mm (approaches[HUT_AROUND_SHELF].distance_mm, 520 - 140.5 - hypot (352, 111.5),
                  1e-9);
  assert_near (approaches[HUT_AROUND_SHELF].angle_rad, 90 * DEG - atan2 (111.5, 352), 1e-9);
  assert_string_equal (approaches[HUT_AROUND_SHELF].other, "shelf");
}

static void
lid_front_passes_over_the_machine (void **state)
{
  /* The inner lower edge of the lid's front is 346 before the hinge and 0.5 over it, the
   * machine's front upper edge 300 + 20 + 6 = 326 before it and 6 + 220 - 140.5 = 85.5 over it:
   * they are nearest when both are in one line with the hinge. */
  g_autoptr(HutCheckCase) c = hut_check_case_new (hut_check_case_design ());
  HutApproach approaches[HUT_AROUND_COUNT];

  hut_swing_find (c->assembly, c->parts, approaches);
  assert_true (approaches[HUT_AROUND_MACHINE].exists);
  assert_near_mm (approaches[HUT_AROUND_MACHINE].distance_mm,
                  hypot (346, 0.5) - hypot (326, 85.5), 1e-9);
  assert_near (approaches[HUT_AROUND_MACHINE].angle_rad, atan2 (85.5, 326) - atan2 (0.5, 346),
               1e-9);
  assert_string_equal (approaches[HUT_AROUND_MACHINE].other, "machine");
}

static void
low_seam_makes_the_front_hit_the_machine (void **state)
{
  /* Seam at 90, hinge at 90.5: the machine's edge is 135.5 over it, hypot (326, 135.5) = 353 >
   * 346. The inner face, a line at distance 346, turns by a: it reaches the edge when its foot,
   * at
   * (-346 cos a, 346 sin a), has (-326, 135.5) on its line: 326 cos a + 135.5 sin a = 346. */
  HutDesign *design = hut_check_case_design ();
  HutApproach approaches[HUT_AROUND_COUNT];
  const double far = hypot (326, 135.5), expected = atan2 (135.5, 326) - acos (346 / far);

  design->shell.seam_height_mm = 90.0;
  find (design, approaches);
  assert_true (approaches[HUT_AROUND_MACHINE].collides);
  assert_near (approaches[HUT_AROUND_MACHINE].angle_rad, expected, 1e-4);
}

static void
base_keeps_the_seam_until_the_hinge_folds_it (void **state)
{
  /* Hinge in the face, gap 1: lid and base corner are both 0.5 from the hinge, so their distance
   * is 1 cos (a / 2): 0.7071 at 90 degrees, 0.5 at 120. */
  HutDesign *design = hut_check_case_design ();
  HutApproach approaches[HUT_AROUND_COUNT];

  design->shell.opening_angle_deg = 120.0;
  find (design, approaches);
  assert_false (approaches[HUT_AROUND_BASE].collides);
  assert_near_mm (approaches[HUT_AROUND_BASE].distance_mm, 0.5, 1e-9);
  assert_near (approaches[HUT_AROUND_BASE].angle_rad, 120 * DEG, 1e-9);
  assert_string_equal (approaches[HUT_AROUND_BASE].other, "base-back");
}

static void
hinge_outside_the_wall_gives_no_false_collision (void **state)
{
  /* All four hinge lines stand 5 off; the far edge of the hood moves up at once, so the seam is
   * the least. */
  const HutHinge hinges[] = { HUT_HINGE_BACK, HUT_HINGE_LEFT, HUT_HINGE_RIGHT };

  for (guint i = 0; i < G_N_ELEMENTS (hinges); i++)
    {
      HutDesign *design = hut_check_case_design ();
      HutApproach approaches[HUT_AROUND_COUNT];

      design->shell.hinge = hinges[i];
      design->shell.hinge_offset_mm = 5.0;
      design->shell.opening_angle_deg = 110.0;
      find (design, approaches);
      assert_true (approaches[HUT_AROUND_BASE].exists);
      assert_false (approaches[HUT_AROUND_BASE].collides);
      assert_near_mm (approaches[HUT_AROUND_BASE].distance_mm, 1.0, 1e-9);
      assert_near (approaches[HUT_AROUND_BASE].angle_rad, 0.0, 0.0);
    }
}

static void
hinge_inside_the_wall_makes_the_lid_hit_the_base (void **state)
{
  /* 3 inside the face: the lid's outer lower corner is 3 behind the hinge and 0.5 over it, the
   * base 0.5 under it. It comes down to the base when 0.5 cos a - 3 sin a = -0.5: a = 18.92
   * degrees, by half angles tan (a / 2) = 0.5 / 3. */
  HutDesign *design = hut_check_case_design ();
  HutApproach approaches[HUT_AROUND_COUNT];

  design->shell.hinge_offset_mm = -3.0;
  find (design, approaches);
  assert_true (approaches[HUT_AROUND_BASE].collides);
  assert_near (approaches[HUT_AROUND_BASE].angle_rad, 2 * atan (0.5 / 3), 1e-3);
  assert_string_equal (approaches[HUT_AROUND_BASE].other, "base-back");
}

static void
front_door_swings_its_width_into_the_room (void **state)
{
  /* Hinged left, 372 wide, hinge half a gap behind the 6 mm door: at 90 degrees the door's free
   * edge is 372 before the front plane of the base, so 372 - 6.5 before the enclosure's front, at
   * y = 0. */
  HutDesign *design = hut_check_case_design ();
  HutApproach approaches[HUT_AROUND_COUNT];

  design->shell.lid = HUT_LID_FRONT;
  design->shell.hinge = HUT_HINGE_LEFT;
  design->shell.opening_angle_deg = 90.0;
  design->room_mm.front = 400.0;
  find (design, approaches);
  assert_false (approaches[HUT_AROUND_WALL].collides);
  /* Nearest is its outer corner, hypot (372, 6.5) from the hinge, when that points straight
   * ahead.
   */
  assert_near_mm (approaches[HUT_AROUND_WALL].distance_mm, 400 + 6.5 - hypot (372, 6.5), 1e-9);
  assert_int_equal (approaches[HUT_AROUND_WALL].side, HUT_SIDE_FRONT);
}

static void
lid_that_slides_past_a_wall_keeps_its_distance (void **state)
{
  /* Hinged at the back, the lid's left side moves in its own plane, 4 from the wall. */
  HutDesign *design = hut_check_case_design ();
  HutApproach approaches[HUT_AROUND_COUNT];

  design->room_mm.left = 4.0;
  find (design, approaches);
  assert_false (approaches[HUT_AROUND_WALL].collides);
  assert_near_mm (approaches[HUT_AROUND_WALL].distance_mm, 4.0, 1e-9);
}

static void
nearness_of_the_closed_lid_does_not_hide_the_moving_one (void **state)
{
  /* Closed, the lid's right side is 3 from a box beside the machine; while it moves the front
   * comes to 8.97 of the machine. With a swing clearance of 10 the second one is the finding,
   * with 5 the first is least. */
  for (int wide = 0; wide <= 1; wide++)
    {
      HutDesign *design = hut_check_case_design ();
      HutApproach approaches[HUT_AROUND_COUNT];

      design->machine.clearance_mm.right = 3.0;
      design->shell.swing_clearance_mm = wide ? 10.0 : 5.0;
      find (design, approaches);
      assert_near_mm (approaches[HUT_AROUND_MACHINE].distance_mm,
                      wide ? hypot (346, 0.5) - hypot (326, 85.5) : 3.0, 1e-9);
    }
}

static void
lift_off_lid_does_not_swing (void **state)
{
  HutDesign *design = hut_check_case_design ();
  HutApproach approaches[HUT_AROUND_COUNT];

  design->shell.lid = HUT_LID_LIFT_OFF;
  design->room_mm.back = 10.0;
  find (design, approaches);
  for (int i = 0; i < HUT_AROUND_COUNT; i++)
    assert_false (approaches[i].exists);
}

/* ---- an independent route
 * ----------------------------------------------------------------------- Corners of each solid
 * of the lid are turned in space by Rodrigues' formula, angle by angle, and seen along the hinge
 * as a row of edges. */

typedef struct
{
  double p[4][2];  /* in two axes across the hinge */
  double from, to; /* along it */
} Prism;

static double
coordinate (HutVec3 v,
            int axis)
{
  return axis == 0 ? v.x : axis == 1 ? v.y : v.z;
}

static HutVec3
rotate (HutVec3 v,
        HutVec3 origin,
        HutVec3 k,
        double rad)
{
  const HutVec3 r = { v.x - origin.x, v.y - origin.y, v.z - origin.z };
  const HutVec3 kxr = { k.y * r.z - k.z * r.y, k.z * r.x - k.x * r.z, k.x * r.y - k.y * r.x };
  const double kr = k.x * r.x + k.y * r.y + k.z * r.z, c = cos (rad), s = sin (rad);

  return (HutVec3) { origin.x + r.x * c + kxr.x * s + k.x * kr * (1 - c),
                    origin.y + r.y * c + kxr.y * s + k.y * kr * (1 - c),
                    origin.z + r.z * c + kxr.z * s + k.z * kr * (1 - c) };
}

static Prism
prism_of (const HutAssembly *assembly,
          HutBox3 box,
          double rad)
{
  const HutVec3 k = assembly->hinge_axis;
  const int along = fabs (k.x) > 0.5 ? 0 : fabs (k.y) > 0.5 ? 1 : 2;
  const int a = along == 0 ? 1 : 0, b = along == 2 ? 1 : 2;
  const double lo[3] = { box.min.x, box.min.y, box.min.z },
               hi[3] = { box.max.x, box.max.y, box.max.z };
  Prism prism = { .from = lo[along], .to = hi[along] };

  for (int i = 0; i < 4; i++)
    {
      double corner[3] = { lo[0], lo[1], lo[2] };
      HutVec3 turned;

      corner[a] = i == 1 || i == 2 ? hi[a] : lo[a];
      corner[b] = i >= 2 ? hi[b] : lo[b];
      turned
          = rotate ((HutVec3) { corner[0], corner[1], corner[2] }, assembly->hinge_point, k, rad);
      prism.p[i][0] = coordinate (turned, a);
      prism.p[i][1] = coordinate (turned, b);
    }
  return prism;
}

static double
corner_to_edge (const double p[2],
                const double a[2],
                const double b[2])
{
  const double du = b[0] - a[0], dv = b[1] - a[1], len2 = du * du + dv * dv;
  double t = len2 > 0 ? ((p[0] - a[0]) * du + (p[1] - a[1]) * dv) / len2 : 0;

  t = t < 0 ? 0 : t > 1 ? 1 : t;
  return hypot (p[0] - a[0] - t * du, p[1] - a[1] - t * dv);
}

/* > 0: how deep they overlap in the section; <= 0: some edge's line parts them. */
static double
section_overlap (const Prism *a,
                 const Prism *b)
{
  double depth = INFINITY;

  for (int side = 0; side < 2; side++)
    for (int i = 0; i < 4; i++)
      {
        const Prism *q = side ? b : a;
        const double nu = -(q->p[(i + 1) % 4][1] - q->p[i][1]),
                     nv = q->p[(i + 1) % 4][0] - q->p[i][0];
        const double length = hypot (nu, nv);
        double a0 = INFINITY, a1 = -INFINITY, b0 = INFINITY, b1 = -INFINITY;

        for (int j = 0; j < 4; j++)
          {
            const double x = (a->p[j][0] * nu + a->p[j][1] * nv) / length;
            const double y = (b->p[j][0] * nu + b->p[j][1] * nv) / length;

            a0 = fmin (a0, x);
            a1 = fmax (a1, x);
            b0 = fmin (b0, y);
            b1 = fmax (b1, y);
          }
        depth = fmin (depth, fmin (a1 - b0, b1 - a0));
      }
  return depth;
}

/* Distance in space; < 0: how deep they overlap. */
static double
signed_distance (const Prism *a,
                 const Prism *b)
{
  const double gap = fmax (a->from - b->to, b->from - a->to), depth = section_overlap (a, b);
  double least = INFINITY;

  if (depth > 0)
    return gap > 0 ? gap : -fmin (depth, -gap);
  for (int i = 0; i < 4; i++)
    for (int j = 0; j < 4; j++)
      {
        least = fmin (least, corner_to_edge (a->p[i], b->p[j], b->p[(j + 1) % 4]));
        least = fmin (least, corner_to_edge (b->p[i], a->p[j], a->p[(j + 1) % 4]));
      }
  return hypot (least, fmax (gap, 0));
}

typedef struct
{
  double least, reach;
  double first_deg; /* first sample that overlaps; -1 */
  guint pairs; /* looked at */
} Sampled;

static void
sample_pair (const HutAssembly *assembly,
             const HutSolid *solid,
             HutBox3 other,
             Sampled *sampled)
{
  const double end = assembly->design->shell.opening_angle_deg;
  const Prism fixed = prism_of (assembly, other, 0);

  for (double deg = 0; deg <= end + 1e-9; deg += STEP_DEG)
    {
      const Prism moved = prism_of (assembly, solid->box, deg * DEG);
      const double distance = signed_distance (&moved, &fixed);

      for (int i = 0; i < 4; i++)
        {
          const HutVec3 h = assembly->hinge_point, k = assembly->hinge_axis;
          const int along = fabs (k.x) > 0.5 ? 0 : fabs (k.y) > 0.5 ? 1 : 2;
          const double u = moved.p[i][0] - coordinate (h, along == 0 ? 1 : 0);
          const double v = moved.p[i][1] - coordinate (h, along == 2 ? 1 : 2);

          sampled->reach = fmax (sampled->reach, hypot (u, v) * STEP_DEG * DEG);
        }
      sampled->least = fmin (sampled->least, fmax (distance, 0));
      if (distance < -0.01 && (sampled->first_deg < 0 || deg < sampled->first_deg))
        sampled->first_deg = deg;
    }
}

static gboolean
is_baffle (const HutCheckCase *c,
           const HutBox3 *box)
{
  for (guint i = 0; i < c->assembly->strips->len; i++)
    if (memcmp (&g_array_index (c->assembly->strips, HutStrip, i).box, box, sizeof *box) == 0)
      return TRUE;
  return FALSE;
}

/* Leads bend, a hinge turns, and the base's half of a latch or stay is let go of or moves along. */
static gboolean
yields (const HutCheckCase *c,
        const HutSolid *solid)
{
  const HutDesign *design = c->assembly->design;
  HutItemSpan span;

  if (solid->kind != HUT_SOLID_HARDWARE)
    return solid->kind == HUT_SOLID_LEADS;
  span = hut_design_get_hardware_item (design, hut_design_get_hardware (design, solid->item))->span;
  return span == HUT_SPAN_HINGE || (span == HUT_SPAN_SEAM && solid->shell == HUT_SHELL_BASE);
}

/* Baffles of either shell are a family of their own. */
static gboolean
is_asked (const HutCheckCase *c,
          HutAround around,
          const HutSolid *solid,
          const HutBox3 *box)
{
  const gboolean baffle = solid->kind == HUT_SOLID_BAFFLE || is_baffle (c, box);

  if (solid->shell != HUT_SHELL_LID || yields (c, solid))
    return FALSE;
  return around == HUT_AROUND_BASE ? !baffle : around != HUT_AROUND_BAFFLE || baffle;
}

static Sampled
sample (const HutCheckCase *c,
        HutAround around,
        const GArray *boxes)
{
  const GArray *lists[] = { c->assembly->solids, c->parts->solids };
  Sampled sampled = { .least = INFINITY, .first_deg = -1 };

  for (guint l = 0; l < G_N_ELEMENTS (lists); l++)
    for (guint i = 0; i < lists[l]->len; i++)
      {
        const HutSolid *solid = &g_array_index (lists[l], HutSolid, i);

        for (guint k = 0; k < boxes->len; k++)
          if (is_asked (c, around, solid, &g_array_index (boxes, HutBox3, k)))
            {
              sample_pair (c->assembly, solid, g_array_index (boxes, HutBox3, k), &sampled);
              sampled.pairs++;
            }
      }
  return sampled;
}

static gboolean
is_own (HutAround around)
{
  return around == HUT_AROUND_BASE || around == HUT_AROUND_BAFFLE;
}

static GArray *
boxes_around (const HutCheckCase *c,
              HutAround around)
{
  const HutAssembly *assembly = c->assembly;
  const HutRoom *room = &assembly->design->room_mm;
  const GArray *lists[] = { assembly->solids, c->parts->solids };
  const double far = 1e5;
  GArray *boxes = g_array_new (FALSE, FALSE, sizeof (HutBox3));
  HutBox3 box = { { -far, -far, -far }, { far, far, far } };

  if (around == HUT_AROUND_MACHINE)
    for (guint i = 0; i < assembly->design->machine.bodies->len; i++)
      {
        box = hut_assembly_body_box (assembly,
                                     g_ptr_array_index (assembly->design->machine.bodies, i));
        g_array_append_val (boxes, box);
      }
  for (guint l = 0; is_own (around) && l < G_N_ELEMENTS (lists); l++)
    for (guint i = 0; i < lists[l]->len; i++)
      if (g_array_index (lists[l], HutSolid, i).shell == HUT_SHELL_BASE
          && !yields (c, &g_array_index (lists[l], HutSolid, i)))
        g_array_append_val (boxes, g_array_index (lists[l], HutSolid, i).box);
  if (around == HUT_AROUND_WALL && room->back >= 0)
    {
      box = (HutBox3) { { -far, assembly->outer_mm.y + room->back, -far }, { far, far, far } };
      g_array_append_val (boxes, box);
    }
  if (around == HUT_AROUND_WALL && room->front >= 0)
    {
      box = (HutBox3) { { -far, -far, -far }, { far, -room->front, far } };
      g_array_append_val (boxes, box);
    }
  if (around == HUT_AROUND_WALL && room->left >= 0)
    {
      box = (HutBox3) { { -far, -far, -far }, { -room->left, far, far } };
      g_array_append_val (boxes, box);
    }
  if (around == HUT_AROUND_WALL && room->right >= 0)
    {
      box = (HutBox3) { { assembly->outer_mm.x + room->right, -far, -far }, { far, far, far } };
      g_array_append_val (boxes, box);
    }
  if (around == HUT_AROUND_SHELF && room->above >= 0)
    {
      box = (HutBox3) { { -far, -far, room->above }, { far, far, far } };
      g_array_append_val (boxes, box);
    }
  return boxes;
}

static void
compare (guint seed,
         HutAround around,
         const HutApproach *approach,
         const Sampled *sampled)
{
  const double slack = 1e-6; /* walls at 1e5 and at 1e6 differ by rounding */

  if (!approach->exists)
    fail_msg ("seed %u, around %d: nothing found", seed, around);
  if (sampled->first_deg >= 0 && !approach->collides)
    fail_msg ("seed %u, around %d: overlaps at %g deg, not found", seed, around,
              sampled->first_deg);
  if (sampled->first_deg >= 0 && approach->angle_rad > sampled->first_deg * DEG + slack)
    fail_msg ("seed %u, around %d: overlaps at %g deg, told at %g", seed, around,
              sampled->first_deg, approach->angle_rad / DEG);
  if (approach->collides && sampled->first_deg < 0 && sampled->least > sampled->reach)
    fail_msg ("seed %u, around %d: no sample is nearer than %g", seed, around, sampled->least);
  if (!approach->collides
      && (approach->distance_mm > sampled->least + slack
          || approach->distance_mm < sampled->least - sampled->reach - slack))
    fail_msg ("seed %u, around %d: nearest %g, samples %g, step %g", seed, around,
              approach->distance_mm, sampled->least, sampled->reach);
}

static guint
on_lid (const HutCheckCase *c,
        HutSolidKind kind)
{
  guint count = 0;

  for (guint i = 0; i < c->assembly->solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (c->assembly->solids, HutSolid, i);

      count += solid->kind == kind && solid->shell == HUT_SHELL_LID;
    }
  return count;
}

static void
random_designs_agree_with_samples (void **state)
{
  guint hinged = 0, collisions = 0, hinges[4] = { 0 }, baffles = 0, hardware = 0;

  for (guint seed = 1000; seed < 1070; seed++)
    {
      HutDesign *design = hut_random_design (seed);
      g_autoptr(HutCheckCase) c = NULL;
      HutApproach approaches[HUT_AROUND_COUNT];

      design->shell.swing_clearance_mm = 0.0; /* so that the least of all is told */
      c = hut_check_case_new (design);
      hut_swing_find (c->assembly, c->parts, approaches);
      if (!c->assembly->whole || !c->assembly->hinged)
        continue;
      hinged++;
      hinges[c->assembly->design->shell.hinge]++;
      baffles += on_lid (c, HUT_SOLID_BAFFLE) > 0;
      hardware += on_lid (c, HUT_SOLID_HARDWARE) > 0;
      for (int around = 0; around < HUT_AROUND_COUNT; around++)
        {
          g_autoptr(GArray) boxes = boxes_around (c, (HutAround)around);
          Sampled sampled;

          sampled = sample (c, (HutAround)around, boxes);
          assert_int_equal (approaches[around].exists, sampled.pairs > 0);
          if (sampled.pairs == 0)
            continue;
          /* A machine that is in the way of the closed lid is told where it also is while moving.
           */
          if (around == HUT_AROUND_MACHINE && sampled.first_deg == 0)
            continue;
          compare (seed, (HutAround)around, &approaches[around], &sampled);
          collisions += approaches[around].collides;
        }
    }
  /* The test is worth something only when it met all of it. */
  assert_true (hinged > 35 && collisions > 10 && baffles > 10 && hardware > 10);
  for (int i = 0; i < 4; i++)
    assert_true (hinges[i] > 0);
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (hood_at_90_degrees_needs_its_own_height_behind),
    cmocka_unit_test (hood_past_90_degrees_needs_more),
    cmocka_unit_test (hood_hits_the_wall_behind_when_its_height_does_not_fit),
    cmocka_unit_test (shelf_is_nearest_when_the_front_edge_is_on_top),
    cmocka_unit_test (lid_front_passes_over_the_machine),
    cmocka_unit_test (low_seam_makes_the_front_hit_the_machine),
    cmocka_unit_test (base_keeps_the_seam_until_the_hinge_folds_it),
    cmocka_unit_test (hinge_outside_the_wall_gives_no_false_collision),
    cmocka_unit_test (hinge_inside_the_wall_makes_the_lid_hit_the_base),
    cmocka_unit_test (front_door_swings_its_width_into_the_room),
    cmocka_unit_test (lid_that_slides_past_a_wall_keeps_its_distance),
    cmocka_unit_test (nearness_of_the_closed_lid_does_not_hide_the_moving_one),
    cmocka_unit_test (lift_off_lid_does_not_swing),
    cmocka_unit_test (random_designs_agree_with_samples),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
