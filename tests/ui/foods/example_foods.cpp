// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/foods/example_foods.h"

#include "ui/shared/paths.h"

#include <QCoreApplication>
#include <QTest>

#include <gtest/gtest.h>

#include <utility>

namespace tarebowl::ui {
namespace {

constexpr const char* kAt = "2026-11-25T07:30:00Z";

void add(store::Collection& collection, const food::Food& food, const std::vector<food::Sample>& samples) {
  const store::Author author{.who = "test", .at = kAt};
  const FoodId id{store::addFood(collection, {.food = food}, author).id};
  for (const food::Sample& sample : samples) store::addSample(collection, id, sample, author);
}

}  // namespace

food::NutrientId nutrient(std::string_view tagname) {
  return food::findByTagname(tagname).value();
}

food::SampleValue valueOf(std::string_view tagname, double amount) {
  return {.nutrient = nutrient(tagname), .amount = quantity::AsFedContent(amount)};
}

food::Sample report(food::SampleOrigin origin, std::string source, const char* date,
                    std::vector<food::SampleValue> values) {
  return {.origin = origin,
          .source = std::move(source),
          .date = quantity::parseDate(date),
          .values = std::move(values)};
}

ExampleCollection::ExampleCollection() : file_(toPath(folder_.filePath(QStringLiteral("example.tarebowl")))) {
  using food::SampleOrigin;
  store::Collection collection = store::Collection::create(file_, {.who = "test", .at = kAt});
  add(collection, {.code = "crickets", .name = "Crickets", .form = "live", .group = "insect"},
      {report(SampleOrigin::OwnLab, "Report 1", "2026-03-09", {valueOf("CA", 40)}),
       report(SampleOrigin::OwnLab, "Report 2", "2026-10-03", {valueOf("CA", 50)}),
       report(SampleOrigin::Publication, "A book", "2002-01-01",
              {valueOf("WATER", 70), valueOf("CA", 90), valueOf("P", 300)})});
  add(collection, {.code = "grubs", .name = "Grubs", .form = "live", .group = "insect"},
      {report(SampleOrigin::Publication, "A book", "2002-01-01",
              {valueOf("WATER", 60), valueOf("CA", 900), valueOf("P", 300)})});
  add(collection, {.code = "kale-raw", .name = "Kale", .form = "raw", .group = "leafy vegetable"},
      {report(SampleOrigin::Publication, "A book", "2002-01-01", {valueOf("WATER", 85)})});
}

CollectionOpener ExampleCollection::opener() const {
  return [file = file_] { return store::Collection::open(file, kAt); };
}

void ExampleCollection::openOn(FoodDesk& desk) const {
  desk.collection().open({.name = QStringLiteral("Example"), .file = file_, .invented = true}, opener());
  settle(desk);
}

void settle(FoodDesk& desk) {
  QCoreApplication::processEvents();  // what a list wants while it is painted is asked for after that
  EXPECT_TRUE(QTest::qWaitFor([&] { return desk.collection().isIdle() && !desk.isReading(); }, 20'000));
}

void showFood(FoodDesk& desk, std::string_view name) {
  desk.show(idOf(desk, name));
  settle(desk);
}

FoodId idOf(const FoodDesk& desk, std::string_view name) {
  for (const food::FoodLine& line : desk.foods())
    if (line.name == name) return FoodId{line.id};
  ADD_FAILURE() << "no food is called " << name;
  return {};
}

std::optional<double> amountOf(const FoodDesk& desk, std::string_view tagname) {
  return desk.page() ? desk.page()->composition.amountPer100g(nutrient(tagname)) : std::nullopt;
}

SampleId sampleOf(const FoodDesk& desk, std::string_view source) {
  for (const store::StoredSample& stored : desk.page()->samples)
    if (stored.sample.source == source) return stored.id;
  ADD_FAILURE() << "no sample is of " << source;
  return {};
}

}  // namespace tarebowl::ui
