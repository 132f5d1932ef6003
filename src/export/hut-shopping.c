/* src/export/hut-shopping.c: what is to be bought, CSV: hardware, screws, gas springs, paint.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Source of the format: RFC 4180. Things that are alike are one line, in the order in which the
 * design first wants them. */
#define G_LOG_DOMAIN "hut-export"
#include "config.h"
#include "assembly/hut-fastener.h"
#include "assembly/hut-window-screws.h"
#include "engineering/hut-engineering.h"
#include "export/hut-write.h"
#include "format/hut-number.h"
#include <math.h>
#include <string.h>

/* A window's bolt has a washer under head and nut. */
#define WINDOW_WASHERS 2
/* Litres are rounded up to this: own choice, nobody measures finer. */
#define LITRE_STEP 0.01
#define LITRE_DECIMALS 2

static const char HEAD[] = "count,thing,size,for,note\r\n";

typedef struct
{
  guint count;
  char *thing, *size, *users;
} Line;

static void
line_free (gpointer data)
{
  Line *line = data;

  g_free (line->thing);
  g_free (line->size);
  g_free (line->users);
  g_free (line);
}

/* @size: (transfer full) */
static void
want (GPtrArray *lines,
      guint count,
      const char *thing,
      char *size,
      const char *user)
{
  g_autofree char *own_size = size;
  Line *line;

  for (guint i = 0; i < lines->len; i++)
    {
      line = g_ptr_array_index (lines, i);
      if (strcmp (line->thing, thing) != 0 || strcmp (line->size, own_size) != 0)
        continue;
      line->count += count;
      if (!g_str_has_suffix (line->users, user))
        {
          g_autofree char *before = line->users;

          line->users = g_strdup_printf ("%s; %s", before, user);
        }
      return;
    }
  line = g_new0 (Line, 1);
  line->count = count;
  line->thing = g_strdup (thing);
  line->size = g_steal_pointer (&own_size);
  line->users = g_strdup (user);
  g_ptr_array_add (lines, line);
}

/* "M3 x 16"; without a length "M3"; @length_mm < 0: no standard one is long enough. */
static char *
dup_size (const char *prefix,
          double thread_mm,
          double length_mm)
{
  char thread[HUT_NUMBER_SIZE], length[HUT_NUMBER_SIZE];

  hut_number_fixed (thread, thread_mm, 1);
  if (length_mm == 0.0)
    return g_strconcat (prefix, thread, NULL);
  return g_strconcat (prefix, thread, " x ", hut_number_fixed (length, length_mm, 1), NULL);
}

static const char *
name_of (const char *name,
         const char *id)
{
  return name != NULL && *name != '\0' ? name : id;
}

static void
want_hardware (GPtrArray *lines,
               const HutAssembly *assembly)
{
  for (guint i = 0; i < assembly->hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (assembly->hardware, i);

      if (placed->leaf == 0)
        want (lines, 1, name_of (placed->item->name, placed->item->id), g_strdup (""),
              name_of (placed->hardware->name, placed->hardware->id));
    }
}

static void
want_bolts (GPtrArray *lines,
            guint count,
            const char *thing,
            double thread_mm,
            double length_mm,
            guint washers,
            const char *user)
{
  want (lines, count, thing, dup_size ("M", thread_mm, length_mm), user);
  want (lines, count, "hex nut ISO 4032", dup_size ("M", thread_mm, 0.0), user);
  want (lines, count * washers, "washer ISO 7089", dup_size ("M", thread_mm, 0.0), user);
}

static void
want_fasteners (GPtrArray *lines,
                const HutAssembly *assembly,
                const HutPartSet *parts)
{
  g_autoptr(GArray) fasteners = hut_fasteners_new (assembly, parts);

  for (guint i = 0; i < fasteners->len; i++)
    {
      const HutFastener *fastener = &g_array_index (fasteners, HutFastener, i);
      const HutHardware *hardware = fastener->placed->hardware;
      const char *user = name_of (hardware->name, hardware->id);
      /* What no standard length reaches is listed with the length that it needs. */
      const double length_mm
          = fastener->length_mm > 0.0 ? fastener->length_mm : fastener->need_mm;

      if (fastener->wood)
        want (lines, 1, "wood screw", dup_size ("", fastener->thread_mm, length_mm), user);
      else
        want_bolts (lines, 1, fastener->sunk ? "countersunk screw" : "pan head screw",
                    fastener->thread_mm, length_mm, 1, user);
    }
}

