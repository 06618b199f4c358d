// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/version_text.h"

#include "ui/shared/days.h"

#include <QCoreApplication>

#include <string_view>

namespace tarebowl::ui {
namespace {

struct Life {
  Q_DECLARE_TR_FUNCTIONS(Life)
};

/// The day of a moment in UTC, as the log keeps it.
QString dayText(const std::string& at) {
  const auto day = quantity::parseDate(std::string_view(at).substr(0, 10));
  return day ? dateText(*day) : QString::fromStdString(at);
}

QString stepText(const diet::VersionStep& step) {
  const QString day = dayText(step.at);
  const QString who = QString::fromStdString(step.who);
  const QString reason = QString::fromStdString(step.reason);
  QString text = who.isEmpty() ? Life::tr("%1 on %2").arg(stateText(step.to), day)
                               : Life::tr("%1 on %2 by %3").arg(stateText(step.to), day, who);
  if (step.to == diet::VersionState::Draft)
    text = who.isEmpty() ? Life::tr("sent back on %1").arg(day)
                         : Life::tr("sent back on %1 by %2").arg(day, who);
  return reason.isEmpty() ? text : text + QStringLiteral(": ") + reason;
}

}  // namespace

QString stateText(diet::VersionState state) {
  switch (state) {
    case diet::VersionState::Draft:
      return Life::tr("draft");
    case diet::VersionState::Submitted:
      return Life::tr("submitted");
    case diet::VersionState::Approved:
      return Life::tr("approved");
    case diet::VersionState::Retired:
      return Life::tr("retired");
  }
  return {};
}

QString lifeText(const diet::DietVersion& version) {
  QStringList parts;
  if (!version.steps.empty()) parts << stepText(version.steps.back());
  if (version.madeFrom && version.steps.empty())
    parts << Life::tr("begun from version %1").arg(*version.madeFrom);
  if (version.fedFrom) {
    const QString day = dateText(*version.fedFrom);
    parts << (version.phaseInDays > 0
                  ? Life::tr("fed from %1, phased in over %n days", "", version.phaseInDays).arg(day)
                  : Life::tr("fed from %1").arg(day));
  }
  return parts.join(QStringLiteral("; "));
}

QString purposeText(diet::Purpose purpose) {
  switch (purpose) {
    case diet::Purpose::Bowl:
      return Life::tr("bowl");
    case diet::Purpose::Treat:
      return Life::tr("treat");
    case diet::Purpose::TrainingReward:
      return Life::tr("training reward");
    case diet::Purpose::Enrichment:
      return Life::tr("enrichment");
    case diet::Purpose::Browse:
      return Life::tr("browse");
  }
  return {};
}

}  // namespace tarebowl::ui
