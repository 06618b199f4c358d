// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/version_text.h"

#include "ui/diets/difference_text.h"
#include "ui/diets/not_counted_text.h"

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using diet::DifferenceKind;
using diet::VersionState;

TEST(LifeOfAVersion, SaysWhoDecidedWhenAndWhy) {
  diet::DietVersion version;
  version.steps = {{VersionState::Submitted, "Keeper A", "2026-09-30T09:00:00Z", "ready"},
                   {VersionState::Approved, "Nutritionist", "2026-10-01T09:00:00Z", "eaten well"}};
  version.fedFrom = quantity::parseDate("2026-10-04");
  version.phaseInDays = 5;
  EXPECT_EQ(lifeText(version).toStdString(),
            "approved on 1 Oct 2026 by Nutritionist: eaten well; fed from 4 Oct 2026, phased in over 5 days");
}

TEST(LifeOfAVersion, OneThatWasSentBackSaysSo) {
  diet::DietVersion version;
  version.steps = {{VersionState::Draft, "Vet", "2026-10-01T09:00:00Z", "more calcium"}};
  EXPECT_EQ(lifeText(version).toStdString(), "sent back on 1 Oct 2026 by Vet: more calcium");
}

TEST(Differences, AreToldByNameInTheTradesUnits) {
  const auto nameOf = [](const std::string& code) {
    return code == "kale-raw" ? QStringLiteral("Kale, raw") : QString::fromStdString(code);
  };
  const auto text = [&](diet::VersionDifference difference) {
    return differenceText(difference, nameOf).toStdString();
  };
  EXPECT_EQ(text({.kind = DifferenceKind::Amount, .subject = "kale-raw", .before = 20, .after = 25}),
            "Kale, raw: 20 g → 25 g");
  EXPECT_EQ(text({.kind = DifferenceKind::LineAdded, .subject = "kale-raw", .after = 4}),
            "Kale, raw is new: 4 g");
  EXPECT_EQ(text({.kind = DifferenceKind::Max, .subject = "kale-raw", .meal = "evening", .after = 30}),
            "Kale, raw, evening, at most: none → 30 g");
  EXPECT_EQ(text({.kind = DifferenceKind::BoundMin, .subject = "calcium", .before = 5, .after = 6}),
            "calcium, minimum: 5 → 6");
  EXPECT_EQ(text({.kind = DifferenceKind::ProfileOf, .textBefore = "tenrec 1", .textAfter = "tenrec 2"}),
            "targets: tenrec 1 → tenrec 2");
}

TEST(RulesThatCannotBeJudged, AreNamedWithTheReason) {
  EXPECT_TRUE(notCountedText({}).isEmpty());
  EXPECT_EQ(
      notCountedText({{"iodine", diet::NotCounted::NoFoodKnowsNutrient},
                      {"browse", diet::NotCounted::NoFoodOfGroup},
                      {"selenium", diet::NotCounted::NoFoodKnowsNutrient}})
          .toStdString(),
      "? Not judged: iodine, selenium (no food here states what it needs); browse (no food of the group is "
      "here).");
}

}  // namespace
}  // namespace tarebowl::ui
