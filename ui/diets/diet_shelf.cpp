// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diet_shelf.h"

#include "core/store/animal_reading.h"
#include "core/store/reading.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace tarebowl::ui {

std::optional<store::VersionId> ShelvedDiet::toOpen() const {
  if (versions.empty()) return std::nullopt;
  const auto alive = std::find_if(versions.rbegin(), versions.rend(), [](const store::VersionLine& version) {
    return version.state != diet::VersionState::Retired;
  });
  return alive != versions.rend() ? alive->id : versions.back().id;
}

DietShelf::DietShelf(OpenCollection& collection, QObject* parent) : QObject(parent), collection_(collection) {
  collection.whenOpened(this, [this] {
    contents_ = {};
    isRead_ = false;
    emit changed();
    read();
  });
  connect(&collection, &OpenCollection::outdated, this, [this](const store::Touched& what) {
    if (what.any({store::Part::Animals, store::Part::Diets})) read();
  });
  connect(&collection, &OpenCollection::written, this, &DietShelf::read);
}

void DietShelf::read() {
  if (!collection_.file()) return;
  collection_.askWhenIdle(
      store::inOneReading([](store::Collection& collection) { return readFrom(collection); }),
      [this](Contents contents) {
        contents_ = std::move(contents);
        isRead_ = true;
        emit changed();
      });
}

DietShelf::Contents DietShelf::readFrom(store::Collection& collection) {
  Contents contents;
  std::map<std::string, QString> names;
  std::set<std::string> withDiet;
  store::askAhead(
      collection, [&] { return store::listGroups(collection); }, [&] { return store::listDiets(collection); },
      [&] { return store::listVersions(collection); });
  const auto groups = store::listGroups(collection);
  for (const store::StoredGroup& group : groups)
    names[group.record.code] = QString::fromStdString(group.record.name);
  for (const store::StoredDiet& diet : store::listDiets(collection)) {
    withDiet.insert(diet.record.group);
    contents.diets.push_back({diet.record, names[diet.record.group], {}});
  }
  for (const store::VersionLine& version : store::listVersions(collection)) {
    const auto diet = std::ranges::find(contents.diets, version.diet,
                                        [](const ShelvedDiet& shelved) { return shelved.diet.code; });
    if (diet != contents.diets.end()) diet->versions.push_back(version);
  }
  for (const store::StoredGroup& group : groups)
    if (!withDiet.contains(group.record.code)) contents.groupsWithout.push_back(group);
  return contents;
}

const ShelvedDiet* DietShelf::find(const std::string& code) const {
  const auto found =
      std::ranges::find(contents_.diets, code, [](const ShelvedDiet& shelved) { return shelved.diet.code; });
  return found == contents_.diets.end() ? nullptr : &*found;
}

bool DietShelf::hasFedDiet() const {
  const auto isFed = [](const store::VersionLine& version) {
    return version.state == diet::VersionState::Approved || version.state == diet::VersionState::Retired;
  };
  return std::ranges::any_of(contents_.diets, [&](const ShelvedDiet& shelved) {
    return std::ranges::any_of(shelved.versions, isFed);
  });
}

std::string DietShelf::freeCode(const std::string& group) const {
  const std::string base = group + "-diet";
  std::string code = base;
  for (int number = 2; find(code) != nullptr; ++number) code = base + "-" + std::to_string(number);
  return code;
}

}  // namespace tarebowl::ui
