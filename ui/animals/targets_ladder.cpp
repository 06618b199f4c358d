// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/targets_ladder.h"

#include "ui/animals/rule_adder.h"
#include "ui/animals/zone_delegate.h"
#include "ui/shared/plain_table.h"
#include "ui/shared/reason_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {

TargetsLadder::TargetsLadder(ReasonBar& reason, Who who, QWidget* parent)
    : QWidget(parent),
      reason_(reason),
      who_(std::move(who)),
      model_(new TargetsModel(this)),
      table_(new PlainTable(tr("Targets of the profile"))),
      about_(new QLabel),
      turn_(new QPushButton),
      takeOut_(new QPushButton(tr("Take out…"))),
      adder_(new RuleAdder) {
  build();
  wire();
  showChosen();
}

void TargetsLadder::build() {
  table_->setModel(model_);
  table_->setItemDelegateForColumn(TargetsModel::Zone, new ZoneDelegate(table_));
  table_->setWideColumn(TargetsModel::Name);
  about_->setWordWrap(true);
  about_->setTextFormat(Qt::PlainText);
  about_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  about_->setAccessibleDescription(tr("About the chosen target"));
  about_->setMinimumHeight(2 * fontMetrics().lineSpacing());
  about_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(7);
  buttons->addWidget(about_, 1);
  for (QPushButton* button : {turn_, takeOut_}) buttons->addWidget(button, 0, Qt::AlignTop);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(6);
  layout->addWidget(table_, 1);
  layout->addLayout(buttons);
  layout->addWidget(adder_);
}

void TargetsLadder::wire() {
  connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this, &TargetsLadder::showChosen);
  connect(model_, &QAbstractItemModel::modelReset, this, &TargetsLadder::showChosen);
  // The editor that reported an edit is still open: the profile is shown anew once it has closed.
  connect(model_, &TargetsModel::profileEdited, this, &TargetsLadder::profileEdited, Qt::QueuedConnection);
  connect(model_, &TargetsModel::reasonWanted, this, &TargetsLadder::lift, Qt::QueuedConnection);
  connect(model_, &TargetsModel::refused, this, &TargetsLadder::complain);
  connect(adder_, &RuleAdder::refused, this, &TargetsLadder::complain);
  connect(adder_, &RuleAdder::targetTyped, this, [this](const animal::ProfileTarget& rule) {
    if (!model_->profile()) return;
    animal::TargetProfile after = model_->profile()->profile;
    std::erase_if(after.targets,
                  [&](const animal::ProfileTarget& old) { return old.target.id == rule.target.id; });
    after.targets.push_back(rule);
    emit profileEdited(after, tr("add a target"));
  });
  connect(adder_, &RuleAdder::exclusionTyped, this, [this](const animal::Exclusion& rule) {
    if (!model_->profile()) return;
    animal::TargetProfile after = model_->profile()->profile;
    std::erase_if(after.exclusions, [&](const animal::Exclusion& old) { return old.id == rule.id; });
    after.exclusions.push_back(rule);
    emit profileEdited(after, tr("leave %1 out").arg(QString::fromStdString(rule.group)));
  });
  connect(turn_, &QPushButton::clicked, this, &TargetsLadder::turnHardness);
  connect(takeOut_, &QPushButton::clicked, this, &TargetsLadder::takeOut);
}

void TargetsLadder::show(std::optional<animal::ResolvedProfile> profile, bool editable) {
  const TargetRow* before = chosen();
  const std::string id = before == nullptr ? std::string() : before->id;
  const int column = table_->currentIndex().column();
  editable_ = editable;
  model_->show(std::move(profile), editable);
  adder_->setVisible(editable && model_->profile());
  const int row = model_->rowOf(id);
  if (model_->rowCount() > 0) table_->setCurrentIndex(model_->index(std::max(row, 0), std::max(column, 0)));
  showChosen();
}

const TargetRow* TargetsLadder::chosen() const {
  return model_->rowAt(table_->currentIndex());
}

void TargetsLadder::showChosen() {
  const TargetRow* row = chosen();
  about_->setText(row == nullptr ? QString() : TargetsModel::describe(*row));
  const bool bounded = row != nullptr && (row->kind == RuleKind::Target || row->kind == RuleKind::Ratio ||
                                          row->kind == RuleKind::Share);
  turn_->setVisible(editable_);
  takeOut_->setVisible(editable_);
  turn_->setEnabled(bounded);
  turn_->setText(row != nullptr && row->hard ? tr("Only wish it") : tr("It must hold"));
  takeOut_->setEnabled(row != nullptr);
  takeOut_->setText(row != nullptr && row->kind == RuleKind::Dropped ? tr("Take over again")
                                                                     : tr("Take out…"));
}

void TargetsLadder::turnHardness() {
  const TargetRow* row = chosen();
  if (row == nullptr || !model_->profile()) return;
  const animal::TargetProfile after = withHardness(*model_->profile(), *row, !row->hard);
  if (row->safeUpperLimit && row->hard) return lift(after, row->name, row->id);
  emit profileEdited(after, row->hard ? tr("wish %1").arg(row->name) : tr("make %1 hold").arg(row->name));
}

void TargetsLadder::takeOut() {
  const TargetRow* row = chosen();
  if (row == nullptr || !model_->profile()) return;
  if (row->kind == RuleKind::Dropped)
    return emit profileEdited(without(*model_->profile(), *row, {}), tr("take a rule over again"));
  reason_.ask(tr("Take “%1” out of this profile?").arg(row->name), {}, tr("Take out"),
              [this, shown = *row](const ReasonBar::Answer& answer) {
                if (!model_->profile()) return;
                emit profileEdited(without(*model_->profile(), shown, answer.reason.toStdString()),
                                   tr("take %1 out").arg(shown.name));
              });
}

void TargetsLadder::lift(const animal::TargetProfile& after, const QString& name, const std::string& id) {
  reason_.ask(
      tr("The maximum of “%1” protects from harm. Why may it be lifted? Ask the vet first.").arg(name), {},
      tr("Lift the limit"), [this, after, name, id](const ReasonBar::Answer& answer) {
        emit profileEdited(withLifted(after, id, who_(answer.reason)), tr("lift the limit of %1").arg(name));
      });
}

void TargetsLadder::complain(const QString& why) {
  about_->setText(QStringLiteral("▼ ") + why);
}

}  // namespace tarebowl::ui
