/* SPDX-License-Identifier: BSL-1.0 */
/**
 * @file
 * tankwright for programs in C, and for every language that can call C: a plan of a large saltwater display as a
 * handle, its assessment, and each formula by its name. Numbers, verdicts and words are those of the C++ library.
 *
 *   tw_plan* plan = NULL;
 *   char* report = NULL;
 *   if (tw_plan_demo(&plan, NULL) == TW_OK &&
 *       tw_plan_set(plan, "plumbing.return[1].below_edge", "35 mm +/- 5 mm", NULL) == TW_OK &&
 *       tw_plan_assess(plan, NULL, TW_COMPACT, NULL, NULL, &report, NULL) == TW_OK) puts(report);
 *   tw_free(report);
 *   tw_plan_free(plan);
 *
 * Four rules hold everywhere.
 *
 * - Every function returns a `tw_status`. TW_OK is 0; otherwise no result was made, a plan is as it was before, and
 *   what a result would have been written to holds NULL.
 * - The last argument `char **error` receives what went wrong as JSON (see `tw_status`), or NULL where nothing did. Pass
 *   NULL when the code alone is enough.
 * - What comes back as `char *` is UTF-8 that ends with a zero byte; give it back with `tw_free`. What goes in is UTF-8
 *   that ends with a zero byte, except a plan's text, which has a length; nothing is kept of it.
 * - Any function may be called from any thread at any time. Calls on one plan wait for each other where one of them
 *   changes it. A handle that is NULL, freed or no handle at all is TW_BAD_HANDLE, never a crash.
 */
#ifndef TANKWRIGHT_H
#define TANKWRIGHT_H

#include <stddef.h>
#include <stdint.h>

#if defined(_WIN32)
#if defined(TANKWRIGHT_C_LIBRARY) /* while the library itself is compiled */
#define TW_API __declspec(dllexport)
#else
#define TW_API __declspec(dllimport)
#endif
#elif defined(__EMSCRIPTEN__)
#define TW_API __attribute__((visibility("default"), used))
#elif defined(__GNUC__)
#define TW_API __attribute__((visibility("default")))
#else
#define TW_API
#endif

