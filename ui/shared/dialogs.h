// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <filesystem>
#include <functional>
#include <optional>
#include <vector>

class QPagedPaintDevice;
class QWidget;

namespace tarebowl::ui {

class PasswordQuestion;

enum class UnsavedAnswer { Save, Discard, Stay };

/// What is to become of a collection that is damaged.
enum class DamageAnswer { RestoreBackup, Salvage, Leave };

/// What asks a person for an answer. Handed in, so that a test can answer instead.
struct Dialogs {
  using AskForFile = std::function<std::optional<std::filesystem::path>(QWidget* parent,
                                                                        const std::filesystem::path& start)>;
  AskForFile fileToOpen;
  AskForFile fileToSave;
  std::function<UnsavedAnswer(QWidget* parent, const QString& title)> unsavedChanges;
  AskForFile collectionToOpen{};
  AskForFile collectionToCreate{};
  AskForFile tableToOpen{};
  AskForFile mappingToOpen{};
  AskForFile mappingToSave{};
  AskForFile sheetToSave{};
  /// Asks for a printer and gives its pages to `paint`; false where the person would rather not.
  using Print = std::function<bool(QWidget* parent, const QString& title,
                                   const std::function<void(QPagedPaintDevice&)>& paint)>;
  Print printer{};
  /// why: what is the matter with it; backupOf: when a sound copy of it was made; empty: none is known.
  std::function<DamageAnswer(QWidget* parent, const QString& why, const QString& backupOf)>
      damagedCollection{};
  /// Puts the question to the person and returns; it is answered later, or withdrawn. The password is kept
  /// nowhere.
  std::function<void(QWidget* parent, PasswordQuestion& question)> password{};
  /// Where on a server a collection lies. remembered: the addresses that were open before.
  std::function<std::optional<std::filesystem::path>(QWidget* parent,
                                                     const std::vector<std::filesystem::path>& remembered)>
      serverToOpen{};
  /// The database at this address holds no collection: whether one is to be made there.
  std::function<bool(QWidget* parent, const QString& address)> emptyDatabase{};
  /// Something long that a person should read.
  std::function<void(QWidget* parent, const QString& title, const QString& text)> tell{};
  /// A picture or report to name beside an observation.
  AskForFile attachmentToOpen{};
};

/// The system's own dialogs.
[[nodiscard]] Dialogs systemDialogs();

}  // namespace tarebowl::ui
