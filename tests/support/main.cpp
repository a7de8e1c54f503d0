// SPDX-License-Identifier: BSL-1.0
// main() of every test program: runs doctest, then leaves the evidence where TANKWRIGHT_EVIDENCE_DIR says, under the
// name in TANKWRIGHT_EVIDENCE_AS. A run with sanitizers names cases to TANKWRIGHT_LEAVE_OUT that do again and again what
// others do once.
#define DOCTEST_CONFIG_IMPLEMENT
#include <cstdlib>
#include <string>

#include "check.hpp"

int main(int argc, char** argv) {
  doctest::Context context{argc, argv};
  if (const char* cases = std::getenv("TANKWRIGHT_LEAVE_OUT")) context.addFilter("test-case-exclude", cases);
  const int outcome = context.run();
  if (context.shouldExit()) return outcome;
  if (const char* directory = std::getenv("TANKWRIGHT_EVIDENCE_DIR")) {
    const std::string path{argv[0]};
    const char* name = std::getenv("TANKWRIGHT_EVIDENCE_AS");
    tankwright::testing::write_evidence(directory, name != nullptr ? name : path.substr(path.rfind('/') + 1));
  }
  return outcome;
}
