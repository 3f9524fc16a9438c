/* The interface by which a shared library adds checks to Toehold. Plain C, one header, nothing to link.
 *
 * A plug-in exports one function, `toehold_plugin_entry`, that returns a table which must stay valid until the program
 * ends. The program calls each check of the table once a review, with the detail and its demand as plain numbers; the
 * check hands back any number of results through the callback it is given. Text is UTF-8 and ends in a zero; the
 * program copies what it is given before the callback returns, and owns what it hands out, which is valid only during
 * the call. No exception may leave a plug-in. Fasteners cannot be added; their values belong in a detail's own file.
 *
 * Version: this header is version 2. A program loads tables of this and of earlier versions, each served as its own
 * header says; a table whose structures have other sizes than its version's is refused. TOEHOLD_PLUGIN_HEADER fills in
 * both. New in 2: places and axes of anchors in space, the kind of mount, parts by kind and id, the origin
 * of a step.
 *
 *     static int run(const toehold_detail* detail, toehold_report report, void* host) { ... return 0; }
 *     static const toehold_check checks[] = {{"my-check", "My check", "Standard, clause", "What it covers.", run}};
 *     static const toehold_plugin plugin = {TOEHOLD_PLUGIN_HEADER, "My checks", checks, 1};
 *     TOEHOLD_PLUGIN_EXPORT const toehold_plugin* toehold_plugin_entry(void) { return &plugin; }
 */
#ifndef TOEHOLD_PLUGIN_H
#define TOEHOLD_PLUGIN_H

#include <stddef.h>
#include <stdint.h>

/* C has no other way to name a type. NOLINTBEGIN(modernize-use-using) */

#ifdef __cplusplus
#define TOEHOLD_PLUGIN_EXPORT extern "C" __attribute__((visibility("default")))
extern "C" {
#else
#define TOEHOLD_PLUGIN_EXPORT __attribute__((visibility("default")))
#endif

#define TOEHOLD_PLUGIN_ABI 2u

/* ---- what the program tells a check: lb, in, degrees. Under LRFD all forces are factored. ---- */

/* A part of the detail: its kind (`anchor`, `plate`, `weld`, `block`, `joist`, `rim` ...) and its id, empty where there
 * is one of the kind. */
typedef struct toehold_part {
    const char* kind;
    const char* id;
} toehold_part;

/* One anchor. Axes: origin at the post's axis on the mount's bearing plane (a plate's underside; of a post on a
 * member's side the top edge of that member), x along the rail, y outward, z up. */
typedef struct toehold_anchor {
    toehold_part part;             /* `anchor` and the anchor's id */
    double x_in, y_in, z_in;       /* where its axis crosses the bearing plane or the member's face */
    double axis_x, axis_y, axis_z; /* unit vector from head to tip; 0, 0, -1: straight down */
    double diameter_in;            /* nominal */
    double tension_lb;             /* along the axis, largest over all pushes, directions and stiffnesses looked at */
    double shear_lb;               /* square to the axis, largest; not of the same push as the tension */
    double direction_deg;          /* of the push that gives the largest tension, from +x, counter-clockwise */
} toehold_anchor;

/* One push at the guard. It comes from every direction looked at. */
typedef struct toehold_push {
    const char* name;
    double push_lb;   /* horizontal */
    double down_lb;   /* downward positive */
    double height_in; /* above the mount's bearing plane */
} toehold_push;

typedef struct toehold_detail {
    const char* name;
    const char* mount; /* how the post is fastened: `plate-on-deck`, `side-fastened`; later versions may know more */
    double guard_height_in;    /* above the walking surface */
    double plate_thickness_in; /* of a plate mount; 0 for a mount without a plate */
    int32_t lrfd;              /* 0: ASD */
    const toehold_anchor* anchors;
    size_t anchor_count;
    const toehold_push* pushes;
    size_t push_count;
} toehold_detail;

/* ---- what a check tells the program ---- */

/* Where the value of a step comes from: worked out; from the detail; from the document that the clause names; from the
 * demand. A report sets what is worked out apart from the rest. */
enum { TOEHOLD_DERIVED = 0, TOEHOLD_FROM_FILE = 1, TOEHOLD_GIVEN = 2, TOEHOLD_DEMANDED = 3 };

/* One line of worked arithmetic. No pointer may be null; empty text is allowed. */
typedef struct toehold_step {
    const char* symbol;
    const char* meaning;
    const char* formula; /* how the value was found or chosen; empty: nothing to say beyond the origin */
    double value;
    const char* unit;
    const char* clause;
    int32_t origin; /* one of the four above */
} toehold_step;

typedef struct toehold_result {
    toehold_part part;        /* what was checked; empty kind: no part of the detail */
    const char* subject;      /* the same in words for people: `anchor A`, `plate` */
    const char* clause;       /* with edition; empty: the check's */
    double demand;            /* finite, >= 0 */
    double capacity;          /* finite, >= 0 */
    const char* unit;         /* of both */
    int32_t missing_evidence; /* not 0: the detail does not give what the check needs; `note` says what */
    const char* note;
    const toehold_step* steps;
    size_t step_count;
} toehold_result;

/* Takes one result. 0: taken. Anything else: refused, a number is out of its range or a pointer is null; the program
 * then reports the whole check as without evidence. `host` is handed through unread. */
typedef int32_t (*toehold_report)(void* host, const toehold_result* result);

/* ---- the plug-in's table ---- */

typedef struct toehold_check {
    const char* id;     /* unique: lower case letters, digits, hyphens */
    const char* title;  /* a few words */
    const char* clause; /* standard and clause, with edition */
    const char* covers; /* one sentence */
    /* 0: done, with no result where the check does not apply. Anything else: it could not be done. */
    int32_t (*run)(const toehold_detail* detail, toehold_report report, void* host);
} toehold_check;

typedef struct toehold_plugin {
    uint32_t abi;
    size_t plugin_size, check_size, detail_size, anchor_size, push_size, part_size, result_size, step_size;
    const char* name;
    const toehold_check* checks;
    size_t check_count;
} toehold_plugin;

#define TOEHOLD_PLUGIN_HEADER                                                                                          \
    TOEHOLD_PLUGIN_ABI, sizeof(toehold_plugin), sizeof(toehold_check), sizeof(toehold_detail), sizeof(toehold_anchor), \
        sizeof(toehold_push), sizeof(toehold_part), sizeof(toehold_result), sizeof(toehold_step)

/* The name of the one function a plug-in exports, and its type. */
#define TOEHOLD_PLUGIN_ENTRY "toehold_plugin_entry"
typedef const toehold_plugin* (*toehold_plugin_entry_function)(void);

/* NOLINTEND(modernize-use-using) */

#ifdef __cplusplus
} /* extern "C" */
#endif

#endif
