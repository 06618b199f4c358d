// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/scale_text.h"

#include <QCoreApplication>

namespace tarebowl::ui {
namespace {

struct Scale {
  Q_DECLARE_TR_FUNCTIONS(Scale)
};

}  // namespace

QString scaleFault(intake::ScaleFault fault, const QString& line) {
  using intake::ScaleFault;
  switch (fault) {
    case ScaleFault::NoNumber:
      return {};
    case ScaleFault::SeveralNumbers:
      return Scale::tr("The scale sent two numbers in one line (%1). Wait for the next, or type the weight.")
          .arg(line);
    case ScaleFault::UnknownUnit:
      return Scale::tr("The scale does not weigh in g, kg, oz or lb (%1). Set it to grams.").arg(line);
    case ScaleFault::OutOfRange:
      return Scale::tr("The scale says that its pan is overloaded or lifted. Clear it and tare again.");
    case ScaleFault::Garbled:
      return Scale::tr(
          "What the scale sent was not whole; it is not used. If this goes on, check the cable and the "
          "speed of the port.");
    case ScaleFault::NoUnit:
      return Scale::tr("The scale sent %1 without a unit: the pan still moves, or its unit has to be chosen.")
          .arg(line);
  }
  return {};
}

QString scaleUnit(intake::ScaleUnit unit) {
  switch (unit) {
    case intake::ScaleUnit::Gram:
      return Scale::tr("g");
    case intake::ScaleUnit::Kilogram:
      return Scale::tr("kg");
    case intake::ScaleUnit::Ounce:
      return Scale::tr("oz");
    case intake::ScaleUnit::Pound:
      return Scale::tr("lb");
  }
  return {};
}

QString scaleGone(const QString& port) {
  return Scale::tr("The scale at %1 is gone: check its cable. Weights can be typed meanwhile.").arg(port);
}

QString scaleNotOpened(const QString& port, const QString& reason) {
  return Scale::tr("The scale at %1 cannot be reached (%2). Weights can be typed meanwhile.")
      .arg(port, reason);
}

}  // namespace tarebowl::ui
