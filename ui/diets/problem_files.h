// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "ui/shared/paths.h"

#include <QString>

#include <filesystem>
#include <optional>
#include <vector>

namespace tarebowl::ui {

/// What the list shows of a problem file.
struct ProblemEntry {
  std::filesystem::path file;
  QString title;     ///< its title, else the file's name
  QString subtitle;  ///< "3 animals · model: domestic dog", or why it cannot be read
  bool readable = true;
};

/// The problem files of a folder by title; other JSON files are passed over. Reads every file: for a worker
/// thread.
[[nodiscard]] std::vector<ProblemEntry> problemsIn(const std::filesystem::path& folder);
[[nodiscard]] ProblemEntry entryOf(const std::filesystem::path& file, const diet::BalanceProblem& problem);

/// Writes the whole file or leaves the old one as it was. Nothing on success, else why not.
[[nodiscard]] std::optional<QString> saveProblem(const std::filesystem::path& file,
                                                 const diet::BalanceProblem& problem);

/// "2 animals", "domestic cat" …
[[nodiscard]] QString animalsText(const diet::BalanceProblem& problem);
/// The model species that the targets name, each once.
[[nodiscard]] QStringList modelSpecies(const diet::BalanceProblem& problem);

}  // namespace tarebowl::ui
