// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/transfer/swap_on_desk.h"
#include "ui/kitchen/swap_offers.h"
#include "ui/shared/errand.h"

#include <QObject>
#include <QString>

namespace tarebowl::ui {

/// Seeks swaps on a thread of its own. First offers come at once and better ones replace them until they are
/// complete; a newer request replaces an older one. What is on hand may come in two parts: what was found
/// among the first is offered until something was found among all.
class SwapSeeker : public QObject {
  Q_OBJECT
 public:
  explicit SwapSeeker(QObject* parent = nullptr);

  void seek(diet::SwapRequest request, transfer::Candidates among);
  void cancel();
  [[nodiscard]] bool isBusy() const { return errand_.isBusy(); }
  [[nodiscard]] const SwapOffers& offers() const { return offers_; }

  /// So many foods are offered beside the pairs: what a keeper would ever read.
  static constexpr std::size_t kMost = 20;

 signals:
  void offersChanged();
  void failed(const QString& why);

 private:
  void take(quint64 number, SwapOffers offers);

  SwapOffers offers_;
  quint64 newest_ = 0;
  bool isPart_ = false;  ///< what was sought among was not all; all is still to come
  Errand errand_;        // last: its thread uses the above
};

}  // namespace tarebowl::ui
