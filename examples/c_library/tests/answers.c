/* SPDX-License-Identifier: BSL-1.0 */
/* Reports, findings for a slider, cures, text and page. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "tests.h"

/* A plan of plumbing alone is quick to sample. */
static tw_plan* small_plan(const char* below_edge, const char* rim) {
  tw_plan* plan = NULL;
  char* error = NULL;
  OK(tw_plan_new(&plan, &error));
  set(plan, "plumbing.lift", "1.45 m");
  set(plan, "plumbing.overflow.surface", "2.4 m2");
  set(plan, "plumbing.overflow.crest_height", "0.8 m");
  set(plan, "plumbing.overflow.width", "0.8 m");
  set(plan, "plumbing.pump.flows", "0 L/h, 8000 L/h, 15000 L/h");
  set(plan, "plumbing.pump.heads", "4.6 m, 3.4 m, 0.6 m");
  set(plan, "plumbing.return[1].label", "return");
  set(plan, "plumbing.return[return].bore", "57 mm");
  set(plan, "plumbing.return[return].length", "3 m");
  set(plan, "plumbing.return[return].loss", "4.5");
  set(plan, "plumbing.return[return].below_edge", below_edge);
  set(plan, "plumbing.sump.rim", rim);
  set(plan, "plumbing.sump.running_level", "250 mm");
  set(plan, "plumbing.sump.chamber[1].area", "0.9 m2");
  return plan;
}

static size_t times(const char* text, const char* part) {
  size_t count = 0;
  for (const char* at = strstr(text, part); at; at = strstr(at + 1, part)) ++count;
  return count;
}

static void reports(void) {
  tw_plan* plan = demo();
  char *error = NULL, *report = NULL, *one = NULL;
  OK(tw_plan_assess(plan, NULL, 0, NULL, NULL, &report, &error));
  CHECK(has(report, "\n  \"findings\": ["));
  CHECK(has(report, "\"figures\": []"));
  tw_free(report);
  OK(tw_plan_assess(plan, NULL, TW_COMPACT | TW_FIGURES, NULL, NULL, &report, &error));
  CHECK(has(report, "\"curves\":["));
  CHECK(strchr(report, '\n') == report + strlen(report) - 1);
  OK(tw_plan_assess(plan, "sump.power_cut", TW_COMPACT, NULL, NULL, &one, &error));
  CHECK(times(one, "\"verdict\":") == 1);
  /* One alone is the same as in the whole. */
  const char *a = strstr(report, "{\"id\":\"sump.power_cut\",\"day\""),
             *b = strstr(one, "{\"id\":\"sump.power_cut\",\"day\"");
  CHECK(a && b && strncmp(a, b, 400) == 0);
  tw_free(report);
  tw_free(one);
  OK(tw_plan_assess(plan, "sump.power_cut", TW_COMPACT | TW_FIGURES, NULL, NULL, &one, &error));
  CHECK(times(one, "\"title\":") <= 3);
  tw_free(one);
  OK(tw_plan_free(plan));
}

/* The outlet 20 mm deeper lets a display of 2.4 m2 fall 20 mm further; a sump of 0.9 m2 rises by 20 mm x 2.4 / 0.9, and
 * the margin under its rim shrinks by as much. Half a millimetre for what the pipe and the last drops take. */
static void a_slider_moves_the_margin(void) {
  tw_plan* plan = small_plan("40 mm", "800 mm");
  char *error = NULL, *json = NULL;
  OK(tw_plan_findings(plan, "sump.power_cut", &json, &error));
  const double shallow = margin_of(json, "sump.power_cut");
  tw_free(json);
  OK(tw_plan_set_si(plan, "plumbing.return[return].below_edge", 0.060, &error));
  OK(tw_plan_findings(plan, "sump.power_cut", &json, &error));
  const double deep = margin_of(json, "sump.power_cut");
  tw_free(json);
  CHECK(fabs((shallow - deep) - 0.020 * 2.4 / 0.9) < 0.0005);
  OK(tw_plan_findings(plan, NULL, &json, &error));
  CHECK(margin_of(json, "sump.power_cut") == deep);
  CHECK(times(json, "\"verdict\":") > 5);
  tw_free(json);
  OK(tw_plan_free(plan));
}

struct steps {
  size_t calls;
  size_t stop_at; /* 0: never */
};

static int step(void* context, size_t done, size_t of) {
  struct steps* told = context;
  ++told->calls;
  CHECK(done <= of);
  return told->stop_at > 0 && told->calls >= told->stop_at;
}

