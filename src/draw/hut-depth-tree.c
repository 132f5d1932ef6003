/* src/draw/hut-depth-tree.c: solids in the order in which they must be painted.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-depth-tree.h"

/* Nearer to a plane than this is on it, mm: own choice, a tenth of the grid. */
#define ON_PLANE_MM (HUT_GRID_MM / 10.0)
/* Two directions whose cosine is nearer to 1 than this are one. */
#define SAME_DIRECTION 1e-9
/* Planes of at most so many blocks are tried at a node; a cut costs as much as so many blocks more
 * on one side. Own choices. */
#define TRIED_BLOCKS 24
#define CUT_COST 6.0

#define BLOCK_FACES 6
#define FACE_CORNERS 4
#define AXES 3

/* A block or a piece of one. */
typedef struct
{
  guint block;
  GPtrArray *faces;   /* of GArray of HutVec3; NULL for a whole block */
  double *low, *high; /* extent along each direction, mm */
} Chunk;

typedef struct _Node Node;
struct _Node
{
  HutVec3 normal;
  Node *behind, *before; /* against and along the normal; both NULL for a leaf */
  GPtrArray *chunks;     /* of a leaf */
};

struct _HutDepthTree
{
  HutBlock *blocks;
  guint block_count;
  GArray *directions; /* HutVec3, unit */
  Node *root;
};

static void
chunk_free (Chunk *self)
{
  g_clear_pointer (&self->faces, g_ptr_array_unref);
  g_free (self->low);
  g_free (self->high);
  g_free (self);
}

static void
node_free (Node *self)
{
  if (self == NULL)
    return;
  node_free (self->behind);
  node_free (self->before);
  g_clear_pointer (&self->chunks, g_ptr_array_unref);
  g_free (self);
}

HutVec3
hut_block_corner (const HutBlock *self, guint index)
{
  HutVec3 p = self->origin;

  if ((index & 1) != 0)
    p = hut_vec3_add (p, self->a);
  if ((index & 2) != 0)
    p = hut_vec3_add (p, self->b);
  if ((index & 4) != 0)
    p = hut_vec3_add (p, self->c);
  return p;
}

static HutVec3
axis_of (const HutBlock *self, guint axis)
{
  const HutVec3 along = axis == 0 ? self->a : axis == 1 ? self->b : self->c;

  return hut_vec3_scale (along, 1.0 / sqrt (hut_vec3_dot (along, along)));
}

/* ---- directions: the few that all faces stand square to ---------------------------------------
 */

static guint
find_direction (const GArray *directions, HutVec3 unit)
{
  guint i = 0;

  while (i < directions->len
         && fabs (hut_vec3_dot (g_array_index (directions, HutVec3, i), unit))
                < 1.0 - SAME_DIRECTION)
    i++;
  return i;
}

static void
collect_directions (HutDepthTree *self)
{
  for (guint i = 0; i < self->block_count; i++)
    for (guint axis = 0; axis < AXES; axis++)
      {
        const HutVec3 unit = axis_of (&self->blocks[i], axis);

        if (find_direction (self->directions, unit) == self->directions->len)
          g_array_append_val (self->directions, unit);
      }
}

static void
extend (const HutDepthTree *self, Chunk *chunk, HutVec3 p)
{
  for (guint d = 0; d < self->directions->len; d++)
    {
      const double at_mm = hut_vec3_dot (g_array_index (self->directions, HutVec3, d), p);

      chunk->low[d] = MIN (chunk->low[d], at_mm);
      chunk->high[d] = MAX (chunk->high[d], at_mm);
    }
}

static Chunk *
chunk_new (const HutDepthTree *self, guint block)
{
  Chunk *chunk = g_new0 (Chunk, 1);

  chunk->block = block;
  chunk->low = g_new (double, self->directions->len);
  chunk->high = g_new (double, self->directions->len);
  for (guint d = 0; d < self->directions->len; d++)
    {
      chunk->low[d] = INFINITY;
      chunk->high[d] = -INFINITY;
    }
  return chunk;
}

static Chunk *
chunk_new_whole (const HutDepthTree *self, guint block)
{
  Chunk *chunk = chunk_new (self, block);

  for (guint i = 0; i < 1u << AXES; i++)
    extend (self, chunk, hut_block_corner (&self->blocks[block], i));
  return chunk;
}

