// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/check_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>
#include <stdexcept>

namespace tarebowl::food {
namespace {

using ::testing::EndsWith;
using ::testing::IsSubsetOf;

TEST(CheckWords, EveryCheckSaysWhatIsDoubtfulAndWhatToDoInWholeSentences) {
  for (int code = 0; code <= static_cast<int>(CheckCode::Stale); ++code) {
    const CheckWords words = wordsOf(static_cast<CheckCode>(code));
    std::set<std::string> named;
    const auto note = [&](std::string_view fact) { return *named.emplace(fact).first; };
    EXPECT_THAT(withFacts(words.what, note), EndsWith(".")) << code;
    EXPECT_THAT(withFacts(words.advice, note), EndsWith(".")) << code;
    EXPECT_THAT(named,
                IsSubsetOf({"Nutrient", "nutrient", "parts", "found", "against", "number", "limit", "other"}))
        << code;
  }
}

TEST(CheckWords, TakeTheirFactsInAnyOrderAndMoreThanOnce) {
  const auto fact = [](std::string_view named) { return named == "a" ? std::string("1 {b}") : "2"; };
  EXPECT_EQ(withFacts("{b}, {a} and {b}.", fact), "2, 1 {b} and 2.");
  EXPECT_EQ(withFacts("nothing", fact), "nothing");
  EXPECT_THROW((void)withFacts("{a", fact), std::invalid_argument);
}

}  // namespace
}  // namespace tarebowl::food
