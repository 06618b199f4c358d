// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/postgresql_memory.h"

#include <libpq-fe.h>

#include <algorithm>
#include <utility>

namespace tarebowl::store {

namespace {

/// What a few rooms show of a large collection; years of feeding are read anew.
constexpr std::size_t kMostKept = 16'000'000;
constexpr std::size_t kMostOfOne = 2'000'000;

std::size_t sizeOf(const PostgresqlMemory::Kept& kept) {
  return PQresultMemorySize(kept.answer.get()) + kept.question->key.size();
}

}  // namespace

void writeKey(std::string& key, const KnownStatement& statement, const PostgresqlQuestion::Values& values) {
  key.assign(std::to_string(statement.number));
  for (const auto& value : values) {
    key += '\0';
    key += value ? std::to_string(value->size()) + ':' + *value : "null";
  }
}

const PostgresqlMemory::Kept* PostgresqlMemory::find(const std::string& key) {
  const auto found = kept_.find(key);
  if (found == kept_.end()) return nullptr;
  found->second.lastUse = ++uses_;
  return &found->second;
}

bool PostgresqlMemory::turnTo(const std::string& moment) {
  isDoubted_ = false;
  if (moment == moment_) return true;
  moment_ = moment;
  ++moments_;
  return false;
}

void PostgresqlMemory::keep(std::shared_ptr<const PostgresqlQuestion> question, PostgresqlAnswer answer) {
  if (const auto former = kept_.find(question->key); former != kept_.end()) {
    size_ -= sizeOf(former->second);
    kept_.erase(former);
  }
  Kept made{std::move(question), std::move(answer), moments_, ++uses_};
  const std::size_t size = sizeOf(made);
  if (size > kMostOfOne) return;
  size_ += size;
  const std::string_view key = made.question->key;
  kept_.emplace(key, std::move(made));
  if (size_ > kMostKept) makeRoom();
}

/// Down to half of it, so that it is not done for each that comes.
void PostgresqlMemory::makeRoom() {
  std::vector<const Kept*> all;
  all.reserve(kept_.size());
  for (const auto& [key, kept] : kept_) all.push_back(&kept);
  std::ranges::sort(all, {}, &Kept::lastUse);
  std::vector<std::shared_ptr<const PostgresqlQuestion>> gone;  // their keys are looked up below
  for (const Kept* kept : all) {
    if (size_ <= kMostKept / 2) break;
    size_ -= sizeOf(*kept);
    gone.push_back(kept->question);
  }
  for (const auto& question : gone) kept_.erase(question->key);
}

void PostgresqlMemory::forget() {
  *this = {};
}

}  // namespace tarebowl::store
