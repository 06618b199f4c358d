// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/check_sentences.h"

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using food::CheckCode;

TEST(CheckSentence, SaysWhatIsDoubtfulWithItsUnitAndWhatToDo) {
  const CheckSentence over = sentenceOf({.code = CheckCode::ValueOverFood,
                                         .severity = food::Severity::Refused,
                                         .nutrients = {food::nutrients::protein()},
                                         .found = 120.0,
                                         .against = 100.0});
  EXPECT_EQ(over.mark, Mark::Lacking);
  EXPECT_TRUE(over.what.endsWith(QStringLiteral("is more than the food: 120\u00a0g in 100 g.")))
      << over.what.toStdString();
  EXPECT_EQ(over.advice, QStringLiteral("Look for a slip of the unit or of the basis."));
}

TEST(CheckSentence, DoesNotNeedToKnowWhichFoodIsTheSame) {
  const CheckSentence same = sentenceOf({.code = CheckCode::SameName});
  EXPECT_EQ(same.mark, Mark::AtLimit);
  EXPECT_EQ(same.what, QStringLiteral("Another food has the same name and form."));
}

TEST(CheckSentence, WritesANumberThatHasNoNutrient) {
  EXPECT_EQ(sentenceOf({.code = CheckCode::ProximatesOverWhole, .found = 109.6, .against = 105.0}).what,
            QStringLiteral("The known proximates add up to 110 g in 100 g."));
}

}  // namespace
}  // namespace tarebowl::ui