/* ---- cutting a chunk ------------------------------------------------------------------------- */

static GPtrArray *
block_faces (const HutBlock *self)
{
  static const guint faces[BLOCK_FACES][FACE_CORNERS]
      = { { 0, 1, 3, 2 }, { 4, 5, 7, 6 }, { 0, 1, 5, 4 },
          { 2, 3, 7, 6 }, { 0, 2, 6, 4 }, { 1, 3, 7, 5 } };
  GPtrArray *result = g_ptr_array_new_with_free_func ((GDestroyNotify)g_array_unref);

  for (guint f = 0; f < BLOCK_FACES; f++)
    {
      GArray *face = g_array_new (FALSE, FALSE, sizeof (HutVec3));

      for (guint i = 0; i < FACE_CORNERS; i++)
        {
          const HutVec3 p = hut_block_corner (self, faces[f][i]);

          g_array_append_val (face, p);
        }
      g_ptr_array_add (result, face);
    }
  return result;
}

/* The part of a convex polygon on one side of a plane (Sutherland and Hodgman's way). @sign: 1
 * along the normal, -1 against it. */
static GArray *
clip_face (const GArray *face, HutVec3 normal, double at_mm, double sign)
{
  GArray *result = g_array_new (FALSE, FALSE, sizeof (HutVec3));

  for (guint i = 0; i < face->len; i++)
    {
      const HutVec3 p = g_array_index (face, HutVec3, i);
      const HutVec3 q = g_array_index (face, HutVec3, (i + 1) % face->len);
      const double p_mm = sign * (hut_vec3_dot (normal, p) - at_mm);
      const double q_mm = sign * (hut_vec3_dot (normal, q) - at_mm);

      if (p_mm >= 0.0)
        g_array_append_val (result, p);
      if ((p_mm > 0.0 && q_mm < 0.0) || (p_mm < 0.0 && q_mm > 0.0))
        {
          const double part_ratio = p_mm / (p_mm - q_mm);
          const HutVec3 crossing
              = hut_vec3_add (hut_vec3_scale (p, 1.0 - part_ratio), hut_vec3_scale (q, part_ratio));

          g_array_append_val (result, crossing);
        }
    }
  return result;
}

static Chunk *
chunk_cut (const HutDepthTree *self, const Chunk *whole, HutVec3 normal, double at_mm, double sign)
{
  g_autoptr (GPtrArray) faces = whole->faces != NULL ? g_ptr_array_ref (whole->faces)
                                                     : block_faces (&self->blocks[whole->block]);
  Chunk *part = chunk_new (self, whole->block);

  part->faces = g_ptr_array_new_with_free_func ((GDestroyNotify)g_array_unref);
  for (guint f = 0; f < faces->len; f++)
    {
      GArray *face = clip_face (g_ptr_array_index (faces, f), normal, at_mm, sign);

      for (guint i = 0; i < face->len; i++)
        extend (self, part, g_array_index (face, HutVec3, i));
      g_ptr_array_add (part->faces, face);
    }
  return part;
}

/* ---- the tree -------------------------------------------------------------------------------- */

typedef struct
{
  guint direction;
  double at_mm;
  double cost; /* INFINITY: divides nothing */
} Plane;

static double
plane_cost (const GPtrArray *chunks, guint direction, double at_mm)
{
  guint behind_count = 0, before_count = 0, cut_count = 0;

  for (guint i = 0; i < chunks->len; i++)
    {
      const Chunk *chunk = g_ptr_array_index (chunks, i);

      if (chunk->high[direction] <= at_mm + ON_PLANE_MM)
        behind_count++;
      else if (chunk->low[direction] >= at_mm - ON_PLANE_MM)
        before_count++;
      else
        cut_count++;
    }
  /* Both sides must become smaller, or the tree would not end. */
  if (behind_count == 0 || before_count == 0)
    return INFINITY;
  return CUT_COST * cut_count + fabs ((double)behind_count - (double)before_count);
}

