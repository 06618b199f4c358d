// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/collection_files.h"

#include "core/store/server_address.h"
#include "core/store/store_error.h"
#include "core/transfer/sample_place.h"
#include "ui/collection/sample_collection.h"
#include "ui/shared/paths.h"

#include <utility>

namespace tarebowl::ui {
namespace {

/// What is no address is refused when it is opened, with a sentence.
QString nameOf(const std::filesystem::path& place) {
  if (!store::isServerAddress(place)) return toText(place.stem());
  try {
    return QString::fromStdString(store::databaseOf(place));
  } catch (const store::StoreError&) {
    return {};
  }
}

}  // namespace

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
  auto passwords = passwordDesk();
  const store::OpenOptions options{.access = store::OpenOptions::Access::AsAllowed,
                                   .password = passwords ? passwords->asker() : store::PasswordAsker()};
  collection_.open({.name = nameOf(file),
                    .file = file,
                    .invented = file == sampleCollection(),
                    .password = options.password},
                   [=] { return store::Collection::open(file, at, options); });
  // Whoever opens another one waits for the thread that opens this one.
  if (passwords)
    QObject::connect(&collection_, &OpenCollection::closing, passwords.get(), &PasswordDesk::close);
  passwords_ = std::move(passwords);
}

void CollectionFiles::open(const std::filesystem::path& file, bool invented, CollectionOpener opener) {
  collection_.open({.name = toText(file.stem()), .file = file, .invented = invented}, std::move(opener));
}

std::unique_ptr<PasswordDesk> CollectionFiles::passwordDesk() const {
  if (!dialogs_.password || !window_) return nullptr;
  return std::make_unique<PasswordDesk>([ask = dialogs_.password, window = window_](PasswordQuestion& asked) {
    if (window)
      ask(window, asked);
    else
      asked.answer(std::nullopt);
  });
}

bool CollectionFiles::openByDialog() {
  if (!dialogs_.collectionToOpen) return false;
  const auto file = dialogs_.collectionToOpen(window_, {});
  if (file) open(*file);
  return file.has_value();
}

bool CollectionFiles::openOnServerByDialog(const std::vector<std::filesystem::path>& remembered) {
  if (!dialogs_.serverToOpen) return false;
  const auto address = dialogs_.serverToOpen(window_, remembered);
  if (address) open(*address);
  return address.has_value();
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
