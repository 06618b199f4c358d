// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/suggestion.h"
#include "ui/shared/errand.h"

#include <QObject>

namespace tarebowl::ui {

class DietDesk;
class Larder;

/// Looks, once a diet has come to rest in trouble, for what would settle it: foods of the larder, more of a
/// food, a bound that gives way. On a thread of its own; an edit makes it look again.
class Suggestions : public QObject {
  Q_OBJECT
 public:
  Suggestions(DietDesk& desk, Larder& larder, QObject* parent = nullptr);

  [[nodiscard]] const std::vector<Suggestion>& found() const { return found_; }
  [[nodiscard]] bool isLooking() const { return waiting_ || errand_.isBusy(); }
  /// Tries one of those found on the draft.
  void tryOut(std::size_t suggestion);

 signals:
  void changed();

 private:
  void look();
  void start();
  void take(const SuggestedFacts& facts);
  void drop();

  DietDesk& desk_;
  Larder& larder_;
  std::vector<Suggestion> found_;
  bool waiting_ = false;  // for the larder
  Errand errand_;
};

}  // namespace tarebowl::ui
