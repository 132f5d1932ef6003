/* src/app/hut-coupon-form.h: writes the coupon of a stock and takes what was read off it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "app/hut-session.h"
#include <gtk/gtk.h>

#define HUT_TYPE_COUPON_FORM (hut_coupon_form_get_type ())
G_DECLARE_FINAL_TYPE (HutCouponForm, hut_coupon_form, HUT, COUPON_FORM, GtkWidget)

/* To be called once. @stock: its id. */
void hut_coupon_form_bind (HutCouponForm *self, HutSession *session, const char *stock);
/* Writes the coupon in a worker and tells how that went; the readings start anew. */
void hut_coupon_form_write (HutCouponForm *self, const char *folder);
