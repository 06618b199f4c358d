// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/row_button.h"

#include <QStyleOptionButton>
#include <QStylePainter>

#include <algorithm>

namespace tarebowl::ui {
namespace {

constexpr int kBeside = 12;
constexpr int kAbove = 8;
constexpr int kFlags = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignVCenter;
constexpr int kTallest = 10'000;

}  // namespace

RowButton::RowButton(const QString& sentence, QWidget* parent) : QPushButton(sentence, parent) {
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

QRect RowButton::textIn(const QRect& whole) const {
  return whole.adjusted(kBeside, kAbove, -kBeside, -kAbove);
}

int RowButton::widthOfSentence() const {
  if (measured_.width < 0 || measured_.text != text() || measured_.font != font())
    measured_ = {text(), font(), fontMetrics().horizontalAdvance(text())};
  return measured_.width;
}

int RowButton::heightForWidth(int width) const {
  ensurePolished();
  const QRect room = textIn({0, 0, width, kTallest});
  if (widthOfSentence() <= room.width()) return fontMetrics().height() + 2 * kAbove;
  return fontMetrics().boundingRect({0, 0, room.width(), kTallest}, kFlags, text()).height() + 2 * kAbove;
}

QSize RowButton::sizeHint() const {
  ensurePolished();
  const int width = widthOfSentence() + 2 * kBeside;
  return {width, fontMetrics().height() + 2 * kAbove};
}

QSize RowButton::minimumSizeHint() const {
  constexpr int kLeastLetters = 24;
  ensurePolished();
  const int width = kLeastLetters * fontMetrics().averageCharWidth();
  return {std::min(sizeHint().width(), width), fontMetrics().height() + 2 * kAbove};
}

void RowButton::paintEvent(QPaintEvent* /*event*/) {
  QStylePainter painter(this);
  QStyleOptionButton option;
  initStyleOption(&option);
  option.text.clear();
  painter.drawControl(QStyle::CE_PushButton, option);
  painter.drawItemText(textIn(rect()), kFlags, palette(), isEnabled(), text(), QPalette::ButtonText);
}

}  // namespace tarebowl::ui
