// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/target_commands.h"

#include "app/open_collection.h"
#include "app/options.h"
#include "app/text_table.h"
#include "core/animal/animal_words.h"
#include "core/exchange/profile_json.h"
#include "core/exchange/wording.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using Align = TextTable::Align;

struct TargetsWords {
  std::string file{};
  GroupAndDay of{};
  bool table = false;
};

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

int listTargets(const TargetsWords& words, const Streams& streams) {
  const store::Collection collection = openForReading(words.file);
  const quantity::Date day = dayOf(words.of.day);
  const store::KnownGroup known = fedGroupOf(collection, words.of.group, day);
  if (words.table)
    streams.out << headText(known, day) << targetTable(*known.profile) << '\n' << exchange::kCaution;
  else
    streams.out << exchange::writeTargets(*known.profile, {known.group.record.code, quantity::isoDate(day)});
  return kDone;
}

}  // namespace

void defineTargets(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<TargetsWords>();
  CLI::App& command =
      *app.add_subcommand("targets", "The targets of a group with where each was stated, and by whom");
  addCollectionFile(command, words->file);
  addGroup(command, words->of.group)->required();
  addDay(command, words->of.day);
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return listTargets(*words, streams); });
}

}  // namespace tarebowl::app
