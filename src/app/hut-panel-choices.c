/* src/app/hut-panel-choices.c: panels as choices of a form.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-panel-choices.h"
#include "draw/hut-panel-title.h"
#include <glib/gi18n.h>

const char *
hut_panel_shown_name (HutPanelId panel)
{
  return _(hut_panel_id_title (panel));
}

int
hut_panel_to_choice (HutPanelId panel)
{
  return (int)panel.shell * (int)HUT_SIDE_COUNT + (int)panel.side;
}

HutPanelId
hut_panel_from_choice (int choice)
{
  g_return_val_if_fail (choice >= 0 && choice < (int)HUT_SHELL_COUNT * (int)HUT_SIDE_COUNT,
                        ((HutPanelId){ 0 }));
  return (HutPanelId){ (HutShellId)(choice / (int)HUT_SIDE_COUNT),
                       (HutSide)(choice % (int)HUT_SIDE_COUNT) };
}

void
hut_panel_list_choices (const HutDesign *design,
                        GArray *values,
                        GPtrArray *names)
{
  g_return_if_fail (design != NULL && values != NULL && names != NULL);

  for (int choice = 0; choice < (int)HUT_SHELL_COUNT * (int)HUT_SIDE_COUNT; choice++)
    if (hut_shell_has_panel (&design->shell, hut_panel_from_choice (choice)))
      {
        g_array_append_val (values, choice);
        g_ptr_array_add (names, g_strdup (hut_panel_shown_name (hut_panel_from_choice (choice))));
      }
}
