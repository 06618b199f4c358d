// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/status_line.h"

#include "ui/shared/cell_painting.h"
#include "ui/shared/elided_label.h"
#include "ui/shared/segmented_switch.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>

namespace tarebowl::ui {

StatusLine::StatusLine(QWidget* parent)
    : QWidget(parent),
      savedMark_(new MarkWidget(Mark::Met)),
      unsavedMark_(new MarkWidget(Mark::AtLimit)),
      energy_(new SegmentedSwitch(tr("Energy in"), {tr("kcal"), tr("kJ")})),
      person_(new QLineEdit) {
  setObjectName(QStringLiteral("statusLine"));
  setAttribute(Qt::WA_StyledBackground);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(14, 3, 14, 3);
  layout->setSpacing(6);
  layout->addWidget(savedMark_);
  layout->addWidget(unsavedMark_);
  saved_ = add(tr("Saved state"));
  units_ = add(tr("Units in force"));
  energy_->setObjectName(QStringLiteral("segmented"));
  energy_->setProperty("small", true);
  layout->addWidget(energy_);
  layout->addSpacing(16);
  connect(energy_, &SegmentedSwitch::chosen, this,
          [this](int index) { emit energyChosen(static_cast<EnergyUnit>(index)); });
  sample_ = add(tr("Collection"));
  note_ = add(tr("What the room does"));
  layout->addStretch(1);
  person_->setObjectName(QStringLiteral("person"));
  person_->setFont(smaller(font()));
  person_->setAccessibleName(tr("Who is at the keyboard"));
  person_->setToolTip(tr("Who is at the keyboard: every change is kept under this name"));
  person_->setPlaceholderText(tr("who is at the keyboard?"));
  person_->setAlignment(Qt::AlignRight);
  person_->setFixedWidth(fontMetrics().averageCharWidth() * 26);
  layout->addWidget(person_);
  connect(person_, &QLineEdit::editingFinished, this, [this] {
    if (person_->isModified()) emit personChanged(person_->text().trimmed());
    person_->setModified(false);
  });
}

QLabel* StatusLine::add(const QString& what) {
  auto* label = new ElidedLabel;
  label->setFont(smaller(font()));
  label->setAccessibleDescription(what);
  label->setContentsMargins(0, 0, 16, 0);
  layout()->addWidget(label);
  return label;
}

void StatusLine::show(const RoomState& state) {
  savedMark_->setVisible(state.saved);
  unsavedMark_->setVisible(!state.saved);
  saved_->setText(state.savedText);
  saved_->setMinimumWidth(saved_->sizeHint().width());  // said whole, whatever else gives way
  units_->setText(state.units);
  energy_->setVisible(state.energy.has_value());
  if (state.energy) energy_->setCurrent(static_cast<int>(*state.energy));
  sample_->setText(state.sampleText);
  sample_->setVisible(!state.sampleText.isEmpty());
  note_->setText(state.note);
}

void StatusLine::setPerson(const QString& name) {
  person_->setText(name);
}

}  // namespace tarebowl::ui
