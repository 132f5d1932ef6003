/* src/app/hut-stock-row.h: one stock: its measured thickness, its sheet, and how the cutter cuts
 * it. SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-coupon-form.h"
#include <gtk/gtk.h>

#define HUT_TYPE_STOCK_ROW (hut_stock_row_get_type ())
G_DECLARE_FINAL_TYPE (HutStockRow, hut_stock_row, HUT, STOCK_ROW, GtkWidget)

/* @stock: its id. */
GtkWidget *hut_stock_row_new (HutSession *session, const char *stock);
/* (transfer none): where its coupon is written and read. */
HutCouponForm *hut_stock_row_get_coupon (HutStockRow *self);
/* Opens the row. */
void hut_stock_row_expand (HutStockRow *self);
