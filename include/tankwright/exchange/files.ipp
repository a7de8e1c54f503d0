// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <memory>
#include <random>
#include <tankwright/core/inline.hpp>
#include <tankwright/exchange/document.hpp>
#include <tankwright/exchange/files.hpp>

namespace tankwright::exchange {

namespace detail {

struct closes {
  void operator()(std::FILE* f) const noexcept { std::fclose(f); }
};
using open_file = std::unique_ptr<std::FILE, closes>;

[[nodiscard]] inline file_error because(const std::string& path, const char* what, int number) {
  std::string line = path + ": " + what;
  if (number != 0) line += std::string{": "} + std::strerror(number);
  return file_error{line};
}

/// A new file beside `path` that nobody else has: opened exclusively, under a name nobody can foresee.
[[nodiscard]] inline std::pair<open_file, std::string> new_file_beside(const std::string& path) {
  std::random_device draw;
  for (int tries = 0; tries < 100; ++tries) {
    constexpr const char* letters = "abcdefghijklmnopqrstuvwxyz0123456789";
    std::string name = path + ".";
    for (int i = 0; i < 12; ++i) name += letters[draw() % 36];
    errno = 0;
    if (open_file file{std::fopen(name.c_str(), "wbx")}) return {std::move(file), name};
    if (errno != EEXIST) break;
  }
  throw because(path, "cannot be written", errno);
}

/// The comments of a TOML text, one to a line.
[[nodiscard]] inline std::string comments_of(std::string_view text) {
  std::string all;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    const std::string_view line = text.substr(at, end - at);
    char quote = '\0';
    for (std::size_t i = 0; i < line.size(); ++i) {
      if (quote == '\0' && (line[i] == '"' || line[i] == '\'')) {
        quote = line[i];
      } else if (line[i] == quote && (i == 0 || line[i - 1] != '\\')) {
        quote = '\0';
      } else if (quote == '\0' && line[i] == '#') {
        all.append(line.substr(i)).append("\n");
        break;
      }
    }
    at = end + 1;
  }
  return all;
}

}  // namespace detail

TANKWRIGHT_INLINE std::string read_file(const std::string& path) {
  if (path.empty()) throw file_error{"a file name is missing: it is empty"};
  std::error_code none;
  const auto status = std::filesystem::status(path, none);
  if (!std::filesystem::exists(status)) throw file_error{path + ": no such file"};
  if (std::filesystem::is_directory(status)) throw file_error{path + ": is a folder, not a plan"};
  errno = 0;
  const detail::open_file file{std::fopen(path.c_str(), "rb")};
  if (!file) throw detail::because(path, "cannot be read", errno);
  std::string text;
  std::array<char, 65536> block;
  for (;;) {
    const std::size_t count = std::fread(block.data(), 1, block.size(), file.get());
    text.append(block.data(), count);
    if (text.size() > largest_document) {
      throw file_error{path + ": more than " + std::to_string(largest_document) + " bytes; a plan has at most that"};
    }
    if (count < block.size()) break;
  }
  if (std::ferror(file.get())) throw detail::because(path, "cannot be read", errno);
  return text;
}

TANKWRIGHT_INLINE void write_file(const std::string& path, std::string_view bytes, const std::string& input) {
  namespace fs = std::filesystem;
  if (path.empty()) throw file_error{"a file name is missing: it is empty"};
  std::error_code none;
  const auto there = fs::symlink_status(path, none);
  const bool exists = fs::exists(there);
  if (fs::is_symlink(there)) throw file_error{path + ": is a link; name the file itself"};
  if (exists && fs::is_directory(there)) throw file_error{path + ": is a folder"};
  if (exists && !fs::is_regular_file(there)) throw file_error{path + ": is not a regular file"};
  if (exists && !input.empty() && fs::equivalent(path, input, none)) {
    throw file_error{path + ": is the plan itself; write to another file"};
  }
  auto [file, beside] = detail::new_file_beside(path);
  errno = 0;
  const bool written = std::fwrite(bytes.data(), 1, bytes.size(), file.get()) == bytes.size();
  const bool closed = std::fclose(file.release()) == 0;
  const int number = errno;
  if (written && closed) {
    if (exists) fs::permissions(beside, there.permissions(), none);
    std::error_code failed;
    fs::rename(beside, path, failed);
    if (!failed) return;
    fs::remove(beside, none);
    throw file_error{path + ": cannot be written: " + failed.message()};
  }
  fs::remove(beside, none);
  throw detail::because(path, "cannot be written", number);
}

TANKWRIGHT_INLINE bool save_plan(const std::string& path, std::string_view bytes) {
  std::error_code none;
  bool kept = false;
  if (std::filesystem::is_regular_file(path, none)) {
    const std::string before = read_file(path);
    const std::string comments = detail::comments_of(before), now = detail::comments_of(bytes);
    bool all_known = true;
    for (std::size_t at = 0; at < comments.size() && all_known;) {
      const std::size_t end = comments.find('\n', at);
      all_known = now.find(comments.substr(at, end - at + 1)) != std::string::npos;
      at = end + 1;
    }
    if (!all_known) {
      write_file(path + ".bak", before);
      kept = true;
    }
  }
  write_file(path, bytes);
  return kept;
}

}  // namespace tankwright::exchange
