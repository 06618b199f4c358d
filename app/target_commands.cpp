// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/animal_commands.h"
#include "app/author.h"
#include "app/food_codes.h"
#include "app/open_collection.h"
#include "app/text_table.h"
#include "core/animal/animal_words.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/profile_json.h"
#include "core/exchange/wording.h"
#include "core/store/food_reading.h"
#include "core/store/profile_verbs.h"
#include "core/transfer/group_facts.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <fstream>
#include <ostream>
#include <set>
#include <sstream>

namespace tarebowl::app {

namespace {

using Align = TextTable::Align;

std::string bound(const std::optional<double>& value) {
  return value ? fmt::format("{:.6g}", *value) : "";
}

std::string referenceText(const animal::ProfileReference& reference) {
  return fmt::format("{} {}", reference.code, reference.version);
}

/// The last three cells of a rule: where it was stated, how sure its source is, and the source.
template <class Rule>
std::vector<std::string> originCells(const animal::InForce<Rule>& entry, const animal::TargetOrigin& origin) {
  const std::string_view word = animal::symbolOf(origin.provenance);
  return {referenceText(entry.descent.statedIn), word.empty() ? "?" : std::string(word), origin.source};
}

void addRow(TextTable& table, std::vector<std::string> cells, std::vector<std::string> origin) {
  cells.insert(cells.end(), origin.begin(), origin.end());
  table.addRow(std::move(cells));
}

std::string targetTable(const animal::ResolvedProfile& profile) {
  TextTable table({{"rule"},
                   {"of"},
                   {"min", Align::Right},
                   {"max", Align::Right},
                   {"unit"},
                   {"per"},
                   {"hard"},
                   {"stated in"},
                   {"provenance"},
                   {"source"}});
  for (const auto& entry : profile.targets) {
    const animal::Target& target = entry.rule.target;
    const bool onlyMax = !target.hard && animal::maxIsHard(entry.rule);
    addRow(table,
           {target.id, food::describe(target.nutrient).tagname, bound(target.min), bound(target.max),
            std::string(quantity::symbolOf(target.unit)), std::string(quantity::symbolOf(target.basis)),
            target.hard ? "yes"
            : onlyMax   ? "max"
                        : ""},
           originCells(entry, target.origin));
  }
  for (const auto& entry : profile.ratios) {
    const animal::RatioTarget& ratio = entry.rule.target;
    addRow(table,
           {ratio.id, food::describe(ratio.of).tagname + ":" + food::describe(ratio.to).tagname,
            bound(ratio.min), bound(ratio.max), "", "", ratio.hard ? "yes" : ""},
           originCells(entry, ratio.origin));
  }
  for (const auto& entry : profile.shares) {
    const animal::ShareRule& share = entry.rule;
    addRow(table,
           {share.id, share.group, bound(share.min), bound(share.max), "share",
            std::string(quantity::symbolOf(share.basis)), share.hard ? "yes" : ""},
           originCells(entry, share.origin));
  }
  for (const auto& entry : profile.choices) {
    const animal::ChoiceRule& choice = entry.rule;
    addRow(table,
           {animal::idOf(choice), choice.group, std::to_string(choice.atLeast),
            choice.atMost ? std::to_string(*choice.atMost) : "", "foods", "day", "yes"},
           originCells(entry, {}));
  }
  for (const auto& entry : profile.exclusions)
    addRow(table,
           {entry.rule.id, entry.rule.group.empty() ? entry.rule.food : entry.rule.group, "", "0", "", "",
            "yes"},
           originCells(entry, entry.rule.origin));
  return table.text();
}

std::string headText(const store::KnownGroup& known, quantity::Date day) {
  const animal::TargetProfile& profile = known.profile->profile;
  std::string text = fmt::format("{} on {}: {} {}, {}\n", known.group.record.name, quantity::isoDate(day),
                                 profile.code, profile.version, profile.name);
  if (profile.invented) text += "invented\n";
  for (const animal::ProfileReference& ancestor : known.profile->ancestors)
    text += "takes over from " + referenceText(ancestor) + '\n';
  if (!profile.modelSpecies.empty())
    text += fmt::format("model species: {}{}{}\n", profile.modelSpecies, profile.whyModel.empty() ? "" : ": ",
                        profile.whyModel);
  if (!profile.note.empty()) text += profile.note + '\n';
  return text + '\n';
}

std::vector<diet::DietFood> foodsOf(const Command& command, const store::Collection& collection) {
  const std::vector<std::string> codes = foodCodes(command.foods);
  if (codes.empty()) throw UsageError("--foods: expected codes of foods, found none");
  std::vector<diet::DietFood> foods;
  std::set<std::string> named;
  for (const std::string& code : codes) {
    if (!named.insert(code).second) throw UsageError("--foods: " + code + " is named twice");
    auto food = store::dietFood(collection, code);
    if (!food)
      throw UsageError(fmt::format("--foods: there is no food {} in {} (see tarebowl foods)", code,
                                   collection.file().string()));
    foods.push_back(std::move(*food));
  }
  return foods;
}

/// "CODE" (the newest version) or "CODE:VERSION".
store::StoredProfile profileNamed(const store::Collection& collection, const std::string& name) {
  const std::size_t colon = name.rfind(':');
  int version = 0;
  if (colon != std::string::npos)
    std::from_chars(name.data() + colon + 1, name.data() + name.size(), version);
  const std::string code = version > 0 ? name.substr(0, colon) : name;
  const auto versions = store::versionsOfProfile(collection, code);
  const auto found = std::find_if(versions.rbegin(), versions.rend(), [version](const auto& stored) {
    return version == 0 || stored.record.profile.version == version;
  });
  if (found != versions.rend()) return *found;
  throw UsageError(fmt::format("{}: there is no target profile {}", collection.file().string(), name));
}

/// The same but for its version: importing what is there already adds nothing.
bool isThere(const std::vector<store::StoredProfile>& versions, animal::TargetProfile profile) {
  for (const store::StoredProfile& version : versions) {
    profile.version = version.record.profile.version;
    if (version.record.profile == profile) return true;
  }
  return false;
}

store::Written keep(store::Collection& collection, const animal::TargetProfile& profile,
                    const std::vector<store::StoredProfile>& versions) {
  const store::Author author{whoIsThere(), nowInUtc()};
  if (profile.starter) return store::adoptStarter(collection, profile, author);
  if (versions.empty()) return store::addProfile(collection, profile, author);
  return store::draftNextVersion(collection, versions.back().id, profile, author);
}

}  // namespace

int listTargets(const Command& command, const Streams& streams) {
  const store::Collection collection = openForReading(command.file.value());
  const store::KnownGroup known = fedGroupOf(command, collection);
  const quantity::Date day = dayOf(command);
  if (command.table)
    streams.out << headText(known, day) << targetTable(*known.profile) << '\n' << exchange::kCaution;
  else
    streams.out << exchange::writeTargets(*known.profile, {known.group.record.code, quantity::isoDate(day)});
  return kDone;
}

diet::ProblemOfProfile groupProblemOf(const Command& command) {
  const store::Collection collection = openForReading(command.file.value());
  const store::KnownGroup known = fedGroupOf(command, collection);
  auto made = diet::profileProblem(*known.profile, transfer::groupFacts(known), foodsOf(command, collection));
  made.problem.title = fmt::format("{}, {} {}", known.group.record.name, known.profile->profile.code,
                                   known.profile->profile.version);
  made.problem.cautions = transfer::houseCautions(collection);
  return made;
}

int exportProfile(const Command& command, const Streams& streams) {
  const store::Collection collection = openForReading(command.file.value());
  const store::StoredProfile profile = profileNamed(collection, command.profile.value());
  std::ofstream file(command.tableFile, std::ios::binary);
  file << exchange::writeProfile(profile.record.profile);
  file.flush();
  if (!file) throw UsageError(command.tableFile + ": cannot be written");
  streams.out << fmt::format("{} {} is written to {}\n", profile.record.profile.code,
                             profile.record.profile.version, command.tableFile);
  return kDone;
}

int importProfile(const Command& command, const Streams& streams) {
  const animal::TargetProfile profile = exchange::readProfile(command.tableFile);
  const std::string& file = command.file.value();
  store::Collection collection = command.dryRun ? openForReading(file) : openForWriting(file);
  const auto versions = store::versionsOfProfile(collection, profile.code);
  if (isThere(versions, profile)) {
    streams.out << fmt::format("{} is there already; nothing was written\n", profile.code);
    return kDone;
  }
  if (command.dryRun) {
    streams.out << fmt::format("planned, nothing written: {} as version {}\n", profile.code,
                               versions.empty() ? 1 : versions.back().record.profile.version + 1);
    return kDone;
  }
  const store::Written written = keep(collection, profile, versions);
  const auto kept = store::findProfile(collection, store::ProfileId{written.id}).value();
  streams.out << fmt::format("{} {} is {}\n", profile.code, kept.record.profile.version,
                             kept.record.steps.empty() ? "a draft" : "in force");
  return kDone;
}

}  // namespace tarebowl::app
