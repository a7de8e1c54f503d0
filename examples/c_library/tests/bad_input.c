/* SPDX-License-Identifier: BSL-1.0 */
/* What a caller can get wrong: each has an answer, and nothing is lost. */
#include <math.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include "tests.h"

/* Every function that takes a plan, with one that is none. */
static void every_function_refuses(tw_plan* no_plan) {
  char *error = NULL, *text = NULL;
  tw_plan* copy = NULL;
  double si = 1.0;
  REFUSES(TW_BAD_HANDLE, tw_plan_copy(no_plan, &copy, &error));
  REFUSES(TW_BAD_HANDLE, tw_plan_write(no_plan, TW_TOML, &text, &error));
  REFUSES(TW_BAD_HANDLE, tw_plan_set(no_plan, "title", "x", &error));
  REFUSES(TW_BAD_HANDLE, tw_plan_set_si(no_plan, "plumbing.lift", 1.0, &error));
  REFUSES(TW_BAD_HANDLE, tw_plan_get(no_plan, "title", &text, &error));
  REFUSES(TW_BAD_HANDLE, tw_plan_get_si(no_plan, "plumbing.lift", &si, &error));
  CHECK(isnan(si));
  REFUSES(TW_BAD_HANDLE, tw_plan_clear(no_plan, "title", &error));
  REFUSES(TW_BAD_HANDLE, tw_plan_add(no_plan, "plumbing.return", &text, &error));
  REFUSES(TW_BAD_HANDLE, tw_plan_values(no_plan, &text, &error));
  REFUSES(TW_BAD_HANDLE, tw_plan_validate(no_plan, &text, &error));
  REFUSES(TW_BAD_HANDLE, tw_plan_assess(no_plan, NULL, 0, NULL, NULL, &text, &error));
  REFUSES(TW_BAD_HANDLE, tw_plan_findings(no_plan, NULL, &text, &error));
  REFUSES(TW_BAD_HANDLE, tw_plan_cures(no_plan, "sump.power_cut", &text, &error));
  REFUSES(TW_BAD_HANDLE, tw_plan_text(no_plan, TW_SI, 0, NULL, NULL, &text, &error));
  REFUSES(TW_BAD_HANDLE, tw_plan_page(no_plan, TW_SI, 0, NULL, NULL, &text, &error));
  CHECK(copy == NULL && text == NULL);
  CHECK(tw_plan_set(no_plan, "title", "x", NULL) == TW_BAD_HANDLE); /* the code alone is enough */
}

static void handles(void) {
  tw_plan *plan = demo(), *other = NULL;
  char* error = NULL;
  int on_the_stack = 0;
  every_function_refuses(NULL);
  OK(tw_plan_free(NULL));
  OK(tw_plan_free(plan));
  every_function_refuses(plan);
  CHECK(tw_plan_free(plan) == TW_BAD_HANDLE);
  OK(tw_plan_new(&other, &error));
  CHECK(other != plan); /* a freed handle is never given again */
  every_function_refuses(plan);
  every_function_refuses((tw_plan*)(void*)&on_the_stack);
  every_function_refuses((tw_plan*)(uintptr_t)1);
  every_function_refuses((tw_plan*)UINTPTR_MAX);
  OK(tw_plan_free(other));
}

