/* src/app/hut-session-items.c: bodies, services, stocks and windows come and go.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-session-items.h"
#include "design/hut-recipe.h"
#include "assembly/hut-strip.h"
#include "checks/hut-fitting.h"
#include "checks/hut-way-out.h"
#include <glib/gi18n.h>
#include <math.h>

/* What an addition makes: filled by the edit. */
typedef struct
{
  char *id; /* (out) */
} HutAdded;

static void
set_name (char **name,
          const char *text)
{
  g_free (*name);
  *name = g_strdup (text);
}

static char *
run (HutSession *self,
     const char *label,
     HutEdit edit)
{
  HutAdded added = { NULL };

  if (!hut_session_edit (self, label, edit, &added))
    g_clear_pointer (&added.id, g_free);
  return added.id;
}

static gboolean
add_body (HutDesign *design,
          gpointer user_data)
{
  HutAdded *added = user_data;

  added->id = hut_design_dup_free_id (design, "body");
  HutBody *body = hut_body_new (added->id, HUT_BODY_STATIC);
  set_name (&body->name, _("New body"));
  g_ptr_array_add (design->machine.bodies, body);
  return TRUE;
}

char *
hut_session_add_body (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), NULL);
  /* Translators: what Undo takes back. */
  return run (self, _("Add Body"), add_body);
}

static gboolean
add_service (HutDesign *design,
             gpointer user_data)
{
  HutAdded *added = user_data;

  added->id = hut_design_dup_free_id (design, "service");
  HutService *service = hut_service_new (added->id, HUT_SERVICE_LEAD);
  set_name (&service->name, _("New service"));
  g_ptr_array_add (design->machine.services, service);
  return TRUE;
}

char *
hut_session_add_service (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), NULL);
  /* Translators: what Undo takes back. */
  return run (self, _("Add Service"), add_service);
}

static gboolean
add_stock (HutDesign *design,
           gpointer user_data)
{
  HutAdded *added = user_data;

  added->id = hut_design_dup_free_id (design, "stock");
  HutStock *stock = hut_stock_new (added->id);
  HutRecipe recipe;

  set_name (&stock->name, _("New stock"));
  if (hut_recipe_start (stock->material, hut_stock_mean_mm (stock), design->cutter.kind, &recipe))
    hut_recipe_apply (&recipe, stock);
  g_ptr_array_add (design->stocks, stock);
  return TRUE;
}

char *
hut_session_add_stock (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), NULL);
  /* Translators: what Undo takes back. */
  return run (self, _("Add Stock"), add_stock);
}

static gboolean
find_panel (const HutShell *shell,
            HutPanelId *panel)
{
  static const HutPanelId wanted[] = {
    { HUT_SHELL_LID, HUT_SIDE_FRONT },
    { HUT_SHELL_LID, HUT_SIDE_TOP },
    { HUT_SHELL_BASE, HUT_SIDE_FRONT },
    { HUT_SHELL_BASE, HUT_SIDE_BACK },
  };

  for (guint i = 0; i < G_N_ELEMENTS (wanted); i++)
    if (hut_shell_has_panel (shell, wanted[i]))
      {
        *panel = wanted[i];
        return TRUE;
      }
  return FALSE;
}

/* The first stock that light comes through, else the default one. */
static const char *
find_glazing (const HutDesign *design)
{
  for (guint i = 0; i < design->stocks->len; i++)
    {
      const HutStock *stock = g_ptr_array_index (design->stocks, i);

      if (stock->material == HUT_MATERIAL_ACRYLIC || stock->material == HUT_MATERIAL_POLYCARBONATE)
        return stock->id;
    }
  return design->shell.default_stock;
}

static gboolean
add_window (HutDesign *design,
            gpointer user_data)
{
  HutAdded *added = user_data;
  HutPanelId panel;

  if (!find_panel (&design->shell, &panel))
    return FALSE;
  added->id = hut_design_dup_free_id (design, "window");
  HutWindow *window = hut_window_new (added->id, panel);
  set_name (&window->name, _("New window"));
  set_name (&window->glazing_stock, find_glazing (design));
  set_name (&window->frame_stock, design->shell.default_stock);
  g_ptr_array_add (design->windows, window);
  return TRUE;
}

