// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSplitter>

namespace tarebowl::ui {

/// How high a pane must be at a width so that its words are whole. A splitter knows nothing of texts that are
/// higher where they are narrower.
[[nodiscard]] int heightForWords(const QWidget& pane, int width);

/// Panes below each other, with a handle between; none becomes lower than its words.
class StackedPanes : public QSplitter {
  Q_OBJECT
 public:
  explicit StackedPanes(QWidget* parent = nullptr);

 protected:
  bool event(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void fit();
};

}  // namespace tarebowl::ui
