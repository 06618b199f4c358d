// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A database that holds no collection yet is offered to be set up; two clocks that disagree are said.
#include "core/store/food_reading.h"
#include "core/store/server_address.h"
#include "core/store/server_setup.h"
#include "core/store/verbs.h"
#include "tests/core/store/own_database.h"
#include "ui/collection/collection_files.h"
#include "ui/collection/collection_state.h"
#include "ui/shared/password_question.h"
#include "ui/shared/paths.h"
#include "ui/shared/set_up_dialog.h"

#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QWidget>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using namespace std::chrono_literals;
using testing::AllOf;
using testing::HasSubstr;

constexpr int kPatienceMs = 60'000;

class SetUpTest : public testing::Test {
 protected:
  SetUpTest() {
    QObject::connect(&collection, &OpenCollection::refused, &widget,
                     [this](const Refusal& refusal) { refused = refusal.why.toStdString(); });
  }
  [[nodiscard]] Dialogs dialogs() {
    Dialogs made;
    made.emptyDatabase = [this](QWidget*, const QString& address) {
      offered.push_back(address.toStdString());
      QTest::qWait(100);  // a person thinks it over; other rooms are refused meanwhile
      return answer;
    };
    made.tell = [this](QWidget*, const QString& title, const QString& text) {
      told = title.toStdString() + "\n" + text.toStdString();
    };
    made.password = [this](QWidget*, PasswordQuestion& question) {
      ++asked;
      question.answer("typed");
    };
    return made;
  }
  [[nodiscard]] bool waitFor(const std::function<bool()>& what) const {
    return QTest::qWaitFor(what, kPatienceMs);
  }

  store::OwnDatabase database{testing::UnitTest::GetInstance()->current_test_info()->name()};
  bool answer = true;
  std::vector<std::string> offered;
  std::string told;
  std::string refused;
  int asked = 0;
  QWidget widget;
  OpenCollection collection;
  CollectionFiles files{collection, dialogs(), &widget};
};

TEST_F(SetUpTest, AnEmptyDatabaseIsSetUpAndOpened) {
  files.open(database.address());
  EXPECT_TRUE(waitFor([this] { return !told.empty(); })) << refused;
  EXPECT_EQ(offered, std::vector{database.address().string()});
  EXPECT_THAT(told, HasSubstr("tarebowl server add " + database.address().string() + " PERSON ROLE"));
  ASSERT_TRUE(collection.file());
  EXPECT_FALSE(collection.isReadOnly());
  const store::Collection there = store::Collection::open(database.address(), "2026-11-25T07:30:00Z");
  EXPECT_EQ(there.schemaVersion(), store::currentSchemaVersion());
  EXPECT_NO_THROW(store::letIn(database.address(), {}, "owner", "keeper", std::nullopt))
      << "its roles are there";
}

TEST_F(SetUpTest, WhoWouldRatherNotIsToldWhyItDoesNotOpen) {
  answer = false;
  files.open(database.address());
  // As the window does: several rooms ask at once.
  for (int room = 0; room < 3; ++room)
    collection.ask([](store::Collection& there) { return store::countFoods(there); },
                   [](std::size_t /*foods*/) {});
  EXPECT_TRUE(waitFor([this] { return !offered.empty(); }));
  QTest::qWait(300);
  EXPECT_EQ(offered.size(), 1U);
  EXPECT_THAT(refused, HasSubstr("holds no collection"));
  EXPECT_FALSE(collection.file());
  EXPECT_EQ(told, "");
}

TEST_F(SetUpTest, WhoMayNotSetItUpIsToldSoAndNothingIsLeftBehind) {
  const std::string person = "may_not_set_up";
  (void)store::refusedTo(database.address(), "", "DROP ROLE IF EXISTS " + person);
  database.run("CREATE ROLE " + person + " LOGIN PASSWORD 'typed'");
  files.open(database.addressOf(person));
  EXPECT_TRUE(waitFor([this] { return refused.find("may not") != std::string::npos; })) << refused;
  EXPECT_EQ(asked, 1) << "the password that was typed serves for both";
  EXPECT_FALSE(collection.file());
  EXPECT_EQ(told, "");
  database.run(
      "DO $$ BEGIN IF EXISTS (SELECT FROM pg_namespace WHERE nspname = 'tarebowl') THEN RAISE EXCEPTION "
      "'left behind'; END IF; END $$");
  (void)store::refusedTo(database.address(), "", "DROP ROLE " + person);
}

