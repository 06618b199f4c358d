// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/collection/open_collection.h"
#include "ui/collection/password_desk.h"
#include "ui/shared/dialogs.h"

#include <QPointer>
#include <QWidget>

#include <filesystem>
#include <functional>
#include <memory>
#include <vector>

namespace tarebowl::ui {

/// The ways in which a collection comes to be open: the invented sample, a file, an address on a server, a
/// new and empty file.
class CollectionFiles {
 public:
  /// window: over which questions are asked.
  CollectionFiles(OpenCollection& collection, Dialogs dialogs, QWidget* window);

  /// The invented sample, made anew where its file is not there yet.
  void openSample();
  void open(const std::filesystem::path& file, bool invented = false);
  // False where the person would rather not.
  bool openByDialog();
  bool openOnServerByDialog(const std::vector<std::filesystem::path>& remembered);
  bool createByDialog();

 private:
  void open(const std::filesystem::path& file, bool invented, CollectionOpener opener);
  [[nodiscard]] std::unique_ptr<PasswordDesk> passwordDesk() const;
  void offerSetUp();
  void setUp(const std::filesystem::path& address);
  void tellOfClocks();

  OpenCollection& collection_;
  Dialogs dialogs_;
  QPointer<QWidget> window_;
  std::unique_ptr<PasswordDesk> passwords_;  ///< of the collection that was opened last
  std::filesystem::path openedLast_;
  store::OpenOptions options_;  ///< with which it was
  bool mayOffer_ = false;       ///< nobody was asked yet whether it is to be set up
};

}  // namespace tarebowl::ui
