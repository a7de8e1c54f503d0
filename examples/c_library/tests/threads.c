/* SPDX-License-Identifier: BSL-1.0 */
/* One plan in several threads: read, set, assessed and freed at once. */
#define _POSIX_C_SOURCE 200809L
#include <pthread.h>
#include <stdio.h>
#include <string.h>

#include "tests.h"

enum { threads = 4, rounds = 40 };

struct work {
  tw_plan* plan;
  int number;
  int wrong;
};

/* Each thread sets its own key, reads it back, and assesses the plan that the others change. */
static void* sets_and_asks(void* given) {
  struct work* work = given;
  char path[64], length[32];
  snprintf(path, sizeof path, "plumbing.return[%d].length", work->number + 1);
  for (int i = 0; i < rounds; ++i) {
    char *text = NULL, *json = NULL;
    snprintf(length, sizeof length, "%d mm", 2000 + i);
    work->wrong += tw_plan_set(work->plan, path, length, NULL) != TW_OK;
    work->wrong += tw_plan_get(work->plan, path, &text, NULL) != TW_OK || strcmp(text, length) != 0;
    work->wrong += tw_plan_findings(work->plan, "plumbing.flow", &json, NULL) > TW_BAD_PLAN;
    tw_free(text);
    tw_free(json);
  }
  return NULL;
}

/* All work on one handle until one of them has freed it: a plan, or no handle any more, and nothing else. */
static void* asks_until_freed(void* given) {
  struct work* work = given;
  for (int i = 0; i < rounds; ++i) {
    char *text = NULL, *error = NULL;
    const tw_status status = work->number == 0 && i == rounds / 2 ? tw_plan_free(work->plan)
                                                                  : tw_plan_write(work->plan, TW_JSON, &text, &error);
    work->wrong += status != TW_OK && status != TW_BAD_HANDLE;
    work->wrong += status == TW_BAD_HANDLE && !error;
    tw_free(text);
    tw_free(error);
  }
  return NULL;
}

static int wrong_of(tw_plan* plan, void* (*run)(void*)) {
  pthread_t all[threads];
  struct work work[threads];
  int wrong = 0;
  for (int i = 0; i < threads; ++i) {
    work[i].plan = plan;
    work[i].number = i;
    work[i].wrong = 0;
    if (pthread_create(&all[i], NULL, run, &work[i]) != 0) return -1;
  }
  for (int i = 0; i < threads; ++i) {
    pthread_join(all[i], NULL);
    wrong += work[i].wrong;
  }
  return wrong;
}

void test_threads(void) {
  tw_plan* plan = NULL;
  char *error = NULL, *text = NULL;
  OK(tw_plan_new(&plan, &error));
  for (int i = 0; i < threads; ++i) {
    OK(tw_plan_add(plan, "plumbing.return", &text, &error));
    tw_free(text);
  }
  CHECK(wrong_of(plan, sets_and_asks) == 0);
  OK(tw_plan_get(plan, "plumbing.return[4].length", &text, &error));
  CHECK(is_text(text, "2039 mm"));
  OK(tw_plan_free(plan));
  plan = demo();
  CHECK(wrong_of(plan, asks_until_freed) == 0);
  CHECK(tw_plan_free(plan) == TW_BAD_HANDLE);
}
