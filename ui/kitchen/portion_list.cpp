// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/portion_list.h"

#include <QEvent>
#include <QPaintEvent>
#include <QPainter>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr int kBetween = 8;
constexpr int kTallest = 10'000;
constexpr int kLeastLetters = 14;  // of a food, before it is cut
constexpr int kFoodFlags = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;
constexpr int kAmountFlags = Qt::TextSingleLine | Qt::AlignRight | Qt::AlignTop;

}  // namespace

PortionList::PortionList(QWidget* parent) : QWidget(parent) {
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void PortionList::setPortions(std::vector<Portion> portions) {
  if (portions == portions_) return;
  portions_ = std::move(portions);
  setAccessibleName(texts().join(QLatin1Char('\n')));
  forgetSizes();
}

QStringList PortionList::texts() const {
  QStringList texts;
  for (const Portion& portion : portions_) {
    texts << portion.amount + QStringLiteral("  ") + portion.food;
    if (!portion.raw.isEmpty()) texts << portion.raw;
  }
  return texts;
}

QString PortionList::secondColumn(const Portion& portion) {
  return portion.raw.isEmpty() ? portion.food : portion.food + QLatin1Char('\n') + portion.raw;
}

const std::vector<PortionList::Line>& PortionList::linesIn(int width) const {
  ensurePolished();
  if (width == linesWidth_) return lines_;
  const QFontMetrics metrics = fontMetrics();
  if (amountsWidth_ < 0) {
    amountsWidth_ = 0;
    for (const Portion& portion : portions_)
      amountsWidth_ = std::max(amountsWidth_, metrics.horizontalAdvance(portion.amount));
  }
  const int left = amountsWidth_ + kBetween;
  const int room = std::max(1, width - left);
  lines_.clear();
  int top = 0;
  for (const Portion& portion : portions_) {
    const int height =
        std::max(metrics.height(),
                 metrics.boundingRect({0, 0, room, kTallest}, kFoodFlags, secondColumn(portion)).height());
    lines_.push_back({{0, top, amountsWidth_, height}, {left, top, room, height}});
    top += height;
  }
  linesWidth_ = width;
  return lines_;
}

int PortionList::heightForWidth(int width) const {
  const auto& lines = linesIn(width);
  return lines.empty() ? 0 : lines.back().food.bottom() + 1;
}

QSize PortionList::minimumSizeHint() const {
  (void)linesIn(linesWidth_ < 0 ? width() : linesWidth_);  // they measure the amounts
  return {amountsWidth_ + kBetween + kLeastLetters * fontMetrics().averageCharWidth(),
          fontMetrics().height()};
}

QSize PortionList::sizeHint() const {
  const int width = std::max(this->width(), minimumSizeHint().width());
  return {width, heightForWidth(width)};
}

void PortionList::paintEvent(QPaintEvent* event) {
  QPainter painter(this);
  painter.setPen(palette().color(QPalette::WindowText));
  const auto& lines = linesIn(width());
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (!event->rect().intersects(lines[i].amount.united(lines[i].food))) continue;
    painter.drawText(lines[i].amount, kAmountFlags, portions_[i].amount);
    painter.drawText(lines[i].food, kFoodFlags, secondColumn(portions_[i]));
  }
}

void PortionList::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) forgetSizes();
  QWidget::changeEvent(event);
}

void PortionList::forgetSizes() {
  amountsWidth_ = -1;
  linesWidth_ = -1;
  updateGeometry();
  update();
}

}  // namespace tarebowl::ui
