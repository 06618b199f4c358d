// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/food_index.h"

#include "core/food/folding.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::food {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

FoodIndex larder() {
  return FoodIndex({{1, "kale-raw", "Kale", "raw", "leafy vegetable"},
                    {2, "kale-steamed", "Kale", "steamed", "cooked vegetable"},
                    {3, "seakale", "Sea kale", "raw", "leafy vegetable"},
                    {4, "pakalee", "Pakalee", "dried", "fruit"},
                    {5, "rube", "Rübe, süß", "raw", "root"},
                    {6, "egg", "Egg, chicken, whole", "boiled", "egg"},
                    {7, "maca", "Açaí pulp", "frozen", "fruit"}});
}

std::vector<std::int64_t> idsFor(std::string_view text, std::size_t most = 10) {
  std::vector<std::int64_t> ids;
  for (const FoodLine& food : larder().find(text, most)) ids.push_back(food.id);
  return ids;
}

TEST(FoodIndex, NamesThatBeginWithTheWordComeFirstThenWordsThenInside) {
  EXPECT_THAT(idsFor("kale"), ElementsAre(1, 2, 3, 4));
}

TEST(FoodIndex, AllWordsMustOccurInAnyOrder) {
  EXPECT_THAT(idsFor("steam kal"), ElementsAre(2));
  EXPECT_THAT(idsFor("whole egg"), ElementsAre(6));
  EXPECT_THAT(idsFor("kale chicken"), IsEmpty());
}

TEST(FoodIndex, CaseAndAccentsDoNotMatterOnEitherSide) {
  EXPECT_THAT(idsFor("RUBE suss"), ElementsAre(5));
  EXPECT_THAT(idsFor("rübe"), ElementsAre(5));
  EXPECT_THAT(idsFor("acai"), ElementsAre(7));
}

TEST(FoodIndex, GroupFormAndCodeAreFoundAfterNames) {
  EXPECT_THAT(idsFor("egg"), ElementsAre(6));
  EXPECT_THAT(idsFor("frui"), ElementsAre(4, 7));
  EXPECT_THAT(idsFor("seakale"), ElementsAre(3));
}

TEST(FoodIndex, AnEmptySearchListsByAlphabetAndNotMoreThanAsked) {
  EXPECT_THAT(idsFor(" ", 3), ElementsAre(7, 6, 1));
  EXPECT_THAT(idsFor("kale", 2), ElementsAre(1, 2));
}

TEST(Folding, LettersLoseCaseAndAccentAndPunctuationBecomesASpace) {
  EXPECT_EQ(folded("Crème BRÛLÉE"), "creme brulee");
  EXPECT_EQ(folded("Łódź-Æble"), "lodz aeble");
  EXPECT_EQ(folded("Cafe\xCC\x81"), "cafe");  // a combining accent
  EXPECT_EQ(folded("ЯБЛОКО Ёж"), "яблоко ёж");
  EXPECT_EQ(folded("ΜΉΛΟ"), "μΉλο");  // accented Greek capitals stay as they are
}

TEST(Folding, BytesThatAreNoUtf8StayAndDoNotCrash) {
  EXPECT_EQ(folded("a\xFF\xC3"), "a\xFF\xC3");
  EXPECT_EQ(folded("\xE2\x82"), "\xE2\x82");
}

}  // namespace
}  // namespace tarebowl::food
