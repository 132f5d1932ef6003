/* src/app/hut-stock-list.h: the stocks of a design as choices of a form.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-form.h"

/* A HutFormList of all stocks. */
void hut_stock_list (const HutDesign *design, GPtrArray *ids, GPtrArray *names);
