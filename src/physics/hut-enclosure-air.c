/* src/physics/hut-enclosure-air.c: the fans of a design against its openings.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-enclosure-air.h"
#include "physics/hut-fitting.h"
#include "physics/hut-hood.h"
#include "physics/hut-orifice.h"
#include "physics/hut-purge.h"
#include "physics/hut-unit.h"

#define M_PER_MM 1e-3
#define M2_PER_MM2 1e-6
#define M3_PER_MM3 1e-9
/* What is left when a box counts as cleared, ratio: as published tables have it. */
#define CLEARED_RATIO 0.01

/* So much that no flow of a bench loses anything there. */
#define WIDE_OPEN_M2 1e6
#define FLAP_PA 5.0
#define GRILLE_OPEN_RATIO 0.6

const HutAirGuess hut_air_guess_usual = {
  .hose_m = 2,
  .bends = 2,
  .mixing_ratio = HUT_MIXING_USUAL_RATIO,
  .temperature_c = 20,
  .altitude_m = 0,
  .roughness_m = HUT_ROUGHNESS_HOSE_EXTENDED_M,
  .exit_loss_ratio = 1,
};

/* ---- what the design says -------------------------------------------------------------------- */

gboolean
hut_duct_is_told (const HutDesign *design)
{
  const HutDuct *duct = &design->shell.duct;

  return HUT_IS_KNOWN (duct->length_mm)
         && (duct->length_mm == 0
             || (duct->kind != HUT_DUCT_UNKNOWN && hut_duct_diameter_m (design) > 0));
}

double
hut_duct_diameter_m (const HutDesign *design)
{
  const HutMachine *machine = &design->machine;

  if (HUT_IS_KNOWN (design->shell.duct.diameter_mm))
    return design->shell.duct.diameter_mm * M_PER_MM;
  for (guint i = 0; i < machine->services->len; i++)
    {
      const HutService *service = g_ptr_array_index (machine->services, i);

      if (service->kind == HUT_SERVICE_DUCT && service->line_mm > 0)
        return service->line_mm * M_PER_MM;
    }
  return 0;
}

static double
roughness_m (HutDuctKind kind)
{
  switch (kind)
    {
    case HUT_DUCT_RIGID:
      return HUT_ROUGHNESS_SMOOTH_PLASTIC_M;
    case HUT_DUCT_SLACK_HOSE:
      return HUT_ROUGHNESS_HOSE_SLACK_M;
    case HUT_DUCT_HOSE:
    case HUT_DUCT_UNKNOWN:
    default:
      return HUT_ROUGHNESS_HOSE_EXTENDED_M;
    }
}

HutAirGuess
hut_air_guess_of (const HutDesign *design)
{
  HutAirGuess guess = hut_air_guess_usual;
  const HutDuct *duct = &design->shell.duct;

  if (HUT_IS_KNOWN (design->room_mm.temperature_c))
    guess.temperature_c = design->room_mm.temperature_c;
  if (HUT_IS_KNOWN (design->room_mm.altitude_m))
    guess.altitude_m = design->room_mm.altitude_m;
  if (HUT_IS_KNOWN (duct->diameter_mm))
    guess.diameter_m = duct->diameter_mm * M_PER_MM;
  if (!hut_duct_is_told (design))
    return guess;
  guess.hose_m = duct->length_mm * M_PER_MM;
  guess.bends = duct->bends;
  guess.roughness_m = roughness_m (duct->kind);
  if (duct->exit == HUT_EXIT_GRILLE)
    guess.exit_loss_ratio += hut_thick_grille_loss_ratio (GRILLE_OPEN_RATIO);
  if (duct->exit == HUT_EXIT_FLAP && guess.hose_m > 0)
    guess.fixed_pa = FLAP_PA;
  return guess;
}

/* ---- fans ---------------------------------------------------------------------------------- */

/* (transfer full) (nullable) */
static HutFanCurve *
curve_of (const HutItem *item)
{
  g_autofree HutPressurePoint *points = g_new (HutPressurePoint, item->curve->len + 1);

  for (guint i = 0; i < item->curve->len; i++)
    {
      const HutFanPoint *point = &g_array_index (item->curve, HutFanPoint, i);

      points[i] = (HutPressurePoint) { point->flow_m3_h * HUT_M3_H_M3_S, point->pressure_pa };
    }
  /* An item whose points make no curve is as good as none: the catalogue says what is wrong with
   * it. */
  return hut_fan_curve_new (points, item->curve->len, HUT_FAN_SMOOTH, HUT_FAN_RATED_KG_M3, NULL);
}

/* (transfer full) (element-type HutFanCurve): one for each fan; of one item the same curve again,
 * which is owned once.
 * @owned: gets the curves to be freed. */