TEST_F(SetUpTest, ACollectionThatIsThereIsNotOffered) {
  (void)store::Collection::create(database.address(), {"Keeper A", "2026-11-25T07:30:00Z"});
  files.open(database.address());
  EXPECT_TRUE(waitFor([this] { return collection.file() && collection.isIdle(); }));
  EXPECT_TRUE(offered.empty());
}

TEST_F(SetUpTest, ItIsNamedByItsServerAndDatabaseNotByItsSocket) {
  (void)store::Collection::create(database.address(), {"Keeper A", "2026-11-25T07:30:00Z"});
  files.open(database.address());
  EXPECT_TRUE(waitFor([this] { return collection.file() && collection.isIdle(); }));
  const std::string name = store::databaseOf(database.address());
  EXPECT_EQ(stateOf(collection).title.toStdString(), name);
  EXPECT_EQ(stateOf(collection).file.toStdString(), "localhost/" + name);
}

TEST_F(SetUpTest, ClocksThatDisagreeAreSaidAndRecordsAreDatedByTheServers) {
  (void)store::Collection::create(database.address(), {"Keeper A", "2026-11-25T07:30:00Z"});
  collection.setClock([] { return std::chrono::system_clock::now() + 15min; });
  files.open(database.address());
  EXPECT_TRUE(waitFor([this] { return !told.empty(); })) << refused;
  EXPECT_THAT(told, AllOf(HasSubstr("15 minute"), HasSubstr("ahead of the server's")));
  EXPECT_THAT(told, HasSubstr("set its clock"));
  const QDateTime at = QDateTime::fromString(QString::fromStdString(collection.author().at), Qt::ISODate);
  EXPECT_LE(std::abs(at.secsTo(QDateTime::currentDateTimeUtc())), 5)
      << "15 minutes less than the clock here says";
}

TEST_F(SetUpTest, ClocksThatAgreeAreNotSpokenOf) {
  (void)store::Collection::create(database.address(), {"Keeper A", "2026-11-25T07:30:00Z"});
  files.open(database.address());
  EXPECT_TRUE(waitFor([this] { return collection.file() && collection.isIdle(); }));
  QTest::qWait(200);
  EXPECT_EQ(told, "");
  EXPECT_EQ(collection.clockAhead(), 0s);
}

TEST(SetUpDialog, ExplainsEachRoleAndSetsUpNothingByChance) {
  SetUpDialog dialog(QStringLiteral("postgresql://ann@server/zoo"));
  dialog.show();
  QString all;
  for (const auto* label : dialog.findChildren<QLabel*>()) all += label->text() + QLatin1Char('\n');
  for (const std::string_view role : store::kServerRoles)
    EXPECT_TRUE(all.contains(QString::fromLatin1(role.data(), qsizetype(role.size())))) << role;
  EXPECT_TRUE(all.contains(QStringLiteral("postgresql://ann@server/zoo")));
  const auto* focused = qobject_cast<QPushButton*>(dialog.focusWidget());
  ASSERT_NE(focused, nullptr);
  EXPECT_FALSE(focused->text().startsWith(QStringLiteral("Set up")));
  QTest::keyClick(&dialog, Qt::Key_Return);
  EXPECT_EQ(dialog.result(), QDialog::Rejected);
  for (auto* button : dialog.findChildren<QPushButton*>())
    if (button->text().startsWith(QStringLiteral("Set up"))) button->click();
  EXPECT_EQ(dialog.result(), QDialog::Accepted);
  EXPECT_LE(dialog.width(), 680);
  EXPECT_LE(dialog.height(), 500);
}

}  // namespace
}  // namespace tarebowl::ui
