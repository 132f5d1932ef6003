/* src/assembly/hut-part-private.h: how the files of the split build a part set.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "assembly/hut-part.h"

/* @id: copied; the label is derived from it. @stock: lent. The region is the caller's to set. */
HutPart *hut_part_new (HutPartKind kind, const char *id, guint panel, const HutStock *stock) G_GNUC_WARN_UNUSED_RESULT;
void hut_part_free (HutPart *self);
void hut_part_mark_free (HutPartMark *self);

/* Gives all parts their marks, and takes the holes out of them that are opened by hand. */
void hut_part_mark_add_all (const HutAssembly *assembly, HutPartSet *set);

/* Splits panel @panel or the plate @plate (index in the assembly) and appends the pieces. */
void hut_split_panel (const HutAssembly *assembly, guint panel, HutPartSet *set);
void hut_split_plate (const HutAssembly *assembly, guint plate, HutPartSet *set);
