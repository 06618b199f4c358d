// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The vet between two consultations: whom, what was seen, what was eaten before it, the page for the file.
#include "ui/health/health_room.h"

#include "tests/ui/shared/named_controls.h"
#include "tests/ui/shared/sample_in_room.h"
#include "ui/health/health_timeline.h"
#include "ui/health/observation_form.h"
#include "ui/shared/paths.h"
#include "ui/shared/plain_table.h"

#include <QAbstractSeries>
#include <QApplication>
#include <QChart>
#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QFile>
#include <QLineEdit>
#include <QListWidget>
#include <QSpinBox>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

class HealthRoomTest : public SampleInRoom<HealthRoom> {
 protected:
  HealthRoomTest() : SampleInRoom(QStringLiteral("Vet")) {}
  void show(const char* group) {
    for (std::size_t i = 0; i < room->desk().patients().size(); ++i)
      if (room->desk().patients()[i].subject == transfer::HealthSubject{group, ""})
        named<QListWidget>("Groups and animals").setCurrentRow(static_cast<int>(i));
    settle();
  }
  static QString cell(const PlainTable& table, int row, int column) {
    return table.model()->index(row, column).data().toString();
  }
};

TEST_F(HealthRoomTest, aSignLeadsBackToTheFoodBeforeIt) {
  show("lemurs");
  const PlainTable& seen = room->observations();
  int row = 0;
  while (row < seen.model()->rowCount() && !cell(seen, row, 0).startsWith(QStringLiteral("▲"))) ++row;
  ASSERT_LT(row, seen.model()->rowCount());
  emit room->observations().activated(seen.model()->index(row, 0));
  settle();
  ASSERT_TRUE(room->desk().lookBack());
  EXPECT_THAT(cell(room->links(), 0, 0).toStdString(), HasSubstr("roccoli"));
  EXPECT_THAT(cell(room->links(), 0, 1).toStdString(), HasSubstr(" / "));
  EXPECT_THAT(said(), HasSubstr("not what caused what"));
  named<QSpinBox>("Hours before the sign").setValue(48);
  settle();
  EXPECT_EQ(room->desk().lookBack()->lookBack.hours, 48);
}

TEST_F(HealthRoomTest, theReviewSaysHowLittleWouldDo) {
  show("dragons");
  EXPECT_GT(room->zones().model()->rowCount(), 4);
  auto& supplement = named<QComboBox>("Supplement");
  supplement.setCurrentIndex(1);
  emit supplement.activated(1);
  settle();
  ASSERT_TRUE(room->desk().view()->page.review.advice);
  const auto whole = room->desk().view()->page.review.advice->dose.exact;
  named<QDoubleSpinBox>("Share of a dust that reaches the mouth").setValue(50.0);
  settle();
  const auto half = room->desk().view()->page.review.advice->dose.exact;
  if (whole) {
    EXPECT_NEAR(half.value(), 2.0 * *whole, 1e-9);
  }
  EXPECT_THAT(said(), HasSubstr("Invented sample"));
}

TEST_F(HealthRoomTest, whatIsTypedIsKeptAndTakenBack) {
  show("fennecs");
  const int before = room->observations().model()->rowCount();
  named<QComboBox>("What was seen").setCurrentIndex(0);
  QTest::keyClicks(&named<QLineEdit>("Score"), QStringLiteral("9"));
  press("Keep");
  EXPECT_THAT(said(), HasSubstr("not on this scale"));
  named<QLineEdit>("Score").setText(QStringLiteral("6"));
  QTest::keyClick(&named<QLineEdit>("Score"), Qt::Key_Return);
  settle();
  EXPECT_EQ(room->observations().model()->rowCount(), before + 1);
  EXPECT_TRUE(cell(room->observations(), 0, 0).startsWith(QStringLiteral("▲")));
  EXPECT_THAT(room->observations().model()->index(0, 0).data(Qt::ToolTipRole).toString().toStdString(),
              HasSubstr("Written down by Vet"));
  room->desk().undoStack().undo();
  settle();
  EXPECT_EQ(room->observations().model()->rowCount(), before);
}

TEST_F(HealthRoomTest, aFileBesideTheCollectionIsChosenAndNamedByItsPathFromThere) {
  show("fennecs");
  std::filesystem::create_directories(sample.at("reports"));
  sample.page = sample.at("reports") / "gait.txt";
  std::ofstream(sample.page) << "limps";
  press("Choose…");
  EXPECT_EQ(named<QLineEdit>("File beside the collection").text(), QStringLiteral("reports/gait.txt"));
  named<QComboBox>("What was seen").setCurrentIndex(static_cast<int>(health::SignKind::Limping));
  press("Keep");
  EXPECT_THAT(cell(room->observations(), 0, 2).toStdString(), HasSubstr("reports/gait.txt"));
}

