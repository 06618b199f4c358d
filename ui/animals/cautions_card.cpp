// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/cautions_card.h"

#include "ui/shared/card.h"
#include "ui/shared/plain_table.h"
#include "ui/shared/theme.h"

#include <QAbstractTableModel>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace tarebowl::ui {
namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

QString join(const std::vector<std::string>& words) {
  QStringList list;
  for (const std::string& word : words) list << text(word);
  return list.join(QStringLiteral(", "));
}

QString severityText(animal::CautionSeverity severity) {
  switch (severity) {
    case animal::CautionSeverity::Never:
      return CautionsCard::tr("■ never");
    case animal::CautionSeverity::Limit:
      return CautionsCard::tr("▲ little");
    case animal::CautionSeverity::Consider:
      break;
  }
  return CautionsCard::tr("○ consider");
}

QString foodText(const animal::FoodCaution& caution) {
  QString food = join(caution.words.empty() ? caution.groups : caution.words);
  if (!caution.forms.empty()) food += QStringLiteral(" (%1)").arg(join(caution.forms));
  return food;
}

class CautionsModel : public QAbstractTableModel {
 public:
  enum Column { Severity, Food, Reason, Advice, Source, ColumnCount };

  explicit CautionsModel(AnimalDesk& desk, QObject* parent) : QAbstractTableModel(parent), desk_(desk) {
    connect(&desk, &AnimalDesk::pageChanged, this, [this] { rebuild(); });
    rebuild();
  }
  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
  }
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override {
    return parent.isValid() ? 0 : ColumnCount;
  }
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) return static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    const QString names[] = {CautionsCard::tr("how grave"), CautionsCard::tr("food"), CautionsCard::tr("why"),
                             CautionsCard::tr("what to do"), CautionsCard::tr("where from")};
    return names[section];
  }
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const animal::FoodCaution& caution = rows_[static_cast<std::size_t>(index.row())];
    if (role == Qt::ForegroundRole && index.column() == Severity) return inkOf(caution.severity);
    if (role == Qt::ForegroundRole && index.column() == Source) return currentTheme().soft;
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    switch (index.column()) {
      case Severity:
        return severityText(caution.severity);
      case Food:
        return foodText(caution);
      case Reason:
        return text(caution.reason);
      case Advice:
        return text(caution.advice);
      default:
        return caution.origin.provenance == animal::Provenance::FromMemory ? CautionsCard::tr("from memory")
                                                                           : text(caution.origin.source);
    }
  }

 private:
  static QColor inkOf(animal::CautionSeverity severity) {
    const Theme& theme = currentTheme();
    if (severity == animal::CautionSeverity::Never) return theme.lacking;
    return severity == animal::CautionSeverity::Limit ? theme.atLimit : theme.unknown;
  }
  void rebuild() {
    beginResetModel();
    rows_ = desk_.page() ? desk_.page()->cautions : std::vector<animal::FoodCaution>();
    std::stable_sort(
        rows_.begin(), rows_.end(),
        [](const animal::FoodCaution& a, const animal::FoodCaution& b) { return a.severity < b.severity; });
    endResetModel();
  }

  AnimalDesk& desk_;
  std::vector<animal::FoodCaution> rows_;
};

}  // namespace

CautionsCard::CautionsCard(AnimalDesk& desk, QWidget* parent)
    : QFrame(parent), table_(new PlainTable(tr("Foods to be careful with"))) {
  QVBoxLayout* layout = layOutCard(*this, tr("Foods to be careful with"));
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setModel(new CautionsModel(desk, this));
  table_->setWideColumn(CautionsModel::Reason);
  layout->addWidget(table_, 1);
  auto* told = new QLabel(
      tr("The list is not complete. Ask a vet or nutritionist about every food that is new to the species."));
  told->setProperty("soft", true);
  told->setWordWrap(true);
  layout->addWidget(told);
}

}  // namespace tarebowl::ui
