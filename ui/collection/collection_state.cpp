// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/collection_state.h"

#include "core/store/server_address.h"
#include "core/store/store_error.h"
#include "ui/collection/open_collection.h"
#include "ui/shared/paths.h"

namespace tarebowl::ui {
namespace {

/// "brackenmere.tarebowl", or "feeds.example/brackenmere"; a server's socket is on this machine.
QString placeNameOf(const std::filesystem::path& file) {
  if (!store::isServerAddress(file)) return toText(file.filename());
  try {
    const store::ServerPlace place = store::placeOf(file);
    const bool isHere = place.host.empty() || place.host.starts_with('/');
    return QString::fromStdString((isHere ? "localhost" : place.host) + '/' + place.database);
  } catch (const store::StoreError&) {
    return {};  // no address: it is said when it is opened
  }
}

}  // namespace

RoomState stateOf(const OpenCollection& collection) {
  RoomState state;
  const auto& file = collection.file();
  if (!file) {
    state.savedText = OpenCollection::tr("nothing open");
    return state;
  }
  state.title = file->name;
  state.file = placeNameOf(file->file);
  state.saved = !collection.isBusy();
  state.savedText = collection.isBusy() ? OpenCollection::tr("working…") : OpenCollection::tr("all saved");
  if (collection.isReadOnly() && !collection.isBusy()) {
    state.saved = false;
    state.savedText = OpenCollection::tr("for reading only");
  }
  if (collection.isCutOff()) {
    state.saved = false;
    const auto waiting = collection.station() ? collection.station()->count().waiting : 0;
    state.savedText = waiting == 0 ? OpenCollection::tr("cut off from the server")
                                   : OpenCollection::tr("cut off from the server: %n entry(ies) wait",
                                                        nullptr, static_cast<int>(waiting));
  }
  if (file->invented) state.sampleText = OpenCollection::tr("Brackenmere (invented sample)");
  return state;
}

QString readOnlyText() {
  return OpenCollection::tr(
      "This collection is open for reading only: its file or its folder cannot be written. To change it, "
      "copy "
      "it into a folder of your own and open the copy.");
}

}  // namespace tarebowl::ui
