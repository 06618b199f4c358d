// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/energy_unit.h"
#include "ui/shared/scale_settings.h"
#include "ui/shared/theme.h"

#include <QByteArray>
#include <QString>

#include <filesystem>
#include <optional>
#include <vector>

namespace tarebowl::ui {

/// How the window was left.
struct Seat {
  QByteArray geometry{};  ///< QWidget::saveGeometry
  int room = 0;           ///< its number on the rail
};

/// What the program remembers of a person's seat, in a small file of its own; nothing of it is in a
/// collection.
class Preferences {
 public:
  /// The person's own settings file.
  Preferences();
  /// Another file: tests leave the person's alone.
  explicit Preferences(QString file);

  /// Who is at the keyboard; the account's name where nobody said.
  [[nodiscard]] QString person() const;
  void setPerson(const QString& name) const;
  /// The collections that were open, the last one first, whether they are still there or not.
  [[nodiscard]] std::vector<std::filesystem::path> recentCollections() const;
  void setLastCollection(const std::filesystem::path& file) const;
  /// Where the window stood; nothing before it was closed for the first time.
  [[nodiscard]] std::optional<Seat> seat() const;
  void setSeat(const Seat& seat) const;
  /// In which unit energy is read; kcal where nobody chose.
  [[nodiscard]] EnergyUnit energy() const;
  void setEnergy(EnergyUnit energy) const;
  [[nodiscard]] ThemeChoice theme() const;
  void setTheme(ThemeChoice choice) const;
  /// The code of the language that was chosen for the window; empty where it follows the system.
  [[nodiscard]] QString language() const;
  void setLanguage(const QString& code) const;
  /// The scale of this bench; without a port where there is none.
  [[nodiscard]] ScaleSettings scale() const;
  void setScale(const ScaleSettings& scale) const;

 private:
  QString file_;
};

}  // namespace tarebowl::ui
