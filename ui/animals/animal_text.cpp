// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/animal_text.h"

#include "ui/shared/days.h"
#include "ui/shared/format.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace tarebowl::ui {
namespace {

struct Animals {
  Q_DECLARE_TR_FUNCTIONS(Animals)
};

constexpr double kGramsAKilogram = 1000.0;

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

QString counted(int years, int months) {
  QStringList parts;
  if (years > 0) parts << (years == 1 ? Animals::tr("1 year") : Animals::tr("%1 years").arg(years));
  if (months > 0) parts << (months == 1 ? Animals::tr("1 month") : Animals::tr("%1 months").arg(months));
  return parts.join(QLatin1Char(' '));
}

}  // namespace

QString wordFor(animal::Sex sex) {
  switch (sex) {
    case animal::Sex::Female:
      return Animals::tr("female");
    case animal::Sex::Male:
      return Animals::tr("male");
    case animal::Sex::Unknown:
      break;
  }
  return Animals::tr("sex unknown");
}

QString wordFor(animal::LifeStage stage) {
  switch (stage) {
    case animal::LifeStage::Unweaned:
      return Animals::tr("unweaned");
    case animal::LifeStage::Growing:
      return Animals::tr("growing");
    case animal::LifeStage::Adult:
      return Animals::tr("adult");
    case animal::LifeStage::Pregnant:
      return Animals::tr("pregnant");
    case animal::LifeStage::Lactating:
      return Animals::tr("lactating");
    case animal::LifeStage::Senior:
      return Animals::tr("senior");
  }
  return {};
}

QString wordFor(animal::FeedingType type) {
  switch (type) {
    case animal::FeedingType::Carnivore:
      return Animals::tr("carnivore");
    case animal::FeedingType::Piscivore:
      return Animals::tr("piscivore: fish");
    case animal::FeedingType::Insectivore:
      return Animals::tr("insectivore: insects");
    case animal::FeedingType::Omnivore:
      return Animals::tr("omnivore");
    case animal::FeedingType::Frugivore:
      return Animals::tr("frugivore: fruit");
    case animal::FeedingType::Nectarivore:
      return Animals::tr("nectarivore: nectar");
    case animal::FeedingType::Folivore:
      return Animals::tr("folivore: leaves");
    case animal::FeedingType::Grazer:
      return Animals::tr("grazer: grass");
    case animal::FeedingType::Granivore:
      return Animals::tr("granivore: seeds");
  }
  return {};
}

QString wordFor(animal::MassMethod method) {
  switch (method) {
    case animal::MassMethod::Scale:
      return Animals::tr("on a scale");
    case animal::MassMethod::TrainedOnScale:
      return Animals::tr("steps on a scale");
    case animal::MassMethod::Carried:
      return Animals::tr("carried, difference");
    case animal::MassMethod::UnderAnaesthesia:
      return Animals::tr("under anaesthesia");
    case animal::MassMethod::Estimated:
      return Animals::tr("estimated by eye");
  }
  return {};
}

QString titleOf(const AnimalPage& page) {
  if (page.group) return text(page.group->record.name);
  if (page.individual) return text(page.individual->record.code);
  return text(page.species.record.name);
}

QString subtitleOf(const AnimalPage& page, quantity::Date today) {
  const animal::Species& species = page.species.record;
  QStringList parts;
  if (page.individual) parts << text(species.name);
  parts << text(species.scientificName);
  if (page.group) {
    const auto count = headcountOf(page, today);
    parts << (!count        ? Animals::tr("? animals")
              : *count == 1 ? Animals::tr("1 animal")
                            : Animals::tr("%1 animals").arg(*count));
    parts << text(page.group->record.section);
  }
  if (!page.group && !page.individual) parts << wordFor(species.feedingType);
  const bool invented = page.group        ? page.group->record.invented
                        : page.individual ? page.individual->record.invented
                                          : species.invented;
  if (invented) parts << Animals::tr("invented");
  parts.removeAll(QString());
  return parts.join(QStringLiteral(" · "));
}

QString massText(quantity::Kilograms mass) {
  const QChar space(0x00A0);
  if (mass < quantity::Kilograms(1.0))
    return measured(mass.value() * kGramsAKilogram) + space + unitText(quantity::Unit::Gram);
  return measured(mass.value()) + space + Animals::tr("kg");
}

