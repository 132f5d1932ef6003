/* src/app/hut-item-fault-text.c: what is wrong with an item that is being measured, in plain words.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-item-fault-text.h"
#include <glib/gi18n.h>

static char *
dup_size_text (const HutItem *item,
               guint index)
{
  switch (g_array_index (item->cuts, HutItemCut, index).shape)
    {
    case HUT_CUT_FLATTED:
      return g_strdup (_ ("The height across the flat must be less than the diameter."));
    case HUT_CUT_TWO_FLATS:
      return g_strdup (_ ("The height between the flats must be less than the diameter."));
    case HUT_CUT_KEYED:
      return g_strdup (_ ("The notch must be narrower than the diameter, and the height to its "
                          "bottom more than the diameter."));
    case HUT_CUT_ROUND:
    case HUT_CUT_RECTANGLE:
    case HUT_CUT_SLOT:
    default:
      return g_strdup (_ ("The sizes of the hole must be over 0."));
    }
}

static char *
dup_rim_text (const HutItem *item,
              double by_mm,
              HutUnits units)
{
  g_autofree char *by = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units, by_mm);
  g_autofree char *width
      = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, units, item->flange_width_mm);
  g_autofree char *height
      = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units, item->flange_height_mm);

  /* Translators: a length, then the width and the height of the flange */
  return g_strdup_printf (_ ("This hole reaches %s out of the flange, which is %s × %s."), by,
                          width, height);
}

/* Of those that need no number. */
static const char *
plain_text (HutItemFaultKind kind)
{
  switch (kind)
    {
    case HUT_ITEM_FAULT_FACE:
      return _ ("It must go on from outside, from inside, or from both.");
    case HUT_ITEM_FAULT_NUT:
      return _ ("A nut has a size over its corners.");
    case HUT_ITEM_FAULT_BODY:
      return _ ("The body that stops against the panel has a size.");
    case HUT_ITEM_FAULT_CUT_LEAF:
    case HUT_ITEM_FAULT_SPACE_LEAF:
      return _ ("An item on one panel has no second leaf.");
    case HUT_ITEM_FAULT_SCREW_SHAPE:
      return _ ("The hole of a screw is round.");
    case HUT_ITEM_FAULT_WOOD_SCREW:
    case HUT_ITEM_FAULT_THREAD:
      return _ ("Choose a screw from the list.");
    case HUT_ITEM_FAULT_SPACE_SIZE:
      return _ ("The right end must not lie left of the left one, nor the top under the bottom.");
    case HUT_ITEM_FAULT_CURVE_MISSING:
      return _ ("A fan needs a curve: add the point without flow and the point without pressure.");
    case HUT_ITEM_FAULT_CURVE_ORDER:
      return _ ("The first flow must be 0 and each next one more; the pressure must not rise.");
    case HUT_ITEM_FAULT_CURVE_END:
      return _ ("The curve needs a second point, and its last one must have no pressure.");
    case HUT_ITEM_FAULT_PASS:
      return _ ("What passes needs both sizes, or none.");
    case HUT_ITEM_FAULT_LINE:
      return _ ("The thickest line must not be thinner than the thinnest.");
    case HUT_ITEM_FAULT_NONE:
    case HUT_ITEM_FAULT_THICKNESS:
    case HUT_ITEM_FAULT_CUT_SIZE:
    case HUT_ITEM_FAULT_CUT_RIM:
    default:
      return NULL;
    }
}

char *
hut_item_fault_dup_text (const HutItem *item,
                         const HutItemFault *fault,
                         HutUnits units)
{
  g_return_val_if_fail (item != NULL && fault != NULL, NULL);

  if (fault->kind == HUT_ITEM_FAULT_THICKNESS)
    {
      g_autofree char *least
          = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units, item->thickness_min_mm);

      /* Translators: a thickness */
      return g_strdup_printf (_ ("The thickest panel must be 0 for any, or at least %s."), least);
    }
  if (fault->kind == HUT_ITEM_FAULT_CUT_SIZE)
    return dup_size_text (item, fault->index);
  if (fault->kind == HUT_ITEM_FAULT_CUT_RIM)
    return dup_rim_text (item, fault->by_mm, units);
  return g_strdup (plain_text (fault->kind));
}
