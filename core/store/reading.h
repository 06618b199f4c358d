// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"
#include "core/store/not_answered.h"

#include <exception>
#include <utility>

namespace tarebowl::store {

/// While it lives, what is read of a collection is as it was at one moment. On a server what is asked is
/// noted and asked together: a question without an answer throws NotAnswered. Of a file everything is
/// answered at once.
class Reading {
 public:
  explicit Reading(const Collection& collection);
  ~Reading();
  Reading(const Reading&) = delete;
  Reading& operator=(const Reading&) = delete;

  /// Whether it is part of another, which fetches for it.
  [[nodiscard]] bool isOwn() const { return isOwn_; }
  /// Whether what was read is as it is: a reading first learns from former ones what is going to be asked.
  [[nodiscard]] bool holds() const;
  /// Whether the job now asks ahead.
  void askAhead(bool isToAsk);
  /// Whether it came to a place since where it would have.
  [[nodiscard]] bool wouldAskAhead() const;
  /// Asks for all that was noted, in one way there and back. Throws StoreError.
  void fetch();

 private:
  const Collection& collection_;
  bool isOwn_;      ///< and not part of another
  int rounds_ = 0;  ///< in which the job asked ahead
};

/// Whether what is asked now is noted, and it is worth while to ask ahead.
[[nodiscard]] bool gathers(const Collection& collection);
/// Whether what is asked is fetched together: of a server within a reading.
[[nodiscard]] bool asksTogether(const Collection& collection);
/// As gathers(), and nothing was asked ahead before: what rests on no answer was asked then.
[[nodiscard]] bool asksFirst(const Collection& collection);

/// Runs a job that reads, on a server in as few ways there and back as what it asks rests on what it was
/// answered: it is run until a question has no answer, what it asked so far is fetched, and it is run again
/// with the answers, until it has all of them. So a job reads as if each answer came at once; and all of it
/// is read as it was at one moment. What is read again takes fewer ways still: the job is run once with the
/// answers of former readings, only to learn what it asks. It must change nothing but what it returns, and
/// bear answers that do not fit each other, as long as it ends. It does not write.
/// Each time it is first run as if all were answered already: only where that is not so, it asks ahead.
template <class Place, class Job>  // Place: Collection, or a const one
auto readTogether(Place& collection, const Job& job) -> decltype(job(collection)) {
  Reading reading(collection);
  if (!reading.isOwn()) return job(collection);
  for (;; reading.fetch())
    for (const bool asksAhead : {false, true}) {
      reading.askAhead(asksAhead);
      try {
        auto made = job(collection);
        if (reading.holds()) return made;
        break;                        // nothing is missing but that it holds
      } catch (const NotAnswered&) {  // NOLINT(bugprone-empty-catch): it is noted
      } catch (const std::exception&) {
        if (reading.holds()) throw;
      }
      if (!reading.wouldAskAhead()) break;
    }
}

/// The job as one that reads together.
template <class Job>
auto inOneReading(Job job) {
  return [job = std::move(job)](Collection& collection) { return readTogether(collection, job); };
}

/// Within a job: asks what will be asked later anyway, so that it is fetched with what is asked first. Each
/// of the functions asks one thing, as far as it comes without an answer.
template <class... Ask>
void askAhead(const Collection& collection, const Ask&... asks) {
  if (!gathers(collection)) return;
  const auto ask = [](const auto& one) {
    try {
      one();
    } catch (const NotAnswered&) {  // NOLINT(bugprone-empty-catch): it is noted
    }
  };
  (ask(asks), ...);
}

/// The same of what rests on no answer at all: it is asked once, and not read before it is needed.
template <class... Ask>
void askFirst(const Collection& collection, const Ask&... asks) {
  if (asksFirst(collection)) askAhead(collection, asks...);
}

}  // namespace tarebowl::store
