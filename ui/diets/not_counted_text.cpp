// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/not_counted_text.h"

#include <QCoreApplication>
#include <QStringList>

namespace tarebowl::ui {
namespace {

struct Rules {
  Q_DECLARE_TR_FUNCTIONS(Rules)
};

QString reasonText(diet::NotCounted why) {
  switch (why) {
    case diet::NotCounted::NoFoodKnowsNutrient:
      return Rules::tr("no food here states what it needs");
    case diet::NotCounted::NoFoodOfGroup:
      return Rules::tr("no food of the group is here");
    case diet::NotCounted::BodyMassUnknown:
      return Rules::tr("the body mass is not known");
    case diet::NotCounted::EnergyIsNoFeedingRate:
      return Rules::tr("of an animal without body heat of its own, it is no feeding rate");
    case diet::NotCounted::DryMatterUnknown:
      return Rules::tr("stated as fed, of a feed whose dry matter is not stated");
  }
  return {};
}

}  // namespace

QString notCountedText(const std::vector<diet::RuleNotCounted>& rules) {
  constexpr diet::NotCounted kReasons[] = {diet::NotCounted::NoFoodKnowsNutrient,
                                           diet::NotCounted::NoFoodOfGroup, diet::NotCounted::BodyMassUnknown,
                                           diet::NotCounted::EnergyIsNoFeedingRate,
                                           diet::NotCounted::DryMatterUnknown};
  QStringList parts;
  for (const diet::NotCounted why : kReasons) {
    QStringList ids;
    for (const diet::RuleNotCounted& rule : rules)
      if (rule.why == why) ids << QString::fromStdString(rule.id);
    if (!ids.isEmpty())
      parts << QStringLiteral("%1 (%2)").arg(ids.join(QStringLiteral(", ")), reasonText(why));
  }
  return parts.isEmpty() ? QString() : Rules::tr("? Not judged: %1.").arg(parts.join(QStringLiteral("; ")));
}

}  // namespace tarebowl::ui
