// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>

#include <vector>

namespace tarebowl::ui {

/// A portion, its amount under the amounts above.
struct Portion {
  QString amount{};
  QString food{};
  QString raw{};  ///< what is to be taken out raw for it; empty: it is weighed as it is
  bool operator==(const Portion&) const = default;
};

/// A hundred portions in two columns, amounts to the right and foods to the left of the line between. It
/// paints itself: a label with a table in it takes a fifth of a second to lay out so many.
class PortionList : public QWidget {
  Q_OBJECT
 public:
  explicit PortionList(QWidget* parent = nullptr);

  void setPortions(std::vector<Portion> portions);
  /// All of it, a portion or what is raw of it a line.
  [[nodiscard]] QStringList texts() const;

  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  struct Line {
    QRect amount{};
    QRect food{};
  };
  /// Where each stands in a list as wide.
  [[nodiscard]] const std::vector<Line>& linesIn(int width) const;
  [[nodiscard]] static QString secondColumn(const Portion& portion);
  void forgetSizes();

  std::vector<Portion> portions_;
  mutable int amountsWidth_ = -1;
  mutable int linesWidth_ = -1;
  mutable std::vector<Line> lines_;
};

}  // namespace tarebowl::ui
