// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/opening.h"

#include <string>

namespace tarebowl::store {

/// A number that nothing in the table has or had: taking a removal back gives the thing its own number again,
/// whatever was added meanwhile. subject: what the change log calls such a thing.
[[nodiscard]] long long freshId(Collection::Inner& inner, const std::string& table,
                                const std::string& subject);

/// The same for foods and samples, which an import adds without an entry in the log for each.
[[nodiscard]] long long freshFoodId(Collection::Inner& inner);
[[nodiscard]] long long freshSampleId(Collection::Inner& inner);

}  // namespace tarebowl::store