#ifdef __cplusplus
extern "C" {
#endif

/* ---- what comes back --------------------------------------------------------------------------------------------- */

/**
 * What became of a call. Numbers and names stay; new ones may be added.
 *
 * The error as JSON: {"code": 5, "name": "bad_key", "message": "one line for a person"} and, where they apply,
 *   "path"                                             the key of the plan, the id of the finding
 *   "function", "argument", "value", "low", "high", "unit", "source"   what was held against which limits
 *   "text", "position", "reason", "expected"           a text that is not what it should be
 *   "field", "nearest"                                 of a formula, and a name that there is
 *   "line"                                             of a document, from 1
 *   "mistakes": [{"path", "reason", "line", "pointer", "clashes"}]     all that is wrong with a plan
 */
typedef int32_t tw_status;
enum {
  TW_OK = 0,
  TW_BAD_HANDLE = 1,     /**< NULL, freed, or never a handle */
  TW_BAD_ARGUMENT = 2,   /**< a NULL that must not be one, an unknown option or finding */
  TW_BAD_DOCUMENT = 3,   /**< a text that is neither TOML nor JSON, no UTF-8, or too large */
  TW_BAD_PLAN = 4,       /**< the plan cannot be assessed; "mistakes" has all that is wrong */
  TW_BAD_KEY = 5,        /**< a path that names no key of a plan, or no element of a list */
  TW_BAD_VALUE = 6,      /**< a text or a number that is not what the key or the field holds */
  TW_INVALID_INPUT = 7,  /**< describes nothing that can exist */
  TW_OUT_OF_RANGE = 8,   /**< can exist, but lies outside the published range */
  TW_NO_CONVERGENCE = 9, /**< a solver did not reach its tolerance */
  TW_CANCELLED = 10,     /**< the progress function said so */
  TW_NO_MEMORY = 11,     /**< the error's text may be missing too */
  TW_INTERNAL = 12       /**< a fault of the library; please report it with its message */
};

/** "ok", "bad_handle", ...: the name of a status; "unknown" for a number that is none. Not to be freed. */
TW_API const char* tw_status_name(tw_status status);

/** The version of the library, "0.2.0". Not to be freed. */
TW_API const char* tw_version(void);

/** Give back a text that a function of this header returned; NULL is fine. */
TW_API void tw_free(char* text);

/* ---- plans ------------------------------------------------------------------------------------------------------- */

/** A plan: a handle, nothing to look into. Free it once with `tw_plan_free`. */
typedef struct tw_plan tw_plan;

/** In which notation a plan is written. */
typedef int32_t tw_notation;
enum { TW_TOML = 0, TW_JSON = 1 };

/** Units for people: metric or US. */
typedef int32_t tw_units;
enum { TW_SI = 0, TW_US = 1 };

/** A plan in which nothing is given. */
TW_API tw_status tw_plan_new(tw_plan** plan, char** error);

/** A plan from the text of a file. TW_BAD_DOCUMENT, or TW_BAD_PLAN with all mistakes and their lines. */
TW_API tw_status tw_plan_read(const char* text, size_t length, tw_notation notation, tw_plan** plan, char** error);

/**
 * The same for a form that shows what is wrong: also a plan with mistakes becomes a plan that holds what could be read,
 * and `mistakes` becomes {"mistakes": [...]}, an empty list where nothing is wrong. TW_BAD_DOCUMENT as before.
 */
TW_API tw_status tw_plan_read_what_can_be(const char* text, size_t length, tw_notation notation, tw_plan** plan,
                                          char** mistakes, char** error);

/** A short plan to begin with. */
TW_API tw_status tw_plan_starter(tw_units units, tw_plan** plan, char** error);

/** The plan of the invented lagoon that the documentation uses. */
TW_API tw_status tw_plan_demo(tw_plan** plan, char** error);

/** Another plan that says the same. */
TW_API tw_status tw_plan_copy(const tw_plan* plan, tw_plan** copy, char** error);

/** Free a plan; NULL is fine. A second time is TW_BAD_HANDLE. Calls that are still at work on it finish. */
TW_API tw_status tw_plan_free(tw_plan* plan);

/** The plan as text: TOML with each key's sentence beside it, or JSON. Reading it gives the same plan. */
TW_API tw_status tw_plan_write(const tw_plan* plan, tw_notation notation, char** text, char** error);

/** A starter plan as TOML, with the keys a builder cannot know yet as comments. */
TW_API tw_status tw_starter_text(tw_units units, char** text, char** error);

/* ---- keys -------------------------------------------------------------------------------------------------------- */

/*
 * A key is named by its path: "plumbing.return[left].below_edge". An element of a list is named by its label, or by its
 * number from 1.
 */

/**
 * Every key that a plan may have, for a form. The same for all plans; read it once.
 *
 * {"keys": [{
 *    "path": "plumbing.return[].below_edge", "table": "plumbing.return[]", "name": "below_edge",
 *    "kind": "number" | "numbers" | "word" | "flag" | "text" | "rating" | "table" | "tables",
 *    "means": one sentence, "needed": bool, "set_by": "measured" | "chosen" | "wanted",
 *    where it is not given: "default": text, of a number also "default_si",
 *    of a number or a list of them: "quantity", "unit" (SI), "low", "high" (what can exist, SI), "low_text", "high_text",
 *       "whole": bool, "example": text, "everyday": {"si": "mm", "us": "in"} (units to begin with),
 *       a usual doubt: "doubt": {"kind": "distance" | "share" | "factor", "size": SI or pure, "text": "5 mm"},
 *       what it can be chosen from: "choose": {"low", "high", "step" (0: any)} and "sizes": [SI] that are sold,
 *    of a word: "words": [...], of a rating: "example": text}],
 *  "rules": [{"table", "names": [...], "kind": "one_of" | "at_most_one_of" | "together"}],
 *  "quantities": [{"name": "length", "unit": "m",
 *                  "units": [{"symbol": "mm", "name": "millimetres", "size": 0.001, "zero": 0}]}]}
 *
 * SI = number * size + zero. All quantities of the library are there, also those that no key holds.
 */
TW_API tw_status tw_keys(char** json, char** error);

/** Set a key from a text, as a file or a form holds it: "35 mm", "35 mm +/- 5 mm", "open", "true". Missing tables on the
 *  way are made. TW_BAD_KEY or TW_BAD_VALUE; limits are the affair of `tw_plan_validate`. */
TW_API tw_status tw_plan_set(tw_plan* plan, const char* path, const char* text, char** error);

/** Set a number in SI, as a slider does; its unit and its doubt stay. */
TW_API tw_status tw_plan_set_si(tw_plan* plan, const char* path, double si, char** error);

/** What a key holds, as `tw_plan_set` takes it; an empty text where nothing was given. */
TW_API tw_status tw_plan_get(const tw_plan* plan, const char* path, char** text, char** error);

/** The number that a key holds in SI, or its default; NaN where it is unknown. */
TW_API tw_status tw_plan_get_si(const tw_plan* plan, const char* path, double* si, char** error);

/** Take back what was given; a table goes with all that is in it. Path of a key, a table, a list or its element. */
TW_API tw_status tw_plan_clear(tw_plan* plan, const char* path, char** error);

/** Add a table or an element of a list of tables; `added` is its path: "plumbing.return[3]". */
TW_API tw_status tw_plan_add(tw_plan* plan, const char* path, char** added, char** error);

/**
 * What the plan holds, for a form: {"values": [{"path": "plumbing.return[left].below_edge", "text": "35 mm",
 * "si": 0.035}]}: every key that was given, in the order of `tw_keys`; "si" for numbers alone. Each table that is there
 * comes before its keys, as {"path"}.
 */
TW_API tw_status tw_plan_values(const tw_plan* plan, char** json, char** error);

/** All that is wrong with a plan: {"mistakes": [{"path", "reason", "clashes"}]}; TW_OK also where something is. */
TW_API tw_status tw_plan_validate(const tw_plan* plan, char** json, char** error);

/* ---- answers ----------------------------------------------------------------------------------------------------- */

/** What a report holds beyond its findings by central values; add them up. */
typedef uint32_t tw_parts;
enum {
  TW_BANDS =
      1, /**< bands that hold 95 % with everything doubtful varying, verdicts by chance: takes a thousand times as long */
  TW_CURES = 2,   /**< TW_BANDS, what would hold, and what to measure first: takes longer still */
  TW_FIGURES = 4, /**< pictures as data */
  TW_COMPACT = 8  /**< JSON in one line */
};

/**
 * Told now and then how far a long call is. Return 0 to go on, anything else to stop it: TW_CANCELLED. It runs in the
 * thread of the call.
 */
typedef int (*tw_progress)(void* context, size_t done, size_t of);

/**
 * Assess a plan: the report as JSON (docs/report.schema.json), numbers in SI. **Show the caution where you show the
 * number.** TW_BAD_PLAN with all mistakes.
 *
 * @param finding  id of one decision, "sump.power_cut"; NULL: all
 * @param parts    TW_BANDS | ...; 0: the findings alone, by central values
 * @param progress may be NULL
 * @param context  handed to `progress`
 */
TW_API tw_status tw_plan_assess(const tw_plan* plan, const char* finding, tw_parts parts, tw_progress progress,
                                void* context, char** report, char** error);

/**
 * For a slider, while it moves: the findings by central values, and of them only what moves.
 *
 * {"findings": [{"id", "verdict", "consequence", "recommendation", "happens",
 *                "margin": index into "numbers" (none: left out),
 *                "numbers": [{"id", "place" (none: left out), "quantity", "low", "central", "high"}]}]}
 */
TW_API tw_status tw_plan_findings(const tw_plan* plan, const char* finding, char** json, char** error);

/**
 * What can still be changed so that a finding holds by its chance:
 *
 * {"id", "cures": [{"do": one sentence, "changes": [{"path", "from", "to"}], "chance", "size", "better": [{"id", "before", "after"}],
 *                   "worse": [...]}], "why_none": one sentence, where there is no cure: what helps most}
 *
 * Each "path" and "to" is what `tw_plan_set` takes; a path with "[]" means the key of every element of the list.
 */
TW_API tw_status tw_plan_cures(const tw_plan* plan, const char* finding, char** json, char** error);

/** The report as text for a terminal of 80 columns. `parts`: TW_BANDS, TW_CURES. */
TW_API tw_status tw_plan_text(const tw_plan* plan, tw_units units, tw_parts parts, tw_progress progress, void* context,
                              char** text, char** error);

/** The report as one HTML page that needs nothing else. `parts`: TW_BANDS, TW_CURES. */
TW_API tw_status tw_plan_page(const tw_plan* plan, tw_units units, tw_parts parts, tw_progress progress, void* context,
                              char** html, char** error);

/** Every decision of the library, in the order of the job: {"decisions": [{"id", "day", "question", "consequence"}]}. */
TW_API tw_status tw_decisions(char** json, char** error);

/* ---- formulas ---------------------------------------------------------------------------------------------------- */

/**
 * Every formula by its name, as data: {"formulas": [...], "types": {...}, "units": {...}, "constants": [...],
 * "not_here": [...]}; examples/formulas says what is in it.
 */
TW_API tw_status tw_formula_list(char** json, char** error);

/**
 * Call a formula by its name. TW_BAD_ARGUMENT for a formula that there is not, TW_BAD_VALUE for a field, otherwise what the
 * library says; the error has "field" and "nearest" where they help.
 *
 * @param name   "water.salt_for_new_water", or without its folder where that is no question
 * @param fields JSON object: each a number in SI, a number in a unit, or a text: {"volume": "2150 L", "target": 35,
 *               "temperature": {"value": 24, "unit": "degC"}, "mix_yield": "87 %"}
 * @param result {"formula", "result", "cautions", "source"}; numbers in SI: {"value": 86.4, "unit": "kg", "quantity": "mass"}
 */
TW_API tw_status tw_formula_call(const char* name, const char* fields, char** result, char** error);

/**
 * For loops: formulas on plain numbers in SI, without any text. A formula takes and gives its numbers in the order of the
 * list; an estimate is three (low, central, high), a word its place in its list, a flag 0 or 1.
 *
 * @param formula a number for the functions below, the same as long as the program runs
 * @param in      how many numbers it takes
 * @param out     how many it gives
 */
TW_API tw_status tw_formula_find(const char* name, int32_t* formula, size_t* in, size_t* out, char** error);

/** Fill `in` with the defaults; NaN, which every formula refuses, where a number must be given. */
TW_API tw_status tw_formula_defaults(int32_t formula, double* in, char** error);

/** Call it. `extrapolate`: not 0 to go past the published ranges. */
TW_API tw_status tw_formula_numbers(int32_t formula, const double* in, double* out, int extrapolate, char** error);

#ifdef __cplusplus
}
#endif

#endif /* TANKWRIGHT_H */
