/* tests/design/walk.h: every struct of a design with the table that describes it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "design/hut-design-format.h"

typedef void (*Visit) (const HutElementFormat *format, gpointer self, gpointer data);

/* Calls @visit for @self and all below it, in the order of the file; not for <panel>, which is none. */
static inline void
walk (const HutElementFormat *format,
      gpointer self,
      Visit visit,
      gpointer data)
{
  visit (format, self, data);
  for (guint i = 0; i < format->n_children; i++)
    {
      const HutChildFormat *child = &format->children[i];
      gpointer member = (char *) self + child->offset;

      if (child->kind == HUT_CHILD_MEMBER)
        walk (child->element, member, visit, data);
      else if (child->kind == HUT_CHILD_ITEMS)
        for (guint j = 0; j < (*(GPtrArray **) member)->len; j++)
          walk (child->element, g_ptr_array_index (*(GPtrArray **) member, j), visit, data);
      else if (child->kind == HUT_CHILD_VALUES)
        for (guint j = 0; j < (*(GArray **) member)->len; j++)
          walk (child->element, (*(GArray **) member)->data + j * child->element->size, visit, data);
    }
}

/* Finds the attribute number @n, counted over the whole walk. */
typedef struct
{
  guint n;
  const HutElementFormat *element;
  const HutAttributeFormat *attribute; /* NULL when there are fewer */
  gpointer member;
} Nth;

static inline void
find_nth (const HutElementFormat *format,
          gpointer self,
          gpointer data)
{
  Nth *nth = data;

  if (nth->attribute != NULL)
    return;
  if (nth->n >= format->n_attributes)
    {
      nth->n -= format->n_attributes;
      return;
    }
  nth->element = format;
  nth->attribute = &format->attributes[nth->n];
  nth->member = (char *) self + nth->attribute->offset;
}

static inline Nth
nth_attribute (HutDesign *design,
               guint n)
{
  Nth nth = { .n = n };

  walk (&hut_design_format, design, find_nth, &nth);
  return nth;
}
