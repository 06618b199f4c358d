// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Of the pages within the rooms, on the sample, what every_control_test.cpp asks of the rooms themselves.
#include "tests/ui/frame/every_control.h"
#include "tests/ui/frame/sample_in_window.h"
#include "ui/animals/animal_list.h"
#include "ui/animals/animals_room.h"
#include "ui/animals/group_pane.h"
#include "ui/diets/balance_pane.h"
#include "ui/diets/compare_pane.h"
#include "ui/diets/desk_pane.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/diet_shelf.h"
#include "ui/diets/explore_pane.h"
#include "ui/diets/ingredient_table.h"
#include "ui/diets/line_pane.h"
#include "ui/diets/rotation_planner.h"
#include "ui/diets/rules_pane.h"
#include "ui/foods/food_list.h"
#include "ui/foods/food_pane.h"
#include "ui/foods/foods_room.h"
#include "ui/foods/import_desk.h"
#include "ui/frame/help.h"
#include "ui/health/health_room.h"
#include "ui/intake/intake_room.h"
#include "ui/kitchen/kitchen_room.h"
#include "ui/shared/paths.h"

#include <QAction>
#include <QApplication>
#include <QFile>
#include <QTabWidget>

#include <gtest/gtest.h>

#include <functional>
#include <string>

namespace tarebowl::ui {
namespace {

class EveryPageTest;

/// A page and the way to it.
struct Page {
  const char* name;
  void (*open)(EveryPageTest&);
};

void PrintTo(const Page& page, std::ostream* out) {
  *out << page.name;
}

class EveryPageTest : public SampleInWindow, public ::testing::WithParamInterface<Page> {
 public:
  using SampleInWindow::goTo;
  using SampleInWindow::settle;
  using SampleInWindow::window;

