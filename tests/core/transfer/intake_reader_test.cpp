// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/intake_reader.h"

#include "tests/core/transfer/brackenmere.h"

#include <gtest/gtest.h>

namespace tarebowl::transfer {
namespace {

using quantity::Date;

Date on(const char* iso) {
  return quantity::parseDate(iso).value();
}

std::vector<std::optional<double>> eatenGrams(const IntakeReader::Stretch& stretch) {
  std::vector<std::optional<double>> grams;
  for (const intake::EatenBowl& bowl : stretch.eaten)
    for (const intake::EatenItem& item : bowl.items)
      grams.push_back(item.eaten ? std::optional(item.eaten->value()) : std::nullopt);
  return grams;
}

void expectSame(const IntakeReader::Stretch& one, const IntakeReader::Stretch& other) {
  EXPECT_EQ(one.fed, other.fed);
  EXPECT_EQ(eatenGrams(one), eatenGrams(other));
  EXPECT_EQ(one.pans, other.pans);
  EXPECT_EQ(one.pansOfDays, other.pansOfDays);
  EXPECT_EQ(one.diet, other.diet);
  EXPECT_EQ(one.fedOn, other.fedOn);
}

class HeldIntake : public testing::Test {
 protected:
  [[nodiscard]] IntakeReader reader() const {
    return {collection(), "dragons", store::findGroup(collection(), "dragons")->record.section};
  }
  static const store::Collection& collection() {
    static const OwnSample kSample(FeedingDays::TakenIn);
    return kSample.collection;
  }
};

TEST_F(HeldIntake, AStretchOfDaysThatAreHeldIsReadAsIfItWereAskedByItself) {
  IntakeReader held = reader();
  held.hold(on("2026-10-01"), on("2026-11-24"));
  IntakeReader asked = reader();
  for (const auto& [from, to] :
       {std::pair(on("2026-10-01"), on("2026-10-07")), std::pair(on("2026-10-20"), on("2026-10-20")),
        std::pair(on("2026-11-10"), on("2026-11-24"))}) {
    const IntakeReader::Stretch one = held.read(from, to);
    EXPECT_FALSE(one.fed.empty());
    expectSame(one, asked.read(from, to));
  }
  EXPECT_EQ(held.foods().size(), asked.foods().size());
}

TEST_F(HeldIntake, DaysBeyondThoseThatAreHeldAreAsked) {
  IntakeReader held = reader();
  held.hold(on("2026-11-10"), on("2026-11-20"));
  const IntakeReader::Stretch wider = held.read(on("2026-11-10"), on("2026-11-24"));
  EXPECT_EQ(wider.fed.back().day, on("2026-11-24"));
  expectSame(wider, reader().read(on("2026-11-10"), on("2026-11-24")));
}

}  // namespace
}  // namespace tarebowl::transfer
