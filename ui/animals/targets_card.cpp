// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/targets_card.h"

#include "ui/animals/model_start.h"
#include "ui/animals/targets_ladder.h"
#include "ui/shared/card.h"
#include "ui/shared/days.h"
#include "ui/shared/format.h"
#include "ui/shared/reason_bar.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {
namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

QString stateText(const ProfileInSight& version) {
  const auto& steps = version.stored.record.steps;
  switch (version.state) {
    case store::ProfileState::Draft:
      return TargetsCard::tr("○ draft");
    case store::ProfileState::Planned:
      return TargetsCard::tr("◐ from %1").arg(dateText(steps.front().from));
    case store::ProfileState::InForce:
      return TargetsCard::tr("● in force since %1").arg(dateText(steps.front().from));
    case store::ProfileState::Superseded:
      return TargetsCard::tr("◌ replaced");
    case store::ProfileState::Retired:
      return TargetsCard::tr("◌ retired");
  }
  return {};
}

QString referenceText(const animal::ProfileReference& reference) {
  return QStringLiteral("%1 %2").arg(text(reference.code)).arg(reference.version);
}

QString sentence(const QString& words) {
  return words.endsWith(QLatin1Char('.')) ? words : words + QLatin1Char('.');
}

/// Who decided that the version holds and why; nothing where that is why the model stands in.
QString decisionText(const store::ProfileRecord& record) {
  if (record.steps.empty() || record.steps.back().reason.empty()) return {};
  const store::ProfileStep& last = record.steps.back();
  if (last.reason == record.profile.whyModel) return {};
  const QString why = sentence(text(last.reason));
  return last.who.empty() ? TargetsCard::tr("Decided because: %1").arg(why)
                          : TargetsCard::tr("Decided by %1: %2").arg(text(last.who), why);
}

/// "Derives from cat_adult 1. Model species: cat, because both live on prey. Presumes 4 kcal/g DM."
QString aboutText(const ProfileInSight& version) {
  const animal::TargetProfile& profile = version.stored.record.profile;
  QStringList parts;
  if (profile.parent) parts << TargetsCard::tr("Derives from %1.").arg(referenceText(*profile.parent));
  if (!profile.modelSpecies.empty())
    parts << (profile.whyModel.empty()
                  ? TargetsCard::tr("Model species: %1.").arg(text(profile.modelSpecies))
                  : TargetsCard::tr("Model species: %1, because: %2")
                        .arg(text(profile.modelSpecies), sentence(text(profile.whyModel))));
  if (profile.kcalPerGramDryMatter)
    parts << TargetsCard::tr("Its numbers presume %1 kcal per g of dry matter.")
                 .arg(stated(*profile.kcalPerGramDryMatter));
  if (profile.starter) parts << TargetsCard::tr("It came with the program and is derived from, not edited.");
  if (!profile.note.empty()) parts << text(profile.note);
  if (const QString decision = decisionText(version.stored.record); !decision.isEmpty()) parts << decision;
  return parts.join(QLatin1Char(' '));
}

QString brokenText(const ProfileInSight& version) {
  if (const auto* circle = std::get_if<animal::CircularParents>(&version.resolved)) {
    QStringList chain;
    for (const animal::ProfileReference& one : circle->chain) chain << referenceText(one);
    return TargetsCard::tr("This profile derives from itself: %1.").arg(chain.join(QStringLiteral(" → ")));
  }
  const auto& missing = std::get<animal::MissingParent>(version.resolved);
  return TargetsCard::tr("%1 derives from %2, which is not in the collection.")
      .arg(referenceText(missing.child), referenceText(missing.parent));
}

}  // namespace

