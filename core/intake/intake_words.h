// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/animal_words.h"
#include "core/intake/feeding_records.h"

/// The words by which files, a collection and the command line name what stands in this folder.
namespace tarebowl::animal {

template <>
struct Words<intake::LeftoverKind> {
  static constexpr WordList<6> kWords{"weighed",   "all-eaten", "not-weighed",
                                      "estimated", "spilled",   "stolen"};
};

template <>
struct Words<intake::SwapApproval> {
  static constexpr WordList<4> kWords{"keeper", "waiting", "approved", "refused"};
};

}  // namespace tarebowl::animal
