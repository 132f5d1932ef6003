/* tests/hut-random-design.h: valid random designs for the property tests of all layers.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design.h"
#include "hut-random.h"

typedef enum
{
  HUT_RANDOM_PLAIN = 0,
  HUT_RANDOM_OPENINGS = 1 << 0,    /* up to 8, of every shape */
  HUT_RANDOM_WINDOWS = 1 << 1,     /* up to 2 */
  HUT_RANDOM_WILD = 1 << 2,        /* some of them near or over an edge, or over each other */
  HUT_RANDOM_SMALL_BED = 1 << 3,   /* smaller than the largest panel: it must be split */
  HUT_RANDOM_LARGE_BED = 1 << 4,   /* every panel of a design that is not fitted fits whole */
  HUT_RANDOM_ONE_STOCK = 1 << 5,   /* all panels of one thickness */
  HUT_RANDOM_BY_HAND = 1 << 6,     /* never fitted: inside_mm is the inside */
  HUT_RANDOM_FITTED = 1 << 7,      /* always fitted */
  HUT_RANDOM_BAFFLES = 1 << 8,     /* strips along some sides of the seam */
  HUT_RANDOM_HARDWARE = 1 << 9,    /* up to 5 shipped items, on panels and across hinge line and seam */
} HutRandomFlags;

/**
 * hut_random_design:
 * @seed: any number; print it when a test fails
 *
 * A design that a file may hold: inside 120 .. 1200 mm (about, when fitted), walls 2.5 .. 18 mm with several
 * readings, every lid kind with every hinge that it allows, every bottom, laser and router, a bed of
 * 200 .. 1300 mm, with openings, windows, baffles, hardware and some wild ones. Most have no blocking finding; some do.
 *
 * Returns: (transfer full): the same for the same seed, on any machine
 */
HutDesign *hut_random_design (guint64 seed) G_GNUC_WARN_UNUSED_RESULT;
/* The same with a choice of what is in it. */
HutDesign *hut_random_design_with (guint64 seed, HutRandomFlags flags) G_GNUC_WARN_UNUSED_RESULT;
