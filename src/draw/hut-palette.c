/* src/draw/hut-palette.c: the colours of drawings, and how far two of them stand apart.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-palette.h"
#include <math.h>

/* Own choice of all colours; tests/draw/test-palette.c holds them to the contrasts of WCAG 2.1. */
#define RGB(hex)                                                                                   \
  {                                                                                                \
    (((hex) >> 16) & 0xff) / 255.0, (((hex) >> 8) & 0xff) / 255.0, ((hex)&0xff) / 255.0            \
  }

static const HutPalette light = {
  .background = RGB (0xe9eaec),
  .sheet = RGB (0xfdf9f1),
  .waste = RGB (0xd9d5cc),
  .plate = RGB (0xffffff),
  .outline = RGB (0x1f1d1a),
  .text = RGB (0x1b1b1b),
  .text_dim = RGB (0x4a4a4a),
  .machine_fill = RGB (0xe8eaec),
  .machine_line = RGB (0x5a646e),
  .motion_line = RGB (0x2f5f8a),
  .keep_out_line = RGB (0x8a4f00),
  .window_fill = RGB (0xdcecf3),
  .window_line = RGB (0x3f7288),
  .splice = RGB (0x6a2fb0),
  .strap = RGB (0x6e5a20),
  .hinge = RGB (0x00695c),
  .selection = RGB (0x1558b0),
  .guide = RGB (0xb3126f),
  .mark_fill = { RGB (0xb3141d), RGB (0xf6c945), RGB (0x2b5ea8) },
  .mark_text = { RGB (0xffffff), RGB (0x1b1b1b), RGB (0xffffff) },
};

static const HutPalette dark = {
  .background = RGB (0x1b1c1e),
  .sheet = RGB (0x35312b),
  .waste = RGB (0x262422),
  .plate = RGB (0x0f1011),
  .outline = RGB (0xf1ebe0),
  .text = RGB (0xf4f4f4),
  .text_dim = RGB (0xc8c8c8),
  .machine_fill = RGB (0x41464b),
  .machine_line = RGB (0xb0bac4),
  .motion_line = RGB (0x8fc0ee),
  .keep_out_line = RGB (0xf2b765),
  .window_fill = RGB (0x22404c),
  .window_line = RGB (0x86bcd2),
  .splice = RGB (0xcfabf5),
  .strap = RGB (0xdcc78c),
  .hinge = RGB (0x67d5c3),
  .selection = RGB (0x84b6f4),
  .guide = RGB (0xff85cb),
  .mark_fill = { RGB (0xff7d74), RGB (0xf6c945), RGB (0x84b6f4) },
  .mark_text = { RGB (0x111111), RGB (0x111111), RGB (0x111111) },
};

static const HutPalette light_high = {
  .background = RGB (0xffffff),
  .sheet = RGB (0xffffff),
  .waste = RGB (0xe6e6e6),
  .plate = RGB (0xffffff),
  .outline = RGB (0x000000),
  .text = RGB (0x000000),
  .text_dim = RGB (0x000000),
  .machine_fill = RGB (0xf2f2f2),
  .machine_line = RGB (0x2a2a2a),
  .motion_line = RGB (0x00336b),
  .keep_out_line = RGB (0x5c3000),
  .window_fill = RGB (0xf0f6f9),
  .window_line = RGB (0x103f52),
  .splice = RGB (0x43107f),
  .strap = RGB (0x443500),
  .hinge = RGB (0x00423a),
  .selection = RGB (0x002f80),
  .guide = RGB (0x7a0049),
  .mark_fill = { RGB (0x8c0009), RGB (0xffe27a), RGB (0x003a86) },
  .mark_text = { RGB (0xffffff), RGB (0x000000), RGB (0xffffff) },
};

static const HutPalette dark_high = {
  .background = RGB (0x000000),
  .sheet = RGB (0x000000),
  .waste = RGB (0x262626),
  .plate = RGB (0x000000),
  .outline = RGB (0xffffff),
  .text = RGB (0xffffff),
  .text_dim = RGB (0xffffff),
  .machine_fill = RGB (0x1c1c1c),
  .machine_line = RGB (0xe0e0e0),
  .motion_line = RGB (0xb9dcff),
  .keep_out_line = RGB (0xffd9a0),
  .window_fill = RGB (0x0b1c23),
  .window_line = RGB (0xbfe4f2),
  .splice = RGB (0xe6d1ff),
  .strap = RGB (0xf3e3b3),
  .hinge = RGB (0xa5f0e4),
  .selection = RGB (0xa8d0ff),
  .guide = RGB (0xffb3df),
  .mark_fill = { RGB (0xffaaa5), RGB (0xffe27a), RGB (0xa8d0ff) },
  .mark_text = { RGB (0x000000), RGB (0x000000), RGB (0x000000) },
};

/**
 * hut_palette_get:
 * @is_dark: drawn for a dark surrounding
 * @high_contrast: WCAG AAA for all text, no tints that carry meaning
 *
 * Returns: (transfer none): a static palette
 */
const HutPalette *
hut_palette_get (gboolean is_dark,
                 gboolean high_contrast)
{
  if (high_contrast)
    return is_dark ? &dark_high : &light_high;
  return is_dark ? &dark : &light;
}

/* Source: WCAG 2.1, definition of relative luminance (with the 0.04045 of the sRGB standard). */
static double
linear_ratio (double channel_ratio)
{
  return channel_ratio <= 0.04045 ? channel_ratio / 12.92
                                  : pow ((channel_ratio + 0.055) / 1.055, 2.4);
}

static double
luminance_ratio (HutColour c)
{
  return 0.2126 * linear_ratio (c.r) + 0.7152 * linear_ratio (c.g) + 0.0722 * linear_ratio (c.b);
}

double
hut_colour_contrast_ratio (HutColour a,
                           HutColour b)
{
  const double la = luminance_ratio (a), lb = luminance_ratio (b);

  return (MAX (la, lb) + 0.05) / (MIN (la, lb) + 0.05); /* 0.05: viewing flare, WCAG 2.1 */
}
