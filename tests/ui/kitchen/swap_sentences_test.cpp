// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/swap_sentences.h"

#include "tests/ui/kitchen/example_swap.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;
using ::testing::HasSubstr;

SwapOffer offer(const diet::SwapRequest& request, std::size_t candidate, double grams) {
  SwapOffer made;
  made.swap.parts = {{candidate, Grams(grams)}};
  made.effect = diet::effectOf(request, made.swap);
  return made;
}

TEST(SwapSentences, SpeakOfTheBowlOfAllAnimals) {
  const diet::SwapRequest request = exampleSwap();
  const SwapOffer kale = offer(request, 2, 100);
  EXPECT_EQ(missingText(request).toStdString(), "300 g Greens");
  EXPECT_EQ(swapGramsText(request, kale.swap).toStdString(), "300 g");
  EXPECT_EQ(eachText(request, kale.swap).toStdString(), "100 g each");
  diet::SwapRequest one = request;
  one.problem.eater.count = 1;
  EXPECT_EQ(swapGramsText(one, kale.swap).toStdString(), "100 g");
  EXPECT_EQ(eachText(one, kale.swap).toStdString(), "");
}

TEST(SwapSentences, SayInOneLineWhatItDoes) {
  diet::SwapRequest request = exampleSwap();
  EXPECT_EQ(effectLine(request, offer(request, 2, 100)).toStdString(),
            "Ca:P 1.10 → 1.10, still in zone · energy 140 → 140 kcal · eaten before: ?");
  request.eatenBefore["Pellet"] = {.fraction = 0.9, .bowls = 12};
  // 10 g pellets: 100 mg calcium and 50 mg phosphorus beside the insects' 20 and 150.
  EXPECT_EQ(effectLine(request, offer(request, 1, 10)).toStdString(),
            "Ca:P 1.10 → 0.60, now short · energy 140 → 130 kcal · calcium: met → short · eaten 90\u00a0% in "
            "12 bowls");
}

TEST(SwapSentences, SayWhoMustBeAskedAndWhy) {
  const diet::SwapRequest request = exampleSwap();
  EXPECT_EQ(askLine(offer(request, 2, 100)).toStdString(), "Keeper may decide");
  EXPECT_EQ(markOf(offer(request, 2, 100)), Mark::Met);
  EXPECT_EQ(askLine(offer(request, 1, 10)).toStdString(),
            "Ask the nutritionist: another food group; no longer met: calcium, Ca : P");
  EXPECT_EQ(markOf(offer(request, 1, 10)), Mark::Lacking);
}

TEST(SwapSentences, NameWhatIsUnknown) {
  diet::SwapRequest request = exampleSwap();
  request.candidates[2].composition.erase(food::nutrients::phosphorus());
  const SwapOffer kale = offer(request, 2, 100);
  EXPECT_THAT(effectLine(request, kale).toStdString(), HasSubstr("Ca:P 1.10 → ≈ 1.47"));  // 220 : 150
  EXPECT_THAT(effectLine(request, kale).toStdString(), HasSubstr("unknown: phosphorus"));
  EXPECT_EQ(markOf(kale), Mark::Unknown);
}

TEST(SwapSentences, SayWhyOthersWillNotDo) {
  const auto request = std::make_shared<const diet::SwapRequest>(exampleSwap());
  const SwapOffers offers = offersOf(request, diet::rankSwaps(*request), 1);
  ASSERT_FALSE(offers.offers.empty());
  EXPECT_THAT(othersText(offers).toStdString(), HasSubstr("1 more would do"));
  EXPECT_THAT(othersText(offers).toStdString(), HasSubstr("1 not for this animal"));
}

TEST(SwapSentences, OfferTheTwoAmountsByHand) {
  const auto request = std::make_shared<const diet::SwapRequest>(exampleSwap());
  const SwapOffers offers = offersOf(request, diet::rankSwaps(*request), 5);
  ASSERT_EQ(offers.offers.size(), 2U);
  // 10 g dry matter and 40 kcal of the greens are 11 and 13 g of a pellet of 90 % and 3 kcal/g; for three.
  EXPECT_EQ(equalText(*request, offers.offers[1]).toStdString(),
            "D: equal dry matter, 33 g · E: equal energy, 39 g");
}

}  // namespace
}  // namespace tarebowl::ui