TEST_F(HealthRoomTest, aFileFromElsewhereIsNotNamedAndTheFormSaysWhatToDo) {
  show("fennecs");
  const QTemporaryDir elsewhere;
  sample.page = toPath(elsewhere.filePath(QStringLiteral("letter.txt")));
  std::ofstream(sample.page) << "private";
  press("Choose…");
  EXPECT_TRUE(named<QLineEdit>("File beside the collection").text().isEmpty());
  EXPECT_THAT(said(), HasSubstr("choose it there"));
}

TEST_F(HealthRoomTest, calciumInTheOtherUnitIsAskedAboutFirst) {
  show("dragons");
  const int before = room->observations().model()->rowCount();
  named<QComboBox>("What was seen").setCurrentIndex(static_cast<int>(health::SignKind::Blood));
  named<QLineEdit>("Blood value").setText(QStringLiteral("9.6"));
  press("Keep");
  EXPECT_THAT(said(), HasSubstr("would be ordinary in mg/dl"));
  EXPECT_EQ(room->observations().model()->rowCount(), before);
  press("Keep as it is");
  EXPECT_EQ(room->observations().model()->rowCount(), before + 1);
  EXPECT_EQ(room->desk().view()->page.blood.size(), 1U);
}

TEST_F(HealthRoomTest, theTimelineIsLookedAtCloser) {
  show("lemurs");
  EXPECT_NEAR(room->timeline().daysInSight(), 28.0, 0.1);
  QTest::keyClick(&room->timeline(), Qt::Key_Plus);
  EXPECT_NEAR(room->timeline().daysInSight(), 14.0, 0.1);
  QTest::keyClick(&room->timeline(), Qt::Key_0);
  EXPECT_NEAR(room->timeline().daysInSight(), 28.0, 0.1);
}

TEST_F(HealthRoomTest, thePageForTheFileIsOnePage) {
  show("dragons");
  sample.page = sample.at("review.pdf");
  press("Review for the file…");
  QFile pdf(toText(sample.page));
  ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
  const QByteArray bytes = pdf.readAll();
  EXPECT_TRUE(bytes.startsWith("%PDF"));
  EXPECT_TRUE(bytes.contains("/Count 1\n"));
}

TEST_F(HealthRoomTest, aLookBackIsWrittenForTheFileToo) {
  show("lemurs");
  sample.page = sample.at("look-back.html");
  room->desk().setDays(120);
  settle();
  const auto& seen = room->desk().view()->period.observations;
  const auto sign = std::ranges::find_if(seen, [](const auto& one) { return health::isSign(one.record); });
  ASSERT_NE(sign, seen.end());
  room->desk().lookBackFrom(sign->record.kind, sign->record.on, 24);
  settle();
  press("Look-back for the file…");
  QFile html(toText(sample.page));
  ASSERT_TRUE(html.open(QIODevice::ReadOnly));
  EXPECT_TRUE(html.readAll().contains("not what caused what"));
}

TEST_F(HealthRoomTest, theTimelineBearsBloodTreatmentsAndConditionBesideTheSigns) {
  show("dragons");
  room->desk().setDays(120);
  health::Observation seen{.group = "dragons", .on = sampleDay(), .kind = health::SignKind::Blood};
  seen.blood = {{.value = 2.31, .low = 2.2, .high = 3.4}};
  room->desk().add(seen, store::Confirmed::No);
  settle();
  health::Observation treated{.group = "dragons", .on = sampleDay(), .kind = health::SignKind::Treatment};
  treated.note = "calcium by mouth";
  room->desk().add(treated, store::Confirmed::No);
  settle();
  QStringList names;
  for (const QAbstractSeries* series : room->timeline().chart()->series()) names << series->name();
  EXPECT_TRUE(names.contains(QStringLiteral("blood, in the lab's range"))) << names.join(';').toStdString();
  EXPECT_TRUE(names.contains(QStringLiteral("treatments")));
  EXPECT_EQ(names.contains(QStringLiteral("condition score, within its scale")),
            !room->desk().view()->period.conditions.empty());
}

TEST_F(HealthRoomTest, yearsLaterItShowsTheDaysUpToTheLastRecordAndSaysSo) {
  room = std::make_unique<HealthRoom>(collection, sample.dialogs(),
                                      [] { return quantity::parseDate("2031-03-01").value(); });
  room->show();
  sample.openIn(collection);
  settle();
  show("lemurs");
  ASSERT_TRUE(room->desk().view());
  EXPECT_LE(room->desk().view()->period.to, sampleDay());
  EXPECT_GT(room->observations().model()->rowCount(), 20);  // a day each of the 28
  EXPECT_THAT(said(), HasSubstr("The last record is of"));
}

TEST_F(HealthRoomTest, ofTodayItSaysNothingOfALastRecord) {
  show("lemurs");
  EXPECT_THAT(said(), Not(HasSubstr("The last record is of")));
}

TEST_F(HealthRoomTest, everyControlHasAName) {
  expectNamedControls(*room);
}

}  // namespace
}  // namespace tarebowl::ui
