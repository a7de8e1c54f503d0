// SPDX-License-Identifier: BSL-1.0
// Any bytes as a plan file in TOML or JSON, guided by coverage. The first byte chooses the notation. Built where
// TANKWRIGHT_FUZZ is on (Clang); run with -max_total_time=60 -max_len=20000 -dict=tests/fuzz/plan.dict and a folder of seeds.
#include <cstddef>
#include <cstdint>

#include "fuzz/try_plan.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  namespace te = tankwright::exchange;
  if (size == 0) return 0;
  const std::string_view text{reinterpret_cast<const char*>(data) + 1, size - 1};
  (void)tankwright::testing::try_plan(text, data[0] % 2 == 0 ? te::notation::toml : te::notation::json);
  return 0;
}
