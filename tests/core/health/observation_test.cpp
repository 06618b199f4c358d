// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/observation.h"

#include "core/health/health_words.h"

#include <gtest/gtest.h>

namespace tarebowl::health {
namespace {

Observation seen(SignKind kind) {
  Observation observation;
  observation.group = "lemurs";
  observation.kind = kind;
  return observation;
}

TEST(Observation, isOfOneAnimalOrOneGroup) {
  Observation limp = seen(SignKind::Limping);
  EXPECT_EQ(problemWith(limp), std::nullopt);
  limp.individual = "Ravo";
  EXPECT_EQ(problemWith(limp), ObservationProblem::NotOneSubject);
  limp.individual.reset();
  limp.group.reset();
  EXPECT_EQ(problemWith(limp), ObservationProblem::NotOneSubject);
}

TEST(Observation, saysWhatItsKindAsksFor) {
  for (const SignKind kind :
       {SignKind::Faeces, SignKind::Appetite, SignKind::Blood, SignKind::Treatment, SignKind::Other})
    EXPECT_EQ(problemWith(seen(kind)), ObservationProblem::NothingSaid) << animal::symbolOf(kind);
  Observation faeces = seen(SignKind::Faeces);
  faeces.faeces = scoreOn(*findFaecalScale("faeces-7"), 6);
  EXPECT_EQ(problemWith(faeces), std::nullopt);
  faeces.kind = SignKind::Limping;
  EXPECT_EQ(problemWith(faeces), ObservationProblem::OfAnotherKind);
}

TEST(Observation, aTimeIsATimeOfDay) {
  Observation limp = seen(SignKind::Limping);
  EXPECT_EQ(minuteOf(limp), std::nullopt);
  limp.time = "08:07";
  EXPECT_EQ(minuteOf(limp), 487);
  for (const char* wrong : {"8:07", "24:00", "08:60", "08-07", "08:0x", "08:077"}) {
    limp.time = wrong;
    EXPECT_EQ(problemWith(limp), ObservationProblem::BadTime) << wrong;
  }
}

TEST(Observation, aSignIsWhatALookBackStartsFrom) {
  EXPECT_TRUE(isSign(seen(SignKind::Vomiting)));
  EXPECT_FALSE(isSign(seen(SignKind::Treatment)));
  Observation appetite = seen(SignKind::Appetite);
  appetite.appetite = Appetite::Reduced;
  EXPECT_TRUE(isSign(appetite));
  appetite.appetite = Appetite::Usual;
  EXPECT_FALSE(isSign(appetite));
}

TEST(Attachment, cannotLeadOutOfTheCollectionsFolder) {
  for (const char* inside : {"report.pdf", "2026/11/radiograph left.png", "a..b/c"})
    EXPECT_TRUE(staysInside(inside)) << inside;
  for (const char* outside : {"", "/etc/passwd", "../report.pdf", "a/../../b", "a/..", "./a", "a//b", "a/",
                              "C:\\x", "a\\..\\b", "c:report.pdf", "a\nb"})
    EXPECT_FALSE(staysInside(outside)) << outside;
}

}  // namespace
}  // namespace tarebowl::health
