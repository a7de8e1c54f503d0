// SPDX-License-Identifier: BSL-1.0
// main() of every test program: runs doctest, then leaves the evidence where TANKWRIGHT_EVIDENCE_DIR says.
#define DOCTEST_CONFIG_IMPLEMENT
#include <cstdlib>
#include <string>

#include "check.hpp"

int main(int argc, char** argv) {
  doctest::Context context{argc, argv};
  const int outcome = context.run();
  if (context.shouldExit()) return outcome;
  if (const char* directory = std::getenv("TANKWRIGHT_EVIDENCE_DIR")) {
    const std::string path{argv[0]};
    tankwright::testing::write_evidence(directory, path.substr(path.rfind('/') + 1));
  }
  return outcome;
}
