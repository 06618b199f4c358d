// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/bowl_model.h"

#include "ui/kitchen/kitchen_text.h"
#include "ui/shared/format.h"
#include "ui/shared/theme.h"

#include <QApplication>
#include <QFont>

namespace tarebowl::ui {
namespace {

/// Readable from where the bowls stand.
QFont bigType() {
  constexpr int kPoints = 15;
  QFont font = QApplication::font();
  font.setPointSize(kPoints);
  return font;
}

}  // namespace

BowlModel::BowlModel(const KitchenDesk& desk, QObject* parent) : QAbstractTableModel(parent), desk_(desk) {
  connect(&desk, &KitchenDesk::sheetChanged, this, [this] {
    beginResetModel();
    endResetModel();
  });
  connect(&desk, &KitchenDesk::placeChanged, this, [this] {
    beginResetModel();
    endResetModel();
  });
}

int BowlModel::rowCount(const QModelIndex& parent) const {
  if (parent.isValid() || desk_.bowl() == nullptr) return 0;
  return static_cast<int>(desk_.bowl()->bowl.items.size());
}

int BowlModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : kColumns;
}

std::optional<intake::WeightState> BowlModel::stateOf(const intake::BowlItem& item) const {
  const auto weighed = intake::entryThatCounts(item.weighings);
  if (!weighed) return std::nullopt;
  return intake::stateOf(item.planned, weighed->actual,
                         transfer::toleranceIn(*desk_.bowl(), item.food, desk_.sheet()->judgedBy()));
}

QString BowlModel::text(const intake::BowlItem& item, int column) const {
  const intake::KitchenFood food = desk_.sheet()->foodOf(item.food);
  switch (column) {
    case ToWeigh:
      return item.swappedOut ? QStringLiteral("–") : portionText(item.planned, food);
    case Food:
      if (item.swappedOut) return tr("%1: swapped for another").arg(foodText(food));
      return item.swap ? tr("%1 (swapped in)").arg(foodText(food)) : foodText(food);
    case Preparation:
      return QString::fromStdString(item.preparation);
    default:
      break;
  }
  if (desk_.task() == KitchenDesk::Task::Leftovers) return leftText(item, food);
  const auto state = stateOf(item);
  if (!state) return {};
  constexpr const char* kShapes[] = {"●", "▼", "▲"};
  const auto weighed = intake::entryThatCounts(item.weighings);
  return tr("%1 g %2 %3")
      .arg(grams(weighed->actual, food.step), QString::fromUtf8(kShapes[static_cast<int>(*state)]),
           wordOf(*state));
}

QVariant BowlModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || desk_.bowl() == nullptr) return {};
  const intake::BowlItem& item = desk_.bowl()->bowl.items.at(static_cast<std::size_t>(index.row()));
  switch (role) {
    case Qt::DisplayRole:
      return text(item, index.column());
    case Qt::FontRole:
      return bigType();
    case Qt::ToolTipRole:
      return entriesText(item, desk_.sheet()->foodOf(item.food));
    case Qt::TextAlignmentRole:
      return QVariant(index.column() == ToWeigh ? Qt::AlignRight | Qt::AlignVCenter
                                                : Qt::AlignLeft | Qt::AlignVCenter);
    case Qt::ForegroundRole: {
      if (item.swappedOut) return currentTheme().soft;
      const bool isJudged = index.column() == Weighed && desk_.task() == KitchenDesk::Task::WeighIn;
      const auto state = isJudged ? stateOf(item) : std::nullopt;
      return state ? QVariant(colorOf(markOf(*state), currentTheme())) : QVariant(currentTheme().ink);
    }
    default:
      return {};
  }
}

QVariant BowlModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case ToWeigh:
      return tr("to weigh");
    case Food:
      return tr("food");
    case Preparation:
      return tr("preparation");
    default:
      return desk_.task() == KitchenDesk::Task::Leftovers ? tr("left") : tr("weighed");
  }
}

}  // namespace tarebowl::ui