static GPtrArray *
fans_of (const HutAssembly *assembly,
         GPtrArray *owned)
{
  GPtrArray *fans = g_ptr_array_new ();
  g_autoptr(GHashTable) by_item = g_hash_table_new (g_direct_hash, g_direct_equal);

  for (guint i = 0; i < assembly->hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (assembly->hardware, i);
      HutFanCurve *curve = g_hash_table_lookup (by_item, placed->item);

      if (placed->item->group != HUT_ITEM_FAN || placed->leaf != 0)
        continue;
      if (curve == NULL)
        {
          curve = curve_of (placed->item);
          if (curve == NULL)
            continue;
          g_ptr_array_add (owned, curve);
          g_hash_table_insert (by_item, (gpointer)placed->item, curve);
        }
      g_ptr_array_add (fans, curve);
    }
  return fans;
}

/* ---- ways in ------------------------------------------------------------------------------- */

static double
hole_m2 (const HutPlacedHole *hole)
{
  double area_m2 = 0;

  for (guint i = 0; i < hole->paths->len; i++)
    area_m2 += fabs (hut_path_area_mm2 (hole->paths->pdata[i])) * M2_PER_MM2;
  return area_m2;
}

/* Of the largest cutout of each fan; the rest are screw holes. */
static double
fan_m2 (const HutAssembly *assembly)
{
  double sum_m2 = 0;

  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);
      const HutPlacedHardware *placed = hole->source == HUT_HOLE_HARDWARE
                                            ? hut_assembly_get_hardware (assembly, hole->item)
                                            : NULL;
      double largest_mm2 = 0;

      if (placed == NULL || placed->item->group != HUT_ITEM_FAN || placed->item->curve->len == 0)
        continue;
      for (guint k = 0; k < hole->paths->len; k++)
        largest_mm2 = MAX (largest_mm2, fabs (hut_path_area_mm2 (hole->paths->pdata[k])));
      sum_m2 += largest_mm2 * M2_PER_MM2;
    }
  return sum_m2;
}

/* Open share of a hole: all of an opening that nothing fills, the free area of an item for air. */
static double
open_ratio (const HutAssembly *assembly,
            const HutPlacedHole *hole)
{
  const HutOpening *opening;
  const HutPlacedHardware *placed;

  if (!hole->cut)
    return 0;
  if (hole->source == HUT_HOLE_HARDWARE)
    {
      placed = hut_assembly_get_hardware (assembly, hole->item);
      return placed != NULL && placed->item->group != HUT_ITEM_FAN ? placed->item->free_area_ratio
                                                                   : 0;
    }
  opening = hole->source == HUT_HOLE_OPENING ? hut_design_get_opening (assembly->design, hole->item)
                                             : NULL;
  return opening != NULL && opening->serves == NULL ? 1 : 0;
}

/* The gap runs along the sides of the enclosure where the lid has a seam. */
double
hut_enclosure_seam_m (const HutAssembly *assembly)
{
  const HutShell *shell = &assembly->design->shell;
  const HutVec3 outer = assembly->outer_mm;
  double length_mm = 0;

  for (HutSide side = 0; side < HUT_SIDE_COUNT; side++)
    if (hut_shell_has_seam (shell, side))
      length_mm += shell->lid == HUT_LID_FRONT
                       ? (side == HUT_SIDE_LEFT || side == HUT_SIDE_RIGHT ? outer.z : outer.x)
                       : (side == HUT_SIDE_LEFT || side == HUT_SIDE_RIGHT ? outer.y : outer.x);
  return length_mm * M_PER_MM;
}

static double
seam_m2 (const HutAssembly *assembly)
{
  return hut_enclosure_seam_m (assembly) * assembly->design->shell.seam_gap_mm * M_PER_MM;
}

static double
free_m3 (const HutAssembly *assembly)
{
  const GPtrArray *bodies = assembly->design->machine.bodies;
  double free_mm3 = hut_box3_volume_mm3 (&assembly->inside);

  for (guint i = 0; i < bodies->len; i++)
    {
      const HutBody *body = g_ptr_array_index (bodies, i);

      if (body->kind != HUT_BODY_KEEP_OUT)
        free_mm3 -= hut_box3_volume_mm3 (&body->box);
    }
  return MAX (free_mm3, 0) * M3_PER_MM3;
}

/* ---- together ------------------------------------------------------------------------------ */

typedef struct
{
  GPtrArray *owned, *fans;
  HutDuctRun run;
  HutAirSystem system;
  double intake_m2, seam_m2;
} Model;

/* Without a width there is no duct. */
static HutDuctRun
run_of (const HutDesign *design,
        const HutAirGuess *guess)
{
  const double diameter_m
      = guess->diameter_m > 0 ? guess->diameter_m : hut_duct_diameter_m (design);

  if (!(diameter_m > 0) || !(guess->hose_m > 0))
    return (HutDuctRun) { 0 };
  return (HutDuctRun) {
    .diameter_m = diameter_m,
    .length_m = guess->hose_m,
    .roughness_m = guess->roughness_m,
    .loss_ratio = hut_fitting_loss_ratio (HUT_FITTING_ENTRY_FLUSH)
                  + guess->bends * hut_fitting_loss_ratio (HUT_FITTING_ELBOW)
                  + guess->exit_loss_ratio * hut_fitting_loss_ratio (HUT_FITTING_EXIT),
  };
}

