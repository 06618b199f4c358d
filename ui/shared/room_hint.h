// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QPushButton;
class QVBoxLayout;

namespace tarebowl::ui {

/// What stands where there is nothing to show yet: what the place is for, and what to do first.
class RoomHint : public QWidget {
 public:
  explicit RoomHint(const QString& forWhat, QWidget* parent = nullptr);

  /// A sentence below what stands there already.
  void addText(const QString& text);
  /// A button, and what it does. The first one takes the focus.
  QPushButton& addWay(const QString& name, const QString& what);

 protected:
  [[nodiscard]] QVBoxLayout& column() const { return *column_; }

 private:
  void add(QWidget& part, Qt::Alignment alignment = {});

  QVBoxLayout* column_;
};

}  // namespace tarebowl::ui
