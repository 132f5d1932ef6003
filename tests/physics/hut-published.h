/* tests/physics/hut-published.h: a table of computed against published values.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ids and sources: the list of check values that this project collected. "READ" sources were seen
 * in print or in open copies, "from memory" ones were not; "worked out" is no publication but an
 * example, whose result another program computed from the stated equation. */
#pragma once
#include <glib.h>

typedef struct
{
  GHashTable *ids; /* ids that were checked */
  guint rows, bad;
} HutPublished;

/* How far a value may be off: a share of the published one, or an absolute amount. */
typedef struct
{
  double relative_ratio, absolute;
} HutPublishedRoom;

#define REL(share) ((HutPublishedRoom) { share, 0 })
#define WITHIN(amount) ((HutPublishedRoom) { 0, amount })
#define EXACT REL (1e-9)

/* Prints a row: id, computed, published, relative difference, source; counts it, and as bad when it
 * is off. */
void hut_published_row (HutPublished *self,
                        const char *id,
                        double computed,
                        double published,
                        HutPublishedRoom room,
                        const char *source);

/* The sections of the list. */
void hut_published_air (HutPublished *self);
void hut_published_fan (HutPublished *self);
void hut_published_lid (HutPublished *self);
void hut_published_plate (HutPublished *self);
void hut_published_laser (HutPublished *self);
void hut_published_gap (HutPublished *self);
void hut_published_noise_and_heat (HutPublished *self);
void hut_published_board (HutPublished *self);
