/* src/design/hut-design.c: a whole design: made, copied, compared, looked up.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design.h"

/* What a new design starts from; own choice unless a source is named. */
#define MACHINE_WIDTH_MM 320.0
#define MACHINE_DEPTH_MM 300.0
#define MACHINE_HEIGHT_MM 220.0
#define MACHINE_MASS_KG 8.0
#define CLEARANCE_MM 20.0 /* a hand's flat; least clear height over a motion by common practice */
#define BED_WIDTH_MM 600.0
#define BED_DEPTH_MM 400.0
#define BED_MARGIN_MM 5.0 /* common practice for lasers, no source */
#define PART_GAP_MM 3.0   /* half of 6 mm sheet; common practice for lasers, no source */
/* High enough that the front of the opening hood passes over the machine. */
#define SEAM_HEIGHT_MM 140.0
#define SEAM_GAP_MM 1.0
#define OPENING_ANGLE_DEG 90.0
#define SWING_CLEARANCE_MM 5.0
#define LEDGE_MM 20.0
#define STRAP_RATIO 15.0

static GPtrArray *
new_bodies (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) hut_body_free);
}

static GPtrArray *
new_services (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) hut_service_free);
}

static GPtrArray *
new_stocks (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) hut_stock_free);
}

static GPtrArray *
new_baffles (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) hut_baffle_free);
}

static GPtrArray *
new_extras (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) hut_extra_free);
}

static GPtrArray *
new_windows (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) hut_window_free);
}

static GPtrArray *
new_openings (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) hut_opening_free);
}

static GPtrArray *
new_items (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) hut_item_free);
}

static GPtrArray *
new_hardware (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) hut_hardware_free);
}

static GPtrArray *
new_spots (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) hut_spot_free);
}

/**
 * hut_design_new_empty:
 *
 * Returns: (transfer full): a design with empty names and lists and all numbers 0
 */
HutDesign *
hut_design_new_empty (void)
{
  HutDesign *self = g_new0 (HutDesign, 1);

  self->name = g_strdup ("");
  self->machine.name = g_strdup ("");
  self->cutter.name = g_strdup ("");
  hut_cutter_fill_usual (&self->cutter);
  self->shell.default_stock = g_strdup ("");
  self->machine.bodies = new_bodies ();
  self->machine.services = new_services ();
  self->stocks = new_stocks ();
  self->baffles = new_baffles ();
  self->extras = new_extras ();
  self->windows = new_windows ();
  self->openings = new_openings ();
  self->items = new_items ();
  self->hardware = new_hardware ();
  self->bits_mm = g_array_new (FALSE, FALSE, sizeof (double));
  self->spots = new_spots ();
  return self;
}

static void
set_text (char **member,
          const char *text)
{
  g_free (*member);
  *member = g_strdup (text);
}

static void
fill_machine (HutMachine *self)
{
  HutBody *body = hut_body_new ("machine", HUT_BODY_STATIC);

  set_text (&self->name, "Machine");
  set_text (&body->name, "Machine");
  body->box.max = (HutVec3) { MACHINE_WIDTH_MM, MACHINE_DEPTH_MM, MACHINE_HEIGHT_MM };
  g_ptr_array_add (self->bodies, body);
  self->mass_kg = MACHINE_MASS_KG;
  self->work = hut_work_unknown;
  self->clearance_mm = (HutClearance) {
    .left = CLEARANCE_MM,
    .right = CLEARANCE_MM,
    .front = CLEARANCE_MM,
    .back = CLEARANCE_MM,
    .top = CLEARANCE_MM,
  };
}

static void
fill_cutter (HutCutter *self)
{
  set_text (&self->name, "Laser cutter");
  self->kind = HUT_CUTTER_LASER;
  self->bed_width_mm = BED_WIDTH_MM;
  self->bed_depth_mm = BED_DEPTH_MM;
  self->margin_mm = BED_MARGIN_MM;
  self->part_gap_mm = PART_GAP_MM;
}

void
hut_cutter_fill_usual (HutCutter *self)
{
  g_return_if_fail (self != NULL);

  self->lead_in_mm = 0.0;
  self->tabs = FALSE;
  self->travel_mm_min = HUT_CUTTER_TRAVEL_MM_MIN;
  self->acceleration_mm_s2 = HUT_CUTTER_ACCELERATION_MM_S2;
  self->plunge_mm_min = HUT_CUTTER_PLUNGE_MM_MIN;
  self->spindle_rpm = HUT_CUTTER_SPINDLE_RPM;
  self->safe_mm = HUT_CUTTER_SAFE_MM;
  self->through_mm = HUT_CUTTER_THROUGH_MM;
}

/* Clear cast acrylic, 3 mm. Kerf, density and sheet: common practice, no source. */
static HutStock *
new_glazing (void)
{
  HutStock *self = hut_stock_new ("acrylic");

  set_text (&self->name, "Clear acrylic 3 mm");
  self->material = HUT_MATERIAL_ACRYLIC;
  self->nominal_mm = 3.0;
  g_array_index (self->readings_mm, double, 0) = 2.95;
  self->sheet_width_mm = 600.0;
  self->sheet_depth_mm = 400.0;
  self->density_kg_m3 = 1190.0;
  self->smallest_web_mm = 3.0;
  self->fit = HUT_FIT_SLIP;
  self->allowance_mm = 0.03;
  self->kerf_mm = 0.15;
  self->speed_mm_min = 700.0;
  return self;
}

