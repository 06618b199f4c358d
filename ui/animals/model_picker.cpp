// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/model_picker.h"

#include "ui/shared/folding_panes.h"
#include "ui/shared/format.h"
#include "ui/shared/plain_table.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr quantity::Basis kBases[] = {quantity::Basis::DryMatter, quantity::Basis::Energy};

/// Several profiles are called alike; their codes tell source and edition.
QString nameOf(const animal::TargetProfile& starter) {
  return QStringLiteral("%1 · %2").arg(QString::fromStdString(starter.name),
                                       QString::fromStdString(starter.code));
}

}  // namespace

ModelPicker::ModelPicker(std::vector<animal::TargetProfile> starters, animal::ProfileLookup lookup,
                         QWidget* parent)
    : QWidget(parent),
      starters_(std::move(starters)),
      lookup_(std::move(lookup)),
      list_(new QListWidget),
      basis_(new QComboBox),
      standsIn_(new QComboBox),
      told_(new QLabel),
      model_(new CandidatesModel(this)),
      table_(new PlainTable(tr("Candidates side by side"))) {
  build();
  connect(list_, &QListWidget::itemChanged, this, &ModelPicker::showCandidates);
  connect(basis_, &QComboBox::activated, this, &ModelPicker::showCandidates);
  connect(standsIn_, &QComboBox::currentIndexChanged, this, &ModelPicker::chosenChanged);
  showCandidates();
}

void ModelPicker::build() {
  list_->setAccessibleName(tr("Published profiles of model species"));
  constexpr int kMostHeight = 420;  // it scrolls by itself
  list_->setMinimumWidth(290);
  list_->setMaximumHeight(kMostHeight);
  list_->setWordWrap(true);
  for (const animal::TargetProfile& starter : starters_) {
    auto* item = new QListWidgetItem(nameOf(starter), list_);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    item->setCheckState(Qt::Unchecked);
    item->setData(Qt::UserRole, QByteArray::fromStdString(starter.code));
    item->setToolTip(
        tr("%1 targets · %2").arg(starter.targets.size()).arg(QString::fromStdString(starter.modelSpecies)));
  }
  basis_->setAccessibleName(tr("Basis of the comparison"));
  for (const quantity::Basis basis : kBases) basis_->addItem(tr("per %1").arg(basisText(basis)));
  standsIn_->setAccessibleName(tr("The model that stands in"));
  standsIn_->setMinimumContentsLength(26);
  told_->setProperty("soft", true);
  told_->setWordWrap(true);
  table_->setModel(model_);
  table_->setWideColumn(CandidatesModel::Target);
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setMinimumHeight(230);
  auto* choice = new QHBoxLayout;
  choice->setSpacing(7);
  choice->addWidget(new QLabel(tr("Stands in:")));
  choice->addWidget(standsIn_, 1);
  choice->addWidget(basis_);
  auto* comparison = new QWidget;
  auto* right = new QVBoxLayout(comparison);
  right->setContentsMargins(0, 0, 0, 0);
  right->setSpacing(6);
  right->addLayout(choice);
  right->addWidget(table_, 1);
  right->addWidget(told_);
  auto* panes = new FoldingPanes;
  panes->setHandleWidth(10);
  panes->addWidget(list_);
  panes->addWidget(comparison);
  panes->setStretchFactor(0, 0);
  panes->setStretchFactor(1, 1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(panes);
}

std::vector<const animal::TargetProfile*> ModelPicker::ticked() const {
  std::vector<const animal::TargetProfile*> chosen;
  for (int row = 0; row < list_->count(); ++row)
    if (list_->item(row)->checkState() == Qt::Checked)
      chosen.push_back(&starters_[static_cast<std::size_t>(row)]);
  return chosen;
}

void ModelPicker::showCandidates() {
  const auto chosen = ticked();
  std::vector<animal::ResolvedProfile> resolved;
  for (const animal::TargetProfile* starter : chosen) {
    if (resolved.size() == kMostCandidates) break;
    const auto whole = animal::resolve(*starter, lookup_);
    if (const auto* sound = std::get_if<animal::ResolvedProfile>(&whole)) resolved.push_back(*sound);
  }
  model_->show(resolved, kBases[basis_->currentIndex()]);
  const QByteArray before = standsIn_->currentData().toByteArray();
  {
    const QSignalBlocker quiet(standsIn_);
    standsIn_->clear();
    for (const animal::TargetProfile* starter : chosen)
      standsIn_->addItem(nameOf(*starter), QByteArray::fromStdString(starter->code));
    standsIn_->setCurrentIndex(std::max(0, standsIn_->findData(before)));
  }
  told_->setText(
      chosen.empty() ? tr("Tick one or more published profiles; those ticked stand side by side.")
      : chosen.size() > kMostCandidates
          ? tr("The first %1 are shown.").arg(kMostCandidates)
          : tr("◆ differs from the first candidate · ○ from memory · ? not stated, or not on this basis"));
  emit chosenChanged();
}

void ModelPicker::tick(const std::string& code) {
  for (int row = 0; row < list_->count(); ++row)
    if (list_->item(row)->data(Qt::UserRole).toByteArray().toStdString() == code)
      list_->item(row)->setCheckState(Qt::Checked);
}

void ModelPicker::choose(const std::string& code) {
  standsIn_->setCurrentIndex(standsIn_->findData(QByteArray::fromStdString(code)));
}

void ModelPicker::clear() {
  for (int row = 0; row < list_->count(); ++row) list_->item(row)->setCheckState(Qt::Unchecked);
}

const animal::TargetProfile* ModelPicker::chosen() const {
  const std::string code = standsIn_->currentData().toByteArray().toStdString();
  const auto found = std::find_if(starters_.begin(), starters_.end(),
                                  [&](const animal::TargetProfile& starter) { return starter.code == code; });
  return found == starters_.end() ? nullptr : &*found;
}

}  // namespace tarebowl::ui
