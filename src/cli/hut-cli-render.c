/* src/cli/hut-cli-render.c: hutchwright render: a view of a design as a picture.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-cli"
#include "config.h"
#include "cli/hut-cli-command.h"

#include <stdio.h>
#include <string.h>

#include <glib/gi18n-lib.h>

#include "cli/hut-cli-model.h"
#include "cli/hut-cli-output.h"
#include "draw/hut-built.h"
#include "draw/hut-sheet-view.h"

/* Pixels. Own choice: a large screen; nothing useful is smaller or larger. */
#define DEFAULT_WIDTH_PX 1600
#define DEFAULT_HEIGHT_PX 1000
#define LEAST_SIDE_PX 64
#define MOST_SIDE_PX 16384
/* Empty room round the drawing, pixels. Own choice. */
#define BORDER_PX 24.0
/* As far as a lid may open in a design file. */
#define LID_MAX_DEG 270

static const char *const views[] = { "flat", "built", "sheets" };
enum
{
  VIEW_FLAT,
  VIEW_BUILT,
  VIEW_SHEETS,
};

typedef struct
{
  const char *path;
  guint view;     /* index in `views` */
  double lid_deg; /* of the built view */
  gboolean dark;
  int width_px, height_px;
} Picture;

static const char *
translate (const char *msgid)
{
  return _(msgid);
}

static gboolean
parse_side (const char *text,
            char end,
            const char **rest,
            int *side_px)
{
  char *stop = NULL;
  const guint64 value = g_ascii_isdigit (*text) ? g_ascii_strtoull (text, &stop, 10) : 0;

  if (value < LEAST_SIDE_PX || value > MOST_SIDE_PX || *stop != end)
    return FALSE;
  *side_px = (int) value;
  *rest = stop + 1;
  return TRUE;
}

static gboolean
parse_size (const char *text,
            Picture *picture)
{
  const char *rest = NULL;

  if (text == NULL)
    return TRUE;
  return parse_side (text, 'x', &rest, &picture->width_px)
         && parse_side (rest, '\0', &rest, &picture->height_px);
}

static gboolean
parse_view (const char *text,
            Picture *picture)
{
  for (picture->view = 0; picture->view < G_N_ELEMENTS (views); picture->view++)
    if (g_str_equal (text, views[picture->view]))
      return TRUE;
  return FALSE;
}

static gboolean
parse_lid (const char *text,
           Picture *picture)
{
  char *end = NULL;

  if (text == NULL)
    return TRUE;
  picture->lid_deg = g_ascii_strtod (text, &end);
  return end != text && *end == '\0' && picture->view == VIEW_BUILT && picture->lid_deg >= 0.0
         && picture->lid_deg <= LID_MAX_DEG;
}

static void
draw_built (cairo_t *cr,
            const HutCliModel *model,
            const Picture *picture)
{
  const HutBuiltPose pose = { .lid_rad = picture->lid_deg * G_PI / 180.0 };
  g_autoptr(HutBuiltModel) built = hut_built_model_new (model->assembly, model->parts, &pose);
  HutBuiltView view;

  hut_built_view_reset (&view);
  hut_built_view_fit (&view, built, picture->width_px, picture->height_px, BORDER_PX);
  hut_built_draw (cr, built, &view, hut_palette_get (picture->dark, FALSE), -1, picture->width_px,
                  picture->height_px);
}

static void
draw (cairo_t *cr,
      const HutCliModel *model,
      const Picture *picture)
{
  const HutFlatStyle style = {
    .dark = picture->dark,
    .show_machine = TRUE,
    .show_splices = TRUE,
    .show_dimensions = TRUE,
    .selected_finding = -1,
    .translate = translate,
  };

  if (picture->view == VIEW_BUILT)
    draw_built (cr, model, picture);
  else if (picture->view == VIEW_SHEETS)
    {
      hut_sheet_view_draw (cr, model->assembly, model->parts, model->sheets, &style,
                           picture->width_px, picture->height_px);
    }
  else
    {
      g_autoptr(HutFlatLayout) layout = hut_flat_layout_new (model->assembly);
      const HutFlatView view = hut_flat_view_fit (layout->bounds, picture->width_px,
                                                  picture->height_px, BORDER_PX);

      hut_flat_draw (cr, model->assembly, model->parts, model->findings, layout, &view, &style,
                     picture->width_px, picture->height_px);
    }
}

static cairo_status_t
append_png (void *closure,
            const unsigned char *data,
            unsigned int length)
{
  g_byte_array_append (closure, data, length);
  return CAIRO_STATUS_SUCCESS;
}

/* (transfer full): NULL when cairo failed, which only happens without memory. */
static GBytes *
render_png (const HutCliModel *model,
            const Picture *picture)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, picture->width_px,
                                                         picture->height_px);
  cairo_t *cr = cairo_create (surface);
  g_autoptr(GByteArray) png = g_byte_array_new ();
  cairo_status_t status;

  draw (cr, model, picture);
  status = cairo_status (cr);
  cairo_destroy (cr);
  if (status == CAIRO_STATUS_SUCCESS)
    status = cairo_surface_write_to_png_stream (surface, append_png, png);
  cairo_surface_destroy (surface);
  if (status != CAIRO_STATUS_SUCCESS)
    {
      hut_cli_print_error (_("the picture cannot be drawn: %s; allowed: a smaller --size"),
                           cairo_status_to_string (status));
      return NULL;
    }
  return g_byte_array_free_to_bytes (g_steal_pointer (&png));
}

