// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QPushButton>
#include <QString>

namespace tarebowl::ui {

/// A button that says a sentence, flush left, over as many lines as it needs.
class RowButton : public QPushButton {
  Q_OBJECT
 public:
  explicit RowButton(const QString& sentence, QWidget* parent = nullptr);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] QRect textIn(const QRect& whole) const;
  [[nodiscard]] int widthOfSentence() const;

  /// A layout asks for it some dozen times: letters are put together once.
  struct Measured {
    QString text{};
    QFont font{};
    int width = -1;
  };
  mutable Measured measured_{};
};

}  // namespace tarebowl::ui
