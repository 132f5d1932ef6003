/* src/app/hut-number-entry.h: a field for one number with its unit and range.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Enter, leaving the field, Up and Down apply what is typed. What cannot be applied stays, marked,
 * with the reason under it or in "problem"; Escape goes back to the value.
 *
 * Properties: "quantity" (HutQuantity), "lower", "upper", "value" (double, in the kept unit),
 * "step" (double; 0: the usual one of the quantity), "blank-text" (what is shown for "blank-value";
 * empty text is then allowed and means it), "title" (for screen readers), "problem" (read only,
 * NULL when there is none), "shows-problem" and "shows-unit" (gboolean: whether the problem is
 * shown under the field, the unit beside it). Signals: "committed" (double value); "spinning"
 * (gboolean): around commits by a held key. */
#pragma once
#include "app/hut-units.h"
#include <gtk/gtk.h>

#define HUT_TYPE_NUMBER_ENTRY (hut_number_entry_get_type ())
G_DECLARE_FINAL_TYPE (HutNumberEntry, hut_number_entry, HUT, NUMBER_ENTRY, GtkWidget)

double hut_number_entry_get_value (HutNumberEntry *self);
/* Shows @value unless the user is typing; never emits "committed". */
void hut_number_entry_set_value (HutNumberEntry *self, double value);
/* As set_value, but drops what is typed: the field now speaks of something else. */
void hut_number_entry_reset (HutNumberEntry *self, double value);
/* TRUE when something is typed that has not been applied. */
gboolean hut_number_entry_is_pending (HutNumberEntry *self);
/* Applies what is typed. Returns: FALSE when it cannot be applied */
gboolean hut_number_entry_commit (HutNumberEntry *self);
/* (nullable) (transfer none) */
const char *hut_number_entry_get_problem (HutNumberEntry *self);
/* (transfer none): the text field inside. */
GtkEditable *hut_number_entry_get_editable (HutNumberEntry *self);
double hut_number_entry_get_lower (HutNumberEntry *self);
double hut_number_entry_get_upper (HutNumberEntry *self);
