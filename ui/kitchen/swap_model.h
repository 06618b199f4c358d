// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/swap_offers.h"

#include <QAbstractListModel>

namespace tarebowl::ui {

/// The swaps that are offered, a row each, as texts.
class SwapModel : public QAbstractListModel {
  Q_OBJECT
 public:
  enum Role { GramsRole = Qt::UserRole, EachRole, FoodsRole, EffectRole, CautionRole, AskRole, MarkRole };

  explicit SwapModel(QObject* parent = nullptr);

  void show(const SwapOffers& offers);
  /// Valid until other offers are shown.
  [[nodiscard]] const SwapOffers& offers() const { return offers_; }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

 private:
  SwapOffers offers_;
};

}  // namespace tarebowl::ui
