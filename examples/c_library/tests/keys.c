/* SPDX-License-Identifier: BSL-1.0 */
/* Keys by their path: set, get, clear, add, list. */
#include <math.h>
#include <string.h>

#include "tests.h"

static void sets_and_gets(void) {
  tw_plan* plan = NULL;
  char *error = NULL, *text = NULL, *json = NULL;
  double si = 0.0;
  OK(tw_plan_new(&plan, &error));
  CHECK(has(REFUSES(TW_BAD_KEY, tw_plan_get_si(plan, "plumbing.lift", &si, &error)), "the plan has no plumbing"));
  set(plan, "plumbing.lift", "4 ft");
  OK(tw_plan_get(plan, "plumbing.lift", &text, &error));
  CHECK(is_text(text, "4 ft"));
  OK(tw_plan_get_si(plan, "plumbing.lift", &si, &error));
  CHECK(fabs(si - 4 * 0.3048) < 1e-15); /* the international foot */

  /* A slider moves the number; unit and doubt stay. */
  set(plan, "plumbing.lift", "145 cm +/- 2 cm");
  OK(tw_plan_set_si(plan, "plumbing.lift", 1.5, &error));
  OK(tw_plan_get(plan, "plumbing.lift", &text, &error));
  CHECK(is_text(text, "150 cm +/- 2 cm"));
  OK(tw_plan_clear(plan, "plumbing.lift", &error));
  OK(tw_plan_get(plan, "plumbing.lift", &text, &error));
  CHECK(is_text(text, ""));
  OK(tw_plan_get_si(plan, "plumbing.lift", &si, &error));
  CHECK(isnan(si));

  OK(tw_plan_add(plan, "plumbing.return", &text, &error));
  CHECK(is_text(text, "plumbing.return[1]"));
  set(plan, "plumbing.return[1].label", "left");
  set(plan, "plumbing.return[left].below_edge", "35 mm");
  OK(tw_plan_add(plan, "plumbing.return", &text, &error));
  CHECK(is_text(text, "plumbing.return[2]"));
  set(plan, "plumbing.pump.flows", "0 L/h, 5000 L/h, 2 L/s");
  OK(tw_plan_get(plan, "plumbing.pump.flows", &text, &error));
  CHECK(is_text(text, "0 L/h, 5000 L/h, 2 L/s"));

  OK(tw_plan_values(plan, &json, &error));
  CHECK(has(json, "{\"path\":\"plumbing.return[left].below_edge\",\"text\":\"35 mm\",\"si\":0.035}"));
  CHECK(has(json, "{\"path\":\"plumbing.return[2]\"}"));
  CHECK(has(json, "{\"path\":\"plumbing.pump.flows\",\"text\":\"0 L/h, 5000 L/h, 2 L/s\"}"));
  tw_free(json);
  OK(tw_plan_clear(plan, "plumbing", &error));
  OK(tw_plan_values(plan, &json, &error));
  CHECK(is_text(json, "{\"values\":[]}\n"));
  OK(tw_plan_free(plan));
}

static void refuses_wrong_keys(void) {
  tw_plan* plan = demo();
  char *error = NULL, *before = NULL, *after = NULL, *text = NULL;
  const char* told;
  double si = 0.0;
  OK(tw_plan_write(plan, TW_TOML, &before, &error));
  told = REFUSES(TW_BAD_KEY, tw_plan_set(plan, "plumbing.retrun[left].below_edge", "35 mm", &error));
  CHECK(has(told, "did you mean return?"));
  CHECK(has(told, "\"path\":\"plumbing.retrun[left].below_edge\""));
  REFUSES(TW_BAD_KEY, tw_plan_set(plan, "", "35 mm", &error));
  REFUSES(TW_BAD_KEY, tw_plan_set(plan, "plumbing", "35 mm", &error));
  REFUSES(TW_BAD_KEY, tw_plan_set(plan, "plumbing.return[", "35 mm", &error));
  REFUSES(TW_BAD_KEY, tw_plan_set(plan, "plumbing.return[99999999999999999999].below_edge", "35 mm", &error));
  REFUSES(TW_BAD_KEY, tw_plan_set_si(plan, "title", 1.0, &error));
  REFUSES(TW_BAD_KEY, tw_plan_get(plan, "nothing", &text, &error));
  CHECK(text == NULL);
  REFUSES(TW_BAD_KEY, tw_plan_get_si(plan, "title", &si, &error));
  CHECK(isnan(si));
  REFUSES(TW_BAD_KEY, tw_plan_clear(plan, "plumbing.nothing", &error));
  REFUSES(TW_BAD_KEY, tw_plan_add(plan, "title", &text, &error));

  told = REFUSES(TW_BAD_VALUE, tw_plan_set(plan, "plumbing.lift", "2 kg", &error));
  CHECK(has(told, "\"path\":\"plumbing.lift\""));
  CHECK(has(told, "\"text\":\"2 kg\""));
  CHECK(has(told, "\"expected\":\"a length such as 2.40 m"));
  REFUSES(TW_BAD_VALUE, tw_plan_set(plan, "plumbing.lift", "", &error));
  REFUSES(TW_BAD_VALUE, tw_plan_set(plan, "plumbing.lift", "1e999 m", &error));
  REFUSES(TW_BAD_VALUE, tw_plan_set_si(plan, "plumbing.lift", NAN, &error));
  REFUSES(TW_BAD_VALUE, tw_plan_set_si(plan, "plumbing.lift", INFINITY, &error));
  REFUSES(TW_BAD_VALUE, tw_plan_set(plan, "units", "furlongs", &error));

  /* Nothing of this has left a trace. */
  OK(tw_plan_write(plan, TW_TOML, &after, &error));
  CHECK(is_text(after, before));
  tw_free(before);
  OK(tw_plan_free(plan));
}

static void lists_what_a_form_needs(void) {
  char *error = NULL, *json = NULL;
  OK(tw_keys(&json, &error));
  const char* key = strstr(json, "{\"path\":\"plumbing.return[].below_edge\"");
  CHECK(key != NULL);
  if (key) {
    CHECK(has(key, "\"table\":\"plumbing.return[]\",\"name\":\"below_edge\",\"kind\":\"number\""));
    CHECK(has(key, "\"quantity\":\"length\",\"unit\":\"m\""));
    CHECK(has(key, "\"everyday\":{\"si\":\"mm\",\"us\":\"in\"}"));
  }
  CHECK(fabs(number_behind(json, "\"symbol\":\"in\"", "size") - 0.0254) < 1e-17);
  CHECK(fabs(number_behind(json, "\"symbol\":\"degC\"", "zero") - 273.15) < 1e-12);
  CHECK(has(json, "\"kind\":\"one_of\""));
  tw_free(json);
  OK(tw_decisions(&json, &error));
  CHECK(has(json, "{\"id\":\"sump.power_cut\",\"day\":"));
  tw_free(json);
}

void test_keys(void) {
  sets_and_gets();
  refuses_wrong_keys();
  lists_what_a_form_needs();
}
