/* src/app/hut-form.h: binds the controls of a page to members of the design.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Each commit of a control is one edit of the session; when the design changes, the controls are
 * filled again without disturbing what is being typed. A form speaks of the design itself or of one
 * item in it (a body, a stock, an opening), found by id.
 * Labels are what Undo shows: English msgids (N_). */
#pragma once
#include "app/hut-number-entry.h"
#include "app/hut-session.h"

#define HUT_TYPE_FORM (hut_form_get_type ())
G_DECLARE_FINAL_TYPE (HutForm, hut_form, HUT, FORM, GObject)

/* Finds what the form speaks of. Returns: (nullable): lent by @design */
typedef gpointer (*HutFormLocate) (const HutDesign *design, const char *item);

/* @locate: NULL for the design itself. */
HutForm *hut_form_new (HutSession *session, HutFormLocate locate) G_GNUC_WARN_UNUSED_RESULT;
HutSession *hut_form_get_session (HutForm *self);
/* Speaks of another item from now on; what was being typed is applied to the old one first. */
void hut_form_set_item (HutForm *self, const char *item);
const char *hut_form_get_item (HutForm *self);
/* What the form speaks of, or NULL; lent until the design changes. */
gconstpointer hut_form_peek (HutForm *self);

/* A double at @offset. */
void hut_form_add_number (HutForm *self, HutNumberEntry *entry, gsize offset, const char *label);
/* A guint at @offset. */
void hut_form_add_count (HutForm *self, HutNumberEntry *entry, gsize offset, const char *label);
typedef double (*HutFormGet) (gconstpointer target);
typedef void (*HutFormSet) (gpointer target, double value);
/* A number that is worked out. */
void hut_form_add_derived (HutForm *self,
                           HutNumberEntry *entry,
                           HutFormGet get,
                           HutFormSet set,
                           const char *label);
/* A gboolean at @offset. */
void hut_form_add_switch (HutForm *self, GtkSwitch *control, gsize offset, const char *label);
/* An enum at @offset whose values are the positions in the list. */
void hut_form_add_choice (HutForm *self, GtkDropDown *control, gsize offset, const char *label);

/* Values and names that a choice can have at present: adds to both. */
typedef void (*HutFormChoices) (const HutDesign *design, GArray *values, GPtrArray *names);
typedef int (*HutFormGetChoice) (gconstpointer target);
/* May ask the session of @self for what is derived from the design as it was before. */
typedef void (*HutFormSetChoice) (HutForm *self, gpointer target, int value);
/* A choice that is worked out, or whose list changes. @choices: NULL for the fixed list of the
 * control, whose positions are then the values. @values: int. */
void hut_form_add_derived_choice (HutForm *self,
                                  GtkDropDown *control,
                                  HutFormChoices choices,
                                  HutFormGetChoice get,
                                  HutFormSetChoice set,
                                  const char *label);
/* A char * at @offset; GtkEntry. */
void hut_form_add_text (HutForm *self, GtkEntry *entry, gsize offset, const char *label);

/* Ids and names that a reference can have: adds to both. */
typedef void (*HutFormList) (const HutDesign *design, GPtrArray *ids, GPtrArray *names);
/* A char * at @offset that holds the id of another item. @none: msgid for "no item", or NULL when
 * there must be one. An id that names no item is shown as such. */
void hut_form_add_reference (HutForm *self,
                             GtkDropDown *control,
                             gsize offset,
                             HutFormList list,
                             const char *none,
                             const char *label);

/* Runs after each edit of this form, on the changed copy: puts right what it made impossible. */
typedef void (*HutFormRepair) (HutDesign *design);
void hut_form_set_repair (HutForm *self, HutFormRepair repair);

/* Fills all controls from the design. Done by itself when the session derives anew. */
void hut_form_fill (HutForm *self);
/* Applies what is being typed. */
void hut_form_commit (HutForm *self);