QString ageText(const animal::Individual& individual, quantity::Date day) {
  if (!individual.born) return QStringLiteral("?");
  constexpr int kWeekDays = 7;
  constexpr int kWeeksUntil = 12;
  constexpr int kMonthsAYear = 12;
  const QDate born = toQDate(*individual.born);
  const QDate until = toQDate(individual.left ? std::min(*individual.left, day) : day);
  const QString about = individual.birthEstimated ? Animals::tr("~") : QString();
  const qint64 days = born.daysTo(until);
  if (days < 0) return Animals::tr("not born yet");
  if (days < kWeekDays * kWeeksUntil) return about + Animals::tr("%1 weeks").arg(days / kWeekDays);
  int months = (until.year() - born.year()) * kMonthsAYear + until.month() - born.month();
  if (until.day() < born.day()) --months;
  const int years = months / kMonthsAYear;
  return about + counted(years, years < 3 ? months % kMonthsAYear : 0);
}

QString stayText(const animal::Membership& stay) {
  if (!stay.until) return Animals::tr("since %1").arg(dateText(stay.from));
  return Animals::tr("%1 to %2").arg(dateText(stay.from), dateText(*stay.until));
}

QString conditionText(const animal::ConditionReading& reading) {
  const animal::ScoreScale* scale = animal::findConditionScale(reading.scale);
  if (scale == nullptr) return stated(reading.score);
  return Animals::tr("%1 of %2").arg(stated(reading.score), stated(scale->highest));
}

QString doubtText(animal::MassDoubt doubt, quantity::Kilograms mass,
                  std::optional<quantity::Kilograms> expected) {
  const QString about = expected && expected->value() > 0.0
                            ? Animals::tr(" About %1 was expected.").arg(massText(*expected))
                            : QString();
  switch (doubt) {
    case animal::MassDoubt::NotAboveZero:
      return Animals::tr("A mass is above 0.");
    case animal::MassDoubt::GramsAsKilograms:
      return Animals::tr("%1?%2 Were these grams, written as kilograms?").arg(massText(mass), about);
    case animal::MassDoubt::KilogramsAsGrams:
      return Animals::tr("%1?%2 Were these kilograms, written as grams?").arg(massText(mass), about);
    case animal::MassDoubt::FarFromOwnHistory:
      return Animals::tr("%1?%2 It is far from what this animal weighed before.").arg(massText(mass), about);
    case animal::MassDoubt::InTheFuture:
      return Animals::tr("That day has not come yet.");
  }
  return {};
}

std::optional<quantity::Kilograms> meantBy(animal::MassDoubt doubt, quantity::Kilograms mass) {
  if (doubt == animal::MassDoubt::GramsAsKilograms) return mass / kGramsAKilogram;
  if (doubt == animal::MassDoubt::KilogramsAsGrams) return mass * kGramsAKilogram;
  return std::nullopt;
}

QString problemText(animal::IndividualProblem problem) {
  switch (problem) {
    case animal::IndividualProblem::NoCode:
      return Animals::tr("An animal needs a name or number of the house.");
    case animal::IndividualProblem::NoSpecies:
      return Animals::tr("An animal needs a species.");
    case animal::IndividualProblem::BornAfterLeaving:
      return Animals::tr("It cannot be born after it left or died.");
    case animal::IndividualProblem::ArrivedAfterLeaving:
      return Animals::tr("It cannot arrive after it left or died.");
    case animal::IndividualProblem::BornAfterArriving:
      return Animals::tr("It cannot be born after it arrived.");
    case animal::IndividualProblem::StagesNotInOrder:
      return Animals::tr("Its life stages follow each other by date.");
    case animal::IndividualProblem::StageBeforeBirth:
      return Animals::tr("No life stage begins before it was born.");
    case animal::IndividualProblem::DiedWithoutDay:
      return Animals::tr("Say on which day it died.");
  }
  return {};
}

std::string codeFrom(const QString& name, const std::vector<std::string>& taken) {
  QString code;
  for (const QChar c : name.normalized(QString::NormalizationForm_D).toLower()) {
    if (c.isLetterOrNumber() && c.unicode() < 128)
      code += c;
    else if (!code.isEmpty() && !code.endsWith(QLatin1Char('-')) && c.category() != QChar::Mark_NonSpacing)
      code += QLatin1Char('-');
  }
  while (code.endsWith(QLatin1Char('-'))) code.chop(1);
  if (code.isEmpty()) code = QStringLiteral("new");
  const std::string base = code.toStdString();
  std::string result = base;
  for (int number = 2; std::find(taken.begin(), taken.end(), result) != taken.end(); ++number)
    result = base + "-" + std::to_string(number);
  return result;
}

}  // namespace tarebowl::ui
