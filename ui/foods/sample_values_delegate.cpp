// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/sample_values_delegate.h"

#include "ui/foods/sample_values_model.h"
#include "ui/shared/cell_painting.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>
#include <QPainter>
#include <QStringList>

namespace tarebowl::ui {
namespace {

constexpr quantity::Basis kBases[] = {quantity::Basis::AsFed, quantity::Basis::DryMatter,
                                      quantity::Basis::Energy};

QStringList nutrientNames() {
  QStringList names;
  for (const food::Nutrient& nutrient : food::allNutrients()) {
    names << QString::fromStdString(nutrient.name);
    names << QString::fromStdString(nutrient.tagname);
  }
  return names;
}

}  // namespace

void SampleValuesDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const {
  const Theme& theme = currentTheme();
  paintRowGround(*painter, option, theme);
  const QString complaint = index.data(Qt::ToolTipRole).toString();
  const bool hint = index.data(Qt::EditRole).toString().isEmpty();
  painter->setFont(option.font);
  painter->setPen(!complaint.isEmpty() ? theme.lacking : hint ? theme.soft : theme.ink);
  const QRect box = option.rect.adjusted(7, 0, -7, 0);
  painter->drawText(box, index.data(Qt::TextAlignmentRole).toInt(),
                    option.fontMetrics.elidedText(index.data().toString(), Qt::ElideRight, box.width()));
}

QWidget* SampleValuesDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& /*option*/,
                                            const QModelIndex& index) const {
  if (index.column() == SampleValuesModel::Basis) {
    auto* box = new QComboBox(parent);
    box->setAccessibleName(tr("Basis"));
    box->addItems({tr("per 100 g as fed"), tr("per kg DM"), tr("per 1000 kcal")});
    return box;
  }
  auto* field = new QLineEdit(parent);
  field->setAccessibleName(index.model()->headerData(index.column(), Qt::Horizontal).toString());
  if (index.column() == SampleValuesModel::Nutrient) {
    auto* completer = new QCompleter(nutrientNames(), field);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains);
    completer->popup()->setObjectName(QStringLiteral("matches"));
    field->setCompleter(completer);
  }
  return field;
}

void SampleValuesDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  if (auto* box = qobject_cast<QComboBox*>(editor)) {
    for (int i = 0; i < 3; ++i)
      if (static_cast<int>(kBases[i]) == index.data(Qt::EditRole).toInt()) box->setCurrentIndex(i);
  } else if (auto* field = qobject_cast<QLineEdit*>(editor)) {
    field->setText(index.data(Qt::EditRole).toString());
  }
}

void SampleValuesDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                        const QModelIndex& index) const {
  if (const auto* box = qobject_cast<QComboBox*>(editor))
    model->setData(index, static_cast<int>(kBases[box->currentIndex()]));
  else if (const auto* field = qobject_cast<QLineEdit*>(editor))
    model->setData(index, field->text());
}

}  // namespace tarebowl::ui
