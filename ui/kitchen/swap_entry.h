// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/transfer/swap_on_desk.h"
#include "ui/kitchen/swap_offers.h"

#include <QObject>
#include <QString>

#include <cstddef>
#include <optional>
#include <vector>

namespace tarebowl::ui {

class DietDesk;
class VersionDocument;
class OpenCollection;
class SwapPane;

/// From a line of the diet on the design desk to the pane of swaps: asks the collection for what is on hand.
class SwapEntry : public QObject {
  Q_OBJECT
 public:
  SwapEntry(DietDesk& desk, const VersionDocument& document, OpenCollection& collection, SwapPane& pane,
            QObject* parent = nullptr);

  /// This food of the desk's problem is not available.
  void notAvailable(std::size_t food);

 signals:
  /// There is something to show.
  void opened();
  /// What was chosen, as a sentence.
  void told(const QString& what);

 private:
  void seekAmong(std::size_t food, std::vector<diet::DietFood> candidates, transfer::Candidates which);

  std::optional<std::size_t> sought_{};  ///< the line that something is sought for
  DietDesk& desk_;
  const VersionDocument& document_;  ///< whether what is offered or what is eaten counts
  OpenCollection& collection_;
  SwapPane& pane_;
};

}  // namespace tarebowl::ui
