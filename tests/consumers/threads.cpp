// SPDX-License-Identifier: BSL-1.0
// Four threads at once give what one gives: plans are read, judged with their doubts and written, formulas are asked. With
// -fsanitize=thread (`threads.sh`) any data that two of them share unguarded ends the program.
//
//   threads PLAN...
#include <cstdio>
#include <functional>
#include <string>
#include <tankwright/decisions/advice.hpp>
#include <tankwright/decisions/figures.hpp>
#include <tankwright/exchange/files.hpp>
#include <tankwright/exchange/read.hpp>
#include <tankwright/exchange/report.hpp>
#include <tankwright/exchange/write.hpp>
#include <tankwright/plumbing/power_cut.hpp>
#include <tankwright/text.hpp>
#include <tankwright/water.hpp>
#include <thread>
#include <vector>

namespace {

namespace tw = tankwright;

/// The parts of a job on two threads of its own, beside the three other jobs.
void on_two(std::size_t parts, const std::function<void(std::size_t)>& one) {
  std::thread other{[&] {
    for (std::size_t i = 1; i < parts; i += 2) one(i);
  }};
  for (std::size_t i = 0; i < parts; i += 2) one(i);
  other.join();
}

/// All that a front end does with a plan, as one text.
std::string whole_way(const std::string& text) {
  const auto read = tw::exchange::read_plan(text, tw::exchange::notation::toml);
  if (!read.usable()) return "mistakes: " + tw::exchange::mistakes_to_json(read.mistakes);
  std::string all =
      tw::exchange::report_to_json(tw::decisions::advise(read.build, {.samples = 64, .cures = 1, .run = on_two}),
                                   tw::decisions::figures_of(read.build));
  all += tw::exchange::to_json(read.build) + tw::exchange::to_toml(read.build);
  const auto density = tw::water::density(tw::practical_salinity{35.0}, tw::celsius(25.0));
  return all + tw::text::in(density, "kg/m3") + tw::text::in(tw::text::parse<tw::length>("2 ft 3 1/2 in"), "mm");
}

}  // namespace

int main(int count, char** names) {
  if (count < 2) {
    std::fputs("usage: threads PLAN...\n", stderr);
    return 2;
  }
  std::vector<std::string> texts;
  for (int i = 1; i < count; ++i) texts.push_back(tw::exchange::read_file(names[i]));
  // The threads first: what is made once, at first use, is then made by all of them at the same time.
  std::vector<std::string> together(4);
  std::vector<std::thread> threads;
  for (std::size_t i = 0; i < together.size(); ++i) {
    threads.emplace_back([&, i] { together[i] = whole_way(texts[i % texts.size()]); });
  }
  for (std::thread& thread : threads) thread.join();
  for (std::size_t i = 0; i < together.size(); ++i) {
    if (together[i] != whole_way(texts[i % texts.size()])) {
      std::fprintf(stderr, "%s: another report beside other threads\n", names[1 + i % texts.size()]);
      return 1;
    }
  }
  std::printf("4 threads, %zu plans: the same reports\n", texts.size());
  return 0;
}
