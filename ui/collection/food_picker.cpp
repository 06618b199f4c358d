// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/food_picker.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QStandardItemModel>
#include <QTimer>

namespace tarebowl::ui {
namespace {

constexpr std::size_t kMostOffered = 40;
constexpr int kCodeRole = Qt::UserRole + 1;

/// "Kale, raw · leafy vegetable".
QString textOf(const food::FoodLine& line) {
  const QString name = QString::fromStdString(line.name);
  const QString form = QString::fromStdString(line.form);
  QStringList parts{name};
  if (!form.isEmpty() && !name.contains(form, Qt::CaseInsensitive)) parts << form;
  if (!line.group.empty()) parts << QString::fromStdString(line.group);
  return parts.join(QStringLiteral(" · "));
}

}  // namespace

FoodPicker::FoodPicker(const FoodNames& names, QWidget* parent)
    : FoodPicker([&names](const QString& text, std::size_t most) { return names.find(text, most); }, parent) {
}

FoodPicker::FoodPicker(Find find, QWidget* parent)
    : QLineEdit(parent), find_(std::move(find)), found_(new QStandardItemModel(this)) {
  setPlaceholderText(tr("Add a food: type part of its name (Ctrl+I)…"));
  setAccessibleName(tr("Add a food of the collection by part of its name"));
  setClearButtonEnabled(true);
  auto* completer = new QCompleter(found_, this);
  completer->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
  completer->setMaxVisibleItems(12);
  completer->popup()->setObjectName(QStringLiteral("matches"));
  completer->popup()->setAccessibleName(tr("Foods that match"));
  setCompleter(completer);
  connect(this, &QLineEdit::textEdited, this, &FoodPicker::look);
  connect(completer, qOverload<const QModelIndex&>(&QCompleter::activated), this, &FoodPicker::take);
  connect(this, &QLineEdit::returnPressed, this, &FoodPicker::takeFirst);
}

void FoodPicker::look(const QString& text) {
  found_->clear();
  if (text.trimmed().isEmpty()) return;
  for (const food::FoodLine& line : find_(text, kMostOffered)) {
    auto* item = new QStandardItem(textOf(line));
    item->setData(QString::fromStdString(line.code), kCodeRole);
    found_->appendRow(item);
  }
}

void FoodPicker::take(const QModelIndex& index) {
  const QString code = index.data(kCodeRole).toString();
  // The completer writes the chosen text into the field after this, and the key may still arrive there.
  taken_ = true;
  QTimer::singleShot(0, this, [this] {
    clear();
    found_->clear();
    taken_ = false;
  });
  if (!code.isEmpty()) emit picked(code);
}

void FoodPicker::takeFirst() {
  if (taken_ || text().trimmed().isEmpty()) return;
  look(text());
  if (found_->rowCount() > 0) return take(found_->index(0, 0));
  emit notFound(text().trimmed());
}

}  // namespace tarebowl::ui
