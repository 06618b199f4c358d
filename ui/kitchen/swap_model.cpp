// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/swap_model.h"

#include "ui/kitchen/swap_sentences.h"

namespace tarebowl::ui {

SwapModel::SwapModel(QObject* parent) : QAbstractListModel(parent) {}

void SwapModel::show(const SwapOffers& offers) {
  beginResetModel();
  offers_ = offers;
  endResetModel();
}

int SwapModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(offers_.offers.size());
}

QVariant SwapModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const SwapOffer& offer = offers_.offers.at(static_cast<std::size_t>(index.row()));
  const diet::SwapRequest& request = *offers_.request;
  switch (role) {
    case GramsRole:
      return swapGramsText(request, offer.swap);
    case EachRole:
      return eachText(request, offer.swap);
    case FoodsRole:
      return swapFoodsText(request, offer.swap);
    case EffectRole:
      return effectLine(request, offer);
    case CautionRole:
      return cautionLine(offer);
    case AskRole:
      return askLine(offer);
    case MarkRole:
      return static_cast<int>(markOf(offer));
    case Qt::DisplayRole:
      return tr("%1 %2").arg(swapGramsText(request, offer.swap), swapFoodsText(request, offer.swap));
    case Qt::AccessibleTextRole:
    case Qt::ToolTipRole: {
      QString text = tr("%1 %2. %3. %4.")
                         .arg(swapGramsText(request, offer.swap), swapFoodsText(request, offer.swap),
                              effectLine(request, offer), askLine(offer));
      if (const QString caution = cautionLine(offer); !caution.isEmpty()) text += QLatin1Char(' ') + caution;
      return text;
    }
    default:
      return {};
  }
}

}  // namespace tarebowl::ui
