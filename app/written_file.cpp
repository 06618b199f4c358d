// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/written_file.h"

#include "app/command_line.h"

#include <fstream>

namespace tarebowl::app {

void writeWhole(const std::string& file, const std::string& text) {
  std::ofstream out(file, std::ios::binary);
  out << text;
  out.flush();
  if (!out) throw UsageError(file + ": cannot be written");
}

}  // namespace tarebowl::app
