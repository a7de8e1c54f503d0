/* SPDX-License-Identifier: BSL-1.0 */
/* The few words the tests are written in. Every check is counted; a failed one says where and goes on. */
#ifndef TANKWRIGHT_C_TESTS_H
#define TANKWRIGHT_C_TESTS_H

#include <stddef.h>

#include "tankwright.h"

/* Count a check; print it where it fails. */
void check_at(int holds, const char* what, const char* file, int line);
#define CHECK(condition) check_at((condition) != 0, #condition, __FILE__, __LINE__)

/* `got` is the one expected; otherwise the error is printed too. Frees the error and leaves none. */
void check_status(tw_status expected, char** error, const char* what, const char* file, int line);

/* A refusal says its code and name as JSON, and a message. Returns the error's text, good until the next refusal. */
const char* check_refusal(tw_status expected, char** error, const char* what, const char* file, int line);

/* Both call something that writes into a variable `error`. */
extern tw_status got;
#define OK(call) (got = (call), check_status(TW_OK, &error, #call, __FILE__, __LINE__))
#define REFUSES(expected, call) (got = (call), check_refusal(expected, &error, #call, __FILE__, __LINE__))

int has(const char* text, const char* part);
/* The text equals what is expected; frees it. */
int is_text(char* text, const char* expected);
/* The number behind "key": in a JSON text, from `from` on; NaN where there is none. */
double number_behind(const char* json, const char* from, const char* key);

/* The central number of the margin that decides a finding, of `tw_plan_findings`; NaN where there is none. */
double margin_of(const char* json, const char* finding);

tw_plan* demo(void);
void set(tw_plan* plan, const char* path, const char* text);

void test_plans(void);
void test_keys(void);
void test_answers(void);
void test_formulas(void);
void test_bad_input(void);
void test_threads(void);

#endif
