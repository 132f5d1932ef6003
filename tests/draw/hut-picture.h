/* tests/draw/hut-picture.h: a picture in memory that tests draw on and look at.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-palette.h"
#include <cairo.h>
#include <glib.h>
#include <math.h>

typedef struct
{
  cairo_surface_t *surface;
  cairo_t *cr;
  int width, height;
} HutPicture;

static inline HutPicture
hut_picture_new (int width,
                 int height)
{
  HutPicture self = { .width = width, .height = height };

  self.surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, width, height);
  self.cr = cairo_create (self.surface);
  return self;
}

static inline void
hut_picture_clear (HutPicture *self)
{
  cairo_destroy (self->cr);
  cairo_surface_destroy (self->surface);
}

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (HutPicture, hut_picture_clear)

static inline HutColour
hut_picture_at (const HutPicture *self,
                int x,
                int y)
{
  cairo_surface_flush (self->surface);
  const guint8 *data = cairo_image_surface_get_data (self->surface);
  const int stride = cairo_image_surface_get_stride (self->surface);
  guint32 argb;

  memcpy (&argb, data + y * stride + x * 4, sizeof argb);
  return (HutColour){ ((argb >> 16) & 0xff) / 255.0, ((argb >> 8) & 0xff) / 255.0,
                      (argb & 0xff) / 255.0 };
}

/* Sum of opacity over all pixels, px2: what has been drawn on a picture that started empty. */
static inline double
hut_picture_ink_px2 (const HutPicture *self)
{
  double sum = 0.0;

  cairo_surface_flush (self->surface);
  const guint8 *data = cairo_image_surface_get_data (self->surface);
  const int stride = cairo_image_surface_get_stride (self->surface);
  for (int y = 0; y < self->height; y++)
    for (int x = 0; x < self->width; x++)
      {
        guint32 argb;

        memcpy (&argb, data + y * stride + x * 4, sizeof argb);
        sum += (argb >> 24) / 255.0;
      }
  return sum;
}

static inline gboolean
hut_colour_is_near (HutColour a,
                    HutColour b)
{
  const double slack = 0.02; /* rounding to 8 bits */

  return fabs (a.r - b.r) < slack && fabs (a.g - b.g) < slack && fabs (a.b - b.b) < slack;
}

/* How many pixels of a box have that colour; the box is cut to the picture. */
static inline int
hut_picture_count (const HutPicture *self,
                   HutColour colour,
                   int x0,
                   int y0,
                   int x1,
                   int y1)
{
  int count = 0;

  for (int y = MAX (0, y0); y < MIN (self->height, y1); y++)
    for (int x = MAX (0, x0); x < MIN (self->width, x1); x++)
      count += hut_colour_is_near (hut_picture_at (self, x, y), colour) ? 1 : 0;
  return count;
}

/* How many pixels a thin line of that colour touches: any opacity over a third; on a picture that
 * started empty. */
static inline int
hut_picture_count_line (const HutPicture *self,
                        HutColour colour,
                        int x0,
                        int y0,
                        int x1,
                        int y1)
{
  const guint8 *data;
  const int stride = cairo_image_surface_get_stride (self->surface);
  int count = 0;

  cairo_surface_flush (self->surface);
  data = cairo_image_surface_get_data (self->surface);
  for (int y = MAX (0, y0); y < MIN (self->height, y1); y++)
    for (int x = MAX (0, x0); x < MIN (self->width, x1); x++)
      {
        guint32 argb;

        memcpy (&argb, data + y * stride + x * 4, sizeof argb);
        const double alpha = (argb >> 24) / 255.0;
        const HutColour seen = { ((argb >> 16) & 0xff) / 255.0, ((argb >> 8) & 0xff) / 255.0,
                                 (argb & 0xff) / 255.0 };
        const HutColour expected = { colour.r * alpha, colour.g * alpha, colour.b * alpha };

        count += alpha > 1.0 / 3.0 && hut_colour_is_near (seen, expected) ? 1 : 0;
      }
  return count;
}
