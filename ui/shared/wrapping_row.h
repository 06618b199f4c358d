// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLayout>

#include <memory>
#include <vector>

namespace tarebowl::ui {

/// Controls side by side, and over as many lines as they need where they do not fit beside each other. What
/// may grow shares the rest of its line.
class WrappingRow : public QLayout {
 public:
  explicit WrappingRow(QWidget* parent = nullptr);
  ~WrappingRow() override;

  void addItem(QLayoutItem* item) override;
  [[nodiscard]] int count() const override;
  [[nodiscard]] QLayoutItem* itemAt(int index) const override;
  QLayoutItem* takeAt(int index) override;
  [[nodiscard]] Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSize() const override;
  void setGeometry(const QRect& rect) override;

 private:
  struct Line {
    std::vector<QLayoutItem*> items{};
    int width = 0;  ///< of the items and what is between them
    int height = 0;
  };
  [[nodiscard]] std::vector<Line> linesFor(int width) const;
  [[nodiscard]] int gap() const;
  void place(const Line& line, const QRect& room) const;

  std::vector<std::unique_ptr<QLayoutItem>> items_;
};

}  // namespace tarebowl::ui
