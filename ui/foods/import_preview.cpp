// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/import_preview.h"

#include "ui/shared/cell_painting.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/segmented_switch.h"
#include "ui/shared/table_copy.h"

#include <QHeaderView>
#include <QLabel>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>

#include <array>

namespace tarebowl::ui {
namespace {

using exchange::PlanLineKind;

/// In the order of the switch; nothing: every line.
constexpr std::array<std::optional<PlanLineKind>, 7> kKinds{
    std::nullopt,        PlanLineKind::NewFood, PlanLineKind::ChangedFood, PlanLineKind::UnchangedFood,
    PlanLineKind::Noted, PlanLineKind::LeftOut, PlanLineKind::Problem};

QString lineCount(std::size_t lines) {
  return lines == 1 ? ImportPreview::tr("1 line")
                    : ImportPreview::tr("%1 lines").arg(countText(static_cast<std::int64_t>(lines)));
}

class PlanDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const Theme& theme = currentTheme();
    paintRowGround(*painter, option, theme);
    QRect box = option.rect.adjusted(7, 0, -7, 0);
    if (index.column() == PlanModel::Outcome) {
      constexpr int kSide = 10;
      const QRectF mark(box.left(), box.center().y() - kSide / 2.0, kSide, kSide);
      paintMark(*painter, mark, static_cast<Mark>(index.data(PlanModel::MarkRole).toInt()), theme);
      box.setLeft(box.left() + kSide + 6);
    }
    painter->setFont(option.font);
    painter->setPen(index.column() == PlanModel::Line ? theme.soft : theme.ink);
    painter->drawText(box, index.data(Qt::TextAlignmentRole).toInt(),
                      option.fontMetrics.elidedText(index.data().toString(), Qt::ElideRight, box.width()));
  }
};

QTableView* makeTable(QAbstractItemModel& model) {
  auto* table = new QTableView;
  table->setModel(&model);
  table->setItemDelegate(new PlanDelegate(table));
  table->setAccessibleName(ImportPreview::tr("What the import will do, line by line"));
  table->setShowGrid(false);
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->setTabKeyNavigation(false);
  table->setWordWrap(false);
  table->verticalHeader()->hide();
  table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  table->verticalHeader()->setDefaultSectionSize(table->fontMetrics().height() + 8);
  table->horizontalHeader()->setHighlightSections(false);
  table->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  table->horizontalHeader()->setSectionResizeMode(PlanModel::Outcome, QHeaderView::Stretch);
  const int unit = table->fontMetrics().averageCharWidth();
  table->horizontalHeader()->resizeSection(PlanModel::Line, 10 * unit);
  table->horizontalHeader()->resizeSection(PlanModel::Subject, 28 * unit);
  addCopyAction(*table);
  return table;
}

}  // namespace

ImportPreview::ImportPreview(const ImportDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      model_(new PlanModel(desk, this)),
      kinds_(new SegmentedSwitch(tr("Lines"), {tr("all"), tr("new"), tr("changed"), tr("unchanged"),
                                               tr("noted"), tr("left out"), tr("problems")})),
      table_(makeTable(*model_)),
      told_(new QLabel) {
  told_->setProperty("soft", true);
  told_->setWordWrap(true);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(6);
  layout->addWidget(kinds_, 0, Qt::AlignLeft);
  layout->addWidget(table_, 1);
  layout->addWidget(told_);
  connect(kinds_, &SegmentedSwitch::chosen, this, [this](int index) {
    model_->setKind(kKinds.at(static_cast<std::size_t>(index)));
    showCounts();
  });
  connect(model_, &QAbstractItemModel::modelReset, this, &ImportPreview::showCounts);
  showCounts();
}

void ImportPreview::choose(std::optional<PlanLineKind> kind) {
  for (std::size_t i = 0; i < kKinds.size(); ++i)
    if (kKinds.at(i) == kind) kinds_->setCurrent(static_cast<int>(i));
  model_->setKind(kind);
}

void ImportPreview::showCounts() {
  const QLocale locale;
  QStringList tips;
  for (const auto& kind : kKinds) tips << lineCount(model_->countOf(kind));
  kinds_->setToolTips(tips);
  QString text = tr("%1 shown").arg(lineCount(static_cast<std::size_t>(model_->rowCount())));
  const auto add = [&](PlanLineKind kind, const QString& one, const QString& many) {
    const std::size_t lines = model_->countOf(kind);
    if (lines > 0) text += lines == 1 ? one : many.arg(locale.toString(static_cast<qulonglong>(lines)));
  };
  add(PlanLineKind::Problem, tr(" · 1 problem"), tr(" · %1 problems"));
  add(PlanLineKind::LeftOut, tr(" · 1 left out"), tr(" · %1 left out"));
  add(PlanLineKind::Noted, tr(" · 1 kept with a note"), tr(" · %1 kept with a note"));
  if (desk_.lines()->notKept() > 0)
    text += tr(" · %1 further lines are counted and not listed")
                .arg(locale.toString(static_cast<qulonglong>(desk_.lines()->notKept())));
  told_->setText(text);
}

}  // namespace tarebowl::ui
