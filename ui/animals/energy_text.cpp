// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/energy_text.h"

#include "ui/shared/format.h"

#include <QCoreApplication>

namespace tarebowl::ui {
namespace {

struct Energy {
  Q_DECLARE_TR_FUNCTIONS(Energy)
};

QString text(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

}  // namespace

QString wordFor(animal::EnergyLevel level) {
  switch (level) {
    case animal::EnergyLevel::Resting:
      return Energy::tr("at rest");
    case animal::EnergyLevel::Maintenance:
      return Energy::tr("maintenance");
    case animal::EnergyLevel::FreeLiving:
      return Energy::tr("free-living");
  }
  return {};
}

QString levelText(animal::EnergyLevel level) {
  switch (level) {
    case animal::EnergyLevel::Resting:
      return Energy::tr("× energy at rest at 1 kg");
    case animal::EnergyLevel::Maintenance:
      return Energy::tr("× energy for maintenance at 1 kg");
    case animal::EnergyLevel::FreeLiving:
      return Energy::tr("× energy of free life at 1 kg");
  }
  return {};
}

QString wordFor(animal::EnergyFactor::Kind kind) {
  switch (kind) {
    case animal::EnergyFactor::Kind::Maintenance:
      return Energy::tr("maintenance");
    case animal::EnergyFactor::Kind::LifeStage:
      return Energy::tr("life stage");
    case animal::EnergyFactor::Kind::Activity:
      return Energy::tr("activity");
    case animal::EnergyFactor::Kind::Season:
      return Energy::tr("season");
    case animal::EnergyFactor::Kind::ConditionAim:
      return Energy::tr("aim for condition");
    case animal::EnergyFactor::Kind::House:
      return Energy::tr("house factor");
  }
  return {};
}

QString cautionText(animal::EnergyCaution caution, const animal::EnergyPlan& plan) {
  switch (caution) {
    case animal::EnergyCaution::NotAFeedingRate:
      return Energy::tr(
          "This is no feeding rate: the need of an animal without body heat of its own follows its "
          "temperature. "
          "A cool animal needs far less.");
    case animal::EnergyCaution::FreeLivingLevel:
      return Energy::tr("This is what a free-living animal spends; one in human care spends less.");
    case animal::EnergyCaution::OutsideValidity:
      return Energy::tr("This animal is outside of what the source speaks of: %1.")
          .arg(plan.validity.empty() ? Energy::tr("another range of body mass")
                                     : QString::fromStdString(plan.validity));
    case animal::EnergyCaution::SourceFromMemory:
      return Energy::tr("A number here is from memory and was not looked up.");
    case animal::EnergyCaution::FactorsDoubleCount:
      return Energy::tr("Two factors count the same thing, or one stands on a level that holds it already.");
  }
  return {};
}

QString choiceText(const animal::Allometry& allometry) {
  const animal::EnergyPlan plan = animal::planFrom(allometry);
  return Energy::tr("%1, %2: %3 × kg^%4")
      .arg(text(allometry.group), wordFor(allometry.level), measured(plan.coefficient),
           stated(plan.exponent));
}

QString choiceText(const animal::EnergyMultiplier& multiplier) {
  return Energy::tr("%1, %2: × %3 of %4")
      .arg(text(multiplier.condition), text(multiplier.group), rangeText(multiplier.low, multiplier.high),
           wordFor(multiplier.of));
}

animal::EnergyFactor::Kind kindOf(const animal::EnergyMultiplier& multiplier) {
  using Kind = animal::EnergyFactor::Kind;
  const QString condition = text(multiplier.condition);
  const auto has = [&](const char* word) { return condition.contains(QLatin1String(word)); };
  if (has("active")) return Kind::Activity;
  if (has("growth") || has("lactation") || has("pregnancy") || has("kitten")) return Kind::LifeStage;
  if (has("adult") || has("maintenance")) return Kind::Maintenance;
  return Kind::House;
}

QString rangeText(double low, double high) {
  if (measured(low) == measured(high)) return measured(low);
  return Energy::tr("%1 to %2").arg(measured(low), measured(high));
}

}  // namespace tarebowl::ui
