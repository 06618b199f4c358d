// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/animals/example_animals.h"

#include "ui/shared/paths.h"

#include <QTest>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

constexpr const char* kAt = "2026-11-25T07:30:00Z";

quantity::Date day(const char* iso) {
  return quantity::parseDate(iso).value();
}

store::MassRecord mass(const char* code, const char* on, double grams) {
  return {.individual = code,
          .reading = {.on = day(on), .mass = quantity::toKilograms(quantity::Grams(grams))}};
}

food::NutrientId nutrientOf(std::string_view tagname) {
  return food::findByTagname(tagname).value();
}

animal::ProfileTarget target(const char* id, std::string_view tagname, std::optional<double> min,
                             std::optional<double> max, animal::Provenance provenance) {
  animal::ProfileTarget rule{.target = {.id = id,
                                        .nutrient = nutrientOf(tagname),
                                        .min = min,
                                        .max = max,
                                        .unit = quantity::Unit::Gram,
                                        .basis = quantity::Basis::DryMatter,
                                        .origin = {"A table", provenance, {}}}};
  return rule;
}

animal::TargetProfile tenrecProfile() {
  animal::TargetProfile profile{
      .code = "tenrec",
      .name = "Tenrec",
      .modelSpecies = "cat",
      .whyModel = "both live on animal prey",
      .targets = {target("calcium", "CA", 8.0, 20.0, animal::Provenance::Seen),
                  target("protein", "PROCNT", 300.0, {}, animal::Provenance::FromMemory)}};
  animal::ProfileTarget iron = target("iron", "FE", {}, 0.2, animal::Provenance::HouseRule);
  iron.safeUpperLimit = true;
  iron.target.hard = true;
  profile.targets.push_back(iron);
  return profile;
}

void addTenrecs(store::Collection& collection, const store::Author& author) {
  store::addSpecies(collection,
                    {.code = "tenrec",
                     .name = "Hedgehog tenrec",
                     .scientificName = "Echinops telfairi",
                     .feedingType = animal::FeedingType::Insectivore,
                     .taxa = {"mammal", "tenrec"},
                     .invented = true},
                    author);
  const store::Written profile = store::addProfile(collection, tenrecProfile(), author);
  store::putInForce(collection, store::ProfileId{profile.id}, profile.revision, day("2026-01-01"), "first",
                    author);
  store::addGroup(collection,
                  {.code = "tenrecs",
                   .name = "Tenrecs, trio",
                   .species = "tenrec",
                   .section = "Small Mammals",
                   .profile = "tenrec",
                   .invented = true},
                  author);
  for (const char* code : {"T-01", "T-02", "T-03"}) {
    store::addIndividual(
        collection,
        {.code = code, .species = "tenrec", .sex = animal::Sex::Female, .born = day("2024-05-17")}, author);
    store::addMembership(collection, {"tenrecs", code, day("2025-01-01")}, author);
  }
  using store::Confirmed;
  store::addMass(collection, mass("T-01", "2026-07-01", 180), Confirmed::Yes, author);
  store::addMass(collection, mass("T-01", "2026-08-01", 182), Confirmed::Yes, author);
  store::addMass(collection, mass("T-01", "2026-09-01", 184), Confirmed::Yes, author);
  store::addMass(collection, mass("T-01", "2026-10-01", 181), Confirmed::Yes, author);
  store::addMass(collection, mass("T-01", "2026-11-01", 183), Confirmed::Yes, author);
  store::addMass(collection, mass("T-02", "2026-11-01", 200), Confirmed::Yes, author);
}

}  // namespace

quantity::Date exampleToday() {
  return day("2026-11-25");
}

ExampleHerd::ExampleHerd() : file_(toPath(folder_.filePath(QStringLiteral("herd.tarebowl")))) {
  const store::Author author{.who = "test", .at = kAt};
  store::Collection collection = store::Collection::create(file_, author);
  addTenrecs(collection, author);
  store::addSpecies(collection,
                    {.code = "dragon",
                     .name = "Bearded dragon",
                     .scientificName = "Pogona vitticeps",
                     .taxa = {"reptile", "lizard"}},
                    author);
  store::addGroup(collection,
                  {.code = "dragons",
                   .name = "Dragons",
                   .species = "dragon",
                   .section = "Reptiles",
                   .counts = {{day("2026-01-01"), 2}}},
                  author);
}

CollectionOpener ExampleHerd::opener() const {
  return [file = file_] { return store::Collection::open(file, kAt); };
}

void ExampleHerd::openOn(AnimalDesk& desk) const {
  desk.collection().open({.name = QStringLiteral("Herd"), .file = file_, .invented = true}, opener());
  settle(desk);
}

void settle(AnimalDesk& desk) {
  EXPECT_TRUE(QTest::qWaitFor([&] { return desk.collection().isIdle() && !desk.isReading(); }, 20'000));
}

void showGroup(AnimalDesk& desk, const std::string& code) {
  const store::StoredGroup* group = desk.herd().groupOf(code);
  ASSERT_NE(group, nullptr) << code;
  desk.show({AnimalKind::Group, static_cast<std::int64_t>(group->id)});
  settle(desk);
}

void showIndividual(AnimalDesk& desk, const std::string& code) {
  const store::StoredIndividual* individual = desk.herd().individualOf(code);
  ASSERT_NE(individual, nullptr) << code;
  desk.show({AnimalKind::Individual, static_cast<std::int64_t>(individual->id)});
  settle(desk);
}

std::vector<double> gramsOf(const AnimalDesk& desk, const std::string& code) {
  std::vector<double> grams;
  const MeasuredSeries* series = desk.page() ? seriesOf(*desk.page(), code) : nullptr;
  if (series == nullptr) return grams;
  for (const store::StoredMass& stored : series->masses)
    if (!stored.record.reading.excluded)
      grams.push_back(quantity::toGrams(stored.record.reading.mass).value());
  return grams;
}

}  // namespace tarebowl::ui
