// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/status_line.h"

#include "ui/shared/cell_painting.h"

#include <QHBoxLayout>
#include <QLabel>

namespace tarebowl::ui {

StatusLine::StatusLine(QWidget* parent)
    : QWidget(parent), savedMark_(new MarkWidget(Mark::Met)), unsavedMark_(new MarkWidget(Mark::AtLimit)) {
  setObjectName(QStringLiteral("statusLine"));
  setAttribute(Qt::WA_StyledBackground);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(14, 4, 14, 4);
  layout->setSpacing(6);
  layout->addWidget(savedMark_);
  layout->addWidget(unsavedMark_);
  saved_ = add(tr("Saved state"));
  units_ = add(tr("Units in force"));
  sample_ = add(tr("Collection"));
  solving_ = add(tr("Solver"));
  layout->addStretch(1);
  sample_->setText(tr("Brackenmere (invented sample)"));
}

QLabel* StatusLine::add(const QString& accessibleName) {
  auto* label = new QLabel;
  label->setFont(smaller(font()));
  label->setAccessibleName(accessibleName);
  label->setContentsMargins(0, 0, 16, 0);
  layout()->addWidget(label);
  return label;
}

void StatusLine::show(const WindowState& state) {
  savedMark_->setVisible(state.saved);
  unsavedMark_->setVisible(!state.saved);
  saved_->setText(state.saved ? tr("saved") : tr("not saved (Ctrl+S)"));
  units_->setText(tr("grams as fed · energy in kcal ME, %1").arg(state.energyMethod));
  sample_->setVisible(state.invented);
  solving_->setText(state.solving);
}

}  // namespace tarebowl::ui
