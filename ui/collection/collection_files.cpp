// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/collection_files.h"

#include "core/store/server_address.h"
#include "core/transfer/sample_place.h"
#include "ui/collection/sample_collection.h"
#include "ui/shared/paths.h"

#include <QMetaObject>
#include <QWidget>

#include <utility>

namespace tarebowl::ui {

CollectionFiles::CollectionFiles(OpenCollection& collection, Dialogs dialogs, QWidget* window)
    : collection_(collection), dialogs_(std::move(dialogs)), window_(window) {}

void CollectionFiles::openSample() {
  open(sampleCollection(), true);
}

void CollectionFiles::open(const std::filesystem::path& file, bool invented) {
  const std::string at = collection_.author().at;
  if (invented)
    return open(file, true,
                [=, folder = transfer::sampleFolder()] { return openOrMakeSample(file, folder, at); });
  const store::OpenOptions options{.access = store::OpenOptions::Access::AsAllowed,
                                   .password = passwordByDialog()};
  const QString name =
      store::isServerAddress(file) ? QString::fromStdString(store::databaseOf(file)) : toText(file.stem());
  collection_.open(
      {.name = name, .file = file, .invented = file == sampleCollection(), .password = options.password},
      [=] { return store::Collection::open(file, at, options); });
}

void CollectionFiles::open(const std::filesystem::path& file, bool invented, CollectionOpener opener) {
  collection_.open({.name = toText(file.stem()), .file = file, .invented = invented}, std::move(opener));
}

/// Asked from the clerk's thread, answered over the window.
store::PasswordAsker CollectionFiles::passwordByDialog() const {
  if (!dialogs_.password || window_ == nullptr) return {};
  return store::askedOnce([ask = dialogs_.password, window = window_](const std::filesystem::path& address) {
    std::optional<std::string> typed;
    QMetaObject::invokeMethod(
        window, [&] { typed = ask(window, toText(address)); }, Qt::BlockingQueuedConnection);
    return typed;
  });
}

bool CollectionFiles::openByDialog() {
  if (!dialogs_.collectionToOpen) return false;
  const auto file = dialogs_.collectionToOpen(window_, {});
  if (file) open(*file);
  return file.has_value();
}

bool CollectionFiles::createByDialog() {
  if (!dialogs_.collectionToCreate) return false;
  const auto file = dialogs_.collectionToCreate(window_, {});
  if (!file) return false;
  open(*file, false,
       [file = *file, author = collection_.author()] { return store::Collection::create(file, author); });
  return true;
}

}  // namespace tarebowl::ui
