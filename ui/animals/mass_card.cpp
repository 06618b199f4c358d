// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/mass_card.h"

#include "ui/animals/animal_text.h"
#include "ui/animals/mass_chart.h"
#include "ui/shared/card.h"
#include "ui/shared/days.h"
#include "ui/shared/segmented_switch.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

/// "183 g, mean of 3 animals, 7 readings, newest 3 Oct 2026".
QString nowText(const std::optional<PageMass>& mass) {
  if (!mass) return MassCard::tr("Mass today: ? Nothing was weighed yet.");
  const QString readings =
      mass->readings == 1 ? MassCard::tr("1 reading") : MassCard::tr("%1 readings").arg(mass->readings);
  const QString of = mass->animals == 0   ? MassCard::tr("mean of the group")
                     : mass->animals == 1 ? MassCard::tr("1 animal")
                                          : MassCard::tr("mean of %1 animals").arg(mass->animals);
  return MassCard::tr("Mass that counts today: %1 (%2, %3, newest %4)")
      .arg(massText(mass->mass), of, readings, dateText(mass->newest));
}

}  // namespace

MassCard::MassCard(AnimalDesk& desk, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      now_(new QLabel),
      view_(new SegmentedSwitch(tr("Show"), {tr("each animal"), tr("mean")})),
      chart_(new MassChart),
      none_(new QLabel(tr("The chart begins with the first mass."))) {
  QVBoxLayout* layout = layOutCard(*this, tr("Body mass and condition"));
  auto* top = new QHBoxLayout;
  now_->setWordWrap(true);
  none_->setProperty("soft", true);
  top->addWidget(now_, 1);
  top->addWidget(view_);
  layout->addLayout(top);
  layout->addWidget(chart_, 1);
  layout->addWidget(none_);
  constexpr int kLines = 6;  // of words above the chart, where these wrap
  setMinimumHeight(chart_->minimumHeight() + kLines * fontMetrics().lineSpacing());
  connect(&desk_, &AnimalDesk::pageChanged, this, &MassCard::showPage);
  connect(view_, &SegmentedSwitch::chosen, this, &MassCard::showPage);
  showPage();
}

void MassCard::showPage() {
  if (!desk_.page()) return;
  const AnimalPage& page = *desk_.page();
  now_->setText(nowText(massOf(page, desk_.today())));
  const auto view = static_cast<MassView>(view_->current());
  const MassChartState state = massChartState(page, view);
  chart_->show(state);
  const bool any = spanOf(state).has_value();
  chart_->setVisible(any);
  none_->setVisible(!any);
  view_->setVisible(page.group.has_value() && page.series.size() > 2);
}

}  // namespace tarebowl::ui
