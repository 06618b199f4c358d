// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/group_choice.h"

#include <QComboBox>
#include <QListWidget>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace tarebowl::ui {

GroupChoice::GroupChoice(IntakeDesk& desk, QWidget* parent)
    : QWidget(parent), desk_(desk), sections_(new QComboBox), groups_(new QListWidget) {
  sections_->setAccessibleName(tr("Section"));
  groups_->setAccessibleName(tr("Groups"));
  groups_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  groups_->setTextElideMode(Qt::ElideRight);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(12, 10, 0, 10);
  layout->addWidget(sections_);
  layout->addWidget(groups_, 1);
  setFocusProxy(groups_);
  connect(&desk_, &IntakeDesk::groupsChanged, this, &GroupChoice::showGroups);
  connect(sections_, &QComboBox::activated, this, &GroupChoice::fillGroups);
  connect(groups_, &QListWidget::currentItemChanged, this, [this](const QListWidgetItem* item) {
    if (item != nullptr) desk_.show(item->data(Qt::UserRole).toString().toStdString());
  });
}

void GroupChoice::showGroups() {
  const QString chosen = sections_->currentData().toString();
  sections_->clear();
  sections_->addItem(tr("All sections"), QString());
  for (const IntakeGroup& group : desk_.groups())
    if (!group.section.isEmpty() && sections_->findData(group.section) < 0)
      sections_->addItem(group.section, group.section);
  sections_->setCurrentIndex(std::max(0, sections_->findData(chosen)));
  fillGroups();
}

void GroupChoice::fillGroups() {
  const QSignalBlocker quiet(groups_);
  const QString section = sections_->currentData().toString();
  groups_->clear();
  for (const IntakeGroup& group : desk_.groups()) {
    if (!section.isEmpty() && group.section != section) continue;
    auto* item =
        new QListWidgetItem(group.fed ? group.name : tr("%1 (no bowl yet)").arg(group.name), groups_);
    item->setToolTip(item->text());
    item->setData(Qt::UserRole, QString::fromStdString(group.code));
    if (!group.fed) item->setFlags(item->flags() & ~(Qt::ItemIsEnabled | Qt::ItemIsSelectable));
    if (desk_.group() != nullptr && desk_.group()->code == group.code) groups_->setCurrentItem(item);
  }
}

}  // namespace tarebowl::ui
