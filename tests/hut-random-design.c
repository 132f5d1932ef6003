/* tests/hut-random-design.c: valid random designs for the property tests of all layers.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-random-design.h"
#include "hut-random-hardware.h"
#include "hut-random-openings.h"
#include <math.h>

#define INSIDE_MIN_MM 120.0
#define INSIDE_MAX_MM 1200.0
#define WALL_MIN_MM 2.5
#define WALL_MAX_MM 18.0
#define BED_MIN_MM 200.0
#define BED_MAX_MM 1300.0
#define WALL_STOCKS_MAX 3
/* Walls, gap and hinge line around the inside that a large bed must also hold, mm. */
#define AROUND_INSIDE_MM 60.0

static double
round_to_hundredth (double value)
{
  return round (value * 100.0) / 100.0;
}

static void
set_text (char **member,
          const char *text)
{
  g_free (*member);
  *member = g_strdup (text);
}

/* Names as people type them: what XML must escape, and other scripts. */
static void
set_name (HutRandom *random,
          char **member,
          const char *plain)
{
  static const char *const odd[] = {
    "Lüfter & \"Rohr\" <3", "", "5 > 4 'so'", "機械", "tab\there", " two  spaces ",
  };

  set_text (member, hut_random_chance (random, 0.1)
                        ? odd[hut_random_below (random, G_N_ELEMENTS (odd))]
                        : plain);
}

static void
fill_readings (HutRandom *random,
               HutStock *stock,
               double thickness_mm)
{
  const guint n = 1 + hut_random_below (random, 6);
  const double spread_mm = hut_random_between (random, 0.0, 0.03 * thickness_mm);

  g_array_set_size (stock->readings_mm, 0);
  for (guint i = 0; i < n; i++)
    {
      const double raw_mm
          = hut_random_between (random, thickness_mm - spread_mm, thickness_mm + spread_mm);
      const double reading_mm = CLAMP (round_to_hundredth (raw_mm), WALL_MIN_MM, WALL_MAX_MM);

      g_array_append_val (stock->readings_mm, reading_mm);
    }
}

static void
fill_recipe (HutRandom *random,
             HutStock *stock,
             HutCutterKind cutter)
{
  const gboolean laser = cutter == HUT_CUTTER_LASER;

  stock->kerf_mm = laser ? round_to_hundredth (hut_random_between (random, 0.08, 0.45))
                         : round_to_hundredth (hut_random_between (random, 1.0, 3.2));
  stock->kerf_error_mm = round_to_hundredth (hut_random_between (random, 0.0, 0.06));
  stock->speed_mm_min = round (hut_random_octaves (random, 50.0, 3000.0));
  stock->power_percent = laser ? round (hut_random_between (random, 20.0, 100.0)) : 0.0;
  stock->passes = 1 + hut_random_below (random, 8);
  if (stock->passes % 4 == 0) /* some were measured with a coupon */
    {
      stock->allowance_error_mm = stock->kerf_error_mm;
      stock->fit_shift_mm = round_to_hundredth (stock->kerf_error_mm / 2.0 - 0.015);
    }
}

static HutStock *
random_stock (HutRandom *random,
              const char *id,
              HutMaterial material,
              double thickness_mm,
              HutCutterKind cutter)
{
  HutStock *stock = hut_stock_new (id);
  const double web_ratio = cutter == HUT_CUTTER_LASER ? hut_random_between (random, 0.3, 1.0)
                                                      : hut_random_between (random, 1.0, 1.5);

  set_name (random, &stock->name, id);
  stock->material = material;
  stock->nominal_mm = round (thickness_mm * 2.0) / 2.0;
  fill_readings (random, stock, thickness_mm);
  stock->sheet_width_mm = hut_random_typed (random, 300.0, 2500.0);
  stock->sheet_depth_mm = hut_random_typed (random, 200.0, 1250.0);
  stock->price = hut_random_chance (random, 0.3) ? 0.0 : hut_random_typed (random, 2.0, 120.0);
  stock->density_kg_m3 = round (hut_random_between (random, 400.0, 1200.0));
  stock->smallest_web_mm = round_to_hundredth (web_ratio * thickness_mm);
  stock->fit = (HutFitKind) hut_random_below (random, 3);
  stock->allowance_mm = round_to_hundredth (hut_random_between (random, -0.15, 0.2));
  fill_recipe (random, stock, cutter);
  /* From what is drawn already: further draws would change every design after it. */
  if (stock->passes % 3 == 0)
    {
      stock->grain = (guint) stock->speed_mm_min % 2 == 0 ? HUT_GRAIN_WIDTH : HUT_GRAIN_DEPTH;
      stock->grain_rule = (HutGrainRule) ((guint) stock->speed_mm_min % 3);
    }
  return stock;
}