static void
model_init (Model *self,
            const HutAssembly *assembly,
            const HutAirGuess *guess)
{
  *self = (Model){ .owned = g_ptr_array_new_with_free_func ((GDestroyNotify)hut_fan_curve_free) };
  self->fans = fans_of (assembly, self->owned);
  for (guint i = 0; i < assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (assembly->holes, i);

      self->intake_m2 += open_ratio (assembly, hole) * hole_m2 (hole);
    }
  self->seam_m2 = seam_m2 (assembly);
  self->run = run_of (assembly->design, guess);
  self->system = (HutAirSystem) {
    .air = hut_air_in_room (guess->temperature_c, guess->altitude_m),
    .intake_m2 = HUT_DISCHARGE_SHARP_RATIO * (self->intake_m2 + self->seam_m2),
    .runs = &self->run,
    .n_runs = self->run.diameter_m > 0 ? 1 : 0,
    .fixed_pa = guess->fixed_pa,
  };
}

static void
model_clear (Model *self)
{
  g_ptr_array_unref (self->fans);
  g_ptr_array_unref (self->owned);
}

static const HutFanCurve *const *
model_fans (const Model *self)
{
  return (const HutFanCurve *const *)self->fans->pdata;
}

HutEnclosureAir
hut_enclosure_air_find (const HutAssembly *assembly,
                        const HutAirGuess *guess)
{
  g_return_val_if_fail (assembly != NULL && guess != NULL, (HutEnclosureAir) { 0 });

  HutEnclosureAir air = { 0 };
  Model model;

  if (!assembly->whole)
    return air;
  model_init (&model, assembly, guess);
  air.fans = model.fans->len;
  air.fan_m2 = fan_m2 (assembly);
  air.intake_m2 = model.intake_m2;
  air.seam_m2 = model.seam_m2;
  air.free_m3 = free_m3 (assembly);
  air.moves
      = hut_operating_point_find (model_fans (&model), model.fans->len, &model.system, &air.point);
  if (air.moves)
    {
      air.suction_pa = hut_air_system_suction_pa (&model.system, air.point.flow_m3_s);
      air.face_m_s = hut_face_velocity_m_s (air.point.flow_m3_s, air.intake_m2 + air.seam_m2);
      air.changes_count = hut_air_changes_count (air.point.flow_m3_s, air.free_m3);
      air.purge_s
          = hut_purge_time_s (air.point.flow_m3_s, air.free_m3, CLEARED_RATIO, guess->mixing_ratio);
    }
  model_clear (&model);
  return air;
}

GArray *
hut_enclosure_air_curves (const HutAssembly *assembly,
                          const HutAirGuess *guess,
                          guint n)
{
  GArray *curves = g_array_new (FALSE, FALSE, sizeof (HutAirCurvePoint));
  Model model;

  g_return_val_if_fail (assembly != NULL && guess != NULL && n >= 2, curves);

  if (!assembly->whole)
    return curves;
  model_init (&model, assembly, guess);
  for (guint i = 0; i < n && model.fans->len > 0; i++)
    {
      const double flow_m3_s
          = hut_fans_free_m3_s (model_fans (&model), model.fans->len) * i / (n - 1);
      const HutAirCurvePoint point = {
        flow_m3_s,
        hut_fans_pressure_pa (model_fans (&model), model.fans->len, flow_m3_s,
                              model.system.air.density_kg_m3),
        hut_air_system_pressure_pa (&model.system, flow_m3_s),
      };

      g_array_append_val (curves, point);
    }
  model_clear (&model);
  return curves;
}

double
hut_enclosure_air_hold_m2 (const HutAssembly *assembly,
                           const HutAirGuess *guess)
{
  const double speed_m_s = HUT_HOLD_VELOCITY_M_S / HUT_DISCHARGE_SHARP_RATIO;
  HutOperatingPoint point = { 0 };
  Model model;

  g_return_val_if_fail (assembly != NULL && guess != NULL, 0);

  if (!assembly->whole)
    return 0;
  model_init (&model, assembly, guess);
  model.system.fixed_pa
      += hut_velocity_pressure_pa (speed_m_s, model.system.air.density_kg_m3);
  model.system.intake_m2 = WIDE_OPEN_M2;
  if (!hut_operating_point_find (model_fans (&model), model.fans->len, &model.system, &point))
    point.flow_m3_s = 0;
  model_clear (&model);
  return point.flow_m3_s / HUT_HOLD_VELOCITY_M_S;
}
