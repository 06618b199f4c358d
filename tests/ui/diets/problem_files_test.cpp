// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/problem_files.h"

#include "core/exchange/problem_json.h"
#include "core/transfer/sample_place.h"
#include "tests/ui/diets/example_diet.h"
#include "ui/diets/diet_list_model.h"

#include <QAbstractItemModelTester>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <fstream>

namespace tarebowl::ui {
namespace {

class ProblemFilesTest : public ::testing::Test {
 protected:
  [[nodiscard]] std::filesystem::path path(const char* name) const {
    return toPath(folder.filePath(QLatin1String(name)));
  }
  void write(const char* name, const std::string& text) const { std::ofstream(path(name)) << text; }

  QTemporaryDir folder;
};

TEST_F(ProblemFilesTest, AreListedByTitleAndOtherFilesPassedOver) {
  diet::BalanceProblem problem = exampleProblem();
  problem.title = "Zebra finches";
  ASSERT_FALSE(saveProblem(path("a.json"), problem));
  problem.title = "Agoutis";
  ASSERT_FALSE(saveProblem(path("z.json"), problem));
  write("result.json", R"({"format": "tarebowl-result/1"})");
  write("notes.txt", "tarebowl-problem/1");
  const auto entries = problemsIn(toPath(folder.path()));
  ASSERT_EQ(entries.size(), 2U);
  EXPECT_EQ(entries[0].title.toStdString(), "Agoutis");
  EXPECT_EQ(entries[1].title.toStdString(), "Zebra finches");
  EXPECT_EQ(entries[0].subtitle.toStdString(), "3 animals · model: domestic dog");
}

TEST_F(ProblemFilesTest, ThatCannotBeReadAreListedWithThePlaceOfTheFault) {
  write("broken.json", R"({"format": "tarebowl-problem/1", "foods": 3})");
  const auto entries = problemsIn(toPath(folder.path()));
  ASSERT_EQ(entries.size(), 1U);
  EXPECT_FALSE(entries[0].readable);
  EXPECT_TRUE(entries[0].subtitle.contains(QStringLiteral("foods"))) << entries[0].subtitle.toStdString();
}

TEST_F(ProblemFilesTest, OfAFolderThatDoesNotExistAreNone) {
  EXPECT_TRUE(problemsIn(path("no-such-folder")).empty());
}

TEST_F(ProblemFilesTest, AreReadBackAsTheyWereSaved) {
  ASSERT_FALSE(saveProblem(path("example.json"), exampleProblem()));
  EXPECT_EQ(exchange::readProblem(path("example.json")), exampleProblem());
}

TEST_F(ProblemFilesTest, SayWhyTheyWereNotSaved) {
  const auto why = saveProblem(path("no-such-folder/example.json"), exampleProblem());
  ASSERT_TRUE(why);
  EXPECT_TRUE(why->contains(QStringLiteral("was not saved")));
}

TEST_F(ProblemFilesTest, AreFoundInTheListByTheirFile) {
  ASSERT_FALSE(saveProblem(path("example.json"), exampleProblem()));
  DietListModel model;
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  model.setFiles(problemsIn(toPath(folder.path())));
  EXPECT_EQ(model.rowOf(DietListEntry::Kind::File, toText(path("example.json"))), 0);
  EXPECT_EQ(model.rowOf(DietListEntry::Kind::File, toText(path("other.json"))), -1);
  EXPECT_EQ(model.index(0).data().toString().toStdString(), "Example");
}

TEST(SampleFolder, HoldsTheInventedSample) {
  const auto entries = problemsIn(transfer::sampleFolder());
  EXPECT_GE(entries.size(), 3U);
  for (const ProblemEntry& entry : entries) EXPECT_TRUE(entry.readable) << entry.subtitle.toStdString();
}

}  // namespace
}  // namespace tarebowl::ui
