// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/study_page.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>

namespace tarebowl::exchange {
namespace {

using testing::HasSubstr;

/// Two days of one food: 10 g offered, 2 g left of it, so that 8 g and then 6 g were eaten.
IntakeToWrite twoDays() {
  IntakeToWrite study{.group = "pair",
                      .groupName = "The <pair>",
                      .from = quantity::parseDate("2026-09-01").value(),
                      .to = quantity::parseDate("2026-09-02").value(),
                      .invented = true};
  diet::DietFood kale;
  kale.id = "kale";
  kale.name = "Kale";
  study.problem.foods = {kale};
  for (const auto& [day, eaten] : {std::pair{"2026-09-01", 8.0}, {"2026-09-02", 6.0}}) {
    intake::EatenBowl bowl{.group = "pair", .day = quantity::parseDate(day).value(), .animals = 2};
    intake::EatenItem& item = bowl.items.emplace_back();
    item.food = "kale";
    item.offered = 10.0;
    item.left = item.leftAsOffered = 10.0 - eaten;
    item.eaten = intake::Uncertain(eaten);
    item.atLeast = item.atMost = eaten;
    study.bowls.push_back(bowl);
  }
  study.report = intake::reportStudy(study.problem, study.bowls, {});
  return study;
}

TEST(StudyPage, TellsOfEachFoodWhatWasOfferedLeftAndEaten) {
  const std::vector<StudyTable> tables = studyTables(twoDays());
  ASSERT_FALSE(tables.empty());
  const std::vector<Cell>& kale = tables.front().rows.at(0);
  ASSERT_EQ(kale.size(), tables.front().columns.size());
  EXPECT_EQ(std::get<std::string>(kale[0]), "Kale");
  EXPECT_DOUBLE_EQ(std::get<double>(kale[1]), 20.0);
  EXPECT_DOUBLE_EQ(std::get<double>(kale[2]), 6.0);
  EXPECT_DOUBLE_EQ(std::get<double>(kale[5]), 14.0);
  EXPECT_DOUBLE_EQ(std::get<double>(kale[6]), 70.0);  // 14 of 20
  EXPECT_DOUBLE_EQ(std::get<double>(kale[7]), 7.0);   // a day: (8 + 6) / 2
}

TEST(StudyPage, EveryRowHasACellForEachTitle) {
  for (const StudyTable& table : studyTables(twoDays()))
    for (const auto& row : table.rows) EXPECT_EQ(row.size(), table.columns.size()) << table.title;
}

TEST(StudyPage, EscapesWhatPeopleWroteAndSaysThatItIsInvented) {
  const std::string html = studyAsHtml(twoDays());
  EXPECT_THAT(html, HasSubstr("The &lt;pair&gt;"));
  EXPECT_THAT(html, HasSubstr("INVENTED SAMPLE"));
  EXPECT_THAT(html, HasSubstr("2 days with a bowl, on 2 all of it is known"));
}

TEST(StudyPage, IsAWorkbookToo) {
  const auto file = std::filesystem::temp_directory_path() / "tarebowl-study-page-test.xlsx";
  writeStudyXlsx(twoDays(), file);
  EXPECT_GT(std::filesystem::file_size(file), 1000U);
  std::filesystem::remove(file);
}

}  // namespace
}  // namespace tarebowl::exchange