static void bands_can_be_watched_and_stopped(void) {
  tw_plan* plan = small_plan("40 mm", "800 mm");
  char *error = NULL, *report = NULL, *again = NULL;
  struct steps told = {0, 0};
  OK(tw_plan_assess(plan, NULL, TW_BANDS | TW_COMPACT, step, &told, &report, &error));
  CHECK(told.calls > 2);
  CHECK(has(report, "everything doubtful varying"));
  OK(tw_plan_assess(plan, NULL, TW_BANDS | TW_COMPACT, NULL, NULL, &again, &error));
  CHECK(is_text(again, report)); /* the same plan gives the same bytes */
  tw_free(report);
  told.calls = 0;
  told.stop_at = 2;
  REFUSES(TW_CANCELLED, tw_plan_assess(plan, NULL, TW_BANDS, step, &told, &report, &error));
  CHECK(report == NULL);
  CHECK(told.calls == 2);
  OK(tw_plan_free(plan));
}

static void says_what_would_hold(void) {
  tw_plan* plan = small_plan("300 mm", "450 mm");
  char *error = NULL, *json = NULL;
  OK(tw_plan_cures(plan, "sump.power_cut", &json, &error));
  CHECK(has(json, "\"changes\":[{\"path\":\"plumbing."));
  tw_free(json);
  OK(tw_plan_assess(plan, "sump.power_cut", TW_CURES | TW_COMPACT, NULL, NULL, &json, &error));
  CHECK(has(json, "\"would_hold\":[{\"do\":\""));
  tw_free(json);
  REFUSES(TW_BAD_ARGUMENT, tw_plan_cures(plan, "sump.nothing", &json, &error));
  /* In words too, by chance: another text than by central values. */
  char* central = NULL;
  OK(tw_plan_text(plan, TW_SI, 0, NULL, NULL, &central, &error));
  OK(tw_plan_text(plan, TW_SI, TW_CURES, NULL, NULL, &json, &error));
  CHECK(strcmp(central, json) != 0);
  CHECK(has(json, "%"));
  tw_free(central);
  tw_free(json);
  OK(tw_plan_free(plan));
}

static void prints(void) {
  tw_plan* plan = demo();
  char *error = NULL, *text = NULL;
  OK(tw_plan_text(plan, TW_SI, 0, NULL, NULL, &text, &error));
  CHECK(times(text, "\n") > 50);
  tw_free(text);
  OK(tw_plan_text(plan, TW_US, 0, NULL, NULL, &text, &error));
  CHECK(has(text, "US gal"));
  tw_free(text);
  OK(tw_plan_page(plan, TW_SI, 0, NULL, NULL, &text, &error));
  CHECK(has(text, "</html>") && has(text, "<svg"));
  tw_free(text);
  REFUSES(TW_BAD_ARGUMENT, tw_plan_text(plan, 7, 0, NULL, NULL, &text, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_page(plan, TW_SI, 1u << 20, NULL, NULL, &text, &error));
  OK(tw_plan_free(plan));
}

static void refuses_a_plan_that_contradicts_itself(void) {
  tw_plan* plan = demo();
  char *error = NULL, *json = NULL;
  set(plan, "plumbing.sump.running_level", "9 m");
  OK(tw_plan_validate(plan, &json, &error));
  CHECK(has(json, "plumbing.sump.running_level"));
  tw_free(json);
  CHECK(
      has(REFUSES(TW_BAD_PLAN, tw_plan_assess(plan, NULL, 0, NULL, NULL, &json, &error)), "\"mistakes\":[{\"path\":"));
  REFUSES(TW_BAD_PLAN, tw_plan_findings(plan, NULL, &json, &error));
  REFUSES(TW_BAD_PLAN, tw_plan_text(plan, TW_SI, 0, NULL, NULL, &json, &error));
  REFUSES(TW_BAD_PLAN, tw_plan_cures(plan, "sump.power_cut", &json, &error));
  OK(tw_plan_free(plan));
  plan = demo();
  CHECK(has(REFUSES(TW_BAD_ARGUMENT, tw_plan_findings(plan, "sump.powercut", &json, &error)),
            "did you mean sump.power_cut?"));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_assess(plan, "", 0, NULL, NULL, &json, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_plan_assess(plan, NULL, 16, NULL, NULL, &json, &error));
  OK(tw_plan_free(plan));
}

void test_answers(void) {
  reports();
  a_slider_moves_the_margin();
  bands_can_be_watched_and_stopped();
  says_what_would_hold();
  prints();
  refuses_a_plan_that_contradicts_itself();
}
