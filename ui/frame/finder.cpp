// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/finder.h"

#include "ui/shared/cell_painting.h"
#include "ui/shared/theme.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr int kMostHitsOfARoom = 8;
constexpr int kWidth = 520;
constexpr int kTop = 56;
constexpr int kRemarkRole = Qt::UserRole;

/// A name, and softly behind it what it is and in which room.
class HitDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    paintRowGround(*painter, option, currentTheme());
    paintText(*painter, option, index.data().toString(), index.data(kRemarkRole).toString(), currentTheme());
  }
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                               const QModelIndex& /*index*/) const override {
    return {100, option.fontMetrics.height() + 10};
  }
};

}  // namespace

Finder::Finder(QWidget* window) : QFrame(window), field_(new QLineEdit), list_(new QListWidget) {
  setObjectName(QStringLiteral("finder"));
  setProperty("card", true);
  setAccessibleName(tr("Finder"));
  field_->setPlaceholderText(tr("Go to a food, an animal or a diet: type part of its name"));
  field_->setAccessibleName(tr("Part of a name"));
  field_->installEventFilter(this);
  list_->setAccessibleName(tr("What was found"));
  list_->setItemDelegate(new HitDelegate(list_));
  list_->setFocusPolicy(Qt::NoFocus);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 10, 10, 10);
  layout->addWidget(field_);
  layout->addWidget(list_);
  connect(field_, &QLineEdit::textChanged, this, &Finder::look);
  connect(field_, &QLineEdit::returnPressed, this, &Finder::choose);
  connect(list_, &QListWidget::itemClicked, this, &Finder::choose);
  hide();
}

void Finder::open(std::vector<Place> places) {
  places_ = std::move(places);
  field_->clear();
  look({});
  show();
  raise();
  field_->setFocus(Qt::ShortcutFocusReason);
}

int Finder::hitCount() const {
  return static_cast<int>(hits_.size());
}

void Finder::look(const QString& text) {
  list_->clear();
  hits_.clear();
  for (const Place& place : places_)
    for (const FinderHit& hit : place.where->find(text.trimmed(), kMostHitsOfARoom)) {
      auto* item = new QListWidgetItem(hit.name, list_);
      item->setData(kRemarkRole,
                    hit.remark.isEmpty() ? place.room : hit.remark + QStringLiteral(" · ") + place.room);
      hits_.push_back({place.where, hit.id});
    }
  if (hits_.empty() && !text.trimmed().isEmpty()) {
    auto* nothing = new QListWidgetItem(tr("Nothing is called so here."), list_);
    nothing->setFlags(Qt::NoItemFlags);
  }
  list_->setCurrentRow(hits_.empty() ? -1 : 0);
  fit();
}

void Finder::fit() {
  const int rows = std::min(list_->count(), 2 * kMostHitsOfARoom);
  list_->setVisible(rows > 0);
  list_->setFixedHeight(rows * (fontMetrics().height() + 10) + 2);
  const int width = std::min(kWidth, parentWidget()->width() - 40);
  setFixedWidth(width);
  adjustSize();
  move((parentWidget()->width() - width) / 2, kTop);
}

void Finder::choose() {
  const int row = list_->currentRow();
  if (row < 0 || row >= hitCount()) return;
  const Hit hit = hits_[static_cast<std::size_t>(row)];
  hide();
  emit chosen(hit.where, hit.id);
}

bool Finder::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusOut) {
    hide();
  } else if (event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    const int row = list_->currentRow();
    if (key == Qt::Key_Escape) {
      hide();
      return true;
    }
    if ((key == Qt::Key_Down || key == Qt::Key_Up) && hitCount() > 0) {
      list_->setCurrentRow(std::clamp(row + (key == Qt::Key_Down ? 1 : -1), 0, hitCount() - 1));
      return true;
    }
  }
  return QFrame::eventFilter(watched, event);
}

}  // namespace tarebowl::ui
