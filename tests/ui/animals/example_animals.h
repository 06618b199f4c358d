// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QTemporaryDir>

#include <filesystem>
#include <string>

namespace tarebowl::ui {

/// The day on which the tests look at the animals.
[[nodiscard]] quantity::Date exampleToday();  // 2026-11-25

/// A collection in a folder of its own, all invented:
///  Hedgehog tenrec, three of them (T-01, T-02, T-03) in the group "tenrecs" of Small Mammals; T-01 weighed
///  180, 182, 184, 181 and 183 g, T-02 200 g; the group is fed by the profile "tenrec", version 1, in force
///  Bearded dragon, a colony "dragons" of two by count, without a profile
class ExampleHerd {
 public:
  ExampleHerd();
  [[nodiscard]] const std::filesystem::path& file() const { return file_; }
  [[nodiscard]] CollectionOpener opener() const;
  /// Opens it on the desk and waits until it was read.
  void openOn(AnimalDesk& desk) const;

 private:
  QTemporaryDir folder_;
  std::filesystem::path file_;
};

/// A desk with a collection of its own to open.
struct HerdAlone {
  OpenCollection collection{};
  AnimalDesk desk{collection, &exampleToday};
};

void settle(AnimalDesk& desk);
void showGroup(AnimalDesk& desk, const std::string& code);
void showIndividual(AnimalDesk& desk, const std::string& code);
/// Of the series that the page shows.
[[nodiscard]] std::vector<double> gramsOf(const AnimalDesk& desk, const std::string& code);

}  // namespace tarebowl::ui