static void
want_window_screws (GPtrArray *lines,
                    const HutDesign *design)
{
  for (guint i = 0; i < design->windows->len; i++)
    {
      const HutWindow *window = g_ptr_array_index (design->windows, i);
      const HutWindowScrews screws = hut_window_screws_find (design, window);

      if (screws.count > 0)
        want_bolts (lines, screws.count, "pan head screw", window->screw_mm,
                    MAX (screws.length_mm, screws.least_mm), WINDOW_WASHERS,
                    name_of (window->name, window->id));
    }
}

/* Gas springs by force, stroke and length; a stay by its name. */
static void
want_stay (GPtrArray *lines,
           const HutDesign *design,
           const HutEngineering *all)
{
  const HutSpring *spring = &all->spring;
  char force[HUT_NUMBER_SIZE], stroke[HUT_NUMBER_SIZE], length[HUT_NUMBER_SIZE];

  if (design->shell.stay.kind == HUT_STAY_PROP)
    want (lines, design->shell.stay.count, "lid stay", g_strdup (""), "lid");
  if (spring->found)
    want (lines, spring->count, "gas spring",
          g_strconcat (hut_number_fixed (force, spring->force_n, 0), " N; stroke ",
                       hut_number_fixed (stroke, spring->stroke_mm, 0), " mm; stretched ",
                       hut_number_fixed (length, spring->long_mm, 0), " mm", NULL),
          "lid");
}

/* Litres, of what the design says that its faces get; with the first coat comes the glue, as
 * before it there is nothing to reckon with. */
static void
want_finish (GPtrArray *lines,
             const HutDesign *design,
             const HutEngineering *all)
{
  static const char *const names[] = {
    [HUT_COAT_BLACK] = "matt black paint",
    [HUT_COAT_WHITE] = "white or light paint",
    [HUT_COAT_CLEAR] = "varnish, oil or wax",
  };
  const HutFinishing *finishing = &design->shell.finishing;
  const struct
  {
    const char *figure, *thing, *user;
  } rows[] = {
    { "finish.outside-buy", names[finishing->outside], "outer faces" },
    { "finish.inside-buy", names[finishing->inside], "inner faces" },
    { "finish.glue", "wood glue", "joints and straps" },
  };

  if (finishing->outside == HUT_COAT_UNKNOWN && finishing->inside == HUT_COAT_UNKNOWN)
    return;
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      const HutFigure *figure = hut_engineering_get (all, rows[i].figure);
      char litres[HUT_NUMBER_SIZE];

      if (figure != NULL && figure->has_value && rows[i].thing != NULL)
        want (lines, 1, rows[i].thing,
              g_strconcat (hut_number_fixed (litres, ceil (figure->value / LITRE_STEP) * LITRE_STEP,
                                             LITRE_DECIMALS),
                           " l", NULL),
              rows[i].user);
    }
}

static void
want_engineering (GPtrArray *lines,
                  const HutAssembly *assembly,
                  const HutPartSet *parts)
{
  g_autoptr(HutEngineering) all = hut_engineering_new (assembly, parts);

  want_stay (lines, assembly->design, all);
  want_finish (lines, assembly->design, all);
}

static void
append_field (GString *table,
              const char *field)
{
  g_autoptr(GString) quoted = g_string_new (field);

  if (strpbrk (field, ",\"\r\n") == NULL)
    {
      g_string_append (table, field);
      return;
    }
  g_string_replace (quoted, "\"", "\"\"", 0);
  g_string_append_printf (table, "\"%s\"", quoted->str);
}

GBytes *
hut_write_marked_shopping_list (const HutAssembly *assembly,
                                const HutPartSet *parts,
                                const char *mark)
{
  g_autoptr(GPtrArray) lines = g_ptr_array_new_with_free_func (line_free);
  GString *table;

  g_return_val_if_fail (assembly != NULL && parts != NULL, NULL);

  want_hardware (lines, assembly);
  want_fasteners (lines, assembly, parts);
  if (assembly->whole)
    {
      want_window_screws (lines, assembly->design);
      want_engineering (lines, assembly, parts);
    }
  if (lines->len == 0)
    return NULL;
  table = g_string_new (HEAD);
  for (guint i = 0; i < lines->len; i++)
    {
      const Line *line = g_ptr_array_index (lines, i);

      g_string_append_printf (table, "%u,", line->count);
      append_field (table, line->thing);
      g_string_append_c (table, ',');
      append_field (table, line->size);
      g_string_append_c (table, ',');
      append_field (table, line->users);
      g_string_append_c (table, ',');
      append_field (table, mark != NULL ? mark : "");
      g_string_append (table, "\r\n");
    }
  return g_string_free_to_bytes (table);
}
