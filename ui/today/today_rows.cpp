// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/today_rows.h"

#include "ui/shared/days.h"
#include "ui/shared/format.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace tarebowl::ui {
namespace {

struct Today {
  Q_DECLARE_TR_FUNCTIONS(Today)
};

TodayRow bowlsRow(const transfer::SectionToday& section) {
  TodayRow row{.section = QString::fromStdString(section.section)};
  const QString bowls = section.bowls == 1 ? Today::tr("1 bowl to prepare")
                                           : Today::tr("%1 bowls to prepare").arg(section.bowls);
  if (section.bowls == 0) {
    row.text = Today::tr("no bowl to prepare");
    row.mark = section.groupsWithoutBowl > 0 ? Mark::Unknown : Mark::Met;
  } else if (section.weighed == section.lines) {
    row.text = Today::tr("%1: all foods are weighed in").arg(bowls);
  } else {
    row.text = Today::tr("%1: %2 of %3 foods are weighed in, %4 missing")
                   .arg(bowls)
                   .arg(section.weighed)
                   .arg(section.lines)
                   .arg(section.lines - section.weighed);
    row.mark = section.weighed > 0 ? Mark::AtLimit : Mark::Lacking;
  }
  return row;
}

TodayCard sectionCard(const transfer::SectionToday& section) {
  const QString name = QString::fromStdString(section.section);
  TodayCard card{.heading = name.isEmpty() ? Today::tr("No section") : name};
  card.rows.push_back(bowlsRow(section));
  if (section.groupsWithoutBowl > 0)
    card.rows.push_back(
        {Mark::Unknown,
         Today::tr("%1 without a bowl: no diet in force, or nobody knows how many they are")
             .arg(section.groupsWithoutBowl == 1 ? Today::tr("1 group")
                                                 : Today::tr("%1 groups").arg(section.groupsWithoutBowl)),
         TodayPlace::Kitchen, name});
  if (section.leftoversMissing > 0)
    card.rows.push_back(
        {Mark::Lacking,
         section.leftoversMissing == 1
             ? Today::tr("leftovers of 1 bowl of yesterday are not weighed")
             : Today::tr("leftovers of %1 bowls of yesterday are not weighed").arg(section.leftoversMissing),
         TodayPlace::Leftovers, name});
  return card;
}

QString nameOf(const transfer::DayOverview& overview, const std::string& group) {
  const auto found = overview.groups.find(group);
  return QString::fromStdString(found == overview.groups.end() ? group : found->second.name);
}

QString foodOf(const transfer::DayOverview& overview, const std::string& code) {
  const auto found = overview.foodNames.find(code);
  return QString::fromStdString(found == overview.foodNames.end() ? code : found->second);
}

QString swapText(const transfer::DayOverview& overview, const intake::SwapMade& swap) {
  QStringList given;
  for (const intake::GivenInstead& one : swap.given)
    given << Today::tr("%1 g %2").arg(stated(one.amount.value()), foodOf(overview, one.food));
  return Today::tr("%1, bowl %2 on %3: %4 in place of %5 (%6, %7)")
      .arg(nameOf(overview, swap.instead.bowl.group))
      .arg(swap.instead.bowl.bowl)
      .arg(dateText(swap.instead.bowl.day), given.join(Today::tr(" and ")), foodOf(overview, swap.food),
           QString::fromStdString(swap.why), QString::fromStdString(swap.by.who));
}

/// Of an earlier day it is to be weighed; one of today comes back tomorrow.
TodayRow panRow(const transfer::DayOverview& overview, std::size_t index) {
  const intake::ControlPan& pan = overview.pansThatStand[index].record;
  const bool isDue = pan.day < overview.day;
  const bool isInSection = std::ranges::any_of(
      overview.sections, [&](const transfer::SectionToday& section) { return section.section == pan.place; });
  const QString place = QString::fromStdString(pan.place);
  const QString what = pan.food.empty() ? Today::tr("any %1").arg(QString::fromStdString(pan.foodClass))
                                        : foodOf(overview, pan.food);
  QString text = Today::tr("%1: %2, %3 g put out on %4, %5")
                     .arg(place.isEmpty() ? Today::tr("No section") : place, what, stated(pan.start.value()),
                          dateText(pan.day),
                          isDue ? Today::tr("is not weighed yet") : Today::tr("stands until tomorrow"));
  if (!isInSection) text += Today::tr(" (no section of this name: tarebowl pans takes its weight)");
  return {isDue ? Mark::Lacking : Mark::AtLimit, text, isInSection ? TodayPlace::Pans : TodayPlace::Nowhere,
          place, index};
}

Mark markOf(intake::SwapApproval approval) {
  switch (approval) {
    case intake::SwapApproval::Waiting:
      return Mark::AtLimit;
    case intake::SwapApproval::Refused:
      return Mark::Over;
    default:
      return Mark::Met;
  }
}

}  // namespace

std::vector<TodayCard> todayCards(const transfer::DayOverview& overview) {
  std::vector<TodayCard> cards;
  for (const transfer::SectionToday& section : overview.sections) cards.push_back(sectionCard(section));
  TodayCard pans{.heading = Today::tr("Control pans that still stand")};
  for (std::size_t i = 0; i < overview.pansThatStand.size(); ++i) pans.rows.push_back(panRow(overview, i));
  TodayCard swaps{.heading = Today::tr("Swaps made today")};
  for (std::size_t i = 0; i < overview.swapsMade.size(); ++i)
    swaps.rows.push_back({markOf(overview.swapsMade[i].record.approval),
                          swapText(overview, overview.swapsMade[i].record),
                          TodayPlace::Swap,
                          {},
                          i});
  TodayCard waiting{.heading = Today::tr("Waiting for a decision")};
  for (std::size_t i = 0; i < overview.swapsWaiting.size(); ++i)
    waiting.rows.push_back({Mark::AtLimit,
                            Today::tr("swap: %1").arg(swapText(overview, overview.swapsWaiting[i].record)),
                            TodayPlace::SwapDecision,
                            {},
                            i});
  for (std::size_t i = 0; i < overview.dietsWaiting.size(); ++i)
    waiting.rows.push_back({Mark::AtLimit,
                            Today::tr("diet: %1, version %2, for %3")
                                .arg(QString::fromStdString(overview.dietsWaiting[i].name))
                                .arg(overview.dietsWaiting[i].version.number)
                                .arg(nameOf(overview, overview.dietsWaiting[i].group)),
                            TodayPlace::Diet,
                            {},
                            i});
  for (TodayCard* card : {&pans, &swaps, &waiting})
    if (!card->rows.empty()) cards.push_back(std::move(*card));
  return cards;
}

}  // namespace tarebowl::ui
