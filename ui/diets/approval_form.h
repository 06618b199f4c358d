// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/diet_verbs.h"

#include <QFrame>
#include <QString>

#include <functional>

class QDateEdit;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace tarebowl::ui {

/// Asks what an approval needs: from which day it is fed, over how many days it is phased in, and why.
class ApprovalForm : public QFrame {
  Q_OBJECT
 public:
  using Done = std::function<void(const store::FeedingStart& start, const QString& reason)>;

  explicit ApprovalForm(QWidget* parent = nullptr);
  void ask(Done done);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void finish();

  QDateEdit* from_;
  QSpinBox* days_;
  QLineEdit* reason_;
  QPushButton* approve_;
  Done done_;
};

}  // namespace tarebowl::ui