char *
hut_session_add_window (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), NULL);

  /* Translators: what Undo takes back. */
  char *id = run (self, _("Add Window"), add_window);

  if (id != NULL)
    hut_session_select (self, id);
  return id;
}

/* ---- ways out -------------------------------------------------------------------------------- */

typedef struct
{
  const HutWayOut *way;
  const HutItem *fitting;
} WayOutEdit;

static gboolean
add_way_out (HutDesign *design,
             gpointer user_data)
{
  const WayOutEdit *edit = user_data;

  hut_way_out_add (edit->way, edit->fitting, design);
  return TRUE;
}

char *
hut_session_add_way_out (HutSession *self,
                         const char *service,
                         const HutCatalog *catalog)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && service != NULL, NULL);

  const HutItem *fitting = NULL;
  g_autoptr(HutWayOut) way
      = hut_way_out_choose (hut_session_get_assembly (self), hut_session_get_parts (self),
                            hut_session_get_findings (self), service, catalog, &fitting);
  WayOutEdit edit;
  const char *id;

  if (way == NULL)
    return NULL;
  edit = (WayOutEdit){ way, fitting };
  /* Translators: what Undo takes back. */
  if (!hut_session_edit (self, _("Make an Opening"), add_way_out, &edit))
    return NULL;
  id = way->hardware != NULL ? way->hardware->id : way->opening->id;
  hut_session_select (self, id);
  return g_strdup (id);
}

/* ---- baffles --------------------------------------------------------------------------------- */

/* Gaps that the program chooses are whole multiples of this, mm. Own choice. */
#define BAFFLE_GAP_STEP_MM 0.5

typedef struct
{
  HutSide side;
  gboolean fitted;
  double gap_mm; /* the least that lets the lid open */
} HutBaffleEdit;

static gboolean
set_baffle (HutDesign *design,
            gpointer user_data)
{
  const HutBaffleEdit *edit = user_data;
  HutBaffle *baffle = hut_design_get_baffle (design, edit->side);

  if (edit->fitted == (baffle != NULL))
    return FALSE;
  if (!edit->fitted)
    return g_ptr_array_remove (design->baffles, baffle);
  baffle = hut_baffle_new (edit->side);
  baffle->gap_mm = MAX (baffle->gap_mm, edit->gap_mm);
  set_name (&baffle->stock, design->shell.default_stock);
  g_ptr_array_add (design->baffles, baffle);
  return TRUE;
}

gboolean
hut_session_set_baffle (HutSession *self,
                        HutSide side,
                        gboolean fitted)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), FALSE);

  g_autoptr(HutBaffle) fresh = hut_baffle_new (side);
  const HutDesign *design = hut_session_get_design (self);
  const double least_mm = hut_strip_least_gap_mm (hut_session_get_assembly (self), side,
                                                  fresh->shell, fresh->overlap_mm)
                          + design->shell.seam_gap_mm / 2.0;
  HutBaffleEdit edit
      = { side, fitted, ceil (least_mm / BAFFLE_GAP_STEP_MM) * BAFFLE_GAP_STEP_MM };

  /* Translators: what Undo takes back. */
  return hut_session_edit (self, fitted ? _("Add Baffle") : _("Remove Baffle"), set_baffle, &edit);
}

/* ---- removals -------------------------------------------------------------------------------- */

typedef struct
{
  const HutAssembly *assembly; /* of the design as it was */
  const char *item;
} HutRemoval;

static void
let_go_of_body (const HutRemoval *removal,
                HutPosition *at)
{
  HutPoint middle = { 0.0, 0.0 };
  const gboolean known = hut_assembly_locate (removal->assembly, at, &middle);

  if (g_strcmp0 (at->body, removal->item) != 0)
    return;
  g_clear_pointer (&at->body, g_free);
  if (at->u_anchor == HUT_ANCHOR_BODY)
    {
      at->u_anchor = HUT_ANCHOR_CENTRE;
      at->u_offset_mm = 0.0;
    }
  if (at->v_anchor == HUT_ANCHOR_BODY)
    {
      at->v_anchor = HUT_ANCHOR_CENTRE;
      at->v_offset_mm = 0.0;
    }
  if (known)
    hut_assembly_position_for (removal->assembly, middle, at);
}

