// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QStringList>

class QButtonGroup;

namespace tarebowl::ui {

/// A choice among two or three words that stay in sight: "per animal | per group". Left and right keys move
/// it.
class SegmentedSwitch : public QFrame {
  Q_OBJECT
 public:
  SegmentedSwitch(const QString& accessibleName, const QStringList& words, QWidget* parent = nullptr);

  [[nodiscard]] int current() const;
  /// -1: none of them, where nobody has said yet.
  void setCurrent(int index);
  void setWord(int index, const QString& word);
  void setToolTips(const QStringList& tips);

 signals:
  /// By the user's hand only.
  void chosen(int index);

 private:
  QButtonGroup* group_;
};

}  // namespace tarebowl::ui
