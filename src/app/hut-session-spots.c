/* src/app/hut-session-spots.c: parts laid on the sheets by hand, as edits of the design.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * With a part that is kept, all others of its stock are written down as they lie, so that they do
 * not jump about when one is moved; they stay free to make room. */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-session-spots.h"
#include "assembly/hut-spot-place.h"
#include <glib/gi18n.h>

typedef struct
{
  const HutPartSet *parts;
  const HutSheetSet *sheets;
  guint kept;
} Layout;

static void
take_over (HutDesign *design,
           const HutPart *part,
           guint sheet,
           const HutLaidPart *laid,
           gboolean moved)
{
  HutSpot *old = hut_design_get_spot (design, part->id);
  const gboolean kept = moved || (old != NULL && old->kept);
  HutSpot *spot = hut_spot_new_at (part, sheet, &laid->placement, kept);

  if (old != NULL)
    g_ptr_array_remove (design->spots, old);
  g_ptr_array_add (design->spots, spot);
}

/* @stock: (nullable): only of its parts. @moved: index of the part that is kept from now on, or
 * G_MAXUINT */
static void
take_layout (HutDesign *design,
             const Layout *layout,
             const HutStock *stock,
             guint moved)
{
  for (guint i = 0; i < layout->sheets->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (layout->sheets->sheets, i);

      for (guint k = 0; (stock == NULL || sheet->stock == stock) && k < sheet->laid->len; k++)
        {
          const HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, k);

          take_over (design, g_ptr_array_index (layout->parts->parts, laid->part), sheet->number,
                     laid, laid->part == moved);
        }
    }
}

static gboolean
keep (HutDesign *design,
      gpointer user_data)
{
  const Layout *layout = user_data;
  const HutPart *kept = g_ptr_array_index (layout->parts->parts, layout->kept);

  take_layout (design, layout, kept->stock, layout->kept);
  return TRUE;
}

static gboolean
take (HutDesign *design,
      gpointer user_data)
{
  take_layout (design, user_data, NULL, G_MAXUINT);
  return TRUE;
}

gboolean
hut_session_keep_part (HutSession *self,
                       const HutPartSet *parts,
                       const HutSheetSet *sheets,
                       guint part)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && parts != NULL && sheets != NULL, FALSE);
  g_return_val_if_fail (part < parts->parts->len, FALSE);

  Layout layout = { parts, sheets, part };

  /* Translators: what Undo takes back: a part was moved on its sheet. */
  return hut_session_edit (self, _ ("Move Part"), keep, &layout);
}

gboolean
hut_session_take_layout (HutSession *self,
                         const HutPartSet *parts,
                         const HutSheetSet *sheets)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && parts != NULL && sheets != NULL, FALSE);

  Layout layout = { parts, sheets, G_MAXUINT };

  /* Translators: what Undo takes back: parts are laid on fewer sheets. */
  return hut_session_edit (self, _ ("Lay Out on Fewer Sheets"), take, &layout);
}

static gboolean
release (HutDesign *design,
         gpointer user_data)
{
  HutSpot *spot = hut_design_get_spot (design, user_data);

  return spot != NULL && spot->kept && hut_design_release_part (design, user_data);
}

gboolean
hut_session_release_part (HutSession *self,
                          const char *part)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && part != NULL, FALSE);

  g_autofree char *id = g_strdup (part);

  /* Translators: what Undo takes back: the program lays a part again. */
  return hut_session_edit (self, _ ("Release Part"), release, id);
}

static gboolean
release_all (HutDesign *design,
             gpointer user_data)
{
  g_ptr_array_set_size (design->spots, 0);
  return TRUE;
}

gboolean
hut_session_release_all (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), FALSE);

  /* Translators: what Undo takes back: the program lays all parts again. */
  return hut_session_edit (self, _ ("Release All Parts"), release_all, NULL);
}
