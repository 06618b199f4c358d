// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <filesystem>
#include <string>

namespace tarebowl::ui {

/// Opens the invented sample at `file`; where it is not there yet, makes it from the folder of the sample:
/// the foods of its diets with their sources, the invented reports of its own laboratory (laboratory.csv),
/// its animals with their target profiles (herd/) and their diets (diets/). For a worker. Throws
/// std::exception where a file cannot be read or written.
[[nodiscard]] store::Collection openOrMakeSample(const std::filesystem::path& file,
                                                 const std::filesystem::path& folder, const std::string& at);

/// Where a person's copy of the invented sample is kept.
[[nodiscard]] std::filesystem::path sampleCollection();

}  // namespace tarebowl::ui
