// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/transfer/swap_on_desk.h"
#include "ui/kitchen/swap_offers.h"

#include <QWidget>

#include <optional>

class QKeyEvent;
class QLabel;
class QListView;
class QPushButton;

namespace tarebowl::ui {

class SegmentedSwitch;
class SwapModel;
class SwapSeeker;

/// "Not available": what to give instead, for gloves and a glance. Arrows or the number keys choose, Enter
/// uses, D and E take as much dry matter or energy as what is missing brought, Escape goes back. Where a bowl
/// is swapped for, O turns from what is offered to what is eaten of it and back.
class SwapPane : public QWidget {
  Q_OBJECT
 public:
  explicit SwapPane(QWidget* parent = nullptr);

  /// Begins to seek; what was sought before is dropped. All candidates may follow some, for the same line.
  void seek(diet::SwapRequest request, transfer::Candidates among = transfer::Candidates::All);
  /// Why nothing can be sought: in the place of the offers.
  void say(const QString& why);
  /// Lets the keeper say what is to stay near the approved bowl: what is offered, or what is eaten of it.
  void offerCounting();
  [[nodiscard]] transfer::CountedAs counted() const;
  [[nodiscard]] SwapModel& model() const { return *model_; }
  [[nodiscard]] QListView& list() const { return *list_; }
  [[nodiscard]] bool isSeeking() const;

  bool eventFilter(QObject* watched, QEvent* event) override;

 signals:
  /// The swap of request() that the keeper takes.
  void used(const tarebowl::ui::SwapOffers& offers, const tarebowl::diet::Swap& swap);
  void dismissed();
  /// Otherwise counted than before: what was offered no longer holds.
  void countedChosen();

 private:
  void build();
  void showOffers();
  void showChosen();
  [[nodiscard]] const SwapOffer* chosen() const;
  void choose(int row);
  [[nodiscard]] bool take(const QKeyEvent& key);
  void use(const std::optional<diet::Swap>& swap);
  void useChosen();
  void turnCounting();

  SwapSeeker* seeker_;
  SwapModel* model_;
  QLabel* title_;
  QLabel* missing_;
  SegmentedSwitch* counted_;
  QLabel* state_;
  QListView* list_;
  QLabel* equal_;
  QLabel* others_;
  QPushButton* use_;
  QPushButton* back_;
};

}  // namespace tarebowl::ui
