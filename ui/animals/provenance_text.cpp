// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/provenance_text.h"

#include <QCoreApplication>

namespace tarebowl::ui {
namespace {

struct Origin {
  Q_DECLARE_TR_FUNCTIONS(Origin)
};

}  // namespace

animal::TargetOrigin houseOrigin() {
  animal::TargetOrigin origin;
  origin.provenance = animal::Provenance::HouseRule;
  return origin;
}

QString provenanceText(animal::Provenance provenance) {
  switch (provenance) {
    case animal::Provenance::Seen:
      return Origin::tr("■ seen");
    case animal::Provenance::FromMemory:
      return Origin::tr("○ from memory");
    case animal::Provenance::HouseRule:
      return Origin::tr("◆ house rule");
    case animal::Provenance::Invented:
      return Origin::tr("▲ invented");
    case animal::Provenance::Derived:
      return Origin::tr("□ worked out");
    case animal::Provenance::Unstated:
      break;
  }
  return Origin::tr("? not stated");
}

QColor colorOf(animal::Provenance provenance, const Theme& theme) {
  switch (provenance) {
    case animal::Provenance::Seen:
    case animal::Provenance::Derived:
      return theme.met;
    case animal::Provenance::FromMemory:
      return theme.atLimit;
    case animal::Provenance::HouseRule:
      return theme.accent;
    case animal::Provenance::Invented:
      return theme.over;
    case animal::Provenance::Unstated:
      break;
  }
  return theme.unknown;
}

QString sourceText(const animal::TargetOrigin& origin) {
  const QString source = QString::fromStdString(origin.source);
  switch (origin.provenance) {
    case animal::Provenance::FromMemory:
      return source.isEmpty() ? Origin::tr("recalled, not looked up")
                              : Origin::tr("recalled, not looked up: said to be %1").arg(source);
    case animal::Provenance::HouseRule:
      return source.isEmpty() ? Origin::tr("the house's own rule") : Origin::tr("the house: %1").arg(source);
    case animal::Provenance::Invented:
      return source.isEmpty() ? Origin::tr("invented") : Origin::tr("invented: %1").arg(source);
    case animal::Provenance::Derived:
      return Origin::tr("worked out from: %1").arg(source);
    default:
      break;
  }
  return source.isEmpty() ? Origin::tr("no source stated") : source;
}

}  // namespace tarebowl::ui
