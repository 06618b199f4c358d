// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/mapping_delegate.h"

#include "ui/foods/column_words.h"
#include "ui/foods/mapping_model.h"
#include "ui/shared/cell_painting.h"
#include "ui/shared/state_mark.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>
#include <QPainter>

namespace tarebowl::ui {
namespace {

constexpr int kAsTheTable = -1;
constexpr int kMarkSide = 9;

QComboBox* makeBecomes(QWidget* parent, bool isLong) {
  auto* box = new QComboBox(parent);
  box->setEditable(true);
  box->setInsertPolicy(QComboBox::NoInsert);
  box->addItems(becomesChoices(isLong));
  box->completer()->setCompletionMode(QCompleter::PopupCompletion);
  box->completer()->setFilterMode(Qt::MatchContains);
  box->completer()->setCaseSensitivity(Qt::CaseInsensitive);
  box->completer()->popup()->setObjectName(QStringLiteral("matches"));
  box->setAccessibleName(MappingDelegate::tr("What the column becomes"));
  return box;
}

QComboBox* makeBasis(QWidget* parent) {
  auto* box = new QComboBox(parent);
  box->setAccessibleName(MappingDelegate::tr("Basis"));
  box->addItem(MappingDelegate::tr("as the table"), kAsTheTable);
  for (const auto basis : {quantity::Basis::AsFed, quantity::Basis::DryMatter, quantity::Basis::Energy})
    box->addItem(basisWords(basis), static_cast<int>(basis));
  return box;
}

}  // namespace

void MappingDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const {
  const Theme& theme = currentTheme();
  paintRowGround(*painter, option, theme);
  QStyleOptionViewItem text = option;
  if (index.column() == MappingModel::Title && index.data(MappingModel::DoubtRole).toBool()) {
    const QRectF box(option.rect.right() - kMarkSide - 4, option.rect.center().y() - kMarkSide / 2.0,
                     kMarkSide, kMarkSide);
    paintMark(*painter, box, Mark::AtLimit, theme);
    text.rect.setRight(option.rect.right() - kMarkSide - 6);
  }
  const bool quiet =
      index.column() == MappingModel::Examples ||
      (index.column() != MappingModel::Title && index.data(MappingModel::LeftOutRole).toBool());
  const QString words = index.data().toString();
  const QString remark = index.data(MappingModel::RemarkRole).toString();
  if (!quiet) return paintText(*painter, text, words, remark, theme);
  const QRect box = text.rect.adjusted(7, 0, -7, 0);
  const QString line = remark.isEmpty() ? words : QStringLiteral("%1 · %2").arg(words, remark);
  painter->setFont(option.font);
  painter->setPen(theme.soft);
  painter->drawText(box, Qt::AlignVCenter | Qt::AlignLeft,
                    option.fontMetrics.elidedText(line, Qt::ElideRight, box.width()));
}

QWidget* MappingDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& /*option*/,
                                       const QModelIndex& index) const {
  if (index.column() == MappingModel::Unit) {
    auto* field = new QLineEdit(parent);
    field->setAccessibleName(tr("Unit"));
    return field;
  }
  const auto* model = qobject_cast<const MappingModel*>(index.model());
  auto* box = index.column() == MappingModel::Basis
                  ? makeBasis(parent)
                  : makeBecomes(parent, model != nullptr && model->usesRoles(index));
  keepWhenChosen(box);
  return box;
}

void MappingDelegate::keepWhenChosen(QComboBox* box) const {
  auto* self = const_cast<MappingDelegate*>(this);  // the signals of a delegate are not const
  connect(box, &QComboBox::activated, self, [self, box] {
    emit self->commitData(box);
    emit self->closeEditor(box);
  });
}

void MappingDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  if (auto* field = qobject_cast<QLineEdit*>(editor)) {
    field->setText(index.data(Qt::EditRole).toString());
  } else if (auto* box = qobject_cast<QComboBox*>(editor)) {
    if (index.column() == MappingModel::Basis) {
      box->setCurrentIndex(box->findData(index.data(Qt::EditRole)));
      return;
    }
    box->setCurrentIndex(box->findText(index.data(Qt::EditRole).toString()));
    box->lineEdit()->selectAll();
  }
}

void MappingDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                   const QModelIndex& index) const {
  if (const auto* field = qobject_cast<QLineEdit*>(editor))
    model->setData(index, field->text());
  else if (const auto* box = qobject_cast<QComboBox*>(editor))
    model->setData(index,
                   index.column() == MappingModel::Basis ? box->currentData() : QVariant(box->currentText()));
}

}  // namespace tarebowl::ui
