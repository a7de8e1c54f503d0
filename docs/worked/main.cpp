// SPDX-License-Identifier: BSL-1.0
// The worked examples of the theory pages: worked NAME prints one, worked FOLDER writes all as NAME.txt into that folder.
#include <exception>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <stdexcept>

#include "worked.hpp"

namespace {

std::string text_of(const worked::entry& e) {
  worked::sheet s{e.title};
  e.write(s);
  return s.text();
}

int run(const std::string& what) {
  const auto found = worked::examples().find(what);
  if (found != worked::examples().end()) {
    std::cout << text_of(found->second);
    return 0;
  }
  if (!std::filesystem::is_directory(what)) {
    std::cerr << "'" << what << "' is no folder and no example; the examples are:\n";
    for (const auto& [name, e] : worked::examples()) std::cerr << "  " << name << ": " << e.title << "\n";
    return 2;
  }
  for (const auto& [name, e] : worked::examples()) {
    const std::filesystem::path path = std::filesystem::path{what} / (name + ".txt");
    std::ofstream out{path, std::ios::binary};
    out << text_of(e);
    if (!out.flush()) throw std::runtime_error("cannot write " + path.string());
  }
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  try {
    return run(argc == 2 ? argv[1] : "");
  } catch (const std::exception& e) {
    std::cerr << e.what() << "\n";
    return 1;
  }
}
