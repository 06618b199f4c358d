// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/collection/open_collection.h"
#include "ui/shared/dialogs.h"

#include <QTemporaryDir>
#include <QTest>
#include <QWidget>

#include <gtest/gtest.h>

#include <filesystem>
#include <memory>
#include <string>

namespace tarebowl::ui {

/// The day after the last one of the invented sample.
[[nodiscard]] quantity::Date sampleDay();  // 2026-11-25

/// The invented sample as a collection in a folder of its own, and a person who answers each question for a
/// file with `page`.
class SampleAtHand {
 public:
  SampleAtHand();

  /// Opens it in the window that stands for the test.
  void openIn(OpenCollection& collection) const;
  [[nodiscard]] std::filesystem::path at(const char* name) const;
  [[nodiscard]] Dialogs dialogs();

  std::filesystem::path page{};

 private:
  QTemporaryDir folder_;
  std::filesystem::path file_;
};

/// Presses the button in sight that says this, or fails the test.
void pressIn(const QWidget& room, const char* text);
/// All text that labels in sight say.
[[nodiscard]] std::string saidIn(const QWidget& room);
/// The control of this accessible name; nullptr fails the test.
template <class Field>
[[nodiscard]] Field& namedIn(const QWidget& room, const char* name) {
  for (auto* candidate : room.findChildren<Field*>())
    if (candidate->accessibleName() == QString::fromUtf8(name)) return *candidate;
  ADD_FAILURE() << "no field is called " << name;
  std::abort();
}

/// A room that looks at the invented sample, on its day.
template <class RoomType>
class SampleInRoom : public ::testing::Test {
 protected:
  explicit SampleInRoom(const QString& person)
      : room(std::make_unique<RoomType>(collection, sample.dialogs(), &sampleDay)) {
    collection.setPerson(person);
    room->resize(1290, 740);
    room->show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(room.get()));
    sample.openIn(collection);
    settle();
  }
  /// The collection has answered, and the room has read the answer.
  void settle() {
    EXPECT_TRUE(QTest::qWaitFor([this] { return collection.isIdle() && !isReading(); }, 30'000));
  }
  [[nodiscard]] bool isReading() const {
    if constexpr (requires { room->desk().isReading(); })
      return room->desk().isReading();
    else
      return false;
  }
  void press(const char* text) {
    pressIn(*room, text);
    settle();
  }
  [[nodiscard]] std::string said() const { return saidIn(*room); }
  template <class Field>
  [[nodiscard]] Field& named(const char* name) const {
    return namedIn<Field>(*room, name);
  }

  SampleAtHand sample;
  OpenCollection collection;
  std::unique_ptr<RoomType> room;
};

}  // namespace tarebowl::ui
