/* src/physics/hut-panel-sag.h: how far a lying panel of the enclosure sags under its own weight.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"
#include "physics/hut-physics.h"

typedef struct
{
  double sag_m;  /* in the long run */
  double span_m; /* the way between supports that it is measured against */
} HutPanelSag;

/**
 * hut_panel_sag_find:
 * @panel: index of a panel that lies: a top
 * @sag: (out caller-allocates): untouched when FALSE is returned
 *
 * All that is cut for the panel (its pieces, glazing, frames, straps) is spread over it as an even
 * load. Whole, it is a plate on four edges. With splices it is looked at as strips one way and the
 * other, each splice across a strip as a hinge with the stiffness of its strap, and the stiffer way
 * counts: both are less stiff than the plate. Holes take stiffness in the share of their area.
 * Creep is in it (see hut_stuff_creep_ratio ()).
 *
 * Returns: FALSE for material that is not known, and where splices without straps run both ways
 */
gboolean hut_panel_sag_find (const HutAssembly *assembly,
                             const HutPartSet *parts,
                             guint panel,
                             HutPanelSag *sag);
