// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/server_address.h"

#include <QDialog>

#include <filesystem>
#include <map>
#include <string>
#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace tarebowl::ui {

/// Asks where on a server a collection lies. It knows no password: that is asked for when the server wants
/// one, and kept nowhere.
class ServerDialog : public QDialog {
  Q_OBJECT
 public:
  /// remembered: addresses that were open before, the last one first; its parts are filled in.
  explicit ServerDialog(const std::vector<std::filesystem::path>& remembered, QWidget* parent = nullptr);

  [[nodiscard]] std::filesystem::path address() const;

 private:
  void fill(const store::ServerPlace& place);
  void showWhatIsMissing();
  void addRows(const std::vector<std::filesystem::path>& remembered);

  QLineEdit* host_;
  QSpinBox* port_;
  QLineEdit* database_;
  QLineEdit* person_;
  QComboBox* security_;
  QLabel* missing_;
  QPushButton* open_;
  std::map<std::string, std::string> further_;  ///< what the address says beside, in libpq's words
};

}  // namespace tarebowl::ui