TargetsCard::TargetsCard(AnimalDesk& desk, ReasonBar& reason, Starters starters, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      reason_(reason),
      profiles_(new QComboBox),
      versions_(new QComboBox),
      force_(new QPushButton(tr("Put in force…"))),
      discard_(new QPushButton(tr("Throw the draft away"))),
      about_(new QLabel),
      ladder_(new TargetsLadder(reason,
                                [&desk](const QString& why) {
                                  return animal::LiftedLimit{.who = desk.collection().author().who,
                                                             .on = quantity::isoDate(desk.today()),
                                                             .reason = why.toStdString()};
                                })),
      modelStart_(new ModelStart(std::move(starters))) {
  build();
  connect(&desk_, &AnimalDesk::pageChanged, this, &TargetsCard::showPage);
  connect(profiles_, &QComboBox::activated, this, &TargetsCard::chooseProfile);
  connect(versions_, &QComboBox::activated, this, &TargetsCard::showVersion);
  connect(force_, &QPushButton::clicked, this, &TargetsCard::putInForce);
  connect(discard_, &QPushButton::clicked, this, [this] {
    if (shown() != nullptr) desk_.removeDraft(*shown());
  });
  connect(ladder_, &TargetsLadder::profileEdited, this,
          [this](const animal::TargetProfile& after, const QString& what) {
            if (shown() != nullptr) desk_.changeProfile(*shown(), after, what);
          });
  connect(modelStart_, &ModelStart::chosen, &desk_, &AnimalDesk::startFromModel);
  showPage();
}

void TargetsCard::build() {
  QVBoxLayout* layout = layOutCard(*this, tr("Targets"));
  profiles_->setAccessibleName(tr("Profile that the group is fed by"));
  versions_->setAccessibleName(tr("Version of the profile"));
  force_->setToolTip(tr("From today on this version holds in place of the one before it"));
  about_->setWordWrap(true);
  about_->setTextFormat(Qt::PlainText);
  auto* top = new QHBoxLayout;
  top->setSpacing(7);
  for (QWidget* widget : std::initializer_list<QWidget*>{profiles_, versions_}) top->addWidget(widget);
  top->addStretch(1);
  for (QWidget* widget : std::initializer_list<QWidget*>{force_, discard_}) top->addWidget(widget);
  layout->addLayout(top);
  layout->addWidget(about_);
  layout->addWidget(ladder_, 1);
  layout->addWidget(modelStart_, 1);
}

void TargetsCard::showPage() {
  if (!desk_.page() || !desk_.page()->group) return;
  const AnimalPage& page = *desk_.page();
  const QSignalBlocker quiet(profiles_);
  profiles_->clear();
  profiles_->addItem(tr("no profile chosen"), QString());
  for (const ProfileName& known : page.profileNames) profiles_->addItem(text(known.name), text(known.code));
  profiles_->setCurrentIndex(std::max(0, profiles_->findData(text(page.group->record.profile))));
  fillVersions();
  showVersion();
}

/// A version that was just drafted comes into sight; otherwise the one that was looked at stays.
void TargetsCard::fillVersions() {
  const QSignalBlocker quiet(versions_);
  const AnimalPage& page = *desk_.page();
  if (place_ != page.place) {
    place_ = page.place;
    modelStart_->clear();
    known_ = 0;
    versions_->clear();
  }
  const int before = versions_->currentData().isValid() ? versions_->currentData().toInt() : -1;
  const bool grown = page.profiles.size() > known_;
  const bool first = known_ == 0;
  known_ = page.profiles.size();
  versions_->clear();
  for (auto version = page.profiles.rbegin(); version != page.profiles.rend(); ++version)
    versions_->addItem(
        tr("version %1 · %2").arg(version->stored.record.profile.version).arg(stateText(*version)),
        version->stored.record.profile.version);
  const ProfileInSight* natural = profileToShow(page);
  const int wanted = !first && grown ? page.profiles.back().stored.record.profile.version : before;
  int place = versions_->findData(wanted);
  if (place < 0 && natural != nullptr) place = versions_->findData(natural->stored.record.profile.version);
  versions_->setCurrentIndex(place);
  versions_->setVisible(!page.profiles.empty());
}

const ProfileInSight* TargetsCard::shown() const {
  if (!desk_.page()) return nullptr;
  for (const ProfileInSight& version : desk_.page()->profiles)
    if (version.stored.record.profile.version == versions_->currentData().toInt() &&
        versions_->currentIndex() >= 0)
      return &version;
  return nullptr;
}

void TargetsCard::showVersion() {
  const ProfileInSight* version = shown();
  const bool draft = version != nullptr && version->state == store::ProfileState::Draft;
  force_->setVisible(draft);
  discard_->setVisible(draft);
  ladder_->setVisible(version != nullptr);
  modelStart_->setVisible(version == nullptr && desk_.page() && desk_.page()->group &&
                          desk_.page()->group->record.profile.empty());
  if (version == nullptr) {
    about_->setText(tr(
        "No target profile is chosen for this group. Choose one above, or start from a model species: what "
        "is published for it stands in until there is something better, and limits are set on top of it."));
    ladder_->show({}, false);
    return;
  }
  const auto* resolved = std::get_if<animal::ResolvedProfile>(&version->resolved);
  const bool editable = resolved != nullptr && !version->stored.record.profile.starter &&
                        (draft || version->state == store::ProfileState::InForce);
  about_->setText(resolved == nullptr ? brokenText(*version) : aboutText(*version));
  ladder_->show(resolved == nullptr ? std::nullopt : std::optional(*resolved), editable);
}

void TargetsCard::putInForce() {
  const ProfileInSight* version = shown();
  if (version == nullptr) return;
  reason_.ask(tr("Version %1 holds from today on. Why?").arg(version->stored.record.profile.version), {},
              tr("Put in force"), [this](const ReasonBar::Answer& answer) {
                if (shown() != nullptr) desk_.putInForce(*shown(), answer.reason);
              });
}

void TargetsCard::chooseProfile() {
  if (!desk_.page() || !desk_.page()->group) return;
  animal::Group after = desk_.page()->group->record;
  after.profile = profiles_->currentData().toString().toStdString();
  known_ = 0;
  desk_.changeGroup(after);
}

}  // namespace tarebowl::ui