/* "wall-1" ... and "clear"; some panels get a wall stock of their own. */
static void
fill_stocks (HutRandom *random,
             HutDesign *design,
             HutRandomFlags flags)
{
  const gboolean one = (flags & HUT_RANDOM_ONE_STOCK) != 0 || hut_random_chance (random, 0.4);
  const guint n = one ? 1 : 2 + hut_random_below (random, WALL_STOCKS_MAX - 1);

  for (guint i = 0; i < n; i++)
    {
      g_autofree char *id = g_strdup_printf ("wall-%u", i + 1);
      const double thickness_mm = hut_random_octaves (random, WALL_MIN_MM, WALL_MAX_MM);
      const HutMaterial material = (HutMaterial) hut_random_below (random, 3);

      g_ptr_array_add (design->stocks,
                       random_stock (random, id, material, thickness_mm, design->cutter.kind));
    }
  g_ptr_array_add (design->stocks, random_stock (random, "clear", HUT_MATERIAL_ACRYLIC,
                                                 hut_random_between (random, WALL_MIN_MM, 5.0),
                                                 design->cutter.kind));
  set_text (&design->shell.default_stock, "wall-1");
  for (int shell = 0; n > 1 && shell < HUT_SHELL_COUNT; shell++)
    for (int side = 0; side < HUT_SIDE_COUNT; side++)
      if (hut_random_chance (random, 0.7)
          && !(shell == HUT_SHELL_LID && side == HUT_SIDE_BOTTOM))
        design->shell.stock[shell][side]
            = g_strdup_printf ("wall-%u", 1 + hut_random_below (random, n));
}

/* Splits [0, size] into a body that stands there and its travel, mm. */
static void
split_motion (HutRandom *random,
              double size_mm,
              double *min_mm,
              double *max_mm,
              double *travel_mm)
{
  const double body_mm = round_to_hundredth (size_mm * hut_random_between (random, 0.2, 1.0));
  const gboolean backwards = hut_random_chance (random, 0.3);
  const double room_mm = size_mm - body_mm;

  *min_mm = backwards ? room_mm : 0.0;
  *max_mm = *min_mm + body_mm;
  *travel_mm = backwards ? -room_mm : room_mm;
}

static void
add_moving_body (HutRandom *random,
                 HutMachine *machine,
                 HutVec3 size_mm)
{
  HutBody *body = hut_body_new ("gantry", HUT_BODY_MOVING);

  split_motion (random, size_mm.x, &body->box.min.x, &body->box.max.x, &body->travel.x);
  split_motion (random, size_mm.y, &body->box.min.y, &body->box.max.y, &body->travel.y);
  split_motion (random, size_mm.z, &body->box.min.z, &body->box.max.z, &body->travel.z);
  set_name (random, &body->name, "Gantry");
  g_ptr_array_add (machine->bodies, body);
}

static void
add_services (HutRandom *random,
              HutMachine *machine,
              HutVec3 size_mm)
{
  const guint n = hut_random_below (random, 4);

  for (guint i = 0; i < n; i++)
    {
      g_autofree char *id = g_strdup_printf ("line-%u", i + 1);
      HutService *service = hut_service_new (id, (HutServiceKind) hut_random_below (random, 3));

      set_name (random, &service->name, id);
      service->line_mm = hut_random_typed (random, 2.0, 12.0);
      service->head_width_mm = service->line_mm + hut_random_typed (random, 0.0, 25.0);
      service->head_height_mm = service->line_mm + hut_random_typed (random, 0.0, 15.0);
      service->at.x = hut_random_typed (random, 0.0, size_mm.x);
      service->at.y = size_mm.y;
      service->at.z = hut_random_typed (random, 0.0, size_mm.z);
      g_ptr_array_add (machine->services, service);
    }
}

