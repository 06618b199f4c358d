// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation.h"
#include "core/exchange/page_tongue.h"
#include "core/quantity/date.h"

#include <span>
#include <string>

/// A rotation as pages for the office and the wall: the calendar week by week, what is bought, how the mean
/// day stands.
namespace tarebowl::exchange {

struct RotationPage {
  std::string title{};
  std::string state{};  ///< who made it and when, how good it is; a sentence
  const diet::RotationProblem& problem;
  std::span<const diet::Diet> days;
  const diet::Balance& period;
  quantity::Date from{};
};

/// A page of its own, style included; every text is escaped.
[[nodiscard]] std::string rotationAsHtml(const RotationPage& page, const PageTongue& tongue = {});

}  // namespace tarebowl::exchange
