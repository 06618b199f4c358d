// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/herd_file.h"
#include "core/exchange/problem_json.h"
#include "tests/fuzz/file_in_memory.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

namespace {

template <class Read>
void complainOnOneLine(Read&& read) {
  try {
    (void)read();
  } catch (const tarebowl::exchange::FormatError& error) {
    if (std::string_view(error.what()).find('\n') != std::string_view::npos) std::abort();
  }
}

}  // namespace

// The bytes as each file of a folder of animals: who there is, what they weigh, how they are scored.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace tarebowl;
  const fuzz::FileInMemory file({data, size});
  complainOnOneLine([&] { return exchange::readHerd(file.path()); });
  complainOnOneLine([&] { return exchange::readMasses(file.path()); });
  complainOnOneLine([&] { return exchange::readConditions(file.path()); });
  return 0;
}
