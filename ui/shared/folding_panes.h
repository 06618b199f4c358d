// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QSplitter>

namespace tarebowl::ui {

/// Panes beside each other, and one below the other where they are wider than the room there is: nobody has
/// to scroll sideways at a large scale.
/// How high a pane is at least is set here: what stands in it asks for its height, not the pane.
class FoldingPanes : public QSplitter {
  Q_OBJECT
 public:
  explicit FoldingPanes(QWidget* parent = nullptr);

  /// The widths that the panes begin with beside each other; in parts of what there is.
  void setWidths(const QList<int>& widths);
  [[nodiscard]] bool isFolded() const { return orientation() == Qt::Vertical; }
  /// As wide as the widest of the panes: they may always be folded.
  [[nodiscard]] QSize minimumSizeHint() const override;
  /// Beside each other no higher than they have to be: they take what room there is.
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  bool event(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  [[nodiscard]] QList<QWidget*> shown() const;
  [[nodiscard]] int widthBeside() const;
  [[nodiscard]] QList<int> widthsAsked() const;
  void fit();

  QList<int> beside_{};  ///< the widths that they have beside each other, while they are folded
};

}  // namespace tarebowl::ui