  void press(const char* text) {
    pressIn(window, text);
    settle();
  }
  /// Does what a menu or a key of the room does.
  void trigger(const QWidget& room, const char* text) {
    for (auto* action : room.findChildren<QAction*>())
      if (action->text() == QString::fromUtf8(text)) {
        action->trigger();
        return settle();
      }
    ADD_FAILURE() << "no action is called " << text;
  }
  /// The tab of this name, wherever it stands in the room.
  void showTab(const QWidget& room, const char* name) {
    for (auto* tabs : room.findChildren<QTabWidget*>())
      for (int i = 0; i < tabs->count(); ++i)
        if (tabs->tabText(i) == QString::fromUtf8(name)) {
          tabs->setCurrentIndex(i);
          return settle();
        }
    ADD_FAILURE() << "no tab is called " << name;
  }
  void wait(const std::function<bool()>& holds) { EXPECT_TRUE(QTest::qWaitFor(holds, 60'000)); }

  void goToDiet(const char* code) {
    goTo(4);
    wait([&] { return window.diets().shelf().find(code) != nullptr; });
    window.diets().version().open(*window.diets().shelf().find(code)->toOpen());
    settle();
  }
  void chooseAnimal(AnimalKind kind) {
    goTo(3);
    AnimalDesk& desk = window.animals().desk();
    const Herd& herd = desk.herd();
    const std::int64_t id = kind == AnimalKind::Individual
                                ? static_cast<std::int64_t>(herd.individuals.front().id)
                                : static_cast<std::int64_t>(herd.species.front().id);
    desk.show({kind, id});
    settle();
  }
  void goToSheet(GroupPane::Sheet sheet) {
    goTo(3);
    window.animals().groupPane().showSheet(sheet);
    settle();
  }
  /// For the eye: TAREBOWL_PICTURES names the folder.
  void keepPicture(const char* which) {
    const QString folder = qEnvironmentVariable("TAREBOWL_PICTURES");
    if (folder.isEmpty()) return;
    window.grab().save(
        QStringLiteral("%1/%2%3.png").arg(folder, QLatin1String(GetParam().name), QLatin1String(which)));
  }
  std::filesystem::path aTable() {
    const std::filesystem::path place = sample.at("greens.csv");
    QFile table(toText(place));
    EXPECT_TRUE(table.open(QIODevice::WriteOnly));
    table.write("Food,CA (mg),Strange (mg)\nEndive,52,1\nKale,150,\n");
    return place;
  }
};

TEST_P(EveryPageTest, IsReadableExplainedAndReachedByTheKeysAlone) {
  GetParam().open(*this);
  if (HasFailure()) return;
  if (QApplication::focusWidget() == nullptr) window.setFocus();
  expectNames(window);
  expectValues(window);
  expectExplanations(window);
  expectReachedByKeys(window);
  expectNothingCut(window, kSmallScreen);
  keepPicture("");
  expectNothingCut(window, kTwiceAsLarge);
  keepPicture("-small");
}

const Page kPages[] = {
    {"DietsExploreAFood",
     [](EveryPageTest& test) {
       test.goTo(4);
       DietsRoom& diets = test.window.diets();
       diets.deskPane().showSheet(diets.explorePane());
       diets.explorePane().exploreFood(0);
       test.settle();
     }},
    {"DietsStructureRules",
     [](EveryPageTest& test) {
       test.goTo(4);
       test.showTab(test.window.diets(), "Structure rules");
     }},
    {"DietsCompare",
     [](EveryPageTest& test) {
       test.goTo(4);
       test.trigger(test.window.diets(), "New version");
       test.window.diets().compareWith(1);
       test.wait([&] { return test.window.diets().comparePane().isVisible(); });
       test.settle();
       DeskPane& desk = test.window.diets().deskPane();
       desk.table().goToFood(0);  // its line is below the table
       test.wait([&] { return desk.line().isVisible(); });
     }},
    {"DietsDetailOfARung",
     [](EveryPageTest& test) {
       test.goTo(4);
       test.window.diets().balancePane().choose(RungRef{});
     }},
    {"DietsSubmit",
     [](EveryPageTest& test) {
       test.goTo(4);
       test.trigger(test.window.diets(), "New version");
       test.press("Submit…");
     }},
    {"DietsCalendar",
     [](EveryPageTest& test) {
       test.goToDiet("monkey-daily");
       test.window.diets().showRotation();
       test.settle();
     }},
    {"DietsCalendarForm",
     [](EveryPageTest& test) {
       test.goToDiet("monkey-daily");
       test.window.diets().showRotation();
       test.settle();
       test.press("Plan days…");
     }},
    {"DietsInsteadOfAFood",
     [](EveryPageTest& test) {
       test.goTo(4);
       test.trigger(test.window.diets(), "Not available…");
     }},
    {"AnimalsGuidedPage",
     [](EveryPageTest& test) {
       test.goTo(3);
       emit test.window.animals().list().speciesWanted();
     }},
    {"AnimalsIndividual", [](EveryPageTest& test) { test.chooseAnimal(AnimalKind::Individual); }},
    {"AnimalsSpecies", [](EveryPageTest& test) { test.chooseAnimal(AnimalKind::Species); }},
    {"AnimalsEnergy", [](EveryPageTest& test) { test.goToSheet(GroupPane::Energy); }},
    {"AnimalsTargets", [](EveryPageTest& test) { test.goToSheet(GroupPane::Targets); }},
    {"AnimalsHistory", [](EveryPageTest& test) { test.goToSheet(GroupPane::History); }},
    {"FoodsImport",
     [](EveryPageTest& test) {
       test.goTo(2);
       test.window.foods().importTable(test.aTable());
       test.wait([&] { return test.window.foods().importDesk().stage() == ImportDesk::Stage::Planned; });
     }},
    {"FoodsEdit",
     [](EveryPageTest& test) {
       test.goTo(2);
       test.press("Edit food…");
     }},
    {"FoodsSample",
     [](EveryPageTest& test) {
       test.goTo(2);
       test.press("Add a sample…");
     }},
    {"FoodsChecks",
     [](EveryPageTest& test) {
       test.goTo(2);
       emit test.window.foods().list().checksWanted();
     }},
    {"FoodsComparison",
     [](EveryPageTest& test) {
       test.goTo(2);
       emit test.window.foods().list().compareWanted();
     }},
    {"KitchenLeftovers",
     [](EveryPageTest& test) {
       test.goTo(5);
       test.press("Leftovers");
     }},
    {"KitchenPans",
     [](EveryPageTest& test) {
       test.goTo(5);
       test.press("Control pans  (P)");
     }},
    {"KitchenRule",
     [](EveryPageTest& test) {
       test.goTo(5);
       test.trigger(test.window.kitchen(), "± Rule…");
     }},
    {"IntakeRatio",
     [](EveryPageTest& test) {
       test.goTo(6);
       test.showTab(test.window.intake(), "Ca : P");
     }},
    {"IntakePickedFirst",
     [](EveryPageTest& test) {
       test.goTo(6);
       test.showTab(test.window.intake(), "Picked first");
     }},
    {"IntakeFoods",
     [](EveryPageTest& test) {
       test.goTo(6);
       test.showTab(test.window.intake(), "Foods");
     }},
    {"IntakeYesterday",
     [](EveryPageTest& test) {
       test.goTo(6);
       test.showTab(test.window.intake(), "Yesterday's bowls");
     }},
    {"IntakeStudy",
     [](EveryPageTest& test) {
       test.goTo(6);
       test.showTab(test.window.intake(), "Study");
     }},
    {"HealthLookBack",
     [](EveryPageTest& test) {
       test.goTo(7);
       test.showTab(test.window.health(), "Look-back");
     }},
};

INSTANTIATE_TEST_SUITE_P(Pages, EveryPageTest, ::testing::ValuesIn(kPages),
                         [](const auto& page) { return std::string(page.param.name); });

}  // namespace
}  // namespace tarebowl::ui
