/* src/app/hut-widget-look.c: what a widget that draws itself takes from its surroundings.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-widget-look.h"

/* Small text next to that of the interface, and its limits, px. Own choice. */
#define TEXT_RATIO 0.85
#define TEXT_MIN_PX 9.0
#define TEXT_MAX_PX 24.0

#define PLAIN_DPI 96.0
#define POINTS_PER_INCH 72.0

gboolean
hut_widget_is_dark (GtkWidget *widget)
{
  g_return_val_if_fail (GTK_IS_WIDGET (widget), FALSE);

  GdkRGBA text;

  gtk_style_context_get_color (gtk_widget_get_style_context (widget), &text);
  /* Source: relative luminance weights of ITU-R BT.709. */
  return 0.2126 * text.red + 0.7152 * text.green + 0.0722 * text.blue > 0.5;
}

gboolean
hut_widget_is_high_contrast (GtkWidget *widget)
{
  g_return_val_if_fail (GTK_IS_WIDGET (widget), FALSE);

  g_autofree char *theme = NULL;

  g_object_get (gtk_widget_get_settings (widget), "gtk-theme-name", &theme, NULL);
  return theme != NULL
         && (g_str_has_prefix (theme, "HighContrast") || g_str_has_prefix (theme, "Default-hc"));
}

double
hut_widget_text_px (GtkWidget *widget)
{
  g_return_val_if_fail (GTK_IS_WIDGET (widget), TEXT_MIN_PX);

  PangoContext *context = gtk_widget_get_pango_context (widget);
  const PangoFontDescription *font = pango_context_get_font_description (context);
  double dpi = pango_cairo_context_get_resolution (context);
  double size_px = (double)pango_font_description_get_size (font) / PANGO_SCALE;

  if (dpi <= 0.0)
    dpi = PLAIN_DPI;
  if (!pango_font_description_get_size_is_absolute (font))
    size_px *= dpi / POINTS_PER_INCH;
  return CLAMP (TEXT_RATIO * size_px, TEXT_MIN_PX, TEXT_MAX_PX);
}
