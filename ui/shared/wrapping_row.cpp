// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/wrapping_row.h"

#include <algorithm>
#include <limits>

namespace tarebowl::ui {
namespace {

QSize wanted(const QLayoutItem& item) {
  return item.sizeHint().expandedTo(item.minimumSize());
}

bool mayGrow(const QLayoutItem& item) {
  return (item.expandingDirections() & Qt::Horizontal) != 0;
}

}  // namespace

WrappingRow::WrappingRow(QWidget* parent) : QLayout(parent) {
  setContentsMargins(0, 0, 0, 0);
}

WrappingRow::~WrappingRow() = default;

void WrappingRow::addItem(QLayoutItem* item) {
  items_.emplace_back(item);
}

int WrappingRow::count() const {
  return static_cast<int>(items_.size());
}

QLayoutItem* WrappingRow::itemAt(int index) const {
  return index >= 0 && index < count() ? items_[static_cast<std::size_t>(index)].get() : nullptr;
}

QLayoutItem* WrappingRow::takeAt(int index) {
  if (index < 0 || index >= count()) return nullptr;
  QLayoutItem* taken = items_[static_cast<std::size_t>(index)].release();
  items_.erase(items_.begin() + index);
  return taken;
}

int WrappingRow::gap() const {
  constexpr int kUsual = 7;
  return spacing() >= 0 ? spacing() : kUsual;
}

std::vector<WrappingRow::Line> WrappingRow::linesFor(int width) const {
  std::vector<Line> lines;
  for (const auto& item : items_) {
    if (item->isEmpty()) continue;
    const QSize size = wanted(*item);
    if (lines.empty() || lines.back().width + gap() + size.width() > width) lines.emplace_back();
    Line& line = lines.back();
    line.width += size.width() + (line.items.empty() ? 0 : gap());
    line.height = std::max(line.height, size.height());
    line.items.push_back(item.get());
  }
  return lines;
}

int WrappingRow::heightForWidth(int width) const {
  const QMargins margins = contentsMargins();
  int height = margins.top() + margins.bottom();
  const std::vector<Line> lines = linesFor(width - margins.left() - margins.right());
  for (const Line& line : lines) height += line.height;
  if (!lines.empty()) height += gap() * (static_cast<int>(lines.size()) - 1);
  return height;
}

QSize WrappingRow::sizeHint() const {
  const QMargins margins = contentsMargins();
  const std::vector<Line> all = linesFor(std::numeric_limits<int>::max() / 2);
  const QSize line = all.empty() ? QSize(0, 0) : QSize(all.front().width, all.front().height);
  return line + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

/// As narrow as its widest control.
QSize WrappingRow::minimumSize() const {
  QSize least;
  for (const auto& item : items_)
    if (!item->isEmpty()) least = least.expandedTo(wanted(*item));
  const QMargins margins = contentsMargins();
  return least + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

void WrappingRow::place(const Line& line, const QRect& room) const {
  const auto growing = static_cast<int>(
      std::count_if(line.items.begin(), line.items.end(), [](const auto* item) { return mayGrow(*item); }));
  int rest = std::max(0, room.width() - line.width);
  int left = growing;
  int x = room.left();
  for (QLayoutItem* item : line.items) {
    QSize size = wanted(*item);
    if (mayGrow(*item)) {
      const int share = std::min(rest / left, item->maximumSize().width() - size.width());
      size.rwidth() += std::max(0, share);
      rest -= std::max(0, share);
      --left;
    }
    item->setGeometry({x, room.top(), size.width(), line.height});
    x += size.width() + gap();
  }
}

void WrappingRow::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  QRect room = rect.marginsRemoved(contentsMargins());
  for (const Line& line : linesFor(room.width())) {
    place(line, room);
    room.setTop(room.top() + line.height + gap());
  }
}

}  // namespace tarebowl::ui
