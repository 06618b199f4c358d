// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/transfer/bowl_swap.h"
#include "ui/kitchen/swap_offers.h"

#include <QObject>
#include <QString>

#include <optional>

namespace tarebowl::ui {

class KitchenDesk;
class SwapPane;

/// From a food on the scale that is not there to the pane of swaps, and from the swap that the keeper takes
/// to the sheet.
class KitchenSwap : public QObject {
  Q_OBJECT
 public:
  KitchenSwap(KitchenDesk& desk, SwapPane& pane, QObject* parent = nullptr);

  /// The food of the line on the scale is not available.
  void notAvailable();

 signals:
  /// There is something to show.
  void opened();
  /// A swap was taken; what becomes of it, as a sentence.
  void taken(const QString& what);

 private:
  /// Looks again, as the pane counts now.
  void seek();
  void take(const SwapOffers& offers, const diet::Swap& swap);
  void show(std::variant<diet::SwapRequest, transfer::NoSwap> asked, transfer::Candidates which);

  struct Line {
    intake::PrepBowl bowl{};
    intake::BowlItem item{};
  };
  KitchenDesk& desk_;
  SwapPane& pane_;
  std::optional<Line> line_{};  ///< that is sought for
};

}  // namespace tarebowl::ui
