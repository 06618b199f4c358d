// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/animal_list.h"

#include "ui/shared/cell_painting.h"

#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QMenu>
#include <QPushButton>
#include <QStyledItemDelegate>
#include <QTreeView>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

/// A name, bold for a species, and softly behind it what tells it from others.
class AnimalListDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    QStyleOptionViewItem shown = option;
    shown.font.setBold(!index.parent().isValid());
    paintRowGround(*painter, shown, currentTheme());
    paintText(*painter, shown, index.data().toString(), index.data(AnimalListModel::RemarkRole).toString(),
              currentTheme());
  }
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                               const QModelIndex& /*index*/) const override {
    return {100, option.fontMetrics.height() + 10};
  }
};

}  // namespace

AnimalList::AnimalList(AnimalDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      model_(new AnimalListModel(desk, this)),
      field_(new QLineEdit),
      add_(new QPushButton(tr("Add"))),
      tree_(new QTreeView),
      count_(new QLabel) {
  count_->setWordWrap(true);
  setObjectName(QStringLiteral("listPane"));
  setAttribute(Qt::WA_StyledBackground);
  build();
  wire();
  showCount();
}

void AnimalList::build() {
  field_->setAccessibleName(tr("Find a species, group or animal by part of its name"));
  field_->setPlaceholderText(tr("Find an animal…"));
  field_->setClearButtonEnabled(true);
  auto* menu = new QMenu(add_);
  menu->addAction(tr("A species new to the collection…"), this, &AnimalList::speciesWanted);
  menu->addAction(tr("A group of the species shown"), this, &AnimalList::groupWanted);
  menu->addAction(tr("An animal of the species shown"), this, &AnimalList::individualWanted);
  add_->setMenu(menu);
  add_->setToolTip(tr("Add a species, a group or an animal"));
  tree_->setModel(model_);
  tree_->setItemDelegate(new AnimalListDelegate(tree_));
  tree_->setAccessibleName(tr("Species, groups and animals"));
  tree_->setHeaderHidden(true);
  tree_->setIndentation(16);
  tree_->setMouseTracking(true);
  tree_->setUniformRowHeights(true);
  tree_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  count_->setProperty("soft", true);
  count_->setFont(smaller(font()));
  auto* top = new QHBoxLayout;
  top->setSpacing(7);
  top->addWidget(field_, 1);
  top->addWidget(add_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(14, 12, 14, 6);
  layout->setSpacing(8);
  layout->addLayout(top);
  layout->addWidget(tree_, 1);
  layout->addWidget(count_);
}

void AnimalList::wire() {
  connect(field_, &QLineEdit::textChanged, model_, &AnimalListModel::look);
  connect(field_, &QLineEdit::returnPressed, this, [this] {
    const QModelIndex hit = firstHit();
    if (!hit.isValid()) return;
    tree_->setFocus();
    tree_->setCurrentIndex(hit);
  });
  connect(model_, &QAbstractItemModel::modelReset, this, [this] {
    following_ = true;
    tree_->expandToDepth(model_->text().isEmpty() ? 0 : 2);
    following_ = false;
    follow();
    showCount();
  });
  connect(&desk_, &AnimalDesk::pageChanged, this, &AnimalList::follow);
  connect(tree_->selectionModel(), &QItemSelectionModel::currentChanged, this,
          [this](const QModelIndex& now) {
            const auto place = model_->placeAt(now);
            if (place && !following_ && desk_.shown() != place) emit chosen(*place);
          });
}

/// The first row that has the text itself, not one that stands above it.
QModelIndex AnimalList::firstHit() const {
  for (QModelIndex row = model_->index(0, 0); row.isValid(); row = tree_->indexBelow(row))
    if (row.data(Qt::ToolTipRole).toString().contains(model_->text(), Qt::CaseInsensitive)) return row;
  return model_->index(0, 0);
}

void AnimalList::focusField() {
  field_->setFocus(Qt::ShortcutFocusReason);
  field_->selectAll();
}

void AnimalList::choose(const AnimalPlace& place) {
  if (!model_->indexOf(place).isValid()) field_->clear();
  const QModelIndex index = model_->indexOf(place);
  if (index.isValid()) tree_->setCurrentIndex(index);
}

void AnimalList::follow() {
  if (!desk_.shown()) return;
  const QModelIndex index = model_->indexOf(*desk_.shown());
  if (!index.isValid() || tree_->currentIndex() == index) return;
  following_ = true;
  tree_->setCurrentIndex(index);
  following_ = false;
}

void AnimalList::showCount() {
  const Herd& herd = desk_.herd();
  const QLocale locale;
  if (model_->rowCount() == 0 && !desk_.isEmpty()) {
    count_->setText(tr("Nothing is called so. Clear the field."));
    return;
  }
  count_->setText(desk_.isReading() ? tr("reading…")
                                    : tr("%1 species · %2 groups · %3 animals by name")
                                          .arg(locale.toString(static_cast<int>(herd.species.size())),
                                               locale.toString(static_cast<int>(herd.groups.size())),
                                               locale.toString(static_cast<int>(herd.individuals.size()))));
}

}  // namespace tarebowl::ui