static double
maybe_known (HutRandom *random,
             double least,
             double most)
{
  return hut_random_chance (random, 0.3) ? HUT_UNKNOWN : hut_random_typed (random, least, most);
}

/* What the engineering asks for, now and then unknown. */
static void
fill_work (HutRandom *random,
           HutDesign *design)
{
  HutWork *work = &design->machine.work;
  HutShell *shell = &design->shell;

  *work = (HutWork) {
    .power_w = maybe_known (random, 0.0, 500.0),
    .lamp_w = maybe_known (random, 0.0, 40.0),
    .sound_db = maybe_known (random, 40.0, 95.0),
    .warmest_c = maybe_known (random, 30.0, 70.0),
    .glow = hut_random_below (random, HUT_GLOW_ARC + 1),
    .laser_w = maybe_known (random, 0.5, 40.0),
    .laser_nm = maybe_known (random, 400.0, 1400.0),
    .exposure_s = maybe_known (random, 10.0, 30000.0),
  };
  design->room_mm.temperature_c = maybe_known (random, 5.0, 35.0);
  design->room_mm.altitude_m = maybe_known (random, 0.0, 2500.0);
  shell->duct = (HutDuct) {
    .kind = hut_random_below (random, HUT_DUCT_SLACK_HOSE + 1),
    .diameter_mm = maybe_known (random, 50.0, 200.0),
    .length_mm = maybe_known (random, 0.0, 8000.0),
    .bends = hut_random_below (random, 6),
    .exit = hut_random_below (random, HUT_EXIT_GRILLE + 1),
  };
  shell->finishing.inside = hut_random_below (random, HUT_COAT_CLEAR + 1);
  shell->finishing.outside = hut_random_below (random, HUT_COAT_CLEAR + 1);
  shell->stay.kind = hut_random_below (random, HUT_STAY_PROP + 1);
  shell->stay.count = 1 + hut_random_below (random, 2);
  shell->stay.force_n = hut_random_chance (random, 0.7) ? HUT_UNKNOWN
                                                        : hut_random_typed (random, 40.0, 600.0);
}

/* A machine whose swept volume and clearances fill @inside_mm. */
static void
fill_machine (HutRandom *random,
              HutMachine *machine,
              HutVec3 inside_mm)
{
  const double most_mm = MIN (40.0, INSIDE_MIN_MM / 4.0);
  HutClearance *clearance = &machine->clearance_mm;

  clearance->left = hut_random_typed (random, 0.0, most_mm);
  clearance->right = hut_random_typed (random, 0.0, most_mm);
  clearance->front = hut_random_typed (random, 0.0, most_mm);
  clearance->back = hut_random_typed (random, 0.0, most_mm);
  clearance->top = hut_random_typed (random, 0.0, most_mm);

  const HutVec3 size_mm = {
    inside_mm.x - clearance->left - clearance->right,
    inside_mm.y - clearance->front - clearance->back,
    inside_mm.z - clearance->top,
  };
  HutBody *body = hut_body_new ("frame", HUT_BODY_STATIC);

  set_name (random, &machine->name, "Machine");
  set_name (random, &body->name, "Frame");
  body->box.max = (HutVec3) {
    size_mm.x, size_mm.y, round_to_hundredth (size_mm.z * hut_random_between (random, 0.2, 1.0)),
  };
  g_ptr_array_add (machine->bodies, body);
  add_moving_body (random, machine, size_mm);
  if (hut_random_chance (random, 0.4))
    {
      HutBody *loop = hut_body_new ("loop", HUT_BODY_KEEP_OUT);

      loop->box.min = (HutVec3) { size_mm.x / 2.0, size_mm.y / 2.0, size_mm.z / 2.0 };
      loop->box.max = size_mm;
      g_ptr_array_add (machine->bodies, loop);
    }
  machine->mass_kg = hut_random_typed (random, 0.5, 60.0);
  add_services (random, machine, size_mm);
}

