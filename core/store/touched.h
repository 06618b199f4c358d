// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <initializer_list>
#include <optional>
#include <set>
#include <string_view>
#include <utility>

namespace tarebowl::store {

/// What belongs together in a collection.
enum class Part {
  Foods,    ///< with samples, imported tables and lots
  Animals,  ///< with groups, masses, conditions
  Targets,  ///< with energy plans and the house's own cautions
  Diets,    ///< with rotations
  Kitchen,  ///< what was fed, swaps, pans
  Health    ///< observations, faeces
};

/// The parts that somebody wrote to, so that who has read a collection reads no more than that again.
class Touched {
 public:
  /// It is not known what: all of it.
  Touched() = default;
  explicit Touched(std::set<Part> parts) : parts_(std::move(parts)) {}

  [[nodiscard]] bool isAll() const { return !parts_; }
  [[nodiscard]] bool any(std::initializer_list<Part> parts) const {
    if (!parts_) return true;
    for (const Part part : parts)
      if (parts_->contains(part)) return true;
    return false;
  }
  friend bool operator==(const Touched&, const Touched&) = default;

 private:
  std::optional<std::set<Part>> parts_{};
};

/// The part to which a subject of the change log belongs; nothing: to all of it, or to one that is not known.
[[nodiscard]] std::optional<Part> partOf(std::string_view subject);

}  // namespace tarebowl::store
