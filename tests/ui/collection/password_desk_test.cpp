// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A thread that opens a collection waits for a password; the window never waits for that thread in vain.
#include "ui/collection/password_desk.h"

#include "tests/ui/collection/asking_server.h"
#include "ui/collection/collection_files.h"
#include "ui/shared/paths.h"

#include <QInputDialog>
#include <QLineEdit>
#include <QPointer>
#include <QTemporaryDir>
#include <QTest>
#include <QWidget>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <future>

namespace tarebowl::ui {
namespace {

using testing::HasSubstr;

constexpr int kPatienceMs = 30'000;

/// What a window holds, in the order in which it goes: first the ways to open a collection, then the
/// collection.
struct Window {
  explicit Window(Dialogs dialogs) : files(*collection, std::move(dialogs), widget.get()) {}

  std::unique_ptr<QWidget> widget = std::make_unique<QWidget>();
  OpenCollection* collection = new OpenCollection(widget.get());
  CollectionFiles files;
};

/// A person who has been asked and takes their time.
class PasswordDeskTest : public ::testing::Test {
 protected:
  PasswordDeskTest() {
    Dialogs dialogs;
    dialogs.password = [this](QWidget*, PasswordQuestion& asked) { question = &asked; };
    window = std::make_unique<Window>(std::move(dialogs));
    QObject::connect(window->collection, &OpenCollection::refused, window->widget.get(),
                     [this](const Refusal& refusal) { refused = refusal.why.toStdString(); });
    window->files.open(server.address());
    waitForQuestion();
  }
  void waitForQuestion() {
    ASSERT_TRUE(QTest::qWaitFor([this] { return !question.isNull(); }, kPatienceMs));
  }
  [[nodiscard]] std::string refusal() {
    EXPECT_TRUE(QTest::qWaitFor([this] { return !refused.empty(); }, kPatienceMs));
    return refused;
  }

  AskingServer server;
  QTemporaryDir folder;
  QPointer<PasswordQuestion> question;
  std::string refused;
  std::unique_ptr<Window> window;
};

TEST_F(PasswordDeskTest, WhoWouldRatherNotIsToldThatAPasswordIsNeeded) {
  EXPECT_EQ(question->address().toStdString(), server.address().string());
  question->answer(std::nullopt);
  EXPECT_THAT(refusal(), HasSubstr("asks for a password"));
  EXPECT_FALSE(window->collection->file());
}

TEST_F(PasswordDeskTest, WhatWasTypedGoesToTheServer) {
  question->answer("wrong");
  EXPECT_THAT(refusal(), HasSubstr("does not accept the password"));
}

TEST_F(PasswordDeskTest, TheWindowClosesWhileItIsAsked) {
  window.reset();
  EXPECT_TRUE(question.isNull());
}

TEST_F(PasswordDeskTest, AnotherCollectionIsOpenedWhileItIsAsked) {
  const auto file = toPath(folder.filePath(QStringLiteral("house.tarebowl")));
  (void)store::Collection::create(file, window->collection->author());
  window->files.open(file);
  EXPECT_TRUE(question.isNull());
  EXPECT_TRUE(QTest::qWaitFor([this] { return window->collection->isIdle(); }, kPatienceMs));
  EXPECT_EQ(window->collection->file()->file, file);
  EXPECT_EQ(refused, "");
}

TEST_F(PasswordDeskTest, AnotherIsOpenedByWhoKnowsNothingOfPasswords) {
  const auto file = toPath(folder.filePath(QStringLiteral("house.tarebowl")));
  window->collection->open({.name = QStringLiteral("house"), .file = file}, [file] {
    return store::Collection::create(file, {"Keeper A", "2026-11-25T07:30:00Z"});
  });
  EXPECT_TRUE(question.isNull());
}

TEST_F(PasswordDeskTest, TheSameAddressIsOpenedAgainWhileItIsAskedAndAsksAgain) {
  window->files.open(server.address());
  EXPECT_TRUE(question.isNull());
  waitForQuestion();
}

TEST(PasswordDeskOfThreads, WhoAsksAfterItIsClosedIsAnsweredAtOnce) {
  store::PasswordAsker asker;
  {
    PasswordDesk desk([](PasswordQuestion& asked) { asked.answer("never asked"); });
    asker = desk.asker();
  }
  EXPECT_EQ(std::async(std::launch::async, [&] { return asker("postgresql://ann@server/zoo"); }).get(),
            std::nullopt);
}

TEST(PasswordDeskOfThreads, WhoHasAskedButWasNotShownYetIsAnsweredWhenItCloses) {
  auto desk = std::make_unique<PasswordDesk>([](PasswordQuestion&) { FAIL() << "nobody is there any more"; });
  auto answer = std::async(std::launch::async,
                           [asker = desk->asker()] { return asker("postgresql://ann@server/zoo"); });
  desk.reset();
  EXPECT_EQ(answer.get(), std::nullopt);
  QCoreApplication::processEvents();
}

TEST(PasswordDeskOfThreads, TheWindowsOwnThreadDoesNotWaitForItself) {
  PasswordDesk desk([](PasswordQuestion& asked) { asked.answer("typed"); });
  EXPECT_EQ(desk.asker()("postgresql://ann@server/zoo"), std::nullopt);
}

/// The program's own dialog.
class PasswordDialogTest : public ::testing::Test {
 protected:
  PasswordDialogTest() {
    question = new PasswordQuestion(QStringLiteral("postgresql://ann@server/zoo"),
                                    [this](std::optional<std::string> given) {
                                      ++answers;
                                      typed = std::move(given);
                                    });
    systemDialogs().password(&window, *question);
    box = window.findChild<QInputDialog*>();
  }
  ~PasswordDialogTest() override { delete question; }

  QWidget window;
  QPointer<PasswordQuestion> question;
  QPointer<QInputDialog> box;
  int answers = 0;
  std::optional<std::string> typed;
};

TEST_F(PasswordDialogTest, GivesWhatWasTypedAndShowsNobodyWhatItIs) {
  ASSERT_TRUE(box);
  auto* field = box->findChild<QLineEdit*>();
  EXPECT_EQ(field->echoMode(), QLineEdit::Password);
  QTest::keyClicks(field, QStringLiteral("by hand"));
  QTest::keyClick(field, Qt::Key_Return);
  EXPECT_EQ(typed, "by hand");
  EXPECT_EQ(answers, 1);
}

TEST_F(PasswordDialogTest, EscapeSaysThatThereIsNone) {
  QTest::keyClick(box, Qt::Key_Escape);
  EXPECT_EQ(answers, 1);
  EXPECT_EQ(typed, std::nullopt);
}

TEST_F(PasswordDialogTest, ClosesWhenNobodyWantsToKnowAnyMore) {
  delete question;
  EXPECT_FALSE(box && box->isVisible());
  EXPECT_EQ(answers, 0);
}

TEST_F(PasswordDialogTest, ThatIsDestroyedUnansweredSaysThatThereIsNone) {
  delete box;
  EXPECT_EQ(answers, 1);
  EXPECT_EQ(typed, std::nullopt);
}

}  // namespace
}  // namespace tarebowl::ui
