// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done to the energy plan and the target profile of a group.
#include "ui/animals/animal_desk.h"
#include "ui/animals/animal_text.h"

#include <utility>

namespace tarebowl::ui {

void AnimalDesk::setEnergyPlan(const animal::EnergyPlan& plan) {
  if (!page_ || !page_->group) return;
  const std::string group = page_->group->record.code;
  const QString what = tr("change the energy plan");
  for (const store::StoredEnergyPlan& stored : page_->plans) {
    if (stored.record.from != today()) continue;
    if (stored.record.plan == plan) return;
    store::EnergyPlanRecord after = stored.record;
    after.plan = plan;
    perform(
        [id = stored.id, revision = stored.revision, after](store::Collection& collection,
                                                            const store::Author& author) {
          return store::editEnergyPlan(collection, id, revision, after, author);
        },
        what);
    return;
  }
  perform([record = store::EnergyPlanRecord{.group = group, .from = today(), .plan = plan}](
              store::Collection& collection,
              const store::Author& author) { return store::addEnergyPlan(collection, record, author); },
          what);
}

void AnimalDesk::changeProfile(const ProfileInSight& version, const animal::TargetProfile& after,
                               const QString& what) {
  const store::StoredProfile& stored = version.stored;
  if (stored.record.profile == after) return;
  if (version.state == store::ProfileState::Draft) {
    perform(
        [id = stored.id, revision = stored.revision, after](store::Collection& collection,
                                                            const store::Author& author) {
          return store::editProfile(collection, id, revision, after, author);
        },
        what);
    return;
  }
  const auto draft = std::make_shared<store::Written>();
  CollectionEdit edit{
      .verb =
          [id = stored.id, draft](store::Collection& collection, const store::Author& author) {
            *draft = store::draftNextVersion(collection, id, author);
            return *draft;
          },
      .what = what};
  edit.further.push_back([draft, after](store::Collection& collection, const store::Author& author) {
    const auto made = store::findProfile(collection, store::ProfileId{draft->id});
    animal::TargetProfile changed = after;
    changed.version = made ? made->record.profile.version : after.version;
    return store::editProfile(collection, store::ProfileId{draft->id}, draft->revision, changed, author);
  });
  performAll(std::move(edit));
}

void AnimalDesk::startFromModel(const ModelChoice& choice) {
  if (!page_ || !page_->group || choice.model.empty() || choice.why.empty()) return;
  std::vector<std::string> taken;
  for (const ProfileName& known : page_->profileNames) taken.push_back(known.code);
  for (const animal::TargetProfile& starter : choice.model) taken.push_back(starter.code);
  const std::string code = codeFrom(QString::fromStdString(page_->group->record.code), taken);
  performAll(editThatFeeds(*page_->group, choice, code, today()));
}

void AnimalDesk::removeDraft(const ProfileInSight& version) {
  perform([id = version.stored.id, revision = version.stored.revision](
              store::Collection& collection,
              const store::Author& author) { return store::removeProfile(collection, id, revision, author); },
          tr("throw the draft away"));
}

void AnimalDesk::putInForce(const ProfileInSight& version, const QString& reason) {
  const std::string why = reason.trimmed().toStdString();
  if (why.empty()) return;
  perform(
      [id = version.stored.id, revision = version.stored.revision, why, from = today()](
          store::Collection& collection, const store::Author& author) {
        return store::putInForce(collection, id, revision, from, why, author);
      },
      tr("put version %1 in force").arg(version.stored.record.profile.version));
}

}  // namespace tarebowl::ui
