// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/known_statements.h"

#include "core/store/postgresql_dialect.h"

#include <fmt/format.h>

#include <utility>

namespace tarebowl::store {

namespace {

/// Some statements have numbers in their text and do not come again for long: neither here nor on the server
/// are they to become more and more.
constexpr std::size_t kMostKnown = 2'000;
constexpr std::size_t kMostKeptReady = 500;

}  // namespace

std::shared_ptr<KnownStatement> KnownStatements::of(const std::string& common) {
  if (const auto known = known_.find(common); known != known_.end()) return known->second;
  if (known_.size() >= kMostKnown) makeRoom();
  auto made = std::make_shared<KnownStatement>(KnownStatement{++numbers_, withNumberedPlaces(common)});
  known_.emplace(common, made);
  return made;
}

/// What the server keeps ready stays known, or it would be made ready once more.
void KnownStatements::makeRoom() {
  std::erase_if(known_, [this](const auto& known) { return !names_.contains(known.second->number); });
}

bool KnownStatements::countRun(KnownStatement& statement) const {
  return statement.runs++ > 0 && named_ < kMostKeptReady;
}

std::string KnownStatements::nameOf(const KnownStatement& statement) const {
  const auto named = names_.find(statement.number);
  return named == names_.end() ? std::string() : named->second;
}

std::string KnownStatements::freshName() {
  return fmt::format("tarebowl_{}", ++named_);
}

void KnownStatements::keepName(std::uint64_t number, std::string name) {
  names_.insert_or_assign(number, std::move(name));
}

void KnownStatements::forgetNames() {
  names_.clear();
  named_ = 0;
}

}  // namespace tarebowl::store
