// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/ingredient_delegate.h"

#include "ui/diets/diet_desk.h"
#include "ui/diets/ingredient_model.h"
#include "ui/shared/cell_painting.h"
#include "ui/shared/icons.h"
#include "ui/shared/number_field.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <cmath>

namespace tarebowl::ui {
namespace {

constexpr double kMostGrams = 1e6;
constexpr int kLockSide = 16;

const IngredientModel& modelOf(const QModelIndex& index) {
  return *qobject_cast<const IngredientModel*>(index.model());
}

QStyleOptionViewItem emphasised(const QStyleOptionViewItem& option, bool bold, double scale = 1.0) {
  QStyleOptionViewItem changed = option;
  changed.font.setBold(bold);
  if (scale != 1.0) changed.font.setPointSizeF(option.font.pointSizeF() * scale);
  return changed;
}

void paintLock(QPainter& painter, const QStyleOptionViewItem& option, bool locked, const Theme& theme) {
  const bool hinted =
      option.state.testFlag(QStyle::State_MouseOver) || option.state.testFlag(QStyle::State_HasFocus);
  if (!locked && !hinted) return;
  QRectF box(0, 0, kLockSide, kLockSide);
  box.moveCenter(QRectF(option.rect).center());
  paintIcon(painter, box, locked ? QStringLiteral("lock") : QStringLiteral("unlock"),
            locked ? theme.ink : theme.soft);
}

/// A maximum may be left empty: no limit. It shows as the least value, one step below zero.
class LimitSpinBox : public NumberField {
 public:
  using NumberField::NumberField;

  [[nodiscard]] double valueFromText(const QString& text) const override {
    return text.trimmed().isEmpty() ? minimum() : NumberField::valueFromText(text);
  }
  QValidator::State validate(QString& text, int& pos) const override {
    return text.trimmed().isEmpty() ? QValidator::Acceptable : NumberField::validate(text, pos);
  }
};

}  // namespace

void IngredientDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                               const QModelIndex& index) const {
  const Theme& theme = currentTheme();
  paintRowGround(*painter, option, theme);
  const QString text = index.data().toString();
  const bool given = index.siblingAtColumn(IngredientModel::GramsADay).data(Qt::EditRole).toDouble() > 0.0;
  Theme quiet = theme;
  quiet.ink = theme.soft;
  switch (index.column()) {
    case IngredientModel::Food:
      paintText(*painter, emphasised(option, given), index.data(IngredientModel::NameRole).toString(),
                index.data(IngredientModel::RemarkRole).toString(), given ? theme : quiet);
      break;
    case IngredientModel::GramsADay:
      paintValue(*painter, emphasised(option, given, given ? 1.12 : 1.0), text,
                 index.data(IngredientModel::UnitRole).toString(), given ? theme : quiet);
      break;
    case IngredientModel::Lock:
      paintLock(*painter, option, index.data(Qt::CheckStateRole).toInt() == Qt::Checked, theme);
      break;
    case IngredientModel::ShareBar:
      paintBar(*painter, option, index);
      break;
    case IngredientModel::Share:
      paintValue(*painter, option, text, {}, given ? theme : quiet);
      break;
    default:
      paintValue(*painter, option, text, {}, quiet);
      break;
  }
}

void IngredientDelegate::paintBar(QPainter& painter, const QStyleOptionViewItem& option,
                                  const QModelIndex& index) const {
  const Theme& theme = currentTheme();
  const QVariant share = index.data(IngredientModel::NumberRole);
  QRectF track = QRectF(option.rect).adjusted(7, 0, -4, 0);
  track.setTop(option.rect.center().y() - 3);
  track.setHeight(7);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.line);
  painter.drawRoundedRect(track, 2, 2);
  if (share.isValid() && share.toDouble() > 0.0) {
    QRectF filled = track;
    filled.setWidth(std::max(2.0, track.width() * share.toDouble()));
    painter.setBrush(theme.bar);
    painter.drawRoundedRect(filled, 2, 2);
  }
  painter.restore();
}

