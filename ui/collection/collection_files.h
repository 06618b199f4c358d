// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/collection/open_collection.h"
#include "ui/shared/dialogs.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>

class QWidget;

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
  bool createByDialog();

 private:
  void open(const std::filesystem::path& file, bool invented, CollectionOpener opener);
  [[nodiscard]] store::PasswordAsker passwordByDialog() const;

  OpenCollection& collection_;
  Dialogs dialogs_;
  QWidget* window_;
};

}  // namespace tarebowl::ui