static void
fill_shell (HutShell *self)
{
  self->fitted = TRUE;
  self->inside_mm = (HutVec3) {
    MACHINE_WIDTH_MM + 2.0 * CLEARANCE_MM,
    MACHINE_DEPTH_MM + 2.0 * CLEARANCE_MM,
    MACHINE_HEIGHT_MM + CLEARANCE_MM,
  };
  self->lid = HUT_LID_HOOD;
  self->hinge = HUT_HINGE_BACK;
  self->seam_height_mm = SEAM_HEIGHT_MM;
  self->seam_gap_mm = SEAM_GAP_MM;
  self->opening_angle_deg = OPENING_ANGLE_DEG;
  self->swing_clearance_mm = SWING_CLEARANCE_MM;
  self->bottom = HUT_BOTTOM_JOINTED;
  self->ledge_mm = LEDGE_MM;
  self->duct = hut_duct_unknown;
  self->stay = hut_stay_none;
  set_text (&self->default_stock, "plywood");
}

HutDesign *
hut_design_new (void)
{
  HutDesign *self = hut_design_new_empty ();
  HutStock *wall = hut_stock_new ("plywood");

  set_text (&self->name, "Enclosure");
  fill_machine (&self->machine);
  self->room_mm = (HutRoom) {
    .left = HUT_ROOM_FREE,
    .right = HUT_ROOM_FREE,
    .front = HUT_ROOM_FREE,
    .back = HUT_ROOM_FREE,
    .above = HUT_ROOM_FREE,
    .temperature_c = HUT_UNKNOWN,
    .altitude_m = HUT_UNKNOWN,
  };
  fill_cutter (&self->cutter);
  set_text (&wall->name, "Plywood 6 mm");
  g_ptr_array_add (self->stocks, wall);
  g_ptr_array_add (self->stocks, new_glazing ());
  fill_shell (&self->shell);
  self->joints = (HutJoints) {
    .finger_ratio = 3.0,
    .splice_length_ratio = 3.0,
    .splice_width_ratio = 2.0,
    .straps = TRUE,
    .strap_ratio = STRAP_RATIO,
  };
  g_array_unref (self->bits_mm);
  self->bits_mm = hut_bits_new_common ();
  return self;
}

static GPtrArray *
copy_items (GPtrArray *copies,
            const GPtrArray *items,
            gpointer (*copy) (gconstpointer))
{
  for (guint i = 0; i < items->len; i++)
    g_ptr_array_add (copies, copy (g_ptr_array_index (items, i)));
  return copies;
}

static gpointer
copy_body (gconstpointer item)
{
  return hut_body_copy (item);
}

static gpointer
copy_service (gconstpointer item)
{
  return hut_service_copy (item);
}

static gpointer
copy_stock (gconstpointer item)
{
  return hut_stock_copy (item);
}

static gpointer
copy_baffle (gconstpointer item)
{
  return hut_baffle_copy (item);
}

static gpointer
copy_extra (gconstpointer item)
{
  return hut_extra_copy (item);
}

static gpointer
copy_window (gconstpointer item)
{
  return hut_window_copy (item);
}

static gpointer
copy_opening (gconstpointer item)
{
  return hut_opening_copy (item);
}

static gpointer
copy_item (gconstpointer item)
{
  return hut_item_copy (item);
}

static gpointer
copy_hardware (gconstpointer item)
{
  return hut_hardware_copy (item);
}

static gpointer
copy_spot (gconstpointer item)
{
  return hut_spot_copy (item);
}

HutDesign *
hut_design_copy (const HutDesign *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  HutDesign *copy = g_memdup2 (self, sizeof *self);

  copy->name = g_strdup (self->name);
  copy->machine.name = g_strdup (self->machine.name);
  copy->machine.bodies = copy_items (new_bodies (), self->machine.bodies, copy_body);
  copy->machine.services = copy_items (new_services (), self->machine.services, copy_service);
  copy->cutter.name = g_strdup (self->cutter.name);
  copy->stocks = copy_items (new_stocks (), self->stocks, copy_stock);
  copy->baffles = copy_items (new_baffles (), self->baffles, copy_baffle);
  copy->extras = copy_items (new_extras (), self->extras, copy_extra);
  copy->windows = copy_items (new_windows (), self->windows, copy_window);
  copy->openings = copy_items (new_openings (), self->openings, copy_opening);
  copy->items = copy_items (new_items (), self->items, copy_item);
  copy->hardware = copy_items (new_hardware (), self->hardware, copy_hardware);
  copy->bits_mm = g_array_copy (self->bits_mm);
  copy->spots = copy_items (new_spots (), self->spots, copy_spot);
  copy->shell.default_stock = g_strdup (self->shell.default_stock);
  for (int shell = 0; shell < HUT_SHELL_COUNT; shell++)
    for (int side = 0; side < HUT_SIDE_COUNT; side++)
      copy->shell.stock[shell][side] = g_strdup (self->shell.stock[shell][side]);
  return copy;
}