QSize IngredientDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const int height = option.fontMetrics.height() + 9;
  const QString text = index.data().toString();
  const int spinRoom = 30;  // the editor's arrows
  switch (index.column()) {
    case IngredientModel::Food: {
      const QFontMetrics bold(emphasised(option, true).font);
      const QString remark = index.data(IngredientModel::RemarkRole).toString();
      return {bold.horizontalAdvance(index.data(IngredientModel::NameRole).toString()) +
                  option.fontMetrics.horizontalAdvance(remark) + 20,
              height};
    }
    case IngredientModel::GramsADay:
      return {
          valueWidth(emphasised(option, true, 1.12), text, index.data(IngredientModel::UnitRole).toString()) +
              spinRoom + 12,
          height};
    case IngredientModel::Lock:
      return {kLockSide + 12, height};
    case IngredientModel::ShareBar:
      return {80, height};
    case IngredientModel::Min:
    case IngredientModel::Max:
      return {option.fontMetrics.horizontalAdvance(text) + spinRoom, height};
    default:
      return {option.fontMetrics.horizontalAdvance(text) + 14, height};
  }
}

QWidget* IngredientDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& /*option*/,
                                          const QModelIndex& index) const {
  auto* spin = new LimitSpinBox(parent);
  const double step = index.data(IngredientModel::StepRole).toDouble();
  const bool isMax = index.column() == IngredientModel::Max;
  spin->setDecimals(index.data(IngredientModel::DecimalsRole).toInt());
  spin->setSingleStep(step);
  spin->setRange(isMax ? -step : 0.0, kMostGrams);
  if (isMax) spin->setSpecialValueText(QStringLiteral("–"));
  spin->setAlignment(Qt::AlignRight);
  spin->setAccessibleName(index.data(Qt::AccessibleTextRole).toString());
  spin->setAutoFillBackground(true);  // the unit painted below must not show through
  connect(spin, &NumberField::refused, &modelOf(index).desk(), &DietDesk::refused);
  modelOf(index).desk().beginGesture();
  if (index.column() == IngredientModel::GramsADay) {
    // Grams count while they are typed; limits only when finished, for half a number is no limit.
    auto* self = const_cast<IngredientDelegate*>(this);
    connect(spin, &QDoubleSpinBox::valueChanged, self, [self, spin] { emit self->commitData(spin); });
  }
  return spin;
}

void IngredientDelegate::destroyEditor(QWidget* editor, const QModelIndex& index) const {
  if (index.isValid()) modelOf(index).desk().endGesture();
  QStyledItemDelegate::destroyEditor(editor, index);
}

void IngredientDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  auto* spin = qobject_cast<QDoubleSpinBox*>(editor);
  const QVariant value = index.data(Qt::EditRole);
  const double shown = value.isValid() ? value.toDouble() : spin->minimum();
  // While a number is typed the table refreshes around it: "1." must not become "1" under the hand.
  if (std::abs(spin->value() - shown) < 1e-9) return;
  const QSignalBlocker quiet(spin);
  spin->setValue(shown);
}

void IngredientDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                      const QModelIndex& index) const {
  auto* spin = qobject_cast<QDoubleSpinBox*>(editor);
  if (!spin->hasAcceptableInput()) spin->interpretText();  // goes back to what it was, and says why
  const bool none = index.column() == IngredientModel::Max && spin->value() < 0.0;
  const QVariant before = index.data(Qt::EditRole);
  const QVariant after = none ? QVariant() : QVariant(spin->value());
  // Leaving an editor untouched is not an edit: it must not lock the food.
  if (before.isValid() == after.isValid() && std::abs(before.toDouble() - after.toDouble()) < 1e-9) return;
  model->setData(index, after, Qt::EditRole);
}

void IngredientDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                              const QModelIndex& /*index*/) const {
  editor->setGeometry(option.rect.adjusted(0, 0, 0, -1));
}

bool IngredientDelegate::eventFilter(QObject* object, QEvent* event) {
  // Escape takes back what was typed, also where it has already re-solved the diet.
  if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape)
    emit escaped();
  return QStyledItemDelegate::eventFilter(object, event);
}

bool IngredientDelegate::editorEvent(QEvent* event, QAbstractItemModel* model,
                                     const QStyleOptionViewItem& option, const QModelIndex& index) {
  if (index.column() != IngredientModel::Lock)
    return QStyledItemDelegate::editorEvent(event, model, option, index);
  const bool click = event->type() == QEvent::MouseButtonRelease &&
                     option.rect.contains(static_cast<QMouseEvent*>(event)->position().toPoint());
  const bool space =
      event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Space;
  if (!click && !space) return false;
  const bool locked = index.data(Qt::CheckStateRole).toInt() == Qt::Checked;
  return model->setData(index, locked ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
}

}  // namespace tarebowl::ui
