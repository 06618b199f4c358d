// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/pan_text.h"

#include "ui/kitchen/kitchen_text.h"
#include "ui/shared/format.h"

#include <QCoreApplication>

namespace tarebowl::ui {
namespace {

struct Pans {
  Q_DECLARE_TR_FUNCTIONS(Pans)
};

}  // namespace

QString panFoodText(const intake::KitchenFood& food) {
  return foodText(food);
}

QString panClassText(const std::string& foodClass) {
  return Pans::tr("any %1").arg(QString::fromStdString(foodClass));
}

QString waterText(const intake::ControlPan& pan) {
  if (!pan.end) return Pans::tr("still stands; it corrects no leftover until it is weighed again");
  const double lost = 1.0 - *pan.end / pan.start;
  if (lost == 0.0) return Pans::tr("neither lost nor drew water");
  return lost > 0.0 ? Pans::tr("lost %1 of its mass").arg(percent(lost))
                    : Pans::tr("drew %1 of its mass").arg(percent(-lost));
}

QString panText(const intake::ControlPan& pan, const KitchenSheet& sheet) {
  const QString what = pan.food.empty() ? panClassText(pan.foodClass) : panFoodText(sheet.foodOf(pan.food));
  const QString who =
      pan.who.empty() ? QString() : QStringLiteral(" (%1)").arg(QString::fromStdString(pan.who));
  if (!pan.end) return Pans::tr("%1: %2 g put out, still stands%3").arg(what, stated(pan.start.value()), who);
  return Pans::tr("%1: %2 g → %3 g, %4%5")
      .arg(what, stated(pan.start.value()), stated(pan.end->value()), waterText(pan), who);
}

QString panDoubtText(intake::PanDoubt doubt) {
  using intake::PanDoubt;
  const QString again = Pans::tr(" Enter again keeps it as it is.");
  switch (doubt) {
    case PanDoubt::NothingAtStart:
      return Pans::tr("A pan that was put out empty says nothing: weigh the food that was in it.");
    case PanDoubt::NothingLeft:
      return Pans::tr(
                 "Nothing is left of it: was it emptied, or eaten from? It will count for no leftover.") +
             again;
    case PanDoubt::GainedMuch:
      return Pans::tr("It came back more than a tenth heavier: rain, or the weights the wrong way round?") +
             again;
    case PanDoubt::LostMuch:
      return Pans::tr("More than half of it is gone: did an animal reach it?") + again;
    case PanDoubt::TwicePut:
      break;
  }
  return Pans::tr(
             "There is a pan of this already: both will count, each by half. To change it choose it above.") +
         again;
}

}  // namespace tarebowl::ui
