// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/animals/example_profiles.h"

#include <variant>

namespace tarebowl::ui {
namespace {

animal::ProfileTarget target(const char* id, std::string_view tagname, std::optional<double> min,
                             std::optional<double> max, animal::Provenance provenance) {
  animal::Target bare{.id = id,
                      .nutrient = food::findByTagname(tagname).value(),
                      .min = min,
                      .max = max,
                      .unit = quantity::Unit::Gram,
                      .basis = quantity::Basis::DryMatter,
                      .origin = {"A book", provenance, {}}};
  return {.target = bare};
}

}  // namespace

animal::TargetProfile exampleParent() {
  using animal::Provenance;
  animal::TargetProfile parent{
      .code = "parent", .name = "Parent", .modelSpecies = "cat", .kcalPerGramDryMatter = 4.0};
  parent.targets = {target("calcium", "CA", 8.0, 20.0, Provenance::Seen),
                    target("protein", "PROCNT", 300.0, {}, Provenance::FromMemory),
                    target("iron", "FE", {}, 0.2, Provenance::Seen)};
  parent.targets.back().safeUpperLimit = true;
  parent.targets.back().target.hard = true;
  animal::ShareRule fruit;
  fruit.id = "fruit";
  fruit.group = "fruit";
  fruit.max = 0.10;
  parent.shares = {fruit};
  return parent;
}

animal::TargetProfile exampleChild() {
  animal::TargetProfile child{
      .code = "child", .name = "Child", .parent = animal::ProfileReference{"parent", 1}};
  child.targets = {target("calcium", "CA", 10.0, 20.0, animal::Provenance::Seen)};
  child.exclusions = {{.id = "no-seed-mix", .group = "seed mix", .reason = "too fat"}};
  return child;
}

animal::ResolvedProfile resolvedChild() {
  const auto resolved = animal::resolve(exampleChild(), [](const animal::ProfileReference& reference) {
    return reference.code == "parent" ? std::optional(exampleParent()) : std::nullopt;
  });
  return std::get<animal::ResolvedProfile>(resolved);
}

}  // namespace tarebowl::ui
