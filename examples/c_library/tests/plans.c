/* SPDX-License-Identifier: BSL-1.0 */
/* A plan from text and back, copied and freed. */
#include <string.h>

#include "tests.h"

static const char toml[] =
    "title = \"Eel room\"\n"
    "[room]\n"
    "highest_humidity = \"60 %\"\n";

static void reads_and_writes(void) {
  tw_plan *plan = NULL, *again = NULL;
  char *error = NULL, *text = NULL, *other = NULL;
  OK(tw_plan_new(&plan, &error));
  OK(tw_plan_get(plan, "title", &text, &error));
  CHECK(is_text(text, ""));
  OK(tw_plan_free(plan));

  const tw_notation both[] = {TW_TOML, TW_JSON};
  for (size_t i = 0; i < 2; ++i) {
    plan = demo();
    OK(tw_plan_write(plan, both[i], &text, &error));
    OK(tw_plan_read(text, strlen(text), both[i], &again, &error));
    OK(tw_plan_write(again, both[i], &other, &error));
    CHECK(is_text(other, text));
    tw_free(text);
    OK(tw_plan_free(plan));
    OK(tw_plan_free(again));
  }
}

static void copies_are_apart(void) {
  tw_plan *plan = demo(), *copy = NULL;
  char *error = NULL, *text = NULL;
  OK(tw_plan_copy(plan, &copy, &error));
  CHECK(copy != plan);
  set(copy, "title", "Another");
  OK(tw_plan_free(plan));
  OK(tw_plan_get(copy, "title", &text, &error));
  CHECK(is_text(text, "Another"));
  OK(tw_plan_free(copy));
}

static void starters_can_be_read(void) {
  tw_plan* plan = NULL;
  char *error = NULL, *text = NULL, *mistakes = NULL;
  for (tw_units units = TW_SI; units <= TW_US; ++units) {
    OK(tw_plan_starter(units, &plan, &error));
    OK(tw_plan_validate(plan, &mistakes, &error));
    CHECK(has(mistakes, "\"mistakes\": []"));
    tw_free(mistakes);
    OK(tw_plan_free(plan));
    OK(tw_starter_text(units, &text, &error));
    CHECK(has(text, "\n# "));
    OK(tw_plan_read(text, strlen(text), TW_TOML, &plan, &error));
    tw_free(text);
    OK(tw_plan_free(plan));
  }
  REFUSES(TW_BAD_ARGUMENT, tw_plan_starter(2, &plan, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_starter_text(-1, &text, &error));
}

static void mistakes_are_data(void) {
  static const char wrong[] =
      "title = \"Eel room\"\n"
      "[room]\n"
      "highest_humidity = \"21 kg\"\n"
      "humidty = \"60 %\"\n";
  tw_plan* plan = NULL;
  char *error = NULL, *mistakes = NULL, *text = NULL;
  const char* told = REFUSES(TW_BAD_PLAN, tw_plan_read(wrong, strlen(wrong), TW_TOML, &plan, &error));
  CHECK(plan == NULL);
  CHECK(has(told, "\"line\":3"));
  CHECK(has(told, "\"path\":\"room.highest_humidity\""));
  CHECK(has(told, "mass"));

  /* A form takes what could be read, and shows the rest. */
  OK(tw_plan_read_what_can_be(wrong, strlen(wrong), TW_TOML, &plan, &mistakes, &error));
  CHECK(has(mistakes, "room.highest_humidity"));
  tw_free(mistakes);
  OK(tw_plan_get(plan, "title", &text, &error));
  CHECK(is_text(text, "Eel room"));
  OK(tw_plan_free(plan));
  OK(tw_plan_read_what_can_be(toml, strlen(toml), TW_TOML, &plan, &mistakes, &error));
  CHECK(has(mistakes, "\"mistakes\""));
  tw_free(mistakes);
  OK(tw_plan_get(plan, "room.highest_humidity", &text, &error));
  CHECK(is_text(text, "60 %"));
  OK(tw_plan_free(plan));
}

void test_plans(void) {
  CHECK(strlen(tw_version()) >= 5);
  CHECK(strcmp(tw_status_name(TW_OK), "ok") == 0);
  CHECK(strcmp(tw_status_name(TW_BAD_HANDLE), "bad_handle") == 0);
  CHECK(strcmp(tw_status_name(99), "unknown") == 0);
  tw_free(NULL);
  reads_and_writes();
  copies_are_apart();
  starters_can_be_read();
  mistakes_are_data();
}
