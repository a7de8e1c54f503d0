// SPDX-License-Identifier: BSL-1.0
/// @file
/// Reading and writing files so that nothing is lost: whole or not at all, never the input, never through a link.
#pragma once

#include <stdexcept>
#include <string>
#include <string_view>

namespace tankwright::exchange {

/// A file that cannot be read or written; `what()` is one line that begins with its name.
class file_error : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

/// Everything that is in a file.
///
/// @param path of a file of at most `largest_document` bytes
/// @return     its bytes
/// @throws     file_error: no name, no such file, a folder, too large, cannot be read
/// @accuracy   exact
/// @source     this library
[[nodiscard]] std::string read_file(const std::string& path);

/// Write a whole file: beside it under a name of its own, then in its place. Who looks sees the old file or the new
/// one.
///
/// @param path  of the file; where it exists it must be a regular file, and it keeps its permissions
/// @param bytes all that is to be in it
/// @param input a file that must not be written over; empty: none
/// @throws      file_error: no name, a folder, a link, a device, the input itself, a full disk
/// @accuracy    exact
/// @source      this library
void write_file(const std::string& path, std::string_view bytes, const std::string& input = {});

/// Save a plan: as `write_file`; where the file that stands there has comments of its own (lines that `own` lacks), it
/// is kept beside it as ".bak".
///
/// @param path  of the plan file
/// @param bytes the new plan
/// @return      whether the old file was kept as path + ".bak"
/// @throws      file_error as `write_file`
/// @accuracy    exact
/// @source      this library
bool save_plan(const std::string& path, std::string_view bytes);

}  // namespace tankwright::exchange

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/exchange/files.ipp>
#endif
