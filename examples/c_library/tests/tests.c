/* SPDX-License-Identifier: BSL-1.0 */
#include "tests.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static int passed = 0;
static int failed = 0;
tw_status got = TW_OK;

void check_at(int holds, const char* what, const char* file, int line) {
  if (holds) {
    ++passed;
  } else {
    ++failed;
    printf("%s:%d: does not hold: %s\n", file, line, what);
  }
}

void check_status(tw_status expected, char** error, const char* what, const char* file, int line) {
  check_at(got == expected, what, file, line);
  if (got != expected)
    printf("  %s, not %s: %s\n", tw_status_name(got), tw_status_name(expected), *error ? *error : "");
  check_at((*error != NULL) == (got != TW_OK), "an error has a text, and success has none", file, line);
  tw_free(*error);
  *error = NULL;
}

const char* check_refusal(tw_status expected, char** error, const char* what, const char* file, int line) {
  static char kept[4096];
  char code[64];
  kept[0] = '\0';
  if (*error) {
    strncpy(kept, *error, sizeof kept - 1);
    snprintf(code, sizeof code, "{\"code\":%d,\"name\":\"%s\",\"message\":\"", (int)expected, tw_status_name(expected));
    check_at(strncmp(*error, code, strlen(code)) == 0, "the error begins with its code, name and message", file, line);
  }
  check_status(expected, error, what, file, line);
  return kept;
}

int has(const char* text, const char* part) {
  const int found = text && strstr(text, part);
  if (!found) printf("  no %s in: %.600s\n", part, text ? text : "NULL");
  return found;
}

int is_text(char* text, const char* expected) {
  const int same = text && expected && strcmp(text, expected) == 0;
  if (!same) printf("  '%.600s', not '%.600s'\n", text ? text : "NULL", expected ? expected : "NULL");
  tw_free(text);
  return same;
}

double number_behind(const char* json, const char* from, const char* key) {
  char name[80];
  const char* at = json ? strstr(json, from) : NULL;
  snprintf(name, sizeof name, "\"%s\":", key);
  if (at) at = strstr(at, name);
  return at ? strtod(at + strlen(name), NULL) : NAN;
}

double margin_of(const char* json, const char* finding) {
  char id[80];
  snprintf(id, sizeof id, "{\"id\":\"%s\"", finding);
  const char* at = json ? strstr(json, id) : NULL;
  const double index = number_behind(json, id, "margin");
  for (double i = 0.0; at && i <= index; i += 1.0) at = strstr(at + 1, "\"central\":");
  return at && !isnan(index) ? strtod(at + strlen("\"central\":"), NULL) : NAN;
}

tw_plan* demo(void) {
  tw_plan* plan = NULL;
  char* error = NULL;
  OK(tw_plan_demo(&plan, &error));
  return plan;
}

void set(tw_plan* plan, const char* path, const char* text) {
  char* error = NULL;
  OK(tw_plan_set(plan, path, text, &error));
}

int main(void) {
  test_plans();
  test_keys();
  test_answers();
  test_formulas();
  test_bad_input();
  test_threads();
  printf("%d passed, %d failed\n", passed, failed);
  return failed == 0 ? 0 : 1;
}
