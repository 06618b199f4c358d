// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/scale_stream.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace tarebowl::intake {
namespace {

std::vector<double> settledGrams(const std::vector<ScaleEvent>& events) {
  std::vector<double> grams;
  for (const ScaleEvent& event : events)
    if (event.settled) grams.push_back(event.mass->value());
  return grams;
}

TEST(BytesOfAScale, MakeTheSameWeightsInWhateverPiecesTheyCome) {
  const std::string sent = "S S     12.0 g\r\nS D     12.4 g\r\nS S     12.5 g\r\n";
  ScaleStream whole;
  ScaleStream byByte;
  std::vector<ScaleEvent> pieces;
  for (const char byte : sent)
    for (ScaleEvent& event : byByte.take({&byte, 1})) pieces.push_back(std::move(event));
  EXPECT_EQ(settledGrams(whole.take(sent)), (std::vector{12.0, 12.5}));
  EXPECT_EQ(settledGrams(pieces), (std::vector{12.0, 12.5}));
}

TEST(BytesOfAScale, SettleWhenTheScaleSaysSoOrTwoLinesAgreeOrNothingFollows) {
  ScaleStream flagged;
  EXPECT_EQ(settledGrams(flagged.take("US,  12.0 g\nUS,  12.0 g\n")), std::vector<double>{});
  EXPECT_EQ(settledGrams(flagged.take("ST,  12.0 g\n")), std::vector{12.0});
  ScaleStream bare;
  EXPECT_EQ(settledGrams(bare.take("11.9 g\n12.0 g\n")), std::vector<double>{});
  EXPECT_EQ(settledGrams(bare.take("12.0 g\n")), std::vector{12.0});
  ScaleStream onItsKey;
  EXPECT_EQ(settledGrams(onItsKey.take("12.0 g\r\n")), std::vector<double>{});
  const auto alone = onItsKey.quiet();
  ASSERT_TRUE(alone);
  EXPECT_TRUE(alone->settled);
  EXPECT_EQ(alone->mass, quantity::Grams(12.0));
  EXPECT_FALSE(onItsKey.quiet()) << "once";
}

TEST(BytesOfAScale, OfAPanThatTheScaleSaysMovesNeverSettleBySilence) {
  ScaleStream stream;
  (void)stream.take("US,  12.0 g\n");
  EXPECT_FALSE(stream.quiet());
}

TEST(BytesOfAScale, ThatWereLostMakeNoOtherWeight) {
  ScaleStream stream;
  for (int line = 0; line < 4; ++line) (void)stream.take("ST,+00123.4 g\r\n");
  ASSERT_TRUE(stream.shape());
  EXPECT_EQ(stream.shape()->length, std::string("ST,+00123.4 g").size());
  const auto events = stream.take("ST,+0013.4 g\r\nST,+00123 g\r\nST,+00123.4 g\r\n");
  ASSERT_EQ(events.size(), 3u);
  EXPECT_EQ(events[0].fault, ScaleFault::Garbled) << "the 2 was lost";
  EXPECT_EQ(events[1].fault, ScaleFault::Garbled);
  EXPECT_EQ(settledGrams(events), std::vector{123.4});
}

TEST(BytesOfAScale, ThatLostALineEndAreTwoNumbersAndNoWeight) {
  ScaleStream stream;
  const auto events = stream.take("12.0 g12.0 g\n");
  ASSERT_EQ(events.size(), 1u);
  EXPECT_EQ(events[0].fault, ScaleFault::SeveralNumbers);
}

TEST(BytesOfAScale, WithoutAnEndAreLetGoAndTheNextLineIsRead) {
  ScaleStream stream;
  std::string bytes(200, '8');
  bytes += "\r\nS  12.0 g\r\n";
  const auto events = stream.take(bytes);
  ASSERT_EQ(events.size(), 2u);
  EXPECT_EQ(events[0].fault, ScaleFault::Garbled);
  EXPECT_EQ(settledGrams(events), std::vector{12.0});
}

TEST(AScale, ThatLeavesOutItsUnitWhileThePanMovesHasNoWeightThen) {
  ScaleStream stream;
  const auto events = stream.take("+   11.2  \n+   11.9  \n+   12.0 g\n+   12.0 g\n+   15.0  \n");
  EXPECT_EQ(settledGrams(events), std::vector{12.0});
  EXPECT_EQ(events.back().fault, ScaleFault::NoUnit);
  EXPECT_EQ(stream.shape()->saysUnit, ScaleShape::SaysUnit::WhenSteady);
}

TEST(AScale, ThatWasFirstSeenAtRestIsUnderstoodWhenItMoves) {
  ScaleStream stream;
  for (int line = 0; line < 4; ++line) (void)stream.take("+   12.0 g\n");
  const auto events = stream.take("+   13.0\n+   14.0 g\n+   14.0 g\n");
  EXPECT_EQ(events[0].fault, ScaleFault::NoUnit) << "it moves; no byte was lost";
  EXPECT_EQ(settledGrams(events), std::vector{14.0});
}

TEST(AScale, ThatNeverSaysItsUnitNeedsAPersonToSayIt) {
  ScaleStream unknown;
  EXPECT_EQ(unknown.take("12.0\n").front().fault, ScaleFault::NoUnit);
  ScaleStream told(ScaleUnit::Ounce);
  EXPECT_EQ(settledGrams(told.take("2.0\n2.0\n")), std::vector{2 * 28.349523125});
}

TEST(AScale, WhoseUnitIsChangedIsUnderstoodAgainAfterAFewLines) {
  ScaleStream stream;
  for (int line = 0; line < 4; ++line) (void)stream.take("ST   250.0 g\n");
  std::vector<ScaleEvent> events;
  for (int line = 0; line < 5; ++line)
    for (ScaleEvent& event : stream.take("ST  0.2500 kg\n")) events.push_back(std::move(event));
  EXPECT_EQ(settledGrams(events), (std::vector{250.0, 250.0})) << "three are held back first";
}

}  // namespace
}  // namespace tarebowl::intake
