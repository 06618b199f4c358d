// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The guide is followed on the sample, step by step: what a step names is in sight when its turn comes, and
// doing what it says leads to the next.
#include "ui/frame/guide.h"

#include "core/store/diet_reading.h"
#include "tests/ui/frame/sample_in_window.h"
#include "ui/animals/animal_desk.h"
#include "ui/animals/animals_room.h"
#include "ui/diets/desk_pane.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/ingredient_table.h"
#include "ui/frame/guide_panel.h"
#include "ui/frame/help.h"
#include "ui/frame/help_menu.h"
#include "ui/health/health_room.h"
#include "ui/kitchen/kitchen_room.h"
#include "ui/kitchen/swap_model.h"
#include "ui/kitchen/swap_pane.h"
#include "ui/kitchen/weigh_pane.h"
#include "ui/shared/plain_table.h"
#include "ui/today/today_room.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QListWidget>

#include <gmock/gmock.h>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;

class GuideTest : public SampleInWindow {
 protected:
  using Deed = std::function<void()>;

  /// Does a flow: a deed for each step.
  void follow(std::size_t flow, const std::vector<Deed>& deeds) {
    const GuideFlow guided = guideFlows().at(flow);
    ASSERT_EQ(guided.steps.size(), deeds.size()) << "a step without a deed, or a deed without a step";
    for (std::size_t step = 0; step < deeds.size(); ++step) {
      SCOPED_TRACE(guided.steps[step].text.toStdString());
      goTo(guided.steps[step].room);
      afterwards_.clear();
      for (const QString& name : controlsOf(guided.steps[step]))
        if (controlInSight(window, name) == nullptr) afterwards_ << name;
      deeds[step]();
      settle();
      for (const QString& name : afterwards_)
        EXPECT_NE(controlInSight(window, name), nullptr)
            << "nothing in sight is called " << name.toStdString();
      ASSERT_FALSE(HasFailure());
    }
  }
  QWidget& control(const char* name) {
    QWidget* found = controlInSight(window, QString::fromUtf8(name));
    if (found == nullptr) ADD_FAILURE() << "nothing in sight is called " << name;
    return found != nullptr ? *found : window;
  }
  void press(const char* name) {
    auto* button = qobject_cast<QAbstractButton*>(&control(name));
    ASSERT_NE(button, nullptr) << name;
    ASSERT_TRUE(button->isEnabled()) << name;
    button->click();
    settle();
  }
  void type(const char* field, const char* keys) {
    QTest::keyClicks(&control(field), QString::fromUtf8(keys));
    QTest::qWait(20);
    QTest::keyClick(&control(field), Qt::Key_Return);
    settle();
  }
  template <class List>
  void choose(const char* list, const char* part) {
    auto& items = dynamic_cast<List&>(control(list));
    for (int row = 0; row < items.count(); ++row) {
      const QModelIndex index = items.model()->index(row, 0);
      if (!index.data().toString().contains(QString::fromUtf8(part), Qt::CaseInsensitive)) continue;
      if constexpr (std::is_same_v<List, QComboBox>) {
        items.setCurrentIndex(row);
        emit items.activated(row);
      } else {
        items.setCurrentRow(row);
      }
      return settle();
    }
    ADD_FAILURE() << list << " has no " << part;
  }

  QStringList afterwards_;
};