static Plane
choose_plane (const HutDepthTree *self, const GPtrArray *chunks)
{
  const guint step = MAX (chunks->len / TRIED_BLOCKS, 1);
  Plane best = { .cost = INFINITY };

  for (guint i = 0; i < chunks->len; i += step)
    {
      const Chunk *chunk = g_ptr_array_index (chunks, i);

      for (guint axis = 0; axis < AXES; axis++)
        {
          const guint d
              = find_direction (self->directions, axis_of (&self->blocks[chunk->block], axis));

          for (int side = 0; side < 2; side++)
            {
              const double at_mm = side == 0 ? chunk->low[d] : chunk->high[d];
              const Plane plane = { d, at_mm, plane_cost (chunks, d, at_mm) };

              if (plane.cost < best.cost)
                best = plane;
            }
        }
    }
  return best;
}

/* @chunks: (transfer full) */
static Node *
node_new (const HutDepthTree *self, GPtrArray *chunks)
{
  Node *node = g_new0 (Node, 1);
  const Plane plane = choose_plane (self, chunks);
  g_autoptr (GPtrArray) behind = NULL, before = NULL;

  if (chunks->len <= 1 || isinf (plane.cost))
    {
      node->chunks = chunks;
      return node;
    }
  node->normal = g_array_index (self->directions, HutVec3, plane.direction);
  behind = g_ptr_array_new_with_free_func ((GDestroyNotify)chunk_free);
  before = g_ptr_array_new_with_free_func ((GDestroyNotify)chunk_free);
  while (chunks->len > 0)
    {
      Chunk *chunk = g_ptr_array_steal_index_fast (chunks, chunks->len - 1);

      if (chunk->high[plane.direction] <= plane.at_mm + ON_PLANE_MM)
        g_ptr_array_add (behind, chunk);
      else if (chunk->low[plane.direction] >= plane.at_mm - ON_PLANE_MM)
        g_ptr_array_add (before, chunk);
      else
        {
          g_ptr_array_add (behind, chunk_cut (self, chunk, node->normal, plane.at_mm, -1.0));
          g_ptr_array_add (before, chunk_cut (self, chunk, node->normal, plane.at_mm, 1.0));
          chunk_free (chunk);
        }
    }
  g_ptr_array_unref (chunks);
  node->behind = node_new (self, g_steal_pointer (&behind));
  node->before = node_new (self, g_steal_pointer (&before));
  return node;
}

HutDepthTree *
hut_depth_tree_new (const HutBlock *blocks, guint count)
{
  HutDepthTree *self = g_new0 (HutDepthTree, 1);
  GPtrArray *chunks = g_ptr_array_new_with_free_func ((GDestroyNotify)chunk_free);

  self->blocks = g_memdup2 (blocks, count * sizeof *blocks);
  self->block_count = count;
  self->directions = g_array_new (FALSE, FALSE, sizeof (HutVec3));
  collect_directions (self);
  for (guint i = 0; i < count; i++)
    g_ptr_array_add (chunks, chunk_new_whole (self, i));
  self->root = node_new (self, chunks);
  return self;
}

void
hut_depth_tree_free (HutDepthTree *self)
{
  if (self == NULL)
    return;
  node_free (self->root);
  g_array_unref (self->directions);
  g_free (self->blocks);
  g_free (self);
}

/* ---- the walk -------------------------------------------------------------------------------- */

static void
visit_chunk (const Chunk *chunk, HutDepthVisit visit, gpointer user_data)
{
  g_autoptr (GArray) corners = NULL;

  if (chunk->faces != NULL)
    {
      corners = g_array_new (FALSE, FALSE, sizeof (HutVec3));
      for (guint f = 0; f < chunk->faces->len; f++)
        {
          const GArray *face = g_ptr_array_index (chunk->faces, f);

          g_array_append_vals (corners, face->data, face->len);
        }
    }
  visit (chunk->block, corners, user_data);
}

static void
walk (const Node *node, HutVec3 into, HutDepthVisit visit, gpointer user_data)
{
  const gboolean before_is_far = hut_vec3_dot (node->normal, into) > 0.0;

  if (node->chunks != NULL)
    {
      for (guint i = 0; i < node->chunks->len; i++)
        visit_chunk (g_ptr_array_index (node->chunks, i), visit, user_data);
      return;
    }
  walk (before_is_far ? node->before : node->behind, into, visit, user_data);
  walk (before_is_far ? node->behind : node->before, into, visit, user_data);
}

void
hut_depth_tree_walk (const HutDepthTree *self,
                     HutVec3 into,
                     HutDepthVisit visit,
                     gpointer user_data)
{
  g_return_if_fail (self != NULL && visit != NULL);

  walk (self->root, into, visit, user_data);
}
