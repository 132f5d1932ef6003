/* src/assembly/hut-fastener.c: each screw and bolt of the hardware, with what it goes through.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-face-plate.h"
#include "assembly/hut-fastener.h"
#include "assembly/hut-hardware-placing.h"

/* Lengths in which wood screws are sold, mm (common practice, no source). */
static const double wood_lengths_mm[] 
    = { HUT_WOOD_SCREW_SHORTEST_MM, 12, 13, 16, 20, 25, 30, 35, 40, 45, 50, 60 };

double
hut_wood_screw_length_mm (double most_mm)
{
  double length_mm = 0.0;

  for (guint i = 0; i < G_N_ELEMENTS (wood_lengths_mm); i++)
    if (wood_lengths_mm[i] <= most_mm)
      length_mm = wood_lengths_mm[i];
  return length_mm;
}

/* Wood screws of 3.5 and 4.5 have no metric bolt that is usual; screws of the half size under go.
 * */
double
hut_bolt_for_wood_screw_mm (double thread_mm)
{
  static const double bolts_mm[] = { 2, 2.5, 3, 4, 5, 6, 8 };
  double bolt_mm = bolts_mm[0];

  for (guint i = 0; i < G_N_ELEMENTS (bolts_mm); i++)
    if (bolts_mm[i] <= thread_mm)
      bolt_mm = bolts_mm[i];
  return bolt_mm;
}

/* Thickness of the strap that lies behind a point; 0 without. */
static double
strap_behind_mm (const HutPartSet *parts,
                 guint panel,
                 HutPoint at)
{
  for (guint i = 0; i < parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (parts->parts, i);

      if (part->kind == HUT_PART_STRAP && part->panel == panel
          && hut_region_contains (part->region, at))
        return part->thickness_mm;
    }
  return 0.0;
}

/* What is left of the panel at a screw, by its thickest reading; a pocket takes from it. */
static double
sheet_at_mm (const HutAssembly *assembly,
             const HutPlacedHardware *placed,
             HutPoint at,
             gboolean thinnest)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, placed->panel);
  const double sheet_mm
      = thinnest ? hut_stock_min_mm (panel->stock) : hut_stock_max_mm (panel->stock);
  const gboolean in_pocket
      = placed->bored
        && hut_point_distance_mm (at, placed->pocket_at) < placed->need.bit_mm / 2.0;

  return in_pocket ? sheet_mm - placed->need.depth_mm : sheet_mm;
}

static const HutStock *
plate_stock (const HutAssembly *assembly,
             const HutPlacedHardware *placed)
{
  return ((const HutPlate *) g_ptr_array_index (assembly->plates, placed->plate))->stock;
}

static void
measure (HutFastener *self)
{
  const HutScrew *screw = hut_screw_get (self->thread_mm);

  if (self->wood)
    {
      self->need_mm = self->grip_mm + self->sheet_mm + self->strap_mm - HUT_SCREW_POINT_MM;
      self->length_mm = hut_wood_screw_length_mm (self->need_mm);
      return;
    }
  self->need_mm = self->grip_mm + self->sheet_mm + self->strap_mm + HUT_BOLT_SHOWS_MM;
  if (screw != NULL)
    self->need_mm += screw->washer_thickness_mm + screw->nut_height_mm;
  self->length_mm = hut_screw_length_mm (self->thread_mm, self->need_mm);
}

static void
add_cut_screw (const HutAssembly *assembly,
               const HutPartSet *parts,
               const HutPlacedHardware *placed,
               const HutItemCut *cut,
               GArray *fasteners)
{
  const HutHardware *hardware = placed->hardware;
  HutFastener fastener = { .placed = placed,
                           .at = hut_placement_apply (&placed->placement, cut->at),
                           .thread_mm = cut->thread_mm,
                           .hole_mm = hut_hardware_hole_mm (hardware, cut),
                           .wood = cut->wood_screw && !hardware->bolted,
                           .grip_mm = cut->grip_mm };

  if (cut->wood_screw && hardware->bolted)
    fastener.thread_mm = hut_bolt_for_wood_screw_mm (cut->thread_mm);
  fastener.sunk = hardware->sunk && !fastener.wood;
  if (placed->plate >= 0)
    fastener.sheet_mm = hut_stock_max_mm (plate_stock (assembly, placed));
  else
    {
      fastener.sheet_mm = sheet_at_mm (assembly, placed, fastener.at, fastener.wood);
      if (placed->face == HUT_FACE_OUTSIDE)
        fastener.strap_mm = strap_behind_mm (parts, placed->panel, fastener.at);
    }
  measure (&fastener);
  g_array_append_val (fasteners, fastener);
}

static void
add_plate_screws (const HutAssembly *assembly,
                  const HutPartSet *parts,
                  const HutPlacedHardware *placed,
                  GArray *fasteners)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, placed->panel);
  const HutScrew *screw = hut_screw_get (HUT_PLATE_THREAD_MM);
  HutFacePlate shape;

  hut_face_plate_find (placed->item, &shape);
  for (guint i = 0; i < HUT_PLATE_SCREWS; i++)
    {
      HutFastener fastener
          = { .placed = placed,
              .of_plate = TRUE,
              .at = hut_placement_apply (&placed->placement, shape.screws[i]),
              .thread_mm = HUT_PLATE_THREAD_MM,
              .hole_mm = screw != NULL ? screw->hole_mm[placed->hardware->hole_class] : 0.0,
              .grip_mm = hut_stock_max_mm (plate_stock (assembly, placed)),
              .sheet_mm = hut_stock_max_mm (panel->stock) };

      if (placed->face == HUT_FACE_OUTSIDE)
        fastener.strap_mm = strap_behind_mm (parts, placed->panel, fastener.at);
      measure (&fastener);
      g_array_append_val (fasteners, fastener);
    }
}

void
hut_fasteners_append (const HutAssembly *assembly,
                      const HutPartSet *parts,
                      const HutPlacedHardware *placed,
                      GArray *fasteners)
{
  for (guint k = 0; k < placed->item->cuts->len; k++)
    {
      const HutItemCut *cut = &g_array_index (placed->item->cuts, HutItemCut, k);

      if (cut->role == HUT_CUT_SCREW && cut->leaf == placed->leaf)
        add_cut_screw (assembly, parts, placed, cut, fasteners);
    }
  if (placed->plate >= 0)
    add_plate_screws (assembly, parts, placed, fasteners);
}

GArray *
hut_fasteners_new (const HutAssembly *assembly,
                   const HutPartSet *parts)
{
  GArray *fasteners = g_array_new (FALSE, TRUE, sizeof (HutFastener));

  g_return_val_if_fail (assembly != NULL && parts != NULL, fasteners);

  for (guint i = 0; i < assembly->hardware->len; i++)
    hut_fasteners_append (assembly, parts, g_ptr_array_index (assembly->hardware, i), fasteners);
  return fasteners;
}
