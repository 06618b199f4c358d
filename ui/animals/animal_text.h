// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/energy_need.h"
#include "ui/animals/animal_page.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

/// How animals and what was measured of them read.
namespace tarebowl::ui {

[[nodiscard]] QString wordFor(animal::Sex sex);
[[nodiscard]] QString wordFor(animal::LifeStage stage);
[[nodiscard]] QString wordFor(animal::FeedingType type);
[[nodiscard]] QString wordFor(animal::MassMethod method);

/// "Red ruffed lemurs, family", "L-03", "Red ruffed lemur".
[[nodiscard]] QString titleOf(const AnimalPage& page);
/// "Varecia rubra · 6 animals · Small Mammals · invented".
[[nodiscard]] QString subtitleOf(const AnimalPage& page, quantity::Date today);

/// "183 g" below one kilogram, else "3.62 kg".
[[nodiscard]] QString massText(quantity::Kilograms mass);
/// "2 years 3 months", "5 weeks", "~4 years" where the birth is an estimate; "?" where it is not known.
[[nodiscard]] QString ageText(const animal::Individual& individual, quantity::Date day);
/// "since 3 Oct 2025", "3 Oct 2025 to 4 Nov 2026".
[[nodiscard]] QString stayText(const animal::Membership& stay);
/// "6 of 9: ideal is 5".
[[nodiscard]] QString conditionText(const animal::ConditionReading& reading);

/// Why a mass is asked about: "180 kg? About 180 g was expected: were these grams, typed as kilograms?"
[[nodiscard]] QString doubtText(animal::MassDoubt doubt, quantity::Kilograms mass,
                                std::optional<quantity::Kilograms> expected);
/// The mass that was probably meant; nothing where that cannot be told.
[[nodiscard]] std::optional<quantity::Kilograms> meantBy(animal::MassDoubt doubt, quantity::Kilograms mass);

[[nodiscard]] QString problemText(animal::IndividualProblem problem);

/// "lemurs-2": a code made from a name that nothing has yet.
[[nodiscard]] std::string codeFrom(const QString& name, const std::vector<std::string>& taken);

}  // namespace tarebowl::ui