static gboolean
remove_body (HutDesign *design,
             gpointer user_data)
{
  const HutRemoval *removal = user_data;
  HutBody *body = hut_design_get_body (design, removal->item);

  if (body == NULL)
    return FALSE;
  for (guint i = 0; i < design->openings->len; i++)
    let_go_of_body (removal, &((HutOpening *)g_ptr_array_index (design->openings, i))->at);
  for (guint i = 0; i < design->windows->len; i++)
    let_go_of_body (removal, &((HutWindow *)g_ptr_array_index (design->windows, i))->at);
  for (guint i = 0; i < design->hardware->len; i++)
    let_go_of_body (removal, &((HutHardware *)g_ptr_array_index (design->hardware, i))->at);
  return g_ptr_array_remove (design->machine.bodies, body);
}

gboolean
hut_session_remove_body (HutSession *self,
                         const char *body)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && body != NULL, FALSE);

  HutRemoval removal = { hut_session_get_assembly (self), body };

  /* Translators: what Undo takes back. */
  return hut_session_edit (self, _("Remove Body"), remove_body, &removal);
}

static gboolean
remove_service (HutDesign *design,
                gpointer user_data)
{
  HutService *service = hut_design_get_service (design, user_data);

  if (service == NULL)
    return FALSE;
  for (guint i = 0; i < design->openings->len; i++)
    {
      HutOpening *opening = g_ptr_array_index (design->openings, i);

      if (g_strcmp0 (opening->serves, user_data) == 0)
        g_clear_pointer (&opening->serves, g_free);
    }
  for (guint i = 0; i < design->hardware->len; i++)
    {
      HutHardware *hardware = g_ptr_array_index (design->hardware, i);

      if (g_strcmp0 (hardware->serves, user_data) == 0)
        g_clear_pointer (&hardware->serves, g_free);
    }
  return g_ptr_array_remove (design->machine.services, service);
}

gboolean
hut_session_remove_service (HutSession *self,
                            const char *service)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && service != NULL, FALSE);
  /* Translators: what Undo takes back. */
  return hut_session_edit (self, _("Remove Service"), remove_service, (gpointer)service);
}

static void
replace_id (char **member,
            const char *old,
            const char *new)
{
  if (g_strcmp0 (*member, old) == 0)
    set_name (member, new);
}

static gboolean
remove_stock (HutDesign *design,
              gpointer user_data)
{
  const char *item = user_data;
  HutStock *stock = hut_design_get_stock (design, item);
  const char *heir;

  if (stock == NULL || design->stocks->len < 2)
    return FALSE;
  if (g_strcmp0 (design->shell.default_stock, item) == 0)
    {
      const HutStock *first = g_ptr_array_index (design->stocks, 0);
      const HutStock *second = g_ptr_array_index (design->stocks, 1);

      set_name (&design->shell.default_stock, first != stock ? first->id : second->id);
    }
  heir = design->shell.default_stock;
  for (guint shell = 0; shell < HUT_SHELL_COUNT; shell++)
    for (guint side = 0; side < HUT_SIDE_COUNT; side++)
      replace_id (&design->shell.stock[shell][side], item, NULL);
  for (guint i = 0; i < design->openings->len; i++)
    replace_id (&((HutOpening *)g_ptr_array_index (design->openings, i))->trap_stock, item, NULL);
  for (guint i = 0; i < design->extras->len; i++)
    replace_id (&((HutExtra *)g_ptr_array_index (design->extras, i))->stock, item, heir);
  for (guint i = 0; i < design->baffles->len; i++)
    replace_id (&((HutBaffle *)g_ptr_array_index (design->baffles, i))->stock, item, heir);
  for (guint i = 0; i < design->windows->len; i++)
    {
      HutWindow *window = g_ptr_array_index (design->windows, i);

      replace_id (&window->glazing_stock, item, heir);
      replace_id (&window->frame_stock, item, heir);
    }
  for (guint i = 0; i < design->hardware->len; i++)
    replace_id (&((HutHardware *)g_ptr_array_index (design->hardware, i))->plate_stock, item, heir);
  return g_ptr_array_remove (design->stocks, stock);
}

gboolean
hut_session_remove_stock (HutSession *self,
                          const char *stock)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && stock != NULL, FALSE);
  /* Translators: what Undo takes back. */
  return hut_session_edit (self, _("Remove Stock"), remove_stock, (gpointer)stock);
}
