// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/salvage.h"
#include "ui/collection/open_collection.h"
#include "ui/shared/dialogs.h"

#include <QObject>

class QWidget;

namespace tarebowl::ui {

/// What a person is offered when a collection turns out to be damaged as it is opened or read, which closes
/// it: the newest sound backup in its place, or what can still be read, in a new file.
class DamageOffer : public QObject {
  Q_OBJECT
 public:
  /// window: over which questions are asked; its child.
  DamageOffer(OpenCollection& collection, Dialogs dialogs, QWidget* window);

 private:
  void offer(const std::filesystem::path& file, const Refusal& refusal);
  void restore(const std::filesystem::path& file, const std::filesystem::path& backup);
  void salvage(const std::filesystem::path& file);

  OpenCollection& collection_;
  Dialogs dialogs_;
  QWidget* window_;
};

/// What was saved of a damaged collection and what was not, table by table.
[[nodiscard]] QString salvageText(const store::SalvageReport& report);

}  // namespace tarebowl::ui
