/* src/assembly/hut-fastener.h: each screw and bolt of the hardware, with what it goes through.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A bolt goes through flange, panel (or pocket floor, or face plate), strap where one lies behind,
 * washer and nut, and sticks out a little; it is bought in the next standard length. A wood screw stays
 * in the panel: it is the longest that does not come through. */
#pragma once
#include "assembly/hut-part.h"

/* Thread that a bolt shows behind its nut, mm (common practice: one or two threads). */
#define HUT_BOLT_SHOWS_MM 2.0
/* A wood screw's point stays so far from the other face, mm (common practice, no source). */
#define HUT_SCREW_POINT_MM 1.5
/* The shortest usual wood screw, mm. */
#define HUT_WOOD_SCREW_SHORTEST_MM 10.0
/* Thread that a wood screw has in the panel at least, in diameters (from memory, EN 1995-1-1 8.7.1). */
#define HUT_SCREW_BITE_RATIO 4.0

typedef struct
{
  const HutPlacedHardware *placed; /* lent by the assembly */
  gboolean of_plate;    /* one of its face plate's own bolts */
  HutPoint at;          /* mm, panel frame */
  double thread_mm;
  double hole_mm;
  gboolean wood;        /* else a bolt with nut and washer */
  gboolean sunk;        /* its head is in the panel */
  double grip_mm;       /* of the hardware's own flange or leaf */
  double sheet_mm;      /* wood that it goes through, or into */
  double strap_mm;      /* of the strap behind it; 0 without */
  double need_mm;       /* bolt: what it goes through. Wood screw: the most that stays inside */
  double length_mm;     /* to buy; 0: there is no such length */
} HutFastener;

/* (transfer full) (element-type HutFastener): in the order of the design. */
GArray *hut_fasteners_new (const HutAssembly *assembly, const HutPartSet *parts) G_GNUC_WARN_UNUSED_RESULT;

/* Those of one leaf, also of a leaf that is only thought of. */
void hut_fasteners_append (const HutAssembly *assembly,
                           const HutPartSet *parts,
                           const HutPlacedHardware *placed,
                           GArray *fasteners);

/* The longest usual wood screw of at most @most_mm; 0 when there is none. */
double hut_wood_screw_length_mm (double most_mm);
/* Thread of the bolt that takes a wood screw's place: the thickest standard one that goes through the
 * same hole of the hardware. */
double hut_bolt_for_wood_screw_mm (double thread_mm);