static void
fill_room (HutRandom *random,
           HutRoom *room,
           HutVec3 inside_mm)
{
  double *sides_mm[] = { &room->left, &room->right, &room->front, &room->back };

  for (guint i = 0; i < G_N_ELEMENTS (sides_mm); i++)
    *sides_mm[i] = hut_random_chance (random, 0.5) ? HUT_ROOM_FREE
                                                   : hut_random_typed (random, 0.0, 500.0);
  room->above = hut_random_chance (random, 0.6)
                    ? HUT_ROOM_FREE
                    : inside_mm.z + hut_random_typed (random, AROUND_INSIDE_MM, 1500.0);
}

static void
fill_bed (HutRandom *random,
          HutCutter *cutter,
          HutVec3 inside_mm,
          HutRandomFlags flags)
{
  const double largest_mm = MAX (inside_mm.x, MAX (inside_mm.y, inside_mm.z));
  double least_mm = BED_MIN_MM, most_mm = BED_MAX_MM;

  if (flags & HUT_RANDOM_LARGE_BED)
    {
      least_mm = MIN (most_mm, largest_mm + AROUND_INSIDE_MM + 2.0 * cutter->margin_mm);
      most_mm = least_mm + 100.0;
    }
  else if (flags & HUT_RANDOM_SMALL_BED)
    {
      most_mm = MAX (least_mm + 1.0, MIN (0.8 * largest_mm, most_mm));
    }
  cutter->bed_width_mm = hut_random_typed (random, least_mm, most_mm);
  cutter->bed_depth_mm = hut_random_typed (random, least_mm, most_mm);
}

/* Lead-ins and tabs are for the tests that mean them: paths would not be outlines any more. */
static void
fill_cutting (HutRandom *random,
              HutCutter *cutter)
{
  if (hut_random_chance (random, 0.5))
    return;
  cutter->travel_mm_min = round (hut_random_octaves (random, 500.0, 30000.0));
  cutter->acceleration_mm_s2 = round (hut_random_octaves (random, 50.0, 5000.0));
  cutter->plunge_mm_min = round (hut_random_octaves (random, 50.0, 1000.0));
  cutter->spindle_rpm = round (hut_random_octaves (random, 5000.0, 30000.0));
  cutter->safe_mm = hut_random_typed (random, 2.0, 20.0);
  cutter->through_mm = hut_random_typed (random, 0.0, 1.0);
}

static void
fill_shell (HutRandom *random,
            HutShell *shell,
            HutVec3 inside_mm,
            HutRandomFlags flags)
{
  shell->fitted = (flags & HUT_RANDOM_FITTED) != 0
                  || ((flags & HUT_RANDOM_BY_HAND) == 0 && hut_random_chance (random, 0.4));
  shell->inside_mm = inside_mm;
  shell->lid = (HutLidKind) hut_random_below (random, 4);
  do
    shell->hinge = (HutHinge) hut_random_below (random, 4);
  while (shell->lid != HUT_LID_LIFT_OFF && !hut_lid_allows_hinge (shell->lid, shell->hinge));
  /* Leaves at least 40 mm of wall under and over the seam, whatever the thickness. */
  shell->seam_height_mm = hut_random_typed (random, 40.0 + WALL_MAX_MM, inside_mm.z - 40.0);
  shell->seam_gap_mm = hut_random_typed (random, 0.0, 3.0);
  shell->hinge_offset_mm = hut_random_chance (random, 0.4) ? 0.0
                                                           : hut_random_typed (random, 0.0, 20.0);
  shell->opening_angle_deg = hut_random_typed (random, 20.0, 170.0);
  shell->swing_clearance_mm = hut_random_typed (random, 0.0, 15.0);
  shell->bottom = (HutBottomKind) hut_random_below (random, 5);
  shell->ledge_mm = hut_random_typed (random, 10.0, 30.0);
}

static void
fill_joints (HutRandom *random,
             HutJoints *joints)
{
  joints->finger_ratio = hut_random_typed (random, 1.5, 6.0);
  joints->splice_length_ratio = hut_random_typed (random, 3.0, 5.0);
  joints->splice_width_ratio = hut_random_typed (random, 1.5, 3.0);
  joints->straps = hut_random_chance (random, 0.6);
  joints->strap_ratio = hut_random_typed (random, 8.0, 20.0);
}

