// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

namespace tarebowl::ui {

/// A database that holds no collection yet: says what is made there, and who may do what with it. Accepted
/// where it is to be made.
class SetUpDialog : public QDialog {
  Q_OBJECT
 public:
  explicit SetUpDialog(const QString& address, QWidget* parent = nullptr);
};

}  // namespace tarebowl::ui
