/* src/app/hut-choice-list.h: drop-down lists of names of any length.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>

/* Long names are cut with an ellipsis in the button and shown in the list; the button does not
 * widen its page. */
void hut_choice_list_style (GtkDropDown *control);
/* @names: (element-type utf8): shown unless they are shown already. */
void hut_choice_list_set (GtkDropDown *control, const GPtrArray *names);
