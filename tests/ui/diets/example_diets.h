// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/animals/example_animals.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/version_document.h"

#include <filesystem>

namespace tarebowl::ui {

/// The example herd with foods for its tenrecs, all invented, and a diet of theirs:
///  kale-raw   water 85 g, protein 3 g, calcium 250 mg, phosphorus 60 mg, iron 1 mg, energy 35 kcal; 1 g
///  steps crickets   water 70 g, protein 20 g, calcium 40 mg, phosphorus 300 mg, iron 2 mg, energy 120 kcal;
///  0.1 g limestone  water 0 g, calcium 38,000 mg; 0.1 g steps grubs      water 60 g, protein 17 g, calcium
///  900 mg, phosphorus 300 mg; in no diet
/// "tenrec-evening": version 1, a draft with 4 g of kale and 12 g of crickets, judged by the profile
/// tenrec 1.
class ExampleDiets {
 public:
  ExampleDiets();
  [[nodiscard]] CollectionOpener opener() const { return herd_.opener(); }
  [[nodiscard]] const std::filesystem::path& file() const { return herd_.file(); }
  [[nodiscard]] store::VersionId draft() const { return draft_; }
  /// As another window would.
  [[nodiscard]] store::Collection elsewhere() const { return opener()(); }
  [[nodiscard]] diet::DietVersion stored(store::VersionId id) const;

 private:
  ExampleHerd herd_;
  store::VersionId draft_{};
};

/// A desk with a document on an open collection.
struct DietAlone {
  explicit DietAlone(const ExampleDiets& example, LiveSolver::Function solve);

  void settle();
  void open(store::VersionId id);

  OpenCollection collection{};
  DietDesk desk;
  VersionDocument document;
};

}  // namespace tarebowl::ui