TEST_F(GuideTest, ANutritionistDesignsTheFirstDietOfASpecies) {
  DietsRoom& diets = window.diets();
  const auto nothing = [] {};
  follow(0, {[this] {
               type("Find an animal", "streaked tenrecs");
               ASSERT_TRUE(window.animals().desk().page() && window.animals().desk().page()->group);
               EXPECT_EQ(window.animals().desk().page()->group->record.code, "streaked-tenrecs");
             },
             [this] { press("energy need"); },
             [this] {
               press("targets");
               EXPECT_THAT(saidIn(window), HasSubstr("model"));
             },
             [this] { press("Put in force…"); },
             [this] {
               type("Reason", "to begin with");
               ASSERT_TRUE(QTest::qWaitFor(
                   [this] { return controlInSight(window, QStringLiteral("Design a diet"))->isEnabled(); },
                   10'000));
             },
             [this, &diets] {
               press("Design a diet");
               ASSERT_TRUE(QTest::qWaitFor([&] { return diets.desk().isEmpty(); }, 20'000));
               EXPECT_TRUE(diets.isVisible());
             },
             [this, &diets] {
               for (const char* food : {"cricket", "earthworm", "limestone"}) type("Add a food", food);
               ASSERT_EQ(diets.desk().problem().foods.size(), 3U);
               ASSERT_TRUE(diets.desk().solution());
             },
             nothing,
             [this, &diets] {
               const diet::Diet before = diets.desk().draft().grams;
               IngredientTable& table = diets.deskPane().table();
               diets.desk().setGrams(0, quantity::Grams(before[0].value() + 1));
               settle();
               EXPECT_TRUE(diets.desk().draft().locked[0]);
               table.setFocus();
               QTest::keyClick(&table, Qt::Key_Z, Qt::ControlModifier);
               settle();
               EXPECT_EQ(diets.desk().draft().grams[0], before[0]);
             },
             [this] { press("Submit…"); },
             [this, &diets] {
               type("Reason", "as good as these foods allow");
               EXPECT_EQ(diets.version().shown()->version.record.version.state,
                         diet::VersionState::Submitted);
             }});
}

TEST_F(GuideTest, AKeeperChecksASwapAndWeighs) {
  KitchenRoom& kitchen = window.kitchen();
  follow(1, {[] {},
             [this, &kitchen] {
               choose<QComboBox>("Section", "Reptiles");
               ASSERT_NE(kitchen.desk().item(), nullptr);
             },
             [this, &kitchen] {
               press("Not available");
               EXPECT_TRUE(kitchen.isSwapping());
             },
             [this, &kitchen] {
               ASSERT_TRUE(
                   QTest::qWaitFor([&] { return kitchen.swapPane().model().offers().isComplete; }, 60'000));
               EXPECT_GT(kitchen.swapPane().model().rowCount(), 0);
               press("Back");
               EXPECT_FALSE(kitchen.isSwapping());
             },
             [this, &kitchen] {
               const auto place = kitchen.desk().place();
               const QString planned = QLocale().toString(kitchen.desk().item()->planned.value());
               type("Weight in g", planned.toUtf8().constData());
               EXPECT_NE(kitchen.desk().place(), place) << "the next food is on the scale";
             },
             [this] { press("Leftovers"); }});
}

TEST_F(GuideTest, AVetReviewsCalciumAndLooksBack) {
  HealthRoom& health = window.health();
  follow(2, {[this, &health] {
               choose<QListWidget>("Groups and animals", "dragon");
               ASSERT_TRUE(health.desk().view());
             },
             [&health] { EXPECT_GT(health.zones().model()->rowCount(), 0); },
             [this, &health] {
               auto& supplement = dynamic_cast<QComboBox&>(control("Supplement"));
               ASSERT_GT(supplement.count(), 1);
               supplement.setCurrentIndex(1);
               emit supplement.activated(1);
               settle();
               EXPECT_TRUE(health.desk().view()->page.review.advice);
             },
             [this, &health] {
               choose<QListWidget>("Groups and animals", "lemur");
               PlainTable& seen = health.observations();
               int row = 0;
               while (row < seen.model()->rowCount() &&
                      !seen.model()->index(row, 0).data().toString().startsWith(QStringLiteral("▲")))
                 ++row;
               ASSERT_LT(row, seen.model()->rowCount());
               seen.setFocus();
               seen.setCurrentIndex(seen.model()->index(row, 0));
               QTest::keyClick(&seen, Qt::Key_Return);
               settle();
               ASSERT_TRUE(health.desk().lookBack());
             },
             [&health] { EXPECT_GT(health.links().model()->rowCount(), 0); },
             [this] {
               sample.page = sample.at("look-back.html");
               press("Look-back for the file…");
               EXPECT_TRUE(QTest::qWaitFor([this] { return std::filesystem::exists(sample.page); }, 10'000));
             }});
}

TEST_F(GuideTest, ThePanelLeadsToTheRoomAndTheControlOfAStep) {
  emit window.help().menu().guideWanted();
  GuidePanel& panel = window.help().guide();
  ASSERT_TRUE(panel.isVisible());
  EXPECT_TRUE(window.animals().isVisible());
  pressIn(panel, "Show me");
  EXPECT_EQ(QApplication::focusWidget(), &control("Find an animal"));
  pressIn(panel, "Next");
  EXPECT_EQ(panel.step().text, guideFlows().front().steps.at(1).text);
  QTest::keyClick(&panel, Qt::Key_Escape);
  EXPECT_FALSE(panel.isVisible());
}

TEST(GuideSteps, NameTheirControlsAndNothingElse) {
  EXPECT_EQ(controlsOf({1, QStringLiteral("Press *Submit…*, then *Why*. (The key * does it.)")}),
            (QStringList{QStringLiteral("Submit…"), QStringLiteral("Why")}));
  EXPECT_EQ(htmlOf({1, QStringLiteral("*A* <b>")}), QStringLiteral("<b>A</b> &lt;b&gt;"));
}

}  // namespace
}  // namespace tarebowl::ui
