// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/room_hint.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr int kWidth = 520;  // lines that can be read
constexpr qreal kHeading = 1.25;

}  // namespace

RoomHint::RoomHint(const QString& forWhat, QWidget* parent) : QWidget(parent), column_(new QVBoxLayout) {
  column_->setSpacing(6);
  auto* heading = new QLabel(forWhat);
  QFont large = heading->font();
  large.setPointSizeF(large.pointSizeF() * kHeading);
  large.setBold(true);
  heading->setFont(large);
  heading->setWordWrap(true);
  column_->addStretch(1);
  column_->addWidget(heading);
  column_->addSpacing(10);
  column_->addStretch(2);
  auto* block = new QWidget;
  block->setMaximumWidth(kWidth);
  block->setLayout(column_);
  auto* middle = new QHBoxLayout(this);
  middle->addStretch(1);
  middle->addWidget(block, 4);
  middle->addStretch(1);
}

void RoomHint::add(QWidget& part, Qt::Alignment alignment) {
  column_->insertWidget(column_->count() - 1, &part, 0, alignment);
}

void RoomHint::addText(const QString& text) {
  auto* label = new QLabel(text);
  label->setWordWrap(true);
  add(*label);
  column_->insertSpacing(column_->count() - 1, 6);
}

QPushButton& RoomHint::addWay(const QString& name, const QString& what) {
  auto* button = new QPushButton(name);
  auto* text = new QLabel(what);
  text->setProperty("soft", true);
  text->setWordWrap(true);
  add(*button, Qt::AlignLeft);
  add(*text);
  column_->insertSpacing(column_->count() - 1, 10);
  button->setAccessibleDescription(what);
  if (focusProxy() == nullptr) setFocusProxy(button);
  return *button;
}

}  // namespace tarebowl::ui
