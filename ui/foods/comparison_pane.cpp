// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/comparison_pane.h"

#include "ui/shared/cell_painting.h"
#include "ui/shared/format.h"
#include "ui/shared/segmented_switch.h"
#include "ui/shared/table_copy.h"
#include "ui/shared/theme.h"
#include "ui/shared/wrapping_row.h"

#include <QHeaderView>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace tarebowl::ui {
namespace {

constexpr std::size_t kMostCompared = 8;  // more are no comparison a person can read

class ComparisonDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const Theme& theme = currentTheme();
    paintRowGround(*painter, option, theme);
    QFont face = option.font;
    face.setBold(index.data(ComparisonModel::HighestRole).toBool());
    painter->setFont(face);
    painter->setPen(index.data(ComparisonModel::UnknownRole).toBool() ? theme.unknown : theme.ink);
    const QRect box = option.rect.adjusted(7, 0, -7, 0);
    painter->drawText(box, index.data(Qt::TextAlignmentRole).toInt(),
                      QFontMetrics(face).elidedText(index.data().toString(), Qt::ElideRight, box.width()));
  }
};

}  // namespace

ComparisonPane::ComparisonPane(FoodDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      model_(new ComparisonModel(this)),
      table_(new QTableView),
      title_(new QLabel(tr("Side by side"))) {
  QFont large = title_->font();
  large.setPointSizeF(large.pointSizeF() * 1.4);
  large.setBold(true);
  title_->setFont(large);
  auto* basis = new SegmentedSwitch(tr("Basis"), {tr("as fed, 100 g"), tr("kg DM"), tr("1000 kcal")});
  basis->setCurrent(static_cast<int>(CompositionBasis::DryMatterKg));
  auto* back = new QPushButton(tr("Back to one food"));
  table_->setModel(model_);
  table_->setItemDelegate(new ComparisonDelegate(table_));
  table_->setAccessibleName(tr("Foods side by side"));
  table_->setShowGrid(false);
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setTabKeyNavigation(false);
  table_->setWordWrap(true);
  table_->verticalHeader()->hide();
  table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 9);
  table_->horizontalHeader()->setHighlightSections(false);
  table_->horizontalHeader()->setTextElideMode(Qt::ElideRight);
  table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  // there are always more nutrients than lines; a bar that came later would narrow the columns once fitted
  table_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  addCopyAction(*table_);
  title_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  auto* head = new WrappingRow;
  head->addWidget(title_);
  head->addWidget(basis);
  head->addWidget(back);
  auto* card = new QFrame;
  card->setProperty("card", true);
  auto* cardLayout = new QVBoxLayout(card);
  cardLayout->setContentsMargins(7, 5, 7, 7);
  cardLayout->addWidget(table_);
  auto* told = new QLabel(tr("The highest of each row is bold. Ctrl+C copies the table."));
  told->setProperty("soft", true);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(16, 10, 16, 10);
  layout->setSpacing(10);
  layout->addLayout(head);
  layout->addWidget(card, 1);
  layout->addWidget(told);
  connect(basis, &SegmentedSwitch::chosen, model_,
          [this](int index) { model_->setBasis(static_cast<CompositionBasis>(index)); });
  connect(&desk_, &FoodDesk::energyChanged, this, [this, basis] {
    model_->setEnergy(desk_.energy());
    basis->setWord(2, tr("1000 %1").arg(unitText(unitOf(desk_.energy()))));
  });
  connect(back, &QPushButton::clicked, this, &ComparisonPane::done);
  connect(model_, &QAbstractItemModel::modelReset, this, &ComparisonPane::fitColumns);
}

void ComparisonPane::compare(const std::vector<FoodId>& foods) {
  std::vector<FoodId> few(foods.begin(),
                          foods.begin() + static_cast<std::ptrdiff_t>(std::min(foods.size(), kMostCompared)));
  title_->setText(few.size() == foods.size() ? tr("%1 foods side by side").arg(static_cast<int>(few.size()))
                                             : tr("The first %1 of %2 foods side by side")
                                                   .arg(static_cast<int>(few.size()))
                                                   .arg(static_cast<int>(foods.size())));
  desk_.readCompositions(few, [this](const FoodDesk::Figures& read) {
    std::vector<ComparisonModel::Compared> compared;
    for (const auto& [id, figures] : read)
      if (const food::FoodLine* line = desk_.lineOf(id)) {
        const QString remark = remarkOf(line->form, figures.invented);
        compared.push_back({remark.isEmpty() ? nameOf(*line) : nameOf(*line) + QLatin1Char('\n') + remark,
                            figures.composition});
      }
    model_->show(std::move(compared));
  });
}

void ComparisonPane::fitColumns() {
  const int foods = std::max(1, model_->columnCount() - 1);
  const int width = table_->viewport()->width();
  const int least = fontMetrics().averageCharWidth() * 12;
  const int names = std::min(width * 3 / 10, fontMetrics().averageCharWidth() * 30);
  table_->horizontalHeader()->resizeSection(0, names);
  for (int column = 1; column < model_->columnCount(); ++column)
    table_->horizontalHeader()->resizeSection(column, std::max(least, (width - names) / foods));
}

void ComparisonPane::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitColumns();
}

}  // namespace tarebowl::ui
