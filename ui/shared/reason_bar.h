// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

#include <functional>
#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace tarebowl::ui {

/// Asks for a reason, and where it needs one for a value, in the room itself: no window hides the food that
/// the reason is about.
class ReasonBar : public QFrame {
  Q_OBJECT
 public:
  explicit ReasonBar(QWidget* parent = nullptr);

  struct Answer {
    QString reason;                ///< never empty
    std::optional<double> amount;  ///< where one was asked for
    std::optional<double> sd;
  };
  /// unit: of the value that is asked for; empty where only the reason is. done: called once, with a whole
  /// answer.
  void ask(const QString& question, const QString& unit, const QString& verb,
           std::function<void(const Answer&)> done);
  /// A further way out that needs no reason: "leave it to the samples".
  void offer(const QString& verb, std::function<void()> done);
  void dismiss();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void finish();
  void showReady();

  QLabel* question_;
  QLineEdit* amount_;
  QLineEdit* sd_;
  QLabel* unit_;
  QLineEdit* reason_;
  QPushButton* do_;
  QPushButton* other_;
  std::function<void(const Answer&)> done_;
  std::function<void()> otherDone_;
};

}  // namespace tarebowl::ui
