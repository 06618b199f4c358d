// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/shared/sample_in_room.h"

#include "core/transfer/sample_import.h"
#include "tests/source_dir.h"
#include "ui/shared/paths.h"

#include <QAbstractButton>
#include <QCoreApplication>
#include <QLabel>

namespace tarebowl::ui {
namespace {

constexpr const char* kOpenedAt = "2026-11-25T07:30:00Z";

}  // namespace

quantity::Date sampleDay() {
  return quantity::parseDate("2026-11-25").value();
}

SampleAtHand::SampleAtHand() : file_(at("brackenmere.tarebowl")) {
  const store::Author author{"Keeper", kOpenedAt};
  store::Collection made = store::Collection::create(file_, author);
  transfer::importSample(made, std::filesystem::path(TAREBOWL_SOURCE_DIR) / "sample-data", author);
}

void SampleAtHand::openIn(OpenCollection& collection) const {
  collection.open({.name = QStringLiteral("brackenmere"), .file = file_, .invented = true},
                  [file = file_] { return store::Collection::open(file, kOpenedAt); });
}

std::filesystem::path SampleAtHand::at(const char* name) const {
  return toPath(folder_.path()) / name;
}

Dialogs SampleAtHand::dialogs() {
  Dialogs dialogs;
  dialogs.sheetToSave = [this](QWidget*, const std::filesystem::path&) { return page; };
  dialogs.attachmentToOpen = [this](QWidget*, const std::filesystem::path&) { return page; };
  return dialogs;
}

void pressIn(const QWidget& room, const char* text) {
  for (auto* button : room.findChildren<QAbstractButton*>())
    if (button->isVisible() && button->text() == QString::fromUtf8(text)) return button->click();
  ADD_FAILURE() << "no button says " << text;
}

std::string saidIn(const QWidget& room) {
  QCoreApplication::processEvents();  // lines that came just now are shown then
  QString text;
  for (auto* label : room.findChildren<QLabel*>())
    if (label->isVisible()) text += label->text() + QLatin1Char('\n');
  return text.toStdString();
}

}  // namespace tarebowl::ui