static void
add_baffles (HutRandom *random,
             HutDesign *design)
{
  if (hut_random_chance (random, 0.4))
    return;
  for (int side = 0; side < HUT_SIDE_COUNT; side++)
    {
      HutBaffle *baffle;

      if (hut_random_chance (random, 0.3))
        continue;
      baffle = hut_baffle_new ((HutSide) side);
      baffle->shell = (HutShellId) hut_random_below (random, HUT_SHELL_COUNT);
      baffle->overlap_mm = hut_random_typed (random, 4.0, 40.0);
      baffle->gap_mm = hut_random_chance (random, 0.1) ? 0.0 : hut_random_typed (random, 0.5, 5.0);
      baffle->hold_mm = hut_random_typed (random, 5.0, 40.0);
      set_text (&baffle->stock, hut_random_chance (random, 0.5) ? "wall-1" : "clear");
      g_ptr_array_add (design->baffles, baffle);
    }
}

static double
random_inside_mm (HutRandom *random)
{
  const double size_mm = hut_random_octaves (random, INSIDE_MIN_MM, INSIDE_MAX_MM);

  return hut_random_chance (random, 0.9) ? round_to_hundredth (size_mm) : size_mm;
}

/* Of parts that are gone: those that are there lie where the packing puts them, as most tests of
 * sheets want it. */
static void
add_spots (HutRandom *random,
           HutDesign *design)
{
  const guint n = hut_random_chance (random, 0.3) ? 1 + hut_random_below (random, 3) : 0;

  for (guint i = 0; i < n; i++)
    {
      g_autofree char *part = g_strdup_printf ("former-%u", i + 1);
      HutSpot *spot = hut_spot_new (part);

      spot->sheet = 1 + hut_random_below (random, 4);
      spot->left_mm = hut_random_typed (random, 0.0, 300.0);
      spot->front_mm = hut_random_typed (random, 0.0, 300.0);
      spot->turn_deg = 90.0 * hut_random_below (random, 4);
      spot->width_mm = hut_random_typed (random, 20.0, 400.0);
      spot->height_mm = hut_random_typed (random, 20.0, 400.0);
      spot->kept = hut_random_chance (random, 0.5);
      g_ptr_array_add (design->spots, spot);
    }
}

HutDesign *
hut_random_design_with (guint64 seed,
                        HutRandomFlags flags)
{
  HutRandom random;
  HutDesign *design = hut_design_new_empty ();
  HutRandomPlacing placing;

  hut_random_init (&random, seed);

  /* One statement each: C leaves the order within an initializer to the compiler. */
  HutVec3 inside_mm;

  inside_mm.x = random_inside_mm (&random);
  inside_mm.y = random_inside_mm (&random);
  inside_mm.z = random_inside_mm (&random);

  set_name (&random, &design->name, "Random enclosure");
  set_name (&random, &design->cutter.name, "Cutter");
  design->cutter.kind = hut_random_chance (&random, 0.65) ? HUT_CUTTER_LASER : HUT_CUTTER_ROUTER;
  design->cutter.margin_mm = hut_random_typed (&random, 0.0, 15.0);
  design->cutter.part_gap_mm = hut_random_typed (&random, 0.5, 10.0);
  design->cutter.any_angle = hut_random_chance (&random, 0.2);
  fill_bed (&random, &design->cutter, inside_mm, flags);
  fill_stocks (&random, design, flags);
  fill_machine (&random, &design->machine, inside_mm);
  fill_room (&random, &design->room_mm, inside_mm);
  fill_shell (&random, &design->shell, inside_mm, flags);
  fill_joints (&random, &design->joints);
  hut_random_placing_init (&placing, &random, design, inside_mm, (flags & HUT_RANDOM_WILD) != 0);
  hut_random_add_openings (&placing, flags);
  if ((flags & HUT_RANDOM_BAFFLES) != 0)
    add_baffles (&random, design);
  if ((flags & HUT_RANDOM_HARDWARE) != 0)
    hut_random_add_hardware (&placing);
  hut_random_placing_clear (&placing);
  add_spots (&random, design);
  fill_work (&random, design);
  fill_cutting (&random, &design->cutter);
  return design;
}

HutDesign *
hut_random_design (guint64 seed)
{
  return hut_random_design_with (seed, HUT_RANDOM_OPENINGS | HUT_RANDOM_WINDOWS | HUT_RANDOM_WILD
                                           | HUT_RANDOM_BAFFLES | HUT_RANDOM_HARDWARE);
}
