// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/version_bar.h"

#include "ui/diets/approval_form.h"
#include "ui/diets/version_text.h"
#include "ui/shared/reason_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

namespace tarebowl::ui {

using diet::VersionState;

VersionBar::VersionBar(VersionDocument& document, const DietShelf& shelf, ReasonBar& reason,
                       ApprovalForm& approval, QWidget* parent)
    : QWidget(parent),
      document_(document),
      shelf_(shelf),
      reason_(reason),
      approval_(approval),
      versions_(new QToolButton),
      life_(new QLabel),
      on_(new QPushButton),
      back_(new QPushButton(tr("Send back…"))),
      next_(new QPushButton(tr("New version"))),
      further_(new QToolButton) {
  build();
  show();
}

void VersionBar::build() {
  versions_->setPopupMode(QToolButton::InstantPopup);
  for (QToolButton* button : {versions_, further_}) button->setProperty("plain", true);
  versions_->setMenu(new QMenu(versions_));
  life_->setProperty("soft", true);
  life_->setWordWrap(true);
  life_->setAccessibleDescription(tr("What became of this version"));
  next_->setToolTip(tr("Begins a draft from what is on the desk (Ctrl+N)"));
  further_->setText(tr("More ▾"));
  further_->setPopupMode(QToolButton::InstantPopup);
  further_->setMenu(new QMenu(further_));
  further_->setAccessibleName(tr("More about this version"));
  auto* row = new QHBoxLayout;
  row->setSpacing(7);
  row->addWidget(versions_);
  row->addStretch(1);
  for (QWidget* widget : std::initializer_list<QWidget*>{on_, back_, next_, further_}) row->addWidget(widget);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(3);
  layout->addLayout(row);
  layout->addWidget(life_);
  connect(on_, &QPushButton::clicked, this, &VersionBar::stepOn);
  connect(back_, &QPushButton::clicked, this, &VersionBar::stepBack);
  connect(next_, &QPushButton::clicked, &document_, &VersionDocument::beginNewVersion);
  connect(versions_->menu(), &QMenu::aboutToShow, this, &VersionBar::fillVersions);
  connect(further_->menu(), &QMenu::aboutToShow, this, &VersionBar::fillFurther);
  connect(&document_, &VersionDocument::opened, this, &VersionBar::show);
  connect(&document_, &VersionDocument::changed, this, &VersionBar::show);
}

void VersionBar::show() {
  setVisible(document_.isOpen());
  reason_.dismiss();
  approval_.hide();
  if (!document_.isOpen()) return;
  const diet::DietVersion& version = document_.shown()->version.record.version;
  const QString shown = tr("version %1, %2").arg(version.number).arg(stateText(version.state));
  versions_->setText(shown + QStringLiteral(" ▾"));
  versions_->setAccessibleName(tr("On the desk: %1").arg(shown));
  QString life = lifeText(version);
  if (document_.shown()->counted == transfer::CountedAs::Eaten)
    life += tr(" · counted as eaten, as learned of %1 of its foods").arg(document_.shown()->eaten.size());
  life_->setText(life);
  life_->setVisible(!life.isEmpty());
  on_->setVisible(version.state != VersionState::Retired);
  on_->setText(version.state == VersionState::Draft       ? tr("Submit…")
               : version.state == VersionState::Submitted ? tr("Approve…")
                                                          : tr("Retire…"));
  back_->setVisible(version.state == VersionState::Submitted);
  next_->setVisible(version.state != VersionState::Draft);
}

void VersionBar::fillVersions() {
  QMenu& menu = *versions_->menu();
  menu.clear();
  const ShelvedDiet* diet = shelf_.find(document_.shown()->diet.record.code);
  if (diet == nullptr) return;
  for (auto it = diet->versions.rbegin(); it != diet->versions.rend(); ++it) {
    QAction* action = menu.addAction(tr("version %1, %2").arg(it->number).arg(stateText(it->state)));
    action->setCheckable(true);
    action->setChecked(it->id == document_.shown()->version.id);
    connect(action, &QAction::triggered, this,
            [this, id = it->id] { emit versionWanted(static_cast<qint64>(id)); });
  }
}

void VersionBar::fillFurther() {
  QMenu& menu = *further_->menu();
  menu.clear();
  const transfer::DeskDiet& shown = *document_.shown();
  const bool isDraft = shown.version.record.version.state == VersionState::Draft;
  if (isDraft)
    connect(menu.addAction(tr("New version")), &QAction::triggered, &document_,
            &VersionDocument::beginNewVersion);
  if (const ShelvedDiet* diet = shelf_.find(shown.diet.record.code); diet != nullptr)
    for (const store::VersionLine& other : diet->versions)
      if (other.id != shown.version.id)
        connect(menu.addAction(tr("Compare with version %1").arg(other.number)), &QAction::triggered, this,
                [this, number = other.number] { emit compareWanted(number); });
  QAction* eaten = menu.addAction(tr("Count what is eaten of it"));
  eaten->setCheckable(true);
  eaten->setChecked(document_.counted() == transfer::CountedAs::Eaten);
  eaten->setToolTip(tr("Targets are judged and solved by what the group ate of each food in eight weeks"));
  connect(eaten, &QAction::toggled, &document_, [this](bool on) {
    document_.countAs(on ? transfer::CountedAs::Eaten : transfer::CountedAs::Offered);
  });
  connect(menu.addAction(tr("Diet sheet…")), &QAction::triggered, this, &VersionBar::sheetWanted);
  if (isDraft) {
    menu.addSeparator();
    connect(menu.addAction(tr("Remove this draft")), &QAction::triggered, &document_,
            &VersionDocument::removeDraft);
  }
}

void VersionBar::stepOn() {
  switch (document_.shown()->version.record.version.state) {
    case VersionState::Draft:
      return reason_.ask(tr("Submit this version for approval. While it waits nothing of it is edited."), {},
                         tr("Submit"),
                         [this](const ReasonBar::Answer& answer) { document_.submit(answer.reason); });
    case VersionState::Submitted:
      return approval_.ask([this](const store::FeedingStart& start, const QString& reason) {
        document_.approve(start, reason);
      });
    case VersionState::Approved:
      return reason_.ask(tr("Retire this version: it is no longer fed, and is kept for the record."), {},
                         tr("Retire"),
                         [this](const ReasonBar::Answer& answer) { document_.retire(answer.reason); });
    case VersionState::Retired:
      return;
  }
}

void VersionBar::stepBack() {
  reason_.ask(tr("Send this version back to be worked on."), {}, tr("Send back"),
              [this](const ReasonBar::Answer& answer) { document_.sendBack(answer.reason); });
}

}  // namespace tarebowl::ui
