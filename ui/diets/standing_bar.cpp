// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/standing_bar.h"

#include "ui/diets/version_document.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace tarebowl::ui {
namespace {

QString listed(const std::vector<std::string>& names) {
  QStringList words;
  for (const std::string& name : names) words << QString::fromStdString(name);
  return words.join(QStringLiteral(", "));
}

QString nameOf(const animal::ProfileReference& reference) {
  return StandingBar::tr("%1 version %2").arg(QString::fromStdString(reference.code)).arg(reference.version);
}

}  // namespace

QStringList standingSentences(const transfer::DeskDiet& desk) {
  QStringList sentences;
  const diet::DietVersion& version = desk.version.record.version;
  if (desk.profileMissing)
    sentences << StandingBar::tr(
        "This diet has no targets: only the energy need is judged. Give the group a target "
        "profile in the Animals room.");
  if (desk.decisionUnreadable)
    sentences << StandingBar::tr(
        "What was decided on cannot be read any more: shown is what the collection holds now.");
  if (desk.newerProfile)
    sentences << StandingBar::tr("The group is now fed by the targets %1; this version is judged by %2.")
                     .arg(nameOf(*desk.newerProfile),
                          version.profile.code.empty() ? StandingBar::tr("none") : nameOf(version.profile));
  if (!desk.made.missingFoods.empty())
    sentences << StandingBar::tr("Not in the collection any more, and not counted: %1.")
                     .arg(listed(desk.made.missingFoods));
  if (!desk.foodsChanged.empty())
    sentences << StandingBar::tr(
                     "Since it was approved these foods have other values: %1. What is shown is what was "
                     "decided on.")
                     .arg(listed(desk.foodsChanged));
  if (!desk.made.boundsOfNoRule.empty())
    sentences << StandingBar::tr(
                     "Its own bounds on these rules hold for nothing, since the targets no longer state "
                     "them: %1.")
                     .arg(listed(desk.made.boundsOfNoRule));
  if (!desk.made.boundsWithoutReason.empty())
    sentences << StandingBar::tr(
                     "Hard rules that this diet would loosen without saying why stay in force: %1.")
                     .arg(listed(desk.made.boundsWithoutReason));
  return sentences;
}

StandingBar::StandingBar(VersionDocument& document, QWidget* parent)
    : QFrame(parent),
      document_(document),
      words_(new QLabel),
      newer_(new QPushButton(tr("Judge by the newer targets"))),
      theirs_(new QPushButton(tr("Show theirs"))),
      mine_(new QPushButton(tr("Keep mine as a draft of its own"))) {
  setProperty("card", true);
  words_->setWordWrap(true);
  words_->setAccessibleDescription(tr("What changed since this version was written"));
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(11, 6, 8, 6);
  layout->setSpacing(7);
  layout->addWidget(words_, 1);
  for (QPushButton* button : {newer_, theirs_, mine_}) layout->addWidget(button);
  connect(newer_, &QPushButton::clicked, &document, &VersionDocument::takeNewerTargets);
  connect(theirs_, &QPushButton::clicked, &document, &VersionDocument::takeTheirs);
  connect(mine_, &QPushButton::clicked, &document, &VersionDocument::keepMine);
  connect(&document, &VersionDocument::opened, this, &StandingBar::show);
  connect(&document, &VersionDocument::changed, this, &StandingBar::show);
  connect(&document, &VersionDocument::savedChanged, this, &StandingBar::show);
  show();
}

void StandingBar::show() {
  QStringList sentences;
  const bool isConflict = document_.isInConflict();
  bool mayTakeNewer = false;
  if (isConflict) {
    sentences << tr("Another window changed this diet while you did. Nothing of yours was written yet.");
  } else if (document_.isOpen()) {
    const transfer::DeskDiet& desk = *document_.shown();
    sentences = standingSentences(desk);
    mayTakeNewer = desk.newerProfile && desk.version.record.version.state == diet::VersionState::Draft;
  }
  words_->setText(sentences.join(QLatin1Char('\n')));
  newer_->setVisible(mayTakeNewer);
  theirs_->setVisible(isConflict);
  mine_->setVisible(isConflict);
  setVisible(!sentences.isEmpty());
}

}  // namespace tarebowl::ui
