// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/kept_rotation.h"
#include "core/health/observation.h"
#include "core/intake/faeces.h"
#include "core/intake/feeding_records.h"
#include "core/intake/food_lot.h"
#include "core/intake/tolerance.h"
#include "core/store/animal_records.h"
#include "core/store/diet_records.h"
#include "core/store/opening.h"

#include <string>

/// What a collection does not allow of animals, profiles, diets, feeding and health. Inside the running
/// transaction; every call throws StoreError (Refused) with the reason in words.
namespace tarebowl::store {

/// What a thing must be to stand in the collection under this number, as it is now.
void refuseUnsound(Collection::Inner& inner, long long id, const animal::Species& species);
void refuseUnsound(Collection::Inner& inner, long long id, const animal::Individual& individual);
void refuseUnsound(Collection::Inner& inner, long long id, const animal::Group& group);
void refuseUnsound(Collection::Inner& inner, long long id, const animal::Membership& stay);
void refuseUnsound(Collection::Inner& inner, long long id, const MassRecord& mass);
void refuseUnsound(Collection::Inner& inner, long long id, const ConditionRecord& condition);
void refuseUnsound(Collection::Inner& inner, long long id, const ProfileRecord& record);
void refuseUnsound(Collection::Inner& inner, long long id, const EnergyPlanRecord& record);
void refuseUnsound(Collection::Inner& inner, long long id, const animal::FoodCaution& caution);
void refuseUnsound(Collection::Inner& inner, long long id, const diet::NamedDiet& diet);
void refuseUnsound(Collection::Inner& inner, long long id, const VersionRecord& record);
void refuseUnsound(Collection::Inner& inner, long long id, const diet::KeptRotation& rotation);
void refuseUnsound(Collection::Inner& inner, long long id, const intake::SwapMade& swap);
void refuseUnsound(Collection::Inner& inner, long long id, const intake::ControlPan& pan);
void refuseUnsound(Collection::Inner& inner, long long id, const intake::ToleranceRule& rule);
void refuseUnsound(Collection::Inner& inner, long long id, const health::Observation& observation);
void refuseUnsound(Collection::Inner& inner, long long id, const intake::FoodLot& lot);
void refuseUnsound(Collection::Inner& inner, long long id, const intake::FaecesCollected& faeces);

/// That nothing rests on a thing which is to be removed.
void refuseInUse(Collection::Inner& inner, const animal::Species& species);
void refuseInUse(Collection::Inner& inner, const animal::Individual& individual);
void refuseInUse(Collection::Inner& inner, const animal::Group& group);
void refuseInUse(Collection::Inner& inner, const ProfileRecord& record);
void refuseInUse(Collection::Inner& inner, const diet::NamedDiet& diet);
void refuseInUse(Collection::Inner& inner, const VersionRecord& record);
template <class Leaf>
void refuseInUse(Collection::Inner&, const Leaf&) {}

/// That a thing as it stands may be put back to what it was before.
void refuseTakingBack(Collection::Inner& inner, const VersionRecord& record);
template <class Thing>
void refuseTakingBack(Collection::Inner&, const Thing&) {}

/// What the errors and conflicts call a thing: "the group lemurs-main".
[[nodiscard]] std::string nameOf(const animal::Species& species);
[[nodiscard]] std::string nameOf(const animal::Individual& individual);
[[nodiscard]] std::string nameOf(const animal::Group& group);
[[nodiscard]] std::string nameOf(const animal::Membership& stay);
[[nodiscard]] std::string nameOf(const MassRecord& mass);
[[nodiscard]] std::string nameOf(const ConditionRecord& condition);
[[nodiscard]] std::string nameOf(const ProfileRecord& record);
[[nodiscard]] std::string nameOf(const EnergyPlanRecord& record);
[[nodiscard]] std::string nameOf(const animal::FoodCaution& caution);
[[nodiscard]] std::string nameOf(const diet::NamedDiet& diet);
[[nodiscard]] std::string nameOf(const VersionRecord& record);
[[nodiscard]] std::string nameOf(const diet::KeptRotation& rotation);
[[nodiscard]] std::string nameOf(const intake::SwapMade& swap);
[[nodiscard]] std::string nameOf(const intake::ControlPan& pan);
[[nodiscard]] std::string nameOf(const intake::ToleranceRule& rule);
[[nodiscard]] std::string nameOf(const health::Observation& observation);
[[nodiscard]] std::string nameOf(const intake::FoodLot& lot);
[[nodiscard]] std::string nameOf(const intake::FaecesCollected& faeces);

}  // namespace tarebowl::store
