// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/collection_files.h"

#include "core/store/server_address.h"
#include "core/store/store_error.h"
#include "core/transfer/sample_place.h"
#include "ui/collection/sample_collection.h"
#include "ui/shared/paths.h"

#include <QCoreApplication>

#include <chrono>
#include <utility>

namespace tarebowl::ui {
namespace {

struct Files {
  Q_DECLARE_TR_FUNCTIONS(Files)
};

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
    : collection_(collection), dialogs_(std::move(dialogs)), window_(window) {
  if (!window) return;
  // The rooms hear of it first; the question comes when they have said what is the matter.
  QObject::connect(&collection_, &OpenCollection::refused, window, [this, window](const Refusal& refusal) {
    if (refusal.isEmptyDatabase && refusal.cannotOpen)
      QMetaObject::invokeMethod(
          window, [this] { offerSetUp(); }, Qt::QueuedConnection);
  });
  QObject::connect(
      &collection_, &OpenCollection::clocksDisagreed, window, [this] { tellOfClocks(); },
      Qt::QueuedConnection);
}

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
  openedLast_ = file;
  mayOffer_ = true;
  options_ = options;
}

/// Once for an opening: each room that reads it is refused. Whoever typed a password has typed it for the
/// set-up, too.
void CollectionFiles::offerSetUp() {
  if (!dialogs_.emptyDatabase || collection_.file() || !std::exchange(mayOffer_, false)) return;
  if (dialogs_.emptyDatabase(window_, toText(openedLast_))) setUp(openedLast_);
}

void CollectionFiles::setUp(const std::filesystem::path& address) {
  collection_.open({.name = nameOf(address), .file = address, .password = options_.password},
                   [address, author = collection_.author(), options = options_] {
                     store::OpenOptions making = options;
                     making.access = store::OpenOptions::Access::ReadWrite;
                     return store::Collection::create(address, author, making);
                   });
  collection_.ask([](store::Collection& made) { return made.mayWrite(); },
                  [this, address](bool /*mayWrite*/) {
                    if (!dialogs_.tell || !window_) return;
                    dialogs_.tell(
                        window_, Files::tr("The collection is set up"),
                        Files::tr("It is empty and open, and you may do everything in it. Nobody else may "
                                  "open it yet. Let each person in, in their role, with the command\n\n"
                                  "tarebowl server add %1 PERSON ROLE\n\nPERSON is their name on the "
                                  "server. ROLE is reader, keeper, vet, nutritionist or curator.")
                            .arg(toText(address)));
                  });
}

void CollectionFiles::tellOfClocks() {
  if (!dialogs_.tell || !window_) return;
  constexpr std::chrono::seconds none{0};
  const std::chrono::seconds ahead = collection_.clockAhead();
  const auto minutes = std::chrono::round<std::chrono::minutes>(std::chrono::abs(ahead)).count();
  const QString how = ahead > none ? Files::tr("This machine's clock is %n minute(s) ahead of the server's.",
                                               nullptr, static_cast<int>(minutes))
                                   : Files::tr("This machine's clock is %n minute(s) behind the server's.",
                                               nullptr, static_cast<int>(minutes));
  dialogs_.tell(
      window_, Files::tr("Two clocks disagree"),
      Files::tr(
          "%1 What you write is dated by the server's clock, as it is for every desk. Which day is "
          "today still goes by this machine: set its clock and open the collection again, or tell whoever "
          "runs the server.")
          .arg(how));
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