void
hut_design_free (HutDesign *self)
{
  if (self == NULL)
    return;
  g_free (self->name);
  g_free (self->machine.name);
  g_ptr_array_unref (self->machine.bodies);
  g_ptr_array_unref (self->machine.services);
  g_free (self->cutter.name);
  g_ptr_array_unref (self->stocks);
  g_ptr_array_unref (self->baffles);
  g_ptr_array_unref (self->extras);
  g_ptr_array_unref (self->windows);
  g_ptr_array_unref (self->openings);
  g_ptr_array_unref (self->items);
  g_ptr_array_unref (self->hardware);
  g_array_unref (self->bits_mm);
  g_ptr_array_unref (self->spots);
  g_free (self->shell.default_stock);
  for (int shell = 0; shell < HUT_SHELL_COUNT; shell++)
    for (int side = 0; side < HUT_SIDE_COUNT; side++)
      g_free (self->shell.stock[shell][side]);
  g_free (self);
}

/* ---- look-ups ------------------------------------------------------------------------------- */

HutStock *
hut_design_get_stock (const HutDesign *self,
                      const char *id)
{
  g_return_val_if_fail (self != NULL, NULL);

  for (guint i = 0; id != NULL && i < self->stocks->len; i++)
    {
      HutStock *stock = g_ptr_array_index (self->stocks, i);

      if (g_strcmp0 (stock->id, id) == 0)
        return stock;
    }
  return NULL;
}

HutStock *
hut_design_get_panel_stock (const HutDesign *self,
                            HutPanelId panel)
{
  g_return_val_if_fail (self != NULL, NULL);
  g_return_val_if_fail ((guint) panel.shell < HUT_SHELL_COUNT, NULL);
  g_return_val_if_fail ((guint) panel.side < HUT_SIDE_COUNT, NULL);

  const char *own = self->shell.stock[panel.shell][panel.side];

  return hut_design_get_stock (self, own != NULL ? own : self->shell.default_stock);
}

HutOpening *
hut_design_get_opening (const HutDesign *self,
                        const char *id)
{
  g_return_val_if_fail (self != NULL, NULL);

  for (guint i = 0; id != NULL && i < self->openings->len; i++)
    {
      HutOpening *opening = g_ptr_array_index (self->openings, i);

      if (g_strcmp0 (opening->id, id) == 0)
        return opening;
    }
  return NULL;
}

HutWindow *
hut_design_get_window (const HutDesign *self,
                       const char *id)
{
  g_return_val_if_fail (self != NULL, NULL);

  for (guint i = 0; id != NULL && i < self->windows->len; i++)
    {
      HutWindow *window = g_ptr_array_index (self->windows, i);

      if (g_strcmp0 (window->id, id) == 0)
        return window;
    }
  return NULL;
}

HutBody *
hut_design_get_body (const HutDesign *self,
                     const char *id)
{
  g_return_val_if_fail (self != NULL, NULL);

  for (guint i = 0; id != NULL && i < self->machine.bodies->len; i++)
    {
      HutBody *body = g_ptr_array_index (self->machine.bodies, i);

      if (g_strcmp0 (body->id, id) == 0)
        return body;
    }
  return NULL;
}

HutService *
hut_design_get_service (const HutDesign *self,
                        const char *id)
{
  g_return_val_if_fail (self != NULL, NULL);

  for (guint i = 0; id != NULL && i < self->machine.services->len; i++)
    {
      HutService *service = g_ptr_array_index (self->machine.services, i);

      if (g_strcmp0 (service->id, id) == 0)
        return service;
    }
  return NULL;
}

HutPosition *
hut_design_get_position (const HutDesign *self,
                         const char *id)
{
  HutOpening *opening = hut_design_get_opening (self, id);
  HutWindow *window = opening == NULL ? hut_design_get_window (self, id) : NULL;
  HutHardware *hardware = hut_design_get_hardware (self, id);

  if (opening != NULL)
    return &opening->at;
  if (window != NULL)
    return &window->at;
  return hardware != NULL ? &hardware->at : NULL;
}

static gboolean
id_is_taken (const HutDesign *self,
             const char *id)
{
  return hut_design_get_stock (self, id) != NULL || hut_design_get_opening (self, id) != NULL
         || hut_design_get_window (self, id) != NULL || hut_design_get_body (self, id) != NULL
         || hut_design_get_service (self, id) != NULL || hut_design_get_hardware (self, id) != NULL
         || hut_design_get_extra (self, id) != NULL;
}

char *
hut_design_dup_free_id (const HutDesign *self,
                        const char *stem)
{
  g_return_val_if_fail (self != NULL && stem != NULL, NULL);

  if (!id_is_taken (self, stem))
    return g_strdup (stem);
  for (guint n = 2;; n++)
    {
      g_autofree char *id = g_strdup_printf ("%s-%u", stem, n);

      if (!id_is_taken (self, id))
        return g_steal_pointer (&id);
    }
}