static HutCliStatus
write_png (GBytes *png,
           const char *path)
{
  g_autoptr(GError) error = NULL;
  gsize size = 0;
  const char *data = g_bytes_get_data (png, &size);

  if (g_str_equal (path, HUT_CLI_STREAM))
    return hut_cli_print_bytes (png);
  if (g_file_set_contents (path, data, (gssize) size, &error))
    return HUT_CLI_DONE;
  hut_cli_print_error (_("%s: the picture cannot be written: %s; allowed: a folder that can be "
                         "written and has room"), path, error->message);
  return HUT_CLI_IO;
}

/* A picture that is there may be replaced, a design may not. */
static gboolean
is_picture (const char *path)
{
  static const char signature[] = "\x89PNG\r\n\x1a\n"; /* Source: PNG (ISO/IEC 15948), 5.2 */
  char start[sizeof signature - 1];
  FILE *file = fopen (path, "rbe");
  gsize count = 0;

  if (file == NULL)
    return FALSE;
  count = fread (start, 1, sizeof start, file);
  (void) fclose (file); /* only read */
  return count == sizeof start && memcmp (start, signature, sizeof start) == 0;
}

static HutCliStatus
check_target (const HutCliCommand *self,
              const char *path)
{
  HutCliStatus status;

  if (g_str_equal (path, HUT_CLI_STREAM))
    return HUT_CLI_DONE;
  status = hut_cli_check_target (self, path, HUT_CLI_TARGET_PLAIN);
  if (status == HUT_CLI_DONE && g_file_test (path, G_FILE_TEST_EXISTS) && !is_picture (path))
    return hut_cli_refuse (self, _("“%s” exists, is no PNG picture and is not overwritten; "
                                   "allowed: another name"), path);
  return status;
}

static HutCliStatus
render (const Picture *picture,
        const char *file)
{
  HutCliStatus status = HUT_CLI_WRONG;
  HutDesign *design = hut_cli_load (file, &status);
  g_autoptr(HutCliModel) model = NULL;
  g_autoptr(GBytes) png = NULL;

  if (design == NULL)
    return status;
  model = hut_cli_model_new (design);
  if (!model->assembly->whole)
    {
      hut_cli_print_error (_("%s: there is nothing to draw; allowed: a design of which hutchwright "
                             "check says no such thing:"), file);
      for (guint i = 0; i < model->findings->len; i++)
        {
          g_autofree char *line = hut_cli_dup_finding_line (model->findings->pdata[i]);

          hut_cli_print_more (line);
        }
      return HUT_CLI_BLOCKED;
    }
  png = render_png (model, picture);
  return png != NULL ? write_png (png, picture->path) : HUT_CLI_IO;
}

static HutCliStatus
run (const HutCliCommand *self,
     GStrv argv)
{
  HutCliStatus status = HUT_CLI_WRONG;
  Picture picture = { .width_px = DEFAULT_WIDTH_PX, .height_px = DEFAULT_HEIGHT_PX };
  g_autofree char *to = NULL, *view = NULL, *size = NULL, *lid = NULL;
  g_auto(GStrv) words = NULL;
  const GOptionEntry options[] = {
    { "view", 0, 0, G_OPTION_ARG_STRING, &view,
      N_("flat (panels unfolded), built (in space) or sheets"), "VIEW" },
    { "to", 0, 0, G_OPTION_ARG_FILENAME, &to, N_("Write the picture there"), "PNG" },
    { "size", 0, 0, G_OPTION_ARG_STRING, &size, N_("Size in pixels; 1600x1000 if not given"),
      "WxH" },
    { "lid", 0, 0, G_OPTION_ARG_STRING, &lid, N_("Built view: open the lid by that many degrees"),
      "DEG" },
    { "dark", 0, 0, G_OPTION_ARG_NONE, &picture.dark, N_("Light lines on dark ground"), NULL },
    { NULL },
  };

  if (!hut_cli_parse (self, options, argv, &words, &status))
    return status;
  if (view == NULL)
    return hut_cli_refuse (self, _("no view was named; allowed: --view flat, --view built, --view "
                                   "sheets"));
  if (!parse_view (view, &picture))
    return hut_cli_refuse (self, _("there is no view “%s”; allowed: flat, built, sheets"), view);
  if (!parse_lid (lid, &picture))
    return hut_cli_refuse (self, _("“%s” is no --lid for that view; allowed: 0 to %d degrees, "
                                   "with --view built"), lid,
                           LID_MAX_DEG);
  if (!parse_size (size, &picture))
    return hut_cli_refuse (self, _("“%s” is no size; allowed: WIDTHxHEIGHT, each %d to %d pixels"),
                           size, LEAST_SIDE_PX, MOST_SIDE_PX);
  if (to == NULL)
    return hut_cli_refuse (self, _("no target was named; allowed: --to PNG, with - for standard "
                                   "output"));
  status = check_target (self, to);
  if (status != HUT_CLI_DONE)
    return status;
  picture.path = to;
  return render (&picture, words[0]);
}

const HutCliCommand hut_cli_render = {
  .word = "render",
  .usage = "FILE --view VIEW --to PNG",
  .summary = N_("Draws a view of a design as a PNG picture."),
  .details = N_("FILE may be - for standard input, PNG may be - for standard output. A picture "
                "that exists is replaced, any other file is kept."),
  .least_words = 1,
  .most_words = 1,
  .run = run,
};
