/* src/app/hut-recipe-table.h: how the cutter cuts each stock, as one table.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_RECIPE_TABLE (hut_recipe_table_get_type ())
G_DECLARE_FINAL_TYPE (HutRecipeTable, hut_recipe_table, HUT, RECIPE_TABLE, GtkWidget)

/* A row for each stock of the design; follows it. */
GtkWidget *hut_recipe_table_new (HutSession *session);
