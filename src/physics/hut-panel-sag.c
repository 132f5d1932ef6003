/* src/physics/hut-panel-sag.c: how far a lying panel of the enclosure sags under its own weight.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-panel-sag.h"
#include "physics/hut-beam.h"
#include "physics/hut-mass.h"
#include "physics/hut-plate-bend.h"
#include "physics/hut-stuff.h"

#define M_PER_MM 1e-3
#define MM2_PER_M2 1e6

typedef struct
{
  const HutAssembly *assembly;
  const HutPartSet *parts;
  const HutPanel *panel;
  guint index;
  double load_pa;
  double modulus_pa; /* less what the holes take */
} Lying;

static double
weight_pa (const HutAssembly *assembly,
           const HutPartSet *parts,
           guint index)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, index);
  double mass_kg = 0;

  for (guint i = 0; i < parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (parts->parts, i);

      if (part->panel == index && part->shell == panel->id.shell)
        mass_kg += hut_part_mass (part, assembly).mass_kg;
    }
  return mass_kg * HUT_GRAVITY_M_S2 * MM2_PER_M2 / (panel->width_mm * panel->height_mm);
}

/* The splices across one way as hinges. FALSE when one of them has no strap. @vertical: splices at
 * u = const. */
static gboolean
find_hinges (const Lying *self,
             gboolean vertical,
             GArray *hinges)
{
  for (guint i = 0; i < self->parts->splices->len; i++)
    {
      const HutSplice *splice = &g_array_index (self->parts->splices, HutSplice, i);
      HutSpliceHinge hinge = { .at_m = splice->at_mm * M_PER_MM };

      if (splice->panel != self->index || splice->of != HUT_PART_PANEL
          || splice->vertical != vertical)
        continue;
      if (!self->assembly->design->joints.straps)
        return FALSE;
      /* A metre of strap, of the panel's own stock, over the fingers. */
      hinge.stiffness_nm = hut_strap_stiffness_nm (
          self->modulus_pa, 1, self->panel->thickness_mm * M_PER_MM,
          MAX (2 * splice->reach_mm, self->panel->thickness_mm) * M_PER_MM);
      g_array_append_val (hinges, hinge);
    }
  return TRUE;
}

/* A strip a metre wide over one way of the panel, m; INFINITY when a splice does not hold. */
static double
strip_sag_m (const Lying *self,
             gboolean along_u,
             gboolean *spliced)
{
  const double span_m = (along_u ? self->panel->width_mm : self->panel->height_mm) * M_PER_MM;
  g_autoptr(GArray) hinges = g_array_new (FALSE, FALSE, sizeof (HutSpliceHinge));
  const gboolean held = find_hinges (self, along_u, hinges);

  *spliced = *spliced || !held || hinges->len > 0;
  if (!held)
    return INFINITY;
  return hut_beam_spliced_sag_m (
      span_m, self->load_pa,
      hut_strip_bending_n_m2 (self->modulus_pa, 1, self->panel->thickness_mm * M_PER_MM),
      (const HutSpliceHinge *)(gpointer)hinges->data, hinges->len);
}

gboolean
hut_panel_sag_find (const HutAssembly *assembly,
                    const HutPartSet *parts,
                    guint panel,
                    HutPanelSag *sag)
{
  g_return_val_if_fail (assembly != NULL && parts != NULL && sag != NULL, FALSE);
  g_return_val_if_fail (panel < assembly->panels->len, FALSE);

  const HutPanel *top = g_ptr_array_index (assembly->panels, panel);
  const HutMaterial material = top->stock->material;
  const double w_m = top->width_mm * M_PER_MM, h_m = top->height_mm * M_PER_MM;
  const double solid_ratio = hut_region_area_mm2 (top->region) / (top->width_mm * top->height_mm);
  const Lying self = { assembly,
                       parts,
                       top,
                       panel,
                       weight_pa (assembly, parts, panel),
                       hut_stuff_modulus_pa (material) * solid_ratio };
  const HutPlateSheet plate = { HUT_PLATE_SUPPORTED,
                                w_m,
                                h_m,
                                top->thickness_mm * M_PER_MM,
                                self.modulus_pa,
                                hut_stuff_poisson_ratio (material) };
  gboolean spliced = FALSE;
  const double u_m = strip_sag_m (&self, TRUE, &spliced),
               v_m = strip_sag_m (&self, FALSE, &spliced);
  HutPanelSag found;

  if (!(self.modulus_pa > 0))
    return FALSE;
  found.sag_m = spliced ? MIN (u_m, v_m) : hut_plate_sag_m (&plate, self.load_pa);
  found.span_m = spliced ? (u_m < v_m ? w_m : h_m) : MIN (w_m, h_m);
  found.sag_m *= hut_stuff_creep_ratio (material);
  if (!isfinite (found.sag_m))
    return FALSE;
  *sag = found;
  return TRUE;
}
