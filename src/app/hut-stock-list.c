/* src/app/hut-stock-list.c: the stocks of a design as choices of a form.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-stock-list.h"

void
hut_stock_list (const HutDesign *design,
                GPtrArray *ids,
                GPtrArray *names)
{
  g_return_if_fail (design != NULL && ids != NULL && names != NULL);

  for (guint i = 0; i < design->stocks->len; i++)
    {
      const HutStock *stock = g_ptr_array_index (design->stocks, i);

      g_ptr_array_add (ids, g_strdup (stock->id));
      g_ptr_array_add (names, g_strdup (stock->name));
    }
}
