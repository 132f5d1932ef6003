/* tests/draw/test-palette.c: drawings can be read: contrasts by WCAG 2.1.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hut-palette.h"
#include "hut-assert.h"

#define TEXT_AA 4.5    /* WCAG 2.1, 1.4.3 */
#define TEXT_AAA 7.0   /* WCAG 2.1, 1.4.6 */
#define GRAPHIC_AA 3.0 /* WCAG 2.1, 1.4.11 */

static void
contrast_of_black_and_white_is_21 (void **state)
{
  const HutColour black = { 0, 0, 0 }, white = { 1, 1, 1 };

  assert_near (hut_colour_contrast_ratio (black, white), 21.0, 1e-9);
  assert_near (hut_colour_contrast_ratio (white, black), 21.0, 1e-9);
  assert_near (hut_colour_contrast_ratio (white, white), 1.0, 1e-12);
}

static void
grey_767676_on_white_just_passes (void **state)
{
  /* By hand: 0x76 / 255 = 0.46275; ((0.46275 + 0.055) / 1.055) ^ 2.4 = 0.18116; 1.05 / 0.23116
   * = 4.5423 */
  const HutColour grey = { 118 / 255.0, 118 / 255.0, 118 / 255.0 }, white = { 1, 1, 1 };

  assert_near (hut_colour_contrast_ratio (grey, white), 4.5423, 2e-3);
}

static void
check (const char *what,
       HutColour front,
       HutColour back,
       double least)
{
  const double contrast = hut_colour_contrast_ratio (front, back);

  if (contrast < least)
    fail_msg ("%s: contrast is %.2f, must be %.2f", what, contrast, least);
}

static void
check_palette (const HutPalette *p,
               double text)
{
  const HutColour grounds[] = { p->background, p->sheet, p->machine_fill };
  const HutColour lines[]
      = { p->outline, p->machine_line, p->motion_line, p->keep_out_line, p->window_line,
          p->splice,  p->strap,        p->hinge,       p->selection,     p->guide };

  for (gsize g = 0; g < G_N_ELEMENTS (grounds); g++)
    {
      check ("text", p->text, grounds[g], text);
      check ("text_dim", p->text_dim, grounds[g], text);
      for (gsize i = 0; i < G_N_ELEMENTS (lines); i++)
        check ("line", lines[i], grounds[g], GRAPHIC_AA);
      /* The badge's border stands out where its filling does not. */
      check ("mark border", p->outline, grounds[g], GRAPHIC_AA);
    }
  check ("text on plate", p->text, p->plate, text);
  check ("text_dim on plate", p->text_dim, p->plate, text);
  check ("label on plate", p->splice, p->plate, text);
  check ("label on plate", p->strap, p->plate, text);
  check ("label on plate", p->hinge, p->plate, text);
  check ("label on plate", p->selection, p->plate, text);
  check ("part on waste", p->outline, p->waste, GRAPHIC_AA);
  check ("margin on waste", p->keep_out_line, p->waste, GRAPHIC_AA);
  check ("window line", p->window_line, p->window_fill, GRAPHIC_AA);
  for (int s = 0; s < 3; s++)
    check ("number on badge", p->mark_text[s], p->mark_fill[s], text);
}

static void
all_text_meets_aa_and_all_lines_are_seen (void **state)
{
  check_palette (hut_palette_get (FALSE, FALSE), TEXT_AA);
  check_palette (hut_palette_get (TRUE, FALSE), TEXT_AA);
}

static void
high_contrast_text_meets_aaa (void **state)
{
  check_palette (hut_palette_get (FALSE, TRUE), TEXT_AAA);
  check_palette (hut_palette_get (TRUE, TRUE), TEXT_AAA);
}

static void
dark_palettes_are_darker_than_light_ones (void **state)
{
  for (int high = 0; high < 2; high++)
    {
      const HutPalette *light = hut_palette_get (FALSE, high), *dark = hut_palette_get (TRUE, high);

      assert_true (dark->background.g < light->background.g);
      assert_true (dark->text.g > light->text.g);
    }
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (contrast_of_black_and_white_is_21),
    cmocka_unit_test (grey_767676_on_white_just_passes),
    cmocka_unit_test (all_text_meets_aa_and_all_lines_are_seen),
    cmocka_unit_test (high_contrast_text_meets_aaa),
    cmocka_unit_test (dark_palettes_are_darker_than_light_ones),
  };

  return cmocka_run_group_tests (tests, NULL, NULL);
}
