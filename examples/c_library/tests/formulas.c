/* SPDX-License-Identifier: BSL-1.0 */
/* Formulas by their names. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "tests.h"

static void by_name(void) {
  char *error = NULL, *json = NULL;
  OK(tw_formula_list(&json, &error));
  CHECK(has(json, "water.density_with_practical_salinity"));
  tw_free(json);
  /* UNESCO 44 (1983): 1023.343 kg/m3 at S = 35, 25 degC; TEOS-10 lies within 0.01 of it there. */
  OK(tw_formula_call("water.density", "{\"practical_salinity\": 35, \"temperature\": \"25 degC\"}", &json, &error));
  CHECK(fabs(number_behind(json, "\"result\"", "value") - 1023.343) < 0.01);
  tw_free(json);
  OK(tw_formula_call("density", "{\"practical_salinity\": 35, \"temperature\": {\"value\": 77, \"unit\": \"degF\"}}",
                     &json, &error));
  CHECK(fabs(number_behind(json, "\"result\"", "value") - 1023.343) < 0.01);
  tw_free(json);

  const char* told = REFUSES(TW_BAD_ARGUMENT, tw_formula_call("water.salt_for_new_watr", "{}", &json, &error));
  CHECK(has(told, "\"nearest\":\"water.salt_for_new_water\""));
  REFUSES(TW_BAD_VALUE, tw_formula_call("water.density", "", &json, &error));
  REFUSES(TW_BAD_VALUE, tw_formula_call("water.density", "[1", &json, &error));
  told = REFUSES(
      TW_BAD_VALUE,
      tw_formula_call("water.density", "{\"practical_salinity\": 35, \"temperature\": \"25 kg\"}", &json, &error));
  CHECK(has(told, "temperature"));
  REFUSES(TW_BAD_VALUE, tw_formula_call("water.density", "{\"practical_salinity\": 35}", &json, &error));
  told = REFUSES(
      TW_OUT_OF_RANGE,
      tw_formula_call("water.density", "{\"practical_salinity\": 80, \"temperature\": \"25 degC\"}", &json, &error));
  CHECK(has(told, "\"function\":\"tankwright::water::density\""));
  CHECK(has(told, "\"high\":42"));
  REFUSES(
      TW_INVALID_INPUT,
      tw_formula_call("water.density", "{\"practical_salinity\": -1, \"temperature\": \"25 degC\"}", &json, &error));
  CHECK(json == NULL);
}

static void by_numbers(void) {
  char* error = NULL;
  int32_t density = -1, none = 0;
  size_t in = 0, out = 0;
  OK(tw_formula_find("water.density_with_practical_salinity", &density, &in, &out, &error));
  CHECK(density >= 0 && in >= 2 && out >= 1);
  double *given = malloc(in * sizeof *given), *result = malloc(out * sizeof *result);
  if (given && result) {
    OK(tw_formula_defaults(density, given, &error));
    CHECK(isnan(given[0]) && isnan(given[1]));
    REFUSES(TW_INVALID_INPUT, tw_formula_numbers(density, given, result, 0, &error));
    given[0] = 35.0;
    given[1] = 298.15;
    OK(tw_formula_numbers(density, given, result, 0, &error));
    CHECK(fabs(result[0] - 1023.343) < 0.01);
    given[0] = 80.0;
    REFUSES(TW_OUT_OF_RANGE, tw_formula_numbers(density, given, result, 0, &error));
    REFUSES(TW_BAD_ARGUMENT, tw_formula_numbers(-1, given, result, 0, &error));
    REFUSES(TW_BAD_ARGUMENT, tw_formula_numbers(1000000, given, result, 0, &error));
    REFUSES(TW_BAD_ARGUMENT, tw_formula_defaults(-1, given, &error));
    REFUSES(TW_BAD_ARGUMENT, tw_formula_numbers(density, NULL, result, 0, &error));
    REFUSES(TW_BAD_ARGUMENT, tw_formula_numbers(density, given, NULL, 0, &error));
  }
  free(given);
  free(result);
  CHECK(has(REFUSES(TW_BAD_ARGUMENT, tw_formula_find("water.densty", &none, &in, &out, &error)), "did you mean"));
  CHECK(none == -1 && in == 0 && out == 0);
  REFUSES(TW_BAD_ARGUMENT, tw_formula_find(NULL, &none, &in, &out, &error));
  REFUSES(TW_BAD_ARGUMENT, tw_formula_find("water.density_with_practical_salinity", NULL, &in, &out, &error));
}

void test_formulas(void) {
  by_name();
  by_numbers();
}
