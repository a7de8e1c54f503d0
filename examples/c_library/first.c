/* SPDX-License-Identifier: BSL-1.0 */
#include <stdio.h>
#include "tankwright.h"

int main(void) {
  tw_plan* plan = NULL;
  char *findings = NULL, *error = NULL;
  tw_plan_demo(&plan, NULL);
  tw_plan_set(plan, "plumbing.return[1].below_edge", "35 mm +/- 5 mm", NULL);
  if (tw_plan_findings(plan, "sump.power_cut", &findings, &error) == TW_OK) fputs(findings, stdout);
  if (error) fputs(error, stderr);
  tw_free(findings), tw_free(error), tw_plan_free(plan);
  return findings ? 0 : 1;
}
