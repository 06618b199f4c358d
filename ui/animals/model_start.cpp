// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/model_start.h"

#include "ui/animals/model_picker.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {

ModelStart::ModelStart(Starters starters, QWidget* parent)
    : QWidget(parent),
      lookup_(starters.lookup),
      picker_(new ModelPicker(std::move(starters.profiles), starters.lookup)),
      why_(new QLineEdit),
      start_(new QPushButton(tr("Start from this model"))) {
  why_->setAccessibleName(tr("Why the model stands in"));
  why_->setPlaceholderText(tr("Why does this one stand in? A sentence, which is kept with every target."));
  start_->setObjectName(QStringLiteral("primary"));
  start_->setToolTip(
      tr("A profile of the group's own, which takes over what is published for the model and "
         "is in force from today; limits and house rules are set on top of it"));
  auto* foot = new QHBoxLayout;
  foot->setSpacing(7);
  foot->addWidget(why_, 1);
  foot->addWidget(start_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(7);
  layout->addWidget(picker_, 1);
  layout->addLayout(foot);
  connect(picker_, &ModelPicker::chosenChanged, this, &ModelStart::showReady);
  connect(why_, &QLineEdit::textChanged, this, &ModelStart::showReady);
  connect(start_, &QPushButton::clicked, this, [this] { emit chosen(told()); });
  showReady();
}

void ModelStart::clear() {
  picker_->clear();
  why_->clear();
}

ModelChoice ModelStart::told() const {
  ModelChoice choice{.why = why_->text().trimmed().toStdString()};
  if (picker_->chosen() != nullptr) choice.model = lineOf(*picker_->chosen(), lookup_);
  return choice;
}

void ModelStart::showReady() {
  const ModelChoice choice = told();
  start_->setEnabled(!choice.model.empty() && !choice.why.empty());
}

}  // namespace tarebowl::ui
