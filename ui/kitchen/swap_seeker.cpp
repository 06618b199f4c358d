// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/swap_seeker.h"

#include <QMetaObject>

#include <utility>

namespace tarebowl::ui {

SwapSeeker::SwapSeeker(QObject* parent) : QObject(parent) {
  connect(&errand_, &Errand::failed, this, [this](const std::exception_ptr& error) {
    try {
      std::rethrow_exception(error);
    } catch (const std::exception& problem) {
      emit failed(QString::fromUtf8(problem.what()));
    }
  });
}

void SwapSeeker::seek(diet::SwapRequest request, transfer::Candidates among) {
  const quint64 number = ++newest_;
  const bool isAll = among == transfer::Candidates::All;
  auto asked = std::make_shared<const diet::SwapRequest>(std::move(request));
  if (!(isAll && isPart_)) offers_ = {.request = asked};
  isPart_ = !isAll;
  errand_.run(
      [this, asked, number, isAll](const Errand::Terms& terms) {
        diet::SwapOptions options;
        options.most = kMost;
        options.stop = terms.stop;
        options.soFar = [&](const diet::SwapRanking& ranking) {
          QMetaObject::invokeMethod(
              this, [=, this, offers = offersOf(asked, ranking, kMost)] { take(number, offers); },
              Qt::QueuedConnection);
        };
        SwapOffers offers = offersOf(asked, diet::rankSwaps(*asked, options), kMost);
        offers.isComplete = offers.isComplete && isAll;
        return offers;
      },
      [this, number](SwapOffers offers) { take(number, std::move(offers)); });
  emit offersChanged();
}

void SwapSeeker::cancel() {
  ++newest_;
  isPart_ = false;
  errand_.cancel();
}

void SwapSeeker::take(quint64 number, SwapOffers offers) {
  if (number != newest_) return;
  offers_ = std::move(offers);
  emit offersChanged();
}

}  // namespace tarebowl::ui