static void nulls(void) {
  tw_plan *plan = demo(), *made = NULL;
  char *error = NULL, *text = NULL;
  CHECK(has(REFUSES(TW_BAD_ARGUMENT, tw_plan_new(NULL, &error)), "plan is NULL"));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_read(NULL, 5, TW_TOML, &made, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_read("a", 1, TW_TOML, NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_read_what_can_be("a", 1, TW_TOML, &made, NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_read("a", 1, 2, &made, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_demo(NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_starter(TW_SI, NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_copy(plan, NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_write(plan, TW_TOML, NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_write(plan, 9, &text, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_keys(NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_decisions(NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_set(plan, NULL, "x", &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_set(plan, "title", NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_set_si(plan, NULL, 1.0, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_get(plan, NULL, &text, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_get(plan, "title", NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_get_si(plan, "plumbing.lift", NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_clear(plan, NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_add(plan, "plumbing.return", NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_values(plan, NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_validate(plan, NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_assess(plan, NULL, 0, NULL, NULL, NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_findings(plan, NULL, NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_cures(plan, NULL, &text, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_text(plan, TW_SI, 0, NULL, NULL, NULL, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_page(plan, TW_SI, 0, NULL, NULL, NULL, &error));
  OK(tw_plan_free(plan));
}

/* A list that cannot be added to because its path cannot be handed over stays as it was. */
static void nothing_is_changed_in_vain(void) {
  tw_plan* plan = demo();
  char *error = NULL, *before = NULL, *after = NULL;
  OK(tw_plan_write(plan, TW_TOML, &before, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_add(plan, "plumbing.return", NULL, &error));
  OK(tw_plan_write(plan, TW_TOML, &after, &error));
  CHECK(is_text(after, before));
  tw_free(before);
  OK(tw_plan_free(plan));
}

static void no_document(const char* text, size_t length, tw_notation in, const char* says) {
  tw_plan* plan = NULL;
  char *error = NULL, *mistakes = NULL;
  CHECK(has(REFUSES(TW_BAD_DOCUMENT, tw_plan_read(text, length, in, &plan, &error)), says));
  CHECK(has(REFUSES(TW_BAD_DOCUMENT, tw_plan_read_what_can_be(text, length, in, &plan, &mistakes, &error)), says));
  CHECK(plan == NULL && mistakes == NULL);
}

static void texts_that_are_no_plan(void) {
  static const char picture[] = "\x89PNG\r\n\x1a\n\0\0\0\rIHDR";
  static const char latin[] = "title = \"caf\xe9\"\n";
  static const char latin_json[] = "{\"title\": \"caf\xe9\"}";
  static const char zero[] = "title = \"a\0b\"\n";
  tw_plan* plan = NULL;
  char *error = NULL, *text = NULL;
  const size_t huge = 10 * 1000 * 1000;
  char* large = malloc(huge + 1);
  no_document(picture, sizeof picture - 1, TW_TOML, "\"message\"");
  no_document(picture, sizeof picture - 1, TW_JSON, "\"message\"");
  no_document(latin, sizeof latin - 1, TW_TOML, "\"line\":1");
  no_document(latin_json, sizeof latin_json - 1, TW_JSON, "\"message\"");
  no_document(zero, sizeof zero - 1, TW_TOML, "is zero");
  no_document(zero, sizeof zero - 1, TW_JSON, "is zero");
  no_document("title = ", 8, TW_TOML, "\"line\":1");
  no_document("{", 1, TW_JSON, "\"message\"");
  REFUSES(TW_BAD_PLAN, tw_plan_read("", 0, TW_TOML, &plan, &error));
  if (!large) return;
  memset(large, 'a', huge);
  large[huge] = '\0';
  no_document(large, huge, TW_TOML, "10000000 bytes");
  no_document(large, huge, TW_JSON, "10000000 bytes");
  memset(large, '[', huge);
  no_document(large, 999999, TW_JSON, "\"message\"");
  no_document(large, 999999, TW_TOML, "\"message\"");
  memset(large, 'a', huge);

  plan = demo();
  CHECK(has(REFUSES(TW_BAD_VALUE, tw_plan_set(plan, "title", large, &error)), "at most"));
  REFUSES(TW_BAD_VALUE, tw_plan_set(plan, large, "x", &error));
  REFUSES(TW_BAD_VALUE, tw_plan_get(plan, large, &text, &error));
  REFUSES(TW_BAD_VALUE, tw_plan_assess(plan, large, 0, NULL, NULL, &text, &error));
  large[900000] = '\0';
  REFUSES(TW_BAD_KEY, tw_plan_set(plan, large, "x", &error));
  REFUSES(TW_BAD_VALUE, tw_plan_set(plan, "plumbing.lift", large, &error));
  set(plan, "title", large);
  OK(tw_plan_get(plan, "title", &text, &error));
  CHECK(is_text(text, large));

  /* Bytes that are no UTF-8 do not get in. */
  CHECK(has(REFUSES(TW_BAD_VALUE, tw_plan_set(plan, "title", "caf\xe9", &error)), "not UTF-8 at byte 4"));
  REFUSES(TW_BAD_VALUE, tw_plan_set(plan, "title", "\xed\xa0\x80", &error));
  REFUSES(TW_BAD_VALUE, tw_plan_set(plan, "\xff", "x", &error));
  REFUSES(TW_BAD_VALUE, tw_plan_findings(plan, "\xc3", &text, &error));
  set(plan, "title", "caf\xc3\xa9");
  OK(tw_plan_free(plan));

  /* A zero byte that a document writes by its number is kept, and shown where C can show it. */
  static const char by_number[] = "title = \"a\\u0000b\"\n[room]\n";
  char* mistakes = NULL;
  OK(tw_plan_read_what_can_be(by_number, sizeof by_number - 1, TW_TOML, &plan, &mistakes, &error));
  tw_free(mistakes);
  REFUSES(TW_BAD_VALUE, tw_plan_get(plan, "title", &text, &error));
  OK(tw_plan_values(plan, &text, &error));
  CHECK(has(text, "\"text\":\"a\\u0000b\""));
  tw_free(text);
  OK(tw_plan_free(plan));
  free(large);
}

void test_bad_input(void) {
  handles();
  nulls();
  nothing_is_changed_in_vain();
  texts_that_are_no_plan();
}
